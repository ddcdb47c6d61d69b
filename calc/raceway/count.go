package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Capacity is how many conductors of one area fit, by the inch columns of
// Table 4 and by its millimeter columns. Where the two differ a decimal lies
// next to 0.8, and printed counts follow now one, now the other.
type Capacity struct{ Inch, Metric int }

// roundUpAt is the decimal from which note 7 counts one more conductor.
const roundUpAt = 0.8

// whole returns how many times part goes into area by note 7.
func whole(area, part unit.Area) int {
	q := float64(area / part)
	n := math.Floor(q + slack)
	if q-n >= roundUpAt-slack {
		n++
	}
	return int(n)
}

// RoundCount returns how many conductors a quotient of areas stands for: the
// whole number, or the next from a decimal of 0.8 on. Errors: quotient below
// zero or above 10 000.
//
// Method: raceway.fill.count.
func RoundCount(quotient float64) (int, error) {
	if err := limit.NonNegative("quotient", quotient); err != nil {
		return 0, err
	}
	if quotient > MostCount {
		return 0, limit.Break("quotient", limit.OutOfRange)
	}
	return whole(unit.Area(quotient), 1), nil
}

// MostAlike returns how many conductors of one size and insulation fit a
// raceway, counted from the 40 % column, and from those for two and for one
// where that gives fewer than three. Errors: a raceway or a conductor that is
// not tabulated; in 3/8 FMC, fittings neither inside nor outside.
//
// Method: raceway.fill.count.
func MostAlike(raceway Raceway, size WireSize, insulation Insulation) (Capacity, error) {
	b, err := bore(raceway.Conduit, raceway.Size, "Conduit", "Size")
	if err != nil {
		return Capacity{}, err
	}
	c, err := conductor(size, insulation, "size", "insulation")
	if err != nil {
		return Capacity{}, err
	}
	l, err := load{}.add(Row{Size: c.Size, Insulation: c.Insulation, Count: 1, Role: Circuit})
	if err != nil {
		return Capacity{}, err
	}
	f, err := l.fill(raceway, &b)
	return f.Most, err
}

// most returns how many conductors of an area fit.
func (b *Bore) most(each unit.Area, use Use) Capacity {
	part := func(p float64) unit.Area { // to whole square millimeters, as those columns are printed
		return unit.Area(math.Round(p*b.metric.In(unit.SquareMillimeter))) * unit.SquareMillimeter
	}
	if use == Nipple {
		return Capacity{whole(b.Nipple, each), whole(part(0.60), each)}
	}
	return Capacity{
		Inch:   lower(b.OverTwo, b.Two, b.One, each),
		Metric: lower(b.metricOverTwo, part(0.31), part(0.53), each),
	}
}

func lower(overTwo, two, one, each unit.Area) int {
	if n := whole(overTwo, each); n > 2 {
		return n
	}
	if whole(two, each) >= 2 {
		return 2
	}
	return min(whole(one, each), 1)
}
