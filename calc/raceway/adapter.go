package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// An Adapter is what joins two ends: its parts in order, none where the ends fit
// as they are, and the conditions of the joint.
type Adapter struct {
	Parts      []Part
	Conditions []Condition
}

// ToGroundOf returns on which side of 250 V a voltage to ground lies: 277 V of
// 480Y/277 is above, 120 V of 208Y/120 below. Errors: voltage below zero.
//
// Method: raceway.adapter.
func ToGroundOf(voltage unit.Voltage) (ToGround, error) {
	if err := limit.NonNegative("voltage", voltage); err != nil {
		return "", err
	}
	if voltage > bondAbove*(1+slack) {
		return Over250, nil
	}
	return UpTo250, nil
}

// Join returns the parts between two ends. Outdoors no reducing washers are
// used: a hub and a threaded bushing take their place. Threaded conduit is held in
// a knockout by two locknuts and bushed inside, outdoors by a hub. Ends are 1/2 to 2, of
// conduit from 3/8. Errors: an unknown kind, size, conduit, place or toGround;
// as a RowError with 0 for from and 1 for to where an end is at fault.
//
// Method: raceway.adapter.
func Join(from, to End, place Place, toGround ToGround) (Adapter, error) {
	if place != Indoors && place != Outdoors {
		return Adapter{}, limit.Break("place", limit.NotTabulated)
	}
	if toGround != UpTo250 && toGround != Over250 && toGround != ToGroundNotKnown {
		return Adapter{}, limit.Break("toGround", limit.NotTabulated)
	}
	for i, e := range [...]End{from, to} {
		if err := e.check(); err != nil {
			return Adapter{}, &RowError{i, err}
		}
	}
	j := joint{place: place, toGround: toGround, parts: make([]Part, 0, 6)}
	if from.Kind == ConduitEnd && to.Kind == ConduitEnd && from.Conduit == to.Conduit && from.Size == to.Size {
		j.put(Coupling, Gripping, from.Size, Gripping, to.Size, from.Conduit)
	} else {
		j.between(from, to)
	}
	j.judge(from, to)
	return Adapter{j.parts, j.conditions}, nil
}

func (e End) check() error {
	switch e.Kind {
	case ConduitEnd:
		_, err := bore(e.Conduit, e.Size, "Conduit", "Size")
		return err
	case Hub, Knockout, RingKnockout, FittingEnd:
		if r := e.Size.rank(); r < Size1by2.rank() {
			return limit.Break("Size", limit.NotTabulated)
		}
		return nil
	}
	return limit.Break("Kind", limit.NotTabulated)
}

func (e End) hole() bool { return e.Kind == Knockout || e.Kind == RingKnockout }

// thread returns the size of the male thread that an end has or gets.
func (e End) thread() TradeSize {
	if e.Kind == ConduitEnd && e.Size == Size3by8 {
		return Size1by2 // connectors of 3/8 are made with a 1/2 thread: common practice
	}
	return e.Size
}

// judge adds the conditions that follow from ends and parts.
func (j *joint) judge(from, to End) {
	washers := false
	for _, p := range j.parts {
		washers = washers || p.Kind == ReducingWashers
	}
	if (washers || from.Kind == RingKnockout || to.Kind == RingKnockout) && j.toGround != UpTo250 {
		j.note(BondOver250)
	}
	if j.place == Outdoors {
		j.note(ListedWet)
	}
	if from.thread() != to.thread() {
		j.note(SmallerRules)
	}
	for _, e := range [...]End{from, to} {
		if e.Kind != ConduitEnd {
			continue
		}
		switch {
		case !e.Conduit.Metallic():
			j.note(NeedsGround)
		case e.Conduit.Flexible():
			j.note(FlexGroundWire)
		case e.Conduit.Threaded():
			j.note(CoatThreads)
		}
		if e.Size == Size3by8 {
			j.note(ConnectorThread)
			j.note(SmallShort)
		}
	}
}
