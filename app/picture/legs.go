package picture

import (
	"math"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// Legs are three readings as bars around their average: each to the side it lies
// off to, to one scale, with what the meter's error leaves open as a whisker and the
// limit of unbalance as a line to either side. A table says the same.
type Legs struct {
	Bars  [3]Bar
	Limit float64 // as a share of the average; 0 for none
	Class string  // watch or stop: what is beyond the limit

	AverageText, LimitText       string
	ReadingHead, OffHead         string // of the table's columns
	Title, Description, Farthest string
}

// A Bar is one reading, as shares of the average of the three.
type Bar struct {
	Off       float64 // from the average
	Low, High float64 // the least and the greatest it may be off
	Far       bool    // farthest off

	Label, ReadingText, OffText string
}

const (
	legsTop    = 24.0
	legsRow    = 42.0
	legsFoot   = 22.0
	legsMiddle = 148.0
	legsHalf   = 84.0
)

// UI draws the bars, or nothing if a deviation is no number.
func (l Legs) UI() app.UI {
	most := 1.25 * l.Limit
	for _, b := range l.Bars {
		for _, x := range [3]float64{b.Off, b.Low, b.High} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				return app.Div()
			}
			most = max(most, 1.1*math.Abs(x))
		}
	}
	most = within(most, 1e-6, 1.1)
	bottom := legsTop + 3*legsRow
	body := []app.UI{
		label("picture-text", middle, legsMiddle, legsTop-9, fitted(l.AverageText, 2*legsMiddle)),
		path("picture-axis", pen(nil).line(spot{legsMiddle, legsTop - 4}, spot{legsMiddle, bottom})),
	}
	if l.Limit > 0 {
		class := "picture-watch"
		if l.Class == "stop" {
			class = "picture-stop"
		}
		left, right := place(-l.Limit, most), place(l.Limit, most)
		body = append(body,
			path("picture-limit "+class, pen(nil).line(spot{left, legsTop}, spot{left, bottom}).line(spot{right, legsTop}, spot{right, bottom})),
			label("picture-text "+class+"-text", middle, legsMiddle, bottom+legsFoot-6, fitted(l.LimitText, width)),
		)
	}
	for i, b := range l.Bars {
		body = append(body, group(b.draw(legsTop+legsRow*float64(i), most)...))
	}
	return app.Figure().Class("picture").Body(
		drawing("picture-legs", bottom+legsFoot, l.Title, l.Description, body...),
		app.Div().Class("picture-figures").Body(l.table()),
	)
}

// place is where a share of the average lies; what is beyond the drawing lies at its
// edge.
func place(share, most float64) float64 { return legsMiddle + legsHalf*within(share/most, -1, 1) }

func (b Bar) draw(y, most float64) []app.UI {
	const inset = 9.0
	x, low, high := place(b.Off, most), place(b.Low, most), place(b.High, most)
	class, strong := "picture-leg", "picture-text"
	if b.Far {
		class, strong = "picture-leg picture-leg-far", "picture-text picture-strong"
	}
	center := y + legsRow/2
	whisker := pen(nil).line(spot{low, center}, spot{high, center}).
		line(spot{low, center - 5}, spot{low, center + 5}).line(spot{high, center - 5}, spot{high, center + 5})
	return []app.UI{
		path(class, pen(nil).shape(spot{legsMiddle, y + inset}, spot{x, y + inset}, spot{x, y + legsRow - inset}, spot{legsMiddle, y + legsRow - inset})),
		path("picture-whisker", whisker),
		label(strong, start, 2, center+0.35*fontSize, fitted(b.Label, legsMiddle-legsHalf-6)),
		label(strong, end, width-2, center-3, b.ReadingText),
		label(strong, end, width-2, center+fontSize, b.OffText),
	}
}

func (l Legs) table() app.UI {
	return app.Table().Class("picture-table").Body(
		app.Caption().Text(l.Title),
		app.THead().Body(app.Tr().Body(app.Td(), app.Th().Scope("col").Text(l.ReadingHead), app.Th().Scope("col").Text(l.OffHead))),
		app.TBody().Body(app.Range(l.Bars[:]).Slice(func(i int) app.UI {
			b, off := l.Bars[i], l.Bars[i].OffText
			if b.Far {
				off += ", " + l.Farthest
			}
			return app.Tr().Body(app.Th().Scope("row").Text(b.Label), app.Td().Text(b.ReadingText), app.Td().Text(off))
		})),
	)
}
