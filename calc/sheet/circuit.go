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

	Remarks                                                []Verdict // of rows, their number and metal, terminals, the fan's plate
	WireVerdict, GroundVerdict, DeviceVerdict, DropVerdict Verdict
}

// CircuitOf answers what is asked of a motor's circuit.
func CircuitOf(f *record.Fan) *Circuit {
	c := &Circuit{Current: motorCurrent(f)}
	c.Demand = demand(f, c.Current)
	c.Carried, c.Wire = carried(f)
	c.Least = leastWire(f, c.Wire, c.Demand)
	c.Device = c.largestDevice(f)
	c.Ground = c.leastGround(f)
	c.Disconnect = disconnect(c.Current)
	c.Drop = c.voltageDrop(f)
	c.DropShare = dropShare(f, c.Drop)
	c.Remarks = slices.Concat(judgeRows(f), judgeNumber(f), c.judgePlate(f), judgeMetal(f), judgeTerminals(f))
	c.WireVerdict, c.GroundVerdict, c.DeviceVerdict = c.judgeWire(f), c.judgeGround(f), c.judgeDevice(f)
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

// phasesOf returns the kind of supply by whose table and drop the circuit goes.
func phasesOf(f *record.Fan) raceway.Phases {
	if f.Supply.Value() == record.SinglePhase {
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

func slow(f *record.Fan) bool {
	n := &f.New.MotorSpeed
	return n.State() == record.Known && n.Value() < slowest
}

// ByPlateAmps tells whether the new motor's plate amps stand in the place of the
// motor tables.
func ByPlateAmps(f *record.Fan) bool {
	s := f.Supply.Value()
	return slow(f) || s == record.Inverter || s == record.TwoSpeed
}

// motorCurrent answers with the current that the new motor's circuit is sized
// by: the table's, or the plate's of a slow motor.
func motorCurrent(f *record.Fan) Answer[unit.Current] {
	var a Ask
	s := &f.New
	if BeyondTables(f) {
		return Answer[unit.Current]{Wanted: []record.Place{&s.MinimumAmpacity}}
	}
	a.Need(&f.Supply)
	a.mind(&s.MotorSpeed)
	if slow(f) {
		full := Want(&a, "Iₙ", &s.MotorAmps)
		return Solve(&a, FromMotorPlate, "raceway.motor.current", nil, func() (unit.Current, error) { return full.V(), nil })
	}
	power, volts := Want(&a, "P", &s.MotorPower), Want(&a, "U", &s.MotorVolts)
	return Solve(&a, FromMotorTable, "raceway.motor.current", At{"power": power.Term, "volts": volts.Term}, func() (unit.Current, error) {
		return raceway.TableCurrent(phasesOf(f), power.V(), volts.V())
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

// protection answers with the arithmetic of the largest overcurrent device: the
// fan's own plate where it gives one, or else the motor's current.
func (c *Circuit) protection(a *Ask, f *record.Fan) (At, func() (raceway.Overcurrent, error), From) {
	a.Need(&f.Circuit.Device)
	device, edition := raceway.Device(f.Circuit.Device.Value()), editionOf(a, f)
	if known(&f.New.MaximumDevice) {
		most := Want(a, "I", &f.New.MaximumDevice)
		return At{"most": most.Term}, func() (raceway.Overcurrent, error) {
			return raceway.OvercurrentFromPlate(most.V(), device, edition)
		}, FromFanPlate
	}
	i := Use(a, "I", c.Current)
	motor := raceway.SquirrelCage // of which the energy-efficient ones differ in the instantaneous trip alone
	if phasesOf(f) == raceway.SinglePhase {
		motor = raceway.SinglePhaseMotor
	}
	return At{"current": i.Term}, func() (raceway.Overcurrent, error) {
		return raceway.LargestOvercurrent(i.V(), device, motor, edition)
	}, c.Current.From
}

// largestDevice answers with the largest standard rating of the device that
// protects the circuit against short circuits and ground faults.
func (c *Circuit) largestDevice(f *record.Fan) Answer[unit.Current] {
	var a Ask
	at, formula, from := c.protection(&a, f)
	method := "raceway.overcurrent"
	if from == FromFanPlate {
		method = "raceway.overcurrent.plate"
	} else if o, err := formula(); err == nil {
		Take(&a, "p", o.Percent)
	}
	return Solve(&a, from, method, at, func() (unit.Current, error) {
		o, err := formula()
		return o.Rating, err
	})
}

// judgeDevice judges the rating of the device that is there. Up to the
// ceiling it is held to be there because the motor won't start on less.
func (c *Circuit) judgeDevice(f *record.Fan) Verdict {
	rating, most := Read("I", FromPlace, &f.Circuit.Rating), c.Device
	v := limitOf[unit.Current]{rule: RuleOvercurrent, method: most.Steps.Method, scale: &unit.Amperage, level: Stop}.hold(rating, most)
	var a Ask
	if _, formula, from := c.protection(&a, f); v.Level == Stop && from != FromFanPlate {
		if o, err := formula(); err == nil && rating.Value <= o.Last*(1+slack) {
			v.Level = Watch
		}
	}
	return v
}
