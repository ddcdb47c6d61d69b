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
	motor := MotorSpeed(f, s, &s.Reading, OldLoad(f, s))
	return judgeMismatch(&s.Reading, Expected(f, s), isSlip(s), unloaded(s, motor))
}

// TrialVerdict is [MismatchVerdict] for a trial of the new drive, whose reading
// the turns table is set by.
func TrialVerdict(f *record.Fan, t *record.Trial) Verdict {
	motor := MotorSpeed(f, &f.New, &t.Reading, noLoad)
	return judgeMismatch(&t.Reading, trialExpected(f, t), false, unloaded(&f.New, motor))
}

// unloaded returns the share by which a motor may turn faster than it is taken
// to: up to its field, where its plate is all that is known.
func unloaded(s *record.Side, motor Answer[unit.Speed]) float64 {
	if field := fieldOf(s); motor.From == FromPlate && motor.Known() && field > 0 {
		return float64(field/motor.Value) - 1
	}
	return 0
}

func judgeMismatch(r *record.Reading, expected Answer[unit.Speed], slip bool, unloaded float64) Verdict {
	m := behind(r, expected)
	v := Verdict{Rule: RuleMismatch, Method: "drive.creep", Value: Figure{&unit.Share, float64(m.Value)}, Limit: Figure{&unit.Share, usualSlip}}
	if !m.Known() {
		v.Level, v.Wanted = Unjudged, m.open()
		return v
	}
	if slip {
		v.Rule = RuleSlip
	}
	if k, err := drive.Harmonic(expected.Value, r.Speed.Value()); err == nil && k != drive.Plain {
		v.Level, v.Rule, v.Method = Stop, RuleHarmonic, "drive.harmonic"
		return v
	}
	switch low, high := float64(m.Low()), float64(m.High()); {
	case high < -unloaded:
		v.Level, v.Rule = Watch, RuleNegativeSlip
	case high < 0: // a motor with little to do turns that much faster than its plate
		v.Level, v.Wanted = Unjudged, []record.Place{&r.MotorTach}
	case low > usualSlip*(1+slack):
		v.Level = Watch
	case high > usualSlip*(1+slack):
		v.Level = Unjudged
		if p := m.Steps.Unsettled(); p != nil {
			v.Wanted = []record.Place{p}
		}
	}
	return v
}
