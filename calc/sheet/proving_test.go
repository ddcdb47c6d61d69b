package sheet_test

import (
	"testing"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// motor is the example's new one with its no-load amps read.
const motor = "supply=three-phase&new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.service-factor-amps=7.6A&new.no-load-amps=2.2A"

var (
	evenVolts  = trial("t1", "volts", "208.2 V", "207.6 V", "208.8 V")
	evenAmps   = trial("t1", "amps", "5.6 A", "5.7 A", "5.5 A")
	unevenAmps = trial("t1", "amps", "6.5 A", "5.0 A", "5.0 A")
	proven     = []string{"new.rotation", "marked"}
)

func join(lists ...[]string) (all []string) {
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

// One step at a time, what is dangerous first.
func TestSteps(t *testing.T) {
	for _, c := range []struct {
		name string
		with []string
		want sheet.Step
		ask  string // the place it waits for
	}{
		{"nothing", []string{"supply", ""}, sheet.StepSupply, "supply"},
		{"a supply", nil, sheet.StepReading, ""},
		{"turned wrong before any reading", []string{"new.rotation", "reverse"}, sheet.StepExchange, ""},
		{"a reading begun", []string{"trial.t1.turns", "3 turns"}, sheet.StepVolts, "trial.t1.volts-12"},
		{"one pair of three", []string{"trial.t1.volts-23", "208 V"}, sheet.StepVolts, "trial.t1.volts-12"},
		{"volts", evenVolts, sheet.StepRotation, "new.rotation"},
		{"amps before rotation", join(evenVolts, unevenAmps), sheet.StepRotation, "new.rotation"},
		{"turned wrong", join(evenVolts, []string{"new.rotation", "reverse"}), sheet.StepExchange, ""},
		{"proven", join(evenVolts, proven), sheet.StepAmps, "trial.t1.amps-1"},
		{"two legs of three", join(evenVolts, proven, evenAmps, []string{"trial.t1.amps-2", ""}), sheet.StepAmps, "trial.t1.amps-2"},
		{"even", join(evenVolts, proven, evenAmps), sheet.StepVerdict, ""},
		{"uneven", join(evenVolts, proven, unevenAmps), sheet.StepRoll, ""},
		{"uneven on unbalanced volts", join(trial("t1", "volts", "204 V", "208 V", "212 V"), proven, unevenAmps), sheet.StepVerdict, ""},
		{"a dead leg", trial("t1", "amps", "0 A", "9.4 A", "9.5 A"), sheet.StepLost, ""},
		{"a dead leg at a fan tipped up", join(trial("t1", "amps", "0 A", "9.4 A", "9.5 A"), []string{"trial.t1.tipped-up", "yes"}), sheet.StepLost, ""},
		{"a dead leg, and it turned wrong", join(trial("t1", "amps", "0 A", "9.4 A", "9.5 A"), []string{"new.rotation", "reverse"}), sheet.StepLost, ""},
		{"a leg with a sixth of the others", trial("t1", "amps", "0.8 A", "5 A", "5 A"), sheet.StepLost, ""},
		{"that under half load, on even volts", join(evenVolts, proven, trial("t1", "amps", "0.4 A", "2.4 A", "2.4 A")), sheet.StepLost, ""},
		{"1 : 1 : 2", trial("t1", "amps", "4 A", "8 A", "4.1 A"), sheet.StepLost, ""},
		{"volts far apart, and it turned wrong", join(trial("t1", "volts", "190 V", "208 V", "226 V"), []string{"new.rotation", "reverse"}), sheet.StepVerdict, ""},
		{"above the service factor", join(evenVolts, trial("t1", "amps", "9 A", "9 A", "9 A")), sheet.StepVerdict, ""},
		{"no triangle", trial("t1", "volts", "480 V", "200 V", "200 V"), sheet.StepFault, ""},
		{"garbled leg", join(evenVolts, proven, evenAmps, []string{"trial.t1.amps-2", "!5,,7"}), sheet.StepFault, ""},
		{"garbled meter", join(evenVolts, proven, evenAmps, []string{"meter.clamp-digits", "!x"}), sheet.StepFault, ""},
		{"half a turn through the clamp", join(evenVolts, proven, evenAmps, []string{"trial.t1.clamp-turns", "1.5 turns"}), sheet.StepFault, ""},
		{"three of zero", join(evenVolts, proven, trial("t1", "amps", "0 A", "0 A", "0 A")), sheet.StepLost, ""},
		{"single-phase", []string{"supply", "single-phase", "trial.t1.turns", "1 turns"}, sheet.StepVolts, "trial.t1.volts-12"},
		{"single-phase has one of each", []string{"supply", "single-phase", "trial.t1.volts-12", "208 V", "trial.t1.amps-1", "6 A", "new.rotation", "marked"}, sheet.StepVerdict, ""},
		{"two-speed wants both", join(evenVolts, proven, []string{"supply", "two-speed"}), sheet.StepRotation, "new.rotation-low"},
		{"a drive's output lost a leg", []string{"supply", "drive", "trial.t1.amps-1", "0 A", "trial.t1.amps-2", "5 A", "trial.t1.amps-3", "5 A"}, sheet.StepLost, ""},
		{"as found", []string{"old.amps-1", "0 A", "old.amps-2", "9 A", "old.amps-3", "9 A"}, sheet.StepLost, ""},
		{"the new fan's reading goes before", []string{"old.amps-1", "0 A", "old.amps-2", "9 A", "old.amps-3", "9 A", "trial.t1.turns", "1 turns"}, sheet.StepVolts, "trial.t1.volts-12"},
	} {
		f := fan(t, motor)
		set(t, f, c.with...)
		p := sheet.Prove(f)
		if p.Next != c.want {
			t.Errorf("%s: %s, want %s; worst %+v, fault %+v", c.name, p.Next, c.want, p.Worst, p.Fault)
		}
		if got := len(p.Wanted) > 0; c.ask != "" && (!got || f.KeyOf(p.Wanted[0]) != c.ask) {
			t.Errorf("%s waits for %v, want %s", c.name, p.Wanted, c.ask)
		}
	}
}

func TestEvenIsWithin(t *testing.T) {
	f := fan(t, motor)
	set(t, f, join(evenVolts, evenAmps, proven)...)
	p := sheet.Prove(f)
	if p.Worst.Level != sheet.Within {
		t.Errorf("%+v", p.Worst)
	}
	value(t, "volts", p.LineVolts, 208.2)
	value(t, "amps", p.LineAmps, 5.6)
	value(t, "volts' unbalance", p.Volts.Share, 0.6/208.2)
	value(t, "amps' unbalance", p.Amps.Share, 0.1/5.6)
	value(t, "of plate", p.PlateVolts, 208.2/208)
	// Headroom: of 0.29 % unbalance no derating; load by two methods, 5.6 · 208.2/208
	// of 6.6 A and with half of 2.2 A taken off.
	value(t, "derating", p.Derating, 1)
	proportional, half := 5.6/6.6*208.2/208, (2*5.6-2.2)/(2*6.6-2.2)
	if got, least := float64(p.Headroom.Value), 1-max(proportional, half)-0.07; got < least || got > 1-half+0.07 || !p.Headroom.Known() {
		t.Errorf("headroom %v, load %v to %v", got, half, proportional)
	}
}

// Each leg is what the clamp showed over its turns, and so is the meter's last digit.
func TestTurnsThroughTheClamp(t *testing.T) {
	f := fan(t, motor)
	set(t, f, join(evenVolts, proven, trial("t1", "amps", "28 A", "28.5 A", "27.5 A"))...)
	if p := sheet.Prove(f); p.Worst.Level != sheet.Stop || p.Worst.Rule != sheet.RuleServiceAmps {
		t.Errorf("28 A on a motor of 6.6 A: %+v", p.Worst)
	}
	once := fan(t, motor)
	set(t, once, join(evenVolts, proven, evenAmps)...)
	set(t, f, "trial.t1.clamp-turns", "5 turns")
	p, q := sheet.Prove(f), sheet.Prove(once)
	value(t, "amps", p.LineAmps, 5.6)
	value(t, "unbalance", p.Amps.Share, 0.1/5.6)
	if p.Worst.Level != sheet.Within || p.Amps.Share.Band >= q.Amps.Share.Band || p.LineAmps.Band >= q.LineAmps.Band {
		t.Errorf("more turns tell no more: ± %v after %v; %+v", p.Amps.Share.Band, q.Amps.Share.Band, p.Worst)
	}
	value(t, "a leg", sheet.LegAmps(&f.Trials[0].Reading, 1), 5.7)
	near(t, "its band", sheet.LegAmps(&f.Trials[0].Reading, 1).Band, 5.7*0.02+0.05/5)
	set(t, f, "trial.t1.clamp-turns", "0.5 turns")
	faulty(t, f, "half a turn", sheet.LegAmps(&f.Trials[0].Reading, 1), "trial.t1.clamp-turns")
	if err := f.Place("trial.t1.clamp-turns").Set("0 turns"); err == nil || f.Place("trial.t1.clamp-turns").State() != record.Garbled {
		t.Error("no turns at all are taken")
	}
}

// What the meters' makers state decides what can be judged.
func TestMetersDecide(t *testing.T) {
	volts := trial("t1", "volts", "208 V", "206 V", "207 V") // 0.483 %
	for digits, want := range map[string]sheet.Level{"0.3 V": sheet.Within, "2 V": sheet.Unjudged, "": sheet.Within} {
		f := fan(t, motor)
		set(t, f, append(volts, "meter.voltmeter-digits", digits)...)
		if u := sheet.VoltsUnbalance(&f.Trials[0].Reading); u.Verdict.Level != want {
			t.Errorf("digits %q: %+v", digits, u.Verdict)
		}
	}
	// Its share of reading is the same for all three, but not against the plate: 1 %
	// of 188.5 V reaches across 0.9 · 208 V = 187.2 V.
	for share, want := range map[string]sheet.Level{"": sheet.Unjudged, "0.2 %": sheet.Within} {
		f := fan(t, motor)
		set(t, f, append(trial("t1", "volts", "188.5 V", "188.5 V", "188.5 V"), "meter.voltmeter-accuracy", share)...)
		r := &f.Trials[0].Reading
		if v := sheet.PlateVoltsVerdict(sheet.PlateVolts(f, &f.New, r)); v.Level != want {
			t.Errorf("share %q: %+v", share, v)
		}
		if v := sheet.VoltsUnbalance(r); v.Verdict.Level != sheet.Within {
			t.Errorf("share %q: %+v", share, v.Verdict)
		}
	}
	// A value's own band goes before the meter's.
	f := fan(t, motor)
	set(t, f, trial("t1", "volts", "208 V; within 3 V", "206 V", "207 V")...)
	if u := sheet.VoltsUnbalance(&f.Trials[0].Reading); u.Verdict.Level != sheet.Unjudged {
		t.Errorf("± 3 V: %+v", u.Verdict)
	}
	// Garbled accuracy says nothing, and so does what rests on it.
	f = fan(t, motor)
	set(t, f, append(join(volts, evenAmps), "meter.voltmeter-accuracy", "!x")...)
	faulty(t, f, "volts", sheet.VoltsUnbalance(&f.Trials[0].Reading).Share, "meter.voltmeter-accuracy")
	set(t, f, "meter.voltmeter-accuracy", "1 %", "meter.clamp-accuracy", "!x")
	faulty(t, f, "a leg", sheet.LegAmps(&f.Trials[0].Reading, 0), "meter.clamp-accuracy")
}

func TestAmpsAreJudgedAtRealLoadOnly(t *testing.T) {
	for _, c := range []struct {
		name  string
		with  []string
		level sheet.Level
		rule  sheet.Rule
		ask   string
	}{
		{"even", evenAmps, sheet.Within, sheet.RuleAmpsUnbalance, ""},
		{"uneven", unevenAmps, sheet.Watch, sheet.RuleAmpsUnbalance, ""},
		{"idle", trial("t1", "amps", "2.9 A", "2.4 A", "2.4 A"), sheet.Unjudged, sheet.RuleLightLoad, ""},
		{"perhaps under half", append(trial("t1", "amps", "4.8 A", "4.2 A", "4.0 A"), "new.no-load-amps", ""), sheet.Unjudged, sheet.RuleLightLoad, "new.no-load-amps"},
		{"even, perhaps under half", append(trial("t1", "amps", "4.2 A", "4.2 A", "4.2 A"), "new.no-load-amps", ""), sheet.Within, sheet.RuleAmpsUnbalance, ""},
		{"idle, far apart on even volts", trial("t1", "amps", "1.2 A", "2.4 A", "2.4 A"), sheet.Watch, sheet.RuleIdleAmps, ""},
		{"that with the plate not read", append(trial("t1", "amps", "1.2 A", "2.4 A", "2.4 A"), "new.motor-amps", ""), sheet.Watch, sheet.RuleIdleAmps, ""},
		{"that on volts not read", append(trial("t1", "amps", "1.4 A", "2.8 A", "2.8 A"), "trial.t1.volts-12", "", "trial.t1.volts-23", "", "trial.t1.volts-31", ""), sheet.Unjudged, sheet.RuleLightLoad, "trial.t1.volts-12"},
		{"plate not read", append(unevenAmps, "new.motor-amps", ""), sheet.Unjudged, sheet.RuleAmpsUnbalance, "new.motor-amps"},
		{"even, plate not read", append(evenAmps, "new.motor-amps", ""), sheet.Within, sheet.RuleAmpsUnbalance, ""},
		{"tipped up", append(unevenAmps, "trial.t1.tipped-up", "yes"), sheet.Unjudged, sheet.RuleAmpsUnbalance, "trial.t1.tipped-up"},
		{"a drive's output", append(unevenAmps, "supply", "drive"), sheet.Watch, sheet.RuleOutputAmps, ""},
		{"a drive's even output", append(evenAmps, "supply", "drive"), sheet.Within, sheet.RuleAmpsUnbalance, ""},
	} {
		f := fan(t, motor)
		set(t, f, join(evenVolts, c.with)...)
		v := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading).Verdict
		if v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: %+v, fault %+v", c.name, v, v.Fault)
		}
		if got := len(v.Wanted) > 0; got != (c.ask != "") || got && f.KeyOf(v.Wanted[0]) != c.ask {
			t.Errorf("%s asks for %v, want %q", c.name, v.Wanted, c.ask)
		}
	}
}

