//go:build e2e && engines

package e2e

import (
	"fmt"
	"math"
	"testing"
)

// inEngines runs a test in every engine.
func inEngines(t *testing.T, test func(t *testing.T, e *Engine)) {
	for name := range drivers {
		t.Run(name, func(t *testing.T) {
			test(t, newEngine(t, name))
		})
	}
}

// The main job in every engine, with no signal: after one visit the server is
// gone. From the count to the correction, and nothing is lost.
func TestTheJobInOtherEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, e *Engine) {
		e.Go("/")
		if size := ask[[]int](e, `[innerWidth, innerHeight]`); size[0] != 360 || size[1] != 740 {
			t.Errorf("the page is %v px", size)
		}
		e.Await(`navigator.serviceWorker.getRegistration().then((r) => r?.active?.state === "activated")`)
		e.Site.Stop()

		e.Go("/drive/")
		e.AwaitText(`output[name="move"]`, "To find the setting, enter:")
		e.Open("job")
		e.Take("supply", "three-phase")
		e.Take("same-wheel", "yes")
		e.Open("job")
		e.Open("target")
		e.Type("target.speed", "712")
		e.Open("target")
		e.Open("old")
		e.Fill(oldFan)
		e.AwaitValue("old.fan-speed", 1725*20/48.25, 1e-9, "rpm")
		e.Open("old")
		e.Open("plate")
		e.Fill(newPlate)
		e.Open("plate")
		e.Open("new")
		e.Take("new.section", "A")
		e.Take("new.sheave", "adjustable")
		e.Fill(newDrive)
		e.Open("new")
		e.Open("base")
		e.Fill(newBase)
		e.Open("base")
		e.Go("/airflow/")
		e.Open("reference")
		e.Fill(report)
		e.Go("/drive/")
		e.AwaitText(`output[name="move"]`, "From closed, open 3 turns, to 3 open.")
		e.AwaitValue("set.turns", 3, 0, "1")
		e.AwaitValue("set.fan-speed", underLoad(3.4), 0.01, "rpm")
		e.fits()
		e.Shoot("set")

		e.Open("readings")
		e.Click(`button[name="add reading"]`)
		e.Await(`document.activeElement.name === "trial.t1.speed"`)
		e.Type("trial.t1.speed", "700")
		const corrected = "From 3 open, close ½ turn, to 2½ open."
		e.AwaitText(`output[name="move"]`, corrected)
		e.Shoot("reading")
		e.Reload()
		e.AwaitText(`output[name="move"]`, corrected)
		e.Go("/airflow/")
		e.AwaitValue("at.airflow", 3200*700/712.*0.028316846592/60, 1e-9, "m3/s")

		e.Go("/drive/?lang=es")
		e.Await(`document.documentElement.lang === "es"`)
		e.fits()
		e.Shoot("spanish")
		e.Heard()
	})
}

// The day, the notes and the sheet of the record; and what is printed.
func TestTheRecordInOtherEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, e *Engine) {
		e.Go("/record/" + filled + left + "&old.motor-power=2hp&old.motor-volts=208V&old.motor-amps=?")
		e.AwaitValue("record.speed.left", 700, 0, "rpm")
		e.Click(`button[name^="to item"]`)
		e.Await(`document.activeElement.id === "check-plate-matches"`)
		e.Click(`button[name="check.plate-matches done"]`)
		e.Open("closing")
		if got := e.FieldText("handover.belt-due"); got != "2026-03-23" {
			t.Errorf("the day of a link shows as %q", got)
		}
		e.Click(field("handover.notes"))
		// A second tap at the place of the first, soon after, has chosen a word.
		e.Keys("\uE010 and taped") // from the end of the line
		e.setDay("handover.on", "2026-03-10")
		e.Rest()
		e.Shoot("closing")
		e.Reload()
		e.Open("closing")
		if got := e.FieldText("handover.notes"); got != "Curb out of level and taped" {
			t.Errorf("notes came back as %q", got)
		}
		if got := e.FieldText("handover.on"); got != "2026-03-10" {
			t.Errorf("the day came back as %q", got)
		}
		e.Await(`window.print = () => { window.printed = true; }`)
		e.Click(`button[name="print sheet"]`)
		e.Await(`window.printed`)
		e.fits()
		e.Heard()
	})
}

