package sheet

import (
	"slices"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Thing is a sort of material. Fittings go by their kind in the raceway package.
type Thing string

// The things, besides fittings.
const (
	TheFan            Thing = "fan"
	CurbAdapter       Thing = "curb-adapter"
	Gasket            Thing = "gasket"
	Shims             Thing = "shims" // a set
	TheBelt           Thing = "belt"
	MotorSheave       Thing = "motor-sheave"
	FanSheave         Thing = "fan-sheave"
	ShaftBushing      Thing = "shaft-bushing" // in a sheave bored larger than its shaft
	Fittings          Thing = "fittings"      // which ones is not known
	InsulatingBushing Thing = "insulating-bushing"
	BondingJumper     Thing = "bonding-jumper"
	TheConduit        Thing = "conduit"
	Strap             Thing = "strap"
	TheBox            Thing = "box"
	CircuitWire       Thing = "wire"
	GroundingWire     Thing = "ground-wire"
	WireConnector     Thing = "wire-connector"
)

// things is the order of a list.
var things = [...]Thing{
	TheFan, CurbAdapter, Gasket, Shims, TheBelt, MotorSheave, FanSheave, ShaftBushing, Fittings,
	Thing(raceway.SealedHub), Thing(raceway.ReducingWashers), Thing(raceway.ReducingBushing), Thing(raceway.Enlarger), Thing(raceway.CloseNipple),
	Thing(raceway.Locknut), Thing(raceway.Connector), InsulatingBushing, BondingJumper,
	TheConduit, Thing(raceway.Coupling), Strap, TheBox, CircuitWire, GroundingWire, WireConnector,
}

// Things lists the things in the order of a list.
func Things() []Thing { return slices.Clone(things[:]) }

// A Spec is what is said of a thing over a counter. What is empty or not known is
// not said; two lines of equal specs are alike.
type Spec struct {
	Thing      Thing
	Name       string // a model, a belt's number
	Section    string // of a belt whose number is not known
	Size, To   raceway.TradeSize
	Conduit    raceway.Conduit
	Wire       raceway.WireSize
	Insulation raceway.Insulation
	Box        string // form and trade size
	Wet        bool   // listed for wet locations

	Pitch, Bore, Key Maybe[unit.Length] // diameters of a sheave, width of its key
	Inside           Maybe[unit.Length] // bore of the sheave that a bushing goes into
	Length           Maybe[unit.Length] // pitch length of a belt
	Across, Along    Maybe[unit.Length] // the hinge: the curb outside
	Turns            Maybe[unit.Turns]  // open
	Weight           Maybe[unit.Mass]
	Volume           Maybe[unit.Volume]
}

// A Plan is what is done about a line.
type Plan string

// The plans.
const (
	Bring  Plan = "bring"
	Keep   Plan = "keep"   // what is there stays in use
	Unsure Plan = "unsure" // whether anything has to be brought is not known
)

// A Reason is why a line stands.
type Reason struct {
	Key     string
	Method  string          // of the register, where a rule or a practice stands behind it
	From    []record.Place  // what it comes from
	Support raceway.Support // distances, of straps
}

// A Material is a line of the list. A line whose size or count is not known still
// stands and says what would settle it.
type Material struct {
	Spec
	Plan    Plan
	Count   int                // pieces; 0 of what goes by length, or is not known
	Amount  Maybe[unit.Length] // of what goes by length
	Reasons []Reason
	Wanted  []record.Place
	Fault   *Fault
}

// Settled tells whether nothing about the line is open.
func (m Material) Settled() bool {
	return m.Plan != Unsure && len(m.Wanted) == 0 && m.Fault == nil
}

// Materials lists what to bring for a fan, what stays in use, and what is not known
// yet of either, in the order of [Things]. A fan on its motor's own shaft takes no
// belt and no sheave. A box is spoken of once the record does.
func Materials(f *record.Fan) []Material {
	l := &bringing{f: f, table: TurnsTable(f), circuit: CircuitOf(f)}
	l.unit()
	l.curb()
	if !f.DirectDrive() {
		l.sheave()
		l.belt()
	}
	l.pipe()
	l.box()
	l.wires()
	return Sum([][]Material{l.all})
}

// bringing is a list being put together.
type bringing struct {
	f       *record.Fan
	table   Table
	circuit *Circuit
	motor   *Answer[unit.Length] // pitch diameters of other sheaves than those it has
	driven  *Answer[unit.Length]
	all     []Material
}

// put adds a line; what is at fault in it is not wanted besides.
func (l *bringing) put(m Material) {
	if m.Fault != nil && m.Fault.Place != nil {
		m.Wanted = slices.DeleteFunc(m.Wanted, func(p record.Place) bool { return p == m.Fault.Place })
	}
	l.all = append(l.all, m)
}

// why gives a line its reason, with the places it comes from that hold something.
func (m *Material) why(key, method string, from ...record.Place) {
	var told []record.Place
	for _, p := range from {
		if p.State() == record.Known {
			told = append(told, p)
		}
	}
	m.Reasons = append(m.Reasons, Reason{Key: key, Method: method, From: told})
}

// lacks notes what is wanted for a line, or what is at fault.
func (m *Material) lacks(wanted []record.Place, fault *Fault) {
	if fault != nil && m.Fault == nil {
		m.Fault = fault
	}
	m.Wanted = joined(m.Wanted, wanted)
}

// told returns an answer's value, or notes what it lacks.
func told[Q unit.Quantity](m *Material, a Answer[Q]) Maybe[Q] {
	if a.Known() {
		return some(a.Value)
	}
	m.lacks(a.Wanted, a.Fault)
	return Maybe[Q]{}
}
