package sheet

import (
	"slices"

	"roofside/calc/record"
	"roofside/calc/unit"
)

// Standing judges the new drive as far as the next move has come: the setting to
// set by what the latest reading says outright, how far above the target it
// lies, what its row says and whether the target is sure; a fixed sheave by its
// own speed; and where there is no setting, by why. judged is false where
// nothing can be held against anything yet.
func Standing(f *record.Fan, t Table, m Move) (worst Verdict, judged bool) {
	all := heldBy(f, t, m)
	return Worst(all).Verdict, len(all) > 0
}

// heldBy lists what [Standing] goes by.
func heldBy(f *record.Fan, t Table, m Move) []Held {
	all := slices.Clip(t.Alarms)
	set := func(vs ...Verdict) {
		for _, v := range vs {
			all = append(all, Held{"set." + string(v.Rule), v.aboutSetting(), v})
		}
	}
	switch {
	case m.Do == DoHold, m.Do == DoTension, m.Do == DoCheck:
	case m.Do == DoFrequency:
		set(SheavesFor(f).AtTheTarget)
	case m.Do == DoNone:
		if m.Why == MustNotBe {
			set(m.Barred)
		}
	case m.Do == DoFixed:
		set(MotorVerdict(f, t.Basis, t.Speed), WheelVerdict(f, t.Speed), BelowVerdict(t.Speed, t.Target))
	case t.Set >= 0:
		set(OverVerdict(f, t))
		set(t.Rows[t.Set].Verdicts...)
		all = append(all, wrong(Held{"target.fan-speed", "", TargetVerdict(f)})...)
	}
	return all
}

// aboutSetting returns the item that a setting's verdict speaks about, by what was
// judged: the motor's amps there, or the speed.
func (v Verdict) aboutSetting() string {
	switch v.Value.Scale {
	case &unit.Amperage:
		return aboutAmps
	case &unit.Rotation, &unit.Share:
		return aboutSpeed
	}
	return ""
}
