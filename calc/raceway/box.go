package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Shape is a form of box.
type Shape string

// Shapes. AnyShape is for a search.
const (
	Octagonal  Shape = "octagonal" // or round
	Square     Shape = "square"
	DeviceBox  Shape = "device"
	Masonry    Shape = "masonry" // a gang
	ConduitBox Shape = "conduit" // FS and FD, a gang
	AnyShape   Shape = "any"
)

// Shapes returns every shape of box.
func Shapes() []Shape { return []Shape{Octagonal, Square, DeviceBox, Masonry, ConduitBox} }

// A Box is a trade size of metal box: NFPA 70, Table 314.16(A).
type Box struct {
	Shape  Shape
	Size   string // in inches, as it is written
	Volume unit.Volume
}

type boxRow struct {
	Box
	metric unit.Volume // the table's own, rounded apart
	counts [7]int      // of sizes 18 to 6, where nothing else takes volume
}

var boxRows = table("box", "shape,size,volume_in3,volume_cm3,n18,n16,n14,n12,n10,n8,n6", func(r *record) boxRow {
	return boxRow{
		Box{Shape(r.text("shape")), r.text("size"), unit.Volume(r.number("volume_in3")) * unit.CubicInch},
		unit.Volume(r.number("volume_cm3")) * unit.CubicCentimeter,
		[7]int{r.whole("n18"), r.whole("n16"), r.whole("n14"), r.whole("n12"), r.whole("n10"), r.whole("n8"), r.whole("n6")},
	}
})

// Boxes returns every trade size of box, as the table has them.
func Boxes() []Box {
	rows := boxRows()
	all := make([]Box, len(rows))
	for i := range rows {
		all[i] = rows[i].Box
	}
	return all
}

// BoxOf returns the box of a shape and size. Errors: no such box.
//
// Method: raceway.box.
func BoxOf(shape Shape, size string) (Box, error) {
	found := false
	rows := boxRows()
	for i := range rows {
		if rows[i].Shape != shape {
			continue
		}
		if rows[i].Size == size {
			return rows[i].Box, nil
		}
		found = true
	}
	if found {
		return Box{}, limit.Break("size", limit.NotTabulated)
	}
	return Box{}, limit.Break("shape", limit.NotTabulated)
}

// SmallestBox returns the box of the least volume of a shape, or of any, that
// holds at least a volume; of several alike the first in the table. Errors:
// volume not above zero; no such shape; none is large enough.
//
// Method: raceway.box.
func SmallestBox(volume unit.Volume, shape Shape) (Box, error) {
	if err := limit.Positive("volume", volume); err != nil {
		return Box{}, err
	}
	best, found := -1, false
	rows := boxRows()
	for i := range rows {
		if shape != AnyShape && rows[i].Shape != shape {
			continue
		}
		found = true
		if rows[i].Volume >= volume*(1-slack) && (best < 0 || rows[i].Volume < rows[best].Volume) {
			best = i
		}
	}
	if !found {
		return Box{}, limit.Break("shape", limit.NotTabulated)
	}
	if best < 0 {
		return Box{}, limit.Break("volume", NoSizeFits)
	}
	return rows[best].Box, nil
}

type allowance struct {
	size   WireSize
	volume unit.Volume
	metric unit.Volume
}

var allowances = table("allowance", "size,in3,cm3", func(r *record) allowance {
	return allowance{
		WireSize(r.text("size")), unit.Volume(r.number("in3")) * unit.CubicInch, unit.Volume(r.number("cm3")) * unit.CubicCentimeter,
	}
})

var allowanceOf = index(allowances, func(a allowance) WireSize { return a.size })

// Allowance returns the volume that one conductor takes in a box: Table
// 314.16(B)(1), sizes 18 to 6. Larger ones are for boxes of another rule,
// 314.28. Errors: no such size; a size of that other rule.
//
// Method: raceway.box.allowance.
func Allowance(size WireSize) (unit.Volume, error) { return allow(size, "size") }

func allow(size WireSize, name string) (unit.Volume, error) {
	a, ok := allowanceOf()[size]
	switch {
	case ok:
		return a.volume, nil
	case size.rank() > AWG6.rank():
		return 0, limit.Break(name, PullBox)
	}
	return 0, limit.Break(name, limit.NotTabulated)
}

// MostConductors returns how many conductors of a size a volume holds where
// nothing else takes any of it; rounded down. Errors: volume not above zero; a
// size that is not tabulated; more than 10 000.
//
// Method: raceway.box.allowance.
func MostConductors(volume unit.Volume, size WireSize) (int, error) {
	if err := limit.Positive("volume", volume); err != nil {
		return 0, err
	}
	a, err := Allowance(size)
	if err != nil {
		return 0, err
	}
	n := math.Floor(float64(volume/a) * (1 + slack))
	if n > MostCount {
		return 0, limit.Break("volume", TooMany)
	}
	return int(n), nil
}

// ConduitBodyLeast returns the least cross-section of a conduit body for
// conductors 6 and smaller: twice that of the largest raceway at it
// (314.16(C)(1)). Errors: a raceway that is not tabulated.
//
// Method: raceway.box.body.
func ConduitBodyLeast(conduit Conduit, size TradeSize) (unit.Area, error) {
	b, err := BoreOf(conduit, size)
	if err != nil {
		return 0, err
	}
	return 2 * b.Area, nil
}
