package belt_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

const in = unit.Inch

// drives runs f over many drives that can be built.
func drives(f func(d, D, C unit.Length)) {
	random := rand.New(rand.NewPCG(7, 11))
	for range 1000 {
		d := unit.Length(1.5+10*random.Float64()) * in
		D := unit.Length(1.5+25*random.Float64()) * in
		C := (d + D) / 2 * unit.Length(1+math.Pow(10, 2-5*random.Float64()))
		f(d, D, C)
	}
}

func TestLengthAndCenterAreInverse(t *testing.T) {
	length := check.Value[unit.Length](t)
	drives(func(d, D, C unit.Length) {
		L := length(belt.OpenLength(d, D, C))
		check.Near(t, "center", length(belt.CenterFromLength(d, D, L)), C, 1e-11)
		check.Near(t, "order of the sheaves", length(belt.OpenLength(D, d, C)), L, 1e-14)
		check.Near(t, "order of the sheaves for the center", length(belt.CenterFromLength(D, d, L)), C, 1e-11)
		if longer := length(belt.OpenLength(d, D, C*1.001)); longer <= L {
			t.Errorf("a wider center gives %v after %v", longer, L)
		}
	})
}

// The rope's path again, piece by piece: two spans and an arc on each sheave.
func TestLengthIsTheSumOfItsPieces(t *testing.T) {
	length, arc := check.Value[unit.Length](t), check.Value[unit.Angle](t)
	drives(func(d, D, C unit.Length) {
		small, large := arc(belt.Arc(d, D, C)), arc(belt.Arc(D, d, C))
		check.Near(t, "both arcs", small+large, 2*math.Pi, 1e-14)
		pieces := 2*length(belt.Span(d, D, C)) + d/2*unit.Length(small) + D/2*unit.Length(large)
		check.Near(t, "length", length(belt.OpenLength(d, D, C)), pieces, 1e-13)
		check.Near(t, "smaller arc", arc(belt.ArcSmall(d, D, C)), min(small, large), 1e-14)
		check.Near(t, "smaller arc, other order", arc(belt.ArcSmall(D, d, C)), min(small, large), 1e-14)
	})
}

func TestEqualSheaves(t *testing.T) {
	length := check.Value[unit.Length](t)
	const d, C = 6 * in, 20 * in
	want := 2*C + math.Pi*d
	check.Near(t, "exact", length(belt.OpenLength(d, d, C)), want, 1e-15)
	check.Near(t, "short", length(belt.ApproximateLength(d, d, C)), want, 1e-15)
	check.Near(t, "center", length(belt.CenterFromLength(d, d, want)), C, 1e-14)
	check.Near(t, "short center", length(belt.ApproximateCenter(d, d, want)), C, 1e-14)
	check.Near(t, "span", length(belt.Span(d, d, C)), C, 1e-15)
	check.Near(t, "arc", check.Value[unit.Angle](t)(belt.ArcSmall(d, d, C)), math.Pi, 1e-15)
}

func TestLengthsScale(t *testing.T) {
	length, arc := check.Value[unit.Length](t), check.Value[unit.Angle](t)
	drives(func(d, D, C unit.Length) {
		const k = 3.7
		L := length(belt.OpenLength(d, D, C))
		check.Near(t, "length", length(belt.OpenLength(k*d, k*D, k*C)), k*L, 1e-14)
		check.Near(t, "short length", length(belt.ApproximateLength(k*d, k*D, k*C)), k*length(belt.ApproximateLength(d, D, C)), 1e-14)
		check.Near(t, "center", length(belt.CenterFromLength(k*d, k*D, k*L)), k*C, 1e-11)
		check.Near(t, "span", length(belt.Span(k*d, k*D, k*C)), k*length(belt.Span(d, D, C)), 1e-13)
		check.Near(t, "arc", arc(belt.ArcSmall(k*d, k*D, k*C)), arc(belt.ArcSmall(d, D, C)), 1e-13)
		if small, err := belt.CenterFromLength(d*0.9, D, L); err == nil {
			travel := length(belt.BaseTravel(d, d*0.9, D, L))
			check.Near(t, "travel", travel, small-length(belt.CenterFromLength(d, D, L)), 1e-9)
			check.Near(t, "travel scaled", length(belt.BaseTravel(k*d, k*d*0.9, k*D, k*L)), k*travel, 1e-7)
		}
	})
}

