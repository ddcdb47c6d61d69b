package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
	"roofside/calc/source"
)

func lineOf(t *testing.T, name string, with ...string) sheet.Line {
	t.Helper()
	for _, l := range sheet.LikeForLike(made(t, with...)) {
		if l.Name == name {
			return l
		}
	}
	t.Fatalf("no line %s", name)
	return sheet.Line{}
}

// Where the supply is said, it decides what another number of phases means.
func TestAnotherNumberOfPhases(t *testing.T) {
	for _, c := range []struct {
		supply, old, new string
		level            sheet.Level
	}{
		{"", "1", "3", sheet.Stop},
		{"", "3", "1", sheet.Stop},
		{"single-phase", "3", "1", sheet.Watch},
		{"three-phase", "3", "1", sheet.Watch},
		{"three-phase", "1", "3", sheet.Watch},
		{"single-phase", "1", "3", sheet.Stop},
		{"drive", "3", "1", sheet.Stop},
		{"three-phase", "3", "3", sheet.Within},
		{"single-phase", "3", "3", sheet.Within}, // alike; that it won't start is said of the plate
	} {
		if l := lineOf(t, "phases", "supply", c.supply, "old.phases", c.old, "new.phases", c.new); l.Level != c.level {
			t.Errorf("%q, %s and %s: level %d, want %d", c.supply, c.old, c.new, l.Level, c.level)
		}
	}
}

func TestLikeForLike(t *testing.T) {
	for _, c := range []struct {
		name, old, new string
		likeness       sheet.Likeness
		level          sheet.Level
	}{
		{"motor-volts", "208 V", "208 V", sheet.Alike, sheet.Within},
		{"motor-volts", "208 V", "200 V", sheet.Less, sheet.Watch},
		{"motor-volts", "208 V", "460 V", sheet.More, sheet.Stop},
		{"motor-volts", "200 V", "220 V", sheet.More, sheet.Watch}, // just the 10 %
		{"motor-volts", "?", "208 V", sheet.NotKnown, sheet.Unjudged},
		{"motor-volts", "208 V", "!2o8", sheet.NotKnown, sheet.Unjudged},
		{"phases", "3", "1", sheet.Other, sheet.Stop},
		{"motor-frequency", "60 Hz", "50 Hz", sheet.Less, sheet.Stop},
		{"motor-power", "2 hp", "3 hp", sheet.More, sheet.Watch},
		{"motor-power", "1-1/2 hp", "1.5 hp", sheet.Alike, sheet.Within},
		{"motor-amps", "6.6 A", "6.7 A", sheet.Alike, sheet.Within},
		{"motor-amps", "6.6 A", "5.2 A", sheet.Less, sheet.Watch},
		{"service-factor", "1", "1.15", sheet.More, sheet.Within},
		{"service-factor", "1.15", "1", sheet.Less, sheet.Watch},
		{"frame", "143T", "143 t", sheet.Alike, sheet.Within},
		{"frame", "56", "143T", sheet.Other, sheet.Watch},
		{"belt-number", "A50", "a-50", sheet.Alike, sheet.Within},
		{"belt-number", "A50", "A52", sheet.Other, sheet.Watch},
		{"motor-bore", "5/8 in", "5/8 in", sheet.Alike, sheet.Within},
		{"motor-bore", "5/8 in", "7/8 in", sheet.More, sheet.Watch},
		{"motor-bore", "22 mm", "7/8 in", sheet.Alike, sheet.Within}, // 0.2 mm apart, each read to 1/64 in
		{"motor-sheave", "3.4 in; measured", "3.45 in", sheet.Alike, sheet.Within},
		{"motor-sheave", "3.4 in", "3.45 in", sheet.More, sheet.Watch}, // stamped
		{"weight", "160 lb", "185 lb", sheet.More, sheet.Watch},
		{"weight", "185 lb", "160 lb", sheet.Less, sheet.Within},
		{"hinge", "left", "far", sheet.Other, sheet.Watch},
		{"discharge", "up", "up", sheet.Alike, sheet.Within},
		{"discharge", "side", "up", sheet.Other, sheet.Watch},
		{"discharge", "down", "down", sheet.Alike, sheet.Stop}, // as bad as before
		{"discharge", "", "side", sheet.NotKnown, sheet.Stop},
	} {
		l := lineOf(t, c.name, "old."+c.name, c.old, "new."+c.name, c.new)
		if l.Likeness != c.likeness || l.Level != c.level {
			t.Errorf("%s %q and %q: likeness %d, level %d", c.name, c.old, c.new, l.Likeness, l.Level)
		}
		if back := lineOf(t, c.name, "new."+c.name, c.old, "old."+c.name, c.new); (back.Likeness == sheet.Alike) != (l.Likeness == sheet.Alike) {
			t.Errorf("%s %q and %q are alike one way only", c.name, c.old, c.new)
		}
	}
	for name, c := range map[string]struct{ old, new, method string }{
		"motor-amps":     {"6.6 A", "5.2 A", "fit.alike"},
		"motor-volts":    {"208 V", "460 V", "fit.volts"},
		"discharge":      {"up", "down", "fit.discharge"},
		"belt-number":    {"A50", "A52", "fit.alike"},
		"service-factor": {"", "", "fit.alike"},
	} {
		if l := lineOf(t, name, "old."+name, c.old, "new."+name, c.new); l.Method != c.method {
			t.Errorf("%s of %q and %q rests on %s", name, c.old, c.new, l.Method)
		}
	}
	if l := lineOf(t, "motor-volts", "old.motor-volts", "208 V", "new.motor-volts", "200 V"); l.Method != "fit.alike" || l.Apart != 0.001 {
		t.Errorf("volts near each other rest on %s, alike within %v", l.Method, l.Apart)
	}
	if l := lineOf(t, "same-wheel", "same-wheel", "no"); l.Level != sheet.Watch || !l.Differs() {
		t.Errorf("another wheel is at level %d", l.Level)
	}
	for _, l := range sheet.LikeForLike(made(t)) {
		if _, ok := source.Lookup(l.Method); !ok {
			t.Errorf("%s rests on %q, which is not registered", l.Name, l.Method)
		}
		if l.Likeness != sheet.NotKnown || l.Level != sheet.Unjudged {
			t.Errorf("%s of an empty record has likeness %d at level %d", l.Name, l.Likeness, l.Level)
		}
	}
}

