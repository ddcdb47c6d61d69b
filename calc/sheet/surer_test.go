package sheet_test

import (
	"slices"
	"testing"

	"roofside/calc/sheet"
)

// A reading whose own error is wider than the room there is asks for what is finer; one
// that is judged, that waits for something or contradicts another asks for nothing more.
// The room is 2.383 lbf, see [pressed].
func TestWhatIsSurerThanAPress(t *testing.T) {
	const coarse, mark = "3 lbf; within 2.34 lbf", "3/16 in; within 0 in"
	for _, c := range []struct {
		name   string
		texts  []string
		wanted []string
	}{
		{"too coarse", []string{"trial.a.belt-force", coarse, "trial.a.belt-deflection", mark}, []string{"trial.a.belt-frequency", "new.belt-mass"}},
		{"the mass is on the card", []string{"trial.a.belt-force", coarse, "trial.a.belt-deflection", mark, "new.belt-mass", "0.1 kg/m"}, []string{"trial.a.belt-frequency"}},
		{"in order", []string{"trial.a.belt-force", "3 lbf; within 0 lbf", "trial.a.belt-deflection", mark}, nil},
		{"loose", []string{"trial.a.belt-force", "1 lbf", "trial.a.belt-deflection", mark}, nil},
		{"how far it was pressed is not said", []string{"trial.a.belt-force", coarse}, nil},
		{"no value", []string{"trial.a.belt-force", "!3..1", "trial.a.belt-deflection", mark}, nil},
		{"its age is not said", []string{"trial.a.belt-force", coarse, "trial.a.belt-deflection", mark, "trial.a.belt-age", ""}, nil},
		{"the motor's power is a guess", []string{"trial.a.belt-force", "3 lbf", "trial.a.belt-deflection", mark, "new.motor-power", "2.6 hp; within 95 %"}, nil},
		{"another reading says otherwise", []string{"trial.a.belt-force", "20 lbf", "trial.a.belt-deflection", mark, "trial.a.belt-frequency", "30 Hz; within 0 Hz", "new.section", "A"}, nil},
	} {
		x, f := pressed(t, c.texts...)
		var got []string
		for _, p := range tension(f).Surer(f.Trials[0], x) {
			got = append(got, f.KeyOf(p))
		}
		if !slices.Equal(got, c.wanted) {
			t.Errorf("%s: %v, by %+v leaning %d", c.name, got, x.Verdict, x.Lean)
		}
	}
}

// What a reading waits for is asked for at once, its age with it: too slack at any age, it
// needs none, but text that can't be read is put right first.
func TestWhatAReadingWaitsFor(t *testing.T) {
	const mark = "3/16 in; within 0 in"
	for _, c := range []struct {
		texts, wanted []string
	}{
		{[]string{"trial.a.belt-force", "3 lbf", "trial.a.belt-age", ""}, []string{"trial.a.belt-deflection", "trial.a.belt-age"}},
		{[]string{"trial.a.belt-force", "3 lbf", "trial.a.belt-deflection", mark, "new.belts", "", "trial.a.belt-age", ""}, []string{"new.belts", "trial.a.belt-age"}},
		{[]string{"trial.a.belt-force", "3 lbf", "trial.a.belt-deflection", mark, "new.belts", ""}, []string{"new.belts"}},
		{[]string{"trial.a.belt-force", "1 lbf", "trial.a.belt-deflection", mark, "trial.a.belt-age", ""}, nil},
		{[]string{"trial.a.belt-force", "1 lbf", "trial.a.belt-deflection", mark, "trial.a.belt-age", "!old"}, []string{"trial.a.belt-age"}},
	} {
		x, f := pressed(t, c.texts...)
		var got []string
		for _, p := range x.Verdict.Wanted {
			got = append(got, f.KeyOf(p))
		}
		if !slices.Equal(got, c.wanted) || (x.Verdict.Level == sheet.Unjudged) != (len(c.wanted) > 0) {
			t.Errorf("%v: %v, %+v", c.texts, got, x.Verdict)
		}
	}
}

// A span that was plucked says something though nobody noted how far it was pressed, and
// a press though nobody knows the belt's mass: what waits contradicts nothing.
func TestAReadingThatWaitsContradictsNothing(t *testing.T) {
	for _, c := range []struct {
		name  string
		texts []string
	}{
		// 0.105 kg/m · 4 · (13.727 in · 54 Hz)² are 33.5 lbf of strand and 44.1 the least.
		{"no deflection", []string{"trial.a.belt-force", "3 lbf", "trial.a.belt-frequency", "54 Hz; within 0 Hz", "new.belt-mass", "0.105 kg/m"}},
		{"no mass", []string{"trial.a.belt-frequency", "54 Hz", "trial.a.belt-force", "1.5 lbf", "trial.a.belt-deflection", "3/16 in"}},
	} {
		if x, _ := pressed(t, c.texts...); x.Verdict.Rule != sheet.RuleLoose {
			t.Errorf("%s: %+v", c.name, x.Verdict)
		}
	}
}

// Setting the sheave undoes what was read at the belt: slack or tight, it is set anew, and
// its sheaves are aligned again.
func TestASheaveThatIsSetUndoesWhatWasRead(t *testing.T) {
	const (
		opens  = "&target.speed=640 rpm&new.travel-away=3 in"
		closes = "&target.speed=760 rpm&new.motor-amps=9 A"
	)
	for _, c := range []struct{ with, order string }{
		{"trial.t1.belt-force=8 lbf", sheet.BeltToward},
		{"trial.t1.belt-force=8 lbf" + opens, sheet.BeltPress},
		{"trial.t1.belt-force=8 lbf" + closes, sheet.BeltPress},
		{"trial.t1.alignment-gap=1 in", sheet.BeltHalt},
		{"trial.t1.alignment-gap=1 in" + opens, sheet.BeltPress},
		{"trial.t1.alignment-gap=1 in" + closes, sheet.BeltPress},
	} {
		job := sheet.JobOf(altered(t, c.with), sixteenth, false)
		_, read := sheet.Named(job.Stands(sheet.OfBelt), "tension")
		if order := job.Order(sheet.OfBelt).Do; order != c.order || read != (order != sheet.BeltPress) {
			t.Errorf("%s: %s, read %v", c.with, order, read)
		}
	}
}
