package sheet

import (
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// PlateFrequency answers with the frequency of a motor's plate. Where it isn't
// entered it follows from the plate's speed: of 60 and 50 Hz, the one that
// leaves the smaller slip.
func PlateFrequency(s *record.Side) Answer[unit.Frequency] {
	if known(&s.MotorFrequency) {
		return Read("f", FromPlace, &s.MotorFrequency)
	}
	var a Ask
	n := Want(&a, "n", &s.MotorSpeed)
	return Solve(&a, FromPlace, "drive.poles", At{"n": n.Term}, func() (unit.Frequency, error) {
		f, _, err := likelyFrequency(n.V())
		return f, err
	})
}

func likelyFrequency(n unit.Speed) (f unit.Frequency, poles int, err error) {
	p60, err60 := drive.Poles(60*unit.Hertz, n)
	p50, err50 := drive.Poles(50*unit.Hertz, n)
	// The field turns at 120·f/p: the lower one that n stays behind is nearer.
	if err50 == nil && (err60 != nil || 50*p60 < 60*p50) {
		return 50 * unit.Hertz, p50, nil
	}
	return 60 * unit.Hertz, p60, err60
}

// poles returns the poles of a motor, by its plate; 0 when they don't follow.
func poles(s *record.Side) int {
	_, p := plateField(s)
	return p
}

// fieldOf returns the speed of a motor's field at its plate's frequency; 0 when
// it doesn't follow.
func fieldOf(s *record.Side) unit.Speed {
	n, _ := plateField(s)
	return n
}

// fastest is the field's speed of two poles at 60 Hz, which no induction motor on a
// supply exceeds.
const fastest = 3600 * unit.RPM

// tooFast tells whether a plate's speed is one that no induction motor on a supply has.
func tooFast(s *record.Side) bool {
	return s.MotorSpeed.State() == record.Known && s.MotorFrequency.State() != record.Known && s.MotorSpeed.Value() > fastest*(1+slack)
}

func plateField(s *record.Side) (field unit.Speed, poles int) {
	if s.MotorSpeed.State() != record.Known {
		return 0, 0
	}
	var err error
	f, n := s.MotorFrequency.Value(), s.MotorSpeed.Value()
	if known(&s.MotorFrequency) {
		poles, err = drive.Poles(f, n)
	} else {
		f, poles, err = likelyFrequency(n)
	}
	if err != nil {
		return 0, 0
	}
	if field, err = drive.SynchronousSpeed(f, poles); err != nil {
		return 0, 0
	}
	return field, poles
}

// Synchronous answers with the speed of the motor's field at the frequency of
// a reading, or at the plate's.
func Synchronous(s *record.Side, r *record.Reading) Answer[unit.Speed] {
	var a Ask
	f := Use(&a, "f", lineFrequency(s, r))
	n := Want(&a, "n", &s.MotorSpeed)
	p := Use(&a, "f₀", PlateFrequency(s))
	return Solve(&a, FromPlace, "drive.sync", At{"n": n.Term, "f": f.Term}, func() (unit.Speed, error) {
		poles, err := drive.Poles(p.V(), n.V())
		if err != nil {
			return 0, err
		}
		return drive.SynchronousSpeed(f.V(), poles)
	})
}

func lineFrequency(s *record.Side, r *record.Reading) Answer[unit.Frequency] {
	if r != nil && known(&r.Frequency) {
		return Read("f", FromPlace, &r.Frequency)
	}
	return PlateFrequency(s)
}

// MotorSpeed answers with the speed a motor runs at: read; or, on a variable
// frequency drive, from its output frequency; or from the plate's slip and the
// load; or the plate's own when the load isn't known.
func MotorSpeed(f *record.Fan, s *record.Side, r *record.Reading, load Answer[unit.Ratio]) Answer[unit.Speed] {
	if r != nil && known(&r.MotorTach) && !misread(f, s, r) {
		return Read("n₁", FromTachometer, &r.MotorTach)
	}
	v := computedSpeed(f, s, r, load)
	if r != nil && known(&r.Speed) { // it runs, so that a tachometer can be held to its motor too
		v.Steps.better = &r.MotorTach
	}
	return v
}

// misread tells whether a tachometer on a motor says what such a motor can't turn at, as
// it is fed. Such a reading feeds nothing.
func misread(f *record.Fan, s *record.Side, r *record.Reading) bool {
	if r.MotorTach.State() != record.Known || f.Supply.Value() == record.TwoSpeed {
		return false
	}
	if f.Supply.Value() == record.Inverter && !known(&r.Frequency) {
		return false
	}
	field, rated := Synchronous(s, r), fieldOf(s)
	can, err := drive.MotorReading(field.Value, rated-s.MotorSpeed.Value(), r.MotorTach.Value())
	return field.Known() && err == nil && !can
}

func computedSpeed(f *record.Fan, s *record.Side, r *record.Reading, load Answer[unit.Ratio]) Answer[unit.Speed] {
	var a Ask
	plate := Want(&a, "n₀", &s.MotorSpeed)
	if f.Supply.Value() == record.Inverter && r != nil {
		at := Want(&a, "f", &r.Frequency)
		base := Use(&a, "f₀", PlateFrequency(s))
		v := Solve(&a, FromInverter, "drive.vfd", At{"plate": plate.Term, "f": at.Term, "plateFrequency": base.Term}, func() (unit.Speed, error) {
			poles, err := drive.Poles(base.V(), plate.V())
			if err != nil {
				return 0, err
			}
			return drive.OnDrive(plate.V(), base.V(), at.V(), poles)
		})
		return asFarAsSlip(v, Synchronous(s, r).Value)
	}
	if s.MotorFrequency.State() == record.Garbled {
		a.Need(&s.MotorFrequency)
	}
	if tooFast(s) {
		a.blame(&s.MotorSpeed, limit.Break("n", limit.AboveSynchronous))
	}
	field := fieldOf(s)
	at := r != nil && known(&r.Frequency)
	if load.Fault == nil && (field == 0 || !load.Known() && !at) {
		return plateSpeed(&a, plate, field)
	}
	from, open := FromLoad, load.Fault == nil && !load.Known()
	if open {
		load, from = fixed(unit.Ratio(1), ""), FromPlate
	}
	ns, nr := Use(&a, "nₛ", Synchronous(s, r)), Take(&a, "nₛ₀", field)
	l := Use(&a, "L", load)
	v := Solve(&a, from, "drive.load", At{"plate": plate.Term, "load": l.Term}, func() (unit.Speed, error) {
		return drive.SpeedUnderLoad(ns.V(), plate.V()+ns.V()-nr.V(), l.V()) // slip kept at another frequency
	})
	if open && v.Known() {
		v.Band += ns.V() - v.Value
		return v
	}
	return asFarAsSlip(v, ns.V())
}

// asFarAsSlip adds to a motor speed's band what the plate's slip may be off.
func asFarAsSlip(v Answer[unit.Speed], sync unit.Speed) Answer[unit.Speed] {
	if v.Known() && sync > v.Value {
		v.Band += (sync - v.Value) * unit.Speed(drive.PlateSlipTolerance)
	}
	return v
}

// plateSpeed answers with the plate's own speed, which a motor has under full
// load. With less to do it turns faster, by up to all of its slip, and so far does the
// band reach: see [likely].
func plateSpeed(a *Ask, plate Given[unit.Speed], field unit.Speed) Answer[unit.Speed] {
	v := Solve(a, FromPlate, "", nil, func() (unit.Speed, error) { return plate.V(), nil })
	if v.Known() && field > v.Value {
		v.Band += field - v.Value
	}
	return v
}

// likely returns a motor's speed by its plate alone as the middle of where it may lie:
// from the plate's, less what its slip may be off, up to the field's. A motor under no
// more than its full load turns no slower.
func likely(motor Answer[unit.Speed], field unit.Speed) Answer[unit.Speed] {
	if motor.From != FromPlate || !motor.Known() || field <= motor.Value {
		return motor
	}
	slip := field - motor.Value
	down := slip * unit.Speed(drive.PlateSlipTolerance)
	motor.Value, motor.Band = motor.Value+(slip-down)/2, motor.Band-(slip-down)/2
	return motor
}

// driven returns the reading that tells what a variable frequency drive puts out to the
// new motor: the latest trial that does, or else the new fan's own.
func driven(f *record.Fan) *record.Reading {
	for i := len(f.Trials) - 1; i >= 0; i-- {
		if r := &f.Trials[i].Reading; known(&r.Frequency) {
			return r
		}
	}
	return &f.New.Reading
}

// noLoad is the load of a motor nothing is known of.
var noLoad Answer[unit.Ratio]
