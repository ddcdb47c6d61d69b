package phase_test

import (
	"fmt"

	"roofside/calc/phase"
	"roofside/calc/unit"
)

// Motor Systems Tip Sheet 7, page 1.
func ExampleUnbalance() {
	u, err := phase.Unbalance[unit.Voltage](462, 463, 455)
	fmt.Printf("%.1f %%, %v\n", u/unit.Percent, err)
	// Output: 1.1 %, <nil>
}

func ExampleVoltageDerating() {
	d, err := phase.VoltageDerating(2 * unit.Percent)
	fmt.Printf("%.2f (%.2f to %.2f), %v\n", d.Factor, d.Low, d.High, err)
	_, err = phase.VoltageDerating(5.2 * unit.Percent)
	fmt.Println(err)
	// Output:
	// 0.95 (0.93 to 0.96), <nil>
	// unbalance: tooUnbalanced
}

// A voltmeter within half a per cent.
func ExampleUnbalanceRange() {
	s, err := phase.UnbalanceRange(460, 467, 450, phase.Meter[unit.Voltage]{Share: 0.005})
	fmt.Printf("%.2f %% (%.2f to %.2f), reading %d, %v\n", s.Value/unit.Percent, s.Low/unit.Percent, s.High/unit.Percent, s.Leg, err)
	// Output: 1.96 % (1.35 to 2.62), reading 3, <nil>
}

func ExampleVoltageBalance() {
	for _, share := range []unit.Ratio{0.001, 0.01} {
		b, err := phase.VoltageBalance(460, 467, 450, phase.Meter[unit.Voltage]{Share: share})
		fmt.Println(b.Standing, b.Reason, err)
	}
	// Output:
	// watch  <nil>
	// unjudged band <nil>
}

func ExampleCurrentBalance() {
	for _, load := range []unit.Ratio{0.8, 0.4} {
		b, err := phase.CurrentBalance(10.4, 10.0, 9.6, phase.UsualClamp, load, 0.01)
		fmt.Println(b.Standing, b.Reason, err)
	}
	b, err := phase.CurrentBalance(0.1, 17.5, 17.4, phase.UsualClamp, 0.8, 0.01)
	fmt.Println(b.Standing, b.Reason, err)
	// Output:
	// within  <nil>
	// within light-load <nil>
	// stop lost-phase <nil>
}

// Motor Systems Tip Sheet 7, page 2: a 100 hp motor's test.
func ExampleAmplification() {
	k, err := phase.Amplification(27.7*unit.Percent, 2.5*unit.Percent)
	fmt.Printf("%.1f, %v\n", k, err)
	// Output: 11.1, <nil>
}

func ExampleSequenceFactor() {
	f, err := phase.SequenceFactor[unit.Voltage](460, 467, 450)
	fmt.Printf("%.2f %%, %v\n", f/unit.Percent, err)
	_, err = phase.SequenceFactor[unit.Voltage](460, 200, 200)
	fmt.Println(err)
	// Output:
	// 2.15 %, <nil>
	// noTriangle
}

func ExampleTriangleCheck() {
	fmt.Println(phase.TriangleCheck(460, 200, 200, phase.UsualVoltmeter))
	// Output: open <nil>
}

func ExampleThroughClamp() {
	i, err := phase.ThroughClamp(15.6, 10)
	fmt.Printf("%.2f A, %v\n", i, err)
	// Output: 1.56 A, <nil>
}

func ExampleClampOfTurns() {
	m, err := phase.ClampOfTurns(phase.UsualClamp, 10)
	fmt.Printf("%.0f %%, %.3f A, %v\n", m.Share/unit.Percent, m.Floor, err)
	// Output: 2 %, 0.005 A, <nil>
}

func ExampleLostPhase() {
	for _, amps := range [][3]unit.Current{{0.1, 17.5, 17.4}, {5.1, 10.2, 5.0}, {10.8, 10.0, 9.2}} {
		l, err := phase.LostPhase(amps[0], amps[1], amps[2], phase.UsualClamp)
		fmt.Println(l.Loss, l.Leg, err)
	}
	// Output:
	// open 1 <nil>
	// ahead-of-transformer 2 <nil>
	// none 0 <nil>
}

func ExampleAmpsWithOpenLine() {
	i, err := phase.AmpsWithOpenLine(10)
	fmt.Printf("%.2f A, %v\n", i, err)
	// Output: 17.32 A, <nil>
}

func ExampleDeratingOver() {
	d, err := phase.DeratingOver(1*unit.Percent, 2*unit.Percent, 3*unit.Percent)
	fmt.Printf("%.2f (%.2f to %.2f), %v\n", d.Factor, d.Low, d.High, err)
	// Output: 0.95 (0.87 to 1.00), <nil>
}

