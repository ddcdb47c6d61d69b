package belt

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// AlignmentAngle is the most by which the planes of a V-belt's two sheaves may be out
// of line: half a degree, about a tenth of an inch per foot, as it is printed for
// V-belts (common practice).
const AlignmentAngle unit.Angle = 0.5 * unit.Degree

// AlignmentAim is how far a straightedge may stand off at the far end of a span, for
// each of its length, on a synchronous belt: 1/16 in per foot, about a quarter of a
// degree (common practice). A V-belt's sheaves can be set as near, and need not be.
const AlignmentAim unit.Ratio = 1. / 16 / 12

// AlignmentOffset returns how far a straightedge along one sheave may stand off
// the other over a span: most, at [AlignmentAngle], and the aim at [AlignmentAim].
// Errors: span not above zero.
//
// Method: belt.align.
func AlignmentOffset(span unit.Length) (most, aim unit.Length, err error) {
	if err := limit.Positive("span", span); err != nil {
		return 0, 0, err
	}
	return span * unit.Length(math.Tan(float64(AlignmentAngle))), span * unit.Length(AlignmentAim), nil
}

// Alignment is a verdict on two sheaves' planes. The spellings are keys.
type Alignment string

// Verdicts on alignment.
const (
	AlignmentGood     Alignment = "aim"     // within the aim
	AlignmentAllowed  Alignment = "allowed" // past the aim, within the most: in order for V-belts
	AlignmentOut      Alignment = "out"     // past the most
	AlignmentUnjudged Alignment = "unjudged"
)

// JudgeAlignment returns the verdict on a gap read with off to either side at the far
// end of a span, by the gap itself; near tells that off reaches across the most. A
// reading whose error is wider than the most says nothing unless all of it lies to one
// side. Errors: gap or off below zero, span not above zero.
//
// Method: belt.align.
func JudgeAlignment(gap, off, span unit.Length) (stands Alignment, near bool, err error) {
	if err := limit.First(limit.NonNegative("gap", gap), limit.NonNegative("off", off)); err != nil {
		return "", false, err
	}
	most, aim, err := AlignmentOffset(span)
	if err != nil {
		return "", false, err
	}
	worst, err := limit.Result(gap + off)
	if err != nil {
		return "", false, err
	}
	best := max(gap-off, 0)
	near = (stand(best, most, aim) == AlignmentOut) != (stand(worst, most, aim) == AlignmentOut)
	if near && off > most {
		return AlignmentUnjudged, false, nil
	}
	return stand(gap, most, aim), near, nil
}

func stand(gap, most, aim unit.Length) Alignment {
	const slack = 1e-9
	switch {
	case gap <= aim*(1+slack):
		return AlignmentGood
	case gap <= most*(1+slack):
		return AlignmentAllowed
	}
	return AlignmentOut
}

// BeltShift returns how far the belt's middle moves along the shaft when an
// adjustable sheave with one moving flange goes from before to after turns open:
// half of what the flange travels, lead for each turn. Positive is the way the
// flange opens. Errors: lead not above zero, turns below zero.
//
// Method: belt.align.shift.
func BeltShift(lead unit.Length, before, after unit.Turns) (unit.Length, error) {
	if err := limit.First(limit.Positive("lead", lead), limit.NonNegative("before", before), limit.NonNegative("after", after)); err != nil {
		return 0, err
	}
	return limit.Result(lead / 2 * unit.Length(after-before))
}
