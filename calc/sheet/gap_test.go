package sheet_test

import (
	"fmt"
	"math"
	"testing"

	"roofside/calc/sheet"
)

// An adjustable sheave that can't be closed: its groove is w wide at the
// outside, the belt's pitch width is 0.418 in (A section, ANSI/RMA IP-20), so
// that the belt lies (w − 0.418)/tan 17° deeper on the diameter. A width chosen
// for 3.4 in must be found three turns open between 4.0 in closed and 3.0 in at
// five.
func TestTurnsFromTheGroovesWidth(t *testing.T) {
	width := 0.418 + (4.25-3.4)*math.Tan(17*math.Pi/180)
	f := fan(t, "new.sheave=adjustable&new.section=A&new.turns=?&new.anchor-turns=0turns&new.anchor-pitch=4in"+
		"&new.second-anchor-turns=5turns&new.second-anchor-pitch=3in&new.motor-sheave-outside=4.25in&new.groove-angle=34deg"+
		fmt.Sprintf("&new.motor-sheave-gap=%.9fin", width))
	turns := sheet.NowTurns(f)
	if turns.From != sheet.FromGap {
		t.Errorf("turns from %q", turns.From)
	}
	if got := float64(turns.Value); !turns.Known() || math.Abs(got-3) > 1e-6 {
		t.Errorf("%v turns open", got)
	}
	if d := sheet.MotorPitch(&f.New); !d.Known() || math.Abs(float64(d.Value)/0.0254-3.4) > 1e-6 {
		t.Errorf("pitch diameter %v in", float64(d.Value)/0.0254)
	}
}
