package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// A WireSize is a conductor's gauge, or its area in kcmil.
type WireSize string

// Wire sizes. The tables here go to 4/0; the larger ones are equipment grounds.
const (
	AWG18   WireSize = "18"
	AWG16   WireSize = "16"
	AWG14   WireSize = "14"
	AWG12   WireSize = "12"
	AWG10   WireSize = "10"
	AWG8    WireSize = "8"
	AWG6    WireSize = "6"
	AWG4    WireSize = "4"
	AWG3    WireSize = "3"
	AWG2    WireSize = "2"
	AWG1    WireSize = "1"
	AWG1by0 WireSize = "1/0"
	AWG2by0 WireSize = "2/0"
	AWG3by0 WireSize = "3/0"
	AWG4by0 WireSize = "4/0"
)

var wires = [...]WireSize{AWG18, AWG16, AWG14, AWG12, AWG10, AWG8, AWG6, AWG4, AWG3, AWG2, AWG1, AWG1by0, AWG2by0, AWG3by0, AWG4by0}

// WireSizes returns the sizes from 18 to 4/0, smallest first.
func WireSizes() []WireSize { return append([]WireSize(nil), wires[:]...) }

// rank returns the place of w among the wire sizes, -1 for none of them.
func (w WireSize) rank() int {
	for i := range wires {
		if wires[i] == w {
			return i
		}
	}
	return -1
}

// An Insulation is the type letters on a conductor.
type Insulation string

// Insulations. An asterisk marks the types without their outer covering, as in
// the table of areas. Bare is a stranded conductor without insulation. Unmarked
// is one whose print can't be read: taken for 60 °C, its area by its diameter.
const (
	THHN      Insulation = "THHN"
	THWN      Insulation = "THWN"
	THWN2     Insulation = "THWN-2"
	XHH       Insulation = "XHH"
	XHHW      Insulation = "XHHW"
	XHHW2     Insulation = "XHHW-2"
	RHH       Insulation = "RHH"
	RHW       Insulation = "RHW"
	RHW2      Insulation = "RHW-2"
	RHHPlain  Insulation = "RHH*"
	RHWPlain  Insulation = "RHW*"
	RHW2Plain Insulation = "RHW-2*"
	TW        Insulation = "TW"
	THW       Insulation = "THW"
	THW2      Insulation = "THW-2"
	THHW      Insulation = "THHW"
	Bare      Insulation = "bare"
	BareSolid Insulation = "bare-solid"
	Unmarked  Insulation = "unmarked"
)

// Insulations returns every insulation.
func Insulations() []Insulation {
	return []Insulation{THHN, THWN, THWN2, XHH, XHHW, XHHW2, RHH, RHW, RHW2, RHHPlain, RHWPlain, RHW2Plain,
		TW, THW, THW2, THHW, Bare, BareSolid, Unmarked}
}

// jacket is what the tables say of an insulation.
type jacket struct {
	insulation Insulation
	group      string // its rows in the table of areas
	dry, wet   Column // temperature ratings; zero where it has none
	small      string // its columns in the table of 3/8 flexible conduit
}

var jackets = table("insulation", "insulation,group,dry,wet,small", func(r *record) jacket {
	return jacket{Insulation(r.text("insulation")), r.text("group"), Column(r.whole("dry")), Column(r.optional("wet")), r.cell("small")}
})

var jacketOf = index(jackets, func(j jacket) Insulation { return j.insulation })

// A Conductor is one wire with its insulation.
type Conductor struct {
	Size       WireSize
	Insulation Insulation
	Area       unit.Area    // with insulation
	Diameter   unit.Length  // over insulation
	Known      source.Known // how the diameter is known; areas were looked up
}

type coat struct {
	group string
	size  WireSize
}

type coated struct {
	coat
	Conductor
}

var coateds = table("conductor", "group,size,area,diameter,diameter_known", func(r *record) coated {
	size := WireSize(r.text("size"))
	return coated{coat{r.text("group"), size}, Conductor{
		Size:     size,
		Area:     unit.Area(r.number("area")) * unit.SquareInch,
		Diameter: unit.Length(r.number("diameter")) * unit.Inch,
		Known:    r.known("diameter_known"),
	}}
})

var coatedOf = index(coateds, func(c coated) coat { return c.coat })

// ConductorOf returns a conductor's area and diameter: Table 5, and for bare
// ones the circle over the diameter of Table 8. Errors: no such size; an
// insulation, or a size of it, that is not tabulated.
//
// Method: raceway.conductor.
func ConductorOf(size WireSize, insulation Insulation) (Conductor, error) {
	return conductor(size, insulation, "size", "insulation")
}

// conductor is ConductorOf for parameters of other names.
func conductor(size WireSize, insulation Insulation, sizeName, insulationName string) (Conductor, error) {
	if size.rank() < 0 {
		return Conductor{}, limit.Break(sizeName, limit.NotTabulated)
	}
	if insulation == Bare || insulation == BareSolid {
		p, ok := propertyOf()[bareWire{size, bareBuilds[insulation]}]
		if !ok {
			return Conductor{}, limit.Break(insulationName, limit.NotTabulated)
		}
		return Conductor{size, insulation, circle(p.Diameter), p.Diameter, source.LookedUp}, nil
	}
	j, ok := jacketOf()[insulation]
	if !ok {
		return Conductor{}, limit.Break(insulationName, limit.NotTabulated)
	}
	c, ok := coatedOf()[coat{j.group, size}]
	if !ok {
		return Conductor{}, limit.Break(sizeName, limit.NotTabulated)
	}
	c.Conductor.Insulation = insulation
	return c.Conductor, nil
}

// bareBuilds are how the bare conductors are made up.
var bareBuilds = map[Insulation]Build{Bare: Stranded, BareSolid: Solid}

// circle returns the area of a circle.
func circle(d unit.Length) unit.Area { return unit.Area(math.Pi / 4 * float64(d) * float64(d)) }
