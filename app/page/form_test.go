package page

import (
	"strings"
	"testing"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/calc/unit"
)

// Chapter 9, note 4, of the code: 600 mm (24 in).
func TestANippleIsMeasuredInTheUnitsChosen(t *testing.T) {
	b := newBench(store.Memory(), "en-US")
	for system, want := range map[unit.System][3]string{
		unit.US: {"Over 24 in", "Nipple, to 24 in", "Assumed over 24 in until you say."},
		unit.SI: {"Over 600 mm", "Nipple, to 600 mm", "Assumed over 600 mm until you say."},
	} {
		b.Settings.Units = system
		if got := [3]string{b.optionIn("raceway.use", "run"), b.optionIn("raceway.use", "nipple"), b.hint("raceway.use")}; got != want {
			t.Errorf("%v: %q", system, got)
		}
	}
}

// A day that is none stands in its field as it came, with what is wrong beside it.
func TestADayThatIsNone(t *testing.T) {
	for state, said := range map[string]bool{"handover.on=!soon": true, "handover.on=2026-03-09": false} {
		draw(t, state, nil)
		_, field, _ := strings.Cut(whole(t, app.Composer(NewRecord())), `<f-handover-on`)
		field, _, _ = strings.Cut(field, `</f-handover-on`)
		if strings.Contains(field, "Not a date.") != said || strings.Contains(field, `value="soon"`) != said || strings.Contains(field, `type="date"`) == said {
			t.Errorf("%s: %s", state, field)
		}
	}
}
