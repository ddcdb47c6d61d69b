package raceway_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

func rows(all ...raceway.Row) []raceway.Row { return all }

func circuit(n int, size raceway.WireSize, insulation raceway.Insulation) raceway.Row {
	return raceway.Row{Size: size, Insulation: insulation, Count: n, Role: raceway.Circuit}
}

func ground(size raceway.WireSize, insulation raceway.Insulation) raceway.Row {
	return raceway.Row{Size: size, Insulation: insulation, Count: 1, Role: raceway.Ground}
}

func run(conduit raceway.Conduit, size raceway.TradeSize) raceway.Raceway {
	return raceway.Raceway{Conduit: conduit, Size: size, Use: raceway.Run}
}

func TestFillRefuses(t *testing.T) {
	emt := run(raceway.EMT, "1/2")
	ok := circuit(3, "12", raceway.THHN)
	many := make([]raceway.Row, raceway.MostRows+1)
	for i := range many {
		many[i] = circuit(1, "14", raceway.THHN)
	}
	for _, test := range []struct {
		name      string
		raceway   raceway.Raceway
		rows      []raceway.Row
		parameter string
		rule      limit.Rule
		row       int
	}{
		{"trade size", run(raceway.EMT, "5/8"), rows(ok), "Size", limit.NotTabulated, -1},
		{"size of another type", run(raceway.EMT, "3/8"), rows(ok), "Size", limit.NotTabulated, -1},
		{"conduit", run("ENT", "1/2"), rows(ok), "Conduit", limit.NotTabulated, -1},
		{"use", raceway.Raceway{Conduit: raceway.EMT, Size: "1/2"}, rows(ok), "Use", limit.NotTabulated, -1},
		{"no conductor", emt, nil, "rows", raceway.NoConductor, -1},
		{"rows", emt, many, "rows", raceway.TooMany, -1},
		{"no count", emt, rows(ok, circuit(0, "12", raceway.THHN)), "Count", limit.NotPositive, 1},
		{"negative count", emt, rows(circuit(-3, "12", raceway.THHN)), "Count", limit.NotPositive, 0},
		{"huge count", emt, rows(circuit(raceway.MostCount+1, "12", raceway.THHN)), "Count", raceway.TooMany, 0},
		{"wire size", emt, rows(ok, ok, circuit(1, "13", raceway.THHN)), "Size", limit.NotTabulated, 2},
		{"insulation without the size", emt, rows(circuit(1, "18", raceway.XHHW)), "Size", limit.NotTabulated, 0},
		{"insulation", emt, rows(circuit(1, "12", "MTW")), "Insulation", limit.NotTabulated, 0},
		{"unmarked, its diameter not measured", emt, rows(circuit(1, "12", raceway.Unmarked)), "Diameter", limit.NotPositive, 0},
		{"unmarked, wider than any", emt, rows(raceway.Row{Size: "12", Insulation: raceway.Unmarked, Count: 1, Role: raceway.Circuit, Diameter: 4.1 * unit.Inch}), "Diameter", limit.OutOfRange, 0},
		{"unmarked, of no such size", emt, rows(circuit(1, "13", raceway.Unmarked)), "Size", limit.NotTabulated, 0},
		{"solid of a size not drawn", emt, rows(ground("6", raceway.BareSolid)), "Insulation", limit.NotTabulated, 0},
		{"role", emt, rows(raceway.Row{Size: "12", Insulation: raceway.THHN, Count: 1}), "Role", limit.NotTabulated, 0},
		{"fittings not told", run(raceway.FMC, "3/8"), rows(ok), "Fittings", limit.NotTabulated, -1},
		{"3/8, two sizes", run(raceway.LFMC, "3/8"), rows(ok, circuit(1, "14", raceway.THHN)), "rows", raceway.MixedSizes, -1},
		{"3/8, two insulations", run(raceway.LFMC, "3/8"), rows(ok, circuit(1, "12", raceway.XHHW)), "rows", raceway.MixedSizes, -1},
		{"3/8, ground of another size", run(raceway.LFMC, "3/8"), rows(ok, ground("14", raceway.Bare)), "rows", raceway.MixedSizes, -1},
		{"3/8, insulation not in its table", run(raceway.LFMC, "3/8"), rows(circuit(1, "14", raceway.RHW)), "Insulation", limit.NotTabulated, -1},
		{"3/8, ground alone", run(raceway.LFMC, "3/8"), rows(ground("14", raceway.Bare)), "rows", raceway.NoConductor, -1},
	} {
		f, err := raceway.Fill(test.raceway, test.rows)
		check.Broken(t, test.name, err, test.parameter, test.rule)
		if f != (raceway.Filling{}) {
			t.Errorf("%s: %+v beside the error", test.name, f)
		}
		var at *raceway.RowError
		if errors.As(err, &at) != (test.row >= 0) || at != nil && at.Row != test.row {
			t.Errorf("%s: %v, want row %d", test.name, err, test.row)
		}
	}
}

