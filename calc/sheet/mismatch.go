package sheet

import (
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Mismatch answers with the share by which a fan's tachometer reading stays
// behind what ratio and motor give. It is slip of the belt only where the
// ratio was counted or both diameters are stamped, and the motor's own speed
// was read; otherwise the errors of those are in it.
func Mismatch(f *record.Fan, s *record.Side) Answer[unit.Ratio] {
	return behind(&s.Reading, Expected(f, s))
}

func behind(r *record.Reading, speed Answer[unit.Speed]) Answer[unit.Ratio] {
	var a Ask
	measured, expected := Want(&a, "n₂", &r.Speed), Use(&a, "n₂′", speed)
	return Solve(&a, FromPlace, "drive.creep", At{"measured": measured.Term, "expected": expected.Term}, func() (unit.Ratio, error) {
		return drive.Creep(expected.V(), measured.V())
	})
}

// usualSlip is the most that slip and creep of a belt in order come to (memory).
const usualSlip = 0.03

// isSlip tells whether a mismatch is the belt's slip and nothing else.
func isSlip(f *record.Fan, s *record.Side) bool {
	if s.Reading.MotorTach.State() != record.Known || misread(f, s, &s.Reading) {
		return false
	}
	if s.CountFan.State() == record.Known && s.CountMotor.State() == record.Known {
		return true
	}
	motor := MotorPitch(s)
	return motor.From == FromStamp && s.MotorSheave.Basis() == record.Stamped && s.FanSheave.State() == record.Known && s.FanSheave.Basis() == record.Stamped
}

// MismatchVerdict says what a difference between tachometer and ratio means:
// twice or half the expected speed is the tachometer's, a fan faster than its
// belt means a wrong diameter, and the rest is slip or mismatch.
func MismatchVerdict(f *record.Fan, s *record.Side) Verdict {
	motor := MotorSpeed(f, s, &s.Reading, OldLoad(f, s))
	expected := expectedAt(s, likely(motor, Synchronous(s, &s.Reading).Value))
	v := judgeMismatch(f, s, &s.Reading, Expected(f, s), expected, isSlip(f, s))
	v.Level = min(v.Level, Watch) // a false reading feeds nothing, and stops nobody
	return v
}

// TrialVerdict is [MismatchVerdict] for a trial of the new drive, whose reading
// the turns table is set by.
func TrialVerdict(f *record.Fan, t *record.Trial) Verdict {
	motor := MotorSpeed(f, &f.New, &t.Reading, noLoad)
	expected := trialAt(f, t, likely(motor, Synchronous(&f.New, &t.Reading).Value))
	return judgeMismatch(f, &f.New, &t.Reading, trialAt(f, t, motor), expected, false)
}

// believed tells whether a fan's speed was read at a side's own reading, and is one
// that its drive can give at full speed: see [MismatchVerdict].
func believed(f *record.Fan, s *record.Side) bool {
	return known(&s.Reading.Speed) && !refused(f, s, &s.Reading, func() Verdict { return MismatchVerdict(f, s) })
}

// refused tells whether a reading of a fan's speed feeds nothing: a tachometer that has
// caught twice or half, or the low speed of a two-speed motor.
func refused(f *record.Fan, s *record.Side, r *record.Reading, said func() Verdict) bool {
	if r.Speed.State() != record.Known {
		return false
	}
	return said().Rule == RuleHarmonic || lowSpeed(f, s, r)
}

// lowSpeed tells whether a reading is of a two-speed motor's low speed: as it is said,
// or by what the motor itself turned at.
func lowSpeed(f *record.Fan, s *record.Side, r *record.Reading) bool {
	if f.Supply.Value() != record.TwoSpeed || r.RunAt.Value() == record.HighSpeed {
		return false
	}
	if r.RunAt.Value() == record.LowSpeed {
		return true
	}
	low, err := drive.LowSpeed(s.MotorSpeed.Value(), r.MotorTach.Value())
	return err == nil && low
}

// judgeMismatch holds a reading against the speed that the drive may give, likely being
// the middle of where that lies and expected what is shown.
func judgeMismatch(f *record.Fan, s *record.Side, r *record.Reading, expected, likely Answer[unit.Speed], slip bool) Verdict {
	shown, m := behind(r, expected), behind(r, likely)
	v := Verdict{Rule: RuleMismatch, Method: "drive.creep", Value: Figure{&unit.Share, float64(shown.Value)}, Limit: Figure{&unit.Share, usualSlip}}
	if !m.Known() {
		v.Level, v.Wanted = Unjudged, m.open()
		return v
	}
	if slip {
		v.Rule = RuleSlip
	}
	if pace := pacedBy(f, s, r, likely.Value); pace.Rule != "" {
		return pace
	}
	if harmonic(likely, r) || harmonic(byPlate(f, s, r, likely), r) {
		v.Level, v.Rule, v.Method = Stop, RuleHarmonic, "drive.harmonic"
		return v
	}
	low, most := float64(m.Low()), float64(m.High())
	if likely.Value != expected.Value { // a load that nobody knows is no doubt by itself
		most = float64(m.Value)
	}
	switch {
	case float64(m.High()) < 0:
		v.Level, v.Rule = Watch, RuleNegativeSlip
	case low > usualSlip*(1+slack):
		v.Level = Watch
	case most > usualSlip*(1+slack):
		v.Level = Unjudged
		if p := m.Steps.Unsettled(); p != nil {
			v.Wanted = []record.Place{p}
		}
	}
	if v.Level < Watch && misread(f, s, r) {
		return Verdict{Level: Watch, Rule: RuleMotorReading, Method: "drive.motor.reading"}
	}
	return v
}

// harmonic tells whether a fan's reading is twice or half a speed.
func harmonic(speed Answer[unit.Speed], r *record.Reading) bool {
	k, err := drive.Harmonic(speed.Value, r.Speed.Value())
	return err == nil && k != drive.Plain
}

// byPlate answers with what the speed that a drive gives would be, went its motor as the
// plate says and not as its tachometer: one tachometer may have caught twice or half of
// both.
func byPlate(f *record.Fan, s *record.Side, r *record.Reading, speed Answer[unit.Speed]) Answer[unit.Speed] {
	plate := computedSpeed(f, s, r, noLoad)
	if read := MotorSpeed(f, s, r, noLoad); read.From == FromTachometer && plate.Known() {
		speed.Value *= plate.Value / read.Value
	}
	return speed
}

// pacedBy judges a reading at a two-speed motor that is of its low speed, or may be:
// about half the high speed with one winding, two thirds of it with two. The rule is
// empty for any other.
func pacedBy(f *record.Fan, s *record.Side, r *record.Reading, full unit.Speed) Verdict {
	if f.Supply.Value() != record.TwoSpeed || r.RunAt.Value() == record.HighSpeed {
		return Verdict{}
	}
	v := Verdict{Rule: RuleLowSpeed, Method: "drive.twospeed"}
	if lowSpeed(f, s, r) && r.MotorTach.State() == record.Known {
		full *= s.MotorSpeed.Value() / r.MotorTach.Value() // as it would be at the plate's speed
	}
	low, err := drive.LowSpeed(full, r.Speed.Value())
	v.Value = Figure{&unit.Share, float64(r.Speed.Value() / full)}
	switch said := lowSpeed(f, s, r); {
	case err != nil:
		return Verdict{}
	case said && !low:
		v.Level = Watch
	case low && !said:
		v.Level, v.Rule, v.Wanted = Unjudged, RuleHarmonic, []record.Place{&r.RunAt}
	case !said:
		return Verdict{}
	}
	return v
}
