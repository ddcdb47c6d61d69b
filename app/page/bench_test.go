package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
)

// BenchmarkKeystroke is what one stroke costs before the browser is touched:
// text to record, record to storage, answers, and the page built anew.
func BenchmarkKeystroke(b *testing.B) {
	for _, c := range []struct {
		name string
		page interface{ Render() app.UI }
		open []string
		key  string
		text [2]string
	}{
		{"drive", NewDrive(), []string{"target", "new"}, "target.speed", [2]string{"71", "712"}},
		{"belt", NewBelt(), []string{"base"}, "new.center-distance", [2]string{"15.7", "15.75"}},
	} {
		b.Run(c.name, func(b *testing.B) {
			shared = newBench(store.Memory(), "en-US")
			shared.Follow(strings.ReplaceAll(demoFan, " ", "%20"))
			for _, id := range c.open {
				shared.open[id] = true
			}
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				shared.Type(c.key, shared.place(c.key), c.text[i%2])
				c.page.Render()
			}
		})
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
