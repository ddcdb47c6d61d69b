package sheet

import (
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

// Targets answers with every origin of the target speed that says something,
// the most trusted first: balance report or design, drive tag, tachometer on a
// healthy belt, counted ratio, diameters. With another wheel a speed match
// means nothing for air, and the new fan's own rating is the only one.
func Targets(f *record.Fan) []Candidate {
	t := &f.Target
	if f.SameWheel.Value() == record.No {
		return choose(f, []Candidate{{Origin: record.FromRating, Speed: Read("n", FromRating, &t.Rated)}})
	}
	all := []Candidate{
		{Origin: record.FromReport, Speed: Read("n", FromReport, &t.Speed)},
		{Origin: record.FromTag, Speed: Read("n", FromTag, &t.TagSpeed)},
	}
	if f.Old.BeltHealthy.Value() == record.Yes {
		all = append(all, Candidate{Origin: record.FromTachometer, Speed: Read("n₂", FromTachometer, &f.Old.Reading.Speed)})
	}
	if known(&f.Old.CountFan) || known(&f.Old.CountMotor) {
		all = append(all, Candidate{Origin: record.FromCount, Speed: CountedSpeed(f, &f.Old)})
	}
	all = append(all, Candidate{Origin: record.FromSheaves, Speed: SheaveSpeed(f, &f.Old)})
	said := all[:0]
	for _, c := range all {
		if c.Speed.Known() || c.Speed.Fault != nil {
			said = append(said, c)
		}
	}
	return choose(f, said)
}

func choose(f *record.Fan, cs []Candidate) []Candidate {
	chosen := -1
	for i, c := range cs {
		if c.Origin == f.Target.Use.Value() {
			chosen = i
		}
	}
	if chosen < 0 && len(cs) > 0 {
		chosen = 0
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

// TargetSpeed answers with the speed the new fan is to run at.
func TargetSpeed(f *record.Fan) Answer[unit.Speed] {
	for _, c := range Targets(f) {
		if c.Chosen {
			return c.Speed
		}
	}
	return Read("n", FromReport, &f.Target.Speed)
}

// TargetVerdict judges whether the origins of the target agree.
func TargetVerdict(f *record.Fan) Verdict {
	v := Verdict{Level: Within, Rule: RuleSources, Method: "drive.target", Limit: Figure{&unit.Share, disputed}}
	cs := Targets(f)
	heard := 0
	for _, c := range cs {
		if !c.Speed.Known() {
			continue
		}
		heard++
		apart := abs(float64(c.Apart))
		if apart > v.Value.Base || v.Value.Scale == nil {
			v.Value = Figure{&unit.Share, apart}
		}
		if apart > disputed*(1+slack) {
			v.Level = Watch
		}
	}
	if heard < 2 && v.Level == Within {
		v.Level = Unjudged
	}
	return v
}
