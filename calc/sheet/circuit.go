package sheet

import (
	"slices"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Circuit is what a record says of the new motor's circuit. Its answers lean on
// each other and are therefore given together.
type Circuit struct {
	Current    Answer[unit.Current] // that the motor is sized by
	Demand     Answer[unit.Current] // least ampacity of its conductors
	Carried    Answer[unit.Current] // what they carry
	Wire       *record.Wire         // the row that carries least, or nil
	Least      Finding[raceway.Ampacity]
	Device     Answer[unit.Current] // largest rating of the overcurrent device
	Ground     Finding[GroundWire]
	Disconnect Answer[unit.Current] // least rating of the disconnecting means
	Drop       Answer[unit.Voltage]
	DropShare  Answer[unit.Ratio]

	Remarks                                                []Verdict // of rows, their number and metal, terminals, the plates
	WireVerdict, GroundVerdict, DeviceVerdict, DropVerdict Verdict
}

// CircuitOf answers what is asked of a motor's circuit. Figures go by what is taken
// where something is not said; a verdict holds whichever way that may be.
func CircuitOf(f *record.Fan) *Circuit {
	as := posed{Fan: f}
	c := circuitOf(as)
	c.Remarks = slices.Concat(judgeRows(f), judgeNumber(as), c.judgePlate(f), judgeMotorPlate(as), judgeMetal(f), judgeTerminals(f))
	c.weigh(f)
	return c
}

// circuitOf answers for a record as it is posed, its remarks apart.
func circuitOf(f posed) *Circuit {
	c := &Circuit{Current: motorCurrent(f)}
	c.Demand = demand(f.Fan, c.Current)
	c.Carried, c.Wire = carried(f)
	c.Least = leastWire(f, c.Wire, c.Demand)
	c.Device = c.largestDevice(f)
	c.Ground = c.leastGround(f)
	c.Disconnect = disconnect(c.Current)
	c.Drop = c.voltageDrop(f)
	c.DropShare = dropShare(f, c.Drop)
	c.WireVerdict, c.GroundVerdict, c.DeviceVerdict = c.judgeWire(f.Fan), c.judgeGround(f), c.judgeDevice(f)
	c.DropVerdict = limitOf[unit.Ratio]{rule: RuleDrop, method: "raceway.drop", scale: &unit.Share, level: Watch}.hold(c.DropShare, fixed(raceway.DropBranch, "raceway.drop"))
	return c
}

// Verdicts judge the circuit's conductors: what is remarked of them, what they
// carry, their ground, and the device before them and the drop along them where
// rating and length are known.
func (c *Circuit) Verdicts(f *record.Fan) (all []Held) {
	for _, r := range c.Remarks {
		all = append(all, Held{r.remark(), "", r})
	}
	all = append(all, Held{"circuit.ampacity", "", c.WireVerdict})
	if c.Wire != nil {
		all = append(all, Held{"circuit.ground", "", c.GroundVerdict})
	}
	if known(&f.Circuit.Rating) {
		all = append(all, Held{"circuit.overcurrent", "", c.DeviceVerdict})
	}
	if known(&f.Circuit.Length) {
		all = append(all, Held{"circuit.drop-share", "", c.DropVerdict})
	}
	return all
}

// remark names what stands beside no answer: its rule, and the row it is about.
func (v Verdict) remark() string {
	if v.Of != nil {
		return string(v.Rule) + " " + v.Of.ID
	}
	return string(v.Rule)
}

// wiresVerdict is the worst that is said of the motor's own conductors: what they
// carry, and what is remarked of their rows.
func (c *Circuit) wiresVerdict() Verdict { return c.worstOf(c.WireVerdict, carriesMotor) }

// groundVerdict is the worst that is said of the equipment ground.
func (c *Circuit) groundVerdict() Verdict { return c.worstOf(c.GroundVerdict, grounds) }

func (c *Circuit) worstOf(v Verdict, which func(*record.Wire) bool) Verdict {
	all := []Verdict{}
	for _, r := range c.Remarks {
		if r.Of != nil && which(r.Of) {
			all = append(all, r)
		}
	}
	return Worst(append(all, v))
}

// phasesOf returns by which table and drop the circuit goes: a motor of one phase lies
// across two lines, whatever else the supply brings.
func phasesOf(f posed) raceway.Phases {
	supply := f.Supply.Value()
	if supply == record.SinglePhase || supply != record.Inverter && (f.onePhase || f.New.Fit.Phases.Value() == record.OnePhase) {
		return raceway.SinglePhase
	}
	return raceway.ThreePhase
}

// BeyondTables tells whether the motor tables don't hold for a supply: behind a
// variable frequency drive, for a motor of two speeds, and for one that is
// electronically commutated.
func BeyondTables(f *record.Fan) bool {
	s := f.Supply.Value()
	return s == record.Inverter || s == record.TwoSpeed || s == record.Direct
}

// slowest is the speed under which a motor's plate current stands in the place
// of the table's: 430.6(A)(1).
const slowest = 1200 * unit.RPM

func slow(f posed) bool {
	n := &f.New.MotorSpeed
	return f.slowly || n.State() == record.Known && n.Value() < slowest
}

// motorCurrent answers with the current that the new motor's circuit is sized
// by: the table's, or the plate's of a slow motor.
func motorCurrent(f posed) Answer[unit.Current] {
	var a Ask
	s := &f.New
	if BeyondTables(f.Fan) {
		return Answer[unit.Current]{Wanted: []record.Place{&s.MinimumAmpacity}}
	}
	a.Need(&f.Supply)
	a.mind(&s.MotorSpeed, &s.Fit.Phases)
	if slow(f) {
		full := Want(&a, "Iₙ", &s.MotorAmps)
		return Solve(&a, FromMotorPlate, "raceway.motor.current", nil, func() (unit.Current, error) { return full.V(), nil })
	}
	power, volts := Want(&a, "P", &s.MotorPower), Want(&a, "U", &s.MotorVolts)
	lines := systemVolts(&a, f)
	return solveOver(&a, lines, FromMotorTable, "raceway.motor.current", At{"power": power.Term, "volts": volts.Term}, func() (unit.Current, error) {
		most, err := raceway.TableCurrent(phasesOf(f), power.V(), volts.V())
		for _, l := range lines { // what the system's column has, never less than the plate's
			if i, _ := raceway.TableCurrent(phasesOf(f), power.V(), l.now); l.now >= leastSystem(f.Fan) { // none is no more
				most = max(most, i)
			}
		}
		return most, err
	})
}

// demand answers with the least ampacity of the circuit's conductors: what the
// fan's own plate asks for, or else 125 % of the motor's current.
func demand(f *record.Fan, current Answer[unit.Current]) Answer[unit.Current] {
	var a Ask
	if known(&f.New.MinimumAmpacity) {
		least := Want(&a, "I", &f.New.MinimumAmpacity)
		return Solve(&a, FromFanPlate, "raceway.demand.plate", At{"minimum": least.Term}, func() (unit.Current, error) {
			d, err := raceway.DemandFromPlate(least.V())
			return d.Current, err
		})
	}
	i := Use(&a, "I", current)
	return Solve(&a, current.From, "raceway.demand.table", At{"current": i.Term}, func() (unit.Current, error) {
		d, err := raceway.DemandFromTable(i.V())
		return d.Current, err
	})
}

// disconnect answers with the least rating of the motor's disconnecting means.
func disconnect(current Answer[unit.Current]) Answer[unit.Current] {
	var a Ask
	i := Use(&a, "I", current)
	return Solve(&a, FromPlace, "raceway.disconnect", At{"current": i.Term}, func() (unit.Current, error) {
		return raceway.DisconnectLeast(i.V())
	})
}
