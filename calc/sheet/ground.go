package sheet

import (
	"slices"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A GroundWire is the least equipment ground of the circuit.
type GroundWire struct {
	raceway.GroundWire
	Raised bool             // with conductors that are larger than they need be
	Plain  raceway.WireSize // as it would be if it weren't raised
}

// leastGround answers with the least wire-type equipment ground: by the rating
// of the overcurrent device that is there, or else of the largest that may be;
// raised with conductors that are larger than they need be, and never above
// them.
func (c *Circuit) leastGround(f posed) Finding[GroundWire] {
	var a Ask
	rating := c.Device
	if known(&f.Circuit.Rating) {
		rating = Read("I", FromPlace, &f.Circuit.Rating)
	}
	i := Use(&a, "I", rating)
	w, size := c.Wire, raceway.WireSize("")
	at := At{"rating": i.Term, "material": {Place: &f.Circuit.Material}}
	if w != nil {
		a.Need(&w.Size)
		size, at["circuit"] = raceway.WireSize(w.Size.Value()), &Term{Place: &w.Size}
	}
	a.Need(&f.Circuit.Material)
	edition := editionOf(&a, f)
	needed := c.Least
	if w == nil {
		a.lean(needed.Wanted, needed.Fault)
	}
	return Find(&a, "raceway.ground", at, func() (GroundWire, error) {
		g, err := raceway.GroundFor(i.V(), raceway.Material(f.Circuit.Material.Value()), size, edition)
		if err != nil {
			return GroundWire{}, err
		}
		plain := g.Size
		raised, err := raceway.GroundRaised(g.Size, needed.Value.Size, size)
		if err != nil { // smaller than needed, which may not be known, or beyond the table: nothing to raise it by
			return GroundWire{GroundWire: g, Plain: plain}, nil
		}
		if rank(raised) > rank(size) {
			raised = size
		}
		grown := rank(raised) > rank(g.Size)
		g.Size = raised
		return GroundWire{g, grown, plain}, nil
	})
}

// judgeGround judges the equipment ground that is listed, and where none is, the
// conduit in its place. One that the table is content with and that was not raised
// with larger conductors may be enough by the exception of 250.122(B), for a qualified
// person to find; the edition of 2017 has no such exception.
func (c *Circuit) judgeGround(f posed) Verdict {
	v := Verdict{Rule: RuleGround, Method: "raceway.ground"}
	largest := -1
	for _, w := range f.Wires {
		if w.Role.Value() == record.Grounding && w.Where.Value() != record.InBox {
			for _, p := range []record.Place{&w.Size, &w.Count} {
				if p.State() != record.Known {
					v.Level, v.Wanted = Unjudged, []record.Place{p}
					return v
				}
			}
			largest = max(largest, rank(raceway.WireSize(w.Size.Value())))
		}
	}
	if largest < 0 {
		return judgeNoGround(f.Fan)
	}
	least := c.Ground
	switch {
	case !least.Known():
		v.Level, v.Wanted, v.Fault = Unjudged, least.open(), least.Fault
	case largest < rank(least.Value.Plain):
		v.Level = Stop
	case largest < rank(least.Value.Size):
		v.Level, v.Rule, v.Method = Watch, RuleGroundRaised, "raceway.ground.raised"
		if Edition(f.Fan) == raceway.Edition2017 {
			v.Level = Stop
		}
	}
	return v
}

// judgeNoGround judges a conduit without a ground wire: one that is no metal carries
// no ground (352.60, 356.60); one that doesn't bend is listed as one, its fittings made
// tight (250.118); one that bends only so far as 250.118 lets it, and not at all where
// the fan tips up on it (348.60, 350.60). Whether it takes up vibration is seen on the
// roof alone.
func judgeNoGround(f *record.Fan) Verdict {
	v := Verdict{Rule: RuleNoGround, Method: "raceway.flex.ground"}
	r := &f.Raceway
	conduit := raceway.Conduit(r.Conduit.Value())
	switch {
	case conduit == "":
		v.Level, v.Wanted = Unjudged, []record.Place{&r.Conduit}
		if r.Conduit.State() == record.Garbled {
			v.Wanted, v.Fault = nil, &Fault{&r.Conduit, errGarbled}
		}
		return v
	case !conduit.Metallic():
		v.Level = Stop
		return v
	case !conduit.Flexible():
		v.Method = "raceway.metal.ground"
		return v
	case tipsUp(f):
		v.Level, v.Rule = Stop, RuleFlexTips
		return v
	}
	if long := (limitOf[unit.Length]{rule: RuleFlexLength, method: v.Method, scale: &unit.Site, level: Stop}).hold(Read("L", FromPlace, &r.Length), fixed(raceway.PathLengthMost, "")); long.Level == Stop {
		return long
	}
	if most, ok := groundRating(conduit, raceway.TradeSize(r.Size.Value())); ok {
		if most == 0 {
			v.Level, v.Rule = Stop, RuleFlexSize
			return v
		}
		if over := (limitOf[unit.Current]{rule: RuleFlexRating, method: v.Method, scale: &unit.Amperage, level: Stop}).hold(Read("I", FromPlace, &f.Circuit.Rating), fixed(most, "")); over.Level == Stop {
			return over
		}
	}
	v.Level = Watch
	return v
}

// groundRating returns the greatest rating of a device before a flexible conduit that is
// the ground itself, 0 for a size that is none. It reports false where the size isn't
// known.
func groundRating(conduit raceway.Conduit, size raceway.TradeSize) (most unit.Current, ok bool) {
	for _, rating := range [...]unit.Current{60 * unit.Ampere, 20 * unit.Ampere} {
		path, err := raceway.FlexAsGround(conduit, size, rating, unit.Foot, raceway.Still)
		if err != nil {
			return 0, false
		}
		if !path.Wire {
			return rating, true
		}
	}
	return 0, true
}

// tipsUp tells whether the new fan is known to tip up on its hinge, as one does that was
// read so.
func tipsUp(f *record.Fan) bool {
	if h := f.New.Fit.Hinge.Value(); h != "" {
		return h != record.NoHinge
	}
	if f.New.Reading.TippedUp.Value() == record.Yes {
		return true
	}
	return slices.ContainsFunc(f.Trials, func(t *record.Trial) bool { return t.Reading.TippedUp.Value() == record.Yes })
}

// usualPowerFactor is that of the code's table of effective impedance.
const usualPowerFactor unit.Ratio = 0.85

// running answers with the current whose drop is asked: that of the
// motor tables, or the plate's where they don't hold.
func (c *Circuit) running(f *record.Fan) Answer[unit.Current] {
	switch f.Supply.Value() {
	case record.Direct:
		return Answer[unit.Current]{Wanted: []record.Place{&f.Supply}} // of how many phases is not said
	case record.Inverter, record.TwoSpeed:
		return Read("Iₙ", FromMotorPlate, &f.New.MotorAmps)
	}
	return c.Current
}

// voltageDrop answers with the drop between lines over the circuit's length.
func (c *Circuit) voltageDrop(f posed) Answer[unit.Voltage] {
	var a Ask
	w := c.Wire
	i := Use(&a, "I", c.running(f.Fan))
	length := Want(&a, "L", &f.Circuit.Length)
	a.Need(&f.Raceway.Conduit)
	a.Need(&f.Circuit.Material)
	at := At{"current": i.Term, "length": length.Term, "material": {Place: &f.Circuit.Material}}
	size := raceway.WireSize("")
	if w != nil {
		a.Need(&w.Size)
		size, at["size"] = raceway.WireSize(w.Size.Value()), &Term{Place: &w.Size}
	} else {
		a.lean(c.Least.Wanted, c.Least.Fault)
	}
	wall, _ := raceway.WallOf(raceway.Conduit(f.Raceway.Conduit.Value())) // an unknown conduit is wanted above
	factor := Take(&a, "cos φ", usualPowerFactor)
	return Solve(&a, i.From, "raceway.drop", at, func() (unit.Voltage, error) {
		z, err := raceway.ImpedanceOf(size, raceway.Material(f.Circuit.Material.Value()), wall)
		if err != nil {
			return 0, err
		}
		return raceway.VoltageDrop(phasesOf(f), i.V(), length.V(), z, factor.V())
	})
}

// dropShare answers with the drop as a part of the motor's volts, or of the system's
// where that is lower, as 208 V is for a plate of 230.
func dropShare(f posed, dropped Answer[unit.Voltage]) Answer[unit.Ratio] {
	var a Ask
	drop, volts := Use(&a, "U", dropped), Want(&a, "Uₙ", &f.New.MotorVolts)
	lines := systemVolts(&a, f)
	return solveOver(&a, lines, FromPlace, "raceway.drop", At{"supply": volts.Term}, func() (unit.Ratio, error) {
		least := volts.V()
		for _, l := range lines {
			if l.now >= leastSystem(f.Fan) {
				least = min(least, l.now)
			}
		}
		return raceway.DropShare(drop.V(), least)
	})
}
