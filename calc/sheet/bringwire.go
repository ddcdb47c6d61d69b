package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// wires is the conductors of the motor's circuit and their equipment ground, new
// ones where those that are there don't pass, and a connector for each joint.
func (l *bringing) wires() {
	c := l.circuit
	if c.Wire == nil {
		m := Material{Spec: Spec{Thing: CircuitWire}, Plan: Unsure}
		m.lacks(c.Carried.Wanted, c.Carried.Fault)
		m.why("wire-unknown", "raceway.usable")
		l.put(m)
		l.joints("", "")
		return
	}
	wire, ground := l.conductors(), l.ground()
	l.joints(wire, ground)
}

// conductors puts the motor's conductors and returns the size of new ones, "" where
// those that are there stay.
func (l *bringing) conductors() raceway.WireSize {
	f, c := l.f, l.circuit
	v := c.wiresVerdict()
	if v.Level == Within {
		l.keep(CircuitWire, "wire-passes", v.Method, carriesMotor)
		return ""
	}
	w := c.Wire
	m := Material{Spec: Spec{Thing: CircuitWire}, Plan: Bring}
	if v.Level == Unjudged {
		m.Plan = Unsure
		m.lacks(v.Wanted, v.Fault)
		if len(m.Wanted) == 0 && m.Fault == nil {
			m.Wanted = []record.Place{&w.Insulation}
		}
		m.why("wire-unknown", v.Method, &w.Size, &w.Insulation)
		l.put(m)
		return ""
	}
	for _, w := range f.Wires {
		if w.Where.Value() == record.InBox || !carriesMotor(w) {
			continue
		}
		if w.Count.State() != record.Known {
			m.lacks([]record.Place{&w.Count}, nil)
		}
		m.Count += int(w.Count.Value())
	}
	if v.Rule == RuleDryOnly || v.Rule == RuleTooHot { // the size follows from another insulation
		m.lacks([]record.Place{&w.Insulation}, nil)
	} else {
		if m.Insulation = raceway.Insulation(w.Insulation.Value()); w.Insulation.Value() == record.Unmarked {
			m.Insulation, m.Wanted = "", joined(m.Wanted, []record.Place{&w.Insulation})
		}
		if c.Least.Known() {
			m.Wire = c.Least.Value.Size
		} else {
			m.lacks(c.Least.Wanted, c.Least.Fault)
		}
	}
	m.why(string(v.Rule), v.Method, &w.Size, &w.Insulation)
	m.Amount = l.length(&m, m.Count)
	l.put(m)
	return m.Wire
}

// length returns what so many conductors take of wire, cut for the length of the
// circuit, or where that is not known of the new conduit.
func (l *bringing) length(m *Material, n int) Maybe[unit.Length] {
	run := &l.f.Circuit.Length
	if !known(run) && known(&l.f.Raceway.Length) {
		run = &l.f.Raceway.Length
	}
	each := told(m, Read("L", FromPlace, run))
	cut, err := raceway.WireCut(each.V)
	if err != nil || n == 0 { // nor is there a cut of a length that isn't known
		return Maybe[unit.Length]{}
	}
	m.why("cut", "raceway.cut", run)
	return some(cut * unit.Length(n))
}

// keep puts the rows of conductors that stay in use.
func (l *bringing) keep(thing Thing, reason, method string, which func(*record.Wire) bool) {
	for _, w := range l.f.Wires {
		if w.Where.Value() == record.InBox || !which(w) {
			continue
		}
		m := Material{Spec: Spec{Thing: thing, Wire: raceway.WireSize(w.Size.Value()), Insulation: raceway.Insulation(w.Insulation.Value())}, Plan: Keep, Count: int(w.Count.Value())}
		if w.Count.State() != record.Known {
			m.lacks([]record.Place{&w.Count}, nil)
		}
		m.why(reason, method, &w.Size, &w.Insulation)
		l.put(m)
	}
}

func grounds(w *record.Wire) bool { return w.Role.Value() == record.Grounding }

// ground puts the equipment ground and returns the size of a new one, "" where the
// one that is there stays, or none is asked for.
func (l *bringing) ground() raceway.WireSize {
	f, v := l.f, l.circuit.groundVerdict()
	if v.Level == Within {
		l.keep(GroundingWire, "ground-passes", v.Method, grounds)
		return ""
	}
	m := Material{Spec: Spec{Thing: GroundingWire}, Plan: Bring, Count: 1}
	if v.Level == Unjudged {
		m.Plan, m.Count = Unsure, 0
		m.lacks(v.Wanted, v.Fault)
		if v.Of != nil { // without print, or with one that isn't said
			m.Wanted = []record.Place{&v.Of.Insulation}
		}
		m.why("ground-unknown", v.Method, &f.Raceway.Conduit)
		l.put(m)
		return ""
	}
	if g := l.circuit.Ground; g.Known() {
		m.Wire = g.Value.Size
	} else {
		m.lacks(g.Wanted, g.Fault)
	}
	reason := string(v.Rule)
	switch v.Rule {
	case RuleFlexTips, RuleFlexSize, RuleFlexLength, RuleFlexRating:
		reason = string(RuleNoGround)
	}
	m.why(reason, v.Method, &f.Raceway.Conduit, &f.Circuit.Rating)
	m.Amount = l.length(&m, 1)
	l.put(m)
	return m.Wire
}

// joints puts a connector for each conductor that is joined to a lead of the motor.
// New conductors and a new ground are joined in their own size.
func (l *bringing) joints(wire, ground raceway.WireSize) {
	listed := false
	for _, w := range l.f.Wires {
		if w.Where.Value() == record.InBox || !carriesMotor(w) && !grounds(w) {
			continue
		}
		listed = listed || grounds(w)
		size := raceway.WireSize(w.Size.Value())
		if carriesMotor(w) && wire != "" {
			size = wire
		}
		if grounds(w) && ground != "" {
			size = ground
		}
		l.connector(w, size, int(w.Count.Value()))
	}
	if !listed && ground != "" {
		l.connector(nil, ground, 1)
	}
}

func (l *bringing) connector(w *record.Wire, size raceway.WireSize, n int) {
	m := Material{Spec: Spec{Thing: WireConnector, Wire: size, Wet: site(l.f) == raceway.Outdoors}, Plan: Bring, Count: n}
	if w != nil {
		for _, p := range []record.Place{&w.Count, &w.Size} {
			switch p.State() {
			case record.Known:
			case record.Garbled:
				m.lacks(nil, &Fault{p, errGarbled})
			default:
				m.lacks([]record.Place{p}, nil)
			}
		}
		m.why("joints", "materials", &w.Count, &w.Size)
	} else {
		m.why("joints", "materials")
	}
	l.put(m)
}
