package sheet_test

import (
	"errors"
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

func rpmOf(t *testing.T, text string) sheet.Answer[unit.Speed] {
	t.Helper()
	f := record.NewFan()
	set(t, f, "target.speed", text)
	return sheet.Read("n", sheet.FromPlace, &f.Target.Speed)
}

// A speed is held to its target by itself: from 1 % below to 5 % above is on target (common
// practice), near where its error reaches out of that. What only the target's own error
// could excuse is not judged, and nothing that isn't known is.
func TestASpeedAgainstItsTarget(t *testing.T) {
	f := record.NewFan()
	for _, c := range []struct {
		speed, target string
		level         sheet.Level
		near          bool
	}{
		{"720 rpm; within 0 rpm", "712 rpm; within 0 rpm", sheet.Within, false},
		{"720 rpm; within 3 rpm", "712 rpm; within 0 rpm", sheet.Within, false},
		{"706 rpm; within 3 rpm", "712 rpm; within 0 rpm", sheet.Within, true}, // 704.9 is the least
		{"745 rpm; within 4 rpm", "712 rpm; within 0 rpm", sheet.Within, true}, // 747.6 the most
		{"704 rpm; within 3 rpm", "712 rpm; within 0 rpm", sheet.Watch, false}, // by the reading itself
		{"748 rpm; within 3 rpm", "712 rpm; within 0 rpm", sheet.Watch, false},
		{"700 rpm; within 0 rpm", "712 rpm; within 14 rpm", sheet.Unjudged, false}, // 698 may be asked
		{"690 rpm; within 0 rpm", "712 rpm; within 14 rpm", sheet.Watch, false},
		{"755 rpm; within 0 rpm", "712 rpm; within 14 rpm", sheet.Unjudged, false}, // 726 may be, and 762 with it
		{"770 rpm; within 0 rpm", "712 rpm; within 14 rpm", sheet.Watch, false},
		{"712 rpm; within 0 rpm", "712 rpm; within 36 rpm", sheet.Unjudged, false}, // more than the 35.6 that is allowed
		{"712 rpm; within 0 rpm", "712 rpm; within 35 rpm", sheet.Within, true},
	} {
		v := sheet.TargetReached(f, rpmOf(t, c.speed), rpmOf(t, c.target))
		if v.Level != c.level || v.Near != c.near {
			t.Errorf("%s for %s: %v, near %v", c.speed, c.target, v.Level, v.Near)
		}
	}
	endless := rpmOf(t, "500 rpm")
	endless.Band = unit.Speed(math.Inf(1))
	for name, v := range map[string]sheet.Verdict{
		"no target": sheet.TargetReached(f, rpmOf(t, "700 rpm"), sheet.Answer[unit.Speed]{Wanted: []record.Place{&f.Target.Speed}}),
		"no speed":  sheet.TargetReached(f, sheet.Answer[unit.Speed]{Wanted: []record.Place{&f.Target.Speed}}, rpmOf(t, "700 rpm")),
	} {
		if v.Level != sheet.Unjudged || len(v.Wanted) != 1 || v.Value.Scale != nil {
			t.Errorf("%s: %+v", name, v)
		}
	}
	if v := sheet.TargetReached(f, endless, rpmOf(t, "700 rpm")); v.Level != sheet.Unjudged {
		t.Errorf("a speed that nothing bounds: %+v", v)
	}
	if v := sheet.TargetReached(f, rpmOf(t, "500 rpm"), endless); v.Level != sheet.Unjudged {
		t.Errorf("a target that nothing bounds: %+v", v)
	}
}

// A limit that nothing bounds judges nothing: a motor sheave whose stamps may be any is
// no smaller than the fan's. And what is at fault in no place asks for none.
func TestALimitThatNothingBounds(t *testing.T) {
	f := fan(t, "sheave=adjustable&turns=2&anchor-turns=0&anchor-pitch=4in;within 4in&second-anchor-turns=5&second-anchor-pitch=3in&fan-sheave=8.4in")
	if d := sheet.MotorPitch(&f.Old); !d.Known() || d.Bounded() {
		t.Errorf("%v ± %v", d.Value, d.Band)
	}
	if v := sheet.SwappedVerdict(&f.Old); v.Level != sheet.Unjudged || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "old.anchor-pitch" {
		t.Errorf("%+v", v)
	}
	set(t, f, "new.wheel-max-speed", "1000 rpm")
	if v := sheet.WheelVerdict(f, sheet.Answer[unit.Speed]{Fault: &sheet.Fault{Err: errors.New("so")}}); v.Level != sheet.Unjudged || len(v.Wanted) > 0 {
		t.Errorf("%+v", v)
	}
}

// A limit by the reading is near where the error reaches across it and nowhere else: 1/32
// in of gap against the half a degree over a span, see [sheet.AlignmentNow].
func TestNearIsOnlyWhereAnErrorReachesAcross(t *testing.T) {
	f := fan(t, "hood.space-pressure=0.01inwg;within 0.001inwg")
	if v := sheet.SpaceVerdict(f); v.Level != sheet.Within || v.Near {
		t.Errorf("%+v", v)
	}
	f = fan(t, checked+"&trial.a.alignment-gap=0in;within 1/64in")
	if _, v := sheet.AlignmentNow(f); v.Level != sheet.Within || v.Near {
		t.Errorf("%+v", v)
	}
}
