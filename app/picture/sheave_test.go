package picture

import (
	"math"
	"strings"
	"testing"
	"testing/quick"

	"roofside/calc/unit"
)

// beltTop returns how far down the drawing the upper belt's top is, and how far
// along the shaft its middle.
func beltTop(t *testing.T, s Sheave) (y, x float64) {
	t.Helper()
	p := spots(t, all(tree(t, s.UI()), "path", "picture-belt")[0])
	return p[0].y, (p[0].x + p[1].x) / 2
}

func TestBeltRidesLowerAsTheSheaveOpens(t *testing.T) {
	s := small()
	before, along := -1.0, -1.0
	for pitch := s.Closed; pitch >= s.Open; pitch -= 0.2 * unit.Inch {
		s.Pitch = pitch
		y, x := beltTop(t, s)
		if y <= before || x <= along {
			t.Errorf("at %.2f in the belt lies at %.1f, %.1f; one setting further closed at %.1f, %.1f", pitch.In(unit.Inch), x, y, along, before)
		}
		before, along = y, x
	}
}

// The flanges, the belt's sides and its pitch line must fit each other, or the
// picture teaches something wrong.
func TestBeltTouchesBothFlanges(t *testing.T) {
	for _, pitch := range []unit.Length{3.4, 3.1, 2.7, 2.4} {
		s := small()
		s.Pitch = pitch * unit.Inch
		c, ok := s.section()
		if !ok {
			t.Fatal("no section")
		}
		for i, b := range c.belt() {
			if b.r() < c.apex {
				continue // below the faces' lower edge the flanges stand back
			}
			face := -c.face(b.r())
			if i == 1 || i == 2 {
				face = c.gap + c.face(b.r())
			}
			if math.Abs(face-b.x) > 1e-9 {
				t.Errorf("pitch %v in: corner %d at %.5f, the flange at %.5f", pitch, i, b.x, face)
			}
		}
		if c.pitch-c.below < c.bore {
			t.Errorf("pitch %v in: the belt runs into the barrel", pitch)
		}
	}
}

func (s spot) r() float64 { return s.y }

// Pitch line, dimension and target share one scale.
func TestDimensionsAreToScale(t *testing.T) {
	s := small()
	n := tree(t, s.UI())
	d := spots(t, all(n, "path", "picture-dimension")[0])
	pitch := d[5].y - d[4].y
	g := spots(t, all(n, "path", "picture-target")[0])
	target := g[2].y - g[0].y
	if got, want := target/pitch, float64(s.Target/s.Pitch); math.Abs(got-want) > 0.002 {
		t.Errorf("target drawn %.4f times the pitch diameter, want %.4f", got, want)
	}
	b := spots(t, all(n, "path", "picture-cord")[0])
	if b[0].y != d[4].y {
		t.Errorf("belt's pitch line at %v, dimension from %v", b[0].y, d[4].y)
	}
}

func TestTargetUnknownOrOutOfSight(t *testing.T) {
	s := small()
	s.Target = 0
	if n := tree(t, s.UI()); len(all(n, "path", "picture-target")) != 0 || len(all(n, "text", "picture-target-text")) != 0 {
		t.Error("a target that is not known is drawn")
	}
	s.Target = 9 * unit.Inch
	n := tree(t, s.UI())
	said := all(n, "text", "picture-target-text")
	if len(all(n, "path", "picture-target")) != 0 || len(said) != 1 || !strings.HasPrefix(words(said[0]), "↑") {
		t.Error("a target beyond the drawing is not pointed at")
	}
}

func TestNoSheaveFromImpossibleDiameters(t *testing.T) {
	nan, inf := unit.Length(math.NaN()), unit.Length(math.Inf(1))
	for _, x := range []unit.Length{0, -0.1, nan, inf, 1e-9, 1e9} {
		for i := range 3 {
			s := small()
			*[]*unit.Length{&s.Closed, &s.Open, &s.Pitch}[i] = x
			if n := tree(t, s.UI()); len(all(n, "svg", "")) != 0 {
				t.Errorf("diameter %d of %v is drawn", i, float64(x))
			}
		}
	}
	s := small()
	s.Open, s.Closed = s.Closed, s.Open
	if len(all(tree(t, s.UI()), "svg", "")) != 0 {
		t.Error("a sheave larger open than closed is drawn")
	}
}

func TestSheaveStaysInItsDrawing(t *testing.T) {
	drawn := 0
	f := func(closed, open, pitch, target, angle, width, depth float64) bool {
		s := small()
		s.Closed = unit.Length(0.003 + 20*frac(closed)*frac(closed))
		s.Open, s.Pitch = s.Closed*unit.Length(frac(open)), s.Closed*unit.Length(1.5*frac(pitch))
		s.Target, s.Angle = unit.Length(target), unit.Angle(angle)
		s.BeltWidth, s.BeltDepth = unit.Length(width), unit.Length(depth)
		n := tree(t, s.UI())
		finite(t, n)
		for _, class := range []string{"picture-fixed", "picture-movable", "picture-belt", "picture-shaft"} {
			for _, p := range all(n, "path", class) {
				drawn++
				for _, q := range spots(t, p) {
					if q.x < -1 || q.x > dimension || q.y < -10 || q.y > sheaveHeight+10 {
						t.Logf("%s at %v in %+v", class, q, s)
						return false
					}
				}
			}
		}
		return true
	}
	if err := quick.Check(f, &quick.Config{MaxCount: 400}); err != nil {
		t.Error(err)
	}
	if drawn < 1000 {
		t.Errorf("only %d shapes were drawn", drawn)
	}
}

// frac folds any finite number into 0 to 1.
func frac(x float64) float64 { return math.Abs(math.Mod(x, 1000)) / 1000 }

func TestLongLabelsBreakAndShorten(t *testing.T) {
	s := small()
	s.PitchLabel = "Diámetro primitivo en esta posición de la polea ajustable, medido ayer"
	lines := all(tree(t, s.UI()), "text", "picture-strong")
	if len(lines) != 4 || !strings.HasSuffix(words(lines[3]), "…") {
		t.Errorf("%d lines, the last %q", len(lines), words(lines[len(lines)-1]))
	}
	for _, l := range lines {
		if x := float(t, attr(l, "x")) + extent(words(l)); x > width {
			t.Errorf("%q ends at %.0f", words(l), x)
		}
	}
}
