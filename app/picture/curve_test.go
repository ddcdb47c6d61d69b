package picture

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// marker returns where the marker of a class stands: the last of its shape, for
// the sign beside its label comes before.
func marker(t *testing.T, n *html.Node, class string) spot {
	t.Helper()
	if class == "found" {
		circles := all(n, "circle", "picture-found")
		m := circles[len(circles)-1]
		return spot{float(t, attr(m, "cx")), float(t, attr(m, "cy"))}
	}
	paths := all(n, "path", "picture-"+class)
	p := spots(t, paths[len(paths)-1])
	low, high := p[0], p[0]
	for _, s := range p {
		low, high = spot{min(low.x, s.x), min(low.y, s.y)}, spot{max(high.x, s.x), max(high.y, s.y)}
	}
	return spot{(low.x + high.x) / 2, (low.y + high.y) / 2}
}

func TestCurvePassesThroughThePointsOnIt(t *testing.T) {
	c := crowded()
	c.Points = nil
	flows := map[string]float64{"report": 1850, "found": 1300, "planned": 700}
	for _, class := range []string{"report", "found", "planned"} {
		q := flows[class]
		c.Points = append(c.Points, point(q, 0.75*q*q/1850/1850, class, class))
	}
	n := tree(t, c.UI())
	p := spots(t, all(n, "path", "picture-system")[0])
	origin, handle, tip := p[0], p[1], p[2]
	if handle.y != origin.y || math.Abs(2*handle.x-origin.x-tip.x) > 0.2 {
		t.Fatalf("%v is no parabola from the origin", p)
	}
	for class, q := range flows {
		m := marker(t, n, class)
		r := (m.x - origin.x) / (tip.x - origin.x)
		if y := origin.y + (tip.y-origin.y)*r*r; math.Abs(y-m.y) > 0.3 {
			t.Errorf("%s: marker at %v, curve at %.1f", class, m, y)
		}
		first := marker(t, n, "report")
		if got := (m.x - origin.x) / (first.x - origin.x); math.Abs(got-q/1850) > 0.002 {
			t.Errorf("%s stands at %.3f of the first point's airflow, want %.3f", class, got, q/1850)
		}
	}
}

func TestEveryClassHasItsShape(t *testing.T) {
	shapes := map[string]bool{}
	for _, class := range []string{"report", "found", "planned", "left"} {
		c := crowded()
		c.Points = []Point{point(1000, 0.5, "a", class)}
		m := all(tree(t, c.UI()), "path", "picture-"+class)
		if class == "found" {
			m = all(tree(t, c.UI()), "circle", "picture-found")
		}
		if len(m) != 2 {
			t.Fatalf("%s: %d shapes, want the marker and its label's sign", class, len(m))
		}
		var angles []string
		for _, s := range spots(t, m[1]) {
			angles = append(angles, number(s.x-spots(t, m[1])[0].x), number(s.y-spots(t, m[1])[0].y))
		}
		shapes[m[1].Data+strings.Join(angles, " ")] = true
	}
	if len(shapes) != 4 {
		t.Errorf("%d shapes for 4 classes", len(shapes))
	}
}

func TestLabelsOfNearlyEqualPointsLieApart(t *testing.T) {
	t.Run("usual", func(t *testing.T) { apart(t, usual()) })
	t.Run("crowded", func(t *testing.T) { apart(t, crowded()) })
}

func apart(t *testing.T, c Curve) {
	t.Helper()
	f, _ := c.frame()
	f.top, f.bottom = 40, 40+plotHeight
	tags := c.tags(f)
	if len(tags) != len(c.Points) {
		t.Fatalf("%d labels", len(tags))
	}
	for i, a := range tags {
		for _, b := range tags[:i] {
			if a.box.overlap(b.box) > 0 {
				t.Errorf("%q at %v covers %q at %v", a.name, a.box, b.name, b.box)
			}
			if m := (box{b.at.x - radius, b.at.y - radius, b.at.x + radius, b.at.y + radius}); a.box.overlap(m) > 0 {
				t.Errorf("%q at %v covers the marker of %q", a.name, a.box, b.name)
			}
		}
		if f.crosses(a.box) {
			t.Errorf("the curve runs through %q at %v", a.name, a.box)
		}
	}
}