// What the comments say of the short forms.
func TestShortFormsErrAsTold(t *testing.T) {
	length, arc := check.Value[unit.Length](t), check.Value[unit.Angle](t)
	const C, d = 20 * in, 4 * in
	for _, test := range []struct{ x, lengthShort, high57, high60 float64 }{
		{0.4, 0.0001, 0, 0}, {1.0, 0.006, 2.7, 0}, {1.1, 0.008, 3.7, 0.7}, {1.5, 0.033, 11, 7.2},
	} {
		D := d + unit.Length(test.x)*C
		short := length(belt.OpenLength(d, D, C)) - length(belt.ApproximateLength(d, D, C))
		if c := float64(short / C); math.Abs(c-test.lengthShort) > 0.0006 {
			t.Errorf("(D−d)/C = %v: short by %.5f C", test.x, c)
		}
		exact := arc(belt.ArcSmall(d, D, C))
		high := (arc(belt.ArcByRule(d, D, C, belt.RuleOf57)) - exact).In(unit.Degree)
		if test.high57 != 0 && math.Abs(high-test.high57) > 0.25 {
			t.Errorf("(D−d)/C = %v: the 57.3 rule is %.2f° high", test.x, high)
		}
		high = (arc(belt.ArcByRule(d, D, C, belt.RuleOf60)) - exact).In(unit.Degree)
		if test.high60 != 0 && math.Abs(high-test.high60) > 0.06 {
			t.Errorf("(D−d)/C = %v: the 60 rule is %.2f° high", test.x, high)
		}
	}
	drives(func(d, D, C unit.Length) {
		short := length(belt.OpenLength(d, D, C)) - length(belt.ApproximateLength(d, D, C))
		x := math.Abs(float64((D - d) / C))
		if short < -1e-12*C || x <= 1.5 && short > 0.0331*C {
			t.Errorf("(D−d)/C = %v: short by %v C", x, short/C)
		}
		if x <= 1.1 {
			if off := arc(belt.ArcByRule(d, D, C, belt.RuleOf60)) - arc(belt.ArcSmall(d, D, C)); math.Abs(off.In(unit.Degree)) > 1.1 {
				t.Errorf("(D−d)/C = %v: the 60 rule is off by %v°", x, off.In(unit.Degree))
			}
		}
		L := length(belt.OpenLength(d, D, C))
		if wide, err := belt.ApproximateCenter(d, D, L); err == nil && wide < C*(1-1e-12) {
			t.Errorf("short center %v under %v", wide, C)
		}
	})
}

// Machinery's Handbook, 31st ed., Table 12, further rows of those among the
// check cases: (D−d)/C, degrees of arc, factor.
func TestArcTable(t *testing.T) {
	const C, d = 20 * in, 4 * in
	for _, row := range [][3]float64{
		{0, 180, 1.00}, {0.2, 169, 0.97}, {0.4, 157, 0.94}, {0.6, 145, 0.91}, {0.8, 133, 0.87}, {1.1, 113, 0.80}, {1.3, 99, 0.73}, {1.4, 91, 0.70},
	} {
		arc := check.Value[unit.Angle](t)(belt.ArcSmall(d, d+unit.Length(row[0])*C, C))
		if off := arc.In(unit.Degree) - row[1]; math.Abs(off) > 0.5 {
			t.Errorf("(D−d)/C = %v: %v°, printed %v°", row[0], arc.In(unit.Degree), row[1])
		}
		if k := check.Value[unit.Ratio](t)(belt.ArcFactor(arc)); math.Abs(float64(k)-row[2]) > 0.005 {
			t.Errorf("%v°: factor %v, printed %v", row[1], k, row[2])
		}
	}
}

