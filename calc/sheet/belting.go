package sheet

import (
	"strconv"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Run is the new drive's belt with the motor sheave at one setting, the motor
// base moved until the belt lies tight.
type Run struct {
	Turns  Answer[unit.Turns]  // open; means nothing for a fixed sheave
	Motor  Answer[unit.Length] // pitch diameters
	Fan    Answer[unit.Length]
	Belt   Answer[unit.Length] // pitch length
	Center Answer[unit.Length]
	Span   Answer[unit.Length]
	Arc    Answer[unit.Angle] // on the smaller sheave
	Speed  Answer[unit.Velocity]
}

// SetTurns answers with the setting that the belt is to be tensioned at: the one
// to set, or where the sheave stands while none is known or something is to be
// settled at it first, as m says.
func SetTurns(f *record.Fan, t Table, m Move) Answer[unit.Turns] {
	if t.Set >= 0 && m.Do != DoHold && m.Do != DoTension && m.Do != DoCheck {
		return Setting(t.Rows[t.Set].Turns)
	}
	return NowTurns(f)
}

// TrialTurns answers with the setting of a trial.
func TrialTurns(t *record.Trial) Answer[unit.Turns] { return Read("t", FromTrial, &t.Turns) }

// RunAt answers with the new drive's belt at a setting. The motor's speed is that
// of a reading where it has one.
func RunAt(f *record.Fan, turns Answer[unit.Turns], reading *record.Reading) Run {
	s := &f.New
	if reading == nil || !known(&reading.MotorTach) && !known(&reading.Frequency) {
		reading = &s.Reading
	}
	r := Run{Turns: turns, Motor: MotorPitchAt(s, turns), Fan: FanPitch(s), Belt: BeltOn(s)}
	if len(r.Motor.Wanted) > 0 && !known(&s.Sheave) { // which diameters to ask for depends on it
		r.Motor.Wanted = []record.Place{&s.Sheave}
		r.Belt = LengthFor(f, r)
	}
	r.Center = r.centerOf(s, r.Belt)
	{
		var a Ask
		d, D, c := Use(&a, "d", r.Motor), Use(&a, "D", r.Fan), Use(&a, "C", r.Center)
		r.Span = Solve(&a, FromPlace, "belt.span", At{"driver": d.Term, "driven": D.Term, "center": c.Term}, func() (unit.Length, error) {
			return belt.Span(d.V(), D.V(), c.V())
		})
	}
	{
		var a Ask
		d, D, c := Use(&a, "d", r.Motor), Use(&a, "D", r.Fan), Use(&a, "C", r.Center)
		r.Arc = Solve(&a, FromPlace, "belt.arc", At{"driver": d.Term, "driven": D.Term, "center": c.Term}, func() (unit.Angle, error) {
			return belt.ArcSmall(d.V(), D.V(), c.V())
		})
	}
	r.Speed = beltSpeed(MotorSpeed(f, s, reading, noLoad), r.Motor)
	return r
}

// BeltOn answers with the pitch length of the belt that is to run on a side's drive:
// what runs at the center distance as it was measured, or what its number stands for
// where no center distance was, or where the number says that it is another belt.
func BeltOn(s *record.Side) Answer[unit.Length] {
	if known(&s.BeltNumber) && !known(&s.Center) {
		return NumberedLength(s)
	}
	return unlessAnother(s, BeltLength(s))
}

// unlessAnother answers with the belt measured in place, unless its number says that it
// is another.
func unlessAnother(s *record.Side, measured Answer[unit.Length]) Answer[unit.Length] {
	if known(&s.BeltNumber) && anotherBelt(s, measured) {
		return NumberedLength(s)
	}
	return measured
}

// usualSpread is how far a belt may be from its number where no table tells (common
// practice).
const usualSpread = unit.Inch / 2

// anotherBelt tells whether the number entered is not that of a belt which lies tight at
// the center distance as it was read: belts of one number differ in length, as do the
// prints for narrow ones. A number so far off that one of them must be wrong, see
// [BeltNumberVerdict], is not believed unless the base is known to go there.
func anotherBelt(s *record.Side, measured Answer[unit.Length]) bool {
	section, number, ok := parseBelt(s.BeltNumber.Text())
	length, err := belt.PitchLength(section, number)
	if !ok || err != nil || !measured.Known() {
		return false
	}
	off := unit.Length(abs(float64(measured.Value - length)))
	if off > farOff && (!known(&s.TravelToward) || !known(&s.TravelAway)) {
		return false
	}
	spread, _, err := belt.LengthTolerance(number)
	if err != nil || numberMethod(section) != "belt.number" {
		spread = usualSpread
	}
	return off > (spread+belt.NumberSpread(section))*(1+slack)
}

// centerOf answers with the center distance at which a belt lies tight.
func (r Run) centerOf(s *record.Side, length Answer[unit.Length]) Answer[unit.Length] {
	var a Ask
	d, D, l := Use(&a, "d", r.Motor), Use(&a, "D", r.Fan), Use(&a, "L", length)
	at := At{"driver": d.Term, "driven": D.Term, "pitchLength": {Place: &s.Center}}
	if length.From == FromNumber {
		at["pitchLength"] = l.Term
	}
	return Solve(&a, FromPlace, "belt.center", at, func() (unit.Length, error) {
		return belt.CenterFromLength(d.V(), D.V(), l.V())
	})
}

// LengthFor answers with the pitch length that would lie tight where the motor
// stands, with its sheave at the run's setting.
func LengthFor(f *record.Fan, r Run) Answer[unit.Length] {
	var a Ask
	d, D, c := Use(&a, "d", r.Motor), Use(&a, "D", r.Fan), Want(&a, "C", &f.New.Center)
	at := At{"driver": d.Term, "driven": D.Term, "center": c.Term}
	return Solve(&a, FromPlace, "belt.length", at, func() (unit.Length, error) {
		return belt.OpenLength(d.V(), D.V(), c.V())
	})
}

// NumberedLength answers with the pitch length that a side's belt number stands
// for.
func NumberedLength(s *record.Side) Answer[unit.Length] {
	var a Ask
	section, number, ok := parseBelt(s.BeltNumber.Text())
	n := a.words("N", &s.BeltNumber, float64(number))
	older := func() unit.Length { return 0 }
	if spread := belt.NumberSpread(section); spread > 0 { // prints differ
		less := Take(&a, "ΔL", unit.Length(0))
		less.Band = float64(spread)
		older = less.V
	}
	return Solve(&a, FromNumber, numberMethod(section), At{"number": n}, func() (unit.Length, error) {
		if !ok {
			return 0, limit.Break("number", limit.NoSuchBelt)
		}
		l, err := belt.PitchLength(section, number)
		return l - max(older(), 0), err
	})
}

// numberMethod returns how belts of a section are numbered.
func numberMethod(section drive.Section) string {
	switch section {
	case drive.SectionA, drive.SectionAX, drive.SectionB, drive.SectionBX:
		return "belt.number"
	}
	return "belt.length.number"
}

// words asks for a place that tells a number in words.
func (a *Ask) words(symbol string, p record.Place, n float64) *Term {
	a.Need(p)
	t := &Term{Symbol: symbol, Kind: unit.Ratio(0).Kind(), Base: n, Place: p}
	a.put(t)
	return t
}

// belts asks for how many belts run side by side.
func (a *Ask) belts(s *record.Side) (n int) {
	n, _ = strconv.Atoi(string(s.Belts.Value()))
	a.words("N", &s.Belts, float64(n))
	return n
}

// SpeedOf answers with the fan's speed at a trial: read, or what the table gives its
// setting.
func SpeedOf(f *record.Fan, t Table, trial *record.Trial) Answer[unit.Speed] {
	if known(&trial.Reading.Speed) {
		return trialSpeed(trialsOf(f), trial)
	}
	return t.SpeedAt(f, TrialTurns(trial))
}

// SetSpeed answers with the fan's speed at the setting of [SetTurns].
func SetSpeed(f *record.Fan, t Table, set Answer[unit.Turns]) Answer[unit.Speed] {
	return t.SpeedAt(f, set)
}
