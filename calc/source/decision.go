package source

import "slices"

// A Decision is the rule by which a value with its error is held against a limit:
// JCGM 106:2012 names them guarded and simple acceptance.
type Decision string

// The decision rules; what sets no limit has none.
const (
	NoLimit   Decision = ""
	Guarded   Decision = "guarded"    // the whole band must clear the limit
	ByReading Decision = "by_reading" // the reading itself decides
)

// byReading are the limits that the trade set with a shop's tools in mind: their width
// already holds the error of a spring scale, a straightedge, a clamp or a tachometer.
var byReading = []string{
	"drive.tolerance",
	"belt.align", "belt.verdict", "belt.force.bands", "belt.force.listed", "belt.travel.allowance",
	"phase.unbalance.amps", "phase.unbalance.idle",
}

// guarded are the limits that protect people, motor, wheel or wire, and those that ask
// whether a value can be right at all.
var guarded = []string{
	"wheel.max", "motor.limits", "air.load.proportional", "air.laws", "air.duct.minimum", "air.hood", "air.hood.label", "air.makeup",
	"drive.adjustable.usual", "drive.motorsheave", "drive.groove", "drive.swapped", "drive.vfd", "drive.creep", "drive.harmonic", "drive.motor.reading", "drive.twospeed", "drive.target", "drive.setting",
	"belt.speed.limit", "belt.travel", "belt.travel.reach", "belt.center", "belt.groove", "belt.number", "belt.count",
	"phase.unbalance.volts", "phase.unbalance.input", "phase.derating", "phase.headroom", "phase.lost", "phase.return", "phase.branch", "phase.phases", "phase.rotation", "phase.rotation.order",
	"phase.plate.volts", "phase.system", "phase.system.plate", "phase.frequency", "phase.connection", "phase.overload", "phase.power.shaft",
	"raceway.adapter", "raceway.place", "raceway.fill", "raceway.fill.count", "raceway.jam", "raceway.box.fill", "raceway.rating", "raceway.usable", "raceway.ambient",
	"raceway.terminals", "raceway.small.length", "raceway.flex.length", "raceway.motor.wires", "raceway.motor.agree", "raceway.device.least", "raceway.ground.raised", "raceway.metal.ground", "raceway.demand.plate", "raceway.overcurrent", "raceway.overcurrent.plate", "raceway.ground", "raceway.flex.ground", "raceway.drop",
	"fit.alike", "fit.volts", "fit.discharge", "fit.clearance",
}

// DecisionOf returns the rule by which the limit of a method is decided.
func DecisionOf(key string) Decision {
	switch {
	case slices.Contains(byReading, key):
		return ByReading
	case slices.Contains(guarded, key):
		return Guarded
	}
	return NoLimit
}
