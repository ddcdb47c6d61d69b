//go:build e2e

package e2e

import (
	"fmt"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"roofside/app/site"
)

// A plainHost sends files as they are, unless told otherwise, and counts what
// goes out, by path. It goes by no clock: it halts where the browser is to act.
type plainHost struct {
	files   http.Handler
	held    bool // the plain program halts after some packets, for the browser to break it off
	halt    int  // so many bytes of the packed copy are sent until on is closed, 0 for all
	on      chan struct{}
	unsized bool                                     // says no length
	alter   func(http.ResponseWriter, *http.Request) // may set headers

	mu   sync.Mutex
	sent map[string]int
}

func (h *plainHost) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if h.alter != nil {
		h.alter(w, r)
	}
	files := h.files
	if files == nil {
		files = http.FileServer(http.Dir(dist))
	}
	files.ServeHTTP(&counted{w, r, h}, r)
}

// a counted answer hides ReadFrom, which would go past Write.
type counted struct {
	http.ResponseWriter
	request *http.Request
	host    *plainHost
}

func (c *counted) WriteHeader(status int) {
	if c.host.unsized {
		c.Header().Del("Content-Length")
	}
	c.ResponseWriter.WriteHeader(status)
}

func (c *counted) Write(b []byte) (int, error) {
	const packets = 14600 // what a line sends at first without hearing back
	all := len(b)
	for len(b) > 0 {
		n, err := c.ResponseWriter.Write(b[:min(packets, len(b))])
		sent := c.host.count(c.request.URL.Path, n)
		if err != nil {
			return 0, err
		}
		if err := http.NewResponseController(c.ResponseWriter).Flush(); err != nil {
			return 0, err
		}
		b = b[n:]
		if c.host.held && c.request.URL.Path == program && sent >= 4*packets && len(b) > 0 { // not behind a whole answer, which nobody breaks off
			select {
			case <-c.request.Context().Done():
			case <-time.After(patience): // the rest shows that nothing was broken off
			}
		}
		if c.host.halt > 0 && c.request.URL.Path == program+".gz" && sent >= c.host.halt {
			select {
			case <-c.host.on:
			case <-c.request.Context().Done():
			}
		}
	}
	return all, nil
}

// count tells what has gone out by a path, n bytes more among it.
func (h *plainHost) count(path string, n int) int {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.sent == nil {
		h.sent = map[string]int{}
	}
	h.sent[path] += n
	return h.sent[path]
}

func (h *plainHost) total(of string) (n int) {
	h.mu.Lock()
	defer h.mu.Unlock()
	for path, sent := range h.sent {
		if strings.HasPrefix(path, of) {
			n += sent
		}
	}
	return n
}

