package page

import (
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
)

// Home lists the roofs with their fans, and starts or opens one.
type Home struct {
	leaf
	listing listing
}

// NewHome returns the page.
func NewHome() *Home { return &Home{leaf: leaf{route: "/"}} }

// calculators lists the pages that work on the open fan, the record last, in the
// order of the tabs.
var calculators = []struct{ route, key string }{
	{"/drive/", "drive"}, {"/airflow/", "airflow"}, {"/belt/", "belt"}, {"/power/", "power"}, {"/raceway/", "raceway"}, {"/record/", "record"},
}

// Render draws the page.
func (p *Home) Render() app.UI {
	return p.draw(shared.T("home.title"), func(b *bench) app.UI {
		roofs := b.Fans.Roofs()
		l := &p.listing
		l.begin()
		defer b.later(l, roofs)
		return app.Div().Class("home").Body(
			app.P().Class("lead").Text(b.T("home.lead")),
			app.Div().Body(app.If(b.ID == store.Scratch && !b.Fan.Empty(), func() app.UI {
				return app.Div().Class("notice").Body(app.P().Text(b.T("home.scratch")), widget.Button("keep", b.T("home.keep"), "primary", b.guarded(func() { b.Keep(); b.hold() })))
			})),
			b.arrived(),
			app.Div().Body(b.reminder()),
			app.Div().Body(b.ready()),
			app.Div().Class("roofs").Body(app.Range(roofs).Slice(func(i int) app.UI { return b.roof(roofs[i], l) })),
			app.Div().Class("row").Body(
				app.If(len(roofs) == 0, func() app.UI {
					return widget.Button("start", b.T("home.start"), "primary", b.guarded(func() { b.Start("", record.NewFan()); b.hold() }))
				}),
				widget.Button("new roof", b.T("home.roof"), "", b.guarded(b.newRoof)),
				widget.Button("open file", b.T("file.open"), "", b.guarded(b.pick)),
				widget.Button("scratch", b.T("home.loose"), "", b.guarded(func() { b.Take(store.Scratch) })),
				widget.Button("demo", b.T("home.demo"), "", b.guarded(b.startDemo)),
			),
			app.Div().Body(b.aside()),
			app.H2().Text(b.T("home.calculators")),
			app.Ul().Class("calculators").Body(app.Range(calculators).Slice(func(i int) app.UI {
				c := calculators[i]
				return app.Li().Body(app.A().Href(href(c.route)).Body(app.Strong().Text(b.T("tab."+c.key)), app.Span().Text(b.T("home."+c.key))))
			})),
			app.Div().Class("row").Body(
				app.A().Class("button").Href(href("/settings/")).Text(b.T("settings.title")),
				app.A().Class("button").Href(href("/sources/")).Text(b.T("sources.title")),
			),
			b.cautions("lock", "belt", "live", "code"),
			app.P().Class("field-note").Text(b.T("home.privacy")),
			b.roofOnPaper(roofs),
		)
	})
}

// now is the moment of a reading.
func (b *bench) now() string { return time.Now().Truncate(time.Second).Format(time.RFC3339) }