// By hand from the printed areas: the limit goes by the number of conductors,
// grounds included; conductors of one area are counted.
func TestFillByHand(t *testing.T) {
	for _, test := range []struct {
		name    string
		raceway raceway.Raceway
		rows    []raceway.Row
		area    float64 // in²
		limit   unit.Ratio
		rule    raceway.FillRule
		fits    bool
	}{
		{"one alone, 0.0824 of 0.161", run(raceway.EMT, "1/2"), rows(circuit(1, "4", raceway.THHN)), 0.0824, 0.53, raceway.ByCount, true},
		{"two unlike, 0.0824 + 0.0097 of 0.094", run(raceway.EMT, "1/2"), rows(circuit(1, "4", raceway.THHN), ground("14", raceway.THHN)), 0.0921, 0.31, raceway.ByArea, true},
		{"two unlike, 0.0824 + 0.0133 of 0.094", run(raceway.EMT, "1/2"), rows(circuit(1, "4", raceway.THHN), ground("12", raceway.THHN)), 0.0957, 0.31, raceway.ByArea, false},
		{"four may fill more, 0.1151 of 0.122", run(raceway.EMT, "1/2"), rows(circuit(1, "4", raceway.THHN), circuit(1, "12", raceway.THHN), ground("14", raceway.THHN), ground("14", raceway.THHN)), 0.1151, 0.40, raceway.ByArea, true},
		{"the ground makes three of two", run(raceway.EMT, "1/2"), rows(circuit(2, "6", raceway.THHN), ground("10", raceway.THHN)), 0.1225, 0.40, raceway.ByArea, false},
		{"one group, two insulations, counted", run(raceway.EMT, "1/2"), rows(circuit(8, "12", raceway.THHN), circuit(1, "12", raceway.THWN2)), 0.1197, 0.40, raceway.ByCount, true},
		{"ten of nine", run(raceway.EMT, "1/2"), rows(circuit(10, "12", raceway.THHN)), 0.133, 0.40, raceway.ByCount, false},
		{"nipple, 13 of 13.68", raceway.Raceway{Conduit: raceway.EMT, Size: "1/2", Use: raceway.Nipple}, rows(circuit(13, "12", raceway.THHN)), 0.1729, 0.60, raceway.ByCount, true},
		{"nipple, 14 of 13.68", raceway.Raceway{Conduit: raceway.EMT, Size: "1/2", Use: raceway.Nipple}, rows(circuit(14, "12", raceway.THHN)), 0.1862, 0.60, raceway.ByCount, false},
		{"unmarked by its diameter, 3 · π/4 · 0.15² + 0.0133", run(raceway.EMT, "1/2"), rows(raceway.Row{Size: "12", Insulation: raceway.Unmarked, Count: 3, Role: raceway.Circuit, Diameter: 0.15 * unit.Inch}, ground("12", raceway.THHN)), 0.066314376029, 0.40, raceway.ByArea, true},
		{"nipple for one", raceway.Raceway{Conduit: raceway.EMT, Size: "1/2", Use: raceway.Nipple}, rows(circuit(1, "2", raceway.THHN)), 0.1158, 0.60, raceway.ByCount, true},
	} {
		f, err := raceway.Fill(test.raceway, test.rows)
		if err != nil {
			t.Errorf("%s: %v", test.name, err)
			continue
		}
		check.Within(t, test.name+", area", f.Area.In(unit.SquareInch), test.area, 1e-9)
		check.Within(t, test.name+", limit", f.Limit, test.limit, 1e-12)
		check.Within(t, test.name+", fill", f.Fill, unit.Ratio(f.Area/f.Inside), 1e-12)
		if f.Rule != test.rule || f.Fits != test.fits {
			t.Errorf("%s: %+v", test.name, f)
		}
	}
	// Diameters of size 8 in Table 8.
	for insulation, diameter := range map[raceway.Insulation]float64{raceway.Bare: 0.146, raceway.BareSolid: 0.128} {
		c, err := raceway.ConductorOf("8", insulation)
		if err != nil {
			t.Fatal(err)
		}
		check.Within(t, string(insulation), c.Area.In(unit.SquareInch), math.Pi/4*diameter*diameter, 1e-9)
	}
}

