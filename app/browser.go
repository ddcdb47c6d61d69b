//go:build wasm

package main

import (
	"runtime/debug"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/page"
)

func main() {
	// A record takes some megabytes at most: rather more memory than a pause in
	// the middle of typing.
	debug.SetGCPercent(400)
	page.Begin()
	register()
	app.RunWhenOnBrowser()
}
