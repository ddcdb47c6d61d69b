package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Phases is the kind of supply.
type Phases string

// Kinds of supply.
const (
	SinglePhase Phases = "single"
	ThreePhase  Phases = "three"
)

// lines returns how many times the drop of one conductor the drop between lines
// is: both conductors of one phase, √3 of three.
func (p Phases) lines() (float64, error) {
	switch p {
	case SinglePhase:
		return 2, nil
	case ThreePhase:
		return math.Sqrt(3), nil
	}
	return 0, limit.Break("phases", limit.NotTabulated)
}

// A Wall is what a raceway is made of, as far as reactance goes.
type Wall string

// Walls.
const (
	WallPVC      Wall = "pvc"
	WallAluminum Wall = "aluminum"
	WallSteel    Wall = "steel"
)

// WallOf returns the wall of a conduit: steel for the metallic ones, which are
// made of aluminum too. Errors: no such conduit.
//
// Method: raceway.impedance.
func WallOf(conduit Conduit) (Wall, error) {
	switch {
	case conduit.rank() < 0:
		return "", limit.Break("conduit", limit.NotTabulated)
	case conduit.Metallic():
		return WallSteel, nil
	}
	return WallPVC, nil
}

// An Impedance is a conductor's alternating-current resistance and reactance by
// length.
type Impedance struct{ Resistance, Reactance unit.LineImpedance }

type impedanceRow struct {
	size             WireSize
	other, steel     unit.LineImpedance // reactance
	copper, aluminum [3]unit.LineImpedance
	effective        [3]unit.LineImpedance
}

var impedanceRows = table("impedance", "size,x_other,x_steel,copper_pvc,copper_aluminum,copper_steel,aluminum_pvc,aluminum_aluminum,aluminum_steel,z_pvc,z_aluminum,z_steel",
	func(r *record) impedanceRow {
		z := func(column string) unit.LineImpedance {
			return unit.LineImpedance(r.optional(column)) * unit.OhmPerThousandFeet
		}
		return impedanceRow{
			WireSize(r.text("size")), z("x_other"), z("x_steel"),
			[3]unit.LineImpedance{z("copper_pvc"), z("copper_aluminum"), z("copper_steel")},
			[3]unit.LineImpedance{z("aluminum_pvc"), z("aluminum_aluminum"), z("aluminum_steel")},
			[3]unit.LineImpedance{z("z_pvc"), z("z_aluminum"), z("z_steel")},
		}
	})

var impedanceOf = index(impedanceRows, func(r impedanceRow) WireSize { return r.size })

func (w Wall) index() int {
	switch w {
	case WallPVC:
		return 0
	case WallAluminum:
		return 1
	case WallSteel:
		return 2
	}
	return -1
}

// ImpedanceOf returns the impedance of a conductor in a raceway of a material:
// Chapter 9, Table 9, 60 Hz at 75 °C. Its resistances are printed to two
// figures and so are up to 4 % off. Errors: no such size, material or wall; an
// empty cell.
//
// Method: raceway.impedance.
func ImpedanceOf(size WireSize, material Material, wall Wall) (Impedance, error) {
	row, ok := impedanceOf()[size]
	if !ok {
		return Impedance{}, limit.Break("size", limit.NotTabulated)
	}
	i := wall.index()
	if i < 0 {
		return Impedance{}, limit.Break("wall", limit.NotTabulated)
	}
	z := Impedance{Reactance: row.other}
	if wall == WallSteel {
		z.Reactance = row.steel
	}
	switch material {
	case Copper:
		z.Resistance = row.copper[i]
	case Aluminum:
		z.Resistance = row.aluminum[i]
	default:
		return Impedance{}, limit.Break("material", limit.NotTabulated)
	}
	if z.Resistance == 0 {
		return Impedance{}, limit.Break("size", limit.NotTabulated)
	}
	return z, nil
}

// EffectiveImpedance returns Table 9's effective impedance of uncoated copper at
// a power factor of 0.85. It comes from figures before rounding and is not
// always what the printed resistance and reactance give. Errors: no such size or
// wall.
//
// Method: raceway.impedance.
func EffectiveImpedance(size WireSize, wall Wall) (unit.LineImpedance, error) {
	row, ok := impedanceOf()[size]
	if !ok {
		return 0, limit.Break("size", limit.NotTabulated)
	}
	i := wall.index()
	if i < 0 {
		return 0, limit.Break("wall", limit.NotTabulated)
	}
	return row.effective[i], nil
}

// VoltageDrop returns the drop between lines over a run of a length, one way:
// √3·I·(R cos φ + X sin φ)·L for three phases, 2·I·… for one. Errors: a value
// below zero; powerFactor not above 0 and up to 1; no such supply.
//
// Method: raceway.drop.
func VoltageDrop(phases Phases, current unit.Current, length unit.Length, impedance Impedance, powerFactor unit.Ratio) (unit.Voltage, error) {
	n, err := phases.lines()
	if err := limit.First(err, limit.NonNegative("current", current), limit.NonNegative("length", length),
		limit.NonNegative("Resistance", impedance.Resistance), limit.NonNegative("Reactance", impedance.Reactance),
		limit.Positive("powerFactor", powerFactor)); err != nil {
		return 0, err
	}
	if powerFactor > 1+slack {
		return 0, limit.Break("powerFactor", limit.OutOfRange)
	}
	cos := min(float64(powerFactor), 1)
	sin := math.Sqrt((1 - cos) * (1 + cos))
	z := float64(impedance.Resistance)*cos + float64(impedance.Reactance)*sin
	return limit.Result(unit.Voltage(n * float64(current) * z * float64(length)))
}

// Drops that the code's remarks name as reasonable: of a branch circuit, and of
// feeder and branch together. They inform and limit nothing.
const (
	DropBranch unit.Ratio = 0.03
	DropBoth   unit.Ratio = 0.05
)

// DropShare returns a drop as a part of the supply's voltage. Errors: drop below
// zero; supply not above zero.
//
// Method: raceway.drop.
func DropShare(drop, supply unit.Voltage) (unit.Ratio, error) {
	if err := limit.First(limit.NonNegative("drop", drop), limit.Positive("supply", supply)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(drop / supply))
}
