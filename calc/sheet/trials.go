package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// trials are a fan's, each judged once: several answers of a table go by what a reading
// is worth.
type trials struct {
	f    *record.Fan
	said map[*record.Trial]Verdict
}

func trialsOf(f *record.Fan) *trials { return &trials{f, map[*record.Trial]Verdict{}} }

// verdict is [TrialVerdict].
func (s *trials) verdict(t *record.Trial) Verdict {
	v, ok := s.said[t]
	if !ok {
		v = TrialVerdict(s.f, t)
		s.said[t] = v
	}
	return v
}

// believed tells whether a speed was read that the drive can give at full speed.
func (s *trials) believed(t *record.Trial) bool {
	return known(&t.Reading.Speed) && !refused(s.f, &s.f.New, &t.Reading, func() Verdict { return s.verdict(t) })
}

// last is [LastReading]. Once a drive puts out another frequency, what was read before
// scales nothing.
func (s *trials) last() *record.Trial {
	var now *record.Entry[unit.Frequency] // a drive's output since
	for i := len(s.f.Trials) - 1; i >= 0; i-- {
		t := s.f.Trials[i]
		out := &t.Reading.Frequency
		as := now == nil || known(out) && out.Value() == now.Value()
		if as && (known(&t.Turns) || s.f.New.Sheave.Value() == record.Fixed) && s.believed(t) {
			return t
		}
		if now == nil && known(out) && s.f.Supply.Value() == record.Inverter {
			now = out
		}
	}
	return nil
}
