package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// protection answers with the arithmetic of the largest overcurrent device: the
// fan's own plate where it gives one, or else the motor's current.
func (c *Circuit) protection(a *Ask, f posed) (At, func() (raceway.Overcurrent, error), From) {
	a.Need(&f.Circuit.Device)
	device, edition := raceway.Device(f.Circuit.Device.Value()), editionOf(a, f)
	if known(&f.New.MaximumDevice) {
		most := Want(a, "I", &f.New.MaximumDevice)
		return At{"most": most.Term}, func() (raceway.Overcurrent, error) {
			return raceway.OvercurrentFromPlate(most.V(), device, edition)
		}, FromFanPlate
	}
	i := Use(a, "I", c.Current)
	const motor = raceway.SquirrelCage // others of one phase or three differ in the instantaneous trip alone
	return At{"current": i.Term}, func() (raceway.Overcurrent, error) {
		return raceway.LargestOvercurrent(i.V(), device, motor, edition)
	}, c.Current.From
}

// largestDevice answers with the largest standard rating of the device that
// protects the circuit against short circuits and ground faults.
func (c *Circuit) largestDevice(f posed) Answer[unit.Current] {
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

// judgeDevice judges the rating of the device that is there: whether it carries the
// motor, and whether it still protects. Up to the ceiling it is held to be there
// because the motor won't start on less. What the fan's plate allows is held as
// plated, standard rating or not.
func (c *Circuit) judgeDevice(f posed) Verdict {
	if small := c.tooSmall(f); small.Level > Within {
		return small
	}
	rating, most := Read("I", FromPlace, &f.Circuit.Rating), c.Device
	if known(&f.New.MaximumDevice) {
		most = Read("I", FromFanPlate, &f.New.MaximumDevice)
		most.Steps.Method = "raceway.overcurrent.plate"
	}
	v := limitOf[unit.Current]{rule: RuleOvercurrent, method: most.Steps.Method, scale: &unit.Amperage, level: Stop}.hold(rating, most)
	var a Ask
	_, formula, _ := c.protection(&a, f)
	if o, _ := formula(); v.Level == Stop && rating.Value <= o.Last*(1+slack) { // by the fan's plate the last is no more than that
		v.Level = Watch
	}
	return v
}

// tooSmall judges whether the device carries the motor: not below what the motor
// draws, by its plate or else by the table, since it has to carry its start
// (430.52(B)); and a breaker not below what a disconnecting means must have (430.58,
// from memory). Within where that isn't known.
func (c *Circuit) tooSmall(f posed) Verdict {
	v := Verdict{Rule: RuleOvercurrent}
	rating := Read("I", FromPlace, &f.Circuit.Rating)
	if !rating.Known() {
		return v
	}
	least := limitOf[unit.Current]{rule: RuleDeviceSmall, method: "raceway.device.least", scale: &unit.Amperage, level: Stop, least: true}
	if draws := c.drawn(f); draws.Known() {
		if v = least.hold(rating, draws); v.Level > Within {
			return v
		}
	}
	if c.Disconnect.Known() && f.Circuit.Device.Value() == record.Device(raceway.InverseTimeBreaker) {
		least.rule, least.level = RuleBreakerSmall, Watch
		v = least.hold(rating, c.Disconnect)
	}
	return v
}

// drawn answers with what the motor draws: as its plate says, or by the table where
// the plate is not read, or is of higher volts than the lines bring; the less of the two
// where they don't agree, for that alone stops nobody. What a drive draws is not told.
func (c *Circuit) drawn(f posed) Answer[unit.Current] {
	s := &f.New
	switch {
	case f.Supply.Value() == record.Inverter:
		return Answer[unit.Current]{}
	case s.MotorAmps.State() != record.Known || len(judgeMotorPlate(f)) > 0 && s.MotorAmps.Value() > c.Current.Value:
		return c.Current
	case len(judgeMotorPlate(f)) > 0:
		return Read("Iₙ", FromMotorPlate, &s.MotorAmps)
	}
	if own, _ := raceway.TableCurrent(phasesOf(f), s.MotorPower.Value(), s.MotorVolts.Value()); c.Current.Value > own { // of a slow motor it is the plate's, too
		return c.Current
	}
	return Read("Iₙ", FromMotorPlate, &s.MotorAmps)
}
