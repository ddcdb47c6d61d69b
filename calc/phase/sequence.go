package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// SequenceFactor returns the negative over the positive sequence component of
// three phasors that add up to nothing, from their magnitudes alone: line-to-line
// voltages, or line currents of a motor without a neutral. It is the unbalance of
// IEC; from 1 to 1.155 times [Unbalance] while both are small. Errors: a reading
// below zero, all three zero, one greater than the other two together.
//
// Method: phase.sequence.
func SequenceFactor[Q unit.Voltage | unit.Current](ab, bc, ca Q) (unit.Ratio, error) {
	if err := limit.First(limit.NonNegative("ab", ab), limit.NonNegative("bc", bc), limit.NonNegative("ca", ca)); err != nil {
		return 0, err
	}
	largest := max(ab, bc, ca)
	if largest == 0 {
		return 0, limit.Break("", limit.AllZero)
	}
	x, y, z := float64(ab/largest), float64(bc/largest), float64(ca/largest)
	const slack = 1e-9
	if x+y+z < 2-slack { // the largest is one
		return 0, limit.Break("", limit.NoTriangle)
	}
	// √(3 − 6b) with b = ΣV⁴/(ΣV²)², as 4√3 times the triangle's area over ΣV²:
	// the same, without the loss of digits where b is near a third.
	s := (x + y + z) / 2
	area := math.Sqrt(math.Max(s*(s-x)*(s-y)*(s-z), 0))
	squares := x*x + y*y + z*z
	root := 4 * math.Sqrt(3) * area / squares
	// 1 − root from the differences of the squares: half Σ(Vi² − Vj²)² over
	// (ΣV²)² is 1 − root².
	p, q, r := (x-y)*(x+y), (y-z)*(y+z), (z-x)*(z+x)
	rest := 2 * (p*p + q*q + r*r) / (squares * squares) // 1 − root²
	return limit.Result(unit.Ratio(math.Min(math.Sqrt(rest)/(1+root), 1)))
}

// A Closing is whether three magnitudes can belong together. The spellings are
// keys.
type Closing string

// Closings.
const (
	Closes       Closing = "closes"
	ClosesNot    Closing = "open"     // one is greater than the other two together: a reading is wrong, or a leg was missed
	ClosesUnsure Closing = "unjudged" // the meter's error could overturn it
)

// TriangleCheck returns whether three readings can be those of phasors that add up
// to nothing, given the meter's error. Errors: as [UnbalanceRange].
//
// Method: phase.triangle.
func TriangleCheck[Q unit.Voltage | unit.Current](a, b, c Q, meter Meter[Q]) (Closing, error) {
	t, err := bound(a, b, c, meter)
	if err != nil {
		return "", err
	}
	can, must := true, true
	for i := range 3 {
		j, k := others(i)
		const slack = 1e-9
		can = can && t.low[i] <= (t.high[j]+t.high[k])*(1+slack)
		must = must && t.high[i] <= (t.low[j]+t.low[k])*(1+slack)
	}
	switch {
	case must:
		return Closes, nil
	case can:
		return ClosesUnsure, nil
	}
	return ClosesNot, nil
}
