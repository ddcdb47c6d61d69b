package belt_test

import (
	"math"
	"slices"
	"testing"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// ANSI/RMA IP-20, 1988, datum lengths in inches, typed from another printing of
// the table than the code's numbers; A75 stands there as 75.3, a misprint.
func TestStandardLengths(t *testing.T) {
	a := []float64{27.3, 32.3, 36.3, 39.3, 43.3, 47.3, 52.3, 56.3, 61.3, 69.3, 76.3, 81.3, 86.3, 91.3, 97.3, 106.3, 113.3, 121.3, 129.3}
	b := []float64{36.8, 39.8, 43.8, 47.8, 52.8, 56.8, 61.8, 69.8, 76.8, 82.8, 86.8, 91.8, 98.8, 106.8, 113.8, 121.8, 129.8, 145.8, 159.8, 174.8, 181.8, 196.8, 211.8, 240.3, 270.3, 300.3}
	for section, lengths := range map[drive.Section][]float64{drive.SectionA: a, drive.SectionAX: a, drive.SectionB: b, drive.SectionBX: b} {
		numbers, known, err := belt.StandardNumbers(section)
		if err != nil || known != source.LookedUp || len(numbers) != len(lengths) {
			t.Fatal(section, len(numbers), known, err)
		}
		for i, want := range lengths {
			check.Near(t, string(section), check.Value[unit.Length](t)(belt.PitchLength(section, numbers[i])).In(in), want, 1e-9)
		}
	}
	// Numbers of one section and not of the other.
	for section, absent := range map[drive.Section][]int{drive.SectionA: {81, 97, 144}, drive.SectionB: {26, 31, 80, 96}} {
		numbers, _, err := belt.StandardNumbers(section)
		if err != nil {
			t.Fatal(err)
		}
		for _, n := range absent {
			if slices.Contains(numbers, n) {
				t.Errorf("%s%d is listed", section, n)
			}
		}
	}
	_, _, err := belt.StandardNumbers("Q")
	check.Broken(t, "no such section", err, "section", limit.NotTabulated)
}

// Narrow belts (memory) step as the preferred numbers of the series R40 do, of
// which this is one decade.
func TestNarrowLengthsArePreferredNumbers(t *testing.T) {
	decade := []int{100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300,
		315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950}
	for section, ends := range map[drive.Section][2]int{"3V": {250, 1400}, "3VX": {250, 1400}, "5V": {500, 3550}, "5VX": {500, 3550}} {
		var want []int
		for _, power := range []int{1, 10} {
			for _, n := range decade {
				if n *= power; n >= ends[0] && n <= ends[1] {
					want = append(want, n)
				}
			}
		}
		if got, _, err := belt.StandardNumbers(section); err != nil || !slices.Equal(got, want) {
			t.Errorf("%s: %v, %v", section, got, err)
		}
	}
	for section, ends := range map[drive.Section][2]int{"4L": {180, 1000}, "5L": {240, 1000}} {
		got, _, err := belt.StandardNumbers(section)
		if err != nil || got[0] != ends[0] || got[len(got)-1] != ends[1] || len(got) != (ends[1]-ends[0])/10+1 {
			t.Errorf("%s: %v, %v", section, got, err)
		}
	}
}

func TestEveryListAscendsAndSaysHowItIsKnown(t *testing.T) {
	for _, s := range drive.Sections() {
		numbers, known, err := belt.StandardNumbers(s)
		if err != nil {
			t.Fatal(s, err)
		}
		classical := slices.Contains([]drive.Section{drive.SectionA, drive.SectionAX, drive.SectionB, drive.SectionBX}, s)
		if classical != (known == source.LookedUp) || !classical && known != source.Memory {
			t.Errorf("%s is %s", s, known)
		}
		last := unit.Length(0)
		for _, n := range numbers {
			l := check.Value[unit.Length](t)(belt.PitchLength(s, n))
			if l <= last {
				t.Errorf("%s%d is %v after %v", s, n, l, last)
			}
			shorter, longer, err := belt.NearestSizes(s, l)
			if err != nil || shorter.Number != n || longer.Number != n || shorter.Length != l || shorter.Known != known {
				t.Errorf("%s%d leads to %+v and %+v, %v", s, n, shorter, longer, err)
			}
			last = l
		}
		// The caller's list is its own.
		numbers[0] = -1
		if again, _, err := belt.StandardNumbers(s); err != nil || again[0] == -1 {
			t.Errorf("%s: the list is shared, %v", s, err)
		}
	}
}

// The belt's pitch line lies inside its top by as much as the sheave's does; drive
// holds the same figures for sheaves, and what older prints take off both.
func TestOutsideLengthFitsTheSheaves(t *testing.T) {
	const od = 10 * in
	for _, s := range []drive.Section{drive.Section4L, drive.Section5L, drive.Section3V, drive.Section3VX, drive.Section5V, drive.Section5VX} {
		pd := check.Value[unit.Length](t)(drive.PitchFromOutside(od, s, drive.Standard))
		inside := 60*in - check.Value[unit.Length](t)(belt.PitchLength(s, 600))
		check.Near(t, string(s), inside, math.Pi*(od-pd), 1e-9)
		check.Near(t, string(s)+", older prints", belt.NumberSpread(s), math.Pi*drive.NarrowSpread(s), 1e-9)
	}
	// A narrow belt's number is its effective length: 3V500 is 50.0 in; older prints 49.84.
	check.Near(t, "3V500", check.Value[unit.Length](t)(belt.PitchLength(drive.Section3V, 500)).In(in), 50, 1e-9)
	check.Near(t, "3V500, older prints", 50-belt.NumberSpread(drive.Section3V).In(in), 49.84, 0.005)
	// A41 lies near 4L430, and a B belt near 3 in over its number (memory).
	light, classical := check.Value[unit.Length](t)(belt.PitchLength(drive.Section4L, 430)), check.Value[unit.Length](t)(belt.PitchLength(drive.SectionA, 41))
	check.Near(t, "4L430 and A41", light.In(in), classical.In(in), 0.01)
	light, classical = check.Value[unit.Length](t)(belt.PitchLength(drive.Section5L, 430)), check.Value[unit.Length](t)(belt.PitchLength(drive.SectionB, 40))
	check.Near(t, "5L430 and B40", light.In(in), classical.In(in), 0.01)
}

func TestNearestSizes(t *testing.T) {
	drives(func(d, D, C unit.Length) {
		l := check.Value[unit.Length](t)(belt.OpenLength(d, D, C))
		s, b, err := belt.NearestSizes(drive.SectionB, l)
		if l < 36.8*in || l > 300.3*in {
			check.Broken(t, "beyond the list", err, "pitchLength", limit.NotTabulated)
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if s.Length > l*(1+1e-9) || b.Length < l*(1-1e-9) {
			t.Errorf("%v lies not between %v and %v", l, s.Length, b.Length)
		}
		shorter, longer, err := belt.Choices(drive.SectionB, d, D, C)
		if err != nil { // the shorter belt does not reach around the sheaves
			check.Broken(t, "too short", err, "center", limit.BeltTooShort)
			return
		}
		for _, c := range []belt.Choice{shorter, longer} {
			check.Near(t, "length at the choice's center", check.Value[unit.Length](t)(belt.OpenLength(d, D, c.Center)), c.Length, 1e-9)
			check.Near(t, "move", C+c.Move, c.Center, 1e-12)
		}
		if shorter.Move > 1e-9*C || longer.Move < -1e-9*C {
			t.Errorf("the shorter belt moves %v, the longer %v", shorter.Move, longer.Move)
		}
	})
	_, _, err := belt.Choices(drive.SectionA, 3*in, 4*in, 2*in)
	check.Broken(t, "overlapping", err, "center", limit.SheavesOverlap)
	_, _, err = belt.Choices(drive.SectionA, 3*in, 4*in, 100*in)
	check.Broken(t, "longer than any", err, "center", limit.NotTabulated)
	_, err = belt.PitchLength(drive.Section4L, 7)
	check.Broken(t, "outside in", err, "number", limit.BeltTooShort)
	_, err = belt.PitchLength(drive.Section4L, 10001)
	check.Broken(t, "too long", err, "number", limit.OutOfRange)
	_, err = belt.PitchLength(drive.Section4L, 0)
	check.Broken(t, "none", err, "number", limit.NotPositive)
}

func TestBaseReach(t *testing.T) {
	need := belt.Allowance{Toward: 0.75 * in, Away: 1 * in}
	for _, test := range []struct {
		name               string
		move, toward, away unit.Length
		want               belt.Reach
	}{
		{"as it stands", 0, 0.75, 1, belt.ReachGood},
		{"room both ways", 0.25, 1, 1.5, belt.ReachGood},
		{"toward the fan", -0.5, 1, 1, belt.ReachNoInstall},
		{"away", 0.5, 1, 1, belt.ReachNoTakeUp},
		{"short base", 0, 0.5, 0.5, belt.ReachNeither},
		{"past its end", 1.01, 1, 1, belt.ReachOut},
		{"past the other end", -1.01, 1, 1, belt.ReachOut},
		{"at its end", 1, 1, 1, belt.ReachNoTakeUp},
	} {
		b, err := belt.BaseReach(test.move*in, test.toward*in, test.away*in, need)
		if err != nil || b.Reach != test.want {
			t.Errorf("%s: %+v, %v, want %s", test.name, b, err, test.want)
		}
		check.Near(t, test.name+": toward and away", b.Toward+b.Away, (test.toward+test.away)*in, 1e-12)
	}
}

// Rows by number, as handbooks and belt makers' manuals print them, from memory: first
// and last number of each, in inches; 2 and 3 per cent of the length beyond them.
func TestTravelByNumber(t *testing.T) {
	for section, rows := range map[drive.Section][][4]float64{ // from, through, toward, away
		drive.SectionA:   {{1, 35, 0.75, 1.0}, {36, 55, 0.75, 1.5}, {56, 85, 0.75, 2.0}, {86, 112, 1.0, 2.5}, {113, 144, 1.0, 3.0}, {145, 145, 2.926, 4.389}},
		drive.SectionAX:  {{26, 35, 0.75, 1.0}, {51, 51, 0.75, 1.5}, {60, 60, 0.75, 2.0}},
		drive.SectionB:   {{1, 35, 1.0, 1.0}, {36, 55, 1.0, 1.5}, {56, 85, 1.25, 2.0}, {86, 112, 1.25, 2.5}, {113, 144, 1.25, 3.0}, {145, 180, 1.25, 3.5}, {181, 210, 1.5, 4.0}, {211, 240, 1.5, 4.5}, {241, 300, 1.5, 5.0}, {301, 301, 6.026, 9.039}},
		drive.SectionBX:  {{51, 51, 1.0, 1.5}, {60, 60, 1.25, 2.0}},
		drive.Section3V:  {{250, 475, 0.5, 1.0}, {476, 710, 0.8, 1.2}, {711, 1060, 0.8, 1.5}, {1061, 1250, 0.8, 1.8}, {1251, 1700, 0.8, 2.2}, {1701, 1701, 3.402, 5.103}},
		drive.Section3VX: {{500, 500, 0.8, 1.2}},
		drive.Section5V:  {{1, 475, 1.0, 1.2}, {476, 710, 1.0, 1.2}, {711, 1060, 1.0, 1.5}, {1061, 1250, 1.0, 1.8}, {1251, 1700, 1.0, 2.2}, {1701, 2000, 1.0, 2.5}, {2001, 2360, 1.2, 3.0}, {2361, 2650, 1.2, 3.2}, {2651, 3000, 1.2, 3.5}, {3001, 3550, 1.2, 4.0}},
		drive.Section5VX: {{500, 500, 1.0, 1.2}},
		drive.Section4L:  {{480, 480, 0.9443, 1.4164}},
		drive.Section5L:  {{480, 480, 0.9380, 1.4070}},
	} {
		for _, row := range rows {
			for _, number := range row[:2] {
				a := check.Value[belt.Allowance](t)(belt.TravelAllowance(section, int(number)))
				if math.Abs(a.Toward.In(in)-row[2]) > 5e-5 || math.Abs(a.Away.In(in)-row[3]) > 5e-5 {
					t.Errorf("%s%v: %v in toward, %v in away, want %v and %v", section, number, a.Toward.In(in), a.Away.In(in), row[2], row[3])
				}
			}
		}
	}
}
