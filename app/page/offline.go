package page

import (
	"slices"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// unready are the states in which the site does not work without signal.
var unready = []string{"coming", "cut", "full", "insecure", "blocked", "frame"}

// ready says whether the site works without signal, and where it doesn't, what to do: see
// web/first/offline.js.
func (b *bench) ready() app.UI {
	if !app.IsClient {
		return app.P().Class("field-note")
	}
	now := app.Window().Get("roofside").Get("offline")
	state := now.Get("state").String()
	if slices.Contains(unready, state) {
		return app.P().Class("field-note").Text(b.T("offline." + state))
	}
	since := ""
	if ms := now.Get("since"); ms.Truthy() {
		since = app.Window().Get("Date").New(ms).Call("toLocaleDateString", b.Settings.TextTag()).String()
	}
	return app.P().Class("field-note").Text(b.T("offline.ready", "version", now.Get("version").String(), "date", since))
}
