package airflow

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// The calculators show the lowest and the highest of [LoadProportional] and
// [LoadHalfNoLoad] as a band. The other methods stand here for comparison. At
// 68.8 % of plate amps, with a no-load current of 39 % of them, the five read
// 68.8, 61.2, 49.0 (full no-load) and 61.6 % (phasor): in proportion is high,
// full no-load low, half no-load follows the phasors. All need three phases at
// the plate's frequency; none is worth much below half load.

// LoadProportional returns the load of a motor as a share of its plate power,
// its current i in proportion to plate current fla, corrected for volts v
// against the plate's. It reads high at part load. Errors: an input not above
// zero.
//
// Method: air.load.proportional.
func LoadProportional(i, fla unit.Current, v, plate unit.Voltage) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("i", i), limit.Positive("fla", fla), limit.Positive("v", v), limit.Positive("plate", plate)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(i/fla) * unit.Ratio(v/plate))
}

// AmpsProportional returns the current at which [LoadProportional] gives load.
// Errors: an input not above zero.
//
// Method: air.load.proportional.
func AmpsProportional(load unit.Ratio, fla unit.Current, v, plate unit.Voltage) (unit.Current, error) {
	if err := limit.First(limit.Positive("load", load), limit.Positive("fla", fla), limit.Positive("v", v), limit.Positive("plate", plate)); err != nil {
		return 0, err
	}
	return limit.Result(fla * unit.Current(load) * unit.Current(plate/v))
}

// LoadHalfNoLoad returns the load of a motor from its current i, its no-load
// current i0 with the belt off and its plate current fla, half the no-load
// current taken off both. Fair from 40 % of load up. Errors: an input not above
// zero; i0 not below fla; i below i0.
//
// Method: air.load.half.
func LoadHalfNoLoad(i, i0, fla unit.Current) (unit.Ratio, error) {
	if err := checkNoLoad(i, i0, fla); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio((i - i0/2) / (fla - i0/2)))
}

// AmpsHalfNoLoad returns the current at which [LoadHalfNoLoad] gives load.
// Errors: an input not above zero; i0 not below fla.
//
// Method: air.load.half.
func AmpsHalfNoLoad(load unit.Ratio, i0, fla unit.Current) (unit.Current, error) {
	if err := limit.First(limit.Positive("load", load), checkPlate(i0, fla)); err != nil {
		return 0, err
	}
	return limit.Result(i0/2 + unit.Current(load)*(fla-i0/2))
}

// LoadFullNoLoad returns the load with the whole no-load current taken off. It
// reads low at part load; for comparison. Errors: as [LoadHalfNoLoad].
//
// Method: air.load.full.
func LoadFullNoLoad(i, i0, fla unit.Current) (unit.Ratio, error) {
	if err := checkNoLoad(i, i0, fla); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio((i - i0) / (fla - i0)))
}

// LoadPhasor returns the load if the magnetizing current stays i0 and stands at
// right angles to the load current: √((i²−i0²)/(fla²−i0²)); for comparison.
// Errors: as [LoadHalfNoLoad].
//
// Method: air.load.phasor.
func LoadPhasor(i, i0, fla unit.Current) (unit.Ratio, error) {
	if err := checkNoLoad(i, i0, fla); err != nil {
		return 0, err
	}
	a, b := float64(i/fla), float64(i0/fla) // ratios first, lest the squares overflow
	return limit.Result(unit.Ratio(math.Sqrt((a - b) * (a + b) / ((1 - b) * (1 + b)))))
}

// LoadSlip returns the load from speed: measured slip over plate slip. The
// plate's slip may be 20 % off and its speed is rounded, so that this is rough;
// for comparison. Errors: a speed not above zero, plate not below sync, n above
// sync.
//
// Method: air.load.slip.
func LoadSlip(sync, plate, n unit.Speed) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("sync", sync), limit.Positive("plate", plate), limit.Positive("n", n)); err != nil {
		return 0, err
	}
	if plate >= sync {
		return 0, limit.Break("plate", limit.AboveSynchronous)
	}
	if n > sync {
		return 0, limit.Break("n", limit.AboveSynchronous)
	}
	return limit.Result(unit.Ratio((sync - n) / (sync - plate)))
}

// LoadInput returns the load from a wattmeter: input power over what the motor
// takes at plate power, plate/efficiency, with the efficiency at full load. The
// best of the methods. Errors: an input not above zero, efficiency above one.
//
// Method: air.load.input.
func LoadInput(input, plate unit.Power, efficiency unit.Ratio) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("input", input), limit.Positive("plate", plate), checkShare("efficiency", efficiency)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(input/plate) * efficiency)
}

func checkPlate(i0, fla unit.Current) error {
	if err := limit.First(limit.Positive("i0", i0), limit.Positive("fla", fla)); err != nil {
		return err
	}
	if i0 >= fla {
		return limit.Break("i0", limit.NoLoadTooLarge)
	}
	return nil
}

func checkNoLoad(i, i0, fla unit.Current) error {
	if err := limit.First(limit.Positive("i", i), checkPlate(i0, fla)); err != nil {
		return err
	}
	if i < i0 {
		return limit.Break("i", limit.BelowNoLoad)
	}
	return nil
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
