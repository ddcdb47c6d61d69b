// Package limit is how a formula refuses an input: the parameter at fault and
// the rule it breaks, as fields, so that a caller can point at the place the
// value came from and word the rule in its own language.
//
// Every formula of the library checks its inputs here and passes its result
// through [Result]; so none of them returns a NaN or an infinity.
package limit

import (
	"errors"
	"math"
)

// A Rule names what an input breaks. The spellings are keys for messages and
// never change.
type Rule string

// Rules that hold for any number.
const (
	NotFinite   Rule = "notFinite"   // a NaN or an infinity came in
	NotPositive Rule = "notPositive" // zero or less where only more makes sense
	Negative    Rule = "negative"    // less than zero
	OutOfRange  Rule = "outOfRange"  // beyond what the formula is defined for
	Overflow    Rule = "overflow"    // the inputs are so far apart that the result is no number
)

// Rules of sheaves and belts.
const (
	SheavesOverlap    Rule = "sheavesOverlap"    // the axes are closer than half the sum of the diameters
	BeltTooShort      Rule = "beltTooShort"      // the belt does not reach around touching sheaves
	AnchorsSame       Rule = "anchorsSame"       // both anchors say the same and give no slope
	AnchorsContradict Rule = "anchorsContradict" // opening a sheave must make its pitch diameter smaller
	TurnsNegative     Rule = "turnsNegative"     // a sheave can't be closed past closed
	TooFewTurns       Rule = "tooFewTurns"       // the reading error is as large as the count
	GrooveTooNarrow   Rule = "grooveTooNarrow"   // the belt would ride above the sheave's rim
	SheaveTooSmall    Rule = "sheaveTooSmall"    // no pitch diameter is left under the rim
	NotTabulated      Rule = "notTabulated"      // the table has no such row
	TooCoarse         Rule = "tooCoarse"         // the reading error is as large as the reading
	TooDeep           Rule = "tooDeep"           // a span pressed in so far no longer answers in proportion
	NoSuchBelt        Rule = "noSuchBelt"        // text that is no section's belt number
	Improbable        Rule = "improbable"        // a fan speed that hardly any such drive has
)

// Rules of motors, air and supply.
const (
	OddPoles         Rule = "oddPoles"         // poles come in pairs
	AboveSynchronous Rule = "aboveSynchronous" // an induction motor's rotor is never faster than its field
	SlipTooLarge     Rule = "slipTooLarge"     // no usual motor has such a plate
	Stalled          Rule = "stalled"          // the load leaves no speed
	BelowNoLoad      Rule = "belowNoLoad"      // a loaded motor draws no less than an idle one
	NoLoadTooLarge   Rule = "noLoadTooLarge"   // no-load current not under full-load current
	NotAllowed       Rule = "notAllowed"       // the code has no rate because the use is not permitted
	LostPhase        Rule = "lostPhase"        // legs that tell a lost phase tell no load
	AllZero          Rule = "allZero"          // three readings of nothing: no unbalance, and no proof of anything
	TooUnbalanced    Rule = "tooUnbalanced"    // a motor is not to be run on such a supply
	NoTriangle       Rule = "noTriangle"       // no three phasors that close have these magnitudes
	NotThree         Rule = "notThree"         // a lead roll has three positions
	NotWhole         Rule = "notWhole"         // a conductor goes through a clamp a whole number of times
)

// An Error is an input that a formula can't take.
type Error struct {
	Parameter string // the function's parameter; empty when no single one is at fault
	Rule      Rule
}

func (e *Error) Error() string {
	if e.Parameter == "" {
		return string(e.Rule)
	}
	return e.Parameter + ": " + string(e.Rule)
}

// Break returns the error of a parameter that breaks a rule.
func Break(parameter string, rule Rule) error {
	return &Error{Parameter: parameter, Rule: rule}
}

// Rename returns err with another name for its parameter, where a formula passes
// an input on under a name of its own; any other error as it is.
func Rename(err error, from, to string) error {
	var e *Error
	if errors.As(err, &e) && e.Parameter == from {
		return Break(to, e.Rule)
	}
	return err
}

// Finite reports a parameter that is a NaN or an infinity.
func Finite[Q ~float64](parameter string, x Q) error {
	if math.IsNaN(float64(x)) || math.IsInf(float64(x), 0) {
		return Break(parameter, NotFinite)
	}
	return nil
}

// Positive reports a parameter that is not finite or not above zero.
func Positive[Q ~float64](parameter string, x Q) error {
	if err := Finite(parameter, x); err != nil {
		return err
	}
	if x <= 0 {
		return Break(parameter, NotPositive)
	}
	return nil
}

// NonNegative reports a parameter that is not finite or below zero.
func NonNegative[Q ~float64](parameter string, x Q) error {
	if err := Finite(parameter, x); err != nil {
		return err
	}
	if x < 0 {
		return Break(parameter, Negative)
	}
	return nil
}

// First returns the first error that is not nil, so that checks read as a list.
func First(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

// Result passes a finite result on and turns any other into zero and an
// [Overflow] error: the last line of every formula.
func Result[Q ~float64](x Q) (Q, error) {
	if math.IsNaN(float64(x)) || math.IsInf(float64(x), 0) {
		return 0, Break("", Overflow)
	}
	return x, nil
}
