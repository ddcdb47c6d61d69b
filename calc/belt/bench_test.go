package belt_test

import (
	"testing"
	"time"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/unit"
)

// Evaluated for every half turn of a turns table; none may allocate while its
// inputs are sound.
var hot = map[string]check.Call{
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

func TestNoAllocations(t *testing.T) { check.Allocations(t, 0, hot) }

func BenchmarkFormulas(b *testing.B) { check.Speed(b, 10*time.Microsecond, hot) }
