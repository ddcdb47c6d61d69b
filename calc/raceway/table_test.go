package raceway

import (
	"fmt"
	"io/fs"
	"math"
	"slices"
	"strings"
	"testing"

	"roofside/calc/unit"
)

const good = "# source: a\n# edition: b\n# known: c\nx,y\n1,2\n"

// parsed is what a table's text is read as.
func parsed(text string) (rows [][2]float64, err error) {
	err = parse(text, "x,y", func(r *record) { rows = append(rows, [2]float64{r.number("x"), r.number("y")}) })
	return rows, err
}

func TestParse(t *testing.T) {
	rows, err := parsed(good)
	if err != nil || fmt.Sprint(rows) != "[[1 2]]" {
		t.Error(rows, err)
	}
	for name, text := range map[string]string{
		"no source":       strings.Replace(good, "# source: a\n", "", 1),
		"no edition":      strings.Replace(good, "# edition: b\n", "", 1),
		"empty known":     strings.Replace(good, "known: c", "known: ", 1),
		"other columns":   strings.Replace(good, "x,y", "y,x", 1),
		"column more":     strings.Replace(good, "x,y", "x,y,z", 1),
		"cell more":       strings.Replace(good, "1,2", "1,2,3", 1),
		"cell less":       strings.Replace(good, "1,2", "1", 1),
		"no rows":         strings.Replace(good, "1,2\n", "", 1),
		"no number":       strings.Replace(good, "1,2", "1,two", 1),
		"empty number":    strings.Replace(good, "1,2", "1,", 1),
		"negative number": strings.Replace(good, "1,2", "1,-2", 1),
		"not a number":    strings.Replace(good, "1,2", "1,NaN", 1),
		"infinite":        strings.Replace(good, "1,2", "1,Inf", 1),
		"spaced number":   strings.Replace(good, "1,2", "1, 2", 1),
		"open quote":      strings.Replace(good, "1,2", `1,"2`, 1),
	} {
		if rows, err := parsed(text); err == nil {
			t.Errorf("%s: read as %v", name, rows)
		}
	}
	for name, row := range map[string]func(*record) string{
		"empty text":       func(r *record) string { return r.text("y") },
		"whole":            func(r *record) string { r.whole("x"); return "" },
		"way of knowing":   func(r *record) string { return string(r.known("x")) },
		"no such column":   func(r *record) string { return r.cell("z") },
		"optional garbled": func(r *record) string { r.optional("x"); return "" },
	} {
		if err := parse("# source: a\n# edition: b\n# known: c\nx,y\n1.x,\n", "x,y", func(r *record) { row(r) }); err == nil {
			t.Errorf("%s: read", name)
		}
	}
}

// Every file is read by a table, and has as many rows as were typed.
func TestTablesAreWhole(t *testing.T) {
	counts := map[string]int{
		"designator": len(designations()), "raceway": len(bores()), "insulation": len(jackets()), "conductor": len(coateds()),
		"fill": len(fills()), "small": len(smallRows()), "property": len(properties()), "impedance": len(impedanceRows()),
		"ampacity": len(ampacityRows()), "ambient": len(ambients()), "adjustment": len(adjustments()), "rooftop": len(rooftops()),
		"current1": len(singles()), "current3": len(threes()), "device": len(deviceRows()), "rating": len(ratingRows()),
		"smallconductor": len(smallConductors()), "ground": len(groundRows()), "box": len(boxRows()), "allowance": len(allowances()),
		"thread": len(threads()), "knockout": len(holes()), "outside": len(outsides()), "metric": len(metricWires()),
	}
	want := map[string]int{
		"designator": 13, "raceway": 58, "insulation": 16, "conductor": 67, "fill": 4, "small": 5, "property": 21, "impedance": 13,
		"ampacity": 15, "ambient": 16, "adjustment": 7, "rooftop": 7, "current1": 12, "current3": 15, "device": 6, "rating": 42,
		"smallconductor": 10, "ground": 19, "box": 24, "allowance": 7, "thread": 9, "knockout": 6, "outside": 6, "metric": 15,
	}
	names, err := fs.Glob(files, "tables/*.csv")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range names {
		name := strings.TrimSuffix(strings.TrimPrefix(file, "tables/"), ".csv")
		if counts[name] == 0 || counts[name] != want[name] {
			t.Errorf("%s has %d rows, want %d", name, counts[name], want[name])
		}
		delete(want, name)
	}
	for name := range want {
		t.Errorf("%s has no file", name)
	}
}

// rises reports whether numbers rise, none standing still.
func rises(t *testing.T, what string, numbers []float64) {
	t.Helper()
	for i := 1; i < len(numbers); i++ {
		if !(numbers[i] > numbers[i-1]) {
			t.Errorf("%s: %v after %v", what, numbers[i], numbers[i-1])
		}
	}
}

