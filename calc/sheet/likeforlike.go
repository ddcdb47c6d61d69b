package sheet

import (
	"strings"
	"sync"

	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Likeness is how one thing of the new fan stands to the same of the old one.
type Likeness int

// The likenesses.
const (
	NotKnown Likeness = iota // of one of the two, or of both
	Alike
	More // of it, at the new fan
	Less
	Other // and neither more nor less
)

// A Subject is the part of the job that a difference is settled in.
type Subject string

// The subjects; a difference without one is settled on the roof.
const (
	OfDrive   Subject = "drive"
	OfAirflow Subject = "airflow"
	OfBelt    Subject = "belt"
	OfPower   Subject = "power"
	OfRaceway Subject = "raceway"
)

// A Line holds one thing of the old fan against the same of the new one.
type Line struct {
	Name     string // that of its places behind old. and new.
	Old, New record.Place
	Likeness Likeness
	Apart    unit.Ratio // how far two values may lie apart and still be the same, beside their own errors
	Level    Level      // of what the difference means: Unjudged where it isn't known
	Method   string     // key in the register of what the level rests on
	Settled  Subject
}

// Differs tells whether the two were compared and are not the same.
func (l Line) Differs() bool { return l.Likeness > Alike }

// A comparer is one line to be: how far two values may lie apart and still be the
// same, and what a difference means.
type comparer struct {
	name       string
	apart      unit.Ratio
	more, less Level
	settled    Subject
}

// What is compared, as the hand meets it: the wheel, the motor's plate, the drive,
// the curb, the lift. How far plates of one motor lie apart, and what a difference
// means, is common practice (fit.alike).
var compared = [...]comparer{
	{"wheel-diameter", 0.005, Watch, Watch, OfDrive},
	{"motor-volts", 0.001, Watch, Watch, OfPower},
	{"phases", 0, Stop, Stop, OfPower},
	{"motor-frequency", 0.001, Stop, Stop, OfPower},
	{"motor-power", 0.01, Watch, Watch, OfAirflow},
	{"motor-amps", 0.02, Watch, Watch, OfPower},
	{"motor-speed", 0.005, Watch, Watch, OfDrive},
	{"frame", 0, Watch, Watch, OfBelt},
	{"service-factor", 0.001, Within, Watch, OfAirflow},
	{"sheave", 0, Watch, Watch, OfDrive},
	{"motor-sheave", 0.001, Watch, Watch, OfDrive},
	{"motor-bore", 0, Watch, Watch, OfBelt},
	{"motor-key", 0, Watch, Watch, OfBelt},
	{"fan-sheave", 0.001, Watch, Watch, OfDrive},
	{"fan-bore", 0, Watch, Watch, OfBelt},
	{"fan-key", 0, Watch, Watch, OfBelt},
	{"section", 0, Watch, Watch, OfBelt},
	{"belt-number", 0, Watch, Watch, OfBelt},
	{"belts", 0, Watch, Watch, OfBelt},
	{"inlet", 0, Watch, Watch, ""},
	{"weight", 0.02, Watch, Within, ""},
	{"hinge", 0, Watch, Watch, OfRaceway},
	{"discharge", 0, Watch, Watch, ""},
}

// voltsApart is how far the volts of two plates may lie apart before the one motor
// can't run where the other ran: what a motor bears of its plate's (fit.volts).
const voltsApart = phase.PlateTolerance

// LikeForLike compares the new fan with the old one, line by line. Where the wheel
// is said not to be the same, or is and the diameters differ, the first line says
// so. How the base goes over the curb is for [Clearance].
func LikeForLike(f *record.Fan) []Line {
	pairs := pairsOf(f)
	lines := make([]Line, 0, len(compared)+1)
	lines = append(lines, sameWheel(f))
	for i, c := range compared {
		l := c.line(pairs[i][0], pairs[i][1])
		switch c.name {
		case "motor-volts":
			if l.Differs() && abs(float64(f.New.MotorVolts.Value()/f.Old.MotorVolts.Value())-1) > float64(voltsApart)+slack {
				l.Level, l.Method = Stop, "fit.volts"
			}
		case "phases":
			// What feeds the new motor decides; starter and protection are to be looked at anyway.
			if v := PhasesVerdict(f); l.Differs() && v.Level != Unjudged {
				l.Level, l.Method = max(Watch, v.Level), v.Method
			}
		case "discharge":
			if f.New.Fit.Discharge.State() == record.Known && f.New.Fit.Discharge.Value() != record.Upward {
				l.Level, l.Method = Stop, "fit.discharge" // whatever the old one did: grease is thrown away from the roof
			}
		}
		lines = append(lines, l)
	}
	return lines
}

// lineOf tells which line compares the places with a name.
var lineOf = sync.OnceValue(func() map[string]int {
	lines := map[string]int{}
	for i, c := range compared {
		lines[c.name] = i
	}
	return lines
})

// pairsOf returns the places that each line compares, the old fan's first.
func pairsOf(f *record.Fan) (pairs [len(compared)][2]record.Place) {
	for key, p := range f.Places() {
		side, name, _ := strings.Cut(key, ".")
		i, ok := lineOf()[name]
		switch {
		case ok && side == "old":
			pairs[i][0] = p
		case ok && side == "new":
			pairs[i][1] = p
		}
	}
	return pairs
}

func sameWheel(f *record.Fan) Line {
	l := Line{Name: "same-wheel", Old: &f.SameWheel, New: &f.SameWheel, Level: Unjudged, Method: "air.laws", Settled: OfDrive}
	switch f.SameWheel.Value() {
	case record.Yes:
		l.Likeness, l.Level = Alike, Within
	case record.No:
		l.Likeness, l.Level = Other, Watch
	}
	return l
}

func (c comparer) line(old, fresh record.Place) Line {
	l := Line{Name: c.name, Old: old, New: fresh, Apart: c.apart, Level: Unjudged, Method: "fit.alike", Settled: c.settled}
	if old.State() != record.Known || fresh.State() != record.Known {
		return l
	}
	switch a := old.(type) {
	case record.Measure:
		b := fresh.(record.Measure)
		apart := a.Band() + b.Band() + float64(c.apart)*max(abs(a.Base()), abs(b.Base()))
		switch d := b.Base() - a.Base(); {
		case d > apart+slack:
			l.Likeness = More
		case d < -apart-slack:
			l.Likeness = Less
		default:
			l.Likeness = Alike
		}
	default:
		l.Likeness = Alike
		if !sameText(old.Text(), fresh.Text()) {
			l.Likeness = Other
		}
	}
	switch l.Likeness {
	case Alike:
		l.Level = Within
	case Less:
		l.Level = c.less
	default:
		l.Level = c.more
	}
	return l
}

var bare = strings.NewReplacer(" ", "", "-", "")

// sameText compares what two hands have written: A50 and a 50 are one belt.
func sameText(a, b string) bool { return strings.EqualFold(bare.Replace(a), bare.Replace(b)) }

// clearMost is how much larger the new fan's base may be inside than the curb is
// outside before it stands on too little (common practice: half of it each side,
// closed by gasket and shims).
const clearMost = 1 * unit.Inch

// Clearance answers with how much larger the new fan's base is inside than the old
// curb outside: across the hinge, or along it.
func Clearance(f *record.Fan, along bool) Answer[unit.Length] {
	curb, base := &f.Old.Fit.CurbWidth, &f.New.Fit.CurbWidth
	if along {
		curb, base = &f.Old.Fit.CurbLength, &f.New.Fit.CurbLength
	}
	var a Ask
	b, c := Want(&a, "b", base), Want(&a, "c", curb)
	return Solve(&a, FromPlace, "fit.clearance", At{"b": b.Term, "c": c.Term}, func() (unit.Length, error) {
		return b.V() - c.V(), limit.Positive("b", b.V())
	})
}

// ClearanceVerdict judges how the base goes over the curb: not at all, well, or
// with so much room that it wants a curb adapter.
func ClearanceVerdict(clear Answer[unit.Length]) Verdict {
	over := limitOf[unit.Length]{rule: RuleCurb, method: "fit.clearance", scale: &unit.Shop, level: Stop, least: true}.hold(clear, fixed(unit.Length(0), ""))
	if over.Level != Within {
		return over
	}
	return limitOf[unit.Length]{rule: RuleCurbLoose, method: "fit.clearance", scale: &unit.Shop, level: Watch}.hold(clear, fixed(clearMost, ""))
}
