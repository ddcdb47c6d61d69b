//go:build e2e

package e2e

import "testing"

// Two tabs on one fan: the second follows the first and says so.
func TestTwoTabsOnOneFan(t *testing.T) {
	t.Parallel()
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

// Two tabs on one roof: the second shows the order and the names that the first has
// given; a fan that was removed there stays on its desk, which says so, and is kept
// again with the next change.
func TestTwoTabsOnOneRoof(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	first := p.Open("/")
	first.stock(3, "f1")
	first.Reload()
	second := p.Open("/")
	second.Await(fanNames + ` === "Fan 1|Fan 2|Fan 3"`)
	first.Click(`button[name="later"]`)
	second.Await(fanNames + ` === "Fan 2|Fan 1|Fan 3"`)
	first.Click(`button[name="open f3"]`)
	first.AwaitText(".fan-name", "Fan 3") // until then the name's field is that of the fan before
	first.Type("name", "Third")
	second.Await(fanNames + ` === "Fan 2|Fan 1|Third"`)
	first.Click(`button[name="open f1"]`)
	first.AwaitText(".fan-name", "Fan 1")
	first.Click(`button[name="remove fan"]`)
	second.AwaitText(".notice", "removed in another tab")
	second.Await(fanNames + ` === "Fan 2|Third"`)
	second.AwaitText(".fan-name", "Fan 1")

	second.Click(`.tabs a[href="/drive/"]`)
	second.open("target")
	second.Type("target.speed", "700")
	second.Await(`!document.querySelector(".notice")`)
	first.Await(fanNames + ` === "Fan 2|Third|Fan 1"`)
	second.AwaitText(".fan-name", "Fan 1")
	second.Await(`JSON.parse(localStorage.getItem("roofside/fan/f1")).fan["target.speed"] === "700 rpm"`)
}

// Each tab has a fan of its own open, and comes back to it; a new tab begins with the
// one that was opened last, in whichever tab.
func TestEachTabKeepsItsFan(t *testing.T) {
	p := NewPhone(t)
	first := p.Open("/")
	first.stock(3, "f1")
	first.Reload()
	second := p.Open("/")
	second.AwaitText(".fan-name", "Fan 1")
	second.Click(`button[name="open f2"]`)
	second.AwaitText(".fan-name", "Fan 2")
	first.Reload()
	first.AwaitText(".fan-name", "Fan 1")
	second.Reload()
	second.AwaitText(".fan-name", "Fan 2")
	second.Click(`button[name="open f3"]`)
	second.AwaitText(".fan-name", "Fan 3")
	p.Open("/drive/").AwaitText(".fan-name", "Fan 3")
	first.Go("/drive/")
	first.AwaitText(".fan-name", "Fan 1")

	// Without room in the tab's own storage, the one that was opened last is taken,
	// not the one that stands there.
	Eval[any](first, `(() => {
		const set = Storage.prototype.setItem;
		Storage.prototype.setItem = function (key, text) {
			if (this === sessionStorage) throw new DOMException("full", "QuotaExceededError");
			set.call(this, key, text);
		};
		return null;
	})()`)
	first.Click(`.tabs a[href="/"]`)
	first.Click(`button[name="open f2"]`)
	first.AwaitText(".fan-name", "Fan 2")
	first.Reload()
	first.AwaitText(".fan-name", "Fan 2")
}
