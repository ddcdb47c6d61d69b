package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// Twice the volts or the amps is another connection of the leads; half the amps may be
// no more than a light load.
func TestConnectionsAreAskedAbout(t *testing.T) {
	for _, c := range []struct {
		link  string
		rule  sheet.Rule
		level sheet.Level
		about string
	}{
		{across("415", "415", "415") + legs("5", "5", "5"), sheet.RuleDoubleVolts, sheet.Watch, "volts"},
		{across("104", "104", "104") + legs("5", "5", "5"), sheet.RuleHalfVolts, sheet.Watch, "volts"},
		{across("208", "208", "208") + legs("13.2", "13.2", "13.2"), sheet.RuleDoubleAmps, sheet.Watch, "amps"},
		{across("208", "208", "208") + legs("3.3", "3.3", "3.3"), sheet.RuleHalfAmps, sheet.Unjudged, ""},
	} {
		f := fan(t, unproven+c.link)
		r := &f.Trials[0].Reading
		if got := sheet.ConnectionVerdicts(f, &f.New, r, r); len(got) != 1 || got[0].Rule != c.rule || got[0].Level != c.level {
			t.Errorf("%s: %+v", c.rule, got)
		}
		about := ""
		for _, h := range ask(f).Stands(sheet.OfPower) {
			if h.Name == "ask."+string(c.rule) {
				about = h.About
			}
		}
		if about != c.about {
			t.Errorf("%s stands against %q", c.rule, about)
		}
	}
	for key, link := range map[string]string{"trial.t1.amps-1": across("208", "208", "208"), "new.motor-amps": legs("5", "5", "5"), "new.motor-volts": across("415", "415", "415")} {
		f := fan(t, unproven+"&trial.t1.turns=1"+link)
		set(t, f, key, "")
		r := &f.Trials[0].Reading
		if got := sheet.ConnectionVerdicts(f, &f.New, r, r); len(got) > 0 {
			t.Errorf("without %s: %+v", key, got)
		}
	}
}

// What can't be told of a system's volts has no figures: the nominal volts are not what
// they are near to. What isn't known is asked for.
func TestASystemThatCantBeTold(t *testing.T) {
	f := fan(t, unproven+across("187", "187", "187")) // a motor on 208 V has 187 V at the least: C84.1, range A
	r := &f.Trials[0].Reading
	if v := sheet.SystemVerdict(f, r); v.Level != sheet.Unjudged || v.Value.Scale != nil || v.Limit.Scale != nil {
		t.Errorf("187 V: %+v", v)
	}
	set(t, f, "new.motor-volts", "")
	if v := sheet.PlateSystemVerdict(&f.New, sheet.SystemVolts(f, r)); v.Level != sheet.Unjudged || v.Fault != nil || len(v.Wanted) != 1 || v.Wanted[0] != &f.New.MotorVolts {
		t.Errorf("no plate: %+v", v)
	}
	f = fan(t, unproven+"&trial.t1.turns=1")
	r = &f.Trials[0].Reading
	if v := sheet.PlateSystemVerdict(&f.New, sheet.SystemVolts(f, r)); v.Level != sheet.Unjudged || v.Fault != nil || len(v.Wanted) != 1 || v.Wanted[0] != &r.Volts[0] {
		t.Errorf("no volts: %+v", v)
	}
	for _, name := range []string{"volts.plate", "volts.system"} {
		for link, stands := range map[string]bool{legs("5", "5", "5"): false, legs("5", "5", "5") + across("208", "208", "208"): true} {
			if _, has := sheet.Named(ask(fan(t, unproven+link)).Stands(sheet.OfPower), name); has != stands {
				t.Errorf("%s: %s stands %v", link, name, has)
			}
		}
	}
}

// What a motor gives is held against what it takes only where both are known.
func TestPowerThatIsNotKnown(t *testing.T) {
	for name, texts := range map[string][]string{
		"what it gives": {"new.motor-power", "", "new.power-factor", "0.8"},
		"what it takes": {"new.power-factor", ""},
	} {
		f := fan(t, unproven+across("208", "208", "208")+legs("6", "6", "6"))
		set(t, f, texts...)
		if v := sheet.Prove(f).OfEfficiency; v.Level != sheet.Unjudged || len(v.Wanted) == 0 {
			t.Errorf("%s: %+v", name, v)
		}
	}
}

