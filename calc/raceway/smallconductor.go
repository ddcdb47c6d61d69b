package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

type smallConductor struct {
	size     WireSize
	material Material
	most     unit.Current
	since    Edition
}

var smallConductors = table("smallconductor", "size,material,most,since", func(r *record) smallConductor {
	return smallConductor{WireSize(r.text("size")), Material(r.text("material")), unit.Current(r.number("most")), Edition(r.text("since"))}
})

// SmallConductorLimit returns the largest overcurrent device of a small
// conductor in a circuit other than a motor's: 240.4(D). A motor's short-circuit
// protection may be larger, 240.4(G). Sizes 18 and 16 are bound to further
// conditions. Errors: no such edition; no such row in it.
//
// Method: raceway.smallconductor.
func SmallConductorLimit(size WireSize, material Material, edition Edition) (unit.Current, error) {
	if err := edition.check(); err != nil {
		return 0, err
	}
	found := false
	for _, row := range smallConductors() {
		if row.size != size || !edition.since(row.since) {
			continue
		}
		found = true
		if row.material == material {
			return row.most, nil
		}
	}
	if found {
		return 0, limit.Break("material", limit.NotTabulated)
	}
	return 0, limit.Break("size", limit.NotTabulated)
}