// column returns a number of every row.
func column[T any](rows []T, f func(T) float64) []float64 {
	var all []float64
	for _, r := range rows {
		all = append(all, f(r))
	}
	return all
}

// half is the rounding of a figure printed to a number of decimals.
func half(decimals int) float64 { return 0.5*math.Pow(10, -float64(decimals)) + 1e-9 }

// The areas of Table 4 are those of a circle, and the parts are its per cents,
// as far as the rounding of diameter and areas lets that be told.
func TestBoresAreCircles(t *testing.T) {
	last := map[Conduit]float64{}
	for _, b := range bores() {
		d, a := b.Inside.In(unit.Inch), b.Area.In(unit.SquareInch)
		name := string(b.Conduit) + " " + string(b.Size)
		if slack := math.Pi/2*d*half(3) + half(3); math.Abs(math.Pi/4*d*d-a) > slack {
			t.Errorf("%s: a circle of %v in has %v in², not %v", name, d, math.Pi/4*d*d, a)
		}
		for part, got := range map[float64]unit.Area{0.53: b.One, 0.31: b.Two, 0.40: b.OverTwo, 0.60: b.Nipple} {
			if slack := part*half(3) + half(3); math.Abs(part*a-got.In(unit.SquareInch)) > slack {
				t.Errorf("%s: %v of %v in² is not %v", name, part, a, got.In(unit.SquareInch))
			}
		}
		// the millimeter columns are rounded apart, from a diameter of their own
		if mm := b.metric.In(unit.SquareMillimeter); math.Abs(mm-b.Area.In(unit.SquareMillimeter)) > 0.007*mm+1 {
			t.Errorf("%s: %v mm² beside %v in²", name, mm, a)
		}
		if mm := b.metricOverTwo.In(unit.SquareMillimeter); math.Abs(mm-0.4*b.metric.In(unit.SquareMillimeter)) > 0.2+half(0) {
			t.Errorf("%s: %v mm² is not 40 %%", name, mm)
		}
		if d <= last[b.Conduit] {
			t.Errorf("%s is no larger than the size before", name)
		}
		last[b.Conduit] = d
		if n, err := Designator(b.Size); err != nil || n != b.Designator {
			t.Errorf("%s: designator %d and %d, %v", name, b.Designator, n, err)
		}
		if b.Conduit.rank() < 0 || b.Size.rank() < 0 {
			t.Errorf("%s is in no list", name)
		}
	}
	for _, c := range Conduits() {
		if last[c] == 0 {
			t.Errorf("%s has no size", c)
		}
	}
}

func TestConductorsAreCircles(t *testing.T) {
	last := map[string]float64{}
	for _, c := range coateds() {
		d, a := c.Diameter.In(unit.Inch), c.Area.In(unit.SquareInch)
		if slack := math.Pi/2*d*half(3) + half(4); math.Abs(math.Pi/4*d*d-a) > slack {
			t.Errorf("%s %s: a circle of %v in has %v in², not %v", c.group, c.Size, d, math.Pi/4*d*d, a)
		}
		if d <= last[c.group] {
			t.Errorf("%s %s is no larger than the size before", c.group, c.Size)
		}
		last[c.group] = d
	}
	for _, j := range jackets() {
		if last[j.group] == 0 {
			t.Errorf("%s has no areas", j.insulation)
		}
	}
	for _, i := range Insulations() {
		if _, ok := jacketOf()[i]; !ok && i != Bare && i != BareSolid && i != Unmarked {
			t.Errorf("%s is in no table", i)
		}
	}
}

// Table 8 against the gauge's definition and against itself.
func TestProperties(t *testing.T) {
	for _, p := range properties() {
		name := string(p.Size) + " " + string(p.Build)
		a, err := GaugeArea(p.Size)
		if err != nil || math.Abs(float64(p.Area/a)-1) > 0.003 { // 18 is 0.25 % off
			t.Errorf("%s: %v cmil, by definition %v, %v", name, p.Area.In(unit.CircularMil), a.In(unit.CircularMil), err)
		}
		d, err := GaugeDiameter(p.Size)
		if err != nil || p.Build == Solid && math.Abs(float64(p.Diameter-d)) > half(3)*float64(unit.Inch) || p.Build == Stranded && p.Diameter < d {
			t.Errorf("%s: %v in over a wire of %v in, %v", name, p.Diameter.In(unit.Inch), d.In(unit.Inch), err)
		}
		// one copper, one coated copper, one aluminum, in figures of three digits
		for metal, k := range map[unit.LineImpedance][2]float64{p.Copper: {12.5, 13.0}, p.CoatedCopper: {12.9, 13.7}, p.Aluminum: {20.7, 21.3}} {
			if got := metal.In(unit.OhmPerThousandFeet) / 1000 * p.Area.In(unit.CircularMil); got < k[0] || got > k[1] {
				t.Errorf("%s: K %v", name, got)
			}
		}
	}
}

