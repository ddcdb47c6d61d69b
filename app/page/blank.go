// Package page holds the pages, one file each.
package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// A Blank stands in for a page that is not yet written. It says which one, and
// echoes what is typed, so that the site around it can be tried.
type Blank struct {
	app.Compo
	Route string

	typed string
}

// Render shows the page's name and a field.
func (b *Blank) Render() app.UI {
	prefix := strings.TrimSuffix(app.Getenv("GOAPP_ROOT_PREFIX"), "/")
	return app.Main().Body(
		app.H1().Text("Roofside "+b.Route),
		app.Nav().Body(app.A().Href(prefix+"/drive/").Text("Drive"), app.A().Href(prefix+"/airflow/").Text("Airflow")),
		app.Input().Name("typed").Aria("label", "typed").OnInput(func(ctx app.Context, e app.Event) {
			b.typed = ctx.JSSrc().Get("value").String()
		}),
		app.Output().Name("echo").Body(app.If(b.typed != "", func() app.UI {
			return app.Data().Value(b.typed).Attr("data-unit", "1").Text(b.typed)
		})),
	)
}
