package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Apparent answers with the apparent power that a reading's volts and amps make. A
// drive's output is no sine, and its volts were read ahead of it.
func Apparent(f *record.Fan, r *record.Reading) Answer[unit.ApparentPower] {
	var a Ask
	v, i := Use(&a, "V", LineVolts(f, r)), Use(&a, "I", LineAmps(f, r))
	at := At{"v": v.Term, "i": i.Term}
	if ThreePhase(f) {
		return Solve(&a, FromPlace, "phase.power.apparent", at, func() (unit.ApparentPower, error) { return phase.Apparent(v.V(), i.V()) })
	}
	return Solve(&a, FromPlace, "phase.power.single", at, func() (unit.ApparentPower, error) { return phase.ApparentSinglePhase(v.V(), i.V()) })
}

// RealPower answers with the power that a motor takes, by the plate's power factor,
// which reads high at part load.
func RealPower(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Power] {
	var a Ask
	apparent, pf := Use(&a, "S", Apparent(f, r)), Want(&a, "cos φ", &s.PowerFactor)
	return estimate(&a, "phase.power.real", At{"apparent": apparent.Term, "pf": pf.Term}, func() (phase.Estimate, error) {
		return phase.ShaftByPower(apparent.V(), pf.V(), 1, phase.PartLoadHigh)
	})
}

// ShaftPower answers with the power that a motor gives: by its amps, between the
// lowest and the highest of the methods, where they tell it; else by power factor
// and efficiency of the plate, which read high at part load.
func ShaftPower(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Power] {
	if ampsTellLoad(f) {
		return ampsBasis(f, FromPlace, s, r, noSpeed).Power
	}
	var a Ask
	apparent, pf, eff := Use(&a, "S", Apparent(f, r)), Want(&a, "cos φ", &s.PowerFactor), Want(&a, "η", &s.Efficiency)
	return estimate(&a, "phase.power.shaft", At{"apparent": apparent.Term, "pf": pf.Term, "efficiency": eff.Term}, func() (phase.Estimate, error) {
		return phase.ShaftByPower(apparent.V(), pf.V(), eff.V(), phase.PartLoadHigh)
	})
}

// EfficiencyVerdict judges whether the power that a motor gives goes with what it
// takes. They are told by two ways, each with its band, so that only bands that lie
// apart show one of them wrong: a motor gives no more than the plate's efficiency of
// what it takes, or, where that was not read, than all of it.
func EfficiencyVerdict(s *record.Side, taken, given Answer[unit.Power]) Verdict {
	v := Verdict{Level: Unjudged, Rule: RuleEfficiency, Method: "phase.power.shaft", Wanted: append(taken.open(), given.open()...)}
	if !given.Known() || taken.High() <= 0 { // which is zero where it isn't known
		return v
	}
	most := Answer[unit.Ratio]{Value: 1, Steps: Steps{done: true}}
	if known(&s.Efficiency) {
		most = Read("η", FromPlate, &s.Efficiency)
	}
	if !most.Known() {
		v.Wanted = most.open()
		return v
	}
	least := float64(given.Low() / taken.High())
	v.Level, v.Value, v.Limit = Within, Figure{&unit.Share, least}, Figure{&unit.Share, float64(most.Value)}
	if least > float64(most.High())*(1+slack) {
		v.Level = Watch
	}
	return v
}

// noSpeed stands where no speed is asked for.
var noSpeed Answer[unit.Speed]

// estimate solves for a power whose formula has a range of its own.
func estimate(a *Ask, method string, at At, formula func() (phase.Estimate, error)) Answer[unit.Power] {
	r := Solve(a, FromPlace, method, at, func() (unit.Power, error) {
		e, err := formula()
		return e.Value, err
	})
	if e, err := formula(); err == nil {
		r.Band += (e.High - e.Low) / 2
	}
	return r
}
