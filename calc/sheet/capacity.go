package sheet

import (
	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// GrooveVerdict judges the belt entered against the grooves of the new drive.
func GrooveVerdict(s *record.Side) Verdict {
	v := Verdict{Rule: RuleGroove, Method: "belt.groove"}
	section, _, ok := parseBelt(s.BeltNumber.Text())
	if !ok || s.Section.State() != record.Known {
		v.Level = Unjudged
		if v.Wanted = []record.Place{&s.Section}; !ok {
			v.Wanted[0] = &s.BeltNumber
		}
		return v
	}
	in := func(groove drive.GrooveType) belt.Match {
		match, err := belt.SectionInGroove(section, drive.Section(s.Section.Value()), groove)
		if err != nil {
			return ""
		}
		return match
	}
	match := in(grooveOf(s))
	switch open := s.Groove.State() != record.Known && match != in(drive.Combination) && in(drive.Combination) != ""; {
	case match == "":
		v.Level, v.Wanted = Unjudged, []record.Place{&s.Groove}
		return v
	case open: // of another section, which only a groove for both would take
		v.Level, v.Rule, v.Wanted = Watch, RuleSection, []record.Place{&s.Groove}
		return v
	}
	switch match {
	case belt.MatchSunk:
		v.Level, v.Rule = Stop, RuleSunk
	case belt.MatchProud:
		v.Level, v.Rule = Stop, RuleProud
	case belt.MatchFamily:
		v.Level, v.Rule = Stop, RuleFamily
	}
	return v
}

// Capacity answers with the share of their rating that a power takes of the new
// drive's belts.
func Capacity(f *record.Fan, power Answer[unit.Power]) Answer[unit.Ratio] {
	var a Ask
	p, rating := Use(&a, "P", power), Want(&a, "Pᵣ", &f.Card.Rating)
	n := a.belts(&f.New)
	at := At{"design": p.Term, "rating": rating.Term, "belts": {Place: &f.New.Belts}}
	return Solve(&a, power.From, "belt.count", at, func() (unit.Ratio, error) {
		_, share, err := belt.BeltCapacity(p.V(), rating.V(), n)
		return share, err
	})
}

// BeltsNeeded answers with how many belts of the rating typed carry a power.
func BeltsNeeded(f *record.Fan, power Answer[unit.Power]) Answer[unit.Ratio] {
	var a Ask
	p, rating := Use(&a, "P", power), Want(&a, "Pᵣ", &f.Card.Rating)
	most := power.High() // counted, whatever it is
	return Solve(&a, power.From, "belt.count", At{"design": p.Term, "rating": rating.Term}, func() (unit.Ratio, error) {
		n, err := belt.BeltsNeeded(most, rating.V())
		return unit.Ratio(n), err
	})
}

// CapacityVerdict judges the share of their rating that belts carry.
func CapacityVerdict(share Answer[unit.Ratio]) Verdict {
	return limitOf[unit.Ratio]{rule: RuleCapacity, method: "belt.count", scale: &unit.Share, level: Watch}.hold(share, fixed(unit.Ratio(1), "belt.count"))
}
