package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Level is how a value stands to its limit. A higher level is worse; in a
// roll-up, what can't be judged ranks above within.
type Level int

// The levels.
const (
	Within Level = iota
	Unjudged
	Watch
	Stop
)

// A Rule names the limit a verdict is about. The words for it belong to the
// program that shows it.
type Rule string

// The rules.
const (
	RuleWheelMax      Rule = "wheel-max"
	RuleBeltSpeed     Rule = "belt-speed"
	RulePlateAmps     Rule = "plate-amps"
	RuleServiceAmps   Rule = "service-amps"
	RuleServiceNear   Rule = "service-near"
	RuleTripAmps      Rule = "trip-amps"
	RuleOverFrequency Rule = "over-frequency"
	RuleUsualTurns    Rule = "usual-turns"
	RuleLeastTurns    Rule = "least-turns"
	RuleMotorSheave   Rule = "motor-sheave-least"
	RuleSectionSheave Rule = "section-sheave-least"
	RuleTravel        Rule = "travel"
	RuleTarget        Rule = "target"
	RuleSources       Rule = "sources-agree"
	RuleMismatch      Rule = "mismatch"
	RuleSlip          Rule = "slip"
	RuleHarmonic      Rule = "harmonic"
	RuleNegativeSlip  Rule = "negative-slip"
	RuleMotorReading  Rule = "motor-reading"
	RuleLowSpeed      Rule = "low-speed"
	RuleDuct          Rule = "duct-velocity"
	RuleLabelAirflow  Rule = "label-airflow"
	RuleTableAirflow  Rule = "table-airflow"
	RuleSpacePressure Rule = "space-pressure"
	RuleTippedUp      Rule = "tipped-up"
	RuleLostPhase     Rule = "lost-phase"
	RuleNearlyOpen    Rule = "nearly-open"
	RulePhases        Rule = "plate-phases"
	RuleOutputPhases  Rule = "output-phases"
	RulePairOpen      Rule = "pair-open"
	RuleNoAmps        Rule = "no-amps"
	RuleOpenWinding   Rule = "open-winding"
	RuleOpenLine      Rule = "open-line"
	RuleReturnAmps    Rule = "return-amps"
	RuleBelow         Rule = "below-target"
	RuleBeltNumber    Rule = "belt-number"
	RuleSwapped       Rule = "sheaves-swapped"
	RuleServiceVoid   Rule = "service-void"
	RuleUnbalance     Rule = "unbalance"
	RuleInputVolts    Rule = "input-unbalance"
	RuleReach         Rule = "base-reach"
	RuleShort         Rule = "belt-short"
	RuleInstall       Rule = "install-travel"
	RuleTakeUp        Rule = "take-up-travel"
	RuleGroove        Rule = "belt-groove"
	RuleSection       Rule = "belt-section"
	RuleSunk          Rule = "belt-sunk"
	RuleProud         Rule = "belt-proud"
	RuleFamily        Rule = "belt-family"
	RuleCapacity      Rule = "belt-capacity"
	RuleTension       Rule = "belt-tension"
	RuleLoose         Rule = "belt-loose"
	RuleTight         Rule = "belt-tight"
	RuleReadings      Rule = "belt-readings"
	RuleAlignment     Rule = "alignment"
	RuleAmpsUnbalance Rule = "amps-unbalance"
	RuleAmpsApart     Rule = "amps-apart"
	RuleLightLoad     Rule = "light-load"
	RuleIdleAmps      Rule = "idle-amps"
	RuleBeltOff       Rule = "belt-off-amps"
	RuleOutputAmps    Rule = "output-unbalance"
	RuleMakerAmps     Rule = "maker-unbalance"
	RulePlateVolts    Rule = "plate-volts"
	RuleSystemVolts   Rule = "system-volts"
	RulePlateSystem   Rule = "plate-system"
	RulePlateHigh     Rule = "plate-system-high"
	RuleLineFrequency Rule = "line-frequency"
	RuleFlux          Rule = "volts-per-hertz"
	RuleCombined      Rule = "volts-and-frequency"
	RuleDoubleVolts   Rule = "double-volts"
	RuleHalfVolts     Rule = "half-volts"
	RuleDoubleAmps    Rule = "double-amps"
	RuleHalfAmps      Rule = "half-amps"
	RuleEfficiency    Rule = "efficiency"
	RuleRotation      Rule = "rotation"
	RuleRotationLeads Rule = "rotation-leads"
	RuleOverloadDial  Rule = "overload-dial"
	RuleOverloadLow   Rule = "overload-low"
	RuleOverloadTrip  Rule = "overload-trip"
	RuleConduitWet    Rule = "conduit-wet"
	RuleBond          Rule = "bond-over-250"
	RuleFill          Rule = "conduit-fill"
	RuleFillCount     Rule = "conduit-count"
	RuleFillSmall     Rule = "conduit-small"
	RuleJam           Rule = "jam"
	RuleBoxFill       Rule = "box-fill"
	RuleAmpacity      Rule = "ampacity"
	RuleDryOnly       Rule = "dry-only"
	RuleLeastWire     Rule = "least-wire"
	RuleTooHot        Rule = "too-hot"
	RuleUnmarked      Rule = "unmarked-wire"
	RuleWireCount     Rule = "wire-count"
	RulePlateAmpacity Rule = "plate-ampacity"
	RulePlateDevice   Rule = "plate-device"
	RuleAluminum      Rule = "aluminum-wire"
	RuleTerminals     Rule = "terminals-90"
	RuleOvercurrent   Rule = "overcurrent"
	RuleDeviceSmall   Rule = "device-small"
	RuleBreakerSmall  Rule = "breaker-small"
	RulePlateTable    Rule = "plate-table"
	RuleSmallLong     Rule = "small-long"
	RuleFlexLong      Rule = "flex-long"
	RuleNippleLong    Rule = "nipple-long"
	RuleGround        Rule = "equipment-ground"
	RuleGroundRaised  Rule = "ground-raised"
	RuleFlexTips      Rule = "flex-tips"
	RuleFlexSize      Rule = "flex-size"
	RuleFlexLength    Rule = "flex-length"
	RuleFlexRating    Rule = "flex-rating"
	RuleNoGround      Rule = "no-ground-wire"
	RuleDrop          Rule = "voltage-drop"
	RuleCurb          Rule = "curb-over"
	RuleCurbLoose     Rule = "curb-loose"
	RuleUnlike        Rule = "unlike"
	RuleSetting       Rule = "setting"
	RuleJoint         Rule = "joint"
)

