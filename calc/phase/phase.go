// Package phase holds the formulas of readings at a motor: volts, amps, what they
// say of supply and motor, and which way it turns.
//
// Terms. Unbalance is the largest deviation of the three readings from their
// average, over that average: volts line to line, or line amps. It is the
// definition of NEMA; [SequenceFactor] is that of IEC. Derating is the share
// of its plate power that a motor may give on an unbalanced supply. A lead is one
// of the motor's, T1 to T3; a line one of the supply's, L1 to L3.
//
// Every reading comes with its [Meter], and no [Verdict] is given that the meter's
// error could overturn. First things first: rotation and volts, then a lost phase
// ([LostPhase]), then load, then unbalance ([CurrentBalance]), and only then a lead
// roll ([ClassifyRoll]). Which of these a supply has at all says [CheckUse]. How
// much load amps stand for is the airflow package's to say.
package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Unbalance returns the unbalance of three readings of one kind, all taken with
// the same meter and the motor running. A reading near zero is a lost phase and
// no unbalance; that is the caller's to say first. Errors: a reading below zero,
// all three zero.
//
// Method: phase.unbalance.
func Unbalance[Q unit.Voltage | unit.Current](a, b, c Q) (unit.Ratio, error) {
	if err := limit.First(limit.NonNegative("a", a), limit.NonNegative("b", b), limit.NonNegative("c", c)); err != nil {
		return 0, err
	}
	average := float64(a)/3 + float64(b)/3 + float64(c)/3
	if average <= 0 {
		return 0, limit.Break("", limit.AllZero)
	}
	farthest := max(math.Abs(float64(a)-average), math.Abs(float64(b)-average), math.Abs(float64(c)-average))
	return limit.Result(unit.Ratio(farthest / average))
}

// Limits of voltage unbalance.
const (
	UnbalanceFree unit.Ratio = 0.01 // up to here a motor carries its plate power: a US DOE motor tip sheet
	UnbalanceMost unit.Ratio = 0.05 // above it a motor is not to be run: NEMA MG 1, 14.36 (memory)
)

// A Derating is the share of plate power left, and how far readings of the
// graph it comes from spread.
type Derating struct {
	Factor, Low, High unit.Ratio
}

// Derating by per cent of voltage unbalance, 0 to 5: NEMA MG 1, Figure 14-1, points
// of a graph that prints read ± 0.02 apart (an open table has 0.89 and 0.76 at 3 and
// 5 per cent).
var deratings = [...]Derating{
	{1, 1, 1},
	{1, 0.98, 1},
	{0.95, 0.93, 0.96},
	{0.88, 0.87, 0.90},
	{0.82, 0.80, 0.83},
	{0.75, 0.74, 0.77},
}

// VoltageDerating returns the derating of a motor for a voltage unbalance, on
// straight lines between whole per cents. Errors: unbalance below zero; above 5
// per cent, where a motor is not to be run.
//
// Method: phase.derating.
func VoltageDerating(unbalance unit.Ratio) (Derating, error) {
	if err := limit.NonNegative("unbalance", unbalance); err != nil {
		return Derating{}, err
	}
	const slack = 1e-9
	if unbalance > UnbalanceMost*(1+slack) {
		return Derating{}, limit.Break("unbalance", limit.TooUnbalanced)
	}
	x := min(float64(unbalance/unit.Percent), 5)
	i := min(int(x), len(deratings)-2)
	t := unit.Ratio(x - float64(i))
	from, to := deratings[i], deratings[i+1]
	return Derating{
		Factor: from.Factor + t*(to.Factor-from.Factor),
		Low:    from.Low + t*(to.Low-from.Low),
		High:   from.High + t*(to.High-from.High),
	}, nil
}
