package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// LineFrequency answers with the frequency of the supply, where somebody has read
// it: at a reading, or else for its side. What a drive puts out is set, and no
// supply's.
func LineFrequency(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Frequency] {
	if f.Supply.Value() == record.Inverter || !known(&r.Frequency) && !known(&s.Reading.Frequency) {
		return Answer[unit.Frequency]{Wanted: []record.Place{&r.Frequency}}
	}
	if !known(&r.Frequency) {
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

// FrequencyVerdict judges a supply's frequency against the plate's: beyond 5 % speed
// and cooling are others, and with more volts per hertz than the plate has a motor
// overheats.
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
	if v.Level == Watch {
		flux := Flux(f, s, r)
		over := limitOf[unit.Ratio]{rule: RuleFlux, method: "phase.frequency", scale: &unit.Share, level: Stop}.hold(flux, fixed(phase.VoltsPerHertzMost, ""))
		if over.Level == Stop {
			return over
		}
		v.Wanted = flux.open()
	}
	return v
}
