package sheet_test

import (
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// everyOrigin says 712 by the report, 700 by the tag, 720 by tachometer, 715.03
// counted, and 1725 · 3.5/8.6 = 702.03 by the sheaves.
const everyOrigin = "same-wheel=yes&target.speed=712rpm&target.tag-speed=700rpm&speed=720rpm&belt-healthy=yes" +
	"&motor-speed=1725rpm&motor-tachometer=1725rpm;within 0rpm&count-fan-turns=20&count-motor-turns=48.25&motor-sheave=3.5in&fan-sheave=8.6in"

func TestTargetIsTheMostTrustedOrigin(t *testing.T) {
	f := fan(t, everyOrigin)
	for _, c := range []struct {
		origin record.Origin
		rpm    float64
		drop   string
	}{
		{record.FromReport, 712, "target.speed"},
		{record.FromTag, 700, "target.tag-speed"},
		{record.FromTachometer, 720, "old.belt-healthy"},
		{record.FromCount, 1725 * 20 / 48.25, "old.count-fan-turns"},
		{record.FromSheaves, 1725 * 3.5 / 8.6, "old.fan-sheave"},
	} {
		value(t, string(c.origin), sheet.TargetSpeed(f), c.rpm)
		cs := sheet.Targets(f)
		if f.Old.BeltHealthy.Value() == "" { // the tachometer's reading waits for a word, and is not used meanwhile
			if cs[0].Origin != record.FromTachometer || cs[0].Chosen || f.KeyOf(cs[0].Speed.Wanted[0]) != "old.belt-healthy" {
				t.Errorf("%+v", cs[0])
			}
			cs = cs[1:]
		}
		if cs[0].Origin != c.origin || !cs[0].Chosen || cs[0].Apart != 0 {
			t.Errorf("first is %+v, want %s", cs[0].Origin, c.origin)
		}
		set(t, f, c.drop, "")
		if c.drop == "old.count-fan-turns" {
			set(t, f, "old.count-motor-turns", "")
		}
	}
	wants(t, f, "target", sheet.TargetSpeed(f), "old.belt-healthy")
	set(t, f, "old.speed", "")
	if cs := sheet.Targets(f); len(cs) != 0 {
		t.Errorf("%d origins of nothing", len(cs))
	}
	wants(t, f, "target", sheet.TargetSpeed(f), "target.speed")
}

func TestTargetCanBeChosen(t *testing.T) {
	f := fan(t, everyOrigin+"&target.use=count")
	value(t, "chosen", sheet.TargetSpeed(f), 1725*20/48.25)
	chosen := 0
	for _, c := range sheet.Targets(f) {
		if c.Chosen {
			chosen++
			if c.Origin != record.FromCount {
				t.Errorf("%s is chosen", c.Origin)
			}
		} else if want := float64(c.Speed.Value)/(1725*20/48.25) - 1; c.Apart == 0 || float64(c.Apart) != want {
			near(t, string(c.Origin), c.Apart, want)
		}
	}
	if chosen != 1 {
		t.Errorf("%d are chosen", chosen)
	}
	// A choice stands when its value is taken away: nothing takes its place unsaid.
	set(t, f, "old.count-fan-turns", "")
	wants(t, f, "chosen, and wanting", sheet.TargetSpeed(f), "old.count-fan-turns")
}

// Where two origins lie apart for sure, nothing is asked for, least of all a count that
// stands; where a count's own error leaves it open, it is named as what a surer figure
// would settle.
func TestWhatLiesApartAsksForNothing(t *testing.T) {
	const count = "&motor-speed=1725rpm&motor-tachometer=1725rpm;within 0rpm&count-fan-turns=20&count-motor-turns=48.25"
	v := sheet.TargetVerdict(fan(t, "target.speed=712rpm&target.tag-speed=800rpm"+strings.Replace(count, "48.25", "47", 1)))
	if v.Level != sheet.Watch || len(v.Wanted) > 0 {
		t.Errorf("level %d wants %d", v.Level, len(v.Wanted))
	}
	f := fan(t, "target.speed=712rpm"+strings.Replace(count, "48.25", "47", 1))
	if v := sheet.TargetVerdict(f); v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != "old.count-motor-turns" {
		t.Errorf("level %d wants %d", v.Level, len(v.Wanted))
	}
}

func TestOriginsThatDisagree(t *testing.T) {
	for _, c := range []struct {
		name, tag string
		level     sheet.Level
		settles   string
	}{
		{"2.9 % apart", "732.6rpm", sheet.Within, ""},
		{"2.98 % apart", "733.2rpm", sheet.Within, ""},
		{"3.02 % apart", "733.5rpm", sheet.Watch, ""},
		{"a band reaches under 3 %", "736rpm;within 10rpm", sheet.Unjudged, "target.tag-speed"},
		{"3.1 % below", "689.9rpm", sheet.Watch, ""},
		{"a band reaches over 3 %", "730rpm;within 10rpm", sheet.Unjudged, "target.tag-speed"},
		{"all of a band is over 3 %", "750rpm;within 10rpm", sheet.Watch, ""},
	} {
		f := fan(t, "target.speed=712rpm&target.tag-speed="+c.tag)
		v := sheet.TargetVerdict(f)
		if v.Level != c.level || v.Rule != sheet.RuleSources {
			t.Errorf("%s: level %v", c.name, v.Level)
		}
		if c.settles != "" && (len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != c.settles) {
			t.Errorf("%s: settled by %v", c.name, v.Wanted)
		}
		near(t, c.name, v.Value.Base, max(float64(f.Target.TagSpeed.Value())/712-1, 1-float64(f.Target.TagSpeed.Value())/712))
	}
	if v := sheet.TargetVerdict(fan(t, "target.speed=712rpm")); v.Level != sheet.Unjudged {
		t.Errorf("one origin agrees with itself: %v", v.Level)
	}
}

// With another wheel a speed match means nothing for air.
func TestAnotherWheelHasOnlyItsRating(t *testing.T) {
	f := fan(t, everyOrigin)
	set(t, f, "same-wheel", "no")
	wants(t, f, "target", sheet.TargetSpeed(f), "target.rated-speed")
	set(t, f, "target.rated-speed", "655 rpm", "target.use", "report")
	value(t, "target", sheet.TargetSpeed(f), 655)
	if cs := sheet.Targets(f); len(cs) != 1 || cs[0].Origin != record.FromRating || !cs[0].Chosen {
		t.Errorf("%+v", cs)
	}
	set(t, f, "old.airflow", "3000 cfm", "old.amps-1", "5 A", "old.motor-amps", "6 A", "old.motor-power", "2 hp", "supply", "three-phase")
	at := sheet.PointAt(f, sheet.TargetSpeed(f), sheet.PlannedAir(f))
	wants(t, f, "airflow from the old wheel's", at.Airflow, "target.airflow")
	if b := sheet.FanBasis(f); b.Known() || len(b.Wanted) == 0 || f.KeyOf(b.Wanted[0]) != "target.rated-power" {
		t.Errorf("power from the old wheel's: %+v", b)
	}
	set(t, f, "target.power", "1.15 hp") // which the old wheel took
	if b := sheet.FanBasis(f); b.Known() {
		t.Errorf("power from the old wheel's: %+v", b)
	}
	set(t, f, "target.rated-power", "1.4 hp")
	b := sheet.FanBasis(f)
	value(t, "power", b.Power, 1.4*745.6998715822702)
	value(t, "at the rated speed", b.Speed, 655)
}
