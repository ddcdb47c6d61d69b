package record

import "roofside/calc/unit"

// MostWires is how many rows of conductors a record holds; like conductors are
// one row.
const MostWires = 50

// Wire is a number of like conductors.
type Wire struct {
	ID         string
	Count      Entry[unit.Count]
	Size       Choice[WireSize]
	Insulation Choice[Insulation]
	Diameter   Entry[unit.Length] // over an insulation whose print can't be read
	Role       Choice[Role]
	Where      Choice[Where]
	InBox      Entry[unit.Count] // ends that count in the box, where they are not Count

	keys []string
}

func wireID(w *Wire) string { return w.ID }

// Wire returns the row of conductors with an id, or nil.
func (f *Fan) Wire(id string) *Wire {
	for _, w := range f.Wires {
		if w.ID == id {
			return w
		}
	}
	return nil
}

// NewWire starts a row of conductors after all others. It returns nil beyond
// [MostWires].
func (f *Fan) NewWire() *Wire { return f.addWire(nextID(f.Wires, "w", wireID)) }

// addWire starts a row of conductors, in the order of the ids. It returns nil
// for an id that can't be or is taken, and beyond [MostWires].
func (f *Fan) addWire(id string) *Wire {
	if !isID(id) || f.Wire(id) != nil || len(f.Wires) >= MostWires {
		return nil
	}
	w := &Wire{ID: id}
	bind(func(l *lister) { l.wire(w) })
	f.Wires = place(f.Wires, w, wireID)
	return w
}

// RemoveWire takes a row of conductors out.
func (f *Fan) RemoveWire(id string) {
	f.drop(wirePrefix + id)
	f.removeWire(id)
}

func (f *Fan) removeWire(id string) { f.Wires = without(f.Wires, f.Wire(id)) }

func (l *lister) wire(w *Wire) {
	put(l, "count", &w.Count, &tally)
	l.add("size", &w.Size)
	l.add("insulation", &w.Insulation)
	put(l, "diameter", &w.Diameter, &caliper)
	l.add("role", &w.Role)
	l.add("where", &w.Where)
	put(l, "box-count", &w.InBox, &tally)
}
