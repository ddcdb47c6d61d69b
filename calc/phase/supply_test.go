package phase_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

func TestVoltsAgainstPlate(t *testing.T) {
	random := rand.New(rand.NewPCG(53, 59))
	standing := func(v unit.Voltage) phase.Standing {
		if v >= 207 && v <= 253 {
			return phase.Within
		}
		return phase.Stop
	}
	seen := map[phase.Standing]int{}
	for range 3000 {
		v, m := unit.Voltage(190+80*random.Float64()), phase.Meter[unit.Voltage]{Share: unit.Ratio(0.02 * random.Float64())}
		s := check.Value[phase.Share](t)(phase.VoltsAgainstPlate(v, m, 230))
		seen[s.Standing]++
		low, high := v*unit.Voltage(1-m.Share), v*unit.Voltage(1+m.Share)
		check.Near(t, "low", s.Low, unit.Ratio(low/230), 1e-9)
		check.Near(t, "high", s.High, unit.Ratio(high/230), 1e-9)
		want := standing(low)
		if standing(high) != want {
			want = phase.Unjudged
		}
		if s.Standing != want {
			t.Errorf("%v ± %v: %s, want %s", v, m.Share, s.Standing, want)
		}
	}
	for _, s := range []phase.Standing{phase.Within, phase.Stop, phase.Unjudged} {
		if seen[s] < 100 {
			t.Errorf("%s came up %d times", s, seen[s])
		}
	}
}

func TestWideMeterAroundThePlate(t *testing.T) {
	for _, test := range []struct {
		v     unit.Voltage
		share unit.Ratio
		want  phase.Standing
	}{
		{230, 0.0995, phase.Within}, {230, 0.1005, phase.Unjudged},
		{0.99 * 230, 0.085, phase.Within}, {0.985 * 230, 0.09, phase.Unjudged}, // to 0.906 and 0.896 of the plate
		{1.01 * 230, 0.085, phase.Within}, {1.02 * 230, 0.085, phase.Unjudged}, // to 1.096 and 1.107
	} {
		s := check.Value[phase.Share](t)(phase.VoltsAgainstPlate(test.v, phase.Meter[unit.Voltage]{Share: test.share}, 230))
		if s.Standing != test.want {
			t.Errorf("%v ± %v: %s, want %s", test.v, test.share, s.Standing, test.want)
		}
	}
}

func TestAmpsAgainstPlate(t *testing.T) {
	const plate, service = 6.8, 7.8
	exact := phase.Meter[unit.Current]{}
	for i, want := range map[unit.Current]phase.Standing{0: phase.Within, 3: phase.Within, 6.8: phase.Within, 6.81: phase.Watch, 7.8: phase.Watch, 7.81: phase.Stop} {
		if s := check.Value[phase.Share](t)(phase.AmpsAgainstPlate(i, exact, plate, service)); s.Standing != want {
			t.Errorf("%v A: %s, want %s", i, s.Standing, want)
		}
	}
	s := check.Value[phase.Share](t)(phase.AmpsAgainstPlate(7.7, phase.UsualClamp, plate, service))
	if s.Standing != phase.Unjudged || s.Best != phase.Watch || s.Worst != phase.Stop || s.Reason != phase.ReasonBand {
		t.Errorf("near the service factor: %+v", s)
	}
	if s := check.Value[phase.Share](t)(phase.AmpsAgainstPlate(6.9, exact, plate, plate)); s.Standing != phase.Stop {
		t.Errorf("without service-factor amps: %s", s.Standing)
	}
	_, err := phase.AmpsAgainstPlate(5, exact, plate, 6.7)
	check.Broken(t, "service under plate", err, "service", limit.OutOfRange)
}

