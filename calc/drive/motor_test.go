package drive_test

import (
	"math"
	"testing"

	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Field speeds at 60 Hz for 2, 4, 6 and 8 poles: DOE-HDBK-1011/4, ES-12.
func TestSynchronousSpeeds(t *testing.T) {
	for poles, want := range map[int]unit.Speed{2: 3600, 4: 1800, 6: 1200, 8: 900} {
		if got, err := drive.SynchronousSpeed(60, poles); err != nil || got != want {
			t.Errorf("%d poles: %v, %v, want %v", poles, got, err, want)
		}
	}
	for poles, rule := range map[int]limit.Rule{0: limit.NotPositive, -2: limit.NotPositive, 3: limit.OddPoles} {
		_, err := drive.SynchronousSpeed(60, poles)
		check.Broken(t, "poles", err, "poles", rule)
	}
}

func TestPoles(t *testing.T) {
	for _, test := range []struct {
		f     unit.Frequency
		plate unit.Speed
		want  int
	}{
		{60, 3450, 2}, {60, 3554, 2}, {60, 1725, 4}, {60, 1750, 4}, {60, 1625, 4}, {60, 1140, 6}, {60, 1075, 6}, {60, 850, 8}, {60, 825, 8},
		{50, 2850, 2}, {50, 1425, 4}, {50, 1455, 4}, {50, 960, 6}, {50, 700, 8},
		{60, 1800, 4}, {50, 1000, 6}, // at the field's own speed
		{60, 1441, 4}, {60, 445, 16}, // the most slip and the most poles that are believed
	} {
		if got, err := drive.Poles(test.f, test.plate); err != nil || got != test.want {
			t.Errorf("%v rpm at %v Hz: %v poles, %v, want %v", test.plate, test.f, got, err, test.want)
		}
	}
	for _, test := range []struct {
		name  string
		plate unit.Speed
		rule  limit.Rule
	}{
		{"above two poles", 3601, limit.AboveSynchronous},
		{"between two and four poles", 2000, limit.SlipTooLarge},
		{"past a fifth of slip", 1439, limit.SlipTooLarge},
		{"eighteen poles", 398, limit.SlipTooLarge},
		{"a hand-turned motor", 17.5, limit.SlipTooLarge},
	} {
		_, err := drive.Poles(60, test.plate)
		check.Broken(t, test.name, err, "n", test.rule)
	}
}

func TestSpeedUnderLoad(t *testing.T) {
	speed := check.Value[unit.Speed](t)
	check.Near(t, "idle", speed(drive.SpeedUnderLoad(1800, 1725, 0)), 1800, 0)
	check.Near(t, "full", speed(drive.SpeedUnderLoad(1800, 1725, 1)), 1725, 0)
	check.Near(t, "half", speed(drive.SpeedUnderLoad(1800, 1725, 0.5)), (1800.0+1725)/2, 1e-15)
	last := unit.Speed(math.Inf(1))
	for load := unit.Ratio(0); load < 1.3; load += 0.05 {
		n := speed(drive.SpeedUnderLoad(1800, 1725, load))
		if n >= last {
			t.Errorf("at load %v the motor turns %v, no slower than %v", load, n, last)
		}
		last = n
	}
	_, err := drive.SpeedUnderLoad(1800, 1725, 24)
	check.Broken(t, "stalled", err, "load", limit.Stalled)
	_, err = drive.SpeedUnderLoad(1800, 1801, 1)
	check.Broken(t, "plate above field", err, "plate", limit.AboveSynchronous)
}

func TestSlipThereAndBack(t *testing.T) {
	for n := unit.Speed(1600); n <= 1800; n += 12.5 {
		s := check.Value[unit.Ratio](t)(drive.Slip(1800, n))
		check.Near(t, "speed at slip", check.Value[unit.Speed](t)(drive.SpeedAtSlip(1800, s)), n, 1e-14)
	}
	_, err := drive.SpeedAtSlip(1800, 1)
	check.Broken(t, "standing", err, "slip", limit.Stalled)
}

func TestPlateBandHoldsThePlate(t *testing.T) {
	slowest, fastest, err := drive.PlateBand(1800, 1725)
	if err != nil {
		t.Fatal(err)
	}
	check.Near(t, "most slip", 1800-slowest, 1.2*75, 1e-12)
	check.Near(t, "least slip", 1800-fastest, 0.8*75, 1e-12)
	_, _, err = drive.PlateBand(1800, 200)
	check.Broken(t, "no such plate", err, "plate", limit.SlipTooLarge)
}

// The closed form must satisfy what it was solved from.
func TestOnDriveSolvesItsEquation(t *testing.T) {
	speed := check.Value[unit.Speed](t)
	for _, plate := range []unit.Speed{1650, 1725, 1750, 1790, 1800} {
		for f := unit.Frequency(5); f <= 60; f += 2.5 {
			n := speed(drive.OnDrive(plate, 60, f, 4))
			back, err := drive.FrequencyFor(plate, 60, n, 4)
			if err != nil {
				t.Fatal(err)
			}
			check.Near(t, "frequency back", float64(back), float64(f), 1e-12)
			r := n / plate
			check.Near(t, "equation", n+(1800-plate)*r*r, unit.Speed(30*f), 1e-13)
			if f < 60 && plate < 1800 {
				if p := speed(drive.OnDriveProportional(plate, 60, f, 4)); p >= n {
					t.Errorf("%v Hz: in proportion %v is not under %v", f, p, n)
				}
				if c, err := drive.OnDriveConstantSlip(plate, 60, f, 4); err == nil && c >= n {
					t.Errorf("%v Hz: constant slip %v is not under %v", f, c, n)
				}
			}
		}
		check.Near(t, "plate frequency", speed(drive.OnDrive(plate, 60, 60, 4)), plate, 1e-14)
	}
	_, err := drive.OnDriveConstantSlip(1650, 60, 5, 4)
	check.Broken(t, "less field than slip", err, "f", limit.Stalled)
	_, err = drive.OnDrive(1850, 60, 45, 4)
	check.Broken(t, "plate above field", err, "plate", limit.AboveSynchronous)
}

// NEMA MG 1, 14.42, Table 14-1, as three data sheets quote it: motors of 143T to 284T
// frames, classical belts by pitch diameter, narrow ones by outside diameter.
func TestMinimumMotorSheave(t *testing.T) {
	for _, test := range []struct {
		poles             int
		hp                float64
		classical, narrow float64 // inches; zero where the table says nothing
	}{
		{4, 0.5, 0, 0}, {4, 0.99, 0, 0}, {4, 1, 2.2, 2.2}, {4, 1.005, 2.4, 2.4}, {4, 1.5, 2.4, 2.4}, {4, 3, 2.4, 2.4}, {4, 3.005, 3.0, 3.0}, {4, 7.5, 3.0, 3.0},
		{4, 7.505, 3.8, 3.8}, {4, 10, 3.8, 3.8}, {4, 10.005, 4.4, 4.4}, {4, 15, 4.4, 4.4}, {4, 15.1, 0, 0}, {4, 20, 0, 0},
		{6, 0.5, 0, 0}, {6, 0.745, 0, 0}, {6, 0.75, 2.2, 2.2}, {6, 0.755, 2.4, 2.4}, {6, 1, 2.4, 2.4}, {6, 1.5, 2.4, 2.4}, {6, 2, 2.4, 2.4}, {6, 2.01, 3.0, 3.0}, {6, 3, 3.0, 3.0}, {6, 5, 3.0, 3.0},
		{6, 5.03, 3.8, 3.8}, {6, 7.5, 3.8, 3.8}, {6, 7.53, 4.4, 4.4}, {6, 10, 4.4, 4.4}, {6, 10.05, 4.6, 4.4}, {6, 15, 4.6, 4.4}, {6, 15.1, 0, 0},
		{2, 1.49, 0, 0}, {2, 1.5, 2.2, 2.2}, {2, 1.51, 2.4, 2.4}, {2, 3, 2.4, 2.4}, {2, 3.02, 2.6, 2.4}, {2, 5, 2.6, 2.4}, {2, 5.03, 3.0, 3.0}, {2, 7.5, 3.0, 3.0}, {2, 10, 3.0, 3.0}, {2, 10.05, 3.8, 3.8}, {2, 15, 3.8, 3.8}, {2, 15.1, 0, 0},
		{8, 0.497, 0, 0}, {8, 0.5, 2.2, 2.2}, {8, 0.503, 2.4, 2.4}, {8, 1.5, 2.4, 2.4}, {8, 1.51, 3.0, 3.0}, {8, 3, 3.0, 3.0}, {8, 3.02, 3.8, 3.8}, {8, 5, 3.8, 3.8}, {8, 5.03, 4.4, 4.4}, {8, 7.5, 4.4, 4.4}, {8, 7.53, 4.6, 4.4}, {8, 10, 4.6, 4.4}, {8, 10.05, 5.4, 5.2}, {8, 15, 5.4, 5.2}, {8, 15.1, 0, 0},
		{10, 5, 0, 0}, {0, 5, 0, 0},
	} {
		for name, c := range map[string]struct {
			least func(unit.Power, int) (unit.Length, bool, error)
			want  float64
		}{"classical": {drive.MinimumMotorSheave, test.classical}, "narrow": {drive.MinimumMotorOutside, test.narrow}} {
			d, ok, err := c.least(unit.Power(test.hp)*unit.Horsepower, test.poles)
			if err != nil || ok != (c.want != 0) {
				t.Errorf("%s, %v hp, %d poles: %v, %v", name, test.hp, test.poles, ok, err)
			}
			check.Near(t, name, d, unit.Length(c.want)*in, 1e-12)
		}
	}
}
