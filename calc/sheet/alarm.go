package sheet

import (
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Alarms answers with what the latest reading on the new drive says outright,
// before anything is predicted from it: a speed the drive can't give, a lost
// phase, a leg above the motor's amps. Amps at a fan tipped up are not judged,
// and that is said. What is in order is left out.
func Alarms(f *record.Fan) []Verdict {
	t := lastTrial(f)
	if t == nil {
		return nil
	}
	var all []Verdict
	if v := TrialVerdict(f, t); known(&t.Reading.Speed) && v.Level >= Watch {
		all = append(all, v)
	}
	if !clamped(&t.Reading) {
		return all
	}
	if t.Reading.TippedUp.Value() == record.Yes {
		return append(all, Verdict{Level: Watch, Rule: RuleTippedUp, Method: "air.load.proportional"})
	}
	if v := LostVerdict(&t.Reading); v.Level != Within {
		all = append(all, v)
	}
	if v := legVerdict(f, &t.Reading); v.Level >= Watch {
		all = append(all, v)
	}
	return all
}

// LostVerdict judges whether three legs tell a lost phase; fewer tell nothing.
func LostVerdict(r *record.Reading) Verdict {
	v := Verdict{Rule: RuleLostPhase, Method: "phase.lost"}
	switch lost := lossIn(r); lost {
	case phase.LossOpen, phase.LossAhead:
		v.Level = Stop
	case phase.LossUnjudged:
		v.Level = Unjudged
	}
	return v
}

// lossIn returns the lost phase that the legs of a reading tell, within each
// reading's band.
func lossIn(r *record.Reading) phase.Loss {
	var amps [3]unit.Current
	for i := range r.Amps {
		if r.Amps[i].State() != record.Known {
			return phase.LossNone
		}
		amps[i] = r.Amps[i].Value()
	}
	lost, err := phase.LostPhase(amps[0], amps[1], amps[2], phase.UsualClamp)
	if err != nil {
		return phase.LossUnjudged // legs that can't be compared, such as three of zero, are no proof of three phases
	}
	return lost.Loss
}

// errLost is the fault of legs that tell a lost phase: they tell no load.
var errLost = limit.Break("", limit.TooUnbalanced)

// legVerdict holds the leg with the most amps, as it was read, against the
// motor's plate and service-factor amps.
func legVerdict(f *record.Fan, r *record.Reading) Verdict {
	most := -1
	for i := range r.Amps {
		if r.Amps[i].State() == record.Known && (most < 0 || r.Amps[i].Value() > r.Amps[most].Value()) {
			most = i
		}
	}
	if most < 0 {
		return Verdict{Rule: RulePlateAmps, Method: "motor.limits"}
	}
	leg := &r.Amps[most]
	band := unit.Current(leg.Band())
	return limitsOf(f).judge(leg.Value()-band, leg.Value()+band)
}