func ExampleHeadroomLeft() {
	h, err := phase.HeadroomLeft(0.90, phase.Derating{Factor: 0.95, Low: 0.87, High: 1})
	fmt.Printf("%.2f (%.2f to %.2f), %v\n", h.Value, h.Low, h.High, err)
	// Output: 0.05 (-0.03 to 0.10), <nil>
}

// Motor Systems Tip Sheet 7, page 2: 80 K and 2 % give 6.4 K more.
func ExampleExtraHeating() {
	h, err := phase.ExtraHeating(2 * unit.Percent)
	fmt.Printf("%.1f K, %v\n", 80*h, err)
	// Output: 6.4 K, <nil>
}

// Motor Systems Tip Sheet 7, page 2.
func ExampleInsulationLife() {
	l, err := phase.InsulationLife(10 * unit.KelvinApart)
	fmt.Printf("%.2f, %v\n", l, err)
	// Output: 0.50, <nil>
}

// Motor Systems Tip Sheet 9, Table 2: a tenth under, 19 % less.
func ExampleTorqueShare() {
	m, err := phase.TorqueShare(414, 460)
	fmt.Printf("%.2f, %v\n", m, err)
	// Output: 0.81, <nil>
}

// A plate of 60 Hz at its own volts on 50 Hz: a fifth more flux than it is made for.
func ExampleVoltsPerHertz() {
	k, err := phase.VoltsPerHertz(460, 50, 460, 60)
	fmt.Printf("%.2f, %v, %v\n", k, k > phase.VoltsPerHertzMost, err)
	// Output: 1.20, true, <nil>
}

// 230 V on a 208 V system: inside by 1 V, if the meter is right to that.
func ExampleVoltsAgainstPlate() {
	for _, m := range []phase.Meter[unit.Voltage]{{}, phase.UsualVoltmeter} {
		s, err := phase.VoltsAgainstPlate(208, m, 230)
		fmt.Printf("%.1f %%, %s, %v\n", s.Value/unit.Percent, s.Standing, err)
	}
	// Output:
	// 90.4 %, within, <nil>
	// 90.4 %, unjudged, <nil>
}

func ExampleAmpsAgainstPlate() {
	for _, i := range []unit.Current{6.0, 7.3, 8.4} {
		s, err := phase.AmpsAgainstPlate(i, phase.UsualClamp, 6.8, 7.8)
		fmt.Println(s.Standing, err)
	}
	// Output:
	// within <nil>
	// watch <nil>
	// stop <nil>
}

func ExampleConnectionHint() {
	for _, i := range []unit.Current{6.1, 3.2, 13.1} {
		fmt.Println(phase.ConnectionHint(i, 6.4))
	}
	// Output:
	// plain <nil>
	// half <nil>
	// double <nil>
}

// Motor Systems Tip Sheet 9, page 1.
func ExampleSystemOf() {
	s, err := phase.SystemOf(480)
	fmt.Println(s.Motor, err)
	// Output: 460 <nil>
}

func ExampleSystemNear() {
	for _, v := range []unit.Voltage{471, 231, 300} {
		s, err := phase.SystemNear(v)
		fmt.Println(s.Nominal, err)
	}
	// Output:
	// 480 <nil>
	// 240 <nil>
	// 0 v: notTabulated
}

// ANSI C84.1, Table 1 (memory): 432 to 504 V in range A, 416 to 508 in B.
func ExampleVoltsAtMotor() {
	for _, v := range []unit.Voltage{455, 424, 410} {
		r, err := phase.VoltsAtMotor(v, phase.Meter[unit.Voltage]{Share: 0.002}, 480)
		fmt.Println(r.Standing, err)
	}
	// Output:
	// within <nil>
	// watch <nil>
	// stop <nil>
}

func ExamplePlateOnSystem() {
	for _, plate := range []unit.Voltage{200, 230, 460} {
		fmt.Println(phase.PlateOnSystem(plate, 208))
	}
	// Output:
	// within <nil>
	// watch <nil>
	// stop <nil>
}

func ExampleOverloadClassOf() {
	fmt.Println(phase.OverloadClassOf(1.15))
	fmt.Println(phase.OverloadClassOf(1.0))
	// Output:
	// service-factor <nil>
	// other <nil>
}

// NFPA 70, 2023, 430.32: what it may trip at, and what it is set to.
func ExampleOverloadOf() {
	o, err := phase.OverloadOf(6.8, phase.OverloadService)
	fmt.Printf("trip %.2f A, after a failure to start %.2f A, dial %.1f A, %v\n", o.Trip, o.AfterFailure, o.Dial, err)
	// Output: trip 8.50 A, after a failure to start 9.52 A, dial 6.8 A, <nil>
}

