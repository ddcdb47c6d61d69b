package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// One and the same base goes one way: by the exact center (case B24's formula), from
// where the motor stands, whichever page asks.
func TestTheBaseGoesOneWay(t *testing.T) {
	row := func(t *testing.T, f *record.Fan, turns float64) float64 {
		t.Helper()
		r := sheet.TurnsTable(f).Rows[int(2*turns)]
		if !r.Base.Known {
			t.Fatalf("the base's way at %v turns is not known", turns)
		}
		return float64(r.Base.V) / in
	}
	fitted := func(f *record.Fan, turns float64) sheet.Fit {
		return sheet.Fits(f, sheet.RunAt(f, sheet.Setting(unit.Turns(turns)), nil))[0]
	}
	// The example: 4.0 in closed, 0.2 in less a turn, under 8.4 in, 15.75 in apart.
	const d0, D, c0 = 4.0, 8.4, 15.75
	measured := length(d0, D, c0) // 51.317 in
	for _, c := range []struct {
		name, number string
		belt         float64 // in
	}{
		{"the belt as measured", "", measured},
		{"its number, within 0.7 in of that", "A50", measured}, // 51.3 in
		{"another belt, the base goes there", "A52", 53.3},     // Table 8 and its rule
	} {
		t.Run(c.name, func(t *testing.T) {
			f := demo(t)
			set(t, f, "new.belt-number", c.number, "new.travel-toward", "3 in", "new.travel-away", "3 in")
			for _, turns := range []float64{0, 1, 3, 4.5} {
				want := center(d0-0.2*turns, D, c.belt) - c0
				if got := row(t, f, turns); math.Abs(got-want) > 1e-6 {
					t.Errorf("Drive, %v open: %v in, want %v", turns, got, want)
				}
				if x := fitted(f, turns); c.number != "" && (math.Abs(float64(x.Move.Value)/in-want) > 1e-6 || math.Abs(float64(x.Center.Value)/in-want-c0) > 1e-6) {
					t.Errorf("Belt, %v open: %v in to %v in, want %v", turns, x.Move.Value/in, x.Center.Value/in, want)
				}
			}
			// Set at a trial, it goes on from there; the travel that was measured does not.
			set(t, f, "trial.a.turns", "3 turns", "trial.a.speed", "705 rpm")
			for _, turns := range []float64{1, 3, 4.5} {
				at := center(d0-0.2*turns, D, c.belt)
				want := at - center(d0-0.2*3, D, c.belt)
				if got := row(t, f, turns); math.Abs(got-want) > 1e-6 {
					t.Errorf("Drive, %v open, from 3: %v in, want %v", turns, got, want)
				}
				x := fitted(f, turns)
				if c.number != "" && (math.Abs(float64(x.Move.Value)/in-want) > 1e-6 || math.Abs(float64(x.Toward.Value)/in-(3+at-c0)) > 1e-6) {
					t.Errorf("Belt, %v open, from 3: %v in, %v left toward, want %v and %v", turns, x.Move.Value/in, x.Toward.Value/in, want, 3+at-c0)
				}
				toward, _ := sheet.TravelLeft(f, sheet.RunAt(f, sheet.Setting(unit.Turns(turns)), nil))
				if math.Abs(float64(toward.Value)/in-(3+at-c0)) > 1e-6 {
					t.Errorf("%v open: %v in left toward", turns, toward.Value/in)
				}
			}
		})
	}
	t.Run("travel was measured where the center was", func(t *testing.T) { // 0.68 in to 4.5 open, 0.23 in of it from 3 open
		f := demo(t)
		set(t, f, "new.belt-number", "", "new.travel-away", "0.5 in", "trial.a.turns", "3 turns", "trial.a.speed", "705 rpm")
		said := map[sheet.Rule]sheet.Level{}
		for _, v := range sheet.TurnsTable(f).Rows[9].Verdicts {
			said[v.Rule] = v.Level
		}
		if said[sheet.RuleTravel] != sheet.Watch {
			t.Errorf("%v", said)
		}
	})
	t.Run("a number far off is not believed", func(t *testing.T) { // A80 is 81.3 in, and the base is not known to go there
		f := demo(t)
		set(t, f, "new.belt-number", "A80", "new.travel-toward", "")
		if want := center(d0-0.2, D, measured) - c0; math.Abs(row(t, f, 1)-want) > 1e-6 {
			t.Errorf("%v in, want %v", row(t, f, 1), want)
		}
		value(t, "center", sheet.RunAt(f, sheet.Setting(1), nil).Center, center(d0-0.2, D, measured)*in)
		if x := fitted(f, 1); math.Abs(float64(x.Center.Value)/in-center(d0-0.2, D, 81.3)) > 1e-6 {
			t.Errorf("A80 lies tight at %v in", x.Center.Value/in)
		}
	})
	t.Run("opening never sends it toward the fan", func(t *testing.T) { // a belt measured in place goes slack
		f := demo(t)
		set(t, f, "new.belt-number", "A49") // 50.3 in: 1 in under what was measured, and far from 0.7 in
		set(t, f, "new.center-distance", "15.5 in", "new.belt-number", "A50")
		if got := row(t, f, 1); got <= 0 {
			t.Errorf("%v in", got)
		}
		if x := fitted(f, 1); x.Move.Value <= 0 {
			t.Errorf("%v in", x.Move.Value/in)
		}
	})
}

// A belt measured in place shares the error of that measurement with where it goes: it
// cancels, and what is left is how the travel was read.
func TestOneMeasurementIsOneError(t *testing.T) {
	f := demo(t)
	set(t, f, "new.belt-number", "A50", "new.travel-toward", "1 in; within 1/16 in", "new.travel-away", "2 in; within 1/16 in")
	x := sheet.Fits(f, sheet.RunAt(f, sheet.Setting(0), nil))[0]
	near(t, "toward, as it stands", x.Toward.Band, in/16)
	if x.Verdict.Level != sheet.Within { // 3/4 in and 1.5 in asked for A50
		t.Errorf("%+v", x.Verdict)
	}
	set(t, f, "new.anchor-pitch", "4 in; within 0.2 in", "new.second-anchor-pitch", "3 in; within 0.2 in")
	x = sheet.Fits(f, sheet.RunAt(f, sheet.Setting(0), nil))[0]
	near(t, "toward, as it stands on a sheave poorly known", x.Toward.Band, in/16)
	set(t, f, "new.anchor-pitch", "4 in", "new.second-anchor-pitch", "3 in")
	set(t, f, "new.center-distance", "15.75 in; within 1/2 in")
	if x = sheet.Fits(f, sheet.RunAt(f, sheet.Setting(3), nil))[0]; float64(x.Toward.Band)/in > 1./16+0.05 {
		t.Errorf("± %v in", x.Toward.Band/in)
	}
}
