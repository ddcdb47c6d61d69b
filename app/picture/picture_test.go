package picture

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
	"golang.org/x/net/html"

	"roofside/calc/unit"
)

const hostile = `"><script>alert(1)</script><b x="&lt;' onload=x`

func small() Sheave {
	return Sheave{
		Closed: 3.4 * unit.Inch, Open: 2.4 * unit.Inch, Pitch: 3 * unit.Inch, Target: 3.15 * unit.Inch,
		Title: "Motor sheave", Description: "2 turns open", PitchLabel: "Pitch diameter 3.00 in", TargetLabel: "Target 3.15 in",
	}
}

func point(flow, pressure float64, name, class string) Point {
	return Point{flow, pressure, name, fmt.Sprintf("%.0f cfm", flow), fmt.Sprintf("%.2f in wg", pressure), class}
}

// crowded has four points that nearly coincide.
func crowded() Curve {
	return Curve{
		Points: []Point{
			point(1850, 0.75, "Balance report", "report"), point(1860, 0.756, "As found", "found"),
			point(1845, 0.748, "Planned", "planned"), point(1872, 0.77, "As left", "left"),
		},
		Limits:   []Limit{{Flow: 1980, Label: "Plate amps", Class: "watch"}, {Flow: 2100, Label: "Service-factor amps", Class: "stop"}, {Flow: 9000, Label: "Wheel maximum", Class: "stop"}},
		AxisFlow: "Airflow, cfm", AxisPressure: "Static pressure, in wg",
		Tick:  func(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) },
		Title: "System curve", Description: "Four operating points",
	}
}

// usual is a fan found slow, and set back to its report.
func usual() Curve {
	c := crowded()
	c.Points = []Point{point(1850, 0.75, "Balance report", "report"), point(1520, 0.506, "As found", "found"), point(1905, 0.795, "Planned", "planned")}
	c.Limits = c.Limits[:2]
	return c
}

// tree is what a browser would make of a drawing. go-app quotes attributes as
// Go does, which for these is as HTML does: all are numbers, paths and classes.
func tree(t *testing.T, u app.UI) *html.Node {
	t.Helper()
	n, err := html.Parse(strings.NewReader(app.HTMLString(u)))
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// all returns the elements with a tag and, if it is not empty, with a class.
func all(n *html.Node, tag, class string) []*html.Node {
	var found []*html.Node
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && d.Data == tag && (class == "" || has(d, class)) {
			found = append(found, d)
		}
	}
	return found
}

func has(n *html.Node, class string) bool {
	for _, c := range strings.Fields(attr(n, "class")) {
		if c == class {
			return true
		}
	}
	return false
}

