package sheet

import (
	"slices"

	"roofside/calc/record"
)

// Sum adds up the lists of several fans: lines that are alike become one, with their
// counts and lengths added, their reasons told once and all that is wanted. Lines at
// fault stay apart.
func Sum(lists [][]Material) []Material {
	var all []Material
	for _, list := range lists {
		for _, m := range list {
			i := slices.IndexFunc(all, m.like)
			if i < 0 {
				m.Reasons, m.Wanted = slices.Clone(m.Reasons), slices.Clone(m.Wanted)
				all = append(all, m)
				continue
			}
			all[i].add(m)
		}
	}
	slices.SortStableFunc(all, func(a, b Material) int {
		return slices.Index(things[:], a.Thing) - slices.Index(things[:], b.Thing)
	})
	return all
}

func (m Material) like(o Material) bool {
	return m.Spec == o.Spec && m.Plan == o.Plan && m.Fault == nil && o.Fault == nil &&
		(m.Count > 0) == (o.Count > 0) && m.Amount.Known == o.Amount.Known && (len(m.Wanted) > 0) == (len(o.Wanted) > 0)
}

func (m *Material) add(o Material) {
	m.Count += o.Count
	m.Amount.V += o.Amount.V
	for _, r := range o.Reasons {
		i := slices.IndexFunc(m.Reasons, func(have Reason) bool { return have.Key == r.Key && have.Support == r.Support })
		if i < 0 {
			m.Reasons = append(m.Reasons, r)
			continue
		}
		m.Reasons[i].From = joined(m.Reasons[i].From, r.From)
	}
	m.Wanted = joined(m.Wanted, o.Wanted)
}

// joined returns places, each once, in a list of its own.
func joined(a, b []record.Place) []record.Place {
	all := slices.Clone(a)
	for _, p := range b {
		if !slices.Contains(all, p) {
			all = append(all, p)
		}
	}
	return all
}
