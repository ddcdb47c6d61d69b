package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// belt is the belt of the new drive at the setting to run at, with the sheaves it is
// to have, and a spare: as many again as run side by side.
func (l *bringing) belt() {
	s := &l.f.New
	m := Material{Spec: Spec{Thing: TheBelt}, Plan: Bring}
	move, _ := NextMove(l.f, l.table)
	run := RunAt(l.f, SetTurns(l.f, l.table, move), nil)
	if l.motor != nil {
		run.Motor = *l.motor
	}
	if l.driven != nil {
		run.Fan = *l.driven
	}
	fits := Fits(l.f, run)
	tooShort := fits[0].Center.Fault != nil && run.Motor.Known() && run.Fan.Known() // to go around the sheaves at all
	switch own := fits[0]; {
	case own.Role == Fitted && (!own.Length.Known() || own.Verdict.Level != Stop && !tooShort):
		m.Name = own.Name
		m.Length = told(&m, own.Length)
		if !own.Length.Known() {
			m.Name = s.BeltNumber.Text()
		}
		if own.Verdict.Level == Unjudged {
			m.lacks(own.Verdict.Wanted, own.Verdict.Fault)
		}
		m.why("belt-entered", "materials", &s.BeltNumber, &s.Belts)
	default:
		reason := "belt-length"
		if own.Role == Fitted {
			reason, fits = "belt-instead", fits[1:]
		}
		if x := suiting(fits); x != nil {
			m.Name = x.Name
			m.Length = told(&m, x.Length)
		} else {
			m.Section = sectionOf(s)
			m.Length = told(&m, LengthFor(l.f, run))
			if len(fits) > 0 {
				m.lacks(fits[0].Verdict.Wanted, fits[0].Length.Fault)
			}
			if len(m.Wanted) == 0 && m.Fault == nil { // no belt is reached by the base as it stands
				m.Wanted = []record.Place{&s.Center, &s.TravelToward, &s.TravelAway}
			}
		}
		m.why(reason, "belt.standard", &s.BeltNumber, &s.Center, &s.TravelToward, &s.TravelAway, &s.Belts)
	}
	var a Ask
	n := a.belts(s)
	m.lacks(a.wanted, a.fault)
	m.Count = 2 * n
	l.put(m)
}

// suiting returns the belt that suits best of those whose base travel is judged: the
// one that moves the base least of those of the best level; nil for none.
func suiting(fits []Fit) *Fit {
	var best *Fit
	for i := range fits {
		x := &fits[i]
		if !x.Length.Known() || x.Verdict.Level != Within && x.Verdict.Level != Watch {
			continue
		}
		if best == nil || x.Verdict.Level < best.Verdict.Level || x.Verdict.Level == best.Verdict.Level && abs(float64(x.Move.Value)) < abs(float64(best.Move.Value)) {
			best = x
		}
	}
	return best
}

func sectionOf(s *record.Side) string { return string(s.Section.Value()) }

// sheave says what becomes of the motor sheave: the setting to take it to, or what to
// buy where none reaches the target. Where the target itself must not be run, no
// sheave helps and there is no line.
func (l *bringing) sheave() {
	f, s := l.f, &l.f.New
	m := Material{Spec: Spec{Thing: MotorSheave}, Plan: Keep, Count: 1}
	move, wanted := NextMove(f, l.table)
	switch move.Do {
	case DoAsk:
		m.Plan, m.Count = Unsure, 0
		m.lacks(wanted, nil)
		for _, a := range []Answer[unit.Speed]{l.table.Speed, l.table.Target} {
			m.lacks(nil, a.Fault)
		}
		if m.Fault == nil {
			m.lacks(nil, NowTurns(f).Fault)
		}
		m.why("sheave-unknown", "drive.setting")
	case DoOpen, DoClose, DoStay:
		m.Turns = some(move.To)
		m.why("sheave-set", "drive.setting", &s.Turns)
	case DoHold, DoTension, DoCheck:
		m.why("sheave-settle", "drive.setting")
	case DoFrequency:
		m.why("sheave-drive", "drive.vfd", &f.Supply)
	case DoFixed:
		reached := TargetReached(f, l.table.Speed, l.table.Target)
		if reached.Level == Watch {
			l.buySheave()
			return
		}
		if reached.Level == Unjudged {
			m.lacks(reached.Wanted, reached.Fault)
		}
		m.why("sheave-fixed", "drive.tolerance", &s.MotorSheave, &s.FanSheave)
	case DoNone:
		l.buySheave()
		return
	}
	l.put(m)
}

