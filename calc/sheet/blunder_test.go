package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// A50 stands for 50 + 1.3 in (IP-20, Table 8), B50 for 1.8 in more than its
// number.
func TestBeltNumberCatchesBlunders(t *testing.T) {
	for _, c := range []struct {
		number string
		length float64
		want   sheet.Level
	}{
		{"A50", 51.3, sheet.Within}, {"A50", 51.3 + 1.49, sheet.Within}, {"A50", 51.3 - 1.49, sheet.Within}, {"A50", 51.3 + 1.51, sheet.Watch},
		{"A50", 51.3 - 1.51, sheet.Watch}, {"a 50", 51.3, sheet.Within}, {"AX-50", 51.3, sheet.Within}, {"B50", 51.8 + 1.49, sheet.Within}, {"B50", 51.8 + 1.51, sheet.Watch},
		{"50", 51.3, sheet.Unjudged}, {"", 51.3, sheet.Unjudged}, {"A99999999999999999999", 51.3, sheet.Unjudged},
	} {
		f := fan(t, "motor-sheave=4in&fan-sheave=8.4in&center-distance="+fixedPoint(center(4, 8.4, c.length))+"in")
		if c.number != "" {
			set(t, f, "old.belt-number", c.number)
		}
		v := sheet.BeltNumberVerdict(&f.Old)
		if v.Level != c.want {
			t.Errorf("%s on %v in: %+v", c.number, c.length, v)
		}
		if asks := len(v.Wanted) > 0; asks != (c.want == sheet.Unjudged) || asks && f.KeyOf(v.Wanted[0]) != "old.belt-number" {
			t.Errorf("%s wants %v", c.number, v.Wanted)
		}
	}
}

func TestSwappedSheaves(t *testing.T) {
	for fanSheave, want := range map[string]sheet.Level{"8.4 in": sheet.Within, "4 in": sheet.Within, "3.9 in": sheet.Watch, "4 in; measured": sheet.Unjudged, "?": sheet.Unjudged} {
		f := fan(t, "motor-sheave=4in")
		set(t, f, "old.fan-sheave", fanSheave)
		if v := sheet.SwappedVerdict(&f.Old); v.Level != want || v.Rule != sheet.RuleSwapped {
			t.Errorf("%s under 4 in: %+v", fanSheave, v)
		}
	}
}
