package sheet_test

import (
	"fmt"
	"math"
	"testing"

	"roofside/calc/sheet"
)

// Three of four stamped settings are no line: what else is known of the sheave stands.
func TestThreeOfFourAnchorsAreNone(t *testing.T) {
	const anchors = "sheave=adjustable&turns=2&anchor-turns=0&anchor-pitch=4in&second-anchor-turns=5&second-anchor-pitch=3in"
	value(t, "all four", sheet.MotorPitch(&fan(t, anchors+"&motor-sheave=3.4in").Old), 3.6*in)
	for _, key := range []string{"old.anchor-turns", "old.anchor-pitch", "old.second-anchor-turns", "old.second-anchor-pitch"} {
		f := fan(t, anchors+"&motor-sheave=3.4in")
		set(t, f, key, "")
		if d := sheet.MotorPitch(&f.Old); d.From != sheet.FromStamp {
			t.Errorf("without %s from %q", key, d.From)
		}
		value(t, "without "+key, sheet.MotorPitch(&f.Old), 3.4*in)
		set(t, f, "old.motor-sheave", "")
		wants(t, f, "and no stamp, without "+key, sheet.MotorPitch(&f.Old), key)
		// A groove's width alone gives a pitch, and no turns.
		set(t, f, "old.turns", "", "old.section", "A", "old.motor-sheave-outside", "4.25 in", "old.groove-angle", "34 deg", "old.motor-sheave-gap", "0.518 in")
		if d := sheet.MotorPitch(&f.Old); d.From != sheet.FromGap {
			t.Errorf("gap, without %s from %q", key, d.From)
		}
		value(t, "gap, without "+key, sheet.MotorPitch(&f.Old), (4.25-0.1/math.Tan(17*math.Pi/180))*in)
		wants(t, f, "turns, without "+key, sheet.Turns(&f.Old), "old.turns")
	}
	// A fixed sheave has no settings, whatever was entered before it was said to be one.
	f := fan(t, anchors+"&motor-sheave=3.4in")
	set(t, f, "old.sheave", "fixed")
	value(t, "fixed", sheet.MotorPitch(&f.Old), 3.4*in)
}

// Turns that were counted stand before those that a groove's width gives.
func TestCountedTurnsStandBeforeAWidth(t *testing.T) {
	f := fan(t, "sheave=adjustable&section=A&anchor-turns=0turns&anchor-pitch=4in&second-anchor-turns=5turns&second-anchor-pitch=3in&motor-sheave-outside=4.25in&groove-angle=34deg"+
		fmt.Sprintf("&motor-sheave-gap=%.9fin", 0.418+(4.25-3.4)*math.Tan(17*math.Pi/180)))
	if turns := sheet.Turns(&f.Old); turns.From != sheet.FromGap || math.Abs(float64(turns.Value)-3) > 1e-6 {
		t.Errorf("by the width %v from %q", turns.Value, turns.From)
	}
	set(t, f, "old.turns", "2 turns")
	value(t, "counted", sheet.Turns(&f.Old), 2)
	value(t, "pitch", sheet.MotorPitch(&f.Old), 3.6*in)
}

// A diameter that is stamped stands before one that was taped, on the fan's sheave too;
// and half a count is asked for to its end.
func TestAStampStandsBeforeATape(t *testing.T) {
	f := fan(t, "motor-tachometer=1750rpm;within 0rpm&section=B&motor-sheave=3.4in&fan-sheave=8.6in&fan-sheave-outside=9in")
	value(t, "stamped", sheet.FanPitch(&f.Old), 8.6*in)
	value(t, "speed", oldSpeed(f), 1750*3.4/8.6)
	for begun, other := range map[string]string{"old.count-fan-turns": "old.count-motor-turns", "old.count-motor-turns": "old.count-fan-turns"} {
		g := f.Clone()
		set(t, g, begun, "20")
		wants(t, g, "ratio with "+begun, sheet.Ratio(&g.Old), other)
		wants(t, g, "speed with "+begun, oldSpeed(g), other)
	}
}
