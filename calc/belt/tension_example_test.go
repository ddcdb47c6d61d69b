package belt_test

import (
	"fmt"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/unit"
)

const (
	lbf = unit.PoundForce
	hp  = unit.Horsepower
	fpm = unit.FootPerMinute
)

// The drive of the check cases: 3.5 and 9 in, 14 in apart, 1750 rpm, 2.6 hp.
const (
	exampleSpeed = 1603.5212502697902 * fpm
	exampleArc   = 157.34362229586245 * unit.Degree
)

// The two published constants side by side.
func ExampleStaticTension() {
	for _, k := range []belt.TensionConstant{belt.TensionByStatics, belt.TensionByTrade} {
		t, err := belt.StaticTension(2.6*hp, exampleSpeed, exampleArc, 1, 0, k)
		fmt.Printf("%v: %.2f lbf, %v\n", k, t.In(lbf), err)
	}
	// Output:
	// 16.5: 44.11 lbf, <nil>
	// 15: 40.10 lbf, <nil>
}

func ExampleEffectivePull() {
	f, err := belt.EffectivePull(2.6*hp, exampleSpeed)
	fmt.Printf("%.2f lbf, %v\n", f.In(lbf), err)
	// Output: 53.51 lbf, <nil>
}

func ExampleTensionRatio() {
	r, err := belt.TensionRatio(180 * unit.Degree)
	fmt.Printf("%.2f, %v\n", r, err)
	// Output: 5.00, <nil>
}

func ExampleStrands() {
	tight, slack, err := belt.Strands(2.6*hp, exampleSpeed, exampleArc)
	fmt.Printf("%.2f lbf, %.2f lbf, %v\n", tight.In(lbf), slack.In(lbf), err)
	// Output: 70.86 lbf, 17.35 lbf, <nil>
}

// Two belts set to 20 lbf each that pull 30 lbf; then more than they can.
func ExampleStrandsAt() {
	tight, slack, err := belt.StrandsAt(20*lbf, 2, 30*lbf)
	fmt.Printf("%.0f lbf, %.0f lbf, %v\n", tight.In(lbf), slack.In(lbf), err)
	_, _, err = belt.StrandsAt(20*lbf, 2, 80*lbf)
	fmt.Println(err)
	// Output:
	// 55 lbf, 25 lbf, <nil>
	// pull: outOfRange
}

func ExampleCentrifugalTension() {
	f, err := belt.CentrifugalTension(0.105*unit.KilogramPerMeter, 1603.5*fpm)
	fmt.Printf("%.3f N, %v\n", f, err)
	// Output: 6.967 N, <nil>
}

func ExampleDesignPower() {
	p, err := belt.DesignPower(2*hp, 1.3)
	fmt.Printf("%.1f hp, %v\n", p.In(hp), err)
	// Output: 2.6 hp, <nil>
}

// US Army TM 5-3820-233-12/1, Table 4-3: 1 9/16 in for 100 in.
func ExampleDeflectionDistance() {
	h, err := belt.DeflectionDistance(100 * unit.Inch)
	fmt.Printf("%.4f in, %v\n", h.In(unit.Inch), err)
	// Output: 1.5625 in, <nil>
}

// 0.214 in is nearest to 3/16 in.
func ExampleDeflectionMark() {
	h, err := belt.DeflectionMark(13.727*unit.Inch, belt.DeflectionStep)
	fmt.Printf("%.4f in, %v\n", h.In(unit.Inch), err)
	// Output: 0.1875 in, <nil>
}

// 4 lbf at 1/4 in; pressed to 3/16 in, three quarters of it.
func ExampleForceAt() {
	f, err := belt.ForceAt(4*lbf, 3./16*unit.Inch, 16*unit.Inch)
	fmt.Printf("%.2f lbf, %v\n", f.In(lbf), err)
	// Output: 3.00 lbf, <nil>
}

func ExampleDeflectionByMetricRule() {
	h, err := belt.DeflectionByMetricRule(1 * unit.Meter)
	fmt.Printf("%.0f mm, %v\n", h.In(unit.Millimeter), err)
	// Output: 16 mm, <nil>
}

func ExampleDeflectionError() {
	e, err := belt.DeflectionError(13.727*unit.Inch, belt.DeflectionStep/2)
	fmt.Printf("%.1f %%, %v\n", e/unit.Percent, err)
	// Output: 14.6 %, <nil>
}

func ExampleDeflectionForce() {
	f, err := belt.DeflectionForce(60*lbf, 6*lbf)
	fmt.Printf("%.3f lbf, %v\n", f.In(lbf), err)
	// Output: 4.125 lbf, <nil>
}

