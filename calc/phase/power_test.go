package phase_test

import (
	"math"
	"slices"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// NFPA 70, 2023 and 2008, 430.32: per cent of plate amps, and how each figure is known.
func TestOverloads(t *testing.T) {
	for class, want := range map[phase.OverloadClass]struct {
		trip, after    float64
		known, knownTo source.Known
	}{
		phase.OverloadService: {125, 140, source.LookedUp, source.LookedUp},
		phase.OverloadCool:    {125, 140, source.LookedUp, source.LookedUp},
		phase.OverloadOther:   {115, 130, source.LookedUp, source.LookedUp},
	} {
		o := check.Value[phase.Overload](t)(phase.OverloadOf(100, class))
		check.Near(t, string(class), float64(o.Trip), want.trip, 1e-12)
		check.Near(t, string(class)+" after a failure to start", float64(o.AfterFailure), want.after, 1e-12)
		if o.Dial != 100 || o.Known != want.known || o.AfterKnown != want.knownTo {
			t.Errorf("%s: %+v", class, o)
		}
	}
	for sf, want := range map[unit.Ratio]phase.OverloadClass{1: phase.OverloadOther, 1.14: phase.OverloadOther, 1.15: phase.OverloadService, 1.25: phase.OverloadService} {
		if got := check.Value[phase.OverloadClass](t)(phase.OverloadClassOf(sf)); got != want {
			t.Errorf("service factor %v: %s", sf, got)
		}
	}
	_, err := phase.OverloadOf(6.8, "hot")
	check.Broken(t, "no such class", err, "class", limit.NotTabulated)
	_, err = phase.OverloadClassOf(0.9)
	check.Broken(t, "service factor", err, "serviceFactor", limit.OutOfRange)
	if _, err := phase.OverloadClassOf(2); err != nil {
		t.Errorf("service factor 2: %v", err)
	}
	_, err = phase.OverloadClassOf(2.01)
	check.Broken(t, "service factor over 2", err, "serviceFactor", limit.OutOfRange)
	for table, want := range map[unit.Current]float64{9: 15.3, 9.05: 14.118, 20: 31.2, 20.1: 28.14} {
		check.Near(t, "protector", float64(check.Value[unit.Current](t)(phase.ProtectorTrip(table))), want, 1e-12)
	}
}

func TestPowersAgree(t *testing.T) {
	apparent := check.Value[unit.ApparentPower](t)
	three, one := apparent(phase.Apparent(460, 7.6)), apparent(phase.ApparentSinglePhase(460, 7.6))
	check.Near(t, "three phases and one", float64(three/one), math.Sqrt(3), 1e-12)
	check.Near(t, "twice the volts", apparent(phase.Apparent(920, 7.6)), 2*three, 1e-12)
	// Two lines with one open carry the same power at √3 of the current.
	open := check.Value[unit.Current](t)(phase.AmpsWithOpenLine(7.6))
	check.Near(t, "with a line open", apparent(phase.ApparentSinglePhase(460, open)), three, 1e-12)
	in := check.Value[unit.Power](t)(phase.Real(three, 0.8))
	exact := check.Value[phase.Estimate](t)(phase.ShaftByPower(three, 0.8, 0.9, 0))
	check.Near(t, "shaft", exact.Value, in*0.9, 1e-12)
	check.Near(t, "no range", exact.High, exact.Low, 1e-12)
	wide := check.Value[phase.Estimate](t)(phase.ShaftByPower(three, 0.8, 0.9, 0.3))
	check.Near(t, "read high by 30 %", wide.Low*1.3, wide.High, 1e-12)
	check.Near(t, "middle", wide.Value, (wide.Low+wide.High)/2, 1e-12)
	by := check.Value[phase.Estimate](t)(phase.ShaftByLoad(1000, 0.5, 0.7))
	if by != (phase.Estimate{Value: 600, Low: 500, High: 700}) {
		t.Errorf("by load: %+v", by)
	}
	_, err := phase.Real(three, 1.01)
	check.Broken(t, "power factor", err, "pf", limit.OutOfRange)
	_, err = phase.ShaftByPower(three, 0.8, 1.2, 0)
	check.Broken(t, "efficiency", err, "efficiency", limit.OutOfRange)
	_, err = phase.ShaftByPower(three, 0.8, 0.9, 1)
	check.Broken(t, "error", err, "read", limit.TooCoarse)
	_, err = phase.ShaftByLoad(1000, 0.7, 0.5)
	check.Broken(t, "out of order", err, "high", limit.OutOfRange)
}

// A permutation keeps the direction when it takes an even number of exchanges.
func TestDirectionIsTheParity(t *testing.T) {
	sound := 0
	for l1 := range 5 {
		for l2 := range 5 {
			for l3 := range 5 {
				d, err := phase.DirectionOf(l1, l2, l3)
				order := []int{l1, l2, l3}
				sorted := slices.Sorted(slices.Values(order))
				if !slices.Equal(sorted, []int{1, 2, 3}) {
					if err == nil {
						t.Errorf("%v accepted", order)
					}
					continue
				}
				sound++
				out := 0
				for i := range order {
					for j := range i {
						if order[j] > order[i] {
							out++
						}
					}
				}
				want := phase.SameWay
				if out%2 == 1 {
					want = phase.OtherWay
				}
				if err != nil || d != want {
					t.Errorf("%v: %s, %v, want %s", order, d, err, want)
				}
			}
		}
	}
	if sound != 6 {
		t.Errorf("%d orders", sound)
	}
	_, err := phase.DirectionOf(1, 1, 2)
	check.Broken(t, "one lead on two lines", err, "l2", limit.OutOfRange)
	_, err = phase.DirectionOf(1, 2, 2)
	check.Broken(t, "one lead on two lines", err, "l3", limit.OutOfRange)
}

func TestEachSupplyHasItsChecks(t *testing.T) {
	const yes, no, each, output, input = phase.UseYes, phase.UseNo, phase.UseEach, phase.UseOutput, phase.UseInput
	supplies := []phase.Supply{phase.ThreePhase, phase.TwoSpeed, phase.Inverter, phase.SinglePhase, phase.Direct}
	want := map[phase.Check][]phase.Use{
		phase.CheckPlateVolts:    {yes, each, input, yes, yes},
		phase.CheckVoltUnbalance: {yes, each, input, no, no},
		phase.CheckRotation:      {yes, each, yes, yes, yes},
		phase.CheckLostPhase:     {yes, each, output, no, no},
		phase.CheckPlateAmps:     {yes, each, output, yes, yes},
		phase.CheckAmpUnbalance:  {yes, each, output, no, no},
		phase.CheckRoll:          {yes, each, no, no, no},
		phase.CheckLoadFromAmps:  {yes, each, no, no, no},
	}
	if len(want) != len(phase.Checks()) {
		t.Errorf("%d checks", len(phase.Checks()))
	}
	for _, c := range phase.Checks() {
		for i, s := range supplies {
			if got := check.Value[phase.Use](t)(phase.CheckUse(c, s)); got != want[c][i] {
				t.Errorf("%s on %s: %s, want %s", c, s, got, want[c][i])
			}
		}
	}
	for s, swap := range map[phase.Supply]phase.Swap{
		phase.ThreePhase: phase.SwapTwoLines, phase.SinglePhase: phase.SwapStartingLeads, phase.Inverter: phase.SwapDriveOutput,
		phase.TwoSpeed: phase.SwapEachSpeed, phase.Direct: phase.SwapByMaker,
	} {
		if got := check.Value[phase.Swap](t)(phase.ReversedBy(s)); got != swap {
			t.Errorf("%s: %s", s, got)
		}
	}
	_, err := phase.CheckUse("smell", phase.ThreePhase)
	check.Broken(t, "no such check", err, "check", limit.NotTabulated)
	_, err = phase.CheckUse(phase.CheckRoll, "steam")
	check.Broken(t, "no such supply", err, "supply", limit.NotTabulated)
}