// Next to the decimal of 0.8 the two printings of areas do not agree.
func TestEdgeIsTold(t *testing.T) {
	for n, edge := range map[int]bool{61: false, 62: true, 63: false} {
		f, err := raceway.Fill(run(raceway.EMT, "1-1/4"), rows(circuit(n, "14", raceway.THHN)))
		if err != nil || f.Edge != edge || f.Fits != (n <= 61) {
			t.Errorf("%d of size 14: %+v, %v", n, f, err)
		}
	}
	// Printed as 40 % is 0.122 in², while 40 % of the printed 0.304 in² is 0.1216 in².
	f, err := raceway.Fill(run(raceway.EMT, "1/2"), rows(circuit(1, "6", raceway.THHN), circuit(1, "8", raceway.THHN), ground("10", raceway.THHN), ground("12", raceway.THHN)))
	if err != nil || !f.Fits || !f.Edge {
		t.Errorf("0.1217 in² of 0.122 or 0.1216: %+v, %v", f, err)
	}
}

func TestSmallFlexibleFill(t *testing.T) {
	inside := raceway.Raceway{Conduit: raceway.FMC, Size: "3/8", Use: raceway.Run, Fittings: raceway.FittingsInside}
	for name, test := range map[string]struct {
		rows []raceway.Row
		fits bool
	}{
		"three":                  {rows(circuit(3, "14", raceway.THHN)), true},
		"and a ground besides":   {rows(circuit(3, "14", raceway.THHN), ground("14", raceway.Bare)), true},
		"two grounds":            {rows(circuit(3, "14", raceway.THHN), ground("14", raceway.Bare), ground("14", raceway.THHN)), false},
		"two and two grounds":    {rows(circuit(2, "14", raceway.THHN), ground("14", raceway.Bare), ground("14", raceway.THHN)), true},
		"four":                   {rows(circuit(4, "14", raceway.THHN)), false},
		"a size not in it":       {rows(circuit(1, "8", raceway.THHN)), false},
		"ground before circuits": {rows(ground("14", raceway.Bare), circuit(3, "14", raceway.THHN)), true},
	} {
		f, err := raceway.Fill(inside, test.rows)
		if err != nil || f.Rule != raceway.BySmall || f.Fits != test.fits {
			t.Errorf("%s: %+v, %v", name, f, err)
		}
	}
	// Nonmetallic conduit of that size goes by area: 8, not 4.
	f, err := raceway.Fill(run(raceway.LFNCB, "3/8"), rows(circuit(8, "14", raceway.THHN)))
	if err != nil || f.Rule != raceway.ByCount || !f.Fits {
		t.Errorf("LFNC-B: %+v, %v", f, err)
	}
}

