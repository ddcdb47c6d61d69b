package raceway_test

import (
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

// Pipe threads: E0 and L2 as ASME B1.20.1 prints them (memory), E1 computed
// apart from its formula.
func TestThreads(t *testing.T) {
	for _, test := range []struct {
		size              raceway.TradeSize
		small, effective  float64
		gauge, hand, each float64
	}{
		{"1/2", 0.75843, 0.5337, 0.77843, 0.320, 14},
		{"3/4", 0.96768, 0.5457, 0.98887, 0.339, 14},
		{"1", 1.21363, 0.6828, 1.23863, 0.400, 11.5},
	} {
		thread := check.Value[raceway.Thread](t)(raceway.ThreadOf(test.size))
		check.Within(t, string(test.size)+", E0", thread.Small.In(unit.Inch), test.small, 0.0000051)
		check.Within(t, string(test.size)+", L2", thread.Effective.In(unit.Inch), test.effective, 0.00005)
		check.Within(t, string(test.size)+", E1", thread.Gauge.In(unit.Inch), test.gauge, 0.0000051)
		check.Within(t, string(test.size)+", L1", thread.HandTight.In(unit.Inch), test.hand, 1e-9)
		check.Within(t, string(test.size)+", threads", thread.PerInch, test.each, 0)
	}
}

// Figures of the code that no answer computes with, in SI by hand.
func TestFigures(t *testing.T) {
	check.Within(t, "secured within 12 in", raceway.SecuredWithin, 0.3048, 1e-12)
	check.Within(t, "supported every 4-1/2 ft", raceway.SupportSpacing, 1.3716, 1e-12)
	check.Within(t, "nipple, 24 in", raceway.NippleMost, 0.6096, 1e-12)
	check.Within(t, "ground path, 6 ft", raceway.PathLengthMost, 1.8288, 1e-12)
	check.Within(t, "drop of a branch, 3 %", raceway.DropBranch, 0.03, 1e-12)
	check.Within(t, "drop of both, 5 %", raceway.DropBoth, 0.05, 1e-12)
	check.Within(t, "copper at 75 °C", raceway.CopperAt75, 0.00323, 1e-12)
	check.Within(t, "aluminum at 75 °C", raceway.AluminumAt75, 0.00330, 1e-12)
	check.Within(t, "75 °C", raceway.PropertyTemperature.Celsius(), 75, 1e-9)
	check.Within(t, "30 °C", raceway.TableAmbient.Celsius(), 30, 1e-9)
	if raceway.MostRows != 50 || raceway.MostCount != 10_000 {
		t.Errorf("%d rows, %d of a kind", raceway.MostRows, raceway.MostCount)
	}
}

// Lists name everything once.
func TestLists(t *testing.T) {
	once := func(name string, n int, all ...string) {
		seen := map[string]bool{}
		for _, s := range all {
			if s == "" || seen[s] {
				t.Errorf("%s: %q is empty or named twice", name, s)
			}
			seen[s] = true
		}
		if len(all) != n {
			t.Errorf("%s: %d, want %d", name, len(all), n)
		}
	}
	once("editions", 3, strs(raceway.Editions())...)
	once("trade sizes", 7, strs(raceway.TradeSizes())...)
	once("conduits", 9, strs(raceway.Conduits())...)
	once("insulations", 19, strs(raceway.Insulations())...)
	once("wire sizes", 15, strs(raceway.WireSizes())...)
	once("materials", 3, strs(raceway.Materials())...)
	once("devices", 3, strs(raceway.Devices())...)
	once("items", 6, strs(raceway.Items())...)
	once("shapes", 5, strs(raceway.Shapes())...)
	once("ends", 5, strs(raceway.EndKinds())...)
	once("conditions", 12, strs(raceway.JointConditions())...)
	if raceway.DefaultEdition != "2023" || len(raceway.Columns()) != 3 || len(raceway.MetricWires()) != 15 {
		t.Error("another default edition, column or metric size")
	}
}

func strs[S ~string](all []S) []string {
	var s []string
	for _, x := range all {
		s = append(s, string(x))
	}
	return s
}
