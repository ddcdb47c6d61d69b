package record

import (
	"strings"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// Basis is how a value is known.
type Basis string

// The ways a value is known. The empty basis stands for the usual one of the
// place: a plate is stamped, a reading measured.
const (
	Stamped  Basis = "stamped"
	Measured Basis = "measured"
	Counted  Basis = "counted"
	Computed Basis = "computed"
	Guessed  Basis = "guessed"
)

// Bases lists the ways a value is known, surest first.
func Bases() []Basis { return []Basis{Stamped, Measured, Counted, Computed, Guessed} }

// An Entry is the place of a quantity. Its canonical text is the value as it
// was typed with its unit, then, parted by "; ", how it is known where that is
// not the usual way, and its band where one was given:
//
//	3-1/2 in; measured; within 1/16 in
type Entry[Q unit.Quantity] struct {
	blank
	fact  *Fact
	text  string
	value Q
	basis Basis
	band  string // canonical quantity or per cent; "" for the usual one
	width Band
}

// State returns whether e holds a value.
func (e *Entry[Q]) State() State {
	if e.text != "" {
		return Known
	}
	return e.state
}

// Text returns the canonical text of e.
func (e *Entry[Q]) Text() string {
	if e.text == "" {
		return e.raw
	}
	t := e.text
	if e.basis != "" {
		t += "; " + string(e.basis)
	}
	if e.band != "" {
		t += "; " + within + e.band
	}
	return t
}

const within = "within "

// Set takes canonical text.
func (e *Entry[Q]) Set(text string) error {
	text = strings.TrimSpace(text)
	fact := e.fact
	if e.take(text) {
		*e = Entry[Q]{blank: e.blank, fact: fact}
		return nil
	}
	n, err := parseEntry[Q](text, fact)
	n.fact = fact
	if err != nil {
		n = Entry[Q]{fact: fact, blank: blank{Garbled, Garble(text)}}
	}
	*e = n
	return err
}

func parseEntry[Q unit.Quantity](text string, fact *Fact) (e Entry[Q], err error) {
	parts := strings.Split(text, ";")
	base, canonical, err := number.ParseQuantity(strings.TrimSpace(parts[0]), Q(0).Kind())
	if err != nil {
		return e, err
	}
	if err := fact.Check(base); err != nil {
		return e, err
	}
	e.text, e.value = canonical, Q(base)
	for _, p := range parts[1:] {
		p = strings.TrimSpace(p)
		switch b, isBand := strings.CutPrefix(p, within); {
		case isBand && e.band == "":
			if e.width, e.band, err = parseBand(b, Q(0).Kind()); err != nil {
				return e, err
			}
		case e.basis == "" && isBasis(p):
			e.basis = Basis(p)
		default:
			return e, &number.Error{Rule: RuleRemark, Text: p}
		}
	}
	return e, nil
}

// RuleRemark is broken by text behind a value that is neither how it is known
// nor a band.
const RuleRemark number.Rule = "remark"

func isBasis(s string) bool {
	for _, b := range Bases() {
		if string(b) == s {
			return true
		}
	}
	return false
}

// Value returns the quantity; it means something only when the state is Known.
func (e *Entry[Q]) Value() Q { return e.value }

// Amount returns the canonical quantity without how it is known.
func (e *Entry[Q]) Amount() string { return e.text }

// SetAmount takes a canonical quantity and keeps how e is known. A text without
// a value is known in no way.
func (e *Entry[Q]) SetAmount(text string) error {
	if text == "" || text == illegible || strings.HasPrefix(text, garbled) {
		return e.Set(text)
	}
	if e.basis != "" {
		text += "; " + string(e.basis)
	}
	if e.band != "" {
		text += "; " + within + e.band
	}
	return e.Set(text)
}

// Basis returns how e is known: as was said, or the usual way of the place.
func (e *Entry[Q]) Basis() Basis {
	if e.basis != "" || e.fact == nil {
		return e.basis
	}
	return e.fact.Basis
}

// SetBasis says how e is known; the usual band of that way takes over.
func (e *Entry[Q]) SetBasis(b Basis) {
	if e.State() != Known {
		return
	}
	if e.fact != nil && b == e.fact.Basis {
		b = ""
	}
	e.basis, e.band, e.width = b, "", Band{}
}

// Fact returns what is fixed about the place.
func (e *Entry[Q]) Fact() *Fact { return e.fact }

// Kind returns the kind of quantity that e holds.
func (e *Entry[Q]) Kind() *unit.Kind { return Q(0).Kind() }

// Base returns the value in its kind's base unit.
func (e *Entry[Q]) Base() float64 { return float64(e.value) }

// Band returns half the width of the interval that the value is known to lie
// in, in the base unit; zero where there is no value.
func (e *Entry[Q]) Band() float64 {
	if e.text == "" {
		return 0
	}
	b, _ := e.Width()
	return b.of(float64(e.value))
}

// Width returns what e's band is made of, and whether it is that of the meter:
// neither given with the value nor that of a guess.
func (e *Entry[Q]) Width() (b Band, meter bool) {
	if e.band != "" || e.fact == nil {
		return e.width, false
	}
	return e.fact.usual(e.Basis()), e.Basis() == Measured
}

// Unread returns the place that garbled text keeps from saying how wide e's band
// is, or nil.
func (e *Entry[Q]) Unread() Place {
	if _, meter := e.Width(); !meter || e.fact.meter == nil {
		return nil
	}
	return e.fact.meter.garbled()
}

// A Measure is the place of any quantity, its type put aside.
type Measure interface {
	Place
	Amount() string
	SetAmount(string) error
	Basis() Basis
	SetBasis(Basis)
	Fact() *Fact
	Kind() *unit.Kind
	Base() float64
	Band() float64
}
