package record_test

import (
	"testing"

	"roofside/calc/record"
)

// samples are canonical quantities of each kind. The first that a place can
// hold fills it.
var samples = map[string][]string{
	"length":      {"3-1/2 in", "620 ft", "14.25 in", "0.5 in"},
	"count":       {"3"},
	"volume":      {"21 in3"},
	"speed":       {"1725 rpm"},
	"airflow":     {"3200 cfm", "5400 m3/h"},
	"pressure":    {"1.1 inwg", "4 Pa"},
	"power":       {"2 hp", "1.5 kW"},
	"voltage":     {"208 V", "0.3 V"},
	"current":     {"6.35 A"},
	"frequency":   {"60 Hz"},
	"temperature": {"90 F", "32.5 C"},
	"angle":       {"34 deg"},
	"ratio":       {"1.15", "5 %"},
	"turns":       {"2.5 turns"},
	"force":       {"3-1/2 lbf"},
	"linear mass": {"0.105 kg/m"},
	"mass":        {"185 lb"},
}

// remarks say how a value is known; "%" stands where the kind is not a ratio.
var remarks = []string{"", "; guessed", "; measured", "; stamped; within 2 %", "; counted", "; computed; within 0.5 %", "; within 1 %"}

// filled returns a fan with a value in every place, and one trial.
func filled(t testing.TB) *record.Fan {
	t.Helper()
	f := everything()
	i := 0
	for k, p := range f.Places() {
		i++
		switch p := p.(type) {
		case record.Measure:
			for _, s := range samples[p.Kind().Name] {
				if p.Set(s) == nil && p.Set(s+remarks[i%len(remarks)]) == nil {
					break
				}
			}
		case record.Selector:
			set(t, p, p.Options()[i%len(p.Options())])
		case *record.Moment:
			set(t, p, "2026-03-09T14:05:00-06:00")
		case *record.Day:
			set(t, p, "2026-03-23")
		case *record.Note:
			set(t, p, "Line 2 & west = \"A50\";\n3½″ 100 % #7 ?")
		default:
			set(t, p, "Line 2 & west = \"A50\"; 3½″ 100 % #7 ?")
		}
		if p.State() != record.Known {
			t.Fatalf("no sample fits %s", k)
		}
	}
	return f
}

func set(t testing.TB, p record.Place, text string) {
	t.Helper()
	if err := p.Set(text); err != nil {
		t.Fatalf("%q: %v", text, err)
	}
}

// equal reports where two sets of texts differ.
func equal(t *testing.T, got, want map[string]string) {
	t.Helper()
	for k, w := range want {
		if got[k] != w {
			t.Errorf("%s is %q, want %q", k, got[k], w)
		}
	}
	for k, g := range got {
		if _, ok := want[k]; !ok {
			t.Errorf("%s is %q, want nothing", k, g)
		}
	}
}
