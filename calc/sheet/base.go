package sheet

import (
	"roofside/calc/belt"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A base is a motor base as plain numbers: where the motor stands, and what lies on the
// sheaves.
type base struct {
	belt   unit.Length // pitch length of the belt that is to run
	fan    unit.Length // pitch diameters: of the fan's sheave,
	stands unit.Length // and of the motor's where the belt lies tight now; 0 where the motor stands as center was measured
	center unit.Length // as it was measured
}

// move returns how far the base goes, away from the fan positive, from where it stands
// to where the belt lies tight on a motor sheave.
func (b base) move(motor unit.Length) (unit.Length, error) {
	to, err := belt.CenterFromLength(motor, b.fan, b.belt)
	if err != nil || b.stands == 0 {
		return to - b.center, err
	}
	from, err := belt.CenterFromLength(b.stands, b.fan, b.belt)
	return to - from, err
}

// standsOn answers with the pitch diameter that the belt lies tight on where the motor
// stands, or nil where that is still as the center distance was measured: the base goes
// with the sheave once that was set at a trial.
func standsOn(f *record.Fan) *Answer[unit.Length] {
	now := NowTurns(f)
	if now.From != FromTrial {
		return nil
	}
	d := MotorPitchAt(&f.New, now)
	return &d
}

// move answers with how far the motor base goes, away from the fan positive, to where a
// belt lies tight on a run's sheaves: from where the center distance was measured, or
// from where the belt lies tight on the pitch diameter it stands on. A belt measured in
// place shares that measurement's error with where it goes, which is counted once.
func (r Run) move(s *record.Side, length Answer[unit.Length], measured bool, stands *Answer[unit.Length]) Answer[unit.Length] {
	var a Ask
	d, D, c := Use(&a, "d", r.Motor), Use(&a, "D", r.Fan), Want(&a, "C₀", &s.Center)
	at := At{"driver": d.Term, "driven": D.Term, "center": c.Term, "pitchLength": {Place: &s.Center}}
	var l, d0, dn Given[unit.Length]
	if measured {
		d0 = Use(&a, "d₀", MotorPitch(s))
		same(d, d0)
	} else {
		l = Use(&a, "L", length)
		at["pitchLength"] = l.Term
	}
	if stands != nil {
		dn = Use(&a, "d₁", *stands)
		same(d, dn)
	}
	return Solve(&a, FromPlace, "belt.standard.center", at, func() (unit.Length, error) {
		b := base{fan: D.V(), center: c.V()}
		if stands != nil {
			b.stands = dn.V()
		}
		if !measured {
			b.belt = l.V()
			return b.move(d.V())
		}
		var err error
		if b.belt, err = belt.OpenLength(d0.V(), D.V(), c.V()); err != nil {
			return 0, err
		}
		return b.move(d.V())
	})
}

// same takes two terms for one and the same sheave at one setting, whose error cancels.
func same(a, b Given[unit.Length]) {
	if a.Base == b.Base {
		a.Band, b.Band = 0, 0
	}
}
