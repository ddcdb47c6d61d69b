package picture

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/unit"
)

// A Sheave is an adjustable sheave cut through its shaft's axis, with the belt
// where this setting carries it. It stays in place while the setting changes:
// the fixed flange stands, the movable one and the belt move.
type Sheave struct {
	Closed, Open, Pitch unit.Length // pitch diameters: fully closed, most open, at this setting
	Target              unit.Length // the pitch diameter that would hit the target, 0 if not known
	Angle               unit.Angle  // of the groove, 0 for the usual one

	BeltWidth, BeltDepth unit.Length // 0 for those of the commonest section

	Title, Description      string
	PitchLabel, TargetLabel string
}

const (
	sheaveHeight = 248.0
	axis         = sheaveHeight / 2
	panel        = 186.0 // the sheave's share of the width; the rest is for dimensions
	dimension    = 204.0 // where the dimension line stands
)

// UI draws the sheave, or nothing if its diameters can't be a sheave's.
func (s Sheave) UI() app.UI {
	c, ok := s.section()
	if !ok {
		return app.Div()
	}
	v := newView(c)
	return app.Figure().Class("picture").Body(drawing("picture-sheave", sheaveHeight, s.Title, s.Description,
		path("picture-shaft", v.shaft(c)),
		path("picture-fixed", v.both(c.fixed())),
		path("picture-fine", v.thread(c)),
		path("picture-movable", v.both(c.movable())),
		path("picture-fine", v.both(c.screw())),
		path("picture-belt", v.both(c.belt())),
		path("picture-cord", v.both(c.cord())),
		path("picture-axis", pen(nil).line(spot{2, axis}, spot{dimension - 10, axis})),
		group(s.target(v)...),
		group(s.pitch(v, c)...),
	))
}

// pitch is the dimension of the pitch diameter. Its label breaks into lines,
// beside the axis, where no other text can come.
func (s Sheave) pitch(v view, c section) []app.UI {
	x := v.x(c.gap/2 + c.half)
	top, bottom := v.y(c.pitch), v.y(-c.pitch)
	p := pen(nil).line(spot{x, top}, spot{dimension + 5, top}).
		line(spot{x, bottom}, spot{dimension + 5, bottom}).
		line(spot{dimension, top}, spot{dimension, bottom})
	heads := pen(nil).
		shape(spot{dimension, top}, spot{dimension - 3.5, top + 9}, spot{dimension + 3.5, top + 9}).
		shape(spot{dimension, bottom}, spot{dimension - 3.5, bottom - 9}, spot{dimension + 3.5, bottom - 9})
	drawn := []app.UI{path("picture-dimension", p), path("picture-head", heads)}
	lines := broken(s.PitchLabel, width-dimension-14, 4)
	for i, l := range lines {
		y := axis + (float64(i)-float64(len(lines)-1)/2)*1.25*fontSize + 0.35*fontSize
		drawn = append(drawn, label("picture-text picture-strong", start, dimension+10, y, l))
	}
	return drawn
}

// target is the dashed line on which the belt's pitch line should lie. One
// that lies beyond the drawing is pointed at from its edge.
func (s Sheave) target(v view) []app.UI {
	if !drawable(float64(s.Target) / 2) {
		return nil
	}
	r := float64(s.Target) / 2
	y := v.y(r)
	if y < 4 {
		return []app.UI{label("picture-text picture-target-text", end, width-2, fontSize, fitted("↑ "+s.TargetLabel, width-dimension))}
	}
	p := pen(nil).line(spot{2, y}, spot{width - 2, y}).line(spot{2, v.y(-r)}, spot{width - 2, v.y(-r)})
	base := y - 5
	if base < fontSize {
		base = y + fontSize + 2
	}
	return []app.UI{
		path("picture-target", p),
		label("picture-text picture-target-text", end, width-2, base, fitted(s.TargetLabel, width-dimension-10)),
	}
}

// A view places a section in the drawing. It depends on the sheave alone and
// not on its setting.
type view struct{ scale, shift float64 }

func newView(c section) view {
	s := min(0.88*axis/c.rim, (panel-28)/(c.right-c.left))
	return view{scale: s, shift: panel/2 - s*(c.left+c.right)/2}
}

func (v view) x(x float64) float64 { return v.shift + v.scale*x }
func (v view) y(r float64) float64 { return axis - v.scale*r }

// both draws an outline above the axis and again below it.
func (v view) both(outline []spot) pen {
	up, down := make([]spot, len(outline)), make([]spot, len(outline))
	for i, o := range outline {
		up[i], down[i] = spot{v.x(o.x), v.y(o.y)}, spot{v.x(o.x), v.y(-o.y)}
	}
	return pen(nil).shape(up...).shape(down...)
}

func (v view) shaft(c section) pen {
	return pen(nil).shape(
		spot{v.x(c.left) - 10, v.y(c.shaft)}, spot{v.x(c.right) + 10, v.y(c.shaft)},
		spot{v.x(c.right) + 10, v.y(-c.shaft)}, spot{v.x(c.left) - 10, v.y(-c.shaft)},
	)
}

// thread is the thread's root line on the barrel, thin as drawings have it.
func (v view) thread(c section) pen {
	r := c.bore - 0.25*(c.bore-c.shaft)
	return pen(nil).line(spot{v.x(0), v.y(r)}, spot{v.x(c.right), v.y(r)}).
		line(spot{v.x(0), v.y(-r)}, spot{v.x(c.right), v.y(-r)})
}

// broken breaks a text at its spaces into lines of a width, and shortens what
// won't go in.
func broken(text string, room float64, most int) []string {
	var lines []string
	for _, word := range strings.Fields(text) {
		last := len(lines) - 1
		switch {
		case last >= 0 && extent(lines[last]+" "+word) <= room:
			lines[last] += " " + word
		case len(lines) == most:
			lines[last] = fitted(lines[last]+" "+word, room)
			return lines
		default:
			lines = append(lines, fitted(word, room))
		}
	}
	return lines
}
