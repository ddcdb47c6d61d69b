package sheet

import "roofside/calc/record"

// A Finding is an answer that is no single number: a filling, a size, a list of
// parts. It has the states of an [Answer], and its value means something only
// when it is known.
type Finding[T any] struct {
	Value  T
	Wanted []record.Place
	Fault  *Fault
	Method string
	done   bool
}

// Known tells whether the finding carries a value.
func (f Finding[T]) Known() bool { return f.done }

func (f Finding[T]) open() []record.Place {
	if f.Fault != nil && f.Fault.Place != nil {
		return []record.Place{f.Fault.Place}
	}
	return f.Wanted
}

// Find runs a formula when nothing is wanted and nothing is at fault.
func Find[T any](a *Ask, method string, at At, formula func() (T, error)) Finding[T] {
	r := Finding[T]{Method: method, Wanted: a.wanted, Fault: a.fault}
	if r.Fault != nil {
		r.Wanted = nil
	}
	if r.Fault != nil || r.Wanted != nil {
		return r
	}
	v, err := formula()
	if err != nil {
		r.Fault = blamed(err, at)
		return r
	}
	r.Value, r.done = v, true
	return r
}

// lean passes on what a finding wants, or what is at fault in it.
func (a *Ask) lean(wanted []record.Place, fault *Fault) {
	if fault != nil {
		a.blame(fault.Place, fault.Err)
	}
	a.miss(wanted...)
}

// mind lets a place that may stay unknown be at fault where its text is no
// value.
func (a *Ask) mind(ps ...record.Place) {
	for _, p := range ps {
		if p.State() == record.Garbled {
			a.blame(p, errGarbled)
		}
	}
}
