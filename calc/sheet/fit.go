package sheet

import (
	"strconv"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Role is why a belt is looked at.
type Role string

// The roles.
const (
	Fitted  Role = "fitted"  // the one whose number was entered
	Shorter Role = "shorter" // the standard belts next to the length asked for
	Nearest Role = "nearest" // the whole number nearest to it, sold between them
	Longer  Role = "longer"
)

// A Fit is how one belt suits the new drive at a run's setting.
type Fit struct {
	Role   Role
	Name   string // such as A50; "" while it is not known
	Length Answer[unit.Length]
	Center Answer[unit.Length] // where it lies tight
	Move   Answer[unit.Length] // of the motor base from where it stands; positive is away from the fan
	Toward Answer[unit.Length] // base travel left then, of what was measured; below zero by as much as the base falls short
	Away   Answer[unit.Length]

	Verdict Verdict // of the travel left
}

// Fits answers with the belts to choose from: the one entered, and those next to
// the length that the run's setting asks for. While that isn't known, one without
// a name says what is wanted.
func Fits(f *record.Fan, r Run) []Fit {
	s, needed := &f.New, LengthFor(f, r)
	var all []Fit
	if known(&s.BeltNumber) {
		section, number, _ := parseBelt(s.BeltNumber.Text())
		all = append(all, fit(f, r, needed, Fitted, section, number, NumberedLength(s)))
	}
	section := drive.Section(s.Section.Value())
	shorter, longer := next(s, needed, false), next(s, needed, true)
	if !shorter.Known() {
		return append(all, fit(f, r, needed, Nearest, section, 0, shorter))
	}
	add := func(role Role, number int, length Answer[unit.Length]) {
		x := fit(f, r, needed, role, section, number, length)
		for _, have := range all {
			if have.Name == x.Name {
				return
			}
		}
		all = append(all, x)
	}
	add(Shorter, numberOf(section, shorter), shorter)
	if n, err := belt.DatumNumber(section, needed.Value); err == nil {
		add(Nearest, n, whole(s, needed))
	}
	add(Longer, numberOf(section, longer), longer)
	return all
}

// next answers with the pitch length of the standard belt next to a length.
func next(s *record.Side, needed Answer[unit.Length], longer bool) Answer[unit.Length] {
	var a Ask
	a.Need(&s.Section)
	l := Use(&a, "L", needed)
	l.Band = 0 // a choice, which the length's error does not widen
	at := At{"pitchLength": {Place: &s.Center}, "section": {Place: &s.Section}}
	return Solve(&a, FromPlace, "belt.standard", at, func() (unit.Length, error) {
		short, long, err := belt.NearestSizes(drive.Section(s.Section.Value()), l.V())
		if longer {
			return long.Length, err
		}
		return short.Length, err
	})
}

// whole answers with the pitch length of the whole belt number nearest to a
// length.
func whole(s *record.Side, needed Answer[unit.Length]) Answer[unit.Length] {
	var a Ask
	l := Use(&a, "L", needed)
	l.Band = 0
	return Solve(&a, FromPlace, "belt.number", nil, func() (unit.Length, error) {
		n, err := belt.DatumNumber(drive.Section(s.Section.Value()), l.V())
		if err != nil {
			return 0, err
		}
		return belt.DatumLength(drive.Section(s.Section.Value()), n)
	})
}

// numberOf returns the number of the standard belt of a length.
func numberOf(section drive.Section, length Answer[unit.Length]) int {
	size, _, _ := belt.NearestSizes(section, length.Value)
	return size.Number
}

// fit answers for one belt, on sheaves that a belt of the length here fits as they
// stand. The one entered lies tight where it was measured to, if that may be it.
func fit(f *record.Fan, r Run, here Answer[unit.Length], role Role, section drive.Section, number int, length Answer[unit.Length]) Fit {
	s := &f.New
	measured := role == Fitted && r.Belt.Known() && r.Belt.From != FromNumber && BeltNumberVerdict(s).Level == Within
	lies := length
	if measured {
		lies = r.Belt
	}
	x := r.lay(f, lies, measured)
	x.Role, x.Length = role, length
	if length.Known() {
		x.Name = string(section) + strconv.Itoa(number)
	}
	need, err := belt.TravelAllowance(section, number)
	switch {
	case err != nil: // of no section, and so without a length
		x.Verdict = Verdict{Level: Unjudged, Rule: RuleReach, Method: "belt.travel.reach", Wanted: length.open(), Fault: length.Fault}
	case here.Fault != nil: // sheaves that can't stand so
		x.Verdict = Verdict{Level: Unjudged, Rule: RuleReach, Method: "belt.travel.reach", Fault: here.Fault}
	default:
		x.Verdict = x.judge(need)
	}
	return x
}

// lay returns where a belt lies tight, and what is left of the base's travel there.
func (r Run) lay(f *record.Fan, belt Answer[unit.Length], measured bool) Fit {
	x := Fit{Center: r.centerOf(&f.New, belt), Move: r.move(&f.New, belt, measured, standsOn(f))}
	x.Toward, x.Away = travelLeft(&f.New, r.move(&f.New, belt, measured, nil))
	return x
}

// judge holds the travel that is left against what laying the belt on and taking it up
// needs.
func (x Fit) judge(need belt.Allowance) Verdict {
	if x.Center.Fault.breaks(limit.BeltTooShort) {
		return Verdict{Level: Stop, Rule: RuleShort, Method: "belt.center"}
	}
	least := func(rule Rule, method string, level Level, left Answer[unit.Length], need unit.Length) Verdict {
		return limitOf[unit.Length]{rule: rule, method: method, scale: &unit.Shop, level: level, least: true, tolerance: need}.hold(left, fixed(need, method))
	}
	reach := func(left Answer[unit.Length]) Verdict {
		v := least(RuleReach, "belt.travel.reach", Stop, left, 0)
		if v.Level == Stop {
			v.Value.Base = -v.Value.Base // by how much it falls short
		}
		return v
	}
	install := least(RuleInstall, "belt.travel.allowance", Watch, x.Toward, need.Toward)
	if install.Level == Watch && x.Toward.Low() <= 0 { // nothing is left that can be counted on
		install.Level = Stop
	}
	return Worst([]Verdict{
		reach(x.Toward), reach(x.Away), install, least(RuleTakeUp, "belt.travel.allowance", Watch, x.Away, need.Away),
	})
}

// travelLeft answers with the base travel left each way after a move; below zero by as
// much as the base falls short.
func travelLeft(s *record.Side, move Answer[unit.Length]) (toward, away Answer[unit.Length]) {
	left := func(toward bool) Answer[unit.Length] {
		var a Ask
		m, t, w := Use(&a, "ΔC", move), Want(&a, "t₁", &s.TravelToward), Want(&a, "a₁", &s.TravelAway)
		if toward {
			w.Band = 0
		} else {
			t.Band = 0
		}
		at := At{"toward": t.Term, "away": w.Term}
		return Solve(&a, FromPlace, "belt.travel.reach", at, func() (unit.Length, error) {
			b, err := belt.BaseReach(m.V(), max(t.V(), 0), max(w.V(), 0), belt.Allowance{})
			if toward {
				return b.Toward, err
			}
			return b.Away, err
		})
	}
	return left(true), left(false)
}

// LengthSpread returns how far belts of a fit's number may be from its length, by
// the standard; false where its table does not tell.
func (x Fit) LengthSpread() (unit.Length, bool) {
	section, number, ok := parseBelt(x.Name)
	if !ok || numberMethod(section) != "belt.number" {
		return 0, false
	}
	spread, _, err := belt.LengthTolerance(number)
	return spread, err == nil
}
