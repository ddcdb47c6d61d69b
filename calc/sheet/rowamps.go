package sheet

import (
	"math"
	"slices"

	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// judgeAmps gathers what amps are judged by, or why they can't be.
func (w *worksheet) judgeAmps() {
	b := w.t.Basis
	w.noAmps = Verdict{Rule: RulePlateAmps, Method: "motor.limits"}
	cold := b.coldest(w.f)
	m, wanted := plateOf(w.f, 0)
	if !b.Known() || len(wanted) > 0 || !cold.Known() {
		w.noAmps.Level = Unjudged
		w.noAmps.Wanted, w.noAmps.Fault = slices.Concat(wanted, b.Wanted, cold.open()), b.fault()
		return
	}
	w.l.motor, w.cold = m, float64(cold.Value)
	if denser, tells := b.frozen(w.f); tells != nil {
		w.frozen, w.tells = float64(denser), tells
	}
	if r := w.t.last; b.trial == nil || r != b.trial && (r != nil || b.Speed.From == FromTachometer) {
		w.apart = w.l.band + float64(b.Speed.Band/b.Speed.Value)
	}
}

// beyond is the share of plate amps from which a prediction is not given as a
// figure: both methods of telling load are straight lines, and iron saturates
// (memory).
const beyond = 2

func (w *worksheet) judgeMotor(r *Row) {
	band := unit.Speed(r.band) * r.Speed
	speed := Answer[unit.Speed]{Value: r.Speed, Band: band, Steps: Steps{done: true}}
	wheel := wheelVerdict(w.f, speed, w.wheel, w.rise)
	if wheel.Level == Unjudged && len(wheel.Wanted) == 0 && w.rise > 0 {
		wheel.Wanted = w.t.Basis.Wanted // what tells the load tells how fast the motor turns
	}
	r.add(wheel)
	if w.noAmps.Level == Unjudged {
		v := w.noAmps
		if stop := stoppedOnDrive(w.f, w.limits, speed); stop.Level == Stop {
			v = stop
		}
		r.add(v)
		return
	}
	if math.IsInf(r.band, 0) { // a speed that nothing bounds
		v := w.noAmps
		v.Level, v.Wanted = Unjudged, settled(w.t.Speed).Wanted
		r.add(v)
		return
	}
	b, m := w.t.Basis, w.l.motor
	k := float64(r.Speed / b.Speed.Value)
	apart := w.apart + r.band - w.l.band
	least, most := k*max(1-apart, 0), k*(1+apart)
	least, most = least*least*least, most*most*most
	low, high, err := b.amps(m, least, most)
	coldLow, coldHigh, errCold := b.amps(m, least*w.cold, most*w.cold)
	if limit.First(err, errCold) != nil { // the plate and the no-load current contradict each other
		v := w.noAmps
		v.Level, v.Wanted = Unjudged, []record.Place{&w.f.New.NoLoadAmps}
		r.add(v)
		return
	}
	r.Beyond = high > beyond*m.amps
	low, high = min(low, beyond*m.amps), min(high, beyond*m.amps)
	r.AmpsLow, r.AmpsHigh = some(low), some(high)
	r.LoadLow, r.LoadHigh = some(unit.Ratio(low/m.amps)), some(unit.Ratio(high/m.amps))
	v := w.limits.judge(coldLow, coldHigh)
	v.Cold = w.cold != 1
	if v.Level == Within && w.frozen > 0 {
		if low, high, err := b.amps(m, least*w.frozen, most*w.frozen); err != nil || w.limits.judge(low, high).Level != Within {
			v = Verdict{Level: Unjudged, Rule: v.Rule, Method: v.Method, Wanted: []record.Place{w.tells}}
		}
	}
	if v.Level == Unjudged && len(v.Wanted) == 0 {
		v.Wanted = unsettledAmps(w.f)
	}
	r.add(v)
}

// unsettledAmps returns what would narrow a prediction of amps: the no-load
// current first, then a reading on the new drive itself.
func unsettledAmps(f *record.Fan) []record.Place {
	if !known(&f.New.NoLoadAmps) {
		return []record.Place{&f.New.NoLoadAmps}
	}
	if t := lastTrial(f); t != nil {
		return []record.Place{&t.Reading.Amps[0]}
	}
	return []record.Place{&f.Old.NoLoadAmps}
}
