package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// An Order is what a page's plate tells the hand, as a word that machines read too.
type Order struct {
	Do      string
	To      unit.Turns // the setting ordered, where one is
	Setting bool       // one is
}

// The orders of Drive that are no [Do] of their own, and those of Belt. Power's are its
// steps.
const (
	OtherSheave = "other-sheave" // another sheave is named
	Asks        = "ask"          // something is wanted first

	BeltPress  = "press"  // the force is given, nothing was read yet
	BeltAway   = "away"   // loose: the motor base away from the fan
	BeltToward = "toward" // tight: toward it
	BeltOther  = "other"  // so too, and the base has no travel left: another belt
	BeltLeave  = "leave"
	BeltHalt   = "halt" // something bars running it
)

// Order is what the plate of a page tells the hand; it is empty on a page that orders
// nothing.
func (j *Job) Order(on Subject) Order {
	switch {
	case on == OfPower:
		return Order{Do: string(j.Proof().Next)}
	case !j.belted():
		return Order{}
	case on == OfDrive:
		return j.driveOrder()
	case on == OfBelt:
		return Order{Do: j.beltOrder()}
	}
	return Order{}
}

func (j *Job) driveOrder() Order {
	m, _ := j.Move()
	switch m.Do {
	case DoOpen, DoClose, DoStay:
		return Order{string(m.Do), m.To, true}
	case DoAsk:
		return Order{Do: Asks}
	case DoNone:
		if m.Sheave != "" {
			return Order{Do: OtherSheave}
		}
	}
	return Order{Do: string(m.Do)}
}

func (j *Job) beltOrder() string {
	b := j.Belt()
	if _, barred := Barred(b.Bars); barred {
		return BeltHalt
	}
	if b.Last == nil {
		if e := j.Set().Edges(record.NewBelt); !e.Least.Known() {
			return Asks
		}
		return BeltPress
	}
	toward, away := TravelLeft(j.f, b.Read.Run)
	spent := func(a Answer[unit.Length]) bool { return a.Known() && a.Low() <= 0 }
	switch {
	case b.Taut.Lean == LeanUnsaid:
		return Asks
	case b.Taut.Lean == LeanLoose && spent(away), b.Taut.Lean == LeanTight && spent(toward):
		return BeltOther
	case b.Taut.Lean == LeanLoose:
		return BeltAway
	case b.Taut.Lean == LeanTight:
		return BeltToward
	}
	return BeltLeave
}