func sizeOf(t *testing.T, name string) int {
	t.Helper()
	info, err := os.Stat(filepath.Join(dist, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return int(info.Size())
}

const program = "/web/app.wasm"

// A host that can't compress costs little more than one that can: the program
// comes packed, once for page and device together, with true progress.
func TestHostWithoutCompression(t *testing.T) {
	t.Parallel()
	host := &plainHost{held: true, halt: sizeOf(t, program+".gz") / 2, on: make(chan struct{})}
	p := NewPhone(t)
	p.Site.Handle(host)
	tab := p.NewTab()
	tab.Visit(p.Site.URL + "/drive/#old.motor-speed=1725rpm&old.count-fan-turns=20turns&old.count-motor-turns=48.25turns")
	Eval[bool](tab, `!!(window.progressTest = new Promise((resolve) => {
		const seen = new Set();
		const label = document.getElementById("app-wasm-loader-label");
		new MutationObserver(() => seen.add(parseInt(label.innerText))).observe(label, { childList: true, characterData: true, subtree: true });
		const look = () => document.getElementById("app-wasm-loader") ? setTimeout(look, 10) : resolve([...seen].join(" "));
		look();
	}))`)
	tab.Await(`Math.abs(parseInt(document.getElementById("app-wasm-loader-label").innerText) - 50) <= 5`)
	close(host.on)
	progress := Eval[string](tab, `window.progressTest`)
	tab.AwaitValue("old.fan-speed", 1725*20/48.25, 1e-9, "rpm")
	last := 0
	for _, said := range strings.Fields(progress) {
		var now int
		if _, err := fmt.Sscan(said, &now); err != nil || now < last || now > 100 {
			t.Errorf("%s %% after %d %%", said, last)
		}
		last = now
	}
	if last != 100 {
		t.Errorf("progress ends at %d %%", last)
	}
	tab.AwaitInstalled()
	small, raw := sizeOf(t, program+".gz"), sizeOf(t, program)
	t.Logf("sent %d of a packed program of %d and a plain one of %d", host.total(program), small, raw)
	if got := host.total(program); got > small*11/10 {
		t.Errorf("sent %d, more than 1.1 times %d", got, small)
	}
	p.Offline()
	p.Open("/drive/").AwaitValue("old.fan-speed", 1725*20/48.25, 1e-9, "rpm")
}

// A host that compresses sends the program once, and is asked for no other form.
func TestHostThatCompresses(t *testing.T) {
	t.Parallel()
	host := &plainHost{files: site.Files{Dir: dist}}
	p := NewPhone(t)
	p.Site.Handle(host)
	p.Open("/").AwaitInstalled()
	size := sizeOf(t, program+".gz")
	if info, err := os.Stat(filepath.Join(dist, program+".br")); err == nil {
		size = int(info.Size())
	}
	if got := host.total(program); got > size*101/100 {
		t.Errorf("sent %d, and the program is %d as sent", got, size)
	}
	if got := host.total(program + ".gz"); got > 0 {
		t.Errorf("%d bytes of the packed copy were asked for by name", got)
	}
}

// Hosts differ in what they make of a name that ends in .gz, and of .wasm.
func TestHostsThatSendTheirOwnWay(t *testing.T) {
	t.Parallel()
	for name, alter := range map[string]func(http.ResponseWriter, *http.Request){
		"packed copy sent as a form of the program": func(w http.ResponseWriter, r *http.Request) {
			if strings.HasSuffix(r.URL.Path, ".gz") {
				w.Header().Set("Content-Encoding", "gzip")
			}
		},
		"no length, no type": func(w http.ResponseWriter, r *http.Request) {
			if strings.HasPrefix(r.URL.Path, program) {
				w.Header().Set("Content-Type", "application/octet-stream")
			}
		},
	} {
		t.Run(name, func(t *testing.T) {
			host := &plainHost{held: true, unsized: strings.Contains(name, "no length"), alter: alter}
			p := NewPhone(t)
			p.Site.Handle(host)
			p.Open("/").AwaitInstalled()
			if got, small := host.total(program), sizeOf(t, program+".gz"); got > small*11/10 {
				t.Errorf("sent %d, more than 1.1 times %d", got, small)
			}
			p.Offline()
			p.Open("/drive/")
		})
	}
}

// Without the packed copy, or the means to unpack it, the plain program comes.
func TestPackedCopyCannotBeUsed(t *testing.T) {
	t.Parallel()
	t.Run("not there", func(t *testing.T) {
		host := &plainHost{}
		p := NewPhone(t)
		p.Site.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if strings.HasSuffix(r.URL.Path, ".gz") {
				http.NotFound(w, r)
				return
			}
			host.ServeHTTP(w, r)
		}))
		tab := p.NewTab()
		tab.Expect("404")
		tab.Go("/drive/")
		tab.AwaitInstalled()
		p.Offline()
		p.Open("/drive/")
	})
	// Page and worker start without the means; the changed script is not the one
	// that the worker is to find.
	t.Run("a browser that can't", func(t *testing.T) {
		host := &plainHost{}
		p := NewPhone(t)
		p.Site.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if name := r.URL.Path; name == "/"+first && r.Header.Get("Sec-Fetch-Dest") == "script" || name == "/app-worker.js" {
				content, err := os.ReadFile(filepath.Join(dist, filepath.FromSlash(name)))
				if err != nil {
					t.Error(err)
				}
				w.Header().Set("Content-Type", "text/javascript")
				w.Header().Set("Cache-Control", "no-store")
				// A browser that hangs up is seen by what follows.
				_, _ = fmt.Fprintf(w, "delete self.DecompressionStream;\n%s", content)
				return
			}
			host.ServeHTTP(w, r)
		}))
		tab := p.Open("/drive/")
		tab.AwaitInstalled()
		if Eval[bool](tab, `"DecompressionStream" in self`) {
			t.Error("the means are still there")
		}
		if got := host.total(program + ".gz"); got > 0 {
			t.Errorf("%d bytes of the packed copy were sent", got)
		}
	})
}

// A packed copy of another version, or a damaged one, does not run, and is not
// kept.
func TestPackedCopyOfAnotherVersion(t *testing.T) {
	t.Parallel()
	host := &plainHost{}
	p := NewPhone(t)
	var asked sync.Map
	p.Site.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasSuffix(r.URL.Path, ".gz") {
			asked.Store("packed", true)
			http.ServeFile(w, r, filepath.Join(dist, "wasm_exec.js.gz"))
			return
		}
		host.ServeHTTP(w, r)
	}))
	tab := p.NewTab()
	tab.Allow("loading wasm failed")
	tab.Allow("integrity")
	tab.Allow("digest")
	tab.Visit(p.Site.URL + "/drive/")
	tab.Allow("does not start")
	tab.AwaitText("#ended p", "The program could not be fetched.")
	if _, was := asked.Load("packed"); !was {
		t.Error("the packed copy was not asked for")
	}
	tab.Await(`caches.keys().then(async (names) => names.length === 1 && (await (await caches.open(names[0])).keys()).length > 10)`)
	// The worker takes the plain program instead.
	tab.AwaitInstalled()
	p.Offline()
	p.Open("/drive/")
}
