package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/sheet"
)

// The demonstration worked by hand. The report's 1.15 hp is 0.575 of the old
// motor's 2, so that it stayed 0.575 · 75 rpm behind its field; the old fan
// turned (1800 − 43.125) · 20/48.25 rpm.
// The new motor slips 50 rpm under full load, and 1.15 of its 2 hp at 712 rpm
// is 0.575 of it: n = (1800 − 50 · 0.575 · (n/712)³) · d/8.4.
func TestDemo(t *testing.T) {
	f := demo(t)
	old := sheet.FanSpeed(f, &f.Old)
	const motor = 1800 - 0.575*75
	value(t, "counted", old, motor*20/48.25)
	near(t, "its band", old.Band, 0.2*0.575*75*20/48.25+motor*(20/48.-20/48.25))
	if v := sheet.TargetVerdict(f); v.Level != sheet.Unjudged || v.Rule != sheet.RuleSources { // 2.3 % apart, ± 1.0 %
		t.Errorf("origins: %+v", v)
	}
	table := sheet.TurnsTable(f)
	value(t, "target", table.Target, 712)
	for i, r := range table.Rows {
		d := 4 - 0.1*float64(i)
		low, high := 0., 1800*d/8.4
		for range 100 { // what the motor gives falls, what the fan turns rises
			if n := (low + high) / 2; (1800-50*0.575*math.Pow(n/712, 3))*d/8.4 > n {
				low = n
			} else {
				high = n
			}
		}
		near(t, "speed", r.Speed, low)
	}
	// 3 turns: 3.4 in, about 1770.6 · 3.4/8.4 = 716.7 rpm; 3½ would be 696.6.
	if table.Set != 6 || math.Abs(float64(table.Rows[6].Speed)-716.7) > 0.05 || math.Abs(float64(table.Rows[7].Speed)-696.6) > 0.05 {
		t.Errorf("row to set is %d: %v, below it %v", table.Set, table.Rows[6].Speed, table.Rows[7].Speed)
	}
	row := table.Rows[6]
	if v := row.Verdict(); v.Level != sheet.Within || len(row.Verdicts) != 0 {
		t.Errorf("the row to set: %+v", row.Verdicts)
	}
	m, _ := sheet.NextMove(f, table)
	if m.Do != sheet.DoOpen || m.From != 0 || m.To != 3 || m.Turns != 3 {
		t.Errorf("%+v", m)
	}
	// The pitch for 712 rpm: 8.4 · 712 / (1800 − 50 · 0.575).
	value(t, "pitch", sheet.PitchForTarget(f, table), 8.4*712/(1800-50*0.575)*in)

	// Amps there, at the report's 90 °F: 0.575 · (n/712)³ of 2 hp, by plate amps
	// in proportion, and with half of 0.3 or 0.6 of them off. The speed is good to a
	// fifth of the motor's slip where the table starts, closed at 833 rpm.
	closed := 50 * 0.575 * math.Pow(1750*4/8.4/712, 3)
	n, within := float64(row.Speed), 0.2*closed/(1800-closed)
	load := func(k float64) float64 { return 0.575 * math.Pow(n*k/712, 3) }
	half := func(l, i0 float64) float64 { return i0/2 + l*(6.6-i0/2) }
	near(t, "least amps", row.AmpsLow.V, 6.6*load(1-within))
	near(t, "most amps", row.AmpsHigh.V, half(load(1+within), 0.6*6.6))
	near(t, "most load", row.LoadHigh.V, half(load(1+within), 0.6*6.6)/6.6)

	// A tachometer then reads 700 rpm at 3 turns: half a turn closes the gap.
	set(t, f, "trial.a.turns", "3 turns", "trial.a.speed", "700 rpm")
	table = sheet.TurnsTable(f)
	near(t, "as read", table.Rows[6].Speed, 700)
	// Each inch of sheave gives 700/3.4, but for 0.6 rpm of slip more at 720.
	if n := float64(table.Rows[5].Speed); math.Abs(n-700*3.5/3.4*(1800-28.75*math.Pow(n/712, 3))/(1800-28.75*math.Pow(700./712, 3))) > 1e-6 {
		t.Errorf("2½ turns: %v", n)
	}
	if m, _ = sheet.NextMove(f, table); m.Do != sheet.DoClose || m.From != 3 || m.To != 2.5 || m.Turns != 0.5 || m.Stepwise {
		t.Errorf("%+v", m)
	}
	if v := sheet.SettingVerdict(f, table); v.Level != sheet.Within || math.Abs(v.Value.Base-0.0107) > 0.0001 {
		t.Errorf("%+v", v)
	}
}

