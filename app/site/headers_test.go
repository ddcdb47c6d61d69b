package site

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The host's file of this repository holds what the pages need and no more.
func TestHeadersOfTheHost(t *testing.T) {
	headers, err := ReadHeaders("../../netlify.toml")
	if err != nil {
		t.Fatal(err)
	}
	answer := map[string][]string{}
	headers.set(answer, "/web/app.wasm")
	policy := strings.Join(answer["Content-Security-Policy"], "")
	if !strings.Contains(policy, "default-src 'none'") || strings.Contains(policy, "unsafe-inline") || strings.Contains(policy, "'unsafe-eval'") || strings.Contains(policy, "http") {
		t.Errorf("the policy is %q", policy)
	}
	if strings.Contains(policy, "frame-ancestors") {
		t.Error("who may frame the site is the publisher's to say")
	}
	if len(answer["Access-Control-Allow-Origin"]) == 0 {
		t.Error("a sandboxed frame cannot load the program")
	}
}

func TestReadHeadersRefusesWhatItCannotMatch(t *testing.T) {
	file := filepath.Join(t.TempDir(), "netlify.toml")
	if err := os.WriteFile(file, []byte("[[headers]]\nfor = \"/*.js\"\n[headers.values]\nA = \"b\"\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := ReadHeaders(file); err == nil {
		t.Error("taken")
	}
}
