package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

func itemOf(t *testing.T, f *record.Fan, name string) (found sheet.Item, ok bool) {
	t.Helper()
	for _, p := range sheet.Handover(f) {
		for _, i := range p.Items {
			if i.Name == name {
				if ok {
					t.Errorf("%s stands twice", name)
				}
				found, ok = i, true
			}
		}
	}
	return found, ok
}

// left is a trial that was accepted, with everything read at it.
var left = join(evenVolts, evenAmps, []string{"trial.t1.accepted", "yes", "trial.t1.speed", "717 rpm",
	"trial.t1.alignment-gap", "1/32 in", "trial.t1.belt-frequency", "31 Hz", "trial.t1.belt-age", "used"})

func TestItemsOfAHandover(t *testing.T) {
	for _, c := range []struct {
		name  string
		with  []string
		state sheet.ItemState
		place string
	}{
		{"target", nil, sheet.Open, "target.speed"},
		{"target", []string{"target.speed", "712 rpm"}, sheet.Done, ""},
		{"old-plate", []string{"old.motor-power", "2 hp", "old.motor-volts", "208 V"}, sheet.Open, "old.motor-amps"},
		{"old-plate", []string{"old.motor-power", "2 hp", "old.motor-volts", "208 V", "old.motor-amps", "?"}, sheet.Done, "old.motor-power"}, // somebody looked
		{"wind", nil, sheet.Open, "check.wind"},
		{"wind", []string{"check.wind", "done"}, sheet.Done, "check.wind"},
		{"wind", []string{"check.wind", "not-applicable"}, sheet.Unreasoned, "check.wind-why"},
		{"wind", []string{"check.wind", "not-applicable", "check.wind-why", "carried up the stairs"}, sheet.NotApplicable, "check.wind"},
		{"rotation", nil, sheet.Open, "new.rotation"},
		{"rotation", proven, sheet.Done, "new.rotation"},
		{"rotation", []string{"new.rotation", "reverse"}, sheet.Failed, "new.rotation"},
		{"amps", nil, sheet.Open, ""},
		{"amps", evenAmps, sheet.Open, "trial.t1.accepted"}, // read, and not accepted
		{"amps", join(left, []string{"trial.t1.amps-2", ""}), sheet.Open, "trial.t1.amps-2"},
		{"amps", left, sheet.Done, "trial.t1.amps-1"},
		{"volts", left, sheet.Done, "trial.t1.volts-12"},
		{"speed", left, sheet.Done, "trial.t1.speed"},
		{"alignment", left, sheet.Done, "trial.t1.alignment-gap"},
		{"tension", left, sheet.Done, "trial.t1.belt-force"},
		{"run-in", left, sheet.Done, "trial.t1.belt-age"},
		{"run-in", join(left, []string{"trial.t1.belt-age", "new"}), sheet.Open, "trial.t1.belt-age"},
		{"by", nil, sheet.Open, "handover.by"},
		{"on", []string{"handover.on", "2026-03-09"}, sheet.Done, "handover.on"},
	} {
		f := made(t, join([]string{"supply", "three-phase"}, c.with)...)
		i, ok := itemOf(t, f, c.name)
		var place record.Place
		if c.place != "" {
			place = f.Place(c.place)
		}
		if !ok || i.State != c.state || c.place != "" && i.Place != place {
			t.Errorf("%s with %v is in state %d, at %s", c.name, c.with, i.State, f.KeyOf(i.Place))
		}
	}
}

// What a supply or a drive doesn't have is not asked for.
func TestAHandoverAsksForWhatThereIs(t *testing.T) {
	direct := made(t, "supply", "direct")
	for _, name := range []string{"target", "alignment", "tension", "run-in", "belt-due"} {
		if _, ok := itemOf(t, direct, name); ok {
			t.Errorf("%s is asked of a fan without a belt", name)
		}
	}
	single := made(t, "supply", "single-phase", "trial.t1.accepted", "yes", "trial.t1.amps-1", "9 A", "trial.t1.volts-12", "115 V")
	for _, name := range []string{"amps", "volts"} {
		if i, _ := itemOf(t, single, name); i.State != sheet.Done {
			t.Errorf("%s of one line is in state %d", name, i.State)
		}
	}
}

