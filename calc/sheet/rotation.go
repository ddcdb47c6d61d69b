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

// RotationVerdict judges whether the new fan's rotation is proven: a wheel that
// turns backward moves air, too, and no reading at it means anything.
func RotationVerdict(f *record.Fan) Verdict {
	v := Verdict{Level: Within, Rule: RuleRotation, Method: "phase.rotation"}
	for _, p := range rotations(f) {
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