func TestBeltFaults(t *testing.T) {
	for _, test := range []struct {
		name      string
		d, D, C   unit.Length
		parameter string
		rule      limit.Rule
	}{
		{"overlapping", 4, 10, 6.9, "center", limit.SheavesOverlap},
		{"touching", 4, 10, 7, "center", limit.SheavesOverlap},
		{"no driver", 0, 10, 7, "driver", limit.NotPositive},
		{"endless center", 4, 10, unit.Length(math.Inf(1)), "center", limit.NotFinite},
	} {
		_, err := belt.OpenLength(test.d, test.D, test.C)
		check.Broken(t, test.name, err, test.parameter, test.rule)
	}
	if _, err := belt.OpenLength(4, 10, 7.0001); err != nil {
		t.Errorf("just apart: %v", err)
	}
	shortest := check.Value[unit.Length](t)(belt.OpenLength(4, 10, 7*(1+1e-12)))
	_, err := belt.CenterFromLength(4, 10, shortest*(1-1e-9))
	check.Broken(t, "around touching sheaves", err, "pitchLength", limit.BeltTooShort)
	_, err = belt.ApproximateCenter(4, 10, 20)
	check.Broken(t, "shorter than a sheave's girth", err, "pitchLength", limit.BeltTooShort)
	_, err = belt.ApproximateCenter(6, 6, 6*math.Pi+2*5.9)
	check.Broken(t, "inside touching sheaves", err, "pitchLength", limit.BeltTooShort)
	_, err = belt.BaseTravel(3, 0, 9, 50)
	check.Broken(t, "nothing after", err, "after", limit.NotPositive)
	_, err = belt.ArcFactor(7)
	check.Broken(t, "more than a turn", err, "arc", limit.OutOfRange)
}

func TestBaseTravelSign(t *testing.T) {
	length := check.Value[unit.Length](t)
	if x := length(belt.BaseTravel(3.5*in, 3.3*in, 9*in, 49.3*in)); x <= 0 {
		t.Errorf("a sheave opened wants the motor away, not %v", x)
	}
	if x := length(belt.BaseTravel(3.3*in, 3.5*in, 9*in, 49.3*in)); x >= 0 {
		t.Errorf("a sheave closed wants the motor nearer, not %v", x)
	}
	check.Near(t, "no change", length(belt.BaseTravel(3.5*in, 3.5*in, 9*in, 49.3*in)), 0, 1)
	// For nearly equal sheaves the rule is the exact travel but for second order.
	check.Near(t, "rule", length(belt.BaseTravelByRule(6.01*in, 5.99*in)), length(belt.BaseTravel(6.01*in, 5.99*in, 6*in, 60*in)), 1e-6)
}

func TestDatumNumbersThereAndBack(t *testing.T) {
	for _, s := range []drive.Section{drive.SectionA, drive.SectionAX, drive.SectionB, drive.SectionBX} {
		for number := 20; number <= 360; number++ {
			L := check.Value[unit.Length](t)(belt.DatumLength(s, number))
			got := check.Value[int](t)(belt.DatumNumber(s, L))
			back := check.Value[unit.Length](t)(belt.DatumLength(s, got))
			// B239 would be as long as a B240 and a half; either reading is near.
			if got != number && math.Abs(float64(back-L)) > float64(0.5*in)*(1+1e-9) {
				t.Errorf("%s%d is read as %d", s, number, got)
			}
			if number < 239 && got != number {
				t.Errorf("%s%d is read as %d", s, number, got)
			}
			for _, off := range []unit.Length{-0.4 * in, 0.4 * in} {
				if number < 238 {
					if near := check.Value[int](t)(belt.DatumNumber(s, L+off)); near != number {
						t.Errorf("%s: %v in is read as %d, not %d", s, (L + off).In(in), near, number)
					}
				}
			}
		}
	}
	for _, test := range []struct {
		name    string
		section drive.Section
		number  int
		fault   string
		rule    limit.Rule
	}{
		{"none", drive.SectionA, 0, "number", limit.NotPositive},
		{"too long", drive.SectionA, 1001, "number", limit.OutOfRange},
		{"light duty", drive.Section4L, 430, "section", limit.NotTabulated},
	} {
		_, err := belt.DatumLength(test.section, test.number)
		check.Broken(t, test.name, err, test.fault, test.rule)
	}
	_, err := belt.DatumNumber(drive.SectionA, 1*in)
	check.Broken(t, "too short", err, "pitchLength", limit.BeltTooShort)
	_, err = belt.DatumNumber(drive.SectionB, 1500*in)
	check.Broken(t, "too long", err, "pitchLength", limit.OutOfRange)
	_, err = belt.DatumNumber(drive.Section3V, 50*in)
	check.Broken(t, "narrow", err, "section", limit.NotTabulated)
}

