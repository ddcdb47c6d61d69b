package picture

import (
	"slices"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/unit"
)

// A Conduit is a raceway cut across, with its conductors to scale. They lie as
// low as they go; a pull lays them otherwise.
type Conduit struct {
	Inside unit.Length // diameter
	Wires  []Wire

	Title, Description string
	InsideLabel        string           // of the diameter
	Outside            func(int) string // so many find no room, in words
}

// A Wire is a number of like conductors.
type Wire struct {
	Diameter unit.Length
	Count    int
	Kind     string // circuit, ground or other: as they are drawn
	Mark     string // in each of them, where there is room
	Label    string
}

const (
	conduitHeight = 214.0
	conduitRadius = 88.0
	conduitX      = 94.0
	conduitY      = 96.0
	legend        = 198.0 // where the legend begins
)

// UI draws the section, or nothing if there is no such raceway.
func (c Conduit) UI() app.UI {
	if !drawable(float64(c.Inside) / 2) {
		return app.Div()
	}
	in, out := pack(c.discs())
	p := pen(nil)
	body := []app.UI{ring("picture-wall", conduitX, conduitY, conduitRadius+3), ring("picture-inside", conduitX, conduitY, conduitRadius)}
	for _, d := range in {
		w := c.Wires[d.wire]
		x, y, r := conduitX+conduitRadius*d.at.x, conduitY-conduitRadius*d.at.y, conduitRadius*d.r
		body = append(body, wire(w, x, y, r)...)
	}
	body = append(body, path("picture-dimension", p.line(spot{conduitX - conduitRadius, conduitHeight - 12}, spot{conduitX + conduitRadius, conduitHeight - 12}).
		line(spot{conduitX - conduitRadius, conduitHeight - 17}, spot{conduitX - conduitRadius, conduitHeight - 7}).
		line(spot{conduitX + conduitRadius, conduitHeight - 17}, spot{conduitX + conduitRadius, conduitHeight - 7})),
		label("picture-text picture-strong", middle, conduitX, conduitHeight-8, fitted(c.InsideLabel, 2*conduitRadius-12)))
	return app.Figure().Class("picture").Body(drawing("picture-conduit", conduitHeight, c.Title, c.Description, append(body, c.legend(len(out))...)...))
}

// discs returns the conductors that are drawn, largest first, in radii of the
// raceway.
func (c Conduit) discs() []disc {
	var all []disc
	for i, w := range c.Wires {
		r := float64(w.Diameter / c.Inside)
		if !(r > 0 && r < 100) {
			continue
		}
		behind := len(all)
		for behind > 0 && all[behind-1].r < r {
			behind--
		}
		alike := slices.Repeat([]disc{{r: r, wire: i}}, max(0, min(w.Count, MostDrawn)))
		all = slices.Insert(all, behind, alike...)
	}
	return all[:min(len(all), MostDrawn)]
}

// wire draws one conductor: a ground with a second ring, another circuit's
// dashed, so that none is told by color alone.
func wire(w Wire, x, y, r float64) []app.UI {
	class := "picture-wire picture-circuit"
	switch w.Kind {
	case "ground":
		class = "picture-wire picture-ground"
	case "other":
		class = "picture-wire picture-other"
	}
	drawn := []app.UI{ring(class, x, y, r)}
	if w.Kind == "ground" {
		drawn = append(drawn, ring("picture-ring", x, y, 0.72*r))
	}
	if extent(w.Mark) < 1.4*r {
		drawn = append(drawn, label("picture-mark", middle, x, y+0.35*fontSize, w.Mark))
	}
	return drawn
}

// legend says what is drawn, beside the section.
func (c Conduit) legend(out int) []app.UI {
	var drawn []app.UI
	const swatch = 7.0
	y := 20.0
	for _, w := range c.Wires {
		lines := broken(w.Label, width-legend-2*swatch-8, 4)
		if y+float64(len(lines))*1.2*fontSize > conduitHeight-30 {
			break
		}
		w.Mark = ""
		drawn = append(drawn, wire(w, legend+swatch, y-4, swatch)...)
		for _, l := range lines {
			drawn = append(drawn, label("picture-text", start, legend+2*swatch+6, y, l))
			y += 1.2 * fontSize
		}
		y += 0.5 * fontSize
	}
	if out > 0 && c.Outside != nil {
		for _, l := range broken(c.Outside(out), width-legend, 3) {
			drawn = append(drawn, label("picture-text picture-stop-text picture-strong", start, legend, y, l))
			y += 1.2 * fontSize
		}
	}
	return drawn
}

func ring(class string, x, y, r float64) app.UI {
	return element("circle").Class(class).Attr("cx", number(x)).Attr("cy", number(y)).Attr("r", number(r))
}
