package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
)

// pipe is what joins the opening and the conduit, the conduit itself where new one is
// laid, its couplings and straps. A conduit too small for its conductors or its length, or of a kind
// that must stay dry, changes all of them, so that nothing else is said until the record
// has another.
func (l *bringing) pipe() {
	r := &l.f.Raceway
	switch {
	case dryOnly(l.f, &r.Conduit):
		l.liquidtight(&r.Conduit, &r.Size)
		return
	case l.f.Opening.Kind.Value() == record.OpeningConduit && dryOnly(l.f, &l.f.Opening.Conduit):
		l.liquidtight(&l.f.Opening.Conduit, &l.f.Opening.Size)
		l.conduit()
		return
	}
	if v := l.refused(); v.Level == Stop {
		reason := "fill"
		if v.Rule == RuleSmallLong {
			reason = "small-long"
		}
		m := Material{Spec: Spec{Thing: TheConduit, Conduit: raceway.Conduit(r.Conduit.Value())}, Plan: Bring}
		if smallest := SmallestRaceway(l.f); smallest.Known() {
			m.Size = smallest.Value.Size
		} else {
			m.lacks(smallest.Wanted, smallest.Fault)
		}
		m.Amount = told(&m, Read("L", FromPlace, &r.Length))
		m.lacks([]record.Place{&r.Size}, nil)
		m.why(reason, v.Method, &r.Conduit, &r.Size)
		l.put(m)
		others := Material{Spec: Spec{Thing: Fittings}, Plan: Unsure, Wanted: []record.Place{&r.Size}}
		others.why(reason, v.Method)
		l.put(others)
		return
	}
	l.joint()
	l.conduit()
}

// refused is what stops the conduit as it is: its wires fill it beyond what they may, or
// it is 3/8 and too long.
func (l *bringing) refused() Verdict {
	return Worst(append([]Verdict{FillVerdict(l.f)}, judgeRun(l.f)...))
}

// liquidtight is what goes in the place of a flexible conduit that must stay dry: of
// its size, unless the conductors fill that beyond what they may.
func (l *bringing) liquidtight(conduit *record.Choice[record.Conduit], size *record.Choice[record.TradeSize]) {
	const instead = raceway.LFMC
	from := []record.Place{conduit, size, &l.f.Raceway.Site}
	m := Material{Spec: Spec{Thing: TheConduit, Conduit: instead}, Plan: Bring}
	m.lacks([]record.Place{conduit}, nil)
	if r := &l.f.Raceway; conduit == &r.Conduit {
		m.Size = l.sizeIn(instead)
		m.Amount = told(&m, Read("L", FromPlace, &r.Length))
	} else {
		m.Size = raceway.TradeSize(size.Value())
	}
	if m.Size == "" {
		m.lacks([]record.Place{size}, nil)
	}
	m.why("conduit-wet", "raceway.place", from...)
	l.put(m)
	others := Material{Spec: Spec{Thing: Fittings}, Plan: Unsure, Wanted: []record.Place{conduit}}
	others.why("conduit-wet", "raceway.place")
	l.put(others)
}

// sizeIn returns the trade size of another conduit for the record's conductors: the
// one that is entered, or a larger one that takes them; "" where that isn't known.
func (l *bringing) sizeIn(conduit raceway.Conduit) raceway.TradeSize {
	other := *l.f
	if other.Raceway.Conduit.Set(string(conduit)) != nil {
		return ""
	}
	if FillVerdict(&other).Level == Stop {
		return SmallestRaceway(&other).Value.Size
	}
	return raceway.TradeSize(other.Raceway.Size.Value())
}

