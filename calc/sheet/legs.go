package sheet

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

var (
	legSymbols  = [3]string{"I₁", "I₂", "I₃"}
	pairSymbols = [3]string{"V₁₂", "V₂₃", "V₃₁"}
)

// metered is what is read three times over at a motor.
type metered interface {
	unit.Voltage | unit.Current
	Kind() *unit.Kind
}

// A Judged is the reading at a motor that is judged, and whose motor it is.
type Judged struct {
	Side    *record.Side
	Reading *record.Reading
	Trial   *record.Trial // nil for the old fan as found
}

// JudgedReading returns the latest reading on the new drive; before there is one,
// that of the old fan as found. It reports false while there is neither.
func JudgedReading(f *record.Fan) (Judged, bool) {
	if t := lastTrial(f); t != nil {
		return Judged{&f.New, &t.Reading, t}, true
	}
	r := &f.Old.Reading
	return Judged{&f.Old, r, nil}, clamped(r) || volted(r)
}

// LegAmps answers with the current of a line, 0 to 2: what the clamp showed, over
// the turns of the conductor through it.
func LegAmps(r *record.Reading, i int) Answer[unit.Current] {
	if !known(&r.ClampTurns) {
		return Read(legSymbols[i], FromPlace, &r.Amps[i])
	}
	var a Ask
	shown, turns := Want(&a, "Iᵣ", &r.Amps[i]), Want(&a, "n", &r.ClampTurns)
	return Solve(&a, FromPlace, "phase.clamp", At{"reading": shown.Term, "turns": turns.Term}, func() (unit.Current, error) {
		n, err := wholeTurns(turns.V())
		if err != nil {
			return 0, err
		}
		return phase.ThroughClamp(shown.V(), n)
	})
}

func wholeTurns(n unit.Turns) (int, error) {
	if n != unit.Turns(math.Trunc(float64(n))) {
		return 0, limit.Break("turns", limit.NotWhole)
	}
	return int(n), nil
}

// leg asks for the current of a line.
func leg(a *Ask, r *record.Reading, i int) Given[unit.Current] {
	if !known(&r.ClampTurns) {
		return Want(a, legSymbols[i], &r.Amps[i])
	}
	return Use(a, legSymbols[i], LegAmps(r, i))
}

// clampOf returns how far the legs of a reading may be off, each by itself: one clamp
// read all three, so that its error of scale is common to them; where the conductor
// lies in the jaws, and the last digits, are not.
func clampOf(r *record.Reading) phase.Meter[unit.Current] {
	m := meterOf(&r.Amps, phase.ClampRepeats)
	m.Floor /= unit.Current(max(1, r.ClampTurns.Value()))
	return m
}

// Shares of a reading by which a meter may read another the next time.
const (
	voltsRepeat unit.Ratio = 0 // its probes touch or they don't
	allOfIt     unit.Ratio = 1 // none of its error is common
)

// meterOf returns the widest band of three readings of one kind as a meter. They were
// taken one after the other with the same meter, and share its error of scale; what
// sets them apart is its last digits, and what it repeats by. A band that was typed for
// one of them is that one's own.
func meterOf[Q metered](readings *[3]record.Entry[Q], repeats unit.Ratio) phase.Meter[Q] {
	var m phase.Meter[Q]
	for i := range readings {
		w, usual := readings[i].Width()
		one := phase.Meter[Q]{Share: unit.Ratio(w.Rel), Floor: Q(w.Abs)}
		if usual {
			one = one.Alike(repeats)
		}
		m.Share, m.Floor = max(m.Share, one.Share), max(m.Floor, one.Floor)
	}
	return m
}