// NEMA MG 1, Figure 14-1 (memory): 0.95 at 2 %, 0.98 to 0.93 as read; the meter makes
// 1.8 to 2.1 % of 204, 208 and 212 V.
func TestDeratingTakesHeadroom(t *testing.T) {
	f := fan(t, motor)
	set(t, f, join(trial("t1", "volts", "204 V", "208 V", "212 V"), evenAmps)...)
	p := sheet.Prove(f)
	near(t, "derating", p.Derating.Value, 1-0.05*(100*4./208-1))
	if p.Derating.Band < 0.01 || p.Derating.Band > 0.04 {
		t.Errorf("± %v", p.Derating.Band)
	}
	near(t, "headroom", p.Headroom.Value, float64(p.Derating.Value-p.Load.Value))
	set(t, f, trial("t1", "amps", "7.4 A", "7.4 A", "7.4 A")...)
	if v := sheet.Prove(f).OfLegs; v.Level != sheet.Stop || !v.Less {
		t.Errorf("above the plate on a poor supply: %+v", v)
	}
	set(t, f, trial("t1", "volts", "190 V", "208 V", "226 V")...)
	p = sheet.Prove(f)
	if p.Derating.Known() || p.Headroom.Known() || p.Worst.Level != sheet.Stop || p.Worst.Rule != sheet.RuleUnbalance {
		t.Errorf("8.7 %%: %v, %v, %+v", p.Derating.Known(), p.Headroom.Known(), p.Worst)
	}
}

