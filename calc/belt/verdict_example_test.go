package belt_test

import (
	"fmt"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/unit"
)

// Machinery's Handbook, 31st ed., Table 8.
func ExampleStandardNumbers() {
	n, known, err := belt.StandardNumbers(drive.SectionA)
	fmt.Println(len(n), n[0], n[len(n)-1], known, err)
	// Output: 19 26 128 looked_up <nil>
}

func ExamplePitchLength() {
	for _, b := range []struct {
		drive.Section
		number int
	}{{drive.SectionA, 42}, {drive.Section4L, 430}, {drive.Section3V, 500}} {
		l, err := belt.PitchLength(b.Section, b.number)
		fmt.Printf("%.2f in, %v\n", l.In(unit.Inch), err)
	}
	// Output:
	// 43.30 in, <nil>
	// 42.21 in, <nil>
	// 50.00 in, <nil>
}

// A48 is sold, but stands in no standard list.
func ExampleNearestSizes() {
	s, b, err := belt.NearestSizes(drive.SectionA, 49.3*unit.Inch)
	fmt.Println(s.Section, s.Number, b.Section, b.Number, err)
	// Output: A 46 A 51 <nil>
}

func ExampleChoices() {
	s, b, err := belt.Choices(drive.SectionA, 3.5*unit.Inch, 9*unit.Inch, 14*unit.Inch)
	for _, c := range []belt.Choice{s, b} {
		fmt.Printf("%s%d: %.3f in, %+.3f in\n", c.Section, c.Number, c.Center.In(unit.Inch), c.Move.In(unit.Inch))
	}
	fmt.Println(err)
	// Output:
	// A46: 13.553 in, -0.447 in
	// A51: 16.097 in, +2.097 in
	// <nil>
}

func ExampleTravelAllowance() {
	a, err := belt.TravelAllowance(drive.SectionA, 48)
	fmt.Printf("%.2f in toward, %.2f in away, %v\n", a.Toward.In(unit.Inch), a.Away.In(unit.Inch), err)
	// Output: 0.75 in toward, 1.50 in away, <nil>
}

// 1/2 in away on a base with 1 in toward and 1 in away left.
func ExampleBaseReach() {
	b, err := belt.BaseReach(0.5*unit.Inch, 1*unit.Inch, 1*unit.Inch, belt.Allowance{Toward: 0.75 * unit.Inch, Away: 1 * unit.Inch})
	fmt.Printf("%.1f in toward, %.1f in away, %s, %v\n", b.Toward.In(unit.Inch), b.Away.In(unit.Inch), b.Reach, err)
	// Output: 1.5 in toward, 0.5 in away, no-take-up, <nil>
}

// 4 1/2 lbf at 7/32 in, read to 1/16 in on a short span.
func ExampleReadForce() {
	r, err := belt.ReadForce(4.5*lbf, 0, 7./32*unit.Inch, belt.DeflectionStep/2, 13.727*unit.Inch)
	fmt.Printf("%.2f, %.2f, %.2f lbf, %v\n", r.Low.In(lbf), r.Value.In(lbf), r.High.In(lbf), err)
	// Output: 3.86, 4.41, 5.15 lbf, <nil>
}

func ExampleReadFrequency() {
	r, err := belt.ReadFrequency(0.105*unit.KilogramPerMeter, belt.MassSpread, 0.4*unit.Meter, 40*unit.Hertz, 1*unit.Hertz, 0)
	fmt.Printf("%.2f, %.2f, %.2f N, %v\n", r.Low, r.Value, r.High, err)
	// Output: 5.43, 6.72, 8.12 N, <nil>
}

func ExampleJudge() {
	allowed := belt.Band{Low: 4.1 * lbf, High: 6 * lbf}
	for _, r := range []belt.Reading{
		{Low: 3 * lbf, Value: 3.4 * lbf, High: 4 * lbf},
		{Low: 3.9 * lbf, Value: 4.4 * lbf, High: 5.1 * lbf},
		{Low: 4.4 * lbf, Value: 5 * lbf, High: 5.7 * lbf},
		{Low: 6.1 * lbf, Value: 7 * lbf, High: 8 * lbf},
		{Low: 3 * lbf, Value: 5 * lbf, High: 8 * lbf}, // wider than the band
	} {
		v, err := belt.Judge(r, allowed)
		fmt.Println(v.Tautness, v.Move, v.Near, err)
	}
	// Output:
	// loose away false <nil>
	// within none true <nil>
	// within none false <nil>
	// tight toward false <nil>
	// unjudged none false <nil>
}

func ExampleAlignmentOffset() {
	most, aim, err := belt.AlignmentOffset(24 * unit.Inch)
	fmt.Printf("%.3f in, %.3f in, %v\n", most.In(unit.Inch), aim.In(unit.Inch), err)
	// Output: 0.209 in, 0.125 in, <nil>
}

func ExampleJudgeAlignment() {
	for _, gap := range []unit.Length{0.05, 0.16, 0.2, 0.3} {
		v, near, err := belt.JudgeAlignment(gap*unit.Inch, 0.03*unit.Inch, 24*unit.Inch)
		fmt.Println(v, near, err)
	}
	// Output:
	// aim false <nil>
	// allowed false <nil>
	// allowed true <nil>
	// out false <nil>
}

// One turn closed at 16 threads to the inch.
func ExampleBeltShift() {
	x, err := belt.BeltShift(1./16*unit.Inch, 2.5, 1.5)
	fmt.Printf("%.5f in, %v\n", x.In(unit.Inch), err)
	// Output: -0.03125 in, <nil>
}
