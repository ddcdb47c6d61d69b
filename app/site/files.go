package site

import (
	"fmt"
	"io"
	"net/http"
	"os"
	"path"
	"path/filepath"
	"strings"
)

// types are those that a machine's own table may lack or get wrong.
var types = map[string]string{
	".css": "text/css; charset=utf-8", ".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8",
	".png": "image/png", ".svg": "image/svg+xml", ".txt": "text/plain; charset=utf-8",
	".wasm": "application/wasm", ".webmanifest": "application/manifest+json",
}

// Files serves a site as a static host would: plain files, their compressed
// twins where the browser takes them, folders by their index.html, 404.html for
// what is not there.
type Files struct {
	Dir     string
	Headers Headers
}

func (f Files) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		http.Error(w, "only GET and HEAD", http.StatusMethodNotAllowed)
		return
	}
	f.Headers.set(w.Header(), r.URL.Path)
	name := filepath.Join(f.Dir, filepath.FromSlash(path.Clean("/"+r.URL.Path)))
	info, err := os.Stat(name)
	switch {
	case err == nil && info.IsDir() && !strings.HasSuffix(r.URL.Path, "/"):
		http.Redirect(w, r, (r.URL.Path[strings.LastIndexByte(r.URL.Path, '/')+1:])+"/"+query(r), http.StatusMovedPermanently)
		return
	case err == nil && info.IsDir():
		name = filepath.Join(name, "index.html")
	case err == nil && strings.HasSuffix(r.URL.Path, "/"):
		name = "" // a file is no folder
	}
	if file, encoding := open(name, r); file != nil {
		defer file.Close()
		f.send(w, r, name, file, encoding)
		return
	}
	f.sendNotFound(w)
}

func query(r *http.Request) string {
	if r.URL.RawQuery == "" {
		return ""
	}
	return "?" + r.URL.RawQuery
}

// open gives the best form of a file that the browser takes.
func open(name string, r *http.Request) (*os.File, string) {
	for _, form := range []struct{ encoding, ending string }{{"br", ".br"}, {"gzip", ".gz"}, {"", ""}} {
		if form.encoding != "" && !accepts(r, form.encoding) {
			continue
		}
		// Whatever hinders the opening, the next form or the 404 page answers.
		if file, err := os.Open(name + form.ending); err == nil {
			return file, form.encoding
		}
	}
	return nil, ""
}

func accepts(r *http.Request, encoding string) bool {
	for part := range strings.SplitSeq(r.Header.Get("Accept-Encoding"), ",") {
		name, weight, _ := strings.Cut(strings.TrimSpace(part), ";")
		if name == encoding && strings.ReplaceAll(weight, " ", "") != "q=0" {
			return true
		}
	}
	return false
}

func (f Files) send(w http.ResponseWriter, r *http.Request, name string, file *os.File, encoding string) {
	info, err := file.Stat()
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	h := w.Header()
	if kind := types[path.Ext(name)]; kind != "" {
		h.Set("Content-Type", kind)
	}
	h.Set("Vary", "Accept-Encoding")
	if encoding != "" {
		h.Set("Content-Encoding", encoding)
	}
	h.Set("ETag", fmt.Sprintf(`"%x-%x%s"`, info.ModTime().UnixNano(), info.Size(), encoding))
	http.ServeContent(w, r, name, info.ModTime(), file)
}

func (f Files) sendNotFound(w http.ResponseWriter) {
	page, err := os.Open(filepath.Join(f.Dir, "404.html"))
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	defer page.Close()
	w.Header().Set("Content-Type", types[".html"])
	w.WriteHeader(http.StatusNotFound)
	// A browser that hangs up half way is not this server's fault, and the
	// status is out already: there is no one left to tell.
	_, _ = io.Copy(w, page)
}
