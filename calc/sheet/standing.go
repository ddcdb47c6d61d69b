package sheet

import (
	"slices"

	"roofside/calc/record"
)

// Standing judges the new drive as far as the next move has come: the setting to
// set by what the latest reading says outright, how far above the target it
// lies, what its row says and whether the target is sure; a fixed sheave by its
// own speed; and where there is no setting, by why. judged is false where
// nothing can be held against anything yet.
func Standing(f *record.Fan, t Table, m Move) (worst Verdict, judged bool) {
	all := slices.Clip(t.Alarms)
	switch {
	case m.Do == DoHold, m.Do == DoTension, m.Do == DoCheck:
	case m.Do == DoFrequency:
		all = append(all, SheavesFor(f).AtTheTarget)
	case m.Do == DoNone:
		if m.Why == MustNotBe {
			all = append(all, m.Barred)
		}
	case m.Do == DoFixed:
		all = append(all, MotorVerdict(f, t.Basis, t.Speed), WheelVerdict(f, t.Speed), BelowVerdict(t.Speed, t.Target))
	case t.Set >= 0:
		all = append(all, OverVerdict(f, t), t.Rows[t.Set].Verdict())
		if target := TargetVerdict(f); target.Level >= Watch {
			all = append(all, target)
		}
	}
	return Worst(all), len(all) > 0
}
