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

// roll builds the readings of a motor on three positions from what each line and
// each lead adds, the load of each position, and a meter's errors. Hookups as in
// the check cases: T1 on L1, then on L2, then on L3.
func roll(line, lead [3]float64, load [3]float64, off func() float64) []phase.Position {
	hookups := [3][3]int{{1, 2, 3}, {3, 1, 2}, {2, 3, 1}} // lead on L1, L2, L3
	var all []phase.Position
	for p, leads := range hookups {
		var at [3]unit.Current
		for l, t := range leads {
			at[l] = unit.Current(load[p] * (1 + line[l] + lead[t-1]) * (1 + off()))
		}
		all = append(all, phase.Position{L1: at[0], L2: at[1], L3: at[2]})
	}
	return all
}

var even = [3]float64{10, 10, 10}

func exact() float64 { return 0 }

func TestRollTellsSupplyFromMotor(t *testing.T) {
	none := [3]float64{}
	for _, test := range []struct {
		name       string
		line, lead [3]float64
		cause      phase.Cause
		leg        phase.Leg
		confidence phase.Confidence
	}{
		{"supply high on 2", [3]float64{-0.05, 0.1, -0.05}, none, phase.CauseSupply, 2, phase.Firm},
		{"supply low on 3", [3]float64{0.04, 0.04, -0.08}, none, phase.CauseSupply, 3, phase.Firm},
		{"lead high on 3", none, [3]float64{-0.05, -0.05, 0.1}, phase.CauseMotor, 3, phase.Firm},
		{"lead low on 1", none, [3]float64{-0.08, 0.04, 0.04}, phase.CauseMotor, 1, phase.Firm},
		{"both alike", [3]float64{0.12, -0.06, -0.06}, [3]float64{0.12, -0.06, -0.06}, phase.CauseMixed, 1, phase.Firm},
		{"both, barely", [3]float64{0.06, -0.03, -0.03}, [3]float64{0.06, -0.03, -0.03}, phase.CauseMixed, 1, phase.Likely},
		{"supply, a little motor", [3]float64{0.2, -0.1, -0.1}, [3]float64{0.04, -0.02, -0.02}, phase.CauseSupply, 1, phase.Firm},
		{"faint", [3]float64{0.035, -0.0175, -0.0175}, none, phase.CauseSupply, 1, phase.Likely},
	} {
		m := phase.Meter[unit.Current]{Share: 0.02}
		r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(test.line, test.lead, even, exact), m))
		leg := r.Line
		if test.cause == phase.CauseMotor {
			leg = r.Lead
		}
		if r.Cause != test.cause || leg != test.leg || r.Confidence != test.confidence || r.Reason != phase.ReasonNone {
			t.Errorf("%s: %+v", test.name, r)
		}
		fine := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(test.line, test.lead, even, exact), phase.Meter[unit.Current]{}))
		if fine.Cause != test.cause || fine.Confidence != phase.Firm {
			t.Errorf("%s, exact meter: %+v", test.name, fine)
		}
		if fine.Rest > 1e-12 {
			t.Errorf("%s: a rest of %v in what has none", test.name, fine.Rest)
		}
		check.Near(t, test.name+", supply", float64(fine.Supply), largest(test.line), 1e-9)
		check.Near(t, test.name+", motor", float64(fine.Motor), largest(test.lead), 1e-9)
	}
}

func largest(of [3]float64) float64 {
	return max(math.Abs(of[0]), math.Abs(of[1]), math.Abs(of[2]))
}

// Each side's share of what the other has, and of the load, at the edge.
func TestRollAtItsEdges(t *testing.T) {
	part := func(x float64) [3]float64 { return [3]float64{x, -x / 2, -x / 2} }
	for motor, want := range map[float64]phase.Cause{0.0498: phase.CauseSupply, 0.0502: phase.CauseMixed} { // half of 0.1
		r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(part(0.1), part(motor), even, exact), phase.Meter[unit.Current]{}))
		if r.Cause != want {
			t.Errorf("0.1 and %v: %+v", motor, r)
		}
	}
	for last, want := range map[float64]phase.Reason{9.508: phase.ReasonDrift, 9.512: phase.ReasonNone} { // 5 per cent of the mean
		r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(part(0.1), part(0), [3]float64{10, 10, last}, exact), phase.Meter[unit.Current]{}))
		if r.Reason != want {
			t.Errorf("a load of %v: %+v", last, r)
		}
	}
}

