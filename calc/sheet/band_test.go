package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Around a reading, anchors that were taped weigh only by how far a setting
// lies from the one read: there the speed is as sure as the tachometer. Apart
// from the program: the ratio of two diameters on the line through both
// anchors, with each anchor moved by its band of 1/16 in.
func TestBandAroundAReading(t *testing.T) {
	f := demo(t)
	set(t, f, "new.anchor-pitch", "4 in; measured", "new.second-anchor-pitch", "3 in; measured",
		"trial.t1.turns", "3 turns", "trial.t1.speed", "700 rpm; measured; within 7 rpm")
	table := sheet.TurnsTable(f)
	ratio := func(turns, first, second float64) float64 {
		at := func(t float64) float64 { return first + (second-first)*t/5 }
		return at(turns) / at(3)
	}
	for _, turns := range []float64{3, 2.5, 1, 0, 5} {
		got := table.SpeedAt(f, sheet.Setting(unit.Turns(turns)))
		want := 7. / 700
		for _, d := range [][2]float64{{1. / 16, 0}, {0, 1. / 16}} {
			want += math.Abs(ratio(turns, 4+d[0], 3+d[1])/ratio(turns, 4, 3) - 1)
		}
		// The program takes the slope at the middle; a sixteenth bends it by a few per cent.
		if share := float64(got.Band / got.Value); !got.Known() || math.Abs(share-want) > 0.05*want {
			t.Errorf("%v turns open: ± %.5f, by hand ± %.5f", turns, share, want)
		}
	}
}

// A band as wide as the value leaves the least amps at none; it is no
// contradiction of the motor's plate.
func TestBandAsWideAsTheSpeed(t *testing.T) {
	f := fan(t, bench+"&target.power=1hp")
	set(t, f, "target.speed", "700 rpm; guessed; within 100 %")
	for _, r := range sheet.TurnsTable(f).Rows {
		if !r.AmpsLow.Known || r.AmpsLow.V != 0 || r.AmpsHigh.V < 6.6 {
			t.Errorf("%v turns: %+v to %+v A", r.Turns, r.AmpsLow, r.AmpsHigh)
		}
		if !r.Beyond || r.AmpsHigh.V != 13.2 { // twice the plate, and no figure past it
			t.Errorf("%v turns: up to %v A, beyond %v", r.Turns, r.AmpsHigh.V, r.Beyond)
		}
		for _, v := range r.Verdicts {
			if v.Rule == sheet.RulePlateAmps && v.Level != sheet.Unjudged {
				t.Errorf("%v turns: %+v", r.Turns, v)
			}
		}
	}
}
