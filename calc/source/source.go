// Package source is the register of what the formulas and tables rest on.
//
//   - A publication is a book, standard, specification or fact sheet, entered once.
//   - A reference is a publication with the place in it.
//   - A method is one formula or table the calculators use: its key, the formula in
//     symbols, what it is valid for, and its references.
//   - Known says how sure the entry is: looked up in the publication, derived from
//     a stated formula, common practice of the trade, or from memory. What is
//     from memory is shown as such until confirmed in the document itself.
//
// The register knows the formulas by key only and imports none of them.
package source

// Known is how a fact came into the library.
type Known string

// Ways of knowing, best first.
const (
	LookedUp       Known = "looked_up"       // read in the named place
	Derived        Known = "derived"         // computed or proved from a stated formula
	CommonPractice Known = "common_practice" // what the trade does; no publication stands behind it
	Memory         Known = "memory"          // recalled, to be confirmed in the document
)

// A Publication is one work.
type Publication struct {
	Key     string // short name, unique
	Title   string
	Edition string // edition, year or number; empty if the work names none that was seen
	Known   Known  // how this project knows what the work says
}

// At returns a reference to a place in p, such as "Table 9".
func (p Publication) At(where string) Ref { return Ref{Publication: p, Where: where} }

// A Ref is a place in a publication.
type Ref struct {
	Publication
	Where string
}

// A Method is one formula or table that the calculators use.
type Method struct {
	Key     string // stable name, subject first: "drive.speed"
	Formula string // in symbols, free of any language
	Valid   string // what it holds for, in short English
	Refs    []Ref  // where it stands; none for what is derived here or common practice
	Known   Known
}

// register lists the methods by subject.
var register = [...][]Method{driveMethods, beltMethods, airMethods, loadMethods, kitchenMethods, phaseMethods, limitMethods, readingMethods, racewayMethods, boxMethods, wireMethods, fittingMethods, fitMethods, materialMethods}

// Methods returns every method, ordered by subject. The slice is fresh; the
// references within are shared and not to be changed.
func Methods() []Method {
	var all []Method
	for _, part := range register {
		all = append(all, part...)
	}
	return all
}

// Lookup returns the method with the given key.
func Lookup(key string) (Method, bool) {
	for _, part := range register {
		for _, m := range part {
			if m.Key == key {
				return m, true
			}
		}
	}
	return Method{}, false
}