func ExampleTensionFromForce() {
	t, err := belt.TensionFromForce(4.125*lbf, 6*lbf)
	fmt.Printf("%.0f lbf, %v\n", t.In(lbf), err)
	// Output: 60 lbf, <nil>
}

func ExampleDeflectionForceExact() {
	f, err := belt.DeflectionForceExact(50 * lbf)
	fmt.Printf("%.4f lbf, %v\n", f.In(lbf), err)
	// Output: 3.1235 lbf, <nil>
}

func ExampleStretchShare() {
	f, err := belt.StretchShare(6*lbf, 13.727*unit.Inch, 49.3*unit.Inch)
	fmt.Printf("%.2f lbf, %v\n", f.In(lbf), err)
	// Output: 1.67 lbf, <nil>
}

func ExampleForceBands() {
	f, err := belt.ForceBands(60*lbf, 6*lbf)
	fmt.Printf("run in %.3f to %.2f lbf, new to %.2f lbf, %v\n", f.RunIn.Low.In(lbf), f.RunIn.High.In(lbf), f.New.High.In(lbf), err)
	// Output: run in 4.125 to 6.00 lbf, new to 7.98 lbf, <nil>
}

// Plant Engineering Handbook, ch. 58: a fifth less above 3000 ft/min. Slower than its
// lists, the card's force as it is.
// US Army TM 5-4310-339-15, 5-5.1: a new belt up to twice the normal tension.
func ExampleListedNewBand() {
	b, err := belt.ListedNewBand(4.6*lbf, 2000*unit.FootPerMinute)
	fmt.Printf("%.1f to %.1f lbf, %v\n", b.Low.In(lbf), b.High.In(lbf), err)
	// Output: 4.6 to 9.2 lbf, <nil>
}

func ExampleListedBand() {
	for _, v := range []unit.Velocity{2000 * fpm, 3500 * fpm, 800 * fpm} {
		b, err := belt.ListedBand(10*lbf, v)
		fmt.Printf("%.0f to %.0f lbf, %v\n", b.Low.In(lbf), b.High.In(lbf), err)
	}
	// Output:
	// 10 to 15 lbf, <nil>
	// 8 to 12 lbf, <nil>
	// 10 to 15 lbf, <nil>
}

func ExampleTensionFromFrequency() {
	t, err := belt.TensionFromFrequency(0.105*unit.KilogramPerMeter, 0.4*unit.Meter, 40*unit.Hertz)
	fmt.Printf("%.2f N, %v\n", t, err)
	// Output: 107.52 N, <nil>
}

func ExampleFrequencyFromTension() {
	f, err := belt.FrequencyFromTension(0.105*unit.KilogramPerMeter, 0.4*unit.Meter, 107.52*unit.Newton)
	fmt.Printf("%.1f Hz, %v\n", f, err)
	// Output: 40.0 Hz, <nil>
}

func ExampleShaftLoadStatic() {
	f, err := belt.ShaftLoadStatic(40*lbf, 2, exampleArc)
	fmt.Printf("%.2f lbf, %v\n", f.In(lbf), err)
	// Output: 156.88 lbf, <nil>
}

// At half a turn both strands pull the same way.
func ExampleShaftLoadRunning() {
	f, err := belt.ShaftLoadRunning(50*lbf, 10*lbf, 180*unit.Degree)
	fmt.Printf("%.0f lbf, %v\n", f.In(lbf), err)
	// Output: 60 lbf, <nil>
}

func ExampleOverhungLoad() {
	f, err := belt.OverhungLoad(5*hp, 5*unit.Inch, 1750*unit.RPM, belt.VBeltFactor)
	fmt.Printf("%.2f lbf, %v\n", f.In(lbf), err)
	// Output: 108.04 lbf, <nil>
}

func ExampleBeltsNeeded() {
	fmt.Println(belt.BeltsNeeded(2.6*hp, 1.5*hp))
	// Output: 2 <nil>
}

func ExampleBeltCapacity() {
	c, share, err := belt.BeltCapacity(2.6*hp, 1*hp, 2)
	fmt.Printf("%s, %.1f, %v\n", c, share, err)
	// Output: short, 1.3, <nil>
}

func ExampleSectionInGroove() {
	fmt.Println(belt.SectionInGroove(drive.SectionA, drive.SectionB, drive.Combination))
	fmt.Println(belt.SectionInGroove(drive.SectionAX, drive.SectionA, drive.Standard))
	fmt.Println(belt.SectionInGroove(drive.SectionA, drive.SectionB, drive.Standard))
	fmt.Println(belt.SectionInGroove(drive.Section3V, drive.SectionA, drive.Standard))
	// Output:
	// own <nil>
	// kin <nil>
	// sunk <nil>
	// family <nil>
}
