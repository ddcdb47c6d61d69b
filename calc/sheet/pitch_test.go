package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/sheet"
)

func TestMotorPitchTakesTheBestSource(t *testing.T) {
	const anchors = "&sheave=adjustable&anchor-turns=1&anchor-pitch=4.2in&second-anchor-turns=6&second-anchor-pitch=3.1in"
	for _, c := range []struct {
		name, with string
		pitch      float64 // in
		from       sheet.From
	}{
		{"stamped", "motor-sheave=3.4in&motor-sheave-outside=4in&section=A", 3.4, sheet.FromStamp},
		// A standard A groove: outside less 0.25 in; a combination groove under an A belt: less 0.634 in.
		{"taped", "motor-sheave-outside=3.65in&section=A", 3.4, sheet.FromOutside},
		{"taped, combination", "motor-sheave-outside=4.034in&section=A&groove=combination", 3.4, sheet.FromOutside},
		// 0.1 in wider than the belt's 0.418 in, over the tangent of 17°.
		{"gap", "motor-sheave-outside=4in&motor-sheave-gap=0.518in&groove-angle=34deg&section=A", 4 - 0.1/math.Tan(17*math.Pi/180), sheet.FromGap},
		{"between anchors", "turns=2.5" + anchors, 4.2 - 1.5*1.1/5, sheet.FromAnchors},
		{"beyond anchors", "turns=0" + anchors, 4.2 + 1.1/5, sheet.FromAnchors},
		{"anchors before a stamp", "turns=6&motor-sheave=3.4in" + anchors, 3.1, sheet.FromAnchors},
		{"adjustable, pitch entered", "sheave=adjustable&motor-sheave=3.4in", 3.4, sheet.FromStamp},
	} {
		f := fan(t, c.with)
		a := sheet.MotorPitch(&f.Old)
		value(t, c.name, a, c.pitch*in)
		if a.From != c.from {
			t.Errorf("%s: from %q", c.name, a.From)
		}
	}
	f := fan(t, "motor-sheave-outside=3.65in")
	wants(t, f, "no section", sheet.MotorPitch(&f.Old), "old.section")
	f = fan(t, "motor-sheave-outside=4in&motor-sheave-gap=0.4in&groove-angle=34deg&section=A")
	faulty(t, f, "narrower than the belt", sheet.MotorPitch(&f.Old), "old.motor-sheave-gap")
	f = fan(t, "sheave=adjustable&turns=20&anchor-turns=0&anchor-pitch=4in&second-anchor-turns=1&second-anchor-pitch=3in")
	faulty(t, f, "no diameter left", sheet.MotorPitch(&f.Old), "old.turns")
}

func TestRatioArcAndBelt(t *testing.T) {
	f := fan(t, "motor-speed=1750rpm&motor-frequency=60Hz&motor-sheave=3.5in&fan-sheave=9in&center-distance=14in")
	value(t, "ratio", sheet.Ratio(&f.Old), 3.5/9)
	value(t, "arc", sheet.Arc(&f.Old), math.Pi-2*math.Asin(5.5/28))
	value(t, "belt", sheet.BeltLength(&f.Old), length(3.5, 9, 14)*in)
	v := sheet.BeltSpeed(f, &f.Old)
	value(t, "belt speed", v, math.Pi*3.5/12*1750*fpm)
	if got := sheet.BeltSpeedVerdict(v); got.Level != sheet.Within || got.Rule != sheet.RuleBeltSpeed {
		t.Errorf("1604 ft/min: %+v", got)
	}
	set(t, f, "old.count-fan-turns", "20", "old.count-motor-turns", "48")
	value(t, "counted", sheet.Ratio(&f.Old), 20./48)
	near(t, "counted band", sheet.Ratio(&f.Old).Band, 20/47.75-20/48.)
	set(t, f, "old.fan-sheave", "", "old.fan-sheave-outside", "8.65 in", "old.section", "B")
	value(t, "taped", sheet.FanPitch(&f.Old), 8.3*in) // B: outside less 0.35 in
}