// ANSI C84.1, Table 1, from memory.
func TestSystemTable(t *testing.T) {
	for _, want := range []phase.System{
		{Nominal: 208, Motor: 200, ServiceA: phase.Window{Low: 197, High: 218}, UseA: phase.Window{Low: 187, High: 218}, ServiceB: phase.Window{Low: 191, High: 220}, UseB: phase.Window{Low: 180, High: 220}},
		{Nominal: 240, Motor: 230, ServiceA: phase.Window{Low: 228, High: 252}, UseA: phase.Window{Low: 216, High: 252}, ServiceB: phase.Window{Low: 220, High: 254}, UseB: phase.Window{Low: 208, High: 254}},
		{Nominal: 480, Motor: 460, ServiceA: phase.Window{Low: 456, High: 504}, UseA: phase.Window{Low: 432, High: 504}, ServiceB: phase.Window{Low: 440, High: 508}, UseB: phase.Window{Low: 416, High: 508}},
		{Nominal: 600, Motor: 575, ServiceA: phase.Window{Low: 570, High: 630}, UseA: phase.Window{Low: 540, High: 630}, ServiceB: phase.Window{Low: 550, High: 635}, UseB: phase.Window{Low: 520, High: 635}},
	} {
		if got := check.Value[phase.System](t)(phase.SystemOf(want.Nominal)); got != want {
			t.Errorf("%+v, want %+v", got, want)
		}
	}
}

// The windows as shares of the nominal voltage, each printed to a volt.
func TestSystemWindows(t *testing.T) {
	for _, nominal := range []unit.Voltage{208, 240, 480, 600} {
		s := check.Value[phase.System](t)(phase.SystemOf(nominal))
		for _, w := range []struct {
			name      string
			window    phase.Window
			low, high unit.Voltage
		}{
			{"service A", s.ServiceA, -0.05, 0.05}, {"use A", s.UseA, -0.10, 0.05},
			{"service B", s.ServiceB, -0.083, 0.058}, {"use B", s.UseB, -0.133, 0.058},
		} {
			if math.Abs(float64(w.window.Low-nominal*(1+w.low))) > 1 || math.Abs(float64(w.window.High-nominal*(1+w.high))) > 1 {
				t.Errorf("%v V, %s: %v", nominal, w.name, w.window)
			}
		}
		if st := check.Value[phase.Standing](t)(phase.PlateOnSystem(s.Motor, nominal)); st != phase.Within {
			t.Errorf("%v on %v: %s", s.Motor, nominal, st)
		}
		if found := check.Value[phase.System](t)(phase.SystemNear(nominal)); found != s {
			t.Errorf("%v is read as %v", nominal, found.Nominal)
		}
		if v := check.Value[phase.Verdict](t)(phase.VoltsAtMotor(nominal, phase.UsualVoltmeter, nominal)); v.Standing != phase.Within {
			t.Errorf("%v on its own: %+v", nominal, v)
		}
	}
	_, err := phase.SystemOf(415)
	check.Broken(t, "elsewhere", err, "nominal", limit.NotTabulated)
	_, err = phase.SystemNear(400)
	check.Broken(t, "between systems", err, "v", limit.NotTabulated)
}

func TestVoltsAtMotorWithMeter(t *testing.T) {
	for _, test := range []struct {
		v           unit.Voltage
		share       unit.Ratio
		best, worst phase.Standing
	}{
		{480, 0.01, phase.Within, phase.Within},
		{433, 0.01, phase.Within, phase.Watch},
		{418, 0.01, phase.Watch, phase.Stop},
		{506, 0.01, phase.Within, phase.Stop},
		{480, 0.2, phase.Within, phase.Stop}, // both ends are out, the middle is in
		{300, 0.01, phase.Stop, phase.Stop},
		{415.5, 0, phase.Stop, phase.Stop}, {416.5, 0, phase.Watch, phase.Watch},
		{431.5, 0, phase.Watch, phase.Watch}, {432.5, 0, phase.Within, phase.Within},
		{503.5, 0, phase.Within, phase.Within}, {504.5, 0, phase.Watch, phase.Watch},
		{507.5, 0, phase.Watch, phase.Watch}, {508.5, 0, phase.Stop, phase.Stop},
	} {
		v := check.Value[phase.Verdict](t)(phase.VoltsAtMotor(test.v, phase.Meter[unit.Voltage]{Share: test.share}, 480))
		if v.Best != test.best || v.Worst != test.worst || (v.Standing == phase.Unjudged) != (test.best != test.worst) {
			t.Errorf("%v ± %v: %+v", test.v, test.share, v)
		}
	}
}