// Machinery's Handbook, 31st ed., Table 8: the groups' ends.
func TestLengthTolerance(t *testing.T) {
	for number, want := range map[int][2]float64{
		26: {0.6, 0.15}, 35: {0.6, 0.15}, 38: {0.7, 0.15}, 60: {0.7, 0.15}, 68: {0.7, 0.30}, 85: {0.7, 0.30}, 90: {0.8, 0.30}, 144: {0.8, 0.30},
	} {
		tolerance, matching, err := belt.LengthTolerance(number)
		if err != nil {
			t.Fatal(err)
		}
		check.Near(t, "tolerance", tolerance.In(in), want[0], 1e-12)
		check.Near(t, "matching", matching.In(in), want[1], 1e-12)
	}
	for _, number := range []int{25, 145} {
		_, _, err := belt.LengthTolerance(number)
		check.Broken(t, "outside", err, "number", limit.NotTabulated)
	}
}

// The first value past each bound is refused, the last before it answered.
func TestBounds(t *testing.T) {
	const d, D, touching = 4 * in, 10 * in, 7 * in
	for _, edge := range []struct {
		name      string
		parameter string
		rule      limit.Rule
		at        func(x unit.Length) error // refuses below 1
	}{
		{"arc", "center", limit.SheavesOverlap, func(x unit.Length) error { _, err := belt.Arc(d, D, touching*x); return err }},
		{"span", "center", limit.SheavesOverlap, func(x unit.Length) error { _, err := belt.Span(d, D, touching*x); return err }},
		{"length", "center", limit.SheavesOverlap, func(x unit.Length) error { _, err := belt.OpenLength(d, D, touching*x); return err }},
		{"short center", "pitchLength", limit.BeltTooShort, func(x unit.Length) error {
			_, err := belt.ApproximateCenter(d, D, x*check.Value[unit.Length](t)(belt.ApproximateLength(d, D, touching*(1+1e-9))))
			return err
		}},
		{"center", "pitchLength", limit.BeltTooShort, func(x unit.Length) error {
			_, err := belt.CenterFromLength(d, D, x*check.Value[unit.Length](t)(belt.OpenLength(d, D, touching*(1+1e-9))))
			return err
		}},
	} {
		check.Broken(t, edge.name, edge.at(1-1e-4), edge.parameter, edge.rule)
		if err := edge.at(1 + 1e-4); err != nil {
			t.Errorf("%s just within: %v", edge.name, err)
		}
	}
	// Where the square root of the short form has nothing left: 32·(D−d)² past B² by 0.5 %.
	B := 6 * in * unit.Length(math.Sqrt(32/1.005))
	_, err := belt.ApproximateCenter(d, D, (B+2*math.Pi*(d+D))/4)
	check.Broken(t, "short form without a root", err, "pitchLength", limit.BeltTooShort)

	if n := check.Value[int](t)(belt.BeltsNeeded(2.99*unit.Horsepower, unit.Horsepower)); n != 3 {
		t.Errorf("2.99 times a belt's rating takes %d belts", n)
	}
	if n := check.Value[int](t)(belt.DatumNumber(drive.SectionA, 2.3*in)); n != 1 {
		t.Errorf("2.3 in is A%d", n)
	}
	if _, err := belt.StaticTension(unit.Horsepower, 1, 0.1*unit.Degree, 1, 0, belt.TensionByStatics); err != nil {
		t.Errorf("a tenth of a degree of arc: %v", err)
	}
}
