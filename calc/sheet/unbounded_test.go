package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/sheet"
)

// A band's edge that a formula refuses leaves nothing known but the middle: the wheel
// is not judged, and what would settle it is asked for. Without
// an interval there is no guarded acceptance (JCGM 106:2012).
func TestAnEdgeRefusedIsUnbounded(t *testing.T) {
	const drive = "supply=three-phase&same-wheel=yes&old.motor-speed=1750rpm&old.motor-sheave=3.4in&new.wheel-max-speed=2000rpm&target.use=sheaves&old.fan-sheave="
	for _, c := range []struct {
		sheave  string
		level   sheet.Level
		bounded bool
	}{
		{"9 in", sheet.Within, true},
		{"9 in; within 1/2 in", sheet.Within, true},
		{"9 in; within 8 in", sheet.Unjudged, true}, // 1750 · 3.4 / 1 = 5950 rpm
		{"9 in; within 9 in", sheet.Unjudged, false},
		{"9 in; within 20 in", sheet.Unjudged, false},
		{"9 in; within 9000 in", sheet.Unjudged, false},
	} {
		t.Run(c.sheave, func(t *testing.T) {
			f := fan(t, drive+c.sheave)
			speed := sheet.TargetSpeed(f)
			if speed.Bounded() != c.bounded || !c.bounded && (!math.IsInf(float64(speed.Low()), -1) || !math.IsInf(float64(speed.High()), 1)) {
				t.Errorf("%v to %v rpm", speed.Low(), speed.High())
			}
			v := sheet.WheelVerdict(f, speed)
			if v.Level != c.level {
				t.Errorf("level %v, want %v", v.Level, c.level)
			}
			if !c.bounded && (len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "old.fan-sheave") {
				t.Errorf("wants %v", v.Wanted)
			}
		})
	}
}

// What is read is never less than its place can hold: a gap of nothing with an error of
// a sixty-fourth is a gap of up to a sixty-fourth.
func TestAnEdgeStaysInItsPlace(t *testing.T) {
	f := fan(t, "new.curb-width=24in;measured;within 24in&old.curb-width=24in;stamped")
	if c := sheet.Clearance(f, false); c.Bounded() {
		t.Errorf("a base of no width at all goes over the curb by %v to %v", c.Low(), c.High())
	}
	f = fan(t, "hood.makeup-airflow=10cfm;within 20cfm&hood.airflow=100cfm;stamped")
	if q := sheet.MakeUpBalance(f, sheet.HoodAirflow(f, sheet.Point{})); !q.Bounded() || math.Abs(float64(q.Band/q.Value)-20./90) > 1e-9 {
		t.Errorf("%v ± %v", q.Value, q.Band)
	}
}
