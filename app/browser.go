//go:build wasm

package main

import (
	"runtime/debug"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/page"
)

func main() {
	// A record takes some megabytes at most: rather more memory than a pause in the
	// middle of typing. At 400 fresh memory cost a stroke more (its median a fifth) than
	// the pauses that it saved; at 150 the pauses were felt.
	debug.SetGCPercent(250)
	page.Begin()
	register()
	app.RunWhenOnBrowser()
}
