package picture

import (
	"math"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/unit"
)

// A Belt is an open drive to scale, the motor on the left: both sheaves by their
// pitch diameters, the belt around them, and the upper span pressed in at its
// middle.
type Belt struct {
	Motor, Fan unit.Length // pitch diameters
	Center     unit.Length
	Press      unit.Length // how far the span is pressed in, 0 if not known

	Title, Description string
	MotorLabel         string
	FanLabel           string
	CenterLabel        string
	SpanLabel          string
	PressLabel         string
}

const (
	overDrive   = 62.0  // room above, for the press and its figures
	tallest     = 148.0 // of a sheave
	underDrive  = 36.0  // and below, for the center distance
	driveHeight = overDrive + tallest + underDrive
)

// UI draws the drive, or nothing if no drive has these measures.
func (b Belt) UI() app.UI {
	c, ok := b.course()
	if !ok {
		return app.Div()
	}
	drawn := []app.UI{
		path("picture-disc", circle(c.motor, c.d)), path("picture-disc", circle(c.fan, c.D)),
		path("picture-shaft", circle(c.motor, hub(c.d))), path("picture-shaft", circle(c.fan, hub(c.D))),
		path("picture-round", c.around()),
		path("picture-axis", pen(nil).line(c.motor, c.fan)),
		group(c.distance(driveHeight-underDrive+12, b.CenterLabel)...),
		c.named(c.motor, c.d, b.MotorLabel), c.named(c.fan, c.D, b.FanLabel),
		group(c.pressed(b.PressLabel, b.SpanLabel)...),
	}
	return app.Figure().Class("picture").Body(drawing("picture-drive", driveHeight, b.Title, b.Description, drawn...))
}

// A course is the belt's way in the drawing.
type course struct {
	motor, fan spot
	d, D       float64 // pitch radii
	press      float64
	lean       float64 // of the upper span, downward to the right
}

// course lays the drive out. It reports false if there is nothing to draw.
func (b Belt) course() (course, bool) {
	d, D, C := float64(b.Motor)/2, float64(b.Fan)/2, float64(b.Center)
	if !drawable(d) || !drawable(D) || !drawable(C) || C <= d+D {
		return course{}, false
	}
	s := min((width-8)/(d+C+D), tallest/(2*max(d, D)))
	left := (width - s*(d+C+D)) / 2
	c := course{d: s * d, D: s * D, lean: math.Asin((d - D) / C)}
	const y = overDrive + tallest/2
	c.motor, c.fan = spot{left + c.d, y}, spot{left + c.d + s*C, y}
	if drawable(float64(b.Press)) && float64(b.Press) < C/8 {
		c.press = s * float64(b.Press)
	}
	return c, true
}

// touch is where a span leaves a sheave: above, or below with side −1.
func (c course) touch(center spot, r, side float64) spot {
	return spot{center.x + r*math.Sin(c.lean), center.y - side*r*math.Cos(c.lean)}
}

// at is a place on the upper span, from its middle: along it, and pressed inward.
func (c course) at(inward float64) spot {
	a, b := c.touch(c.motor, c.d, 1), c.touch(c.fan, c.D, 1)
	m := spot{(a.x + b.x) / 2, (a.y + b.y) / 2}
	return spot{m.x - inward*math.Sin(c.lean), m.y + inward*math.Cos(c.lean)}
}

// around is the belt: both arcs, the lower span straight, the upper one pressed.
func (c course) around() pen {
	a, b := c.touch(c.motor, c.d, 1), c.touch(c.fan, c.D, 1)
	e, f := c.touch(c.fan, c.D, -1), c.touch(c.motor, c.d, -1)
	p := pen(nil).to('M', a).to('L', c.at(c.press), b)
	p = p.arc(c.D, c.D > c.d, e).to('L', f)
	return append(p.arc(c.d, c.d > c.D, a), 'Z')
}

// pressed is the arrow at the middle of the span, with its figures above.
func (c course) pressed(press, span string) []app.UI {
	tip, tail := c.at(c.press), c.at(-12)
	lines := []string{span}
	if c.press > 0 {
		lines, tail = append(lines, press), c.at(c.press-34)
	}
	var drawn []app.UI
	for i, l := range lines {
		drawn = append(drawn, centered("picture-text", tail.x, max(tail.y-8, 28)-15*float64(len(lines)-1-i), l))
	}
	if c.press > 0 {
		ux, uy := math.Sin(c.lean), -math.Cos(c.lean) // outward
		base := spot{tip.x + 9*ux, tip.y + 9*uy}
		drawn = append(drawn, path("picture-dimension", pen(nil).line(c.touch(c.motor, c.d, 1), c.touch(c.fan, c.D, 1))),
			path("picture-press", pen(nil).line(tail, base)),
			path("picture-press-head", pen(nil).shape(tip, spot{base.x - 4*uy, base.y + 4*ux}, spot{base.x + 4*uy, base.y - 4*ux})))
	}
	return drawn
}

// named writes a sheave's name in it under its shaft, or under the belt where the
// sheave has no room.
func (c course) named(center spot, r float64, text string) app.UI {
	y := center.y + hub(r) + 1.35*fontSize
	if r < 3*fontSize {
		y = center.y + r + 1.5*fontSize
	}
	return centered("picture-text picture-strong", center.x, y, text)
}

// distance is the dimension between the axes.
func (c course) distance(y float64, text string) []app.UI {
	p := pen(nil).line(c.motor, spot{c.motor.x, y + 4}).line(c.fan, spot{c.fan.x, y + 4}).line(spot{c.motor.x, y}, spot{c.fan.x, y})
	heads := pen(nil).
		shape(spot{c.motor.x, y}, spot{c.motor.x + 9, y - 3.5}, spot{c.motor.x + 9, y + 3.5}).
		shape(spot{c.fan.x, y}, spot{c.fan.x - 9, y - 3.5}, spot{c.fan.x - 9, y + 3.5})
	return []app.UI{path("picture-dimension", p), path("picture-head", heads), centered("picture-text", (c.motor.x+c.fan.x)/2, y+16, text)}
}

// centered is a text with its middle at a place, or as near to it as the drawing
// has room for.
func centered(class string, x, y float64, text string) app.UI {
	text = fitted(text, width-8)
	half := extent(text) / 2
	return label(class, middle, within(x, half+2, width-2-half), y, text)
}

// hub is the radius of a shaft under a sheave of a radius.
func hub(r float64) float64 { return min(6, 0.3*r) }

// arc goes on along a circle of radius r to a place, clockwise.
func (p pen) arc(r float64, large bool, to spot) pen {
	p = append(p, 'A')
	p = append(digits(p, r), ' ')
	p = append(digits(p, r), " 0 0 1 "...)
	if large {
		p[len(p)-4] = '1'
	}
	p = append(digits(p, to.x), ' ')
	return digits(p, to.y)
}

// circle is one of a radius, in two halves.
func circle(center spot, r float64) pen {
	left, right := spot{center.x - r, center.y}, spot{center.x + r, center.y}
	return append(pen(nil).to('M', left).arc(r, false, right).arc(r, false, left), 'Z')
}
