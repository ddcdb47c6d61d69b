package site

import (
	"bytes"
	"compress/gzip"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/andybalholm/brotli"
	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

func TestBase(t *testing.T) {
	for _, c := range []struct{ base, location, want string }{
		{"/", "/web/app.css", "/web/app.css"},
		{"/", "/", "/"},
		{"/tools/fans/", "/", "/tools/fans/"},
		{"/tools/fans/", "/web/app.css", "/tools/fans/web/app.css"},
		{"/tools/fans/", "/web", "/tools/fans/web"},
		{"/tools/fans/", "/tools/fans/drive/", "/tools/fans/drive/"}, // once is enough
		{"/tools/fans/", "#turns", "#turns"},
		{"/tools/fans/", "//elsewhere/x", "//elsewhere/x"},
		{"/tools/fans/", "mailto:x", "mailto:x"},
	} {
		if got := base(c.base).Resolve(c.location); got != c.want {
			t.Errorf("%s at %s: %s, want %s", c.location, c.base, got, c.want)
		}
	}
}

func TestCheck(t *testing.T) {
	for name, o := range map[string]Options{
		"base without an end":   {Base: "/tools"},
		"base without a start":  {Base: "tools/"},
		"route without its end": {Base: "/", Routes: []string{"/drive"}},
		"base that is a route":  {Base: "/drive/", Routes: []string{"/", "/drive/"}},
	} {
		if err := o.check(); err == nil {
			t.Errorf("%s: taken", name)
		}
	}
	if err := (Options{Base: "/tools/", Routes: []string{"/", "/drive/"}}).check(); err != nil {
		t.Error(err)
	}
}

func TestVersion(t *testing.T) {
	one := tree{"a": []byte("x"), "b": []byte("y")}
	same := maps.Clone(one)
	if one.version() != same.version() {
		t.Error("equal content, two versions")
	}
	for name, other := range map[string]tree{
		"content": {"a": []byte("x"), "b": []byte("z")},
		"name":    {"a": []byte("x"), "c": []byte("y")},
		"border":  {"a": []byte("xb"), "": []byte("y")},
	} {
		if one.version() == other.version() {
			t.Errorf("another %s, the same version", name)
		}
	}
	if one.version() == one.version([]byte("worker")) {
		t.Error("another worker, the same version")
	}
	if one.version([]byte("worker"), []byte("policy")) == one.version([]byte("worker"), []byte("another")) {
		t.Error("another policy, the same version")
	}
}

func TestWorkerKnowsEveryFile(t *testing.T) {
	files := tree{"index.html": nil, "drive/index.html": nil, "web/app.css": []byte("x"), "404.html": []byte("no such page"), "web/app.wasm": []byte("x"), "web/app.wasm.gz": nil}
	got, err := files.worker([]byte(`const VERSION = "{{version}}"; const FILES = "{{files}}"; const PROGRAM = "{{program}}"; const FIRST = "{{first}}"; const START = "{{start}}"; const NOWHERE = "{{nowhere}}"`), []byte(`say("it")`), "v")
	if err != nil {
		t.Fatal(err)
	}
	// sha256 of "x" and of nothing, from the command sha256sum.
	const x, nothing = `sha256-LXEWQrcmsEQBYnyp+6wy9chTD7GQPMTbAiWHF5IaSIE=`, `sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=`
	for _, want := range []string{`VERSION = "v"`, `FIRST = "web/first.js"`, `START = "say(\"it\")"`, `NOWHERE = "no such page"`, `"": "` + nothing, `"drive/": "` + nothing, `"web/app.css": "` + x,
		`"web/app.wasm": "` + x, `{"file":"web/app.wasm","size":1,"packedSize":0,"packed":"` + nothing} {
		if !strings.Contains(string(got), want) {
			t.Errorf("no %s in %s", want, got)
		}
	}
	for _, other := range []string{"404", "wasm.gz"} {
		if strings.Contains(string(got), other) {
			t.Errorf("%s is kept too", other)
		}
	}
	if _, err := files.worker([]byte(`"{{version}}"`), nil, "v"); err == nil {
		t.Error("a template without its blanks is taken")
	}
}

// A script of go-app's that fetches in another way must not pass for ours.
func TestLoadOurWay(t *testing.T) {
	o := Options{Base: "/tools/"}
	files := tree{"app.js": []byte(`x = fetchWithProgress("/tools/web/app.wasm", showProgress);`), programFile: []byte("x")}
	if err := o.loadOurWay(files); err != nil {
		t.Fatal(err)
	}
	if got := string(files["app.js"]); got != `x = roofside.program(showProgress);` {
		t.Error(got)
	}
	if got := string(files[firstScript]); !strings.HasPrefix(got, `roofside.begin({"address":"/tools/web/app.wasm","file":"web/app.wasm","size":1,`) {
		t.Error(got)
	}
	if err := o.loadOurWay(files); err == nil {
		t.Error("what is not there is replaced")
	}
}

// Scripts and style sheets come in one file each, in their order, go-app's first.
func TestJoin(t *testing.T) {
	files := tree{"web/b.js": []byte("b()\n"), "web/a.js": []byte("a()\n"), "web/c.css": []byte("c{}\n"), "app.css": []byte("theirs{}\n"),
		"drive/index.html": []byte("<head>\n    <link href=\"/tools/app.css\" rel=\"stylesheet\" type=\"text/css\">\n    <link>\n    <script src=\"/tools/web/first.js\"></script>\n</head>")}
	h := &app.Handler{Scripts: []string{"/web/b.js", "/web/a.js"}, Styles: []string{"/web/c.css"}}
	if err := files.join(h); err != nil {
		t.Fatal(err)
	}
	o := Options{Base: "/tools/", Routes: []string{"/drive/"}}
	if err := o.joinTheirs(files); err != nil {
		t.Fatal(err)
	}
	const caught = "} catch (error) { setTimeout(() => { throw error; }); }\n"
	for name, want := range map[string]string{
		firstScript: "\"use strict\";\ntry { // web/b.js\nb()\n" + caught + "try { // web/a.js\na()\n" + caught, styleSheet: "theirs{}\n/* web/c.css */\nc{}\n", "drive/index.html": "<head>\n    <script src=\"/tools/web/first.js\"></script>\n    <link>\n</head>",
	} {
		if got := string(files[name]); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	if len(files) != 3 || !slices.Equal(h.Scripts, []string{"/" + firstScript}) || !slices.Equal(h.Styles, []string{"/" + styleSheet}) {
		t.Error(files.paths(), h.Scripts, h.Styles)
	}
	if err := files.join(&app.Handler{Scripts: []string{"/web/none.js"}}); err == nil {
		t.Error("a script that is not there is joined")
	}
	files["app.css"] = nil
	if err := o.joinTheirs(files); err == nil {
		t.Error("a page without go-app's style sheet passes")
	}
}

func TestCompress(t *testing.T) {
	long := bytes.Repeat([]byte("belt and sheave "), 200)
	files := tree{"a.js": long, "b.js": []byte("short"), "c.png": long}
	if err := files.compress(5); err != nil {
		t.Fatal(err)
	}
	if got, want := files.paths(), []string{"a.js", "a.js.br", "a.js.gz", "b.js", "c.png"}; !slices.Equal(got, want) {
		t.Fatalf("%q, want %q", got, want)
	}
	unzipped, err := gzip.NewReader(bytes.NewReader(files["a.js.gz"]))
	if err != nil {
		t.Fatal(err)
	}
	if !unzipped.ModTime.IsZero() {
		t.Error("the archive carries a time")
	}
	for name, r := range map[string]io.Reader{"gz": unzipped, "br": brotli.NewReader(bytes.NewReader(files["a.js.br"]))} {
		if got, err := io.ReadAll(r); err != nil || !bytes.Equal(got, long) {
			t.Errorf("%s does not unpack to what went in: %v", name, err)
		}
	}
}

// A slip in -out must not empty a folder of someone's.
func TestWriteLeavesOtherFoldersAlone(t *testing.T) {
	dir := t.TempDir()
	precious := filepath.Join(dir, "thesis.txt")
	if err := os.WriteFile(precious, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := (tree{"index.html": nil}).write(dir); err == nil {
		t.Error("written over")
	}
	if _, err := os.Stat(precious); err != nil {
		t.Error(err)
	}
}

func TestWriteReplacesASite(t *testing.T) {
	dir := t.TempDir()
	for _, files := range []tree{{"app-worker.js": nil, "old/index.html": nil}, {"app-worker.js": nil, "new/index.html": nil}} {
		if err := files.write(dir); err != nil {
			t.Fatal(err)
		}
	}
	got, err := readTree(dir, "")
	if want := []string{"app-worker.js", "new/index.html"}; err != nil || !slices.Equal(got.paths(), want) {
		t.Errorf("%q, want %q: %v", got.paths(), want, err)
	}
}
