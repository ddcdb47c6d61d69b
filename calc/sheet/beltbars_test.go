package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

func bars(f *record.Fan) []sheet.Held {
	m, _ := sheet.NextMove(f, sheet.TurnsTable(f))
	r := sheet.RunAt(f, sheet.NowTurns(f), nil)
	return sheet.BeltBars(f, m, r, sheet.Fits(f, r))
}

// 3.5 in under 9 in, 14 in apart: A48 lies tight at 14.572 in, A46 at 13.553 in (cases
// B24 and B21), A10 is shorter than the way around.
func TestWhatBarsABelt(t *testing.T) {
	for _, c := range []struct {
		name   string
		texts  []string
		level  sheet.Level
		rule   sheet.Rule
		barred bool
	}{
		{"nothing read", nil, sheet.Within, "", false},
		{"in order", []string{"new.belt-number", "A48", "new.travel-toward", "1 in", "new.travel-away", "2.5 in"}, sheet.Within, "", false},
		// 0.553 in left toward the fan, 3/4 in to have; then 0.053 in, within two errors of 1/16 in.
		{"not to be slipped on", []string{"new.belt-number", "A46", "new.travel-toward", "1 in", "new.travel-away", "2 in"}, sheet.Watch, sheet.RuleInstall, false},
		{"no travel to slip it on", []string{"new.belt-number", "A46", "new.travel-toward", "1/2 in", "new.travel-away", "2 in"}, sheet.Stop, sheet.RuleInstall, true},
		{"not reached", []string{"new.belt-number", "A46", "new.travel-toward", "0 in", "new.travel-away", "2 in"}, sheet.Stop, sheet.RuleReach, true},
		{"too short", []string{"new.belt-number", "A10"}, sheet.Stop, sheet.RuleShort, true},
		{"sheaves that overlap", []string{"new.belt-number", "A48", "new.center-distance", "6 in", "new.travel-toward", "1 in", "new.travel-away", "2 in"}, sheet.Within, "", false},
		{"the wheel turns the wrong way", []string{"new.rotation", "reverse"}, sheet.Stop, sheet.RuleRotation, true},
		{"far off", []string{"new.belt-number", "A60"}, sheet.Watch, sheet.RuleBeltNumber, true},
		{"far off, but the base goes there", []string{"new.belt-number", "A60", "new.travel-toward", "1 in", "new.travel-away", "9 in"}, sheet.Within, "", false},
		{"proud", []string{"new.belt-number", "B48", "new.groove", "standard"}, sheet.Stop, sheet.RuleProud, true},
		{"6500 ft/min and more", []string{"new.motor-sheave", "15 in", "new.fan-sheave", "15 in", "new.center-distance", "40 in"}, sheet.Stop, sheet.RuleBeltSpeed, true}, // π · 15 · 1750 / 12 = 6872
	} {
		f := fan(t, checked)
		set(t, f, "new.section", "A")
		set(t, f, c.texts...)
		all := bars(f)
		var worst sheet.Held
		if len(all) > 0 {
			worst = all[0]
		}
		if worst.Level != c.level || worst.Rule != c.rule {
			t.Errorf("%s: %+v", c.name, all)
		}
		if v, barred := sheet.Barred(all); barred != c.barred || barred && v.Rule != c.rule {
			t.Errorf("%s: barred %v by %s", c.name, barred, v.Rule)
		}
	}
}

// Setting the sheave moves the belt sideways: a gap in order before says nothing after,
// and one out of line bars the belt until it is read again.
func TestTheGapReadLast(t *testing.T) {
	f := demo(t)
	if read, v := sheet.AlignmentNow(f); read != nil || v.Level != sheet.Unjudged {
		t.Errorf("no gap: %+v", v)
	}
	f = fan(t, checked+"&trial.a.alignment-gap=0 in")
	if _, v := sheet.AlignmentNow(f); v.Level != sheet.Within {
		t.Errorf("no gap left: %+v", v)
	}
	set(t, f, "trial.a.turns", "2 turns", "trial.b.turns", "3 turns")
	if _, v := sheet.AlignmentNow(f); v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "trial.b.alignment-gap" {
		t.Errorf("read before the sheave moved: %+v", v)
	}
	set(t, f, "trial.a.alignment-gap", "1 in")
	if read, v := sheet.AlignmentNow(f); v.Level != sheet.Stop || read != f.Trials[0] {
		t.Errorf("out of line before: %+v", v)
	}
	if v, barred := sheet.Barred(bars(f)); !barred || v.Rule != sheet.RuleAlignment {
		t.Errorf("%+v", v)
	}
	set(t, f, "trial.b.alignment-gap", "0 in")
	if _, v := sheet.AlignmentNow(f); v.Level != sheet.Within {
		t.Errorf("read again: %+v", v)
	}
}

// A46 lies tight 0.447 in nearer than 14 in; by what the base falls short is positive.
func TestHowFarTheBaseFallsShort(t *testing.T) {
	f := fan(t, checked)
	set(t, f, "new.section", "A", "new.belt-number", "A46", "new.travel-toward", "1/8 in", "new.travel-away", "2 in")
	v := bars(f)[0]
	if short := v.Value.Base / in; v.Rule != sheet.RuleReach || v.Level != sheet.Stop || short < 0.32 || short > 0.323 { // 0.447 − 0.125
		t.Errorf("%+v: %v in short", v, short)
	}
}
