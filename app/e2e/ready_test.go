//go:build e2e

package e2e

import (
	"net/http"
	"strings"
	"testing"
)

// The start page and the settings say whether the site works without signal, and if not,
// what to do.
func TestOfflineReadinessIsSaid(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	files := hosted(t, dist)
	cut := true
	p.Site.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if cut && strings.HasSuffix(r.URL.Path, "/licenses.txt") {
			http.Error(w, "gone", http.StatusBadGateway)
			return
		}
		files.ServeHTTP(w, r)
	}))
	tab := p.Open("/")
	tab.Allow("502")
	tab.Allow("ServiceWorker")
	tab.Allow("licenses.txt")
	tab.AwaitText("main", "the program did not arrive whole")
	tab.Shoot("offline-cut")
	cut = false
	tab.Reload()
	tab.AwaitText("main", "Ready without signal: version ")
	tab.Go("/settings/")
	tab.AwaitText("main", "Ready without signal: version ")
	tab.Shoot("offline-ready")
}
