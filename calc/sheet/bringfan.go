package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// unit is the new fan, with its weight for the crane.
func (l *bringing) unit() {
	fit := &l.f.New.Fit
	m := Material{Spec: Spec{Thing: TheFan}, Plan: Bring, Count: 1}
	if fit.Model.State() == record.Known {
		m.Name = fit.Model.Text()
	} else {
		m.Wanted = append(m.Wanted, &fit.Model)
	}
	m.Weight = told(&m, Read("m", FromPlace, &fit.Weight))
	m.why("replaces", "", &fit.Model, &fit.Weight)
	l.put(m)
}

// curb is what goes between the curb and the fan's base: an adapter where the base
// does not go over the curb, or has too much room; gasket and shims in any case.
func (l *bringing) curb() {
	curb, base := &l.f.Old.Fit, &l.f.New.Fit
	outside := []record.Place{&curb.CurbWidth, &curb.CurbLength}
	v := Worst([]Verdict{ClearanceVerdict(Clearance(l.f, false)), ClearanceVerdict(Clearance(l.f, true))})
	m := Material{Spec: Spec{Thing: CurbAdapter}, Plan: Bring, Count: 1}
	switch v.Level {
	case Unjudged:
		m.Plan, m.Count = Unsure, 0
		m.why("curb-unknown", "fit.clearance")
		for _, along := range [2]bool{false, true} {
			v := ClearanceVerdict(Clearance(l.f, along))
			m.lacks(v.Wanted, v.Fault)
		}
		l.put(m)
	case Stop, Watch:
		m.Across = told(&m, Read("c", FromPlace, &curb.CurbWidth))
		m.Along = told(&m, Read("c", FromPlace, &curb.CurbLength))
		told(&m, Read("b", FromPlace, &base.CurbWidth))
		told(&m, Read("b", FromPlace, &base.CurbLength))
		m.why(string(v.Rule), "fit.clearance", append(outside, &base.CurbWidth, &base.CurbLength)...)
		l.put(m)
	}

	seal := Material{Spec: Spec{Thing: Gasket}, Plan: Bring}
	var a Ask
	across, along := Want(&a, "w", &curb.CurbWidth), Want(&a, "l", &curb.CurbLength)
	seal.Amount = told(&seal, Solve(&a, FromPlace, "materials", nil, func() (unit.Length, error) { return 2 * (across.V() + along.V()), nil }))
	seal.why("seal", "materials", outside...)
	l.put(seal)

	level := Material{Spec: Spec{Thing: Shims}, Plan: Bring, Count: 1}
	level.why("level", "materials")
	l.put(level)
}
