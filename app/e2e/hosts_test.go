//go:build e2e

package e2e

import (
	"net/http"
	"strings"
	"testing"
)

// A host that knows nothing of the site but its files will do.
func TestAnyStaticHost(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	p.Site.Handle(http.FileServer(http.Dir(dist)))
	p.Open("/").AwaitInstalled()
	p.Offline()
	p.Open("/drive")
}

// Below the root of a host, every address stays below, with signal and without,
// and another copy at the root is another app.
func TestBelowTheRoot(t *testing.T) {
	t.Parallel()
	const base = "/tools/fans"
	dir := t.TempDir()
	buildSite(t, "-base", base+"/", "-out", dir)
	root, below := hosted(t, dist), http.StripPrefix(base, hosted(t, dir))
	p := NewPhone(t)
	p.Site.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasPrefix(r.URL.Path, base+"/") {
			below.ServeHTTP(w, r)
			return
		}
		root.ServeHTTP(w, r)
	}))
	p.Open("/").AwaitInstalled()
	tab := p.Open(base + "/")
	tab.AwaitInstalled()
	tab.Await(`caches.keys().then((names) => names.length === 2 || names.join(" ") && false)`)
	p.Offline()
	tab.Reload()
	tab.Click(`a[href="` + base + `/drive/"]`)
	tab.Await(`location.pathname === "` + base + `/drive/"`)
	heading := tab.Text("h1")
	cold := p.Open(base + "/drive?embed#note=1")
	if got := cold.Text("h1"); got != heading {
		t.Errorf("opened cold it shows %q, by the link %q", got, heading)
	}
	if got := Eval[string](cold, `navigator.serviceWorker.controller.scriptURL`); got != p.Site.URL+base+"/app-worker.js" {
		t.Errorf("served by %s", got)
	}
}

// While the program is on its way, the page already shows its form.
func TestPageShowsWhileLoading(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	arrive, files := make(chan struct{}), hosted(t, dist)
	p.Site.PublishBut(dist, program, func(w http.ResponseWriter, r *http.Request) {
		<-arrive
		files.ServeHTTP(w, r)
	})
	tab := p.NewTab()
	tab.Visit(p.Site.URL + "/drive/")
	tab.AwaitText("#app-wasm-loader", "0 %")
	if covered := Eval[bool](tab, `(() => {
		const h1 = document.querySelector("h1").getBoundingClientRect();
		return !!document.elementFromPoint(h1.x + 5, h1.y + h1.height / 2).closest("#app-wasm-loader");
	})()`); covered {
		t.Error("the page is covered")
	}
	if height := Eval[float64](tab, `document.getElementById("app-wasm-loader").getBoundingClientRect().height`); height > 80 {
		t.Errorf("the strip is %v px high", height)
	}
	tab.Shoot("loading")
	close(arrive)
	tab.AwaitMounted()
}
