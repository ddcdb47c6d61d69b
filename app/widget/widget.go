// Package widget holds the parts that pages are made of: exported fields in,
// callbacks out, no arithmetic, and no knowledge of fans. Words come in
// ready-made.
//
// go-app reuses nodes by position and drops an empty value, so that an input
// could go on showing another field's text. Each field therefore stands in an
// element whose tag carries its key and how often it was loaded: another tag
// is another node.
package widget

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// own returns an element that is never reused for another key.
func own(key string, load int) app.HTMLElem {
	return app.Elem("f-" + ID(key) + "-" + strconv.Itoa(load)).Class("own")
}

// ID returns the id of the input with a key.
func ID(key string) string { return strings.ReplaceAll(key, ".", "-") }

// typed passes on the text of the input that an event comes from.
func typed(act func(string)) app.EventHandler {
	return func(ctx app.Context, e app.Event) { act(ctx.JSSrc().Get("value").String()) }
}

func done(act func()) app.EventHandler {
	return func(ctx app.Context, e app.Event) { act() }
}

// Button is a plain button.
func Button(name, label, class string, act func()) app.HTMLButton {
	return app.Button().Type("button").Name(name).Class(class).Text(label).OnClick(done(act), app.EventScope(name))
}
