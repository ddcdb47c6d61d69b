package page

import (
	"strings"
	"testing"

	"roofside/app/store"
)

// BenchmarkKeystroke is what one stroke costs before the browser is touched:
// text to record, record to storage, answers, and the page built anew.
func BenchmarkKeystroke(b *testing.B) {
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(demoFan, " ", "%20"))
	shared.open["target"], shared.open["new"] = true, true
	p := NewDrive()
	texts := []string{"71", "712"}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		shared.Type("target.speed", shared.place("target.speed"), texts[i%2])
		p.Render()
	}
}

// BenchmarkPowerKeystroke is the same on Power, where every stroke moves the bars.
func BenchmarkPowerKeystroke(b *testing.B) {
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(powerDemo+evenAmps+proven, " ", "%20"))
	shared.open["readings"] = true
	p := NewPower()
	texts := []string{"5.", "5.5"}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		shared.Type("trial.t1.amps-1", shared.place("trial.t1.amps-1"), texts[i%2])
		p.Render()
	}
}
