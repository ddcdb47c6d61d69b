package sheet_test

import (
	"testing"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Of the old fan nothing more is read than was read: it is on its way down.
func TestTheOldFansReadingAsksForNoMore(t *testing.T) {
	const old = "supply=three-phase&old.motor-power=2hp&old.motor-volts=208V&old.motor-amps=6.6A&new.rotation="
	const volts, amps = "&old.volts-12=208V&old.volts-23=208V&old.volts-31=208V", "&old.amps-1=5.0A&old.amps-2=5.1A&old.amps-3=5.0A"
	for name, link := range map[string]string{
		"one leg":          "marked&old.amps-1=5A",
		"one pair":         "marked&old.volts-12=208V" + amps,
		"volts alone":      "marked" + volts,
		"both, not bumped": volts + amps,
		"both":             "marked" + volts + amps,
		"belt off":         "marked&old.no-load-amps=5A" + volts + amps,
		"tipped up":        "marked&old.tipped-up=yes" + volts + amps,
		"uneven amps":      "marked" + volts + "&old.amps-1=6.5A&old.amps-2=5A&old.amps-3=5A",
	} {
		p := sheet.Prove(fan(t, old+link))
		if p.New || p.Next != sheet.StepVerdict {
			t.Errorf("%s: next is %s, of the new fan %v", name, p.Next, p.New)
		}
	}
	if p := sheet.Prove(fan(t, "supply=three-phase")); !p.New {
		t.Error("before any reading the one to start is the new fan's")
	}
}

// A leg that is over stands, whatever of the others was read; of legs that are under,
// the one that was not read may have more.
func TestALegOverStandsByItself(t *testing.T) {
	f := fan(t, plated)
	set(t, f, "trial.a.amps-1", "9.9 A", "trial.a.amps-2", "9.9 A", "trial.a.amps-3", "")
	if p := sheet.Prove(f); p.OfLegs.Level != sheet.Stop || p.Worst.Level != sheet.Stop {
		t.Errorf("%+v", p.OfLegs)
	}
	set(t, f, "trial.a.amps-1", "5 A", "trial.a.amps-2", "5 A")
	if p := sheet.Prove(f); p.OfLegs.Level != sheet.Unjudged || len(p.OfLegs.Wanted) != 1 || f.KeyOf(p.OfLegs.Wanted[0]) != "trial.a.amps-3" {
		t.Errorf("%+v", p.OfLegs)
	}
}

// What stands in the way of a roll, and what a roll goes by.
func TestWhatARollGoesBy(t *testing.T) {
	next := func(f *record.Fan) sheet.Step { return sheet.Prove(f).Next }
	f := rolled(t, onLine1, "1-2-3")
	set(t, f, "supply", "drive")
	if got := next(f); got != sheet.StepVerdict {
		t.Errorf("on a drive, whose output is its own: %s", got)
	}
	f = rolled(t, onLine1, "1-2-3")
	set(t, f, join(trial("t2", "amps", "5.1 A", "5 A", "5 A"), trial("t2", "volts", "208 V", "208 V", "208 V"))...)
	if got := next(f); got != sheet.StepVerdict {
		t.Errorf("even at the last reading: %s", got)
	}
	f = rolled(t, [][3]string{onLine1[0], {"5.1 A", "5 A", "5 A"}}, "1-2-3", "3-1-2")
	if got := next(f); got != sheet.StepRoll {
		t.Errorf("even at the second of three positions: %s", got)
	}
	f = fan(t, unproven+legs("4.14", "3.50", "3.16")+across("208", "208", "208"))
	if p := sheet.Prove(f); p.Next != sheet.StepVerdict || len(p.Wanted) != 1 || p.Wanted[0] != &f.New.NoLoadAmps {
		t.Errorf("too light for a roll: %s, waits for %v", p.Next, p.Wanted)
	}
	// The volts are read once, at the first position, and not again; a reading that is
	// none of the roll's has none but its own.
	f = rolled(t, onLine1, "1-2-3", "3-1-2")
	if p := sheet.Prove(f); p.VoltsAt != &f.Trials[0].Reading {
		t.Error("a position without volts is not judged by the roll's")
	}
	set(t, f, trial("t2", "volts", "207 V", "208 V", "208 V")...)
	if p := sheet.Prove(f); p.VoltsAt != &f.Trials[1].Reading {
		t.Error("a position's own volts are not taken")
	}
	f = rolled(t, onLine1, "1-2-3", "3-1-2")
	set(t, f, trial("t3", "amps", "5.1 A", "5 A", "5 A")...)
	if p := sheet.Prove(f); p.VoltsAt != &f.Trials[2].Reading || p.Next != sheet.StepVolts {
		t.Error("a reading after the roll is judged by the roll's volts")
	}
	// The order that the leads stand in now.
	f = rolled(t, onLine1, "1-2-3", "3-1-2")
	set(t, f, "new.leads", "2-3-1")
	if r := sheet.LeadRoll(f); len(r.Trials) != 2 || r.Before != phase.BeforeNothing {
		t.Errorf("moved on once more, the direction stays: %d positions, %s", len(r.Trials), r.Before)
	}
	if r := sheet.LeadRoll(fan(t, unproven+"&new.leads=2-1-3")); len(r.Trials) != 0 {
		t.Errorf("nothing read: %d positions", len(r.Trials))
	}
}

// Which supplies have three legs to read, and a motor whose amps tell its load.
func TestWhatASupplyHas(t *testing.T) {
	for _, c := range []struct {
		supply            string
		three, roll, load bool
	}{
		{"three-phase", true, true, true}, {"two-speed", true, true, true}, {"drive", true, false, false}, {"single-phase", false, false, false},
		{"direct", true, false, false},
	} {
		f := fan(t, unproven+legs("5.0", "5.0", "5.6")) // 5.2 A on the average
		set(t, f, "supply", c.supply)
		r := &f.Trials[0].Reading
		if sheet.ThreePhase(f) != c.three || sheet.Rolls(f) != c.roll || sheet.Load(f, &f.New, r).Known() != c.load {
			t.Errorf("%q: three legs %v, a roll %v, load %v", c.supply, sheet.ThreePhase(f), sheet.Rolls(f), sheet.Load(f, &f.New, r).Known())
		}
		near(t, c.supply, sheet.LineAmps(f, r).Value, map[bool]float64{true: 5.2, false: 5}[c.three])
	}
	if f := fan(t, "new.phases=3"); sheet.ThreePhase(f) || sheet.Rolls(f) {
		t.Error("a supply that is not said has three legs")
	}
}

// A reading of garbled volts, amps or frequency is settled first.
func TestAGarbledFrequencyIsSettled(t *testing.T) {
	f := fan(t, plated)
	set(t, f, "trial.a.frequency", "!60")
	if p := sheet.Prove(f); p.Next != sheet.StepFault || f.KeyOf(p.Fault.Place) != "trial.a.frequency" {
		t.Errorf("%s, %+v", p.Next, p.Fault)
	}
	set(t, f, "trial.a.frequency", "59 Hz", "new.frequency", "60 Hz")
	value(t, "read with it", sheet.LineFrequency(f, &f.New, &f.Trials[0].Reading), float64(59*unit.Hertz))
	set(t, f, "trial.a.frequency", "")
	value(t, "read before", sheet.LineFrequency(f, &f.New, &f.Trials[0].Reading), float64(60*unit.Hertz))
	set(t, f, "new.frequency", "")
	wants(t, f, "not read", sheet.LineFrequency(f, &f.New, &f.Trials[0].Reading), "trial.a.frequency")
}

// A motor plated for one phase lies across two lines of three; a drive has three legs
// whatever is on it, and the old fan had what was read of it.
func TestAPlateOfOnePhaseHasTwoWires(t *testing.T) {
	const old = "&old.amps-1=5A&old.amps-2=5A&old.amps-3=5A"
	for link, three := range map[string]bool{"three-phase": false, "two-speed": false, "direct": false, "drive": true, "three-phase" + old: true, "direct" + old: true} {
		if got := sheet.ThreePhase(fan(t, "new.phases=1&supply="+link)); got != three {
			t.Errorf("%s: three legs %v", link, got)
		}
	}
}
