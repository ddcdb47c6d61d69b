package sheet

import (
	"roofside/calc/airflow"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Point is an operating point as far as it is known.
type Point struct {
	Speed    Answer[unit.Speed]
	Airflow  Answer[unit.Flow]
	Pressure Answer[unit.Pressure]
	Power    Answer[unit.Power]
	Air      Answer[unit.Temperature]
}

// ReferencePoint answers with the point that the fan laws start from: that of
// the balance report or the design, else what was read at the old fan.
func ReferencePoint(f *record.Fan) Point {
	t, r := &f.Target, &f.Old.Reading
	if f.SameWheel.Value() == record.No { // what the old wheel took says nothing of another's power
		return Point{Read("n₁", FromRating, &t.Rated), Read("Q₁", FromReport, &t.Airflow), Read("p₁", FromReport, &t.Pressure),
			Read("P₁", FromRating, &t.RatedPower), Read("T₁", FromReport, &t.AirTemp)}
	}
	if known(&t.Airflow) || known(&t.Pressure) || !known(&r.Airflow) && !known(&r.Pressure) {
		return Point{Read("n₁", FromReport, &t.Speed), Read("Q₁", FromReport, &t.Airflow), Read("p₁", FromReport, &t.Pressure),
			Read("P₁", FromReport, &t.Power), Read("T₁", FromReport, &t.AirTemp)}
	}
	power := OldPower(f)
	if !power.Known() {
		power.Wanted = append([]record.Place{&t.Power}, power.Wanted...)
	}
	return Point{FanSpeed(f, &f.Old), Read("Q₁", FromPlace, &r.Airflow), Read("p₁", FromPlace, &r.Pressure),
		power, Read("T₁", FromPlace, &r.AirTemp)}
}

// OldPower answers with the power that the old motor gave, by its amps: between
// the lowest and the highest of the named methods.
func OldPower(f *record.Fan) Answer[unit.Power] {
	return ampsBasis(f, FromOldAmps, &f.Old, &f.Old.Reading, FanSpeed(f, &f.Old)).Power
}

// PlannedSpeed answers with the speed the new fan runs at or will: as entered
// to be looked at; as last read, where the drive can give it; as the row to set
// gives; as it stands, where there is no row to set. The target is looked at only
// while nothing is said of the new drive, or where there is none.
func PlannedSpeed(f *record.Fan, t Table) Answer[unit.Speed] {
	if known(&f.Want.Speed) {
		return Read("n₂", FromPlace, &f.Want.Speed)
	}
	if trial := LastReading(f); trial != nil && trial == lastTrial(f) {
		return Read("n₂", FromTrial, &trial.Reading.Speed)
	}
	if f.DirectDrive() || !known(&f.New.Sheave) {
		return TargetSpeed(f)
	}
	if t.Set >= 0 {
		return settingSpeed(f, t, t.Rows[t.Set])
	}
	return t.SpeedAt(f, NowTurns(f))
}

// SpeedAt answers with the new fan's speed when its sheave is open by turns: by
// the row of the table, which takes the motor's load into account, or between
// rows without it.
func (t Table) SpeedAt(f *record.Fan, turns Answer[unit.Turns]) Answer[unit.Speed] {
	if f.New.Sheave.Value() == record.Fixed { // it has one
		return t.Speed
	}
	if turns.Known() {
		if i := rowAt(t.Rows, turns.Value); i >= 0 {
			return settingSpeed(f, t, t.Rows[i])
		}
	}
	return NewSpeedAt(f, turns)
}

// AsShipped answers with the new fan's speed as it came: by its turns, or by the one
// speed of a fixed sheave.
func (t Table) AsShipped(f *record.Fan) Answer[unit.Speed] {
	return t.SpeedAt(f, Read("t", FromPlace, &f.New.Turns))
}

// settingSpeed answers with the speed that the turns table gives a row.
func settingSpeed(f *record.Fan, t Table, r Row) Answer[unit.Speed] {
	var a Ask
	Use(&a, "nᵣ", t.Speed)
	Take(&a, "t", r.Turns)
	Use(&a, "d", MotorPitchAt(&f.New, fixed(r.Turns, "")))
	if l := t.line; l != nil && l.ratio > 0 {
		Take(&a, "ns", l.sync)
		Take(&a, "s", l.slip)
		Take(&a, "P / Pp", unit.Ratio(l.loadAt(r.Speed)))
		Take(&a, "Pᵣ / Pp", unit.Ratio(l.loadAt(t.Speed.Value)))
	}
	v := Solve(&a, t.From, "drive.setting", nil, func() (unit.Speed, error) { return r.Speed, nil })
	v.Band = unit.Speed(r.band) * r.Speed
	return v
}

// PlannedAir answers with the air temperature at the planned speed: as entered,
// or as at the latest trial, or as at the reference point.
func PlannedAir(f *record.Fan) Answer[unit.Temperature] {
	if known(&f.Want.AirTemp) {
		return Read("T₂", FromPlace, &f.Want.AirTemp)
	}
	if t := lastTrial(f); t != nil && known(&t.Reading.AirTemp) {
		return Read("T₂", FromTrial, &t.Reading.AirTemp)
	}
	return ReferencePoint(f).Air
}

// Density answers with the density of the air at the fan.
func Density(f *record.Fan, air Answer[unit.Temperature]) Answer[unit.Density] {
	var a Ask
	z, t := Want(&a, "Z", &f.Altitude), Use(&a, "T", air)
	return Solve(&a, FromPlace, "air.density", At{"altitude": z.Term, "temperature": t.Term}, func() (unit.Density, error) {
		return airflow.Density(z.V(), t.V())
	})
}

// DensityRatio answers with how the air at two temperatures compares at the
// same place, where altitude cancels. Where one isn't known they are taken to
// be alike.
func DensityRatio(first, second Answer[unit.Temperature]) Answer[unit.Ratio] {
	var a Ask
	if first.Fault != nil || second.Fault != nil {
		t1, t2 := Use(&a, "T₁", first), Use(&a, "T₂", second)
		return Solve(&a, FromPlace, "air.density.ratio", nil, func() (unit.Ratio, error) { return unit.Ratio(t1.V() / t2.V()), nil })
	}
	if !first.Known() || !second.Known() {
		return fixed(unit.Ratio(1), "air.density.ratio")
	}
	t1, t2 := Use(&a, "T₁", first), Use(&a, "T₂", second)
	return Solve(&a, FromPlace, "air.density.ratio", nil, func() (unit.Ratio, error) { return unit.Ratio(t1.V() / t2.V()), nil })
}

// PointAt answers with the operating point at another speed and air temperature: the
// same wheel on the same system.
func PointAt(f *record.Fan, speed Answer[unit.Speed], air Answer[unit.Temperature]) Point {
	ref := ReferencePoint(f)
	rho := DensityRatio(ref.Air, air)
	p := Point{Speed: speed, Air: air}
	{
		var a Ask
		a.Need(&f.SameWheel)
		n1, n2, q := Use(&a, "n₁", ref.Speed), Use(&a, "n₂", speed), Use(&a, "Q₁", ref.Airflow)
		p.Airflow = Solve(&a, FromPlace, "air.laws", At{"n1": n1.Term, "n2": n2.Term, "q1": q.Term}, func() (unit.Flow, error) {
			return airflow.FlowAtSpeed(q.V(), n1.V(), n2.V())
		})
	}
	{
		var a Ask
		a.Need(&f.SameWheel)
		n1, n2, q, k := Use(&a, "n₁", ref.Speed), Use(&a, "n₂", speed), Use(&a, "p₁", ref.Pressure), Use(&a, "ρ₂/ρ₁", rho)
		p.Pressure = Solve(&a, FromPlace, "air.laws", At{"n1": n1.Term, "n2": n2.Term, "p1": q.Term}, func() (unit.Pressure, error) {
			return airflow.PressureAtSpeed(q.V(), n1.V(), n2.V(), 1, unit.Density(k.V()))
		})
	}
	{
		var a Ask
		a.Need(&f.SameWheel)
		n1, n2, q, k := Use(&a, "n₁", ref.Speed), Use(&a, "n₂", speed), Use(&a, "P₁", ref.Power), Use(&a, "ρ₂/ρ₁", rho)
		p.Power = Solve(&a, FromPlace, "air.laws", At{"n1": n1.Term, "n2": n2.Term, "w1": q.Term}, func() (unit.Power, error) {
			return airflow.PowerAtSpeed(q.V(), n1.V(), n2.V(), 1, unit.Density(k.V()))
		})
	}
	return p
}

// SpeedFor answers with the speed that brings what is sought: an airflow, a
// pressure or a power.
func SpeedFor(f *record.Fan) Answer[unit.Speed] {
	ref, w := ReferencePoint(f), &f.Want
	rho := DensityRatio(ref.Air, PlannedAir(f))
	var a Ask
	n1 := Use(&a, "n₁", ref.Speed)
	switch w.Goal.Value() {
	case record.GoalAirflow:
		q1, q2 := Use(&a, "Q₁", ref.Airflow), Want(&a, "Q₂", &w.Airflow)
		return Solve(&a, FromPlace, "air.laws", At{"n1": n1.Term, "q1": q1.Term, "q2": q2.Term}, func() (unit.Speed, error) {
			return airflow.SpeedForFlow(n1.V(), q1.V(), q2.V())
		})
	case record.GoalPressure:
		k, p1, p2 := Use(&a, "ρ₂/ρ₁", rho), Use(&a, "p₁", ref.Pressure), Want(&a, "p₂", &w.Pressure)
		return Solve(&a, FromPlace, "air.laws", At{"n1": n1.Term, "p1": p1.Term, "p2": p2.Term}, func() (unit.Speed, error) {
			return airflow.SpeedForPressure(n1.V(), p1.V(), p2.V(), 1, unit.Density(k.V()))
		})
	case record.GoalPower:
		k, p1, p2 := Use(&a, "ρ₂/ρ₁", rho), Use(&a, "P₁", ref.Power), Want(&a, "P₂", &w.Power)
		return Solve(&a, FromPlace, "air.laws", At{"n1": n1.Term, "w1": p1.Term, "w2": p2.Term}, func() (unit.Speed, error) {
			return airflow.SpeedForPower(n1.V(), p1.V(), p2.V(), 1, unit.Density(k.V()))
		})
	}
	a.miss(&w.Goal)
	return Solve(&a, FromPlace, "air.laws", nil, func() (unit.Speed, error) { return 0, nil })
}
