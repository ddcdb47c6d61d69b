package sheet

import (
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A line is the new drive as plain numbers: fan speed over turns open.
type line struct {
	sheave drive.Adjustable
	pitch  unit.Length // at the reference,
	speed  unit.Speed  // and the fan's speed there
	band   float64     // of the speed, as a share
	from   From

	sync, slip unit.Speed // of the motor; 0 when its plate doesn't tell
	basis      *Basis
	motor      motor
	ratio      float64      // of fan to motor speed at the reference; 0 where load is not known
	anchors    *record.Side // whose bands count, where the reference was read
}

// LastReading returns the latest trial with its turns, where the sheave can be set,
// and a speed that the drive can give, or nil: what a tachometer has caught twice or by halves scales
// nothing.
func LastReading(f *record.Fan) *record.Trial { return trialsOf(f).last() }

// NowTurns answers with the turns the new sheave is open now: at the latest
// trial, or as shipped.
func NowTurns(f *record.Fan) Answer[unit.Turns] {
	for i := len(f.Trials) - 1; i >= 0; i-- {
		if t := f.Trials[i]; known(&t.Turns) && !ordered(t) {
			return Read("t", FromTrial, &t.Turns)
		}
	}
	return Turns(&f.New)
}

// ordered tells whether a trial holds no more than the setting that the table
// had computed for it: nothing says yet that a hand has set it.
func ordered(t *record.Trial) bool {
	r := &t.Reading
	return t.Turns.Basis() == record.Computed && !known(&r.Speed) && !known(&r.MotorTach) && !clamped(r) && !HasTension(t)
}

// NewSpeedAt answers with the new fan's speed when its sheave is open by
// turns: scaled from the latest reading, which cancels slip and any wrong
// diameter; or else by motor speed and sheaves.
func NewSpeedAt(f *record.Fan, turns Answer[unit.Turns]) Answer[unit.Speed] {
	return newSpeed(f, LastReading(f), turns)
}

func newSpeed(f *record.Fan, last *record.Trial, turns Answer[unit.Turns]) Answer[unit.Speed] {
	var a Ask
	s := &f.New
	pitch := MotorPitchAt(s, turns)
	if len(pitch.Wanted) > 0 && !known(&s.Sheave) { // which diameters to ask for depends on it
		pitch.Wanted = []record.Place{&s.Sheave}
	}
	if last != nil {
		d := Use(&a, "d", pitch)
		n := Want(&a, "nᵣ", &last.Reading.Speed)
		dr := Use(&a, "dᵣ", MotorPitchAt(s, Read("tᵣ", FromTrial, &last.Turns)))
		return Solve(&a, FromTrial, "drive.reading", nil, func() (unit.Speed, error) {
			return n.V() * unit.Speed(d.V()/dr.V()), nil
		})
	}
	return byThePitches(MotorSpeed(f, s, running(f), noLoad), pitch, FanPitch(s))
}

// running returns the reading that the new motor's speed is computed at: on a variable
// frequency drive the one that tells its output.
func running(f *record.Fan) *record.Reading {
	if f.Supply.Value() == record.Inverter {
		return driven(f)
	}
	return &f.New.Reading
}

// fixedSpeed answers with the speed that a fixed sheave gives the new fan: as it
// was read, else with the motor's slip under the load that it has there.
func fixedSpeed(f *record.Fan, b *Basis) Answer[unit.Speed] {
	s := &f.New
	speed := NewSpeedAt(f, NowTurns(f))
	if speed.From != FromSheaves {
		return speed
	}
	plate := speed
	for range 6 { // a few percent of slip, and of that the change of load: each round gains a digit
		load := NewLoad(f, b, speed, b.Air)
		if !load.Known() {
			break
		}
		speed = byThePitches(MotorSpeed(f, s, running(f), load), MotorPitch(s), FanPitch(s))
		if !speed.Known() {
			return speed
		}
		speed.Band = min(speed.Band, plate.Band+max(speed.Value-plate.Value, plate.Value-speed.Value)) // what the plate says holds at any load
	}
	return speed
}

// startTurns answers with the setting that the table starts from: that of the
// latest reading, or where the sheave stands, or any.
func startTurns(f *record.Fan, last *record.Trial) Answer[unit.Turns] {
	if last != nil {
		return Read("t", FromTrial, &last.Turns)
	}
	if now := NowTurns(f); now.Known() || now.Fault != nil {
		return now
	}
	return Read("t", FromAnchors, &f.New.AnchorTurns)
}

// newLine gathers the new drive, or what is wanted of it.
func newLine(f *record.Fan, b *Basis, last *record.Trial) (*line, Answer[unit.Speed]) {
	s := &f.New
	if s.Sheave.State() != record.Known { // which diameters to ask for depends on it
		var a Ask
		a.Need(&s.Sheave)
		Use(&a, "n₁", MotorSpeed(f, s, running(f), noLoad))
		Use(&a, "D", FanPitch(s))
		return nil, Solve(&a, FromPlace, "", nil, func() (unit.Speed, error) { return 0, nil })
	}
	if s.Sheave.Value() == record.Fixed {
		return nil, fixedSpeed(f, b)
	}
	ref := startTurns(f, last)
	speed := newSpeed(f, last, ref)
	if !speed.Known() {
		return nil, speed
	}
	if !anchored(s) { // a pitch was entered, but one makes no line
		var a Ask
		anchorsOf(&a, s)
		return nil, Solve(&a, FromAnchors, "drive.adjustable", nil, func() (unit.Speed, error) { return 0, nil })
	}
	sheave, err := drive.NewAdjustable(s.AnchorTurns.Value(), s.AnchorPitch.Value(), s.SecondAnchorTurns.Value(), s.SecondAnchorPitch.Value())
	if err != nil {
		return nil, Answer[unit.Speed]{Fault: &Fault{Err: err}}
	}
	pitch := MotorPitchAt(s, ref)
	l := &line{sheave: sheave, pitch: pitch.Value, speed: speed.Value, from: speed.From, basis: b}
	l.band = float64(speed.Band / speed.Value)
	if last != nil {
		l.band = last.Reading.Speed.Band() / last.Reading.Speed.Base()
		l.anchors = s
	}
	m, wanted := plateOf(f, 0)
	l.motor = m
	if field := fieldOf(s); field > 0 && len(wanted) == 0 && b.Known() && f.Supply.Value() != record.Inverter {
		l.sync, l.slip = field, field-s.MotorSpeed.Value()
		if ns := Synchronous(s, &s.Reading); ns.Known() {
			l.sync = ns.Value
		}
		l.settle(l.from == FromTrial || MotorSpeed(f, s, &s.Reading, noLoad).From == FromTachometer)
		if l.from != FromTrial {
			l.loaded(f, speed)
		}
	}
	return l, speed
}

// settle takes the motor's load into the line: by the plate's slip where the
// reference speed came from the plate, as it was read otherwise.
func (l *line) settle(read bool) {
	l.ratio = float64(l.speed) / float64(l.sync-l.slip) // the speed at full load was used
	if !read {
		return
	}
	l.ratio = 0
	if n := l.motorAt(l.speed); n > 0 { // else a load that no such motor turns: its slip says nothing
		l.ratio = float64(l.speed / n)
	}
}

// loaded takes out of the band what the motor's unknown load had put into it.
func (l *line) loaded(f *record.Fan, speed Answer[unit.Speed]) {
	r, b := running(f), l.basis
	speed.Band = 0 // load and slip settle on one speed
	plate, known := MotorSpeed(f, &f.New, r, noLoad), MotorSpeed(f, &f.New, r, NewLoad(f, b, speed, b.Air))
	if known.Known() && known.Bounded() && plate.Bounded() {
		l.band += min(0, float64(known.Band/known.Value)-float64(plate.Band/plate.Value)) // what the plate says holds at any load
	}
}

// settled returns the fan's speed at which the motor's slip and the load agree:
// n = ratio · (sync − slip · L · n³), solved from above.
func (l *line) settled(ratio float64) unit.Speed {
	sync, fall := float64(l.sync), float64(l.slip)*l.loadAt(1)
	n := ratio * sync
	for range 60 {
		step := (n - ratio*(sync-fall*n*n*n)) / (1 + 3*ratio*fall*n*n)
		n -= step
		if !(step > 1e-12*n) {
			break
		}
	}
	return unit.Speed(n)
}

func (l *line) loadAt(n unit.Speed) float64 {
	r := float64(n / l.basis.Speed.Value)
	return float64(l.basis.load(l.motor, r*r*r))
}

// motorAt returns the motor's speed when the fan turns at n.
func (l *line) motorAt(n unit.Speed) unit.Speed { return l.sync - l.slip*unit.Speed(l.loadAt(n)) }

// pitchFor returns the pitch diameter at which the fan turns at n.
func (l *line) pitchFor(n unit.Speed) unit.Length {
	if l.ratio > 0 {
		return l.pitch * unit.Length(float64(n)/float64(l.motorAt(n))/l.ratio)
	}
	return l.pitch * unit.Length(n/l.speed)
}

// bandAt returns the band of the speed at a setting, as a share. Around a
// reading, the anchors' own bands count only by how far the setting lies from
// the one that was read: there they cancel.
func (l *line) bandAt(t unit.Turns, d unit.Length) float64 {
	s := l.anchors
	if s == nil {
		return l.band
	}
	t1, t2 := float64(s.AnchorTurns.Value()), float64(s.SecondAnchorTurns.Value())
	per := float64(l.sheave.PerTurn())
	read := t1 + (s.AnchorPitch.Base()-float64(l.pitch))/per // turns open at the reading
	part := func(t float64) float64 { return (t - t1) / (t2 - t1) }
	here, there := part(float64(t)), part(read)
	first := (1-here)/float64(d) - (1-there)/float64(l.pitch)
	second := here/float64(d) - there/float64(l.pitch)
	return l.band + abs(first)*s.AnchorPitch.Band() + abs(second)*s.SecondAnchorPitch.Band()
}

// at returns pitch diameter and fan speed at turns open.
func (l *line) at(t unit.Turns) (unit.Length, unit.Speed, error) {
	d, err := l.sheave.Pitch(t)
	if err != nil {
		return 0, 0, err
	}
	if l.ratio > 0 {
		return d, l.settled(l.ratio * float64(d/l.pitch)), nil
	}
	return d, l.speed * unit.Speed(d/l.pitch), nil
}
