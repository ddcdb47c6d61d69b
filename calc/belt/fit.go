package belt

import (
	"math"

	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Match is how a belt suits a groove. The spellings are keys.
type Match string

// Matches.
const (
	MatchOwn    Match = "own"    // the groove is made for the section
	MatchKin    Match = "kin"    // of the same width: notched or light-duty in a classical groove (light-duty: memory)
	MatchSunk   Match = "sunk"   // narrower than the groove: it runs on the bottom, deeper than its pitch line
	MatchProud  Match = "proud"  // wider than the groove: it stands out of it
	MatchFamily Match = "family" // narrow in a classical groove or the reverse: flanks and depth differ
)

// kin groups sections that share a groove.
type kin int

const (
	noKin kin = iota
	kinA
	kinB
	kin3V
	kin5V
)

func kinOf(s drive.Section) kin {
	switch s {
	case drive.SectionA, drive.SectionAX, drive.Section4L:
		return kinA
	case drive.SectionB, drive.SectionBX, drive.Section5L:
		return kinB
	case drive.Section3V, drive.Section3VX:
		return kin3V
	case drive.Section5V, drive.Section5VX:
		return kin5V
	}
	return noKin
}

// SectionInGroove returns how a belt suits a sheave made for another section, in a
// standard groove or one that takes A and B alike. Errors: an unknown section; a
// groove type that the sheave's section has not.
//
// Method: belt.groove.
func SectionInGroove(belt, sheave drive.Section, groove drive.GrooveType) (Match, error) {
	b, s := kinOf(belt), kinOf(sheave)
	if b == noKin {
		return "", limit.Break("belt", limit.NotTabulated)
	}
	if s == noKin {
		return "", limit.Break("sheave", limit.NotTabulated)
	}
	classical := s == kinA || s == kinB
	if groove != drive.Standard && (groove != drive.Combination || !classical) {
		return "", limit.Break("groove", limit.NotTabulated)
	}
	switch {
	case belt == sheave:
		return MatchOwn, nil
	case b == s:
		return MatchKin, nil
	case classical != (b == kinA || b == kinB):
		return MatchFamily, nil
	case groove == drive.Combination:
		return MatchOwn, nil
	case b < s:
		return MatchSunk, nil
	}
	return MatchProud, nil
}

// Capacity is whether belts carry a power. The spellings are keys.
type Capacity string

// Capacities.
const (
	CapacityEnough    Capacity = "enough"
	CapacityShort     Capacity = "short"
	CapacityUnchecked Capacity = "unchecked" // no rating was typed: the library holds none
)

// BeltsNeeded returns how many belts carry a design power, each with the rating
// typed for it, already corrected for arc and length. Errors: an input not above
// zero; more belts than any sheave has grooves.
//
// Method: belt.count.
func BeltsNeeded(design, rating unit.Power) (int, error) {
	if err := limit.First(limit.Positive("design", design), limit.Positive("rating", rating)); err != nil {
		return 0, err
	}
	const slack = 1e-9
	n := math.Ceil(float64(design/rating) * (1 - slack))
	if !(n <= mostBelts) {
		return 0, limit.Break("rating", limit.OutOfRange)
	}
	return int(max(n, 1)), nil
}

// BeltCapacity returns whether belts of a typed rating carry a design power, and
// the share of their rating it takes. Without a rating the answer is
// [CapacityUnchecked] and no call of this. Errors: an input not above zero, no
// belt.
//
// Method: belt.count.
func BeltCapacity(design, rating unit.Power, belts int) (Capacity, unit.Ratio, error) {
	if err := limit.First(limit.Positive("design", design), limit.Positive("rating", rating), checkBelts(belts)); err != nil {
		return "", 0, err
	}
	share, err := limit.Result(unit.Ratio(design/rating) / unit.Ratio(belts))
	if err != nil {
		return "", 0, err
	}
	const slack = 1e-9
	if share > 1+slack {
		return CapacityShort, share, nil
	}
	return CapacityEnough, share, nil
}
