package drive_test

import (
	"math"
	"testing"

	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// The table's print again, typed from the page by row: angles by datum bound,
// widths at the rim and pitch line, twice the datum depth, least diameters.
func TestGrooveTable(t *testing.T) {
	for _, test := range []struct {
		section                   drive.Section
		groove                    drive.GrooveType
		bound, narrow, wide, belt float64 // bound is a datum diameter
		depth, depthWide, least   float64
	}{
		{"A", "standard", 5.4, 0.494, 0.504, 0.418, 0.250, 0.250, 3.0},
		{"AX", "standard", 5.4, 0.494, 0.504, 0.418, 0.250, 0.250, 2.2},
		{"B", "standard", 7.0, 0.637, 0.650, 0.530, 0.350, 0.350, 5.4},
		{"BX", "standard", 7.0, 0.637, 0.650, 0.530, 0.350, 0.350, 4.0},
		{"A", "combination", 7.4, 0.612, 0.625, 0.418, 0.634, 0.602, 3.6},
		{"AX", "combination", 7.4, 0.612, 0.625, 0.418, 0.634, 0.602, 2.8},
		{"B", "combination", 7.4, 0.612, 0.625, 0.530, 0.333, 0.334, 5.7},
		{"BX", "combination", 7.4, 0.612, 0.625, 0.530, 0.333, 0.334, 4.3},
	} {
		g, err := drive.GrooveOf(test.section, test.groove)
		if err != nil {
			t.Fatal(err)
		}
		boundDepth := test.depth
		if test.groove == drive.Combination {
			boundDepth = 0.333 // the groove's own datum
		}
		for what, pair := range map[string][2]float64{
			"bound":       {g.Bound.In(in), test.bound + boundDepth},
			"narrow":      {g.Narrow.Width.In(in), test.narrow},
			"wide":        {g.Wide.Width.In(in), test.wide},
			"belt":        {g.Belt.In(in), test.belt},
			"depth":       {g.Narrow.Inside.In(in), test.depth},
			"depth wide":  {g.Wide.Inside.In(in), test.depthWide},
			"least":       {g.Least.In(in), test.least},
			"first angle": {g.Narrow.Angle.In(unit.Degree), 34},
			"other angle": {g.Wide.Angle.In(unit.Degree), 38},
		} {
			check.Near(t, string(test.section)+" "+string(test.groove)+" "+what, pair[0], pair[1], 1e-12)
		}
		if g.Known != source.LookedUp {
			t.Errorf("%s is marked %s", test.section, g.Known)
		}
	}
	// Light-duty belts run in the same metal (memory).
	for light, same := range map[drive.Section]drive.Section{drive.Section4L: drive.SectionA, drive.Section5L: drive.SectionB} {
		for _, groove := range []drive.GrooveType{drive.Standard, drive.Combination} {
			want := check.Value[drive.Groove](t)(drive.GrooveOf(same, groove))
			want.Section, want.Least, want.Known = light, 0, source.Memory
			if got := check.Value[drive.Groove](t)(drive.GrooveOf(light, groove)); got != want {
				t.Errorf("%s in a %s groove is %+v, want %+v", light, groove, got, want)
			}
		}
	}
	if n := len(drive.Grooves()); n != 12 {
		t.Errorf("%d rows", n)
	}
}

// The printed depth must be the flanks' geometry, within what the tolerance of
// the rim's width makes of it.
func TestPrintedDepthIsGeometry(t *testing.T) {
	for _, g := range drive.Grooves() {
		belt, tolerance := g.Belt, 0.006*in
		if g.Type == drive.Combination && g.Belt > 0.5*in {
			belt = 0.508 * in // the groove's reference width, to which the print belongs
		}
		for _, f := range []drive.Flank{g.Narrow, g.Wide} {
			slope := math.Tan(float64(f.Angle) / 2)
			depth := (f.Width - belt) / unit.Length(slope)
			if off := math.Abs(float64(depth - f.Inside)); off > float64(tolerance)/slope {
				t.Errorf("%s %s %v°: %v in by geometry, %v printed", g.Section, g.Type, f.Angle.In(unit.Degree), depth.In(in), f.Inside.In(in))
			}
		}
	}
}

// A standard groove's gap at the rim gives the pitch diameter that the outside
// diameter gives.
func TestGapAgreesWithOutside(t *testing.T) {
	length := check.Value[unit.Length](t)
	for _, test := range []struct {
		section drive.Section
		outside unit.Length
		gap     unit.Length
		angle   unit.Angle
	}{
		{drive.SectionA, 3.25 * in, 0.494 * in, 34 * unit.Degree},
		{drive.SectionA, 9 * in, 0.504 * in, 38 * unit.Degree},
		{drive.SectionB, 5.75 * in, 0.637 * in, 34 * unit.Degree},
		{drive.SectionB, 9 * in, 0.650 * in, 38 * unit.Degree},
	} {
		byGap := length(drive.PitchFromGap(test.outside, test.gap, test.section, test.angle))
		byRim := length(drive.PitchFromOutside(test.outside, test.section, drive.Standard))
		if off := math.Abs(float64(byGap - byRim)); off > float64(0.002*in) {
			t.Errorf("%s: %v by the gap, %v by the rim", test.section, byGap.In(in), byRim.In(in))
		}
	}
	open := length(drive.PitchFromGap(4*in, 0.6*in, drive.SectionA, 34*unit.Degree))
	closed := length(drive.PitchFromGap(4*in, 0.5*in, drive.SectionA, 34*unit.Degree))
	check.Near(t, "difference of two gaps", closed-open, length(drive.GapChange(0.1*in, 34*unit.Degree)), 1e-12)

	_, err := drive.PitchFromGap(4*in, 0.4*in, drive.SectionA, 34*unit.Degree)
	check.Broken(t, "narrower than the belt", err, "gap", limit.GrooveTooNarrow)
	_, err = drive.PitchFromGap(1*in, 0.8*in, drive.SectionA, 34*unit.Degree)
	check.Broken(t, "no diameter left", err, "outside", limit.SheaveTooSmall)
	_, err = drive.PitchFromGap(4*in, 0.5*in, drive.Section3V, 38*unit.Degree)
	check.Broken(t, "narrow section", err, "section", limit.NotTabulated)
	_, err = drive.PitchFromGap(4*in, 0.5*in, drive.SectionA, 180*unit.Degree)
	check.Broken(t, "flat", err, "angle", limit.OutOfRange)
}

func TestOutsideThereAndBack(t *testing.T) {
	length := check.Value[unit.Length](t)
	for _, s := range drive.Sections() {
		for _, groove := range []drive.GrooveType{drive.Standard, drive.Combination} {
			if _, err := drive.PitchFromOutside(5*in, s, groove); err != nil {
				check.Broken(t, string(s), err, "groove", limit.NotTabulated)
				continue
			}
			for outside := 2 * in; outside < 15*in; outside += 0.0937 * in {
				pitch := length(drive.PitchFromOutside(outside, s, groove))
				if narrow := drive.NarrowSpread(s) > 0; pitch > outside || narrow != (pitch == outside) { // 2a = 0
					t.Errorf("%s %s: pitch %v outside %v", s, groove, pitch.In(in), outside.In(in))
				}
				check.Near(t, string(s)+" "+string(groove), length(drive.OutsideFromPitch(pitch, s, groove)), outside, 1e-12)
			}
		}
	}
	_, err := drive.PitchFromOutside(0.2*in, drive.SectionA, drive.Standard)
	check.Broken(t, "all rim", err, "outside", limit.SheaveTooSmall)
	_, err = drive.PitchFromOutside(5*in, "Z9", drive.Standard)
	check.Broken(t, "no such section", err, "section", limit.NotTabulated)
	_, err = drive.PitchFromOutside(5*in, drive.SectionA, "round")
	check.Broken(t, "no such groove", err, "groove", limit.NotTabulated)
}

// Where the angle changes, no sheave gives an A belt in a combination groove
// these pitches; the answer is then within the step of 0.032 in.
func TestOutsideBetweenTwoAngles(t *testing.T) {
	outside := check.Value[unit.Length](t)(drive.OutsideFromPitch(7.115*in, drive.SectionA, drive.Combination))
	pitch := check.Value[unit.Length](t)(drive.PitchFromOutside(outside, drive.SectionA, drive.Combination))
	if off := math.Abs(float64(pitch - 7.115*in)); off > float64(0.0321*in) || off == 0 {
		t.Errorf("off by %v in", unit.Length(off).In(in))
	}
}

// An installation guide prints the industry's standard, narrow belts: 2a = 0, and the
// least outside diameters. Handbooks after older editions take 0.05 and 0.10 in off
// (memory).
func TestNarrowSections(t *testing.T) {
	length := check.Value[unit.Length](t)
	for s, older := range map[drive.Section]unit.Length{drive.Section3V: 0.05, drive.Section3VX: 0.05, drive.Section5V: 0.10, drive.Section5VX: 0.10, drive.SectionA: 0, drive.Section4L: 0, "Q": 0} {
		check.Near(t, string(s)+", older prints", drive.NarrowSpread(s), older*in, 1e-12)
		if older == 0 {
			continue
		}
		check.Near(t, string(s), length(drive.PitchFromOutside(10*in, s, drive.Standard)), 10*in, 1e-12)
		check.Near(t, string(s), length(drive.OutsideFromPitch(10*in, s, drive.Standard)), 10*in, 1e-12)
	}
	for s, want := range map[drive.Section]float64{drive.Section3V: 2.65, drive.Section3VX: 2.20, drive.Section5V: 7.1, drive.Section5VX: 4.4} {
		if d, ok := drive.MinimumOutside(s); !ok || math.Abs(d.In(in)-want) > 1e-12 {
			t.Errorf("%s: least %v, %v", s, d.In(in), ok)
		}
		if _, ok := drive.MinimumDatum(s, drive.Standard); ok {
			t.Errorf("%s has a least datum diameter", s)
		}
	}
	if _, ok := drive.MinimumDatum(drive.Section4L, drive.Standard); ok {
		t.Error("4L has a least datum diameter, which no source gives")
	}
	if _, ok := drive.MinimumOutside(drive.SectionA); ok {
		t.Error("A is sized by its datum diameter")
	}
}
