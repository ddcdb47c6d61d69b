package drive_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

const in = unit.Inch

func TestDriveInverses(t *testing.T) {
	speed, length := check.Value[unit.Speed](t), check.Value[unit.Length](t)
	random := rand.New(rand.NewPCG(3, 5))
	for range 500 {
		n := unit.Speed(500 + 3000*random.Float64())
		d := unit.Length(2+6*random.Float64()) * in
		D := unit.Length(3+20*random.Float64()) * in
		fan := speed(drive.Driven(n, d, D))
		check.Near(t, "driver", length(drive.DriverSheave(n, fan, D)), d, 1e-14)
		check.Near(t, "driven", length(drive.DrivenSheave(n, fan, d)), D, 1e-14)
		check.Near(t, "motor", speed(drive.MotorSpeedFor(fan, d, D)), n, 1e-14)
		check.Near(t, "ratio", unit.Speed(check.Value[unit.Ratio](t)(drive.Ratio(d, D)))*n, fan, 1e-14)
		check.Near(t, "belt", length(drive.PitchAtBeltSpeed(check.Value[unit.Velocity](t)(drive.BeltSpeed(n, d)), n)), d, 1e-14)

		k := unit.Length(0.1 + 9*random.Float64())
		check.Near(t, "scaled", speed(drive.Driven(n, k*d, k*D)), fan, 1e-14)
		check.Near(t, "belt scaled", check.Value[unit.Velocity](t)(drive.BeltSpeed(n, k*d)), unit.Velocity(k)*check.Value[unit.Velocity](t)(drive.BeltSpeed(n, d)), 1e-14)
		if bigger := speed(drive.Driven(n, d*1.01, D)); bigger <= fan {
			t.Fatalf("a larger driver gives %v after %v", bigger, fan)
		}
		if slipping := speed(drive.DrivenWithSlip(n, d, D, 0.02)); slipping >= fan {
			t.Fatalf("a slipping belt gives %v of %v", slipping, fan)
		}
	}
	check.Near(t, "equal sheaves", speed(drive.Driven(1725, 5*in, 5*in)), 1725, 0)
}

func TestBothSurfacesOfABeltMoveAlike(t *testing.T) {
	v := check.Value[unit.Velocity](t)
	n := check.Value[unit.Speed](t)(drive.Driven(1750, 3.4*in, 8.6*in))
	check.Near(t, "belt speed at the fan", v(drive.BeltSpeed(n, 8.6*in)), v(drive.BeltSpeed(1750, 3.4*in)), 1e-14)
}

func TestDrivenNamesTheFault(t *testing.T) {
	for _, test := range []struct {
		name      string
		n         unit.Speed
		d, D      unit.Length
		parameter string
		rule      limit.Rule
	}{
		{"no speed", 0, 1, 1, "n", limit.NotPositive},
		{"no driver", 1, 0, 1, "driver", limit.NotPositive},
		{"negative driven", 1, 1, -1, "driven", limit.NotPositive},
		{"NaN", 1, unit.Length(math.NaN()), 1, "driver", limit.NotFinite},
		{"too far apart", 1e308, 1e308, 1e-308, "", limit.Overflow},
	} {
		_, err := drive.Driven(test.n, test.d, test.D)
		check.Broken(t, test.name, err, test.parameter, test.rule)
	}
	_, err := drive.DrivenWithSlip(1750, 3*in, 9*in, 1)
	check.Broken(t, "all slips", err, "slip", limit.OutOfRange)
}

func TestCount(t *testing.T) {
	// 20 fan turns, 50.25 and 49.75 motor turns bound what 50 ± ¼ may be.
	ratio, band, err := drive.Count(20, 50, 0.25)
	if err != nil {
		t.Fatal(err)
	}
	check.Near(t, "ratio", ratio, 0.4, 1e-15)
	check.Near(t, "upper end", ratio+band, 20/49.75, 1e-12)
	if ratio-band > 20/50.25 {
		t.Errorf("lower end %v leaves out 20/50.25", ratio-band)
	}
	_, _, err = drive.Count(20, 0.25, 0.25)
	check.Broken(t, "too few", err, "motorTurns", limit.TooFewTurns)
	if _, band, err := drive.Count(20, 50, 0); err != nil || band != 0 {
		t.Errorf("an exact count has band %v, %v", band, err)
	}
}

func TestCreep(t *testing.T) {
	creep := check.Value[unit.Ratio](t)
	check.Near(t, "behind", creep(drive.Creep(700, 693)), 0.01, 1e-12)
	check.Near(t, "equal", creep(drive.Creep(700, 700)), 0, 1)
	if c := creep(drive.Creep(700, 707)); c >= 0 {
		t.Errorf("faster than the sheaves allow: %v is not negative", c)
	}
	// What Creep finds, DrivenWithSlip loses.
	n := check.Value[unit.Speed](t)(drive.DrivenWithSlip(1750, 3.5*in, 9*in, 0.013))
	check.Near(t, "round trip", creep(drive.Creep(check.Value[unit.Speed](t)(drive.Driven(1750, 3.5*in, 9*in)), n)), 0.013, 1e-12)
}

func TestMotorReading(t *testing.T) {
	for _, test := range []struct {
		measured unit.Speed
		want     bool
	}{{1835, true}, {1837, false}, {1800, true}, {1501, true}, {1499, false}} {
		if got, err := drive.MotorReading(1800, 50, test.measured); err != nil || got != test.want {
			t.Errorf("%v rpm on a motor of 1750: %v, %v, want %v", test.measured, got, err, test.want)
		}
	}
	if _, err := drive.MotorReading(1800, 1800, 100); err == nil {
		t.Error("a slip as large as the field was taken")
	}
}

func TestHarmonic(t *testing.T) {
	for _, test := range []struct {
		measured unit.Speed
		want     drive.Multiple
	}{
		{1000, drive.Plain}, {1799, drive.Plain}, {1801, drive.Twice}, {2000, drive.Twice}, {2199, drive.Twice}, {2201, drive.Plain},
		{449.8, drive.Plain}, {450.2, drive.Half}, {500, drive.Half}, {549.8, drive.Half}, {550.2, drive.Plain}, {3000, drive.Plain},
	} {
		if got, err := drive.Harmonic(1000, test.measured); err != nil || got != test.want {
			t.Errorf("%v rpm where 1000 is expected: %v, %v, want %v", test.measured, got, err, test.want)
		}
	}
}
