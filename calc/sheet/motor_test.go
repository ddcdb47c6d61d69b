package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

func motorSpeed(f *record.Fan) sheet.Answer[unit.Speed] {
	return sheet.MotorSpeed(f, &f.Old, &f.Old.Reading, sheet.OldLoad(f, &f.Old))
}

func TestMotorSpeedTakesTheBestSource(t *testing.T) {
	const plate = "supply=three-phase&motor-speed=1725rpm&motor-power=2hp&motor-amps=6.6A"
	for _, c := range []struct {
		name, with string
		want, band float64
		from       sheet.From
	}{
		// Its load unknown, it may turn up to its field's 1800.
		{"plate", "", 1725, 75, sheet.FromPlate},
		{"read", "&motor-tachometer=1768rpm&amps-1=3A", 1768, 8.84, sheet.FromTachometer},
		// At plate amps every method says full load, whatever the no-load current.
		// The plate's slip, 75 rpm, holds to a fifth.
		{"full load", "&amps-1=6.6A;within 0A", 1725, 15, sheet.FromLoad},
		// 1800 · 59/60 − 75: the slip in rpm is kept.
		{"at 59 Hz", "&frequency=59Hz", 1695, 75, sheet.FromPlate},
	} {
		f := fan(t, plate+c.with)
		a := motorSpeed(f)
		value(t, c.name, a, c.want)
		near(t, c.name+" band", a.Band, c.band)
		if a.From != c.from {
			t.Errorf("%s is from %q, want %q", c.name, a.From, c.from)
		}
	}
}

// Half of the load takes half of the slip off: the middle of the methods.
func TestMotorSpeedUnderItsLoad(t *testing.T) {
	f := fan(t, "supply=three-phase&motor-speed=1725rpm&motor-power=2hp&motor-amps=6.6A&no-load-amps=3.3A;within 0A&amps-1=4.95A;within 0A")
	proportional, half := 4.95/6.6, (2*4.95-3.3)/(2*6.6-3.3)
	middle, apart := (proportional+half)/2, (proportional-half)/2
	want := 1800 - 75*middle
	a := motorSpeed(f)
	value(t, "speed", a, want)
	near(t, "band", a.Band, 75*apart+0.2*(1800-want))
}

// On a variable frequency drive n = ns − slip·(n/plate)²: at 45 Hz of a 1750 rpm
// plate, 1321.5 rpm.
func TestMotorSpeedOnADrive(t *testing.T) {
	f := fan(t, "supply=drive&motor-speed=1750rpm")
	wants(t, f, "no frequency", motorSpeed(f), "old.frequency")
	set(t, f, "old.frequency", "45 Hz")
	a := motorSpeed(f)
	if n := float64(a.Value); !a.Known() || a.From != sheet.FromInverter || !(n > 1321 && n < 1322) {
		t.Errorf("%v from %q", n, a.From)
	}
	n := float64(a.Value)
	near(t, "its own equation", a.Value, 1350-50*(n/1750)*(n/1750))
}

// The frequency of a plate follows from its speed: the smaller slip of the two.
func TestPlateFrequency(t *testing.T) {
	for plate, want := range map[string]float64{
		"3450 rpm": 60, "1750 rpm": 60, "1725 rpm": 60, "1550 rpm": 60, "1160 rpm": 60, "1075 rpm": 60, "850 rpm": 60,
		"2900 rpm": 50, "2850 rpm": 50, "1480 rpm": 50, "1450 rpm": 50, "1425 rpm": 50, "960 rpm": 50, "940 rpm": 50, "580 rpm": 60,
	} {
		f := fan(t, "motor-speed="+plate)
		value(t, plate, sheet.PlateFrequency(&f.Old), want)
	}
	f := fan(t, "motor-speed=1450rpm&motor-frequency=60Hz")
	value(t, "as plated", sheet.PlateFrequency(&f.Old), 60)
	value(t, "its field", sheet.Synchronous(&f.Old, &f.Old.Reading), 1800)
	f = fan(t, "motor-speed=4000rpm")
	faulty(t, f, "no such motor", sheet.PlateFrequency(&f.Old), "old.motor-speed")
}
