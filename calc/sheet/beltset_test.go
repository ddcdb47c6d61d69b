package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
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
		job := sheet.JobOf(changed(t, c.with), sixteenth, false)
		m, _ := job.Move()
		if at := job.Belt().Run.Turns; m.Do != c.do || !at.Known() || math.Abs(float64(at.Value-c.turns)) > 1e-9 {
			t.Errorf("%s: %s, tensioned at %v", c.with, m.Do, at.Value)
		}
	}
}

// A belt runs as fast as the motor turned at its reading, or else as it turned before.
func TestHowFastABeltRuns(t *testing.T) {
	for _, c := range []struct {
		with string
		rpm  float64
	}{
		{"new.motor-tachometer=1740 rpm&trial.t1.motor-tachometer=1720 rpm", 1720},
		{"new.motor-tachometer=1740 rpm", 1740},
		{"new.motor-tachometer=1740 rpm&trial.t1.motor-tachometer=1720 rpm&supply=inverter&trial.t1.frequency=60 Hz", 1720},
		{"supply=inverter&new.frequency=60 Hz&new.motor-tachometer=1745 rpm&trial.t1.frequency=45 Hz", 1302.5}, // 5 rpm of slip, of 1800, 27.5 of 55
	} {
		f := changed(t, c.with)
		r := sheet.RunAt(f, sheet.Setting(3), &f.Trials[0].Reading)
		if rpm := float64(r.Speed.Value) / (math.Pi * 3.4 * in) * 60; math.Abs(rpm-c.rpm) > 15 {
			t.Errorf("%s: %v rpm", c.with, rpm)
		}
	}
	f := changed(t, "new.motor-tachometer=1740 rpm")
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
	} {
		f := changed(t, c.with)
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

// A later reading that says no setting is of the same one; a fixed sheave is never moved.
func TestAGapAtASettingThatIsNotSaid(t *testing.T) {
	for _, with := range []string{"new.sheave=fixed&new.motor-sheave=3.4 in&trial.t1.turns=&trial.t2.turns=3 turns", "trial.t1.turns=3 turns&trial.t2.speed=716 rpm"} {
		f := changed(t, with)
		if read, v := sheet.AlignmentNow(f); read != f.Trials[0] || v.Level != sheet.Within {
			t.Errorf("%s: %+v", with, v)
		}
	}
}

// A gap can't be judged where the span is not known, or can't be; nor one that is no value.
func TestAGapAsksForItsSpan(t *testing.T) {
	for _, c := range []struct {
		with, key string
		fault     bool
	}{
		{"new.fan-sheave=", "new.fan-sheave", false},
		{"new.fan-sheave=!x", "new.fan-sheave", true},
		{"trial.t1.alignment-gap=!x", "trial.t1.alignment-gap", true},
	} {
		f := changed(t, c.with)
		v, ok := sheet.Named(sheet.JobOf(f, sixteenth, false).Stands(sheet.OfBelt), "align.gap")
		var place record.Place
		if len(v.Wanted) > 0 {
			place = v.Wanted[0]
		}
		if !ok || v.Level != sheet.Unjudged || f.KeyOf(place) != c.key || c.fault != (v.Fault != nil) {
			t.Errorf("%s: %v, %+v", c.with, ok, v)
		}
	}
}
