package sheet_test

import "testing"

// The motor sheave to bring or to keep. 712 rpm under 8.4 in takes 8.4 · 712 over the
// motor's 1800 − 0.575 · 50 rpm: 3.377 in.
func TestTheSheaveToBring(t *testing.T) {
	const shaft = "&new.motor-bore=7/8 in&new.motor-key=3/16 in"
	const buy = "bring 1 motor-sheave 3.38 in 0.88 in 0.19 in | sheave-buy"
	const fixed = "&new.sheave=fixed&new.motor-sheave=4 in&old.section=A"
	for _, c := range []struct {
		name, more string
		want       []string
	}{
		{"a fixed sheave that is too small", shaft + "&new.sheave=fixed&new.motor-sheave=3.2 in", []string{buy}},
		{"a fixed sheave taped so roughly that it may be either", shaft + "&new.sheave=fixed&new.motor-sheave=3.4 in; within 0.3 in",
			[]string{"keep 1 motor-sheave | sheave-fixed | new.motor-sheave"}},
		{"an old sheave larger than the target bears", shaft + fixed + "&old.motor-sheave=3.8 in&old.motor-bore=7/8 in", []string{buy}},
		{"an old sheave smaller than the target takes", shaft + fixed + "&old.motor-sheave=3.2 in&old.motor-bore=7/8 in", []string{buy}},
		{"an old sheave that may be too large", shaft + fixed + "&old.motor-sheave=3.5 in; within 0.2 in&old.motor-bore=7/8 in", []string{buy}},
		{"an old sheave whose bore isn't known", shaft + fixed + "&old.motor-sheave=3.4 in", []string{buy}},
		{"an old sheave, and the new shaft isn't known", fixed + "&old.motor-sheave=3.4 in&old.motor-bore=7/8 in",
			[]string{"bring 1 motor-sheave 3.38 in | sheave-buy | new.motor-bore new.motor-key"}},
		{"an old sheave of no known section", shaft + "&new.sheave=fixed&new.motor-sheave=4 in&old.motor-sheave=3.4 in&old.motor-bore=7/8 in", []string{buy}},
		{"no section on either side", shaft + "&new.sheave=fixed&new.motor-sheave=4 in&new.section=&old.section=&new.belt-number=&old.belt-number=&old.motor-sheave=3.4 in&old.motor-bore=7/8 in", []string{buy}},
		{"turned, and the setting's text no value", "&trial.a.turns=!3", []string{"unsure motor-sheave | sheave-unknown | !trial.a.turns"}},
		{"turned since it was read, and the setting's text no value", "&trial.a.turns=3 turns&trial.a.speed=716 rpm&trial.b.turns=!2",
			[]string{"unsure motor-sheave | sheave-unknown | !trial.b.turns"}},
		// 3.4 · 1771.25/400 = 15.06 in; 31.5 + π/2 · 18.46 + 11.66²/63 = 62.65 in, A61 the nearest.
		{"a fixed sheave under a fan sheave to be changed", "&new.sheave=fixed&new.motor-sheave=3.4 in&target.speed=400 rpm&new.belt-number=&new.fan-bore=1 in&new.fan-key=1/4 in",
			[]string{"bring 1 fan-sheave 15.06 in 1 in 0.25 in | sheave-buy", "bring 2 belt A61 62.3 in | belt-length"}},
	} {
		has(t, c.name, demoRoof(t, c.more), c.want...)
	}
}
