package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// What was begun of a target is asked for to its end, and no more than that.
func TestATargetBegunIsAskedForToItsEnd(t *testing.T) {
	for with, want := range map[string]string{
		"":                                         "target.speed",
		"count-fan-turns=20":                       "old.count-motor-turns",
		"count-motor-turns=4":                      "old.count-fan-turns",
		"fan-sheave=8in":                           "old.motor-sheave",
		"fan-sheave-outside=8in":                   "old.motor-sheave",
		"speed=712rpm":                             "old.belt-healthy",
		"speed=712rpm&belt-healthy=no":             "target.speed", // what a slipping belt gave is no target
		"target.use=tachometer&belt-healthy=yes":   "old.speed",
		"target.use=tachometer&speed=712rpm":       "old.belt-healthy",
		"target.use=tag&target.speed=712rpm":       "target.tag-speed",
		"target.use=sheaves&target.speed=712rpm":   "old.motor-sheave",
		"target.use=count&count-motor-turns=48.25": "old.count-fan-turns",
	} {
		f := fan(t, "same-wheel=yes&motor-tachometer=1725rpm&"+with)
		got := sheet.TargetSpeed(f)
		if got.Known() || len(got.Wanted) == 0 {
			t.Errorf("%s: %+v", with, got)
			continue
		}
		if with == "fan-sheave-outside=8in" { // its section too, which a taped diameter is no pitch without
			if !asksFor(f, got.Wanted, want) {
				t.Errorf("%s: does not ask for %s", with, want)
			}
			continue
		}
		if key := f.KeyOf(got.Wanted[0]); key != want {
			t.Errorf("%s: asks for %s, want %s", with, key, want)
		}
	}
}

func asksFor(f *record.Fan, wanted []record.Place, key string) bool {
	for _, p := range wanted {
		if f.KeyOf(p) == key {
			return true
		}
	}
	return false
}

// The tachometer is among the origins where it says something or waits for the word that
// it would say something by: not on a belt that is said to slip.
func TestATachometerOnABadBeltIsNoOrigin(t *testing.T) {
	for with, want := range map[string]int{"": 2, "&belt-healthy=yes": 2, "&belt-healthy=no": 1} {
		if cs := sheet.Targets(fan(t, "same-wheel=yes&target.speed=712rpm&speed=715rpm"+with)); len(cs) != want {
			t.Errorf("%s: %d origins, want %d", with, len(cs), want)
		}
	}
}

// An origin that was chosen by hand stays the one, though it says nothing yet and another
// does: the first in the list as any other.
func TestTheOriginChosenByHandStays(t *testing.T) {
	f := fan(t, "same-wheel=yes&target.tag-speed=700rpm&speed=705rpm&belt-healthy=yes&target.use=report")
	cs := sheet.Targets(f)
	if len(cs) != 3 || cs[0].Origin != record.FromReport || !cs[0].Chosen || cs[1].Chosen || cs[2].Chosen {
		t.Errorf("%+v", cs)
	}
	// Two that stand apart are not judged around one that says nothing, which is asked for.
	if v := sheet.TargetVerdict(f); v.Level != sheet.Unjudged || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "target.speed" {
		t.Errorf("%+v", v)
	}
}

// The chosen one's own band counts once against each of the others, and never against
// itself: 712 within 2.1 % and 712 agree within 3 %.
func TestATargetDoesNotDisputeItself(t *testing.T) {
	f := fan(t, "same-wheel=yes&target.speed=712rpm;within 15rpm&target.tag-speed=712rpm;within 0rpm")
	if v := sheet.TargetVerdict(f); v.Level != sheet.Within || v.Value.Base != 0 {
		t.Errorf("%+v", v)
	}
	// 3.0 % apart to the digit is within, 3.1 % for sure is not.
	for tag, want := range map[string]sheet.Level{"1030rpm;within 0rpm": sheet.Within, "1031rpm;within 0rpm": sheet.Watch, "1029rpm;within 1rpm": sheet.Within, "1031rpm;within 1rpm": sheet.Unjudged} {
		f := fan(t, "same-wheel=yes&target.speed=1000rpm;within 0rpm&target.tag-speed="+tag)
		if v := sheet.TargetVerdict(f); v.Level != want {
			t.Errorf("%s: %+v", tag, v)
		}
	}
}

// How far a speed lies from a target is told where both are known.
func TestHowFarASpeedLiesFromTheTarget(t *testing.T) {
	known := func(rpm float64) sheet.Answer[unit.Speed] {
		return sheet.Read("n", sheet.FromPlace, &fan(t, "target.speed="+fixedPoint(rpm)+"rpm").Target.Speed)
	}
	none := sheet.Answer[unit.Speed]{}
	for _, c := range []struct {
		speed, target sheet.Answer[unit.Speed]
		by            float64
		ok            bool
	}{
		{known(735), known(700), 0.05, true}, {known(665), known(700), -0.05, true},
		{none, known(700), 0, false}, {known(700), none, 0, false},
	} {
		by, ok := sheet.Apart(c.speed, c.target)
		if ok != c.ok {
			t.Errorf("%v of %v: %v", c.speed.Value, c.target.Value, ok)
		}
		near(t, "apart", by, c.by)
	}
}
