// Package sheet answers questions from a record: plain functions from the
// places of a fan to a value with its band, its verdict and its working, or to
// the places still wanted, or to the place at fault. There is no fourth state:
// an answer without a value never carries a number.
//
// A figure that two answers need is one function, which says where it took the
// value from, measured before computed. Text that could not be read in a place
// blocks every answer that would use it; it never falls through to another
// source.
package sheet

import (
	"errors"
	"math"
	"slices"

	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// An Answer is a value, or what is still wanted, or what is at fault.
type Answer[Q unit.Quantity] struct {
	Value  Q
	Band   Q    // the value lies within this of Value; infinite where nothing bounds it
	From   From // where it was taken from
	Wanted []record.Place
	Fault  *Fault
	Steps  Steps
}

// From says where an answer was taken from.
type From string

// The sources of an answer's value.
const (
	FromPlace      From = ""           // one formula, nothing to choose from
	FromTachometer From = "tachometer" // read
	FromPlate      From = "plate"      // the motor's plate speed, its load not known
	FromLoad       From = "load"       // plate speed, corrected to the load
	FromInverter   From = "drive"      // from a variable frequency drive's output
	FromStamp      From = "stamp"      // a pitch diameter as entered
	FromOutside    From = "outside"    // a taped outside diameter
	FromGap        From = "gap"        // a measured groove width
	FromAnchors    From = "anchors"    // turns open, between two stamped settings
	FromCount      From = "count"      // turns counted by hand
	FromSheaves    From = "sheaves"
	FromReport     From = "report"
	FromTag        From = "tag"
	FromRating     From = "rating"
	FromTrial      From = "trial" // scaled from a reading on the same drive
	FromOldAmps    From = "old amps"
	FromTrialAmps  From = "trial amps"
	FromNumber     From = "belt number"
	FromPlatePower From = "plate power"
	FromCard       From = "card"        // the belt maker's
	FromTypical    From = "typical"     // what things of its sort usually have
	FromFanPlate   From = "fan plate"   // the fan's own plate, which rules the circuit
	FromMotorTable From = "motor table" // the code's
	FromMotorPlate From = "motor plate" // full-load amps, where the table doesn't hold
	FromTradeSize  From = "trade size"
)

// A Fault is a value that can't be, and the place that holds it.
type Fault struct {
	Place record.Place // nil when no single place is to blame
	Err   error
}

// Known tells whether the answer carries a value.
func (a Answer[Q]) Known() bool { return a.Fault == nil && len(a.Wanted) == 0 && a.Steps.done }

// Low returns the least the value may be.
func (a Answer[Q]) Low() Q { return a.Value - a.Band }

// High returns the most the value may be.
func (a Answer[Q]) High() Q { return a.Value + a.Band }

// Bounded tells whether anything bounds the value: where a formula refuses an edge
// of what is put in, nothing is known of the result but its middle.
func (a Answer[Q]) Bounded() bool { return !math.IsInf(float64(a.Band), 0) }

// Steps is how an answer was reached: one formula and what was put in.
type Steps struct {
	Method string // a key of the sources register
	Terms  []*Term
	better record.Place // what would be read instead of computed, where it can be
	done   bool
}

// A Term is one value put into a formula, by its symbol there.
type Term struct {
	Symbol string
	Kind   *unit.Kind
	Base   float64
	Band   float64
	Place  record.Place // where it stands, or nil
	Of     *Steps       // how it was computed, or nil
	From   From
	Weight float64 // how much of the answer's band it causes
}

// An Ask gathers what one answer needs.
type Ask struct {
	terms  []*Term
	wanted []record.Place
	fault  *Fault
}

// A Given is a term with its type.
type Given[Q unit.Quantity] struct{ *Term }

// V returns the value of the term.
func (g Given[Q]) V() Q { return Q(g.Base) }

// errGarbled is the fault of a place whose text is no value.
var errGarbled = errors.New("not a value")

// Garbled tells whether a fault is text that is no value.
func (f *Fault) Garbled() bool { return f != nil && errors.Is(f.Err, errGarbled) }

// breaks tells whether a fault is that of a formula's rule.
func (f *Fault) breaks(rule limit.Rule) bool {
	var e *limit.Error
	return f != nil && errors.As(f.Err, &e) && e.Rule == rule
}

// Want asks for the value of a place, under the symbol it has in the formula.
func Want[Q unit.Quantity](a *Ask, symbol string, e *record.Entry[Q]) Given[Q] {
	t := &Term{Symbol: symbol, Kind: e.Kind(), Place: e}
	switch e.State() {
	case record.Known:
		t.Base, t.Band = e.Base(), e.Band()
		if p := e.Unread(); p != nil {
			a.blame(p, errGarbled)
		}
	case record.Garbled:
		a.blame(e, errGarbled)
	default:
		a.miss(e)
	}
	a.put(t)
	return Given[Q]{t}
}

func (a *Ask) put(t *Term) {
	if a.terms == nil {
		a.terms = make([]*Term, 0, 4)
	}
	a.terms = append(a.terms, t)
}

// Use asks for the value of another answer and passes on what that wants.
func Use[Q unit.Quantity](a *Ask, symbol string, b Answer[Q]) Given[Q] {
	of := b.Steps // by itself: a term need not keep the whole answer
	t := &Term{Symbol: symbol, Kind: Q(0).Kind(), Base: float64(b.Value), Band: float64(b.Band), From: b.From, Of: &of}
	if b.Fault != nil {
		a.blame(b.Fault.Place, b.Fault.Err)
	}
	a.miss(b.Wanted...)
	a.put(t)
	return Given[Q]{t}
}

// Take puts a value into the formula that stands in no place: a constant of
// the trade, an assumption.
func Take[Q unit.Quantity](a *Ask, symbol string, v Q) Given[Q] {
	t := &Term{Symbol: symbol, Kind: v.Kind(), Base: float64(v)}
	a.put(t)
	return Given[Q]{t}
}

// Need asks for a place whose value the formula doesn't take as a number.
func (a *Ask) Need(p record.Place) {
	switch p.State() {
	case record.Known:
	case record.Garbled:
		a.blame(p, errGarbled)
	default:
		a.miss(p)
	}
}

func (a *Ask) miss(ps ...record.Place) {
	for _, p := range ps {
		if !slices.Contains(a.wanted, p) {
			a.wanted = append(a.wanted, p)
		}
	}
}

func (a *Ask) blame(p record.Place, err error) {
	if a.fault == nil {
		a.fault = &Fault{p, err}
	}
}

// At maps a formula's parameters to the terms they were given.
type At map[string]*Term

// Solve runs a formula when nothing is wanted and nothing is at fault. Its
// band is the worst case: the formula is run again at both edges of each
// banded term, and the changes are added. A band's edge that the formula refuses
// leaves the result unbounded.
func Solve[Q unit.Quantity](a *Ask, from From, method string, at At, formula func() (Q, error)) Answer[Q] {
	r := Answer[Q]{From: from, Steps: Steps{Method: method, Terms: a.terms}}
	if a.fault != nil {
		r.Fault = a.fault
		return r
	}
	if len(a.wanted) > 0 {
		r.Wanted = a.wanted
		return r
	}
	v, err := formula()
	if err == nil {
		err = limit.Finite("result", float64(v))
	}
	if err != nil {
		r.Fault = blamed(err, at)
		return r
	}
	r.Value, r.Steps.done = v, true
	for _, t := range a.terms {
		if t.Band == 0 {
			continue
		}
		base := t.Base
		for _, edge := range t.edges() {
			t.Base = edge
			t.Weight = max(t.Weight, change(formula, v))
		}
		t.Base = base
		r.Band += Q(t.Weight)
	}
	return r
}

// change returns how far a formula's result lies from v: infinitely far where it
// refuses what was put in.
func change[Q unit.Quantity](formula func() (Q, error), v Q) float64 {
	w, err := formula()
	if far := math.Abs(float64(w - v)); err == nil && !math.IsNaN(far) {
		return far
	}
	return math.Inf(1)
}

// edges returns the least and the most that a term may be: what was read in a place
// is nothing that the place can't hold, such as a length below zero.
func (t *Term) edges() [2]float64 {
	low, high := t.Base-t.Band, t.Base+t.Band
	if m, ok := t.Place.(record.Measure); ok {
		least, most := m.Fact().Range()
		low, high = max(low, least), min(high, most)
	}
	return [2]float64{low, high}
}

func blamed(err error, at At) *Fault {
	f := &Fault{Err: err}
	var e *limit.Error
	if errors.As(err, &e) {
		if t := at[e.Parameter]; t != nil {
			f.Place = t.root()
		}
	}
	return f
}

// root returns the place a term was read from: its own, or the first one that
// its working leads to.
func (t *Term) root() record.Place {
	if t.Place != nil || t.Of == nil {
		return t.Place
	}
	for _, u := range t.Of.Terms {
		if p := u.root(); p != nil {
			return p
		}
	}
	return nil
}

// Read answers with the value of one place.
func Read[Q unit.Quantity](symbol string, from From, e *record.Entry[Q]) Answer[Q] {
	var a Ask
	v := Want(&a, symbol, e)
	return Solve(&a, from, "", nil, func() (Q, error) { return v.V(), nil })
}

// Unsettled returns the place whose band weighs most in an answer, or nil where no
// surer value would narrow it.
func (s *Steps) Unsettled() record.Place {
	var worst *Term
	for _, t := range s.Terms {
		if t.Weight > 0 && (worst == nil || t.Weight > worst.Weight) {
			worst = t
		}
	}
	switch {
	case worst == nil:
		return nil
	case worst.Place != nil:
		return worst.Place
	case worst.Of != nil && worst.Of.better != nil:
		return worst.Of.better
	case worst.Of != nil:
		if p := worst.Of.Unsettled(); p != nil {
			return p
		}
	}
	return worst.banded()
}

// banded returns the first place that a term's working leads to whose value could
// be surer: what is stamped is as sure as it gets.
func (t *Term) banded() record.Place {
	if m, ok := t.Place.(record.Measure); ok && m.Band() > 0 {
		return t.Place
	}
	if t.Of == nil {
		return nil
	}
	for _, u := range t.Of.Terms {
		if p := u.banded(); p != nil {
			return p
		}
	}
	return nil
}

// known tells whether a place holds text: a value, or text that is none and
// must block.
func known(p record.Place) bool {
	s := p.State()
	return s == record.Known || s == record.Garbled
}
