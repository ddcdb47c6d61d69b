package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/desk"
	"roofside/app/widget"
)

// hold asks the browser to keep what is stored here when it clears other sites:
// once a fan is kept, there is something to lose. Where it doesn't promise to, a
// reminder is due, once.
func (b *bench) hold() {
	if s := storage(); b.live && s.Truthy() && s.Get("persist").Truthy() {
		s.Call("persist").Then(func(granted app.Value) {
			b.ctx.Dispatch(func(app.Context) { b.perishable = !granted.Bool() })
		})
	}
}

func storage() app.Value { return app.Window().Get("navigator").Get("storage") }

// reminder says where a record may be lost, and what keeps it.
func (b *bench) reminder() app.UI {
	if !b.perishable || b.Settings.Reminded || len(b.Fans.IDs()) == 0 {
		return nil
	}
	return app.Div().Class("notice").Role("status").Body(
		app.P().Text(b.T("remind.keep")),
		widget.Button("reminded", b.T("notice.seen"), "", b.guarded(func() { b.Change(func(s *desk.Settings) { s.Reminded = true }) })),
	)
}

// aside hands out what could not be read.
func (b *bench) aside() app.UI {
	n := len(b.Fans.Aside())
	if n == 0 {
		return nil
	}
	return app.Div().Class("notice watch").Body(
		app.P().Text(b.T("aside.is", "n", b.whole(n))),
		app.Div().Class("row").Body(
			widget.Button("aside save", b.T("aside.save"), "", b.guarded(func() { save("roofside-aside.txt", "text/plain", b.Fans.AsideFile()) })),
			widget.Button("aside drop", b.T("aside.drop"), "", b.guarded(b.Fans.DropAside)),
		),
	)
}
