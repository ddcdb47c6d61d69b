package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

type motorRow struct {
	power  unit.Power
	label  string
	values [6]unit.Current // by rated volts; zero where the table is empty
}

func motorTable(name, columns string, volts ...string) func() []motorRow {
	return table(name, columns, func(r *record) motorRow {
		m := motorRow{power: unit.Power(r.number("hp")) * unit.Horsepower, label: r.text("label")}
		for i, v := range volts {
			m.values[i] = unit.Current(r.optional(v))
		}
		return m
	})
}

var (
	singles = motorTable("current1", "hp,label,v115,v200,v208,v230", "v115", "v200", "v208", "v230")
	threes  = motorTable("current3", "hp,label,v115,v200,v208,v230,v460,v575", "v115", "v200", "v208", "v230", "v460", "v575")
)

// ratings are the columns of the motor tables and the system voltages that each
// is good for.
var ratings = [...]struct{ least, most unit.Voltage }{{110, 120}, {200, 200}, {208, 208}, {220, 240}, {440, 480}, {550, 600}}

// TableCurrent returns a motor's full-load current by Table 430.248 or 430.250,
// which conductors, disconnects and short-circuit protection are sized by;
// overload protection goes by the plate (430.6(A)). Not for motors under 1200
// rpm, of high torque or of several speeds. Power is the plate's and must be a
// row within 2 %, as plates round; volts may be the plate's or the system's.
// Errors: an input not above zero or not tabulated; no such supply.
//
// Method: raceway.motor.current.
func TableCurrent(phases Phases, power unit.Power, volts unit.Voltage) (unit.Current, error) {
	if err := limit.First(limit.Positive("power", power), limit.Positive("volts", volts)); err != nil {
		return 0, err
	}
	rows := threes
	switch phases {
	case ThreePhase:
	case SinglePhase:
		rows = singles
	default:
		return 0, limit.Break("phases", limit.NotTabulated)
	}
	for _, row := range rows() {
		const naming = 0.02 // 3.7 kW and 0.33 hp name rows of 5 and 1/3 hp
		if math.Abs(float64(power-row.power)) > naming*float64(row.power) {
			continue
		}
		for i, v := range ratings {
			if volts >= v.least*(1-slack) && volts <= v.most*(1+slack) && row.values[i] != 0 {
				return row.values[i], nil
			}
		}
		return 0, limit.Break("volts", limit.NotTabulated)
	}
	return 0, limit.Break("power", limit.NotTabulated)
}

// MotorWires returns how many conductors carry the current of a motor of one
// speed: two, or three from three phases. Errors: no such supply.
//
// Method: raceway.motor.wires.
func MotorWires(phases Phases) (int, error) {
	switch phases {
	case SinglePhase:
		return 2, nil
	case ThreePhase:
		return 3, nil
	}
	return 0, limit.Break("phases", limit.NotTabulated)
}

// A Basis is what a circuit is sized by.
type Basis string

// Bases.
const (
	FromPlate Basis = "plate" // what the fan's own plate asks for
	FromTable Basis = "table" // the motor tables
)

// A Demand is the least ampacity that a circuit's conductors must have.
type Demand struct {
	Current unit.Current
	Basis   Basis
	Known   source.Known
}

// conductorFactor is the margin on table current, 430.22.
const conductorFactor = 1.25

// DemandFromPlate returns the demand of a fan whose plate gives a minimum
// circuit ampacity: that figure, which stands before the motor tables. Errors:
// minimum not above zero.
//
// Method: raceway.demand.plate.
func DemandFromPlate(minimum unit.Current) (Demand, error) {
	if err := limit.Positive("minimum", minimum); err != nil {
		return Demand{}, err
	}
	return Demand{minimum, FromPlate, source.Memory}, nil
}

// DemandFromTable returns the demand of a single motor: 125 % of its table
// current. Errors: current not above zero.
//
// Method: raceway.demand.table.
func DemandFromTable(current unit.Current) (Demand, error) {
	if err := limit.Positive("current", current); err != nil {
		return Demand{}, err
	}
	c, err := limit.Result(current * conductorFactor)
	if err != nil {
		return Demand{}, err
	}
	return Demand{c, FromTable, source.LookedUp}, nil
}

// InSightMost is the greatest distance that still is in sight, where the motor
// is visible too: 50 ft, Article 100.
const InSightMost = 50 * unit.Foot

// DisconnectLeast returns the least rating of a motor's disconnecting means:
// 115 % of table current (430.110(A)). Errors: current not above zero.
//
// Method: raceway.disconnect.
func DisconnectLeast(current unit.Current) (unit.Current, error) {
	if err := limit.Positive("current", current); err != nil {
		return 0, err
	}
	return limit.Result(current * 1.15)
}

// A Check is a conductor's ampacity against what its circuit asks for.
type Check struct {
	Demand   Demand
	Ampacity Ampacity
	Margin   unit.Ratio // usable ampacity over demand, less one
	Enough   bool
}

// CheckConductor returns whether a conductor, reused or new, carries a demand.
// Errors: as [AmpacityOf]; demand not above zero.
//
// Method: raceway.usable.
func CheckConductor(demand Demand, size WireSize, conditions Conditions) (Check, error) {
	if err := limit.Positive("Current", demand.Current); err != nil {
		return Check{}, err
	}
	a, err := AmpacityOf(size, conditions)
	if err != nil {
		return Check{}, err
	}
	margin, err := limit.Result(unit.Ratio(a.Usable/demand.Current - 1))
	if err != nil {
		return Check{}, err
	}
	return Check{demand, a, margin, a.Usable >= demand.Current*(1-slack)}, nil
}