// bundles runs f over many sets of rows.
func bundles(f func(all []raceway.Row)) {
	random := rand.New(rand.NewPCG(3, 5))
	sizes, insulations := raceway.WireSizes()[2:11], []raceway.Insulation{raceway.THHN, raceway.XHHW2, raceway.TW, raceway.RHW}
	for range 500 {
		var all []raceway.Row
		for range 1 + random.IntN(3) {
			all = append(all, circuit(1+random.IntN(6), sizes[random.IntN(len(sizes))], insulations[random.IntN(len(insulations))]))
		}
		f(all)
	}
}

// The smallest size fits, the next below it does not, and the search over every
// type gives what the search of each gives.
func TestSmallestIsSmallest(t *testing.T) {
	sizes := raceway.TradeSizes()[1:]
	found := 0
	bundles(func(all []raceway.Row) {
		each, err := raceway.SmallestOfEach(raceway.Run, all)
		var want []raceway.Choice
		for _, c := range raceway.Conduits() {
			choice, err := raceway.Smallest(c, raceway.Run, all)
			first := -1
			for i, size := range sizes {
				f := check.Value[raceway.Filling](t)(raceway.Fill(run(c, size), all))
				if f.Fits && first < 0 {
					first = i
				}
				if first >= 0 && !f.Fits {
					t.Errorf("%v: fits %s %s, and not %s", all, c, sizes[first], size)
				}
			}
			if first < 0 {
				check.Broken(t, "too much for any", err, "rows", raceway.NoSizeFits)
				continue
			}
			if err != nil || choice.Size != sizes[first] || choice.Conduit != c || !choice.Filling.Fits {
				t.Errorf("%v in %s: %+v, %v, want %s", all, c, choice, err, sizes[first])
			}
			want = append(want, choice)
			found++
		}
		if len(want) == 0 {
			check.Broken(t, "too much for every type", err, "rows", raceway.NoSizeFits)
			return
		}
		if err != nil || len(each) != len(want) {
			t.Fatalf("%v: %v, %v, want %v", all, each, err, want)
		}
		for i := range want {
			if each[i] != want[i] {
				t.Errorf("%v: %v, want %v", all, each[i], want[i])
			}
		}
	})
	if found < 1000 {
		t.Errorf("only %d fits", found)
	}
	_, err := raceway.Smallest("ENT", raceway.Run, rows(circuit(1, "14", raceway.THHN)))
	check.Broken(t, "no such conduit", err, "conduit", limit.NotTabulated)
	_, err = raceway.Smallest(raceway.EMT, "duct", rows(circuit(1, "14", raceway.THHN)))
	check.Broken(t, "no such use", err, "use", limit.NotTabulated)
	_, err = raceway.SmallestOfEach("duct", rows(circuit(1, "14", raceway.THHN)))
	check.Broken(t, "no such use of any", err, "use", limit.NotTabulated)
	_, err = raceway.SmallestOfEach(raceway.Run, nil)
	check.Broken(t, "nothing to hold", err, "rows", raceway.NoConductor)
}

