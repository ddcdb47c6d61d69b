package raceway_test

import (
	"fmt"

	"roofside/calc/raceway"
	"roofside/calc/unit"
)

// Chapter 9, Table 8.
func ExamplePropertyOf() {
	p, err := raceway.PropertyOf(raceway.AWG10, raceway.Solid)
	fmt.Printf("%.2f Ω/kft, %v\n", p.Copper.In(unit.OhmPerThousandFeet), err)
	// Output: 1.21 Ω/kft, <nil>
}

func ExampleWireForArea() {
	fmt.Println(raceway.WireForArea(116_035 * unit.CircularMil))
	// Output: 2/0 <nil>
}

func ExampleTableAmpacity() {
	a, err := raceway.TableAmpacity(raceway.AWG12, raceway.Copper, raceway.Column90)
	fmt.Printf("%.0f A, %v\n", a, err)
	// Output: 30 A, <nil>
}

func ExampleRatingOf() {
	fmt.Println(raceway.RatingOf(raceway.THWN2, raceway.Wet))
	fmt.Println(raceway.RatingOf(raceway.THHN, raceway.Wet))
	// Output:
	// 90 <nil>
	// 0 insulation: dryOnly
}

func ExampleMotorWires() {
	fmt.Println(raceway.MotorWires(raceway.ThreePhase))
	// Output: 3 <nil>
}

func ExampleMarkedTerminals() {
	fmt.Println(raceway.MarkedTerminals(raceway.Aluminum))
	fmt.Println(raceway.MarkedTerminals(raceway.Copper))
	// Output:
	// true <nil>
	// false <nil>
}

func ExampleAmbientFactor() {
	k, err := raceway.AmbientFactor(unit.Celsius(43), raceway.Column90)
	fmt.Printf("%.2f, %v\n", k, err)
	// Output: 0.87, <nil>
}

func ExampleAmbientFactorByEquation() {
	k, err := raceway.AmbientFactorByEquation(unit.Celsius(50), raceway.Column90)
	fmt.Printf("%.2f A, %v\n", 30*k, err)
	// Output: 24.49 A, <nil>
}

func ExampleAdjustmentFactor() {
	k, err := raceway.AdjustmentFactor(8)
	fmt.Printf("%.0f %%, %v\n", k/unit.Percent, err)
	// Output: 70 %, <nil>
}

func ExampleRooftopAdder() {
	for _, e := range []raceway.Edition{raceway.Edition2020, raceway.Edition2023} {
		a, err := raceway.RooftopAdder(e, 0.80*unit.Inch, raceway.THWN2)
		fmt.Printf("%s: %.0f °C, %v\n", e, a.Difference.In(unit.KelvinApart), err)
	}
	// Output:
	// 2020: 33 °C, <nil>
	// 2023: 0 °C, <nil>
}

func ExampleRooftopAdderByHeight() {
	a, err := raceway.RooftopAdderByHeight(2 * unit.Inch)
	fmt.Printf("%.0f °C, %v\n", a.Difference.In(unit.KelvinApart), err)
	// Output: 22 °C, <nil>
}

var roof = raceway.Conditions{
	Edition: raceway.Edition2020, Material: raceway.Copper, Insulation: raceway.THWN2, Location: raceway.Wet,
	Ambient: unit.Celsius(40), Carrying: 3, Use: raceway.Run, Exposure: raceway.Rooftop, Height: 2 * unit.Inch,
	Terminals: raceway.UnmarkedTerminals,
}

func ExampleAmpacityOf() {
	a, err := raceway.AmpacityOf(raceway.AWG12, roof)
	fmt.Printf("%.1f A corrected, %.0f A at the terminals, %v\n", a.Corrected, a.Usable, err)
	// Output: 27.3 A corrected, 20 A at the terminals, <nil>
}

func ExampleSmallestWire() {
	a, err := raceway.SmallestWire(30.25, raceway.Conditions{
		Edition: raceway.Edition2023, Material: raceway.Copper, Insulation: raceway.THWN2, Location: raceway.Wet,
		Ambient: unit.Celsius(30), Carrying: 3, Use: raceway.Run, Exposure: raceway.Shaded, Terminals: raceway.Column60,
	})
	fmt.Println(a.Size, err)
	// Output: 8 <nil>
}

func ExampleCheckConductor() {
	demand, err := raceway.DemandFromTable(7.6)
	if err != nil {
		fmt.Println(err)
	}
	c, err := raceway.CheckConductor(demand, raceway.AWG12, roof)
	fmt.Printf("%.1f A asked, %.0f A carried, %v, %v\n", c.Demand.Current, c.Ampacity.Usable, c.Enough, err)
	// Output: 9.5 A asked, 20 A carried, true, <nil>
}