func attr(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func words(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return strings.TrimSpace(b.String())
}

func float(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// spots returns the places that a path goes through, in order.
func spots(t *testing.T, n *html.Node) []spot {
	t.Helper()
	f := strings.FieldsFunc(attr(n, "d"), func(r rune) bool { return strings.ContainsRune("AMLQZ ", r) })
	var s []spot
	for i := 0; i+1 < len(f); i += 2 {
		s = append(s, spot{float(t, f[i]), float(t, f[i+1])})
	}
	return s
}

// finite fails on any attribute that is not a number where it should be one,
// and on one that is too large to be in a drawing.
func finite(t *testing.T, n *html.Node) {
	t.Helper()
	for d := range n.Descendants() {
		if d.Namespace != "svg" {
			continue
		}
		for _, a := range d.Attr {
			var numbers []string
			switch a.Key {
			case "d":
				numbers = strings.FieldsFunc(a.Val, func(r rune) bool { return strings.ContainsRune("AMLQZ ", r) })
			case "x", "y", "cx", "cy", "r":
				numbers = []string{a.Val}
			case "viewBox":
				numbers = strings.Fields(a.Val)
			}
			for _, x := range numbers {
				// NaN fails both comparisons.
				if v := float(t, x); !(v > -2000 && v < 2000) {
					t.Fatalf("%s %s=%q", d.Data, a.Key, a.Val)
				}
			}
		}
	}
}

func TestNamedAndDescribed(t *testing.T) {
	for name, u := range map[string]app.UI{"sheave": small().UI(), "curve": crowded().UI(), "belt": taut().UI(), "legs": uneven().UI(), "conduit": wired().UI(), "chain": chained().UI()} {
		n := tree(t, u)
		svg := all(n, "svg", "")
		if len(svg) != 1 || attr(svg[0], "role") != "img" {
			t.Fatalf("%s: not one drawing with the role of an image", name)
		}
		want := map[string]string{"sheave": "Motor sheave|2 turns open", "curve": "System curve|Four operating points", "belt": "The drive|3.4 in under 8.4 in", "legs": "Amps around their average|Three bars", "conduit": "Section of the conduit|Three and a ground", "chain": "Parts|Bushing, connector"}[name]
		if got := words(all(svg[0], "title", "")[0]) + "|" + words(all(svg[0], "desc", "")[0]); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
}

func TestTextIsNeverMarkup(t *testing.T) {
	s, c := small(), crowded()
	s.Title, s.Description, s.PitchLabel, s.TargetLabel = hostile, hostile, hostile, hostile
	c.Title, c.Description, c.AxisFlow, c.AxisPressure = hostile, hostile, hostile, hostile
	c.Tick = func(float64) string { return hostile }
	for i := range c.Points {
		p := &c.Points[i]
		p.Label, p.FlowText, p.PressureText, p.Class = hostile, hostile, hostile, hostile
	}
	for i := range c.Limits {
		l := &c.Limits[i]
		l.Label, l.FlowText, l.Class = hostile, hostile, hostile
	}
	b := taut()
	b.Title, b.Description, b.MotorLabel, b.FanLabel, b.CenterLabel, b.SpanLabel, b.PressLabel = hostile, hostile, hostile, hostile, hostile, hostile, hostile
	g := uneven()
	g.Title, g.Description, g.AverageText, g.LimitText, g.ReadingHead, g.OffHead, g.Farthest, g.Class = hostile, hostile, hostile, hostile, hostile, hostile, hostile, hostile
	for i := range g.Bars {
		bar := &g.Bars[i]
		bar.Label, bar.ReadingText, bar.OffText = hostile, hostile, hostile
	}
	w, h := wired(), chained()
	w.Title, w.Description, w.InsideLabel, w.Outside = hostile, hostile, hostile, func(int) string { return hostile }
	for i := range w.Wires {
		w.Wires[i].Kind, w.Wires[i].Label = hostile, hostile
	}
	h.Title, h.Description, h.OpeningLabel, h.EndLabel = hostile, hostile, hostile, hostile
	for name, pair := range map[string][2]app.UI{"conduit": {w.UI(), wired().UI()}, "chain": {h.UI(), chained().UI()}, "sheave": {s.UI(), small().UI()}, "curve": {c.UI(), crowded().UI()}, "belt": {b.UI(), taut().UI()}, "legs": {g.UI(), uneven().UI()}} {
		n := tree(t, pair[0])
		if got := words(all(n, "title", "")[0]); got != hostile {
			t.Errorf("%s: title %q", name, got)
		}
		if got, want := kinds(n), kinds(tree(t, pair[1])); got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
}

// kinds lists which elements and attributes there are.
func kinds(n *html.Node) string {
	seen := map[string]bool{}
	for d := range n.Descendants() {
		if d.Type == html.ElementNode {
			seen[d.Data] = true
			for _, a := range d.Attr {
				seen[d.Data+"@"+a.Key] = true
			}
		}
	}
	return fmt.Sprint(seen)
}

func TestNothingInline(t *testing.T) {
	for d := range tree(t, app.Div().Body(small().UI(), crowded().UI(), taut().UI(), uneven().UI(), wired().UI(), chained().UI())).Descendants() {
		if attr(d, "style") != "" || d.Data == "style" {
			t.Errorf("%s carries a style, which the site's policy blocks", d.Data)
		}
	}
}
