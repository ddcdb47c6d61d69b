package widget

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// keyRow holds signs that a phone's keypad may lack. They go in at the caret;
// the field keeps the focus, so that the keypad stays. It is a component so that
// it is left alone while the field above it is typed into.
type keyRow struct {
	app.Compo
	Field, Help string // the field's id, and what is said of the row
	Signs       []string
}

// Render draws the row.
func (k *keyRow) Render() app.UI {
	return app.Div().Class("keys").Role("group").Aria("label", k.Help).Body(app.Range(k.Signs).Slice(func(i int) app.UI {
		id, key, shown := k.Field, k.Signs[i], k.Signs[i]
		if key == " " {
			shown = "␣"
		}
		return app.Button().Type("button").TabIndex(-1).Class("key").Text(shown).
			OnMouseDown(func(ctx app.Context, e app.Event) { e.PreventDefault() }, app.EventScope(id, key)).
			OnClick(func(ctx app.Context, e app.Event) { insert(id, key) }, app.EventScope(id, key))
	}))
}

func insert(id, text string) {
	e := app.Window().GetElementByID(id)
	if !e.Truthy() {
		return
	}
	e.Call("setRangeText", text, e.Get("selectionStart"), e.Get("selectionEnd"), "end")
	e.Call("dispatchEvent", app.Window().Get("Event").New("input", map[string]any{"bubbles": true}))
}
