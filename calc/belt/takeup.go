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

// Shares of a belt's length that [TravelAllowance] asks for beyond the rows for
// short classical belts (memory).
const (
	TowardShare unit.Ratio = 0.02
	AwayShare   unit.Ratio = 0.03
)

// TravelAllowance returns the travel to have for a belt, all of it from memory:
// 3/4 in toward and 1 in away for classical belts of numbers 26 to 60, the least
// of the handbooks' ranges, and 2 and 3 per cent of its length for others. Errors:
// as [PitchLength].
//
// Method: belt.travel.allowance.
func TravelAllowance(section drive.Section, number int) (Allowance, error) {
	l, err := PitchLength(section, number)
	if err != nil {
		return Allowance{}, err
	}
	switch section {
	case drive.SectionA, drive.SectionAX, drive.SectionB, drive.SectionBX:
		if number >= 26 && number <= 60 {
			return Allowance{3. / 4 * unit.Inch, 1 * unit.Inch}, nil
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
