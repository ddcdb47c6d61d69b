//go:build e2e

package e2e

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/network"

	"roofside/calc/record"
)

// Damage changes a file that the worker keeps on the device: to half of it, to nothing,
// or with one byte in its middle turned about.
func (t *Tab) Damage(file, how string) {
	t.t.Helper()
	got := Eval[string](t, fmt.Sprintf(`(async () => {
		const name = (await caches.keys()).find((name) => name.startsWith("roofside-"));
		const cache = await caches.open(name);
		const address = new URL(%q, location.origin + "/").href;
		const kept = await cache.match(address, { ignoreVary: true });
		let bytes = new Uint8Array(await kept.arrayBuffer());
		if (%q === "half") bytes = bytes.slice(0, bytes.length / 2);
		if (%q === "nothing") bytes = new Uint8Array(0);
		if (%q === "flipped") bytes[bytes.length >> 1] ^= 0xff;
		await cache.put(address, new Response(bytes, { headers: kept.headers }));
		return "damaged";
	})()`, file, how, how, how))
	if got != "damaged" {
		t.t.Fatal(got)
	}
}

// What is damaged on the device is mended with the next visit, where there is a host.
func TestDamageOnTheDeviceHeals(t *testing.T) {
	for _, c := range []struct{ file, how string }{
		{"web/app.wasm", "half"}, {"web/app.wasm", "nothing"}, {"web/app.wasm", "flipped"},
		{"web/first.js", "nothing"}, {"web/first.js", "half"}, {"app.js", "nothing"}, {"wasm_exec.js", "half"}, {"drive/", "nothing"},
	} {
		t.Run(strings.ReplaceAll(c.file, "/", "_")+" "+c.how, func(t *testing.T) {
			t.Parallel()
			p := NewPhone(t)
			tab := p.Open("/drive/")
			tab.AwaitInstalled()
			tab.open("old")
			tab.Type("old.fan-sheave", "8.6")
			tab.Damage(c.file, c.how)
			tab.Close()
			tab = p.NewTab()
			for _, of := range []string{"loading wasm failed", "WebAssembly", "CompileError", "magic word", "does not start", "exit code", "RuntimeError", "unreachable", "exited"} {
				tab.Allow(of) // until it is mended
			}
			tab.Visit(p.Site.URL + "/drive/")
			tab.Await(`document.readyState === "complete" && !document.getElementById("app-wasm-loader") && !document.getElementById("ended")`)
			tab.AwaitMounted()
			tab.open("old")
			if got := tab.FieldText("old.fan-sheave"); got != "8.6" {
				t.Errorf("the record holds %q", got)
			}
		})
	}
}

// Without a host the page says so, in the language that was set, and hands the records
// out.
func TestDamageWithoutAHostIsSaid(t *testing.T) {
	for _, c := range []struct{ file, how string }{{"web/app.wasm", "half"}, {"web/first.js", "nothing"}, {"drive/", "nothing"}} {
		t.Run(strings.ReplaceAll(c.file, "/", "_"), func(t *testing.T) {
			p := NewPhoneIn(t, "es")
			tab := p.Open("/drive/")
			tab.AwaitInstalled()
			tab.open("old")
			tab.Type("old.fan-sheave", "8.6")
			time.Sleep(time.Second) // the journal has it too
			tab.Damage(c.file, c.how)
			tab.Close()
			p.Offline()
			tab = p.NewTab()
			dir := tab.downloads()
			for _, of := range []string{"loading wasm failed", "WebAssembly", "CompileError", "does not start", "Failed to fetch", "ERR_", "roofside", "Failed to load resource"} {
				tab.Allow(of)
			}
			tab.Visit(p.Site.URL + "/drive/")
			tab.AwaitText("#ended h2", "Roofside no puede arrancar")
			tab.AwaitText("#ended p", "dañado en este aparato")
			tab.Shoot("damaged-" + strings.Trim(strings.ReplaceAll(c.file, "/", "-"), "-"))
			tab.Click(`#ended button[name="save"]`)
			roof, problems, err := record.UnmarshalRoof([]byte(tab.downloaded(filepath.Join(dir, "records.roof.json"))))
			if err != nil || len(roof.Fans) != 1 || len(problems[0]) > 0 {
				t.Fatal(err, problems)
			}
			if got := roof.Fans[0].Old.FanSheave.Text(); got != "8.6 in" {
				t.Errorf("saved as %q", got)
			}
		})
	}
}

// A program that can't be fetched is said in the user's language, and is tried again when
// the signal is back.
func TestNoProgramIsSaid(t *testing.T) {
	p := NewPhoneIn(t, "es")
	tab := p.NewTab()
	for _, of := range []string{"app.wasm", "does not start", "loading wasm failed", "Failed to load resource", "Failed to fetch"} {
		tab.Allow(of)
	}
	block := func(patterns ...*network.BlockPattern) {
		tab.do("blocking", command(network.SetBlockedURLs, network.SetBlockedURLsParams{URLPatterns: patterns}))
	}
	block(&network.BlockPattern{URLPattern: "*://*:*/*app.wasm*", Block: true})
	tab.Visit(p.Site.URL + "/drive/")
	tab.AwaitText("#ended p", "No se pudo descargar el programa")
	tab.Shoot("no-program")
	block()
	Eval[any](tab, `dispatchEvent(new Event("online")) && null`)
	tab.Await(`document.readyState === "complete" && !document.getElementById("app-wasm-loader") && !document.getElementById("ended")`)
	tab.AwaitMounted()
}
