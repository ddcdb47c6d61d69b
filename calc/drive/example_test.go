package drive_test

import (
	"fmt"

	"roofside/calc/drive"
	"roofside/calc/unit"
)

// Machine Elements in Mechanical Design, 4th ed., example 7-1.
func ExampleDriven() {
	n, err := drive.Driven(1160, 13.1*unit.Inch, 21.1*unit.Inch)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 720 rpm, <nil>
}

// NAVFAC MO-114, volume 3, 2.7.
func ExampleDrivenSheave() {
	d, err := drive.DrivenSheave(1750, 950, 3*unit.Inch)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), err)
	// Output: 5.53 in, <nil>
}

func ExampleDriverSheave() {
	d, err := drive.DriverSheave(1750, 700, 9*unit.Inch)
	fmt.Printf("%.1f in, %v\n", d.In(unit.Inch), err)
	// Output: 3.6 in, <nil>
}

func ExampleMotorSpeedFor() {
	n, err := drive.MotorSpeedFor(700, 3.6*unit.Inch, 9*unit.Inch)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 1750 rpm, <nil>
}

func ExampleRatio() {
	fmt.Println(drive.Ratio(3*unit.Inch, 12*unit.Inch))
	// Output: 0.25 <nil>
}

func ExampleDrivenWithSlip() {
	n, err := drive.DrivenWithSlip(1725, 3.4*unit.Inch, 8.6*unit.Inch, 0.02)
	fmt.Printf("%.1f rpm, %v\n", n, err)
	// Output: 668.3 rpm, <nil>
}

func ExampleSheaveForFlow() {
	d, err := drive.SheaveForFlow(3.5*unit.Inch, 2000*unit.CubicFootPerMinute, 2300*unit.CubicFootPerMinute)
	fmt.Printf("%.3f in, %v\n", d.In(unit.Inch), err)
	// Output: 4.025 in, <nil>
}

func ExampleBeltSpeed() {
	v, err := drive.BeltSpeed(1750, 6*unit.Inch)
	fmt.Printf("%.0f fpm, %v\n", v.In(unit.FootPerMinute), err)
	// Output: 2749 fpm, <nil>
}

func ExamplePitchAtBeltSpeed() {
	d, err := drive.PitchAtBeltSpeed(drive.BeltSpeedLimit, 1750)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), err)
	// Output: 14.19 in, <nil>
}

func ExampleSynchronousSpeed() {
	fmt.Println(drive.SynchronousSpeed(60, 4))
	fmt.Println(drive.SynchronousSpeed(60, 3))
	// Output:
	// 1800 <nil>
	// 0 poles: oddPoles
}

func ExamplePoles() {
	fmt.Println(drive.Poles(60, 1725))
	fmt.Println(drive.Poles(60, 3700))
	// Output:
	// 4 <nil>
	// 0 n: aboveSynchronous
}

// DOE-HDBK-1011/4, ES-12, page 6.
func ExampleSlip() {
	s, err := drive.Slip(3600, 3554)
	fmt.Printf("%.1f %%, %v\n", s/unit.Percent, err)
	// Output: 1.3 %, <nil>
}

func ExampleSpeedAtSlip() {
	n, err := drive.SpeedAtSlip(1000, 0.02)
	fmt.Printf("%.0f rpm, %v\n", n, err)
	// Output: 980 rpm, <nil>
}

func ExampleSpeedUnderLoad() {
	n, err := drive.SpeedUnderLoad(1800, 1725, 0.5)
	fmt.Printf("%.1f rpm, %v\n", n, err)
	// Output: 1762.5 rpm, <nil>
}

func ExamplePlateBand() {
	slowest, fastest, err := drive.PlateBand(1800, 1725)
	fmt.Printf("%.0f to %.0f rpm, %v\n", slowest, fastest, err)
	// Output: 1710 to 1740 rpm, <nil>
}

// The speed that 45 Hz gives is that which asks for 45 Hz.
func ExampleFrequencyFor() {
	f, err := drive.FrequencyFor(1750, 60, 1321.5, 4)
	fmt.Printf("%.1f Hz, %v\n", f, err)
	// Output: 45.0 Hz, <nil>
}

func ExampleOnDrive() {
	n, err := drive.OnDrive(1750, 60, 45, 4)
	fmt.Printf("%.1f rpm, %v\n", n, err)
	// Output: 1321.5 rpm, <nil>
}

func ExampleOnDriveConstantSlip() {
	n, err := drive.OnDriveConstantSlip(1750, 60, 45, 4)
	fmt.Printf("%.1f rpm, %v\n", n, err)
	// Output: 1300.0 rpm, <nil>
}

func ExampleOnDriveProportional() {
	n, err := drive.OnDriveProportional(1750, 60, 45, 4)
	fmt.Printf("%.1f rpm, %v\n", n, err)
	// Output: 1312.5 rpm, <nil>
}

func ExampleCount() {
	ratio, band, err := drive.Count(20, 50, 0.25)
	fmt.Printf("%.3f ± %.3f, %v\n", ratio, band, err)
	// Output: 0.400 ± 0.002, <nil>
}

func ExampleCreep() {
	s, err := drive.Creep(700, 686)
	fmt.Printf("%.1f %%, %v\n", s/unit.Percent, err)
	// Output: 2.0 %, <nil>
}

