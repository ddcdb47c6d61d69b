package page

import (
	"strings"
	"testing"

	"golang.org/x/net/html"

	"roofside/app/store"
)

// beltOf draws the page from a link, with its sections open or all folded.
func beltOf(t *testing.T, link string, open bool) *html.Node {
	t.Helper()
	before := shared
	t.Cleanup(func() { shared = before })
	shared = newBench(store.Memory(), "en-US")
	shared.Follow(strings.ReplaceAll(link, " ", "%20"))
	if len(shared.Problems) > 0 {
		t.Fatal(shared.Problems)
	}
	if open {
		everything(shared)
	}
	n, err := html.Parse(strings.NewReader(whole(t, NewBelt())))
	if err != nil {
		t.Fatal(err)
	}
	if shared.crash != "" {
		t.Fatalf("drawing failed in %.60q: %s", link, shared.crash)
	}
	return n
}

// tautBelt is the example's belt, tensioned at 3 turns open: 48 Hz with the mass off
// the card, within for a new belt.
const tautBelt = demoFan + "&trial.t1.turns=3turns&trial.t1.belt-age=new&trial.t1.belt-frequency=48Hz&new.belt-mass=0.105kg/m"

// A stop in a folded section leads the plate, and the belt is not sent to run.
func TestAStopLeadsTheBeltPlate(t *testing.T) {
	away := func(link, far string) string {
		return strings.ReplaceAll(link, "travel-away=2 in", "travel-away="+far)
	}
	unmoved := strings.ReplaceAll(demoFan, "&new.travel-toward=1 in&new.travel-away=2 in", "")
	for _, c := range []struct{ name, link, says, level string }{
		{"in order", away(tautBelt, "2-1/2in"), "Within. Guard on, then run it", "within"},
		{"out of line", tautBelt + "&trial.t1.alignment-gap=1/4in", "Don't run it: align the sheaves", "stop"},
		{"out of line, read before", tautBelt + "&trial.t1.alignment-gap=1/4in&trial.t2.turns=3turns&trial.t2.belt-age=new&trial.t2.belt-frequency=48Hz", "Don't run it: align the sheaves", "stop"},
		{"base too short", away(tautBelt, "0in"), "Another belt: by its number, the motor base does not reach", "stop"},
		{"groove too narrow", strings.ReplaceAll(tautBelt, "A50", "B50") + "&new.groove=standard", "too wide for its groove", "stop"},
		{"lost phase", tautBelt + "&trial.t1.amps-1=0A&trial.t1.amps-2=9A&trial.t1.amps-3=9A", "Stop: lost phase", "stop"},
		{"before any reading", away(demoFan, "2-1/2in"), "Deflect 1/4 in at mid span", ""},
		{"before any reading, the base too short", away(demoFan, "0in"), "Another belt: by its number, the motor base does not reach", "stop"},
		{"before any reading, the wrong section", strings.ReplaceAll(demoFan, "A50", "3V500"), "narrow and classical don't mix", "stop"},
		{"before any reading, too short to go around", strings.ReplaceAll(demoFan, "A50", "A10"), "Another belt: too short to go around", "stop"},
		{"a number far off, no travel known", strings.ReplaceAll(unmoved, "A50", "A80"), "don't agree: check both", "watch"},
		{"a number far off, the base goes there", away(strings.ReplaceAll(demoFan, "A50", "A53"), "4in"), "Deflect", ""},
	} {
		n := beltOf(t, c.link, false)
		if got := says(find(n, "output", "name", "tension")); !strings.Contains(got, c.says) {
			t.Errorf("%s: the plate says %q", c.name, got)
		}
		v := find(n, "p", "data-of", "tension")
		if (v == nil) != (c.level == "") || v != nil && !strings.Contains(attribute(v, "class"), c.level) {
			t.Errorf("%s: the plate's verdict is %q", c.name, says(v))
		}
		run := strings.Contains(says(n), "then run a new belt") || strings.Contains(says(n), "then run it")
		if barred := c.level == "stop" || c.level == "watch"; run == barred {
			t.Errorf("%s: barred %v, sent to run %v", c.name, barred, run)
		}
	}
}

