package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// A Device is a kind of short-circuit and ground-fault protection.
type Device string

// Devices that have standard ratings. Time-delay fuses are dual-element ones.
const (
	NontimeFuse        Device = "nontime-fuse"
	TimeDelayFuse      Device = "time-delay-fuse"
	InverseTimeBreaker Device = "inverse-time-breaker"
)

// Devices returns every device.
func Devices() []Device { return []Device{NontimeFuse, TimeDelayFuse, InverseTimeBreaker} }

func (d Device) check() error {
	switch d {
	case NontimeFuse, TimeDelayFuse, InverseTimeBreaker:
		return nil
	}
	return limit.Break("device", limit.NotTabulated)
}

// A MotorType is a row of Table 430.52(C)(1).
type MotorType string

// Motor types. A squirrel-cage motor of design B that is energy-efficient or
// premium is DesignBEfficient; others, single-phase ones apart, SquirrelCage.
const (
	SinglePhaseMotor MotorType = "single-phase"
	SquirrelCage     MotorType = "squirrel-cage"
	DesignBEfficient MotorType = "design-b-efficient"
	Synchronous      MotorType = "synchronous"
	WoundRotor       MotorType = "wound-rotor"
	DirectCurrent    MotorType = "dc"
)

type deviceRow struct {
	motor                                      MotorType
	nontime, timeDelay, instantaneous, inverse unit.Ratio
}

var deviceRows = table("device", "motor,nontime_fuse,time_delay_fuse,instantaneous,inverse_time", func(r *record) deviceRow {
	p := func(column string) unit.Ratio { return unit.Ratio(r.number(column)) * unit.Percent }
	return deviceRow{MotorType(r.text("motor")), p("nontime_fuse"), p("time_delay_fuse"), p("instantaneous"), p("inverse_time")}
})

func deviceOf(motor MotorType) (deviceRow, error) {
	for _, row := range deviceRows() {
		if row.motor == motor {
			return row, nil
		}
	}
	return deviceRow{}, limit.Break("motor", limit.NotTabulated)
}

// An Overcurrent is the arithmetic of a motor circuit's largest protective
// device. A rating of zero means that no standard one is small enough.
type Overcurrent struct {
	Edition  Edition
	Basis    Basis
	Percent  unit.Ratio // of table current
	Computed unit.Current
	Rating   unit.Current // the standard rating at or next above it
	Ceiling  unit.Ratio   // where that is too small for starting
	Greatest unit.Current // by the ceiling
	Last     unit.Current // the standard rating at or next below it
	Known    source.Known
}

// LargestOvercurrent returns the largest protective device of a single motor's
// circuit by its table current: the per cent of Table 430.52(C)(1), rounded up
// to a standard rating, and the ceiling that a motor which will not start leads
// to, rounded down. Conductor size sets no lower limit here (240.4(G)). Errors:
// current not above zero; no such device, motor or edition; beyond the largest
// standard rating.
//
// Method: raceway.overcurrent.
func LargestOvercurrent(current unit.Current, device Device, motor MotorType, edition Edition) (Overcurrent, error) {
	if err := limit.First(limit.Positive("current", current), device.check(), edition.check()); err != nil {
		return Overcurrent{}, err
	}
	row, err := deviceOf(motor)
	if err != nil {
		return Overcurrent{}, err
	}
	o := Overcurrent{Edition: edition, Basis: FromTable, Known: source.LookedUp}
	switch device { // ceilings: 430.52(C)(1)(b)
	case NontimeFuse:
		o.Percent, o.Ceiling = row.nontime, 4.00
	case TimeDelayFuse:
		o.Percent, o.Ceiling = row.timeDelay, 2.25
	default:
		o.Percent, o.Ceiling = row.inverse, 4.00
		if current > 100*unit.Ampere {
			o.Ceiling = 3.00
		}
	}
	o.Computed, o.Greatest = current*unit.Current(o.Percent), current*unit.Current(o.Ceiling)
	if o.Rating, err = next(o.Computed, device, edition); err != nil {
		return Overcurrent{}, err
	}
	o.Last = below(o.Greatest, device, edition)
	if device == NontimeFuse && o.Last > 600*unit.Ampere { // that ceiling is for fuses up to 600 A
		o.Last = 600 * unit.Ampere
	}
	if edition == Edition2017 {
		o.Known = source.Memory // its list of ratings
	}
	return o, nil
}

// OvercurrentFromPlate returns the largest device of a fan whose plate gives a
// maximum for it: the standard rating at or next below that figure. Errors:
// most not above zero; no such device or edition; below the smallest rating.
//
// Method: raceway.overcurrent.plate.
func OvercurrentFromPlate(most unit.Current, device Device, edition Edition) (Overcurrent, error) {
	if err := limit.First(limit.Positive("most", most), device.check(), edition.check()); err != nil {
		return Overcurrent{}, err
	}
	rating := below(most, device, edition)
	if rating == 0 {
		return Overcurrent{}, limit.Break("most", NoSizeFits)
	}
	return Overcurrent{Edition: edition, Basis: FromPlate, Computed: most, Rating: rating, Greatest: most, Last: rating, Known: source.Memory}, nil
}

// InstantaneousTrip returns the greatest setting of an instantaneous-trip
// breaker, which is part of a listed combination controller alone: the per cent
// of Table 430.52(C)(1), unrounded. Errors: current not above zero; no such
// motor.
//
// Method: raceway.overcurrent.
func InstantaneousTrip(current unit.Current, motor MotorType) (unit.Current, error) {
	if err := limit.Positive("current", current); err != nil {
		return 0, err
	}
	row, err := deviceOf(motor)
	if err != nil {
		return 0, err
	}
	return limit.Result(current * unit.Current(row.instantaneous))
}
