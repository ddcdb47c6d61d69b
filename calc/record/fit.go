package record

import "roofside/calc/unit"

// Fit is what decides whether one fan can stand where the other stood. Of the old
// fan the curb is measured outside, of the new one its base inside, for the one
// goes over the other.
type Fit struct {
	Model     Word
	Phases    Choice[Phases] // of the motor
	Frame     Word           // of the motor
	MotorBore Entry[unit.Length]
	MotorKey  Entry[unit.Length] // width of the key
	FanBore   Entry[unit.Length]
	FanKey    Entry[unit.Length]

	CurbWidth  Entry[unit.Length] // across the hinge
	CurbLength Entry[unit.Length] // along the hinge
	Inlet      Entry[unit.Length] // diameter of the fan's inlet
	Weight     Entry[unit.Mass]
	Hinge      Choice[HingeSide]
	Discharge  Choice[Discharge]
}

// Phases is how many phases a motor's plate asks for.
type Phases string

// The phases.
const (
	OnePhase    Phases = "1"
	ThreePhases Phases = "3"
)

// Options lists the phases.
func (Phases) Options() []string { return []string{string(ThreePhases), string(OnePhase)} }

// HingeSide is the side of the curb a fan tips over, as seen by somebody who
// stands at the disconnect.
type HingeSide string

// NoHinge is of a fan that doesn't tip up.
const NoHinge HingeSide = "none"

// Options lists the sides.
func (HingeSide) Options() []string { return []string{"near", "far", "left", "right", string(NoHinge)} }

// Discharge is the way that a fan throws the air.
type Discharge string

// Upward is what grease asks for: away from the roof.
const Upward Discharge = "up"

// Options lists the ways.
func (Discharge) Options() []string { return []string{string(Upward), "side", "down"} }

func (l *lister) fit(t *Fit) {
	l.add("model", &t.Model)
	l.add("phases", &t.Phases)
	l.add("frame", &t.Frame)
	put(l, "motor-bore", &t.MotorBore, &bore)
	put(l, "motor-key", &t.MotorKey, &bore)
	put(l, "fan-bore", &t.FanBore, &bore)
	put(l, "fan-key", &t.FanKey, &bore)
	put(l, "curb-width", &t.CurbWidth, &taped)
	put(l, "curb-length", &t.CurbLength, &taped)
	put(l, "inlet", &t.Inlet, &taped)
	put(l, "weight", &t.Weight, &weight)
	l.add("hinge", &t.Hinge)
	l.add("discharge", &t.Discharge)
}
