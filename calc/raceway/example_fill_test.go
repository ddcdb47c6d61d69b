package raceway_test

import (
	"fmt"

	"roofside/calc/raceway"
	"roofside/calc/unit"
)

func ExampleDesignator() {
	fmt.Println(raceway.Designator(raceway.Size3by4))
	// Output: 21 <nil>
}

func ExampleSizeOf() {
	fmt.Println(raceway.SizeOf(27))
	// Output: 1 <nil>
}

func ExampleBoreOf() {
	b, err := raceway.BoreOf(raceway.LFMC, raceway.Size1by2)
	fmt.Printf("%.3f in, %.3f in², %.3f in² for more than two, %v\n", b.Inside.In(unit.Inch), b.Area.In(unit.SquareInch), b.OverTwo.In(unit.SquareInch), err)
	// Output: 0.632 in, 0.314 in², 0.125 in² for more than two, <nil>
}

func ExampleConductorOf() {
	c, err := raceway.ConductorOf(raceway.AWG10, raceway.XHHW)
	fmt.Printf("%.4f in², %v\n", c.Area.In(unit.SquareInch), err)
	// Output: 0.0243 in², <nil>
}

func ExampleUseOf() {
	fmt.Println(raceway.UseOf(24 * unit.Inch))
	fmt.Println(raceway.UseOf(3 * unit.Foot))
	// Output:
	// nipple <nil>
	// run <nil>
}

func ExampleFillLimit() {
	for _, n := range []int{1, 2, 3} {
		p, err := raceway.FillLimit(n, raceway.Run)
		fmt.Printf("%.0f %%, %v\n", p/unit.Percent, err)
	}
	// Output:
	// 53 %, <nil>
	// 31 %, <nil>
	// 40 %, <nil>
}

// Three conductors and a smaller ground are too much for 1/2.
func ExampleFill() {
	f, err := raceway.Fill(raceway.Raceway{Conduit: raceway.LFMC, Size: raceway.Size1by2, Use: raceway.Run}, []raceway.Row{
		{Size: raceway.AWG8, Insulation: raceway.THWN2, Count: 3, Role: raceway.Circuit},
		{Size: raceway.AWG10, Insulation: raceway.THWN2, Count: 1, Role: raceway.Ground},
	})
	fmt.Printf("%.1f %% of %.0f %%, %v, %v\n", f.Fill/unit.Percent, f.Limit/unit.Percent, f.Fits, err)
	// Output: 41.7 % of 40 %, false, <nil>
}

func ExampleRoundCount() {
	fmt.Println(raceway.RoundCount(11.79))
	fmt.Println(raceway.RoundCount(11.81))
	// Output:
	// 11 <nil>
	// 12 <nil>
}

// NFPA 70, 2017, Annex C, Table C.1.
func ExampleMostAlike() {
	n, err := raceway.MostAlike(raceway.Raceway{Conduit: raceway.EMT, Size: raceway.Size1, Use: raceway.Run}, raceway.AWG10, raceway.THHN)
	fmt.Println(n.Inch, n.Metric, err)
	// Output: 16 16 <nil>
}

func ExampleSmallest() {
	c, err := raceway.Smallest(raceway.LFMC, raceway.Run, []raceway.Row{
		{Size: raceway.AWG8, Insulation: raceway.THWN2, Count: 3, Role: raceway.Circuit},
		{Size: raceway.AWG10, Insulation: raceway.THWN2, Count: 1, Role: raceway.Ground},
	})
	fmt.Printf("%s, %.1f %%, %v\n", c.Size, c.Filling.Fill/unit.Percent, err)
	// Output: 3/4, 24.2 %, <nil>
}

func ExampleSmallestOfEach() {
	all, err := raceway.SmallestOfEach(raceway.Run, []raceway.Row{{Size: raceway.AWG14, Insulation: raceway.THHN, Count: 12, Role: raceway.Circuit}})
	for _, c := range all[:2] {
		fmt.Println(c.Conduit, c.Size, c.Filling.Rule)
	}
	fmt.Println(len(all), err)
	// Output:
	// EMT 1/2 count
	// FMC 1/2 count
	// 9 <nil>
}

func ExampleRoom() {
	emt := raceway.Raceway{Conduit: raceway.EMT, Size: raceway.Size1by2, Use: raceway.Run}
	rows := []raceway.Row{{Size: raceway.AWG14, Insulation: raceway.THHN, Count: 4, Role: raceway.Circuit}}
	fmt.Println(raceway.Room(emt, rows, raceway.AWG14, raceway.THHN, raceway.Circuit))
	// Output: 8 <nil>
}

func ExampleJamRatio() {
	j, err := raceway.JamRatio(0.622*unit.Inch, 0.216*unit.Inch) // 1/2 EMT, three of size 8
	fmt.Printf("%.2f, with ovality %.2f, likely %v, %v\n", j.Plain, j.Oval, j.PlainLikely, err)
	// Output: 2.88, with ovality 3.02, likely true, <nil>
}

func ExampleInterior() {
	fmt.Println(raceway.Interior(raceway.Outdoors))
	// Output: wet <nil>
}

func ExampleAllowed() {
	fmt.Println(raceway.Allowed(raceway.FMC, raceway.Outdoors))
	fmt.Println(raceway.Allowed(raceway.LFMC, raceway.Outdoors))
	// Output:
	// false <nil>
	// true <nil>
}

func ExampleUnsecuredMost() {
	l, err := raceway.UnsecuredMost(raceway.LFMC, raceway.Size3by4)
	fmt.Printf("%.0f ft, %v\n", l.In(unit.Foot), err)
	// Output: 3 ft, <nil>
}

func ExampleFlexAsGround() {
	p, err := raceway.FlexAsGround(raceway.LFMC, raceway.Size1by2, 20, 3*unit.Foot, raceway.Flexing)
	fmt.Println(p.Wire, p.Reason, err)
	// Output: true flexes <nil>
}

func ExampleOutsideOf() {
	d, err := raceway.OutsideOf(raceway.EMT, raceway.Size3by4)
	fmt.Printf("%.3f in, %v\n", d.In(unit.Inch), err)
	// Output: 0.922 in, <nil>
}

func ExampleSupportOf() {
	s, err := raceway.SupportOf(raceway.LFMC, raceway.Size3by4)
	fmt.Printf("every %.1f ft, %.0f in of the ends, %.0f ft free, %v\n", s.Spacing.In(unit.Foot), s.Ends.In(unit.Inch), s.Free.In(unit.Foot), err)
	// Output: every 4.5 ft, 12 in of the ends, 3 ft free, <nil>
}

func ExampleStraps() {
	fmt.Println(raceway.Straps(raceway.EMT, raceway.Size1by2, 20*unit.Foot, raceway.Still))
	// Output: 3 <nil>
}

func ExampleSticks() {
	fmt.Println(raceway.Sticks(21 * unit.Foot))
	// Output: 3 <nil>
}

func ExampleWireCut() {
	l, err := raceway.WireCut(20 * unit.Foot)
	fmt.Printf("%.0f ft, %v\n", l.In(unit.Foot), err)
	// Output: 22 ft, <nil>
}
