package belt_test

import (
	"fmt"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/unit"
)

// Mechanical Engineering Design, solutions manual, chapter 17.
func ExampleOpenLength() {
	l, err := belt.OpenLength(6*unit.Inch, 18*unit.Inch, 96*unit.Inch)
	fmt.Printf("%.3f in, %v\n", l.In(unit.Inch), err)
	// Output: 230.074 in, <nil>
}

// Mechanical Engineering Design, solutions manual, chapter 17.
func ExampleArc() {
	small, err := belt.Arc(6*unit.Inch, 18*unit.Inch, 96*unit.Inch)
	fmt.Printf("%.6f rad, %v\n", small, err)
	large, err := belt.Arc(18*unit.Inch, 6*unit.Inch, 96*unit.Inch)
	fmt.Printf("%.6f rad, %v\n", large, err)
	// Output:
	// 3.016511 rad, <nil>
	// 3.266674 rad, <nil>
}

// Machine Elements in Mechanical Design, 4th ed., example 7-1.
func ExampleApproximateLength() {
	l, err := belt.ApproximateLength(12.4*unit.Inch, 21.1*unit.Inch, 24*unit.Inch)
	fmt.Printf("%.1f in, %v\n", l.In(unit.Inch), err)
	// Output: 101.4 in, <nil>
}

// Machine Elements in Mechanical Design, 4th ed., example 7-1, which prints
// 23.30 with 6.28 for 2π.
func ExampleApproximateCenter() {
	c, err := belt.ApproximateCenter(12.4*unit.Inch, 21.1*unit.Inch, 100*unit.Inch)
	fmt.Printf("%.1f in, %v\n", c.In(unit.Inch), err)
	// Output: 23.3 in, <nil>
}

func ExampleCenterFromLength() {
	c, err := belt.CenterFromLength(3.5*unit.Inch, 9*unit.Inch, 49.3*unit.Inch)
	fmt.Printf("%.3f in, %v\n", c.In(unit.Inch), err)
	_, err = belt.CenterFromLength(3.5*unit.Inch, 9*unit.Inch, 30*unit.Inch)
	fmt.Println(err)
	// Output:
	// 14.572 in, <nil>
	// pitchLength: beltTooShort
}

func ExampleSpan() {
	t, err := belt.Span(3.5*unit.Inch, 9*unit.Inch, 14*unit.Inch)
	fmt.Printf("%.3f in, %v\n", t.In(unit.Inch), err)
	// Output: 13.727 in, <nil>
}

// Machinery's Handbook, 31st ed., Table 12: (D − d)/C = 0.5.
func ExampleArcSmall() {
	a, err := belt.ArcSmall(4*unit.Inch, 14*unit.Inch, 20*unit.Inch)
	fmt.Printf("%.0f°, %v\n", a.In(unit.Degree), err)
	// Output: 151°, <nil>
}

func ExampleArcByRule() {
	a, err := belt.ArcByRule(4*unit.Inch, 14*unit.Inch, 20*unit.Inch, belt.RuleOf60)
	fmt.Printf("%.0f°, %v\n", a.In(unit.Degree), err)
	// Output: 150°, <nil>
}

// Machinery's Handbook, 31st ed., Table 12.
func ExampleArcFactor() {
	k, err := belt.ArcFactor(151 * unit.Degree)
	fmt.Printf("%.2f, %v\n", k, err)
	// Output: 0.93, <nil>
}

func ExampleBaseTravel() {
	x, err := belt.BaseTravel(3.5*unit.Inch, 3.3*unit.Inch, 9*unit.Inch, 49.3*unit.Inch)
	fmt.Printf("%.3f in, %v\n", x.In(unit.Inch), err)
	// Output: 0.140 in, <nil>
}

func ExampleBaseTravelByRule() {
	x, err := belt.BaseTravelByRule(3.5*unit.Inch, 3.3*unit.Inch)
	fmt.Printf("%.3f in, %v\n", x.In(unit.Inch), err)
	// Output: 0.157 in, <nil>
}

// Machinery's Handbook, 31st ed., Table 8.
func ExampleDatumLength() {
	for _, number := range []int{75, 240} {
		l, err := belt.DatumLength(drive.SectionB, number)
		fmt.Printf("%.1f in, %v\n", l.In(unit.Inch), err)
	}
	// Output:
	// 76.8 in, <nil>
	// 240.3 in, <nil>
}

func ExampleDatumNumber() {
	fmt.Println(belt.DatumNumber(drive.SectionA, 43.5*unit.Inch))
	// Output: 42 <nil>
}

// Machinery's Handbook, 31st ed., Table 8.
func ExampleLengthTolerance() {
	tolerance, matching, err := belt.LengthTolerance(42)
	fmt.Printf("± %.1f in, %.2f in, %v\n", tolerance.In(unit.Inch), matching.In(unit.Inch), err)
	// Output: ± 0.7 in, 0.15 in, <nil>
}
