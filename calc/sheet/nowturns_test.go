package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// The sheave stands where a hand last set it: a trial that says nothing of turns says
// nothing of that, and the setting that was computed for a trial is only taken once
// anything was read there, whatever it was.
func TestWhereTheSheaveStands(t *testing.T) {
	for with, want := range map[string]float64{
		"":                      0,
		"&trial.a.turns=2turns": 2,
		"&trial.a.turns=2turns&trial.b.speed=700rpm":                                           2,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed":                                  2,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.speed=700rpm":             3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.motor-tachometer=1760rpm": 3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.amps-1=5A":                3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.amps-2=5A":                3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.amps-3=5A":                3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.belt-force=3lbf":          3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.belt-frequency=40Hz":      3,
		"&trial.a.turns=2turns&trial.b.turns=3turns;computed&trial.b.volts-12=208V":            2, // at the disconnect: no hand at the sheave

		"&trial.a.turns=2turns;computed&trial.a.speed=700rpm&trial.b.turns=3turns;computed":          2,
		"&trial.a.turns=2turns;computed&trial.b.turns=3turns;computed&trial.b.motor-tachometer=!rpm": 3,
	} {
		f := fan(t, bench+with)
		value(t, with, sheet.NowTurns(f), want)
	}
}
