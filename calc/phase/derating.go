package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// DeratingOver returns [VoltageDerating] over a range of unbalance, as a reading
// with a meter's error gives it: the factor at value, the graph's least at high
// and its greatest at low. Errors: as VoltageDerating; the three out of order.
//
// Method: phase.derating.
func DeratingOver(low, value, high unit.Ratio) (Derating, error) {
	if err := limit.First(limit.NonNegative("low", low), limit.NonNegative("value", value), limit.NonNegative("high", high)); err != nil {
		return Derating{}, err
	}
	if low > value {
		return Derating{}, limit.Break("low", limit.OutOfRange)
	}
	if value > high {
		return Derating{}, limit.Break("high", limit.OutOfRange)
	}
	var d [3]Derating
	for i, u := range [...]struct {
		name string
		unit.Ratio
	}{{"low", low}, {"value", value}, {"high", high}} {
		var err error
		if d[i], err = VoltageDerating(u.Ratio); err != nil {
			return Derating{}, limit.Rename(err, "unbalance", u.name)
		}
	}
	return Derating{Factor: d[1].Factor, Low: d[2].Low, High: d[0].High}, nil
}

// A Headroom is the share of plate power left before a limit, with its band.
// Below zero is overload.
type Headroom struct{ Value, Low, High unit.Ratio }

// HeadroomLeft returns what an unbalanced supply leaves a motor above its load, a
// share of plate power: the derating less the load. Errors: load below zero; a
// derating outside 0 to 1 or out of order.
//
// Method: phase.headroom.
func HeadroomLeft(load unit.Ratio, derating Derating) (Headroom, error) {
	d := derating
	if err := limit.First(limit.NonNegative("load", load), limit.NonNegative("derating", d.Low), limit.NonNegative("derating", d.Factor), limit.NonNegative("derating", d.High)); err != nil {
		return Headroom{}, err
	}
	if d.Low > d.Factor || d.Factor > d.High || d.High > 1 {
		return Headroom{}, limit.Break("derating", limit.OutOfRange)
	}
	return Headroom{Value: d.Factor - load, Low: d.Low - load, High: d.High - load}, nil
}

// ExtraHeating returns the share by which voltage unbalance raises a motor's
// temperature rise: 2·u² with u in per cent, in per cent. Errors: unbalance below
// zero, or above 5 per cent, where a motor is not to be run.
//
// Method: phase.heating.
func ExtraHeating(unbalance unit.Ratio) (unit.Ratio, error) {
	if err := limit.NonNegative("unbalance", unbalance); err != nil {
		return 0, err
	}
	const slack = 1e-9
	if unbalance > UnbalanceMost*(1+slack) {
		return 0, limit.Break("unbalance", limit.TooUnbalanced)
	}
	u := unbalance / unit.Percent
	return limit.Result(2 * u * u * unit.Percent)
}

// InsulationLife returns the share of its life that a winding's insulation keeps
// when it runs hotter by extra: half for each 10 K. Errors: extra below zero.
//
// Method: phase.life.
func InsulationLife(extra unit.TemperatureDifference) (unit.Ratio, error) {
	if err := limit.NonNegative("extra", extra); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(math.Exp2(-float64(extra) / 10)))
}

// TorqueShare returns a motor's starting and greatest torque as a share of those
// at plate voltage: as the square of voltage. Errors: an input not above zero.
//
// Method: phase.torque.
func TorqueShare(v, plate unit.Voltage) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("plate", plate)); err != nil {
		return 0, err
	}
	r := unit.Ratio(v / plate)
	return limit.Result(r * r)
}
