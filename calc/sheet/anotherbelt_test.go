package sheet_test

import (
	"fmt"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A belt that lies tight farther from its number's length than belts of one number differ
// is another: by RMA IP-20, 0.6 in up to 35, 0.7 to 85 and 0.8 from 90 on; half an inch
// (common practice) where no table tells. More than 1.5 in off, the number or the
// measurement must be wrong, and the number is believed only of a base whose travel is known.
func TestWhetherItIsAnotherBelt(t *testing.T) {
	const travel = "new.travel-toward=1 in&new.travel-away=2 in"
	for _, c := range []struct {
		section, number string
		d, D, length    float64 // in
		off             float64
		with            string
		another         bool
	}{
		{"A", "A50", 3.4, 8.4, 51.3, 0.65, "", false},
		{"A", "A50", 3.4, 8.4, 51.3, 0.75, "", true},
		{"A", "A50", 3.4, 8.4, 51.3, -0.75, "", true},
		{"A", "A30", 3.4, 5, 31.3, 0.55, "", false},
		{"A", "A30", 3.4, 5, 31.3, 0.65, "", true},
		{"A", "A95", 3.4, 8.4, 96.3, 0.75, "", false},
		{"A", "A95", 3.4, 8.4, 96.3, 0.85, "", true},
		{"A", "A150", 3.4, 8.4, 151.3, 0.45, "", false},
		{"A", "A150", 3.4, 8.4, 151.3, 0.55, "", true},
		{"4L", "4L140", 2, 3, 13.215, 0.45, "", false}, // π · 0.25 in less than outside (memory)
		{"4L", "4L140", 2, 3, 13.215, 0.65, "", true},
		{"A", "A50", 3.4, 8.4, 51.3, 1.45, "", true},
		{"A", "A50", 3.4, 8.4, 51.3, 1.55, "", false},
		{"A", "A50", 3.4, 8.4, 51.3, 1.55, "new.travel-toward=1 in", false},
		{"A", "A50", 3.4, 8.4, 51.3, 1.55, "new.travel-away=2 in", false},
		{"A", "A50", 3.4, 8.4, 51.3, 1.55, travel, true},
		{"A", "A9999", 3.4, 8.4, 51.3, 1.55, travel, false}, // no such belt
		{"A", "!50", 3.4, 8.4, 51.3, 1.55, travel, false},
	} {
		f := fan(t, fmt.Sprintf("new.sheave=fixed&new.section=%s&new.motor-sheave=%v in; within 0 in&new.fan-sheave=%v in; within 0 in&new.center-distance=%v in; within 0 in&%s",
			c.section, c.d, c.D, center(c.d, c.D, c.length+c.off), c.with))
		set(t, f, "new.belt-number", c.number)
		b := sheet.BeltOn(&f.New)
		if another := b.From == sheet.FromNumber; another != c.another {
			t.Errorf("%s, %v in off, %s: another %v, of %v in", c.number, c.off, c.with, another, b.Value/in)
		}
	}
	// A number alone goes into a length that all prints have alike.
	f := fan(t, "new.section=A&new.belt-number=A50")
	if terms := sheet.NumberedLength(&f.New).Steps.Terms; len(terms) != 1 {
		t.Errorf("%d terms", len(terms))
	}
}

// The fan's speed at a trial is what was read at it, else what its setting gives by the
// reading that there is.
func TestTheSpeedAtATrial(t *testing.T) {
	f := altered(t, "trial.t2.turns=3 turns&trial.t2.speed=700 rpm")
	table := sheet.TurnsTable(f)
	for i, want := range []float64{716, 700} {
		if n := sheet.SpeedOf(f, table, f.Trials[i]); !n.Known() || float64(n.Value) != want {
			t.Errorf("trial %d: %v rpm", i+1, n.Value)
		}
	}
	set(t, f, "trial.t1.speed", "")
	if n := sheet.SpeedOf(f, table, f.Trials[0]); !n.Known() || float64(n.Value) != 700 || f.Trials[0].Reading.Speed.State() != record.Unknown {
		t.Errorf("not read: %v rpm", n.Value)
	}
}

// A belt to choose lies tight where its own length does, whatever belt was measured in place.
func TestWhereABeltToChooseLies(t *testing.T) {
	f := altered(t, "")
	r := sheet.RunAt(f, sheet.Setting(3), nil)
	fits := sheet.Fits(f, r)
	if len(fits) < 3 || fits[0].Role != sheet.Fitted {
		t.Fatalf("%d belts", len(fits))
	}
	for _, x := range fits[1:] {
		value(t, x.Name, x.Center, center(3.4, 8.4, float64(x.Length.Value)/in)*in)
	}
	value(t, "the one measured", fits[0].Center, center(3.4, 8.4, length(4, 8.4, 15.75))*in)
}
