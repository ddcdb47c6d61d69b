package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// An item hears all that speaks about it, in whatever order: after a stop it has failed,
// though something to watch was heard before. What was not done stays so.
func TestAnItemHearsTheWorst(t *testing.T) {
	watch := sheet.Held{About: "guard", Verdict: sheet.Verdict{Level: sheet.Watch}}
	stop := sheet.Held{About: "guard", Verdict: sheet.Verdict{Level: sheet.Stop}}
	unsure := sheet.Held{About: "guard", Verdict: sheet.Verdict{Level: sheet.Unjudged}}
	other := sheet.Held{Verdict: sheet.Verdict{Level: sheet.Stop}}
	for _, c := range []struct {
		said, why string
		held      []sheet.Held
		state     sheet.ItemState
	}{
		{"done", "", nil, sheet.Done},
		{"done", "", []sheet.Held{other, unsure}, sheet.Done},
		{"done", "", []sheet.Held{watch}, sheet.Open},
		{"done", "", []sheet.Held{stop}, sheet.Failed},
		{"done", "", []sheet.Held{watch, stop}, sheet.Failed},
		{"done", "", []sheet.Held{stop, watch}, sheet.Failed},
		{"", "", []sheet.Held{stop}, sheet.Open},
		{"", "a screen stands around it", nil, sheet.Open},
		{"not-applicable", "a screen stands around it", []sheet.Held{stop}, sheet.NotApplicable},
		{"not-applicable", "", []sheet.Held{stop}, sheet.Unreasoned},
	} {
		f := made(t, "check.guard", c.said, "check.guard-why", c.why)
		if s := stateOf(f, c.held, "guard"); s != c.state {
			t.Errorf("%q, %q after %d verdicts: state %d", c.said, c.why, len(c.held), s)
		}
		outstanding := false
		for _, i := range sheet.Outstanding(sheet.Handover(f, c.held...)) {
			outstanding = outstanding || i.Name == "guard"
		}
		if settled := c.state == sheet.Done || c.state == sheet.NotApplicable; outstanding == settled {
			t.Errorf("%q, %q after %d verdicts: outstanding %v", c.said, c.why, len(c.held), outstanding)
		}
	}
}

// A fan that was bumped with its belt on the wrong way round was not bumped in order, and
// a belt that is loose has not run in; neither hears of the other.
func TestWhatIsHeardElsewhere(t *testing.T) {
	for _, c := range []struct {
		with string
		want map[string]sheet.ItemState
	}{
		{"new.rotation=reverse", map[string]sheet.ItemState{"bumped-with-belt": sheet.Failed, "rotation": sheet.Failed, "run-in": sheet.Done, "tension": sheet.Done}},
		{"trial.t1.belt-force=1 lbf", map[string]sheet.ItemState{"bumped-with-belt": sheet.Done, "rotation": sheet.Done, "run-in": sheet.Open, "tension": sheet.Open}},
		// Accepted, and nobody has read the belt.
		{"trial.t1.belt-force=&trial.t1.belt-deflection=", map[string]sheet.ItemState{"tension": sheet.Open, "run-in": sheet.Done, "alignment": sheet.Done}},
		{"trial.t1.belt-age=new", map[string]sheet.ItemState{"tension": sheet.Done, "run-in": sheet.Open}},
	} {
		f := altered(t, c.with)
		stands := sheet.JobOf(f, sixteenth, false).Stands(sheet.OfRecord)
		for item, want := range c.want {
			if s := stateOf(f, stands, item); s != want {
				t.Errorf("%s: %s is in state %d", c.with, item, s)
			}
		}
	}
}

// A line holds the places of its own name against each other.
func TestALineComparesItsOwnPlaces(t *testing.T) {
	f := record.NewFan()
	for _, l := range sheet.LikeForLike(f)[1:] {
		if l.Old != f.Place("old."+l.Name) || l.New != f.Place("new."+l.Name) {
			t.Errorf("%s compares %s and %s", l.Name, f.KeyOf(l.Old), f.KeyOf(l.New))
		}
	}
}
