package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// alarms are those of the example's new drive with a reading at three turns open: a motor of
// 6.6 A on its plate and 7.6 A with its service factor.
func alarms(t *testing.T, texts ...string) map[sheet.Rule]sheet.Level {
	t.Helper()
	f := demo(t)
	set(t, f, append([]string{"trial.t1.turns", "3 turns", "trial.t1.speed", "700 rpm"}, texts...)...)
	got := map[sheet.Rule]sheet.Level{}
	for _, v := range sheet.Alarms(f) {
		got[v.Rule] = v.Level
	}
	return got
}

func TestAlarms(t *testing.T) {
	legs := func(a, b, c string) []string {
		return []string{"trial.t1.amps-1", a + " A", "trial.t1.amps-2", b + " A", "trial.t1.amps-3", c + " A"}
	}
	for _, c := range []struct {
		name  string
		texts []string
		rule  sheet.Rule
		level sheet.Level
	}{
		{"a dead leg", legs("0", "7.4", "7.3"), sheet.RuleLostPhase, sheet.Stop},
		{"a dead leg of two that were read", []string{"trial.t1.amps-1", "0 A", "trial.t1.amps-2", "7.4 A"}, sheet.RuleLostPhase, sheet.Stop},
		{"three legs where one phase was said", append(legs("0", "7.4", "7.3"), "supply", "single-phase"), sheet.RuleLostPhase, sheet.Stop},
		{"two dead legs", legs("5", "0", "0"), sheet.RulePairOpen, sheet.Stop},
		{"three dead legs", legs("0", "0", "0"), sheet.RuleNoAmps, sheet.Stop},
		{"1 : 1 : 2", legs("4", "4", "8.1"), sheet.RuleLostPhase, sheet.Stop},
		{"one leg above the service factor", legs("5", "5", "9"), sheet.RuleServiceAmps, sheet.Stop},
		{"one leg above the plate", legs("6", "6", "7.1"), sheet.RulePlateAmps, sheet.Watch},
		{"single-phase", []string{"supply", "single-phase", "trial.t1.amps-1", "8 A"}, sheet.RuleServiceAmps, sheet.Stop},
		{"a drive's output has no service factor", append(legs("7", "7", "7"), "supply", "drive"), sheet.RuleServiceVoid, sheet.Stop},
		{"at a fan tipped up", append(legs("8", "8", "8"), "trial.t1.tipped-up", "yes"), sheet.RuleTippedUp, sheet.Watch},
		{"twice what the drive gives", []string{"trial.t1.speed", "1410 rpm"}, sheet.RuleHarmonic, sheet.Stop},
	} {
		if got := alarms(t, c.texts...); got[c.rule] != c.level {
			t.Errorf("%s: %v", c.name, got)
		}
	}
	if got := alarms(t, "supply", "single-phase", "trial.t1.amps-1", "6.4 A", "trial.t1.amps-2", "0 A"); len(got) != 0 {
		t.Errorf("one wire of a phase, clamped at two places: %v", got)
	}
	if got := alarms(t, legs("4.4", "4.5", "4.3")...); len(got) != 0 {
		t.Errorf("a sound reading: %v", got)
	}
}

// What wide bands leave of a loss is can't judge, of the leg it is about: one that may be
// failing by its own rule, one of about double what the others carry by the pattern's. A
// motor of one phase on three lines has a leg that carries nothing.
func TestALossWithinTheBands(t *testing.T) {
	for _, c := range []struct {
		amps []string
		rule sheet.Rule
	}{
		{trial("t1", "amps", "5 A", "5 A", "0.5 A; within 1 A"), sheet.RuleNearlyOpen},
		{trial("t1", "amps", "4 A; within 1 A", "4 A; within 1 A", "8 A; within 1 A"), sheet.RuleLostPhase},
	} {
		f := fan(t, unproven)
		set(t, f, c.amps...)
		r := &f.Trials[0].Reading
		if v := sheet.LostVerdict(r); v.Level != sheet.Unjudged || v.Rule != c.rule || len(v.Wanted) != 1 || v.Wanted[0] != &r.Amps[2] {
			t.Errorf("%v: %+v", c.amps, v)
		}
	}
	for phases, lost := range map[string]bool{"3": true, "1": false} {
		f := fan(t, unproven+legs("0", "5", "5"))
		set(t, f, "new.phases", phases)
		if _, has := sheet.Named(sheet.Alarms(f), "amps.lost"); has != lost || sheet.Rolls(f) != lost {
			t.Errorf("plated for %s: lost %v, rolls %v", phases, has, sheet.Rolls(f))
		}
	}
}

// A leg that was not read is no dead leg: what the others carry evenly tells no loss.
func TestALegNotReadIsNotDead(t *testing.T) {
	for _, read := range [][]string{{"1"}, {"2"}, {"3"}, {"1", "2"}, {"2", "3"}, {"1", "3"}} {
		f := fan(t, unproven+"&trial.t1.turns=1")
		for _, leg := range read {
			set(t, f, "trial.t1.amps-"+leg, "5 A")
		}
		if v := sheet.LostVerdict(&f.Trials[0].Reading); v.Level != sheet.Within {
			t.Errorf("legs %v: %+v", read, v)
		}
	}
}

