package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// The belt is tensioned at the setting that is ordered; where something is to be settled
// first, where the sheave stands.
func TestTheSettingABeltIsTensionedAt(t *testing.T) {
	const fast = "target.speed=760 rpm&new.motor-amps=9 A&"
	for _, c := range []struct {
		with  string
		do    sheet.Do
		turns unit.Turns
	}{
		{"", sheet.DoStay, 3},
		{unread, sheet.DoOpen, 3},
		{unread + "new.turns=3 turns&target.speed=845 rpm", sheet.DoClose, 0},
		{fast, sheet.DoClose, 1.5},
		{fast + "trial.t1.amps-3=0.1 A", sheet.DoHold, 3},
		{fast + "trial.t1.belt-force=1 lbf", sheet.DoTension, 3},
		{"trial.t1.speed=760 rpm", sheet.DoCheck, 3},
	} {
		job := sheet.JobOf(altered(t, c.with), sixteenth, false)
		m, _ := job.Move()
		if at := job.Belt().Run.Turns; m.Do != c.do || !at.Known() || math.Abs(float64(at.Value-c.turns)) > 1e-9 {
			t.Errorf("%s: %s, tensioned at %v", c.with, m.Do, at.Value)
		}
	}
}

// A belt runs as fast as the motor turned at its reading, or else as it turned before.
func TestHowFastABeltRuns(t *testing.T) {
	for _, c := range []struct {
		with     string
		rpm, off float64
	}{
		{"new.motor-tachometer=1770 rpm&trial.t1.motor-tachometer=1760 rpm", 1760, 1e-6},
		{"new.motor-tachometer=1770 rpm", 1770, 1e-6},
		{"new.motor-tachometer=1770 rpm&trial.t1.motor-tachometer=1760 rpm&supply=drive&trial.t1.frequency=60 Hz", 1760, 1e-6},
		// 45 of 60 Hz are 1350 rpm less what 1750 stays behind 1800, at no load to at full.
		{"supply=drive&new.frequency=60 Hz&new.motor-tachometer=1745 rpm&trial.t1.frequency=45 Hz", 1325, 25.1},
	} {
		f := altered(t, c.with)
		r := sheet.RunAt(f, sheet.Setting(3), &f.Trials[0].Reading)
		if rpm := float64(r.Speed.Value) / (math.Pi * 3.4 * in) * 60; math.Abs(rpm-c.rpm) > c.off {
			t.Errorf("%s: %v rpm", c.with, rpm)
		}
	}
	f := altered(t, "new.motor-tachometer=1740 rpm")
	value(t, "as shipped", sheet.RunAt(f, sheet.Setting(3), nil).Speed, math.Pi*3.4*in*1740/60)
}

// Which diameter is asked for depends on the sheave: whether it can be set is asked first,
// unless a diameter is said.
func TestWhatABeltsRunAsksFor(t *testing.T) {
	const bare = "new.anchor-turns=&new.anchor-pitch=&new.second-anchor-turns=&new.second-anchor-pitch=&"
	for _, c := range []struct{ with, key string }{
		{unread + "new.sheave=&" + bare, "new.sheave"},
		{unread + "new.sheave=fixed&" + bare, "new.motor-sheave"},
		{unread + "new.sheave=fixed&new.motor-sheave=3.4 in&" + bare, ""},
		{unread + "new.sheave=&new.motor-sheave=3.4 in&" + bare, ""},
	} {
		f := altered(t, c.with)
		r := sheet.RunAt(f, sheet.Setting(3), nil)
		if c.key == "" {
			value(t, "pitch", r.Motor, 3.4*in)
			continue
		}
		if len(r.Motor.Wanted) == 0 || f.KeyOf(r.Motor.Wanted[0]) != c.key {
			t.Errorf("%s: %d places wanted", c.with, len(r.Motor.Wanted))
		}
	}
}

// What is no value is not gone around: a belt measured on sheaves that can't be read is not
// that of its number, nor does the base go from where it was first where the setting that it
// was moved to can't be read.
func TestABeltIsNotGuessedAround(t *testing.T) {
	f := altered(t, unread+"new.fan-sheave=!x")
	faulty(t, f, "belt", sheet.RunAt(f, sheet.Setting(3), nil).Belt, "new.fan-sheave")
	f = altered(t, "trial.t1.turns=!x")
	fits := sheet.Fits(f, sheet.RunAt(f, sheet.Setting(3), nil))
	faulty(t, f, "move", fits[0].Move, "trial.t1.turns")
}

// Touching, 4.0 and 8.4 in take 12.4 + 19.48 + 0.78 = 32.7 in of belt, 3.0 and 8.4 in 30.6:
// an A30, of 31.3 in, lies on these alone, and goes nowhere from there to those.
func TestABeltTooShortForASettingGoesNowhere(t *testing.T) {
	f := altered(t, "trial.t1.turns=5 turns&new.belt-number=A30&new.center-distance=7 in")
	x := sheet.Fits(f, sheet.RunAt(f, sheet.Setting(0), nil))[0]
	if x.Role != sheet.Fitted || x.Move.Known() || x.Verdict.Level != sheet.Stop || x.Verdict.Rule != sheet.RuleShort {
		t.Errorf("%s: goes %v, %+v", x.Name, x.Move.Value, x.Verdict)
	}
	if x = sheet.Fits(f, sheet.RunAt(f, sheet.Setting(5), nil))[0]; !x.Center.Known() {
		t.Errorf("%s: %+v", x.Name, x.Center.Fault)
	}
}
