package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// An Adder is what direct sun on a roof adds to the air's temperature.
type Adder struct {
	Edition    Edition // empty for the table up to 2014
	Difference unit.TemperatureDifference
	Known      source.Known
}

type rooftopRow struct {
	edition       string
	over, through unit.Length
	adder         unit.TemperatureDifference
	known         source.Known
}

var rooftops = table("rooftop", "edition,over,through,adder,known", func(r *record) rooftopRow {
	return rooftopRow{
		r.text("edition"), unit.Length(r.number("over")) * unit.Inch, unit.Length(r.number("through")) * unit.Inch,
		unit.TemperatureDifference(r.number("adder")), r.known("known"),
	}
})

// RooftopAdder returns what is added to the outdoor temperature for a raceway in
// direct sun, the given height above the roof: 33 °C below 7/8 in (2017, 2020)
// or 3/4 in (2023), otherwise nothing. XHHW-2 is exempt (of 2020 from memory).
// Errors: height below zero; no such edition or insulation.
//
// Method: raceway.rooftop.
func RooftopAdder(edition Edition, height unit.Length, insulation Insulation) (Adder, error) {
	if err := limit.First(edition.check(), limit.NonNegative("height", height)); err != nil {
		return Adder{}, err
	}
	if _, ok := jacketOf()[insulation]; !ok && insulation != Unmarked {
		return Adder{}, limit.Break("insulation", limit.NotTabulated)
	}
	a := Adder{Edition: edition, Known: source.LookedUp}
	for _, row := range rooftops() {
		if row.edition != string(edition) {
			continue
		}
		a.Known = row.known
		if height < row.through*(1-slack) {
			a.Difference = row.adder
		}
	}
	if insulation == XHHW2 {
		a.Difference = 0
		if edition == Edition2020 {
			a.Known = source.Memory
		}
	}
	return a, nil
}

// RooftopAdderByHeight returns what the editions of 2008 to 2014 add, by bands
// of height up to 36 in: for an installation of that time. Errors: height below
// zero.
//
// Method: raceway.rooftop.bands.
func RooftopAdderByHeight(height unit.Length) (Adder, error) {
	if err := limit.NonNegative("height", height); err != nil {
		return Adder{}, err
	}
	for _, row := range rooftops() {
		if row.edition == "2014" && height <= row.through*(1+slack) {
			return Adder{Difference: row.adder, Known: row.known}, nil
		}
	}
	return Adder{Known: source.LookedUp}, nil
}