// What the meter is said to account for is what it can do to one deviation.
func TestRollKnowsItsMeter(t *testing.T) {
	m := phase.Meter[unit.Current]{Share: 0.0005, Floor: 0.001}
	at := roll([3]float64{0.1, -0.02, -0.08}, [3]float64{0.01, 0.02, -0.03}, even, exact)
	r := check.Value[phase.Roll](t)(phase.ClassifyRoll(at, m))
	most := 0.0
	for _, p := range at {
		x := [3]float64{float64(p.L1), float64(p.L2), float64(p.L3)}
		for n := range 8 {
			y := x
			for i := range y {
				y[i] += float64(n>>i&1*2-1) * (x[i]*float64(m.Share) + float64(m.Floor))
			}
			for i := range y {
				most = max(most, math.Abs(3*y[i]/(y[0]+y[1]+y[2])-3*x[i]/(x[0]+x[1]+x[2])))
			}
		}
	}
	check.Near(t, "meter", float64(r.Meter), most, 0.002)
}

func TestRollSaysWhyItCannotTell(t *testing.T) {
	supply := [3]float64{-0.05, 0.1, -0.05}
	for _, test := range []struct {
		name   string
		at     []phase.Position
		meter  phase.Meter[unit.Current]
		reason phase.Reason
	}{
		{"balanced", roll([3]float64{}, [3]float64{}, even, exact), phase.UsualClamp, phase.ReasonMeter},
		{"under the meter", roll([3]float64{0.02, -0.01, -0.01}, [3]float64{}, even, exact), phase.UsualClamp, phase.ReasonMeter},
		{"load fell", roll(supply, [3]float64{}, [3]float64{10, 10, 9.4}, exact), phase.UsualClamp, phase.ReasonDrift},
		{"lost", roll([3]float64{-0.97, 0.5, 0.47}, [3]float64{}, even, exact), phase.UsualClamp, phase.ReasonLost},
		{"neither line nor lead", []phase.Position{{L1: 12, L2: 9, L3: 9}, {L1: 9, L2: 9, L3: 12}, {L1: 9, L2: 12, L3: 9}}, phase.UsualClamp, phase.ReasonScattered},
	} {
		r := check.Value[phase.Roll](t)(phase.ClassifyRoll(test.at, test.meter))
		if r.Cause != phase.CauseUnjudged || r.Confidence != phase.Unsure || r.Reason != test.reason {
			t.Errorf("%s: %+v", test.name, r)
		}
	}
	r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(supply, [3]float64{}, [3]float64{10, 10, 9.8}, exact), phase.UsualClamp))
	if r.Cause != phase.CauseSupply {
		t.Errorf("a load 2 %% apart: %+v", r)
	}
	check.Near(t, "drift", r.Drift, 0.2/((10+10+9.8)/3), 1e-9)
}

// Whatever the meter's errors, a firm cause is the true one.
func TestFirmIsNeverWrong(t *testing.T) {
	random := rand.New(rand.NewPCG(43, 47))
	firm, seen := map[phase.Cause]int{}, map[phase.Confidence]int{}
	for n := range 20000 {
		share := 0.02 * random.Float64()
		off := func() float64 { return share * (2*random.Float64() - 1) }
		if n%2 == 0 { // all at their ends, the worst a meter can do
			off = func() float64 { return share * float64(1-2*random.IntN(2)) }
		}
		size := 0.3 * random.Float64() * random.Float64()
		part := [3]float64{size * (2*random.Float64() - 1), size * (2*random.Float64() - 1)}
		part[2] = -part[0] - part[1]
		line, lead, want := part, [3]float64{}, phase.CauseSupply
		if random.IntN(2) == 0 {
			line, lead, want = lead, line, phase.CauseMotor
		}
		m := phase.Meter[unit.Current]{Share: unit.Ratio(share / (1 - share))} // the reading's share, not the true value's
		r := check.Value[phase.Roll](t)(phase.ClassifyRoll(roll(line, lead, even, off), m))
		seen[r.Confidence]++
		for _, side := range []struct {
			cause      phase.Cause
			more, less unit.Ratio
			stays      int
		}{{phase.CauseSupply, r.Supply, r.Motor, r.OnLine}, {phase.CauseMotor, r.Motor, r.Supply, r.OnLead}} {
			if r.Cause == side.cause && (r.Confidence == phase.Firm) != (side.more-r.Meter > side.less+r.Meter && side.stays == 3) {
				t.Errorf("%+v is firm or not against its own evidence", r)
			}
		}
		if r.Confidence != phase.Firm {
			continue
		}
		firm[r.Cause]++
		if r.Cause != want {
			t.Errorf("%v, %v: %+v", line, lead, r)
		}
	}
	if firm[phase.CauseSupply] < 1000 || firm[phase.CauseMotor] < 1000 || seen[phase.Likely] < 300 || seen[phase.Unsure] < 300 {
		t.Errorf("firm %v, all %v", firm, seen)
	}
}

