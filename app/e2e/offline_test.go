//go:build e2e

package e2e

import "testing"

// After one visit to the start page, everything works with the server gone:
// every page in every form that a bookmark may have, typed into a new tab.
func TestEveryPageOpensWithTheServerGone(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	first := p.Open("/")
	first.AwaitInstalled()
	first.Close()
	p.Offline()
	p.Hold()
	for _, route := range pages(t) {
		for _, form := range forms(route) {
			tab := p.Open(form)
			tab.computes(route, form)
			tab.Close()
		}
	}
}

// An address that is not known shows something helpful too, offline and on.
func TestUnknownPage(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/")
	tab.AwaitInstalled()
	tab.Visit(p.Site.URL + "/nowhere/")
	tab.Expect("404")
	tab.AwaitText("h1", "No such page")
	tab.Click(`a[href="/drive/"]`)
	tab.AwaitMounted()
	p.Offline()
	tab = p.NewTab()
	tab.Expect("404")
	tab.Visit(p.Site.URL + "/nowhere/")
	tab.AwaitText("h1", "No such page")
	tab.Click(`a[href="/drive/"]`)
	tab.AwaitMounted()
}
