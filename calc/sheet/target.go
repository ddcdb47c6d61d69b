package sheet

import (
	"slices"

	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Candidate is one origin of the target speed and what it says.
type Candidate struct {
	Origin record.Origin
	Speed  Answer[unit.Speed]
	Apart  unit.Ratio // from the one chosen
	Chosen bool
}

// disputed is how far two origins of the target may lie apart (common
// practice).
const disputed = 0.03

// ranked lists the origins of a target, the most trusted first.
var ranked = [...]record.Origin{record.FromReport, record.FromTag, record.FromTachometer, record.FromCount, record.FromSheaves}

// originSpeed answers with what one origin says of the target speed. What can hardly
// be is held until the place is put right, or the origin is chosen by hand.
func originSpeed(f *record.Fan, o record.Origin) Answer[unit.Speed] {
	v := saidBy(f, o)
	if p := improbable(f, o, v); p != nil && f.Target.Use.Value() != o {
		return Answer[unit.Speed]{From: v.From, Fault: &Fault{p, limit.Break("", limit.Improbable)}}
	}
	return v
}

// Fans of this sort turn between these speeds (common practice: wheels of 8 to 40 in,
// belt driven by motors of two to eight poles).
const (
	slowestFan = 100 * unit.RPM
	fastestFan = 3000 * unit.RPM
)

// improbable returns the place to look at where an origin says a speed that hardly any
// such fan has, or takes it from a fan sheave smaller than the motor's, as of two sheaves
// entered the wrong way about; else nil.
func improbable(f *record.Fan, o record.Origin, v Answer[unit.Speed]) record.Place {
	if !v.Known() {
		return nil
	}
	if bySheaves := o == record.FromSheaves; bySheaves && SwappedVerdict(&f.Old).Level == Watch {
		return (&Term{Of: &v.Steps}).last()
	}
	if v.Value >= slowestFan*(1-slack) && v.Value <= fastestFan*(1+slack) {
		return nil
	}
	return (&Term{Of: &v.Steps}).last()
}

// last returns the last place that a term's working leads to: of a drive, its fan sheave.
func (t *Term) last() record.Place {
	if t.Place != nil || t.Of == nil {
		return t.Place
	}
	for _, u := range slices.Backward(t.Of.Terms) {
		if p := u.last(); p != nil {
			return p
		}
	}
	return nil
}

// saidBy answers with the target speed of an origin as it stands.
func saidBy(f *record.Fan, o record.Origin) Answer[unit.Speed] {
	switch old := &f.Old; o {
	case record.FromReport:
		return Read("n", FromReport, &f.Target.Speed)
	case record.FromTag:
		return Read("n", FromTag, &f.Target.TagSpeed)
	case record.FromTachometer:
		if old.BeltHealthy.Value() == record.Yes && (!known(&old.Reading.Speed) || believed(f, old)) {
			return Read("n₂", FromTachometer, &old.Reading.Speed)
		}
		return Answer[unit.Speed]{Wanted: []record.Place{&old.BeltHealthy}}
	case record.FromCount:
		return CountedSpeed(f, old)
	case record.FromSheaves:
		return SheaveSpeed(f, old)
	}
	return Read("n", FromRating, &f.Target.Rated)
}

func (a Answer[Q]) said() bool { return a.Known() || a.Fault != nil }

// Targets answers with every origin of the target speed that says something,
// was chosen or waits for a word, the most trusted first: balance report or design, drive tag, tachometer on a
// healthy belt, counted ratio, diameters. With another wheel a speed match
// means nothing for air, and the new fan's own rating is the only one.
func Targets(f *record.Fan) []Candidate {
	if f.SameWheel.Value() == record.No {
		return choose(f, []Candidate{{Origin: record.FromRating, Speed: originSpeed(f, record.FromRating)}})
	}
	var heard []Candidate
	for _, o := range ranked {
		if s := originSpeed(f, o); s.said() || o == f.Target.Use.Value() || o == record.FromTachometer && asksHealth(&f.Old) {
			heard = append(heard, Candidate{Origin: o, Speed: s})
		}
	}
	return choose(f, heard)
}

// asksHealth tells whether a tachometer reading waits for a word on the belt.
func asksHealth(s *record.Side) bool { return known(&s.Reading.Speed) && !known(&s.BeltHealthy) }

// choose marks the origin that the user has chosen, or the first that says
// something.
func choose(f *record.Fan, cs []Candidate) []Candidate {
	chosen := slices.IndexFunc(cs, func(c Candidate) bool { return c.Origin == f.Target.Use.Value() })
	if chosen < 0 {
		chosen = slices.IndexFunc(cs, func(c Candidate) bool { return c.Speed.said() })
	}
	if chosen < 0 {
		return cs
	}
	cs[chosen].Chosen = true
	if s := cs[chosen].Speed; s.Known() {
		for i := range cs {
			if cs[i].Speed.Known() {
				cs[i].Apart = unit.Ratio(cs[i].Speed.Value/s.Value) - 1
			}
		}
	}
	return cs
}

// TargetSpeed answers with the speed the new fan is to run at: that of the
// origin chosen, or without a choice of the most trusted one that says
// something.
func TargetSpeed(f *record.Fan) Answer[unit.Speed] {
	if f.SameWheel.Value() == record.No {
		return originSpeed(f, record.FromRating)
	}
	if use := f.Target.Use.Value(); use != "" {
		return originSpeed(f, use)
	}
	for _, o := range ranked {
		if s := originSpeed(f, o); s.said() {
			return s
		}
	}
	switch old := &f.Old; { // what has been begun is asked for
	case asksHealth(old):
		return originSpeed(f, record.FromTachometer)
	case known(&old.CountFan) || known(&old.CountMotor):
		return originSpeed(f, record.FromCount)
	case known(&old.FanSheave) || known(&old.FanOutside):
		return originSpeed(f, record.FromSheaves)
	}
	return originSpeed(f, record.FromReport)
}

// TargetVerdict judges whether the origins of the target agree with the one
// chosen, as far as their bands let it.
func TargetVerdict(f *record.Fan) Verdict {
	v := Verdict{Rule: RuleSources, Method: "drive.target", Limit: Figure{&unit.Share, disputed}}
	cs := Targets(f)
	var chosen Answer[unit.Speed]
	heard := 0
	for _, c := range cs {
		if c.Speed.Known() {
			heard++
		}
		if c.Chosen {
			chosen = c.Speed
		}
	}
	if heard < 2 || !chosen.Known() {
		v.Level, v.Wanted = Unjudged, chosen.open()
		return v
	}
	v.Value.Scale = &unit.Share
	for _, c := range cs {
		if c.Chosen {
			continue
		}
		apart, within := abs(float64(c.Apart)), float64((c.Speed.Band+chosen.Band)/chosen.Value)
		v.Value.Base = max(v.Value.Base, apart)
		switch {
		case apart-within > disputed*(1+slack):
			v.Level = Watch
		case apart+within > disputed*(1+slack):
			v.Level = max(v.Level, Unjudged)
			if p := c.Speed.Steps.Unsettled(); p != nil {
				v.Wanted = append(v.Wanted, p)
			}
		}
	}
	if v.Level == Watch { // two lie apart for sure: no surer value of a third takes that back
		v.Wanted = nil
	}
	return v
}
