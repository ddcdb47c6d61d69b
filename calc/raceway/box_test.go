package raceway_test

import (
	"errors"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/source"
	"roofside/calc/unit"
)

func item(kind raceway.Item, n int, size raceway.WireSize) raceway.BoxRow {
	return raceway.BoxRow{Item: kind, Size: size, Count: n}
}

// In cubic inches by hand: 14 takes 2.00, 12 2.25, 10 2.50.
func TestBoxFillByHand(t *testing.T) {
	for _, test := range []struct {
		name    string
		edition raceway.Edition
		rows    []raceway.BoxRow
		want    float64
		known   source.Known
	}{
		{"conductors of two sizes", raceway.Edition2023, []raceway.BoxRow{item("conductor", 4, "14"), item("conductor", 2, "10")}, 13, source.LookedUp},
		{"clamps, one allowance of the largest", raceway.Edition2023, []raceway.BoxRow{item("conductor", 4, "14"), item("clamps", 3, ""), item("conductor", 2, "10")}, 15.5, source.LookedUp},
		{"supports, one each", raceway.Edition2023, []raceway.BoxRow{item("support", 2, ""), item("conductor", 4, "14")}, 12, source.LookedUp},
		{"a larger ground is the largest conductor", raceway.Edition2023, []raceway.BoxRow{item("conductor", 2, "14"), item("ground", 1, "10"), item("clamps", 1, "")}, 9, source.LookedUp},
		{"devices by their own wire", raceway.Edition2023, []raceway.BoxRow{item("conductor", 2, "10"), item("device", 2, "14")}, 13, source.LookedUp},
		{"four grounds", raceway.Edition2020, []raceway.BoxRow{item("conductor", 2, "12"), item("ground", 4, "12")}, 6.75, source.LookedUp},
		{"five grounds, the largest of them", raceway.Edition2020, []raceway.BoxRow{item("conductor", 2, "12"), item("ground", 3, "14"), item("ground", 2, "12")}, 7.3125, source.LookedUp},
		{"five grounds before", raceway.Edition2017, []raceway.BoxRow{item("conductor", 2, "12"), item("ground", 3, "14"), item("ground", 2, "12")}, 6.75, source.Memory},
		{"no grounds before", raceway.Edition2017, []raceway.BoxRow{item("conductor", 2, "12")}, 4.5, source.LookedUp},
		{"terminal block", raceway.Edition2023, []raceway.BoxRow{item("conductor", 2, "12"), item("terminals", 1, "10")}, 7, source.LookedUp},
		{"terminal block before", raceway.Edition2020, []raceway.BoxRow{item("conductor", 2, "12"), item("terminals", 1, "10")}, 4.5, source.LookedUp},
	} {
		f, err := raceway.FillBox(21*unit.CubicInch, test.rows, test.edition)
		if err != nil {
			t.Errorf("%s: %v", test.name, err)
			continue
		}
		check.Within(t, test.name, f.Needed.In(unit.CubicInch), test.want, 1e-9)
		check.Within(t, test.name+", sum", f.Conductors+f.Grounds+f.Devices+f.Clamps+f.Supports+f.Terminals, f.Needed, 1e-18)
		check.Within(t, test.name+", fill", float64(f.Fill), test.want/21, 1e-9)
		if !f.Fits || f.Known != test.known || f.Edition != test.edition {
			t.Errorf("%s: %+v", test.name, f)
		}
	}
	nine := []raceway.BoxRow{item("conductor", 9, "12")} // 20.25 in³
	for volume, fits := range map[unit.Volume]bool{20.25: true, 20.24: false} {
		if f, err := raceway.FillBox(volume*unit.CubicInch, nine, raceway.DefaultEdition); err != nil || f.Fits != fits {
			t.Errorf("%v in³: %+v, %v", volume, f, err)
		}
	}
}

