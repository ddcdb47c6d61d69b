package phase_test

import (
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

// A leg is open *under* a tenth of the others' mean and failing *under* a quarter of
// it (common practice): on that share it is not yet, and where the meter may bring it
// there the meter could overturn what is said.
func TestLostPhaseOnItsShares(t *testing.T) {
	for _, test := range []struct {
		name    string
		a, b, c unit.Current
		meter   phase.Meter[unit.Current]
		want    phase.Loss
		leg     phase.Leg
	}{
		{"under a tenth", 0.99, 10, 10, phase.Meter[unit.Current]{}, phase.LossOpen, 1},
		{"a tenth", 1, 10, 10, phase.Meter[unit.Current]{}, phase.LossNearly, 1},
		{"two of a tenth: one may run on the others yet", 1, 1, 10, phase.Meter[unit.Current]{}, phase.LossNearly, 1},
		{"under a quarter", 0.99, 4, 4, phase.Meter[unit.Current]{}, phase.LossNearly, 1},
		{"a quarter", 1, 4, 4, phase.Meter[unit.Current]{}, phase.LossNone, 0},
		{"to a quarter, by the meter", 2.75, 16, 16, phase.Meter[unit.Current]{Floor: 1}, phase.LossUnjudged, 1},
		{"of two alike the first read", 8, 1, 1, phase.Meter[unit.Current]{}, phase.LossNearly, 2},
		{"double, or more than that by the meter", 10, 4.5, 4.6, phase.Meter[unit.Current]{Share: 0.05}, phase.LossUnjudged, 1},
		{"double, or less by the meter", 10, 5.5, 5.4, phase.Meter[unit.Current]{Share: 0.05}, phase.LossUnjudged, 1},
		{"double beyond the meter", 10, 5, 5, phase.Meter[unit.Current]{Share: 0.02}, phase.LossAhead, 1},
	} {
		l := check.Value[phase.Lost](t)(phase.LostPhase(test.a, test.b, test.c, test.meter))
		if l.Loss != test.want || l.Leg != test.leg {
			t.Errorf("%s: %+v", test.name, l)
		}
	}
}

// Of 4, 3 and 2 the first and the last are as far from the average as each other:
// neither is farthest for certain, in whatever order they are read, and the first of
// them is named.
func TestTwoThatAreEquallyFar(t *testing.T) {
	for _, x := range [][3]unit.Voltage{{4, 3, 2}, {4, 2, 3}, {3, 4, 2}, {3, 2, 4}, {2, 3, 4}, {2, 4, 3}} {
		s := check.Value[phase.Spread](t)(phase.UnbalanceRange(x[0], x[1], x[2], phase.Meter[unit.Voltage]{}))
		want := phase.Leg1
		if x[0] == 3 {
			want = phase.Leg2
		}
		if s.Certain != phase.NoLeg || s.Leg != want {
			t.Errorf("%v: %+v", x, s)
		}
	}
}

// To 1 per cent of volts a motor carries its plate power: a US DOE motor tip sheet.
func TestVoltsAtOnePerCentBarNoRoll(t *testing.T) {
	amps := phase.Balance{Spread: phase.Spread{Value: 0.12, Low: 0.08, High: 0.16}}
	if got := phase.BeforeRoll(true, phase.Balance{Spread: phase.Spread{Value: phase.UnbalanceFree}}, amps); got != phase.BeforeNothing {
		t.Errorf("at 1 per cent: %s", got)
	}
	if got := phase.BeforeRoll(true, phase.Balance{Spread: phase.Spread{Value: 0.0101}}, amps); got != phase.BeforeVolts {
		t.Errorf("above it: %s", got)
	}
}

// A range whose ends meet is a value; one whose value lies outside is none.
func TestRangesInOrder(t *testing.T) {
	e := check.Value[phase.Estimate](t)(phase.ShaftByLoad(2000, 0.8, 0.8))
	if e.Low != e.High || e.Value != 1600 {
		t.Errorf("%+v", e)
	}
	h := check.Value[phase.Headroom](t)(phase.HeadroomLeft(0.5, phase.Derating{Factor: 1, Low: 1, High: 1}))
	if h != (phase.Headroom{Value: 0.5, Low: 0.5, High: 0.5}) {
		t.Errorf("%+v", h)
	}
	_, err := phase.HeadroomLeft(0.5, phase.Derating{Factor: 0.95, Low: 0.9, High: 0.93})
	check.Broken(t, "factor over its greatest", err, "derating", limit.OutOfRange)
}

func TestClampWoundOneToAHundredTimes(t *testing.T) {
	for turns, want := range map[int]unit.Current{1: 20, 100: 0.2} {
		if got := check.Value[unit.Current](t)(phase.ThroughClamp(20, turns)); got != want {
			t.Errorf("%d turns: %v", turns, got)
		}
	}
	_, err := phase.ThroughClamp(20, 101)
	check.Broken(t, "101 turns", err, "turns", limit.OutOfRange)
	_, err = phase.ThroughClamp(20, 0)
	check.Broken(t, "no turn", err, "turns", limit.NotPositive)
}

// What a window of ANSI C84.1 begins and ends with is within it.
func TestSystemNearAtTheEndsOfItsWindow(t *testing.T) {
	for v, want := range map[unit.Voltage]unit.Voltage{180: 208, 220: 208, 254: 240, 416: 480, 508: 480, 635: 600} {
		if s := check.Value[phase.System](t)(phase.SystemNear(v)); s.Nominal != want {
			t.Errorf("%v V is read as %v", v, s.Nominal)
		}
	}
	for _, v := range []unit.Voltage{179.9, 220.1, 254.1, 415.9, 508.1, 635.1} {
		_, err := phase.SystemNear(v)
		check.Broken(t, "outside", err, "v", limit.NotTabulated)
	}
}

// One position with a phase lost is no roll, whichever it is.
func TestRollWithAPhaseLostInOnePosition(t *testing.T) {
	for p := range 3 {
		at := roll([3]float64{-0.05, 0.1, -0.05}, [3]float64{}, even, exact)
		at[p].L2 = 0
		r := check.Value[phase.Roll](t)(phase.ClassifyRoll(at, phase.UsualClamp))
		if r.Reason != phase.ReasonLost || r.Cause != phase.CauseUnjudged {
			t.Errorf("position %d: %+v", p, r)
		}
	}
}

// Amps that are even by a meter without error have no cause: there is nothing to
// explain.
func TestRollOfEvenAmps(t *testing.T) {
	r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll([3]float64{}, [3]float64{}, even, exact), phase.Meter[unit.Current]{}))
	if r.Cause != phase.CauseUnjudged || r.Reason != phase.ReasonMeter {
		t.Errorf("%+v", r)
	}
}

