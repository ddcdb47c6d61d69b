// Package drive holds the formulas of a belt drive's speed: motor, sheaves,
// adjustable sheaves and readings.
//
// Terms. The driver is the motor's sheave, the driven is the fan's. Pitch
// diameter is where the belt's cord runs and is what sets the ratio; outside
// diameter is what a tape or caliper finds; datum diameter is the classical
// standard's reference, equal to pitch diameter in a standard groove. An
// adjustable sheave has one flange on a thread: turns are counted open from
// fully closed. Lead is the flange's travel in one turn. Groove angle is the
// full angle between the flanks. Synchronous speed is that of the motor's
// field; slip is how far the rotor stays behind it.
//
// Parameters named driver, driven and pitch are pitch diameters; outside is
// an outside diameter. Speeds are positive: no speed stands for "not known".
package drive

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Driven returns the speed of the driven sheave when the driver turns at n and
// the belt does not slip. Errors: any input not above zero.
//
// Method: drive.speed.
func Driven(n unit.Speed, driver, driven unit.Length) (unit.Speed, error) {
	if err := check3("n", float64(n), "driver", float64(driver), "driven", float64(driven)); err != nil {
		return 0, err
	}
	return limit.Result(n * unit.Speed(driver/driven))
}

// DrivenWithSlip returns the speed of the driven sheave when the belt loses the
// share slip of its travel, 0 ≤ slip < 1. A sound belt loses 0.01 to 0.02 in
// print, from 0.005 in practice (memory), slip and creep together. Errors: as [Driven]; slip outside its range.
//
// Method: drive.speed.slip.
func DrivenWithSlip(n unit.Speed, driver, driven unit.Length, slip unit.Ratio) (unit.Speed, error) {
	if err := limit.NonNegative("slip", slip); err != nil {
		return 0, err
	}
	if slip >= 1 {
		return 0, limit.Break("slip", limit.OutOfRange)
	}
	v, err := Driven(n, driver, driven)
	if err != nil {
		return 0, err
	}
	return limit.Result(v * unit.Speed(1-slip))
}

// DriverSheave returns the pitch diameter of the driver that turns the driven
// sheave at target when the motor turns at n. Errors: any input not above zero.
//
// Method: drive.speed.
func DriverSheave(n, target unit.Speed, driven unit.Length) (unit.Length, error) {
	if err := check3("n", float64(n), "target", float64(target), "driven", float64(driven)); err != nil {
		return 0, err
	}
	return limit.Result(driven * unit.Length(target/n))
}

// DrivenSheave returns the pitch diameter of the driven sheave that turns at
// target when a motor at n drives it from driver. Errors: any input not above
// zero.
//
// Method: drive.speed.
func DrivenSheave(n, target unit.Speed, driver unit.Length) (unit.Length, error) {
	if err := check3("n", float64(n), "target", float64(target), "driver", float64(driver)); err != nil {
		return 0, err
	}
	return limit.Result(driver * unit.Length(n/target))
}

// MotorSpeedFor returns the motor speed at which the driven sheave turns at
// target. Errors: any input not above zero.
//
// Method: drive.speed.
func MotorSpeedFor(target unit.Speed, driver, driven unit.Length) (unit.Speed, error) {
	if err := check3("target", float64(target), "driver", float64(driver), "driven", float64(driven)); err != nil {
		return 0, err
	}
	return limit.Result(target * unit.Speed(driven/driver))
}

// Ratio returns the driven sheave's speed as a share of the motor's: below one
// for a drive that slows down. Errors: a diameter not above zero.
//
// Method: drive.speed.
func Ratio(driver, driven unit.Length) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("driver", driver), limit.Positive("driven", driven)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(driver / driven))
}

// SheaveForFlow returns the driver's pitch diameter for the airflow wanted when
// driver gave the airflow now: same fan, same system, airflow in proportion to
// speed. Errors: any input not above zero.
//
// Method: drive.flow.
func SheaveForFlow(driver unit.Length, now, wanted unit.Flow) (unit.Length, error) {
	if err := check3("driver", float64(driver), "now", float64(now), "wanted", float64(wanted)); err != nil {
		return 0, err
	}
	return limit.Result(driver * unit.Length(wanted/now))
}

// BeltSpeed returns the linear speed of a belt on a sheave of the given pitch
// diameter turning at n. Errors: any input not above zero.
//
// Method: belt.speed.
func BeltSpeed(n unit.Speed, pitch unit.Length) (unit.Velocity, error) {
	if err := limit.First(limit.Positive("n", n), limit.Positive("pitch", pitch)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Velocity(math.Pi * float64(pitch) * float64(n) / 60))
}

// PitchAtBeltSpeed returns the pitch diameter at which a sheave turning at n
// gives the belt speed v. Errors: any input not above zero.
//
// Method: belt.speed.
func PitchAtBeltSpeed(v unit.Velocity, n unit.Speed) (unit.Length, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("n", n)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Length(60 * float64(v) / (math.Pi * float64(n))))
}

func check3(a string, x float64, b string, y float64, c string, z float64) error {
	return limit.First(limit.Positive(a, x), limit.Positive(b, y), limit.Positive(c, z))
}