// A field stays under the hand while a table appears above it, also in an engine
// that doesn't hold the page in place by itself; and the focus stays in it.
func TestFieldsHoldStillInOtherEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, e *Engine) {
		e.Go("/drive/#target.speed=900rpm&new.sheave=adjustable&new.anchor-turns=0&new.anchor-pitch=4in" +
			"&new.second-anchor-turns=5&new.second-anchor-pitch=3in&new.motor-speed=1750rpm&new.section=A&new.turns=1")
		e.Open("new")
		e.Click(field("new.fan-sheave"))
		e.Rest()
		where := `document.activeElement.getBoundingClientRect().top`
		before := ask[float64](e, where)
		e.Keys("8")
		e.Await(`document.querySelector(".turns-table")`)
		e.Rest()
		if after := ask[float64](e, where); math.Abs(after-before) > 4 { // a hand sees no less
			t.Errorf("the field went from %v to %v", before, after)
		}
		if now := ask[string](e, `document.activeElement.name`); now != "new.fan-sheave" {
			t.Errorf("the focus is on %q", now)
		}
		e.Heard()
	})
}

// Numbers are read as the chosen format has it.
func TestNumbersInOtherEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, e *Engine) {
		e.Go("/settings/")
		e.Click(`button[name="settings.numbers"][value="de-DE"]`)
		e.Go("/drive/#old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.6in")
		e.Open("old")
		e.Type("old.motor-speed", "1.725")
		e.AwaitText("#old-motor-speed-note", "Read as 1725")
		e.Type("old.fan-sheave", "8,6")
		e.AwaitValue("old.fan-speed", 1725*3.4/8.6, 1e-9, "rpm")
		e.Heard()
	})
}

// Every page with all that opens: nothing is wider than the phone, nothing complains.
func TestEveryPageInOtherEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, e *Engine) {
		for _, path := range append(pages(t), "/drive/?embed"+demo, "/power/"+filled+proving, "/raceway/"+filled+rewired, "/belt/"+filled+beltRead, "/record/?look=dark"+filled+left) {
			e.Go(path)
			for range 3 {
				ask[int](e, `(() => { const closed = [...document.querySelectorAll("main [aria-expanded=false]:not(.row-why)")].slice(0, 60); closed.forEach((b) => b.click()); return closed.length; })()`)
				e.Rest()
			}
			e.fits()
		}
		e.Heard()
	})
}

// What goes wrong must be heard: an exception, a broken policy, a missing file.
func TestTheConsoleIsHeardInOtherEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, e *Engine) {
		e.Go("/")
		ask[bool](e, `(() => {
			setTimeout(() => { throw new Error("thrown on purpose"); });
			const inline = document.createElement("script");
			inline.textContent = "window.ran = true";
			document.head.append(inline, Object.assign(document.createElement("script"), { src: "/missing.js" }));
			return true;
		})()`)
		for _, text := range []string{"thrown on purpose", "policy: script-src", "missing.js did not load"} {
			e.Await(fmt.Sprintf(`sessionStorage.getItem("heard").includes(%q)`, text))
		}
		if ask[bool](e, `!!window.ran`) {
			t.Error("an inline script ran")
		}
	})
}

// setDay sets a date as the engine's own picker would.
func (e *Engine) setDay(name, day string) {
	e.t.Helper()
	e.Await(`(() => {
		const input = document.querySelector('` + field(name) + `');
		input.focus();
		input.value = "` + day + `";
		for (const kind of ["input", "change"]) input.dispatchEvent(new Event(kind, { bubbles: true }));
		return true;
	})()`)
}

// fits fails where the page is wider than the phone.
func (e *Engine) fits() {
	e.t.Helper()
	e.Rest()
	if wide := ask[int](e, `document.documentElement.scrollWidth - innerWidth`); wide > 0 {
		e.t.Errorf("%s is %d px wider than the screen", ask[string](e, "location.href"), wide)
	}
}
