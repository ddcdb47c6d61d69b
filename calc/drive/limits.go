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

// A motorSheave is the least sheave of motors through a power: the pitch diameter for
// classical belts, the outside diameter for narrow ones.
type motorSheave struct {
	through           unit.Power
	classical, narrow unit.Length
}

const hp = unit.Horsepower

// Least sheaves on motors by power, a list for each count of poles: NEMA MG 1, 14.42,
// Table 14-1, as three data sheets quote it alike. least is where a list begins:
// smaller motors are not in the table.
var motorSheaves = map[int]struct {
	least unit.Power
	rows  []motorSheave
}{
	2: {1.5 * hp, []motorSheave{{1.5 * hp, 2.2 * in, 2.2 * in}, {3 * hp, 2.4 * in, 2.4 * in}, {5 * hp, 2.6 * in, 2.4 * in}, {10 * hp, 3.0 * in, 3.0 * in}, {15 * hp, 3.8 * in, 3.8 * in}}},
	4: {1 * hp, []motorSheave{{1 * hp, 2.2 * in, 2.2 * in}, {3 * hp, 2.4 * in, 2.4 * in}, {7.5 * hp, 3.0 * in, 3.0 * in}, {10 * hp, 3.8 * in, 3.8 * in}, {15 * hp, 4.4 * in, 4.4 * in}}},
	6: {0.75 * hp, []motorSheave{{0.75 * hp, 2.2 * in, 2.2 * in}, {2 * hp, 2.4 * in, 2.4 * in}, {5 * hp, 3.0 * in, 3.0 * in}, {7.5 * hp, 3.8 * in, 3.8 * in}, {10 * hp, 4.4 * in, 4.4 * in}, {15 * hp, 4.6 * in, 4.4 * in}}},
	8: {0.5 * hp, []motorSheave{{0.5 * hp, 2.2 * in, 2.2 * in}, {1.5 * hp, 2.4 * in, 2.4 * in}, {3 * hp, 3.0 * in, 3.0 * in}, {5 * hp, 3.8 * in, 3.8 * in}, {7.5 * hp, 4.4 * in, 4.4 * in}, {10 * hp, 4.6 * in, 4.4 * in}, {15 * hp, 5.4 * in, 5.2 * in}}},
}

// MinimumMotorSheave returns the least pitch diameter recommended for the sheave of
// classical belts on a motor of the given plate power, so that belt pull does not
// overload its shaft and bearing. Between two tabulated powers it is the larger's.
// False for what the rows don't cover: motors smaller than the table's smallest of
// their poles (1 hp of 4), over 15 hp, other than 2 to 8 poles. Errors: power not
// above zero.
//
// Method: drive.motorsheave.
func MinimumMotorSheave(power unit.Power, poles int) (pitch unit.Length, ok bool, err error) {
	row, ok, err := motorSheaveOf(power, poles)
	return row.classical, ok, err
}

// MinimumMotorOutside is [MinimumMotorSheave] for narrow belts: the least outside
// diameter of the sheave.
//
// Method: drive.motorsheave.
func MinimumMotorOutside(power unit.Power, poles int) (outside unit.Length, ok bool, err error) {
	row, ok, err := motorSheaveOf(power, poles)
	return row.narrow, ok, err
}

func motorSheaveOf(power unit.Power, poles int) (motorSheave, bool, error) {
	if err := limit.Positive("power", power); err != nil {
		return motorSheave{}, false, err
	}
	const slack = 1e-9
	list := motorSheaves[poles]
	if power < list.least*(1-slack) {
		return motorSheave{}, false, nil
	}
	for _, row := range list.rows {
		if power <= row.through*(1+slack) {
			return row, true, nil
		}
	}
	return motorSheave{}, false, nil
}