func TestRollFaults(t *testing.T) {
	for _, n := range []int{0, 2, 4} {
		_, err := phase.ClassifyRoll(make([]phase.Position, n), phase.UsualClamp)
		check.Broken(t, "positions", err, "positions", limit.NotThree)
	}
	at := roll([3]float64{}, [3]float64{}, even, exact)
	at[1] = phase.Position{}
	_, err := phase.ClassifyRoll(at, phase.UsualClamp)
	check.Broken(t, "dead position", err, "positions", limit.AllZero)
	at[1] = phase.Position{L1: 1, L2: -1, L3: 1}
	_, err = phase.ClassifyRoll(at, phase.UsualClamp)
	check.Broken(t, "below zero", err, "positions", limit.Negative)
}

// Every position is the first moved along: the motor's direction stays.
func TestLeadsMoveOneStep(t *testing.T) {
	for position, line := range []phase.Leg{phase.Leg1, phase.Leg2, phase.Leg3} {
		if phase.LeadOn(line, position) != phase.Leg1 {
			t.Errorf("T1 is not on line %d in position %d", line, position)
		}
		d, err := phase.DirectionOf(int(phase.LeadOn(1, position)), int(phase.LeadOn(2, position)), int(phase.LeadOn(3, position)))
		if err != nil || d != phase.SameWay {
			t.Errorf("position %d: %s, %v", position, d, err)
		}
	}
	for _, outside := range []phase.Leg{phase.LeadOn(0, 0), phase.LeadOn(4, 0), phase.LeadOn(1, 3), phase.LeadOn(1, -1)} {
		if outside != phase.NoLeg {
			t.Errorf("lead %d where there is none", outside)
		}
	}
}

func TestBeforeRoll(t *testing.T) {
	good := phase.Balance{Spread: phase.Spread{Value: 0.005}}
	bad := phase.Balance{Spread: phase.Spread{Value: 0.015}}
	amps := check.Value[phase.Balance](t)(phase.CurrentBalance(10.8, 10, 9.2, phase.UsualClamp, 0.8, 0.01))
	light := check.Value[phase.Balance](t)(phase.CurrentBalance(10.8, 10, 9.2, phase.UsualClamp, 0.3, 0.01))
	lost := check.Value[phase.Balance](t)(phase.CurrentBalance(0, 10, 10, phase.UsualClamp, 0.8, 0.01))
	quiet := check.Value[phase.Balance](t)(phase.CurrentBalance(10.1, 10, 9.9, phase.UsualClamp, 0.8, 0.01))
	far := check.Value[phase.Balance](t)(phase.CurrentBalance(15, 10, 9, phase.UsualClamp, 0.8, 0.01))
	small := check.Value[phase.Balance](t)(phase.CurrentBalance(10.4, 10, 9.6, phase.Meter[unit.Current]{}, 0.8, 0.01))
	for _, test := range []struct {
		proven      bool
		volts, amps phase.Balance
		want        phase.Before
	}{
		{true, good, amps, phase.BeforeNothing},
		{false, bad, lost, phase.BeforeRotation},
		{true, bad, lost, phase.BeforeVolts},
		{true, good, lost, phase.BeforePhase},
		{true, good, light, phase.BeforeLoad},
		{true, good, far, phase.BeforeStop},
		{true, good, quiet, phase.BeforeCause},
		{true, good, small, phase.BeforeCause},
	} {
		if got := phase.BeforeRoll(test.proven, test.volts, test.amps); got != test.want {
			t.Errorf("%+v: %s", test, got)
		}
	}
}
