package sheet

import (
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// phasesOf returns the kind of supply by whose table and drop the circuit goes.
func phasesOf(f *record.Fan) raceway.Phases {
	if f.Supply.Value() == record.SinglePhase {
		return raceway.SinglePhase
	}
	return raceway.ThreePhase
}

// byTable tells whether the motor tables hold for a supply: not behind a
// variable frequency drive, nor for a motor of two speeds or one that is
// electronically commutated.
func byTable(s record.Supply) bool { return s == record.ThreePhase || s == record.SinglePhase }

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

// MotorCurrent answers with the current that the new motor's circuit is sized
// by: the table's, or the plate's of a slow motor.
func MotorCurrent(f *record.Fan) Answer[unit.Current] {
	var a Ask
	s := &f.New
	if f.Supply.State() == record.Known && !byTable(f.Supply.Value()) {
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

// Demand answers with the least ampacity of the circuit's conductors: what the
// fan's own plate asks for, or else 125 % of the motor's current.
func Demand(f *record.Fan) Answer[unit.Current] {
	var a Ask
	if known(&f.New.MinimumAmpacity) {
		least := Want(&a, "I", &f.New.MinimumAmpacity)
		return Solve(&a, FromFanPlate, "raceway.demand.plate", At{"minimum": least.Term}, func() (unit.Current, error) {
			d, err := raceway.DemandFromPlate(least.V())
			return d.Current, err
		})
	}
	current := MotorCurrent(f)
	i := Use(&a, "I", current)
	return Solve(&a, current.From, "raceway.demand.table", At{"current": i.Term}, func() (unit.Current, error) {
		d, err := raceway.DemandFromTable(i.V())
		return d.Current, err
	})
}

// Disconnect answers with the least rating of the motor's disconnecting means.
func Disconnect(f *record.Fan) Answer[unit.Current] {
	var a Ask
	i := Use(&a, "I", MotorCurrent(f))
	return Solve(&a, FromPlace, "raceway.disconnect", At{"current": i.Term}, func() (unit.Current, error) {
		return raceway.DisconnectLeast(i.V())
	})
}

// protection answers with the arithmetic of the largest overcurrent device: the
// fan's own plate where it gives one, or else the motor's current.
func protection(a *Ask, f *record.Fan) (At, func() (raceway.Overcurrent, error), From) {
	a.Need(&f.Circuit.Device)
	device, edition := raceway.Device(f.Circuit.Device.Value()), editionOf(a, f)
	if known(&f.New.MaximumDevice) {
		most := Want(a, "I", &f.New.MaximumDevice)
		return At{"most": most.Term}, func() (raceway.Overcurrent, error) {
			return raceway.OvercurrentFromPlate(most.V(), device, edition)
		}, FromFanPlate
	}
	current := MotorCurrent(f)
	i := Use(a, "I", current)
	motor := raceway.SquirrelCage // of which the energy-efficient ones differ in the instantaneous trip alone
	if phasesOf(f) == raceway.SinglePhase {
		motor = raceway.SinglePhaseMotor
	}
	return At{"current": i.Term}, func() (raceway.Overcurrent, error) {
		return raceway.LargestOvercurrent(i.V(), device, motor, edition)
	}, current.From
}

// Overcurrent answers with the largest standard rating of the device that
// protects the circuit against short circuits and ground faults.
func Overcurrent(f *record.Fan) Answer[unit.Current] {
	var a Ask
	at, formula, from := protection(&a, f)
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

// OvercurrentVerdict judges the rating of the device that is there. Up to the
// ceiling it is held to be there because the motor won't start on less.
func OvercurrentVerdict(f *record.Fan) Verdict {
	rating, most := Read("I", FromPlace, &f.Circuit.Rating), Overcurrent(f)
	v := limitOf[unit.Current]{rule: RuleOvercurrent, method: most.Steps.Method, scale: &unit.Amperage, level: Stop}.hold(rating, most)
	var a Ask
	if _, formula, from := protection(&a, f); v.Level == Stop && from != FromFanPlate {
		if o, err := formula(); err == nil && rating.Value <= o.Last*(1+slack) {
			v.Level = Watch
		}
	}
	return v
}