// A lost phase tells no load and withholds the move; so does a reading that the
// drive can't give, which scales nothing either.
func TestWhatCantBeIsNotUsed(t *testing.T) {
	f := demo(t)
	for _, texts := range [][]string{
		{"trial.t1.turns", "3 turns", "trial.t1.speed", "1410 rpm"},
		{"trial.t1.speed", "", "trial.t1.amps-1", "0 A", "trial.t1.amps-2", "7.4 A", "trial.t1.amps-3", "7.3 A"},
	} {
		set(t, f, texts...)
		table := sheet.TurnsTable(f)
		if m, _ := sheet.NextMove(f, table); m.Do != sheet.DoHold {
			t.Errorf("%v: the move is %s", texts, m.Do)
		}
		if table.From != sheet.FromSheaves {
			t.Errorf("%v: the table is from %q", texts, table.From)
		}
		if b := sheet.FanBasis(f); len(texts) > 4 && b.Known() {
			t.Errorf("%v: power is carried from it", texts)
		}
	}
}

// Looked at is what the fan does, not what it should: a fixed sheave's own
// speed, or where the sheave stands when no setting reaches the target.
func TestPlannedSpeedIsTheDrives(t *testing.T) {
	f := demo(t)
	set(t, f, "target.speed", "1000 rpm", "target.power", "")
	table := sheet.TurnsTable(f)
	if table.Set >= 0 {
		t.Fatal("a setting reaches 1000 rpm")
	}
	value(t, "none reaches", sheet.PlannedSpeed(f, table), 1750*4/8.4)
	set(t, f, "new.sheave", "fixed", "new.motor-sheave", "6 in")
	value(t, "fixed", sheet.PlannedSpeed(f, sheet.TurnsTable(f)), 1750*6/8.4)
	set(t, f, "new.fan-sheave", "")
	wants(t, f, "no fan sheave", sheet.PlannedSpeed(f, sheet.TurnsTable(f)), "new.fan-sheave")
}

// On a drive at 45 Hz a motor of 60 Hz gives its plate's torque and three
// quarters of its power, so that a share of plate power takes 60/45 of the amps
// in proportion: by hand 1.15 hp at 712 rpm carried to the row's speed, on a
// 2 hp motor of 6.6 A.
func TestAmpsOnADriveGoByTorque(t *testing.T) {
	f := demo(t)
	set(t, f, "supply", "drive", "new.frequency", "45 Hz", "coldest-air", "", "new.no-load-amps", "0.001 A")
	row := sheet.TurnsTable(f).Rows[0]
	n := float64(row.Speed)
	want := 6.6 * 1.15 / 2 * (n / 712) * (n / 712) * (n / 712) * 60 / 45
	if got := float64(row.AmpsHigh.V); !row.AmpsHigh.Known || got < want*0.98 || got > want*1.02 {
		t.Errorf("at %v rpm at most %v A, by hand %v", n, got, want)
	}
}

// 7.7 A within 0.2 of a usual clamp: above the plate's 6.6 A for certain, and perhaps
// above the service-factor amps of 7.6 A.
func TestNearTheServiceFactorAmps(t *testing.T) {
	for most, want := range map[string]struct {
		rule  sheet.Rule
		level sheet.Level
	}{"7.7 A": {sheet.RuleServiceNear, sheet.Watch}, "7.5 A": {sheet.RuleServiceNear, sheet.Watch}, "7.1 A": {sheet.RulePlateAmps, sheet.Watch}, "7.9 A": {sheet.RuleServiceAmps, sheet.Stop}} {
		f := fan(t, motor)
		set(t, f, join(evenVolts, proven, trial("t1", "amps", most, "7 A", "7 A"))...)
		if v := sheet.Prove(f).OfLegs; v.Rule != want.rule || v.Level != want.level {
			t.Errorf("%s: %+v", most, v)
		} else if v.Rule == sheet.RuleServiceNear {
			near(t, "limit", v.Limit.Base, 7.6)
		}
	}
}

// What unbalanced volts take off the plate is said of the limit: 0.95 at 2 %.
func TestALessenedPlateIsCalledSo(t *testing.T) {
	for _, c := range []struct {
		volts, amps []string
		less        bool
	}{
		{trial("t1", "volts", "204 V", "208 V", "212 V"), evenAmps, true},
		{trial("t1", "volts", "204 V", "208 V", "212 V"), trial("t1", "amps", "6.4 A", "6.4 A", "6.4 A"), true},
		{trial("t1", "volts", "204 V", "208 V", "212 V"), trial("t1", "amps", "7.4 A", "7.4 A", "7.4 A"), true},
		{evenVolts, evenAmps, false},
		{evenVolts, trial("t1", "amps", "8 A", "8 A", "8 A"), false},
	} {
		f := fan(t, motor)
		set(t, f, join(c.volts, c.amps)...)
		if v := sheet.Prove(f).OfLegs; v.Less != c.less || v.Less && v.Limit.Base >= 6.6 {
			t.Errorf("%v: %+v", c.amps, v)
		}
	}
}
