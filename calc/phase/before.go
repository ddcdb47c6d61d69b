package phase

import "roofside/calc/unit"

// A Before is what is to be done before a lead roll. The spellings are keys.
type Before string

// What comes before a lead roll, in this order.
const (
	BeforeNothing  Before = "ready"
	BeforeRotation Before = "rotation" // a wheel that turns backward is no load to compare by
	BeforeVolts    Before = "volts"    // unbalanced volts are cause enough
	BeforePhase    Before = "lost-phase"
	BeforeStop     Before = "stop"     // so far apart on even volts is no case for a roll
	BeforeLoad     Before = "load"     // under half load the amps tell nothing
	BeforeCause    Before = "balanced" // no unbalance to speak of, or none that the meter's error could not make up
)

// RollLeast is the unbalance of amps under which nobody rolls leads (common practice).
const RollLeast unit.Ratio = 0.05

// BeforeRoll returns what stands in the way of a lead roll: it takes rotation
// proven, volts within about [UnbalanceFree], and amps unbalanced at a real load.
//
// Method: phase.roll.
func BeforeRoll(rotationProven bool, volts, amps Balance) Before {
	switch {
	case !rotationProven:
		return BeforeRotation
	case volts.Value > UnbalanceFree:
		return BeforeVolts
	case amps.Reason == ReasonLost:
		return BeforePhase
	case amps.Standing == Stop:
		return BeforeStop
	case amps.Reason == ReasonLight:
		return BeforeLoad
	case amps.Low <= 0, amps.Value < RollLeast:
		return BeforeCause
	}
	return BeforeNothing
}