// A part within the meter's error may be none: beside one beyond it, it makes no
// mixed cause, nor a firm one.
func TestRollWithALesserPartWithinTheMeter(t *testing.T) {
	part := func(x float64) [3]float64 { return [3]float64{x, -x / 2, -x / 2} }
	m := phase.Meter[unit.Current]{Share: 0.02} // 0.027 of a deviation
	r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(part(0.035), part(0.02), even, exact), m))
	if r.Cause != phase.CauseSupply || r.Confidence != phase.Likely {
		t.Errorf("%+v", r)
	}
	r = check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(part(0.045), part(0.04), even, exact), m))
	if r.Cause != phase.CauseMixed || r.Confidence != phase.Likely {
		t.Errorf("both beyond it: %+v", r)
	}
}

// A load of 9.51, 9.89 and 10 A is 5 per cent of its mean apart, and the same still;
// a part that is twice the other is the cause alone.
func TestRollOnItsShares(t *testing.T) {
	part := func(x float64) [3]float64 { return [3]float64{x, -x / 2, -x / 2} }
	r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(part(0.1), part(0), [3]float64{9.51, 9.89, 10}, exact), phase.UsualClamp))
	if r.Reason != phase.ReasonNone || r.Cause != phase.CauseSupply {
		t.Errorf("%+v", r)
	}
	r = check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(part(0.25), part(0.125), even, exact), phase.Meter[unit.Current]{}))
	if r.Cause != phase.CauseSupply {
		t.Errorf("%+v", r)
	}
}
