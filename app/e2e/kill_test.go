//go:build e2e

package e2e

import (
	"context"
	"os"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/inspector"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// A Pocket is a profile that outlives the browser, and the site it looks at.
type Pocket struct {
	t    *testing.T
	site *Server
	dir  string
}

// NewPocket makes an empty profile.
func NewPocket(t *testing.T) *Pocket {
	t.Helper()
	dir, err := os.MkdirTemp("", "roofside-profile-")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		// What a killed browser has started may still write.
		for range 50 {
			if os.RemoveAll(dir) == nil {
				return
			}
			time.Sleep(100 * time.Millisecond)
		}
		t.Error("the profile stays: ", dir)
	})
	return &Pocket{t, NewServer(t, dist), dir}
}

// Phone starts a browser on the profile.
func (p *Pocket) Phone() *Phone {
	p.t.Helper()
	return startPhone(p.t, p.site, "en-US", chromedp.UserDataDir(p.dir))
}

// Kill ends the browser as the system does that is short of memory: at once, by its
// process.
func (p *Phone) Kill() {
	p.t.Helper()
	browser := chromedp.FromContext(p.ctx).Browser.Process()
	if err := browser.Kill(); err != nil {
		p.t.Fatal(err)
	}
	for _, tab := range p.tabs {
		tab.closed = true
	}
	select {
	case <-p.ctx.Done():
	case <-time.After(patience):
		p.t.Fatal("the browser lives on")
	}
}

// crash ends the renderer of the page, and waits until the browser says so: the
// command itself is never answered.
func (t *Tab) crash() {
	t.t.Helper()
	crashed := make(chan bool, 1)
	if err := chromedp.Listen(t.ctx, func(event any) {
		if _, ok := event.(*inspector.EventTargetCrashed); ok {
			select {
			case crashed <- true:
			default:
			}
		}
	}); err != nil {
		t.t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	go chromedp.Do(ctx, command(page.Crash, cdp.Empty{}))
	select {
	case <-crashed:
	case <-ctx.Done():
		t.t.Fatal("the page did not crash")
	}
}

// The renderer crashes right behind the last key: the page that is opened again has
// all of it.
func TestACrashLosesNothing(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/drive/")
	tab.open("old")
	tab.Type("old.motor-speed", "1735")
	tab.Type("old.motor-sheave", "3.4")
	tab.crash()
	tab.Close()
	again := p.Open("/drive/")
	again.open("old")
	if speed, sheave := again.FieldText("old.motor-speed"), again.FieldText("old.motor-sheave"); speed != "1735" || sheave != "3.4" {
		t.Errorf("the motor's speed came back as %q, its sheave as %q", speed, sheave)
	}
}

// The browser is killed ten seconds behind the last key of several: nothing is lost.
// By the clock, and so alone, as is the next: a start waits two seconds for the journal.
func TestAKilledBrowserLosesNothing(t *testing.T) {
	pocket := NewPocket(t)
	p := pocket.Phone()
	tab := p.Open("/drive/")
	tab.open("old")
	// The browser writes its storage down in its own time, and after a while less
	// often: so the keys come in spells.
	for _, speed := range []string{"1710", "1720", "1730"} {
		tab.Type("old.motor-speed", speed)
		time.Sleep(7 * time.Second)
	}
	tab.Type("old.motor-speed", "1735")
	time.Sleep(10 * time.Second)
	p.Kill()

	again := pocket.Phone().Open("/drive/")
	again.open("old")
	if got := again.FieldText("old.motor-speed"); got != "1735" {
		t.Errorf("the last that was typed came back as %q", got)
	}
}

// What was removed before the browser was killed does not come back, and what was put
// in order stays so.
func TestAKilledBrowserBringsNothingBack(t *testing.T) {
	pocket := NewPocket(t)
	p := pocket.Phone()
	tab := p.Open("/")
	tab.Click(`button[name="demo"]`)
	tab.Await(`document.querySelectorAll(".fan").length === 4`)
	removed := Eval[string](tab, `localStorage.getItem("roofside/open")`)
	tab.Click(`button[name="later"]`)
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Bread oven|Dish room"`)
	tab.Click(`button[name="remove fan"]`)
	tab.Await(`document.querySelectorAll(".fan").length === 3`)
	time.Sleep(2 * time.Second)
	p.Kill()

	again := pocket.Phone().Open("/")
	again.Await(fanNames + ` === "Hood line 1, east|Bread oven|Dish room"`)
	if left := again.laid("fan/" + removed); left != "" {
		t.Errorf("the fan that was removed is back: %.80s", left)
	}
}

// A journal that the browser refuses, or that never opens, keeps nobody from his record.
func TestWithoutAJournal(t *testing.T) {
	t.Parallel()
	for name, script := range map[string]string{
		"refused": `Object.defineProperty(window, "indexedDB", { value: { open() { throw new DOMException("refused", "SecurityError"); } } });`,
		"silent":  `Object.defineProperty(window, "indexedDB", { value: { open() { return {}; } } });`,
		"none":    `Object.defineProperty(window, "indexedDB", { value: undefined });`,
	} {
		t.Run(name, func(t *testing.T) {
			tab := NewPhone(t).NewTab()
			tab.before(script)
			tab.Go("/drive/")
			tab.open("old")
			tab.Type("old.motor-speed", "1735")
			tab.Reload()
			tab.open("old")
			if got := tab.FieldText("old.motor-speed"); got != "1735" {
				t.Errorf("came back as %q", got)
			}
		})
	}
}