// Table 9's resistances are Table 8's of stranded wire to two figures and some
// skin effect; effective impedance follows from resistance and reactance save
// where the printing's own figures were finer.
func TestImpedances(t *testing.T) {
	off := 0
	for _, row := range impedanceRows() {
		p, err := PropertyOf(row.size, Stranded)
		if err != nil {
			t.Fatal(err)
		}
		for i := range row.copper {
			for got, dc := range map[unit.LineImpedance]unit.LineImpedance{row.copper[i]: p.Copper, row.aluminum[i]: p.Aluminum} {
				if q := float64(got / dc); got != 0 && (q < 0.94 || q > 1.12) {
					t.Errorf("%s: %v against %v of direct current", row.size, got, dc)
				}
			}
			x := row.other
			if i == 2 {
				x = row.steel
			}
			z := 0.85*row.copper[i] + unit.LineImpedance(math.Sqrt(1-0.85*0.85))*x
			if math.Abs(float64(z/row.effective[i])-1) > 0.06 {
				t.Errorf("%s: effective %v, computed %v", row.size, row.effective[i], z)
			}
			if math.Abs(float64(z-row.effective[i])/float64(row.effective[i])) > 0.045 {
				off++
			}
		}
		if !(row.steel > row.other) {
			t.Errorf("%s: reactance in steel %v, otherwise %v", row.size, row.steel, row.other)
		}
	}
	if off > 6 {
		t.Errorf("%d of 39 effective impedances are far off", off)
	}
}

func TestAmpacitiesRise(t *testing.T) {
	for i, c := range Columns() {
		var copper, aluminum []float64
		for _, row := range ampacityRows() {
			if a := row.copper[i]; a != 0 {
				copper = append(copper, float64(a))
			}
			if a := row.aluminum[i]; a != 0 {
				aluminum = append(aluminum, float64(a))
			}
			if row.aluminum[i] >= row.copper[i] && row.copper[i] != 0 {
				t.Errorf("%s at %d: aluminum carries %v, copper %v", row.size, c, row.aluminum[i], row.copper[i])
			}
		}
		rises(t, fmt.Sprint("copper at ", c), copper)
		rises(t, fmt.Sprint("aluminum at ", c), aluminum)
		if len(copper) < 13 || len(aluminum) != 12 {
			t.Errorf("%d: %d of copper, %d of aluminum", c, len(copper), len(aluminum))
		}
	}
}

// Every factor is the equation's at the upper end of its band.
func TestAmbientFactorsFollowTheEquation(t *testing.T) {
	cells := 0
	for _, row := range ambients() {
		for i, c := range Columns() {
			if row.factors[i] == 0 {
				continue
			}
			cells++
			k, err := AmbientFactorByEquation(row.through, c)
			if err != nil || math.Abs(float64(k-row.factors[i])) > half(2) {
				t.Errorf("%v °C, column %d: %v, by the equation %v, %v", row.through.Celsius(), c, row.factors[i], k, err)
			}
		}
	}
	if cells != 39 {
		t.Errorf("%d factors", cells)
	}
	rises(t, "bands", column(ambients(), func(r ambientRow) float64 { return float64(r.through) }))
}

// Boxes hold what their volume divided by the allowance gives, and the metric
// columns are the same volumes. FD multiple is printed 395 cm³ where 393 is meant.
func TestBoxes(t *testing.T) {
	sizes := [...]WireSize{AWG18, AWG16, AWG14, AWG12, AWG10, AWG8, AWG6}
	for _, b := range boxRows() {
		for i, size := range sizes {
			if n, err := MostConductors(b.Volume, size); err != nil || n != b.counts[i] {
				t.Errorf("%s %s: %d of size %s, table %d, %v", b.Shape, b.Size, n, size, b.counts[i], err)
			}
		}
		slack := half(1)*16.387 + 1
		if b.Size == "FD multiple 2-3/8" {
			slack = 2
		}
		if cm := b.metric.In(unit.CubicCentimeter); math.Abs(cm-b.Volume.In(unit.CubicCentimeter)) > slack {
			t.Errorf("%s %s: %v cm³ beside %v in³", b.Shape, b.Size, cm, b.Volume.In(unit.CubicInch))
		}
	}
	for _, a := range allowances() {
		if cm := a.metric.In(unit.CubicCentimeter); math.Abs(cm-a.volume.In(unit.CubicCentimeter)) > half(1)+0.005*16.387 {
			t.Errorf("%s: %v cm³ beside %v in³", a.size, cm, a.volume.In(unit.CubicInch))
		}
	}
	rises(t, "allowances", column(allowances(), func(a allowance) float64 { return float64(a.volume) }))
}

