package sheet

import (
	"slices"

	"roofside/calc/record"
	"roofside/calc/unit"
)

// BeltBars answers with what stands against running the new drive's belt, apart from
// its tension: what is seen of the new drive outright, its groove, where the motor base
// goes, the alignment, its speed. What is in order is left out; the worst comes first.
// The alignment waits while m moves the sheave, which moves the belt sideways.
func BeltBars(f *record.Fan, m Move, set Run, fits []Fit) []Held {
	bars := Alarms(f)
	add := func(name, about string, v Verdict) { bars = append(bars, wrong(Held{name, about, v})...) }
	if x := fits[0]; x.Role == Fitted {
		add("new.groove", "", GrooveVerdict(&f.New))
		add("fitted.center", "", x.Verdict)
		add("new.belt-number", "", x.doubt(f))
	}
	if _, v := AlignmentNow(f); m.Do != DoOpen && m.Do != DoClose {
		add("align.gap", aboutAlignment, v)
	}
	add("set.belt-speed", "", BeltSpeedVerdict(set.Speed))
	slices.SortStableFunc(bars, func(a, b Held) int { return int(b.Level - a.Level) })
	return bars
}

// doubt is [BeltNumberVerdict] of the belt entered. A base that is known to reach
// explains the difference.
func (x Fit) doubt(f *record.Fan) Verdict {
	v := BeltNumberVerdict(&f.New)
	if x.Away.Known() { // and so is the other way
		v.Level = Within
	}
	return v
}

// Barred returns what must be put right before the belt's tension means anything: a
// stop, or a belt's number that its sheaves contradict.
func Barred(bars []Held) (Held, bool) {
	for _, v := range bars {
		if v.Level == Stop || v.Rule == RuleBeltNumber {
			return v, true
		}
	}
	return Held{}, false
}

// AlignmentNow judges the gap that was read last, and returns the trial it was read
// at, nil for none. A gap that was in order at another setting than the latest says
// nothing; one that was out of line bars the belt until it is read again.
func AlignmentNow(f *record.Fan) (*record.Trial, Verdict) {
	var t *record.Trial
	for _, x := range f.Trials {
		if x.Belt.Gap.State() != record.Unknown {
			t = x
		}
	}
	v := Verdict{Level: Unjudged, Rule: RuleAlignment, Method: "belt.align"}
	if t == nil {
		return nil, v
	}
	last := lastTrial(f)
	judged := AlignmentVerdict(t, RunAt(f, TrialTurns(t), &t.Reading))
	if moved := last.Turns.Value() - t.Turns.Value(); judged.Level != Stop && known(&last.Turns) && known(&t.Turns) && abs(float64(moved)) > slack {
		v.Wanted = []record.Place{&last.Belt.Gap}
		return t, v
	}
	return t, judged
}

// TravelLeft answers with the base travel left each way once the belt lies tight at a
// run.
func TravelLeft(f *record.Fan, r Run) (toward, away Answer[unit.Length]) {
	s := &f.New
	return travelLeft(s, r.move(s, r.Belt, r.Belt.From != FromNumber, nil))
}
