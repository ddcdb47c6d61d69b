//go:build e2e

package e2e

import (
	"net/http"
	"strings"
	"testing"
)

// Two copies of the site on one origin, as staging beside production, keep their records
// apart; what was kept before they were told apart is taken along once.
func TestTwoCopiesKeepTheirRecordsApart(t *testing.T) {
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
	speed := func(tab *Tab) string {
		tab.open("old")
		return tab.FieldText("old.motor-speed")
	}
	one := p.Open("/drive/")
	one.open("old")
	one.Type("old.motor-speed", "1725")
	other := p.Open(base + "/drive/")
	if got := speed(other); got != "1725" {
		t.Errorf("what was there before is %q", got)
	}
	other.Type("old.motor-speed", "1140")
	one.Reload()
	if got := speed(one); got != "1725" {
		t.Errorf("the copy at the root shows %q", got)
	}
	one.Type("old.motor-speed", "3450")
	other.Reload()
	if got := speed(other); got != "1140" {
		t.Errorf("the copy below shows %q", got)
	}
}
