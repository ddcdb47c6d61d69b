package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// swap is an old motor read at 690 rpm and 5.5 A, both motors' no-load amps
// read, and another new motor. Nothing has a band.
const swap = "supply=three-phase&same-wheel=yes&old.speed=690rpm;within 0rpm&old.amps-1=5.5A;within 0A&old.no-load-amps=2.8A;within 0A" +
	"&old.motor-power=2hp&old.motor-amps=6.6A&new.motor-power=3hp&new.motor-amps=9.2A&new.no-load-amps=4A;within 0A&new.service-factor-amps=10.4A&new.wheel-max-speed=1080rpm"

func speedAt(t testing.TB, f *record.Fan, rpm string) sheet.Answer[unit.Speed] {
	set(t, f, "want.speed", rpm)
	return sheet.PlannedSpeed(f, sheet.TurnsTable(f))
}

func TestAmpsGoByPowerAndNeverByTheirCube(t *testing.T) {
	f := fan(t, swap)
	k := math.Pow(760./690, 3)
	proportional := 5.5 / 6.6 * 2 * k / 3 * 9.2
	half := (2*5.5-2.8)/(2*6.6-2.8)*2*k/3*(9.2-2) + 2
	if cube := 5.5 * k; math.Abs(cube-half) < 0.2 || math.Abs(cube-proportional) < 0.2 {
		t.Fatal("the case does not tell the cube of amps apart")
	}
	b := sheet.FanBasis(f)
	speed := speedAt(t, f, "760 rpm")
	a := sheet.NewAmps(f, b, speed, sheet.PlannedAir(f))
	value(t, "amps", a, (proportional+half)/2)
	near(t, "apart", a.Band, math.Abs(proportional-half)/2)
	load := (5.5/6.6 + (2*5.5-2.8)/(2*6.6-2.8)) / 2
	value(t, "old load", sheet.OldAmpsLoad(f), load)
	value(t, "old power", sheet.OldPower(f), load*2*watt)
	value(t, "new load", sheet.NewLoad(f, b, speed, sheet.PlannedAir(f)), load*2*k/3)

	// 202 V measured: the old plate says 208, the new one 230.
	set(t, f, "old.volts-12", "202 V; within 0 V", "old.motor-volts", "208 V", "new.motor-volts", "230 V")
	low := 5.5 / 6.6 * 202 / 208 * 2 * k / 3 * 9.2 * 230 / 202
	b = sheet.FanBasis(f)
	a = sheet.NewAmps(f, b, speed, sheet.PlannedAir(f))
	near(t, "low or high with volts", max(float64(a.High()), 0), max(low, half))
	near(t, "the other", a.Low(), min(low, half))

	// Read in 20 °F air, to run in 95 °F air.
	set(t, f, "old.air-temperature", "20 F", "want.air-temperature", "95 F", "old.volts-12", "")
	thin := (20 + 459.67) / (95 + 459.67)
	b = sheet.FanBasis(f)
	a = sheet.NewAmps(f, b, speed, sheet.PlannedAir(f))
	near(t, "in warm air", max(a.High(), a.Low()), max(proportional*thin, (half-2)*thin+2))
	f.Place("want.air-temperature").Set("!warm")
	faulty(t, f, "in garbled air", sheet.NewAmps(f, b, speed, sheet.PlannedAir(f)), "want.air-temperature")
}

