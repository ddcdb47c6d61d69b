package sheet

import "roofside/calc/unit"

// Why says why no setting brings the drive to its target.
type Why string

// The reasons.
const (
	TooSlow   Why = "too-slow"    // the fastest setting stays below the target
	TooFast   Why = "too-fast"    // the slowest is already more than allowed above it
	MustNotBe Why = "must-not-be" // the one that would reach it must not be run
)

// choose finds the row to set, or why there is none. A setting at which a speed was read
// that is on target is left alone. Of all others that may be run the nearest to the
// target wins, as far as it counts as on target; else the slowest above it.
func (w *worksheet) choose(t *Table) {
	if i := w.settled(t); i >= 0 {
		t.Set = i
		return
	}
	best, first, last := -1, -1, -1
	for i := range t.Rows {
		r := &t.Rows[i]
		if !w.allowed(r.Turns) {
			continue
		}
		if last = i; first < 0 {
			first = i
		}
		if reachOf(w.f, t.Target, r.band).atTarget(r.Speed) && (best < 0 || w.nearer(t, i, best)) && w.mayRun(r) {
			best = i
		}
	}
	if t.Set = best; t.Set < 0 {
		w.miss(t, first, last)
	}
}

// miss finds what there is where no setting that may be run is on target: the slowest
// above it, or why not even that. first and last are the rows that may be set.
func (w *worksheet) miss(t *Table, first, last int) {
	slowest := -1 // of those above the target
	for i := max(first, 0); i <= last; i++ {
		if t.Rows[i].Speed >= t.Target.Value*(1-slack) {
			slowest = i
		}
	}
	switch {
	case slowest < 0 && first >= 0 && t.Rows[first].Speed >= t.Target.Value*unit.Speed(1-mostShort)*(1-slack) && w.mayRun(&t.Rows[first]):
		t.Set = first // nothing comes nearer
	case slowest < 0:
		t.Why, t.missed = TooSlow, first
	case !w.mayRun(&t.Rows[slowest]):
		t.Why, t.Barred = MustNotBe, t.Rows[slowest].Verdict()
	case slowest == last: // or it would be on target
		t.Why, t.missed = TooFast, last
	default:
		t.Set = slowest
	}
	if t.Now >= 0 {
		w.judge(&t.Rows[t.Now])
	}
}

// settled returns the row of a setting that is left alone, -1 for none: where the
// sheave stands, by a reading there that is on target; or, without one, where its speed
// lies within the target's own band.
func (w *worksheet) settled(t *Table) int {
	if t.Now < 0 {
		return -1
	}
	r := &t.Rows[t.Now]
	stays := r.Speed >= t.Target.Low() && r.Speed <= t.Target.High()
	if t.last != nil && abs(float64(t.last.Turns.Value()-w.now.Value)) <= slack {
		n := &t.last.Reading.Speed
		stays = reachOf(w.f, t.Target, n.Band()/n.Base()).holds(n.Value())
	}
	if !stays || !w.mayRun(r) {
		return -1
	}
	return t.Now
}

// atTarget tells whether a setting counts as on target.
func (r reach) atTarget(n unit.Speed) bool { return n <= r.most*(1+slack) && n >= r.short*(1-slack) }

// nearer tells whether a row's speed lies nearer to the target than another's.
func (w *worksheet) nearer(t *Table, i, than int) bool {
	off := func(i int) float64 { return abs(float64(t.Rows[i].Speed - t.Target.Value)) }
	return off(i) < off(than)
}

// mayRun tells whether nothing stops a row.
func (w *worksheet) mayRun(r *Row) bool {
	w.judge(r)
	return r.Verdict().Level != Stop
}

// allowed tells whether a sheave may be set to so many turns open: never beyond the most
// that was entered for it; without that, no more than half a turn beyond the usual; and
// never below the least of its section.
func (w *worksheet) allowed(turns unit.Turns) bool {
	if float64(turns) < float64(w.least.Value)-slack { // no least is none
		return false
	}
	beyond := unit.Turns(halfTurn)
	if known(&w.f.New.MostTurns) {
		beyond = 0
	}
	return !w.most.Known() || float64(turns) <= float64(w.most.Value+beyond)+slack
}
