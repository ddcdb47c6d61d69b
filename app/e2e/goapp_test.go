//go:build e2e

package e2e

import (
	"bytes"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// This file holds one test per behavior of go-app that we work around. A test
// that fails here with a later go-app says that the work-around it names may go.

type blank struct{ app.Compo }

func (b *blank) Render() app.UI { return app.P().Text("blank") }

// goapp answers as go-app's handler does by itself, for an app with one route.
func goapp(path string) *httptest.ResponseRecorder {
	app.Route("/belt", func() app.Composer { return &blank{} })
	answer := httptest.NewRecorder()
	(&app.Handler{}).ServeHTTP(answer, httptest.NewRequest(http.MethodGet, path, nil))
	return answer
}

// app/site/tidy.go unquotes.
func TestGoappQuotesAttributesAsGo(t *testing.T) {
	if got := app.HTMLString(app.P().Title(`3/8" bolt`)); !strings.Contains(got, `title="3/8\" bolt"`) {
		t.Error(got)
	}
}

// app/site/tidy.go drops them.
func TestGoappWritesFalseBooleans(t *testing.T) {
	if got := app.HTMLString(app.Button().Disabled(false)); !strings.Contains(got, `disabled="false"`) {
		t.Error(got)
	}
}

// app/site/tidy.go spells it out.
func TestGoappWritesTrueBare(t *testing.T) {
	if got := app.HTMLString(app.P().Aria("expanded", true)); !strings.Contains(got, "<p aria-expanded>") {
		t.Error(got)
	}
}

// app/site/tidy.go sorts.
func TestGoappShufflesAttributes(t *testing.T) {
	seen := map[string]bool{}
	for range 200 {
		seen[app.HTMLString(app.P().ID("a").Class("b").Title("c").Lang("d"))] = true
	}
	if len(seen) == 1 {
		t.Error("always the same order")
	}
}

// app/site/tidy.go drops what is said of a host without a name.
func TestGoappNamesNoHost(t *testing.T) {
	if got := goapp("/belt").Body.String(); !strings.Contains(got, `"https:///`) {
		t.Error(got)
	}
}

// app/site/base.go resolves instead.
func TestGoappPrefixLosesItsSlash(t *testing.T) {
	if got := app.PrefixedLocation("/tools/").Resolve("/"); got != "/tools" {
		t.Error(got)
	}
	if got := app.PrefixedLocation("/tools/").Resolve("/tools/belt"); got != "/tools/tools/belt" {
		t.Error(got)
	}
}

// app/site/manifest.go writes our own.
func TestGoappManifestHasTheRootAsScope(t *testing.T) {
	if got := goapp("/manifest.webmanifest").Body.String(); !strings.Contains(got, `"scope":"/"`) || strings.Contains(got, `"id"`) {
		t.Error(got)
	}
}

// app/site.go names local icons.
func TestGoappIconsAreElsewhere(t *testing.T) {
	if got := goapp("/app-worker.js").Body.String(); !strings.Contains(got, "https://") {
		t.Error(got)
	}
}

// register in app/main.go takes each route twice.
func TestGoappRoutesAreExact(t *testing.T) {
	if with, without := goapp("/belt/").Code, goapp("/belt").Code; with != http.StatusNotFound || without != http.StatusOK {
		t.Errorf("/belt/ %d, /belt %d", with, without)
	}
}

// web/loading.css makes it a strip.
func TestGoappCoversThePageWhileLoading(t *testing.T) {
	if got := goapp("/app.css").Body.String(); !strings.Contains(got, ".goapp-app-info {\n  position: fixed;") || !strings.Contains(got, "height: 100vh") {
		t.Error(got)
	}
}

// web/worker.js replaces it.
func TestGoappWorkerCanBeLeftInPieces(t *testing.T) {
	for why, text := range map[string]string{
		"it installs without waitUntil":       `addEventListener("install", async`,
		"it deletes the caches of other apps": "if (key !== cacheName)",
		"it matches the query too":            "caches.match(request)",
		"it fills from stale copies":          "cache.addAll(resourcesToCache)",
		"it does not wait for the user":       "self.skipWaiting()",
		"it claims on the first visit":        "self.clients.claim()",
	} {
		if !strings.Contains(app.DefaultAppWorkerJS, text) {
			t.Errorf("no longer true: %s", why)
		}
	}
}

// web/first/update.js looks for updates itself: without signal go-app's call
// leaves a promise that no one minds.
func TestGoappUpdateDoesNotMindFailure(t *testing.T) {
	if got := goapp("/app.js").Body.String(); !strings.Contains(got, "  goappServiceWorkerRegistration.update();\n") {
		t.Error(got)
	}
}

// web/first/program.js fetches the program, by app/site/program.go.
func TestGoappTakesWhatTheHostSends(t *testing.T) {
	if got := goapp("/app.js").Body.String(); !strings.Contains(got, `fetchWithProgress("/web/app.wasm", showProgress)`) || strings.Contains(got, "DecompressionStream") {
		t.Error(got)
	}
}

// phoneWithout is a phone whose site lacks one of our first scripts.
func phoneWithout(t *testing.T, script string) *Phone {
	t.Helper()
	content, err := os.ReadFile(filepath.Join(dist, first))
	if err != nil {
		t.Fatal(err)
	}
	part, err := os.ReadFile(filepath.Join(top, script))
	if err != nil {
		t.Fatal(err)
	}
	if n := bytes.Count(content, part); n != 1 {
		t.Fatalf("%s stands in %s %d times, not once", script, first, n)
	}
	p := NewPhone(t)
	p.Site.PublishBut(dist, "/"+first, func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/javascript")
		_, _ = w.Write(bytes.Replace(content, part, nil, 1)) // a browser that hangs up is seen by what follows
	})
	return p
}

// first is the script that ours are joined in, below the site's base.
const first = "web/first.js"

// web/first/address.js mends the fragment.
func TestGoappDiesOfABrokenEscape(t *testing.T) {
	t.Parallel()
	tab := phoneWithout(t, "web/first/address.js").NewTab()
	tab.Expect("exit code: 2")
	tab.Allow("does not start")
	tab.Visit(tab.p.Site.URL + "/#note=50%")
	tab.Await(`document.getElementById("ended")`)
}

// web/first/address.js takes it off.
func TestGoappKnowsNoIndex(t *testing.T) {
	t.Parallel()
	tab := phoneWithout(t, "web/first/address.js").Open("/drive/index.html")
	tab.Await(`!document.querySelector("main input")`)
}

// web/first/storage.js stands in.
func TestGoappDiesWithoutStorage(t *testing.T) {
	t.Parallel()
	p := phoneWithout(t, "web/first/storage.js")
	tab := p.NewTab()
	tab.Visit(host(t, `<iframe sandbox="allow-scripts" src="`+p.Site.URL+`/"></iframe>`).URL)
	frame := tab.Frame(p.Site.URL)
	frame.Allow("exit code: 2") // said before the test could hear it, or after
	frame.Allow("localStorage")
	frame.Allow("does not start")
	frame.Allow("service worker")
	frame.Await(`document.getElementById("ended")`)
}
