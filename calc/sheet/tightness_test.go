package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// Two readings that can't both be right settle nothing, unless both surely say the same. A
// strand's tension is 18.3 times the force at this mark, see [pressed]: 5 lbf ring at 89.3
// Hz and 20 lbf at 178.6, by C12's formula.
func TestOnlySureReadingsAgreeFarApart(t *testing.T) {
	const mark = "3/16 in; within 0 in"
	for _, c := range []struct {
		name, force, frequency string
		rule                   sheet.Rule
	}{
		{"both tight for sure", "9 lbf; within 0 lbf", "178.6 Hz; within 0 Hz", sheet.RuleTight},
		{"the force rather tight", "5 lbf; within 2.5 lbf", "178.6 Hz; within 0 Hz", sheet.RuleReadings},
		{"the frequency rather tight", "20 lbf; within 0 lbf", "89.3 Hz; within 22 Hz", sheet.RuleReadings},
	} {
		x, _ := pressed(t, "new.belt-mass", "0.105 kg/m; within 0 %", "trial.a.belt-force", c.force, "trial.a.belt-deflection", mark, "trial.a.belt-frequency", c.frequency)
		if x.Verdict.Rule != c.rule {
			t.Errorf("%s: %+v", c.name, x.Verdict)
		}
	}
}

// A belt that was set by the plate's 2 hp is not tight, though the fan takes 1.17; by a plate
// that may as well say nothing it is.
func TestABeltSetByAPlateThatSaysLittle(t *testing.T) {
	for power, level := range map[string]string{"2 hp": "within", "2 hp; within 100 %25": "watch", "": "watch"} {
		f := altered(t, "trial.t1.amps-1=&trial.t1.amps-2=&trial.t1.amps-3=&trial.t1.belt-force=3.1 lbf; within 0 lbf&new.motor-power="+power)
		v, _ := sheet.Named(sheet.JobOf(f, sixteenth, false).Stands(sheet.OfBelt), "tension")
		if levelNames[v.Level] != level {
			t.Errorf("%q: %+v", power, v)
		}
	}
}

// A reading of amps that bounds nothing is no reason to go by the plate: the fan may take
// more.
func TestAmpsThatBoundNoBelt(t *testing.T) {
	f := altered(t, "new.belt-rating=2.1 hp&trial.t1.amps-1=5.4 A; within 100 %25&trial.t1.amps-2=5.5 A; within 100 %25&trial.t1.amps-3=5.3 A; within 100 %25")
	if x := tension(f); x.Rules() != sheet.ByMeasured || x.Edges(record.RunInBelt).Least.Known() {
		t.Errorf("set by %s", x.Rules())
	}
	stands := sheet.JobOf(f, sixteenth, false).Stands(sheet.OfBelt)
	for _, name := range []string{"tension", "belt.capacity"} {
		if v, ok := sheet.Named(stands, name); !ok || v.Level != sheet.Unjudged {
			t.Errorf("%s: %v, %+v", name, ok, v)
		}
	}
}

// A belt read as loose is loose where the sheave stands, as long as nobody says that it
// was set since.
func TestWhereALooseBeltIsLoose(t *testing.T) {
	const loose = "trial.t1.belt-force=1 lbf&"
	const stamped = "new.motor-sheave=3.4 in&new.anchor-turns=&new.anchor-pitch=&new.second-anchor-turns=&new.second-anchor-pitch=&"
	for _, c := range []struct {
		with  string
		loose bool
	}{
		{"", false},
		{loose, true},
		{loose + "trial.t2.turns=3 turns&trial.t2.speed=690 rpm", true},
		{loose + "trial.t2.turns=2 turns&trial.t2.speed=690 rpm", false},
		{loose + "trial.t2.turns=!x&trial.t2.speed=690 rpm", true},
		{loose + stamped + "trial.t1.turns=&new.turns=3 turns", true},
		{loose + stamped + "new.sheave=fixed", true},
	} {
		if got := sheet.BeltLoose(altered(t, c.with)); got != c.loose {
			t.Errorf("%s: %v", c.with, got)
		}
	}
}

// A card and a power are apart only where both are known.
func TestACardIsApartFromAPower(t *testing.T) {
	for with, apart := range map[string]bool{
		"": false, "new.belt-listed-force=2 lbf": false, "new.belt-listed-force=20 lbf": true, "new.belt-listed-force=0.5 lbf": true,
		"new.belt-listed-force=20 lbf&trial.t1.amps-1=&trial.t1.amps-2=&trial.t1.amps-3=&target.power=": false,
	} {
		if got := tension(altered(t, with)).CardApart(record.RunInBelt); got != apart {
			t.Errorf("%s: %v", with, got)
		}
	}
}

// The error of a speed cancels only against itself: 712 rpm read of a fan that was reported
// to run at 712 are two, each within 3 rpm, of which power takes three times the share.
func TestTwoSpeedsAlikeAreTwo(t *testing.T) {
	f := altered(t, "trial.t1.amps-1=&trial.t1.amps-2=&trial.t1.amps-3=&target.speed=712 rpm; within 3 rpm&target.power=1.15 hp; within 0 hp&trial.t1.speed=712 rpm; within 3 rpm&target.air-temperature=&trial.t1.air-temperature=")
	p := tension(f).Measured.Power
	if share := float64(p.Band / p.Value); !p.Known() || share < 0.025 || share > 0.026 { // 2 · 3 · 3 / 712
		t.Errorf("%v of it", share)
	}
}
