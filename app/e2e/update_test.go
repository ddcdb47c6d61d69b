//go:build e2e

package e2e

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"sync"
	"testing"
)

// newVersion builds the site again, once, with one more rule in its style, so that
// version 2, 3 … of it is there to publish.
func newVersion(t *testing.T, number int) string {
	t.Helper()
	versions.Lock()
	defer versions.Unlock()
	out := filepath.Join(top, ".build", "e2e-versions", fmt.Sprint(number))
	if versions.built[number] {
		return out
	}
	web := t.TempDir()
	if err := os.CopyFS(web, os.DirFS(filepath.Join(top, "web"))); err != nil {
		t.Fatal(err)
	}
	style, err := os.OpenFile(filepath.Join(web, "app.css"), os.O_APPEND|os.O_WRONLY, 0)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := fmt.Fprintf(style, "\n:root { --test-version: %d; }\n", number); err != nil {
		t.Fatal(err)
	}
	if err := style.Close(); err != nil {
		t.Fatal(err)
	}
	// The command writes below the folder that it runs in.
	absolute, err := filepath.Abs(out)
	if err != nil {
		t.Fatal(err)
	}
	buildSite(t, "-web", web, "-out", absolute)
	versions.built[number] = true
	return out
}

var versions = struct {
	sync.Mutex
	built map[int]bool
}{built: map[int]bool{}}

// buildSite runs the site command, without .br files.
func buildSite(t *testing.T, flags ...string) {
	t.Helper()
	build := exec.Command("go", append([]string{"run", "./app", "site", "-brotli", "0"}, flags...)...)
	build.Dir = top
	if said, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, said)
	}
}

const shown = `getComputedStyle(document.documentElement).getPropertyValue("--test-version")`

// A new version waits for the user's word. In the meantime, and in a tab that
// was not asked, nothing is reloaded.
func TestUpdateWaitsForTheWord(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	p.Open("/").AwaitInstalled()
	asked, other := p.Open("/drive/"), p.Open("/airflow/")
	for _, tab := range []*Tab{asked, other} {
		Eval[any](tab, `(window.stillHere = true, addEventListener("roofside-update", () => { window.heard = true; }), null)`)
	}
	p.Site.Publish(newVersion(t, 2))
	asked.look()
	for _, tab := range []*Tab{asked, other} {
		tab.Await(`window.heard && roofside.updateReady`)
		if !Eval[bool](tab, `window.stillHere === true`) {
			t.Error("the page was reloaded unasked")
		}
	}
	late := p.Open("/settings/")
	late.Await(`roofside.updateReady`)
	if got := Eval[string](late, shown); got != "" {
		t.Errorf("the new version is shown before the word: %q", got)
	}
	late.Close()

	Eval[any](asked, `(roofside.takeOver(), null)`)
	asked.Await(`window.stillHere === undefined`)
	asked.AwaitMounted()
	asked.Await(shown + ` === "2"`)
	if !Eval[bool](other, `window.stillHere === true`) {
		t.Error("the tab that did not ask was reloaded")
	}
	if caches := Eval[[]string](asked, `caches.keys()`); len(caches) != 1 {
		t.Errorf("the old version is still kept: %q", caches)
	}
	// The other tab asks later, when the new version has long taken over.
	Eval[any](other, `(roofside.takeOver(), null)`)
	other.Await(shown + ` === "2"`)
}

// look has a tab look for a new version, as it does by itself when it is opened
// or taken up again.
func (t *Tab) look() {
	t.t.Helper()
	Eval[any](t, `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => null)`)
}

// A new version that comes in the middle of a number leaves the number, the
// caret and the page alone. Said yes to, it finds all that was typed.
func TestUpdateWhileTyping(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	p.Open("/").AwaitInstalled()
	tab := p.Open("/drive/#old.motor-speed=1725rpm&old.motor-sheave=4in&old.fan-sheave=10in")
	tab.AwaitValue("old.fan-speed", 690, 1e-9, "rpm")
	Eval[bool](tab, `window.stillHere = true`)
	tab.open("old")
	tab.Type("old.fan-sheave", "8.")
	p.Site.Publish(newVersion(t, 2))
	tab.look()
	tab.Await(`roofside.updateReady && document.querySelector("button[name=update]")`)
	if !Eval[bool](tab, `window.stillHere === true && document.activeElement.name === "old.fan-sheave" && document.activeElement.value === "8."`) {
		t.Error("the field has lost what was typed, or the focus")
	}
	tab.Keys("625")
	tab.AwaitValue("old.fan-speed", 1725*4/8.625, 1e-9, "rpm")
	tab.Click("button[name=update]")
	tab.Await(`window.stillHere === undefined`)
	tab.AwaitMounted()
	tab.Await(shown + ` === "2"`)
	tab.AwaitValue("old.fan-speed", 1725*4/8.625, 1e-9, "rpm")
}

