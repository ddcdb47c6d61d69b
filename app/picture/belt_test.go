package picture

import (
	"math"
	"strings"
	"testing"
	"testing/quick"

	"roofside/calc/unit"
)

// taut is the example's drive, its span pressed in by a quarter of an inch.
func taut() Belt {
	return Belt{
		Motor: 3.4 * unit.Inch, Fan: 8.4 * unit.Inch, Center: 16.2 * unit.Inch, Press: 0.25 * unit.Inch,
		Title: "The drive", Description: "3.4 in under 8.4 in", MotorLabel: "Motor", FanLabel: "Fan",
		CenterLabel: "Centers 16.2 in", SpanLabel: "Span 16.0 in", PressLabel: "Press in 1/4 in",
	}
}

// way takes the belt's path apart: where the upper span leaves, where it is
// pressed to, where it arrives, and the lower one's ends.
func way(t *testing.T, b Belt) (leave, pressed, arrive, below, back spot) {
	t.Helper()
	d := attr(all(tree(t, b.UI()), "path", "picture-round")[0], "d")
	var n []float64
	for _, f := range strings.FieldsFunc(d, func(r rune) bool { return strings.ContainsRune("AMLZ ", r) }) {
		n = append(n, float(t, f))
	}
	if len(n) != 22 { // five places, two arcs of five more figures, and the way back
		t.Fatalf("%d figures in %s", len(n), d)
	}
	return spot{n[0], n[1]}, spot{n[2], n[3]}, spot{n[4], n[5]}, spot{n[11], n[12]}, spot{n[13], n[14]}
}

// Every length is drawn by the same scale: diameters, centers, span and press.
func TestTheDriveIsToScale(t *testing.T) {
	for _, press := range []unit.Length{0.25, 1} {
		b := taut()
		b.Press = press * unit.Inch
		leave, pressed, arrive, below, back := way(t, b)
		span := leave.distance(arrive)
		scale := span / math.Sqrt(16.2*16.2-2.5*2.5) // units to the inch
		if lower := below.distance(back); math.Abs(lower-span) > 0.2 {
			t.Errorf("the spans are %v and %v long", span, lower)
		}
		middle := spot{(leave.x + arrive.x) / 2, (leave.y + arrive.y) / 2}
		if got, want := middle.distance(pressed), float64(press)*scale; math.Abs(got-want) > 0.15 {
			t.Errorf("pressed by %v, want %v", got, want)
		}
		if pressed.y < middle.y {
			t.Error("pressed outward")
		}
		discs := all(tree(t, b.UI()), "path", "picture-disc")
		for i, d := range []float64{3.4, 8.4} {
			m := spots(t, discs[i])[0] // the left end of the first half
			f := strings.FieldsFunc(attr(discs[i], "d"), func(r rune) bool { return strings.ContainsRune("AMZ ", r) })
			across := float(t, f[7]) - m.x
			if math.Abs(across-d*scale) > 0.3 {
				t.Errorf("%v in is drawn %v across, want %v", d, across, d*scale)
			}
		}
		axis := spots(t, all(tree(t, b.UI()), "path", "picture-axis")[0])
		if got := axis[0].distance(axis[1]); math.Abs(got-16.2*scale) > 0.2 {
			t.Errorf("centers %v apart, want %v", got, 16.2*scale)
		}
	}
}

func TestAPressThatIsNotKnownIsNotDrawn(t *testing.T) {
	b := taut()
	b.Press = 0
	n := tree(t, b.UI())
	if len(all(n, "path", "picture-press")) != 0 {
		t.Error("an arrow is drawn")
	}
	for _, l := range all(n, "text", "") {
		if strings.Contains(words(l), "Press") {
			t.Errorf("it says %q", words(l))
		}
	}
}

func TestNoDriveFromImpossibleMeasures(t *testing.T) {
	nan, inf := unit.Length(math.NaN()), unit.Length(math.Inf(1))
	for _, x := range []unit.Length{0, -0.1, nan, inf, 1e-9, 1e9, 5 * unit.Inch} {
		for i := range 3 {
			b := taut()
			*[]*unit.Length{&b.Motor, &b.Fan, &b.Center}[i] = x
			if x == 5*unit.Inch && i < 2 {
				continue // only as a center distance do the sheaves overlap
			}
			if len(all(tree(t, b.UI()), "svg", "")) != 0 {
				t.Errorf("measure %d of %v is drawn", i, float64(x))
			}
		}
	}
}

func TestTheDriveStaysInItsDrawing(t *testing.T) {
	drawn := 0
	f := func(motor, fan, center, press float64) bool {
		b := taut()
		b.Motor, b.Fan = unit.Length(0.003+2*frac(motor)), unit.Length(0.003+2*frac(fan))
		b.Center, b.Press = (b.Motor+b.Fan)/2+unit.Length(0.001+3*frac(center)), unit.Length(frac(press))
		n := tree(t, b.UI())
		if len(all(n, "svg", "")) == 0 {
			return true
		}
		finite(t, n)
		drawn++
		for _, class := range []string{"picture-disc", "picture-axis", "picture-dimension", "picture-press"} {
			for _, p := range all(n, "path", class) {
				f := strings.FieldsFunc(attr(p, "d"), func(r rune) bool { return strings.ContainsRune("AMLZ ", r) })
				if class == "picture-disc" {
					f = []string{f[0], f[1], f[7], f[8]}
				}
				for i := 0; i+1 < len(f); i += 2 {
					if x, y := float(t, f[i]), float(t, f[i+1]); x < 0 || x > width || y < 0 || y > driveHeight {
						t.Logf("%s at %v, %v in %+v", class, x, y, b)
						return false
					}
				}
			}
		}
		for _, l := range all(n, "text", "") {
			half := extent(words(l)) / 2
			if x := float(t, attr(l, "x")); x-half < 0 || x+half > width {
				t.Logf("%q from %v to %v", words(l), x-half, x+half)
				return false
			}
		}
		return true
	}
	if err := quick.Check(f, &quick.Config{MaxCount: 500}); err != nil {
		t.Error(err)
	}
	if drawn < 400 {
		t.Errorf("only %d were drawn", drawn)
	}
}
