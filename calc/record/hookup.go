package record

// Leads is which motor leads stand on the lines L1, L2 and L3, in that order.
type Leads string

// Options lists the orders: as marked and each moved on by one place, which turn
// the motor the same way; then those with two leads exchanged.
func (Leads) Options() []string {
	return []string{"1-2-3", "3-1-2", "2-3-1", "2-1-3", "3-2-1", "1-3-2"}
}

// Rotation is which way a wheel turned when it was bumped.
type Rotation string

// The ways.
const (
	MarkedWay Rotation = "marked" // as the mark on the fan has it
	WrongWay  Rotation = "reverse"
)

// Options lists the ways.
func (Rotation) Options() []string { return []string{string(MarkedWay), string(WrongWay)} }

// Protection is what protects a motor from overload.
type Protection string

// The kinds of protection.
const (
	OverloadRelay    Protection = "overload-relay"    // has a dial
	Heaters          Protection = "heaters"           // are picked from the starter's own table
	ThermalProtector Protection = "thermal-protector" // is built into the motor
	ByDrive          Protection = "by-drive"          // is set in a variable frequency drive
)

// Options lists the kinds of protection.
func (Protection) Options() []string {
	return []string{string(OverloadRelay), string(Heaters), string(ThermalProtector), string(ByDrive)}
}

// Restart is how a motor starts again once its protection has tripped.
type Restart string

// The ways of starting again.
const (
	ByHand   Restart = "manual"
	ByItself Restart = "automatic"
)

// Options lists the ways of starting again.
func (Restart) Options() []string { return []string{string(ByHand), string(ByItself)} }
