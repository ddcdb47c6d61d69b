package unit

// A Quantity is any of this package's types. Its float64 is the value in the
// kind's base unit.
type Quantity interface {
	~float64
	Kind() *Kind
}

// A Unit is one way to write a quantity.
type Unit struct {
	Symbol string   // canonical spelling, ASCII, kept in records and links
	Label  string   // typographic spelling for people
	Size   float64  // one of this unit, in the kind's base unit
	Zero   float64  // where the unit's zero lies, in the base unit; temperatures only
	Also   []string // other spellings that are read, compared without case
}

// Base returns the base value of x of the unit.
func (u Unit) Base(x float64) float64 { return x*u.Size + u.Zero }

// Of returns the count of the unit in a base value.
func (u Unit) Of(base float64) float64 { return (base - u.Zero) / u.Size }

// A Kind is what sort of quantity a type is: its name and its units.
type Kind struct {
	Name  string
	Data  Unit   // the unit of machine-readable values: rpm, degrees, otherwise SI
	Units []Unit // every unit that is read; the first is the one assumed by default
}

// Unit returns the unit of k with the given canonical symbol.
func (k *Kind) Unit(symbol string) (Unit, bool) {
	for _, u := range k.Units {
		if u.Symbol == symbol {
			return u, true
		}
	}
	return Unit{}, false
}

// A System is a habit of writing quantities.
type System int

// The two systems that every scale has a unit for.
const (
	US System = iota // US customary
	SI
)

// A Scale is the pair of units in which one sort of value is usually written:
// a sheave in inches or millimeters, an altitude in feet or meters.
type Scale struct{ US, SI Unit }

// In returns the scale's unit in a system.
func (s Scale) In(y System) Unit {
	if y == SI {
		return s.SI
	}
	return s.US
}

// Other returns the scale's unit that is not u.
func (s Scale) Other(u Unit) Unit {
	if u.Symbol == s.US.Symbol {
		return s.SI
	}
	return s.US
}