// DOE Tip Sheet 7: 27.7 % of amps on 2.5 % of volts is 11.1; 6 to 10 is usual.
func TestAmplification(t *testing.T) {
	f := fan(t, loaded)
	set(t, f, join(trial("t1", "volts", "205 V", "200 V", "195 V"), trial("t1", "amps", "12.77 A", "10 A", "7.23 A"))...)
	r := &f.Trials[0].Reading
	volts, amps := sheet.VoltsUnbalance(r), sheet.AmpsUnbalance(f, &f.New, r)
	k := sheet.Amplification(volts, amps)
	value(t, "amplification", k, 0.277/0.025)
	if made := sheet.MadeOf(k); made != sheet.MadeMore {
		t.Errorf("11 times is %s", made)
	}
	set(t, f, trial("t1", "amps", "11 A", "10 A", "9 A")...)
	if made := sheet.MadeOf(sheet.Amplification(volts, sheet.AmpsUnbalance(f, &f.New, r))); made != sheet.MadeLess {
		t.Errorf("4 times is %s", made)
	}
	for _, c := range []struct {
		value, band unit.Ratio
		want        sheet.Made
	}{{8, 1, sheet.MadeUsual}, {8, 3, sheet.MadeMaybe}, {9, 2, sheet.MadeMaybe}, {12, 3, sheet.MadeMaybe}, {12, 1, sheet.MadeMore}, {4, 1, sheet.MadeLess}, {6, 0, sheet.MadeUsual}, {10, 0, sheet.MadeUsual}, {8, 2, sheet.MadeUsual}, {5, 1, sheet.MadeMaybe}, {5, 2, sheet.MadeMaybe}, {11, 1, sheet.MadeMaybe}} {
		if made := sheet.MadeOf(sheet.Answer[unit.Ratio]{Value: c.value, Band: c.band}); made != c.want {
			t.Errorf("%v ± %v is %s, want %s", c.value, c.band, made, c.want)
		}
	}
	set(t, f, trial("t1", "volts", "200 V", "200 V", "200 V")...)
	if k := sheet.Amplification(sheet.VoltsUnbalance(r), amps); k.Known() || k.Fault == nil {
		t.Errorf("on balanced volts: %+v", k)
	}
}

