package sheet

import (
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A worksheet is what the rows of one table have in common.
type worksheet struct {
	f      *record.Fan
	l      *line
	t      *Table
	limits motorLimits
	wheel  Answer[unit.Speed]
	cold   float64      // how much denser the coldest start's air is
	frozen float64      // how much denser it may be, where that isn't known; else 0
	tells  record.Place // what would tell
	rise   float64      // how much faster than said the motor may turn
	apart  float64      // how far, as a share, the speeds of basis and row may lie apart from what they are said to be
	now    Answer[unit.Turns]
	least  Answer[unit.Turns]
	most   Answer[unit.Turns]
	motorD unit.Length // least sheaves, 0 when no table covers the case
	beltD  unit.Length
	lead   unit.Length
	length Answer[unit.Length] // of the belt
	base   base
	toward Answer[unit.Length]
	away   Answer[unit.Length]
	noAmps Verdict
}

func newWorksheet(f *record.Fan, l *line, t *Table) *worksheet {
	s := &f.New
	w := &worksheet{f: f, l: l, t: t, limits: limitsOf(f, &f.New), wheel: Read("n", FromStamp, &s.WheelMax), now: NowTurns(f), lead: drive.DefaultLead}
	w.least, w.most = usualTurns(s)
	w.motorD, w.beltD = leastSheave(s)
	if l.from != FromTrial && l.ratio == 0 {
		w.rise = rise(f)
	}
	w.judgeAmps()
	if s.FlangeLead.State() == record.Known {
		w.lead = s.FlangeLead.Value()
	}
	w.toward, w.away = Read("x", FromPlace, &s.TravelToward), Read("x", FromPlace, &s.TravelAway)
	if w.length = unlessAnother(s, BeltLength(s)); w.length.Known() {
		w.base = base{belt: w.length.Value, fan: FanPitch(s).Value, center: s.Center.Value()}
		if d := standsOn(f); d != nil {
			w.base.stands = d.Value
		}
	}
	return w
}

// lastTurns returns the opening that the table ends at: one turn beyond the
// usual greatest, and never short of an anchor or of where the sheave stands.
func (w *worksheet) lastTurns() unit.Turns {
	s := &w.f.New
	last := max(s.AnchorTurns.Value(), s.SecondAnchorTurns.Value())
	if w.most.Known() {
		last = max(last, w.most.Value+1)
	}
	if w.now.Known() {
		last = max(last, w.now.Value)
	}
	return last
}

func (w *worksheet) row(turns unit.Turns) (Row, error) {
	d, n, err := w.l.at(turns)
	if err == nil {
		err = limit.Positive("speed", n)
	}
	if err != nil {
		return Row{}, err
	}
	r := Row{Turns: turns, Pitch: d, Speed: n, band: w.l.bandAt(turns, d)}
	if w.t.Target.Known() {
		k := float64(n / w.t.Target.Value)
		r.OfTarget, r.Power = some(unit.Ratio(k)), some(unit.Ratio(k*k*k))
		if v := TargetReached(w.f, Answer[unit.Speed]{Value: n, Band: unit.Speed(r.band) * n, Steps: Steps{done: true}}, w.t.Target); v.Rule == RuleBelow {
			r.add(v)
		}
	}
	if w.now.Known() {
		if x, err := drive.CenterShift(turns-w.now.Value, w.lead); err == nil {
			r.Shift = x
		}
	}
	return r, nil
}

// judge judges a row once.
func (w *worksheet) judge(r *Row) {
	if r.judged {
		return
	}
	r.judged = true
	w.judgeMotor(r)
	w.judgeSheave(r)
	w.judgeBase(r)
}

func (w *worksheet) judgeSheave(r *Row) {
	if v, err := drive.BeltSpeed(w.motorAt(r), r.Pitch); err == nil {
		r.add(BeltSpeedVerdict(Answer[unit.Velocity]{Value: v, Steps: Steps{done: true}}))
	}
	turns := fixed(r.Turns, "")
	level := Watch
	if !w.allowed(r.Turns) {
		level = Stop
	}
	r.add(limitOf[unit.Turns]{rule: RuleUsualTurns, method: "drive.adjustable.usual", scale: &unit.TurnCount, level: level}.hold(turns, w.most))
	switch usual, _ := drive.UsualLeastTurns(drive.SectionB); {
	case !w.least.Known() && !known(&w.f.New.Section) && float64(r.Turns) < float64(usual)-slack: // for an A sheave only
		r.add(Verdict{Level: Unjudged, Rule: RuleLeastTurns, Method: "drive.adjustable.usual", Wanted: []record.Place{&w.f.New.Section}})
	case w.least.Known():
		r.add(limitOf[unit.Turns]{rule: RuleLeastTurns, method: "drive.adjustable.usual", scale: &unit.TurnCount, level: Stop, least: true}.hold(turns, w.least))
	}
	for _, c := range [2]struct {
		rule   Rule
		method string
		least  unit.Length
	}{{RuleMotorSheave, "drive.motorsheave", w.motorD}, {RuleSectionSheave, "drive.groove", w.beltD}} {
		r.add(leastVerdict(c.rule, c.method, fixed(r.Pitch, ""), c.least))
	}
}

// motorAt returns the motor's speed at a row; without load, that of its plate.
func (w *worksheet) motorAt(r *Row) unit.Speed {
	if w.l.ratio > 0 {
		return w.l.motorAt(r.Speed)
	}
	return w.f.New.MotorSpeed.Value()
}

func (w *worksheet) judgeBase(r *Row) {
	if !w.length.Known() {
		if w.now.Known() && abs(float64(r.Turns-w.now.Value)) > slack {
			r.add(Verdict{Level: Unjudged, Rule: RuleTravel, Method: "belt.travel", Wanted: w.length.open(), Fault: w.length.Fault})
		}
		return
	}
	move, err := w.base.move(r.Pitch)
	if err != nil { // at this pitch the sheaves would touch
		r.add(Verdict{Level: Unjudged, Rule: RuleTravel, Method: "belt.travel", Fault: &Fault{Place: &w.f.New.Center, Err: err}})
		return
	}
	r.Base = some(move)
	as := w.base
	as.stands = 0 // travel was measured where the center distance was
	if move, err = as.move(r.Pitch); err != nil {
		return
	}
	left := w.away
	if move < 0 {
		move, left = -move, w.toward
	}
	if move > slack {
		r.add(limitOf[unit.Length]{rule: RuleTravel, method: "belt.travel", scale: &unit.Shop, level: Watch}.hold(fixed(move, ""), left))
	}
}

// add keeps a verdict that is not within.
func (r *Row) add(v Verdict) {
	if v.Level != Within {
		r.Verdicts = append(r.Verdicts, v)
	}
}
