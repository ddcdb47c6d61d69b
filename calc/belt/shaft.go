package belt

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// ShaftLoadStatic returns how hard belts pull on each shaft at rest: every
// strand at tension, 2·belts·tension·sin(θ/2) with θ the arc on the smaller
// sheave. Errors: tension not above zero, no belt, arc not above zero or more
// than half a turn, as the smaller sheave's can't be.
//
// Method: belt.shaft.static.
func ShaftLoadStatic(tension unit.Force, belts int, arc unit.Angle) (unit.Force, error) {
	if err := limit.First(limit.Positive("tension", tension), checkBelts(belts), checkSmallArc(arc)); err != nil {
		return 0, err
	}
	return limit.Result(2 * unit.Force(belts) * tension * unit.Force(math.Sin(float64(arc)/2)))
}

// ShaftLoadRunning returns how hard belts pull on each shaft while they carry
// power: the sum of both strands' tensions, tight and slack, as forces. Neither
// with centrifugal tension, which does not press on a sheave. Errors: tight not
// above zero, slack below zero or above tight, arc not above zero or more than
// half a turn.
//
// Method: belt.shaft.running.
func ShaftLoadRunning(tight, slack unit.Force, arc unit.Angle) (unit.Force, error) {
	if err := limit.First(limit.Positive("tight", tight), limit.NonNegative("slack", slack), checkSmallArc(arc)); err != nil {
		return 0, err
	}
	if slack > tight {
		return 0, limit.Break("slack", limit.OutOfRange)
	}
	// √(T1² + T2² − 2·T1·T2·cos θ), as a hypotenuse so that squares do not overflow.
	sin, cos := math.Sincos(float64(arc))
	return limit.Result(unit.Force(math.Hypot(float64(tight)-float64(slack)*cos, float64(slack)*sin)))
}

// VBeltFactor is what [OverhungLoad] multiplies effective pull by for V-belts
// (memory); it is the strands' sum over their difference at half a turn.
const VBeltFactor unit.Ratio = 1.5

// OverhungLoad returns the short form of a running shaft load that gear and motor
// makers use: effective pull at the sheave times a factor, [VBeltFactor] for
// V-belts. For comparison. Errors: an input not above zero.
//
// Method: belt.shaft.overhung.
func OverhungLoad(power unit.Power, pitch unit.Length, n unit.Speed, factor unit.Ratio) (unit.Force, error) {
	if err := limit.First(limit.Positive("power", power), limit.Positive("pitch", pitch), limit.Positive("n", n), limit.Positive("factor", factor)); err != nil {
		return 0, err
	}
	v := n.RadiansPerSecond() * float64(pitch) / 2
	return limit.Result(unit.Force(float64(power) / v * float64(factor)))
}

func checkSmallArc(arc unit.Angle) error {
	if err := limit.Positive("arc", arc); err != nil {
		return err
	}
	if arc > math.Pi*(1+1e-9) {
		return limit.Break("arc", limit.OutOfRange)
	}
	return nil
}
