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

// A motor whose load is not known may turn up to its field, 1800 rpm for 1750, and no
// slower than its plate by much (common practice): the wheel by as much. What was read on the
// wheel, or is asked about, is what it is; where the load is known, the motor's speed is.
func TestAWheelMayTurnFasterThanThePlateSays(t *testing.T) {
	const drive = "supply=drive&new.motor-speed=1750rpm&new.motor-frequency=60Hz&new.frequency=60Hz&want.speed=1000rpm;within 0rpm&new.wheel-max-speed=1020rpm"
	f := fan(t, drive)
	for from, want := range map[sheet.From]sheet.Level{sheet.FromSheaves: sheet.Unjudged, sheet.FromTachometer: sheet.Within, sheet.FromTrial: sheet.Within, sheet.FromPlace: sheet.Within} {
		if v := sheet.WheelVerdict(f, sheet.Read("n", from, &f.Want.Speed)); v.Level != want || v.Value.Base != float64(f.Want.Speed.Value()) {
			t.Errorf("on a drive from %q: level %d of %v", from, v.Level, v.Value.Base)
		}
	}
	const basis = "&same-wheel=yes&target.power=1hp&target.speed=990rpm&new.motor-power=2hp"
	f = fan(t, drive+basis) // whose amps tell no load
	if v := sheet.WheelVerdict(f, sheet.Read("n", sheet.FromSheaves, &f.Want.Speed)); v.Level != sheet.Unjudged {
		t.Errorf("on a drive, the power known: level %d", v.Level)
	}
	const line = "supply=three-phase&new.motor-speed=1750rpm&new.motor-frequency=60Hz&want.speed=1000rpm;within 30rpm&new.wheel-max-speed=985rpm"
	for link, want := range map[string]sheet.Level{line: sheet.Stop, line + basis: sheet.Unjudged} {
		f := fan(t, link)
		if v := sheet.WheelVerdict(f, sheet.Read("n", sheet.FromSheaves, &f.Want.Speed)); v.Level != want {
			t.Errorf("%s: level %d", link, v.Level)
		}
	}
}

// What settles a verdict is asked for where it isn't settled, and nowhere else.
func TestOnlyWhatIsNotSettledIsAskedFor(t *testing.T) {
	f := fan(t, swap+"&old.air-temperature=70F&coldest-air=70F")
	set(t, f, "old.amps-1", "5.5 A; within 0.5 A")
	for rpm, want := range map[string]sheet.Level{"600 rpm": sheet.Within, "840 rpm": sheet.Unjudged, "1000 rpm": sheet.Stop} {
		v := sheet.MotorVerdict(f, sheet.FanBasis(f), speedAt(t, f, rpm))
		if v.Level != want || (len(v.Wanted) > 0) != (want == sheet.Unjudged) {
			t.Errorf("%s: level %d, wants %v", rpm, v.Level, v.Wanted)
		}
	}
}