// buySheave is the motor sheave that reaches the target under the fan sheave, or the
// fan sheave over the motor sheave where only that is within its limits. The old
// fan's own serves where it is as large; with a bushing where its bore is larger.
func (l *bringing) buySheave() {
	f := l.f
	h := SheavesFor(f)
	if h.AtTheTarget.Level == Stop {
		return
	}
	m := Material{Spec: Spec{Thing: MotorSheave}, Plan: Bring, Count: 1}
	need, old, shaft := h.Motor, MotorPitch(&f.Old), shaftOf(&f.New.Fit, false)
	had, size := shaftOf(&f.Old.Fit, false), &l.motor
	if thing, _ := h.instead(); thing == FanSheave {
		m.Thing = thing
		need, old, shaft, had = h.Fan, FanPitch(&f.Old), shaftOf(&f.New.Fit, true), shaftOf(&f.Old.Fit, true)
		size = &l.driven
		if _, most := usualTurns(&f.New); most.Known() && f.New.Sheave.Value() == record.Adjustable { // as SheavesFor takes it
			half := MotorPitchAt(&f.New, Setting(most.Value/2))
			l.motor = &half
		}
	}
	if old.Known() && need.Known() && sectionOf(&f.Old) == sectionOf(&f.New) && sectionOf(&f.New) != "" {
		low, high := float64(old.Low()/need.Value), float64(old.High()/need.Value)
		if m.Thing == FanSheave { // the larger the fan sheave, the slower
			low, high = float64(need.Value/old.High()), float64(need.Value/old.Low())
		}
		if low >= 1-slack && high <= 1+float64(over(f))+slack && l.reuse(m, old, shaft, had) {
			*size = &old
			return
		}
	}
	*size = &need
	m.Pitch = told(&m, need)
	m.Bore = told(&m, Read("b", FromPlace, shaft.bore))
	m.Key = told(&m, Read("k", FromPlace, shaft.key))
	m.why("sheave-buy", "drive.speed", shaft.bore, shaft.key, &f.New.FanSheave, &f.New.MotorSheave)
	l.put(m)
}

// A shaft is where the bore and the key of a fan's sheave stand.
type shaft struct{ bore, key *record.Entry[unit.Length] }

func shaftOf(t *record.Fit, fan bool) shaft {
	if fan {
		return shaft{&t.FanBore, &t.FanKey}
	}
	return shaft{&t.MotorBore, &t.MotorKey}
}

// reuse puts the old fan's sheave on the new shaft, with a bushing where it is bored
// larger; it reports false where it is not known to go on.
func (l *bringing) reuse(m Material, pitch Answer[unit.Length], on, from shaft) bool {
	shaft, bore := Read("b", FromPlace, on.bore), Read("b", FromPlace, from.bore)
	if !shaft.Known() || !bore.Known() {
		return false
	}
	apart, within := bore.Value-shaft.Value, bore.Band+shaft.Band
	if apart < -within-slack {
		return false
	}
	m.Plan, m.Pitch = Keep, some(pitch.Value)
	m.why("sheave-old", "drive.speed", &l.f.Old.MotorSheave, &l.f.Old.FanSheave)
	l.put(m)
	if apart > within+slack {
		b := Material{Spec: Spec{Thing: ShaftBushing, Bore: some(shaft.Value), Inside: some(bore.Value)}, Plan: Bring, Count: 1}
		b.Key = told(&b, Read("k", FromPlace, on.key))
		b.why("bores-differ", "materials", on.bore, from.bore)
		l.put(b)
	}
	return true
}
