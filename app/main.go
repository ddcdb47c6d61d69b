// Command app is Roofside: in the browser it is the calculators; outside of it,
// it writes and serves the static site that carries them.
package main

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/page"
)

// routes lists every page by its canonical address.
var routes = []string{"/", "/drive/", "/airflow/", "/settings/", "/sources/"}

// register tells go-app which component answers at which address. go-app
// matches routes exactly, so each is registered with and without its slash.
func register() {
	for _, r := range routes {
		newPage := func() app.Composer { return &page.Blank{Route: r} }
		app.Route(r, newPage)
		if r != "/" {
			app.Route(r[:len(r)-1], newPage)
		}
	}
}
