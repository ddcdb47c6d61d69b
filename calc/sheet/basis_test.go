package sheet_test

import (
	"strings"
	"testing"

	"roofside/calc/sheet"
)

// Power is carried from amps read on the new drive, else from those of the old motor, else
// from the report; and where what comes first was begun and is no value, nothing takes its
// place unsaid. Amps tell load on a three-phase supply only.
func TestWhatPowerIsCarriedFrom(t *testing.T) {
	const (
		old    = "supply=three-phase&same-wheel=yes&old.speed=690rpm&old.motor-power=2hp&old.motor-amps=6.6A"
		report = "&target.speed=712rpm&target.power=1.15hp"
		bare   = "supply=three-phase&same-wheel=yes&target.speed=712rpm"
	)
	for _, c := range []struct {
		name, with string
		from       sheet.From
		wants      string // where there is none, the first that is asked for
	}{
		{"old amps before the report", old + report + "&old.amps-1=5A", sheet.FromOldAmps, ""},
		{"read on the second leg", old + report + "&old.amps-2=5A", sheet.FromOldAmps, ""},
		{"read on the third leg", old + report + "&old.amps-3=5A", sheet.FromOldAmps, ""},
		{"the old plate without amps", "supply=three-phase&same-wheel=yes&old.speed=690rpm&old.motor-power=2hp&old.amps-1=5A" + report, sheet.FromReport, ""},
		{"the same, and no report", "supply=three-phase&same-wheel=yes&old.speed=690rpm&old.motor-power=2hp&old.amps-1=5A", "", "old.motor-amps"},
		{"single-phase amps", old + report + "&supply=single-phase&old.amps-1=5A", sheet.FromReport, ""},
		{"nothing of power", bare, "", "old.amps-1"},
		{"a report without its speed", "supply=three-phase&same-wheel=yes&target.power=1.15hp", "", "target.speed"},
		{"on a drive amps are not asked for", "supply=drive&same-wheel=yes&target.speed=712rpm", "", "target.power"},
		{"a fan counted by hand stands still", bare + "&old.count-fan-turns=20", "", "target.power"},
		{"counted, and read before", bare + "&old.count-fan-turns=20&old.speed=700rpm", "", "old.amps-1"},
		{"a trial without amps", bare + "&trial.a.speed=700rpm", "", "trial.a.amps-1"},
		{"another wheel", old + report + "&old.amps-1=5A", "", "target.rated-power"},
		{"whether it is another is not said", old + report + "&old.amps-1=5A", "", "same-wheel"},
	} {
		f := fan(t, "")
		for _, part := range keyed(c.with) { // a later one stands
			set(t, f, part[0], part[1])
		}
		switch c.name {
		case "another wheel":
			set(t, f, "same-wheel", "no")
		case "whether it is another is not said":
			set(t, f, "same-wheel", "")
		}
		b := sheet.FanBasis(f)
		if b.Known() != (c.wants == "") || b.Known() && b.From != c.from {
			t.Errorf("%s: known %v, from %q, want %q", c.name, b.Known(), b.From, c.from)
		}
		if c.wants != "" && (len(b.Wanted) == 0 || f.KeyOf(b.Wanted[0]) != c.wants) {
			t.Errorf("%s: asks for %v, want %s", c.name, b.Wanted, c.wants)
		}
	}
	for _, key := range []string{"old.amps-1", "old.amps-2", "old.motor-power", "old.motor-amps", "old.no-load-amps", "old.speed"} {
		f := fan(t, old+report+"&old.amps-1=5A")
		f.Place(key).Set("!x")
		if b := sheet.FanBasis(f); b.Known() || b.Power.Fault == nil && b.Speed.Fault == nil {
			t.Errorf("garbled %s lets %s through: %+v", key, b.From, b)
		}
	}
}

// keyed are the keys and texts of a link.
func keyed(link string) (all [][2]string) {
	for part := range strings.SplitSeq(link, "&") {
		key, text, _ := strings.Cut(part, "=")
		all = append(all, [2]string{key, text})
	}
	return all
}

// What bounds nothing is no power: where the amps' error reaches below what a motor idles
// on, the answers that rest on it say so, and no report takes its place.
func TestAmpsThatBoundNothing(t *testing.T) {
	f := fan(t, swap+"&target.speed=712rpm&target.power=1.15hp")
	set(t, f, "old.amps-1", "5.5 A; within 0 A")
	if b := sheet.FanBasis(f); !b.Known() || b.From != sheet.FromOldAmps {
		t.Errorf("sure amps: %+v", b)
	}
	set(t, f, "old.speed", "690 rpm; within 800 rpm")
	b := sheet.FanBasis(f)
	if v := sheet.MotorVerdict(f, b, speedAt(t, f, "500 rpm")); v.Level != sheet.Unjudged {
		t.Errorf("a speed that may be none: %+v", v)
	}
}

// A speed that nothing bounds bounds no power, and no report takes its place; what a drive
// asks for is the whole of a report, whatever the old motor drew.
func TestASpeedThatBoundsNothing(t *testing.T) {
	const old = "supply=three-phase&same-wheel=yes&old.motor-power=2hp&old.motor-amps=6.6A&old.amps-1=5A&old.motor-speed=1750rpm&old.motor-sheave=3.4in&target.speed=712rpm&target.power=1.15hp&old.fan-sheave="
	if b := sheet.FanBasis(fan(t, old+"9in")); !b.Known() || b.From != sheet.FromOldAmps {
		t.Errorf("%+v", b)
	}
	if b := sheet.FanBasis(fan(t, old+"9in;within 9in")); b.Known() {
		t.Errorf("from %q", b.From)
	}
	f := fan(t, "supply=drive&same-wheel=yes&old.motor-power=2hp&old.motor-amps=6.6A&old.amps-1=5A&old.speed=690rpm")
	if b := sheet.FanBasis(f); len(b.Wanted) != 2 || f.KeyOf(b.Wanted[0]) != "target.power" || f.KeyOf(b.Wanted[1]) != "target.speed" {
		t.Errorf("%d wanted", len(b.Wanted))
	}
}
