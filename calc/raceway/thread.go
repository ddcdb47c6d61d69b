package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// A Thread is a tapered pipe thread, 1 in 16 on the diameter: ASME B1.20.1. A
// locknut's or a coupling's may be straight.
type Thread struct {
	Size      TradeSize
	PerInch   float64
	Outside   unit.Length  // of the pipe
	Small     unit.Length  // pitch diameter at the pipe's end, E0
	HandTight unit.Length  // engagement by hand, L1 (memory)
	Gauge     unit.Length  // pitch diameter at that plane, E1
	Effective unit.Length  // length of effective thread, L2
	Known     source.Known // of PerInch and Outside; the rest comes from formulas known from memory
}

var threads = table("thread", "size,per_inch,outside,hand_tight", func(r *record) Thread {
	t := Thread{
		Size: TradeSize(r.text("size")), PerInch: r.number("per_inch"), Known: source.LookedUp,
		Outside:   unit.Length(r.number("outside")) * unit.Inch,
		HandTight: unit.Length(r.number("hand_tight")) * unit.Inch,
	}
	if t.PerInch == 0 {
		r.fail("per_inch", "zero")
		return t
	}
	D, p := t.Outside.In(unit.Inch), 1/t.PerInch // the standard works in inches
	t.Small = unit.Length(D-(0.05*D+1.1)*p) * unit.Inch
	t.Effective = unit.Length((0.80*D+6.8)*p) * unit.Inch
	t.Gauge = t.Small + t.HandTight/16
	return t
})

var threadOf = index(threads, func(t Thread) TradeSize { return t.Size })

// ThreadOf returns the pipe thread of a nominal size, 1/8 to 2. Errors: a size
// that is not tabulated.
//
// Method: raceway.thread.
func ThreadOf(size TradeSize) (Thread, error) {
	t, ok := threadOf()[size]
	if !ok {
		return Thread{}, limit.Break("size", limit.NotTabulated)
	}
	return t, nil
}

// A Hole is a knockout's diameter (memory). The least one is often quoted as if
// it were the nominal one.
type Hole struct {
	Size                 TradeSize
	Least, Nominal, Most unit.Length
	Known                source.Known
}

var holes = table("knockout", "size,least,nominal,most", func(r *record) Hole {
	return Hole{
		TradeSize(r.text("size")), unit.Length(r.number("least")) * unit.Inch,
		unit.Length(r.number("nominal")) * unit.Inch, unit.Length(r.number("most")) * unit.Inch, source.Memory,
	}
})

var holeOf = index(holes, func(h Hole) TradeSize { return h.Size })

// HoleOf returns the knockout of a trade size, 1/2 to 2. Errors: a size that is
// not tabulated.
//
// Method: raceway.knockout.
func HoleOf(size TradeSize) (Hole, error) {
	h, ok := holeOf()[size]
	if !ok {
		return Hole{}, limit.Break("size", limit.NotTabulated)
	}
	return h, nil
}

type outsideRow struct {
	size               TradeSize
	emt, imc, rmc, pvc unit.Length
}

var outsides = table("outside", "size,emt,imc,rmc,pvc", func(r *record) outsideRow {
	in := func(column string) unit.Length { return unit.Length(r.number(column)) * unit.Inch }
	return outsideRow{TradeSize(r.text("size")), in("emt"), in("imc"), in("rmc"), in("pvc")}
})

// OutsideOf returns the outside diameter of a rigid conduit or tubing (memory),
// by which an unmarked one is told. Errors: a flexible or unknown conduit; a
// size that is not tabulated.
//
// Method: raceway.outside.
func OutsideOf(conduit Conduit, size TradeSize) (unit.Length, error) {
	for _, row := range outsides() {
		if row.size != size {
			continue
		}
		switch conduit {
		case EMT:
			return row.emt, nil
		case IMC:
			return row.imc, nil
		case RMC:
			return row.rmc, nil
		case PVC40, PVC80:
			return row.pvc, nil
		}
		return 0, limit.Break("conduit", limit.NotTabulated)
	}
	return 0, limit.Break("size", limit.NotTabulated)
}
