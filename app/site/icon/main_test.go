package main

import (
	"bytes"
	"os"
	"testing"
)

// The icons in web/ are the ones that this command draws.
func TestIconsAreCurrent(t *testing.T) {
	for name, want := range files() {
		got, err := os.ReadFile("../../../web/" + name)
		if err != nil {
			t.Error(err)
		} else if !bytes.Equal(got, want) {
			t.Errorf("web/%s is not what this draws: go run ./app/site/icon", name)
		}
	}
}
