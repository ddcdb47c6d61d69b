package belt_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// pulls runs f over many loaded drives.
func pulls(f func(power unit.Power, v unit.Velocity, arc unit.Angle, belts int)) {
	random := rand.New(rand.NewPCG(3, 5))
	for range 1000 {
		f(unit.Power(0.2+15*random.Float64())*hp, unit.Velocity(500+5500*random.Float64())*fpm,
			unit.Angle(85+95*random.Float64())*unit.Degree, 1+random.IntN(4))
	}
}

// The textbook's form against the strands by statics: half their sum, per belt.
func TestStaticTensionIsTheStrandsMean(t *testing.T) {
	force := check.Value[unit.Force](t)
	pulls(func(power unit.Power, v unit.Velocity, arc unit.Angle, belts int) {
		set := force(belt.StaticTension(power, v, arc, belts, 0, belt.TensionByStatics))
		tight, slack, err := belt.Strands(power, v, arc)
		if err != nil {
			t.Fatal(err)
		}
		check.Near(t, "mean", set*unit.Force(belts), (tight+slack)/2, 1e-12)
		check.Near(t, "ratio", unit.Ratio(tight/slack), check.Value[unit.Ratio](t)(belt.TensionRatio(arc)), 1e-12)
		Ac := check.Value[unit.Ratio](t)(belt.ArcFactor(arc))
		check.Near(t, "as printed", set.In(lbf), 16.5*(2.5-float64(Ac))/float64(Ac)*power.In(hp)*1000/float64(belts)/v.In(fpm), 1e-12)
		pull := force(belt.EffectivePull(power, v))
		up, down, err := belt.StrandsAt(set, belts, pull)
		if err != nil {
			t.Fatal(err)
		}
		check.Near(t, "tight", up, tight, 1e-12)
		check.Near(t, "slack", down, slack, 1e-12)
		check.Near(t, "the trade's constant", force(belt.StaticTension(power, v, arc, belts, 0, belt.TensionByTrade)), set*15/16.5, 1e-12)
		if more := force(belt.StaticTension(power, v, arc*0.99, belts, 0, belt.TensionByStatics)); more <= set {
			t.Errorf("less arc asks for %v after %v", more, set)
		}
		const m = 0.1 * unit.KilogramPerMeter
		own := force(belt.CentrifugalTension(m, v))
		check.Near(t, "with its own", force(belt.StaticTension(power, v, arc, belts, m, belt.TensionByStatics)), set+own, 1e-12)
		check.Near(t, "own", float64(own), 0.1*float64(v)*float64(v), 1e-12)
	})
}

func TestTensionsScale(t *testing.T) {
	force := check.Value[unit.Force](t)
	pulls(func(power unit.Power, v unit.Velocity, arc unit.Angle, belts int) {
		const k = 3.7
		set := force(belt.StaticTension(power, v, arc, belts, 0.1, belt.TensionByStatics))
		// Power scales as force times speed, a mass for each length as force over speed squared.
		check.Near(t, "static", force(belt.StaticTension(power*k, v, arc, belts, 0.1*k, belt.TensionByStatics)), k*set, 1e-12)
		check.Near(t, "static, faster", force(belt.StaticTension(power*k, v*k, arc, belts, 0.1/k/k, belt.TensionByStatics)), set, 1e-12)
		f := check.Value[unit.Frequency](t)(belt.FrequencyFromTension(0.1, 0.4, set))
		check.Near(t, "frequency there and back", force(belt.TensionFromFrequency(0.1, 0.4, f)), set, 1e-12)
		check.Near(t, "frequency, tighter", check.Value[unit.Frequency](t)(belt.FrequencyFromTension(0.1, 0.4, set*k*k)), f*k, 1e-12)
		check.Near(t, "frequency, longer", check.Value[unit.Frequency](t)(belt.FrequencyFromTension(0.1, 0.4*k, set)), f/k, 1e-12)
		p := force(belt.DeflectionForce(set, 5*lbf))
		check.Near(t, "force there and back", force(belt.TensionFromForce(p, 5*lbf)), set, 1e-12)
		exact := force(belt.DeflectionForceExact(set))
		if short := 1 - float64(exact/(set/16)); short < 0.0004 || short > 0.0006 {
			t.Errorf("the exact force is %v short", short)
		}
	})
}

func TestShaftLoads(t *testing.T) {
	force := check.Value[unit.Force](t)
	pulls(func(power unit.Power, v unit.Velocity, arc unit.Angle, belts int) {
		tight, slack, err := belt.Strands(power, v, arc)
		if err != nil {
			t.Fatal(err)
		}
		running := force(belt.ShaftLoadRunning(tight, slack, arc))
		check.Near(t, "by the law of cosines", float64(running), math.Sqrt(float64(tight*tight+slack*slack-2*tight*slack*unit.Force(math.Cos(float64(arc))))), 1e-12)
		if running > (tight+slack)*(1+1e-12) || running < tight-slack {
			t.Errorf("%v and %v pull %v", tight, slack, running)
		}
		rest := force(belt.ShaftLoadStatic((tight+slack)/2, 1, arc))
		check.Near(t, "without load", force(belt.ShaftLoadRunning((tight+slack)/2, (tight+slack)/2, arc)), rest, 1e-12)
		check.Near(t, "belts", force(belt.ShaftLoadStatic((tight+slack)/2, belts, arc)), rest*unit.Force(belts), 1e-12)
		// A larger drive pulls as the overhung form says at half a turn.
		tight, slack, err = belt.Strands(power, v, math.Pi)
		if err != nil {
			t.Fatal(err)
		}
		pitch := 4 * in
		n := unit.Speed(float64(v) / float64(pitch) * 60 / math.Pi)
		check.Near(t, "overhung", force(belt.OverhungLoad(power, pitch, n, belt.VBeltFactor)), force(belt.ShaftLoadRunning(tight, slack, math.Pi)), 1e-9)
	})
	_, err := belt.ShaftLoadStatic(10, 1, 1.01*math.Pi)
	check.Broken(t, "more than half a turn", err, "arc", limit.OutOfRange)
	_, err = belt.ShaftLoadRunning(10, 11, 3)
	check.Broken(t, "slack over tight", err, "slack", limit.OutOfRange)
}

