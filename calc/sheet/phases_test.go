package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

func TestPhasesOfPlateAndSupply(t *testing.T) {
	for _, c := range []struct {
		supply, plate string
		level         sheet.Level
		rule          sheet.Rule
	}{
		{"three-phase", "3", sheet.Within, sheet.RulePhases},
		{"single-phase", "1", sheet.Within, sheet.RulePhases},
		{"drive", "3", sheet.Within, sheet.RulePhases},
		{"two-speed", "3", sheet.Within, sheet.RulePhases},
		{"single-phase", "3", sheet.Stop, sheet.RulePhases},
		{"three-phase", "1", sheet.Watch, sheet.RulePhases},
		{"two-speed", "1", sheet.Watch, sheet.RulePhases},
		{"drive", "1", sheet.Stop, sheet.RuleOutputPhases},
		{"direct", "1", sheet.Unjudged, sheet.RulePhases},
		{"direct", "3", sheet.Unjudged, sheet.RulePhases},
		{"", "3", sheet.Unjudged, sheet.RulePhases},
		{"single-phase", "", sheet.Unjudged, sheet.RulePhases},
		{"single-phase", "?", sheet.Unjudged, sheet.RulePhases},
	} {
		f := made(t, "supply", c.supply, "new.phases", c.plate)
		v := sheet.PhasesVerdict(f)
		if v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s plated %q: level %d by %s", c.supply, c.plate, v.Level, v.Rule)
		}
		worst, judged := sheet.Overall(f)
		if said := judged && worst.Rule == c.rule; said != (c.level >= sheet.Watch) || said && worst.Level != c.level {
			t.Errorf("%s plated %q: the fan stands at %d by %s", c.supply, c.plate, worst.Level, worst.Rule)
		}
	}
}

// A motor that can't run on its supply is said before a reading is asked for, and stands
// whatever is read. A motor plated for one phase has two wires: on three lines, the leg
// that carries nothing is the one it does not lie on, and no lost phase.
func TestPhasesComeBeforeReadings(t *testing.T) {
	p := sheet.Prove(made(t, "supply", "single-phase", "new.phases", "3"))
	if p.Next != sheet.StepVerdict || p.Worst.Rule != sheet.RulePhases || p.Worst.Level != sheet.Stop {
		t.Errorf("next is %s, %s", p.Next, p.Worst.Rule)
	}
	p = sheet.Prove(made(t, "supply", "single-phase", "new.phases", "3", "trial.t1.amps-1", "4 A", "trial.t1.volts-12", "208 V", "new.motor-amps", "6 A", "new.motor-volts", "208 V", "new.rotation", "marked"))
	if p.Next != sheet.StepVerdict || p.Worst.Rule != sheet.RulePhases || p.Worst.Level != sheet.Stop {
		t.Errorf("with a reading next is %s, %s", p.Next, p.Worst.Rule)
	}
	p = sheet.Prove(made(t, "supply", "three-phase", "new.phases", "1"))
	if p.Next != sheet.StepReading || p.OfPhases.Level != sheet.Watch {
		t.Errorf("of one phase on three next is %s", p.Next)
	}
	p = sheet.Prove(made(t, "supply", "three-phase", "new.phases", "1", "trial.t1.amps-1", "0 A", "trial.t1.amps-2", "5 A", "trial.t1.amps-3", "5 A"))
	if p.Next != sheet.StepVolts || p.Worst.Rule != sheet.RulePhases || p.Worst.Level != sheet.Watch {
		t.Errorf("with a leg of nothing next is %s, %+v", p.Next, p.Worst)
	}
	if record.Silent("new.phases") || !record.Silent("old.phases") {
		t.Error("the new motor's phases are judged by, the old one's are not")
	}
}
