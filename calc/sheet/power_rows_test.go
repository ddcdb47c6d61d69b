package sheet_test

import (
	"strings"
	"testing"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// A motor of 2 hp that idles on 2.2 A of 6.6 A, proven, on 208 V; and what is typed of
// other motors in its place.
const (
	proved = "supply=three-phase&new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.service-factor-amps=7.6A&new.no-load-amps=2.2A&new.motor-speed=1750rpm&new.rotation=marked"
	plain  = "new.motor-power=2hp&new.motor-volts=208V&new.motor-amps=6.6A&new.service-factor=1.15&new.motor-speed=1750rpm&new.rotation=marked"
	even   = "&trial.t1.volts-12=208V&trial.t1.volts-23=207.6V&trial.t1.volts-31=208.3V"
)

// legs is a reading of amps in a link.
func legs(a, b, c string) string {
	return "&trial.t1.amps-1=" + a + "A&trial.t1.amps-2=" + b + "A&trial.t1.amps-3=" + c + "A"
}

// across is a reading of volts in a link.
func across(a, b, c string) string {
	return "&trial.t1.volts-12=" + a + "V&trial.t1.volts-23=" + b + "V&trial.t1.volts-31=" + c + "V"
}

// A powerRow is what a record's power page must say, and on whose authority.
type powerRow struct {
	name, link string
	level      sheet.Level
	rule       sheet.Rule // what decides; "" where nothing does
	step       sheet.Step // "" where it is no matter
	authority  string
}

func judgePower(t *testing.T, rows []powerRow) {
	t.Helper()
	for _, c := range rows {
		t.Run(c.name, func(t *testing.T) {
			f := fan(t, c.link)
			p := sheet.Prove(f)
			if p.Worst.Level != c.level || c.rule != "" && p.Worst.Rule != c.rule || c.step != "" && p.Next != c.step {
				t.Errorf("%s: next %s, worst %+v, fault %+v; %s", c.link, p.Next, p.Worst, p.Fault, c.authority)
			}
			if plate := sheet.JobOf(f, unit.Inch/16, false).Plate(sheet.OfPower); plate.Level != c.level {
				t.Errorf("the plate says %d by %s, the proof %d", plate.Level, plate.Rule, c.level)
			}
		})
	}
}

const (
	practice = "common practice"
	overload = "NFPA 70, 430.32(A)(1), (B)(1), (C), (D)(1)"
	mg1      = "NEMA MG 1, 12.44.1, 12.45, 14.36"
	lessons  = "symmetrical components, open delta"
)

// A drive makes its own even volts: what comes out uneven is the motor, the cable or
// the drive's output stage.
func TestRowsOfADrive(t *testing.T) {
	drive := "supply=drive&" + strings.ReplaceAll(plain, "208V", "460V") + across("480", "479", "478")
	input := func(a, b, c string) string {
		return "supply=drive&" + strings.ReplaceAll(plain, "208V", "460V") + across(a, b, c) + legs("4.0", "4.1", "3.9")
	}
	judgePower(t, []powerRow{
		{"one leg a third of the others", drive + legs("4.0", "4.1", "1.25"), sheet.Stop, sheet.RuleOutputAmps, sheet.StepVerdict, practice},
		{"12 per cent apart", drive + legs("4.0", "4.6", "3.8"), sheet.Watch, sheet.RuleOutputAmps, sheet.StepVerdict, practice},
		{"the same under half load", drive + legs("2.0", "2.3", "1.9"), sheet.Watch, sheet.RuleOutputAmps, sheet.StepVerdict, practice},
		{"even", drive + legs("4.0", "4.1", "3.9"), sheet.Within, "", sheet.StepVerdict, practice},
		{"even and light", drive + legs("2.0", "2.05", "1.95"), sheet.Within, "", sheet.StepVerdict, practice},
		{"at plate amps, service factor or not", drive + legs("6.9", "6.9", "6.9"), sheet.Stop, sheet.RuleServiceVoid, sheet.StepVerdict, "no service factor on a drive: common practice"},
		{"input 2.5 per cent", input("492", "480", "468"), sheet.Watch, sheet.RuleInputVolts, sheet.StepVerdict, practice},
		{"input 2.5 per cent, motor near its plate", "supply=drive&" + strings.ReplaceAll(plain, "208V", "460V") + across("492", "480", "468") + legs("6.3", "6.3", "6.2"), sheet.Watch, sheet.RuleInputVolts, sheet.StepVerdict, "no derating by what does not reach the motor"},
		{"input even", input("480", "479", "478"), sheet.Within, "", sheet.StepVerdict, practice},
		{"input 8 per cent", input("500", "480", "430"), sheet.Stop, "", sheet.StepVerdict, practice},
		{"output with one of double", drive + legs("6.0", "3.1", "3.0"), sheet.Stop, sheet.RuleOpenWinding, sheet.StepLost, lessons},
		{"that with the input not read", "supply=drive&" + plain + legs("6.0", "3.1", "3.0"), sheet.Stop, sheet.RuleOpenWinding, sheet.StepLost, lessons},
		{"output lost a leg", drive + legs("6.1", "6.3", "0.2"), sheet.Stop, sheet.RuleLostPhase, sheet.StepLost, practice},
	})
}

// Direct is how the wheel is mounted; three legs tell a lost phase on any mount.
func TestRowsOfTheMount(t *testing.T) {
	three := "supply=direct&new.phases=3&" + plain + even
	mounted := "supply=three-phase&mount=direct&new.phases=3&" + plain + "&new.no-load-amps=2.2A" + even
	judgePower(t, []powerRow{
		{"lost phase", three + legs("6.1", "6.3", "0.2"), sheet.Stop, sheet.RuleLostPhase, sheet.StepLost, practice},
		{"lost phase, phases not said", "supply=direct&" + plain + even + legs("6.1", "6.3", "0.2"), sheet.Stop, sheet.RuleLostPhase, sheet.StepLost, practice},
		{"lost phase, mount said apart", mounted + legs("6.1", "6.3", "0.2"), sheet.Stop, sheet.RuleLostPhase, sheet.StepLost, practice},
		{"a leg of three not read", three + "&trial.t1.amps-1=5A", sheet.Unjudged, "", sheet.StepAmps, practice},
		{"phases not said, one leg read", "supply=direct&" + plain + "&trial.t1.volts-12=208V&trial.t1.amps-1=5A", sheet.Unjudged, sheet.RulePhases, sheet.StepVerdict, "what is missing is no better than what is known"},
		{"one phase said", "supply=direct&new.phases=1&" + plain + "&trial.t1.volts-12=208V&trial.t1.amps-1=5A", sheet.Within, "", sheet.StepVerdict, practice},
		{"in order, supply not said", three + legs("5.0", "5.1", "4.9"), sheet.Within, "", sheet.StepVerdict, practice},
		{"in order, supply said", mounted + legs("5.0", "5.1", "4.9"), sheet.Within, "", sheet.StepVerdict, practice},
		{"far apart, maybe electronics", three + legs("5.0", "5.5", "3.0"), sheet.Watch, sheet.RuleMakerAmps, sheet.StepVerdict, practice},
		{"far apart, a plain motor", mounted + legs("5.0", "5.5", "2.5"), sheet.Stop, sheet.RuleAmpsApart, sheet.StepVerdict, practice},
		{"one phase, plate not read", "supply=single-phase&" + plain + "&trial.t1.volts-12=208V&trial.t1.amps-1=5A", sheet.Unjudged, sheet.RulePhases, sheet.StepVerdict, "what is missing is no better than what is known"},
		{"one phase, plate read", "supply=single-phase&new.phases=1&" + plain + "&trial.t1.volts-12=208V&trial.t1.amps-1=5A", sheet.Within, "", sheet.StepVerdict, practice},
		{"one phase, what goes comes back", "supply=single-phase&new.phases=1&" + plain + "&trial.t1.volts-12=208V&trial.t1.amps-1=5A&trial.t1.amps-2=5.05A", sheet.Within, "", sheet.StepVerdict, practice},
		{"one phase, what goes does not come back", "supply=single-phase&new.phases=1&" + plain + "&trial.t1.volts-12=208V&trial.t1.amps-1=5.4A&trial.t1.amps-2=4.3A", sheet.Watch, sheet.RuleReturnAmps, sheet.StepVerdict, "the sum of what goes in and out is nothing"},
		{"two phases for a plate of one", "supply=three-phase&new.phases=1&" + plain + even + legs("5", "5", "0"), sheet.Watch, sheet.RulePhases, sheet.StepVerdict, "a single-phase motor has two wires"},
	})
	for link, want := range map[string]bool{
		"": false, "supply=direct": true, "supply=direct&mount=belt": false, "supply=three-phase&mount=direct": true,
		"supply=three-phase": false, "mount=direct": true, "supply=direct&mount=direct": true, "supply=direct&mount=!x": true,
	} {
		if got := fan(t, link).DirectDrive(); got != want {
			t.Errorf("%q: direct drive %v", link, got)
		}
	}
}

// A motor of 1 hp or less goes by the same shares of plate amps, and above 140 % no
// motor's overload may be set.
func TestRowsOfTheOverload(t *testing.T) {
	small := "supply=three-phase&new.motor-power=1hp&new.motor-amps=3.6A&new.motor-volts=208V&new.motor-speed=1750rpm&new.rotation=marked&new.no-load-amps=1.4A" + even + legs("3.2", "3.3", "3.2")
	large := proved + even + legs("5.6", "5.7", "5.5")
	judgePower(t, []powerRow{
		{"twice the plate of 1 hp", small + "&new.service-factor=1.15&new.overload-dial=7.2A", sheet.Stop, sheet.RuleOverloadTrip, sheet.StepVerdict, overload},
		{"116 per cent of 1 hp, service factor 1", small + "&new.service-factor=1&new.overload-dial=4.18A", sheet.Stop, sheet.RuleOverloadTrip, sheet.StepVerdict, overload},
		{"116 per cent of 1 hp, service factor 1.15", small + "&new.service-factor=1.15&new.overload-dial=4.18A", sheet.Watch, sheet.RuleOverloadDial, sheet.StepVerdict, overload},
		{"1 hp at its plate", small + "&new.service-factor=1.15&new.overload-dial=3.6A", sheet.Within, "", sheet.StepVerdict, practice},
		{"1/2 hp at its plate", strings.Replace(small, "1hp", "0.5hp", 1) + "&new.service-factor=1.15&new.overload-dial=3.6A", sheet.Within, "", sheet.StepVerdict, practice},
		{"service factor not known, twice", large + "&new.overload-dial=13A", sheet.Stop, sheet.RuleOverloadTrip, sheet.StepVerdict, overload},
		{"service factor not known, 141 per cent", large + "&new.overload-dial=9.31A", sheet.Stop, sheet.RuleOverloadTrip, sheet.StepVerdict, overload},
		{"service factor not known, 139 per cent", large + "&new.overload-dial=9.17A", sheet.Watch, sheet.RuleOverloadDial, sheet.StepVerdict, overload},
		{"service factor not known, at the plate", large + "&new.overload-dial=6.6A", sheet.Within, "", sheet.StepVerdict, practice},
		{"service factor 1.15, 126 per cent", large + "&new.service-factor=1.15&new.overload-dial=8.32A", sheet.Stop, sheet.RuleOverloadTrip, sheet.StepVerdict, overload},
	})
}

// NEMA MG 1, 12.44.1: 10 % of volts, 5 % of frequency, 10 % of both together.
func TestRowsOfVoltsAndFrequency(t *testing.T) {
	on := func(volts, hz string) string {
		return "supply=three-phase&" + strings.ReplaceAll(plain, "208V", "460V") + "&new.motor-frequency=60Hz&new.no-load-amps=2.2A&trial.t1.frequency=" + hz + "Hz" + across(volts, volts, volts) + legs("5.4", "5.5", "5.4")
	}
	plated := func(plate, line string) string {
		return "supply=three-phase&" + strings.ReplaceAll(plain, "208V", plate+"V") + "&new.no-load-amps=2.2A" + across(line, line, line) + legs("5.4", "5.5", "5.4")
	}
	judgePower(t, []powerRow{
		{"490 V at 57.1 Hz", on("490", "57.1"), sheet.Stop, sheet.RuleFlux, sheet.StepVerdict, mg1},
		{"low both ways", on("420", "57.6"), sheet.Watch, sheet.RuleCombined, sheet.StepVerdict, mg1},
		{"high both ways", on("496", "62.7"), sheet.Watch, sheet.RuleCombined, sheet.StepVerdict, mg1},
		{"480 V at 60 Hz", on("480", "60"), sheet.Within, "", sheet.StepVerdict, mg1},
		{"480 V at 59.9 Hz", on("480", "59.9"), sheet.Within, "", sheet.StepVerdict, mg1},
		{"440 V at 60.1 Hz", on("440", "60.1"), sheet.Within, "", sheet.StepVerdict, mg1},
		{"a generator at 61 Hz", on("468", "61"), sheet.Within, "", sheet.StepVerdict, mg1},
		{"440 on 480", plated("440", "480"), sheet.Watch, sheet.RulePlateHigh, sheet.StepVerdict, "US DOE tip sheet 9: 480 is made for 460"},
		{"220 on 240", plated("220", "240"), sheet.Watch, sheet.RulePlateHigh, sheet.StepVerdict, "US DOE tip sheet 9: 240 is made for 230"},
		{"230 on 208", plated("230", "209"), sheet.Watch, sheet.RulePlateSystem, sheet.StepVerdict, "US DOE tip sheet 9: inside by 1 V"},
		{"230 on 240", plated("230", "240"), sheet.Within, "", sheet.StepVerdict, "US DOE tip sheet 9"},
		{"460 on 480", plated("460", "480"), sheet.Within, "", sheet.StepVerdict, "US DOE tip sheet 9"},
		{"208 on 208", plated("208", "208"), sheet.Within, "", sheet.StepVerdict, practice},
		{"a plate of 50 Hz on 400 V, line not read", "supply=three-phase&" + strings.NewReplacer("1750rpm", "1450rpm", "208V", "400V").Replace(plain) + "&new.no-load-amps=2.2A" + across("402", "403", "401") + legs("5.4", "5.5", "5.4"), sheet.Within, "", sheet.StepVerdict, "no system of 60 Hz has 400 V"},
		{"a plate of 50 Hz, line not read", "supply=three-phase&" + strings.ReplaceAll(plain, "1750rpm", "1450rpm") + "&new.no-load-amps=2.2A" + even + legs("5.4", "5.5", "5.4"), sheet.Unjudged, sheet.RuleLineFrequency, sheet.StepVerdict, "what is missing is no better than what is known"},
	})
	f := fan(t, plated("230", "208"))
	if v := sheet.Prove(f).OfPlateSystem; v.Rule != sheet.RulePlateSystem || v.Level != sheet.Watch {
		t.Errorf("230 on 208: %+v", v)
	}
}

// Unbalanced volts are counted once: the average goes by the derated plate, each leg by
// the plate itself.
func TestRowsOfUnbalancedVolts(t *testing.T) {
	at := func(volts, amps string) string { return proved + volts + amps }
	uneven := across("212", "206", "200") // 2.91 %: 0.886 of the plate, 5.85 A
	judgePower(t, []powerRow{
		{"the average below what is left", at(uneven, legs("6.3", "5.2", "4.9")), sheet.Watch, sheet.RuleUnbalance, "", mg1},
		{"the average above it", at(uneven, legs("6.5", "6.3", "6.1")), sheet.Stop, sheet.RuleServiceVoid, sheet.StepVerdict, mg1},
		{"a leg above the plate", at(uneven, legs("6.9", "5.0", "4.6")), sheet.Stop, sheet.RuleServiceVoid, sheet.StepVerdict, "the service factor is void above 1 %: common practice"},
		{"even volts, the same amps", at(even, legs("6.3", "6.2", "6.1")), sheet.Within, "", sheet.StepVerdict, mg1},
		{"1.1 per cent", "supply=three-phase&" + strings.ReplaceAll(plain, "208V", "460V") + "&new.no-load-amps=2.2A" + across("462", "463", "455") + legs("5.0", "5.1", "4.9"), sheet.Watch, sheet.RuleUnbalance, "", "US DOE tip sheet 7, page 1: its own example is above 1 %"},
		{"0.7 per cent", at(across("206.8", "208", "209.7"), legs("5.0", "5.1", "4.9")), sheet.Within, "", sheet.StepVerdict, "US DOE tip sheet 7: up to 1 %"},
		{"0.9 per cent, perhaps above 1", at(across("206.4", "208", "210"), legs("5.0", "5.1", "4.9")), sheet.Unjudged, sheet.RuleUnbalance, sheet.StepVerdict, "JCGM 106: a limit that protects the motor is guarded"},
		{"a line open ahead of a motor that stands", at(across("208", "119", "116"), ""), sheet.Stop, sheet.RuleOpenLine, sheet.StepLost, "a winding parts what is left in halves"},
		{"6 per cent", at(across("220", "208", "198"), legs("5.0", "5.1", "4.9")), sheet.Stop, sheet.RuleUnbalance, sheet.StepVerdict, mg1},
	})
	v := sheet.Prove(fan(t, at(uneven, legs("6.3", "5.2", "4.9")))).Volts.Verdict
	k := 0.95 - 0.07*(100*6./206-2)
	near(t, "derated to", v.Left.Base, k)
	near(t, "amps that remain", v.Most.Base, 6.6*k)
}

// Current unbalance goes by the reading, far apart on even volts stops first, and one of
// double on even volts is the motor's own winding.
func TestRowsOfUnevenAmps(t *testing.T) {
	at := func(amps string) string { return proved + even + amps }
	big := strings.NewReplacer("6.6A", "9A", "7.6A", "10A", "2.2A", "3A").Replace(proved)
	judgePower(t, []powerRow{
		{"11.4 per cent", at(legs("5.1", "5.4", "4.4")), sheet.Watch, sheet.RuleAmpsUnbalance, sheet.StepRoll, practice},
		{"9 per cent", at(legs("5.1", "5.3", "4.6")), sheet.Within, "", sheet.StepVerdict, practice},
		{"even", at(legs("5.6", "5.7", "5.5")), sheet.Within, "", sheet.StepVerdict, practice},
		{"even under half load", at(legs("3.0", "3.05", "2.95")), sheet.Within, "", sheet.StepVerdict, "a bad joint adds the same share at any load: symmetrical components"},
		{"15 per cent under half load", at(legs("3.0", "3.3", "2.5")), sheet.Unjudged, sheet.RuleLightLoad, sheet.StepVerdict, practice},
		{"50 per cent at load", at(legs("6.2", "2.5", "6.3")), sheet.Stop, sheet.RuleAmpsApart, sheet.StepVerdict, practice},
		{"31 per cent at load", at(legs("6.0", "3.5", "5.7")), sheet.Stop, sheet.RuleAmpsApart, sheet.StepVerdict, practice},
		{"28 per cent at load", at(legs("6.0", "3.7", "5.7")), sheet.Watch, sheet.RuleAmpsUnbalance, sheet.StepRoll, practice},
		{"42 per cent, perhaps at load", "supply=three-phase&" + plain + even + legs("5.0", "5.0", "2.4"), sheet.Stop, sheet.RuleAmpsApart, sheet.StepVerdict, practice},
		{"42 per cent, perhaps at load, volts not read", "supply=three-phase&" + plain + legs("5.0", "5.0", "2.4"), sheet.Watch, sheet.RuleAmpsUnbalance, sheet.StepVolts, practice},
		{"50 per cent, volts not read", proved + legs("6.2", "2.5", "6.3"), sheet.Watch, sheet.RuleAmpsUnbalance, sheet.StepVolts, practice},
		{"a delta's open winding", big + even + legs("9.5", "5.5", "5.5"), sheet.Stop, sheet.RuleOpenWinding, sheet.StepLost, lessons},
		{"a delta's open winding, a little uneven", big + even + legs("7.5", "3.8", "3.9"), sheet.Stop, sheet.RuleOpenWinding, sheet.StepLost, lessons},
		{"one of double, volts not read", big + legs("7.6", "3.8", "3.8"), sheet.Stop, sheet.RuleLostPhase, sheet.StepLost, practice},
		{"one of double, volts well apart", big + across("208", "190", "206") + legs("7.6", "3.8", "3.8"), sheet.Stop, "", "", practice},
		{"perhaps a failing leg, idling", strings.Replace(proved, "&new.no-load-amps=2.2A", "", 1) + even + legs("1.9", "1.9", "0.45"), sheet.Watch, sheet.RuleIdleAmps, sheet.StepVerdict, practice},
		{"a failing leg for certain", at(legs("1.9", "1.9", "0.3")), sheet.Stop, sheet.RuleNearlyOpen, sheet.StepLost, practice},
		{"near the plate at high volts", "supply=three-phase&new.motor-power=2hp&new.motor-volts=460V&new.motor-amps=3.4A&new.service-factor=1.15&new.motor-speed=1750rpm&new.rotation=marked" + across("480", "480", "480") + legs("3.1", "3.2", "3.1"), sheet.Within, "", sheet.StepVerdict, mg1},
		{"at the plate at high volts, belt-off amps read", "supply=three-phase&new.motor-power=2hp&new.motor-volts=460V&new.motor-amps=3.4A&new.service-factor=1.15&new.no-load-amps=1.4A&new.motor-speed=1750rpm&new.rotation=marked" + across("481", "480", "479") + legs("3.2", "3.2", "3.1"), sheet.Within, "", sheet.StepVerdict, mg1},
	})
	// Far apart is no case for a roll, and the low leg is named, not the first.
	f := fan(t, at(legs("6.2", "2.5", "6.3")))
	if r := sheet.LeadRoll(f); r.Before != phase.BeforeStop {
		t.Errorf("50 %%: before a roll %s", r.Before)
	}
	if u := sheet.Prove(f).Amps; u.Leg != 2 || !u.Certain {
		t.Errorf("50 %%: leg %d", u.Leg)
	}
	f = fan(t, at(legs("1.9", "1.9", "0.45")))
	if v := sheet.Prove(f).OfLost; v.Level != sheet.Unjudged || v.Rule != sheet.RuleNearlyOpen || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "trial.t1.amps-3" {
		t.Errorf("perhaps failing: %+v", v)
	}
	f = fan(t, at(legs("6.1", "6.3", "0.2")))
	if u := sheet.Prove(f).Amps.Share; u.Fault == nil || f.KeyOf(u.Fault.Place) != "trial.t1.amps-3" {
		t.Errorf("a dead leg: %+v", u.Fault)
	}
}

// What the legs drew with the belt off is no load of the fan, on the page and in what is
// predicted from it.
func TestRowsOfTheBelt(t *testing.T) {
	judgePower(t, []powerRow{
		{"bumped, amps to come", proved + even, sheet.Unjudged, "", sheet.StepAmps, practice},
		{"amps as with the belt off", proved + even + legs("2.2", "2.25", "2.15"), sheet.Unjudged, sheet.RuleBeltOff, sheet.StepAmps, practice},
		{"amps of a light load", proved + even + legs("2.6", "2.65", "2.55"), sheet.Within, "", sheet.StepVerdict, practice},
		{"no belt to be off", strings.Replace(proved, "supply=three-phase", "supply=three-phase&mount=direct", 1) + even + legs("2.2", "2.25", "2.15"), sheet.Within, "", sheet.StepVerdict, practice},
	})
	f := fan(t, proved+even+legs("2.2", "2.25", "2.15")+"&same-wheel=yes&trial.t1.speed=700rpm&trial.t1.turns=3")
	if b := sheet.FanBasis(f); b.Known() {
		t.Errorf("power is carried from %v W, told with the belt off", b.Power.Value)
	}
	if got := sheet.Shares(f, &f.New, &f.Trials[0].Reading); len(got) == 0 || got[0].Load.Known() {
		t.Errorf("a load: %+v", got)
	}
}

// Taking a place out of a record that is stopped leaves it not within. A dial that
// nobody has set is no dial set too high, and the checks ask for it; the frequency of a
// line that nobody has read is the usual one.
func TestMissingIsNoBetterThanKnown(t *testing.T) {
	for _, link := range []string{
		"supply=direct&new.phases=3&" + plain + even + legs("6.1", "6.3", "0.2"),
		proved + "&new.service-factor=1&new.overload-dial=7.7A" + even + legs("5.6", "5.7", "5.5"),
		"supply=three-phase&new.motor-power=1hp&new.motor-amps=3.6A&new.motor-volts=208V&new.service-factor=1&new.rotation=marked&new.overload-dial=4.2A" + even + legs("3.2", "3.3", "3.2"),
		"supply=three-phase&" + plain + "&new.motor-frequency=60Hz&trial.t1.frequency=50Hz" + even + legs("5.6", "5.7", "5.5"),
		"supply=three-phase&" + plain + even + legs("6.2", "2.5", "6.3"),
		"supply=three-phase&" + plain + even + legs("7.6", "3.8", "3.8"),
		"supply=three-phase&" + plain + across("212", "206", "200") + legs("6.5", "6.3", "6.1"),
		"supply=drive&" + plain + even + legs("6.9", "6.9", "6.9"),
		"supply=drive&" + plain + even + legs("4.0", "4.1", "1.25"),
		"supply=three-phase&" + plain + even + legs("8.6", "8.6", "8.6"),
		"supply=three-phase&" + plain + across("178", "178", "178") + legs("5.6", "5.7", "5.5"),
		"supply=single-phase&new.phases=3&" + plain + "&trial.t1.volts-12=208V",
	} {
		f := fan(t, link)
		if p := sheet.Prove(f); p.Worst.Level != sheet.Stop {
			t.Errorf("%s is no stop: %+v", link, p.Worst)
			continue
		}
		for key, place := range f.Places() {
			if place.State() != record.Known || key == "new.overload-dial" || key == "trial.t1.frequency" {
				continue
			}
			g := fan(t, link)
			set(t, g, key, "")
			if p := sheet.Prove(g); p.Next == sheet.StepVerdict && p.Worst.Level == sheet.Within {
				t.Errorf("%s without %s is within", link, key)
			}
		}
	}
}

// A wider band of any reading never makes the proof surer.
func TestWiderIsNoSurer(t *testing.T) {
	rank := map[sheet.Level]int{sheet.Within: 0, sheet.Unjudged: 1, sheet.Watch: 2, sheet.Stop: 3}
	for _, link := range []string{
		proved + even + legs("5.6", "5.7", "5.5"),
		proved + even + legs("6.5", "6.6", "6.4"),
		proved + across("212", "206", "200") + legs("5.9", "5.8", "5.7"),
		"supply=drive&" + plain + even + legs("4.0", "4.1", "3.7"),
	} {
		last := -1
		for _, band := range []string{"0.1 %", "1 %", "2 %", "5 %", "10 %", "25 %", "60 %"} {
			f := fan(t, link)
			for i := range f.Trials[0].Reading.Amps {
				e := &f.Trials[0].Reading.Amps[i]
				if err := e.Set(e.Text() + "; within " + band); err != nil {
					t.Fatal(err)
				}
			}
			w := sheet.Prove(f).Worst.Level
			if w == sheet.Within && last > 0 {
				t.Errorf("%s within %s is within, and was not before", link, band)
			}
			last = max(last, rank[w])
		}
	}
}
