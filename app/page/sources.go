package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/source"
)

// Sources lists every method with its formula, validity and source.
type Sources struct{ leaf }

// BuiltFrom names the variable of go-app's that says what the program is built
// from: others' work with its version, a line each.
const BuiltFrom = "ROOFSIDE_BUILT_FROM"

// NewSources returns the page.
func NewSources() *Sources { return &Sources{leaf{route: "/sources/"}} }

// Render draws the page.
func (p *Sources) Render() app.UI {
	return p.draw(shared.T("sources.title"), func(b *bench) app.UI {
		methods, parts := source.Methods(), strings.FieldsFunc(app.Getenv(BuiltFrom), func(r rune) bool { return r == '\n' })
		return app.Div().Class("sources").Body(
			app.P().Class("lead").Text(b.T("sources.lead")),
			app.Dl().Body(app.Range(methods).Slice(func(i int) app.UI {
				m := methods[i]
				return app.Div().ID(entries+m.Key).TabIndex(-1).Class("method").Body(
					app.Dt().Body(app.Code().Text(m.Key), app.Span().Class("formula").Text(b.formula(m))),
					app.Dd().Body(app.P().Text(b.valid(m)), app.P().Class("source").Text(b.sourceOf(m.Key))),
				)
			})),
			app.Section().Class("built").Body(
				app.H2().Text(b.T("sources.built")),
				app.Ul().Body(app.Range(parts).Slice(func(i int) app.UI { return app.Li().Text(parts[i]) })),
				// In a tab of its own: within the program it would be taken for a page.
				app.P().Body(app.A().Href(href("/licenses.txt")).Target("_blank").Text(b.T("sources.licenses"))),
			),
		)
	})
}