// A belt of another section than the sheaves is said to be one below the plate, whether
// or not the groove is known.
func TestABeltOfAnotherSectionIsSaid(t *testing.T) {
	n := beltOf(t, strings.ReplaceAll(demoFan, "A50", "B50"), false)
	if v := find(n, "p", "data-of", "bar.new.groove"); !strings.Contains(says(v), "another section than the sheaves") {
		t.Errorf("below the plate: %q", says(v))
	}
	if got := says(find(n, "output", "name", "tension")); !strings.HasPrefix(got, "Deflect") {
		t.Errorf("the plate: %q", got)
	}
}

// On a slow belt the card's force is pressed with all the same, and that is said.
func TestACardsForceOnASlowBelt(t *testing.T) {
	n := beltOf(t, "new.sheave=fixed&new.motor-sheave=3.5in&new.fan-sheave=9in&new.center-distance=14in&new.section=A&new.motor-speed=870rpm&new.belt-listed-force=3lbf", false)
	if got := says(find(n, "output", "name", "tension")); !strings.HasPrefix(got, "Deflect 3/16 in at mid span with 2.6") { // 3 · 0.1875 / 0.2145
		t.Errorf("the plate: %q", got)
	}
	if !strings.Contains(says(n), "handbooks list no forces") {
		t.Error("nothing says that the belt is slower than lists go")
	}
}

// Travel below zero is refused beside its field, with what to enter instead.
func TestTravelBelowZero(t *testing.T) {
	for _, key := range []string{"travel-toward", "travel-away"} {
		n := beltOf(t, "new."+key+"=!-1 in", true)
		if got := says(find(n, "p", "id", "new-"+key+"-note")); got != "Travel left is never below zero. If none is left, enter 0." {
			t.Errorf("%s: %q", key, got)
		}
		if got := says(find(beltOf(t, "new."+key+"=!one", true), "p", "id", "new-"+key+"-note")); got != "“one” is not a number." {
			t.Errorf("%s: %q", key, got)
		}
	}
}

// plateSays returns the next move on the plate.
func plateSays(t *testing.T, link string) string {
	t.Helper()
	return says(find(beltOf(t, link, false), "output", "name", "tension"))
}

// One reading that says nothing surely can still not be right with the other.
func TestReadingsThatDisagree(t *testing.T) {
	read := "&trial.t1.turns=3turns&trial.t1.belt-age=new&new.belt-mass=0.105kg/m&trial.t1.belt-deflection=1/4 in&trial.t1.belt-force="
	for link, want := range map[string]string{
		read + "1.2lbf&trial.t1.belt-frequency=48Hz": "Force and frequency disagree", // 2.2 lbf within a twelfth
		read + "2.3lbf&trial.t1.belt-frequency=48Hz": "Within.",
		read + "2.4lbf&trial.t1.belt-frequency=62Hz": "Force and frequency disagree", // 3.7 lbf, tight; 2.4 lbf within a fifth is within
	} {
		if got := plateSays(t, demoFan+link); !strings.HasPrefix(got, want) {
			t.Errorf("%s: %q", link, got)
		}
	}
}

// A base without travel left is not sent that way. With no number entered the belt lies
// tight where it was measured, but for what the sheave's turns ask: from closed, open 3
// turns, some 0.4 in away from the fan.
func TestNoTravelIsLeftToTension(t *testing.T) {
	read := func(force, toward, away string) string {
		link := strings.ReplaceAll(demoFan, "&new.travel-toward=1 in&new.travel-away=2 in&new.belt-number=A50", "&new.travel-toward="+toward+"&new.travel-away="+away)
		return link + "&trial.t1.turns=3turns&trial.t1.belt-age=new&trial.t1.belt-deflection=1/4 in&trial.t1.belt-force=" + force
	}
	for _, c := range []struct{ force, toward, away, says string }{
		{"1lbf", "1in", "2in", "Loose: move the motor base away"},
		{"1lbf", "1in", "1/2in", "Loose: move the motor base away"}, // 0.1 in left, measured to 1/16 in: the center's error is the belt's, too, and cancels
		{"1lbf", "1in", "7/16in", "Loose, and no base travel to count on away from the fan: a shorter belt."},
		{"1.7lbf; within 1.69 lbf", "1in", "7/16in", "Perhaps loose, and no base travel"},
		{"5lbf", "1in", "1/2in", "Tight: move the motor base toward the fan"},
	} {
		if got := plateSays(t, read(c.force, c.toward, c.away)); !strings.HasPrefix(got, c.says) {
			t.Errorf("%+v: %q", c, got)
		}
	}
	fixed := "new.sheave=fixed&new.motor-sheave=3.5in&new.fan-sheave=9in&new.center-distance=14in&new.section=A&new.motor-speed=1750rpm&new.motor-power=2hp&new.belts=1" +
		"&new.travel-toward=0in&new.travel-away=1in&trial.t1.belt-age=used&trial.t1.belt-deflection=3/16in&trial.t1.belt-force=9lbf"
	if got := plateSays(t, fixed); !strings.HasPrefix(got, "Tight, and no base travel to count on toward the fan: a longer belt.") {
		t.Errorf("%q", got)
	}
}