// joint is the parts between the opening and the conduit, as [Adapter] has them, and
// what goes with them: a bonding jumper, insulating bushings.
func (l *bringing) joint() {
	f, o, r := l.f, &l.f.Opening, &l.f.Raceway
	from := []record.Place{&o.Kind, &o.Size, &o.Conduit, &r.Conduit, &r.Size, &r.Site}
	a := Adapter(f)
	if !a.Known() {
		m := Material{Spec: Spec{Thing: Fittings}, Plan: Unsure}
		m.lacks(a.Wanted, a.Fault)
		m.why("joint", a.Method, from...)
		l.put(m)
	}
	bushed := 0
	for _, p := range a.Value.Parts {
		m := Material{Spec: l.part(p), Plan: Bring, Count: 1}
		switch p.Kind {
		case raceway.LocknutPair:
			m.Count = 2
		case raceway.EndBushing:
			bushed = 1
		}
		m.why("joint", a.Method, from...)
		l.put(m)
	}
	for _, v := range JointVerdicts(f, a) {
		if v.Rule != RuleBond {
			continue
		}
		m := Material{Spec: Spec{Thing: BondingJumper}, Plan: Bring, Count: 1}
		m.why("bond", v.Method, &f.New.MotorVolts, &o.Kind)
		if v.Level == Unjudged {
			m.Plan, m.Count = Unsure, 0
			m.lacks(v.Wanted, v.Fault)
		} else if g := l.circuit.Ground; g.Known() {
			m.Wire = g.Value.Table
		} else {
			m.lacks(g.Wanted, g.Fault)
		}
		l.put(m)
	}
	largest := raceway.WireSize("")
	for _, w := range f.Wires {
		if size := raceway.WireSize(w.Size.Value()); w.Where.Value() != record.InBox && rank(size) > rank(largest) {
			largest = size
		}
	}
	if asked, _ := raceway.BushingAsked(largest); asked && r.Size.State() == record.Known {
		m := Material{Spec: Spec{Thing: InsulatingBushing, Size: raceway.TradeSize(r.Size.Value())}, Plan: Bring, Count: 1}
		if r.Length.State() == record.Known {
			m.Count = 2
		}
		m.why("large-wire", "raceway.bushing", &r.Size)
		if m.Count -= bushed; m.Count > 0 {
			l.put(m)
		}
	}
}

// part returns what is said of a fitting over a counter.
func (l *bringing) part(p raceway.Part) Spec {
	s := Spec{Thing: Thing(p.Kind), Wet: site(l.f) == raceway.Outdoors}
	s.Size, s.To, s.Conduit = p.Sizes()
	switch p.Kind {
	case raceway.LocknutPair:
		s.Thing = Thing(raceway.Locknut)
	case raceway.EndBushing:
		return Spec{Thing: InsulatingBushing, Size: s.Size}
	}
	return s
}

// conduit is the new conduit between the opening and its other end. While no length
// is entered, the one that is there stays.
func (l *bringing) conduit() {
	r := &l.f.Raceway
	conduit, size := raceway.Conduit(r.Conduit.Value()), raceway.TradeSize(r.Size.Value())
	if conduit == "" || size == "" { // the joint asks for them
		return
	}
	m := Material{Spec: Spec{Thing: TheConduit, Conduit: conduit, Size: size}, Plan: Bring}
	if s := r.Length.State(); s == record.Unknown || s == record.Illegible {
		m.Plan, m.Wanted = Keep, []record.Place{&r.Length}
		m.why("conduit-stays", "", &r.Conduit, &r.Size)
		l.put(m)
		return
	}
	from := []record.Place{&r.Conduit, &r.Size, &r.Length}
	m.Amount = told(&m, Read("L", FromPlace, &r.Length))
	m.why("conduit-new", "", from...)
	mounting := raceway.Flexing // a fan vibrates, and tips up on its hinge
	if !conduit.Flexible() {
		mounting = raceway.Still
		if n, err := raceway.Sticks(m.Amount.V); err == nil {
			m.Count = n
		}
	}
	l.put(m)
	if !m.Amount.Known {
		return
	}
	if m.Count > 1 {
		c := Material{Spec: Spec{Thing: Thing(raceway.Coupling), Size: size, To: size, Conduit: conduit, Wet: site(l.f) == raceway.Outdoors}, Plan: Bring, Count: m.Count - 1}
		c.why("lengths", "raceway.sticks", &r.Length)
		l.put(c)
	}
	for _, p := range farEnd(conduit, size) {
		c := Material{Spec: l.part(p), Plan: Bring, Count: 1}
		c.why("far-end", "", &r.Length)
		l.put(c)
	}
	s := Material{Spec: Spec{Thing: Strap, Size: size, Conduit: conduit}, Plan: Bring}
	hold, _ := raceway.SupportOf(conduit, size) // what it refuses, so do the straps
	n, err := raceway.Straps(conduit, size, m.Amount.V, mounting)
	switch {
	case err != nil:
		s.Fault = &Fault{Place: &r.Size, Err: err}
	case n == 0: // its fittings hold it
		return
	}
	s.Count = n
	s.why("held", "raceway.support", from...)
	s.Reasons[0].Support = hold
	l.put(s)
}

// farEnd is what ends a conduit where it comes from, whatever it meets at the fan: the
// connector that goes into a thread of its own size, and none on conduit that is threaded
// itself (common practice). What else is there is not told.
func farEnd(conduit raceway.Conduit, size raceway.TradeSize) []raceway.Part {
	thread := size
	if size == raceway.Size3by8 {
		thread = raceway.Size1by2 // connectors of 3/8 are made so
	}
	joined, _ := raceway.Join(raceway.End{Kind: raceway.Hub, Size: thread}, raceway.End{Kind: raceway.ConduitEnd, Size: size, Conduit: conduit}, raceway.Indoors, raceway.UpTo250)
	return joined.Parts
}
