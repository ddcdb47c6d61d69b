package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Material is what a conductor is made of.
type Material string

// Materials. Clad is copper-clad aluminum, which has aluminum's ampacity.
const (
	Copper   Material = "copper"
	Aluminum Material = "aluminum"
	Clad     Material = "clad"
)

// Materials returns every material.
func Materials() []Material { return []Material{Copper, Aluminum, Clad} }

// A Build is how a conductor is made up.
type Build string

// Builds. Sizes 6 and larger are tabulated stranded alone.
const (
	Solid    Build = "solid"
	Stranded Build = "stranded"
)

// A Property is a bare conductor: NFPA 70, Chapter 9, Table 8. Resistances are
// those of direct current at [PropertyTemperature].
type Property struct {
	Size         WireSize
	Build        Build
	Area         unit.Area // of metal
	Diameter     unit.Length
	Copper       unit.LineImpedance // uncoated
	CoatedCopper unit.LineImpedance
	Aluminum     unit.LineImpedance
}

// PropertyTemperature is the conductor temperature of Tables 8 and 9, 75 °C.
const PropertyTemperature unit.Temperature = 75 + 273.15

var properties = table("property", "size,strands,area,diameter,copper,coated_copper,aluminum", func(r *record) Property {
	build := Stranded
	if r.whole("strands") == 1 {
		build = Solid
	}
	return Property{
		Size: WireSize(r.text("size")), Build: build,
		Area:         unit.Area(r.number("area")) * unit.CircularMil,
		Diameter:     unit.Length(r.number("diameter")) * unit.Inch,
		Copper:       unit.LineImpedance(r.number("copper")) * unit.OhmPerThousandFeet,
		CoatedCopper: unit.LineImpedance(r.number("coated_copper")) * unit.OhmPerThousandFeet,
		Aluminum:     unit.LineImpedance(r.number("aluminum")) * unit.OhmPerThousandFeet,
	}
})

type bareWire struct {
	size  WireSize
	build Build
}

var propertyOf = index(properties, func(p Property) bareWire { return bareWire{p.Size, p.Build} })

// PropertyOf returns what a bare conductor measures. Errors: no such size; a
// build that the size is not tabulated in.
//
// Method: raceway.property.
func PropertyOf(size WireSize, build Build) (Property, error) {
	p, ok := propertyOf()[bareWire{size, build}]
	if !ok {
		if size.rank() < 0 {
			return Property{}, limit.Break("size", limit.NotTabulated)
		}
		return Property{}, limit.Break("build", limit.NotTabulated)
	}
	return p, nil
}

// WireForArea returns the smallest stranded size with at least an area of
// metal. Errors: area not above zero; none so large.
//
// Method: raceway.property.
func WireForArea(area unit.Area) (WireSize, error) {
	if err := limit.Positive("area", area); err != nil {
		return "", err
	}
	for _, p := range properties() {
		if p.Build == Stranded && p.Area >= area*(1-slack) {
			return p.Size, nil
		}
	}
	return "", limit.Break("area", NoSizeFits)
}