func TestConnection(t *testing.T) {
	for _, c := range []struct {
		volts, amps string
		want        []sheet.Rule
	}{
		{"208 V", "5.6 A", nil},
		{"415 V", "", []sheet.Rule{sheet.RuleDoubleVolts}},
		{"104 V", "", []sheet.Rule{sheet.RuleHalfVolts}},
		{"208 V", "13.2 A", []sheet.Rule{sheet.RuleDoubleAmps}},
		{"208 V", "3.3 A", []sheet.Rule{sheet.RuleHalfAmps}},
	} {
		f := fan(t, motor)
		set(t, f, join(trial("t1", "volts", c.volts, c.volts, c.volts), trial("t1", "amps", c.amps, c.amps, c.amps))...)
		r := &f.Trials[0].Reading
		got := sheet.ConnectionVerdicts(f, &f.New, r, r)
		if len(got) != len(c.want) || len(got) > 0 && got[0].Rule != c.want[0] {
			t.Errorf("%s, %s: %+v", c.volts, c.amps, got)
		}
	}
}

func TestApparentRealAndShaft(t *testing.T) {
	// US DOE fact sheet on motor load: 469.7 V, 37 A, power factor 0.763.
	f := fan(t, "supply=three-phase&new.power-factor=0.763&new.motor-amps=50A&new.motor-power=40hp&meter.clamp-accuracy=0%25&meter.clamp-digits=0A&meter.voltmeter-accuracy=0%25&meter.voltmeter-digits=0V")
	set(t, f, join(trial("t1", "volts", "469.7 V", "469.7 V", "469.7 V"), trial("t1", "amps", "37 A", "37 A", "37 A"))...)
	r := &f.Trials[0].Reading
	near(t, "apparent", sheet.Apparent(f, r).Value, 1.7320508075688772*469.7*37)
	power := sheet.RealPower(f, &f.New, r)
	if !power.Known() || power.High() < 22900*unit.Watt || power.High() > 23000*unit.Watt || power.Low() < power.High()/1.31 {
		t.Errorf("real power %v to %v W", power.Low(), power.High())
	}
	// Textbook companion set, example 1.1: 230 V, 7 A, 0.8, 0.836 give 1865 W on three
	// phases; on one 1/√3 of it.
	f = fan(t, "supply=single-phase&new.power-factor=0.8&new.efficiency=83.6%25&trial.t1.volts-12=230V&trial.t1.amps-1=7A")
	r = &f.Trials[0].Reading
	near(t, "apparent of one phase", sheet.Apparent(f, r).Value, 230*7)
	shaft := sheet.ShaftPower(f, &f.New, r)
	most := 230 * 7 * 0.8 * 0.836
	near(t, "shaft", shaft.Value, (most+most/1.3)/2)
	wants(t, f, "without efficiency", func() sheet.Answer[unit.Power] {
		set(t, f, "new.efficiency", "")
		return sheet.ShaftPower(f, &f.New, r)
	}(), "new.efficiency")
}

