package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A B belt is commonly not rated under one turn (common practice), an A belt at any: with
// neither section nor number said, what is closer than that is not judged.
func TestLeastTurnsGoByTheSection(t *testing.T) {
	for _, c := range []struct {
		section, number string
		closed, at1     sheet.Level
	}{
		{"A", "", sheet.Within, sheet.Within}, {"B", "", sheet.Stop, sheet.Within}, {"", "", sheet.Unjudged, sheet.Within},
		{"", "B48", sheet.Stop, sheet.Within}, {"", "A48", sheet.Within, sheet.Within},
	} {
		f := fan(t, bench)
		set(t, f, "new.section", c.section, "new.belt-number", c.number)
		rows := sheet.TurnsTable(f).Rows
		if got := rulesOf(rows[0])[sheet.RuleLeastTurns]; got != c.closed {
			t.Errorf("section %q, belt %q, closed: %v", c.section, c.number, got)
		}
		if got := rulesOf(rows[2])[sheet.RuleLeastTurns]; got != c.at1 {
			t.Errorf("section %q, belt %q, at a turn: %v", c.section, c.number, got)
		}
	}
}

// Travel is asked for where the base has to move, and only where it is known from where:
// the setting that stands needs none.
func TestTravelIsAskedForWhereTheBaseMoves(t *testing.T) {
	travel := func(f *record.Fan, row int) bool {
		_, judged := rulesOf(sheet.TurnsTable(f).Rows[row])[sheet.RuleTravel]
		return judged
	}
	f := fan(t, bench)
	set(t, f, "new.travel-toward", "", "new.travel-away", "")
	if travel(f, 0) || !travel(f, 4) {
		t.Error("without travel")
	}
	set(t, f, "new.center-distance", "", "new.turns", "")
	if travel(f, 4) {
		t.Error("nothing is known of the base, and not where the sheave stands")
	}
}

// Around a reading the motor's unknown load puts nothing on top: 750 rpm within half a per
// cent is no more than 753.75.
func TestAReadingNeedsNoRise(t *testing.T) {
	f := fan(t, bench+"&trial.a.turns=2turns&trial.a.speed=750rpm")
	set(t, f, "new.wheel-max-speed", "755 rpm")
	if got := rulesOf(sheet.TurnsTable(f).Rows[4])[sheet.RuleWheelMax]; got != sheet.Within {
		t.Errorf("read: %v", got)
	}
	f.RemoveTrial("a")
	if got := rulesOf(sheet.TurnsTable(f).Rows[4])[sheet.RuleWheelMax]; got != sheet.Unjudged { // up to 771 rpm
		t.Errorf("not read: %v", got)
	}
}
