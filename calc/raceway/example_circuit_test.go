package raceway_test

import (
	"fmt"

	"roofside/calc/raceway"
	"roofside/calc/unit"
)

// NFPA 70, 2023, Table 430.250.
func ExampleTableCurrent() {
	i, err := raceway.TableCurrent(raceway.ThreePhase, 3*unit.Horsepower, 208)
	fmt.Printf("%.1f A, %v\n", i, err)
	// Output: 10.6 A, <nil>
}

func ExampleDemandFromPlate() {
	d, err := raceway.DemandFromPlate(11.4)
	fmt.Printf("%.1f A, by the %s, %v\n", d.Current, d.Basis, err)
	// Output: 11.4 A, by the plate, <nil>
}

func ExampleDemandFromTable() {
	d, err := raceway.DemandFromTable(24.2)
	fmt.Printf("%.2f A, by the %s, %v\n", d.Current, d.Basis, err)
	// Output: 30.25 A, by the table, <nil>
}

func ExampleDisconnectLeast() {
	i, err := raceway.DisconnectLeast(7.6)
	fmt.Printf("%.2f A, %v\n", i, err)
	// Output: 8.74 A, <nil>
}

func ExampleLargestOvercurrent() {
	o, err := raceway.LargestOvercurrent(24.2, raceway.InverseTimeBreaker, raceway.SquirrelCage, raceway.Edition2023)
	fmt.Printf("%.1f A: %.0f A; at most %.1f A: %.0f A, %v\n", o.Computed, o.Rating, o.Greatest, o.Last, err)
	// Output: 60.5 A: 70 A; at most 96.8 A: 90 A, <nil>
}

func ExampleOvercurrentFromPlate() {
	o, err := raceway.OvercurrentFromPlate(20, raceway.InverseTimeBreaker, raceway.Edition2023)
	fmt.Printf("%.0f A, by the %s, %v\n", o.Rating, o.Basis, err)
	// Output: 20 A, by the plate, <nil>
}

func ExampleInstantaneousTrip() {
	i, err := raceway.InstantaneousTrip(7.6, raceway.DesignBEfficient)
	fmt.Printf("%.1f A, %v\n", i, err)
	// Output: 83.6 A, <nil>
}

func ExampleStandardRating() {
	i, err := raceway.StandardRating(60.5, raceway.TimeDelayFuse, raceway.Edition2023)
	fmt.Printf("%.0f A, %v\n", i, err)
	// Output: 70 A, <nil>
}

func ExampleSmallConductorLimit() {
	i, err := raceway.SmallConductorLimit(raceway.AWG12, raceway.Copper, raceway.Edition2020)
	fmt.Printf("%.0f A, %v\n", i, err)
	// Output: 20 A, <nil>
}

func ExampleGroundFor() {
	g, err := raceway.GroundFor(70, raceway.Copper, raceway.AWG10, raceway.Edition2023)
	fmt.Println(g.Table, g.Size, err)
	// Output: 8 10 <nil>
}

func ExampleGroundRaised() {
	fmt.Println(raceway.GroundRaised(raceway.AWG12, raceway.AWG12, raceway.AWG8))
	// Output: 8 <nil>
}

// ASME B1.20.1.
func ExampleThreadOf() {
	t, err := raceway.ThreadOf(raceway.Size3by4)
	fmt.Printf("%.0f to the inch, %.3f in, %v\n", t.PerInch, t.Outside.In(unit.Inch), err)
	// Output: 14 to the inch, 1.050 in, <nil>
}

func ExampleHoleOf() {
	h, err := raceway.HoleOf(raceway.Size1by2)
	fmt.Printf("%.3f in, %s, %v\n", h.Nominal.In(unit.Inch), h.Known, err)
	// Output: 0.875 in, memory, <nil>
}

func ExampleToGroundOf() {
	fmt.Println(raceway.ToGroundOf(277))
	// Output: over-250 <nil>
}

// A 3/4 knockout on a roof and a 1/2 conduit: no washers.
func ExampleJoin() {
	a, err := raceway.Join(
		raceway.End{Kind: raceway.Knockout, Size: raceway.Size3by4},
		raceway.End{Kind: raceway.ConduitEnd, Size: raceway.Size1by2, Conduit: raceway.LFMC},
		raceway.Outdoors, raceway.Over250)
	for _, p := range a.Parts {
		fmt.Println(p.Kind, p.From.Size, p.To.Size)
	}
	fmt.Println(a.Conditions, err)
	// Output:
	// hub 3/4 3/4
	// reducing-bushing 3/4 1/2
	// connector 1/2 1/2
	// [noWashersWet listedWet smallerRules flexGroundWire] <nil>
}