// Between lifted off and proven a fan is not to wait for a browser: nothing is
// said of a new version until then.
func TestUpdateIsNotToldDuringTheSwap(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	p.Open("/").AwaitInstalled()
	tab := p.Open("/drive/#step=lifted-off&old.motor-speed=1725rpm")
	p.Site.Publish(newVersion(t, 2))
	tab.look()
	tab.Await(`roofside.updateReady`)
	tab.Rest()
	if Eval[bool](tab, `!!document.querySelector("button[name=update]")`) {
		t.Error("it is told in the middle of the swap")
	}
	// A link would keep that fan beside its own: this device is to know of none.
	// Something of the old version stays open, or the new one would need no word.
	still := p.NewTab()
	still.Allow("favicon") // which a text can't name
	still.Visit(p.Site.URL + "/licenses.txt")
	Eval[bool](tab, `new Promise((resolve) => {
		localStorage.clear();
		const gone = indexedDB.deleteDatabase("roofside"); // or the journal brings it back
		gone.onsuccess = gone.onerror = gone.onblocked = () => resolve(true);
	})`)
	tab.Close()
	proven := p.Open("/drive/#step=rotation-proven&old.motor-speed=1725rpm")
	proven.Await(`document.querySelector("button[name=update]")`)
}

// Back after a month the device goes from the first version to the third, and
// from there back to the first if the host has rolled back. Until the word is
// given, and without signal, it shows what it holds.
func TestTwoVersionsLaterAndBack(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/drive/#old.motor-speed=1725rpm&old.motor-sheave=4in&old.fan-sheave=10in")
	tab.AwaitInstalled()
	tab.Close()
	p.Site.Publish(newVersion(t, 2)) // never seen by this device
	third := newVersion(t, 3)
	now := ""
	for _, c := range []struct{ dir, version string }{{third, "3"}, {dist, ""}} {
		p.Site.Publish(c.dir)
		tab = p.Open("/drive/")
		tab.Await(`roofside.updateReady`)
		if got := Eval[string](tab, shown); got != now {
			t.Errorf("shows %q before the word, not %q", got, now)
		}
		tab.Click("button[name=update]")
		tab.Await(fmt.Sprintf("%s === %q", shown, c.version))
		tab.AwaitMounted()
		tab.AwaitValue("old.fan-speed", 690, 1e-9, "rpm")
		tab.Await(`caches.keys().then((names) => names.length === 1 || names.join(" ") && false)`)
		tab.Close()
		now = c.version
		p.Offline()
		cold := p.Open("/drive/")
		cold.AwaitValue("old.fan-speed", 690, 1e-9, "rpm")
		if got := Eval[string](cold, shown); got != now {
			t.Errorf("without signal it shows %q, not %q", got, now)
		}
		cold.Close()
		p.Online()
	}
}

// A new version that can't be had whole is as none: the old one goes on, with
// signal and without, and the next attempt fetches what is missing.
func TestUpdateThatFails(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	p.Open("/").AwaitInstalled()
	next := newVersion(t, 2)
	cut := p.Site.PublishBut(next, program, hangUp)
	tab := p.Open("/drive/")
	tab.look()
	tab.Await(`navigator.serviceWorker.getRegistration().then((r) => !r.installing && !r.waiting)`)
	if !cut.Load() {
		t.Fatal("the program was never asked for")
	}
	for _, offline := range []bool{false, true} {
		if offline {
			p.Offline()
		}
		old := p.Open("/drive/#old.motor-speed=1725rpm&old.motor-sheave=4in&old.fan-sheave=10in")
		old.AwaitValue("old.fan-speed", 690, 1e-9, "rpm")
		if got := Eval[string](old, shown); got != "" {
			t.Errorf("shows version %q", got)
		}
	}
	p.Online()
	p.Site.Publish(next)
	tab.look()
	tab.Await(`roofside.updateReady`)
}

// A publish that lands half way through an install brings files of two versions
// to one host. None of them is mixed: the old version goes on.
func TestNoMixOfVersions(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	p.Open("/").AwaitInstalled()
	next := newVersion(t, 2)
	refused := p.Site.PublishBut(next, "/web/style.css", hosted(t, dist).ServeHTTP) // still the old one
	tab := p.Open("/drive/")
	tab.Await(`navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => new Promise((resolve) => {
		const look = async () => {
			const r = await navigator.serviceWorker.getRegistration();
			if (r.installing) return setTimeout(look, 20);
			resolve(!r.waiting);
		};
		look();
	}))`)
	if !refused.Load() {
		t.Fatal("the file of the other version was never asked for")
	}
	p.Offline()
	p.Open("/airflow/")

	// The host comes to rest, and so does the device.
	p.Online()
	p.Site.Publish(next)
	last := p.Open("/drive/")
	last.look()
	last.Await(`roofside.updateReady`)
}

// A first visit that is cut off half way is made good by the next.
func TestInterruptedFirstVisit(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	cut := p.Site.PublishBut(dist, "/airflow/", hangUp) // only the worker asks for this one
	tab := p.Open("/")
	tab.Await(`navigator.serviceWorker.getRegistration().then((r) => !r || !r.installing && !r.active)`)
	if !cut.Load() {
		t.Fatal("the file that was to be cut off was never asked for")
	}
	tab.Close()
	p.Site.Publish(dist)
	p.Open("/").AwaitInstalled()
	p.Offline()
	p.Open("/airflow/")
}

// Another app on the same host keeps its caches.
func TestOtherCachesStay(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/")
	tab.AwaitInstalled()
	Eval[any](tab, `Promise.all(["their-app", "roofside-/elsewhere/-1", "roofside-/-0"].map((name) => caches.open(name))).then(() => null)`)
	p.Site.Publish(newVersion(t, 2))
	tab.look()
	tab.Await(`roofside.updateReady`)
	Eval[any](tab, `(roofside.takeOver(), null)`)
	tab.Await(shown + ` === "2"`)
	tab.Await(`caches.keys().then((names) => names.length === 3 && names.includes("their-app") && names.includes("roofside-/elsewhere/-1") || names.join(" ") && false)`)
}
