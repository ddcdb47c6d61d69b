//go:build e2e && speed

package e2e

import (
	"fmt"
	"testing"
)

// Reported, not judged, as keystrokes are. The budget at a processor four times
// slower is 150 ms of script and page, for opening a roof of 40 complete fans and
// for going from one fan to another.
func TestARoofOfFortyFans(t *testing.T) {
	tab := NewPhone(t).Open("/settings/")
	tab.stock(40, "f1")
	tab.Reload()
	tab.Slow(4)
	t.Log("first opened:", tab.Taps(`.tabs a[href="/"]`))
	var home, fans []string
	for i := range 10 {
		home = append(home, `.tabs a[href="/drive/"]`, `.tabs a[href="/"]`)
		fans = append(fans, fmt.Sprintf(`button[name="open f%d"]`, 3*i+2))
	}
	back := tab.Taps(home...)
	for i := range home {
		if i%2 == 0 {
			continue
		}
		t.Logf("opened again: %.1f ms of script, %.1f of tasks", back.Script[i], back.Task[i])
	}
	t.Log("fans switched:", tab.Taps(fans...))
	t.Log("a name typed there:", tab.Strokes("name", "abcdefghij"))
}

// A save is what it takes to put a complete fan into text and hand it to the
// browser, from reading what stands there to having written.
func TestASave(t *testing.T) {
	tab := NewPhone(t).Open("/settings/")
	tab.stock(40, "f1")
	tab.Reload()
	tab.Click(`.tabs a[href="/drive/"]`)
	tab.open("new")
	tab.Slow(4)
	Eval[bool](tab, `(() => {
		window.saves = [];
		const set = Storage.prototype.setItem;
		Storage.prototype.setItem = function (key, text) {
			const before = performance.now();
			set.call(this, key, text);
			saves.push(performance.now() - before);
		};
		return true;
	})()`)
	t.Log(tab.Strokes("new.fan-sheave", "123456789123456789123456789"))
	saves := Eval[[]float64](tab, `saves`)
	t.Logf("%d writes: median %.2f, 95 %% %.2f ms", len(saves), Median(saves), P95(saves))
}
