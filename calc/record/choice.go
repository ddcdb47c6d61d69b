package record

import (
	"slices"
	"strings"

	"roofside/calc/number"
)

// An Option is a closed set of words.
type Option interface {
	~string
	Options() []string
}

// RuleOption is broken by a word that is not among a place's options.
const RuleOption number.Rule = "option"

// A Choice is the place of one word of a closed set.
type Choice[O Option] struct {
	blank
	value O
}

// State returns whether a word has been chosen.
func (c *Choice[O]) State() State {
	if c.value != "" {
		return Known
	}
	return c.state
}

// Text returns the canonical text of c.
func (c *Choice[O]) Text() string {
	if c.value != "" {
		return string(c.value)
	}
	return c.raw
}

// Set takes one of the options, or the text of a place without a value.
func (c *Choice[O]) Set(text string) error {
	text = strings.TrimSpace(text)
	if c.take(text) {
		c.value = ""
		return nil
	}
	if !slices.Contains(c.Options(), text) {
		*c = Choice[O]{blank: blank{Garbled, Garble(text)}}
		return &number.Error{Rule: RuleOption, Text: text}
	}
	*c = Choice[O]{value: O(text)}
	return nil
}

// Value returns the chosen word, "" for none.
func (c *Choice[O]) Value() O { return c.value }

// Options lists the words to choose from.
func (c *Choice[O]) Options() []string { return O("").Options() }

// A Selector is the place of any choice, its type put aside.
type Selector interface {
	Place
	Options() []string
}

// Supply is what feeds the motor.
type Supply string

// The supplies.
const (
	ThreePhase  Supply = "three-phase"
	SinglePhase Supply = "single-phase"
	Inverter    Supply = "drive" // three-phase from a variable frequency drive
	TwoSpeed    Supply = "two-speed"
	Direct      Supply = "direct" // not said: a wheel on its motor's shaft, or a motor with electronics of its own
)

// Options lists the supplies.
func (Supply) Options() []string {
	return []string{string(ThreePhase), string(SinglePhase), string(Inverter), string(TwoSpeed), string(Direct)}
}

// Mount is how the motor drives the wheel.
type Mount string

// The mounts.
const (
	ByBelt  Mount = "belt"
	OnShaft Mount = "direct" // the wheel stands on the motor's own shaft
)

// Options lists the mounts.
func (Mount) Options() []string { return []string{string(ByBelt), string(OnShaft)} }

// Answer is yes or no.
type Answer string

// The answers.
const (
	Yes Answer = "yes"
	No  Answer = "no"
)

// Options lists the answers.
func (Answer) Options() []string { return []string{string(Yes), string(No)} }

// Pitch is whether a motor sheave's pitch diameter can be set.
type Pitch string

// The kinds of motor sheave.
const (
	Fixed      Pitch = "fixed"
	Adjustable Pitch = "adjustable"
)

// Options lists the kinds of motor sheave.
func (Pitch) Options() []string { return []string{string(Adjustable), string(Fixed)} }

// Origin is where a target speed comes from, the most trusted first.
type Origin string

// The origins of a target speed.
const (
	FromReport     Origin = "report"     // a balance report or the design
	FromTag        Origin = "tag"        // the drive tag
	FromTachometer Origin = "tachometer" // read on a healthy belt
	FromCount      Origin = "count"      // turns counted by hand, times motor speed
	FromSheaves    Origin = "sheaves"    // the diameters, times motor speed
	FromRating     Origin = "rating"     // the new fan's own rating, for another wheel
)

// Options lists the origins that can be chosen.
func (Origin) Options() []string {
	return []string{string(FromReport), string(FromTag), string(FromTachometer), string(FromCount), string(FromSheaves)}
}

// Goal is what is sought of the fan laws.
type Goal string

// The goals.
const (
	GoalSpeed    Goal = "speed" // what happens at a speed
	GoalAirflow  Goal = "airflow"
	GoalPressure Goal = "pressure"
	GoalPower    Goal = "power"
)

// Options lists the goals.
func (Goal) Options() []string {
	return []string{string(GoalSpeed), string(GoalAirflow), string(GoalPressure), string(GoalPower)}
}

// Listing is whether a hood carries a listed airflow.
type Listing string

// The listings.
const (
	Listed   Listing = "listed"
	Unlisted Listing = "unlisted"
)

// Options lists the listings.
func (Listing) Options() []string { return []string{string(Listed), string(Unlisted)} }
