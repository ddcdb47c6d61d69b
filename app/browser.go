//go:build wasm

package main

import "github.com/maxence-charriere/go-app/v10/pkg/app"

func main() {
	register()
	app.RunWhenOnBrowser()
}
