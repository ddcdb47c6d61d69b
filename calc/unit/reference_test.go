package unit_test

import (
	"maps"
	"math"
	"strconv"
	"testing"

	"roofside/calc/internal/published"
	"roofside/calc/unit"
)

// Every unit, as GNU Units has it; the file says how its values were got.
func TestUnitsAreThoseOfAnotherProgram(t *testing.T) {
	rows, err := published.Rows("../../testdata/published/units.csv", "kind", "unit", "count", "have", "want", "value", "tolerance", "why")
	if err != nil {
		t.Fatal(err)
	}
	type name struct{ kind, unit string }
	known := map[name]unit.Unit{}
	for _, k := range unit.Kinds() {
		for _, u := range k.Units {
			known[name{k.Name, u.Symbol}] = u
		}
	}
	left := maps.Clone(known)
	for _, row := range rows {
		n, why := name{row[0], row[1]}, row[7]
		count, value, tolerance := float(t, row[2]), float(t, row[5]), float(t, row[6])
		u, ok := known[n]
		if !ok {
			t.Errorf("%v is no unit of the library", n)
			continue
		}
		ours := u.Base(count)
		if n.kind == unit.Speed(0).Kind().Name {
			ours = unit.Speed(ours).RadiansPerSecond() // kept in rpm, not in SI
		}
		apart := math.Abs(ours/value - 1)
		switch {
		case !(apart <= tolerance):
			t.Errorf("%v %s of %s is %.17g, of %s %.17g %s", count, n.unit, n.kind, ours, row[3], value, row[4])
		case why == "" && tolerance > rounding:
			t.Errorf("%s of %s may differ from %s by %g and nothing says why", n.unit, n.kind, row[3], tolerance)
		case why != "" && !(apart > tolerance/2):
			t.Errorf("%s of %s is said to differ from %s by %g and differs by %g", n.unit, n.kind, row[3], tolerance, apart)
		case why == "":
			delete(left, n)
		}
	}
	for n := range left {
		t.Errorf("%s of %s is compared with nothing", n.unit, n.kind)
	}
}

// rounding is how far two programs may be apart that both keep 53 bits.
const rounding = 1e-14

func float(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
