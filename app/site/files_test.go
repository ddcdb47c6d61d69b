package site

import (
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
)

// A site of a few files, served.
func served(t *testing.T) Files {
	t.Helper()
	dir := t.TempDir()
	for name, content := range map[string]string{
		"index.html": "start", "drive/index.html": "drive", "404.html": "no such page",
		"web/app.wasm": "raw", "web/app.wasm.br": "br", "web/app.wasm.gz": "gz",
	} {
		if err := os.MkdirAll(filepath.Join(dir, filepath.Dir(name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return Files{Dir: dir, Headers: Headers{
		{For: "/*", Values: map[string]string{"X-All": "1"}},
		{For: "/web/*", Values: map[string]string{"X-Web": "2"}},
		{For: "/drive/", Values: map[string]string{"X-One": "3"}},
	}}
}

func ask(f Files, path, encodings string) *http.Response {
	r := httptest.NewRequest(http.MethodGet, path, nil)
	r.Header.Set("Accept-Encoding", encodings)
	w := httptest.NewRecorder()
	f.ServeHTTP(w, r)
	return w.Result()
}

func TestFiles(t *testing.T) {
	f := served(t)
	for name, c := range map[string]struct {
		path, encodings string
		status          int
		body            string
		headers         map[string]string
	}{
		"start":          {"/", "", 200, "start", map[string]string{"X-All": "1", "X-Web": "", "Content-Type": "text/html; charset=utf-8"}},
		"folder":         {"/drive/", "", 200, "drive", map[string]string{"X-One": "3"}},
		"without slash":  {"/drive?embed", "", 301, "", map[string]string{"Location": "/drive/?embed"}},
		"best":           {"/web/app.wasm", "gzip, deflate, br", 200, "br", map[string]string{"Content-Encoding": "br", "Content-Type": "application/wasm", "X-Web": "2"}},
		"second best":    {"/web/app.wasm", "gzip", 200, "gz", map[string]string{"Content-Encoding": "gzip"}},
		"refused":        {"/web/app.wasm", "br;q=0, gzip; q=0", 200, "raw", map[string]string{"Content-Encoding": ""}},
		"raw":            {"/web/app.wasm", "", 200, "raw", map[string]string{"Vary": "Accept-Encoding"}},
		"missing":        {"/nowhere", "", 404, "no such page", nil},
		"file as folder": {"/web/app.wasm/", "", 404, "no such page", nil},
		"outside":        {"/../files_test.go", "", 404, "no such page", nil},
		"bare folder":    {"/web/", "", 404, "no such page", nil},
	} {
		t.Run(name, func(t *testing.T) {
			answer := ask(f, c.path, c.encodings)
			body := make([]byte, 100)
			n, _ := answer.Body.Read(body)
			if answer.StatusCode != c.status || c.body != "" && string(body[:n]) != c.body {
				t.Errorf("%s: %d %q, want %d %q", c.path, answer.StatusCode, body[:n], c.status, c.body)
			}
			for name, want := range c.headers {
				if got := answer.Header.Get(name); got != want {
					t.Errorf("%s: %s is %q, want %q", c.path, name, got, want)
				}
			}
		})
	}
}

// Each form of a file has a tag of its own, and what is unchanged is not sent.
func TestFilesAreRevalidated(t *testing.T) {
	f := served(t)
	br, raw := ask(f, "/web/app.wasm", "br").Header.Get("ETag"), ask(f, "/web/app.wasm", "").Header.Get("ETag")
	if br == "" || br == raw {
		t.Errorf("tags %q and %q", br, raw)
	}
	r := httptest.NewRequest(http.MethodGet, "/web/app.wasm", nil)
	r.Header.Set("If-None-Match", raw)
	w := httptest.NewRecorder()
	f.ServeHTTP(w, r)
	if w.Code != http.StatusNotModified {
		t.Errorf("asked again: %d", w.Code)
	}
}

func TestFilesOnlyReads(t *testing.T) {
	w := httptest.NewRecorder()
	served(t).ServeHTTP(w, httptest.NewRequest(http.MethodPost, "/", nil))
	if w.Code != http.StatusMethodNotAllowed {
		t.Errorf("POST: %d", w.Code)
	}
}
