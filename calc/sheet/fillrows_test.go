package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// printless is three wires of the motor's that can't be read, of a diameter.
func printless(t *testing.T, diameter, more string) *record.Fan {
	t.Helper()
	return changed(t, "raceway.conduit=EMT&raceway.size=1/2&wire.a.count=3&wire.a.size=8&wire.a.role=circuit&wire.a.insulation=unmarked&wire.a.diameter="+diameter, more)
}

// The fill by what is known of it. Of 3/8 alone Table 348.22 asks where the fittings are, and
// of flexible metal alone: 350.22(B) has its other column for liquidtight.
func TestFillOfWhatIsKnown(t *testing.T) {
	for _, c := range []struct {
		name  string
		f     *record.Fan
		level sheet.Level
		wants string
	}{
		{"FMC 3/8, fittings not told", wired(t, "&raceway.conduit=FMC&raceway.size=3/8&wire.b.where=box"), sheet.Unjudged, "raceway.fittings"},
		{"FMC 1/2", wired(t, "&raceway.conduit=FMC"), sheet.Within, ""},
		{"LFMC 3/8", wired(t, "&raceway.size=3/8"), sheet.Within, ""},
		// 1/2 EMT: 0.304 in² inside, 0.122 of them for three (Chapter 9, Tables 1 and 4): 0.227 in each.
		{"three of 0.22 in", printless(t, "0.22in;within 0in", ""), sheet.Within, ""},
		{"three of 0.24 in", printless(t, "0.24in;within 0in", ""), sheet.Stop, ""},
		{"three of 0.22 in or so", printless(t, "0.22in;within 0.02in", ""), sheet.Unjudged, "wire.a.diameter"},
		{"three of 0.24 in or so", printless(t, "0.24in;within 0.02in", ""), sheet.Unjudged, "wire.a.diameter"},
		{"three of 0.24 in, if it was measured at all", printless(t, "0.24in;within 0.24in", ""), sheet.Unjudged, "wire.a.diameter"},
	} {
		f := c.f
		v := sheet.FillVerdict(f)
		if v.Level != c.level || wantedOf(f, v) != c.wants {
			t.Errorf("%s: %s, wants %q, %+v", c.name, levelNames[v.Level], wantedOf(f, v), v.Fault)
		}
	}
}

// The inside of the conduit stands in the working: 0.304 in² of 1/2 EMT (Chapter 9, Table 4).
func TestConduitStandsInTheWorkingOfTheFill(t *testing.T) {
	a := sheet.FillShare(printless(t, "0.2in", ""))
	if got := term(t, a.Steps, "A") / (in * in); math.Abs(got-0.304) > 0.0005 {
		t.Errorf("%v in²", got)
	}
}

// Room is told for wires like the motor's; where there are none whose print can be read,
// like the first.
func TestRoomForWiresLikeWhich(t *testing.T) {
	const conduit = "raceway.conduit=EMT&raceway.size=1"
	for _, c := range []struct {
		roles []string // of rows x, y, z
		print []string
		want  string
	}{
		{[]string{"other", "circuit", "circuit"}, []string{"THWN-2", "THWN-2", "THWN-2"}, "y"},
		{[]string{"circuit", "other", "ground"}, []string{"THWN-2", "THWN-2", "THWN-2"}, "x"},
		{[]string{"ground", "other", "ground"}, []string{"THWN-2", "THWN-2", "THWN-2"}, "x"},
		{[]string{"circuit", "other", "other"}, []string{"unmarked", "THWN-2", "THWN-2"}, "y"},
		{[]string{"circuit", "other", "other"}, []string{"", "THWN-2", "THWN-2"}, "y"},
		{[]string{"circuit", "circuit", "circuit"}, []string{"", "unmarked", ""}, ""},
	} {
		link := conduit
		for i, id := range []string{"x", "y", "z"} {
			row := "&wire." + id + ".count=2&wire." + id + ".size=12&wire." + id + ".role=" + c.roles[i]
			switch c.print[i] {
			case "":
			case "unmarked":
				row += "&wire." + id + ".diameter=0.13in&wire." + id + ".insulation=unmarked"
			default:
				row += "&wire." + id + ".insulation=" + c.print[i]
			}
			link += row
		}
		got := ""
		if _, like := sheet.Room(fan(t, link)); like != nil {
			got = like.ID
		}
		if got != c.want {
			t.Errorf("%v %v: like %q, want %q", c.roles, c.print, got, c.want)
		}
	}
}

