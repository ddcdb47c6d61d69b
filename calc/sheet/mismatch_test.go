package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

func TestMismatch(t *testing.T) {
	const stamped = "motor-speed=1725rpm&motor-sheave=3.4in&fan-sheave=8.6in&motor-tachometer=1740rpm;within 0rpm"
	expected := 1740 * 3.4 / 8.6 // 687.9
	for _, c := range []struct {
		name, with string
		slip       float64
		level      sheet.Level
		rule       sheet.Rule
		settles    string
	}{
		{"sound", stamped + "&speed=681rpm;within 0rpm", 1 - 681/expected, sheet.Within, sheet.RuleSlip, ""},
		{"slips 2.99 %", stamped + "&speed=667.34rpm;within 0rpm", 1 - 667.34/expected, sheet.Within, sheet.RuleSlip, ""},
		{"slips 3.01 %", stamped + "&speed=667.20rpm;within 0rpm", 1 - 667.2/expected, sheet.Watch, sheet.RuleSlip, ""},
		{"slips", stamped + "&speed=655rpm;within 0rpm", 1 - 655/expected, sheet.Watch, sheet.RuleSlip, ""},
		{"at 3 %, give or take", stamped + "&speed=667rpm;within 5rpm", 1 - 667/expected, sheet.Unjudged, sheet.RuleSlip, "old.speed"},
		{"faster than its belt", stamped + "&speed=700rpm;within 0rpm", 1 - 700/expected, sheet.Watch, sheet.RuleNegativeSlip, ""},
		{"two marks", stamped + "&speed=1362rpm;within 0rpm", 1 - 1362/expected, sheet.Watch, sheet.RuleHarmonic, ""},
		{"every other mark", stamped + "&speed=341rpm;within 0rpm", 1 - 341/expected, sheet.Watch, sheet.RuleHarmonic, ""},
		{"a taped diameter", "motor-speed=1725rpm&motor-sheave=3.4in;measured;within 0in&fan-sheave=8.6in&motor-tachometer=1740rpm;within 0rpm&speed=655rpm;within 0rpm", 1 - 655/expected, sheet.Watch, sheet.RuleMismatch, ""},
		{"counted", "motor-speed=1725rpm&count-fan-turns=34&count-motor-turns=86;within 0.01&motor-tachometer=1740rpm;within 0rpm&speed=655rpm;within 0rpm", 1 - 655/expected, sheet.Watch, sheet.RuleSlip, ""},
		// By its plate alone the motor may turn anything up to 1800: 4.3 % faster.
		{"little load", "motor-speed=1725rpm&motor-sheave=3.4in&fan-sheave=8.6in&speed=698rpm;within 0rpm", 1 - 698/(1725*3.4/8.6), sheet.Within, sheet.RuleMismatch, ""},
		{"faster than any load", "motor-speed=1725rpm&motor-sheave=3.4in&fan-sheave=8.6in&speed=722rpm;within 0rpm", 1 - 722/(1725*3.4/8.6), sheet.Watch, sheet.RuleNegativeSlip, ""},
	} {
		f := fan(t, c.with)
		m := sheet.Mismatch(f, &f.Old)
		value(t, c.name, m, c.slip)
		v := sheet.MismatchVerdict(f, &f.Old)
		if v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: %v %s", c.name, v.Level, v.Rule)
		}
		if got := len(v.Wanted) > 0; got != (c.settles != "") || got && f.KeyOf(v.Wanted[0]) != c.settles {
			t.Errorf("%s is settled by %v", c.name, v.Wanted)
		}
	}
	f := fan(t, stamped)
	if v := sheet.MismatchVerdict(f, &f.Old); v.Level != sheet.Unjudged || f.KeyOf(v.Wanted[0]) != "old.speed" {
		t.Errorf("not read: %+v", v)
	}
}

// A reading that counted marks would set the whole table wrong.
func TestTrialReadingsAreDoubted(t *testing.T) {
	for speed, want := range map[string]sheet.Level{"705 rpm": sheet.Within, "1412 rpm": sheet.Stop, "352 rpm": sheet.Stop, "640 rpm": sheet.Watch} {
		f := fan(t, bench+"&trial.a.turns=3&trial.a.speed="+speed)
		if v := sheet.TrialVerdict(f, f.Trials[0]); v.Level != want {
			t.Errorf("%s at 3 turns, 708 expected: %+v", speed, v)
		}
	}
}

// What a mismatch hangs on most is asked for: of a fan that runs, its motor's
// speed rather than the amps that it was computed from.
func TestMismatchAsksForTheMotorsSpeed(t *testing.T) {
	f := fan(t, "supply=three-phase&old.motor-power=2hp&old.motor-amps=6.6A&old.motor-speed=1650rpm&old.amps-1=5A;within 1A"+
		"&old.motor-sheave=4in&old.fan-sheave=8.4in&old.speed=790rpm")
	v := sheet.MismatchVerdict(f, &f.Old)
	if v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "old.motor-tachometer" {
		t.Errorf("%+v", v)
	}
	set(t, f, "old.motor-tachometer", "1690 rpm")
	if v = sheet.MismatchVerdict(f, &f.Old); v.Level == sheet.Unjudged {
		t.Errorf("%+v", v)
	}
}

// Shafts too close for their sheaves are said to be that, not missing.
func TestOverlappingSheavesAreSaid(t *testing.T) {
	f := fan(t, bench)
	set(t, f, "new.center-distance", "5 in")
	for _, v := range sheet.TurnsTable(f).Rows[2].Verdicts {
		if v.Rule == sheet.RuleTravel {
			if v.Fault == nil || f.KeyOf(v.Fault.Place) != "new.center-distance" {
				t.Errorf("%+v", v)
			}
			return
		}
	}
	t.Error("travel is judged")
}

// Which diameters are wanted depends on the sheave: it is asked for first, and
// no fixed sheave's diameter with it.
func TestTheKindOfSheaveIsAskedFor(t *testing.T) {
	f := fan(t, "same-wheel=yes&target.speed=700rpm")
	wants(t, f, "table", sheet.TurnsTable(f).Speed, "new.sheave", "new.motor-speed", "new.fan-sheave")
}

// A fan whose turns were counted by hand runs no more: its amps are not asked for.
func TestAmpsOfADeadFanAreNotAskedFor(t *testing.T) {
	f := fan(t, bench)
	if b := sheet.FanBasis(f); f.KeyOf(b.Wanted[0]) != "old.amps-1" {
		t.Errorf("%v", f.KeyOf(b.Wanted[0]))
	}
	set(t, f, "old.count-fan-turns", "20", "old.count-motor-turns", "48.25")
	if b := sheet.FanBasis(f); f.KeyOf(b.Wanted[0]) != "target.power" {
		t.Errorf("%v", f.KeyOf(b.Wanted[0]))
	}
	trial := f.NewTrial()
	set(t, f, "trial."+trial.ID+".turns", "3 turns")
	if b := sheet.FanBasis(f); f.KeyOf(b.Wanted[0]) != "trial."+trial.ID+".amps-1" {
		t.Errorf("%v", f.KeyOf(b.Wanted[0]))
	}
}
