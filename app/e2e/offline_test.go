//go:build e2e

package e2e

import (
	"html"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// pages are the routes of the site, read off its folders.
func pages(t *testing.T) []string {
	t.Helper()
	found, err := filepath.Glob(filepath.Join(dist, "*", "index.html"))
	if err != nil || len(found) == 0 {
		t.Fatal("dist/ holds no pages: ", err)
	}
	routes := []string{"/"}
	for _, file := range found {
		routes = append(routes, "/"+filepath.Base(filepath.Dir(file))+"/")
	}
	return routes
}

// After one visit to the start page, everything works with the server gone:
// every page in every form that a bookmark may have, typed into a new tab.
func TestEveryPageOpensWithTheServerGone(t *testing.T) {
	p := NewPhone(t)
	first := p.Open("/")
	first.AwaitInstalled()
	first.Close()
	p.Offline()
	for _, route := range pages(t) {
		page, err := os.ReadFile(filepath.Join(dist, filepath.FromSlash(route), "index.html"))
		if err != nil {
			t.Fatal(err)
		}
		forms := []string{route, route + "?from=home", route + "?embed", route + "#note=50%", route + "index.html"}
		if route != "/" {
			forms = append(forms, strings.TrimSuffix(route, "/"), strings.TrimSuffix(route, "/")+"?embed#a=b")
		}
		for _, form := range forms {
			tab := p.Open(form)
			// Not only some page, but this one.
			heading := Eval[string](tab, `document.querySelector("h1").textContent.trim()`)
			if !strings.Contains(html.UnescapeString(string(page)), heading) {
				t.Errorf("%s shows %q", form, heading)
			}
			tab.Close()
		}
	}
}

// An address that is not known shows something helpful too, offline and on.
func TestUnknownPage(t *testing.T) {
	p := NewPhone(t)
	tab := p.Open("/")
	tab.AwaitInstalled()
	tab.Visit(p.Site.URL + "/nowhere/")
	tab.Expect("404")
	tab.AwaitText("h1", "No such page")
	tab.Click(`a[href="/drive/"]`)
	tab.AwaitMounted()
	p.Offline()
	p.Open("/nowhere/")
}

// Two tabs on one fan: the second follows the first and says so.
func TestTwoTabsOnOneFan(t *testing.T) {
	p := NewPhone(t)
	first := p.Open("/drive/#old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.6in")
	second := p.Open("/drive/")
	second.AwaitValue("old.fan-speed", 1750*3.4/8.6, 1e-9, "rpm")
	first.open("old")
	first.Type("old.fan-sheave", "8.4")
	second.AwaitValue("old.fan-speed", 1750*3.4/8.4, 1e-9, "rpm")
	second.AwaitText(".notice", "another tab")
	second.open("old")
	second.Type("old.motor-sheave", "3.5")
	first.AwaitValue("old.fan-speed", 1750*3.5/8.4, 1e-9, "rpm")
}
