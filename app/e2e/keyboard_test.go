//go:build e2e

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// tabTo goes from control to control until the focus is on the one that an
// expression about document.activeElement is true of.
func (t *Tab) tabTo(what string) {
	t.t.Helper()
	for range 250 {
		t.Keys(kb.Tab)
		if Eval[bool](t, fmt.Sprintf(`(() => { const at = document.activeElement; return !!(%s); })()`, what)) {
			if hidden := Eval[bool](t, `(() => { const b = document.activeElement.getBoundingClientRect(), p = document.querySelector(".dataplate")?.getBoundingClientRect(); return !!(!b.width || b.bottom < 0 || b.top > innerHeight || (p && p.top <= 0 && b.bottom < p.bottom && b.bottom > 0 && !document.activeElement.closest(".dataplate"))); })()`); hidden {
				t.t.Errorf("the focus on %s is out of sight", what)
			}
			return
		}
	}
	t.t.Fatalf("no key leads to %s", what)
}

// The keyboard alone sets a drive, adds a reading, gives way to another page and
// comes back.
func TestTheDriveByKeyboardAlone(t *testing.T) {
	t.Parallel()
	link, _, _ := strings.Cut(filled, "&hood.")
	tab := NewPhone(t).Open("/drive/" + strings.Replace(link, "&new.fan-sheave=8.4in", "", 1))
	tab.tabTo(`at.name === "section new"`)
	tab.Keys(kb.Enter)
	tab.tabTo(`at.name === "new.fan-sheave"`)
	tab.Keys("8.4")
	tab.AwaitValue("set.turns", 3, 0, "1")
	tab.tabTo(`at.name === "section readings"`)
	tab.Keys(kb.Enter)
	tab.tabTo(`at.name === "add reading"`)
	tab.Keys(kb.Enter)
	tab.Await(`document.activeElement.name === "trial.t1.speed"`)
	tab.Keys("700")
	tab.AwaitText(".move", "to 2½ open")
	tab.tabTo(`at.tagName === "A" && at.closest(".tabs") && at.textContent === "Airflow"`)
	tab.Keys(kb.Enter)
	tab.Await(`location.pathname === "/airflow/" && document.activeElement.id === "main"`)
	tab.AwaitValue("at.fan-speed", 700, 1e-9, "rpm")
}
