package raceway

// Sizes returns how a part is asked for: its trade size, the size that it takes, the
// larger first of a pair of washers, and the conduit of one that grips a conduit. The
// thread stands before what it takes, whichever way round the part is put in.
func (p Part) Sizes() (size, to TradeSize, conduit Conduit) {
	a, b := p.From, p.To
	if a.Face == Gripping || a.Face == Female && b.Face == Male || p.Kind == ReducingWashers && a.Designator < b.Designator {
		a, b = b, a
	}
	return a.Size, b.Size, b.Conduit
}
