package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A leaf is what every page embeds: it follows links, frames the page and
// catches what fails in drawing it.
type leaf struct {
	app.Compo
	route string
}

// OnMount keeps the context, through which the focus is moved later.
func (l *leaf) OnMount(ctx app.Context) {
	shared.ctx, shared.live, shared.listing, shared.resting = ctx, true, false, false
	app.Window().Get("roofside").Set("live", true)
	if app.Window().Get("roofside").Get("updateReady").Truthy() {
		shared.update = true
	}
}

// OnNav follows the fragment of a link, once: it is then taken out of the
// address, so that a reload never overwrites what came later. The first link is
// followed before the first page is drawn, which then needn't be drawn again.
func (l *leaf) OnNav(ctx app.Context) {
	b := shared
	b.ctx = ctx
	u := *ctx.Page().URL()
	fragment := u.EscapedFragment()
	entry := entryOf(fragment)
	if fragment != "" && !entry {
		b.guarded(func() { b.Follow(fragment) })()
		u.Fragment, u.RawFragment = "", ""
		ctx.Page().ReplaceURL(&u)
	}
	b.choosing, b.link, b.copied, b.typing, b.printing = "", "", "", "", ""
	if b.visited {
		b.count("")
		b.Reload()
	}
	switch {
	case entry:
		b.focus(fragment)
	case !b.follow(ctx) && b.visited:
		b.focus("main")
	}
	b.visited = true
}

// draw frames a page's body.
func (l *leaf) draw(title string, body func(b *bench) app.UI) (ui app.UI) {
	b := shared
	defer func() {
		if r := recover(); r != nil {
			b.catchDrawing(r)
			ui = app.Div().Class("page").Body(b.crashed(true))
		}
	}()
	inject("render")
	b.entitle(title)
	class := "page"
	if b.Settings.Look != "" {
		class += " look-" + b.Settings.Look
	}
	if b.embedded {
		class += " embedded"
	}
	return app.Div().Class(class).Lang(b.words.Tag).Body(
		app.If(!b.embedded, b.masthead),
		app.Main().ID("main").TabIndex(-1).Body(
			app.H1().Class("title").Text(title),
			b.notices(),
			body(b),
		),
		app.If(!b.embedded, func() app.UI {
			return b.memo("tabs", func() app.UI { return b.tabs(l.route) }, l.route, b.words.Tag)
		}),
	)
}

// entitle names the page in the browser's own list of pages.
func (b *bench) entitle(title string) {
	if title += " · Roofside"; app.IsClient && title != b.title {
		b.title = title
		app.Window().Get("document").Set("title", title)
	}
}

func (b *bench) catchDrawing(r any) {
	defer b.catch()
	panic(r)
}

// crashed says what happened, that the record is kept, and how to go on.
func (b *bench) crashed(alone bool) app.UI {
	return app.Div().Class("crash").Role("alert").Body(
		app.H2().Text(b.T("crash.title")),
		app.P().Text(b.T("crash.kept")),
		app.P().Class("crash-detail").Text(b.crash),
		app.Div().Class("row").Body(
			widget.Button("crash on", b.T("crash.on"), "primary", func() { b.crash = "" }),
			app.If(b.CanUndo(), func() app.UI {
				return widget.Button("crash undo", b.T("crash.undo"), "", func() { b.crash = ""; b.Undo() })
			}),
			app.If(alone, func() app.UI { return app.A().Class("button").Href(href("/")).Text(b.T("crash.home")) }),
		),
	)
}

func (b *bench) masthead() app.UI {
	name := b.Fan.Name.Text()
	if name == "" {
		name = b.T("fan.unnamed")
	}
	if b.ID == store.Scratch && b.Fan.Name.Text() == "" {
		name = b.T("fan.scratch")
	}
	draw := func() app.UI { return b.banner(name) }
	return b.memo("masthead", draw, name, boolean(b.CanUndo()), systemName(b.Settings.Units))
}

// banner names the open fan, and holds what is within reach from every page.
func (b *bench) banner(name string) app.UI {
	return app.Header().Class("masthead").Body(
		app.A().Class("fan-name").Href(href("/")).Body(app.Text(name)),
		app.If(b.CanUndo(), func() app.UI {
			return widget.Button("undo", b.T("undo"), "undo", b.guarded(b.Undo))
		}),
		widget.Button("units", b.T("units."+systemName(b.Settings.Units)), "units", b.guarded(func() {
			b.ChangeUnits(1 - b.Settings.Units)
		})).Title(b.T("units.switch")),
	)
}

func systemName(y unit.System) string {
	if y == unit.SI {
		return "si"
	}
	return "us"
}

// tabs leads to the other pages.
func (b *bench) tabs(route string) app.UI {
	tabs := append([]struct{ route, key string }{{"/", "fans"}}, calculators...)
	return app.Nav().Class("tabs").Aria("label", b.T("tabs")).Body(app.Range(tabs).Slice(func(i int) app.UI {
		name := b.T("tab." + tabs[i].key)
		a := app.A().Href(href(tabs[i].route)).Text(name)
		if i == 0 { // a sign leaves the others the room for their words
			a = app.A().Class("home").Href(href(tabs[i].route)).Aria("label", name).Text("⌂")
		}
		if tabs[i].route == route {
			a = a.Aria("current", "page")
		}
		return a
	}))
}

// notices are what the user must know before reading on.
func (b *bench) notices() app.UI {
	var list []app.UI
	note := func(class, s string, more ...app.UI) {
		list = append(list, app.Div().Class("notice "+class).Role("status").Body(append([]app.UI{app.P().Text(s)}, more...)...))
	}
	if b.crash != "" {
		list = append(list, b.crashed(false))
	}
	if b.Trouble != nil {
		note("watch", b.T("notice.storage"))
	}
	if b.blocked {
		note("watch", b.T("notice.blocked"))
	}
	if b.Gone {
		note("watch", b.T("notice.gone"))
	}
	if b.Followed {
		note("watch", b.T("notice.followed"), widget.Button("followed seen", b.T("notice.seen"), "", b.guarded(func() { b.Followed = false })))
	}
	if b.Damaged {
		note("watch", b.T("notice.damaged"))
	}
	if b.Fan.ReadOnly() {
		note("watch", b.T("notice.newer"))
	}
	var later, unread []record.Problem
	for _, p := range b.Problems {
		if p.Err == record.ErrLater {
			later = append(later, p)
		} else {
			unread = append(unread, p)
		}
	}
	if len(unread) > 0 {
		note("watch", b.T("notice.problems"), app.Ul().Body(app.Range(unread).Slice(func(i int) app.UI {
			return app.Li().Text(b.problem(unread[i]))
		})), widget.Button("problems seen", b.T("notice.seen"), "", b.guarded(func() { b.Problems = later })))
	}
	if len(later) > 0 {
		note("", b.T("notice.later"), app.Ul().Body(app.Range(later).Slice(func(i int) app.UI {
			return app.Li().Text(later[i].Key + "=" + later[i].Text)
		})), widget.Button("later seen", b.T("notice.seen"), "", b.guarded(func() { b.Problems = unread })))
	}
	if b.update && !b.swapping() {
		note("", b.T("notice.update"), widget.Button("update", b.T("notice.update.now"), "", b.guarded(func() {
			app.Window().Get("roofside").Call("takeOver")
		})))
	}
	return app.Div().Class("notices").Body(list...)
}