func TestBoxFillRefuses(t *testing.T) {
	ok := item("conductor", 2, "12")
	many := make([]raceway.BoxRow, raceway.MostRows+1)
	for i := range many {
		many[i] = ok
	}
	for _, test := range []struct {
		name      string
		volume    unit.Volume
		rows      []raceway.BoxRow
		edition   raceway.Edition
		parameter string
		rule      limit.Rule
		row       int
	}{
		{"volume 0", 0, []raceway.BoxRow{ok}, raceway.Edition2023, "volume", limit.NotPositive, -1},
		{"edition", 1, []raceway.BoxRow{ok}, "1999", "edition", limit.NotTabulated, -1},
		{"nothing", 1, nil, raceway.Edition2023, "rows", raceway.NoConductor, -1},
		{"clamps alone", 1, []raceway.BoxRow{item("clamps", 1, "")}, raceway.Edition2023, "rows", raceway.NoConductor, -1},
		{"rows", 1, many, raceway.Edition2023, "rows", raceway.TooMany, -1},
		{"count", 1, []raceway.BoxRow{ok, item("device", 0, "12")}, raceway.Edition2023, "Count", limit.NotPositive, 1},
		{"count of clamps", 1, []raceway.BoxRow{ok, item("clamps", -1, "12")}, raceway.Edition2023, "Count", limit.NotPositive, 1},
		{"size beyond the rule", 1, []raceway.BoxRow{item("conductor", 1, "4")}, raceway.Edition2023, "Size", raceway.PullBox, 0},
		{"no such size", 1, []raceway.BoxRow{item("conductor", 1, "5")}, raceway.Edition2023, "Size", limit.NotTabulated, 0},
		{"item", 1, []raceway.BoxRow{ok, ok, item("lamp", 1, "12")}, raceway.Edition2023, "Item", limit.NotTabulated, 2},
	} {
		f, err := raceway.FillBox(test.volume, test.rows, test.edition)
		check.Broken(t, test.name, err, test.parameter, test.rule)
		var at *raceway.RowError
		if errors.As(err, &at) != (test.row >= 0) || at != nil && at.Row != test.row || f != (raceway.BoxFill{}) {
			t.Errorf("%s: %+v, %v", test.name, f, err)
		}
	}
	_, _, err := raceway.SmallestBoxFor(raceway.AnyShape, []raceway.BoxRow{item("conductor", 20, "12")}, raceway.Edition2023)
	check.Broken(t, "too much for any", err, "rows", raceway.NoSizeFits)
	_, _, err = raceway.SmallestBoxFor("round", []raceway.BoxRow{ok}, raceway.Edition2023)
	check.Broken(t, "shape", err, "shape", limit.NotTabulated)
	_, err = raceway.BoxOf("round", "4 x 1-1/2")
	check.Broken(t, "no such shape", err, "shape", limit.NotTabulated)
	_, err = raceway.BoxOf(raceway.Square, "5 x 2")
	check.Broken(t, "no such size", err, "size", limit.NotTabulated)
	_, err = raceway.SmallestBox(43*unit.CubicInch, raceway.AnyShape)
	check.Broken(t, "no such volume", err, "volume", raceway.NoSizeFits)
	_, err = raceway.SmallestBox(1*unit.CubicInch, "round")
	check.Broken(t, "smallest of no shape", err, "shape", limit.NotTabulated)
	_, err = raceway.MostConductors(1, "12") // a cubic meter
	check.Broken(t, "a room", err, "volume", raceway.TooMany)
}

// The smallest box of a volume holds it, and no smaller one of its shape does.
func TestSmallestBoxIsSmallest(t *testing.T) {
	boxes := raceway.Boxes()
	for _, shape := range append(raceway.Shapes(), raceway.AnyShape) {
		for v := unit.Volume(1); v <= 18; v += 0.25 {
			box := check.Value[raceway.Box](t)(raceway.SmallestBox(v*unit.CubicInch, shape))
			if box.Volume < v*unit.CubicInch*(1-1e-9) || shape != raceway.AnyShape && box.Shape != shape {
				t.Errorf("%v in³, %s: %+v", v, shape, box)
			}
			for _, other := range boxes {
				if (shape == raceway.AnyShape || other.Shape == shape) && other.Volume >= v*unit.CubicInch && other.Volume < box.Volume {
					t.Errorf("%v in³, %s: %+v is smaller than %+v", v, shape, other, box)
				}
			}
		}
	}
	for _, box := range boxes {
		if same, err := raceway.BoxOf(box.Shape, box.Size); err != nil || same != box {
			t.Errorf("%+v is %+v, %v", box, same, err)
		}
	}
}

func TestBushing(t *testing.T) {
	for size, want := range map[raceway.WireSize]bool{"18": false, "6": false, "4": true, "4/0": true} {
		if asked, err := raceway.BushingAsked(size); err != nil || asked != want {
			t.Errorf("%s: %v, %v", size, asked, err)
		}
	}
}
