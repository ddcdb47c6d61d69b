package sheet

import (
	"math"
	"slices"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Mark says what a row of the turns table stands for.
type Mark uint8

// The marks.
const (
	MarkFound   Mark = 1 << iota // nearest to the old fan's speed as found
	MarkShipped                  // the new sheave as shipped
	MarkNow                      // as it is set now
	MarkTarget                   // nearest to the target
	MarkSet                      // the row to set: the nearest at or above the target
)

// A Maybe is a number of a row that may not be known.
type Maybe[Q ~float64] struct {
	V     Q
	Known bool
}

func some[Q ~float64](v Q) Maybe[Q] { return Maybe[Q]{v, true} }

// A Row is the new drive at one setting of its motor sheave.
type Row struct {
	Turns    unit.Turns
	Pitch    unit.Length
	Speed    unit.Speed
	OfTarget Maybe[unit.Ratio] // speed, and so airflow, as a share of the target's
	Power    Maybe[unit.Ratio] // as a share of that at the target
	AmpsLow  Maybe[unit.Current]
	AmpsHigh Maybe[unit.Current]
	LoadLow  Maybe[unit.Ratio] // of plate amps
	LoadHigh Maybe[unit.Ratio]
	Base     Maybe[unit.Length] // how far the motor base moves from where it stands, away from the fan positive
	Shift    unit.Length        // how far the belt's center moves sideways from now
	Marks    Mark
	Verdicts []Verdict // those that are not within
	band     float64   // of the speed, as a share
}

// Verdict returns the worst of the row's verdicts.
func (r Row) Verdict() Verdict { return Worst(r.Verdicts) }

// A Table is the new drive at every half turn.
type Table struct {
	Rows   []Row
	Set    int // the row to set; -1 for none
	Now    int // the row as it is set now; -1 when it is not known or not a half turn
	From   From
	Band   unit.Ratio // of the speed at the setting the table starts from
	Target Answer[unit.Speed]
	Basis  *Basis
	Speed  Answer[unit.Speed] // at the setting the table starts from, under full load unless read; what is wanted stands here
	line   *line
}

const (
	mostRows = 24
	halfTurn = 0.5
)

// TurnsTable answers with the new fan's drive at every half turn of its motor
// sheave, or, in Speed, with what is wanted for it.
func TurnsTable(f *record.Fan) Table {
	b := FanBasis(f)
	t := Table{Set: -1, Now: -1, Basis: b, Target: TargetSpeed(f)}
	l, speed := newLine(f, b)
	t.Speed = speed
	if l == nil {
		return t
	}
	t.From, t.Band, t.line = speed.From, unit.Ratio(l.band), l
	w := newWorksheet(f, l, &t)
	last := w.lastTurns()
	t.Rows = make([]Row, 0, int(last/halfTurn)+1)
	for i := 0; i < mostRows && float64(i)*halfTurn <= float64(last); i++ {
		row, err := w.row(unit.Turns(i) * halfTurn)
		if err != nil {
			break // so far open that no diameter is left
		}
		t.Rows = append(t.Rows, row)
	}
	w.mark(&t)
	return t
}

// A worksheet is what the rows of one table have in common.
type worksheet struct {
	f      *record.Fan
	l      *line
	t      *Table
	limits motorLimits
	wheel  Answer[unit.Speed]
	cold   float64 // how much denser the coldest start's air is
	apart  float64 // how far, as a share, the speeds of basis and row may lie apart from what they are said to be
	now    Answer[unit.Turns]
	least  Answer[unit.Turns]
	most   Answer[unit.Turns]
	motorD unit.Length // least sheaves, 0 when no table covers the case
	beltD  unit.Length
	lead   unit.Length
	length Answer[unit.Length] // of the belt
	driven unit.Length
	nowC   unit.Length // center distance now,
	markC  unit.Length // and where travel was measured
	toward Answer[unit.Length]
	away   Answer[unit.Length]
	noAmps Verdict
}

func newWorksheet(f *record.Fan, l *line, t *Table) *worksheet {
	s := &f.New
	w := &worksheet{f: f, l: l, t: t, limits: limitsOf(f), wheel: Read("n", FromStamp, &s.WheelMax), now: NowTurns(f), lead: drive.DefaultLead}
	w.least, w.most = usualTurns(s)
	w.motorD, w.beltD = leastSheave(s)
	w.judgeAmps()
	if s.FlangeLead.State() == record.Known {
		w.lead = s.FlangeLead.Value()
	}
	w.length = BeltLength(s)
	w.toward, w.away = Read("x", FromPlace, &s.TravelToward), Read("x", FromPlace, &s.TravelAway)
	if w.length.Known() {
		w.driven, w.markC = FanPitch(s).Value, s.Center.Value()
		w.nowC = w.markC
		if w.now.Known() {
			if d, err := l.sheave.Pitch(w.now.Value); err == nil {
				if c, err := belt.CenterFromLength(d, w.driven, w.length.Value); err == nil {
					w.nowC = c
				}
			}
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
		if k < 1-slack {
			r.add(Verdict{Level: Watch, Rule: RuleBelow, Method: "drive.tolerance", Value: Figure{&unit.Rotation, float64(n)}, Limit: Figure{&unit.Rotation, float64(w.t.Target.Value)}})
		}
	}
	if w.now.Known() {
		if x, err := drive.CenterShift(turns-w.now.Value, w.lead); err == nil {
			r.Shift = x
		}
	}
	w.judgeMotor(&r)
	w.judgeSheave(&r)
	w.judgeBase(&r)
	return r, nil
}

// judgeAmps gathers what amps are judged by, or why they can't be.
func (w *worksheet) judgeAmps() {
	b := w.t.Basis
	w.noAmps = Verdict{Rule: RulePlateAmps, Method: "motor.limits"}
	cold := b.coldest(w.f)
	m, wanted := plateOf(w.f)
	if !b.Known() || len(wanted) > 0 || !cold.Known() {
		w.noAmps.Level = Unjudged
		w.noAmps.Wanted = slices.Concat(wanted, b.Wanted, cold.open())
		return
	}
	w.l.motor, w.cold = m, float64(cold.Value)
	if r := LastReading(w.f); b.trial == nil || r != b.trial && (r != nil || known(&b.trial.Reading.Speed)) {
		w.apart = w.l.band + float64(b.Speed.Band/b.Speed.Value)
	}
}

func (w *worksheet) judgeMotor(r *Row) {
	band := unit.Speed(r.band) * r.Speed
	speed := Answer[unit.Speed]{Value: r.Speed, Band: band, Steps: Steps{done: true}}
	r.add(limitOf[unit.Speed]{rule: RuleWheelMax, method: "wheel.max", scale: &unit.Rotation, level: Stop}.hold(speed, w.wheel))
	if w.noAmps.Level == Unjudged {
		r.add(w.noAmps)
		return
	}
	b, m := w.t.Basis, w.l.motor
	k := float64(r.Speed / b.Speed.Value)
	apart := w.apart + r.band - w.l.band
	least, most := k*max(1-apart, 0), k*(1+apart)
	least, most = least*least*least, most*most*most
	low, high, err := b.amps(m, least, most)
	coldLow, coldHigh, errCold := b.amps(m, least*w.cold, most*w.cold)
	if limit.First(err, errCold) != nil { // the plate and the no-load current contradict each other
		v := w.noAmps
		v.Level, v.Wanted = Unjudged, []record.Place{&w.f.New.NoLoadAmps}
		r.add(v)
		return
	}
	r.AmpsLow, r.AmpsHigh = some(low), some(high)
	r.LoadLow, r.LoadHigh = some(unit.Ratio(low/m.amps)), some(unit.Ratio(high/m.amps))
	v := w.limits.judge(coldLow, coldHigh)
	v.Cold = w.cold != 1
	if v.Level == Unjudged && len(v.Wanted) == 0 {
		v.Wanted = unsettledAmps(w.f)
	}
	r.add(v)
}

// unsettledAmps returns what would narrow a prediction of amps: the no-load
// current first, then a reading on the new drive itself.
func unsettledAmps(f *record.Fan) []record.Place {
	if !known(&f.New.NoLoadAmps) {
		return []record.Place{&f.New.NoLoadAmps}
	}
	if t := lastTrial(f); t != nil {
		return []record.Place{&t.Reading.Amps[0]}
	}
	return []record.Place{&f.Old.NoLoadAmps}
}

func (w *worksheet) judgeSheave(r *Row) {
	if v, err := drive.BeltSpeed(w.motorAt(r), r.Pitch); err == nil {
		r.add(BeltSpeedVerdict(Answer[unit.Velocity]{Value: v, Steps: Steps{done: true}}))
	}
	turns := fixed(r.Turns, "")
	r.add(limitOf[unit.Turns]{rule: RuleUsualTurns, method: "drive.adjustable.usual", scale: &unit.TurnCount, level: Watch}.hold(turns, w.most))
	if w.least.Known() {
		r.add(limitOf[unit.Turns]{rule: RuleLeastTurns, method: "drive.adjustable.usual", scale: &unit.TurnCount, level: Watch, least: true}.hold(turns, w.least))
	}
	for _, c := range [2]struct {
		rule   Rule
		method string
		least  unit.Length
	}{{RuleMotorSheave, "drive.motorsheave", w.motorD}, {RuleSectionSheave, "drive.groove", w.beltD}} {
		if c.least > 0 {
			r.add(limitOf[unit.Length]{rule: c.rule, method: c.method, scale: &unit.Shop, level: Watch, least: true}.
				hold(fixed(r.Pitch, ""), fixed(c.least, c.method)))
		}
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
			r.add(Verdict{Level: Unjudged, Rule: RuleTravel, Method: "belt.travel", Wanted: w.length.open()})
		}
		return
	}
	c, err := belt.CenterFromLength(r.Pitch, w.driven, w.length.Value)
	if err != nil { // at this pitch the sheaves would touch
		r.add(Verdict{Level: Unjudged, Rule: RuleTravel, Method: "belt.travel", Wanted: []record.Place{&w.f.New.Center}})
		return
	}
	r.Base = some(c - w.nowC)
	move, left := c-w.markC, w.away
	if move < 0 {
		move, left = -move, w.toward
	}
	if move > 0 {
		r.add(limitOf[unit.Length]{rule: RuleTravel, method: "belt.travel", scale: &unit.Shop, level: Watch}.hold(fixed(move, ""), left))
	}
}

// add keeps a verdict that is not within.
func (r *Row) add(v Verdict) {
	if v.Level != Within {
		r.Verdicts = append(r.Verdicts, v)
	}
}

func (w *worksheet) mark(t *Table) {
	put := func(i int, m Mark) {
		if i >= 0 {
			t.Rows[i].Marks |= m
		}
	}
	if found := FanSpeed(w.f, &w.f.Old); found.Known() {
		put(nearest(t.Rows, found.Value), MarkFound)
	}
	if s := &w.f.New.Turns; s.State() == record.Known {
		put(rowAt(t.Rows, s.Value()), MarkShipped)
	}
	if w.now.Known() {
		t.Now = rowAt(t.Rows, w.now.Value)
		put(t.Now, MarkNow)
	}
	if t.Target.Known() {
		put(nearest(t.Rows, t.Target.Value), MarkTarget)
		t.Set = setRow(t.Rows, t.Target.Value, over(w.f))
		put(t.Set, MarkSet)
	}
}

// rowAt returns the row of a setting, -1 for one between half turns or outside
// the table.
func rowAt(rows []Row, turns unit.Turns) int {
	i := math.Round(float64(turns) / halfTurn)
	if abs(i*halfTurn-float64(turns)) > slack || i < 0 || i >= float64(len(rows)) {
		return -1
	}
	return int(i)
}

// nearest returns the row whose speed is nearest to n; -1 for a speed that lies
// further outside the table than a half turn goes.
func nearest(rows []Row, n unit.Speed) int {
	best := -1
	for i, r := range rows {
		if best < 0 || abs(float64(r.Speed-n)) < abs(float64(rows[best].Speed-n)) {
			best = i
		}
	}
	if len(rows) > 1 && abs(float64(rows[best].Speed-n)) > abs(float64(rows[0].Speed-rows[1].Speed)) {
		return -1
	}
	return best
}

// setRow returns the row nearest at or above the target: a hood's flow is a
// least value. A row that must not be run is none; nor is the slowest of all
// when even that is more than over above the target.
func setRow(rows []Row, target unit.Speed, over unit.Ratio) int {
	best := -1
	for i, r := range rows {
		if r.Speed >= target*(1-slack) && (best < 0 || r.Speed < rows[best].Speed) {
			best = i
		}
	}
	if best < 0 || rows[best].Verdict().Level == Stop {
		return -1
	}
	if best == len(rows)-1 && rows[best].Speed > target*unit.Speed(1+over)*(1+slack) {
		return -1
	}
	return best
}
