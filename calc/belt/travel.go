package belt

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// BaseTravel returns how far the motor must move to keep a belt as tight when
// the driver's pitch diameter goes from before to after: the exact center for
// each, after less before. Positive is away from the fan, as when an adjustable
// sheave is opened. Errors: as [CenterFromLength], with before and after in
// place of driver.
//
// Method: belt.travel.
func BaseTravel(before, after, driven, pitchLength unit.Length) (unit.Length, error) {
	if err := limit.First(limit.Positive("before", before), limit.Positive("after", after)); err != nil {
		return 0, err
	}
	from, err := CenterFromLength(before, driven, pitchLength)
	if err != nil {
		return 0, err
	}
	to, err := CenterFromLength(after, driven, pitchLength)
	if err != nil {
		return 0, err
	}
	return limit.Result(to - from)
}

// BaseTravelByRule returns the shop's short form of [BaseTravel], π/4 of the
// change in diameter: exact for equal sheaves, some 12 % high on a usual fan
// drive. For comparison. Errors: a diameter not above zero.
//
// Method: belt.travel.short.
func BaseTravelByRule(before, after unit.Length) (unit.Length, error) {
	if err := limit.First(limit.Positive("before", before), limit.Positive("after", after)); err != nil {
		return 0, err
	}
	return limit.Result(math.Pi / 4 * (before - after))
}
