package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// plated is a motor of 2 hp with its legs at an even 5 A, its volts even.
const plated = "supply=three-phase&new.phases=3&new.motor-power=2 hp&new.motor-volts=208 V&new.motor-amps=6.6 A&new.service-factor=1.15&new.no-load-amps=3.4 A&new.rotation=marked" +
	"&trial.a.amps-1=5.0 A&trial.a.amps-2=5.0 A&trial.a.amps-3=5.0 A&trial.a.volts-12=208 V&trial.a.volts-23=208 V&trial.a.volts-31=208 V"

// legsAt returns a fan whose legs all read as many amps.
func legsAt(amps string) []string {
	return []string{"trial.a.amps-1", amps, "trial.a.amps-2", amps, "trial.a.amps-3", amps}
}

// A motor may carry its service-factor amps for a while, as its plate states them; what
// a factor makes of the plate's amps stands in only where it does not (NEMA MG 1,
// 14.37, from memory). A relay lets through 140 % of the plate at most, 430.32(C): 9.24 A.
func TestWhatAmpsAreHeldAgainst(t *testing.T) {
	for _, c := range []struct {
		name, amps string
		with       []string
		level      sheet.Level
		rule       sheet.Rule
		wants      string // the place that would settle it
	}{
		{"even and under the plate", "5.0 A", nil, sheet.Within, sheet.RulePlateAmps, ""},
		{"above the plate, the factor makes 7.4 to 7.6 A", "7.0 A", nil, sheet.Watch, sheet.RulePlateAmps, "new.service-factor-amps"},
		{"above what the factor makes", "8.0 A", nil, sheet.Stop, sheet.RuleServiceAmps, ""},
		{"a plate that states 8.4 A", "8.0 A", []string{"new.service-factor-amps", "8.4 A"}, sheet.Watch, sheet.RulePlateAmps, ""},
		{"a plate that states 7.0 A", "7.3 A", []string{"new.service-factor-amps", "7.0 A"}, sheet.Stop, sheet.RuleServiceAmps, ""},
		{"a factor of one", "7.0 A", []string{"new.service-factor", "1.0"}, sheet.Stop, sheet.RuleServiceAmps, ""},
		{"no factor read", "7.0 A", []string{"new.service-factor", ""}, sheet.Watch, sheet.RulePlateAmps, "new.service-factor-amps"},
		{"no factor read, past any relay", "9.6 A", []string{"new.service-factor", ""}, sheet.Stop, sheet.RuleTripAmps, ""},
		{"above 3300 ft", "7.0 A", []string{"altitude", "5280 ft"}, sheet.Stop, sheet.RuleServiceVoid, ""},
		{"volts that make no triangle", "5.0 A", []string{"trial.a.volts-31", "480 V"}, sheet.Unjudged, sheet.RulePlateAmps, "trial.a.volts-31"},
		{"turns through the clamp that may be none", "5.0 A", []string{"trial.a.clamp-turns", "1 turns; within 1 turns"}, sheet.Unjudged, sheet.RulePlateAmps, "trial.a.clamp-turns"},
	} {
		f := fan(t, plated)
		set(t, f, legsAt(c.amps)...)
		set(t, f, c.with...)
		v := sheet.Prove(f).OfLegs
		if v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: %s, level %v", c.name, v.Rule, v.Level)
		}
		wanted := ""
		if len(v.Wanted) > 0 {
			wanted = f.KeyOf(v.Wanted[0])
		}
		if wanted != c.wants {
			t.Errorf("%s: wants %q", c.name, wanted)
		}
	}
}

// What unbalanced volts take off a motor is known from three pairs that were read one
// after the other: a later reading that misses a pair leaves the earlier one standing.
func TestUnbalanceIsOfAllThreePairs(t *testing.T) {
	for _, missing := range []string{"12", "23", "31"} {
		f := fan(t, plated)
		set(t, f, "trial.a.volts-12", "212 V", "trial.a.volts-23", "208 V", "trial.a.volts-31", "204 V")
		for _, pair := range []string{"12", "23", "31"} {
			if pair != missing {
				set(t, f, "trial.b.volts-"+pair, "208 V")
			}
		}
		value(t, "without "+missing, sheet.VoltageUnbalance(f), 4./208)
	}
}

// A leg or a pair, any one of them, is a reading of the old fan.
func TestOneLegOrPairIsAReading(t *testing.T) {
	for _, key := range []string{"amps-1", "amps-2", "amps-3", "volts-12", "volts-23", "volts-31"} {
		f := fan(t, "supply=three-phase")
		if _, taken := sheet.JudgedReading(f); taken {
			t.Fatal("nothing is a reading")
		}
		set(t, f, "old."+key, map[bool]string{true: "5 A", false: "208 V"}[key[0] == 'a'])
		if j, taken := sheet.JudgedReading(f); !taken || j.Side != &f.Old {
			t.Errorf("%s is no reading", key)
		}
	}
}

// Where the service factor is one, its amps are the plate's: the plate is named.
func TestPlateAmpsComeFirst(t *testing.T) {
	f := fan(t, swap)
	set(t, f, "new.motor-amps", "12.1 A", "new.service-factor-amps", "", "new.service-factor", "1.0")
	first, ok, _ := sheet.FirstLimit(sheet.SpeedLimits(f, sheet.FanBasis(f)))
	if !ok || first.Rule != sheet.RulePlateAmps {
		t.Errorf("first is %s", first.Rule)
	}
}

// A leg that is less surely known than another is held against the plate too: what it
// may carry counts, not only what the surest leg does (JCGM 106, guarded acceptance).
func TestTheLeastSureLegCounts(t *testing.T) {
	f := fan(t, plated)
	set(t, f, "trial.a.amps-1", "6.4 A; within 0.05 A", "trial.a.amps-2", "6.3 A; within 0.1 A", "trial.a.amps-3", "6.2 A; within 0.1 A", "new.overload-dial", "6.6 A")
	if p := sheet.Prove(f); p.OfLegs.Level != sheet.Within {
		t.Errorf("all known: %+v", p.OfLegs)
	}
	if o := sheet.OverloadOf(f); o.Verdict.Level != sheet.Within {
		t.Errorf("all known: %+v", o.Verdict)
	}
	set(t, f, "trial.a.amps-2", "6.3 A; within 1 A")
	if p := sheet.Prove(f); p.OfLegs.Level != sheet.Unjudged {
		t.Errorf("one up to 7.3 A: %+v", p.OfLegs)
	}
	if o := sheet.OverloadOf(f); o.Verdict.Level != sheet.Unjudged {
		t.Errorf("one up to 7.3 A: %+v", o.Verdict)
	}
	set(t, f, "trial.a.amps-1", "7.0 A; within 0.05 A")
	if p := sheet.Prove(f); p.OfLegs.Level != sheet.Watch {
		t.Errorf("one at 7 A: %+v", p.OfLegs)
	}
}
