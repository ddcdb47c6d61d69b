package raceway_test

import (
	"fmt"

	"roofside/calc/raceway"
	"roofside/calc/unit"
)

func ExampleBoxOf() {
	b, err := raceway.BoxOf(raceway.Square, "4 x 1-1/2")
	fmt.Printf("%.1f in³, %v\n", b.Volume.In(unit.CubicInch), err)
	// Output: 21.0 in³, <nil>
}

func ExampleSmallestBox() {
	b, err := raceway.SmallestBox(15.75*unit.CubicInch, raceway.Square)
	fmt.Println(b.Size, err)
	// Output: 4 x 1-1/4 <nil>
}

func ExampleAllowance() {
	v, err := raceway.Allowance(raceway.AWG6)
	fmt.Printf("%.2f in³, %v\n", v.In(unit.CubicInch), err)
	// Output: 5.00 in³, <nil>
}

// NFPA 70, 2023, Table 314.16(A): nine of size 12.
func ExampleMostConductors() {
	fmt.Println(raceway.MostConductors(21.0*unit.CubicInch, raceway.AWG12))
	// Output: 9 <nil>
}

func ExampleConduitBodyLeast() {
	a, err := raceway.ConduitBodyLeast(raceway.EMT, raceway.Size3by4)
	fmt.Printf("%.3f in², %v\n", a.In(unit.SquareInch), err)
	// Output: 1.066 in², <nil>
}

func ExampleFillBox() {
	f, err := raceway.FillBox(21.0*unit.CubicInch, []raceway.BoxRow{
		{Item: raceway.BoxConductor, Size: raceway.AWG12, Count: 6},
		{Item: raceway.BoxGround, Size: raceway.AWG12, Count: 2},
	}, raceway.DefaultEdition)
	fmt.Printf("%.2f in³, %v, %v\n", f.Needed.In(unit.CubicInch), f.Fits, err)
	// Output: 15.75 in³, true, <nil>
}

// NFPA 70, 2023, 314.16(B): 6 · 2.25 and one for up to four grounds.
func ExampleBoxNeeded() {
	f, err := raceway.BoxNeeded([]raceway.BoxRow{
		{Item: raceway.BoxConductor, Size: raceway.AWG12, Count: 6},
		{Item: raceway.BoxGround, Size: raceway.AWG12, Count: 2},
	}, raceway.Edition2023)
	fmt.Printf("%.2f in³, %v\n", f.Needed.In(unit.CubicInch), err)
	// Output: 15.75 in³, <nil>
}

func ExampleSmallestBoxFor() {
	box, f, err := raceway.SmallestBoxFor(raceway.AnyShape, []raceway.BoxRow{
		{Item: raceway.BoxConductor, Size: raceway.AWG12, Count: 6},
		{Item: raceway.BoxGround, Size: raceway.AWG12, Count: 2},
	}, raceway.Edition2023)
	fmt.Printf("%s %s, %.0f %%, %v\n", box.Shape, box.Size, f.Fill/unit.Percent, err)
	// Output: square 4 x 1-1/4, 88 %, <nil>
}

func ExampleBushingAsked() {
	fmt.Println(raceway.BushingAsked(raceway.AWG6))
	// Output: false <nil>
}
