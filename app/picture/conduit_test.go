package picture

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"roofside/calc/unit"
)

// wired is 1/2 LFMC with three wires and a ground.
func wired() Conduit {
	return Conduit{
		Inside: 0.632 * unit.Inch, Title: "Section of the conduit", Description: "Three and a ground", InsideLabel: "0.632 in",
		Wires: []Wire{
			{Diameter: 0.130 * unit.Inch, Count: 3, Kind: "circuit", Mark: "12", Label: "3 × 12 THWN-2"},
			{Diameter: 0.164 * unit.Inch, Count: 1, Kind: "ground", Mark: "10", Label: "1 × 10 THWN-2"},
		},
		Outside: func(n int) string { return fmt.Sprintf("%d find no room", n) },
	}
}

// apartAndInside fails on discs that lie on each other or in the wall.
func apartAndInside(t *testing.T, in []disc) {
	t.Helper()
	for i, d := range in {
		if far := math.Hypot(d.at.x, d.at.y) + d.r; far > 1+1e-5 {
			t.Errorf("disc %d of %.3f reaches to %.6f", i, d.r, far)
		}
		for j, e := range in[:i] {
			if gap := math.Hypot(d.at.x-e.at.x, d.at.y-e.at.y) - d.r - e.r; gap < -1e-5 {
				t.Errorf("discs %d and %d lie %.6f on each other", j, i, -gap)
			}
		}
	}
}

func TestWiresLieApartInTheConduit(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		var discs []disc
		for size := 0.6 * r.Float64(); len(discs) < MostDrawn && size > 0.02; size *= 0.6 + 0.4*r.Float64() {
			for range 1 + r.IntN(6) {
				discs = append(discs, disc{r: size})
			}
		}
		in, out := pack(discs)
		if len(in)+len(out) != len(discs) {
			t.Fatalf("%d and %d of %d", len(in), len(out), len(discs))
		}
		apartAndInside(t, in)
		if t.Failed() {
			return
		}
	}
}

// Each wire touches the wall or two others below it: none floats.
func TestWiresRest(t *testing.T) {
	in, out := pack(wired().discs())
	if len(in) != 4 || len(out) != 0 {
		t.Fatalf("%d in, %d out", len(in), len(out))
	}
	if in[0].r <= in[1].r {
		t.Error("the largest is not the first")
	}
	for i, d := range in {
		touches := 0
		if math.Abs(math.Hypot(d.at.x, d.at.y)+d.r-1) < 1e-6 {
			touches++
		}
		for j, e := range in {
			if j != i && math.Abs(math.Hypot(d.at.x-e.at.x, d.at.y-e.at.y)-d.r-e.r) < 1e-6 {
				touches++
			}
		}
		if i > 0 && touches < 2 {
			t.Errorf("wire %d touches %d things", i, touches)
		}
	}
}

// Known packings: two discs of half the radius just go in, three of 0.4641016
// (1/(1+2/√3)), seven of a third; a hair larger ones don't.
func TestPackingsThatAreKnown(t *testing.T) {
	for n, r := range map[int]float64{1: 1, 2: 0.5, 3: 1 / (1 + 2/math.Sqrt(3))} {
		for scale, want := range map[float64]int{0.99999: n, 1.001: n - 1} {
			var discs []disc
			for range n {
				discs = append(discs, disc{r: r * scale})
			}
			in, out := pack(discs)
			apartAndInside(t, in)
			if len(in) != want || len(out) != n-want {
				t.Errorf("%d of %.5f: %d in, %d out", n, r*scale, len(in), len(out))
			}
		}
	}
}

// Wires and conduit share one scale.
func TestTheSectionIsToScale(t *testing.T) {
	c := wired()
	n := tree(t, c.UI())
	inside := float(t, attr(all(n, "circle", "picture-inside")[0], "r"))
	drawn := all(n, "circle", "picture-circuit")
	if len(drawn) != 4 { // and one in the legend
		t.Fatalf("%d circles", len(drawn))
	}
	if got, want := float(t, attr(drawn[0], "r"))/inside, 0.130/0.632; math.Abs(got-want) > 0.001 {
		t.Errorf("%.4f of the inside, want %.4f", got, want)
	}
	if len(all(n, "circle", "picture-ring")) != 2 {
		t.Error("the ground is told by its color alone")
	}
}

