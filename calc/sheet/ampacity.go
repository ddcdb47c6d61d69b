package sheet

import (
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A surrounding is what a conductor's ampacity depends on, apart from itself.
type surrounding struct {
	raceway.Conditions
	air    Given[unit.Temperature]
	height *Given[unit.Length]
	at     At
}

// around asks for the surroundings of the conductors. In the weather the inside
// of the raceway is wet, and whether the sun heats it has to be said; terminals
// are for 60 °C until they are said to be marked.
func around(a *Ask, f posed) *surrounding {
	r, c := &f.Raceway, &f.Circuit
	s := &surrounding{at: At{"Material": {Place: &c.Material}, "Terminals": {Place: &c.Terminals}}}
	a.Need(&c.Material)
	a.mind(&c.Terminals, &r.Site)
	s.air = Want(a, "t", &f.HottestAir)
	s.at["Ambient"] = s.air.Term
	s.Exposure, s.Location = raceway.Shaded, raceway.Dry
	if where := site(f.Fan); where == raceway.Outdoors {
		s.Location = raceway.Wet
		a.Need(&r.Exposure)
	}
	if s.Location == raceway.Wet && r.Exposure.Value() == record.Rooftop {
		s.Exposure = raceway.Rooftop
		h := Want(a, "h", &r.Height)
		s.height, s.at["Height"] = &h, h.Term
	}
	s.Edition, s.Material, s.Use = editionOf(a, f), raceway.Material(c.Material.Value()), use(a, f)
	s.Terminals = raceway.UnmarkedTerminals
	for _, column := range raceway.Columns() {
		if c.Terminals.Text() == columnText(column) {
			s.Terminals = column
		}
	}
	for _, w := range f.Wires {
		a.mind(&w.Role, &w.Where)
		if w.Where.Value() != record.InBox && roleOf(w) == raceway.Circuit {
			a.Need(&w.Count)
			s.Carrying += int(w.Count.Value())
		}
	}
	return s
}

func columnText(c raceway.Column) string {
	return map[raceway.Column]string{raceway.Column60: "60", raceway.Column75: "75", raceway.Column90: "90"}[c]
}

// of returns the conditions of an insulation, with what is put in now.
func (s *surrounding) of(i raceway.Insulation) raceway.Conditions {
	c := s.Conditions
	c.Insulation, c.Ambient = i, s.air.V()
	if s.height != nil {
		c.Height = s.height.V()
	}
	return c
}

// carried answers with what the conductors of the motor's circuit carry, and
// with the row that carries least; one of which that isn't known has no value, and is
// the least.
func carried(f posed) (least Answer[unit.Current], of *record.Wire) {
	for _, w := range f.Wires {
		if w.Where.Value() == record.InBox || !carriesMotor(w) {
			continue
		}
		if this := ampacity(f, w); of == nil || this.Value < least.Value {
			least, of = this, w
		}
		if !least.Known() {
			return least, of
		}
	}
	if of == nil {
		least.Fault = &Fault{Err: limit.Break("", raceway.NoConductor)}
	}
	return least, of
}

func ampacity(f posed, w *record.Wire) Answer[unit.Current] {
	var a Ask
	a.Need(&w.Size)
	a.Need(&w.Insulation)
	s := around(&a, f)
	size, insulation := raceway.WireSize(w.Size.Value()), raceway.Insulation(w.Insulation.Value())
	s.at["size"], s.at["Insulation"] = &Term{Place: &w.Size}, &Term{Place: &w.Insulation}
	if c, err := raceway.AmpacityOf(size, s.of(insulation)); err == nil {
		Take(&a, "Δt", c.Adder)
		Take(&a, "I₀", c.Table)
		Take(&a, "k(t)", c.Ambient)
		Take(&a, "k(n)", c.Adjusted)
		Take(&a, "I₀("+columnText(s.Terminals)+" °C)", c.Terminal)
	}
	return Solve(&a, FromPlace, "raceway.usable", s.at, func() (unit.Current, error) {
		c, err := raceway.AmpacityOf(size, s.of(insulation))
		return c.Usable, err
	})
}

// leastWire answers with the smallest conductor of the circuit's material and
// insulation that carries the demand.
func leastWire(f posed, w *record.Wire, least Answer[unit.Current]) Finding[raceway.Ampacity] {
	var a Ask
	if w == nil {
		return Finding[raceway.Ampacity]{Fault: &Fault{Err: limit.Break("", raceway.NoConductor)}}
	}
	a.Need(&w.Insulation)
	demand := Use(&a, "I", least)
	s := around(&a, f)
	s.at["Insulation"] = &Term{Place: &w.Insulation}
	s.at["current"] = demand.Term
	return Find(&a, "raceway.usable", s.at, func() (raceway.Ampacity, error) {
		return raceway.SmallestWire(demand.V(), s.of(raceway.Insulation(w.Insulation.Value())))
	})
}

// mostCarried answers with what a circuit's smallest conductor carries at most, whatever
// is not said of it and of what is about it: what Table 310.16 has in its terminals'
// column, of copper and at 75 °C where nothing else is said.
func mostCarried(f *record.Fan) (most Answer[unit.Current]) {
	material, terminals := raceway.Copper, raceway.Column75
	if f.Circuit.Material.State() == record.Known {
		material = raceway.Material(f.Circuit.Material.Value())
	}
	for _, column := range raceway.Columns() {
		if f.Circuit.Terminals.Text() == columnText(column) {
			terminals = column
		}
	}
	for _, w := range f.Wires {
		if w.Where.Value() == record.InBox || !carriesMotor(w) {
			continue
		}
		i, err := raceway.TableAmpacity(raceway.WireSize(w.Size.Value()), material, terminals)
		if err == nil && (!most.Known() || i < most.Value) {
			most = fixed(i, "raceway.usable")
		}
	}
	return most
}

// judgeWire judges what the conductors carry against the demand. One of them that
// can't be read is taken for 60 °C, and is not within by that; by a guessed count of what
// carries current beside them nothing is.
func (c *Circuit) judgeWire(f *record.Fan) Verdict {
	limit := limitOf[unit.Current]{rule: RuleAmpacity, method: "raceway.usable", scale: &unit.Amperage, level: Stop, least: true}
	v := limit.hold(c.Carried, c.Demand)
	if v.Level == Unjudged {
		if w := limit.hold(mostCarried(f), c.Demand); w.Level == Stop {
			return w
		}
	}
	for _, w := range f.Wires {
		if n := &w.Count; v.Level == Within && w.Where.Value() != record.InBox && roleOf(w) == raceway.Circuit && n.Basis() == record.Guessed {
			v.Level, v.Wanted = Unjudged, []record.Place{n}
			return v
		}
	}
	for _, w := range f.Wires {
		if v.Level == Within && w.Where.Value() != record.InBox && carriesMotor(w) && w.Insulation.Value() == record.Unmarked {
			return unmarked(w)
		}
	}
	return v
}
