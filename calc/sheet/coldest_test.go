package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// The coldest start counts by all that it may be: read in air of 60 °F and started at 62
// within 5, the air may be 0.6 % denser, and so may the motor's load (P ∝ ρ, fan laws; JCGM
// 106:2012, guarded). A coldest start for sure in warmer air than the reading counts for
// nothing: the reading's own air was denser.
func TestTheColdestStartMayBeColder(t *testing.T) {
	f := fan(t, swap+"&old.air-temperature=60 F;within 0 F&coldest-air=62 F;within 0 F")
	b := sheet.FanBasis(f)
	just := sheet.SpeedLimits(f, b)[0].Speed
	just.Value, just.Band = just.Value*0.999, 0 // 0.3 % of load below the limit
	for coldest, want := range map[string]sheet.Level{
		"62 F; within 0 F": sheet.Within, "62 F; within 1 F": sheet.Within, "62 F; within 5 F": sheet.Unjudged, "70 F; within 5 F": sheet.Within,
		"60 F; within 0 F": sheet.Within, "60 F; within 5 F": sheet.Unjudged,
	} {
		set(t, f, "coldest-air", coldest)
		if v := sheet.MotorVerdict(f, b, just); v.Level != want {
			t.Errorf("coldest start %s: %+v", coldest, v)
		}
	}
}
