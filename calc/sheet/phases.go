package sheet

import "roofside/calc/record"

// PhasesVerdict judges whether the new motor's plate asks for as many phases as what
// feeds it brings: three from one do not start, one of three lies across two of the
// lines. A motor driven directly has what its maker gave it. Unjudged while one of the
// two is not said.
func PhasesVerdict(f *record.Fan) Verdict {
	v := Verdict{Level: Unjudged, Rule: RulePhases, Method: "phase.phases"}
	plate, supply := f.New.Fit.Phases.Value(), f.Supply.Value()
	for _, p := range []record.Place{&f.New.Fit.Phases, &f.Supply} {
		if p.State() != record.Known {
			v.Wanted = append(v.Wanted, p)
		}
	}
	if len(v.Wanted) > 0 || supply == record.Direct {
		return v
	}
	v.Level = Within
	switch one := plate == record.OnePhase; {
	case supply == record.SinglePhase && !one:
		v.Level = Stop
	case supply == record.Inverter && one:
		v.Level, v.Rule = Stop, RuleOutputPhases
	case supply != record.SinglePhase && one:
		v.Level = Watch
	}
	return v
}
