package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Slip and load are taken into the table only where both are known of a motor on a
// supply: else the sheave's diameters alone tell how speeds compare.
func TestSlipIsTakenInWhereItIsKnown(t *testing.T) {
	byPitch := func(name string, f *record.Fan, n float64, at float64) {
		t.Helper()
		rows := sheet.TurnsTable(f).Rows
		if len(rows) != 13 {
			t.Errorf("%s: %d rows", name, len(rows))
		}
		for i, r := range rows {
			near(t, name, r.Speed, n*(4-0.1*float64(i))/at)
		}
	}
	const read = "&target.power=1hp&trial.a.turns=2turns&trial.a.speed=750rpm"
	f := fan(t, bench+read)
	set(t, f, "new.motor-power", "") // no load without a plate
	byPitch("no plate power", f, 750, 3.6)
	f = fan(t, bench+read)
	set(t, f, "new.motor-speed", "")
	byPitch("no plate speed", f, 750, 3.6)
	set(t, f, "new.motor-speed", "4000 rpm") // what no motor has
	byPitch("no such plate speed", f, 750, 3.6)
	f = fan(t, bench+"&target.power=1hp")
	set(t, f, "supply", "drive", "new.frequency", "45 Hz")
	n := 1321.4 // n + 50·(n/1750)² = 1350
	for range 20 {
		n = 1350 - 50*n*n/1750/1750
	}
	byPitch("on a drive", f, n/8.4, 1)

	// A motor's own speed read is what it turns at there: the row read is the reading.
	f = fan(t, bench+"&target.power=1hp&new.motor-tachometer=1780rpm;within 0rpm")
	near(t, "motor read", sheet.TurnsTable(f).Rows[0].Speed, 1780*4/8.4)
	// A frequency that is no text leaves the plate's: the fan was read.
	f = fan(t, bench+read)
	want := sheet.TurnsTable(f).Rows[0].Speed
	f.Place("new.frequency").Set("!59")
	near(t, "garbled frequency", sheet.TurnsTable(f).Rows[0].Speed, float64(want))
}

// The table starts from where the sheave stands, or from any setting where that is not
// known; text that is no value blocks it.
func TestWhereTheTableStarts(t *testing.T) {
	f := fan(t, bench)
	set(t, f, "new.turns", "4 turns")
	value(t, "at 4 turns", sheet.TurnsTable(f).Speed, 1750*3.2/8.4)
	set(t, f, "new.turns", "", "new.anchor-turns", "1 turns", "new.anchor-pitch", "3.8 in")
	value(t, "at an anchor", sheet.TurnsTable(f).Speed, 1750*3.8/8.4)
	f.Place("new.turns").Set("!three")
	faulty(t, f, "garbled turns", sheet.TurnsTable(f).Speed, "new.turns")
}

// A load whose air is no value takes nothing out of the plate's own band, and puts
// nothing into it that is no number.
func TestTheTablesBandIsANumber(t *testing.T) {
	f := fan(t, bench+"&target.power=1hp")
	if band := float64(sheet.TurnsTable(f).Band); !(band > 0 && band < 50./1750) {
		t.Errorf("a known load leaves ± %v", band)
	}
	f.Place("target.air-temperature").Set("!warm")
	if band := float64(sheet.TurnsTable(f).Band); math.IsNaN(band) || band < 0.02 {
		t.Errorf("garbled air leaves ± %v", band)
	}
}

// One taped anchor weighs as two do: by how far a setting lies from the one read.
func TestOneTapedAnchorWeighs(t *testing.T) {
	for _, key := range []string{"new.anchor-pitch", "new.second-anchor-pitch"} {
		f := fan(t, bench+"&trial.a.turns=2turns&trial.a.speed=745rpm;within 0rpm")
		before := sheet.TurnsTable(f).SpeedAt(f, sheet.Setting(4)).Band
		set(t, f, key, map[string]string{"new.anchor-pitch": "4 in", "new.second-anchor-pitch": "3 in"}[key]+"; within 1/16 in")
		table := sheet.TurnsTable(f)
		if at := table.SpeedAt(f, sheet.Setting(4)).Band; before != 0 || at <= 0 {
			t.Errorf("%s: ± %v, stamped ± %v", key, at, before)
		}
		if at := table.SpeedAt(f, sheet.Setting(2)).Band; at > 1e-9*unit.RPM {
			t.Errorf("%s: ± %v where it was read", key, at)
		}
	}
}

// The pitch that hits the target follows without any load known, and a pitch that is
// stamped gives a speed though the sort of sheave isn't said.
func TestAPitchForTheTarget(t *testing.T) {
	f := fan(t, bench)
	value(t, "load not known", sheet.PitchForTarget(f, sheet.TurnsTable(f)), 700*8.4/1750*in)
	f = fan(t, "new.motor-speed=1750rpm&new.motor-sheave=3.4in&new.fan-sheave=8.4in")
	value(t, "sheave not said", sheet.NewSpeedAt(f, sheet.NowTurns(f)), 1750*3.4/8.4)
}
