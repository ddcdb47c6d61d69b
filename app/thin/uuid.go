package main

import (
	_ "embed"
	"os"
	"path/filepath"
)

var uuid = module{
	path:    "github.com/google/uuid",
	version: "v1.6.0",
	sum:     "h1:NIvaJDMOsjHA8n1jAhLSgzrAzy1Hgr+hNrb57e+94F0=",
	source:  ".",
	cut:     cutUUID,
}

// newString holds the one function that go-app calls.
//
//go:embed uuid.txt
var newString []byte

func cutUUID(source string) error {
	names, err := filepath.Glob(filepath.Join(source, "*.go"))
	if err != nil {
		return err
	}
	for _, name := range names {
		if err := os.Remove(name); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(source, "uuid.go"), newString, 0o644)
}
