package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Overall judges a fan by all that can be held against it so far: the new drive as
// far as the next move has come, what stands against running its belt, its tension once
// it was read, the reading that its motor is proven by, conduit and conductors once there are any, and a base
// that does not go well over the curb. judged is false where there is nothing yet. A
// part of the job that has not been begun is not held against a fan: [Handover] lists
// what is open.
func Overall(f *record.Fan) (worst Verdict, judged bool) {
	var t Table
	if f.Supply.Value() != record.Direct {
		t = TableToSet(f)
	}
	all := append(Running(f, t, Prove(f)), Fitting(f, LikeForLike(f))...)
	return Worst(all), len(all) > 0
}

// anyMark is the mark of the rule that a tension is judged by where no force is shown:
// force and edges go with it alike.
const anyMark = unit.Inch / 16

// Running returns what can be held against the fan where it stands, with the table and
// the proof that were made of it. No place that is silent, see [record.Silent], has a
// part in it.
func Running(f *record.Fan, t Table, p Proof) (all []Verdict) {
	if f.Supply.Value() != record.Direct {
		m, _ := NextMove(f, t)
		if standing, judged := Standing(f, t, m); judged {
			all = append(all, standing)
		}
		run := RunAt(f, SetTurns(f, t, m), nil)
		all = append(all, BeltBars(f, m, run, Fits(f, run))...)
		if last, _, taut := TensionNow(f, t, m, anyMark); last != nil {
			all = append(all, taut.Verdict)
		}
	}
	switch {
	case p.Taken:
		all = append(all, p.Worst)
	default:
		if p.OfPhases.Level >= Watch {
			all = append(all, p.OfPhases)
		}
		if p.OfRotation.Level == Stop {
			all = append(all, p.OfRotation)
		}
	}
	return append(append(all, racewayVerdicts(f)...), Exhausting(f)...)
}

// Exhausting returns what stands against the exhaust as it was measured: the hood's
// airflow, the air's speed in the duct by it, the kitchen's pressure. A planned airflow
// proves nothing and is held against nobody.
func Exhausting(f *record.Fan) (all []Verdict) {
	q := HoodAirflow(f, Point{})
	for _, v := range [...]Verdict{HoodVerdict(f, q), DuctVerdict(DuctVelocity(f, q)), SpaceVerdict(f)} {
		if v.Level >= Watch {
			all = append(all, v)
		}
	}
	return all
}

// Fitting returns what stands against the new fan's taking the old one's place: the
// base's going over the curb, and of the lines that hold old against new what is a stop.
func Fitting(f *record.Fan, lines []Line) (all []Verdict) {
	for _, l := range lines {
		if l.Level == Stop {
			all = append(all, Verdict{Level: Stop, Rule: RuleUnlike, Method: l.Method})
			break // the section that holds them says which, and why
		}
	}
	for _, along := range []bool{false, true} {
		if v := ClearanceVerdict(Clearance(f, along)); v.Level >= Watch {
			all = append(all, v)
		}
	}
	return all
}

// racewayVerdicts judge what has been said of conduit, conductors and box.
func racewayVerdicts(f *record.Fan) (all []Verdict) {
	if len(f.Wires) > 0 {
		all = append(append(all, FillVerdict(f)), CircuitOf(f).Verdicts(f)...)
	}
	all = append(all, JointVerdicts(f, Adapter(f))...)
	if Boxed(f) {
		all = append(all, BoxVerdict(f))
	}
	return all
}