func TestTensionFaults(t *testing.T) {
	const v, arc = 1600 * fpm, 3 * unit.Radian
	_, err := belt.StaticTension(0, v, arc, 1, 0, 16.5)
	check.Broken(t, "no power", err, "power", limit.NotPositive)
	_, err = belt.StaticTension(hp, v, arc, 0, 0, 16.5)
	check.Broken(t, "no belt", err, "belts", limit.NotPositive)
	_, err = belt.StaticTension(hp, v, arc, 101, 0, 16.5)
	check.Broken(t, "too many belts", err, "belts", limit.OutOfRange)
	_, err = belt.StaticTension(hp, v, arc, 1, -1, 16.5)
	check.Broken(t, "mass below zero", err, "mass", limit.Negative)
	_, err = belt.StaticTension(hp, v, 7, 1, 0, 16.5)
	check.Broken(t, "more than a turn", err, "arc", limit.OutOfRange)
	_, err = belt.TensionRatio(6.3)
	check.Broken(t, "just over a turn", err, "arc", limit.OutOfRange)
	if p, err := belt.DesignPower(hp, 1.005); err != nil || p <= hp {
		t.Errorf("a service factor of hardly more than one: %v, %v", p, err)
	}
	if belt.ServiceFactorLow != 1.0 || belt.ServiceFactorHigh != 1.3 {
		t.Error("a handbook on industrial power, Table 8.5: fans take 1.0 to 1.3")
	}
	_, err = belt.DesignPower(hp, 0.9)
	check.Broken(t, "service factor", err, "factor", limit.OutOfRange)
	_, err = belt.TensionFromForce(1*lbf, 16*lbf)
	check.Broken(t, "all stiffness", err, "stiffness", limit.OutOfRange)
	_, err = belt.StretchShare(1*lbf, 25*in, 50*in)
	check.Broken(t, "span of half the belt", err, "span", limit.OutOfRange)
	_, err = belt.StretchShare(1*lbf, 24.9*in, 50*in)
	if err != nil {
		t.Errorf("span of just under half the belt: %v", err)
	}
	_, _, err = belt.StrandsAt(10*lbf, 1, 20*lbf)
	check.Broken(t, "no slack strand left", err, "pull", limit.OutOfRange)
	_, err = belt.ListedBand(10*lbf, 0)
	check.Broken(t, "a belt that stands still", err, "v", limit.NotPositive)
}

// Memory: kg/m.
func TestTypicalMass(t *testing.T) {
	for section, want := range map[drive.Section]float64{"A": 0.105, "AX": 0.10, "B": 0.18, "BX": 0.17, "3V": 0.075, "5V": 0.20} {
		m, ok := belt.TypicalMass(section)
		if !ok {
			t.Errorf("%s has none", section)
		}
		check.Near(t, string(section), float64(m), want, 1e-12)
	}
	if _, ok := belt.TypicalMass(drive.Section4L); ok {
		t.Error("4L has a mass that no source gives")
	}
	if belt.Recheck != 8*time.Hour || belt.RecheckLatest != 48*time.Hour {
		t.Error("MIL-HDBK-1164: 8 hours; memory: 24 to 48")
	}
}

// A belt maker's list prints forces beside strand tensions, in lbf: what the force has
// over a sixteenth of the strand is the belt's stiffness, never more than remembered.
func TestStiffnessCoversAPrintedList(t *testing.T) {
	for section, list := range map[drive.Section][][2]float64{
		drive.Section3V: {{5.4, 83.8}, {4.6, 69.8}, {4.7, 72.4}, {4.0, 60.3}, {7.6, 118}, {6.3, 98.3}, {6.9, 107}, {5.8, 89.2}},
		drive.Section5V: {{22.1, 348.2}, {18.5, 290.2}, {19.6, 308.9}, {16.4, 257.4}, {25.8, 408.2}, {21.6, 340.2}, {23.2, 366}, {19.4, 305}},
	} {
		most, ok := belt.TypicalStiffness(section)
		for _, row := range list {
			if y := unit.Force(16*row[0]-row[1]) * lbf; !ok || y < 0 || y > most {
				t.Errorf("%s: %v lbf at %v, most %v", section, y.In(lbf), row, most.In(lbf))
			}
		}
	}
	for _, s := range drive.Sections() {
		if y, ok := belt.TypicalStiffness(s); !ok || y <= 0 {
			t.Errorf("%s has no stiffness", s)
		}
	}
	if _, ok := belt.TypicalStiffness("Q"); ok {
		t.Error("a section that is none has a stiffness")
	}
}
