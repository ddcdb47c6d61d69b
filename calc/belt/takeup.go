package belt

import (
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// An Allowance is the travel a motor base should have from the center at which a
// belt lies tight: toward the fan to slip the belt on without prying, away from it
// to take up what the belt grows.
type Allowance struct{ Toward, Away unit.Length }

// Shares of a belt's length that [TravelAllowance] asks for where no row holds:
// light-duty belts, and lengths beyond the rows (memory).
const (
	TowardShare unit.Ratio = 0.02
	AwayShare   unit.Ratio = 0.03
)

// A travelRow is the travel to have for belts through a number.
type travelRow struct {
	through      int
	small, large unit.Length // toward the fan: A and 3V, B and 5V; zero where such a belt is not made so long or short
	away         unit.Length
}

// Travel by number, as handbooks and belt makers' manuals print it for drives to the
// standards of classical and narrow belts, from memory: no standard's own table was
// read.
var (
	classicalTravel = []travelRow{
		{35, 0.75 * unit.Inch, 1.00 * unit.Inch, 1.0 * unit.Inch},
		{55, 0.75 * unit.Inch, 1.00 * unit.Inch, 1.5 * unit.Inch},
		{85, 0.75 * unit.Inch, 1.25 * unit.Inch, 2.0 * unit.Inch},
		{112, 1.00 * unit.Inch, 1.25 * unit.Inch, 2.5 * unit.Inch},
		{144, 1.00 * unit.Inch, 1.25 * unit.Inch, 3.0 * unit.Inch},
		{180, 0, 1.25 * unit.Inch, 3.5 * unit.Inch},
		{210, 0, 1.50 * unit.Inch, 4.0 * unit.Inch},
		{240, 0, 1.50 * unit.Inch, 4.5 * unit.Inch},
		{300, 0, 1.50 * unit.Inch, 5.0 * unit.Inch},
	}
	narrowTravel = []travelRow{
		{475, 0.5 * unit.Inch, 0, 1.0 * unit.Inch},
		{710, 0.8 * unit.Inch, 1.0 * unit.Inch, 1.2 * unit.Inch},
		{1060, 0.8 * unit.Inch, 1.0 * unit.Inch, 1.5 * unit.Inch},
		{1250, 0.8 * unit.Inch, 1.0 * unit.Inch, 1.8 * unit.Inch},
		{1700, 0.8 * unit.Inch, 1.0 * unit.Inch, 2.2 * unit.Inch},
		{2000, 0, 1.0 * unit.Inch, 2.5 * unit.Inch},
		{2360, 0, 1.2 * unit.Inch, 3.0 * unit.Inch},
		{2650, 0, 1.2 * unit.Inch, 3.2 * unit.Inch},
		{3000, 0, 1.2 * unit.Inch, 3.5 * unit.Inch},
		{3550, 0, 1.2 * unit.Inch, 4.0 * unit.Inch},
	}
)

// TravelAllowance returns the travel to have for a belt, all of it from memory: by
// number for classical and narrow belts, 2 and 3 per cent of its length for light-duty
// ones and beyond the rows. Errors: as [PitchLength].
//
// Method: belt.travel.allowance.
func TravelAllowance(section drive.Section, number int) (Allowance, error) {
	l, err := PitchLength(section, number)
	if err != nil {
		return Allowance{}, err
	}
	rows, large := classicalTravel, false
	switch section {
	case drive.SectionA, drive.SectionAX:
	case drive.SectionB, drive.SectionBX:
		large = true
	case drive.Section3V, drive.Section3VX:
		rows = narrowTravel
	case drive.Section5V, drive.Section5VX:
		rows, large = narrowTravel, true
	default:
		rows = nil
	}
	for _, row := range rows {
		toward := row.small
		if large {
			toward = row.large
		}
		if number <= row.through && toward > 0 {
			return Allowance{toward, row.away}, nil
		}
	}
	return Allowance{l * unit.Length(TowardShare), l * unit.Length(AwayShare)}, nil
}

// A Reach is how a motor base's travel serves a belt. The spellings are keys.
type Reach string

// Reaches.
const (
	ReachGood      Reach = "good"        // the center is reached with both allowances left
	ReachNoInstall Reach = "no-install"  // reached, but too little travel toward the fan to slip the belt on
	ReachNoTakeUp  Reach = "no-take-up"  // reached, but too little travel away to take up stretch
	ReachNeither   Reach = "neither"     // reached, with too little travel both ways
	ReachOut       Reach = "unreachable" // the base does not go there
)

// A Base is the travel left on a motor base once a belt lies tight.
type Base struct {
	Toward, Away unit.Length // below zero by as much as the base falls short
	Reach        Reach
}

// BaseReach returns the travel left once the motor has moved by move, positive
// away from the fan, on a base that has toward and away left at present. Errors:
// move not finite, another input below zero.
//
// Method: belt.travel.reach.
func BaseReach(move, toward, away unit.Length, need Allowance) (Base, error) {
	if err := limit.First(limit.Finite("move", move), limit.NonNegative("toward", toward), limit.NonNegative("away", away),
		limit.NonNegative("need", need.Toward), limit.NonNegative("need", need.Away)); err != nil {
		return Base{}, err
	}
	left := Base{Toward: toward + move, Away: away - move}
	if err := limit.First(limit.Finite("move", left.Toward), limit.Finite("move", left.Away)); err != nil {
		return Base{}, limit.Break("", limit.Overflow)
	}
	const slack = 1e-9
	install, takeUp := left.Toward >= need.Toward*(1-slack), left.Away >= need.Away*(1-slack)
	switch {
	case left.Toward < 0 || left.Away < 0:
		left.Reach = ReachOut
	case install && takeUp:
		left.Reach = ReachGood
	case takeUp:
		left.Reach = ReachNoInstall
	case install:
		left.Reach = ReachNoTakeUp
	default:
		left.Reach = ReachNeither
	}
	return left, nil
}
