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

func bench(b *testing.B, draw func() app.UI) {
	b.ReportAllocs()
	for b.Loop() {
		draw()
	}
}
