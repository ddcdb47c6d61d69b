package sheet

import (
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// PlateFrequency answers with the frequency of a motor's plate. Where it isn't
// entered it follows from the plate's speed: of 60 and 50 Hz, the one whose
// slip a motor can have.
func PlateFrequency(s *record.Side) Answer[unit.Frequency] {
	if known(&s.MotorFrequency) {
		return Read("f", FromPlate, &s.MotorFrequency)
	}
	var a Ask
	n := Want(&a, "n", &s.MotorSpeed)
	return Solve(&a, FromPlate, "drive.poles", At{"n": n.Term}, func() (unit.Frequency, error) {
		_, err := drive.Poles(60*unit.Hertz, n.V())
		if err == nil {
			return 60 * unit.Hertz, nil
		}
		if _, at50 := drive.Poles(50*unit.Hertz, n.V()); at50 == nil {
			return 50 * unit.Hertz, nil
		}
		return 0, err
	})
}

// poles returns the poles of a motor, by its plate; 0 when they don't follow.
func poles(s *record.Side) int {
	f := PlateFrequency(s)
	if !f.Known() || s.MotorSpeed.State() != record.Known {
		return 0
	}
	p, err := drive.Poles(f.Value, s.MotorSpeed.Value())
	if err != nil {
		return 0
	}
	return p
}

// Synchronous answers with the speed of the motor's field at the frequency of
// a reading, or at the plate's.
func Synchronous(s *record.Side, r *record.Reading) Answer[unit.Speed] {
	var a Ask
	f := Use(&a, "f", lineFrequency(s, r))
	n := Want(&a, "n", &s.MotorSpeed)
	p := Use(&a, "f₀", PlateFrequency(s))
	return Solve(&a, FromPlate, "drive.sync", At{"n": n.Term, "f": f.Term}, func() (unit.Speed, error) {
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
	if r != nil && known(&r.MotorTach) {
		return Read("n₁", FromTachometer, &r.MotorTach)
	}
	var a Ask
	plate := Want(&a, "n₀", &s.MotorSpeed)
	if f.Supply.Value() == record.Inverter && r != nil && known(&r.Frequency) {
		at := Want(&a, "f", &r.Frequency)
		base := Use(&a, "f₀", PlateFrequency(s))
		return Solve(&a, FromInverter, "drive.vfd", At{"plate": plate.Term, "f": at.Term, "plateFrequency": base.Term}, func() (unit.Speed, error) {
			poles, err := drive.Poles(base.V(), plate.V())
			if err != nil {
				return 0, err
			}
			return drive.OnDrive(plate.V(), base.V(), at.V(), poles)
		})
	}
	if load.Known() && poles(s) > 0 {
		ns := Use(&a, "nₛ", Synchronous(s, r))
		l := Use(&a, "L", load)
		return Solve(&a, FromLoad, "drive.load", At{"plate": plate.Term, "load": l.Term}, func() (unit.Speed, error) {
			return drive.SpeedUnderLoad(ns.V(), plate.V(), l.V())
		})
	}
	v := Solve(&a, FromPlate, "", nil, func() (unit.Speed, error) { return plate.V(), nil })
	if ns := Synchronous(s, nil); v.Known() && ns.Known() {
		if slowest, _, err := drive.PlateBand(ns.Value, v.Value); err == nil {
			v.Band = v.Value - slowest
		}
	}
	return v
}

// noLoad is the load of a motor nothing is known of.
var noLoad Answer[unit.Ratio]
