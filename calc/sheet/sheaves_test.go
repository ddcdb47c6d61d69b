package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// Why there is no setting: by 1750 rpm, 4 to 2.8 in over 8.4 in the bench drive
// gives 833 to 583 rpm at no more than one turn past the usual five.
func TestWhyNoSettingReachesTheTarget(t *testing.T) {
	for _, c := range []struct {
		name string
		with []string
		why  sheet.Why
		rule sheet.Rule
	}{
		{"above the closed sheave", []string{"target.speed", "900 rpm"}, sheet.TooSlow, ""},
		{"below the open one", []string{"target.speed", "500 rpm"}, sheet.TooFast, ""},
		{"above the wheel", []string{"target.speed", "760 rpm", "new.wheel-max-speed", "700 rpm"}, sheet.MustNotBe, sheet.RuleWheelMax},
	} {
		f := fan(t, bench)
		set(t, f, c.with...)
		m, wanted := sheet.NextMove(f, sheet.TurnsTable(f))
		if m.Do != sheet.DoNone || m.Why != c.why || m.Barred.Rule != c.rule || len(wanted) > 0 {
			t.Errorf("%s: %+v", c.name, m)
		}
		if (c.rule != "") != (m.Barred.Level == sheet.Stop) {
			t.Errorf("%s: barred %+v", c.name, m.Barred)
		}
	}
}

// Where only the half turns step over what must not be, a sheave of the pitch between
// them is named first; where the target itself must not be, none is.
func TestASheaveInsteadOfASettingThatMustNotBe(t *testing.T) {
	for _, c := range []struct {
		name   string
		with   []string
		sheave sheet.Thing
	}{
		{"the next half turn is above the wheel", []string{"target.speed", "705 rpm", "new.wheel-max-speed", "710 rpm"}, sheet.MotorSheave},
		{"the target is", []string{"target.speed", "760 rpm", "new.wheel-max-speed", "700 rpm"}, ""},
		{"whether the target is can't be told", []string{"target.speed", "705 rpm", "new.wheel-max-speed", "705 rpm; within 2 rpm"}, ""},
	} {
		f := demo(t)
		set(t, f, c.with...)
		table := sheet.TableToSet(f)
		m, _ := sheet.NextMove(f, table)
		if m.Why != sheet.MustNotBe || m.Sheave != c.sheave {
			t.Errorf("%s: %+v", c.name, m)
		}
		bought := false
		for _, l := range sheet.Materials(f) {
			bought = bought || l.Thing == sheet.MotorSheave && l.Plan == sheet.Bring && l.Pitch.Known && l.Pitch.V == m.Pitch
		}
		if bought != (c.sheave != "") {
			t.Errorf("%s: whether it is on the list: %v", c.name, bought)
		}
	}
}

// A sheave that would reach the target is held to what its motor and its section
// ask for, and the target itself to wheel and motor.
func TestSheavesAreJudged(t *testing.T) {
	for _, c := range []struct {
		name              string
		with              []string
		motor, fan, there sheet.Rule
		level             sheet.Level
	}{
		{"small for the section", []string{"target.speed", "400 rpm", "new.motor-power", ""}, sheet.RuleSectionSheave, "", "", sheet.Watch}, // 8.4 · 400/1750 = 1.92 in
		{"small for the motor", []string{"target.speed", "560 rpm", "new.motor-power", "7.5 hp"}, sheet.RuleMotorSheave, "", "", sheet.Watch},
		{"above the wheel", []string{"target.speed", "900 rpm", "new.wheel-max-speed", "850 rpm"}, "", "", sheet.RuleWheelMax, sheet.Stop},
		{"too fast a belt", []string{"target.speed", "3500 rpm", "target.use", "report", "new.fan-sheave", "8.4 in"}, sheet.RuleBeltSpeed, "", "", sheet.Stop}, // π · 16.8 in · 1750 = 7697 ft/min
		{"small fan sheave", []string{"target.speed", "2400 rpm"}, "", sheet.RuleSectionSheave, "", sheet.Watch},
	} {
		f := fan(t, bench)
		set(t, f, c.with...)
		s := sheet.SheavesFor(f)
		for _, v := range []struct {
			rule sheet.Rule
			got  sheet.Verdict
		}{{c.motor, s.MotorVerdict}, {c.fan, s.FanVerdict}, {c.there, s.AtTheTarget}} {
			if v.rule != "" && (v.got.Rule != v.rule || v.got.Level != c.level) {
				t.Errorf("%s: %+v", c.name, v.got)
			}
		}
	}
}

// On a variable frequency drive the output can be changed instead: at 45 Hz a
// motor of 1750 rpm turns at 1321.4 by the closed form, and a reading scales.
func TestFrequencyThatReachesTheTarget(t *testing.T) {
	f := fan(t, bench)
	wants(t, f, "not on a drive", sheet.SheavesFor(f).Frequency, "supply")
	const n = 1321.4
	set(t, f, "supply", "drive", "new.turns", "0 turns", "target.speed", text(n*4/8.4, "rpm"))
	// n + slip·(n/plate)² = 120 f/p: 1350.0 = 120 · 45/4
	want := (n + 50*n*n/1750/1750) * 4 / 120
	value(t, "frequency", sheet.SheavesFor(f).Frequency, want)
	if v := sheet.SheavesFor(f).FrequencyVerdict; v.Level != sheet.Within {
		t.Errorf("%+v", v)
	}
	set(t, f, "target.speed", "900 rpm")
	if v := sheet.SheavesFor(f).FrequencyVerdict; v.Level != sheet.Watch || v.Rule != sheet.RuleOverFrequency {
		t.Errorf("%+v", v)
	}
	if r := f.NewTrial(); r == nil || r.ID == "" {
		t.Fatal("no trial")
	}
	id := "trial." + f.Trials[0].ID + "."
	set(t, f, id+"turns", "0 turns", id+"speed", "600 rpm; within 0 rpm", id+"frequency", "45 Hz; within 0 Hz", "target.speed", "660 rpm")
	got := sheet.SheavesFor(f).Frequency
	if !got.Known() || got.Value < 49.4 || got.Value > 49.7 { // a tenth faster, and slip grows with torque
		t.Errorf("from a reading %v %v", got.Value, got.Wanted)
	}
	if s := sheet.TargetSpeed(f); s.From != sheet.FromReport || f.Supply.Value() != record.Inverter {
		t.Error("another case")
	}
}
