package page

import (
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
)

// Home lists the fans, and starts or opens one.
type Home struct{ leaf }

// NewHome returns the page.
func NewHome() *Home { return &Home{leaf{route: "/"}} }

// Render draws the page.
func (p *Home) Render() app.UI {
	return p.draw(shared.T("home.title"), func(b *bench) app.UI {
		ids := b.Fans.IDs()
		return app.Div().Class("home").Body(
			app.P().Class("lead").Text(b.T("home.lead")),
			app.Ol().Class("fans").Body(app.Range(ids).Slice(func(i int) app.UI { return b.fanLine(ids[i]) })),
			app.If(b.ID == store.Scratch && !b.Fan.Empty(), func() app.UI {
				return app.Div().Class("notice").Body(app.P().Text(b.T("home.scratch")), widget.Button("keep", b.T("home.keep"), "primary", b.guarded(b.Keep)))
			}),
			app.Div().Class("row").Body(
				widget.Button("start", b.T("home.start"), "primary", b.guarded(func() { b.Start(record.NewFan()) })),
				widget.Button("scratch", b.T("home.loose"), "", b.guarded(func() { b.Take(store.Scratch) })),
				widget.Button("demo", b.T("home.demo"), "", b.guarded(b.startDemo)),
			),
			app.H2().Text(b.T("home.calculators")),
			app.Ul().Class("calculators").Body(
				app.Li().Body(app.A().Href(href("/drive/")).Body(app.Strong().Text(b.T("tab.drive")), app.Span().Text(b.T("home.drive")))),
				app.Li().Body(app.A().Href(href("/airflow/")).Body(app.Strong().Text(b.T("tab.airflow")), app.Span().Text(b.T("home.airflow")))),
			),
			app.Div().Class("row").Body(
				app.A().Class("button").Href(href("/settings/")).Text(b.T("settings.title")),
				app.A().Class("button").Href(href("/sources/")).Text(b.T("sources.title")),
			),
			b.cautions("lock", "belt", "live", "code"),
			app.P().Class("field-note").Text(b.T("home.privacy")),
		)
	})
}

// fanLine is one kept fan; the open one can be named here.
func (b *bench) fanLine(id string) app.UI {
	if id == b.ID {
		return app.Li().Class("fan open").Body(b.field("name"), app.Div().Class("row").Body(
			app.A().Class("button primary").Href(href("/drive/")).Text(b.T("tab.drive")),
			app.A().Class("button").Href(href("/airflow/")).Text(b.T("tab.airflow")),
		))
	}
	name := b.T("fan.unnamed")
	if f, _, err := b.Fans.Load(id); err == nil && f.Name.Text() != "" {
		name = f.Name.Text()
	}
	return app.Li().Class("fan").Body(widget.Button("open "+id, name, "wide", b.guarded(func() { b.Take(id) })))
}

// now is the moment of a reading.
func (b *bench) now() string { return time.Now().Truncate(time.Second).Format(time.RFC3339) }