func ExampleHarmonic() {
	m, err := drive.Harmonic(700, 1390)
	fmt.Println(m == drive.Twice, err)
	// Output: true <nil>
}

// A motor of four and eight poles: 1750 and 865 rpm on their plates.
func ExampleLowSpeed() {
	low, err := drive.LowSpeed(700, 700*865/1750)
	fmt.Println(low, err)
	// Output: true <nil>
}

// A tachometer that has caught two marks on a motor of 1750 rpm.
func ExampleMotorReading() {
	can, err := drive.MotorReading(1800, 50, 3530)
	fmt.Println(can, err)
	// Output: false <nil>
}

// Machinery's Handbook, 31st ed., Table 9.
func ExampleGrooveOf() {
	g, err := drive.GrooveOf(drive.SectionA, drive.Standard)
	f := g.Flank(3.25 * unit.Inch)
	fmt.Printf("%.0f°, %.3f in wide, %v\n", f.Angle.In(unit.Degree), f.Width.In(unit.Inch), err)
	// Output: 34°, 0.494 in wide, <nil>
}

func ExamplePitchFromOutside() {
	for _, groove := range []drive.GrooveType{drive.Standard, drive.Combination} {
		d, err := drive.PitchFromOutside(4*unit.Inch, drive.SectionA, groove)
		fmt.Printf("%.3f in, %v\n", d.In(unit.Inch), err)
	}
	// Output:
	// 3.750 in, <nil>
	// 3.366 in, <nil>
}

func ExampleOutsideFromPitch() {
	d, err := drive.OutsideFromPitch(5.4*unit.Inch, drive.SectionB, drive.Standard)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), err)
	// Output: 5.75 in, <nil>
}

func ExamplePitchFromGap() {
	d, err := drive.PitchFromGap(4*unit.Inch, 0.494*unit.Inch, drive.SectionA, 34*unit.Degree)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), err)
	// Output: 3.75 in, <nil>
}

func ExampleGapChange() {
	d, err := drive.GapChange(unit.Inch/16, 34*unit.Degree)
	fmt.Printf("%.3f in, %v\n", d.In(unit.Inch), err)
	// Output: 0.204 in, <nil>
}

func ExampleNewAdjustable() {
	sheave, err := drive.NewAdjustable(0, 3.7*unit.Inch, 5, 2.7*unit.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	d, err := sheave.Pitch(2.5)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), err)
	t, err := sheave.Turns(3 * unit.Inch)
	fmt.Printf("%.1f turns, %v\n", t, err)
	// Output:
	// 3.20 in, <nil>
	// 3.5 turns, <nil>
}

func ExampleNewAdjustableRate() {
	sheave, err := drive.NewAdjustableRate(2.5, 3.2*unit.Inch, 0.2*unit.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	d, err := sheave.Pitch(1.5)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), err)
	// Output: 3.40 in, <nil>
}

func ExamplePitchPerTurn() {
	d, err := drive.PitchPerTurn(drive.DefaultLead, 38*unit.Degree)
	fmt.Printf("%.3f in, %v\n", d.In(unit.Inch), err)
	// Output: 0.182 in, <nil>
}

func ExampleLeadForTravel() {
	lead, err := drive.LeadForTravel(1*unit.Inch, 5, 34*unit.Degree)
	fmt.Printf("%.2f threads per inch, %v\n", float64(unit.Inch/lead), err)
	// Output: 16.35 threads per inch, <nil>
}

func ExampleCenterShift() {
	x, err := drive.CenterShift(-1, drive.DefaultLead)
	fmt.Printf("%.5f in, %v\n", x.In(unit.Inch), err)
	// Output: -0.03125 in, <nil>
}

func ExampleMinimumMotorSheave() {
	d, ok, err := drive.MinimumMotorSheave(2*unit.Horsepower, 4)
	fmt.Printf("%.1f in, %v, %v\n", d.In(unit.Inch), ok, err)
	// Output: 2.4 in, true, <nil>
}

func ExampleMinimumMotorOutside() {
	d, ok, err := drive.MinimumMotorOutside(5*unit.Horsepower, 2)
	fmt.Printf("%.1f in, %v, %v\n", d.In(unit.Inch), ok, err)
	// Output: 2.4 in, true, <nil>
}

// Machinery's Handbook, 31st ed., Table 9.
func ExampleMinimumDatum() {
	d, ok := drive.MinimumDatum(drive.SectionAX, drive.Standard)
	fmt.Printf("%.1f in, %v\n", d.In(unit.Inch), ok)
	// Output: 2.2 in, true
}

func ExampleMinimumOutside() {
	d, ok := drive.MinimumOutside(drive.Section3V)
	fmt.Printf("%.2f in, %v\n", d.In(unit.Inch), ok)
	// Output: 2.65 in, true
}

func ExampleNarrowSpread() {
	fmt.Printf("%.2f in\n", drive.NarrowSpread(drive.Section5V).In(unit.Inch))
	// Output: 0.10 in
}

func ExampleUsualMostTurns() {
	fmt.Println(drive.UsualMostTurns(drive.SectionA))
	fmt.Println(drive.UsualMostTurns(drive.Section3V))
	// Output:
	// 5 true
	// 0 false
}

func ExampleUsualLeastTurns() {
	fmt.Println(drive.UsualLeastTurns(drive.SectionB))
	// Output: 1 true
}
