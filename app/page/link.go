package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
)

// copyLink gives the present inputs as a link, through the clipboard, and shows
// it where the browser has none for this page.
func (b *bench) copyLink(route string) app.UI {
	return app.Div().Class("copylink").Body(
		widget.Button("copy link", b.T("link.copy"), "", b.guarded(func() {
			b.link = app.Window().Get("location").Get("origin").String() + href(route) + "#" + b.Fan.Fragment()
			if c := app.Window().Get("navigator").Get("clipboard"); c.Truthy() {
				c.Call("writeText", b.link)
			}
		})),
		app.If(b.link != "", func() app.UI {
			return app.Input().Type("text").Class("field-input").ReadOnly(true).Aria("label", b.T("link.is")).Value(b.link)
		}),
	)
}
