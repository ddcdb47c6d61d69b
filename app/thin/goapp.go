package main

import (
	_ "embed"
	"os"
	"path/filepath"
)

var goApp = module{
	path:    "github.com/maxence-charriere/go-app/v10",
	version: "v10.1.11",
	sum:     "h1:4JUSlVQ8zVIeL3acFJEpuerP6FLoEQWg6CUTtHcz7Ro=",
	source:  "pkg",
	cut:     cutGoApp,
}

// unused lists what the browser never calls: the server, and routes that are
// found by a pattern, whose matching brings the names of all scripts.
var unused = []string{"http.go", "resource.go", "static.go", "crypto.go", "route.go"}

// instead holds what the rest still names.
//
//go:embed instead.txt
var instead []byte

func cutGoApp(source string) error {
	for _, name := range unused {
		if err := os.Remove(filepath.Join(source, "app", name)); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(source, "app/instead.go"), instead, 0o644)
}
