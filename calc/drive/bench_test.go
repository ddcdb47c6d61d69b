package drive_test

import (
	"testing"
	"time"

	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/unit"
)

// A turns table evaluates these for every half turn on every keystroke; none
// may allocate while its inputs are sound.
var hot = map[string]check.Call{
	"Driven":           func() error { _, err := drive.Driven(1725, 3.4*in, 8.6*in); return err },
	"DrivenWithSlip":   func() error { _, err := drive.DrivenWithSlip(1725, 3.4*in, 8.6*in, 0.01); return err },
	"DriverSheave":     func() error { _, err := drive.DriverSheave(1725, 700, 8.6*in); return err },
	"BeltSpeed":        func() error { _, err := drive.BeltSpeed(1725, 3.4*in); return err },
	"Poles":            func() error { _, err := drive.Poles(60, 1725); return err },
	"SpeedUnderLoad":   func() error { _, err := drive.SpeedUnderLoad(1800, 1725, 0.7); return err },
	"OnDrive":          func() error { _, err := drive.OnDrive(1725, 60, 45, 4); return err },
	"Count":            func() error { _, _, err := drive.Count(20, 50, 0.25); return err },
	"PitchFromOutside": func() error { _, err := drive.PitchFromOutside(4*in, drive.SectionB, drive.Combination); return err },
	"PitchFromGap": func() error {
		_, err := drive.PitchFromGap(4*in, 0.5*in, drive.SectionA, 34*unit.Degree)
		return err
	},
	"Adjustable": func() error {
		a, err := drive.NewAdjustable(0, 3.7*in, 5, 2.7*in)
		if err != nil {
			return err
		}
		d, err := a.Pitch(2.5)
		if err != nil {
			return err
		}
		_, err = a.Turns(d)
		return err
	},
	"CenterShift":        func() error { _, err := drive.CenterShift(1, drive.DefaultLead); return err },
	"MinimumMotorSheave": func() error { _, _, err := drive.MinimumMotorSheave(unit.Horsepower, 4); return err },
}

func TestNoAllocations(t *testing.T) { check.Allocations(t, 0, hot) }

func BenchmarkFormulas(b *testing.B) { check.Speed(b, 10*time.Microsecond, hot) }
