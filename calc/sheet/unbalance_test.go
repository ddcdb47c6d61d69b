package sheet_test

import (
	"slices"
	"testing"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A motor of 6.6 A of which nothing is read but what a case adds.
const unproven = "supply=three-phase&new.phases=3&new.motor-power=2 hp&new.motor-volts=208 V&new.motor-amps=6.6 A&new.service-factor=1.15&new.rotation=marked"

// The limit that is named is the one that decides: 1 % takes load off a motor, beyond
// 5 % none is to be run (NEMA MG 1, 12.45 and 14.36).
func TestVoltsNameTheLimitThatDecides(t *testing.T) {
	for _, c := range []struct {
		name, volts string
		level       sheet.Level
		limit       float64
	}{
		{"0.5 %", across("207", "208", "209"), sheet.Within, 0.01},
		{"0.95 %, a digit from 1 %", across("208.0", "210.0", "206.1"), sheet.Unjudged, 0.01},
		{"2 %", across("204", "208", "212"), sheet.Watch, 0.01},
		{"5 %, a digit either way", across("218.4", "208.0", "197.6"), sheet.Unjudged, 0.05},
		{"8.7 %", across("190", "208", "226"), sheet.Stop, 0.05},
	} {
		f := fan(t, unproven+c.volts)
		v := sheet.VoltsUnbalance(&f.Trials[0].Reading).Verdict
		if v.Level != c.level || v.Limit.Base != c.limit {
			t.Errorf("%s: level %d, held against %v", c.name, v.Level, v.Limit.Base)
		}
	}
}

// A limit by reading says how near it is; one that is guarded has no near (JCGM 106).
func TestOnlyALimitByReadingIsNear(t *testing.T) {
	f := fan(t, unproven+across("208", "210.4", "206")+legs("5.5", "5.0", "4.55"))
	r := &f.Trials[0].Reading
	if v := sheet.VoltsUnbalance(r).Verdict; v.Level != sheet.Watch || v.Near {
		t.Errorf("volts 1.1 %% apart, within 0.2: %+v", v)
	}
	if v := sheet.AmpsUnbalance(f, &f.New, r).Verdict; v.Level != sheet.Within || !v.Near {
		t.Errorf("amps 9.6 %% apart: %+v", v)
	}
	f = fan(t, unproven+across("208", "208", "208")+legs("5.53", "5.0", "4.47"))
	if v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict; v.Level != sheet.Watch || !v.Near {
		t.Errorf("amps 10.6 %% apart: %+v", v)
	}
	for name, link := range map[string]string{"4 %": legs("5.2", "5.0", "4.8"), "31 %, a stop": legs("6.0", "5.55", "3.45")} {
		f := fan(t, unproven+across("208", "208", "208")+link)
		if v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict; v.Level == sheet.Watch || v.Near {
			t.Errorf("%s: %+v", name, v)
		}
	}
}

// Amps are held against 10 % under load; far above, on even volts, against the 30 % that
// stop it (common practice).
func TestAmpsNameTheLimitThatDecides(t *testing.T) {
	for _, c := range []struct {
		name, amps string
		level      sheet.Level
		limit      float64
	}{
		{"4 %", legs("5.2", "5.0", "4.8"), sheet.Within, 0.10},
		{"15 %", legs("5.75", "5.0", "4.25"), sheet.Watch, 0.10},
		{"40 %", legs("7.0", "4.6", "3.4"), sheet.Stop, 0.30},
	} {
		f := fan(t, unproven+c.amps+across("208", "208", "208"))
		v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict
		if v.Level != c.level || v.Limit.Base != c.limit {
			t.Errorf("%s: level %d, held against %v", c.name, v.Level, v.Limit.Base)
		}
	}
}

// What three wires bring in at one instant goes out by them (Kirchhoff), and three
// voltages around a circuit add up to nothing: none is above the other two together.
func TestReadingsThatDoNotClose(t *testing.T) {
	for i, at := range [][3]string{{"14", "5.2", "5"}, {"5.2", "14", "5"}, {"5", "5.2", "14"}} {
		f := fan(t, unproven+legs(at[0], at[1], at[2]))
		r := &f.Trials[0].Reading
		faulty(t, f, "amps", sheet.AmpsUnbalance(f, &f.New, r).Share, f.KeyOf(&r.Amps[i]))
	}
	for i, at := range [][3]string{{"480", "208", "209"}, {"209", "480", "208"}, {"208", "209", "480"}} {
		f := fan(t, unproven+across(at[0], at[1], at[2]))
		r := &f.Trials[0].Reading
		faulty(t, f, "volts", sheet.VoltsUnbalance(r).Share, f.KeyOf(&r.Volts[i]))
	}
}

// Under half load an unbalance is judged by what the volts can make of it: with 1 %
// taken for even volts, 25 % (common practice). What is asked for is what would tell.
func TestLightLoadAsksForWhatTells(t *testing.T) {
	fifteen, more, light := legs("4.14", "3.50", "3.16"), legs("4.61", "3.20", "2.99"), legs("3.45", "2.90", "2.65")
	even, apart := across("208", "208", "208"), across("214", "208", "202")
	for _, c := range []struct {
		name, link string
		wants      []string
	}{
		{"15 % apart at 0.47 to 0.55 of load", fifteen + even, []string{"new.no-load-amps"}},
		{"with its no-load amps read", fifteen + even + "&new.no-load-amps=2 A", nil},
		{"15 % apart at 0.45 of load at most", light + even, nil},
		{"28 % apart and no volts", more, []string{"new.no-load-amps", "trial.t1.volts-12", "trial.t1.volts-23", "trial.t1.volts-31"}},
		{"28 % apart on volts 3 % apart", more + apart, []string{"new.no-load-amps"}},
		{"15 % apart and no volts", fifteen, []string{"new.no-load-amps"}},
	} {
		f := fan(t, unproven+c.link)
		v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict
		var wants []string
		for _, p := range v.Wanted {
			wants = append(wants, f.KeyOf(p))
		}
		if v.Level != sheet.Unjudged || v.Rule != sheet.RuleLightLoad || !slices.Equal(wants, c.wants) {
			t.Errorf("%s: level %d by %s, wants %q", c.name, v.Level, v.Rule, wants)
		}
	}
}

// Amps are judged by the volts that were read with them. Without any, those of the same
// drive's last reading stand in; the old fan's reading has none but its own.
func TestAmpsGoByTheirOwnVolts(t *testing.T) {
	apart := legs("4.61", "3.20", "2.99") // 28 % at about half load
	later := "&trial.t2.volts-12=208V&trial.t2.volts-23=208V&trial.t2.volts-31=208V"
	for _, c := range []struct {
		name, link string
		level      sheet.Level
	}{
		{"3 % of volts with them, even ones later", apart + across("214", "208", "202") + later, sheet.Unjudged},
		{"even ones later", apart + later, sheet.Watch},
	} {
		f := fan(t, unproven+c.link)
		if v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict; v.Level != c.level {
			t.Errorf("%s: level %d by %s", c.name, v.Level, v.Rule)
		}
	}
	f := fan(t, "supply=three-phase&old.motor-power=2hp&old.motor-amps=6.6A&old.amps-1=4.61A&old.amps-2=3.20A&old.amps-3=2.99A"+later)
	if v := sheet.AmpsUnbalance(f, &f.Old, &f.Old.Reading).Verdict; v.Level != sheet.Unjudged {
		t.Errorf("the old fan's amps by the new one's volts: level %d by %s", v.Level, v.Rule)
	}
}

// The leg that is farthest off is certain where the meter could make no other of it.
func TestTheLegFarthestOff(t *testing.T) {
	for amps, want := range map[string]struct {
		leg     phase.Leg
		certain bool
	}{
		legs("5.0", "5.1", "6.4"): {phase.Leg3, true},
		legs("4.0", "5.3", "5.4"): {phase.Leg1, true},
		legs("5.0", "5.5", "6.0"): {phase.Leg1, false},
	} {
		f := fan(t, unproven+amps)
		u := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading)
		if u.Certain != want.certain || u.Certain && u.Leg != want.leg {
			t.Errorf("%s: leg %d, certain %v", amps, u.Leg, u.Certain)
		}
	}
}