// A Figure is a quantity in a verdict, its type put aside.
type Figure struct {
	Scale *unit.Scale
	Base  float64
}

// A Verdict is how a value stands to one limit, and why.
type Verdict struct {
	Level  Level
	Rule   Rule
	Method string         // key of the limit's source in the register
	Value  Figure         // the value that was judged
	Limit  Figure         // the limit it was held against
	Cold   bool           // judged for the coldest start
	Less   bool           // the limit is the plate's amps less what unbalanced volts take off
	Left   Figure         // of voltage unbalance: the share of its plate that a motor may give,
	Most   Figure         // and the amps that this leaves
	Near   bool           // judged by the reading itself, whose error reaches across the limit
	Wanted []record.Place // what would settle it, the most telling first
	Fault  *Fault         // why it can't be judged, where something is wrong
	Of     *record.Wire   // the row of conductors it is about, where it is about one
}

// A limitOf describes what a value is held against, and how: a limit that protects
// people, motor, wheel or wire asks that the whole band clears it; one that the trade
// set with a shop's tools in mind goes by the reading itself (JCGM 106:2012, guarded
// and simple acceptance). [source.DecisionOf] says which it is.
type limitOf[Q unit.Quantity] struct {
	rule      Rule
	method    string
	scale     *unit.Scale
	level     Level // beyond the limit
	least     bool  // the limit is a least value
	tolerance Q     // of a limit by reading: the widest band that still says something; 0 for a guarded one
}

// slack keeps the rounding of unit conversions from deciding a comparison.
const slack = 1e-9

// hold judges a value with its band against a limit. A limit that isn't known makes
// within impossible; so does a value that nothing bounds. A guarded limit is not
// judged where the band reaches across it; one by the reading, where the band is
// wider than its tolerance.
func (l limitOf[Q]) hold(value, bound Answer[Q]) Verdict {
	v := Verdict{Level: Within, Rule: l.rule, Method: l.method}
	if !value.Known() || !bound.Known() {
		v.Level = Unjudged
		if v.Fault = bound.Fault; v.Fault == nil {
			v.Fault = value.Fault
		}
		v.Wanted = append(append(v.Wanted, bound.open()...), value.open()...)
		return v
	}
	v.Value, v.Limit = Figure{l.scale, float64(value.Value)}, Figure{l.scale, float64(bound.Value)}
	if !bound.Bounded() {
		v.Level = Unjudged
		v.Wanted = append(settled(bound).Wanted, settled(value).Wanted...)
		return v
	}
	low, high := float64(value.Low()), float64(value.High())
	least, most := float64(bound.Low()), float64(bound.High())
	middle, limit := v.Value.Base, v.Limit.Base
	if l.least {
		low, high, least, most = -high, -low, -most, -least
		middle, limit = -middle, -limit
	}
	rounding := slack * max(abs(least), abs(most))
	across := low <= most+rounding && high > least+rounding
	switch {
	case across && value.Band+bound.Band <= l.tolerance*(1+slack):
		v.Near = true
		if middle > limit+rounding {
			v.Level = l.level
		}
	case across:
		v.Level = Unjudged
		if p := value.Steps.Unsettled(); p != nil {
			v.Wanted = append(v.Wanted, p)
		} else if p := bound.Steps.Unsettled(); p != nil {
			v.Wanted = append(v.Wanted, p)
		}
	case low > most+rounding:
		v.Level = l.level
	}
	return v
}

// open returns what keeps an answer from being known.
func (a Answer[Q]) open() []record.Place {
	if a.Fault != nil && a.Fault.Place != nil {
		return []record.Place{a.Fault.Place}
	}
	return a.Wanted
}

func abs(x float64) float64 {
	if x < 0 {
		return -x
	}
	return x
}

// fixed is an answer that stands in no place: a limit of the trade.
func fixed[Q unit.Quantity](v Q, method string) Answer[Q] {
	return Answer[Q]{Value: v, Steps: Steps{Method: method, done: true}}
}
