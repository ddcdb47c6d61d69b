package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// An Exposure is whether the sun heats a raceway on a roof.
type Exposure string

// Exposures.
const (
	Shaded  Exposure = "shaded"
	Rooftop Exposure = "rooftop" // in direct sun on or above a roof
)

// Conditions are what a conductor's ampacity depends on besides its size.
type Conditions struct {
	Edition    Edition
	Material   Material
	Insulation Insulation
	Location   Location         // inside the raceway
	Ambient    unit.Temperature // of the air outdoors or about the raceway
	Carrying   int              // current-carrying conductors in the raceway
	Use        Use
	Exposure   Exposure
	Height     unit.Length // of the raceway above the roof; read where Exposure is Rooftop
	Terminals  Column      // 60 °C unless marked
}

// An Ampacity is what a conductor carries under conditions, step by step.
type Ampacity struct {
	Size      WireSize
	Edition   Edition
	Column    Column       // of the insulation
	Table     unit.Current // Table 310.16 in that column
	Adder     unit.TemperatureDifference
	Effective unit.Temperature // ambient with the adder
	Ambient   unit.Ratio       // factor
	Adjusted  unit.Ratio       // factor for the conductors bundled
	Corrected unit.Current     // table, by both factors
	Terminal  unit.Current     // Table 310.16 in the terminals' column
	Usable    unit.Current     // the lesser of the two
	Known     source.Known     // the least sure of what went in
}

// AmpacityOf returns what a conductor carries: Table 310.16 in its insulation's
// column, times the factors for temperature and bundling, and not above the
// table in the terminals' column (110.14(C)). Errors: conditions that are not
// tabulated; air so hot that the insulation has no factor; an insulation for
// dry places in a wet one.
//
// Method: raceway.usable.
func AmpacityOf(size WireSize, conditions Conditions) (Ampacity, error) {
	c := conditions
	if err := limit.First(limit.Positive("Ambient", c.Ambient), limit.NonNegative("Height", c.Height)); err != nil {
		return Ampacity{}, err
	}
	if c.Use != Run && c.Use != Nipple {
		return Ampacity{}, limit.Break("Use", limit.NotTabulated)
	}
	a := Ampacity{Size: size, Edition: c.Edition, Known: source.Memory} // ratings of insulations are from memory
	var err error
	if a.Column, err = RatingOf(c.Insulation, c.Location); err != nil {
		return Ampacity{}, named(err)
	}
	if a.Table, err = TableAmpacity(size, c.Material, a.Column); err != nil {
		return Ampacity{}, named(err)
	}
	if a.Terminal, err = TableAmpacity(size, c.Material, c.Terminals); err != nil {
		return Ampacity{}, named(err)
	}
	switch c.Exposure {
	case Shaded:
		if err := c.Edition.check(); err != nil {
			return Ampacity{}, named(err)
		}
	case Rooftop:
		adder, err := RooftopAdder(c.Edition, c.Height, c.Insulation)
		if err != nil {
			return Ampacity{}, named(err)
		}
		a.Adder = adder.Difference
	default:
		return Ampacity{}, limit.Break("Exposure", limit.NotTabulated)
	}
	a.Effective = c.Ambient.Plus(a.Adder)
	if a.Ambient, err = AmbientFactor(a.Effective, a.Column); err != nil {
		return Ampacity{}, named(err)
	}
	if a.Adjusted, err = AdjustmentFactor(c.Carrying); err != nil {
		return Ampacity{}, named(err)
	}
	if c.Use == Nipple {
		a.Adjusted = 1
	}
	a.Corrected = a.Table * unit.Current(a.Ambient*a.Adjusted)
	a.Usable = min(a.Corrected, a.Terminal)
	return a, nil
}

// SmallestWire returns the ampacity of the smallest conductor, from 14 on (the
// least of 430.22), whose usable ampacity is not below a current. Errors: as
// [AmpacityOf]; current not above zero; none up to 4/0 is large enough.
//
// Method: raceway.usable.
func SmallestWire(current unit.Current, conditions Conditions) (Ampacity, error) {
	if err := limit.Positive("current", current); err != nil {
		return Ampacity{}, err
	}
	first := AWG14.rank()
	if conditions.Material == Aluminum || conditions.Material == Clad {
		first = AWG12.rank() // the smallest with a figure in the table
	}
	for _, size := range wires[first:] {
		a, err := AmpacityOf(size, conditions)
		if err != nil {
			return Ampacity{}, err
		}
		if a.Usable >= current*(1-slack) {
			return a, nil
		}
	}
	return Ampacity{}, limit.Break("current", NoSizeFits)
}