// A reading whose error is wider than the room there is says nothing: what would tell is
// one tap away, and once it is entered it does tell.
func TestAReadingTooCoarseSaysWhatWouldTell(t *testing.T) {
	read := demoFan + "&trial.t1.turns=3turns&trial.t1.belt-age=new&trial.t1.belt-deflection=1/4 in&trial.t1.belt-force=2.4lbf; within 1.9 lbf"
	for _, c := range []struct{ link, says, asks string }{
		{read, "As near as this reading tells.", "trial.t1.belt-frequency new.belt-mass"},
		{read + "&trial.t1.belt-frequency=48Hz; within 40 Hz", "As near as this reading tells.", "new.belt-mass"},
		{read + "&trial.t1.belt-frequency=48Hz&new.belt-mass=0.105kg/m", "Within.", ""},
	} {
		n := beltOf(t, c.link, false)
		if got := says(find(n, "output", "name", "tension")); !strings.HasPrefix(got, c.says) {
			t.Errorf("%.200q: the plate says %q", c.link, got)
		}
		var asks []string
		for _, key := range []string{"trial.t1.belt-frequency", "new.belt-mass"} {
			if find(n, "button", "name", "to surer "+key) != nil {
				asks = append(asks, key)
			}
		}
		if got := strings.Join(asks, " "); got != c.asks {
			t.Errorf("%.200q: asks for %q, not %q", c.link, got, c.asks)
		}
	}
}

// A belt is aligned before it is run: that stands first while no gap in order was read.
func TestAlignmentComesBeforeRunning(t *testing.T) {
	for link, want := range map[string]string{
		tautBelt:                                 "Align the sheaves: a gap of 0.14 in at most.", // 16 in · tan ½°
		tautBelt + "&trial.t1.alignment-gap=0in": "Guard on, then run a new belt 15 to 30 minutes.",
	} {
		list := strings.TrimSpace(says(find(beltOf(t, link, false), "ol", "class", "then")))
		if !strings.HasPrefix(list, want) {
			t.Errorf("%.200q: %q", link, list)
		}
	}
}

// The words say how near a reading is, what a service factor allows above what the power
// asks, and where card and power disagree.
func TestWhatStandsBesideATension(t *testing.T) {
	read := demoFan + "&trial.t1.turns=3turns&trial.t1.belt-age=new&trial.t1.belt-deflection=1/4 in; within 0 in&trial.t1.belt-force="
	card := "&new.belt-listed-force="
	for _, c := range []struct{ name, link, says, not string }{
		{"near the least", read + "2 lbf; within 0.3 lbf", "The reading itself decides", "what the power alone asks"},
		{"in the middle", read + "2.3 lbf; within 0.1 lbf", "neither loose nor tight", "The reading itself decides"},
		{"within a service factor", read + "3 lbf; within 0.1 lbf", "Above what the power alone asks", "maker's card may ask"},
		{"tight", read + "5 lbf; within 0.1 lbf", "maker's card may ask for more", "what the power alone asks"},
		{"as the card has it", read + "5 lbf; within 0.1 lbf" + card + "5 lbf", "Card and power disagree", "maker's card may ask"},
		{"a card alike", read + "2.3 lbf; within 0.1 lbf" + card + "2 lbf", "neither loose nor tight", "Card and power disagree"},
		{"alignment near", tautBelt + "&trial.t1.alignment-gap=0.135in", "The reading itself decides: ", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := says(beltOf(t, c.link, true))
			if !strings.Contains(got, c.says) || c.not != "" && strings.Contains(got, c.not) {
				t.Errorf("%q, not %q: %.3000s", c.says, c.not, got)
			}
		})
	}
}
