package drive

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// DefaultLead is the travel of an adjustable sheave's flange in one turn: 16
// threads to the inch (common practice).
const DefaultLead unit.Length = unit.Inch / 16

// AdjustableRange is how far an adjustable sheave's pitch diameter commonly
// goes to either side of its nominal one: [source.VentilationManual], 2.7.
const AdjustableRange unit.Ratio = 0.30

// An Adjustable is an adjustable sheave as a straight line of pitch diameter
// over turns open. Make one with [NewAdjustable] or [NewAdjustableRate]; the
// zero value gives only errors.
type Adjustable struct {
	turns   unit.Turns  // one point of the line,
	pitch   unit.Length // its pitch diameter,
	perTurn unit.Length // and how much smaller each turn open makes it
}

// NewAdjustable returns the sheave with pitch diameter d1 at t1 turns open and
// d2 at t2. Errors: a diameter not above zero, turns below zero, both anchors
// the same, or anchors that make the sheave larger, or no smaller, as it opens.
//
// Method: drive.adjustable.
func NewAdjustable(t1 unit.Turns, d1 unit.Length, t2 unit.Turns, d2 unit.Length) (Adjustable, error) {
	if err := limit.First(checkTurns("t1", t1), limit.Positive("d1", d1), checkTurns("t2", t2), limit.Positive("d2", d2)); err != nil {
		return Adjustable{}, err
	}
	if t1 == t2 && d1 == d2 {
		return Adjustable{}, limit.Break("t2", limit.AnchorsSame)
	}
	per, err := limit.Result((d1 - d2) / unit.Length(t2-t1)) // equal turns with two diameters: infinite
	if err != nil || per <= 0 {
		return Adjustable{}, limit.Break("d2", limit.AnchorsContradict)
	}
	return Adjustable{t1, d1, per}, nil
}

// NewAdjustableRate returns the sheave with the given pitch diameter at the
// given turns open, and perTurn less for every further turn: from one reading
// and the geometry of [PitchPerTurn]. Errors: a diameter or perTurn not above
// zero, turns below zero.
//
// Method: drive.adjustable.
func NewAdjustableRate(turns unit.Turns, pitch, perTurn unit.Length) (Adjustable, error) {
	if err := limit.First(checkTurns("turns", turns), limit.Positive("pitch", pitch), limit.Positive("perTurn", perTurn)); err != nil {
		return Adjustable{}, err
	}
	return Adjustable{turns, pitch, perTurn}, nil
}

// Pitch returns the pitch diameter at the given turns open. Beyond the anchors
// the line is carried on. Errors: turns below zero, or so many that no diameter
// is left.
func (a Adjustable) Pitch(turns unit.Turns) (unit.Length, error) {
	if err := limit.First(a.check(), checkTurns("turns", turns)); err != nil {
		return 0, err
	}
	d, err := limit.Result(a.pitch - a.perTurn*unit.Length(turns-a.turns))
	if err != nil || d <= 0 {
		return 0, limit.Break("turns", limit.SheaveTooSmall)
	}
	return d, nil
}

// Turns returns the turns open that give a pitch diameter. Errors: pitch not
// above zero, or larger than the closed sheave's.
func (a Adjustable) Turns(pitch unit.Length) (unit.Turns, error) {
	if err := limit.First(a.check(), limit.Positive("pitch", pitch)); err != nil {
		return 0, err
	}
	t, err := limit.Result(a.turns + unit.Turns((a.pitch-pitch)/a.perTurn))
	if err != nil {
		return 0, err
	}
	const slack = 1e-9 // closed is closed, however the last bit falls
	if t < 0 {
		if t < -slack {
			return 0, limit.Break("pitch", limit.TurnsNegative)
		}
		t = 0
	}
	return t, nil
}

// PerTurn returns how much smaller one turn open makes the pitch diameter.
func (a Adjustable) PerTurn() unit.Length { return a.perTurn }

func (a Adjustable) check() error {
	if a.perTurn <= 0 {
		return limit.Break("", limit.AnchorsSame)
	}
	return nil
}

func checkTurns(name string, turns unit.Turns) error {
	if err := limit.Finite(name, turns); err != nil {
		return err
	}
	if turns < 0 {
		return limit.Break(name, limit.TurnsNegative)
	}
	return nil
}

// UsualMostTurns returns the greatest opening usual for a section: 5 turns for
// A, AX and 4L, 6 for B, BX and 5L (common practice); false for others.
//
// Method: drive.adjustable.usual.
func UsualMostTurns(s Section) (unit.Turns, bool) {
	switch s {
	case SectionA, SectionAX, Section4L:
		return 5, true
	case SectionB, SectionBX, Section5L:
		return 6, true
	}
	return 0, false
}

// UsualLeastTurns returns the least opening usual for a section: fully closed
// for A, AX and 4L; one turn for B, BX and 5L, which are commonly not rated
// closed (common practice); false for others.
//
// Method: drive.adjustable.usual.
func UsualLeastTurns(s Section) (unit.Turns, bool) {
	switch s {
	case SectionA, SectionAX, Section4L:
		return 0, true
	case SectionB, SectionBX, Section5L:
		return 1, true
	}
	return 0, false
}

// PitchPerTurn returns how much smaller one turn open makes the pitch diameter
// of a sheave with one moving flange. Errors: lead not above zero, angle not
// between 0 and 180°.
//
// Method: drive.adjustable.
func PitchPerTurn(lead unit.Length, angle unit.Angle) (unit.Length, error) {
	if err := limit.Positive("lead", lead); err != nil {
		return 0, err
	}
	return GapChange(lead, angle)
}

// LeadForTravel returns the lead that makes the pitch diameter smaller by
// change over the given turns. Errors: an input not above zero, angle not
// between 0 and 180°.
//
// Method: drive.adjustable.
func LeadForTravel(change unit.Length, turns unit.Turns, angle unit.Angle) (unit.Length, error) {
	if err := limit.First(limit.Positive("change", change), limit.Positive("turns", turns), checkAngle(angle)); err != nil {
		return 0, err
	}
	return limit.Result(change / unit.Length(turns) * unit.Length(math.Tan(float64(angle)/2)))
}

// CenterShift returns how far the belt's center plane moves sideways when a
// sheave with one moving flange is opened by change turns: half the flange's
// travel; negative when it is closed. Errors: change not finite, lead not above
// zero.
//
// Method: drive.adjustable.shift.
func CenterShift(change unit.Turns, lead unit.Length) (unit.Length, error) {
	if err := limit.First(limit.Finite("change", change), limit.Positive("lead", lead)); err != nil {
		return 0, err
	}
	return limit.Result(lead * unit.Length(change) / 2)
}