// What was read at a setting is what is said of that setting.
func TestAmpsOfAReadingComeBack(t *testing.T) {
	for _, noLoad := range []string{"", "2.9 A; within 0 A"} {
		f := fan(t, bench+"&trial.a.turns=2&trial.a.speed=700rpm&trial.a.amps-1=5.2A;within 0A&trial.a.amps-2=5.4A;within 0A&trial.a.amps-3=5A;within 0A")
		set(t, f, "new.no-load-amps", noLoad, "old.speed", "500 rpm", "old.amps-1", "9 A", "old.motor-amps", "9 A", "old.motor-power", "5 hp")
		table := sheet.TurnsTable(f)
		r := table.Rows[4]
		near(t, "low", r.AmpsLow.V, 5.2)
		near(t, "high", r.AmpsHigh.V, 5.2)
		near(t, "share", r.LoadHigh.V, 5.2/6.6)
		if table.Basis.From != sheet.FromTrialAmps {
			t.Errorf("from %s", table.Basis.From)
		}
		// At a closed sheave the methods part: 4.0 over 3.6 in, cubed, less some slip.
		if r0 := table.Rows[0]; !(r0.AmpsLow.V > 5.2*1.2 && r0.AmpsHigh.V > r0.AmpsLow.V && float64(r0.AmpsHigh.V) < 5.2*math.Pow(4/3.6, 3)*1.0001) {
			t.Errorf("closed: %v to %v A", r0.AmpsLow.V, r0.AmpsHigh.V)
		}
		// Amps that a fan tipped up gives are not its load.
		set(t, f, "trial.b.turns", "2 turns", "trial.b.amps-1", "2 A", "trial.b.tipped-up", "yes")
		near(t, "tipped up since", sheet.TurnsTable(f).Rows[4].AmpsHigh.V, 5.2)
		f.Place("trial.b.amps-1").Set("!2")
		f.Place("trial.b.tipped-up").Set("no")
		if b := sheet.FanBasis(f); b.Known() || b.Power.Fault == nil || f.KeyOf(b.Power.Fault.Place) != "trial.b.amps-1" {
			t.Errorf("garbled amps let earlier ones through: %+v", b)
		}
	}
}

func TestAmpsThatTellNoLoad(t *testing.T) {
	for _, supply := range []string{"single-phase", "drive"} {
		f := fan(t, swap+"&old.frequency=60Hz&new.frequency=60Hz")
		set(t, f, "supply", supply)
		b := sheet.FanBasis(f)
		if b.Known() {
			t.Errorf("%s: a basis from %s", supply, b.From)
		}
		wants(t, f, supply+" amps", sheet.NewAmps(f, b, speedAt(t, f, "760 rpm"), sheet.PlannedAir(f)), "target.power")
		wants(t, f, supply+" load", sheet.OldAmpsLoad(f), "target.power")
		v := sheet.MotorVerdict(f, b, speedAt(t, f, "760 rpm"))
		if v.Level != sheet.Unjudged || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "target.power" {
			t.Errorf("%s: %+v", supply, v)
		}
	}
	f := fan(t, swap)
	set(t, f, "same-wheel", "")
	amps := sheet.NewAmps(f, sheet.FanBasis(f), speedAt(t, f, "760 rpm"), sheet.PlannedAir(f))
	if wants(t, f, "wheel not said to be the same", amps, "same-wheel"); len(amps.Wanted) != 1 {
		t.Errorf("%d places are asked for where one tells", len(amps.Wanted))
	}
	set(t, f, "same-wheel", "yes", "old.amps-1", "", "old.speed", "")
	wants(t, f, "nothing read", sheet.NewAmps(f, sheet.FanBasis(f), speedAt(t, f, "760 rpm"), sheet.PlannedAir(f)), "old.amps-1", "target.power")
}

