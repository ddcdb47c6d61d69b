package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Conduit is a type of raceway.
type Conduit string

// Types of conduit and tubing, by the initials that the trade writes on them.
const (
	EMT   Conduit = "EMT"    // electrical metallic tubing
	FMC   Conduit = "FMC"    // flexible metal conduit
	IMC   Conduit = "IMC"    // intermediate metal conduit
	LFMC  Conduit = "LFMC"   // liquidtight flexible metal conduit
	LFNCA Conduit = "LFNC-A" // liquidtight flexible nonmetallic conduit, layered
	LFNCB Conduit = "LFNC-B" // liquidtight flexible nonmetallic conduit, integral reinforcement
	PVC40 Conduit = "PVC-40" // rigid polyvinyl chloride conduit, schedule 40
	PVC80 Conduit = "PVC-80" // rigid polyvinyl chloride conduit, schedule 80
	RMC   Conduit = "RMC"    // rigid metal conduit
)

var conduits = [...]Conduit{EMT, FMC, IMC, LFMC, LFNCA, LFNCB, PVC40, PVC80, RMC}

// Conduits returns every type. Electrical nonmetallic tubing is not among them:
// printings of its areas disagree by edition.
func Conduits() []Conduit { return append([]Conduit(nil), conduits[:]...) }

// Flexible reports whether c bends by hand.
func (c Conduit) Flexible() bool { return c == FMC || c == LFMC || c == LFNCA || c == LFNCB }

// Metallic reports whether c is metal.
func (c Conduit) Metallic() bool {
	return c == EMT || c == FMC || c == IMC || c == LFMC || c == RMC
}

// Threaded reports whether an end of c is itself a tapered male thread.
func (c Conduit) Threaded() bool { return c == IMC || c == RMC }

func (c Conduit) rank() int {
	for i := range conduits {
		if conduits[i] == c {
			return i
		}
	}
	return -1
}

// A Bore is the inside of a raceway: NFPA 70, Chapter 9, Table 4. The parts of
// its area are as printed; each is the per cent of the true area, rounded.
type Bore struct {
	Conduit    Conduit
	Size       TradeSize
	Designator int
	Inside     unit.Length // inside diameter
	Area       unit.Area   // all of it
	One        unit.Area   // for one conductor, 53 %
	Two        unit.Area   // for two, 31 %
	OverTwo    unit.Area   // for more, 40 %
	Nipple     unit.Area   // for any number in a nipple, 60 %

	metric, metricOverTwo unit.Area // the millimeter columns
}

var bores = table("raceway", "conduit,size,designator,inside,all_in2,two_in2,over_two_in2,one_in2,nipple_in2,all_mm2,over_two_mm2",
	func(r *record) Bore {
		return Bore{
			Conduit: Conduit(r.text("conduit")), Size: TradeSize(r.text("size")), Designator: r.whole("designator"),
			Inside: unit.Length(r.number("inside")) * unit.Inch,
			Area:   unit.Area(r.number("all_in2")) * unit.SquareInch,
			One:    unit.Area(r.number("one_in2")) * unit.SquareInch,
			Two:    unit.Area(r.number("two_in2")) * unit.SquareInch,

			OverTwo:       unit.Area(r.number("over_two_in2")) * unit.SquareInch,
			Nipple:        unit.Area(r.number("nipple_in2")) * unit.SquareInch,
			metric:        unit.Area(r.number("all_mm2")) * unit.SquareMillimeter,
			metricOverTwo: unit.Area(r.number("over_two_mm2")) * unit.SquareMillimeter,
		}
	})

// pipe is a raceway by type and size.
type pipe struct {
	Conduit
	TradeSize
}

var boreOf = index(bores, func(b Bore) pipe { return pipe{b.Conduit, b.Size} })

// BoreOf returns the inside of a raceway. Errors: no such type; a size that the
// type is not tabulated in.
//
// Method: raceway.bore.
func BoreOf(conduit Conduit, size TradeSize) (Bore, error) {
	return bore(conduit, size, "conduit", "size")
}

// bore is BoreOf for parameters of other names.
func bore(conduit Conduit, size TradeSize, conduitName, sizeName string) (Bore, error) {
	b, ok := boreOf()[pipe{conduit, size}]
	if !ok {
		if conduit.rank() < 0 {
			return Bore{}, limit.Break(conduitName, limit.NotTabulated)
		}
		return Bore{}, limit.Break(sizeName, limit.NotTabulated)
	}
	return b, nil
}
