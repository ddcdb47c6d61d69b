//go:build e2e && speed

package e2e

import (
	"strings"
	"testing"
	"time"
)

// Reported, not judged: how long after a change the browser may be killed before the
// change is lost, by what the browser itself had written down of localStorage, and by
// what the program comes back with. The change is the second: the browser has just
// written the first one down.
func TestTheWindowOfLoss(t *testing.T) {
	for _, wait := range []time.Duration{0, 200 * time.Millisecond, 500 * time.Millisecond, time.Second, 3 * time.Second, 10 * time.Second, 30 * time.Second, 60 * time.Second} {
		pocket := NewPocket(t)
		p := pocket.Phone()
		tab := p.Open("/drive/")
		tab.open("old")
		tab.Type("old.motor-speed", "1710")
		time.Sleep(7 * time.Second)
		tab.Type("old.motor-speed", "1735")
		time.Sleep(wait)
		p.Kill()

		again := pocket.Phone()
		plain := again.NewTab()
		plain.Allow("404") // the icon
		plain.Visit(pocket.site.URL + "/web/style.css")
		stored := strings.Contains(plain.laid("fan/scratch"), "1735")
		tab = again.Open("/drive/")
		tab.open("old")
		t.Logf("killed after %v: in localStorage %v, opened again %v", wait, stored, tab.FieldText("old.motor-speed") == "1735")
	}
}
