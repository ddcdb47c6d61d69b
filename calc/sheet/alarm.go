package sheet

import (
	"cmp"
	"slices"

	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Alarms answers with what is seen of the new drive outright, before anything is
// predicted from it: a wheel that turns the wrong way, and of the latest reading a
// speed the drive can't give, a lost phase, a leg above the motor's amps. Amps at a fan
// tipped up are not judged, and that is said. What is in order is left out.
func Alarms(f *record.Fan) []Held { return alarms(f, trialsOf(f)) }

func alarms(f *record.Fan, s *trials) (all []Held) {
	if v := RotationVerdict(f); v.Level == Stop {
		all = append(all, Held{"rotation", aboutRotation, v})
	}
	t := lastTrial(f)
	if t == nil {
		return all
	}
	if known(&t.Reading.Speed) {
		if v := s.verdict(t); v.Level >= Watch {
			all = append(all, Held{"reading.speed", aboutSpeed, v})
		}
	}
	if !clamped(&t.Reading) {
		return all
	}
	outAndBack := f.Supply.Value() == record.SinglePhase && !known(&t.Reading.Amps[2])
	if v := LostVerdict(&t.Reading); v.Level != Within && !oneOfThree(f) && !outAndBack {
		all = append(all, Held{"amps.lost", aboutAmps, v})
	}
	if t.Reading.TippedUp.Value() == record.Yes {
		return append(all, Held{"amps.tipped-up", aboutAmps, tippedUp})
	}
	if v := legVerdict(f, &f.New, &t.Reading); v.Level >= Watch {
		all = append(all, Held{"amps.line", aboutAmps, v})
	}
	return all
}

// tippedUp says of amps that they were read at a fan tipped up.
var tippedUp = Verdict{Level: Watch, Rule: RuleTippedUp, Method: "air.load.proportional"}

// LostVerdict judges whether three legs tell a lost or failing phase; fewer tell nothing.
func LostVerdict(r *record.Reading) Verdict {
	v := Verdict{Rule: RuleLostPhase, Method: "phase.lost"}
	switch l := LostPhase(r); l.Loss {
	case phase.LossOpen, phase.LossAhead:
		v.Level = Stop
	case phase.LossPair:
		v.Level, v.Rule = Stop, RulePairOpen
	case phase.LossAll:
		v.Level, v.Rule = Stop, RuleNoAmps
	case phase.LossNearly:
		v.Level, v.Rule = Stop, RuleNearlyOpen
		v.Value, v.Limit = Figure{&unit.Share, float64(l.Over)}, Figure{&unit.Share, float64(phase.NearlyOpenLeg)}
	case phase.LossWinding:
		v.Level, v.Rule = Stop, RuleOpenWinding
	case phase.LossUnjudged:
		v.Level = Unjudged
		if l.Leg == phase.NoLeg { // they can't be compared
			return v
		}
		v.Wanted = []record.Place{&r.Amps[l.Leg-1]}
		if l.Over < 1 { // the low one, which may be failing
			v.Rule = RuleNearlyOpen
			v.Value, v.Limit = Figure{&unit.Share, float64(l.Over)}, Figure{&unit.Share, float64(phase.NearlyOpenLeg)}
		}
	}
	return v
}

// LostPhase returns the lost phase that the legs of a reading tell, within their
// bands. Of two legs it is what they tell whatever the third carries: nothing, or as much
// as the greater.
func LostPhase(r *record.Reading) phase.Lost {
	var amps [3]unit.Current
	unread := -1
	for i := range r.Amps {
		if r.Amps[i].State() == record.Unknown && unread < 0 {
			unread = i
			continue
		}
		if r.Amps[i].State() != record.Known {
			return phase.Lost{Loss: phase.LossNone}
		}
		a := LegAmps(r, i)
		if !a.Known() {
			return phase.Lost{Loss: phase.LossNone}
		}
		amps[i] = a.Value
	}
	volts := phase.SupplyUnbalanceMost
	if u := VoltsUnbalance(r); u.Share.Known() {
		volts = u.found.High
	}
	lost := func() phase.Lost {
		l, err := phase.LostPhaseOnVolts(amps[0], amps[1], amps[2], clampOf(r), volts)
		if err != nil {
			return phase.Lost{Loss: phase.LossUnjudged} // legs that can't be compared, such as one below zero, are no proof of three phases
		}
		return l
	}
	if unread < 0 {
		return lost()
	}
	if !lost().Sure() { // with nothing on the third
		return phase.Lost{Loss: phase.LossNone}
	}
	amps[unread] = max(amps[0], amps[1], amps[2])
	if l := lost(); l.Sure() {
		return l
	}
	return phase.Lost{Loss: phase.LossNone}
}

// lostPhase tells whether a verdict is the stop that of a phase that is lost, or of legs that carry nothing.
func (v Verdict) lostPhase() bool {
	switch v.Rule {
	case RuleLostPhase, RuleNearlyOpen, RulePairOpen, RuleNoAmps, RuleOpenWinding:
		return v.Level == Stop
	}
	return false
}

// errLost is the fault of legs that tell a lost phase: they tell no load.
var errLost = limit.Break("", limit.LostPhase)

// lostAt is [errLost], laid to the leg that tells it.
func lostAt(l phase.Lost) error {
	return limit.Break([...]string{"", "a", "b", "c"}[l.Leg], limit.LostPhase)
}

// legVerdict holds each leg that was read against the plate and the service-factor amps
// of the motor they were read at, and the average of the legs against what unbalanced
// volts leave of them.
func legVerdict(f *record.Fan, s *record.Side, r *record.Reading) Verdict {
	legs, fault := readLegs(r)
	if fault != nil {
		return Verdict{Level: Unjudged, Rule: RulePlateAmps, Method: "motor.limits", Fault: fault}
	}
	if len(legs) == 0 {
		return Verdict{Level: Unjudged, Rule: RulePlateAmps, Method: "motor.limits", Wanted: []record.Place{&r.Amps[0]}}
	}
	l := limitsOf(f, s)
	held := make([]Verdict, len(legs))
	for i, a := range legs {
		held[i] = l.each().judge(a.Low(), a.High())
		held[i].Wanted = append(held[i].Wanted, settled(a).Wanted...)
	}
	each := Worst(held)
	if !l.less {
		return each
	}
	average := AmpsMean(r)
	if !average.Known() {
		return each
	}
	all := l.judge(average.Low(), average.High())
	all.Wanted = append(all.Wanted, settled(average).Wanted...)
	return Worst([]Verdict{all, each})
}

// readLegs answers with the legs that were read, the one that may have the most amps
// first, or with the first fault among them.
func readLegs(r *record.Reading) (legs []Answer[unit.Current], fault *Fault) {
	for i := range r.Amps {
		switch a := LegAmps(r, i); {
		case a.Fault != nil:
			return nil, a.Fault
		case a.Known():
			legs = append(legs, a)
		}
	}
	slices.SortStableFunc(legs, func(a, b Answer[unit.Current]) int { return cmp.Compare(b.High(), a.High()) })
	return legs, nil
}
