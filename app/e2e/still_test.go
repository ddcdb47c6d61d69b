//go:build e2e

package e2e

import (
	"fmt"
	"math"
	"testing"
)

// What appears above a field while it is typed in doesn't move it from under the hand.
func TestTheFieldUnderTheHandStays(t *testing.T) {
	tab := NewPhone(t).Open("/drive/#supply=three-phase&same-wheel=yes&old.motor-speed=1725rpm&old.motor-sheave=3.4in&target.speed=712rpm")
	tab.open("old")
	tab.focus("old.fan-sheave")
	tab.Rest()
	where := fmt.Sprintf(`(() => { const f = document.querySelector(%q); return [f.getBoundingClientRect().top, document.querySelector("main").scrollHeight - f.offsetHeight]; })()`, field("old.fan-sheave"))
	before := Eval[[]float64](tab, where)
	grown := 0.0
	for _, key := range "8.6xx" {
		tab.Keys(string(key))
		tab.Rest()
		now := Eval[[]float64](tab, where)
		if math.Abs(now[0]-before[0]) > 4 { // a hand sees no less
			t.Errorf("after %q the field stands %.0f px lower", key, now[0]-before[0])
		}
		grown = max(grown, math.Abs(now[1]-before[1]))
	}
	if grown < 20 {
		t.Errorf("the page has hardly changed its height: by %.0f px", grown)
	}
}
