// Command app is Roofside: in the browser it is the calculators; outside of it,
// it writes and serves the static site that carries them.
package main

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/page"
)

// pages lists every page by its canonical address.
var pages = []struct {
	route string
	page  func() app.Composer
}{
	{"/", func() app.Composer { return page.NewHome() }},
	{"/drive/", func() app.Composer { return page.NewDrive() }},
	{"/airflow/", func() app.Composer { return page.NewAirflow() }},
	{"/belt/", func() app.Composer { return page.NewBelt() }},
	{"/power/", func() app.Composer { return page.NewPower() }},
	{"/raceway/", func() app.Composer { return page.NewRaceway() }},
	{"/record/", func() app.Composer { return page.NewRecord() }},
	{"/settings/", func() app.Composer { return page.NewSettings() }},
	{"/sources/", func() app.Composer { return page.NewSources() }},
}

// routes lists the canonical addresses.
func routes() []string {
	var all []string
	for _, p := range pages {
		all = append(all, p.route)
	}
	return all
}

// register tells go-app which component answers at which address. go-app
// matches routes exactly, so each is registered with and without its slash.
func register() {
	app.NotFound = page.NewUnknown()
	for _, p := range pages {
		app.Route(p.route, p.page)
		if p.route != "/" {
			app.Route(p.route[:len(p.route)-1], p.page)
		}
	}
}
