package raceway

// A joint is an adapter being put together.
type joint struct {
	place      Place
	toGround   ToGround
	parts      []Part
	conditions []Condition
}

func (j *joint) note(c Condition) {
	for _, have := range j.conditions {
		if have == c {
			return
		}
	}
	j.conditions = append(j.conditions, c)
}

// put adds a part by the faces and sizes of its sides. Conduit is what a
// gripping side takes.
func (j *joint) put(kind PartKind, from Face, fromSize TradeSize, to Face, toSize TradeSize, conduit Conduit) {
	j.parts = append(j.parts, Part{kind, side(from, fromSize, conduit), side(to, toSize, conduit)})
}

func side(face Face, size TradeSize, conduit Conduit) Side {
	s := Side{Face: face, Size: size, Designator: designatorOf(size)}
	switch face {
	case Panel:
		s.Hole = holeOf()[size]
	case Gripping:
		s.Conduit = conduit
	default:
		s.Thread = threadOf()[size]
	}
	return s
}

func designatorOf(size TradeSize) int {
	for _, d := range designations() {
		if d.size == size {
			return d.designator
		}
	}
	return 0
}

// between puts the parts from one end to the other. Each end is first brought to
// a thread: a hub is a female one, a fitting a male one, a conduit gets a
// connector unless it is threaded itself, and a knockout takes a male thread or
// becomes a hub.
func (j *joint) between(from, to End) {
	if from.hole() && to.hole() {
		j.holes(from, to)
		return
	}
	if to.hole() { // worked from the hole, then turned around
		j.between(to, from)
		j.turn()
		return
	}
	if from.Kind == Hub && to.Kind == Hub {
		j.hubs(from.Size, to.Size)
		return
	}
	if from.hole() {
		if to.Kind == Hub {
			j.hole(from, to.Size, false)
			j.put(CloseNipple, Male, to.Size, Male, to.Size, "")
			return
		}
		j.hole(from, to.thread(), to.bare())
		j.connect(to)
		return
	}
	if to.Kind == Hub {
		j.between(to, from)
		j.turn()
		return
	}
	if from.Kind == Hub {
		j.thread(from.Size, to.thread())
		j.connect(to)
		return
	}
	j.males(from, to)
}

// connect puts the connector of a conduit, its thread first.
func (j *joint) connect(e End) {
	if e.Kind == ConduitEnd && !e.Conduit.Threaded() {
		j.put(Connector, Male, e.thread(), Gripping, e.Size, e.Conduit)
	}
}

// thread puts what goes into a female thread to take a male one.
func (j *joint) thread(female, male TradeSize) {
	switch f, m := female.rank(), male.rank(); {
	case f > m:
		j.put(ReducingBushing, Male, female, Female, male, "")
	case f < m:
		j.put(Enlarger, Male, female, Female, male, "")
	}
}

// bare reports whether an end is a thread without a shoulder to draw it tight by.
func (e End) bare() bool { return e.Kind == ConduitEnd && e.Conduit.Threaded() }

// hole puts what goes into a knockout to take a male thread. The bushing of a
// bare one stands first, for it is on its end inside.
func (j *joint) hole(e End, male TradeSize, bare bool) {
	h, m := e.Size.rank(), male.rank()
	if h < m {
		j.note(HoleSmaller)
	}
	if j.place == Outdoors && (bare || h != m) {
		if h > m {
			j.note(NoWashersWet)
		}
		if bare {
			j.note(HubWet)
		}
		j.put(SealedHub, Panel, e.Size, Female, e.Size, "")
		j.thread(e.Size, male)
		return
	}
	if h < m {
		j.put(Locknut, Panel, e.Size, Female, e.Size, "")
		j.put(Enlarger, Male, e.Size, Female, male, "")
		return
	}
	nut := Locknut
	if bare {
		nut = LocknutPair
		j.note(TwoLocknuts)
		j.put(EndBushing, Female, male, Female, male, "")
	}
	if h > m {
		j.put(ReducingWashers, Panel, e.Size, Panel, male, "")
	}
	j.put(nut, Panel, male, Female, male, "")
}

// holes joins two knockouts with a nipple of the smaller size.
func (j *joint) holes(from, to End) {
	size := from.Size
	if to.Size.rank() < size.rank() {
		size = to.Size
	}
	j.hole(from, size, false)
	j.put(CloseNipple, Male, size, Male, size, "")
	other := joint{place: j.place, toGround: j.toGround}
	other.hole(to, size, false)
	other.turn()
	j.parts = append(j.parts, other.parts...)
	for _, c := range other.conditions {
		j.note(c)
	}
}

// hubs joins two female threads with a nipple of the smaller size.
func (j *joint) hubs(from, to TradeSize) {
	size := from
	if to.rank() < size.rank() {
		size = to
	}
	j.thread(from, size)
	j.put(CloseNipple, Male, size, Male, size, "")
	other := joint{}
	other.thread(to, size)
	other.turn()
	j.parts = append(j.parts, other.parts...)
}

// males joins two male threads, or what gets one, with a threaded coupling of
// the larger size.
func (j *joint) males(from, to End) {
	j.connect(from)
	j.turn()
	a, b := from.thread(), to.thread()
	size := a
	if b.rank() > size.rank() {
		size = b
	}
	first := joint{}
	first.thread(size, a)
	first.turn()
	j.parts = append(j.parts, first.parts...)
	j.put(Coupling, Female, size, Female, size, "")
	j.thread(size, b)
	j.connect(to)
}

// turn reverses the order of the parts and each part's sides.
func (j *joint) turn() {
	n := len(j.parts)
	for i := range n / 2 {
		j.parts[i], j.parts[n-1-i] = j.parts[n-1-i], j.parts[i]
	}
	for i := range j.parts {
		j.parts[i].From, j.parts[i].To = j.parts[i].To, j.parts[i].From
	}
}
