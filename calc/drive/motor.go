package drive

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// PlateSlipTolerance is how far a motor's slip may differ from its plate's, as
// a share of the slip: NEMA MG 1, 12.46, as cited in print.
const PlateSlipTolerance unit.Ratio = 0.20

// The bounds within which [Poles] believes a plate. No usual fan motor has more
// poles or slips further (common practice): what lies outside is misread.
const (
	mostPoles = 16
	mostSlip  = 0.20
)

// SynchronousSpeed returns the speed of the field of a motor with the given
// poles per phase (2, 4, 6 …) on frequency f. Errors: f not above zero, poles
// odd or below 2.
//
// Method: drive.sync.
func SynchronousSpeed(f unit.Frequency, poles int) (unit.Speed, error) {
	if err := limit.First(limit.Positive("f", f), checkPoles(poles)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Speed(120 * float64(f) / float64(poles)))
}

func checkPoles(poles int) error {
	if poles < 2 {
		return limit.Break("poles", limit.NotPositive)
	}
	if poles%2 != 0 {
		return limit.Break("poles", limit.OddPoles)
	}
	return nil
}

// Poles returns the poles per phase of an induction motor whose plate gives the
// speed n at frequency f: those of the lowest field speed not below n. Errors:
// an input not above zero; n above the field of two poles; a plate that no
// usual motor has, more than 16 poles or over 20 % slip.
//
// Method: drive.poles.
func Poles(f unit.Frequency, n unit.Speed) (int, error) {
	if err := limit.First(limit.Positive("f", f), limit.Positive("n", n)); err != nil {
		return 0, err
	}
	const slack = 1e-9 // 60·50/1000 must count as 3 however it rounds
	pairs := math.Floor(60 * float64(f) / float64(n) * (1 + slack))
	switch {
	case pairs < 1:
		return 0, limit.Break("n", limit.AboveSynchronous)
	case !(pairs <= mostPoles/2):
		return 0, limit.Break("n", limit.SlipTooLarge)
	case float64(n) < (1-mostSlip)*60*float64(f)/pairs:
		return 0, limit.Break("n", limit.SlipTooLarge)
	}
	return 2 * int(pairs), nil
}

// Slip returns how far n stays behind the synchronous speed, as a share of the
// synchronous speed. Errors: an input not above zero; n above sync.
//
// Method: drive.slip.
func Slip(sync, n unit.Speed) (unit.Ratio, error) {
	if err := checkPlate(sync, "n", n); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio((sync - n) / sync))
}

// SpeedAtSlip returns the speed of a motor that stays the share slip behind its
// synchronous speed, 0 ≤ slip < 1. Errors: sync not above zero, slip outside its
// range.
//
// Method: drive.slip.
func SpeedAtSlip(sync unit.Speed, slip unit.Ratio) (unit.Speed, error) {
	if err := limit.First(limit.Positive("sync", sync), limit.NonNegative("slip", slip)); err != nil {
		return 0, err
	}
	if slip >= 1 {
		return 0, limit.Break("slip", limit.Stalled)
	}
	return limit.Result(sync * unit.Speed(1-slip))
}

// SpeedUnderLoad returns the speed of an induction motor that carries the share
// load of its plate power: slip in proportion to load, from synchronous speed
// at none to the plate's speed at full. Good to the plate's own slip,
// ± [PlateSlipTolerance]; a tachometer is better. Errors: a speed not above
// zero, plate above sync, load below zero or so large that no speed is left.
//
// Method: drive.load.
func SpeedUnderLoad(sync, plate unit.Speed, load unit.Ratio) (unit.Speed, error) {
	if err := limit.First(checkPlate(sync, "plate", plate), limit.NonNegative("load", load)); err != nil {
		return 0, err
	}
	n := sync - (sync-plate)*unit.Speed(load)
	if n <= 0 {
		return 0, limit.Break("load", limit.Stalled)
	}
	return limit.Result(n)
}

// PlateBand returns the slowest and the fastest full-load speed that a motor
// with this plate may have: its slip ± [PlateSlipTolerance]. Errors: a speed not
// above zero, plate above sync.
//
// Method: drive.load.
func PlateBand(sync, plate unit.Speed) (slowest, fastest unit.Speed, err error) {
	if err := checkPlate(sync, "plate", plate); err != nil {
		return 0, 0, err
	}
	slip := sync - plate
	slowest = sync - slip*unit.Speed(1+PlateSlipTolerance)
	if slowest <= 0 {
		return 0, 0, limit.Break("plate", limit.SlipTooLarge)
	}
	return slowest, sync - slip*unit.Speed(1-PlateSlipTolerance), nil
}

func checkPlate(sync unit.Speed, name string, n unit.Speed) error {
	if err := limit.First(limit.Positive("sync", sync), limit.Positive(name, n)); err != nil {
		return err
	}
	if n > sync {
		return limit.Break(name, limit.AboveSynchronous)
	}
	return nil
}
