package drive_test

import (
	"testing"

	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

func TestAdjustableGoesThroughItsAnchors(t *testing.T) {
	for _, test := range []struct {
		t1, t2 unit.Turns
		d1, d2 unit.Length
	}{
		{0, 5, 3.7 * in, 2.7 * in},
		{1, 6, 5.4 * in, 4.2 * in},
		{4.5, 0.5, 2.8 * in, 3.6 * in}, // the more open one first
	} {
		a := check.Value[drive.Adjustable](t)(drive.NewAdjustable(test.t1, test.d1, test.t2, test.d2))
		length, turns := check.Value[unit.Length](t), check.Value[unit.Turns](t)
		check.Near(t, "first", length(a.Pitch(test.t1)), test.d1, 1e-13)
		check.Near(t, "second", length(a.Pitch(test.t2)), test.d2, 1e-13)
		check.Near(t, "middle", length(a.Pitch((test.t1+test.t2)/2)), (test.d1+test.d2)/2, 1e-13)
		last := 100 * in
		for n := unit.Turns(0); n <= 6; n += 0.5 {
			d := length(a.Pitch(n))
			if d >= last {
				t.Errorf("opening to %v turns gives %v, no smaller than %v", n, d.In(in), last.In(in))
			}
			last = d
			check.Near(t, "turns", 1+turns(a.Turns(d)), 1+n, 1e-12)
		}
		check.Near(t, "per turn", length(a.Pitch(2))-length(a.Pitch(3)), a.PerTurn(), 1e-12)
	}
}

func TestAdjustableRefuses(t *testing.T) {
	for _, test := range []struct {
		name      string
		t1, t2    unit.Turns
		d1, d2    unit.Length
		parameter string
		rule      limit.Rule
	}{
		{"the same twice", 2, 2, 3, 3, "t2", limit.AnchorsSame},
		{"one setting, two diameters", 2, 2, 3, 2.9, "d2", limit.AnchorsContradict},
		{"larger when open", 0, 5, 3, 4, "d2", limit.AnchorsContradict},
		{"the same when open", 0, 5, 3, 3, "d2", limit.AnchorsContradict},
		{"larger when open, the other way", 5, 0, 4, 3, "d2", limit.AnchorsContradict},
		{"past closed", -0.5, 5, 4, 3, "t1", limit.TurnsNegative},
		{"past closed second", 5, -0.5, 3, 4, "t2", limit.TurnsNegative},
		{"no diameter", 0, 5, 4, 0, "d2", limit.NotPositive},
	} {
		_, err := drive.NewAdjustable(test.t1, test.d1, test.t2, test.d2)
		check.Broken(t, test.name, err, test.parameter, test.rule)
	}
	a := check.Value[drive.Adjustable](t)(drive.NewAdjustable(0, 3.7*in, 5, 2.7*in))
	_, err := a.Pitch(-1)
	check.Broken(t, "closed too far", err, "turns", limit.TurnsNegative)
	_, err = a.Pitch(30)
	check.Broken(t, "opened too far", err, "turns", limit.SheaveTooSmall)
	_, err = a.Turns(3.8 * in)
	check.Broken(t, "larger than closed", err, "pitch", limit.TurnsNegative)
	if n, err := a.Turns(3.7 * in); err != nil || n != 0 {
		t.Errorf("closed: %v, %v", n, err)
	}
	_, err = drive.Adjustable{}.Pitch(1)
	check.Broken(t, "zero value", err, "", limit.AnchorsSame)
	_, err = drive.Adjustable{}.Turns(1)
	check.Broken(t, "zero value", err, "", limit.AnchorsSame)
}

// A shop reckons with about 0.2 in a turn and 1.0 in over five; the threads and
// angle behind it must agree.
func TestTradeFigureOfPitchPerTurn(t *testing.T) {
	per := check.Value[unit.Length](t)(drive.PitchPerTurn(drive.DefaultLead, 34*unit.Degree))
	if per < 0.19*in || per > 0.21*in {
		t.Errorf("%v in a turn", per.In(in))
	}
	lead := check.Value[unit.Length](t)(drive.LeadForTravel(5*per, 5, 34*unit.Degree))
	check.Near(t, "back to the thread", lead, drive.DefaultLead, 1e-13)
}

func TestCenterShift(t *testing.T) {
	shift := check.Value[unit.Length](t)
	check.Near(t, "one turn", shift(drive.CenterShift(1, drive.DefaultLead)), in/32, 1e-15)
	check.Near(t, "closing", shift(drive.CenterShift(-2, drive.DefaultLead)), -in/16, 1e-15)
	check.Near(t, "none", shift(drive.CenterShift(0, drive.DefaultLead)), 0, 1)
}

func TestUsualTurns(t *testing.T) {
	for _, test := range []struct {
		section     drive.Section
		least, most unit.Turns
		known       bool
	}{
		{"A", 0, 5, true}, {"AX", 0, 5, true}, {"4L", 0, 5, true},
		{"B", 1, 6, true}, {"BX", 1, 6, true}, {"5L", 1, 6, true},
		{"3V", 0, 0, false}, {"", 0, 0, false},
	} {
		least, ok1 := drive.UsualLeastTurns(test.section)
		most, ok2 := drive.UsualMostTurns(test.section)
		if least != test.least || most != test.most || ok1 != test.known || ok2 != test.known {
			t.Errorf("%s: %v to %v turns (%v, %v)", test.section, least, most, ok1, ok2)
		}
	}
}
