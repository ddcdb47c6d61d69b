package drive

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// OnDrive returns the speed of a motor that turns a fan from a variable
// frequency drive at frequency f, fully loaded at its plate speed on the
// plate's frequency. Slip in rpm follows torque, and a fan's torque follows the
// square of speed, so that n = ns − slip·(n/plate)², solved for n.
// [OnDriveConstantSlip] and [OnDriveProportional] both read low: for 1750 rpm at
// 60 Hz, run at 45 Hz, by 1.6 and 0.7 %.
//
// Holds while voltage follows frequency: f up to plateFrequency. Errors: an
// input not above zero, poles not even, plate above its synchronous speed.
//
// Method: drive.vfd.
func OnDrive(plate unit.Speed, plateFrequency, f unit.Frequency, poles int) (unit.Speed, error) {
	ns, slip, err := onDrive(plate, plateFrequency, f, poles)
	if err != nil {
		return 0, err
	}
	// k·n² + n − ns = 0 with k = slip/plate²; this form of the root does not
	// cancel as k goes to zero.
	k := float64(slip/plate) / float64(plate)
	return limit.Result(unit.Speed(2 * float64(ns) / (1 + math.Sqrt(1+4*k*float64(ns)))))
}

// FrequencyFor returns the frequency at which [OnDrive] gives a speed. Errors:
// an input not above zero, poles not even, plate above its synchronous speed.
//
// Method: drive.vfd.
func FrequencyFor(plate unit.Speed, plateFrequency unit.Frequency, speed unit.Speed, poles int) (unit.Frequency, error) {
	if err := limit.Positive("speed", speed); err != nil {
		return 0, err
	}
	_, slip, err := onDrive(plate, plateFrequency, plateFrequency, poles)
	if err != nil {
		return 0, err
	}
	r := float64(speed / plate)
	ns := float64(speed) + float64(slip)*r*r
	return limit.Result(unit.Frequency(ns * float64(poles) / 120))
}

// OnDriveConstantSlip returns the speed if the plate's slip in rpm were kept at
// every frequency: right for a load of constant torque, low for a fan. For
// comparison with [OnDrive]. Errors: as OnDrive; no speed left below the slip.
//
// Method: drive.vfd.slip.
func OnDriveConstantSlip(plate unit.Speed, plateFrequency, f unit.Frequency, poles int) (unit.Speed, error) {
	ns, slip, err := onDrive(plate, plateFrequency, f, poles)
	if err != nil {
		return 0, err
	}
	if ns <= slip {
		return 0, limit.Break("f", limit.Stalled)
	}
	return limit.Result(ns - slip)
}

// OnDriveProportional returns the speed if it simply followed frequency. It
// neglects that slip shrinks with the fan's torque. For comparison with
// [OnDrive]. Errors: as OnDrive.
//
// Method: drive.vfd.proportion.
func OnDriveProportional(plate unit.Speed, plateFrequency, f unit.Frequency, poles int) (unit.Speed, error) {
	if _, _, err := onDrive(plate, plateFrequency, f, poles); err != nil {
		return 0, err
	}
	return limit.Result(plate * unit.Speed(f/plateFrequency))
}

// onDrive returns the synchronous speed at f and the plate's slip in rpm.
func onDrive(plate unit.Speed, plateFrequency, f unit.Frequency, poles int) (ns, slip unit.Speed, err error) {
	if err := limit.First(limit.Positive("plateFrequency", plateFrequency), limit.Positive("f", f), checkPoles(poles)); err != nil {
		return 0, 0, err
	}
	sync, err := SynchronousSpeed(plateFrequency, poles)
	if err != nil {
		return 0, 0, err
	}
	if err := limit.Positive("plate", plate); err != nil {
		return 0, 0, err
	}
	if plate > sync {
		return 0, 0, limit.Break("plate", limit.AboveSynchronous)
	}
	ns, err = SynchronousSpeed(f, poles)
	return ns, sync - plate, err
}
