package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// One reading errs once: at the speed that it was taken at, its amps come back as they
// were read, however coarse the tachometer was. Of any other speed, and of one that was
// read another time, the error counts.
func TestATachometerErrsOnceAtItsOwnReading(t *testing.T) {
	const motor = "supply=three-phase&same-wheel=yes&new.motor-power=2hp&new.motor-amps=6.6A&new.no-load-amps=3A;within 0A"
	const read = "&trial.a.turns=2&trial.a.amps-1=5.2A;within 0A&trial.a.speed=700rpm;within "
	const old = "&old.motor-power=2hp&old.motor-amps=6.6A&old.no-load-amps=3A;within 0A&old.amps-1=5.2A;within 0A&old.speed=700rpm;within "
	for _, c := range []struct {
		name, before, after string
		widens              bool
	}{
		{"the reading itself", read, "rpm", false},
		{"another setting, read without amps", read, "rpm&trial.b.turns=1&trial.b.speed=740rpm;within 0rpm", true},
		{"a speed to look at", read, "rpm&want.speed=700rpm;within 0rpm", true},
		{"the old fan's amps, the new one's speed", old, "rpm&trial.b.turns=1&trial.b.speed=700rpm;within 0rpm", true},
	} {
		band := func(within string) unit.Current {
			f := fan(t, motor+c.before+within+c.after)
			a := sheet.NewAmps(f, sheet.FanBasis(f), sheet.PlannedSpeed(f, sheet.TurnsTable(f)), sheet.PlannedAir(f))
			if !a.Known() {
				t.Fatalf("%s: %+v", c.name, a)
			}
			return a.Band
		}
		if sure, coarse := band("0"), band("20"); (coarse > sure*1.0001) != c.widens {
			t.Errorf("%s: ± %v A, with 20 rpm more ± %v A", c.name, sure, coarse)
		}
	}
}

// Where the meter's own accuracy can't be read, no amps are told, and no band of any.
func TestAnUnreadableMeterTellsNoAmps(t *testing.T) {
	f := fan(t, "supply=three-phase&same-wheel=yes&target.power=1.1hp&target.speed=700rpm&new.motor-power=2hp&new.motor-amps=6.6A&new.no-load-amps=3A&want.speed=760rpm")
	set(t, f, "meter.clamp-accuracy", "!2")
	faulty(t, f, "amps", sheet.NewAmps(f, sheet.FanBasis(f), sheet.PlannedSpeed(f, sheet.TurnsTable(f)), sheet.PlannedAir(f)), "meter.clamp-accuracy")
}