// As many more as there is room for fit, and one more does not.
func TestRoomIsAllThereIs(t *testing.T) {
	some := 0
	bundles(func(all []raceway.Row) {
		r := run(raceway.EMT, "1-1/4")
		n := check.Value[int](t)(raceway.Room(r, all, "12", raceway.THHN, raceway.Ground))
		with := func(n int) bool {
			more := raceway.Row{Size: "12", Insulation: raceway.THHN, Count: n, Role: raceway.Ground}
			return check.Value[raceway.Filling](t)(raceway.Fill(r, append(rows(all...), more))).Fits
		}
		if n > 0 {
			some++
			if !with(n) {
				t.Errorf("%v: %d more do not fit", all, n)
			}
		}
		if with(n + 1) {
			t.Errorf("%v: more than %d more fit", all, n)
		}
	})
	if some < 100 {
		t.Errorf("room in %d only", some)
	}
	for name, test := range map[string]struct {
		raceway raceway.Raceway
		rows    []raceway.Row
		want    int
	}{
		"empty, as Annex C":          {run(raceway.EMT, "1/2"), nil, 9},
		"full":                       {run(raceway.EMT, "1/2"), rows(circuit(9, "12", raceway.THHN)), 0},
		"overfull":                   {run(raceway.EMT, "1/2"), rows(circuit(20, "12", raceway.THHN)), 0},
		"3/8: three outside, ground": {run(raceway.LFMC, "3/8"), rows(ground("12", raceway.Bare)), 3},
	} {
		n, err := raceway.Room(test.raceway, test.rows, "12", raceway.THHN, raceway.Circuit)
		if err != nil || n != test.want {
			t.Errorf("%s: room for %d, %v, want %d", name, n, err, test.want)
		}
	}
	_, err := raceway.Room(run(raceway.EMT, "1/2"), nil, "12", raceway.THHN, "")
	check.Broken(t, "role", err, "role", limit.NotTabulated)
	_, err = raceway.Room(run(raceway.EMT, "1/2"), nil, "12", "MTW", raceway.Circuit)
	check.Broken(t, "insulation", err, "insulation", limit.NotTabulated)
}

func TestUseAndLimit(t *testing.T) {
	for inches, want := range map[unit.Length]raceway.Use{1: raceway.Nipple, 24: raceway.Nipple, 24.01: raceway.Run, 120: raceway.Run} {
		if use, err := raceway.UseOf(inches * unit.Inch); err != nil || use != want {
			t.Errorf("%v in: %s, %v", inches, use, err)
		}
	}
	for n, want := range map[int]unit.Ratio{1: 0.53, 2: 0.31, 3: 0.40, 4: 0.40, 10_000: 0.40} {
		if p, err := raceway.FillLimit(n, raceway.Run); err != nil || math.Abs(float64(p-want)) > 1e-12 {
			t.Errorf("%d: %v, %v", n, p, err)
		}
		if p, err := raceway.FillLimit(n, raceway.Nipple); err != nil || math.Abs(float64(p-0.60)) > 1e-12 {
			t.Errorf("%d in a nipple: %v, %v", n, p, err)
		}
	}
	for q, want := range map[float64]int{0: 0, 0.79: 0, 0.8: 1, 1: 1, 2.7999: 2, 2.8: 3, 2.9999999999: 3, 10_000: 10_000} {
		if n, err := raceway.RoundCount(q); err != nil || n != want {
			t.Errorf("%v: %d, %v", q, n, err)
		}
	}
}

func TestJamZone(t *testing.T) {
	for inside, want := range map[unit.Length][2]bool{
		2.60: {false, false}, 2.70: {false, true}, 2.80: {true, true}, 3.00: {true, true}, 3.10: {true, false}, 3.20: {true, false}, 3.21: {false, false},
	} {
		j, err := raceway.JamRatio(inside*unit.Inch, 1*unit.Inch)
		if err != nil || j.PlainLikely != want[0] || j.OvalLikely != want[1] {
			t.Errorf("%v: %+v, %v", inside, j, err)
		}
	}
	_, err := raceway.JamRatio(1, 1.1)
	check.Broken(t, "wider than the raceway", err, "conductor", limit.OutOfRange)
}

func TestSizesGoBothWays(t *testing.T) {
	for _, size := range append(raceway.TradeSizes(), "2-1/2", "3", "3-1/2", "4", "5", "6") {
		n := check.Value[int](t)(raceway.Designator(size))
		if back, err := raceway.SizeOf(n); err != nil || back != size {
			t.Errorf("%s is %d is %s, %v", size, n, back, err)
		}
	}
	_, err := raceway.Designator("5/8")
	check.Broken(t, "size", err, "size", limit.NotTabulated)
	_, err = raceway.SizeOf(17)
	check.Broken(t, "designator", err, "designator", limit.NotTabulated)
}
