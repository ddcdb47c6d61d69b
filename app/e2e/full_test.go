//go:build e2e

package e2e

import (
	"context"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// before runs a script in every page of the tab, ahead of the page's own.
func (t *Tab) before(script string) {
	t.t.Helper()
	t.do("preparing pages", func(ctx context.Context, target *chromedp.Target) (chromedp.Void, error) {
		_, err := cdp.Call(ctx, target, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
		return chromedp.Void{}, err
	})
}

// stuff fills the storage of the site to its last character.
func (t *Tab) stuff() {
	t.t.Helper()
	Eval[bool](t, `(() => {
		for (let size = 1 << 20, n = 0; size >= 1; size >>= 1) {
			for (;;) {
				try { localStorage.setItem("theirs" + n, "x".repeat(size)); n++; } catch { break; }
			}
		}
		return true;
	})()`)
}

// A full device: it is said, the record on the screen goes on, nothing that was kept
// is lost, and with room again the next change is kept with all before it.
func TestAFullDevice(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/drive/" + demo)
	tab.open("job")
	tab.Type("name", "Line 2")
	kept := tab.laid("fan/scratch")
	tab.stuff()
	tab.Type("name", "Line 2, the one to the west")
	tab.AwaitText(".notice", "keeps nothing more")
	tab.AwaitText(".fan-name", "Line 2, the one to the west")
	tab.AwaitText(`output[name="move"]`, "3 turns")
	// Shorter values may have found room on the way: whatever stands there is whole.
	if now := tab.laid("fan/scratch"); !strings.Contains(now, `"Line 2`) && now != kept || !strings.Contains(now, `"target.speed":"712 rpm"`) {
		t.Errorf("of what was kept there is %s", now)
	}

	// A fan that finds no room replaces nothing, and no link does.
	tab.Click(`.tabs a[href="/"]`)
	tab.Click(`button[name="keep"]`)
	tab.AwaitText(".notice", "keeps nothing more")
	tab.Await(`!document.querySelector(".fan")`)
	tab.AwaitText(".fan-name", "Line 2, the one to the west")

	Eval[any](tab, `(Object.keys(localStorage).filter((k) => k.startsWith("theirs")).forEach((k) => localStorage.removeItem(k)), null)`)
	tab.Click(`button[name="keep"]`)
	tab.Await(`document.querySelectorAll(".fan").length === 1`)
	tab.Await(`![...document.querySelectorAll(".notice")].some((n) => n.innerText.includes("keeps nothing more"))`)
	tab.Reload()
	tab.AwaitText(".fan-name", "Line 2, the one to the west")
}

// Where the browser refuses all storage, the page says so, and computes.
func TestStorageBlocked(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.NewTab()
	tab.before(`for (const name of ["localStorage", "sessionStorage"]) Object.defineProperty(window, name, { configurable: true, get() { throw new DOMException("refused", "SecurityError"); } });`)
	tab.Go("/drive/" + demo)
	tab.AwaitText(".notice", "keeps nothing for this page")
	tab.AwaitText(`output[name="move"]`, "3 turns")
	if got := Eval[string](tab, `roofside.storage`); got != "none" {
		t.Errorf("storage is %q", got)
	}
	tab.Click(`.tabs a[href="/"]`)
	tab.Click(`button[name="keep"]`)
	tab.Await(`document.querySelectorAll(".fan").length === 1`)
	tab.Reload()
	tab.AwaitText(".notice", "keeps nothing for this page")
	tab.Await(`!document.querySelector(".fan")`)
}
