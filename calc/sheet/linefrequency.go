package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// usualFrequency is that of the lines of North America, whose systems are known here.
const usualFrequency = 60 * unit.Hertz

// LineFrequency answers with the frequency of the supply, where somebody has read
// it: at a reading, or else for its side. What a drive puts out is set, and no
// supply's.
func LineFrequency(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Frequency] {
	if f.Supply.Value() == record.Inverter {
		return Answer[unit.Frequency]{Wanted: []record.Place{&r.Frequency}}
	}
	if !known(&r.Frequency) && known(&s.Reading.Frequency) {
		r = &s.Reading
	}
	return Read("f", FromPlace, &r.Frequency)
}

// Flux answers with the volts per hertz at a motor over those of its plate.
func Flux(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Ratio] {
	var a Ask
	v, hz := Use(&a, "V", LineVolts(f, r)), Use(&a, "f", LineFrequency(f, s, r))
	volts, plate := Want(&a, "Vₚ", &s.MotorVolts), Use(&a, "fₚ", PlateFrequency(s))
	at := At{"v": v.Term, "f": hz.Term, "plateVolts": volts.Term, "plateFrequency": plate.Term}
	return Solve(&a, FromPlace, "phase.frequency", at, func() (unit.Ratio, error) {
		return phase.VoltsPerHertz(v.V(), hz.V(), volts.V(), plate.V())
	})
}

// combined answers with how far volts and frequency at a motor are off its plate
// together.
func combined(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Ratio] {
	var a Ask
	v, hz := Use(&a, "V", LineVolts(f, r)), Use(&a, "f", LineFrequency(f, s, r))
	volts, plate := Want(&a, "Vₚ", &s.MotorVolts), Use(&a, "fₚ", PlateFrequency(s))
	at := At{"v": v.Term, "f": hz.Term, "plateVolts": volts.Term, "plateFrequency": plate.Term}
	return Solve(&a, FromPlace, "phase.frequency", at, func() (unit.Ratio, error) {
		return phase.CombinedVariation(v.V(), hz.V(), volts.V(), plate.V())
	})
}

// FrequencyVerdict judges a supply's frequency against the plate's, by itself and with
// the volts: beyond 5 % speed and cooling are others, with more volts per hertz than the
// plate has a motor overheats, and both together may be off by 10 %.
func FrequencyVerdict(f *record.Fan, s *record.Side, r *record.Reading) Verdict {
	var a Ask
	line, plate := LineFrequency(f, s, r), PlateFrequency(s)
	hz, base := Use(&a, "f", line), Use(&a, "fₚ", plate)
	share := Solve(&a, FromPlace, "phase.frequency", nil, func() (unit.Ratio, error) { return unit.Ratio(hz.V() / base.V()), nil })
	l := limitOf[unit.Ratio]{rule: RuleLineFrequency, method: "phase.frequency", scale: &unit.Share, level: Watch}
	high := l.hold(share, fixed(1+phase.FrequencyTolerance, ""))
	l.least = true
	v := Worst([]Verdict{high, l.hold(share, fixed(1-phase.FrequencyTolerance, ""))})
	if !share.Known() {
		return v
	}
	v.Value, v.Limit = Figure{&unit.Cycles, float64(line.Value)}, Figure{&unit.Cycles, float64(plate.Value)}
	flux, off := Flux(f, s, r), combined(f, s, r)
	if !flux.Known() && flux.Fault == nil {
		if v.Level == Within && line.Value < plate.Value*(1-slack) { // the iron may carry more than the plate's
			return Verdict{Level: Unjudged, Rule: RuleFlux, Method: v.Method, Wanted: flux.open()}
		}
		if v.Level == Watch {
			v.Wanted = flux.open()
		}
		return v
	}
	over := limitOf[unit.Ratio]{rule: RuleFlux, method: "phase.frequency", scale: &unit.Share, level: Stop}.hold(flux, fixed(phase.VoltsPerHertzMost, ""))
	if line.Value >= plate.Value { // then it is the volts, and judged as such
		over.Level = Within
	}
	both := limitOf[unit.Ratio]{rule: RuleCombined, method: "phase.frequency", scale: &unit.Share, level: Watch}.hold(off, fixed(phase.CombinedTolerance, ""))
	if line.Value == plate.Value {
		both.Level = Within
	}
	return Worst([]Verdict{v, over, both})
}