// The dial at plate amps; above it only as the relay's instructions have it; above
// the code's trip current never.
func TestOverloadDial(t *testing.T) {
	for dial, want := range map[string]sheet.Level{"6.6 A": sheet.Within, "6 A": sheet.Within, "7 A": sheet.Watch, "8.25 A": sheet.Watch, "8.3 A": sheet.Stop, "": sheet.Unjudged} {
		f := fan(t, motor+"&new.service-factor=1.15")
		set(t, f, "new.overload-dial", dial)
		if v := sheet.OverloadOf(f).Verdict; v.Level != want {
			t.Errorf("%q: %+v", dial, v)
		}
	}
	f := fan(t, motor+"&new.service-factor=1")
	value(t, "service factor 1", sheet.OverloadOf(f).Trip, 6.6*1.15)
	if !sheet.OverloadOf(f).AsksRise {
		t.Error("a low rise is not asked for")
	}
	set(t, f, "new.rise-40", "yes")
	value(t, "40 °C rise", sheet.OverloadOf(f).Trip, 6.6*1.25)
	// NFPA 70, 430.32(B)(1) and (D)(1): 1 hp or less goes by the same shares.
	set(t, f, "new.motor-power", "1 hp")
	if o := sheet.OverloadOf(f); !o.Small {
		t.Errorf("1 hp: %+v", o)
	}
	value(t, "1 hp", sheet.OverloadOf(f).Trip, 6.6*1.25)
}

