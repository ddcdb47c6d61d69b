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
// least, 4.808 new at most. With the greatest service factor of fans, 1.3 (a handbook on
// industrial power, Table 8.5), and a 4L belt's stiffness of 6 lbf · t / L (memory),
// L = 48.177 in, a belt may take 4.793 lbf run in and 6.374 lbf new.
func pressed(t *testing.T, texts ...string) (sheet.Tautness, *record.Fan) {
	t.Helper()
	f := fan(t, checked+"&new.motor-tachometer=1750rpm; within 0 rpm&trial.a.belt-age=used")
	set(t, f, texts...)
	x := tension(f)
	return x.Taut(f.Trials[0]), f
}

// JCGM 106:2012, simple acceptance: by the reading itself, and near an edge where its
// error reaches across. The trade's band is the process-machinery handbook's.
func TestWhatAReadingSays(t *testing.T) {
	for _, c := range []struct {
		name, force, deflection, age string
		level                        sheet.Level
		rule                         sheet.Rule
		lean                         sheet.Lean
		near, above                  bool
	}{
		{"loose", "2.40 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose, false, false},
		{"least", "2.42 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, false},
		{"most", "3.61 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, false},
		{"within a service factor", "3.62 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, true},
		{"the very most", "4.78 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, true},
		{"tight", "4.80 lbf; within 0 lbf", "3/16 in; within 0 in", "used", sheet.Watch, sheet.RuleTight, sheet.LeanTight, false, false},
		{"loose for a new one", "3.61 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose, false, false},
		{"within for a new one", "4.2 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, false},
		{"the very most of a new one", "6.36 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, true},
		{"tight for a new one", "6.39 lbf; within 0 lbf", "3/16 in; within 0 in", "new", sheet.Watch, sheet.RuleTight, sheet.LeanTight, false, false},
		// Pressed twice as far, twice the force; read half as far, half of it.
		{"pressed deeper", "6 lbf; within 0 lbf", "3/8 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, false},
		{"deflection at a force", "3 lbf; within 0 lbf", "3/8 in; within 0 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose, false, false},
		// Half a sixteenth is a sixth of 3/16 in, and a scale is off by a twentieth: a
		// spring scale and a rule, as the band was set for.
		{"surely loose", "1.9 lbf", "3/16 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose, false, false},
		{"rather loose", "2.3 lbf", "3/16 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose, true, false},
		{"rather within", "2.5 lbf", "3/16 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, true, false},
		{"in the middle", "3.4 lbf", "3/16 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, false, false},
		{"rather tight", "5 lbf", "3/16 in", "used", sheet.Watch, sheet.RuleTight, sheet.LeanTight, true, false},
		{"surely tight", "6.6 lbf", "3/16 in", "used", sheet.Watch, sheet.RuleTight, sheet.LeanTight, false, false},
		{"a healthy new belt", "4.8 lbf", "3/16 in", "new", sheet.Within, sheet.RuleTension, sheet.LeanNone, true, false},
		// The room is 2.383 lbf: what is read no better says nothing, unless all of it
		// lies to one side.
		{"as coarse as the room", "3 lbf; within 2.34 lbf", "3/16 in; within 0 in", "used", sheet.Unjudged, sheet.RuleTension, sheet.LeanNone, false, false},
		{"finer than the room", "3 lbf; within 2.25 lbf", "3/16 in; within 0 in", "used", sheet.Within, sheet.RuleTension, sheet.LeanNone, true, false},
		{"coarse and loose", "2.3 lbf; within 2.2 lbf", "3/16 in; within 0 in", "used", sheet.Watch, sheet.RuleLoose, sheet.LeanLoose, true, false},
		{"coarse and surely tight", "9 lbf; within 4 lbf", "3/16 in; within 0 in", "used", sheet.Watch, sheet.RuleTight, sheet.LeanTight, false, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			x, _ := pressed(t, "trial.a.belt-age", c.age, "trial.a.belt-force", c.force, "trial.a.belt-deflection", c.deflection)
			if x.Verdict.Level != c.level || x.Verdict.Rule != c.rule || x.Lean != c.lean || x.Verdict.Near != c.near || x.Above != c.above {
				t.Errorf("%+v, leaning %d, above %v, %v ± %v lbf", x.Verdict, x.Lean, x.Above, x.Force.Value/lbf, x.Force.Band/lbf)
			}
		})
	}
	// What is too slack or too tight at any age needs no age; between them it is asked for.
	for force, rule := range map[string]sheet.Rule{"2 lbf": sheet.RuleLoose, "7 lbf": sheet.RuleTight, "3 lbf": sheet.RuleTension, "5 lbf": sheet.RuleTension} {
		x, _ := pressed(t, "trial.a.belt-age", "", "trial.a.belt-force", force+"; within 0 lbf", "trial.a.belt-deflection", "3/16 in; within 0 in")
		if asks := len(x.Verdict.Wanted) > 0; x.Verdict.Rule != rule || asks != (rule == sheet.RuleTension) {
			t.Errorf("%s at no age: %+v", force, x.Verdict)
		}
	}
	// A textbook that leaves out what the belt's turning takes (memory) asks less: no belt is
	// called loose between the two, and each is near the least. C07 and C14: 44.109 lbf
	// and 0.105 kg/m at 8.146 m/s more.
	for force, want := range map[string]struct {
		rule sheet.Rule
		near bool
	}{"2.40 lbf": {sheet.RuleLoose, false}, "2.43 lbf": {sheet.RuleTension, true}, "2.48 lbf": {sheet.RuleTension, true}, "2.52 lbf": {sheet.RuleTension, false}} {
		x, _ := pressed(t, "new.belt-mass", "0.105 kg/m; within 0 %", "trial.a.belt-force", force+"; within 0 lbf", "trial.a.belt-deflection", "3/16 in; within 0 in")
		if x.Verdict.Rule != want.rule || x.Verdict.Near != want.near {
			t.Errorf("%s with its mass: %+v", force, x.Verdict)
		}
	}
	// A verdict names where its limit comes from.
	for _, c := range [][2]string{{"", "belt.force.bands"}, {"1 lbf", "belt.force.listed"}} {
		if x, _ := pressed(t, "trial.a.belt-force", "9 lbf", "trial.a.belt-deflection", "3/16 in", "new.belt-listed-force", c[0]); x.Verdict.Rule != sheet.RuleTight || x.Verdict.Method != c[1] {
			t.Errorf("%+v", x.Verdict)
		}
	}
	// What is typed on a fan whose power is only guessed asks for the power.
	x, f := pressed(t, "new.motor-power", "2.6 hp; within 95 %", "trial.a.belt-force", "3 lbf", "trial.a.belt-deflection", "3/16 in; within 1/64 in")
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
	set(t, f, "trial.a.belt-force", "3 lbf", "trial.a.at", "")
	if _, ok := sheet.LookAgain(f.Trials[0]); ok {
		t.Error("it is looked at again two days after nobody knows when")
	}
}

// 24 in of span: at most 24 · tan ½° = 0.2094 in, as is printed for V-belts (½° or a
// tenth of an inch per foot; ¼° or 1/16 in per foot for synchronous belts: 1/8 in), by
// the gap itself, read to 1/64 in with a straightedge.
func TestAlignment(t *testing.T) {
	f := fan(t, checked)
	set(t, f, "new.fan-sheave", "3.5 in", "new.center-distance", "24 in; within 0 in")
	r := sheet.RunAt(f, sheet.NowTurns(f), nil)
	most, aim := sheet.AlignmentGap(r)
	value(t, "most", most, 24*in*math.Tan(math.Pi/360))
	value(t, "aim", aim, in/8)
	for _, c := range []struct {
		gap   string
		level sheet.Level
		near  bool
	}{
		{"0 in", sheet.Within, false}, {"0.1 in", sheet.Within, false}, {"1/8 in", sheet.Within, false}, {"0.16 in", sheet.Within, false}, {"0.2 in", sheet.Within, true},
		{"0.22 in", sheet.Stop, true}, {"1/4 in", sheet.Stop, false}, {"0.1 in; within 0.22 in", sheet.Unjudged, false}, {"0.5 in; within 0.22 in", sheet.Stop, false},
	} {
		t.Run(c.gap, func(t *testing.T) {
			set(t, f, "trial.a.alignment-gap", c.gap)
			if v := sheet.AlignmentVerdict(f.Trials[0], r); v.Level != c.level || v.Near != c.near || v.Rule != sheet.RuleAlignment || v.Level != sheet.Unjudged && math.Abs(v.Limit.Base/in-0.20945) > 1e-4 {
				t.Errorf("%+v", v)
			}
		})
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
