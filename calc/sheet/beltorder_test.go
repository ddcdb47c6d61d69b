package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// A belt that is right is left, whatever travel the base has; one that is not is put right
// by the base, and by another belt where the base has no travel left that way.
func TestWhatABeltIsOrdered(t *testing.T) {
	for _, c := range []struct{ name, force, toward, away, do string }{
		{"right", "1.8 lbf", "1 in", "1 in", sheet.BeltLeave},
		{"right, and no travel", "1.8 lbf", "0 in", "0 in", sheet.BeltLeave},
		{"loose", "0.5 lbf", "1 in", "1 in", sheet.BeltAway},
		{"loose, and none left away", "0.5 lbf", "1 in", "0 in", sheet.BeltOther},
		{"loose, and none left toward", "0.5 lbf", "0 in", "1 in", sheet.BeltAway},
		{"tight", "9 lbf", "1 in", "1 in", sheet.BeltToward},
		{"tight, and none left toward", "9 lbf", "0 in", "1 in", sheet.BeltOther},
		{"tight, and none left away", "9 lbf", "1 in", "0 in", sheet.BeltToward},
	} {
		f := readAt(t, "new.turns", "3 turns", "trial.a.belt-force", c.force+"; within 0 lbf", "trial.a.speed", "716 rpm", "new.belt-number", "",
			"new.travel-toward", c.toward+"; within 0 in", "new.travel-away", c.away+"; within 0 in")
		if o := sheet.JobOf(f, anyMark, false).Order(sheet.OfBelt); o.Do != c.do {
			t.Errorf("%s: %s, want %s", c.name, o.Do, c.do)
		}
	}
}

// Slip is the belt's where nothing else is in it: both shafts counted, or both diameters
// stamped, and the motor read at a speed that it can have.
func TestWhatIsSlipAndNothingElse(t *testing.T) {
	for with, want := range map[string]sheet.Rule{
		"motor-sheave=3.4in;stamped&fan-sheave=8.6in;stamped":                   sheet.RuleSlip,
		"motor-sheave=3.4in;stamped&fan-sheave=8.6in;measured":                  sheet.RuleMismatch,
		"motor-sheave=3.4in;measured&fan-sheave=8.6in;stamped":                  sheet.RuleMismatch,
		"motor-sheave=3.4in;stamped&fan-sheave-outside=8.85in&section=A":        sheet.RuleMismatch,
		"count-fan-turns=34&count-motor-turns=86":                               sheet.RuleSlip,
		"motor-sheave=3.4in;stamped&fan-sheave=8.6in;stamped&motor-tachometer=": sheet.RuleMismatch,
		"motor-sheave=3.4in;stamped&fan-sheave=8.6in;stamped&sheave=adjustable&turns=3&anchor-turns=0&anchor-pitch=4in&second-anchor-turns=5&second-anchor-pitch=3in": sheet.RuleMismatch, // turns are counted to a quarter
	} {
		f := fan(t, "supply=three-phase&motor-speed=1725rpm&speed=680rpm")
		set(t, f, "old.motor-tachometer", "1740 rpm")
		for _, part := range keyed(with) {
			key := "old." + part[0]
			if f.Place(key) == nil {
				key = part[0]
			}
			set(t, f, key, part[1])
		}
		if v := sheet.MismatchVerdict(f, &f.Old); v.Rule != want {
			t.Errorf("%s: %s, want %s", with, v.Rule, want)
		}
	}
}

// A two-speed motor's reading is of its low speed where it is said to be, or where the
// motor itself was read so low; of any other motor there is none.
func TestALowSpeedIsATwoSpeedMotors(t *testing.T) {
	const at = "new.sheave=fixed&new.motor-sheave=3.4in&new.fan-sheave=8.4in&new.motor-speed=1750rpm&trial.a.speed="
	for _, c := range []struct {
		with string
		used bool // the reading tells the speed
	}{
		{"708rpm&supply=two-speed", true},
		{"354rpm&supply=two-speed&trial.a.run-at=low", false},
		{"354rpm&supply=two-speed", false},
		{"708rpm&supply=two-speed&trial.a.run-at=high", true},
		{"708rpm&supply=two-speed&trial.a.motor-tachometer=1755rpm", true},
		{"708rpm&supply=three-phase&trial.a.run-at=low", true},
	} {
		f := fan(t, at+c.with)
		got := sheet.LastReading(f) != nil
		if got != c.used {
			t.Errorf("%s: used %v", c.with, got)
		}
	}
}