func ExampleWallOf() {
	fmt.Println(raceway.WallOf(raceway.EMT))
	// Output: steel <nil>
}

// Chapter 9, Table 9.
func ExampleImpedanceOf() {
	z, err := raceway.ImpedanceOf(raceway.AWG8, raceway.Copper, raceway.WallSteel)
	fmt.Printf("%.2f and %.3f Ω/kft, %v\n", z.Resistance.In(unit.OhmPerThousandFeet), z.Reactance.In(unit.OhmPerThousandFeet), err)
	// Output: 0.78 and 0.065 Ω/kft, <nil>
}

// Chapter 9, Table 9.
func ExampleEffectiveImpedance() {
	z, err := raceway.EffectiveImpedance(raceway.AWG4, raceway.WallPVC)
	fmt.Printf("%.2f Ω/kft, %v\n", z.In(unit.OhmPerThousandFeet), err)
	// Output: 0.29 Ω/kft, <nil>
}

func ExampleVoltageDrop() {
	z := raceway.Impedance{Resistance: 2.0 * unit.OhmPerThousandFeet, Reactance: 0.068 * unit.OhmPerThousandFeet}
	u, err := raceway.VoltageDrop(raceway.ThreePhase, 7.6, 150*unit.Foot, z, 0.85)
	fmt.Printf("%.2f V, %v\n", u, err)
	// Output: 3.43 V, <nil>
}

func ExampleDropShare() {
	s, err := raceway.DropShare(3.43, 460)
	fmt.Printf("%.2f %%, %v\n", s/unit.Percent, err)
	// Output: 0.75 %, <nil>
}

func ExampleResistivityOf() {
	k, err := raceway.ResistivityOf(raceway.AWG12, raceway.Stranded, raceway.Copper)
	fmt.Printf("%.2f Ω·cmil/ft, %v\n", k.In(unit.OhmCircularMilPerFoot), err)
	// Output: 12.93 Ω·cmil/ft, <nil>
}

// Lessons In Electric Circuits: 2300 ft of size 14.
func ExampleResistanceOf() {
	r, err := raceway.ResistanceOf(10.09*unit.OhmCircularMilPerFoot, 4107*unit.CircularMil)
	fmt.Printf("%.3f Ω, %v\n", r.In(unit.OhmPerThousandFeet)*2.3, err)
	// Output: 5.651 Ω, <nil>
}

func ExampleVoltageDropByK() {
	u, err := raceway.VoltageDropByK(raceway.ThreePhase, 7.6, 150*unit.Foot, 12.9*unit.OhmCircularMilPerFoot, 6530*unit.CircularMil)
	fmt.Printf("%.2f V, %v\n", u, err)
	// Output: 3.90 V, <nil>
}

// Lessons In Electric Circuits: 5 V in each wire.
func ExampleAreaForDrop() {
	a, err := raceway.AreaForDrop(raceway.SinglePhase, 25, 2300*unit.Foot, 10.09*unit.OhmCircularMilPerFoot, 10)
	fmt.Printf("%.0f cmil, %v\n", a.In(unit.CircularMil), err)
	// Output: 116035 cmil, <nil>
}

func ExampleResistanceAt() {
	r, err := raceway.ResistanceAt(1.98*unit.OhmPerThousandFeet, raceway.CopperAt75, raceway.PropertyTemperature, unit.Celsius(50))
	fmt.Printf("%.3f Ω/kft, %v\n", r.In(unit.OhmPerThousandFeet), err)
	// Output: 1.820 Ω/kft, <nil>
}

func ExampleGaugeDiameter() {
	d, err := raceway.GaugeDiameter(raceway.AWG4by0)
	fmt.Printf("%.4f in, %v\n", d.In(unit.Inch), err)
	// Output: 0.4600 in, <nil>
}

func ExampleGaugeArea() {
	a, err := raceway.GaugeArea(raceway.AWG10)
	fmt.Printf("%.4f mm², %v\n", a.In(unit.SquareMillimeter), err)
	// Output: 5.2612 mm², <nil>
}

func ExampleNearestMetric() {
	nearest, atLeast, err := raceway.NearestMetric(33.6308 * unit.SquareMillimeter)
	fmt.Printf("%.0f and %.0f mm², %v\n", nearest.Area.In(unit.SquareMillimeter), atLeast.Area.In(unit.SquareMillimeter), err)
	// Output: 35 and 35 mm², <nil>
}
