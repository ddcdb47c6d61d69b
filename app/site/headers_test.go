package site

import (
	"net/http"
	"os"
	pathpkg "path"
	"path/filepath"
	"regexp"
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
	for _, path := range []string{"/web/app.wasm", "/web/app.wasm.gz"} {
		if got := headersOf(headers, path).Get("Access-Control-Allow-Origin"); got != "*" {
			t.Errorf("a sandboxed frame cannot load %s: %q", path, got)
		}
	}
}

func headersOf(headers Headers, path string) http.Header {
	answer := http.Header{}
	headers.set(answer, path)
	return answer
}

// versioned names carry a hash. What has no such name may change under it.
var versioned = regexp.MustCompile(`[.-][0-9a-f]{8,}\.`)

// Every file is asked for anew unless its name changes with it, and carries what
// keeps a browser from guessing and telling.
func TestHeadersOfEveryFile(t *testing.T) {
	headers, err := ReadHeaders("../../netlify.toml")
	if err != nil {
		t.Fatal(err)
	}
	files, err := readTree("../../web", "web/")
	if err != nil {
		t.Fatal(err)
	}
	paths := append(files.paths(), "", "drive/", "app.js", "app-worker.js", "wasm_exec.js", "manifest.webmanifest", programFile, packedFile, "licenses.txt")
	for _, path := range paths {
		got := headersOf(headers, "/"+path)
		kept := got.Get("Cache-Control")
		if fresh := strings.Contains(kept, "max-age=0") && strings.Contains(kept, "must-revalidate"); fresh == versioned.MatchString(path) || strings.Contains(kept, "immutable") != versioned.MatchString(path) {
			t.Errorf("/%s: Cache-Control %q", path, kept)
		}
		if strings.Contains(kept, "no-store") { // the worker would fetch all a second time
			t.Errorf("/%s is not to be stored", path)
		}
		for name, want := range map[string]string{"X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer"} {
			if got.Get(name) != want {
				t.Errorf("/%s: %s is %q", path, name, got.Get(name))
			}
		}
		for _, name := range []string{"Content-Security-Policy", "Permissions-Policy"} {
			if got.Get(name) == "" {
				t.Errorf("/%s: no %s", path, name)
			}
		}
		if kind := got.Get("Content-Type"); kind != "" && kind != types[pathpkg.Ext(path)] {
			t.Errorf("/%s: the host says %s, here it is %s", path, kind, types[pathpkg.Ext(path)])
		}
	}
	if kind := headersOf(headers, "/web/app.wasm").Get("Content-Type"); kind != "application/wasm" {
		t.Errorf("the program is sent as %q", kind)
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
