package record

import "roofside/calc/unit"

// Opening is where the new fan, or a box, takes a raceway in.
type Opening struct {
	Kind    Choice[OpeningKind]
	Size    Choice[TradeSize]
	Conduit Choice[Conduit] // where the opening is another conduit's end
}

// Raceway is the conduit that comes to the opening, and where it runs.
type Raceway struct {
	Conduit  Choice[Conduit]
	Size     Choice[TradeSize]
	Site     Choice[Site]
	Use      Choice[RacewayUse]
	Fittings Choice[Fittings] // of flexible metal conduit 3/8
	Exposure Choice[Exposure]
	Height   Entry[unit.Length] // above the roof
	Length   Entry[unit.Length] // new, from end to end
}

// Box is the box that the conductors meet in.
type Box struct {
	Size    Choice[BoxSize]
	Volume  Entry[unit.Volume] // as marked in it
	Devices Entry[unit.Count]  // yokes
	Clamps  Choice[Answer]     // inside it
}

// Circuit is what feeds the new motor.
type Circuit struct {
	Material  Choice[Material]
	Terminals Choice[Terminals]
	Device    Choice[Device]
	Rating    Entry[unit.Current] // of that device
	Length    Entry[unit.Length]  // one way
}

func (l *lister) opening(o *Opening) {
	l.add("kind", &o.Kind)
	l.add("size", &o.Size)
	l.add("conduit", &o.Conduit)
}

func (l *lister) raceway(r *Raceway) {
	l.add("conduit", &r.Conduit)
	l.add("size", &r.Size)
	l.add("place", &r.Site)
	l.add("use", &r.Use)
	l.add("fittings", &r.Fittings)
	l.add("exposure", &r.Exposure)
	put(l, "height", &r.Height, &clearance)
	put(l, "length", &r.Length, &run)
}

func (l *lister) box(b *Box) {
	l.add("size", &b.Size)
	put(l, "volume", &b.Volume, &capacity)
	put(l, "devices", &b.Devices, &tallyOrNone)
	l.add("clamps", &b.Clamps)
}

func (l *lister) circuit(c *Circuit) {
	l.add("material", &c.Material)
	l.add("terminals", &c.Terminals)
	l.add("device", &c.Device)
	put(l, "device-rating", &c.Rating, &plateAmps)
	put(l, "length", &c.Length, &run)
}
