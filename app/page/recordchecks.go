package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// checks lists what must be done and read before the handover, part by part.
func (v *recordView) checks() app.UI {
	return app.Div().Class("checks").Body(
		app.H2().Text(v.T("record.checks")),
		app.Range(v.parts).Slice(func(i int) app.UI {
			p := v.parts[i]
			return v.section("part "+p.Name, v.T("part."+p.Name), v.tally(v.parts[i:i+1]), func() app.UI {
				return app.Ul().Class("check-list").Body(app.Range(p.Items).Slice(func(i int) app.UI { return v.item(p.Items[i]) }))
			})
		}),
	)
}

// marks show what became of an item, as a shape with its word.
var itemMarks = map[sheet.ItemState]widget.Level{sheet.Open: widget.Unjudged, sheet.Done: widget.Within, sheet.NotApplicable: widget.Within, sheet.Unreasoned: widget.Unjudged, sheet.Failed: widget.Stop}

func (v *recordView) item(i sheet.Item) app.UI {
	name, word := v.T("item."+i.Name), v.T("state."+stateKeys[i.State])
	if i.Check == nil {
		return app.Li().Class("check").Body(
			widget.Mark(itemMarks[i.State]),
			app.Span().Class("check-name").Body(app.Text(name), app.Small().Text(word)),
			app.If(!i.Settled() && i.Place != nil, func() app.UI {
				key := v.keyOf(i.Place)
				return widget.Button("item "+i.Name+" "+key, v.T("record.to"), "", v.guarded(func() { v.jump(key) })).Aria("label", v.T("record.to")+": "+v.full(key))
			}),
		)
	}
	key := "check." + i.Name
	answer := func(c record.Checked) app.UI {
		on := i.Check.State.Value() == c
		b := widget.Button(key+" "+string(c), v.option(string(c)), "choice", v.guarded(func() { v.take(key, string(c)) })).Aria("pressed", boolean(on)).
			Aria("label", v.option(string(c))+": "+name)
		if c == record.Done {
			b = b.ID(itemID(i.Name))
		}
		return b
	}
	// Memory of what was drawn is kept: each tap changes one line.
	draw := func() app.UI {
		return app.Div().Class("check").Body(
			widget.Mark(itemMarks[i.State]),
			app.Span().Class("check-name").Body(app.Text(name), app.Small().Text(word)),
			app.Div().Class("choices").Body(answer(record.Done), answer(record.NotApplicable)),
		)
	}
	return app.Li().Body(
		v.memo("item "+i.Name, draw, name, word, i.Check.State.Text()),
		app.Div().Body(app.If(i.Check.State.Value() == record.NotApplicable, func() app.UI { return v.field(key + "-why") })),
	)
}

var stateKeys = map[sheet.ItemState]string{sheet.Open: "open", sheet.Done: "done", sheet.NotApplicable: "not-applicable", sheet.Unreasoned: "unreasoned", sheet.Failed: "failed"}