func TestNoLimitLineRunsThroughALimitLabel(t *testing.T) {
	c := crowded()
	c.Limits = nil
	for _, q := range []float64{2300, 1700, 1950, 1960, 2200} {
		c.Limits = append(c.Limits, Limit{Flow: q, Label: "Service-factor amps", Class: "stop"})
	}
	f, _ := c.frame()
	flags := c.flags(f)
	for _, a := range flags {
		low, high := a.span()
		for _, b := range flags {
			if b.row >= a.row && b.x > low && b.x < high-1 {
				t.Errorf("the line at %v runs through the label at %v", b.Flow, a.Flow)
			}
		}
	}
}

func TestLimitOutOfReach(t *testing.T) {
	n := tree(t, crowded().UI())
	if got := len(all(n, "path", "picture-limit")); got != 2 {
		t.Errorf("%d lines, want 2", got)
	}
	if got := len(all(n, "text", "picture-stop-text")); got != 2 {
		t.Errorf("%d labels of stops, want that of the distant one too", got)
	}
}

func TestNothingToDraw(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, points := range [][]Point{nil, {}, {point(0, 0, "a", "found")}, {point(nan, 1, "a", "found")}, {point(1, inf, "a", "found")}, {point(-5, 1, "a", "found")}} {
		c := crowded()
		c.Points = points
		if n := tree(t, c.UI()); len(all(n, "svg", ""))+len(all(n, "table", "")) != 0 || len(all(n, "div", "")) != 1 {
			t.Errorf("%v is drawn", points)
		}
	}
}

func TestTableSaysWhatThePictureSays(t *testing.T) {
	n := all(tree(t, crowded().UI()), "table", "picture-table")[0]
	if got := words(all(n, "caption", "")[0]); got != "System curve" {
		t.Errorf("caption %q", got)
	}
	var rows []string
	for _, r := range all(n, "tr", "") {
		rows = append(rows, strings.Join(strings.Fields(words(r)), " "))
	}
	want := []string{
		"Airflow, cfm Static pressure, in wg",
		"Balance report 1850 cfm 0.75 in wg", "As found 1860 cfm 0.76 in wg", "Planned 1845 cfm 0.75 in wg", "As left 1872 cfm 0.77 in wg",
		"Plate amps 1980", "Service-factor amps 2100", "Wheel maximum 9000",
	}
	if !slices.Equal(rows, want) {
		t.Errorf("%q", rows)
	}
}

func TestTicksAreRound(t *testing.T) {
	for _, x := range []struct {
		most float64
		n    int
		want []float64
	}{
		{1980, 4, []float64{0, 500, 1000, 1500}},
		{0.8, 5, []float64{0, 0.2, 0.4, 0.6, 0.8}},
		{0.34, 4, []float64{0, 0.1, 0.2, 0.3}},
		{1, 5, []float64{0, 0.2, 0.4, 0.6, 0.8, 1}},
		{12000, 4, []float64{0, 5000, 10000}},
	} {
		if got := round(x.most, x.n); !slices.Equal(got, x.want) {
			t.Errorf("up to %v: %v, want %v", x.most, got, x.want)
		}
	}
}

func TestAnyFiniteFigures(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	figure := func() float64 {
		switch r.IntN(5) {
		case 0:
			return math.Float64frombits(r.Uint64()&^(1<<62) | r.Uint64N(1<<62)) // any size, any sign
		case 1:
			return []float64{0, math.Copysign(0, -1), math.MaxFloat64, math.SmallestNonzeroFloat64, -1, 1e-9, 1e12}[r.IntN(7)]
		case 2:
			return math.Pow(10, r.Float64()*20-9)
		}
		return 2000 * r.Float64()
	}
	drawn := 0
	for range 3000 {
		c := crowded()
		c.Points, c.Limits = c.Points[:1+r.IntN(4)], c.Limits[:r.IntN(4)]
		for i := range c.Points {
			c.Points[i].Flow, c.Points[i].Pressure = figure(), figure()
		}
		for i := range c.Limits {
			c.Limits[i].Flow = figure()
		}
		n := tree(t, c.UI())
		finite(t, n)
		drawn += len(all(n, "svg", ""))
	}
	if drawn < 1000 {
		t.Errorf("only %d of 3000 were drawn", drawn)
	}
}
