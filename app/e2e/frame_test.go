//go:build e2e

package e2e

import (
	"fmt"
	"net/http"
	"strings"
	"testing"
)

// host serves a page of another site that shows ours in a frame.
func host(t *testing.T, frame string) *Server {
	t.Helper()
	s := NewServer(t, dist)
	// Not the same site as 127.0.0.1, where ours is.
	s.URL = strings.Replace(s.URL, "127.0.0.1", "localhost", 1)
	s.Handle(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path != "/" {
			w.WriteHeader(http.StatusNoContent) // the browser asks for an icon
			return
		}
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, "<!doctype html><title>An intranet page</title><p>Fans</p>%s", frame)
	}))
	return s
}

// Where the browser refuses all storage, the page computes and knows that
// nothing is kept.
func TestFrameWithoutStorage(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.NewTab()
	tab.Visit(host(t, fmt.Sprintf(`<iframe sandbox="allow-scripts" width="340" height="600" src="%s/drive/"></iframe>`, p.Site.URL)).URL)
	frame := tab.Frame("/drive/")
	frame.AwaitMounted()
	if got := Eval[string](frame, `roofside.storage`); got != "none" {
		t.Errorf("storage is %q", got)
	}
	if got := Eval[string](frame, `(localStorage.setItem("a", 1), localStorage.getItem("a") + localStorage.length + localStorage.key(0) + localStorage.getItem("b"))`); got != "11anull" {
		t.Errorf("the stand-in gives %q", got)
	}
}

// A frame of another site has storage, apart from that of the site itself.
func TestFrameHasStorageOfItsOwn(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	own := p.Open("/")
	Eval[any](own, `localStorage.setItem("test", "own") ?? null`)
	tab := p.NewTab()
	tab.Visit(host(t, fmt.Sprintf(`<iframe width="340" height="600" src="%s/drive/"></iframe>`, p.Site.URL)).URL)
	frame := tab.Frame("/drive/")
	frame.AwaitMounted()
	if got := Eval[string](frame, `roofside.storage`); got != "kept" {
		t.Errorf("storage is %q", got)
	}
	if got := Eval[string](frame, `String(localStorage.getItem("test"))`); got != "null" {
		t.Errorf("the frame sees %q of the site's own storage: the driver has switched partitioning off", got)
	}
}

// A host on another origin learns how high the page is, and nothing more; the
// example shows how it is used.
func TestFrameTellsItsHeight(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.NewTab()
	tab.Visit(host(t, fmt.Sprintf(`<script>heard = []; addEventListener("message", (e) => heard.push(e.data));</script>
		<iframe width="340" height="300" src="%s/drive/?embed"></iframe>`, p.Site.URL)).URL)
	frame := tab.Frame("/drive/")
	frame.AwaitMounted()
	tab.Await(`heard.length > 0 && heard.at(-1).roofside.height > 600`)
	before := Eval[float64](tab, `heard.at(-1).roofside.height`)
	Eval[bool](frame, `(document.querySelector("button[name='section old']").click(), true)`)
	tab.Await(fmt.Sprintf(`heard.at(-1).roofside.height > %v`, before+300))
	if keys := Eval[string](tab, `JSON.stringify([...new Set(heard.flatMap((m) => [...Object.keys(m), ...Object.keys(m.roofside)]))])`); keys != `["roofside","height"]` {
		t.Errorf("the host hears %s", keys)
	}

	example := p.NewTab()
	example.Visit(p.Site.URL + "/web/embed-example.html")
	example.Await(`[...document.querySelectorAll("iframe")].every((f) => parseInt(f.style.height) > 600)`)
	example.Await(`document.querySelector("iframe").contentDocument.querySelector("output[name='old.fan-speed'] data")?.value.startsWith("691.86")`)
}

// A host on another origin that asks is told the named answers and the plate, and again
// as they change; one that does not ask is told nothing but the height.
func TestAHostReadsTheAnswers(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.NewTab()
	tab.Visit(host(t, fmt.Sprintf(`<script>heard = []; addEventListener("message", (e) => { if (!("height" in e.data.roofside)) heard.push(e.data.roofside); });</script>
		<iframe width="340" height="600" src="%s/drive/?embed#old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.6in"></iframe>`, p.Site.URL)).URL)
	frame := tab.Frame("/drive/")
	frame.AwaitMounted()
	frame.AwaitValue("old.fan-speed", 1750*3.4/8.6, 1e-6, "rpm")
	if n := Eval[float64](tab, `heard.length`); n != 0 {
		t.Errorf("%v messages that nobody asked for", n)
	}
	Eval[any](tab, `(document.querySelector("iframe").contentWindow.postMessage({ roofside: "answers" }, "*"), null)`)
	tab.Await(fmt.Sprintf(`Math.abs(heard.at(-1)?.answers["old.fan-speed"]?.value - %v) < 1e-6 && heard.at(-1).answers["old.fan-speed"].unit === "rpm"`, 1750*3.4/8.6))
	tab.Await(`heard.at(-1).plate.page === "drive" && heard.at(-1).plate.verdict === "unjudged" && heard.at(-1).answers["new.fan-speed"] === null`)
	Eval[bool](frame, `(document.querySelector("button[name='section old']").click(), true)`)
	frame.Await(`(() => {
		const field = document.querySelector('input[name="old.fan-sheave"]');
		if (!field) return false;
		field.value = "8.4";
		return field.dispatchEvent(new Event("input", { bubbles: true }));
	})()`)
	tab.Await(fmt.Sprintf(`Math.abs(heard.at(-1).answers["old.fan-speed"].value - %v) < 1e-6`, 1750*3.4/8.4))
}