// The base inside, less the curb outside; each is taped to 1/16 in.
func TestClearance(t *testing.T) {
	for _, c := range []struct {
		base, curb string
		level      sheet.Level
		rule       sheet.Rule
	}{
		{"24-1/2 in", "24 in", sheet.Within, sheet.RuleCurbLoose},
		{"24-1/8 in", "24 in", sheet.Within, sheet.RuleCurbLoose}, // the tapes' errors just leave room
		{"24-1/16 in", "24 in", sheet.Unjudged, sheet.RuleCurb},
		{"24 in", "24 in", sheet.Unjudged, sheet.RuleCurb},
		{"23-1/2 in", "24 in", sheet.Stop, sheet.RuleCurb},
		{"25 in", "24 in", sheet.Unjudged, sheet.RuleCurbLoose},
		{"26-1/2 in", "24 in", sheet.Watch, sheet.RuleCurbLoose},
		{"26-1/2 in", "?", sheet.Unjudged, sheet.RuleCurb},
		{"!wide", "24 in", sheet.Unjudged, sheet.RuleCurb},
	} {
		for along, key := range map[bool]string{false: "curb-width", true: "curb-length"} {
			f := made(t, "old."+key, c.curb, "new."+key, c.base)
			if v := sheet.ClearanceVerdict(sheet.Clearance(f, along)); v.Level != c.level || v.Rule != c.rule {
				t.Errorf("%s: base %s over curb %s is at level %d of %s", key, c.base, c.curb, v.Level, v.Rule)
			}
			if sheet.Clearance(f, !along).Known() {
				t.Errorf("%s says something of the other way", key)
			}
		}
	}
}

// Each line holds a place of the old fan against the same of the new one, and says
// which; nothing else of a record finds its way into it.
func TestEachLineComparesItsOwnPlaces(t *testing.T) {
	for range 20 { // places come in no order
		f := made(t)
		for _, l := range sheet.LikeForLike(f)[1:] {
			if got := f.KeyOf(l.Old); got != "old."+l.Name {
				t.Errorf("%s: the old fan's is %s", l.Name, got)
			}
			if got := f.KeyOf(l.New); got != "new."+l.Name {
				t.Errorf("%s: the new fan's is %s", l.Name, got)
			}
		}
	}
}