func ExampleProtectorTrip() {
	i, err := phase.ProtectorTrip(4)
	fmt.Printf("%.1f A, %v\n", i, err)
	// Output: 6.8 A, <nil>
}

// US DOE fact sheet on motor load: 469.7 V, 37 A, power factor 0.763.
func ExampleApparent() {
	s, err := phase.Apparent(469.7, 37)
	fmt.Printf("%.1f kVA, %v\n", s.In(unit.KilovoltAmpere), err)
	// Output: 30.1 kVA, <nil>
}

// US DOE fact sheet on motor load prints 22.9, cut off, not rounded.
func ExampleReal() {
	p, err := phase.Real(30.1011*unit.KilovoltAmpere, 0.763)
	fmt.Printf("%.2f kW, %v\n", p.In(unit.Kilowatt), err)
	// Output: 22.97 kW, <nil>
}

func ExampleApparentSinglePhase() {
	s, err := phase.ApparentSinglePhase(230, 9.8)
	fmt.Printf("%.3f kVA, %v\n", s.In(unit.KilovoltAmpere), err)
	// Output: 2.254 kVA, <nil>
}

// Plate power factor and efficiency at part load read up to 30 % high.
func ExampleShaftByPower() {
	e, err := phase.ShaftByPower(1300*unit.VoltAmpere, 0.8, 0.75, phase.PartLoadHigh)
	fmt.Printf("%.0f W (%.0f to %.0f), %v\n", e.Value, e.Low, e.High, err)
	// Output: 690 W (600 to 780), <nil>
}

func ExampleShaftByLoad() {
	e, err := phase.ShaftByLoad(2*unit.Horsepower, 0.6, 0.7)
	fmt.Printf("%.1f hp (%.1f to %.1f), %v\n", e.Value.In(unit.Horsepower), e.Low.In(unit.Horsepower), e.High.In(unit.Horsepower), err)
	// Output: 1.3 hp (1.2 to 1.4), <nil>
}

func ExampleReversedBy() {
	fmt.Println(phase.ReversedBy(phase.ThreePhase))
	fmt.Println(phase.ReversedBy(phase.Inverter))
	// Output:
	// two-lines <nil>
	// drive-output <nil>
}

// Lessons In Electric Circuits: 1-2-3, 2-3-1 and 3-1-2 are the same.
func ExampleDirectionOf() {
	fmt.Println(phase.DirectionOf(3, 1, 2))
	fmt.Println(phase.DirectionOf(2, 1, 3))
	// Output:
	// same <nil>
	// reversed <nil>
}

func ExampleCheckUse() {
	fmt.Println(phase.CheckUse(phase.CheckAmpUnbalance, phase.SinglePhase))
	fmt.Println(phase.CheckUse(phase.CheckAmpUnbalance, phase.Inverter))
	// Output:
	// no <nil>
	// drive-output <nil>
}

// The high reading stays with L1 in all three positions.
func ExampleClassifyRoll() {
	r, err := phase.ClassifyRoll([]phase.Position{{L1: 10.8, L2: 10.0, L3: 9.2}, {L1: 10.8, L2: 9.9, L3: 9.3}, {L1: 10.7, L2: 10.0, L3: 9.3}}, phase.UsualClamp)
	fmt.Println(r.Cause, r.Line, r.Confidence, err)
	// Output: supply 1 firm <nil>
}

// A delta motor with one of its windings open, on even volts: the line between the two
// that are left carries √3 of what the others do.
func ExampleLostPhaseOnVolts() {
	for _, volts := range []unit.Ratio{0.005, 0.05} {
		l, err := phase.LostPhaseOnVolts(9.5, 5.5, 5.5, phase.Meter[unit.Current]{}, volts)
		fmt.Println(l.Loss, l.Leg, err)
	}
	// Output:
	// open-winding 1 <nil>
	// ahead-of-transformer 1 <nil>
}

// 490 V at 57.1 Hz on a plate of 460 V and 60 Hz.
func ExampleCombinedVariation() {
	off, err := phase.CombinedVariation(490, 57.1*unit.Hertz, 460, 60*unit.Hertz)
	fmt.Printf("%.1f %%, %v\n", float64(off/unit.Percent), err)
	// Output: 11.4 %, <nil>
}

// A line open ahead of a motor that stands: half of 208 V to either side of it.
func ExampleOpenLine() {
	line, err := phase.OpenLine(208, 104, 104)
	fmt.Println(line, err)
	// Output: 3 <nil>
}