// The coldest start, 5 °F, is judged: its air is 549.67/464.67 as dense.
func TestDemoAtTheColdestStart(t *testing.T) {
	f := demo(t)
	n := 712.
	set(t, f, "want.speed", "712 rpm")
	table := sheet.TurnsTable(f)
	speed := sheet.PlannedSpeed(f, table)
	dense := (90 + 459.67) / (5 + 459.67)
	load := 1.15 / 2 * dense
	high := 0.3*6.6 + load*(6.6-0.3*6.6) // half of 0.6 of plate amps is no load
	v := sheet.MotorVerdict(f, table.Basis, speed)
	if v.Level != sheet.Within || !v.Cold {
		t.Errorf("%+v", v)
	}
	near(t, "judged", v.Value.Base, high)
	// The rows of the table as well: 1.25 hp carries the report's air, not the cold.
	set(t, f, "new.motor-power", "1.25 hp")
	for air, want := range map[string]sheet.Level{"": sheet.Unjudged, "5 F": sheet.Watch, "100 F": sheet.Within} {
		set(t, f, "coldest-air", air)
		rows := sheet.TurnsTable(f).Rows
		if got := rulesOf(rows[6])[sheet.RulePlateAmps]; got != want {
			t.Errorf("coldest air %q: %+v", air, rows[6].Verdicts)
		}
		for _, v := range rows[6].Verdicts {
			if v.Rule == sheet.RulePlateAmps && v.Cold != (air == "5 F") {
				t.Errorf("coldest air %q: said to be judged cold: %v", air, v.Cold)
			}
		}
	}
	// Unknown, it could be as cold as −40°: air 549.67/419.67 as dense. A motor with room for that is within.
	set(t, f, "coldest-air", "")
	for power, want := range map[string]sheet.Level{"1.25 hp": sheet.Unjudged, "1.5 hp": sheet.Unjudged, "1.6 hp": sheet.Within} {
		set(t, f, "new.motor-power", power) // 1.15 · 1.3098 = 1.506 hp
		if v := sheet.MotorVerdict(f, table.Basis, speed); v.Level != want || want == sheet.Unjudged && f.KeyOf(v.Wanted[0]) != "coldest-air" {
			t.Errorf("%s: %+v", power, v)
		}
		if got := rulesOf(sheet.TurnsTable(f).Rows[6])[sheet.RulePlateAmps]; got != want { // 710 rpm
			t.Errorf("%s: row %v", power, got)
		}
	}
	// A motor that this loads to its plate, give or take a tenth.
	set(t, f, "coldest-air", "5 F", "new.motor-power", "1.36 hp", "target.power", "1.15 hp; within 10 %")
	table = sheet.TurnsTable(f)
	if v = sheet.MotorVerdict(f, table.Basis, speed); v.Level != sheet.Unjudged || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "new.no-load-amps" {
		t.Errorf("%+v", v)
	}
	// One that it overloads by a fifth: past its plate, and past its service factor once that is read as 1.
	set(t, f, "new.motor-power", "1.13 hp", "target.power", "1.15 hp", "new.service-factor-amps", "")
	table = sheet.TurnsTable(f)
	if v = sheet.MotorVerdict(f, table.Basis, speed); v.Level != sheet.Watch || v.Rule != sheet.RulePlateAmps || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "new.service-factor-amps" {
		t.Errorf("%+v", v)
	}
	// The plate's factor stands for its amps: 1.15 is at most 1.15 of them.
	set(t, f, "new.service-factor", "1.15", "new.motor-power", "1 hp")
	table = sheet.TurnsTable(f)
	if v = sheet.MotorVerdict(f, table.Basis, speed); v.Level != sheet.Stop || v.Rule != sheet.RuleServiceAmps {
		t.Errorf("%+v", v)
	}
	near(t, "service amps by the factor", v.Limit.Base, 1.15*6.6)
	// Far above the plate no overload relay may hold, whatever its service factor.
	set(t, f, "new.service-factor", "", "new.motor-power", "0.8 hp")
	table = sheet.TurnsTable(f)
	if v = sheet.MotorVerdict(f, table.Basis, speed); v.Level != sheet.Stop || v.Rule != sheet.RuleTripAmps {
		t.Errorf("%+v", v)
	}
	near(t, "most trip", v.Limit.Base, 1.4*6.6)
	set(t, f, "new.motor-power", "1.13 hp", "new.service-factor", "1.0")
	table = sheet.TurnsTable(f)
	if v = sheet.MotorVerdict(f, table.Basis, speed); v.Level != sheet.Stop || v.Rule != sheet.RuleServiceAmps {
		t.Errorf("%+v", v)
	}
	// At the planned speed itself and the report's air, power is the report's.
	at := sheet.PointAt(f, speed, sheet.PlannedAir(f))
	value(t, "power", at.Power, 1.15*watt*n*n*n/712/712/712)
	value(t, "air", at.Airflow, 3200*0.3048*0.3048*0.3048/60)
}
