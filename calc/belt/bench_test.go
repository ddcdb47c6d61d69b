package belt_test

import (
	"testing"

	"roofside/calc/belt"
	"roofside/calc/drive"
)

// Evaluated for every half turn of a turns table; none may allocate while its
// inputs are sound.
var hot = map[string]func() error{
	"OpenLength":       func() error { _, err := belt.OpenLength(3.5*in, 9*in, 14*in); return err },
	"CenterFromLength": func() error { _, err := belt.CenterFromLength(3.5*in, 9*in, 49.3*in); return err },
	"BaseTravel":       func() error { _, err := belt.BaseTravel(3.5*in, 3.3*in, 9*in, 49.3*in); return err },
	"ArcSmall":         func() error { _, err := belt.ArcSmall(3.5*in, 9*in, 14*in); return err },
	"Span":             func() error { _, err := belt.Span(3.5*in, 9*in, 14*in); return err },
	"DatumLength":      func() error { _, err := belt.DatumLength(drive.SectionB, 48); return err },
	"DatumNumber":      func() error { _, err := belt.DatumNumber(drive.SectionB, 49.8*in); return err },
}

var sink error

func TestNoAllocations(t *testing.T) {
	for name, f := range hot {
		if err := f(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if n := testing.AllocsPerRun(100, func() { sink = f() }); n != 0 {
			t.Errorf("%s allocates %v times", name, n)
		}
	}
}

func BenchmarkOpenLength(b *testing.B)       { run(b, "OpenLength") }
func BenchmarkCenterFromLength(b *testing.B) { run(b, "CenterFromLength") }
func BenchmarkBaseTravel(b *testing.B)       { run(b, "BaseTravel") }

func run(b *testing.B, name string) {
	b.ReportAllocs()
	f := hot[name]
	for b.Loop() {
		sink = f()
	}
}
