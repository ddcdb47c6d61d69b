//go:build !wasm

package main

import (
	"bytes"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"roofside/app/site"
)

// build writes the site with a stand-in for the program, which takes long to
// compile and is none of the site's business.
func build(t *testing.T, base string) string {
	t.Helper()
	dir := t.TempDir()
	wasm, loader := filepath.Join(dir, "app.wasm"), filepath.Join(dir, "wasm_exec.js")
	for _, file := range []string{wasm, loader} {
		if err := os.WriteFile(file, bytes.Repeat([]byte("stand-in "), 1000), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	o := options()
	o.Out, o.Base, o.Web, o.Wasm, o.Loader, o.Brotli = filepath.Join(dir, "dist"), base, "../web", wasm, loader, 1
	register()
	if err := site.Build(o); err != nil {
		t.Fatal(err)
	}
	return o.Out
}

func contents(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	files := os.DirFS(dir)
	err := fs.WalkDir(files, ".", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		content, err := fs.ReadFile(files, path)
		all[path] = string(content)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// Two builds in two folders give the same files, byte by byte. go-app shuffles
// what it writes, so a few rounds are needed to see a shuffle.
func TestBuildIsReproducible(t *testing.T) {
	first := contents(t, build(t, "/"))
	for range 3 {
		again := contents(t, build(t, "/"))
		if len(again) != len(first) {
			t.Errorf("%d files, then %d", len(first), len(again))
		}
		for path, content := range first {
			if again[path] != content {
				t.Errorf("%s differs", path)
			}
		}
	}
}

// Every address that the site's own files name is one of its files, at the root
// of a host and below it.
func TestSiteIsWhole(t *testing.T) {
	for _, base := range []string{"/", "/tools/fans/"} {
		files := contents(t, build(t, base))
		for _, route := range routes() {
			page, ok := files[strings.TrimPrefix(route, "/")+"index.html"]
			if !ok {
				t.Fatalf("%s: no page for %s", base, route)
			}
			for _, address := range addresses(page) {
				file := strings.TrimPrefix(address, base)
				if file == address {
					t.Errorf("%s%s: %s is outside", base, route, address)
				}
				if file == "" || strings.HasSuffix(file, "/") {
					file += "index.html"
				}
				if _, ok := files[file]; !ok {
					t.Errorf("%s%s: %s is missing", base, route, address)
				}
			}
			if strings.Contains(page, "style=") || strings.Contains(page, "<style") || strings.Contains(page, "<script>") {
				t.Errorf("%s%s: something is inline, which the policy blocks", base, route)
			}
		}
		for _, file := range []string{"app.js", "app-worker.js"} {
			if strings.Contains(files[file], "{{") || strings.Contains(files[file], "roofside-version") {
				t.Errorf("%s: a blank is left", file)
			}
		}
	}
}

// addresses are the rooted addresses in a page, without query and fragment.
func addresses(page string) []string {
	var found []string
	for _, name := range []string{`href="`, `src="`} {
		for _, rest := range strings.Split(page, name)[1:] {
			address, _, _ := strings.Cut(rest, `"`)
			address, _, _ = strings.Cut(address, "#")
			address, _, _ = strings.Cut(address, "?")
			if strings.HasPrefix(address, "/") {
				found = append(found, address)
			}
		}
	}
	return found
}

// The program for the browser must not carry the generator of its own site.
func TestProgramIsLean(t *testing.T) {
	list := exec.Command("go", "list", "-deps", ".")
	list.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	out, err := list.Output()
	if err != nil {
		t.Fatal(err)
	}
	for why, unwanted := range map[string]string{
		"it writes the site":                                                    "roofside/app/site",
		"tests do not belong into the program":                                  "testing",
		"files are compressed before they are served":                           "github.com/andybalholm/brotli",
		"a template engine calls methods by name, and the linker can drop none": "html/template",
	} {
		for _, dep := range strings.Fields(string(out)) {
			if dep == unwanted {
				t.Errorf("the program imports %s: %s", unwanted, why)
			}
		}
	}
}
