package phase

import "roofside/calc/limit"

// A Supply is what feeds a motor. The spellings are those of the record.
type Supply string

// Supplies.
const (
	ThreePhase  Supply = "three-phase"
	SinglePhase Supply = "single-phase"
	Inverter    Supply = "drive" // three-phase from a variable frequency drive
	TwoSpeed    Supply = "two-speed"
	Direct      Supply = "direct" // direct drive or electronically commutated
)

// A Swap is what turns a motor the other way. The spellings are keys.
type Swap string

// Swaps. Leads are moved only when locked out and proven dead.
const (
	SwapTwoLines      Swap = "two-lines"      // any two of the three
	SwapStartingLeads Swap = "starting-leads" // those that the plate names
	SwapDriveOutput   Swap = "drive-output"   // two leads at the drive's output, or its parameter; never its input
	SwapEachSpeed     Swap = "each-speed"     // two lines of the speed that turns wrong; both speeds are proven
	SwapByMaker       Swap = "by-maker"       // the motor's own instructions: its electronics set the direction
)

// ReversedBy returns what turns a motor of a supply the other way: from memory but
// for two of three lines. A belt-driven wheel moves air backwards too, so that
// airflow proves no direction. Errors: no such supply.
//
// Method: phase.rotation.
func ReversedBy(supply Supply) (Swap, error) {
	switch supply {
	case ThreePhase:
		return SwapTwoLines, nil
	case SinglePhase:
		return SwapStartingLeads, nil
	case Inverter:
		return SwapDriveOutput, nil
	case TwoSpeed:
		return SwapEachSpeed, nil
	case Direct:
		return SwapByMaker, nil
	}
	return "", limit.Break("supply", limit.NotTabulated)
}

// A Direction is which way a motor turns beside another hookup. The spellings are
// keys.
type Direction string

// Directions.
const (
	SameWay  Direction = "same"
	OtherWay Direction = "reversed"
)

// DirectionOf returns which way a three-phase motor turns with its leads l1, l2 and
// l3, each 1 to 3, on the first, second and third line, beside 1, 2, 3: the same
// for all moved one step, the other way for two exchanged. Errors: a lead that is
// not 1 to 3, or on two lines.
//
// Method: phase.rotation.order.
func DirectionOf(l1, l2, l3 int) (Direction, error) {
	for _, l := range [...]struct {
		name string
		lead int
	}{{"l1", l1}, {"l2", l2}, {"l3", l3}} {
		if l.lead < 1 || l.lead > 3 {
			return "", limit.Break(l.name, limit.OutOfRange)
		}
	}
	switch {
	case l2 == l1:
		return "", limit.Break("l2", limit.OutOfRange)
	case l3 == l1, l3 == l2:
		return "", limit.Break("l3", limit.OutOfRange)
	case l2 == l1%3+1:
		return SameWay, nil
	}
	return OtherWay, nil
}
