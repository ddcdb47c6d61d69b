package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// UnsecuredMost returns how long a flexible conduit may hang free at a terminal
// where it must flex: 3 ft up to 1-1/4, 4 ft up to 2; of nonmetallic conduit 3
// ft. Errors: a conduit that is not flexible; a size that is not tabulated.
//
// Method: raceway.flex.support.
func UnsecuredMost(conduit Conduit, size TradeSize) (unit.Length, error) {
	b, err := flexible(conduit, size)
	if err != nil {
		return 0, err
	}
	if !conduit.Metallic() || b.Size.rank() <= Size1and4.rank() {
		return 3 * unit.Foot, nil
	}
	return 4 * unit.Foot, nil
}

// Distances of support where a flexible conduit need not flex: 348.30, 350.30.
const (
	SecuredWithin  = 12 * unit.Inch // of each end
	SupportSpacing = 4.5 * unit.Foot
)

func flexible(conduit Conduit, size TradeSize) (Bore, error) {
	b, err := BoreOf(conduit, size)
	if err != nil {
		return Bore{}, err
	}
	if !conduit.Flexible() {
		return Bore{}, limit.Break("conduit", limit.OutOfRange)
	}
	return b, nil
}

// A Mounting is whether what a flexible conduit ends at moves.
type Mounting string

// Mountings.
const (
	Still   Mounting = "still"
	Flexing Mounting = "flexing" // vibrates, or must be moved after installation
)

// A GroundPath is whether a flexible conduit may serve as the equipment
// grounding conductor, and the first reason why not.
type GroundPath struct {
	Wire   bool // a wire-type equipment grounding conductor is asked for
	Reason PathReason
}

// A PathReason is a reason for a wire.
type PathReason string

// Reasons for a wire-type equipment grounding conductor.
const (
	PathServes      PathReason = ""
	PathNonmetallic PathReason = "nonmetallic" // 356.60
	PathFlexes      PathReason = "flexes"      // 348.60(B), 350.60(B)
	PathRating      PathReason = "rating"      // 250.118: the device is rated too high for the size
	PathSize        PathReason = "size"        // 250.118: larger than 1-1/4
	PathLength      PathReason = "length"      // 250.118: more than 6 ft of flexible conduit in the path
)

// PathLengthMost is the greatest length of all flexible conduit in a ground path
// that has no wire.
const PathLengthMost = 6 * unit.Foot

// FlexAsGround returns whether a flexible conduit with listed fittings may be
// the only ground path, by the rating of the overcurrent device and the length
// of all flexible conduit in the path: FMC up to 20 A; LFMC up to 20 A in 3/8
// and 1/2, 60 A in 3/4 to 1-1/4; neither where larger. Errors: a conduit that is not flexible; a size
// that is not tabulated; an input not above zero; no such mounting.
//
// Method: raceway.flex.ground.
func FlexAsGround(conduit Conduit, size TradeSize, rating unit.Current, length unit.Length, mounting Mounting) (GroundPath, error) {
	b, err := flexible(conduit, size)
	if err := limit.First(err, limit.Positive("rating", rating), limit.Positive("length", length)); err != nil {
		return GroundPath{}, err
	}
	if mounting != Still && mounting != Flexing {
		return GroundPath{}, limit.Break("mounting", limit.NotTabulated)
	}
	most := 20 * unit.Ampere
	if conduit == LFMC && b.Size.rank() >= Size3by4.rank() {
		most = 60 * unit.Ampere
	}
	switch {
	case !conduit.Metallic():
		return GroundPath{true, PathNonmetallic}, nil
	case mounting == Flexing:
		return GroundPath{true, PathFlexes}, nil
	case b.Size.rank() > Size1and4.rank():
		return GroundPath{true, PathSize}, nil
	case rating > most*(1+slack):
		return GroundPath{true, PathRating}, nil
	case length > PathLengthMost*(1+slack):
		return GroundPath{true, PathLength}, nil
	}
	return GroundPath{}, nil
}
