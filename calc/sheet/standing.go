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
		set(t.unreached(f, m)...)
	case m.Do == DoFixed:
		set(MotorVerdict(f, t.Basis, t.Speed), WheelVerdict(f, t.Speed), TargetReached(f, t.Speed, t.Target))
		set(motorSheaveVerdicts(&f.New, MotorSpeed(f, &f.New, running(f), noLoad), MotorPitch(&f.New))...)
	case t.Set >= 0:
		set(SettingVerdict(f, t))
		set(t.Rows[t.Set].Verdicts...)
		all = append(all, judged(Held{"target.fan-speed", "", TargetVerdict(f)})...)
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

// SettingVerdict judges how the speed of the row to set stands to the target.
func SettingVerdict(f *record.Fan, t Table) Verdict {
	if t.Set < 0 {
		return TargetReached(f, Answer[unit.Speed]{}, t.Target)
	}
	return TargetReached(f, settingSpeed(f, t, t.Rows[t.Set]), t.Target)
}

// unreached says what stands against a drive that no setting brings to its target: the
// setting that must not be run; or else how the nearest one that may be set misses the
// target, and what that where the sheave stands says.
func (t Table) unreached(f *record.Fan, m Move) (all []Verdict) {
	if m.Why == MustNotBe {
		return []Verdict{m.Barred}
	}
	if t.missed >= 0 {
		missed := TargetReached(f, settingSpeed(f, t, t.Rows[t.missed]), t.Target)
		missed.Level = max(missed.Level, Watch)
		all = append(all, missed)
	}
	if t.Now >= 0 {
		all = append(all, t.Rows[t.Now].Verdicts...)
	}
	return all
}
