package phase_test

import (
	"math"
	"math/cmplx"
	"math/rand/v2"
	"slices"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

type legs [3]unit.Current

// readings runs f over many sets of amps, nearly balanced to badly unbalanced, and
// meters.
func readings(f func(x legs, m phase.Meter[unit.Current])) {
	random := rand.New(rand.NewPCG(19, 23))
	for range 400 {
		var x legs
		spread := math.Pow(10, -3*random.Float64())
		for i := range x {
			x[i] = unit.Current(1 + 20*random.Float64())
			x[i] = 10*unit.Current(1-spread) + x[i]*unit.Current(spread)
		}
		f(x, phase.Meter[unit.Current]{Share: unit.Ratio(0.05 * random.Float64()), Floor: unit.Current(0.1 * random.Float64())})
	}
}

// by hand, apart from the library's code.
func unbalanceOf(x legs) (float64, phase.Leg) {
	mean := float64(x[0]+x[1]+x[2]) / 3
	most, leg := -1.0, phase.NoLeg
	for i := range x {
		if d := math.Abs(float64(x[i])-mean) / mean; d > most {
			most, leg = d, phase.Leg(i+1)
		}
	}
	return most, leg
}

// Every set of readings within the meter's error has an unbalance within the
// range, and some have its ends.
func TestUnbalanceRangeHoldsAllThatMayBe(t *testing.T) {
	const steps = 20
	certain := 0
	readings(func(x legs, m phase.Meter[unit.Current]) {
		s := check.Value[phase.Spread](t)(phase.UnbalanceRange(x[0], x[1], x[2], m))
		least, most := math.Inf(1), 0.0
		for n := range (steps + 1) * (steps + 1) * (steps + 1) {
			var y legs
			rest := n
			for i := range y {
				at := float64(rest%(steps+1))/steps*2 - 1
				rest /= steps + 1
				y[i] = x[i] + unit.Current(at)*(x[i]*unit.Current(m.Share)+m.Floor)
			}
			u, leg := unbalanceOf(y)
			least, most = min(least, u), max(most, u)
			if s.Certain != phase.NoLeg && leg != s.Certain {
				t.Errorf("%v: leg %d is said to be certain, leg %d may be", x, s.Certain, leg)
			}
		}
		grid := float64(m.Share) + float64(m.Floor/10)
		if least < float64(s.Low)-1e-12 || least > float64(s.Low)+grid/4 {
			t.Errorf("%v ± %v: least %v, told %v", x, m, least, s.Low)
		}
		check.Near(t, "greatest", float64(s.High), most, 1e-9)
		if s.Low > s.Value || s.Value > s.High {
			t.Errorf("%v: out of order", s)
		}
		if s.Certain != phase.NoLeg {
			certain++
		}
	})
	if certain < 20 {
		t.Errorf("the leg was certain %d times", certain)
	}
}

func TestUncertainLegIsUncertain(t *testing.T) {
	readings(func(x legs, m phase.Meter[unit.Current]) {
		s := check.Value[phase.Spread](t)(phase.UnbalanceRange(x[0], x[1], x[2], m))
		if s.Certain != phase.NoLeg {
			return
		}
		for n := range 8 {
			var y legs
			for i := range y {
				y[i] = x[i] + unit.Current(n>>i&1*2-1)*(x[i]*unit.Current(m.Share)+m.Floor)*(1+1e-9)
			}
			if _, leg := unbalanceOf(y); leg != s.Leg {
				return
			}
		}
		t.Errorf("%v ± %v: no other leg than %d may be farthest, yet it is not certain", x, m, s.Leg)
	})
}

func TestUnbalanceForgetsOrderAndSize(t *testing.T) {
	readings(func(x legs, m phase.Meter[unit.Current]) {
		s := check.Value[phase.Spread](t)(phase.UnbalanceRange(x[0], x[1], x[2], m))
		turned := check.Value[phase.Spread](t)(phase.UnbalanceRange(x[1], x[2], x[0], m))
		check.Near(t, "turned, low", turned.Low, s.Low, 1e-9)
		check.Near(t, "turned, high", turned.High, s.High, 1e-9)
		if want := (s.Leg+1)%3 + 1; turned.Leg != want {
			t.Errorf("leg %d became %d, want %d", s.Leg, turned.Leg, want)
		}
		const k = 37
		m.Floor *= k
		larger := check.Value[phase.Spread](t)(phase.UnbalanceRange(x[0]*k, x[1]*k, x[2]*k, m))
		check.Near(t, "larger", larger.Value, s.Value, 1e-9)
		check.Near(t, "larger, low", larger.Low, s.Low, 1e-9)
		check.Near(t, "larger, high", larger.High, s.High, 1e-9)
	})
	s := check.Value[phase.Spread](t)(phase.UnbalanceRange[unit.Voltage](480, 480, 480, phase.Meter[unit.Voltage]{}))
	if s != (phase.Spread{}) {
		t.Errorf("balanced: %+v", s)
	}
}

// No meter's error within its band may turn a verdict.
func TestNoVerdictThatTheMeterCouldOverturn(t *testing.T) {
	random := rand.New(rand.NewPCG(29, 31))
	seen := map[phase.Standing]int{}
	standing := func(x legs) phase.Standing {
		switch u, _ := unbalanceOf(x); {
		case u <= 0.01:
			return phase.Within
		case u <= 0.05:
			return phase.Watch
		}
		return phase.Stop
	}
	for range 3000 {
		var x legs
		for i := range x {
			x[i] = unit.Current(460 * (1 + 0.24*(random.Float64()-0.5)*random.Float64()))
		}
		m := phase.Meter[unit.Voltage]{Share: unit.Ratio(0.006 * random.Float64())}
		b := check.Value[phase.Balance](t)(phase.VoltageBalance(unit.Voltage(x[0]), unit.Voltage(x[1]), unit.Voltage(x[2]), m))
		seen[b.Standing]++
		for range 40 {
			y := x
			for i := range y {
				y[i] *= unit.Current(1 + float64(m.Share)*(2*random.Float64()-1))
			}
			near := b.Reason == phase.ReasonNear && b.Standing == phase.Watch // watched by the reading
			if got := standing(y); b.Standing != phase.Unjudged && got != b.Standing && (!near || got == phase.Stop) {
				t.Errorf("%v: %s, though it may be %s", x, b.Standing, got)
			}
		}
		if (b.Reason != phase.ReasonNone) != (b.Best != b.Worst) || (b.Reason == phase.ReasonBand) != (b.Standing == phase.Unjudged) {
			t.Errorf("%+v contradicts itself", b)
		}
	}
	for _, s := range []phase.Standing{phase.Within, phase.Watch, phase.Unjudged} {
		if seen[s] < 50 {
			t.Errorf("%s came up %d times", s, seen[s])
		}
	}
	for _, test := range []struct {
		a, b, c unit.Voltage
		want    phase.Standing
	}{{460, 460, 453.2, phase.Within}, {460, 460, 453.0, phase.Watch}, {460, 460, 426.5, phase.Watch}, {460, 460, 425, phase.Stop}} {
		if b := check.Value[phase.Balance](t)(phase.VoltageBalance(test.a, test.b, test.c, phase.Meter[unit.Voltage]{})); b.Standing != test.want {
			t.Errorf("%v V: %s, want %s", test.c, b.Standing, test.want)
		}
	}
}

func TestCurrentBalanceSaysFirstThingsFirst(t *testing.T) {
	m := phase.UsualClamp
	for _, test := range []struct {
		name    string
		a, b, c unit.Current
		load    unit.Ratio
		want    phase.Standing
		reason  phase.Reason
	}{
		{"lost at light load", 0.1, 5, 5, 0.3, phase.Stop, phase.ReasonLost},
		{"perhaps open, failing for certain", 0.8, 8.2, 8.2, 0.9, phase.Stop, phase.ReasonLost},
		{"a sixth of the others, idling", 0.8, 5, 5, 0.2, phase.Stop, phase.ReasonLost},
		{"perhaps failing, and far apart for certain", 2.05, 8.2, 8.2, 0.9, phase.Stop, phase.ReasonNone},
		{"perhaps failing, idling", 2.05, 8.2, 8.2, 0.2, phase.Watch, phase.ReasonLight},
		{"one of double on even volts is the motor's", 5, 10, 5, 0.9, phase.Stop, phase.ReasonNone},
		{"half of the others, idling on even volts", 1.1, 2.2, 2.2, 0.1, phase.Watch, phase.ReasonLight},
		{"a fifth off, idling", 1.8, 2.4, 2.4, 0.1, phase.Unjudged, phase.ReasonLight},
		{"even under half load", 10, 10, 10, 0.49, phase.Within, phase.ReasonLight},
		{"at half load", 10, 10, 10, 0.5, phase.Within, phase.ReasonNone},
		{"far out", 13.5, 10, 9, 0.9, phase.Watch, phase.ReasonNone},
		{"past 30 per cent", 16, 10, 9, 0.9, phase.Stop, phase.ReasonNone},
		{"at the limit, by the reading", 11, 10, 9, 0.9, phase.Within, phase.ReasonNear},
		{"past it, by the reading", 11.1, 10, 9, 0.9, phase.Watch, phase.ReasonNear},
		{"a clamp too coarse for 0.6 A", 0.66, 0.6, 0.55, 0.9, phase.Unjudged, phase.ReasonBand},
	} {
		b := check.Value[phase.Balance](t)(phase.CurrentBalance(test.a, test.b, test.c, m, test.load, 0.01))
		if b.Standing != test.want || b.Reason != test.reason {
			t.Errorf("%s: %+v", test.name, b)
		}
		if test.reason == phase.ReasonLost && b.Value != 0 || test.reason != phase.ReasonLost && b.Value != 0 && b.Low == 0 && b.High == 0 {
			t.Errorf("%s: %v, where there is no unbalance to speak of", test.name, b.Value)
		}
	}
}

// A phase lost ahead of a transformer stands on volts that account for it: by 25 times,
// 50 per cent of amps on more than 2 of volts. The volts not read, 3 are taken.
func TestDoubleGoesByTheVolts(t *testing.T) {
	for _, test := range []struct {
		name    string
		a, b, c unit.Current
		volts   unit.Ratio
		want    phase.Loss
		leg     phase.Leg
	}{
		{"volts not read", 5, 10, 5, phase.SupplyUnbalanceMost, phase.LossAhead, 2},
		{"volts well apart", 5, 10, 5, 0.05, phase.LossAhead, 2},
		{"even volts", 5, 10, 5, 0.005, phase.LossWinding, 2},
		{"a delta with a winding open", 9.5, 5.5, 5.5, 0.005, phase.LossWinding, 1},
		{"the other two a little apart", 7.5, 3.8, 3.9, 0.005, phase.LossWinding, 1},
		{"a delta's pattern, volts not read", 9.2, 5.5, 5.5, phase.SupplyUnbalanceMost, phase.LossNone, 0},
		{"under 30 per cent", 8.2, 5.5, 5.5, 0.005, phase.LossNone, 0},
		{"two that carry much", 9, 9, 4, 0.005, phase.LossNone, 0},
		{"three far apart", 9.5, 6.5, 4, 0.005, phase.LossNone, 0},
		{"a dead leg stays one", 0.1, 9, 9, 0.005, phase.LossOpen, 1},
	} {
		l := check.Value[phase.Lost](t)(phase.LostPhaseOnVolts(test.a, test.b, test.c, phase.UsualClamp.Alike(phase.ClampRepeats), test.volts))
		if l.Loss != test.want || l.Leg != test.leg {
			t.Errorf("%s: %+v", test.name, l)
		}
	}
	b := check.Value[phase.Balance](t)(phase.CurrentBalance(5, 10, 5, phase.UsualClamp, 0.9, 0.03))
	if b.Reason != phase.ReasonLost || b.Standing != phase.Stop || b.Value != 0 {
		t.Errorf("on volts that account for it: %+v", b)
	}
	if _, err := phase.LostPhaseOnVolts(5, 10, 5, phase.UsualClamp, -0.01); err == nil {
		t.Error("volts below zero are taken")
	}
}

// A winding parts what is left between two live lines in halves.
func TestOpenLine(t *testing.T) {
	for _, test := range []struct {
		ab, bc, ca unit.Voltage
		want       phase.Leg
	}{
		{208, 119, 116, 3}, {104, 208, 104, 1}, {100, 108, 208, 2}, {208, 207, 208, 0}, {208, 180, 175, 0}, {208, 104, 180, 0}, {208, 0, 208, 0}, {208, 70, 138, 0},
		{208, 0, 0, 3}, {2, 208, 20, 1}, {208, 21, 0, 0}, // ahead of a motor
	} {
		if got := check.Value[phase.Leg](t)(phase.OpenLine(test.ab, test.bc, test.ca)); got != test.want {
			t.Errorf("%v %v %v: line %d", test.ab, test.bc, test.ca, got)
		}
	}
	if _, err := phase.OpenLine(0, 0, 0); err == nil {
		t.Error("three of nothing tell an open line")
	}
}

// Common practice: 10 per cent at load.
func TestCurrentBalanceLimit(t *testing.T) {
	for off, want := range map[unit.Current]phase.Standing{1: phase.Within, 1.005: phase.Watch} { // u is off over 10
		b := check.Value[phase.Balance](t)(phase.CurrentBalance(10+off, 10-off/2, 10-off/2, phase.Meter[unit.Current]{}, 1, 0.01))
		if b.Standing != want {
			t.Errorf("%v off ten: %s, want %s", off, b.Standing, want)
		}
	}
}

// Components of three phasors that close, from their definition.
func components(x, y complex128) (positive, negative float64) {
	z := -(x + y)
	a := cmplx.Rect(1, 2*math.Pi/3)
	return cmplx.Abs(x+a*y+a*a*z) / 3, cmplx.Abs(x+a*a*y+a*z) / 3
}

func TestSequenceFactorIsTheComponents(t *testing.T) {
	random := rand.New(rand.NewPCG(37, 41))
	for range 3000 {
		x, y := cmplx.Rect(1+random.Float64(), 0), cmplx.Rect(1+random.Float64(), 2*math.Pi*random.Float64())
		z := -(x + y)
		p, n := components(x, y)
		want := min(p, n) / max(p, n) // the order of the phases is not known
		got := check.Value[unit.Ratio](t)(phase.SequenceFactor(unit.Voltage(cmplx.Abs(x)), unit.Voltage(cmplx.Abs(y)), unit.Voltage(cmplx.Abs(z))))
		if math.Abs(float64(got)-want) > 1e-7 {
			t.Errorf("%v, %v: %v, want %v", x, y, got, want)
		}
	}
	// Small ones keep their digits, and are 1 to 2/√3 of the other definition.
	for range 3000 {
		size := math.Pow(10, -1.5-6*random.Float64())
		v := func() unit.Voltage { return unit.Voltage(480 * (1 + size*(random.Float64()-0.5))) }
		a, b, c := v(), v(), v()
		u, f := check.Value[unit.Ratio](t)(phase.Unbalance(a, b, c)), check.Value[unit.Ratio](t)(phase.SequenceFactor(a, b, c))
		if r := float64(f / u); r < 1-2*size-1e-6 || r > 2/math.Sqrt(3)+2*size+1e-6 {
			t.Errorf("%v %v %v: %v of the unbalance", a, b, c, r)
		}
	}
	if f := check.Value[unit.Ratio](t)(phase.SequenceFactor[unit.Current](0, 17.3, 17.3)); math.Abs(float64(f)-1) > 1e-9 {
		t.Errorf("one line open: %v, where both sequences are alike", f)
	}
	_, err := phase.SequenceFactor[unit.Voltage](100, 49.9, 50)
	check.Broken(t, "no triangle", err, "", limit.NoTriangle)
	_, err = phase.SequenceFactor[unit.Voltage](0, 0, 0)
	check.Broken(t, "dead", err, "", limit.AllZero)
}

func TestTriangleCheck(t *testing.T) {
	for _, test := range []struct {
		a, b, c unit.Voltage
		share   unit.Ratio
		want    phase.Closing
	}{
		{480, 470, 460, 0.01, phase.Closes},
		{480, 238, 240, 0.01, phase.ClosesUnsure},
		{480, 242, 240, 0.01, phase.ClosesUnsure},
		{480, 238, 240, 0, phase.ClosesNot},
		{480, 242, 240, 0, phase.Closes},
		{120, 480, 120, 0.01, phase.ClosesNot},
	} {
		if got := check.Value[phase.Closing](t)(phase.TriangleCheck(test.a, test.b, test.c, phase.Meter[unit.Voltage]{Share: test.share})); got != test.want {
			t.Errorf("%v %v %v: %s, want %s", test.a, test.b, test.c, got, test.want)
		}
	}
}

func TestLostPhase(t *testing.T) {
	for _, test := range []struct {
		name string
		x    legs
		want phase.Loss
		leg  phase.Leg
	}{
		{"one dead", legs{0, 17.3, 17.3}, phase.LossOpen, 1},
		{"next to dead", legs{0.5, 17.3, 17.3}, phase.LossOpen, 1},
		{"a tenth, within the meter", legs{1.75, 17.3, 17.3}, phase.LossNearly, 1},
		{"a sixth", legs{2.8, 17.3, 17.3}, phase.LossNearly, 1},
		{"a quarter, within the meter", legs{4.3, 17.3, 17.3}, phase.LossUnjudged, 1},
		{"over a quarter", legs{4.9, 17.3, 17.3}, phase.LossNone, 0},
		{"double", legs{8, 4, 4}, phase.LossAhead, 1},
		{"about double", legs{8.3, 4.2, 3.9}, phase.LossAhead, 1},
		{"double of two unlike", legs{8, 5, 3}, phase.LossNone, 0},
		{"half more", legs{6, 4, 4}, phase.LossNone, 0},
		{"edge of the pattern", legs{6.85, 4, 4}, phase.LossUnjudged, 1},
		{"balanced", legs{8, 8, 8}, phase.LossNone, 0},
		{"two of nothing", legs{5, 0, 0}, phase.LossPair, 1},
		{"two of next to nothing", legs{17.3, 0.5, 0.9}, phase.LossPair, 1},
		{"one of nothing, one of a seventh", legs{17.3, 2.5, 0}, phase.LossOpen, 3},
		{"two of nothing at a clamp's floor", legs{0.4, 0, 0}, phase.LossUnjudged, 2},
		{"three of nothing", legs{0, 0, 0}, phase.LossAll, 0},
	} {
		for turn := range 3 {
			x := legs{test.x[turn], test.x[(turn+1)%3], test.x[(turn+2)%3]}
			leg := test.leg
			if leg != phase.NoLeg {
				leg = phase.Leg((int(leg)-1-turn+3)%3 + 1)
			}
			l := check.Value[phase.Lost](t)(phase.LostPhase(x[0], x[1], x[2], phase.UsualClamp))
			if test.x == (legs{0.4, 0, 0}) {
				leg = l.Leg // either of the two
			}
			if l.Loss != test.want || l.Leg != leg {
				t.Errorf("%s, turned %d: %+v, want %s on %d", test.name, turn, l, test.want, leg)
			}
		}
	}
	for _, test := range []struct {
		a, b, c unit.Current
		want    phase.Loss
	}{
		{0.999, 10, 10, phase.LossOpen}, {1.005, 10, 10, phase.LossNearly}, // a tenth
		{2.499, 10, 10, phase.LossNearly}, {2.505, 10, 10, phase.LossNone}, // a quarter
		{1.702, 1, 1, phase.LossAhead}, {1.698, 1, 1, phase.LossNone}, // 15 per cent from two
		{1.851, 1, 0.851, phase.LossAhead}, {1.849, 1, 0.849, phase.LossNone}, // 15 per cent apart
	} {
		if got := check.Value[phase.Lost](t)(phase.LostPhase(test.a, test.b, test.c, phase.Meter[unit.Current]{})); got.Loss != test.want {
			t.Errorf("%v %v %v: %+v, want %s", test.a, test.b, test.c, got, test.want)
		}
	}
	for _, test := range []struct {
		x    legs
		want []phase.Leg
	}{{legs{0, 5, 5}, []phase.Leg{1}}, {legs{0, 5, 0}, []phase.Leg{1, 3}}, {legs{5, 0, 0}, []phase.Leg{2, 3}}, {legs{0, 0, 0}, []phase.Leg{1, 2, 3}}, {legs{5, 5, 5}, nil}, {legs{4, 8, 4}, nil}} {
		l := check.Value[phase.Lost](t)(phase.LostPhase(test.x[0], test.x[1], test.x[2], phase.UsualClamp))
		if got := l.Dead(); !slices.Equal(got, test.want) || l.Sure() != (test.x != legs{5, 5, 5}) {
			t.Errorf("%v: dead are %v, want %v", test.x, got, test.want)
		}
	}
	l := check.Value[phase.Lost](t)(phase.LostPhase(8, 4, 4, phase.UsualClamp))
	check.Near(t, "over the others", l.Over, 2, 1e-12)
	i := check.Value[unit.Current](t)(phase.AmpsWithOpenLine(10))
	check.Near(t, "shaft power with a line open", float64(i), 10*math.Sqrt(3), 1e-12)
}

func TestMeter(t *testing.T) {
	if phase.UsualClamp != (phase.Meter[unit.Current]{Share: 0.02, Floor: 5 * 0.01}) || phase.UsualVoltmeter != (phase.Meter[unit.Voltage]{Share: 0.01}) {
		t.Error("common practice: a clamp within 2 % and 5 digits, a voltmeter within 1 %")
	}
	_, err := phase.UnbalanceRange(1, 1, 1, phase.Meter[unit.Current]{Share: 1})
	check.Broken(t, "all error", err, "meter", limit.TooCoarse)
	_, err = phase.UnbalanceRange(1, 1, 1, phase.Meter[unit.Current]{Floor: -1})
	check.Broken(t, "below zero", err, "meter", limit.Negative)
	_, err = phase.ThroughClamp(10, 0)
	check.Broken(t, "not through", err, "turns", limit.NotPositive)
	_, err = phase.ThroughClamp(10, 101)
	check.Broken(t, "too often", err, "turns", limit.OutOfRange)
	// More turns, less of the unbalance is the meter's.
	last := unit.Ratio(1)
	for _, turns := range []int{1, 2, 5, 10} {
		m := check.Value[phase.Meter[unit.Current]](t)(phase.ClampOfTurns(phase.UsualClamp, turns))
		i := check.Value[unit.Current](t)(phase.ThroughClamp(1.5*unit.Current(turns), turns))
		check.Near(t, "current", i, 1.5, 1e-12)
		s := check.Value[phase.Spread](t)(phase.UnbalanceRange(i, i, i, m))
		if s.High >= last {
			t.Errorf("%d turns: %v after %v", turns, s.High, last)
		}
		last = s.High
	}
}

// By symmetrical components, with common figures for a motor: six times plate at a
// standstill, on a no-load current of 0.3 of it. Whatever the angles, an idling motor
// stays under the unbalance told, and at the 3 % that a utility may have no leg is
// failing.
func TestNoIdlingMotorIsTakenForAFailingLeg(t *testing.T) {
	const idle, stalled, turns = 0.3, 6.0, 36
	nearest := 1.0
	for _, factor := range []float64{0.01, 0.02, 0.03} {
		for n := range turns * turns {
			at := func(k int) complex128 { return cmplx.Rect(1, 2*math.Pi*float64(k)/turns) }
			volts := magnitudes(1, complex(factor, 0)*at(n%turns))
			amps := magnitudes(idle, complex(stalled*factor, 0)*at(n/turns))
			u := check.Value[unit.Ratio](t)(phase.Unbalance(unit.Voltage(volts[0]), unit.Voltage(volts[1]), unit.Voltage(volts[2])))
			i, _ := unbalanceOf(legs{unit.Current(amps[0]), unit.Current(amps[1]), unit.Current(amps[2])})
			if most := float64(phase.IdleMost(u)); i > most {
				t.Fatalf("%v of volts makes %v of amps, told at most %v", u, i, most)
			} else {
				nearest = min(nearest, 1-i/most)
			}
			l := check.Value[phase.Lost](t)(phase.LostPhase(unit.Current(amps[0]), unit.Current(amps[1]), unit.Current(amps[2]), phase.Meter[unit.Current]{}))
			if l.Loss == phase.LossNearly || l.Loss == phase.LossOpen {
				t.Fatalf("%v of volts: %v is called failing", factor, amps)
			}
		}
	}
	if nearest > 0.5 {
		t.Errorf("told at least %v too much", nearest)
	}
}

// magnitudes of three phasors by their positive and negative sequence components.
func magnitudes(positive, negative complex128) (m [3]float64) {
	a := cmplx.Rect(1, 2*math.Pi/3)
	back, on := complex128(1), complex128(1)
	for i := range m {
		m[i] = cmplx.Abs(back*positive + on*negative)
		back, on = back*cmplx.Conj(a), on*a
	}
	return m
}
