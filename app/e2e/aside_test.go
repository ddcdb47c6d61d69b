//go:build e2e

package e2e

import (
	"path/filepath"
	"strings"
	"testing"
)

// An entry that can't be read and a list of roofs that can't are set aside, not
// erased; the others are there, and what was set aside is handed out as a file.
func TestWhatCantBeReadIsHandedOut(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/")
	tab.stock(3, "f2")
	fan, list := `{"form":1,"fan":{"name":"Half a fan","old.motor-sp`, `{"roofs":[{"id":"r","name":"Half a roof"`
	tab.lay("fan/f2", fan)
	tab.lay("index", list)
	tab.Reload()
	tab.AwaitText(".notice", "could not be read")
	tab.Await(`[...document.querySelectorAll(".fan strong")].map((f) => f.textContent).join() === "Fan 1,Fan 3"`)
	if a, b := tab.laid("aside/f2"), tab.laid("aside/index"); a != fan || b != list {
		t.Errorf("set aside: %q and %q", a, b)
	}

	// One that is not open is found out while the list is on the screen.
	tab.lay("fan/f3", `{"form":1}`)
	tab.Reload()
	tab.Await(`[...document.querySelectorAll(".fan strong")].map((f) => f.textContent).join() === "Fan 1"`)
	tab.Await(`[...document.querySelectorAll(".notice")].some((n) => n.innerText.includes("could not be read: 3"))`)

	dir := tab.downloads()
	tab.Click(`button[name="aside save"]`)
	saved := tab.downloaded(filepath.Join(dir, "*.txt"))
	for _, part := range []string{fan, list, `{"form":1}`} {
		if !strings.Contains(saved, part) {
			t.Errorf("the file lacks %s:\n%s", part, saved)
		}
	}
	tab.Click(`button[name="aside drop"]`)
	tab.Await(`!document.querySelector('button[name="aside drop"]')`)
	tab.Reload()
	tab.Await(`document.querySelectorAll(".fan").length === 1 && !document.querySelector('button[name="aside drop"]')`)
	if left := tab.laid("aside/f2") + tab.laid("aside/index") + tab.laid("aside/f3"); left != "" {
		t.Errorf("still there: %s", left)
	}
}
