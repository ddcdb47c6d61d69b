package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A GroundWire is the least equipment ground of the circuit.
type GroundWire struct {
	raceway.GroundWire
	Raised bool // with conductors that are larger than they need be
}

// leastGround answers with the least wire-type equipment ground: by the rating
// of the overcurrent device that is there, or else of the largest that may be;
// raised with conductors that are larger than they need be, and never above
// them.
func (c *Circuit) leastGround(f *record.Fan) Finding[GroundWire] {
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
		if err != nil || !needed.Known() {
			return GroundWire{GroundWire: g}, err
		}
		raised, err := raceway.GroundRaised(g.Size, needed.Value.Size, size)
		if err != nil { // smaller than needed, or beyond the table: nothing to raise it by
			return GroundWire{GroundWire: g}, nil
		}
		if rank(raised) > rank(size) {
			raised = size
		}
		grown := rank(raised) > rank(g.Size)
		g.Size = raised
		return GroundWire{g, grown}, nil
	})
}

// judgeGround judges the equipment ground that is listed. Where none is, a
// conduit that is no metal carries no ground, one that flexes asks for a wire,
// and of any other this library does not know.
func (c *Circuit) judgeGround(f *record.Fan) Verdict {
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
		v.Rule, v.Method = RuleNoGround, "raceway.flex.ground"
		conduit := raceway.Conduit(f.Raceway.Conduit.Value())
		switch {
		case conduit == "":
			v.Level, v.Wanted = Unjudged, []record.Place{&f.Raceway.Conduit}
		case !conduit.Metallic():
			v.Level = Stop
		case conduit.Flexible():
			v.Level = Watch
		default:
			v.Level = Unjudged
		}
		return v
	}
	least := c.Ground
	switch {
	case !least.Known():
		v.Level, v.Wanted, v.Fault = Unjudged, least.open(), least.Fault
	case largest < rank(least.Value.Size):
		v.Level = Stop
	}
	return v
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
func (c *Circuit) voltageDrop(f *record.Fan) Answer[unit.Voltage] {
	var a Ask
	w := c.Wire
	i := Use(&a, "I", c.running(f))
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

// dropShare answers with the drop as a part of the motor's volts.
func dropShare(f *record.Fan, dropped Answer[unit.Voltage]) Answer[unit.Ratio] {
	var a Ask
	drop, volts := Use(&a, "U", dropped), Want(&a, "Uₙ", &f.New.MotorVolts)
	return Solve(&a, FromPlace, "raceway.drop", At{"supply": volts.Term}, func() (unit.Ratio, error) {
		return raceway.DropShare(drop.V(), volts.V())
	})
}
