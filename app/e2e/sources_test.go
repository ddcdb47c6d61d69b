//go:build e2e

package e2e

import "testing"

// A source leads from an answer's working, and from a verdict, to its entry; going back
// finds the answer, and the record is untouched, also when the entry's address is opened
// by itself.
func TestASourceLeadsToItsEntry(t *testing.T) {
	tab := NewPhone(t).Open("/record/" + filled + left + "&old.motor-power=2hp&old.motor-volts=208V")
	tab.open("like")
	tab.Click(`[data-of="like.weight"] a.source`)
	tab.Await(`document.activeElement.id === "m-fit.alike" && location.hash === "#m-fit.alike"`)
	tab.Await(`((r) => r.top >= 0 && r.bottom <= innerHeight)(document.activeElement.getBoundingClientRect())`)
	tab.Reload()
	tab.AwaitText(`[id="m-fit.alike"]`, "common practice")
	tab.Await(`document.activeElement.id === "m-fit.alike"`)
	Eval[any](tab, `(history.back(), null)`)
	tab.AwaitText(`output[name="record.next"]`, "Still open")
	tab.AwaitValue("record.speed.left", 700, 0, "rpm")
}
