package drive

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Count returns the fan's speed as a share of the motor's, from both shafts
// turned by hand, and the band to either side of it. The fan's turns are taken
// as exact, for the count stops on its mark; the motor's are read to
// ± readingError. Twenty fan turns and a quarter turn of reading give about
// 0.5 %. Errors: a count not above zero, readingError below zero, or as large
// as the count itself.
//
// Method: drive.count.
func Count(fanTurns, motorTurns, readingError unit.Turns) (ratio, band unit.Ratio, err error) {
	if err := limit.First(
		limit.Positive("fanTurns", fanTurns),
		limit.Positive("motorTurns", motorTurns),
		limit.NonNegative("readingError", readingError),
	); err != nil {
		return 0, 0, err
	}
	if readingError >= motorTurns {
		return 0, 0, limit.Break("motorTurns", limit.TooFewTurns)
	}
	ratio, err = limit.Result(unit.Ratio(fanTurns / motorTurns))
	if err != nil {
		return 0, 0, err
	}
	// The larger side: fan/(motor − e) − fan/motor.
	band, err = limit.Result(ratio * unit.Ratio(readingError/(motorTurns-readingError)))
	if err != nil {
		return 0, 0, err
	}
	return ratio, band, nil
}

// Creep returns the share by which a measured speed stays behind the one
// expected of the sheaves. It is slip and creep of the belt only where the
// expected speed comes from stamped diameters or a counted ratio; otherwise it
// also holds the error of the diameters. Negative: faster than a belt can drive
// it, so a diameter is wrong. Errors: a speed not above zero.
//
// Method: drive.creep.
func Creep(expected, measured unit.Speed) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("expected", expected), limit.Positive("measured", measured)); err != nil {
		return 0, err
	}
	return limit.Result(1 - unit.Ratio(measured/expected))
}

// pulledOut is the slip at which a motor gives no more torque, in slips of its plate: six
// for a breakdown torque three times the plate's, by s/s₀ = k + √(k² − 1) (from memory;
// NEMA MG 1 asks for no more of such motors).
const pulledOut = 6

// fieldOff is how far a tachometer and a plate may be off at a motor's field (common
// practice).
const fieldOff = 0.02

// MotorReading tells whether an induction motor can turn at a measured speed: not above
// its field, nor behind it by more than its breakdown torque allows. field is its field's
// speed as it is fed and slip what its plate has. Errors: a speed not above zero, slip
// not below the field.
//
// Method: drive.motor.reading.
func MotorReading(field, slip, measured unit.Speed) (bool, error) {
	if err := limit.First(limit.Positive("field", field), limit.Positive("slip", slip), limit.Positive("measured", measured)); err != nil {
		return false, err
	}
	if slip >= field {
		return false, limit.Break("slip", limit.OutOfRange)
	}
	return measured <= field*(1+fieldOff) && field-measured <= pulledOut*slip, nil
}

// A Multiple says whether a tachometer read another count than turns.
type Multiple int

// What a reading may be.
const (
	Plain Multiple = iota // near neither twice nor half
	Twice                 // two marks seen in a turn
	Half                  // every other mark missed
)

// harmonicBand is how near twice or half counts as such (common practice).
const harmonicBand = 0.10

// Of a two-speed motor's high speed, the low one is half with one winding, of poles
// twice as many, and two thirds with two windings, of four and six poles.
var lowShares = [...]float64{1. / 2, 2. / 3}

// LowSpeed tells whether a measured fan speed is one of a two-speed motor's low speed,
// where expected is the fan's at its high one: within 10 % of half of it or of two
// thirds. Errors: a speed not above zero.
//
// Method: drive.twospeed.
func LowSpeed(expected, measured unit.Speed) (bool, error) {
	if err := limit.First(limit.Positive("expected", expected), limit.Positive("measured", measured)); err != nil {
		return false, err
	}
	for _, share := range lowShares {
		if math.Abs(float64(measured/expected)-share) <= share*harmonicBand {
			return true, nil
		}
	}
	return false, nil
}

// Harmonic tells whether a measured speed lies within 10 % of twice or half the
// expected one. Errors: a speed not above zero.
//
// Method: drive.harmonic.
func Harmonic(expected, measured unit.Speed) (Multiple, error) {
	if err := limit.First(limit.Positive("expected", expected), limit.Positive("measured", measured)); err != nil {
		return Plain, err
	}
	r := float64(measured / expected)
	switch {
	case math.Abs(r-2) <= 2*harmonicBand:
		return Twice, nil
	case math.Abs(r-0.5) <= 0.5*harmonicBand:
		return Half, nil
	}
	return Plain, nil
}
