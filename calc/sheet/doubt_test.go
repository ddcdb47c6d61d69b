package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// The demo at 3 open gives 716.7 rpm. A reading far behind that is a belt that
// slips, until it was read twice alike; one ahead of it is a wrong diameter.
func TestADoubtedReadingDoesNotSetTheSheave(t *testing.T) {
	for _, c := range []struct {
		name  string
		speed []string
		do    sheet.Do
	}{
		{"in order", []string{"705 rpm"}, sheet.DoClose},
		{"10.7 % behind", []string{"640 rpm"}, sheet.DoTension},
		{"tensioned, and in order", []string{"640 rpm", "708 rpm"}, sheet.DoClose},
		{"tensioned, and better but not well", []string{"640 rpm", "672 rpm"}, sheet.DoTension},
		{"tensioned, and the same", []string{"640 rpm", "641 rpm"}, sheet.DoClose},
		{"perhaps behind, then surely", []string{"688 rpm", "676 rpm"}, sheet.DoTension},
		{"6 % ahead", []string{"760 rpm"}, sheet.DoCheck},
		{"checked, and the same", []string{"760 rpm", "762 rpm"}, sheet.DoOpen},
		{"ahead, then behind", []string{"760 rpm", "640 rpm"}, sheet.DoTension},
	} {
		f := demo(t)
		for _, speed := range c.speed {
			id := "trial." + f.NewTrial().ID + "."
			set(t, f, id+"turns", "3 turns", id+"speed", speed)
		}
		m, wanted := sheet.NextMove(f, sheet.TurnsTable(f))
		if m.Do != c.do || len(wanted) > 0 {
			t.Errorf("%s: %+v", c.name, m)
		}
		if c.do == sheet.DoTension && m.To != 3 {
			t.Errorf("%s: read again at %v", c.name, m.To)
		}
	}
}

// What a tachometer has caught twice scales neither the table nor the load.
func TestAHarmonicScalesNothing(t *testing.T) {
	f := demo(t)
	id := "trial." + f.NewTrial().ID + "."
	set(t, f, id+"turns", "3 turns", id+"amps-1", "4.1 A", id+"amps-2", "4.2 A", id+"amps-3", "4.0 A")
	without := sheet.TurnsTable(f)
	for _, speed := range []string{"1440 rpm", "358 rpm"} {
		set(t, f, id+"speed", speed)
		with := sheet.TurnsTable(f)
		for i := range without.Rows {
			near(t, speed, with.Rows[i].Speed, float64(without.Rows[i].Speed))
			near(t, speed, with.Rows[i].AmpsHigh.V, float64(without.Rows[i].AmpsHigh.V))
		}
	}
	if !without.Rows[0].AmpsHigh.Known || without.Rows[0].AmpsHigh.V < 6 {
		t.Errorf("closed, at most %v A", without.Rows[0].AmpsHigh.V)
	}
}

// A trial that holds the ordered setting alone has not set the sheave.
func TestAnOrderedSettingIsNotYetSet(t *testing.T) {
	f := demo(t)
	trial := f.NewTrial()
	id := "trial." + trial.ID + "."
	set(t, f, id+"turns", "3 turns; computed")
	value(t, "now", sheet.NowTurns(f), 0)
	set(t, f, id+"amps-1", "4 A")
	value(t, "now", sheet.NowTurns(f), 3)
	set(t, f, id+"amps-1", "", id+"turns", "3 turns")
	value(t, "now", sheet.NowTurns(f), 3)
}

// What has been begun of the target is asked for.
func TestTheTargetAsksForWhatWasBegun(t *testing.T) {
	f := fan(t, "supply=three-phase&same-wheel=yes&old.count-fan-turns=20&old.count-motor-turns=48.25")
	wants(t, f, "counted", sheet.TargetSpeed(f), "old.motor-speed")
	f = fan(t, "supply=three-phase&same-wheel=yes&old.fan-sheave=8in&old.motor-speed=1725rpm")
	wants(t, f, "sheaves", sheet.TargetSpeed(f), "old.motor-sheave")
}

// On a variable frequency drive the output is the move where the sheave has none.
func TestADrivesOutputIsTheMove(t *testing.T) {
	f := fan(t, bench)
	set(t, f, "supply", "drive", "new.frequency", "45 Hz", "target.speed", "700 rpm")
	m, _ := sheet.NextMove(f, sheet.TurnsTable(f)) // closed, 45 Hz gives 629 rpm
	if m.Do != sheet.DoFrequency || m.Frequency < 49.5 || m.Frequency > 50.5 {
		t.Errorf("%+v", m)
	}
	set(t, f, "target.speed", "900 rpm") // 64 Hz
	if m, _ := sheet.NextMove(f, sheet.TurnsTable(f)); m.Do != sheet.DoNone || m.Why != sheet.TooSlow {
		t.Errorf("%+v", m)
	}
}

// The load of the old motor follows from its amps, or else from the report.
func TestOldLoadFromTheReport(t *testing.T) {
	f := demo(t)
	value(t, "load", sheet.OldLoad(f, &f.Old), 1.15/2)
	set(t, f, "target.power", "")
	wants(t, f, "load", sheet.OldLoad(f, &f.Old), "old.amps-1")
}
