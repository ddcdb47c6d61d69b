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

// noSpeed stands where no speed is asked for.
var noSpeed Answer[unit.Speed]

// estimate solves for a power whose formula has a range of its own.
func estimate(a *Ask, method string, at At, formula func() (phase.Estimate, error)) Answer[unit.Power] {
	r := Solve(a, FromPlace, method, at, func() (unit.Power, error) {
		e, err := formula()
		return e.Value, err
	})
	if e, err := formula(); err == nil && r.Known() {
		r.Band += (e.High - e.Low) / 2
	}
	return r
}