func TestPlateOnSystem(t *testing.T) {
	for _, test := range []struct {
		plate, nominal unit.Voltage
		want           phase.Standing
	}{
		{208, 208, phase.Within}, {200, 208, phase.Within}, {230, 208, phase.Watch}, {232, 208, phase.Stop}, {460, 208, phase.Stop},
		{230, 240, phase.Within}, {240, 240, phase.Within}, {220, 240, phase.Watch}, {218.5, 240, phase.Watch}, {218, 240, phase.Stop}, {200, 240, phase.Stop},
		{460, 480, phase.Within}, {440, 480, phase.Watch}, {230, 480, phase.Stop}, {575, 600, phase.Within},
	} {
		if got := check.Value[phase.Standing](t)(phase.PlateOnSystem(test.plate, test.nominal)); got != test.want {
			t.Errorf("%v on %v: %s, want %s", test.plate, test.nominal, got, test.want)
		}
	}
}

func TestConnectionHint(t *testing.T) {
	for x, want := range map[unit.Current]phase.Connection{
		1: phase.ConnectionPlain, 1.65: phase.ConnectionPlain, 1.75: phase.ConnectionDouble, 2.25: phase.ConnectionDouble,
		1.699: phase.ConnectionPlain, 1.701: phase.ConnectionDouble, 2.299: phase.ConnectionDouble, 2.301: phase.ConnectionPlain,
		0.5755: phase.ConnectionPlain, 0.5745: phase.ConnectionHalf, 0.4255: phase.ConnectionHalf, 0.4245: phase.ConnectionPlain,
	} {
		if got := check.Value[phase.Connection](t)(phase.ConnectionHint(x*6.4, 6.4)); got != want {
			t.Errorf("%v times the plate: %s, want %s", x, got, want)
		}
	}
}

func TestDeratingOverARange(t *testing.T) {
	for low := unit.Ratio(0); low <= 0.05; low += 0.0025 {
		for high := low; high <= 0.05; high += 0.0025 {
			value3 := func(u unit.Ratio) phase.Derating { return check.Value[phase.Derating](t)(phase.VoltageDerating(u)) }
			d := check.Value[phase.Derating](t)(phase.DeratingOver(low, (low+high)/2, high))
			if d.Low != value3(high).Low || d.High != value3(low).High || d.Low > d.Factor+1e-12 || d.Factor > d.High+1e-12 {
				t.Errorf("%v to %v: %+v", low, high, d)
			}
			h := check.Value[phase.Headroom](t)(phase.HeadroomLeft(0.8, d))
			check.Near(t, "headroom", h.Value+0.8, d.Factor, 1e-12)
			if h.Low > h.Value || h.Value > h.High {
				t.Errorf("%+v is out of order", h)
			}
		}
	}
	_, err := phase.DeratingOver(0.02, 0.01, 0.03)
	check.Broken(t, "low over value", err, "low", limit.OutOfRange)
	_, err = phase.DeratingOver(0.01, 0.02, 0.015)
	check.Broken(t, "high under value", err, "high", limit.OutOfRange)
	_, err = phase.DeratingOver(0.04, 0.045, 0.051)
	check.Broken(t, "may be too unbalanced", err, "high", limit.TooUnbalanced)
	_, err = phase.ExtraHeating(0.0502)
	check.Broken(t, "too unbalanced", err, "unbalance", limit.TooUnbalanced)
	_, err = phase.HeadroomLeft(0.5, phase.Derating{Factor: 0.9, Low: 0.95, High: 1})
	check.Broken(t, "derating out of order", err, "derating", limit.OutOfRange)
	_, err = phase.HeadroomLeft(0.5, phase.Derating{Factor: 1, Low: 0.95, High: 1.005})
	check.Broken(t, "derating over one", err, "derating", limit.OutOfRange)
}

func TestHeatingAndTorqueScale(t *testing.T) {
	one, two := check.Value[unit.Ratio](t)(phase.ExtraHeating(0.01)), check.Value[unit.Ratio](t)(phase.ExtraHeating(0.02))
	check.Near(t, "twice the unbalance, four times the heat", two, 4*one, 1e-12)
	ten, twenty := check.Value[unit.Ratio](t)(phase.InsulationLife(10)), check.Value[unit.Ratio](t)(phase.InsulationLife(20))
	check.Near(t, "twice 10 K", twenty, ten*ten, 1e-12)
	check.Near(t, "no hotter", check.Value[unit.Ratio](t)(phase.InsulationLife(0)), 1, 1e-15)
	check.Near(t, "torque", check.Value[unit.Ratio](t)(phase.TorqueShare(300, 100)), 9, 1e-12)
}
