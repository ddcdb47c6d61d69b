//go:build e2e

package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
)

const language = `document.documentElement.lang + " " + document.querySelector(".page").lang`

// A browser of Mexico: Spanish words, that region's numbers and units. Words are
// chosen apart from the numbers, and kept.
func TestSpanishAtOnceAndEnglishByChoice(t *testing.T) {
	t.Parallel()
	p := NewPhoneIn(t, "es-MX")
	tab := p.Open("/drive/#old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.6in&target.speed=1712rpm")
	tab.Await(language + ` === "es es"`)
	tab.Await(`document.title === "Poleas · Roofside"`)
	tab.AwaitText(`output[name="move"]`, "Para hallar el ajuste, anote:")
	tab.AwaitValue("old.fan-speed", 1750*3.4/8.6, 1e-9, "rpm")
	// Point for decimals, comma for thousands.
	tab.AwaitText(`output[name="target.fan-speed"]`, "1,712")
	tab.open("old")
	tab.Type("old.fan-sheave", "8.5pulg")
	tab.AwaitValue("old.fan-speed", 1750*3.4/8.5, 1e-9, "rpm")
	tab.Type("old.motor-speed", "1.725")
	tab.AwaitText("#old-motor-speed-note", "Leído como 1.725")
	tab.Type("old.motor-speed", "1,725")
	tab.AwaitText("#old-motor-speed-note", "Leído como 1725")
	tab.Type("old.fan-sheave", "ocho")
	tab.AwaitText("#old-fan-sheave-note", "no es un número")
	tab.Shoot("spanish-drive")

	tab.Go("/settings/")
	tab.AwaitText(`button[name="settings.language"][value="es"]`, "Español")
	tab.take("settings.language", "en")
	tab.Await(language + ` === "en en"`)
	tab.Await(`document.title === "Settings · Roofside"`)
	for _, when := range []string{"at once", "loaded anew"} {
		tab.Go("/drive/")
		tab.AwaitText(`output[name="move"]`, "To find the setting, enter:")
		tab.AwaitText(`output[name="target.fan-speed"]`, "1,712")
		if got := Eval[string](tab, `document.querySelector("button[name=units]").textContent`); got != "SI" {
			t.Errorf("%s: the region's units became %q", when, got)
		}
		tab.Reload()
	}

	// And the other way: a German number format under Spanish words.
	tab.Go("/settings/")
	tab.take("settings.language", "es")
	tab.take("settings.numbers", "de-DE")
	tab.Go("/drive/")
	tab.AwaitText(`output[name="move"]`, "Para hallar el ajuste, anote:")
	tab.AwaitText(`output[name="target.fan-speed"]`, "1.712")
}

// An address chooses words, units and looks for the page that it opens, and for
// no other.
func TestAnAddressChoosesTheWords(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	for _, path := range []string{"/drive/?lang=es&units=si&look=sun", "/drive/?embed&lang=es&units=si&look=sun"} {
		tab := p.Open(path + "#old.fan-sheave=10in")
		tab.Await(language + ` === "es es"`)
		tab.AwaitText(`output[name="move"]`, "Para hallar el ajuste, anote:")
		tab.Await(`document.querySelector(".page.look-sun")`)
		tab.open("old")
		if got := tab.FieldText("old.fan-sheave"); got != "254" {
			t.Errorf("%s: 10 in shows as %q", path, got)
		}
		tab.Close()
	}
	tab := p.Open("/drive/")
	tab.Await(language + ` === "en en"`)
	tab.Await(`!document.querySelector(".look-sun")`)
}

// Nothing is cut and nothing runs over on the narrowest screens, in either
// language.
func TestSpanishFitsThePhone(t *testing.T) {
	t.Parallel()
	p := NewPhoneIn(t, "es-MX")
	home := p.Open("/")
	home.Click(`button[name="demo"]`)
	home.AwaitText(".roof-head", "Cocina escuela")
	home.Close()
	p.Hold()
	for _, path := range []string{"/", "/drive/", "/airflow/", "/belt/", "/power/", "/raceway/", "/record/", "/settings/", "/sources/"} {
		tab := p.Open(path)
		tab.Rest()
		for _, s := range Eval[[]string](tab, `[...document.querySelectorAll("button.section-head[aria-expanded=false]")].map((b) => b.name.slice("section ".length))`) {
			tab.open(s)
		}
		for _, width := range []int{360, 320} {
			tab.do("narrowing", chromedp.EmulateViewport(int64(width), 740, chromedp.EmulateScale(2), chromedp.EmulateMobile, chromedp.EmulateTouch))
			tab.Rest()
			if wide := Eval[int](tab, `document.documentElement.scrollWidth`); wide > width {
				t.Errorf("%s at %d: the page is %d wide", path, width, wide)
			}
			cut := Eval[[]string](tab, `[...document.querySelectorAll("main button, main .button, .tabs a, .dataplate *, label, .label, .answer-label, h2, h3")]
				.filter((e) => e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && getComputedStyle(e).display !== "inline" && !e.closest(".scroll"))
				.map((e) => e.className + ": " + e.textContent.slice(0, 60))`)
			for _, what := range cut {
				t.Errorf("%s at %d: cut: %s", path, width, what)
			}
		}
		tab.Shoot(fmt.Sprintf("spanish-%s", path[1:max(1, len(path)-1)]))
		tab.Close()
	}
}