// Under what the motor draws it will trip: 6.5 A within 0.18 A of a usual clamp.
func TestOverloadDialUnderTheAmps(t *testing.T) {
	for _, c := range []struct {
		name, dial string
		with       []string
		level      sheet.Level
		rule       sheet.Rule
	}{
		{"well under", "5 A", unevenAmps, sheet.Watch, sheet.RuleOverloadLow},
		{"within the clamp", "6.4 A", unevenAmps, sheet.Unjudged, sheet.RuleOverloadLow},
		{"above them", "6.6 A", evenAmps, sheet.Within, sheet.RuleOverloadDial},
		{"above the plate goes before", "7 A", trial("t1", "amps", "7.5 A", "7.5 A", "7.5 A"), sheet.Watch, sheet.RuleOverloadDial},
		{"no amps", "5 A", evenVolts, sheet.Within, sheet.RuleOverloadDial},
		{"a lost phase", "5 A", trial("t1", "amps", "0 A", "9 A", "9 A"), sheet.Within, sheet.RuleOverloadDial},
		{"tipped up", "5 A", append(unevenAmps, "trial.t1.tipped-up", "yes"), sheet.Within, sheet.RuleOverloadDial},
	} {
		f := fan(t, motor+"&new.service-factor=1.15")
		set(t, f, append(c.with, "new.overload-dial", c.dial)...)
		if v := sheet.OverloadOf(f).Verdict; v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: %+v", c.name, v)
		}
	}
	f := fan(t, motor+"&new.service-factor=1.15&new.overload-dial=5A")
	set(t, f, join(evenVolts, proven, evenAmps)...)
	if p := sheet.Prove(f); p.Worst.Rule != sheet.RuleOverloadLow || p.Worst.Level != sheet.Watch {
		t.Errorf("all else in order: %+v", p.Worst)
	}
}