// A plate of less than 1.15, and no other, may say that it runs cool, 430.32(A)(1); at
// 1 hp and less another paragraph counts, 430.32(B) and (D).
func TestWhatAPlateSaysOfItsOverload(t *testing.T) {
	for _, c := range []struct {
		factor, power string
		asks, small   bool
	}{
		{"1.0", "2 hp", true, false}, {"1.15", "1.5 hp", false, false}, {"1.25", "1/2 hp", false, true}, {"", "1 hp", false, true}, {"1.1", "", true, false},
	} {
		f := fan(t, unproven)
		set(t, f, "new.service-factor", c.factor, "new.motor-power", c.power)
		if o := sheet.OverloadOf(f); o.AsksRise != c.asks || o.Small != c.small {
			t.Errorf("factor %q, %q: asks for the rise %v, small %v", c.factor, c.power, o.AsksRise, o.Small)
		}
	}
}

// A band that was typed with a reading is that reading's own: three of 208 V within 2 %
// may be 2.7 % apart, which three of one usual meter are not.
func TestATypedBandIsTheReadingsOwn(t *testing.T) {
	for link, want := range map[string]sheet.Level{
		across("208", "208", "208"): sheet.Within,
		"&trial.t1.volts-12=208V; within 2%25&trial.t1.volts-23=208V; within 2%25&trial.t1.volts-31=208V; within 2%25": sheet.Unjudged,
	} {
		f := fan(t, unproven+link)
		if v := sheet.VoltsUnbalance(&f.Trials[0].Reading).Verdict; v.Level != want {
			t.Errorf("%s: level %d", link, v.Level)
		}
	}
	// The conductor twice through the clamp halves what its digits come to.
	once, twice := fan(t, unproven+legs("3.0", "3.1", "3.0")), fan(t, unproven+legs("6.0", "6.2", "6.0")+"&trial.t1.clamp-turns=2")
	a, b := sheet.AmpsUnbalance(once, &once.New, &once.Trials[0].Reading).Share, sheet.AmpsUnbalance(twice, &twice.New, &twice.Trials[0].Reading).Share
	if near(t, "unbalance", b.Value, float64(a.Value)); !(b.Band < a.Band*0.8) {
		t.Errorf("± %v once, ± %v twice through", a.Band, b.Band)
	}
}

// Nothing has been held against a fan of which nothing is known.
func TestNothingIsJudgedOfNothing(t *testing.T) {
	f := fan(t, "")
	table := sheet.TurnsTable(f)
	move, _ := sheet.NextMove(f, table)
	if v, judged := sheet.Standing(f, table, move); judged || v.Level != sheet.Within {
		t.Errorf("%+v", v)
	}
}

// At its plate's frequency a motor's iron carries what the volts make of it, which are
// judged as such; at a lower one it may carry more, so that the plate's volts are asked
// for (NEMA MG 1, 12.44).
func TestAFrequencyWithoutThePlatesVolts(t *testing.T) {
	for hz, want := range map[string]sheet.Level{"60 Hz": sheet.Within, "61 Hz": sheet.Within, "58.5 Hz": sheet.Unjudged, "50 Hz": sheet.Watch} {
		f := fan(t, unproven+"&new.motor-frequency=60Hz"+across("208", "208", "208"))
		set(t, f, "new.motor-volts", "", "trial.t1.frequency", hz)
		if v := sheet.FrequencyVerdict(f, &f.New, &f.Trials[0].Reading); v.Level != want || (len(v.Wanted) > 0) != (want != sheet.Within) {
			t.Errorf("%s: %+v", hz, v)
		}
	}
	// 240 V on 208 V is the volts' own matter at 60 Hz. 190 V, 8.7 % off, and 2.5 % of
	// frequency are more than 10 % together.
	for _, c := range []struct {
		hz, volts string
		level     sheet.Level
		rule      sheet.Rule
	}{{"60 Hz", "240", sheet.Within, sheet.RuleLineFrequency}, {"60 Hz", "180", sheet.Within, sheet.RuleLineFrequency}, {"58.5 Hz", "190", sheet.Watch, sheet.RuleCombined}} {
		f := fan(t, unproven+"&new.motor-frequency=60Hz"+across(c.volts, c.volts, c.volts))
		set(t, f, "trial.t1.frequency", c.hz)
		if v := sheet.FrequencyVerdict(f, &f.New, &f.Trials[0].Reading); v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s, %s V: %+v", c.hz, c.volts, v)
		}
	}
}
