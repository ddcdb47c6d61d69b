package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

type groundRow struct {
	through          unit.Current
	copper, aluminum WireSize
}

var groundRows = table("ground", "through,copper,aluminum", func(r *record) groundRow {
	return groundRow{unit.Current(r.number("through")), WireSize(r.text("copper")), WireSize(r.text("aluminum"))}
})

// A GroundWire is the least size of an equipment grounding conductor.
type GroundWire struct {
	Edition Edition
	Table   WireSize // Table 250.122
	Size    WireSize // and not larger than the circuit's conductors
	Known   source.Known
}

// GroundFor returns the equipment grounding conductor of a circuit by the rating
// of its overcurrent device, never required larger than the circuit's own
// conductors (250.122(A)). Errors: rating not above zero or above the table; no
// such material, size or edition.
//
// Method: raceway.ground.
func GroundFor(rating unit.Current, material Material, circuit WireSize, edition Edition) (GroundWire, error) {
	if err := limit.First(limit.Positive("rating", rating), edition.check()); err != nil {
		return GroundWire{}, err
	}
	if circuit.rank() < 0 {
		return GroundWire{}, limit.Break("circuit", limit.NotTabulated)
	}
	if material != Copper && material != Aluminum && material != Clad {
		return GroundWire{}, limit.Break("material", limit.NotTabulated)
	}
	for _, row := range groundRows() {
		if rating > row.through*(1+slack) {
			continue
		}
		g := GroundWire{edition, row.copper, row.copper, source.LookedUp}
		if material != Copper {
			g.Table, g.Size = row.aluminum, row.aluminum
		}
		if r := g.Table.rank(); r < 0 || r > circuit.rank() { // beyond 4/0 it is larger than any circuit here
			g.Size = circuit
		}
		return g, nil
	}
	return GroundWire{}, limit.Break("rating", limit.NotTabulated)
}

// GroundRaised returns the size of an equipment grounding conductor whose
// circuit was made larger than it need be: its area grows in the same proportion
// (250.122(B)). Errors: no such size; installed smaller than needed; larger than
// 4/0.
//
// Method: raceway.ground.raised.
func GroundRaised(ground, needed, installed WireSize) (WireSize, error) {
	g, ok1 := propertyOf()[bareWire{ground, Stranded}]
	n, ok2 := propertyOf()[bareWire{needed, Stranded}]
	i, ok3 := propertyOf()[bareWire{installed, Stranded}]
	switch {
	case !ok1:
		return "", limit.Break("ground", limit.NotTabulated)
	case !ok2:
		return "", limit.Break("needed", limit.NotTabulated)
	case !ok3:
		return "", limit.Break("installed", limit.NotTabulated)
	case i.Area < n.Area:
		return "", limit.Break("installed", limit.OutOfRange)
	}
	size, err := WireForArea(g.Area * (i.Area / n.Area))
	if err != nil {
		return "", limit.Break("installed", NoSizeFits)
	}
	return size, nil
}
