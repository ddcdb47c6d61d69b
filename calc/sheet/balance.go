package sheet

import (
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// An Unbalance is how far three readings of one kind lie apart.
type Unbalance struct {
	Share   Answer[unit.Ratio] // the largest deviation from the average, over it
	Leg     phase.Leg          // the reading farthest off; of volts the pair 1–2, 2–3, 3–1
	Certain bool               // no other could be
	Verdict Verdict

	found phase.Balance
}

// VoltsUnbalance answers with the unbalance of a reading's line voltages: above
// 1 % it takes load off a motor, above 5 % the motor is not to be run.
func VoltsUnbalance(r *record.Reading) Unbalance {
	meter, all := meterOf(&r.Volts, voltsRepeat), meterOf(&r.Volts, allOfIt)
	var a Ask
	u := unbalance(&a, pairs(&a, r), "phase.unbalance", func(x, y, z unit.Voltage) (phase.Balance, error) {
		if err := closed(x, y, z, all); err != nil {
			return phase.Balance{}, err
		}
		return phase.VoltageBalance(x, y, z, meter)
	})
	bound := phase.UnbalanceFree
	if u.found.Standing == phase.Stop || u.found.Standing == phase.Unjudged && u.found.Best != phase.Within {
		bound = phase.UnbalanceMost
	}
	u.Verdict = u.judged(RuleUnbalance, "phase.unbalance.volts", bound)
	return u
}

// SupplyUnbalance is [VoltsUnbalance], judged for what it meets: ahead of a drive it is
// the drive's, whose motor has even volts of its own; elsewhere the motor's, and then
// it says what it leaves of the plate.
func SupplyUnbalance(f *record.Fan, s *record.Side, r *record.Reading) Unbalance {
	u := VoltsUnbalance(r)
	switch v := &u.Verdict; {
	case f.Supply.Value() == record.Inverter:
		v.Rule, v.Method = RuleInputVolts, "phase.unbalance.input"
	case v.Level == Watch:
		if k := Derating(u); k.Known() {
			v.Left = Figure{&unit.Share, float64(k.Value)}
			if plate := Read("Iₙ", FromPlace, &s.MotorAmps); plate.Known() {
				v.Most = Figure{&unit.Amperage, float64(plate.Value) * float64(k.Value)}
			}
		}
	}
	return u
}

func pairs(a *Ask, r *record.Reading) (v [3]Given[unit.Voltage]) {
	for i := range v {
		v[i] = Want(a, pairSymbols[i], &r.Volts[i])
	}
	return v
}

// AmpsUnbalance answers with the unbalance of a reading's line currents. A lost
// phase is no unbalance. Above 10 % it is judged by the load, and far above by what the
// volts can make of it. A drive makes even volts of its own, so that its output needs no
// load to be judged by; what a maker's electronics draw is only watched.
func AmpsUnbalance(f *record.Fan, s *record.Side, r *record.Reading) Unbalance {
	meter, all := clampOf(r), meterOf(&r.Amps, allOfIt)
	var a Ask
	var legs [3]Given[unit.Current]
	for i := range legs {
		legs[i] = leg(&a, r, i)
	}
	load := loadOfAmps(f, s, r)
	volts, read := idleVolts(f, s, r)
	u := unbalance(&a, legs, "phase.unbalance", func(x, y, z unit.Current) (phase.Balance, error) {
		b, err := phase.CurrentBalance(x, y, z, meter, max(load.Low(), 0), volts)
		if b.Value > phase.CurrentUnbalanceStop && load.High() >= phase.LoadLeast {
			b, err = phase.CurrentBalance(x, y, z, meter, phase.LoadLeast, volts) // so far apart, it need not be loaded for certain
		}
		if b.Reason == phase.ReasonLost {
			return b, lostAt(LostPhase(r))
		}
		return b, limit.First(err, closed(x, y, z, all))
	})
	bound := phase.CurrentUnbalanceMost
	if u.found.Standing == phase.Stop {
		bound = max(phase.CurrentUnbalanceStop, phase.IdleMost(volts))
	}
	u.Verdict = u.judged(RuleAmpsUnbalance, "phase.unbalance.amps", bound)
	v := &u.Verdict
	switch light := u.found.Reason == phase.ReasonLight; {
	case !u.Share.Known(), v.Level == Within:
	case u.found.Reason == phase.ReasonBand && !known(&r.ClampTurns): // more turns, finer digits
		v.Wanted = []record.Place{&r.ClampTurns}
	case f.Supply.Value() == record.Inverter:
		v.Rule = RuleOutputAmps
	case f.Supply.Value() == record.Direct:
		v.Level, v.Rule = min(v.Level, Watch), RuleMakerAmps
		v.Limit.Base = float64(phase.CurrentUnbalanceMost)
	case v.Level == Stop:
		v.Rule = RuleAmpsApart
	case light && v.Level == Watch:
		v.Rule, v.Method, v.Limit.Base = RuleIdleAmps, "phase.unbalance.idle", float64(phase.IdleMost(volts))
	case light && !load.Known():
		*v = Verdict{Level: Unjudged, Rule: RuleAmpsUnbalance, Method: "phase.unbalance.amps", Wanted: load.Wanted, Fault: load.Fault}
	case light:
		*v = Verdict{Level: Unjudged, Rule: RuleLightLoad, Method: "phase.unbalance.amps"}
		if load.High() >= phase.LoadLeast && !known(&s.NoLoadAmps) {
			v.Wanted = []record.Place{&s.NoLoadAmps}
		}
		if !read && u.found.Low > phase.IdleMost(0) { // it could be more than even volts explain
			v.Wanted = append(v.Wanted, &r.Volts[0], &r.Volts[1], &r.Volts[2])
		}
	}
	return u
}

// loadOfAmps answers with the load by which amps are judged. What a drive puts out is
// judged as under load, for its volts are even at any; so is what electronics draw.
func loadOfAmps(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Ratio] {
	if !ampsTellLoad(f) {
		return fixed(unit.Ratio(1), "phase.branch")
	}
	return settled(Load(f, s, r))
}

// idleVolts returns the most that the voltage unbalance at a reading of amps may
// be, and whether it was read. What was read ahead of a drive is not what its motor has.
func idleVolts(f *record.Fan, s *record.Side, r *record.Reading) (most unit.Ratio, read bool) {
	if f.Supply.Value() == record.Inverter {
		return phase.UnbalanceFree, true
	}
	if !volted(r) && s == &f.New {
		r = voltsReading(f)
	}
	if u := VoltsUnbalance(r); u.Share.Known() {
		return u.found.High, true
	}
	return phase.SupplyUnbalanceMost, false
}

// unbalance solves for an unbalance. Each reading errs by itself, so that the band
// is what the meter makes of all three together.
func unbalance[Q metered](a *Ask, x [3]Given[Q], method string, formula func(x, y, z Q) (phase.Balance, error)) Unbalance {
	for i := range x {
		x[i].Band = 0
	}
	var u Unbalance
	at := At{"": x[0].Term, "a": x[0].Term, "b": x[1].Term, "c": x[2].Term, "meter": x[0].Term}
	u.Share = Solve(a, FromPlace, method, at, func() (v unit.Ratio, err error) {
		u.found, err = formula(x[0].V(), x[1].V(), x[2].V())
		return u.found.Value, err
	})
	if s := u.found.Spread; u.Share.Known() {
		u.Share.Band = max(s.Value-s.Low, s.High-s.Value)
		u.Leg, u.Certain = s.Leg, s.Certain == s.Leg
	}
	return u
}

// closed refuses readings that no three phases can give: the largest one is wrong,
// or one was missed.
func closed[Q metered](x, y, z Q, meter phase.Meter[Q]) error {
	closing, err := phase.TriangleCheck(x, y, z, meter)
	if closing != phase.ClosesNot {
		return err
	}
	largest := "a"
	if y > x {
		largest = "b"
	}
	if z > max(x, y) {
		largest = "c"
	}
	return limit.Break(largest, limit.NoTriangle)
}

var standings = map[phase.Standing]Level{phase.Within: Within, phase.Watch: Watch, phase.Stop: Stop, phase.Unjudged: Unjudged}

func (u Unbalance) judged(rule Rule, method string, bound unit.Ratio) Verdict {
	v := Verdict{Level: Unjudged, Rule: rule, Method: method, Wanted: u.Share.Wanted, Fault: u.Share.Fault}
	if !u.Share.Known() {
		return v
	}
	v.Level = standings[u.found.Standing]
	v.Near = v.Level <= Watch && u.found.Reason == phase.ReasonNear && source.DecisionOf(method) == source.ByReading
	v.Value, v.Limit = Figure{&unit.Share, float64(u.Share.Value)}, Figure{&unit.Share, float64(bound)}
	return v
}

// Amplification answers with the unbalance of amps over that of volts: what the
// motor makes of its supply. Where either may be in balance there is none.
func Amplification(volts, amps Unbalance) Answer[unit.Ratio] {
	var a Ask
	i, v := Use(&a, "uI", amps.Share), Use(&a, "uV", volts.Share)
	return Solve(&a, FromPlace, "phase.amplification", At{"current": i.Term, "voltage": v.Term}, func() (unit.Ratio, error) {
		switch {
		case volts.found.Low <= 0:
			return 0, limit.Break("voltage", limit.TooCoarse)
		case amps.found.Low <= 0:
			return 0, limit.Break("current", limit.TooCoarse)
		}
		return phase.Amplification(i.V(), v.V())
	})
}

// A Made is how what a motor makes of its supply compares with the usual.
type Made string

// What a motor may make of its supply.
const (
	MadeLess  Made = "less"
	MadeUsual Made = "usual" // the volts account for the amps
	MadeMore  Made = "more"  // they do not
	MadeMaybe Made = "maybe" // the meters can't tell
)

// MadeOf compares an amplification with the usual, as far as its band lets it.
func MadeOf(k Answer[unit.Ratio]) Made {
	switch {
	case k.Low() > phase.AmplificationHigh:
		return MadeMore
	case k.High() < phase.AmplificationLow:
		return MadeLess
	case k.Low() >= phase.AmplificationLow && k.High() <= phase.AmplificationHigh:
		return MadeUsual
	}
	return MadeMaybe
}

// Derating answers with the share of plate power that an unbalanced supply leaves a
// motor.
func Derating(volts Unbalance) Answer[unit.Ratio] {
	var a Ask
	u := Use(&a, "u", volts.Share)
	u.Band = 0
	var d phase.Derating
	r := Solve(&a, FromPlace, "phase.derating", At{"value": u.Term}, func() (_ unit.Ratio, err error) {
		d, err = phase.DeratingOver(volts.found.Low, u.V(), max(u.V(), min(volts.found.High, phase.UnbalanceMost)))
		return d.Factor, err
	})
	if r.Known() {
		r.Band = max(d.Factor-d.Low, d.High-d.Factor)
	}
	return r
}

// Headroom answers with the share of plate power that is left above a load on an
// unbalanced supply; below zero it is overload.
func Headroom(load, derating Answer[unit.Ratio]) Answer[unit.Ratio] {
	var a Ask
	l, k := Use(&a, "L", load), Use(&a, "k", derating)
	return Solve(&a, FromPlace, "phase.headroom", At{"load": l.Term, "derating": k.Term}, func() (unit.Ratio, error) {
		left := min(max(k.V(), 0), 1)
		h, err := phase.HeadroomLeft(max(l.V(), 0), phase.Derating{Factor: left, Low: left, High: left})
		return h.Value, err
	})
}
