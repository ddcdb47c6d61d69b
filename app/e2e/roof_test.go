//go:build e2e

package e2e

import "testing"

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
