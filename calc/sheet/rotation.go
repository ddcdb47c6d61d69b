package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
)

// rotations lists where it stands which way the new wheel turned: at each speed of
// a two-speed motor.
func rotations(f *record.Fan) []*record.Choice[record.Rotation] {
	if f.Supply.Value() == record.TwoSpeed {
		return []*record.Choice[record.Rotation]{&f.New.Rotation, &f.New.RotationLow}
	}
	return []*record.Choice[record.Rotation]{&f.New.Rotation}
}

// RotationSeen notes which way the new wheel turned, and with which leads: what
// was seen with two of them the other way about is seen no more.
func RotationSeen(f *record.Fan, p *record.Choice[record.Rotation], way record.Rotation) error {
	s := &f.New
	if RotationStale(f) {
		for _, q := range []*record.Choice[record.Rotation]{&s.Rotation, &s.RotationLow} {
			if err := q.Set(""); err != nil {
				return err
			}
		}
	}
	if err := s.RotationLeads.Set(s.Leads.Text()); err != nil {
		return err
	}
	return p.Set(string(way))
}

// RotationStale tells whether two leads were exchanged since the wheel was bumped.
func RotationStale(f *record.Fan) bool {
	return Reverses(orMarked(f.New.RotationLeads.Value()), LeadsNow(f))
}

// RotationVerdict judges whether the new fan's rotation is proven: a wheel that
// turns backward moves air, too, and no reading at it means anything. It is proven
// for the leads that it was bumped with.
func RotationVerdict(f *record.Fan) Verdict {
	v := Verdict{Level: Within, Rule: RuleRotation, Method: "phase.rotation"}
	stale := RotationStale(f)
	if f.New.Leads.State() == record.Garbled {
		return Verdict{Level: Unjudged, Rule: RuleRotation, Method: v.Method, Fault: &Fault{&f.New.Leads, errGarbled}}
	}
	for _, p := range rotations(f) {
		if stale && p.Value() != "" {
			v.Level, v.Rule, v.Method, v.Wanted = Unjudged, RuleRotationLeads, "phase.rotation.order", append(v.Wanted, p)
			continue
		}
		switch p.Value() {
		case record.MarkedWay:
		case record.WrongWay:
			return Verdict{Level: Stop, Rule: RuleRotation, Method: "phase.rotation"}
		default:
			v.Level, v.Wanted = Unjudged, append(v.Wanted, p)
		}
	}
	return v
}

// Reversal returns what turns the new motor the other way; "" while the supply is
// not known.
func Reversal(f *record.Fan) phase.Swap {
	swap, err := phase.ReversedBy(phase.Supply(f.Supply.Value()))
	if err != nil {
		return ""
	}
	return swap
}
