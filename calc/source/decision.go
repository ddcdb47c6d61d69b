package source

import "slices"

// A Decision is the rule by which a value with its error is held against a limit:
// JCGM 106:2012 names them guarded and simple acceptance.
type Decision string

// The decision rules.
const (
	Guarded   Decision = "guarded"    // the whole band must clear the limit
	ByReading Decision = "by_reading" // the reading itself decides
)

// byReading are the limits that the trade set with a shop's tools in mind: their width
// already holds the error of a spring scale, a straightedge, a clamp or a tachometer.
// All others protect people, motor, wheel or wire and are guarded.
var byReading = []string{
	"drive.tolerance",
	"belt.align", "belt.verdict", "belt.force.bands", "belt.force.listed",
	"phase.unbalance.amps",
}

// DecisionOf returns the rule by which the limit of a method is decided.
func DecisionOf(key string) Decision {
	if slices.Contains(byReading, key) {
		return ByReading
	}
	return Guarded
}