// What a motor makes of its supply is a ratio of unbalances: of what may be none there
// is no ratio.
func TestNothingIsMadeOfEvenVolts(t *testing.T) {
	f := fan(t, unproven+legs("5.0", "5.0", "5.0")+across("204", "208", "212"))
	r := &f.Trials[0].Reading
	faulty(t, f, "even amps", sheet.Amplification(sheet.VoltsUnbalance(r), sheet.AmpsUnbalance(f, &f.New, r)), "trial.t1.amps-1")
	f = fan(t, unproven+legs("5.0", "5.5", "6.4")+across("208.0", "208.2", "208.1"))
	r = &f.Trials[0].Reading
	faulty(t, f, "even volts", sheet.Amplification(sheet.VoltsUnbalance(r), sheet.AmpsUnbalance(f, &f.New, r)), "trial.t1.volts-12")
}

// Legs too coarsely read to be told apart ask for more turns through the clamp, and once
// those are said for no more of them.
func TestACoarseClampAsksForTurns(t *testing.T) {
	const coarse = "&trial.t1.amps-1=5.0A; within 0.6A&trial.t1.amps-2=5.6A; within 0.6A&trial.t1.amps-3=4.9A; within 0.6A"
	for turns, want := range map[string]bool{"": true, "&trial.t1.clamp-turns=1": false} {
		f := fan(t, unproven+coarse+turns)
		r := &f.Trials[0].Reading
		v := sheet.AmpsUnbalance(f, &f.New, r).Verdict
		if v.Level != sheet.Unjudged || slices.Contains(v.Wanted, record.Place(&r.ClampTurns)) != want {
			t.Errorf("%q: level %d, wants %v", turns, v.Level, v.Wanted)
		}
	}
	f := fan(t, unproven+coarse+"&trial.t1.clamp-turns=1")
	set(t, f, "new.motor-amps", "")
	if v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict; v.Level != sheet.Unjudged || len(v.Wanted) > 0 {
		t.Errorf("no plate would tell them apart: wants %v", v.Wanted)
	}
}
