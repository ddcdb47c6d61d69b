package sheet

import (
	"roofside/calc/airflow"
	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// By says what a belt's force is set by.
type By string

// What forces are set by, the one that rules first.
const (
	ByListed   By = "listed"   // a force on the belt maker's card
	ByMeasured By = "measured" // the power that the fan is known to take
	ByPlate    By = "plate"    // the motor's plate power
)

// Edges are the least and the greatest force at the middle of the span, by the power
// itself and a belt without stiffness. Under is the least by those textbooks that leave
// out what the belt's own turning takes; Over is what a service factor and the belt's
// stiffness allow above the greatest.
type Edges struct{ Under, Least, Most, Over Answer[unit.Force] }

// Ages are what a belt should take by how old it is.
type Ages struct {
	New   Edges // in its first days
	RunIn Edges
}

// Of returns the edges for an age: while it is not said, those of a new belt.
func (a Ages) Of(age record.BeltAge) Edges {
	if age == record.RunInBelt {
		return a.RunIn
	}
	return a.New
}

// An Aim is what a belt should take for one power.
type Aim struct {
	Power   Answer[unit.Power]
	Tension Answer[unit.Force] // the least of each strand of each belt at rest
	Ages
}

// A Tension is what the belt at one setting should take.
type Tension struct {
	Run
	Press    Answer[unit.Length] // how far to press: the mark of the rule nearest to 1/64 of the span
	Off      Answer[unit.Ratio]  // what half a mark does to the force
	Listed   Ages                // by the belt maker's card
	Measured Aim
	Plate    Aim
	Mass     Answer[unit.LinearMass]

	f    *record.Fan
	open bool // what the fan is known to take bounds nothing
}

// TensionAt answers with what the new belt should take at a setting where the fan
// turns at speed, pressed in by whole marks of a rule.
func TensionAt(f *record.Fan, b *Basis, r Run, speed Answer[unit.Speed], mark unit.Length) *Tension {
	t := &Tension{Run: r, Press: pressed(r.Span, mark), Mass: beltMass(f), f: f, open: b.open}
	{
		var a Ask
		h := Use(&a, "h", t.Press)
		off := Take(&a, "Δh", mark/2)
		t.Off = Solve(&a, FromPlace, "belt.deflection.error", nil, func() (unit.Ratio, error) { return unit.Ratio(off.V() / h.V()), nil })
	}
	t.Measured = t.aim(PowerAt(f, b, speed, PlannedAir(f)))
	t.Plate = t.aim(Read("Pₙ", FromPlatePower, &f.New.MotorPower))
	t.Listed = t.listed()
	return t
}

// Rules returns what the force is set by. What was entered and is no value rules,
// too, and hides what comes after it.
func (t *Tension) Rules() By {
	switch {
	case known(&t.f.Card.Force):
		return ByListed
	case t.measured():
		return ByMeasured
	}
	return ByPlate
}

// measured tells whether something is said of the power that the fan takes, be it no value
// or nothing that bounds it: the plate's doesn't stand in for it.
func (t *Tension) measured() bool {
	return t.Measured.Power.Known() || t.Measured.Power.Fault != nil || t.open
}

// Edges returns what a belt of an age should take, by what rules.
func (t *Tension) Edges(age record.BeltAge) Edges {
	switch t.Rules() {
	case ByListed:
		return t.Listed.Of(age)
	case ByMeasured:
		return t.Measured.Of(age)
	}
	return t.Plate.Of(age)
}

// Power answers with the power that the belts are to carry: known, or else the
// motor plate's.
func (t *Tension) Power() Answer[unit.Power] {
	if t.measured() {
		return t.Measured.Power
	}
	return t.Plate.Power
}

// PowerAt answers with the power that the new drive carries at a fan speed and air
// temperature: by the basis, with the cube of speed and with density.
func PowerAt(f *record.Fan, b *Basis, speed Answer[unit.Speed], air Answer[unit.Temperature]) Answer[unit.Power] {
	var a Ask
	b.ask(&a, f)
	p, n1, n2, k := Use(&a, "P₁", b.Power), Use(&a, "n₁", b.Speed), Use(&a, "n₂", speed), Use(&a, "ρ₂/ρ₁", b.denser(air))
	if b.trial != nil && speed.From != FromSheaves && speed.Value == b.Speed.Value {
		n1.Band, n2.Band = 0, 0 // one reading, whose error cancels
	}
	at := At{"n1": n1.Term, "n2": n2.Term, "w1": p.Term}
	return Solve(&a, b.From, "air.laws", at, func() (unit.Power, error) {
		return airflow.PowerAtSpeed(p.V(), n1.V(), n2.V(), 1, unit.Density(k.V()))
	})
}

// pressed answers with the mark nearest to 1/64 of the span, at least one.
func pressed(span Answer[unit.Length], mark unit.Length) Answer[unit.Length] {
	var a Ask
	t := Use(&a, "t", span)
	t.Band = 0 // a mark is chosen, not known
	return Solve(&a, FromPlace, "belt.deflection", At{"span": t.Term}, func() (unit.Length, error) {
		return belt.DeflectionMark(t.V(), mark)
	})
}

// beltMass answers with the mass of the new belt for each length: as entered, or
// the usual one of its section.
func beltMass(f *record.Fan) Answer[unit.LinearMass] {
	if known(&f.Card.Mass) {
		return Read("m", FromStamp, &f.Card.Mass)
	}
	var a Ask
	a.Need(&f.New.Section)
	m, ok := belt.TypicalMass(drive.Section(f.New.Section.Value()))
	if !ok && f.New.Section.State() == record.Known {
		a.miss(&f.Card.Mass)
	}
	usual := Take(&a, "m", m)
	usual.Band = float64(m) * float64(belt.MassSpread)
	return Solve(&a, FromTypical, "belt.mass", nil, func() (unit.LinearMass, error) { return usual.V(), nil })
}

func (t *Tension) aim(power Answer[unit.Power]) Aim {
	x := Aim{Power: power, Tension: t.static(power, t.Mass)}
	var a Ask
	p, s := Use(&a, "P", power), Take(&a, "s", belt.ServiceFactorHigh)
	design := Solve(&a, power.From, "belt.power.design", At{"power": p.Term}, func() (unit.Power, error) {
		return belt.DesignPower(p.V(), s.V())
	})
	light, full := t.static(power, fixed(unit.LinearMass(0), "")), t.static(design, t.Mass)
	edges := func(pick func(belt.Forces) belt.Band) Edges {
		low := func(f belt.Forces) unit.Force { return pick(f).Low }
		high := func(f belt.Forces) unit.Force { return pick(f).High }
		return Edges{t.edge(light, false, low), t.edge(x.Tension, false, low), t.edge(x.Tension, false, high), t.edge(full, true, high)}
	}
	x.RunIn = edges(func(f belt.Forces) belt.Band { return f.RunIn })
	x.New = edges(func(f belt.Forces) belt.Band { return f.New })
	return x
}

// static answers with the tension of each strand of each belt at rest for a power and a
// belt's mass.
func (t *Tension) static(power Answer[unit.Power], mass Answer[unit.LinearMass]) Answer[unit.Force] {
	var a Ask
	p, v, arc := Use(&a, "P", power), Use(&a, "v", t.Speed), Use(&a, "θ", t.Arc)
	n := a.belts(&t.f.New)
	if !mass.Known() && mass.Fault == nil {
		mass = fixed(unit.LinearMass(0), "") // some 4 % low without
	}
	m := Use(&a, "m", mass)
	at := At{"power": p.Term, "v": v.Term, "arc": arc.Term, "belts": {Place: &t.f.New.Belts}, "mass": m.Term}
	return Solve(&a, power.From, "belt.tension", at, func() (unit.Force, error) {
		return belt.StaticTension(p.V(), v.V(), arc.V(), n, m.V(), belt.TensionByStatics)
	})
}

// edge answers with a force for a tension: of a belt without stiffness, whose band
// reaches to the stiffest, or of the stiffest.
func (t *Tension) edge(tension Answer[unit.Force], stiffest bool, pick func(belt.Forces) unit.Force) Answer[unit.Force] {
	var a Ask
	s, y := Use(&a, "T", tension), Take(&a, "Y", unit.Force(0))
	if most := t.stiffness(); stiffest {
		y.Base = float64(most)
	} else {
		y.Band = float64(most)
	}
	return t.pressing(&a, tension.From, "belt.force.bands", At{"tension": s.Term}, func() (unit.Force, error) {
		f, err := belt.ForceBands(s.V(), max(y.V(), 0))
		return pick(f), err
	})
}

// stiffness returns the most that the belt's stiffness adds to a strand's tension: of
// a single belt, whose other span gives way, the pressed span's share.
func (t *Tension) stiffness() unit.Force {
	section := drive.Section(t.f.New.Section.Value())
	if s, _, ok := parseBelt(t.f.New.BeltNumber.Text()); ok {
		section = s
	}
	most, _ := belt.TypicalStiffness(section)
	if t.f.New.Belts.Value() == "1" {
		if share, err := belt.StretchShare(most, t.Span.Value, t.Belt.Value); err == nil {
			most = share
		}
	}
	return most
}

// CardApart tells whether the force on the belt maker's card and the one for the power
// that the fan takes have nothing in common for a belt of an age: the card is written
// for the most that such a belt carries.
func (t *Tension) CardApart(age record.BeltAge) bool {
	card, power := t.Listed.Of(age), t.Measured.Of(age)
	if !card.Least.Known() || !power.Least.Known() {
		return false
	}
	return card.Least.Value > power.Over.Value*(1+slack) || card.Most.Value < power.Least.Value*(1-slack)
}

// listed answers with the edges of a force on the belt maker's card.
func (t *Tension) listed() Ages {
	edges := func(band func(unit.Force, unit.Velocity) (belt.Band, error)) Edges {
		edge := func(pick func(belt.Band) unit.Force) Answer[unit.Force] {
			var a Ask
			p, v := Want(&a, "P", &t.f.Card.Force), Use(&a, "v", t.Speed)
			at := At{"listed": p.Term, "v": p.Term} // a list that does not hold at this speed
			return t.pressing(&a, FromCard, "belt.force.listed", at, func() (unit.Force, error) {
				b, err := band(p.V(), v.V())
				return pick(b), err
			})
		}
		least, most := edge(func(b belt.Band) unit.Force { return b.Low }), edge(func(b belt.Band) unit.Force { return b.High })
		return Edges{least, least, most, most}
	}
	return Ages{RunIn: edges(belt.ListedBand), New: edges(belt.ListedNewBand)}
}

// UnderLists tells whether a force on the belt maker's card rules at a belt speed that
// handbooks' lists don't go down to: it is taken as it is.
func (t *Tension) UnderLists() bool {
	return t.Rules() == ByListed && t.Speed.Known() && t.Speed.Value < belt.ListedFrom*(1-slack)
}

// pressing solves for a force at 1/64 of the span, taken at the mark that is
// pressed to.
func (t *Tension) pressing(a *Ask, from From, method string, at At, force func() (unit.Force, error)) Answer[unit.Force] {
	h, span := Use(a, "h", t.Press), Use(a, "t", t.Span)
	return Solve(a, from, method, at, func() (unit.Force, error) {
		f, err := force()
		if err != nil {
			return 0, err
		}
		return belt.ForceAt(f, h.V(), span.V())
	})
}

// strand answers with the tension that a force at the mark stands for.
func (t *Tension) strand(force Answer[unit.Force]) Answer[unit.Force] {
	var a Ask
	p, h, span := Use(&a, "P", force), Use(&a, "h", t.Press), Use(&a, "t", t.Span)
	span.Band = 0 // the force holds it already
	return Solve(&a, force.From, "belt.force", At{"force": p.Term}, func() (unit.Force, error) {
		r, err := belt.ReadForce(p.V(), 0, h.V(), 0, span.V())
		if err != nil {
			return 0, err
		}
		return belt.TensionFromForce(r.Value, 0)
	})
}

// Frequency answers with the frequency that a span gives when plucked, at a force
// at the mark.
func (t *Tension) Frequency(force Answer[unit.Force]) Answer[unit.Frequency] {
	var a Ask
	m, span, T := Use(&a, "m", t.Mass), Use(&a, "t", t.Span), Use(&a, "T", t.strand(force))
	return Solve(&a, force.From, "belt.frequency", At{"mass": m.Term, "span": span.Term, "tension": T.Term}, func() (unit.Frequency, error) {
		return belt.FrequencyFromTension(m.V(), span.V(), T.V())
	})
}

// ShaftLoad answers with how hard all belts pull on each shaft at rest, at a force
// at the mark.
func (t *Tension) ShaftLoad(force Answer[unit.Force]) Answer[unit.Force] {
	var a Ask
	T, arc := Use(&a, "T", t.strand(force)), Use(&a, "θ", t.Arc)
	n := a.belts(&t.f.New)
	at := At{"tension": T.Term, "arc": arc.Term, "belts": {Place: &t.f.New.Belts}}
	return Solve(&a, force.From, "belt.shaft.static", at, func() (unit.Force, error) {
		return belt.ShaftLoadStatic(T.V(), n, arc.V())
	})
}
