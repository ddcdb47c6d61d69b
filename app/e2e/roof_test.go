//go:build e2e

package e2e

import "testing"

// The list of fans: steps, order, a twin, and what is removed comes back, also
// after the program was loaded anew in between.
func TestTheListOfFans(t *testing.T) {
	tab := NewPhone(t).Open("/")
	Eval[bool](tab, `(navigator.storage.persist = async () => { asked = true; return false; }, true)`)
	tab.Click(`button[name="start"]`)
	tab.Await(`typeof asked === "boolean"`) // to keep what is there
	tab.Click(`button[name="remove fan"]`)
	tab.Click(`button[name="demo"]`)
	tab.AwaitText(".fan.open", "Not begun")
	names := `[...document.querySelectorAll(".fan")].map((f) => f.querySelector("input")?.value ?? f.querySelector("strong").textContent).join("|")`
	tab.Await(names + ` === "Hood line 2, west|Hood line 1, east|Bread oven|Dish room"`)

	tab.Click(`button[name="step next"]`)
	tab.AwaitText(".fan.open", "Surveyed")
	tab.Click(`button[name="later"]`)
	tab.Await(names + ` === "Hood line 1, east|Hood line 2, west|Bread oven|Dish room"`)
	tab.Click(`button[name="copy fan"]`)
	tab.AwaitText(".fan.open", "Not begun") // the copy is on the desk, and its name the field
	tab.Type("name", "Its twin")
	tab.Await(names + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)

	tab.Click(`button[name="remove fan"]`)
	tab.Await(names + ` === "Hood line 1, east|Hood line 2, west|Bread oven|Dish room"`)
	tab.Click(`button[name="undo"]`)
	tab.Await(names + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)

	tab.Reload()
	tab.Await(names + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)
	tab.Click(`.roof:last-child .roof-head button`)
	tab.Click(`button[name$=" remove"]`)
	tab.Await(names + ` === ""`)
	tab.Click(`button[name="undo"]`)
	tab.Await(names + ` === "Hood line 1, east|Hood line 2, west|Its twin|Bread oven|Dish room"`)
}
