//go:build e2e && startup

package e2e

import (
	"fmt"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/page"
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/site"
)

// Reported, not judged: how long a cheap phone waits for an answer, the first
// time over a slow line and later with no signal, next to a page that only says
// hello. The aims are 1.5 and 1.7 times the floor.
func TestStartUp(t *testing.T) {
	floor := startPage{path: "/", dir: floorSite(t), usable: `document.querySelector("h1")?.textContent === "Hello"`}
	ours := startPage{path: "/drive/" + demo, dir: dist, usable: `document.querySelector('output[name="move"]')?.textContent.includes("From closed, open 3 turns")`}
	const rounds = 5
	cold, warm := [2]marks{}, [2]marks{}
	for range rounds { // in turn, so that what else the machine does falls on both
		for i, s := range []startPage{floor, ours} {
			t.Run("round", func(t *testing.T) {
				c, w := s.measure(t)
				cold[i].add(c)
				warm[i].add(w)
			})
		}
	}
	for _, c := range []struct {
		name string
		marks
		floor marks
		aim   float64
	}{{"cold", cold[1], cold[0], 1.5}, {"warm, no signal", warm[1], warm[0], 1.7}} {
		t.Logf("%s: %.0f ms, floor %.0f ms, ratio %.2f, aim %.1f", c.name, Median(c.marks["usable"]), Median(c.floor["usable"]),
			Median(c.marks["usable"])/Median(c.floor["usable"]), c.aim)
		t.Logf("  ours:  %v\n  floor: %v", c.marks, c.floor)
	}
}

// A startPage is a page and what tells that it is of use.
type startPage struct{ path, dir, usable string }

// marks are moments of a start in ms since it began, a list of each.
type marks map[string][]float64

// moments in the order they come in: the program is asked for, has arrived, is
// compiled; it first touches the page; the answer stands there.
var moments = []string{"asked", "arrived", "compiled", "drawing", "usable"}

func (m *marks) add(one map[string]float64) {
	if *m == nil {
		*m = marks{}
	}
	for name, ms := range one {
		(*m)[name] = append((*m)[name], ms)
	}
}

func (m marks) String() string {
	var parts []string
	for _, name := range moments {
		parts = append(parts, fmt.Sprintf("%s %.0f", name, Median(m[name])))
	}
	return strings.Join(parts, ", ")
}

// measure opens the page as new, and once more when the device holds it and the
// server is gone.
func (s startPage) measure(t *testing.T) (cold, warm map[string]float64) {
	p := NewPhone(t)
	p.Site.Handle(&slowLine{next: hosted(t, s.dir)})
	first := s.open(p)
	cold = s.marks(first)
	first.AwaitInstalled()
	first.Close()
	p.Offline()
	return cold, s.marks(s.open(p))
}

func (s startPage) open(p *Phone) *Tab {
	tab := p.NewTab()
	tab.do("watching", command(page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: fmt.Sprintf(`(() => {
		const marks = window.startTest = {};
		const mark = (name) => { marks[name] ??= performance.now(); };
		const stream = WebAssembly.instantiateStreaming;
		WebAssembly.instantiateStreaming = async (response, imports) => {
			mark("asked");
			const result = await stream.call(WebAssembly, response, imports);
			mark("compiled");
			return result;
		};
		new MutationObserver(() => {
			if (marks.compiled) mark("drawing");
			if (%s) mark("usable");
		}).observe(document, { subtree: true, childList: true, characterData: true });
	})()`, s.usable)}))
	tab.Slow(4)
	tab.Visit(p.Site.URL + s.path)
	return tab
}

func (s startPage) marks(tab *Tab) map[string]float64 {
	tab.Await(`window.startTest?.usable`)
	return Eval[map[string]float64](tab, `({ ...window.startTest, arrived: performance.getEntriesByType("resource").find((r) => r.name.endsWith("/app.wasm")).responseEnd })`)
}

// A slowLine answers 100 ms late and sends 10 Mbit/s, all answers together.
type slowLine struct {
	next http.Handler
	mu   sync.Mutex
	free time.Time // when the line has sent what was given to it
}

func (l *slowLine) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	time.Sleep(100 * time.Millisecond)
	l.next.ServeHTTP(slowWriter{w, l}, r)
}

type slowWriter struct {
	http.ResponseWriter
	line *slowLine
}

func (w slowWriter) Write(content []byte) (int, error) {
	const perSecond, piece = 10e6 / 8, 4096
	sent := 0
	for sent < len(content) {
		next := content[sent:min(sent+piece, len(content))]
		w.line.mu.Lock()
		if now := time.Now(); w.line.free.Before(now) {
			w.line.free = now
		}
		w.line.free = w.line.free.Add(time.Duration(float64(len(next)) / perSecond * float64(time.Second)))
		wait := time.Until(w.line.free)
		w.line.mu.Unlock()
		time.Sleep(wait)
		n, err := w.ResponseWriter.Write(next)
		sent += n
		if err != nil {
			return sent, err
		}
	}
	return sent, nil
}

// hello is what the floor's page is served with; the program then says Hello.
type hello struct{ app.Compo }

func (h *hello) Render() app.UI { return app.H1().Text("…") }

// floorSite writes the site of app/e2e/floor, with our worker and compressed alike.
func floorSite(t *testing.T) string {
	t.Helper()
	web, out := t.TempDir(), t.TempDir()
	if err := os.Mkdir(filepath.Join(web, "first"), 0o755); err != nil {
		t.Fatal(err)
	}
	// Every site's program is loaded by our script.
	for _, name := range []string{"worker.js", "first/program.js", "icon.svg", "icon-192.png", "icon-512.png", "icon-maskable.png"} {
		content, err := os.ReadFile(filepath.Join(top, "web", name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(web, name), content, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	app.Route("/", func() app.Composer { return &hello{} })
	if err := site.Build(site.Options{
		Out: out, Base: "/", Web: web, Wasm: filepath.Join(top, ".build", "floor.wasm"),
		Loader: filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec.js"), Brotli: 11,
		Routes: []string{"/"},
		Handler: &app.Handler{
			Name: "Floor", ShortName: "Floor", Title: "Floor", LoadingLabel: "{progress} %", Scripts: []string{"/web/first/program.js"}, ThemeColor: "#22303a", BackgroundColor: "#f4f1ea",
			Icon: app.Icon{SVG: "/web/icon.svg", Default: "/web/icon-192.png", Large: "/web/icon-512.png", Maskable: "/web/icon-maskable.png"},
		},
	}); err != nil {
		t.Fatal(err)
	}
	return out
}
