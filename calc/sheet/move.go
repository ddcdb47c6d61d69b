package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Setting answers with a setting of the sheave as it is thought of, not read.
func Setting(t unit.Turns) Answer[unit.Turns] { return fixed(t, "") }

// A Move is what the hand does next to the motor sheave.
type Move struct {
	Do        Do
	Turns     unit.Turns // how many, at least 0
	From, To  unit.Turns
	Stepwise  bool // more than half a turn toward faster: read amps at every half turn
	Speed     unit.Speed
	Over      unit.Ratio     // above the target
	Frequency unit.Frequency // to set a drive's output to
	Why       Why            // there is no setting
	Barred    Verdict        // of the setting that must not be run
	Sheave    Thing          // one that would reach the target all the same, where every setting must not be run; else ""
	Pitch     unit.Length    // its pitch diameter
}

// Why says why no setting brings the drive to its target.
type Why string

// The reasons.
const (
	TooSlow   Why = "too-slow"    // the fastest setting stays below the target
	TooFast   Why = "too-fast"    // the slowest is already more than allowed above it
	MustNotBe Why = "must-not-be" // the one that would reach it must not be run
)

// Do is the sort of move.
type Do string

// The moves.
const (
	DoOpen      Do = "open"  // slower
	DoClose     Do = "close" // faster
	DoStay      Do = "stay"
	DoHold      Do = "hold"      // the latest reading must be settled first
	DoTension   Do = "tension"   // slower than the drive gives: the belt first, then the same reading again
	DoCheck     Do = "check"     // faster than a belt can drive it: what is wrong first
	DoFixed     Do = "fixed"     // the sheave can't be set
	DoFrequency Do = "frequency" // the drive's output, where no setting of the sheave reaches the target
	DoNone      Do = "none"      // no setting reaches the target, or every one that does must not be run
	DoAsk       Do = "unknown"   // something is wanted first
)

// NextMove tells how to come from the setting now to the one to set. wanted is
// what keeps it from being known.
func NextMove(f *record.Fan, t Table) (m Move, wanted []record.Place) {
	for _, v := range t.Alarms {
		if v.lostPhase() || v.Rule == RuleHarmonic {
			return Move{Do: DoHold}, nil
		}
	}
	if do := doubted(t.trials, t.last); do != "" {
		return Move{Do: do, To: lastTrial(f).Turns.Value()}, nil
	}
	switch {
	case !t.Speed.Known():
		return Move{Do: DoAsk}, t.Speed.open()
	case !t.Target.Known():
		return Move{Do: DoAsk}, t.Target.open()
	case f.New.Sheave.Value() == record.Fixed:
		return Move{Do: DoFixed, Speed: t.Speed.Value, Over: unit.Ratio(t.Speed.Value/t.Target.Value) - 1}, nil
	case t.Set < 0:
		m = Move{Do: DoNone}
		m.Why, m.Barred = noSetting(t.Rows, t.Target.Value)
		switch h := SheavesFor(f); {
		case m.Why == MustNotBe:
			if thing, need, own := h.instead(); need.Known() && h.AtTheTarget.Level != Stop && own.Level != Stop && clears(f, t, m.Barred, own) {
				m.Sheave, m.Pitch = thing, need.Value
			}
		case h.Frequency.Known() && h.FrequencyVerdict.Level == Within:
			m.Do, m.Frequency, m.Speed = DoFrequency, h.Frequency.Value, t.Target.Value
		}
		return m, nil
	}
	row := t.Rows[t.Set]
	m = Move{To: row.Turns, Speed: row.Speed, Over: row.OfTarget.V - 1}
	now := NowTurns(f)
	if !now.Known() {
		m.Do = DoAsk
		return m, now.open()
	}
	m.From = now.Value
	switch m.Turns = m.To - m.From; {
	case m.Turns > slack:
		m.Do = DoOpen
	case m.Turns < -slack:
		m.Do, m.Turns = DoClose, -m.Turns
		m.Stepwise = m.Turns > halfTurn+slack
	default:
		m.Do, m.Turns = DoStay, 0
	}
	return m, nil
}

// sameAgain is how near two readings in a row that stay behind the drive must
// agree, as a share, to be believed (common practice): a belt that slipped and
// was tensioned between them would not.
const sameAgain = 0.02

// doubted tells what is to be settled before a latest reading that the drive
// can't explain sets the sheave: closing it on a slipping belt overspeeds the
// fan once the belt is tensioned. Read twice alike, it is the diameters, which
// the reading makes up for.
func doubted(s *trials, latest *record.Trial) Do {
	if latest == nil || latest != lastTrial(s.f) {
		return ""
	}
	last := s.verdict(latest)
	if last.Level != Watch {
		return ""
	}
	if all, n := s.f.Trials, len(s.f.Trials); n > 1 && known(&all[n-2].Reading.Speed) {
		before := s.verdict(all[n-2])
		if before.Level == Watch && before.Rule == last.Rule && abs(before.Value.Base-last.Value.Base) <= sameAgain {
			return ""
		}
	}
	if last.Rule == RuleNegativeSlip {
		return DoCheck
	}
	return DoTension
}

// OverVerdict judges how far the row to set lies above the target.
func OverVerdict(f *record.Fan, t Table) Verdict {
	if t.Set < 0 || !t.Target.Known() {
		v := overBy(f, 0)
		v.Level, v.Wanted = Unjudged, t.Target.open()
		return v
	}
	return overBy(f, unit.Ratio(t.Rows[t.Set].OfTarget.V)-1)
}

// LeftVerdict judges the speed that the new fan was left at: under the target, or
// too far above it.
func LeftVerdict(f *record.Fan, speed, target Answer[unit.Speed]) Verdict {
	below := BelowVerdict(speed, target)
	if above, ok := Apart(speed, target); ok && below.Level == Within {
		return overBy(f, above)
	}
	return below
}

// overBy judges a speed that lies a share above the target.
func overBy(f *record.Fan, above unit.Ratio) Verdict {
	v := Verdict{Rule: RuleTarget, Method: "drive.tolerance", Value: Figure{&unit.Share, float64(above)}, Limit: Figure{&unit.Share, float64(over(f))}}
	if above > over(f)+slack {
		v.Level = Watch
	}
	return v
}

// usualOver is how far a setting may lie above the target (common practice):
// a half turn is about 3 %, and a hood's flow is a least value.
const usualOver unit.Ratio = 0.05

func over(f *record.Fan) unit.Ratio {
	if f.Target.Over.State() == record.Known {
		return f.Target.Over.Value()
	}
	return usualOver
}

// PitchForTarget answers with the motor sheave's pitch diameter that would hit
// the target exactly, by the table's own speeds.
func PitchForTarget(f *record.Fan, t Table) Answer[unit.Length] {
	var a Ask
	Use(&a, "nᵣ", t.Speed)
	target, d := Use(&a, "n₂", t.Target), Use(&a, "dᵣ", MotorPitchAt(&f.New, startTurns(f, t.last)))
	a.miss(t.Speed.open()...)
	return Solve(&a, t.From, "drive.setting", nil, func() (unit.Length, error) {
		if t.line == nil { // a sheave that can't be set
			return d.V() * unit.Length(target.V()/t.Speed.Value), nil
		}
		return t.line.pitchFor(target.V()), nil
	})
}

// BelowVerdict judges a speed that was read or is fixed against the target: a
// hood's airflow is a least value.
func BelowVerdict(speed, target Answer[unit.Speed]) Verdict {
	return limitOf[unit.Speed]{rule: RuleBelow, method: "drive.tolerance", scale: &unit.Rotation, level: Watch, least: true}.hold(speed, target)
}