func TestWhatFindsNoRoomIsSaid(t *testing.T) {
	c := wired()
	c.Wires[0].Count = 30
	n := tree(t, c.UI())
	in, out := pack(c.discs())
	said := words(all(n, "text", "picture-stop-text")[0])
	if len(out) == 0 || len(in)+len(out) != 31 || !strings.HasPrefix(said, fmt.Sprint(len(out))) {
		t.Errorf("%d in, %d out: %q", len(in), len(out), said)
	}
	c.Wires[0].Count = 1_000_000
	if d := c.discs(); len(d) != MostDrawn {
		t.Errorf("%d discs", len(d))
	}
}

func TestNoSectionFromImpossibleNumbers(t *testing.T) {
	for _, x := range []unit.Length{0, -1, unit.Length(math.NaN()), unit.Length(math.Inf(1)), 1e-300, 1e300} {
		c := wired()
		c.Inside = x
		if len(all(tree(t, c.UI()), "svg", "")) != 0 {
			t.Errorf("a conduit of %v is drawn", float64(x))
		}
		c = wired()
		c.Wires[0].Diameter, c.Wires[1].Count = x, -3
		finite(t, tree(t, c.UI()))
	}
}

// parts are a bushing and a connector between a hub and flexible conduit.
func chained() Chain {
	wide, narrow := 1.050*unit.Inch, 0.840*unit.Inch
	return Chain{
		Opening: Opening{"hub", wide}, Conduit: Tube{narrow, true}, Title: "Parts", Description: "Bushing, connector", OpeningLabel: "Threaded hub 3/4", EndLabel: "LFMC 1/2",
		Links: []Link{{Left: Face{"male", wide}, Right: Face{"female", narrow}}, {Left: Face{"male", narrow}, Right: Face{"conduit", narrow}}},
	}
}

func TestTheChainShowsEachPartInOrder(t *testing.T) {
	c := chained()
	n := tree(t, c.UI())
	last := 0.0
	for i, l := range all(n, "text", "picture-strong") {
		x := float(t, attr(l, "x"))
		if words(l) != fmt.Sprint(i+1) || x <= last {
			t.Errorf("part %d is %q at %v", i+1, words(l), x)
		}
		last = x
	}
	// A male thread goes into the female one of its size: they are as high.
	height := func(class string, i int) float64 {
		s := spots(t, all(n, "path", class)[i])
		return s[2].y - s[1].y
	}
	male, hidden := height("picture-fixed", 2), spots(t, all(n, "path", "picture-hidden")[0])
	if got := hidden[2].y - hidden[0].y; math.Abs(male-got) > 0.2 {
		t.Errorf("a male thread %v high, the hub's %v", male, got)
	}
}

func TestEveryOpeningAndPartStaysInItsDrawing(t *testing.T) {
	sizes := []unit.Length{0, 0.675 * unit.Inch, 2.375 * unit.Inch, unit.Length(math.NaN()), unit.Length(math.Inf(1)), 1e-9, 1e9}
	for _, kind := range []string{"hub", "knockout", "ring-knockout", "fitting", "conduit", "", "odd"} {
		for _, size := range sizes {
			c := chained()
			c.Opening = Opening{kind, size}
			for range 6 {
				c.Links = append(c.Links, Link{Left: Face{"panel", size}, Right: Face{"panel", 1 * unit.Inch}}, Link{Left: Face{"panel", 1 * unit.Inch}, Right: Face{"female", size}, Nut: true})
			}
			finite(t, tree(t, c.UI()))
		}
	}
	c := chained()
	c.Links = nil
	if len(all(tree(t, c.UI()), "svg", "")) != 1 {
		t.Error("nothing is drawn where nothing is needed")
	}
}

// What is on the end inside a knockout is drawn on the other side of its metal.
func TestABushingInsideIsBehindTheMetal(t *testing.T) {
	across := 1.050 * unit.Inch
	c := Chain{
		Opening: Opening{"knockout", across}, Conduit: Tube{across, false}, Title: "Parts", Description: "Bushing, locknuts",
		Links: []Link{
			{Left: Face{"female", across}, Right: Face{"female", across}, Nut: true, Inside: true},
			{Left: Face{"panel", across}, Right: Face{"panel", across}},
		},
	}
	n := tree(t, c.UI())
	metal := spots(t, all(n, "path", "picture-fixed")[0])
	numbers := all(n, "text", "picture-strong")
	if inside, outside := float(t, attr(numbers[0], "x")), float(t, attr(numbers[1], "x")); inside+5 >= metal[0].x || outside <= metal[0].x {
		t.Errorf("the metal at %v, the bushing at %v, the locknuts at %v", metal[0].x, inside, outside)
	}
	finite(t, n)
}
