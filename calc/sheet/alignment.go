package sheet

import (
	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// AlignmentGap answers with how far a straightedge along one sheave may stand off
// the other, at the far end of the span: at most, and as near as a synchronous belt
// asks.
func AlignmentGap(r Run) (most, aim Answer[unit.Length]) {
	gap := func(aim bool) Answer[unit.Length] {
		var a Ask
		t := Use(&a, "t", r.Span)
		t.Band = 0 // common practice is no finer
		return Solve(&a, FromPlace, "belt.align", At{"span": t.Term}, func() (unit.Length, error) {
			far, near, err := belt.AlignmentOffset(t.V())
			if aim {
				return near, err
			}
			return far, err
		})
	}
	return gap(false), gap(true)
}

// AlignmentVerdict judges the gap read at a trial, whose belt runs as r, by the gap
// itself: up to half a degree is in order for a V-belt.
func AlignmentVerdict(t *record.Trial, r Run) Verdict {
	v := Verdict{Rule: RuleAlignment, Method: "belt.align"}
	most, _ := AlignmentGap(r)
	gap := Read("x", FromPlace, &t.Belt.Gap)
	if !gap.Known() || !most.Known() {
		v.Level, v.Wanted = Unjudged, append(gap.open(), most.open()...)
		if v.Fault = gap.Fault; v.Fault == nil {
			v.Fault = most.Fault
		}
		return v
	}
	v.Value, v.Limit = Figure{&unit.Shop, float64(gap.Value)}, Figure{&unit.Shop, float64(most.Value)}
	stands, near, err := belt.JudgeAlignment(gap.Value, gap.Band, r.Span.Value)
	switch v.Near = near; {
	case err != nil, stands == belt.AlignmentUnjudged:
		v.Level = Unjudged
	case stands == belt.AlignmentOut:
		v.Level = Stop
	}
	return v
}

// BeltShift answers with how far the belt's middle moves along the shaft when the
// new motor sheave goes from where it stands to a setting; positive is the way its
// flange opens.
func BeltShift(f *record.Fan, to Answer[unit.Turns]) Answer[unit.Length] {
	var a Ask
	now, then := Use(&a, "n₁", NowTurns(f)), Use(&a, "n₂", to)
	lead := fixed(drive.DefaultLead, "")
	if known(&f.New.FlangeLead) {
		lead = Read("p", FromPlace, &f.New.FlangeLead)
	}
	p := Use(&a, "p", lead)
	at := At{"lead": p.Term, "before": now.Term, "after": then.Term}
	return Solve(&a, FromPlace, "belt.align.shift", at, func() (unit.Length, error) {
		return belt.BeltShift(p.V(), now.V(), then.V())
	})
}
