package sheet

import (
	"slices"
	"strconv"

	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A bundle is the conductors in the raceway as the formulas take them.
type bundle struct {
	rows     []raceway.Row
	of       []*record.Wire
	measured map[int]Given[unit.Length] // diameters of wires that can't be read
	at       At
}

// conductors asks for the conductors in the raceway.
func conductors(a *Ask, f *record.Fan) *bundle {
	b := &bundle{at: At{}, measured: map[int]Given[unit.Length]{}}
	for _, w := range f.Wires {
		a.mind(&w.Role, &w.Where)
		if w.Where.Value() == record.InBox {
			continue
		}
		a.Need(&w.Count)
		a.Need(&w.Size)
		a.Need(&w.Insulation)
		i := len(b.rows)
		n := strconv.Itoa(i)
		b.at[n+".Count"], b.at[n+".Size"], b.at[n+".Insulation"] = &Term{Place: &w.Count}, &Term{Place: &w.Size}, &Term{Place: &w.Insulation}
		if w.Insulation.Value() == record.Unmarked {
			b.measured[i] = Want(a, "d", &w.Diameter)
			b.at[n+".Diameter"] = &Term{Place: &w.Diameter}
		}
		b.rows = append(b.rows, raceway.Row{
			Size: raceway.WireSize(w.Size.Value()), Insulation: raceway.Insulation(w.Insulation.Value()),
			Count: int(w.Count.Value()), Role: roleOf(w),
		})
		b.of = append(b.of, w)
	}
	if len(b.rows) == 0 {
		a.blame(nil, limit.Break("", raceway.NoConductor))
	} else {
		b.at["Insulation"] = &Term{Place: &b.of[0].Insulation} // of the table of 3/8, which names no row
	}
	return b
}

// now returns the rows with the diameters that are put in now.
func (b *bundle) now() []raceway.Row {
	for i, d := range b.measured {
		b.rows[i].Diameter = d.V()
	}
	return b.rows
}

// atEdge returns the rows with every measured diameter at one edge of its band.
func (b *bundle) atEdge(sign unit.Length) []raceway.Row {
	rows := slices.Clone(b.rows)
	for i, d := range b.measured {
		rows[i].Diameter = d.V() + sign*unit.Length(d.Band)
	}
	return rows
}

// show puts the area of each row into a working.
func (b *bundle) show(a *Ask) {
	for _, r := range b.now() {
		if c, err := r.Conductor(); err == nil {
			Take(a, strconv.Itoa(r.Count)+" × "+string(r.Size)+" "+string(r.Insulation), c.Area*unit.Area(r.Count))
		}
	}
}

// guessed returns the first count of a row that was guessed: no verdict on a
// sum of them holds.
func guessed(f *record.Fan) record.Place {
	for _, w := range f.Wires {
		for _, n := range []*record.Entry[unit.Count]{&w.Count, &w.InBox} {
			if n.Basis() == record.Guessed {
				return n
			}
		}
	}
	return nil
}

// roleOf returns a row's role. One that is not said is taken for the motor's
// circuit, which is judged more strictly than a ground.
func roleOf(w *record.Wire) raceway.Role {
	if w.Role.Value() == record.Grounding {
		return raceway.Ground
	}
	return raceway.Circuit
}

func carriesMotor(w *record.Wire) bool {
	role := w.Role.Value()
	return role != record.Grounding && role != record.OtherCircuit
}

// rank returns the place of a wire size among all, smallest first.
func rank(size raceway.WireSize) int { return slices.Index(raceway.WireSizes(), size) }

// editionOf returns the edition of the code, the latest known here unless
// another is said.
func editionOf(a *Ask, f posed) raceway.Edition {
	a.mind(&f.Edition)
	if f.edition != "" {
		return f.edition
	}
	return Edition(f.Fan)
}

// Edition returns the edition of the code that answers go by.
func Edition(f *record.Fan) raceway.Edition {
	if e := f.Edition.Value(); e != "" {
		return raceway.Edition(e)
	}
	return raceway.DefaultEdition
}

// Piped tells whether any conductor runs in the raceway: there may be some in a box
// alone.
func Piped(f *record.Fan) bool {
	return slices.ContainsFunc(f.Wires, func(w *record.Wire) bool { return w.Where.Value() != record.InBox })
}