func TestReversal(t *testing.T) {
	for supply, want := range map[string]phase.Swap{"three-phase": phase.SwapTwoLines, "single-phase": phase.SwapStartingLeads, "drive": phase.SwapDriveOutput, "two-speed": phase.SwapEachSpeed, "direct": phase.SwapByMaker, "": ""} {
		f := record.NewFan()
		set(t, f, "supply", supply)
		if got := sheet.Reversal(f); got != want {
			t.Errorf("%s: %s", supply, got)
		}
	}
}

// It is proven for the leads that it was bumped with: moved on it turns the same way,
// exchanged the other way. Where nobody said which they were, they were as marked.
func TestRotationIsProvenForItsLeads(t *testing.T) {
	for _, c := range []struct {
		leads, at, way string
		want           sheet.Level
		rule           sheet.Rule
	}{
		{"", "", "marked", sheet.Within, sheet.RuleRotation},
		{"3-1-2", "", "marked", sheet.Within, sheet.RuleRotation},
		{"3-1-2", "2-3-1", "marked", sheet.Within, sheet.RuleRotation},
		{"2-1-3", "", "marked", sheet.Unjudged, sheet.RuleRotationLeads},
		{"2-1-3", "1-3-2", "marked", sheet.Within, sheet.RuleRotation},
		{"1-2-3", "2-1-3", "marked", sheet.Unjudged, sheet.RuleRotationLeads},
		{"2-1-3", "", "reverse", sheet.Unjudged, sheet.RuleRotationLeads},
		{"2-1-3", "2-1-3", "reverse", sheet.Stop, sheet.RuleRotation},
		{"!9", "", "marked", sheet.Unjudged, sheet.RuleRotation},
		{"2-1-3", "", "", sheet.Unjudged, sheet.RuleRotation},
	} {
		f := fan(t, motor)
		set(t, f, "new.leads", c.leads, "new.rotation-leads", c.at, "new.rotation", c.way)
		if v := sheet.RotationVerdict(f); v.Level != c.want || v.Rule != c.rule {
			t.Errorf("%q, bumped with %q, %q: %+v", c.leads, c.at, c.way, v)
		}
	}
	// Both speeds were proven before the exchange; one bump proves one of them.
	f := fan(t, "supply=two-speed&new.rotation=marked&new.rotation-low=marked&new.leads=2-1-3")
	if v := sheet.RotationVerdict(f); v.Level != sheet.Unjudged || len(v.Wanted) != 2 {
		t.Errorf("two speeds: %+v", v)
	}
	if err := sheet.RotationSeen(f, &f.New.RotationLow, record.MarkedWay); err != nil {
		t.Error(err)
	}
	if v := sheet.RotationVerdict(f); v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "new.rotation" {
		t.Errorf("one of two speeds: %+v", v)
	}
}

