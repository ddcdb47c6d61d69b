package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Column is a temperature column of Table 310.16, in degrees Celsius: of an
// insulation, or of the terminals at a conductor's ends.
type Column int

// Columns. Terminals are taken for 60 °C unless they are marked otherwise.
const (
	Column60 Column = 60
	Column75 Column = 75
	Column90 Column = 90

	UnmarkedTerminals = Column60
)

// Columns returns every column.
func Columns() []Column { return []Column{Column60, Column75, Column90} }

// index returns the place of a column in a row of a table, -1 for none.
func (c Column) index() int {
	switch c {
	case Column60:
		return 0
	case Column75:
		return 1
	case Column90:
		return 2
	}
	return -1
}

type ampacities struct {
	size             WireSize
	copper, aluminum [3]unit.Current // zero where the table is empty
}

var ampacityRows = table("ampacity", "size,copper_60,copper_75,copper_90,aluminum_60,aluminum_75,aluminum_90", func(r *record) ampacities {
	a := func(column string) unit.Current { return unit.Current(r.optional(column)) }
	return ampacities{
		WireSize(r.text("size")),
		[3]unit.Current{a("copper_60"), a("copper_75"), a("copper_90")},
		[3]unit.Current{a("aluminum_60"), a("aluminum_75"), a("aluminum_90")},
	}
})

var ampacityOf = index(ampacityRows, func(a ampacities) WireSize { return a.size })

// TableAmpacity returns the ampacity of a conductor at 30 °C among at most three
// that carry current: Table 310.16. Errors: no such size, material or column;
// an empty cell.
//
// Method: raceway.ampacity.
func TableAmpacity(size WireSize, material Material, column Column) (unit.Current, error) {
	row, ok := ampacityOf()[size]
	if !ok {
		return 0, limit.Break("size", limit.NotTabulated)
	}
	i := column.index()
	if i < 0 {
		return 0, limit.Break("column", limit.NotTabulated)
	}
	var a unit.Current
	switch material {
	case Copper:
		a = row.copper[i]
	case Aluminum, Clad:
		a = row.aluminum[i]
	default:
		return 0, limit.Break("material", limit.NotTabulated)
	}
	if a == 0 {
		return 0, limit.Break("size", limit.NotTabulated)
	}
	return a, nil
}

type ambientRow struct {
	through unit.Temperature
	factors [3]unit.Ratio
}

var ambients = table("ambient", "through,f60,f75,f90", func(r *record) ambientRow {
	return ambientRow{
		unit.Celsius(r.number("through")),
		[3]unit.Ratio{unit.Ratio(r.optional("f60")), unit.Ratio(r.optional("f75")), unit.Ratio(r.optional("f90"))},
	}
})

// AmbientFactor returns what ampacity is multiplied by for the air's
// temperature: Table 310.15(B)(1)(1), in bands of 5 °C; a temperature between
// two printed bands is in the warmer one. Errors: ambient not above absolute
// zero, or so high that the column has no factor; no such column.
//
// Method: raceway.ambient.
func AmbientFactor(ambient unit.Temperature, column Column) (unit.Ratio, error) {
	if err := limit.Positive("ambient", ambient); err != nil {
		return 0, err
	}
	i := column.index()
	if i < 0 {
		return 0, limit.Break("column", limit.NotTabulated)
	}
	for _, row := range ambients() {
		if ambient <= row.through*(1+slack) && row.factors[i] != 0 {
			return row.factors[i], nil
		}
	}
	return 0, limit.Break("ambient", TooHot)
}

// TableAmbient is the air temperature of Table 310.16, 30 °C.
const TableAmbient unit.Temperature = 30 + 273.15

// AmbientFactorByEquation returns √((Tc − Ta)/(Tc − 30 °C)): the equation that
// the table is made from and that may stand in its place. Errors: ambient not
// above absolute zero or not below the column's temperature; no such column.
//
// Method: raceway.ambient.equation.
func AmbientFactorByEquation(ambient unit.Temperature, column Column) (unit.Ratio, error) {
	if err := limit.Positive("ambient", ambient); err != nil {
		return 0, err
	}
	if column.index() < 0 {
		return 0, limit.Break("column", limit.NotTabulated)
	}
	Tc := unit.Celsius(float64(column))
	if ambient >= Tc {
		return 0, limit.Break("ambient", TooHot)
	}
	return limit.Result(unit.Ratio(math.Sqrt(float64((Tc - ambient) / (Tc - TableAmbient)))))
}

type adjustmentRow struct {
	from   int
	factor unit.Ratio
}

var adjustments = table("adjustment", "from,percent", func(r *record) adjustmentRow {
	return adjustmentRow{r.whole("from"), unit.Ratio(r.number("percent")) * unit.Percent}
})

// AdjustmentFactor returns what ampacity is multiplied by for the number of
// current-carrying conductors in a raceway: Table 310.15(C)(1). Equipment
// grounds are not counted; a nipple is not adjusted. Errors: carrying not in 1
// to 10 000.
//
// Method: raceway.adjustment.
func AdjustmentFactor(carrying int) (unit.Ratio, error) {
	if err := checkCount("carrying", carrying); err != nil {
		return 0, err
	}
	f := unit.Ratio(1)
	for _, row := range adjustments() {
		if carrying >= row.from {
			f = row.factor
		}
	}
	return f, nil
}
