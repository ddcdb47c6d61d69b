package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// Another sheave is named where one helps: it is known, it is another than the one that
// is there, and at the target the wheel may turn and the motor is not loaded beyond its
// plate. No sheave mends a motor too small for its load.
func TestWhichSheaveIsOffered(t *testing.T) {
	for _, c := range []struct {
		name, base string
		with       []string
		sheave     sheet.Thing
	}{
		{"out of reach", bench, []string{"target.speed", "900 rpm"}, sheet.MotorSheave}, // 8.4 · 900/1750 = 4.32 in
		{"out of reach, and the wheel's too", bench, []string{"target.speed", "900 rpm", "new.wheel-max-speed", "850 rpm"}, ""},
		{"2.1 hp there on 2 hp", bench, []string{"target.speed", "900 rpm", "target.power", "2.1 hp", "new.service-factor-amps", "8 A"}, ""},
		{"1.5 hp there", bench, []string{"target.speed", "900 rpm", "target.power", "1.5 hp", "new.service-factor-amps", "8 A"}, sheet.MotorSheave},
		{"4 hp there", bench, []string{"target.speed", "900 rpm", "target.power", "4 hp", "new.service-factor-amps", "8 A"}, ""},
		{"no table covers the motor", bench, []string{"target.speed", "900 rpm", "new.motor-power", ""}, sheet.MotorSheave},
		{"the fan sheave is not known", bench, []string{"target.speed", "900 rpm", "new.fan-sheave", "", "trial.a.turns", "5 turns", "trial.a.speed", "620 rpm"}, ""},
		{"the fan sheave may be none", bench, []string{"target.speed", "900 rpm", "new.fan-sheave", "8.4 in; within 9 in", "trial.a.turns", "5 turns", "trial.a.speed", "620 rpm"}, ""},
		{"too fast a belt on any motor sheave", bench, []string{"target.speed", "2500 rpm", "new.wheel-max-speed", "4000 rpm", "new.fan-sheave", "12 in"}, sheet.FanSheave}, // π · 17 in · 1750
		// Half turns step over what the wheel, or the motor, must not.
		{"the next half turn is above the wheel", "", []string{"target.speed", "705 rpm", "new.wheel-max-speed", "708 rpm"}, sheet.MotorSheave},
		{"the same, by less than sheaves of one size differ", "", []string{"target.speed", "710.3 rpm", "new.wheel-max-speed", "710.5 rpm"}, ""},
	} {
		f := demo(t)
		if c.base != "" {
			f = fan(t, c.base)
		}
		set(t, f, c.with...)
		m, _ := sheet.NextMove(f, sheet.TurnsTable(f))
		if m.Do != sheet.DoNone || m.Sheave != c.sheave || (m.Pitch > 0) != (c.sheave != "") {
			t.Errorf("%s: %+v", c.name, m)
		}
	}
}

// The output that a drive is ordered goes by the reading where the sheave stands: stamps
// that are taped cancel there, and weigh by how far it was set on since.
func TestAnchorsCancelInADrivesOutput(t *testing.T) {
	f := fan(t, bench)
	set(t, f, "supply", "drive", "target.speed", "660 rpm", "trial.a.turns", "0 turns", "trial.a.speed", "600 rpm", "trial.a.frequency", "45 Hz; within 0 Hz")
	sure := sheet.SheavesFor(f).Frequency
	set(t, f, "new.anchor-pitch", "4 in; measured", "new.second-anchor-pitch", "3 in; measured")
	taped := sheet.SheavesFor(f).Frequency
	if !sure.Known() || sure.Value != taped.Value || sure.Band != taped.Band {
		t.Errorf("%v ± %v, taped %v ± %v", sure.Value, sure.Band, taped.Value, taped.Band)
	}
	set(t, f, "trial.b.turns", "1 turns")
	if on := sheet.SheavesFor(f).Frequency; on.Value <= taped.Value || on.Band <= taped.Band {
		t.Errorf("set on: %v ± %v", on.Value, on.Band)
	}
}
