package phase

import "roofside/calc/unit"

// A Standing is how a value stands to its limits. The spellings are keys.
type Standing string

// Standings.
const (
	Within   Standing = "within"
	Watch    Standing = "watch"
	Stop     Standing = "stop"
	Unjudged Standing = "unjudged"
)

// A Reason is why no standing is given, or what stands before it. The spellings
// are keys.
type Reason string

// Reasons.
const (
	ReasonNone  Reason = ""
	ReasonBand  Reason = "band"       // the meter's error reaches across a limit
	ReasonNear  Reason = "near"       // by the reading itself, though the meter's error reaches across a limit
	ReasonLight Reason = "light-load" // amps of a motor under half load tell little
	ReasonLost  Reason = "lost-phase" // a phase is lost: no unbalance to speak of
)

// A Verdict is how a reading stands, at its best and at its worst within the
// meter's error; where the two differ none is given.
type Verdict struct {
	Standing    Standing
	Best, Worst Standing
	Reason      Reason
}

func unjudged(why Reason) Verdict { return Verdict{Standing: Unjudged, Reason: why} }

// judge places a range of which more is worse against its limits.
func judge(low, high, watch, stop unit.Ratio) Verdict {
	v := Verdict{Best: place(low, watch, stop), Worst: place(high, watch, stop)}
	if v.Standing = v.Best; v.Best != v.Worst {
		v.Standing, v.Reason = Unjudged, ReasonBand
	}
	return v
}

func place(x, watch, stop unit.Ratio) Standing {
	const slack = 1e-9
	switch {
	case x <= watch*(1+slack):
		return Within
	case x <= stop*(1+slack):
		return Watch
	}
	return Stop
}