func TestMotorTablesScaleByVoltage(t *testing.T) {
	for name, rows := range map[string][]motorRow{"single": singles(), "three": threes()} {
		rises(t, name, column(rows, func(r motorRow) float64 { return float64(r.power) }))
		for i := range rows[0].values {
			var filled []float64
			for _, r := range rows {
				if r.values[i] != 0 {
					filled = append(filled, float64(r.values[i]))
				}
			}
			rises(t, fmt.Sprintf("%s, column %d", name, i), filled)
		}
		for _, r := range rows {
			at230 := r.values[3]
			for i, volts := range map[int]float64{0: 115, 1: 200, 2: 208, 4: 460, 5: 575} {
				if v := r.values[i]; v != 0 && math.Abs(float64(v/at230)*volts/230-1) > 0.07 {
					t.Errorf("%s, %s hp: %v A at %v V beside %v A at 230 V", name, r.label, v, volts, at230)
				}
			}
		}
	}
}

// Table 250.122 again, typed from memory: copper and aluminum by rating. Editions
// to 2014 had 1200 kcmil in the last two rows.
func TestGrounds(t *testing.T) {
	want := []groundRow{
		{15, "14", "12"}, {20, "12", "10"}, {60, "10", "8"}, {100, "8", "6"}, {200, "6", "4"}, {300, "4", "2"}, {400, "3", "1"},
		{500, "2", "1/0"}, {600, "1", "2/0"}, {800, "1/0", "3/0"}, {1000, "2/0", "4/0"}, {1200, "3/0", "250 kcmil"},
		{1600, "4/0", "350 kcmil"}, {2000, "250 kcmil", "400 kcmil"}, {2500, "350 kcmil", "600 kcmil"},
		{3000, "400 kcmil", "600 kcmil"}, {4000, "500 kcmil", "750 kcmil"}, {5000, "700 kcmil", "1250 kcmil"}, {6000, "800 kcmil", "1250 kcmil"},
	}
	if !slices.Equal(groundRows(), want) {
		t.Errorf("the table is %v, want %v", groundRows(), want)
	}
}

func TestOrder(t *testing.T) {
	rises(t, "adjustment", column(adjustments(), func(r adjustmentRow) float64 { return float64(r.from) }))
	rises(t, "adjustment, falling", column(adjustments(), func(r adjustmentRow) float64 { return -float64(r.factor) }))
	rises(t, "ratings", column(ratingRows(), func(r ratingRow) float64 { return float64(r.rating) }))
	rises(t, "grounds", column(groundRows(), func(r groundRow) float64 { return float64(r.through) }))
	rises(t, "designators", column(designations(), func(d designation) float64 { return float64(d.designator) }))
	rises(t, "threads", column(threads(), func(r Thread) float64 { return float64(r.Outside) }))
	rises(t, "metric", column(metricWires(), func(w MetricWire) float64 { return float64(w.Area) }))
	rises(t, "metric, falling", column(metricWires(), func(w MetricWire) float64 { return -float64(w.Resistance) }))
	for _, h := range holes() {
		rises(t, "knockout "+string(h.Size), []float64{float64(h.Least), float64(h.Nominal), float64(h.Most)})
		if pipe := threadOf()[h.Size]; h.Least <= pipe.Outside {
			t.Errorf("%s: no pipe of %v in goes through %v in", h.Size, pipe.Outside.In(unit.Inch), h.Least.In(unit.Inch))
		}
	}
	for _, o := range outsides() {
		rises(t, "outside "+string(o.size), []float64{float64(o.emt), float64(o.imc), float64(o.rmc)})
		if pipe := threadOf()[o.size]; o.rmc != pipe.Outside || o.pvc != pipe.Outside {
			t.Errorf("%s: rigid conduit of %v, pipe of %v", o.size, o.rmc, pipe.Outside)
		}
		for _, c := range Conduits() {
			b, err := BoreOf(c, o.size)
			if err != nil {
				t.Fatal(err)
			}
			if d, err := OutsideOf(c, o.size); err == nil && d <= b.Inside {
				t.Errorf("%s %s: %v outside, %v inside", c, o.size, d, b.Inside)
			}
		}
	}
	for _, w := range metricWires() { // 17.241 Ω·mm²/km of annealed copper, and a few per cent
		q := w.Resistance.In(unit.OhmPerKilometer) * w.Area.In(unit.SquareMillimeter) / 17.241
		if q < 1.03 || q > 1.13 {
			t.Errorf("%v mm²: %v of ideal", w.Area.In(unit.SquareMillimeter), q)
		}
	}
}
