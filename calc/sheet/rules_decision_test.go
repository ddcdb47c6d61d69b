package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/source"
)

// Every limit has its decision rule, and only those by the reading say how near it is.
// JCGM 106:2012: guarded acceptance for what protects, simple acceptance for what the
// trade set with a shop's tools in mind.
func TestEveryLimitHasADecisionRule(t *testing.T) {
	near := map[string]bool{}
	hear := func(id string, f *record.Fan) {
		for name, v := range standing(f) {
			rule := source.DecisionOf(v.Method)
			if rule == source.NoLimit && v.Method != "" {
				t.Errorf("%s: %s is judged by %s, which has no decision rule", id, name, v.Method)
			}
			if v.Near && rule != source.ByReading {
				t.Errorf("%s: %s is near by a guarded limit, %s", id, name, v.Method)
			}
			near[v.Method] = near[v.Method] || v.Near
			if v.Near && (v.Level == sheet.Unjudged || v.Level == sheet.Stop) {
				t.Errorf("%s: %s is near and %v", id, name, v.Level)
			}
		}
	}
	for _, c := range corpus(t) {
		hear(c.id, c.open(t))
	}
	if !near["drive.tolerance"] {
		t.Error("no record has a speed near its limit")
	}
}

// A guarded limit is not within while its value's band reaches across it, and one by the
// reading is judged all the same: the wheel's greatest speed and the target's allowance
// around one reading of a tachometer within half a per cent.
func TestGuardedAndByReading(t *testing.T) {
	const left = "supply=three-phase&same-wheel=yes&target.speed=700rpm;stamped&new.sheave=fixed&new.motor-sheave=3.4in&new.fan-sheave=8.4in&new.motor-speed=1750rpm" +
		"&trial.a.speed=703rpm;within 1 %25&trial.a.accepted=yes&new.wheel-max-speed="
	for _, c := range []struct {
		wheel         string
		turning, left sheet.Level
	}{
		{"720 rpm", sheet.Within, sheet.Within},
		{"706 rpm", sheet.Unjudged, sheet.Within}, // 703 ± 7
		{"695 rpm", sheet.Stop, sheet.Within},
	} {
		t.Run(c.wheel, func(t *testing.T) {
			f := fan(t, left+c.wheel)
			if v := sheet.WheelVerdict(f, sheet.LeftSpeed(f)); v.Level != c.turning {
				t.Errorf("the wheel is %v", v.Level)
			}
			if v := sheet.TargetReached(f, sheet.LeftSpeed(f), sheet.TargetSpeed(f)); v.Level != c.left {
				t.Errorf("the target is %v", v.Level)
			}
		})
	}
}
