package drive

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// BeltSpeedLimit is the greatest belt speed for cast-iron sheaves of ordinary
// balance (memory).
//
// Method: belt.speed.limit.
const BeltSpeedLimit unit.Velocity = 6500 * unit.FootPerMinute

// Least sheaves for classical belts on four-pole motors, by power: NEMA MG 1,
// 14.42 (memory). Fractional powers and other poles are not in these rows.
var leastMotorSheaves = [...]struct {
	through unit.Power
	pitch   unit.Length
}{
	{1 * unit.Horsepower, 2.2 * in},
	{3 * unit.Horsepower, 2.4 * in},
	{7.5 * unit.Horsepower, 3.0 * in},
	{10 * unit.Horsepower, 3.8 * in},
	{15 * unit.Horsepower, 4.4 * in},
}

// MinimumMotorSheave returns the least pitch diameter recommended for the sheave
// on a motor of the given plate power, so that belt pull does not overload its
// shaft and bearing. Between two tabulated powers it is the larger's. False for
// what the rows don't cover: under 1 hp, over 15 hp, other than 4 poles. Errors:
// power not above zero.
//
// Method: drive.motorsheave.
func MinimumMotorSheave(power unit.Power, poles int) (pitch unit.Length, ok bool, err error) {
	if err := limit.Positive("power", power); err != nil {
		return 0, false, err
	}
	const slack = 1e-9
	if poles != 4 || power < unit.Horsepower*(1-slack) {
		return 0, false, nil
	}
	for _, row := range leastMotorSheaves {
		if power <= row.through*(1+slack) {
			return row.pitch, true, nil
		}
	}
	return 0, false, nil
}
