package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// FreeConductor is the least length of conductor left free at a box, 300.14.
const FreeConductor = 6 * unit.Inch

// A drain hole made in the field in a box in a wet place, 314.15.
const (
	DrainLeast = unit.Inch / 8
	DrainMost  = unit.Inch / 4
)

// BushingAsked reports whether conductors of a size must be protected by a
// bushing or smooth surface where they enter: from 4 on, 300.4(G). Errors: no
// such size.
//
// Method: raceway.bushing.
func BushingAsked(size WireSize) (bool, error) {
	r := size.rank()
	if r < 0 {
		return false, limit.Break("size", limit.NotTabulated)
	}
	return r >= AWG4.rank(), nil
}
