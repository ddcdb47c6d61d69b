package airflow

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// InputPower returns the electrical power of a three-phase motor from average
// line volts, average line current and power factor at that load. Errors: an
// input not above zero, pf above one.
//
// Method: air.power.input.
func InputPower(v unit.Voltage, i unit.Current, pf unit.Ratio) (unit.Power, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("i", i), checkShare("pf", pf)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Power(math.Sqrt(3) * float64(v) * float64(i) * float64(pf)))
}

// ShaftPower returns what a three-phase motor gives to its shaft: [InputPower]
// times efficiency, both power factor and efficiency at that load. Those of the
// plate read 10 to 30 % high at part load (memory). Errors: as InputPower;
// efficiency above one.
//
// Method: air.power.shaft.
func ShaftPower(v unit.Voltage, i unit.Current, pf, efficiency unit.Ratio) (unit.Power, error) {
	if err := checkShare("efficiency", efficiency); err != nil {
		return 0, err
	}
	p, err := InputPower(v, i, pf)
	if err != nil {
		return 0, err
	}
	return limit.Result(p * unit.Power(efficiency))
}

// FanPower returns the shaft power of a fan that moves q against p: total
// pressure with total efficiency, or static with static, never mixed. In cfm
// and the conventional inch of water it is q·p/(6343·η) hp; the trade's 6356
// stands for water at 70 °F, 0.2 % apart. Errors: an input not above zero,
// efficiency above one.
//
// Method: air.power.fan.
func FanPower(q unit.Flow, p unit.Pressure, efficiency unit.Ratio) (unit.Power, error) {
	if err := limit.First(limit.Positive("q", q), limit.Positive("p", p), checkShare("efficiency", efficiency)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Power(float64(q) * float64(p) / float64(efficiency)))
}

// FanEfficiency returns a fan's efficiency from flow, pressure and shaft power;
// static or total as the pressure is. More than one means that an input is
// wrong. Errors: an input not above zero.
//
// Method: air.power.fan.
func FanEfficiency(q unit.Flow, p unit.Pressure, w unit.Power) (unit.Ratio, error) {
	if err := check3("q", float64(q), "p", float64(p), "w", float64(w)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(float64(q) / float64(w) * float64(p)))
}

// A DriveLoss is how much of its power a belt drive loses, by the class of the
// published curves.
type DriveLoss int

// Classes of belt drives.
const (
	LowLoss DriveLoss = iota
	MediumLoss
	HighLoss
)

// Coefficients of ln η over powers of ln(hp), fitted to the drive losses of AMCA
// 203 (1990): engineering reference of the US DOE's building-energy program,
// Table 68.
var driveLosses = [...][5]float64{
	LowLoss:    {-6.502e-2, 2.475e-2, -6.841e-3, 9.383e-4, -5.168e-5},
	MediumLoss: {-9.504e-2, 3.415e-2, -8.897e-3, 1.159e-3, -6.132e-5},
	HighLoss:   {-1.422e-1, 5.112e-2, -1.353e-2, 1.814e-3, -9.909e-5},
}

// BeltEfficiency returns a belt drive's efficiency at the fan shaft power it is
// sized for: 0.83 to 0.97 between 0.5 and 10 hp. Meant for 0.3 to 100 hp.
// Errors: power not above zero, no such class.
//
// Method: air.belt.efficiency.
func BeltEfficiency(power unit.Power, loss DriveLoss) (unit.Ratio, error) {
	if err := limit.Positive("power", power); err != nil {
		return 0, err
	}
	if loss < LowLoss || loss > HighLoss {
		return 0, limit.Break("loss", limit.NotTabulated)
	}
	c, x := &driveLosses[loss], math.Log(power.In(unit.Horsepower))
	return limit.Result(unit.Ratio(math.Exp(c[0] + x*(c[1]+x*(c[2]+x*(c[3]+x*c[4]))))))
}

// BeltPartLoad returns a V-belt drive's efficiency at a share of the torque it
// is sized for, as a share of its efficiency there: Table 69 of the same reference
// as [BeltEfficiency]'s. Errors: torque not above zero, or more than twice the
// size.
//
// Method: air.belt.partload.
func BeltPartLoad(torque unit.Ratio) (unit.Ratio, error) {
	if err := limit.Positive("torque", torque); err != nil {
		return 0, err
	}
	x := float64(torque)
	switch {
	case x > 2:
		return 0, limit.Break("torque", limit.OutOfRange)
	case x > 1:
		x = 1.037778*x/(0.010307+x) - 0.026815*x
	case x >= 0.167:
		x = 1.011965 - 0.339038*math.Exp(-3.43626*x)
	default:
		x = 0.920797*x/(0.026269+x) + 0.151594*x
	}
	return limit.Result(unit.Ratio(x))
}
