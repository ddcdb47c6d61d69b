package record

import (
	"math"
	"strconv"
	"strings"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// A Fact is what is fixed about a place of a quantity: the units it is usually
// written in, the bounds of its number, how it is usually known.
type Fact struct {
	Scale  unit.Scale
	Bounds string // a validator tag with both bounds, on the base value
	Basis  Basis
	Whole  bool // a count of things
	Read   Band // band of a measured value unless one is given; common practice

	meter stated // what it is read with, where its maker's word may be entered
}

// A Band is half the width of the interval a value is known to lie in: an
// absolute part in the base unit, and a part of the value.
type Band struct{ Abs, Rel float64 }

func (b Band) of(x float64) float64 { return b.Abs + b.Rel*math.Abs(x) }

// Range returns the least and the most that a place with this fact can hold, in the
// base unit.
func (f *Fact) Range() (least, most float64) {
	least, most = math.Inf(-1), math.Inf(1)
	if f == nil {
		return least, most
	}
	for bound := range strings.SplitSeq(f.Bounds, ",") {
		rule, text, _ := strings.Cut(bound, "=")
		x, err := strconv.ParseFloat(text, 64)
		switch {
		case err != nil:
		case strings.HasPrefix(rule, "g"):
			least = x
		default:
			most = x
		}
	}
	return least, most
}

// guess is the band taken for a guessed value unless one is given: this
// library's own assumption.
var guess = Band{Rel: 0.1}

// guessedWarmth takes its place on a scale whose zero is no absence: a guessed
// temperature is good to 10 K.
const guessedWarmth = 10

func (f *Fact) usual(b Basis) Band {
	switch b {
	case Measured:
		if f.meter != nil {
			return f.meter.band(f.Read)
		}
		return f.Read
	case Guessed:
		if f.Scale.US.Zero != f.Scale.SI.Zero {
			return Band{Abs: guessedWarmth}
		}
		return guess
	}
	return Band{}
}

// parseBand reads the canonical half-width of an interval: a quantity of the
// kind, or a percentage of the value.
func parseBand(text string, k *unit.Kind) (Band, string, error) {
	text = strings.TrimSpace(text)
	if strings.HasSuffix(text, "%") && k.Name != unit.Ratio(0).Kind().Name {
		r, canonical, err := number.ParseQuantity(text, unit.Ratio(0).Kind())
		if err == nil {
			err = bound(r, "gte=0,lte=1")
		}
		return Band{Rel: r}, canonical, err
	}
	x, canonical, err := number.ParseQuantity(text, k)
	if err != nil {
		return Band{}, "", err
	}
	if _, symbol := number.Split(canonical); symbol != "" {
		u, _ := k.Unit(symbol)
		x -= u.Zero // a band is a difference: of temperatures too
	}
	return Band{Abs: x}, canonical, bound(x, "gte=0,lte=1e12")
}
