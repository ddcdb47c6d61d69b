package page

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// Unknown is shown at an address that no page has.
type Unknown struct{ leaf }

// NewUnknown returns the page.
func NewUnknown() *Unknown { return &Unknown{} }

// Render draws the page.
func (p *Unknown) Render() app.UI {
	return p.draw(shared.T("unknown.title"), func(b *bench) app.UI {
		return app.Div().Class("home").Body(
			app.P().Class("lead").Text(b.T("unknown.title")),
			app.P().Text(b.T("unknown.kept")),
			app.A().Class("button primary").Href(href("/")).Text(b.T("tab.fans")),
		)
	})
}
