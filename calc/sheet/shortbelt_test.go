package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// A belt is too short where it doesn't go around its sheaves, and not where a sheave's
// text or its stamps say nothing that can be.
func TestAFaultIsNoShortBelt(t *testing.T) {
	for name, texts := range map[string][]string{
		"text that is no value":     {"new.fan-sheave", "!8,4in"},
		"stamps that contradict":    {"new.second-anchor-pitch", "4 in"},
		"so far open that none is":  {"new.turns", "30 turns"},
		"a setting that is no text": {"new.turns", "!three"},
	} {
		f := fan(t, bench+"&new.belt-number=A50")
		set(t, f, texts...)
		for _, x := range sheet.Fits(f, sheet.RunAt(f, sheet.NowTurns(f), nil)) {
			if x.Verdict.Rule == sheet.RuleShort {
				t.Errorf("%s: %s is %+v", name, x.Name, x.Verdict)
			}
		}
	}
	f := fan(t, bench+"&new.belt-number=A10")
	if x := sheet.Fits(f, sheet.RunAt(f, sheet.NowTurns(f), nil))[0]; x.Verdict.Level != sheet.Stop || x.Verdict.Rule != sheet.RuleShort {
		t.Errorf("an A10 on 4 and 8.4 in: %+v", x.Verdict)
	}
}
