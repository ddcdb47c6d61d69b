// Package airflow holds the formulas of a fan's air: density, fan laws, the
// motor's load, air speeds and kitchen-exhaust rates.
//
// Terms. Flow is the volume that passes, at the density it has there. Pressure
// is the fan's static or total pressure, gauge; which one must be the same on
// both sides of a formula. Power is at the fan's shaft unless said otherwise.
// Standard air weighs 0.075 lb/ft³. A point is where a fan and its system meet:
// fan laws move a point along a system whose resistance goes with the square of
// flow, for the same wheel and no change of dampers or filters.
// Plate values are those stamped on the motor: full-load current FLA, volts,
// power. No-load current is taken with the belt off.
package airflow

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Point is an operating point of a fan.
type Point struct {
	Speed    unit.Speed
	Flow     unit.Flow
	Pressure unit.Pressure
	Power    unit.Power
	Density  unit.Density
}

func (p Point) check() error {
	return limit.First(
		limit.Positive("Speed", p.Speed),
		limit.NonNegative("Flow", p.Flow),
		limit.NonNegative("Pressure", p.Pressure),
		limit.NonNegative("Power", p.Power),
		limit.Positive("Density", p.Density),
	)
}

// AtSpeed returns p moved to speed n and density rho on the same fan and
// system: flow with speed, pressure with its square and power with its cube,
// both with density. Errors: a speed or density not above zero, another value
// below zero; fields of p go by their own names.
//
// Method: air.laws.
func AtSpeed(p Point, n unit.Speed, rho unit.Density) (Point, error) {
	return AtWheel(p, 1, 1, n, rho)
}

// AtWheel returns p carried over to a fan of the same design and another wheel
// diameter, from wheel to other, at speed n and density rho: flow with the
// cube of the diameter, pressure with its square, power with its fifth power.
// Errors: as [AtSpeed]; a diameter not above zero.
//
// Method: air.laws.size.
func AtWheel(p Point, wheel, other unit.Length, n unit.Speed, rho unit.Density) (Point, error) {
	if err := limit.First(p.check(), limit.Positive("wheel", wheel), limit.Positive("other", other),
		limit.Positive("n", n), limit.Positive("rho", rho)); err != nil {
		return Point{}, err
	}
	r, k, s := float64(n/p.Speed), float64(rho/p.Density), float64(other/wheel)
	flow, err1 := limit.Result(p.Flow * unit.Flow(r*s*s*s))
	pressure, err2 := limit.Result(p.Pressure * unit.Pressure(k*r*r*s*s))
	power, err3 := limit.Result(p.Power * unit.Power(k*r*r*r*s*s*s*s*s))
	if err := limit.First(err1, err2, err3); err != nil {
		return Point{}, err
	}
	return Point{n, flow, pressure, power, rho}, nil
}

// FlowAtSpeed returns the flow at n2 of a fan that moves q1 at n1. Errors: an
// input not above zero.
//
// Method: air.laws.
func FlowAtSpeed(q1 unit.Flow, n1, n2 unit.Speed) (unit.Flow, error) {
	if err := check3("q1", float64(q1), "n1", float64(n1), "n2", float64(n2)); err != nil {
		return 0, err
	}
	return limit.Result(q1 * unit.Flow(n2/n1))
}

// PressureAtSpeed returns the pressure at n2 and density rho2 of a fan that
// gives p1 at n1 and rho1. Errors: an input not above zero.
//
// Method: air.laws.
func PressureAtSpeed(p1 unit.Pressure, n1, n2 unit.Speed, rho1, rho2 unit.Density) (unit.Pressure, error) {
	if err := limit.First(check3("p1", float64(p1), "n1", float64(n1), "n2", float64(n2)), checkDensities(rho1, rho2)); err != nil {
		return 0, err
	}
	r := float64(n2 / n1)
	return limit.Result(p1 * unit.Pressure(r*r*float64(rho2/rho1)))
}

// PowerAtSpeed returns the shaft power at n2 and density rho2 of a fan that
// takes w1 at n1 and rho1. It is power that goes with the cube, never amps.
// Errors: an input not above zero.
//
// Method: air.laws.
func PowerAtSpeed(w1 unit.Power, n1, n2 unit.Speed, rho1, rho2 unit.Density) (unit.Power, error) {
	if err := limit.First(check3("w1", float64(w1), "n1", float64(n1), "n2", float64(n2)), checkDensities(rho1, rho2)); err != nil {
		return 0, err
	}
	r := float64(n2 / n1)
	return limit.Result(w1 * unit.Power(r*r*r*float64(rho2/rho1)))
}

// SpeedForFlow returns the speed at which a fan that moves q1 at n1 moves q2.
// Errors: an input not above zero.
//
// Method: air.laws.
func SpeedForFlow(n1 unit.Speed, q1, q2 unit.Flow) (unit.Speed, error) {
	if err := check3("n1", float64(n1), "q1", float64(q1), "q2", float64(q2)); err != nil {
		return 0, err
	}
	return limit.Result(n1 * unit.Speed(q2/q1))
}

// SpeedForPressure returns the speed at which a fan that gives p1 at n1 and
// rho1 gives p2 at rho2. Errors: an input not above zero.
//
// Method: air.laws.
func SpeedForPressure(n1 unit.Speed, p1, p2 unit.Pressure, rho1, rho2 unit.Density) (unit.Speed, error) {
	if err := limit.First(check3("n1", float64(n1), "p1", float64(p1), "p2", float64(p2)), checkDensities(rho1, rho2)); err != nil {
		return 0, err
	}
	return limit.Result(n1 * unit.Speed(math.Sqrt(float64(p2/p1)*float64(rho1/rho2))))
}

// SpeedForPower returns the speed at which a fan that takes w1 at n1 and rho1
// takes w2 at rho2. Errors: an input not above zero.
//
// Method: air.laws.
func SpeedForPower(n1 unit.Speed, w1, w2 unit.Power, rho1, rho2 unit.Density) (unit.Speed, error) {
	if err := limit.First(check3("n1", float64(n1), "w1", float64(w1), "w2", float64(w2)), checkDensities(rho1, rho2)); err != nil {
		return 0, err
	}
	return limit.Result(n1 * unit.Speed(math.Cbrt(float64(w2/w1)*float64(rho1/rho2))))
}

// MaxSpeedForPower returns the speed at which a fan that takes power at n takes
// all of most, in the same air. Errors: an input not above zero.
//
// Method: air.laws.
func MaxSpeedForPower(n unit.Speed, power, most unit.Power) (unit.Speed, error) {
	if err := check3("n", float64(n), "power", float64(power), "most", float64(most)); err != nil {
		return 0, err
	}
	return limit.Result(n * unit.Speed(math.Cbrt(float64(most/power))))
}

// SystemPressure returns the pressure a fixed system takes at flow q2 when it
// takes p1 at q1, in the same air. It holds while no damper, filter or hood is
// changed. Errors: an input not above zero.
//
// Method: air.system.
func SystemPressure(p1 unit.Pressure, q1, q2 unit.Flow) (unit.Pressure, error) {
	if err := check3("p1", float64(p1), "q1", float64(q1), "q2", float64(q2)); err != nil {
		return 0, err
	}
	r := float64(q2 / q1)
	return limit.Result(p1 * unit.Pressure(r*r))
}

func checkDensities(rho1, rho2 unit.Density) error {
	return limit.First(limit.Positive("rho1", rho1), limit.Positive("rho2", rho2))
}

func check3(a string, x float64, b string, y float64, c string, z float64) error {
	return limit.First(limit.Positive(a, x), limit.Positive(b, y), limit.Positive(c, z))
}
