package belt

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Tautness is a verdict on a belt's tension. The spellings are keys.
type Tautness string

// Verdicts.
const (
	Loose    Tautness = "loose"
	Taut     Tautness = "within"
	Tight    Tautness = "tight"
	Unjudged Tautness = "unjudged" // the reading's error is wider than the band
)

// A Move is which way the motor base goes; the sheave's setting is never touched
// for tension, because it sets the fan's speed.
type Move string

// Moves.
const (
	MoveAway   Move = "away"   // from the fan: tighter
	MoveToward Move = "toward" // the fan: slacker
	MoveNone   Move = "none"
)

// A Reading is a force at [DeflectionDistance] and how far its errors reach.
type Reading struct{ Low, Value, High unit.Force }

// deepest is the share of the span up to which [ReadForce] takes a deflection: four
// times [DeflectionDistance], where the angle's own error is 0.8 %.
const deepest = 1. / 16

// ReadForce returns what a force measured at a deflection would be at
// [DeflectionDistance]: in proportion, which holds near it. forceOff and
// deflectionOff are how far each reading may be off; half of [DeflectionStep] for
// a rule. A force held while the deflection is read is taken the same way. Errors:
// force, deflection or span not above zero; an error below zero or as large as its
// reading; a deflection of more than 1/16 of the span.
//
// Method: belt.reading.
func ReadForce(force, forceOff unit.Force, deflection, deflectionOff, span unit.Length) (Reading, error) {
	if err := limit.First(limit.Positive("force", force), limit.NonNegative("forceOff", forceOff),
		limit.Positive("deflection", deflection), limit.NonNegative("deflectionOff", deflectionOff)); err != nil {
		return Reading{}, err
	}
	if forceOff >= force {
		return Reading{}, limit.Break("forceOff", limit.TooCoarse)
	}
	if deflectionOff >= deflection {
		return Reading{}, limit.Break("deflectionOff", limit.TooCoarse)
	}
	h, err := DeflectionDistance(span)
	if err != nil {
		return Reading{}, err
	}
	if deflection > span*deepest {
		return Reading{}, limit.Break("deflection", limit.TooDeep)
	}
	at := func(f unit.Force, d unit.Length) unit.Force { return f * unit.Force(h/d) }
	return reading(at(force-forceOff, deflection+deflectionOff), at(force, deflection), at(force+forceOff, deflection-deflectionOff))
}

// ReadFrequency returns the force at [DeflectionDistance] that a plucked span's
// frequency stands for. fOff is how far the frequency may be off, spread the share
// by which mass may: [MassSpread] for a typical mass. stiffness as in
// [DeflectionForce]. Errors: mass, span or f not above zero; fOff, spread or
// stiffness below zero; an error as large as its reading.
//
// Method: belt.reading.frequency.
func ReadFrequency(mass unit.LinearMass, spread unit.Ratio, span unit.Length, f, fOff unit.Frequency, stiffness unit.Force) (Reading, error) {
	if err := limit.First(limit.NonNegative("spread", spread), limit.NonNegative("fOff", fOff), limit.Positive("f", f)); err != nil {
		return Reading{}, err
	}
	if spread >= 1 {
		return Reading{}, limit.Break("spread", limit.TooCoarse)
	}
	if fOff >= f {
		return Reading{}, limit.Break("fOff", limit.TooCoarse)
	}
	var forces [3]unit.Force
	for i, side := range [...]float64{-1, 0, 1} {
		t, err := TensionFromFrequency(mass*unit.LinearMass(1+side*float64(spread)), span, f+unit.Frequency(side)*fOff)
		if err != nil {
			return Reading{}, err
		}
		if t == 0 {
			return Reading{}, limit.Break("", limit.Overflow)
		}
		if forces[i], err = DeflectionForce(t, stiffness); err != nil {
			return Reading{}, err
		}
	}
	return reading(forces[0], forces[1], forces[2])
}

func reading(low, value, high unit.Force) (Reading, error) {
	for _, f := range [...]unit.Force{low, value, high} {
		if _, err := limit.Result(f); err != nil {
			return Reading{}, err
		}
	}
	if low <= 0 {
		return Reading{}, limit.Break("", limit.Overflow)
	}
	return Reading{low, value, high}, nil
}

// A Verdict is what a reading says of a belt and what to do about it.
type Verdict struct {
	Tautness Tautness
	Move     Move
	Near     bool // the reading's error reaches across an edge of the band
}

// Judge returns the verdict on a reading against the band its force should lie in, by
// the reading itself: the trade set the band with a spring scale and a rule in mind.
// Where the reading's error reaches across an edge, and is wider than the band, none is
// given. Errors: a force not above zero, a band or a reading out of order.
//
// Method: belt.verdict.
func Judge(reading Reading, allowed Band) (Verdict, error) {
	if err := limit.First(limit.Positive("reading", reading.Low), limit.Positive("reading", reading.Value), limit.Positive("reading", reading.High),
		limit.Positive("allowed", allowed.Low), limit.Positive("allowed", allowed.High)); err != nil {
		return Verdict{}, err
	}
	if reading.Low > reading.Value || reading.Value > reading.High {
		return Verdict{}, limit.Break("reading", limit.OutOfRange)
	}
	if allowed.Low > allowed.High {
		return Verdict{}, limit.Break("allowed", limit.OutOfRange)
	}
	v := judge(reading.Value, allowed)
	v.Near = judge(reading.Low, allowed) != v || judge(reading.High, allowed) != v
	off, room := max(reading.Value-reading.Low, reading.High-reading.Value), allowed.High-allowed.Low
	if v.Near && off > room*(1+slack) {
		return Verdict{Unjudged, MoveNone, false}, nil
	}
	return v, nil
}

const slack = 1e-9

func judge(force unit.Force, allowed Band) Verdict {
	switch {
	case force < allowed.Low*(1-slack):
		return Verdict{Loose, MoveAway, false}
	case force > allowed.High*(1+slack):
		return Verdict{Tight, MoveToward, false}
	}
	return Verdict{Taut, MoveNone, false}
}
