package sheet

import (
	"slices"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A posed record is one with something in the place of what it doesn't say.
type posed struct {
	*record.Fan
	edition  raceway.Edition // where not ""
	onePhase bool            // the motor's plate
	on208    bool            // the system's volts
	slowly   bool            // the motor turns under 1200 rpm
	nipple   bool            // the conduit is one,
	run      bool            // or none, though it is said to be
}

// An unsaid is a place that is not said, for which something is taken, with what it may
// usually be besides.
type unsaid struct {
	place  record.Place
	others []func(*posed)
}

// A way is a record as it may be, with the places in which it isn't as it is taken.
type way struct {
	posed
	changed []record.Place
}

// empty tells whether a place has no value. One whose text is none stops whatever asks for
// it by itself.
func empty(p record.Place) bool { return p.State() != record.Known }

// editionUnsaid is the edition of the code, where none is said.
func editionUnsaid(f *record.Fan) []unsaid {
	if !empty(&f.Edition) {
		return nil
	}
	u := unsaid{place: &f.Edition}
	for _, e := range raceway.Editions() {
		if e != raceway.DefaultEdition {
			u.others = append(u.others, func(o *posed) { o.edition = e })
		}
	}
	return []unsaid{u}
}

// nippleUnsaid is the length of a conduit that is said to be a nipple: not said, so that it
// may be longer than one may be, or said with an error that reaches so far, where it is
// taken for a run.
func nippleUnsaid(f *record.Fan) []unsaid {
	r := &f.Raceway
	length := Read("L", FromPlace, &r.Length)
	switch {
	case r.Use.Value() != record.Nipple:
		return nil
	case empty(&r.Length):
		return []unsaid{{&r.Length, []func(*posed){func(o *posed) { o.run = true }}}}
	case length.Low() > raceway.NippleMost:
		return nil
	}
	return []unsaid{{&r.Length, []func(*posed){func(o *posed) { o.nipple = true }}}}
}

// byEdition tells whether a circuit's verdicts may hang on the edition: so low over the
// roof one adds the sun's heat and another need not, or the motor is so small that a
// breaker of 10 A, a standard one from 2023 on, is the largest.
func (c *Circuit) byEdition(f *record.Fan) bool {
	height := Read("h", FromPlace, &f.Raceway.Height)
	return f.Raceway.Exposure.Value() == record.Rooftop && height.Low() < 7./8*unit.Inch || c.Current.Low() <= 4*unit.Ampere
}

// unsaid are the places that a circuit's verdicts may hang on: the edition of the code;
// the plate's phases, for a motor on three lines may be of one phase; the system's volts,
// for a plate of 230 V is run on 208; and the plate's speed where its amps are above the
// table's, in whose place they would stand below 1200 rpm (430.6(A)(1)).
func (c *Circuit) unsaid(f *record.Fan) []unsaid {
	all := nippleUnsaid(f)
	if c.byEdition(f) {
		all = append(all, editionUnsaid(f)...)
	}
	if BeyondTables(f) {
		return all
	}
	s := &f.New
	if empty(&s.Fit.Phases) {
		all = append(all, unsaid{&s.Fit.Phases, []func(*posed){func(o *posed) { o.onePhase = true }}})
	}
	unread := !slices.ContainsFunc(lineReadings(f), func(r *record.Reading) bool { return highest(r) != nil })
	if nominal(s.MotorVolts.Value()) == 240 && unread {
		all = append(all, unsaid{voltsPlace(f), []func(*posed){func(o *posed) { o.on208 = true }}})
	}
	if empty(&s.MotorSpeed) && s.MotorAmps.Value() > c.Current.Value {
		all = append(all, unsaid{&s.MotorSpeed, []func(*posed){func(o *posed) { o.slowly = true }}})
	}
	return all
}

// ways are what a record may be besides as it is taken.
func ways(f *record.Fan, all []unsaid) []way {
	list := []way{{posed: posed{Fan: f}}}
	for _, u := range all {
		for _, w := range list {
			for _, set := range u.others {
				o := way{w.posed, append(slices.Clone(w.changed), u.place)}
				set(&o.posed)
				list = append(list, o)
			}
		}
	}
	return list[1:]
}

// amid returns a verdict as it stands whichever way the record may be: as it is where
// all ways lead to its level; the mildest of them where each is to be watched or
// stopped; and can't be judged, with what decides wanted, where only some are. A way
// that nothing is known of, as of a motor that no table has, is none.
func amid(v Verdict, list []way, of func(i int) Verdict) Verdict {
	if v.Level == Unjudged {
		return v
	}
	mildest, same := v, true
	var alone, together []record.Place
	for i, w := range list {
		other := of(i)
		switch {
		case other.Fault.breaks(raceway.TooHot):
			other.Level = Stop
		case other.Fault != nil:
			continue
		}
		if other.Level < mildest.Level {
			mildest = other
		}
		if other.Level == v.Level {
			continue
		}
		same = false
		if len(w.changed) == 1 {
			alone = joined(alone, w.changed)
		}
		together = joined(together, w.changed)
	}
	switch {
	case same:
		return v
	case mildest.Level >= Watch:
		return mildest
	case len(alone) > 0:
		together = alone
	}
	return Verdict{Level: Unjudged, Rule: v.Rule, Method: v.Method, Of: v.Of, Wanted: together}
}

// weigh holds the circuit's verdicts against whatever is not said.
func (c *Circuit) weigh(f *record.Fan) {
	list := ways(f, c.unsaid(f))
	if len(list) == 0 {
		return
	}
	var others []*Circuit
	list = slices.DeleteFunc(list, func(w way) bool {
		o := circuitOf(w.posed)
		none := c.Current.Known() && !o.Current.Known() // a motor that no table has
		if !none {
			others = append(others, o)
		}
		return none
	})
	for _, v := range [...]func(*Circuit) *Verdict{
		func(c *Circuit) *Verdict { return &c.WireVerdict }, func(c *Circuit) *Verdict { return &c.GroundVerdict },
		func(c *Circuit) *Verdict { return &c.DeviceVerdict }, func(c *Circuit) *Verdict { return &c.DropVerdict },
	} {
		*v(c) = amid(*v(c), list, func(i int) Verdict { return *v(others[i]) })
	}
}

// amidWays returns a verdict as it stands whichever way the record may be.
func amidWays(f *record.Fan, all []unsaid, judge func(posed) Verdict) Verdict {
	list := ways(f, all)
	return amid(judge(posed{Fan: f}), list, func(i int) Verdict { return judge(list[i].posed) })
}
