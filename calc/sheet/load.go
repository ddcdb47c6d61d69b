package sheet

import (
	"math"

	"roofside/calc/airflow"
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Without a no-load reading, the no-load current of a small four-pole motor is
// taken to lie between these shares of its plate amps (memory).
const (
	leastNoLoad = 0.3
	mostNoLoad  = 0.6
)

// A Share is a motor's load as a share of its plate power, by one method.
type Share struct {
	Load    Answer[unit.Ratio]
	half    bool    // half the no-load current taken off
	assumed float64 // no-load current as a share of plate amps; 0 when it was read
}

// AmpsMean answers with the mean of the legs that were read. Readings at a fan
// tipped up are not the fan's load and are not taken.
func AmpsMean(r *record.Reading) Answer[unit.Current] {
	var a Ask
	if r.TippedUp.Value() == record.Yes {
		a.miss(&r.TippedUp)
	}
	var legs []Given[unit.Current]
	for i := range r.Amps {
		if known(&r.Amps[i]) {
			legs = append(legs, leg(&a, r, i))
		}
	}
	if len(legs) == 0 {
		a.miss(&r.Amps[0])
	}
	return Solve(&a, FromPlace, "mean", nil, func() (unit.Current, error) {
		if LostPhase(r).Sure() {
			return 0, errLost
		}
		return mean(legs), nil
	})
}

// VoltsMean answers with the mean of the line voltages that were read.
func VoltsMean(r *record.Reading) Answer[unit.Voltage] {
	var a Ask
	var pairs []Given[unit.Voltage]
	for i := range r.Volts {
		if known(&r.Volts[i]) {
			pairs = append(pairs, Want(&a, pairSymbols[i], &r.Volts[i]))
		}
	}
	if len(pairs) == 0 {
		a.miss(&r.Volts[0])
	}
	return Solve(&a, FromPlace, "mean", nil, func() (unit.Voltage, error) { return mean(pairs), nil })
}

func mean[Q unit.Quantity](gs []Given[Q]) Q {
	var sum Q
	for _, g := range gs {
		sum += g.V()
	}
	return sum / Q(len(gs))
}

// ampsTellLoad reports whether a motor's line amps say what it carries: not
// those of a single-phase motor, nor a drive's output, nor what electronics draw.
func ampsTellLoad(f *record.Fan) bool {
	s := f.Supply.Value()
	return s != record.SinglePhase && s != record.Inverter && s != record.Direct && !oneOfThree(f)
}

// idles tells whether a belted motor drew no more at a reading than with its belt off,
// as far as a usual clamp tells two readings apart: then they are not the fan's load.
// less tells of one that did whether it was less than that, which contradicts it. How surely the amps
// are known is no matter: the less known, the more would be taken for idling.
func idles(f *record.Fan, s *record.Side, r *record.Reading) (idle, less bool) {
	if f.DirectDrive() {
		return false, false
	}
	amps, off := AmpsMean(r), phase.UsualClamp.Floor
	off /= unit.Current(max(1, r.ClampTurns.Value()))
	off += s.NoLoadAmps.Value() * unit.Current(phase.ClampRepeats)
	return amps.Known() && amps.Value <= s.NoLoadAmps.Value()+off, amps.Value < s.NoLoadAmps.Value()-off
}

// Shares answers with a motor's load at a reading, by each of the named
// methods: amps in proportion, and with half the no-load current taken off. It
// is empty where amps don't tell load.
func Shares(f *record.Fan, s *record.Side, r *record.Reading) []Share {
	if !ampsTellLoad(f) {
		return nil
	}
	amps := AmpsMean(r)
	if idle, less := idles(f, s, r); idle && !less {
		amps = Answer[unit.Current]{Wanted: []record.Place{&r.Amps[0]}}
	}
	shares := []Share{{Load: proportional(s, r, amps)}}
	if known(&s.NoLoadAmps) {
		return append(shares, Share{half: true, Load: half(s, amps, Read("I₀", FromPlace, &s.NoLoadAmps))})
	}
	for _, k := range [2]float64{leastNoLoad, mostNoLoad} {
		var a Ask
		full := Want(&a, "Iₙ", &s.MotorAmps)
		i0 := Solve(&a, FromPlace, "air.noload", nil, func() (unit.Current, error) { return full.V() * unit.Current(k), nil })
		load := half(s, amps, i0)
		if amps.Value < i0.Value {
			continue // this motor idles on less
		}
		shares = append(shares, Share{half: true, assumed: k, Load: load})
	}
	return shares
}

func proportional(s *record.Side, r *record.Reading, amps Answer[unit.Current]) Answer[unit.Ratio] {
	var a Ask
	i, full := Use(&a, "I", amps), Want(&a, "Iₙ", &s.MotorAmps)
	volts := VoltsMean(r)
	if volts.Fault == nil && (!volts.Known() || !known(&s.MotorVolts)) {
		return Solve(&a, FromPlace, "air.load.proportional", At{"i": i.Term, "fla": full.Term}, func() (unit.Ratio, error) {
			return airflow.LoadProportional(i.V(), full.V(), unit.Volt, unit.Volt)
		})
	}
	v, plate := Use(&a, "V", volts), Want(&a, "Vₙ", &s.MotorVolts)
	at := At{"i": i.Term, "fla": full.Term, "v": v.Term, "plate": plate.Term}
	return Solve(&a, FromPlace, "air.load.proportional", at, func() (unit.Ratio, error) {
		return airflow.LoadProportional(i.V(), full.V(), v.V(), plate.V())
	})
}

func half(s *record.Side, amps, noLoad Answer[unit.Current]) Answer[unit.Ratio] {
	var a Ask
	i, i0, full := Use(&a, "I", amps), Use(&a, "I₀", noLoad), Want(&a, "Iₙ", &s.MotorAmps)
	at := At{"i": i.Term, "i0": i0.Term, "fla": full.Term}
	return Solve(&a, FromPlace, "air.load.half", at, func() (unit.Ratio, error) {
		return airflow.LoadHalfNoLoad(i.V(), i0.V(), full.V())
	})
}

// spread answers with the middle between the lowest and the highest of at least
// one answer, which moves with no band; its own band reaches all their ends. All have
// to be known.
func spread[Q unit.Quantity](symbol string, answers []Answer[Q]) Answer[Q] {
	var a Ask
	least, most, low, high, open := answers[0].Value, answers[0].Value, answers[0].Value, answers[0].Value, Q(0)
	for _, b := range answers {
		t := Use(&a, symbol, b)
		t.Band = 0 // the ends already hold it
		if !b.Bounded() {
			t.Weight, open = math.Inf(1), b.Band
			b.Band = 0
		}
		least, most = min(least, b.Value), max(most, b.Value)
		low, high = min(low, b.Low()), max(high, b.High())
	}
	r := Solve(&a, FromPlace, "spread", nil, func() (Q, error) { return least + (most-least)/2, nil })
	if r.Known() {
		r.Band = max(high-r.Value, r.Value-low) + open
	}
	return r
}

// Load answers with a motor's load at a reading: between the lowest and the
// highest of the named methods.
func Load(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Ratio] {
	var loads []Answer[unit.Ratio]
	for _, share := range Shares(f, s, r) {
		loads = append(loads, share.Load)
	}
	if loads == nil {
		return Answer[unit.Ratio]{Wanted: []record.Place{&f.Target.Power}}
	}
	l := spread("L", loads)
	if !known(&s.NoLoadAmps) {
		l.Steps.better = &s.NoLoadAmps
	}
	return l
}

// OldLoad answers with the load of a side's own reading; for the old fan without
// amps, with what the report's power is on its motor.
func OldLoad(f *record.Fan, s *record.Side) Answer[unit.Ratio] {
	switch r := &s.Reading; {
	case clamped(r) && ampsTellLoad(f):
		return Load(f, s, r)
	case s == &f.Old && known(&f.Target.Power) && known(&s.MotorPower):
		var a Ask
		p, plate := Want(&a, "P₁", &f.Target.Power), Want(&a, "Pₙ", &s.MotorPower)
		return Solve(&a, FromReport, "air.load.new", nil, func() (unit.Ratio, error) {
			return limit.Result(unit.Ratio(p.V() / plate.V()))
		})
	case clamped(r):
		return Load(f, s, r)
	}
	return Answer[unit.Ratio]{Wanted: []record.Place{&s.Reading.Amps[0]}} // the common case, at no cost
}
