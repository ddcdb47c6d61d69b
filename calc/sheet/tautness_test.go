package sheet_test

import (
	"fmt"
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// pressed is what a reading on the checked drive says: a least of 3/16 · 4 · T / t at
// the mark, T = 44.109 lbf, t = 13.727 in: 2.410 lbf; 3.615 run in at most and new at
// least, 4.808 new at most.
func pressed(t *testing.T, texts ...string) (sheet.Tautness, *record.Fan) {
	t.Helper()
	f := fan(t, checked+"&new.motor-tachometer=1750rpm; within 0 rpm&trial.a.belt-age=used")
	set(t, f, texts...)
	x := tension(f)
	return x.Taut(f.Trials[0]), f
}

func TestWhatAReadingSays(t *testing.T) {
	for _, c := range []struct {
		name, force, deflection, age string
		level                        sheet.Level
		rule                         sheet.Rule
		lean                         sheet.Lean
	}{
		{"loose", "2.40 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose},
		{"least", "2.42 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone},
		{"most", "3.61 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone},
		{"tight", "3.62 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Watch, sheet.RuleTight, sheet.LeanTight},
		{"loose for a new one", "3.61 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose},
		{"within for a new one", "4.2 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Within, sheet.RuleTension, sheet.LeanNone},
		{"tight for a new one", "4.82 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Watch, sheet.RuleTight, sheet.LeanTight},
		// Pressed twice as far, twice the force; read half as far, half of it.
		{"pressed deeper", "6 lbf; within 0 lbf", "3/8 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone},
		{"deflection at a force", "3 lbf; within 0 lbf", "3/8 in; within 0 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose},
		// Half a sixteenth is a sixth of 3/16 in, and a scale is off by a twentieth.
		{"surely loose", "1.9 lbf", "3/16 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose},
		{"rather loose", "2.3 lbf", "3/16 in", "used", sheet.Unjudged, sheet.RuleTension, sheet.LeanLoose},
		{"as near as it tells", "3 lbf", "3/16 in", "used", sheet.Unjudged, sheet.RuleTension, sheet.LeanNone},
		{"rather tight", "3.8 lbf", "3/16 in", "used", sheet.Unjudged, sheet.RuleTension, sheet.LeanTight},
		{"surely tight", "5 lbf", "3/16 in", "used", sheet.Watch, sheet.RuleTight, sheet.LeanTight},
		{"finer", "3 lbf", "3/16 in; within 1/64 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone},
	} {
		x, _ := pressed(t, "trial.a.belt-age", c.age, "trial.a.belt-force", c.force, "trial.a.belt-deflection", c.deflection)
		if x.Verdict.Level != c.level || x.Verdict.Rule != c.rule || x.Lean != c.lean {
			t.Errorf("%s: %+v, leaning %d, %v ± %v lbf", c.name, x.Verdict, x.Lean, x.Force.Value/lbf, x.Force.Band/lbf)
		}
	}
	// A verdict names where its limit comes from.
	for _, c := range [][2]string{{"", "belt.force.bands"}, {"1 lbf", "belt.force.listed"}} {
		if x, _ := pressed(t, "trial.a.belt-force", "9 lbf", "trial.a.belt-deflection", "3/16 in", "new.belt-listed-force", c[0]); x.Verdict.Rule != sheet.RuleTight || x.Verdict.Method != c[1] {
			t.Errorf("%+v", x.Verdict)
		}
	}
	// What is typed on a fan whose power is only guessed asks for the power.
	x, f := pressed(t, "new.motor-power", "2.6 hp; within 40 %", "trial.a.belt-force", "3 lbf", "trial.a.belt-deflection", "3/16 in; within 1/64 in")
	if x.Verdict.Level != sheet.Unjudged || len(x.Verdict.Wanted) == 0 || f.KeyOf(x.Verdict.Wanted[0]) != "new.motor-power" {
		t.Errorf("%+v", x.Verdict)
	}
}

// Case C12: 0.105 kg/m rings at 40 Hz over 0.4 m under 107.52 N.
func TestAPluckedSpan(t *testing.T) {
	f := fan(t, checked+"&new.motor-tachometer=1750rpm; within 0 rpm&new.belt-mass=0.105kg/m&trial.a.belt-age=used&trial.a.belt-frequency=40Hz; within 0 Hz")
	c := math.Hypot(0.4, 2.75*in) // a span of 0.4 m
	set(t, f, "new.center-distance", fixedPoint(c)+" m; within 0 m")
	x := tension(f)
	value(t, "span", x.Span, 0.4)
	mark := float64(x.Press.Value)
	near(t, "mark", mark, 0.25*in) // 6.25 mm
	said := x.Taut(f.Trials[0])
	value(t, "force", said.Force, 107.52/16*mark/(0.4/64))
	if said.Verdict.Level != sheet.Watch || said.Lean != sheet.LeanLoose {
		t.Errorf("%+v", said.Verdict)
	}
	// Both readings, one surely loose, one surely tight.
	set(t, f, "trial.a.belt-force", "20 lbf", "trial.a.belt-deflection", "1/4 in")
	if said = tension(f).Taut(f.Trials[0]); said.Verdict.Rule != sheet.RuleReadings || said.Verdict.Level != sheet.Unjudged || said.Lean != sheet.LeanUnsaid {
		t.Errorf("%+v", said.Verdict)
	}
	// Only one is sure, and the other may be as low: 3 lbf less a half and more.
	set(t, f, "trial.a.belt-force", "3 lbf; within 1.5 lbf")
	if said = tension(f).Taut(f.Trials[0]); said.Verdict.Rule != sheet.RuleLoose {
		t.Errorf("%+v", said.Verdict)
	}
	// Neither may be what the other is: 107.52 N of strand are 1.51 lbf at 1/64 of the
	// span, and 3 lbf within a twentieth, at 1/4 in within an eighth, are 2.5 at least.
	set(t, f, "trial.a.belt-force", "3 lbf")
	if said = tension(f).Taut(f.Trials[0]); said.Verdict.Rule != sheet.RuleReadings || said.Lean != sheet.LeanUnsaid || said.Verdict.Value.Base == said.Verdict.Limit.Base {
		t.Errorf("%+v", said.Verdict)
	}
	// Nor where neither is sure.
	set(t, f, "trial.a.belt-force", "3 lbf; within 0 lbf", "trial.a.belt-frequency", "70 Hz; within 3 Hz")
	if said = tension(f).Taut(f.Trials[0]); said.Verdict.Rule != sheet.RuleReadings {
		t.Errorf("%+v, %v ± %v lbf", said.Verdict, said.Force.Value/lbf, said.Force.Band/lbf)
	}
	set(t, f, "trial.a.belt-frequency", "40 Hz; within 0 Hz")
	// A force that is surely loose, a frequency that may be within.
	set(t, f, "trial.a.belt-force", "1 lbf; within 0 lbf", "trial.a.belt-frequency", "60 Hz; within 20 Hz")
	if said = tension(f).Taut(f.Trials[0]); said.Verdict.Rule != sheet.RuleLoose {
		t.Errorf("%+v", said.Verdict)
	}
	set(t, f, "trial.a.belt-force", "3 lbf", "trial.a.belt-frequency", "40 Hz; within 0 Hz")
	// One that is no value blocks the other.
	set(t, f, "trial.a.belt-frequency", "!0")
	faulty(t, f, "garbled frequency", tension(f).Taut(f.Trials[0]).Force, "trial.a.belt-frequency")
	set(t, f, "trial.a.belt-frequency", "40 Hz; within 0 Hz")
	// A section's usual mass is ± 15 %, and none is known for 4L.
	set(t, f, "trial.a.belt-force", "", "new.belt-mass", "")
	wants(t, f, "mass", tension(f).Taut(f.Trials[0]).Force, "new.belt-mass")
	set(t, f, "new.section", "A")
	said = tension(f).Taut(f.Trials[0])
	value(t, "force", said.Force, 107.52/16*mark/(0.4/64))
	near(t, "its band", said.Force.Band/said.Force.Value, 0.15)
}

// What can't be a reading is stopped at its own place.
func TestReadingsThatCantBe(t *testing.T) {
	for _, c := range []struct{ force, deflection, key string }{
		{"!4..1", "3/16 in", "trial.a.belt-force"},
		{"!0", "3/16 in", "trial.a.belt-force"},
		{"3 lbf", "15 in", "trial.a.belt-deflection"},            // more than the span
		{"3 lbf", "0.86 in", "trial.a.belt-deflection"},          // more than a sixteenth of it: 0.858 in
		{"3 lbf", "1/32 in", "trial.a.belt-deflection"},          // its own error
		{"3 lbf; within 100 %", "3/16 in", "trial.a.belt-force"}, // as well
	} {
		x, f := pressed(t, "trial.a.belt-force", c.force, "trial.a.belt-deflection", c.deflection)
		faulty(t, f, fmt.Sprint(c), x.Force, c.key)
		if x.Verdict.Level != sheet.Unjudged || x.Lean != sheet.LeanUnsaid {
			t.Errorf("%v: %+v", c, x.Verdict)
		}
	}
	x, f := pressed(t, "trial.a.belt-force", "3 lbf")
	wants(t, f, "no deflection", x.Force, "trial.a.belt-deflection")
	x, f = pressed(t, "trial.a.belt-force", "3 lbf", "trial.a.belt-deflection", "3/16 in", "trial.a.belt-age", "")
	if x.Verdict.Level != sheet.Unjudged || len(x.Verdict.Wanted) != 1 || f.KeyOf(x.Verdict.Wanted[0]) != "trial.a.belt-age" {
		t.Errorf("%+v", x.Verdict)
	}
}

func TestLookAgain(t *testing.T) {
	f := fan(t, "trial.a.at=2026-03-09T14:05:00-06:00&trial.a.belt-age=new&trial.a.belt-force=3lbf")
	at, ok := sheet.LookAgain(f.Trials[0])
	if !ok || at.Format("2006-01-02 15:04") != "2026-03-11 14:05" { // 48 h
		t.Errorf("%v %v", at, ok)
	}
	set(t, f, "trial.a.belt-age", "used")
	if _, ok := sheet.LookAgain(f.Trials[0]); ok {
		t.Error("a belt that has run in is looked at again")
	}
	set(t, f, "trial.a.belt-age", "new", "trial.a.belt-force", "")
	if _, ok := sheet.LookAgain(f.Trials[0]); ok {
		t.Error("a belt that was not tensioned is looked at again")
	}
}

// 24 in of span: at most 24 · tan ½° = 0.2094 in, at best 24/12 · 1/16 in.
func TestAlignment(t *testing.T) {
	f := fan(t, checked)
	set(t, f, "new.fan-sheave", "3.5 in", "new.center-distance", "24 in; within 0 in")
	r := sheet.RunAt(f, sheet.NowTurns(f), nil)
	most, aim := sheet.AlignmentGap(r)
	value(t, "most", most, 24*in*math.Tan(math.Pi/360))
	value(t, "aim", aim, in/8)
	for gap, want := range map[string]sheet.Level{
		"0 in": sheet.Within, "0.1 in": sheet.Within, "1/8 in": sheet.Unjudged, "0.16 in": sheet.Watch, "0.2 in": sheet.Unjudged, "1/4 in": sheet.Stop,
	} {
		set(t, f, "trial.a.alignment-gap", gap)
		if v := sheet.AlignmentVerdict(f.Trials[0], r); v.Level != want || v.Rule != sheet.RuleAlignment {
			t.Errorf("%s: %+v", gap, v)
		}
	}
	set(t, f, "trial.a.alignment-gap", "")
	if v := sheet.AlignmentVerdict(f.Trials[0], r); v.Level != sheet.Unjudged || len(v.Wanted) == 0 {
		t.Errorf("%+v", v)
	}
	// Three turns at 16 threads to the inch: 3/32 in.
	f = demo(t)
	value(t, "shift", sheet.BeltShift(f, sheet.Setting(3)), 3./32*in)
	set(t, f, "new.flange-lead", "1/8 in")
	value(t, "shift", sheet.BeltShift(f, sheet.Setting(3)), 3./16*in)
}
