package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
)

// copyLink gives the present inputs as a link, through the clipboard, and shows
// it where the browser has none for this page.
func (b *bench) copyLink(route string) app.UI {
	return app.Div().Class("copylink").Body(
		widget.Button("copy link", b.T("link.copy"), "", b.guarded(func() {
			fragment := b.Fan.Fragment()
			if b.link = ""; len(fragment) > record.LongestLink {
				b.long = true
				return
			}
			b.link = app.Window().Get("location").Get("origin").String() + href(route) + "#" + fragment
			if c := app.Window().Get("navigator").Get("clipboard"); c.Truthy() {
				c.Call("writeText", b.link)
			}
		})),
		app.If(b.long, func() app.UI { return app.P().Class("field-note error").Text(b.T("link.long")) }),
		app.If(b.link != "", func() app.UI {
			return app.Input().Type("text").Class("field-input").ReadOnly(true).Aria("label", b.T("link.is")).Value(b.link)
		}),
	)
}