// With every check answered and every value there, nothing is outstanding; one of
// them taken back is.
func TestOutstanding(t *testing.T) {
	f := made(t, join(left, proven, []string{"supply", "three-phase", "target.speed", "712 rpm", "old.motor-power", "2 hp", "old.motor-volts", "208 V", "old.motor-amps", "?",
		"hood.airflow", "3200 cfm", "handover.by", "N. N.", "handover.on", "2026-03-09", "handover.belt-due", "2026-03-23"})...)
	for _, g := range record.CheckGroups() {
		for _, name := range g.Checks {
			if err := f.Check(name).State.Set("done"); err != nil {
				t.Fatal(err)
			}
		}
	}
	if open := sheet.Outstanding(sheet.Handover(f)); len(open) > 0 {
		t.Errorf("%s is outstanding, and %d in all", open[0].Name, len(open))
	}
	for _, key := range []string{"check.guard", "handover.by", "hood.airflow", "trial.t1.amps-3", "new.rotation"} {
		text := f.Place(key).Text()
		if err := f.Place(key).Set(""); err != nil {
			t.Fatal(err)
		}
		if open := sheet.Outstanding(sheet.Handover(f)); len(open) != 1 || open[0].Place != f.Place(key) {
			t.Errorf("without %s %d are outstanding", key, len(open))
		}
		if err := f.Place(key).Set(text); err != nil {
			t.Fatal(err)
		}
	}
}

// A reading that was taken and is not in order leaves its item undone.
func TestAnItemHearsWhatIsHeldAgainstIt(t *testing.T) {
	for _, c := range []struct {
		name  string
		with  []string
		state sheet.ItemState
	}{
		{"tension", []string{"trial.t1.belt-frequency", "10 Hz"}, sheet.Open},
		{"tension", []string{"trial.t1.belt-frequency", "90 Hz"}, sheet.Open},
		{"run-in", []string{"trial.t1.belt-frequency", "10 Hz"}, sheet.Open},
		{"tension", []string{"trial.t1.belt-frequency", "40 Hz"}, sheet.Open}, // by the reading itself a sixth too loose
		{"tension", []string{"trial.t1.belt-frequency", "48 Hz"}, sheet.Done},
		{"run-in", []string{"trial.t1.belt-frequency", "48 Hz"}, sheet.Done},
		{"alignment", []string{"trial.t1.alignment-gap", "1 in"}, sheet.Failed},
		{"alignment", []string{"trial.t1.alignment-gap", "1/32 in"}, sheet.Done},
		{"amps", []string{"trial.t1.amps-1", "5 A", "trial.t1.amps-2", "5 A", "trial.t1.amps-3", "5 A"}, sheet.Done},
		{"amps", []string{"trial.t1.amps-1", "0 A", "trial.t1.amps-2", "8 A", "trial.t1.amps-3", "8 A"}, sheet.Failed}, // a lost phase
		{"amps", []string{"trial.t1.amps-1", "11 A", "trial.t1.amps-2", "11 A", "trial.t1.amps-3", "11 A"}, sheet.Failed},
		{"volts", []string{"trial.t1.volts-12", "208 V", "trial.t1.volts-23", "207 V", "trial.t1.volts-31", "208 V"}, sheet.Done},
		{"volts", []string{"trial.t1.volts-12", "160 V", "trial.t1.volts-23", "160 V", "trial.t1.volts-31", "160 V"}, sheet.Failed},
		{"hood-airflow", []string{"hood.airflow", "2000 cfm"}, sheet.Failed},
		{"hood-airflow", []string{"hood.airflow", "3600 cfm"}, sheet.Done},
		{"hood-airflow", []string{"hood.airflow", ""}, sheet.Open},
	} {
		f := demo(t)
		set(t, f, join(left, []string{"new.belts", "1", "trial.t1.turns", "3 turns", "hood.listing", "listed", "hood.label-airflow", "3000 cfm"}, c.with)...)
		held := sheet.JobOf(f, unit.Inch/16, false).Running()
		for _, p := range sheet.Handover(f, held...) {
			for _, i := range p.Items {
				if i.Name == c.name && i.State != c.state {
					t.Errorf("%s with %v is in state %d", c.name, c.with, i.State)
				}
			}
		}
	}
}
