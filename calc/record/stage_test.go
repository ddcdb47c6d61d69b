package record_test

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"roofside/calc/record"
)

func TestStepsFollowEachOther(t *testing.T) {
	var g record.Stage
	all := g.Options()
	for i, want := range all {
		if g = g.Next(); string(g) != want {
			t.Errorf("step %d is %s, want %s", i, g, want)
		}
	}
	if g.Next() != "" {
		t.Errorf("after the last comes %s", g.Next())
	}
	for i := len(all) - 2; i >= 0; i-- {
		if g = g.Previous(); string(g) != all[i] {
			t.Errorf("before %s comes %s", all[i+1], g)
		}
	}
	if g.Previous() != "" {
		t.Errorf("before the first comes %s", g.Previous())
	}
	for g, open := range map[record.Stage]bool{"": false, record.BenchSet: false, record.Unhooked: true, record.LiftedOff: true, record.Wired: true, record.RotationProven: false} {
		if g.Open() != open {
			t.Errorf("%q: open %v", g, g.Open())
		}
	}
	for g, proven := range map[record.Stage]bool{"": false, record.Wired: false, record.RotationProven: true, record.RunIn: true, record.HandedOver: true} {
		if g.Proven() != proven {
			t.Errorf("%q: proven %v", g, g.Proven())
		}
	}
}

// A twin has the plates of its model, and nothing that was read at it.
func TestATwinHasTheMakeAndNoReadings(t *testing.T) {
	f := filled(t)
	twin := f.Twin()
	if twin.Name.Text() != "" || twin.Step.Text() != "" || len(twin.Trials) != 0 {
		t.Errorf("%q %q %d trials", twin.Name.Text(), twin.Step.Text(), len(twin.Trials))
	}
	kept := 0
	for k, p := range twin.Places() {
		if p.State() == record.Unknown {
			continue
		}
		kept++
		if m, ok := p.(record.Measure); ok && (m.Basis() == record.Measured || m.Basis() == record.Counted) {
			t.Errorf("%s was %s at the other", k, m.Basis())
		}
	}
	if kept < 20 {
		t.Errorf("only %d places are kept", kept)
	}
	f = record.NewFan()
	f.Apply(map[string]string{"new.motor-power": "2 hp", "new.section": "A", "old.motor-amps": "?", "old.fan-sheave": "!x", "old.amps-1": "3 A", "old.count-fan-turns": "20 turns",
		"raceway.size": "1/2", "wire.w1.size": "12", "box.clamps": "yes", "circuit.material": "copper"})
	twin = f.Twin()
	if twin.New.MotorPower.Text() != "2 hp" || twin.New.Section.Text() != "A" || len(twin.Texts()) != 2 {
		t.Errorf("%v", twin.Texts())
	}
}

// Of a fan that is handed over, a twin takes nothing that was done, seen, set, read or
// written there. What a twin does not keep is listed here by hand.
func TestATwinHasNothingOfTheWork(t *testing.T) {
	data, err := os.ReadFile("testdata/complete-fan.txt")
	if err != nil {
		t.Fatal(err)
	}
	f := record.NewFan()
	for line := range strings.Lines(string(data)) {
		key, text, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "=")
		f.Apply(map[string]string{key: text})
	}
	twin := f.Twin().Texts()
	own := regexp.MustCompile(`^(trial|wire|raceway|box|circuit|check|handover)\.|^(name|step|hood\.airflow|hood\.space-pressure)$|` +
		`^(old|new)\.(turns|center-distance|travel-.*|.*-outside|curb-.*|inlet|count-.*|belt-healthy|tipped-up|no-load-amps|volts-.*|amps-.*|speed|leads|rotation.*|overload-dial)$`)
	for key := range twin {
		if own.MatchString(key) {
			t.Errorf("%s is the other fan's own", key)
		}
	}
	for _, key := range []string{"new.motor-amps", "new.wheel-max-speed", "new.section", "target.airflow", "opening.size", "supply", "new.model", "new.hinge", "hood.listing"} {
		if twin[key] == "" {
			t.Errorf("%s is lost", key)
		}
	}
}
