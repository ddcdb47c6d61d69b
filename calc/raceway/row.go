package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// A Role is what a conductor does in its circuit. Every conductor fills a
// raceway, whatever its role.
type Role string

// Roles.
const (
	Circuit Role = "circuit" // a conductor of the circuit
	Ground  Role = "ground"  // an equipment grounding conductor
)

// A Row is a number of like conductors.
type Row struct {
	Size       WireSize
	Insulation Insulation
	Count      int
	Role       Role
	Diameter   unit.Length // over the insulation, as measured; read where that is Unmarked
}

// widest is beyond any conductor: what is measured wider was not measured.
const widest = 4 * unit.Inch

// Conductor returns one of the row's conductors, an unmarked one by its
// diameter. Errors: as [ConductorOf], of the row's fields; a diameter not above
// zero or beyond any conductor's.
func (r Row) Conductor() (Conductor, error) {
	if r.Insulation != Unmarked || r.Size.rank() < 0 {
		return conductor(r.Size, r.Insulation, "Size", "Insulation")
	}
	if err := limit.Positive("Diameter", r.Diameter); err != nil {
		return Conductor{}, err
	}
	if r.Diameter > widest {
		return Conductor{}, limit.Break("Diameter", limit.OutOfRange)
	}
	return Conductor{r.Size, Unmarked, circle(r.Diameter), r.Diameter, source.LookedUp}, nil
}

// A load is what rows come to.
type load struct {
	count     int
	area      unit.Area // of all
	each      unit.Area // of each, where all are alike
	alike     bool      // all of one area: what note 7 calls the same size
	circuits  int
	grounds   int
	size      WireSize // of the circuit's conductors
	small     string   // their columns in the table of 3/8 flexible conduit
	oneSmall  bool     // those and the grounds are of one size, and the former of one column
	notTabled bool     // the former are of an insulation without such columns
}

// add returns l with one more row. Errors: the row's.
func (l load) add(r Row) (load, error) {
	if err := checkCount("Count", r.Count); err != nil {
		return load{}, err
	}
	if r.Role != Circuit && r.Role != Ground {
		return load{}, limit.Break("Role", limit.NotTabulated)
	}
	c, err := r.Conductor()
	if err != nil {
		return load{}, err
	}
	if l.count == 0 {
		l.each, l.alike, l.oneSmall, l.size = c.Area, true, true, r.Size
	}
	l.alike = l.alike && c.Area == l.each
	l.oneSmall = l.oneSmall && r.Size == l.size
	l.count += r.Count
	l.area += c.Area * unit.Area(r.Count)
	if r.Role == Ground {
		l.grounds += r.Count
		return l, nil
	}
	small := jacketOf()[r.Insulation].small
	l.oneSmall = l.oneSmall && (l.circuits == 0 || small == l.small)
	l.notTabled = l.notTabled || small == ""
	l.small = small
	l.circuits += r.Count
	return l, nil
}

// total returns what rows come to. Errors: no row, more than [MostRows], a row
// that is wrong.
func total(rows []Row) (load, error) {
	if len(rows) == 0 {
		return load{}, limit.Break("rows", NoConductor)
	}
	if len(rows) > MostRows {
		return load{}, limit.Break("rows", TooMany)
	}
	var l load
	for i, r := range rows {
		var err error
		if l, err = l.add(r); err != nil {
			return load{}, &RowError{i, err}
		}
	}
	return l, nil
}
