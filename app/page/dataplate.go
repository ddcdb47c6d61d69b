package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/sheet"
)

// dataplate is the plate of a page, which carries the worst that stands on it, for
// machines too: a plate has no room for all of it.
func (b *bench) dataplate(on sheet.Subject, worst sheet.Held, label string, body ...app.UI) app.UI {
	return app.Section().Class("dataplate").DataSet("plate", string(on)).DataSet("verdict", string(levels[worst.Level])).DataSet("of", "plate").
		Aria("label", label).Body(body...)
}

// ordering puts on the output that words the next move what it orders, for machines.
func ordering(o app.HTMLOutput, order sheet.Order) app.HTMLOutput {
	o = o.DataSet("do", order.Do)
	if order.Setting {
		o = o.DataSet("to", exact(float64(order.To)))
	}
	return o
}
