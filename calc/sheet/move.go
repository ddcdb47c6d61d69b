package sheet

import (
	"slices"

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
		if v.lostPhase() || v.Rule == RuleHarmonic || v.Rule == RuleRotation && t.last != nil { // turning backward, it shows no load
			return Move{Do: DoHold}, nil
		}
	}
	if do := doubted(f, t); do != "" {
		return Move{Do: do, To: NowTurns(f).Value}, nil
	}
	switch {
	case !t.Speed.Known():
		return Move{Do: DoAsk}, t.Speed.open()
	case !t.Target.Known():
		return Move{Do: DoAsk}, t.Target.open()
	case f.New.Sheave.Value() == record.Fixed:
		m = Move{Do: DoFixed, Speed: t.Speed.Value, Over: unit.Ratio(t.Speed.Value/t.Target.Value) - 1}
		if TargetReached(f, t.Speed, t.Target).Level == Watch {
			m = byFrequency(f, t, SheavesFor(f), m)
		}
		return m, nil
	case t.Set < 0:
		return noSetting(f, t), nil
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
		if beltLoose(f, t) { // closing speeds the fan up once the belt no longer slips
			return Move{Do: DoTension, To: now.Value}, nil
		}
	default:
		m.Do, m.Turns = DoStay, 0
	}
	return m, nil
}

// noSetting is the move where no setting reaches the target: the drive's output, where
// there is a drive, or else the sheave that would, where one would and may be run.
func noSetting(f *record.Fan, t Table) Move {
	m := Move{Do: DoNone, Why: t.Why, Barred: t.Barred}
	h := SheavesFor(f)
	if m.Why != MustNotBe {
		m = byFrequency(f, t, h, m)
	}
	if m.Do != DoNone {
		return m
	}
	if thing, need, ok := h.offered(f, t); ok {
		m.Sheave, m.Pitch = thing, need.Value
	}
	return m
}

// byFrequency returns the move by a drive's output, where there is a drive, its output
// may be so, and neither wheel nor motor is stopped at the target; else m. Turned up, a
// loose belt is tensioned first, as before a sheave is closed.
func byFrequency(f *record.Fan, t Table, h Sheaves, m Move) Move {
	if h.FrequencyVerdict.Level != Within || h.AtTheTarget.Level == Stop {
		return m
	}
	now := NowTurns(f)
	if t.SpeedAt(f, now).Value < t.Target.Value && beltLoose(f, t) {
		return Move{Do: DoTension, To: now.Value}
	}
	return Move{Do: DoFrequency, Frequency: h.Frequency.Value, Speed: t.Target.Value}
}

// sameAgain is how near two readings in a row that stay behind the drive must
// agree, as a share, to be believed (common practice): a belt that slipped and
// was tensioned between them would not.
const sameAgain = 0.02

// doubted tells what is to be settled before a latest reading that the drive
// can't explain sets the sheave: closing it on a slipping belt overspeeds the
// fan once the belt is tensioned. Read twice alike, it is the diameters, which
// the reading makes up for, unless the belt was read and is not taut.
func doubted(f *record.Fan, t Table) Do {
	s, latest := t.trials, t.last
	if latest == nil {
		return ""
	}
	last := s.verdict(latest)
	if last.Level != Watch || last.Rule == RuleMotorReading { // the motor's reading tells nothing of the fan's
		return ""
	}
	if i := slices.Index(f.Trials, latest); i > 0 {
		before := s.verdict(f.Trials[i-1])
		alike := before.Level == Watch && before.Rule == last.Rule && abs(before.Value.Base-last.Value.Base) <= sameAgain
		if alike && !beltLoose(f, t) {
			return ""
		}
	}
	if last.Rule == RuleNegativeSlip {
		return DoCheck
	}
	return DoTension
}

// beltLoose tells whether the belt as it was read last is loose, or may be: a later
// reading of speed alone doesn't make it taut.
func beltLoose(f *record.Fan, t Table) bool {
	if last, _, taut := TensionNow(f, t, Move{}, anyMark); last != nil {
		return taut.Lean == LeanLoose
	}
	return BeltLoose(f)
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
