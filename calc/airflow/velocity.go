package airflow

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// VelocityPressure returns the pressure that air of density rho gains when its
// speed v is brought to rest, ρ·v²/2. In fpm and inches of water at 70 °F this
// is the trade's ρ·(v/1096.7)², and v = 4005·√VP in standard air; in the
// conventional inch it is 0.2 % less. Errors: an input not above zero.
//
// Method: air.velocity.pressure.
func VelocityPressure(v unit.Velocity, rho unit.Density) (unit.Pressure, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("rho", rho)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Pressure(float64(rho) / 2 * float64(v) * float64(v)))
}

// VelocityFromPressure returns the air speed of a velocity pressure, the inverse
// of [VelocityPressure]. Errors: an input not above zero.
//
// Method: air.velocity.pressure.
func VelocityFromPressure(p unit.Pressure, rho unit.Density) (unit.Velocity, error) {
	if err := limit.First(limit.Positive("p", p), limit.Positive("rho", rho)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Velocity(math.Sqrt(2 * float64(p) / float64(rho))))
}

// DuctVelocity returns the mean air speed in a rectangular duct. Errors: an
// input not above zero.
//
// Method: air.velocity.
func DuctVelocity(q unit.Flow, width, height unit.Length) (unit.Velocity, error) {
	if err := check3("q", float64(q), "width", float64(width), "height", float64(height)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Velocity(float64(q) / float64(width) / float64(height)))
}

// RoundDuctVelocity returns the mean air speed in a round duct. Errors: an input
// not above zero.
//
// Method: air.velocity.
func RoundDuctVelocity(q unit.Flow, diameter unit.Length) (unit.Velocity, error) {
	if err := limit.First(limit.Positive("q", q), limit.Positive("diameter", diameter)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Velocity(float64(q) / (math.Pi / 4) / float64(diameter) / float64(diameter)))
}

// TipSpeed returns the speed of a wheel's rim. The limit is the wheel's own
// greatest speed, which no formula gives. Errors: an input not above zero.
//
// Method: air.tip.
func TipSpeed(wheel unit.Length, n unit.Speed) (unit.Velocity, error) {
	if err := limit.First(limit.Positive("wheel", wheel), limit.Positive("n", n)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Velocity(math.Pi * float64(wheel) * float64(n) / 60))
}
