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

// BenchmarkRacewayKeystroke is the same on the page with the most places.
func BenchmarkRacewayKeystroke(b *testing.B) {
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(demoFan, " ", "%20"))
	shared.open["circuit"] = true
	p := NewRaceway()
	texts := []string{"15", "150"}
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		shared.Type("circuit.length", shared.place("circuit.length"), texts[i%2])
		p.Render()
	}
}
