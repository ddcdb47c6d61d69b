package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A later reading that says no setting is of the same one; a fixed sheave is never moved.
func TestAGapAtASettingThatIsNotSaid(t *testing.T) {
	for _, with := range []string{"new.sheave=fixed&new.motor-sheave=3.4 in&trial.t1.turns=&trial.t2.turns=3 turns", "trial.t1.turns=3 turns&trial.t2.speed=716 rpm"} {
		f := altered(t, with)
		if read, v := sheet.AlignmentNow(f); read != f.Trials[0] || v.Level != sheet.Within {
			t.Errorf("%s: %+v", with, v)
		}
	}
}

// A gap can't be judged where the span is not known, or can't be; nor one that is no value.
func TestAGapAsksForItsSpan(t *testing.T) {
	for _, c := range []struct {
		with, key string
		fault     bool
	}{
		{"new.fan-sheave=", "new.fan-sheave", false},
		{"new.fan-sheave=!x", "new.fan-sheave", true},
		{"trial.t1.alignment-gap=!x", "trial.t1.alignment-gap", true},
	} {
		f := altered(t, c.with)
		v, ok := sheet.Named(sheet.JobOf(f, sixteenth, false).Stands(sheet.OfBelt), "align.gap")
		var place record.Place
		if len(v.Wanted) > 0 {
			place = v.Wanted[0]
		}
		if !ok || v.Level != sheet.Unjudged || f.KeyOf(place) != c.key || c.fault != (v.Fault != nil) {
			t.Errorf("%s: %v, %+v", c.with, ok, v)
		}
	}
}
