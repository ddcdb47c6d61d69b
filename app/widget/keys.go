package widget

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// keyRow holds signs that a phone's keypad may lack. They go in at the caret;
// the field keeps the focus, so that the keypad stays.
func keyRow(id, help string, keys []string) app.UI {
	return app.Div().Class("keys").Role("group").Aria("label", help).Body(app.Range(keys).Slice(func(i int) app.UI {
		key, shown := keys[i], keys[i]
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
