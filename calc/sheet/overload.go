package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// small is the motor power up to which the code's overload rule is another paragraph,
// which leads to the same shares of plate amps.
const small = unit.Horsepower

// An Overload is what the new motor's overload protection may be set to: the
// greatest trip current of the code and the relay's dial are two things.
type Overload struct {
	Trip         Answer[unit.Current] // at most
	AfterFailure Answer[unit.Current] // at most, only after a documented failure to start or to carry the load
	Dial         Answer[unit.Current] // what the relay is dialed to
	Small        bool                 // not more than 1 hp: by another paragraph, the same shares
	AsksRise     bool                 // a plate marked with a low temperature rise would allow more
	Verdict      Verdict              // of the dial as it stands
}

// OverloadOf answers with what the new motor's overload protection may be set to.
func OverloadOf(f *record.Fan) Overload {
	s := &f.New
	o := Overload{Dial: Read("Iₙ", FromPlace, &s.MotorAmps)}
	o.AsksRise = s.ServiceFactor.State() == record.Known && s.ServiceFactor.Value() < phase.ServiceFactorLeast
	o.Small = s.MotorPower.State() == record.Known && s.MotorPower.Value() <= small*(1+slack)
	o.Trip = overload(s, func(c phase.Overload) unit.Current { return c.Trip })
	o.AfterFailure = overload(s, func(c phase.Overload) unit.Current { return c.AfterFailure })
	dial := Read("I", FromPlace, &s.Dial)
	l := limitOf[unit.Current]{rule: RuleOverloadDial, method: "phase.overload", scale: &unit.Amperage, level: Watch}
	o.Verdict = l.hold(dial, o.Dial)
	if o.Verdict.Level == Watch {
		l.rule, l.level = RuleOverloadTrip, Stop
		most := o.Trip
		if !most.Known() { // whatever the plate says of service factor and rise
			most = overloadMost(o.Dial)
		}
		if above := l.hold(dial, most); above.Level == Stop {
			o.Verdict = above
		} else if !o.Trip.Known() {
			o.Verdict.Wanted = o.Trip.open()
		}
	}
	if t := lastTrial(f); t != nil {
		if below := belowAmps(dial, &t.Reading); below.Level > o.Verdict.Level {
			o.Verdict = below
		}
	}
	return o
}

// overloadMost answers with the trip current that no motor is allowed to exceed.
func overloadMost(plate Answer[unit.Current]) Answer[unit.Current] {
	var a Ask
	full := Use(&a, "Iₙ", plate)
	return Solve(&a, FromPlace, "phase.overload", nil, func() (unit.Current, error) {
		return full.V() * unit.Current(phase.OverloadMost), nil
	})
}

// belowAmps judges a relay's dial against each leg: set under one the relay will trip,
// though a relay with a margin built in may take its time. Amps of a lost phase or of
// a fan tipped up are not what the relay carries.
func belowAmps(dial Answer[unit.Current], r *record.Reading) Verdict {
	legs, _ := readLegs(r) // of a fault the amps' own verdict speaks
	if r.TippedUp.Value() == record.Yes || LostPhase(r).Sure() {
		return Verdict{}
	}
	held := make([]Verdict, len(legs))
	for i, a := range legs {
		held[i] = limitOf[unit.Current]{rule: RuleOverloadLow, method: "phase.overload", scale: &unit.Amperage, level: Watch, least: true}.hold(dial, a)
	}
	return Worst(held)
}

func overload(s *record.Side, of func(phase.Overload) unit.Current) Answer[unit.Current] {
	var a Ask
	plate := Want(&a, "Iₙ", &s.MotorAmps)
	class := func() (phase.OverloadClass, error) { return phase.OverloadCool, nil }
	at := At{"plate": plate.Term}
	if s.CoolRise.Value() != record.Yes {
		factor := Want(&a, "SF", &s.ServiceFactor)
		at["serviceFactor"] = factor.Term
		class = func() (phase.OverloadClass, error) { return phase.OverloadClassOf(factor.V()) }
	}
	return Solve(&a, FromPlace, "phase.overload", at, func() (unit.Current, error) {
		c, err := class()
		if err != nil {
			return 0, err
		}
		o, err := phase.OverloadOf(plate.V(), c)
		return of(o), err
	})
}
