package sheet

import (
	"time"

	"roofside/calc/belt"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Lean is which way a reading points, also where its error is too wide to judge it.
type Lean int

// The leans.
const (
	LeanLoose  Lean = -1
	LeanNone   Lean = 0
	LeanTight  Lean = 1
	LeanUnsaid Lean = 2 // the reading or what it is held against is not known
)

// A Tautness is what one reading says of a belt.
type Tautness struct {
	Force   Answer[unit.Force] // at the mark that [Tension] presses to
	Lean    Lean
	Above   bool // above what the power itself asks, within what a service factor and stiffness allow
	Verdict Verdict
}

// HasTension tells whether a belt was read at a trial.
func HasTension(t *record.Trial) bool { return known(&t.Belt.Force) || known(&t.Belt.Frequency) }

// ReadForce answers with what a force measured at a trial says of the belt.
func (t *Tension) ReadForce(trial *record.Trial) Tautness {
	b := &trial.Belt
	var a Ask
	p, d := Want(&a, "P", &b.Force), Want(&a, "h", &b.Deflection)
	mark, span := Use(&a, "h₀", t.Press), Use(&a, "t", t.Span)
	at := At{"force": p.Term, "forceOff": p.Term, "deflection": d.Term, "deflectionOff": d.Term, "span": span.Term}
	forceOff, deflectionOff, read, pressed := unit.Force(p.Band), unit.Length(d.Band), p.V(), d.V()
	force := Solve(&a, FromPlace, "belt.reading", at, func() (unit.Force, error) {
		if _, err := belt.ReadForce(read, forceOff, pressed, deflectionOff, span.V()); err != nil {
			return 0, err // such as an error as large as the reading
		}
		r, err := belt.ReadForce(p.V(), 0, d.V(), 0, span.V())
		if err != nil {
			return 0, err
		}
		return belt.ForceAt(r.Value, mark.V(), span.V())
	})
	return t.judge(force, &b.Age)
}

// ReadFrequency answers with what the frequency of a plucked span says of the belt.
func (t *Tension) ReadFrequency(trial *record.Trial) Tautness {
	b := &trial.Belt
	var a Ask
	f, m := Want(&a, "f", &b.Frequency), Use(&a, "m", t.Mass)
	span, mark := Use(&a, "t", t.Span), Use(&a, "h₀", t.Press)
	at := At{"f": f.Term, "fOff": f.Term, "mass": m.Term, "span": span.Term}
	off, read := unit.Frequency(f.Band), f.V()
	force := Solve(&a, FromPlace, "belt.reading.frequency", at, func() (unit.Force, error) {
		if _, err := belt.ReadFrequency(m.V(), 0, span.V(), read, off, 0); err != nil {
			return 0, err
		}
		r, err := belt.ReadFrequency(m.V(), 0, span.V(), f.V(), 0, 0)
		if err != nil {
			return 0, err
		}
		return belt.ForceAt(r.Value, mark.V(), span.V())
	})
	return t.judge(force, &b.Age)
}

// judge holds a force at the mark against what the belt should take at its age, by the
// reading itself: the trade set these bands with a spring scale and a rule in mind. It
// is near an edge where its error reaches across. An error that with the edge's own is
// wider than the band says nothing, unless all of it lies to one side.
func (t *Tension) judge(force Answer[unit.Force], age *record.Choice[record.BeltAge]) Tautness {
	x := Tautness{Force: force, Lean: LeanUnsaid, Verdict: Verdict{Level: Unjudged, Rule: RuleTension, Method: "belt.verdict"}}
	e := t.within(age)
	v := &x.Verdict
	if v.Fault = force.Fault; v.Fault == nil {
		v.Fault = e.Least.Fault
	}
	v.Wanted = append(force.open(), e.Least.open()...)
	unsaid := age.State() != record.Known
	known := force.Known() && e.Least.Known()
	if unsaid && (age.State() != record.Unknown || !known || force.Value >= e.Under.Value && force.Value <= e.Over.Value) {
		v.Wanted = append(v.Wanted, age)
	}
	if !known || len(v.Wanted) > 0 {
		return x
	}
	v.Value, v.Method = Figure{&unit.Pull, float64(force.Value)}, e.Least.Steps.Method
	var edge Answer[unit.Force]
	switch rounding := slack * e.Over.Value; {
	case force.Value < e.Under.Value-rounding:
		x.Lean, edge = LeanLoose, e.Least
	case force.Value > e.Over.Value+rounding:
		x.Lean, edge = LeanTight, e.Over
	default:
		x.Lean, x.Above = LeanNone, force.Value > e.Most.Value+rounding
		if edge = e.Least; force.Value-e.Least.Value > e.Over.Value-force.Value {
			edge = e.Over
		}
	}
	far, off := unit.Force(abs(float64(force.Value-edge.Value))), force.Band+edge.Band
	v.Near = far < force.Band || x.Lean == LeanNone && force.Value < e.Least.Value*(1-slack)
	// A motor larger than its load makes no coarse reading fine.
	if room := min(e.Over.Value, t.Edges(age.Value()).Over.Value) - e.Least.Value; far < off && off > room*(1+slack) {
		v.Near = false
		if edge.Band/edge.Value >= force.Band/force.Value {
			if p := edge.Steps.Unsettled(); p != nil {
				v.Wanted = []record.Place{p}
			}
		}
		return x
	}
	v.Limit = Figure{&unit.Pull, float64(edge.Value)}
	switch x.Lean {
	case LeanLoose:
		v.Level, v.Rule = Watch, RuleLoose
	case LeanTight:
		v.Level, v.Rule = Watch, RuleTight
	default:
		v.Level = Within
	}
	return x
}

// within returns what a belt of an age should take, by what rules: while its age is not
// said, what a belt of any age may. A card that says less than the fan takes makes no
// belt hold. What the motor's plate asks for is never tight, whatever the fan takes: a
// drive is designed for the plate's power (ANSI/RMA IP-20, design power), and a belt that
// was set by it is not loosened once amps are read.
func (t *Tension) within(age *record.Choice[record.BeltAge]) Edges {
	e := t.Edges(age.Value())
	if age.State() == record.Unknown {
		used := t.Edges(record.RunInBelt)
		e.Under, e.Least = used.Under, used.Least
	}
	if plate := t.Plate.Of(age.Value()); t.Rules() == ByMeasured && plate.Most.Bounded() && plate.Most.Value > e.Over.Value {
		e.Over = plate.Most
	}
	if slips := t.Measured.RunIn; slips.Under.Value > e.Under.Value { // by a card that says less
		e.Under, e.Least = slips.Under, slips.Least
	}
	return e
}

// Taut answers with what the readings of a trial say together: what one of them
// says surely, unless another can't be right with it or is no value.
func (t *Tension) Taut(trial *record.Trial) Tautness {
	var all []Tautness
	if known(&trial.Belt.Force) {
		all = append(all, t.ReadForce(trial))
	}
	if known(&trial.Belt.Frequency) {
		all = append(all, t.ReadFrequency(trial))
	}
	if len(all) == 0 {
		return t.ReadForce(trial)
	}
	for _, x := range all {
		if x.Verdict.Fault != nil { // what is no value hides what another reading says
			return x
		}
	}
	said := all[0]
	for _, x := range all[1:] {
		switch {
		case said.contradicts(x):
			said.Lean, said.Above = LeanUnsaid, false
			said.Verdict = Verdict{Level: Unjudged, Rule: RuleReadings, Method: "belt.verdict", Value: Figure{&unit.Pull, float64(said.Force.Value)}, Limit: Figure{&unit.Pull, float64(x.Force.Value)}}
		case x.surer(said):
			said = x
		}
	}
	return said
}

// surer tells whether a reading says more than another that can be right with it: it is
// judged, or the finer of two.
func (x Tautness) surer(y Tautness) bool {
	if x.Verdict.Level == Unjudged || y.Verdict.Level == Unjudged {
		return x.Verdict.Level != Unjudged
	}
	return x.Force.Band < y.Force.Band
}

// TensionNow answers with what the latest reading at the belt says, pressed in by whole
// marks of a rule, and the trial it was read at; nil where none stands, or where m moves
// the sheave first, which undoes it.
func TensionNow(f *record.Fan, t Table, m Move, mark unit.Length) (*record.Trial, *Tension, Tautness) {
	last := lastTrial(f)
	if last == nil || !HasTension(last) || m.Do == DoOpen || m.Do == DoClose {
		return nil, nil, Tautness{}
	}
	read := TensionAt(f, t.Basis, RunAt(f, TrialTurns(last), &last.Reading), SpeedOf(f, t, last), mark)
	return last, read, read.Taut(last)
}

// BeltLoose tells whether the belt of the new drive is judged loose, as it was read last
// where the sheave stands: closing the sheave on a belt that slips overspeeds the fan
// once it is tensioned. Setting the sheave undoes what was read before.
func BeltLoose(f *record.Fan) bool {
	now := NowTurns(f)
	for i := len(f.Trials) - 1; i >= 0; i-- {
		t := f.Trials[i]
		if ordered(t) {
			continue
		}
		if known(&t.Turns) && now.Known() && abs(float64(t.Turns.Value()-now.Value)) > slack {
			return false
		}
		if HasTension(t) {
			return beltAt(f, t).Taut(t).Verdict.Rule == RuleLoose
		}
	}
	return false
}

// beltAt answers with what the belt should take at a trial: of the table of turns it
// needs the trial's own row alone.
func beltAt(f *record.Fan, t *record.Trial) *Tension {
	s, turns := trialsOf(f), TrialTurns(t)
	table := Table{Basis: fanBasis(f, s), trials: s, last: s.last()}
	table.line, table.Speed = newLine(f, table.Basis, table.last)
	table.From = table.Speed.From
	if l := table.line; l != nil {
		if d, n, err := l.at(turns.Value); err == nil {
			table.Rows = []Row{{Turns: turns.Value, Pitch: d, Speed: n, band: l.bandAt(turns.Value, d)}}
		}
	}
	return TensionAt(f, table.Basis, RunAt(f, turns, &t.Reading), SpeedOf(f, table, t), anyMark)
}

// contradicts tells whether two readings can't both be right: their bands don't meet,
// unless both say the same thing surely.
func (x Tautness) contradicts(y Tautness) bool {
	sure := func(x Tautness) bool { return x.Verdict.Level != Unjudged && !x.Verdict.Near }
	if sure(x) && sure(y) && x.Lean == y.Lean {
		return false
	}
	tolerance := unit.Force(slack) * max(x.Force.High(), y.Force.High())
	return x.Force.Known() && y.Force.Known() && (x.Force.High() < y.Force.Low()-tolerance || y.Force.High() < x.Force.Low()-tolerance)
}

// Surer returns what would let a reading at a trial be judged whose own error is wider
// than the room there is, and is not entered yet: a span's frequency, with the mass off
// the belt's card, is surer than a deflection to half a mark.
func (t *Tension) Surer(trial *record.Trial, said Tautness) (ps []record.Place) {
	if v := said.Verdict; v.Level != Unjudged || len(v.Wanted) > 0 || said.Lean == LeanUnsaid {
		return nil
	}
	for _, p := range []record.Place{&trial.Belt.Frequency, &t.f.Card.Mass} {
		if !known(p) {
			ps = append(ps, p)
		}
	}
	return ps
}

// LookAgain returns when a belt in its first days is to be tensioned again, at the
// latest; false for one that is not, that was not read, or whose time is not known.
func LookAgain(t *record.Trial) (time.Time, bool) {
	if !HasTension(t) || t.Belt.Age.Value() == record.RunInBelt || t.At.State() != record.Known {
		return time.Time{}, false
	}
	return t.At.Value().Add(belt.RecheckLatest), true
}
