package picture

import (
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// All are drawn again on each keystroke.

func BenchmarkSheave(b *testing.B) { bench(b, small().UI) }
func BenchmarkCurve(b *testing.B)  { bench(b, usual().UI) }
func BenchmarkLegs(b *testing.B)   { bench(b, uneven().UI) }

// Points that coincide are the hardest to label.
func BenchmarkCrowdedCurve(b *testing.B) { bench(b, crowded().UI) }

// Forty wires are the most that is drawn.
func BenchmarkConduit(b *testing.B) {
	c := wired()
	c.Wires[0].Count = 40
	bench(b, c.UI)
}

func BenchmarkChain(b *testing.B) { bench(b, chained().UI) }

func bench(b *testing.B, draw func() app.UI) {
	b.ReportAllocs()
	for b.Loop() {
		draw()
	}
}
