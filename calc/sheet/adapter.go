package sheet

import (
	"errors"
	"slices"
	"strconv"

	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Adapter answers with what joins the opening and the conduit. A place that is
// not said is a roof, in the weather.
func Adapter(f *record.Fan) Finding[raceway.Adapter] {
	var a Ask
	o, r := &f.Opening, &f.Raceway
	a.Need(&o.Kind)
	if o.Kind.Value() == record.OpeningConduit {
		a.Need(&o.Conduit)
	}
	a.Need(&o.Size)
	a.Need(&r.Conduit)
	a.Need(&r.Size)
	a.mind(&r.Site)
	from := raceway.End{Kind: raceway.EndKind(o.Kind.Value()), Size: raceway.TradeSize(o.Size.Value()), Conduit: raceway.Conduit(o.Conduit.Value())}
	to := raceway.End{Kind: raceway.ConduitEnd, Size: raceway.TradeSize(r.Size.Value()), Conduit: raceway.Conduit(r.Conduit.Value())}
	at := At{
		"0.Size": {Place: &o.Size}, "0.Conduit": {Place: &o.Conduit}, "0.Kind": {Place: &o.Kind},
		"1.Size": {Place: &r.Size}, "1.Conduit": {Place: &r.Conduit},
	}
	return Find(&a, "raceway.adapter", at, func() (raceway.Adapter, error) {
		joined, err := raceway.Join(from, to, site(f), ToGround(f))
		return joined, inRow(err)
	})
}

// inRow returns an error in a row as one of a parameter named for row and field.
func inRow(err error) error {
	var row *raceway.RowError
	var l *limit.Error
	if errors.As(err, &row) && errors.As(row.Err, &l) {
		return limit.Break(strconv.Itoa(row.Row)+"."+l.Parameter, l.Rule)
	}
	return err
}

func site(f *record.Fan) raceway.Place {
	if f.Raceway.Site.Value() == record.Indoors {
		return raceway.Indoors
	}
	return raceway.Outdoors
}

// ToGround returns on which side of 250 V the circuit's voltage to ground lies, as far as
// the motor's volts or those of the lines tell: the unfavorable one, where both do.
func ToGround(f *record.Fan) raceway.ToGround {
	var all []raceway.ToGround
	if v := &f.New.MotorVolts; v.State() == record.Known {
		all = append(all, toGround(v.Value()))
	}
	for _, r := range lineReadings(f) {
		if v := highest(r); v != nil && nominal(v.Value()) > 0 {
			all = append(all, toGround(nominal(v.Value())))
		}
	}
	for _, to := range [...]raceway.ToGround{raceway.Over250, raceway.ToGroundNotKnown, raceway.UpTo250} {
		if slices.Contains(all, to) {
			return to
		}
	}
	return raceway.ToGroundNotKnown
}

// toGround returns on which side of 250 V a voltage lies to ground: there it is at most
// what it is between lines, and of three lines one is at least 1/√3 of that away from
// ground. 277 V is no voltage between lines but that of a line of 480 V to ground.
func toGround(volts unit.Voltage) raceway.ToGround {
	const atLeast = 0.577 // 1/√3, rounded down
	if most, _ := raceway.ToGroundOf(volts); most == raceway.UpTo250 {
		return most
	}
	if volts >= 260 && volts <= 290 {
		return raceway.Over250
	}
	if least, _ := raceway.ToGroundOf(volts * atLeast); least == raceway.Over250 {
		return least
	}
	return raceway.ToGroundNotKnown
}

// JointVerdicts judges the conduits at a joint by their place, as soon as their
// types are known, the new conduit by its length, and the joint's bonding over 250 V to
// ground.
func JointVerdicts(f *record.Fan, joined Finding[raceway.Adapter]) []Verdict {
	var all []Verdict
	if dryOnly(f, &f.Raceway.Conduit) || f.Opening.Kind.Value() == record.OpeningConduit && dryOnly(f, &f.Opening.Conduit) {
		all = append(all, Verdict{Level: Stop, Rule: RuleConduitWet, Method: "raceway.place"})
	}
	if slices.Contains(joined.Value.Conditions, raceway.BondOver250) {
		v := Verdict{Level: Watch, Rule: RuleBond, Method: "raceway.adapter"}
		if ToGround(f) == raceway.ToGroundNotKnown {
			v.Level, v.Wanted = Unjudged, []record.Place{&f.New.MotorVolts}
		}
		all = append(all, v)
	}
	return append(all, judgeRun(f)...)
}

// smallMost is how long 3/8 may be: 348.20(A)(2), 350.20 and 356.20 by it, and 430.245(B)
// for a motor's own leads. A listed assembly is its maker's.
const smallMost unit.Length = 6 * unit.Foot

// judgeRun judges how long the new conduit is: 3/8 no longer than 6 ft, and LFNC-A longer
// than that only where it is secured as 356.30 has it. (Of LFNC-B that was always so;
// before 2017 type A had no leave to be longer, from memory.) A nipple is short.
func judgeRun(f *record.Fan) []Verdict {
	r := &f.Raceway
	conduit, size := raceway.Conduit(r.Conduit.Value()), raceway.TradeSize(r.Size.Value())
	length := Read("L", FromPlace, &r.Length)
	held, most := limitOf[unit.Length]{scale: &unit.Site, level: Watch}, smallMost
	switch {
	case r.Use.Value() == record.Nipple && !length.Known():
		return nil
	case r.Use.Value() == record.Nipple:
		held.rule, held.method, most = RuleNippleLong, "raceway.fill", raceway.NippleMost
	case size == raceway.Size3by8 && conduit.Flexible():
		held.rule, held.method, held.level = RuleSmallLong, "raceway.small.length", Stop
	case conduit == raceway.LFNCA && length.Known():
		held.rule, held.method = RuleFlexLong, "raceway.flex.length"
	default:
		return nil
	}
	if v := held.hold(length, fixed(most, "")); v.Level != Within {
		return []Verdict{v}
	}
	return nil
}

// dryOnly tells whether a conduit must not run where it is said to.
func dryOnly(f *record.Fan, conduit *record.Choice[record.Conduit]) bool {
	allowed, err := raceway.Allowed(raceway.Conduit(conduit.Value()), site(f))
	return err == nil && !allowed
}

// HangingFree answers with how long a flexible conduit may hang free where it
// must flex.
func HangingFree(f *record.Fan) Answer[unit.Length] {
	var a Ask
	r := &f.Raceway
	a.Need(&r.Conduit)
	a.Need(&r.Size)
	at := At{"conduit": {Place: &r.Conduit}, "size": {Place: &r.Size}}
	return Solve(&a, FromPlace, "raceway.flex.support", at, func() (unit.Length, error) {
		return raceway.UnsecuredMost(raceway.Conduit(r.Conduit.Value()), raceway.TradeSize(r.Size.Value()))
	})
}

// An Outside is a trade size with the outside diameter of a conduit in it.
type Outside struct {
	Size     raceway.TradeSize
	Diameter unit.Length
}

// Outsides returns what the sizes of the conduit measure outside, by which an
// unmarked one is told; none for one that bends.
func Outsides(f *record.Fan) []Outside {
	var all []Outside
	for _, size := range raceway.TradeSizes() {
		if d, err := raceway.OutsideOf(raceway.Conduit(f.Raceway.Conduit.Value()), size); err == nil {
			all = append(all, Outside{size, d})
		}
	}
	return all
}

// Flexible tells whether the conduit bends by hand.
func Flexible(f *record.Fan) bool { return raceway.Conduit(f.Raceway.Conduit.Value()).Flexible() }
