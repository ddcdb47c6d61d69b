package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/source"
)

// Sources lists every method with its formula, validity and source.
type Sources struct{ leaf }

// NewSources returns the page.
func NewSources() *Sources { return &Sources{leaf{route: "/sources/"}} }

// Render draws the page.
func (p *Sources) Render() app.UI {
	return p.draw(shared.T("sources.title"), func(b *bench) app.UI {
		methods := source.Methods()
		return app.Div().Class("sources").Body(
			app.P().Class("lead").Text(b.T("sources.lead")),
			app.Dl().Body(app.Range(methods).Slice(func(i int) app.UI {
				m := methods[i]
				return app.Div().ID("m-"+m.Key).Class("method").Body(
					app.Dt().Body(app.Code().Text(m.Key), app.Span().Class("formula").Text(b.formula(m))),
					app.Dd().Body(app.P().Text(b.valid(m)), app.P().Class("source").Text(b.sourceOf(m.Key))),
				)
			})),
		)
	})
}