// Three like wires wedge where the conduit is 2.8 to 3.2 of their diameters wide, or, oval in
// its bend, 5 % wider (cable practice, from memory). 1/2 EMT is 0.622 in inside (Table 4).
func TestThreeThatMayWedge(t *testing.T) {
	for _, c := range []struct {
		name  string
		f     *record.Fan
		three bool
		level sheet.Level
	}{
		{"3.1 diameters, oval 3.3", printless(t, "0.2in", ""), true, sheet.Watch},
		{"2.7, oval 2.9", printless(t, "0.228in", ""), true, sheet.Watch},
		{"2.9, oval 3.0", printless(t, "0.216in", ""), true, sheet.Watch},
		{"4.8", printless(t, "0.13in", ""), true, sheet.Within},
		{"2.1", printless(t, "0.3in", ""), true, sheet.Within},
		{"wider than the conduit", printless(t, "0.7in", ""), false, sheet.Within},
		{"four of them", printless(t, "0.2in", "&wire.a.count=4"), false, sheet.Within},
		{"of another circuit", printless(t, "0.2in", "&wire.b.count=3&wire.b.size=8&wire.b.insulation=THWN-2&wire.b.role=other&wire.a.role=other"), false, sheet.Within},
		{"of another circuit, and two of the motor's", printless(t, "0.2in", "&wire.a.count=2&wire.b.count=3&wire.b.size=8&wire.b.insulation=THWN-2&wire.b.role=other"), false, sheet.Within},
		{"of a size not told", fan(t, "raceway.conduit=EMT&raceway.size=1/2&wire.a.count=3&wire.a.role=circuit&wire.a.insulation=THWN-2"), false, sheet.Within},
		{"in a conduit not told", fan(t, "raceway.size=1/2&wire.a.count=3&wire.a.role=circuit&wire.a.insulation=THWN-2&wire.a.size=8"), false, sheet.Within},
	} {
		_, v, three := sheet.Jam(c.f)
		if three != c.three || v.Level != c.level {
			t.Errorf("%s: %t, %s", c.name, three, levelNames[v.Level])
		}
	}
	// 0.01 of 0.2 in are 5 %, of 3.11 nearly 0.16.
	ratio, _, _ := sheet.Jam(printless(t, "0.2in;within 0.01in", ""))
	if math.Abs(float64(ratio.Value)-3.11) > 0.01 || ratio.Band < 0.15 || ratio.Band > 0.17 {
		t.Errorf("%v ± %v", ratio.Value, ratio.Band)
	}
}

// Drawn are the wires that are known to be there.
func TestWiresThatAreDrawn(t *testing.T) {
	f := fan(t, "raceway.conduit=EMT&raceway.size=1/2&wire.a.count=3&wire.a.size=12&wire.a.insulation=THWN-2&wire.b.size=12&wire.b.insulation=THWN-2&wire.c.count=2&wire.c.size=12")
	inside, discs, ok := sheet.Section(f)
	if !ok || math.Abs(inside.In(unit.Inch)-0.622) > 0.001 || len(discs) != 1 || discs[0].Count != 3 || discs[0].Wire.ID != "a" {
		t.Errorf("%v %+v %t", inside, discs, ok)
	}
	if _, _, ok := sheet.Section(record.NewFan()); ok {
		t.Error("a conduit that isn't known is drawn")
	}
}
