// Command floor is the least that a go-app page can be: it says hello. What
// Roofside adds to it is measured against it.
package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

type hello struct{ app.Compo }

func (h *hello) Render() app.UI { return app.H1().Text("Hello") }

func main() {
	app.Route("/", func() app.Composer { return &hello{} })
	app.RunWhenOnBrowser()
}
