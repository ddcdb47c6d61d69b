//go:build wasm

package main

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/page"
)

func main() {
	page.Begin()
	register()
	app.RunWhenOnBrowser()
}
