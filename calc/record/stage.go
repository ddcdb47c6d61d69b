package record

import "slices"

// Stage is how far the swap of a fan has come: the last step that is done.
type Stage string

// The steps of a swap, in the order they are done.
const (
	Surveyed       Stage = "surveyed"        // the old fan is on record
	Planned        Stage = "planned"         // what to bring, and which fan first
	BenchSet       Stage = "bench-set"       // sheave and belt set on the ground
	Unhooked       Stage = "unhooked"        // the old fan is locked out and disconnected
	LiftedOff      Stage = "lifted-off"      // the old fan is off its curb
	OnCurb         Stage = "set"             // the new fan stands on the curb
	Wired          Stage = "wired"           //
	RotationProven Stage = "rotation-proven" // the wheel turns the marked way
	RunIn          Stage = "run-in"          // the belt has run, and was tensioned again
	HandedOver     Stage = "handed-over"     //
)

// Options lists the steps in order.
func (Stage) Options() []string {
	return []string{string(Surveyed), string(Planned), string(BenchSet), string(Unhooked), string(LiftedOff),
		string(OnCurb), string(Wired), string(RotationProven), string(RunIn), string(HandedOver)}
}

// Next returns the step that comes after g, "" for none.
func (g Stage) Next() Stage { return g.by(1) }

// Proven tells whether at this step the fan is said to run as it should.
func (g Stage) Proven() bool {
	all := g.Options()
	return slices.Index(all, string(g)) >= slices.Index(all, string(RotationProven))
}

// Previous returns the step that comes before g, "" for none.
func (g Stage) Previous() Stage { return g.by(-1) }

func (g Stage) by(n int) Stage {
	all := g.Options()
	i := slices.Index(all, string(g)) + n
	if i < 0 || i >= len(all) {
		return ""
	}
	return Stage(all[i])
}

// Open tells whether the kitchen is without a proven fan: between the old one's
// being unhooked and the new one's rotation.
func (g Stage) Open() bool {
	all := g.Options()
	i := slices.Index(all, string(g))
	return i >= slices.Index(all, string(Unhooked)) && !g.Proven()
}
