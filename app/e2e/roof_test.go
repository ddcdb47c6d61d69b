//go:build e2e

package e2e

import (
	"encoding/json"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// fanNames are the names in the list, of the open fan too, whose name is a field.
const fanNames = `[...document.querySelectorAll(".fan")].map((f) => f.querySelector("input")?.value ?? f.querySelector("strong").textContent).join("|")`

// The list of fans: steps, order, a twin, and what is removed comes back, also
// after the program was loaded anew in between.
func TestTheListOfFans(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/")
	Eval[bool](tab, `(navigator.storage.persist = async () => { asked = true; return false; }, true)`)
	tab.Click(`button[name="start"]`)
	tab.Await(`typeof asked === "boolean"`) // to keep what is there
	tab.Click(`button[name="remove fan"]`)
	tab.Click(`button[name="demo"]`)
	tab.AwaitText(".fan.open", "Not begun")
	tab.Await(fanNames + ` === "Hood line 2, west|Hood line 1, east|Bread oven|Dish room"`)

	tab.Click(`button[name="step next"]`)
	tab.AwaitText(".fan.open", "Surveyed")
	tab.Click(`button[name="later"]`)
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Bread oven|Dish room"`)
	tab.Click(`button[name="copy fan"]`)
	tab.AwaitText(".fan.open", "Not begun") // the copy is on the desk, and its name the field
	tab.Type("name", "Its twin")
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)

	tab.Click(`button[name="remove fan"]`)
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Bread oven|Dish room"`)
	tab.Click(`button[name="undo"]`)
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)

	tab.Reload()
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)
	tab.Click(`.roof:last-child .roof-head button`)
	tab.Click(`button[name$=" remove"]`)
	tab.Await(fanNames + ` === ""`)
	tab.Click(`button[name="undo"]`)
	tab.Await(fanNames + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)
}

// A roof that is longer than the screen is filled in strokes: each fan has its place from
// the first, all come, in their order, and the open fan's field, that a hand may be in,
// is not drawn anew for it.
func TestALongRoofComesWhole(t *testing.T) {
	tab := NewPhone(t).Open("/settings/")
	tab.stock(40, "f40")
	tab.Reload()
	Eval[bool](tab, `(() => {
		window.seen = [];
		new MutationObserver(() => {
			const fans = document.querySelectorAll(".fan");
			if (fans.length === 0) return;
			window.held ??= document.getElementById("name");
			seen.push([fans.length, document.querySelectorAll(".fan-line").length]);
		}).observe(document.body, { subtree: true, childList: true });
		return true;
	})()`)
	tab.Click(`.tabs a[href="/"]`)
	tab.Await(`[...document.querySelectorAll(".fan-line strong")].map((s) => s.textContent).join() === Array.from({ length: 39 }, (_, i) => "Fan " + (i + 1)).join()`)
	seen := Eval[[][2]int](tab, `seen`)
	if first := seen[0]; first[0] != 40 || first[1] < 6 || first[1] >= 39 {
		t.Errorf("at first %d places, %d of them filled", first[0], first[1])
	}
	for _, s := range seen {
		if s[0] != 40 {
			t.Errorf("%d places", s[0])
		}
	}
	if !Eval[bool](tab, `held.isConnected && held.value === "Fan 40"`) {
		t.Error("the field of the open fan was drawn anew")
	}
}

// A button goes by what is so when it is tapped, not by what was so when it was drawn: it
// stays, while the page is drawn anew around it.
func TestAButtonGoesByWhatIsSoNow(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/")
	dir := tab.downloads()
	tab.Click(`button[name="start"]`)
	tab.Click(`.roof-head button`)
	for _, step := range []string{"Surveyed", "Planned", "Bench-set"} {
		tab.Click(`button[name="step next"]`)
		tab.AwaitText(".fan.open .stage", step)
	}
	for _, step := range []string{"Planned", "Surveyed"} {
		tab.Click(`button[name="step back"]`)
		tab.AwaitText(".fan.open .stage", step)
	}
	roof := field(Eval[string](tab, `document.querySelector("input[name^=roof-]").name`))
	Eval[any](tab, `(document.querySelector(`+"`"+roof+"`"+`).focus(), null)`)
	tab.Keys("West")
	tab.Click(`.roof > button[name^="start "]`)
	tab.Await(`document.querySelectorAll(".fan").length === 2`)
	tab.Click(`button[name^="export "]`)
	var file struct{ Fans []any }
	if text := tab.downloaded(dir + "/West.roof.json"); json.Unmarshal([]byte(text), &file) != nil || len(file.Fans) != 2 {
		t.Errorf("the file of a roof named and made longer since it was drawn: %s", text)
	}

	tab.Go("/raceway/#wire.w1.count=3&wire.w1.size=12")
	tab.open("wires")
	tab.open("wire w1")
	for range 2 {
		tab.Click(`button[name="wire.w1.count more"]`)
		tab.Await(`document.querySelector('input[name="wire.w1.count"]').value === "4"`)
		tab.Click(`button[name="undo"]`)
		tab.Await(`document.querySelector('input[name="wire.w1.count"]').value === "3"`)
	}

	tab.Go("/drive/#old.motor-sheave=3in")
	tab.open("old")
	tab.Type("old.motor-speed", "1,725")
	tab.AwaitText("#old-motor-speed-note", "Read as 1725")
	// In one stroke, as from the clipboard.
	tab.do("pasting", chromedp.KeyEvent("a", chromedp.KeyModifiers(chromedp.ModifierCtrl)), command(input.InsertText, input.InsertTextParams{Text: "1,080"}))
	tab.AwaitText("#old-motor-speed-note", "Read as 1080")
	tab.Click(`button[name="old.motor-speed other"]`)
	tab.Await(`document.querySelector('input[name="old.motor-speed"]').value === "1.080"`)
}
