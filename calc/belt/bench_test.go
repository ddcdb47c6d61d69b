package belt_test

import (
	"testing"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/unit"
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
	"NearestSizes":     func() error { _, _, err := belt.NearestSizes(drive.SectionB, 49.3*in); return err },
	"Choices":          func() error { _, _, err := belt.Choices(drive.SectionB, 3.5*in, 9*in, 14*in); return err },
	"BaseReach": func() error {
		_, err := belt.BaseReach(0.1*in, 1*in, 1*in, belt.Allowance{Toward: 0.75 * in, Away: 1 * in})
		return err
	},
	"StaticTension": func() error {
		_, err := belt.StaticTension(2.6*hp, 1600*fpm, 157*unit.Degree, 1, 0.105, belt.TensionByStatics)
		return err
	},
	"Strands":          func() error { _, _, err := belt.Strands(2.6*hp, 1600*fpm, 157*unit.Degree); return err },
	"ForceBands":       func() error { _, err := belt.ForceBands(44*lbf, 0); return err },
	"ReadForce":        func() error { _, err := belt.ReadForce(4*lbf, 0.1*lbf, 0.2*in, 0.03*in, 14*in); return err },
	"ReadFrequency":    func() error { _, err := belt.ReadFrequency(0.105, 0.15, 14*in, 60, 1, 0); return err },
	"ShaftLoadRunning": func() error { _, err := belt.ShaftLoadRunning(70*lbf, 17*lbf, 157*unit.Degree); return err },
	"Judge": func() error {
		_, err := belt.Judge(belt.Reading{Low: 3, Value: 4, High: 5}, belt.Band{Low: 3, High: 5})
		return err
	},
	"DatumNumber": func() error { _, err := belt.DatumNumber(drive.SectionB, 49.8*in); return err },
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

func BenchmarkChoices(b *testing.B)       { run(b, "Choices") }
func BenchmarkStaticTension(b *testing.B) { run(b, "StaticTension") }
func BenchmarkReadFrequency(b *testing.B) { run(b, "ReadFrequency") }
func BenchmarkJudge(b *testing.B)         { run(b, "Judge") }

func run(b *testing.B, name string) {
	b.ReportAllocs()
	f := hot[name]
	for b.Loop() {
		sink = f()
	}
}
