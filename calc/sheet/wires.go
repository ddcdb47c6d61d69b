package sheet

import (
	"errors"

	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// judgeRows judges the rows of conductors in the raceway each for itself, as soon
// as it tells enough: insulation for dry places in a wet one, whatever the wire
// is for; a motor's wire below the least size; air too hot for a wire that
// carries current; a wire that is marked with nothing.
func judgeRows(f *record.Fan) []Verdict {
	var all []Verdict
	for _, judge := range []func(*record.Fan, *record.Wire) Verdict{judgePlace, judgeLeast, judgeHeat, judgeMark} {
		for _, w := range f.Wires {
			if w.Where.Value() == record.InBox {
				continue
			}
			if v := judge(f, w); v.Level != Within {
				v.Of = w
				all = append(all, v)
			}
		}
	}
	return all
}

// judgePlace stops insulation for dry places where the raceway is wet inside, and
// there asks for what is not said. Of the motor's circuit its ampacity asks.
func judgePlace(f *record.Fan, w *record.Wire) Verdict {
	location, _ := raceway.Interior(site(f)) // outdoors or indoors: it is one of them
	if w.Insulation.State() != record.Known {
		if location == raceway.Dry || carriesMotor(w) {
			return Verdict{}
		}
		return Verdict{Level: Unjudged, Rule: RuleDryOnly, Method: "raceway.rating", Wanted: []record.Place{&w.Insulation}}
	}
	if _, err := raceway.RatingOf(raceway.Insulation(w.Insulation.Value()), location); breaks(err, raceway.DryOnly) {
		return Verdict{Level: Stop, Rule: RuleDryOnly, Method: "raceway.rating", Fault: &Fault{&w.Insulation, err}}
	}
	return Verdict{}
}

// judgeLeast stops a motor's wire below 14, in general the least: 430.22(G); of aluminum,
// copper-clad too, below 12: 310.3(A).
func judgeLeast(f *record.Fan, w *record.Wire) Verdict {
	least := raceway.AWG14
	switch raceway.Material(f.Circuit.Material.Value()) {
	case raceway.Aluminum, raceway.Clad:
		least = raceway.AWG12
	}
	if carriesMotor(w) && w.Size.State() == record.Known && rank(raceway.WireSize(w.Size.Value())) < rank(least) {
		return Verdict{Level: Stop, Rule: RuleLeastWire, Method: "raceway.usable"}
	}
	return Verdict{}
}

// judgeHeat stops a wire that the air leaves no ampacity, of whatever size it is, in any
// edition of the code where none is said.
func judgeHeat(f *record.Fan, w *record.Wire) Verdict {
	return amidWays(f, editionUnsaid(f), func(f posed) Verdict { return heat(f, w) })
}

// heat judges it in one edition. Where only the error of air or height may be too much,
// that is not judged.
func heat(f posed, w *record.Wire) Verdict {
	if roleOf(w) == raceway.Ground {
		return Verdict{}
	}
	var a Ask
	a.Need(&w.Insulation)
	s := around(&a, f)
	if a.fault != nil || len(a.wanted) > 0 {
		return Verdict{}
	}
	hot := func() error {
		const any = raceway.AWG12 // of either metal the table has it in every column
		_, err := raceway.AmpacityOf(any, s.of(raceway.Insulation(w.Insulation.Value())))
		return err
	}
	v := Verdict{Rule: RuleTooHot, Method: "raceway.ambient"}
	if err := hot(); breaks(err, raceway.TooHot) {
		v.Level, v.Fault = Stop, &Fault{&f.HottestAir, err}
		return v
	}
	v.Wanted = []record.Place{&f.HottestAir}
	s.air.Base += s.air.Band
	if h := s.height; h != nil && !breaks(hot(), raceway.TooHot) {
		v.Wanted = []record.Place{&f.Raceway.Height}
		h.Base = max(0, h.Base-h.Band)
	}
	if breaks(hot(), raceway.TooHot) {
		v.Level = Unjudged
	}
	return v
}

// judgeMark leaves a wire without print to a licensed person. Of the motor's
// circuit that is said with what it carries.
func judgeMark(_ *record.Fan, w *record.Wire) Verdict {
	if !carriesMotor(w) && w.Insulation.Value() == record.Unmarked {
		return unmarked(w)
	}
	return Verdict{}
}

func unmarked(w *record.Wire) Verdict {
	return Verdict{Level: Unjudged, Rule: RuleUnmarked, Method: "raceway.rating", Of: w}
}

func breaks(err error, rule limit.Rule) bool {
	var l *limit.Error
	return errors.As(err, &l) && l.Rule == rule
}

// judgeNumber holds the conductors of the motor's circuit against what its supply
// asks for: one of the two is wrong, or a row's use. Of two speeds, and of a motor
// electronically commutated, it is not told how many they are.
func judgeNumber(f posed) []Verdict {
	switch f.Supply.Value() {
	case record.SinglePhase, record.ThreePhase, record.Inverter:
	default:
		return nil
	}
	n := 0
	for _, w := range f.Wires {
		if w.Where.Value() == record.InBox || !carriesMotor(w) {
			continue
		}
		if w.Count.State() != record.Known {
			return nil
		}
		n += int(w.Count.Value())
	}
	if takes, _ := raceway.MotorWires(phasesOf(f)); n != 0 && n != takes { // it knows of one phase and of three
		return []Verdict{{Level: Watch, Rule: RuleWireCount, Method: "raceway.motor.wires", Value: Figure{&unit.Tally, float64(n)}, Limit: Figure{&unit.Tally, float64(takes)}}}
	}
	return nil
}

// judgePlate holds the minimum circuit ampacity on the fan's plate against the
// motor's own current, the larger of plate and table: it can't be less. Nor is it more
// than the largest device on the same plate (common practice of makers, as 440.4(B) has
// it for other equipment, from memory): typed the wrong way about they look so.
func (c *Circuit) judgePlate(f *record.Fan) []Verdict {
	if !known(&f.New.MinimumAmpacity) {
		return nil
	}
	least := Read("I", FromFanPlate, &f.New.MinimumAmpacity)
	if known(&f.New.MaximumDevice) {
		v := limitOf[unit.Current]{rule: RulePlateDevice, method: "raceway.overcurrent.plate", scale: &unit.Amperage, level: Watch, least: true}.hold(Read("I", FromFanPlate, &f.New.MaximumDevice), least)
		if v.Level == Watch {
			return []Verdict{v}
		}
	}
	own := c.Current
	if known(&f.New.MotorAmps) {
		if plate := Read("Iₙ", FromMotorPlate, &f.New.MotorAmps); plate.Fault != nil || plate.Value > own.Value {
			own = plate
		}
	}
	if !own.Known() && own.Fault == nil {
		return nil
	}
	v := limitOf[unit.Current]{rule: RulePlateAmpacity, method: "raceway.demand.plate", scale: &unit.Amperage, level: Watch, least: true}.hold(least, own)
	if v.Level == Within {
		return nil
	}
	return []Verdict{v}
}

// Amps on a motor's plate against the table's for its hp, volts and phases: beyond these
// the two don't belong together. Motors of usual make have 0.55 to 1.1 of the table
// (common practice), and 1.25 is all that 430.22 leaves a wire.
const (
	plateLeast unit.Ratio = 0.5
	plateMost  unit.Ratio = 1.25
)

// judgeMotorPlate holds the amps on the motor's plate against the table's for the rest of
// it. Which of them is wrong is not told.
func judgeMotorPlate(f posed) []Verdict {
	s := &f.New
	for _, p := range []record.Place{&s.MotorAmps, &s.MotorPower, &s.MotorVolts} {
		if p.State() != record.Known {
			return nil
		}
	}
	table, err := raceway.TableCurrent(phasesOf(f), s.MotorPower.Value(), s.MotorVolts.Value())
	if err != nil || BeyondTables(f.Fan) || f.Supply.State() != record.Known || slow(f) {
		return nil
	}
	if share := unit.Ratio(s.MotorAmps.Value() / table); share >= plateLeast && share <= plateMost {
		return nil
	}
	return []Verdict{{Level: Watch, Rule: RulePlateTable, Method: "raceway.motor.agree", Value: Figure{&unit.Amperage, float64(s.MotorAmps.Value())}, Limit: Figure{&unit.Amperage, float64(table)}}}
}

// judgeMetal reminds of the terminals of aluminum, of which a record says nothing.
func judgeMetal(f *record.Fan) []Verdict {
	if marked, _ := raceway.MarkedTerminals(raceway.Material(f.Circuit.Material.Value())); !marked { // nor of a metal that isn't known
		return nil
	}
	return []Verdict{{Level: Watch, Rule: RuleAluminum, Method: "raceway.terminals"}}
}

// judgeTerminals doubts terminals for 90 °C: lugs are marked so, and the equipment
// that they are in as a rule is not (from memory).
func judgeTerminals(f *record.Fan) []Verdict {
	if f.Circuit.Terminals.Text() != columnText(raceway.Column90) {
		return nil
	}
	return []Verdict{{Level: Watch, Rule: RuleTerminals, Method: "raceway.usable"}}
}
