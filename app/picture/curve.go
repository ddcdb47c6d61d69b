package picture

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// A Curve is a system curve, pressure in proportion to airflow squared through
// the first point, with the operating points and the airflows at which limits
// are met. A table says the same to those who can't see it.
type Curve struct {
	Points []Point
	Limits []Limit

	AxisFlow, AxisPressure string
	Tick                   func(float64) string // writes a round number on an axis

	Title, Description string
}

// A Point is an operating point, in the units that are shown.
type Point struct {
	Flow, Pressure         float64
	Label                  string
	FlowText, PressureText string
	Class                  string // report, found, planned or left: shape and color
}

// A Limit is an airflow at which a limit is met, in the unit that is shown.
type Limit struct {
	Flow     float64
	Label    string
	FlowText string // if empty, written as a tick is
	Class    string // watch or stop
}

// UI draws the curve, or nothing if there is no point to draw.
func (c Curve) UI() app.UI {
	f, ok := c.frame()
	if !ok {
		return app.Div()
	}
	flags := c.flags(f)
	f.top = f.drop(flags)
	f.bottom = f.top + plotHeight
	return app.Figure().Class("picture").Body(
		drawing("picture-curve", f.bottom+footHeight, c.Title, c.Description,
			path("picture-grid", f.grid()),
			group(c.ticks(f)...),
			path("picture-frame", pen(nil).to('M', spot{f.left, f.top}).to('L', spot{f.left, f.bottom}, spot{f.right, f.bottom})),
			group(c.limits(f, flags)...),
			group(c.parabola(f)...),
			label("picture-text", end, f.right, f.bottom+footHeight-5, fitted(c.AxisFlow, width-12)),
			label("picture-text", start, 2, f.top-7, fitted(c.AxisPressure, width-4)),
			group(c.points(f)...),
		),
		app.Div().Class("picture-figures").Body(c.table()), // a table takes no width narrower than its words
	)
}

// parabola is exactly one quadratic Bézier curve from the origin, whose handle
// lies at half its width on the axis.
func (c Curve) parabola(f frame) []app.UI {
	if f.rise == 0 {
		return nil
	}
	q := f.ends()
	origin, handle, tip := spot{f.x(0), f.y(0)}, spot{f.x(q / 2), f.y(0)}, spot{f.x(q), f.y(f.pressure(q))}
	return []app.UI{path("picture-system", pen(nil).to('M', origin).to('Q', handle, tip))}
}

func (c Curve) ticks(f frame) []app.UI {
	var drawn []app.UI
	for _, q := range f.flows {
		text := fitted(c.tick(q), f.right/float64(len(f.flows)))
		x := min(f.x(q), width-1-extent(text)/2)
		drawn = append(drawn, label("picture-text", middle, x, f.bottom+fontSize+3, text))
	}
	for _, p := range f.pressures {
		if p == 0 {
			continue // the corner is marked already
		}
		drawn = append(drawn, label("picture-text", end, f.left-5, f.y(p)+0.35*fontSize, fitted(c.tick(p), f.left-5)))
	}
	return drawn
}

func (c Curve) tick(x float64) string {
	if c.Tick == nil {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return c.Tick(x)
}

// table holds the same figures. A style sheet may hide it from the eye.
func (c Curve) table() app.UI {
	rows := make([]app.UI, 0, len(c.Points)+len(c.Limits))
	row := func(name, flow, pressure string) {
		rows = append(rows, app.Tr().Body(app.Th().Scope("row").Text(name), app.Td().Text(flow), app.Td().Text(pressure)))
	}
	for _, p := range c.Points {
		row(p.Label, p.FlowText, p.PressureText)
	}
	for _, l := range c.Limits {
		flow := l.FlowText
		if flow == "" && plausible(l.Flow) {
			flow = c.tick(l.Flow)
		}
		row(l.Label, flow, "")
	}
	return app.Table().Class("picture-table").Body(
		app.Caption().Text(c.Title),
		app.THead().Body(app.Tr().Body(app.Td(), app.Th().Scope("col").Text(c.AxisFlow), app.Th().Scope("col").Text(c.AxisPressure))),
		app.TBody().Body(rows...),
	)
}
