package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Use is what a raceway's length makes of it.
type Use string

// Uses.
const (
	Run    Use = "run"
	Nipple Use = "nipple" // at most NippleMost long
)

// NippleMost is the greatest length of a nipple, 24 in (Chapter 9, note 4).
const NippleMost = 24 * unit.Inch

// UseOf returns what a raceway of a length is. Errors: length not above zero.
//
// Method: raceway.fill.
func UseOf(length unit.Length) (Use, error) {
	if err := limit.Positive("length", length); err != nil {
		return "", err
	}
	if length <= NippleMost*(1+slack) {
		return Nipple, nil
	}
	return Run, nil
}

// Fittings says where the connectors of a 3/8 flexible metal conduit grip it.
type Fittings string

// Where connectors grip.
const (
	FittingsInside  Fittings = "inside"
	FittingsOutside Fittings = "outside"
)

// A Raceway is one run of conduit.
type Raceway struct {
	Conduit  Conduit
	Size     TradeSize
	Use      Use
	Fittings Fittings // read for FMC of size 3/8 alone
}

// A FillRule is what decided whether conductors fit.
type FillRule string

// Fill rules.
const (
	ByArea  FillRule = "area"  // Table 1: the sum of areas against the part allowed
	ByCount FillRule = "count" // note 7: conductors of one area are counted, 0.8 rounding up
	BySmall FillRule = "small" // Table 348.22, for 3/8 flexible metal conduit
)

// A Filling is how conductors fill a raceway.
type Filling struct {
	Count   int
	Area    unit.Area  // of the conductors
	Inside  unit.Area  // of the raceway
	Fill    unit.Ratio // Area over Inside
	Limit   unit.Ratio // by the number of conductors
	Allowed unit.Area  // that part of Inside, as printed
	Rule    FillRule
	Most    Capacity // for ByCount and BySmall, of the conductors counted
	Fits    bool
	Edge    bool // roundings of the same table disagree on Fits
}

// Parts of a raceway's area that conductors may fill: Chapter 9, Table 1.
var fills = table("fill", "conductors,percent", func(r *record) unit.Ratio {
	return unit.Ratio(r.number("percent")) * unit.Percent
})

// FillLimit returns the part of a raceway's area that a number of conductors may
// fill: 53 % for one, 31 % for two, 40 % for more, 60 % for any number in a
// nipple. Errors: count not in 1 to 10 000; no such use.
//
// Method: raceway.fill.
func FillLimit(count int, use Use) (unit.Ratio, error) {
	if err := checkCount("count", count); err != nil {
		return 0, err
	}
	if use != Run && use != Nipple {
		return 0, limit.Break("use", limit.NotTabulated)
	}
	return fills()[fillRow(count, use)], nil
}

func fillRow(count int, use Use) int {
	if use == Nipple {
		return 3
	}
	return min(count, 3) - 1
}

// allowed returns the printed part of the area for a number of conductors.
func (b *Bore) allowed(count int, use Use) unit.Area {
	return [...]unit.Area{b.One, b.Two, b.OverTwo, b.Nipple}[fillRow(count, use)]
}

// Fill returns how conductors fill a raceway. Equipment grounds count at their
// actual size. Conductors of one area are counted by note 7; others by the sum
// of their areas; those in 3/8 FMC and LFMC by Table 348.22, where they must be
// of one size. Errors: a raceway that is not tabulated; no conductor; more than
// 50 rows; a row with an impossible count or an unknown conductor, as a
// [RowError].
//
// Method: raceway.fill.
func Fill(raceway Raceway, rows []Row) (Filling, error) {
	b, err := bore(raceway.Conduit, raceway.Size, "Conduit", "Size")
	if err != nil {
		return Filling{}, err
	}
	l, err := total(rows)
	if err != nil {
		return Filling{}, err
	}
	return l.fill(raceway, &b)
}

func (l *load) fill(r Raceway, b *Bore) (Filling, error) {
	if r.Use != Run && r.Use != Nipple {
		return Filling{}, limit.Break("Use", limit.NotTabulated)
	}
	f := Filling{
		Count: l.count, Area: l.area, Inside: b.Area, Fill: unit.Ratio(l.area / b.Area),
		Limit: fills()[fillRow(l.count, r.Use)], Allowed: b.allowed(l.count, r.Use), Rule: ByArea,
	}
	switch {
	case b.Size == Size3by8 && (b.Conduit == FMC || b.Conduit == LFMC):
		most, counted, err := l.small38(r)
		if err != nil {
			return Filling{}, err
		}
		f.Rule, f.Most, f.Fits = BySmall, Capacity{most, most}, counted <= most
	case l.alike:
		f.Rule, f.Most = ByCount, b.most(l.each, r.Use)
		f.Fits = l.count <= f.Most.Inch
		f.Edge = f.Fits != (l.count <= f.Most.Metric)
	default:
		f.Fits = l.area <= f.Allowed*(1+slack)
		f.Edge = f.Fits != (l.area <= b.Area*unit.Area(f.Limit)*(1+slack))
	}
	return f, nil
}