// NEMA MG 1, 12.44 (memory): 5 % of frequency, 10 % of volts. A plate of 60 Hz at
// its own volts on 50 Hz has 1.2 times the volts per hertz; at 5/6 of them as many.
func TestAnotherFrequency(t *testing.T) {
	for _, c := range []struct {
		name, plate, speed, line, volts string
		want                            sheet.Level
		rule                            sheet.Rule
	}{
		{"its own", "60 Hz", "", "60 Hz", "208 V", sheet.Within, sheet.RuleLineFrequency},
		{"a generator's", "60 Hz", "", "57.5 Hz", "208 V", sheet.Within, sheet.RuleLineFrequency},
		{"60 on 50", "60 Hz", "", "50 Hz", "208 V", sheet.Stop, sheet.RuleFlux},
		{"60 on 50 by its speed", "", "1750 rpm", "50 Hz", "208 V", sheet.Stop, sheet.RuleFlux},
		{"60 on 50 at 5/6 of the volts", "60 Hz", "", "50 Hz", "173 V", sheet.Watch, sheet.RuleLineFrequency},
		{"50 on 60", "50 Hz", "", "60 Hz", "208 V", sheet.Watch, sheet.RuleLineFrequency},
		{"volts not read", "60 Hz", "", "50 Hz", "", sheet.Watch, sheet.RuleLineFrequency},
		{"no plate", "", "", "50 Hz", "208 V", sheet.Unjudged, sheet.RuleLineFrequency},
	} {
		f := fan(t, motor)
		set(t, f, "new.motor-frequency", c.plate, "new.motor-speed", c.speed, "trial.t1.frequency", c.line)
		set(t, f, trial("t1", "volts", c.volts, c.volts, c.volts)...)
		if v := sheet.FrequencyVerdict(f, &f.New, &f.Trials[0].Reading); v.Level != c.want || v.Rule != c.rule {
			t.Errorf("%s: %+v", c.name, v)
		}
	}
	f := fan(t, motor+"&new.motor-frequency=60Hz&trial.t1.frequency=50Hz")
	set(t, f, join(evenVolts, evenAmps, proven)...)
	if p := sheet.Prove(f); p.Worst.Rule != sheet.RuleFlux {
		t.Errorf("all else in order: %+v", p.Worst)
	}
	set(t, f, "supply", "drive")
	if v := sheet.FrequencyVerdict(f, &f.New, &f.Trials[0].Reading); v.Level != sheet.Unjudged || sheet.Prove(f).Worst.Rule == sheet.RuleFlux {
		t.Errorf("what a drive puts out: %+v", v)
	}
	// The side's own, where the reading has none.
	f = fan(t, motor+"&new.motor-frequency=60Hz&new.frequency=50Hz")
	set(t, f, evenVolts...)
	if p := sheet.Prove(f); p.OfFrequency.Level != sheet.Stop {
		t.Errorf("of the side: %+v", p.OfFrequency)
	}
}

// At plate amps this motor gives 2 hp, 1491 W. At 208 V and 6.6 A a power factor of 0.8
// has it take 1902 W, 0.84 of which is more; one of 0.6 leaves 1427 W, less than it
// gives.
func TestPowerTakenAndGiven(t *testing.T) {
	for _, c := range []struct {
		factor, efficiency string
		want               sheet.Level
	}{{"0.8", "84 %", sheet.Within}, {"0.8", "", sheet.Within}, {"0.6", "84 %", sheet.Watch}, {"0.55", "", sheet.Watch}, {"0.66", "", sheet.Within}, {"0.66", "84 %", sheet.Watch}, {"", "84 %", sheet.Unjudged}} {
		f := fan(t, motor+"&meter.clamp-accuracy=0%25&meter.clamp-digits=0A&meter.voltmeter-accuracy=0%25&meter.voltmeter-digits=0V")
		set(t, f, "new.power-factor", c.factor, "new.efficiency", c.efficiency)
		set(t, f, join(trial("t1", "volts", "208 V", "208 V", "208 V"), trial("t1", "amps", "6.6 A", "6.6 A", "6.6 A"))...)
		p := sheet.Prove(f)
		if p.OfEfficiency.Level != c.want {
			t.Errorf("power factor %s, efficiency %s: %+v", c.factor, c.efficiency, p.OfEfficiency)
		}
		if said := p.Worst.Rule == sheet.RuleEfficiency; said != (c.want == sheet.Watch) {
			t.Errorf("power factor %s, efficiency %s: the worst is %+v", c.factor, c.efficiency, p.Worst)
		}
	}
}
