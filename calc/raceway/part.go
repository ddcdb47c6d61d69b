package raceway

import "roofside/calc/unit"

// An EndKind is what is at one side of a joint.
type EndKind string

// Kinds of end.
const (
	Hub          EndKind = "hub"           // female tapered thread: of a motor, a box, a fan's housing
	Knockout     EndKind = "knockout"      // a clean hole in sheet metal
	RingKnockout EndKind = "ring-knockout" // a hole with concentric or eccentric rings left about it
	FittingEnd   EndKind = "fitting"       // male thread of a connector that is there already
	ConduitEnd   EndKind = "conduit"       // the end of a conduit
)

// EndKinds returns every kind of end.
func EndKinds() []EndKind {
	return []EndKind{Hub, Knockout, RingKnockout, FittingEnd, ConduitEnd}
}

// An End is one side of a joint. Conduit is read for a ConduitEnd alone.
type End struct {
	Kind    EndKind
	Size    TradeSize
	Conduit Conduit
}

// A PartKind is a sort of fitting.
type PartKind string

// Sorts of fitting.
const (
	Connector       PartKind = "connector"        // from a conduit's end to a male thread
	Locknut         PartKind = "locknut"          // holds a male thread in a knockout
	LocknutPair     PartKind = "locknut-pair"     // holds a thread without a shoulder, one on each side of the metal
	EndBushing      PartKind = "end-bushing"      // insulating, on such a thread's end inside
	SealedHub       PartKind = "hub"              // turns a knockout into a female thread, sealed
	ReducingBushing PartKind = "reducing-bushing" // male thread of the larger size, female of the smaller
	Enlarger        PartKind = "enlarger"         // male thread of the smaller size, female of the larger
	ReducingWashers PartKind = "reducing-washers" // a pair, for a smaller fitting in a larger knockout
	Coupling        PartKind = "coupling"         // joins two ends of one conduit, or two male threads
	CloseNipple     PartKind = "nipple"           // male thread at both ends
)

// A Face is how one side of a part is made.
type Face string

// Faces of parts.
const (
	Male     Face = "male"
	Female   Face = "female"
	Panel    Face = "panel"   // lies on the sheet metal at a knockout
	Gripping Face = "conduit" // takes a conduit's end
)

// A Side is one side of a part with its four numbers: trade size, metric
// designator, thread and knockout are not the same thing. Thread is zero where
// the side has none, Hole where it lies on no panel.
type Side struct {
	Face       Face
	Size       TradeSize
	Designator int
	Conduit    Conduit // of a gripping side
	Thread     Thread
	Hole       Hole
}

// A Part is one fitting, From on the side of the first end.
type Part struct {
	Kind     PartKind
	From, To Side
}

// A Condition is what must be seen to, or was seen to, at a joint.
type Condition string

// Conditions, with the place of the rule.
const (
	BondOver250     Condition = "bondOver250"     // 250.97: over 250 V to ground, washers and rings need a jumper or listed means
	ListedWet       Condition = "listedWet"       // 314.15: fittings listed for wet locations
	NoWashersWet    Condition = "noWashersWet"    // 314.15: no reducing washers in weather; a hub stands in their place
	SmallerRules    Condition = "smallerRules"    // Chapter 9: each raceway's fill is judged; the smaller rules
	NeedsGround     Condition = "needsGround"     // 356.60 and by nature: nonmetallic conduit carries no ground
	FlexGroundWire  Condition = "flexGroundWire"  // 348.60, 350.60: where it flexes, a wire-type ground
	CoatThreads     Condition = "coatThreads"     // 300.6(A): threads cut in the field
	ConnectorThread Condition = "connectorThread" // common practice: a 3/8 connector has a 1/2 thread
	SmallShort      Condition = "smallShort"      // 348.20(A), 350.20(A): 3/8 for a motor's leads, or up to 6 ft to equipment
	HoleSmaller     Condition = "holeSmaller"     // the knockout may be enlarged instead
	TwoLocknuts     Condition = "twoLocknuts"     // common practice, and 344.46 and 342.46: threaded conduit in a knockout, its end bushed; 300.4(G)
	HubWet          Condition = "hubWet"          // common practice: threaded conduit enters in weather by a sealed hub
)

// JointConditions returns every condition.
func JointConditions() []Condition {
	return []Condition{BondOver250, ListedWet, NoWashersWet, SmallerRules, NeedsGround, FlexGroundWire, CoatThreads, ConnectorThread, SmallShort, HoleSmaller, TwoLocknuts, HubWet}
}

// ToGround is how far a circuit's voltage to ground is known.
type ToGround string

// Voltages to ground. One not known is taken for one over 250 V.
const (
	UpTo250          ToGround = "up-to-250"
	Over250          ToGround = "over-250"
	ToGroundNotKnown ToGround = "not-known"
)

// bondAbove is the voltage to ground above which 250.97 asks for bonding.
const bondAbove = 250 * unit.Volt
