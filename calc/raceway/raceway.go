// Package raceway holds the arithmetic of a fan's wiring: what fits a raceway or
// a box, what a conductor carries, and which parts join an opening and a
// conduit.
//
// Terms. A raceway is conduit or tubing; trade size and metric designator name
// it and are no dimensions. Fill is the area of the conductors, insulation
// included, over the raceway's inside area. A nipple is a raceway at most 24 in
// long. An allowance is the volume that a box needs for one conductor. Ampacity
// is the current that a conductor carries without passing its insulation's
// temperature; a column is one of 60, 75 and 90 °C. Table current is a motor's
// full-load current by the code's table, not by its plate.
//
// The tables are those of NFPA 70. Where its editions differ the edition is an
// input and stands in the answer. An answer is arithmetic and the place of the
// rule; whether an installation is accepted is for the authority that has
// jurisdiction.
package raceway

import (
	"strconv"

	"roofside/calc/limit"
)

// Rules of raceways and boxes that an input can break.
const (
	TooMany     limit.Rule = "tooMany"     // more than is ever counted by hand
	NoConductor limit.Rule = "noConductor" // nothing to count
	NoSizeFits  limit.Rule = "noSizeFits"  // none of the tabulated sizes is large enough
	MixedSizes  limit.Rule = "mixedSizes"  // the rule holds for conductors of one size alone
	DryOnly     limit.Rule = "dryOnly"     // the insulation has no rating in a wet place
	TooHot      limit.Rule = "tooHot"      // the table gives no factor at that temperature
	PullBox     limit.Rule = "pullBox"     // conductors larger than 6 go by another rule, 314.28
)

// Bounds on what is counted.
const (
	MostRows  = 50
	MostCount = 10_000
)

// slack is by how much, relatively, a bound may be passed before it is passed:
// the noise of floating-point arithmetic.
const slack = 1e-9

func checkCount(name string, n int) error {
	if n < 1 {
		return limit.Break(name, limit.NotPositive)
	}
	if n > MostCount {
		return limit.Break(name, TooMany)
	}
	return nil
}

// A RowError is an error in one row of a list.
type RowError struct {
	Row int // from 0
	Err error
}

func (e *RowError) Error() string { return "row " + strconv.Itoa(e.Row+1) + ": " + e.Err.Error() }

// Unwrap returns the row's own error.
func (e *RowError) Unwrap() error { return e.Err }
