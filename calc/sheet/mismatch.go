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
	var a Ask
	measured := Want(&a, "n₂", &s.Reading.Speed)
	expected := Use(&a, "n₂′", Expected(f, s))
	return Solve(&a, FromPlace, "drive.creep", At{"measured": measured.Term, "expected": expected.Term}, func() (unit.Ratio, error) {
		return drive.Creep(expected.V(), measured.V())
	})
}

// Slip and creep of a belt in order, and of one past it (memory).
const (
	usualSlip = 0.03
)

// isSlip tells whether a mismatch is the belt's slip and nothing else.
func isSlip(s *record.Side) bool {
	if s.Reading.MotorTach.State() != record.Known {
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
	m := Mismatch(f, s)
	v := Verdict{Rule: RuleMismatch, Method: "drive.creep", Value: Figure{&unit.Share, float64(m.Value)}, Limit: Figure{&unit.Share, usualSlip}}
	if !m.Known() {
		v.Level, v.Wanted = Unjudged, m.open()
		return v
	}
	if isSlip(s) {
		v.Rule = RuleSlip
	}
	if k, err := drive.Harmonic(Expected(f, s).Value, s.Reading.Speed.Value()); err == nil && k != drive.Plain {
		v.Level, v.Rule = Stop, RuleHarmonic
		return v
	}
	switch low, high := m.Low(), m.High(); {
	case high < 0:
		v.Level, v.Rule = Watch, RuleNegativeSlip
	case low > usualSlip*(1+slack):
		v.Level = Watch
	case high > usualSlip*(1+slack) || low < 0 && v.Rule == RuleSlip && -low > usualSlip:
		v.Level = Unjudged
		if p := m.Steps.Unsettled(); p != nil {
			v.Wanted = []record.Place{p}
		}
	}
	return v
}
