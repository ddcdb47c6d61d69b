package phase_test

import (
	"math"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/phase"
	"roofside/calc/unit"
)

// Per cent and its tolerance as the sources give them.
func TestUnbalance(t *testing.T) {
	for _, test := range []struct {
		source        string
		a, b, c       unit.Voltage
		want, allowed float64
	}{
		{"Motor Systems Tip Sheet 7, page 1", 462, 463, 455, 1.1, 0.05},
		{"NEMA MG 1, 14.36, memory", 460, 467, 450, 1.96, 0.005},
		{"NEMA MG 1, older edition, memory", 220, 215, 210, 2.3, 0.05},
		{"by hand: 8/240", 240, 248, 232, 100.0 * 8 / 240, 1e-9},
		{"by hand: equal", 480, 480, 480, 0, 1e-12},
		{"by hand: one leg dead", 0, 173, 173, 100, 1e-9},
	} {
		for _, order := range [][3]unit.Voltage{{test.a, test.b, test.c}, {test.c, test.a, test.b}, {test.b, test.a, test.c}} {
			u, err := phase.Unbalance(order[0], order[1], order[2])
			if err != nil || math.Abs(float64(u)*100-test.want) > test.allowed {
				t.Errorf("%s, %v: %v %%, %v, want %v", test.source, order, float64(u)*100, err, test.want)
			}
		}
	}
	amps, err := phase.Unbalance[unit.Current](10.8, 10.0, 9.2)
	if err != nil || math.Abs(float64(amps)-0.08) > 1e-12 {
		t.Errorf("by hand, 0.8/10: %v, %v", amps, err)
	}
	k, err := phase.Unbalance[unit.Current](108, 100, 92)
	if err != nil || math.Abs(float64(k-amps)) > 1e-12 {
		t.Errorf("ten times the current: %v after %v, %v", k, amps, err)
	}
	_, err = phase.Unbalance[unit.Current](0, 0, 0)
	check.Broken(t, "dead", err, "", limit.AllZero)
	_, err = phase.Unbalance[unit.Voltage](480, -480, 480)
	check.Broken(t, "negative", err, "b", limit.Negative)
}

// NEMA MG 1, Figure 14-1, memory: per cent, factor, band as public copies read
// the graph.
func TestDeratingTable(t *testing.T) {
	for _, row := range [][4]float64{
		{0, 1, 1, 1}, {1, 1, 0.98, 1}, {2, 0.95, 0.93, 0.96}, {3, 0.88, 0.87, 0.90}, {4, 0.82, 0.80, 0.83}, {5, 0.75, 0.74, 0.77},
	} {
		d, err := phase.VoltageDerating(unit.Ratio(row[0] / 100))
		if err != nil || math.Abs(float64(d.Factor)-row[1]) > 1e-9 || math.Abs(float64(d.Low)-row[2]) > 1e-9 || math.Abs(float64(d.High)-row[3]) > 1e-9 {
			t.Errorf("%v %%: %+v, %v", row[0], d, err)
		}
	}
}

func TestDeratingBetweenRows(t *testing.T) {
	last := phase.Derating{Factor: 1, Low: 1, High: 1}
	for u := unit.Ratio(0); u <= phase.UnbalanceMost; u += 0.0005 {
		d, err := phase.VoltageDerating(u)
		if err != nil {
			t.Fatal(err)
		}
		const slack = 1e-12
		if d.Factor > last.Factor+slack || d.Low > last.Low+slack || d.High > last.High+slack {
			t.Errorf("%v: %+v rises from %+v", u, d, last)
		}
		if d.Low > d.Factor+slack || d.Factor > d.High+slack || d.High-d.Low > 0.0301 {
			t.Errorf("%v: %+v is no band around the factor", u, d)
		}
		last = d
	}
	if d, err := phase.VoltageDerating(phase.UnbalanceFree); err != nil || d.Factor != 1 {
		t.Errorf("at 1 %%: %v, %v", d, err)
	}
	mid, err := phase.VoltageDerating(0.025)
	if err != nil || math.Abs(float64(mid.Factor)-(0.95+0.88)/2) > 1e-12 {
		t.Errorf("halfway from 2 to 3 %%: %v, %v", mid, err)
	}
	_, err = phase.VoltageDerating(0.0501)
	check.Broken(t, "not to be run", err, "unbalance", limit.TooUnbalanced)
}