// Amps that contradict the no-load current are a fault of theirs, and never a
// small load.
func TestAmpsThatContradict(t *testing.T) {
	f := fan(t, swap)
	set(t, f, "old.amps-1", "2.5 A; within 0 A")
	faulty(t, f, "less than idle", sheet.OldAmpsLoad(f), "old.amps-1")
	faulty(t, f, "the speed at its limit", sheet.SpeedLimits(f, sheet.FanBasis(f))[0].Speed, "old.amps-1")
	faulty(t, f, "amps from it", sheet.NewAmps(f, sheet.FanBasis(f), speedAt(t, f, "760 rpm"), sheet.PlannedAir(f)), "old.amps-1")

	f = fan(t, swap)
	set(t, f, "new.no-load-amps", "9.2 A")
	b, speed := sheet.FanBasis(f), speedAt(t, f, "760 rpm")
	faulty(t, f, "idle at plate amps", sheet.NewAmps(f, b, speed, sheet.PlannedAir(f)), "new.no-load-amps")
	if v := sheet.MotorVerdict(f, b, speed); v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "new.no-load-amps" {
		t.Errorf("%+v", v)
	}
	for _, l := range sheet.SpeedLimits(f, b) {
		if l.Rule != sheet.RuleWheelMax {
			faulty(t, f, "speed at "+string(l.Rule), l.Speed, "new.no-load-amps")
		}
	}
	set(t, f, "new.section", "A", "new.sheave", "adjustable", "new.anchor-turns", "0", "new.anchor-pitch", "4 in", "new.second-anchor-turns", "5", "new.second-anchor-pitch", "3 in", "new.fan-sheave", "8 in", "new.motor-speed", "1750 rpm")
	for _, r := range sheet.TurnsTable(f).Rows {
		if r.AmpsLow.Known || rulesOf(r)[sheet.RulePlateAmps] != sheet.Unjudged {
			t.Errorf("%v turns: %+v", r.Turns, r.Verdicts)
		}
	}
	// Without a reading, no-load amps of 0.3 or 0.6 of the plate are tried; a
	// motor that draws less than 0.6 does not idle on that.
	f = fan(t, swap)
	set(t, f, "old.no-load-amps", "", "old.amps-1", "3 A; within 0 A")
	proportional, third := 3/6.6, (2*3-0.3*6.6)/(2*6.6-0.3*6.6)
	value(t, "load", sheet.OldAmpsLoad(f), (proportional+third)/2)
}

// The report's power tells the old motor's load where its amps don't, and only the old
// one's; a motor that draws just what it idles on at the most may idle on that.
func TestWhatElseTellsLoad(t *testing.T) {
	f := fan(t, "supply=single-phase&target.power=1hp&old.motor-power=2hp&old.amps-1=8A&old.motor-amps=12A&new.motor-power=2hp")
	value(t, "of one phase", sheet.OldLoad(f, &f.Old), 0.5)
	wants(t, f, "the new motor's", sheet.OldLoad(f, &f.New), "new.amps-1")
	set(t, f, "old.amps-1", "", "old.motor-power", "")
	wants(t, f, "no plate", sheet.OldLoad(f, &f.Old), "old.amps-1")
	f = fan(t, "supply=three-phase&old.motor-amps=10A&old.amps-1=6A;within 0A")
	load := sheet.Load(f, &f.Old, &f.Old.Reading)
	near(t, "least", load.Low(), (6.-3)/(10-3))
	near(t, "most", load.High(), 0.6)
}

// Text that is no value blocks the load, whatever else is known; amps as with the belt
// off are no load of a motor with a belt, and of one without are what they are.
func TestWhatBlocksALoad(t *testing.T) {
	const read = unproven + "&new.no-load-amps=3A"
	for _, key := range []string{"trial.t1.amps-2", "trial.t1.volts-12"} {
		f := fan(t, read+legs("5", "5", "5")+across("208", "208", "208"))
		set(t, f, key, "!5,,7")
		faulty(t, f, "garbled "+key, sheet.Load(f, &f.New, &f.Trials[0].Reading), key)
	}
	for mount, idle := range map[string]bool{"": true, "&mount=direct": false} {
		f := fan(t, read+legs("3", "3", "3")+across("208", "208", "208")+mount)
		if p := sheet.Prove(f); p.Idles != idle {
			t.Errorf("%q: idles %v", mount, p.Idles)
		}
	}
	f := fan(t, unproven+"&new.no-load-amps=9.9A"+legs("9.9", "9.9", "9.9"))
	if p := sheet.Prove(f); p.OfLegs.Level != sheet.Stop {
		t.Errorf("above its plate with the belt off: %+v", p.OfLegs)
	}
}
