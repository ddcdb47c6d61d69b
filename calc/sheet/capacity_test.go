package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A belt's rating is held against what the fan takes, where that is known: 1.15 hp at 712
// rpm, so 1.17 at the 717 of three turns (fan laws); else against the motor's plate.
func TestABeltsRating(t *testing.T) {
	for _, c := range []struct{ with, level, key string }{
		{unread + "new.belt-rating=1.2 hp", "within", ""},
		{unread + "new.belt-rating=1.1 hp", "watch", ""},
		{unread + "new.belt-rating=1.9 hp&target.power=", "watch", ""}, // 2 hp
		{unread + "new.belt-rating=2.1 hp&target.power=", "within", ""},
		{unread + "new.belt-rating=2.1 hp&target.power=!x", "unjudged", "target.power"},
	} {
		f := altered(t, c.with)
		v, ok := sheet.Named(sheet.JobOf(f, sixteenth, false).Stands(sheet.OfBelt), "belt.capacity")
		if !ok || levelNames[v.Level] != c.level {
			t.Errorf("%s: %v, %+v", c.with, ok, v)
		}
		if v.Fault != nil != (c.key != "") || v.Fault != nil && f.KeyOf(v.Fault.Place) != c.key {
			t.Errorf("%s: %+v", c.with, v.Fault)
		}
	}
}

// Text that is no mass blocks the force to press with, which a usual one must not hide.
func TestTheBeltsMass(t *testing.T) {
	f := altered(t, "new.belt-mass=!x")
	faulty(t, f, "least", tension(f).Edges(record.NewBelt).Least, "new.belt-mass")
	// A section that is not said is asked for, not a mass for it.
	f = altered(t, "new.section=")
	if m := tension(f).Mass; len(m.Wanted) != 1 || f.KeyOf(m.Wanted[0]) != "new.section" {
		t.Errorf("%d places wanted", len(m.Wanted))
	}
	f = altered(t, "new.section=4L") // of which none is usual
	wants(t, f, "mass", tension(f).Mass, "new.belt-mass")
}

// Handbooks list forces from 1000 ft/min up: 3.4 in at 870 rpm are 774, at 1750 rpm 1558.
func TestUnderTheLists(t *testing.T) {
	const slow = "new.motor-speed=870 rpm&new.turns=3 turns&"
	for _, c := range []struct {
		with  string
		under bool
	}{
		{unread + slow + "new.belt-listed-force=3 lbf", true},
		{unread + slow, false}, // no list
		{unread + "new.turns=3 turns&new.belt-listed-force=3 lbf", false},
		{unread + "new.motor-speed=&new.belt-listed-force=3 lbf", false}, // nobody knows
	} {
		if got := tension(altered(t, c.with)).UnderLists(); got != c.under {
			t.Errorf("%s: %v", c.with, got)
		}
	}
}

// The grooves of a drive take belts of their section, and what is not known is asked for,
// the belt's number first.
func TestWhatAGrooveAsksFor(t *testing.T) {
	for _, c := range []struct{ with, key string }{
		{"new.section=A&new.belt-number=A50", ""},
		{"new.section=&new.belt-number=A50", "new.section"},
		{"new.section=A&new.belt-number=", "new.belt-number"},
		{"new.section=&new.belt-number=", "new.belt-number"},
		{"new.section=A&new.belt-number=!50", "new.belt-number"},
	} {
		f := altered(t, c.with)
		v := sheet.GrooveVerdict(&f.New)
		if c.key == "" && v.Level != sheet.Within || c.key != "" && (v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != c.key) {
			t.Errorf("%s: %+v", c.with, v)
		}
	}
}
