package record

import "slices"

// A Check is something of the swap that leaves no number behind: done, or not
// applicable and why, or still open.
type Check struct {
	State Choice[Checked]
	Why   Word
}

// Checked is what became of a check.
type Checked string

// The answers to a check; one without an answer is open.
const (
	Done          Checked = "done"
	NotApplicable Checked = "not-applicable"
)

// Options lists the answers.
func (Checked) Options() []string { return []string{string(Done), string(NotApplicable)} }

// A CheckGroup is the checks of one part of the job, in the order they are done.
type CheckGroup struct {
	Name   string
	Checks []string
}

// CheckGroups returns the checks from the day before the crane to handover. What
// leaves a value in the record (rotation, tension, amps) is no check: the value is.
func CheckGroups() []CheckGroup {
	groups := slices.Clone(checkGroups[:])
	for i := range groups {
		groups[i].Checks = slices.Clone(groups[i].Checks)
	}
	return groups
}

var checkGroups = [...]CheckGroup{
	{"bench", []string{"plate-matches", "rotation-mark", "base-fits"}},
	{"crane", []string{"cooking-off", "alarm-told", "lift-points", "wind", "old-locked-out", "nobody-under", "duct-covered", "wheel-chocked"}},
	{"set", []string{"duct-open", "level-sealed", "hinge", "grease-container", "clearances", "disconnect-in-sight", "joints", "set-screws", "bearings"}},
	{"prove", []string{"insulation-test", "overload-set", "line-volts-first", "turns-free", "guard", "bumped-with-belt", "fan-down", "vibration"}},
	{"interlocks", []string{"exhaust-on-discharge", "makeup-proves", "makeup-stops", "appliances-off"}},
	{"handover", []string{"alarm-restored", "covers-closed", "owner-shown"}},
}

var checkNames = func() (names []string) {
	for _, g := range checkGroups {
		names = append(names, g.Checks...)
	}
	return names
}()

// Check returns the check with a name, or nil.
func (f *Fan) Check(name string) *Check {
	i := slices.Index(checkNames, name)
	if i < 0 {
		return nil
	}
	return &f.Checks[i]
}

// mostChecks is how many there are; a test compares.
const mostChecks = 35

func (l *lister) checks(f *Fan) {
	for i, name := range checkNames {
		l.add(name, &f.Checks[i].State)
		l.add(name+"-why", &f.Checks[i].Why)
	}
}
