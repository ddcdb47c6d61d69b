package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Apparent returns the apparent power of a three-phase motor from average line
// volts and average line current: √3·v·i. Errors: an input not above zero.
//
// Method: phase.power.apparent.
func Apparent(v unit.Voltage, i unit.Current) (unit.ApparentPower, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("i", i)); err != nil {
		return 0, err
	}
	return limit.Result(unit.ApparentPower(math.Sqrt(3) * float64(v) * float64(i)))
}

// ApparentSinglePhase returns the apparent power of a single-phase motor: v·i.
// Errors: an input not above zero.
//
// Method: phase.power.single.
func ApparentSinglePhase(v unit.Voltage, i unit.Current) (unit.ApparentPower, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("i", i)); err != nil {
		return 0, err
	}
	return limit.Result(unit.ApparentPower(float64(v) * float64(i)))
}

// Real returns the real power in an apparent one at a power factor, that at the
// load. Errors: an input not above zero, pf above one.
//
// Method: phase.power.real.
func Real(apparent unit.ApparentPower, pf unit.Ratio) (unit.Power, error) {
	if err := limit.First(limit.Positive("apparent", apparent), checkShare("pf", pf)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Power(float64(apparent) * float64(pf)))
}

// An Estimate is a shaft power with its range.
type Estimate struct{ Value, Low, High unit.Power }

// PartLoadHigh is how much too high the plate's power factor and efficiency may
// read together at part load: 10 to 30 per cent (memory).
const PartLoadHigh unit.Ratio = 0.30

// ShaftByPower returns the shaft power in an apparent power by power factor and
// efficiency. read is the share by which their product may be too high, as the
// plate's is at part load: [PartLoadHigh], or zero for those known at the load; the
// value is the range's middle. Errors: an input not above zero, pf or efficiency
// above one; read below zero or not below one.
//
// Method: phase.power.shaft.
func ShaftByPower(apparent unit.ApparentPower, pf, efficiency, read unit.Ratio) (Estimate, error) {
	if err := limit.First(checkShare("efficiency", efficiency), limit.NonNegative("read", read)); err != nil {
		return Estimate{}, err
	}
	if read >= 1 {
		return Estimate{}, limit.Break("read", limit.TooCoarse)
	}
	in, err := Real(apparent, pf)
	if err != nil {
		return Estimate{}, err
	}
	high := in * unit.Power(efficiency)
	low := high / unit.Power(1+read)
	return Estimate{low/2 + high/2, low, high}, nil
}

// ShaftByLoad returns the shaft power of a motor from the range of its load as the
// methods tell it from amps, slip or input power, lowest and highest. Errors: plate
// not above zero, low below zero, high below low.
//
// Method: phase.power.load.
func ShaftByLoad(plate unit.Power, low, high unit.Ratio) (Estimate, error) {
	if err := limit.First(limit.Positive("plate", plate), limit.NonNegative("low", low), limit.NonNegative("high", high)); err != nil {
		return Estimate{}, err
	}
	if high < low {
		return Estimate{}, limit.Break("high", limit.OutOfRange)
	}
	l, h := plate*unit.Power(low), plate*unit.Power(high)
	if _, err := limit.Result(h); err != nil {
		return Estimate{}, err
	}
	return Estimate{l/2 + h/2, l, h}, nil
}

// checkShare reports a share that is not above zero and at most one.
func checkShare(name string, x unit.Ratio) error {
	if err := limit.Positive(name, x); err != nil {
		return err
	}
	if x > 1 {
		return limit.Break(name, limit.OutOfRange)
	}
	return nil
}
