package record

// The words of raceways and wiring are spelled as the raceway package has them.

// OpeningKind is what a raceway comes to.
type OpeningKind string

// OpeningConduit is an opening that is another conduit's end.
const OpeningConduit OpeningKind = "conduit"

// Options lists the kinds of opening.
func (OpeningKind) Options() []string {
	return []string{"hub", "knockout", "ring-knockout", "fitting", string(OpeningConduit)}
}

// TradeSize names the size of a raceway or of an opening.
type TradeSize string

// Options lists the trade sizes, smallest first.
func (TradeSize) Options() []string {
	return []string{"3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2"}
}

// Conduit is a type of raceway.
type Conduit string

// Options lists the types of conduit.
func (Conduit) Options() []string {
	return []string{"EMT", "FMC", "IMC", "LFMC", "LFNC-A", "LFNC-B", "PVC-40", "PVC-80", "RMC"}
}

// Site is whether a raceway stands in the weather.
type Site string

// Indoors is the only site that keeps the weather out.
const Indoors Site = "indoors"

// Options lists the sites.
func (Site) Options() []string { return []string{string(Indoors), "outdoors"} }

// RacewayUse is what a raceway's length makes of it.
type RacewayUse string

// Nipple is a raceway at most 24 in long.
const Nipple RacewayUse = "nipple"

// Options lists the uses.
func (RacewayUse) Options() []string { return []string{"run", string(Nipple)} }

// Fittings is where connectors grip a flexible metal conduit 3/8.
type Fittings string

// Options lists where connectors grip.
func (Fittings) Options() []string { return []string{"inside", "outside"} }

// Exposure is whether the sun heats a raceway on the roof.
type Exposure string

// Rooftop is a raceway in direct sun.
const Rooftop Exposure = "rooftop"

// Options lists the exposures.
func (Exposure) Options() []string { return []string{"shaded", string(Rooftop)} }

// WireSize is a conductor's gauge.
type WireSize string

// Options lists the sizes, smallest first.
func (WireSize) Options() []string {
	return []string{"18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"}
}

// Insulation is the type letters on a conductor.
type Insulation string

// Unmarked is an insulation whose print can't be read.
const Unmarked Insulation = "unmarked"

// Options lists the insulations.
func (Insulation) Options() []string {
	return []string{"THHN", "THWN", "THWN-2", "XHH", "XHHW", "XHHW-2", "RHH", "RHW", "RHW-2", "RHH*", "RHW*", "RHW-2*",
		"TW", "THW", "THW-2", "THHW", "bare", "bare-solid", string(Unmarked)}
}

// Role is what conductors do.
type Role string

// The roles.
const (
	MotorCircuit Role = "circuit" // they carry the motor's current
	Grounding    Role = "ground"  // an equipment ground
	OtherCircuit Role = "other"   // of another circuit, or control
)

// Options lists the roles.
func (Role) Options() []string {
	return []string{string(MotorCircuit), string(Grounding), string(OtherCircuit)}
}

// Where is whether conductors are in the raceway, in the box or in both.
type Where string

// The places of conductors. One that is not said is both.
const (
	InBoth    Where = "both"
	InRaceway Where = "raceway"
	InBox     Where = "box"
)

// Options lists the places of conductors.
func (Where) Options() []string { return []string{string(InBoth), string(InRaceway), string(InBox)} }

// BoxSize is a metal box's form and trade size.
type BoxSize string

// Options lists the boxes as the code's table has them.
func (BoxSize) Options() []string {
	return []string{
		"octagonal 4 x 1-1/4", "octagonal 4 x 1-1/2", "octagonal 4 x 2-1/8",
		"square 4 x 1-1/4", "square 4 x 1-1/2", "square 4 x 2-1/8",
		"square 4-11/16 x 1-1/4", "square 4-11/16 x 1-1/2", "square 4-11/16 x 2-1/8",
		"device 3 x 2 x 1-1/2", "device 3 x 2 x 2", "device 3 x 2 x 2-1/4", "device 3 x 2 x 2-1/2", "device 3 x 2 x 2-3/4", "device 3 x 2 x 3-1/2",
		"device 4 x 2-1/8 x 1-1/2", "device 4 x 2-1/8 x 1-7/8", "device 4 x 2-1/8 x 2-1/8",
		"masonry 3-3/4 x 2 x 2-1/2", "masonry 3-3/4 x 2 x 3-1/2",
		"conduit FS single 1-3/4", "conduit FD single 2-3/8", "conduit FS multiple 1-3/4", "conduit FD multiple 2-3/8",
	}
}

// Material is what a circuit's conductors are made of.
type Material string

// Options lists the materials.
func (Material) Options() []string { return []string{"copper", "aluminum", "clad"} }

// Terminals is the temperature that the terminals at a conductor's ends are
// marked for, in degrees Celsius.
type Terminals string

// Options lists the temperatures.
func (Terminals) Options() []string { return []string{"60", "75", "90"} }

// Device is a kind of short-circuit and ground-fault protection.
type Device string

// Options lists the devices.
func (Device) Options() []string {
	return []string{"inverse-time-breaker", "time-delay-fuse", "nontime-fuse"}
}

// Edition is the year of the electrical code that the place has adopted.
type Edition string

// Options lists the editions.
func (Edition) Options() []string { return []string{"2017", "2020", "2023"} }
