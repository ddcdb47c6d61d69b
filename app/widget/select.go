package widget

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// A Select is one of many words, chosen from the device's own list: its lines
// are made for a thumb. The first line leaves none chosen.
type Select struct {
	Key     string
	Load    int
	Label   string
	Side    string
	None    string // what the first line says
	Note    string
	Error   string
	Options []Option
	OnTake  func(string)
}

// none is the value of the first line: go-app drops an empty one.
const none = "-"

// UI draws the list. Which line is chosen is said by the lines: go-app ignores
// the value of a select.
func (s Select) UI() app.UI {
	id := ID(s.Key)
	chosen := false
	for _, o := range s.Options {
		chosen = chosen || o.Chosen
	}
	list := app.Select().ID(id).Name(s.Key).Class("field-input").OnChange(typed(func(v string) {
		if v == none {
			v = ""
		}
		s.OnTake(v)
	}), app.EventScope(s.Key, s.Load))
	if s.Side != "" {
		list = list.Aria("label", s.Side+": "+s.Label)
	}
	if s.Error != "" {
		list = list.Aria("invalid", "true")
	}
	if s.Error+s.Note != "" {
		list = list.Aria("describedby", id+"-note")
	}
	return own(s.Key, s.Load).Body(app.Div().Class("field").Body(
		app.Div().Class("field-head").Body(app.Label().For(id).Text(s.Label)),
		list.Body(
			line(none, s.None, !chosen),
			app.Range(s.Options).Slice(func(i int) app.UI { return line(s.Options[i].Value, s.Options[i].Label, s.Options[i].Chosen) }),
		),
		noted(id, s.Error, s.Note),
	))
}

// line is one line of the list. What go-app writes for a false attribute is true
// to a browser.
func line(value, text string, chosen bool) app.UI {
	o := app.Option().Value(value).Text(text)
	if chosen {
		o = o.Selected(true)
	}
	return o
}

// noted is what stands under a control: what is wrong with it, or a remark.
func noted(id, err, note string) app.UI {
	return app.If(err+note != "", func() app.UI { return app.P().ID(id + "-note").Class(noteClass(err)).Text(err + note) })
}
