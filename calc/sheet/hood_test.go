package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

func hoodVerdict(f *record.Fan) sheet.Verdict {
	at := sheet.PointAt(f, sheet.TargetSpeed(f), sheet.PlannedAir(f))
	return sheet.HoodVerdict(f, sheet.HoodAirflow(f, at))
}

func TestHoodAirflow(t *testing.T) {
	for _, c := range []struct {
		name, with string
		level      sheet.Level
		rule       sheet.Rule
		wanted     string
	}{
		{"label met", "&hood.label-airflow=3000cfm;within 0cfm&hood.airflow=3100cfm;within 0cfm", sheet.Within, sheet.RuleLabelAirflow, ""},
		{"label not met", "&hood.label-airflow=3000cfm;within 0cfm&hood.airflow=2990cfm;within 0cfm", sheet.Stop, sheet.RuleLabelAirflow, ""},
		{"a band reaches the label", "&hood.label-airflow=3000cfm;within 0cfm&hood.airflow=3100cfm", sheet.Unjudged, sheet.RuleLabelAirflow, "hood.airflow"},
		// The report's 3200 cfm at that speed is no measured airflow.
		{"speed alone", "&hood.label-airflow=2000cfm", sheet.Unjudged, sheet.RuleLabelAirflow, "hood.airflow"},
		{"listed, label not read", "&hood.listing=listed&hood.airflow=3100cfm", sheet.Unjudged, sheet.RuleLabelAirflow, "hood.label-airflow"},
		{"not said whether listed", "&hood.airflow=3100cfm&hood.kind=wall&hood.duty=heavy&hood.length=10ft", sheet.Unjudged, sheet.RuleLabelAirflow, "hood.listing"},
		// 400 cfm for each foot of a wall canopy over heavy duty: IMC 507.5, as a state code of 2023 has it.
		{"table met", "&hood.listing=unlisted&hood.kind=wall&hood.duty=heavy&hood.length=7ft&hood.airflow=2801cfm;within 0cfm", sheet.Within, sheet.RuleTableAirflow, ""},
		{"table not met", "&hood.listing=unlisted&hood.kind=wall&hood.duty=heavy&hood.length=7ft&hood.airflow=2799cfm;within 0cfm", sheet.Stop, sheet.RuleTableAirflow, ""},
		{"no duty needed", "&hood.listing=unlisted&hood.kind=dishwasher&hood.length=7ft&hood.airflow=701cfm;within 0cfm", sheet.Within, sheet.RuleTableAirflow, ""},
		{"not allowed", "&hood.listing=unlisted&hood.kind=eyebrow&hood.duty=heavy&hood.length=7ft&hood.airflow=2801cfm", sheet.Unjudged, sheet.RuleTableAirflow, "hood.duty"},
	} {
		f := fan(t, report+c.with)
		v := hoodVerdict(f)
		if v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: %v %s", c.name, v.Level, v.Rule)
		}
		if got := len(v.Wanted) > 0; got != (c.wanted != "") || got && f.KeyOf(v.Wanted[0]) != c.wanted {
			t.Errorf("%s wants %v", c.name, v.Wanted)
		}
	}
}

func TestDuct(t *testing.T) {
	f := fan(t, report+"&hood.duct-width=20in;within 0in&hood.duct-height=16in;within 0in&hood.airflow=1200cfm;within 0cfm")
	q := sheet.HoodAirflow(f, sheet.Point{})
	v := sheet.DuctVelocity(f, q)
	value(t, "rectangular", v, 1200/(20*16/144.)*fpm)
	if got := sheet.DuctVerdict(v); got.Level != sheet.Within || got.Rule != sheet.RuleDuct {
		t.Errorf("540 ft/min: %+v", got)
	}
	set(t, f, "hood.duct-diameter", "22 in; within 0 in")
	v = sheet.DuctVelocity(f, q)
	value(t, "round", v, 1200/(math.Pi*22*22/4/144)*fpm)
	if got := sheet.DuctVerdict(v); got.Level != sheet.Watch {
		t.Errorf("455 ft/min: %+v", got)
	}
	set(t, f, "hood.duct-diameter", "", "hood.duct-height", "?")
	wants(t, f, "no height", sheet.DuctVelocity(f, q), "hood.duct-height")
}

func TestMakeUp(t *testing.T) {
	f := fan(t, "hood.airflow=3200cfm&hood.makeup-airflow=2560cfm")
	q := sheet.HoodAirflow(f, sheet.Point{})
	value(t, "make-up", sheet.MakeUpBalance(f, q), 640*cfm)
	set(t, f, "hood.transfer-airflow", "700 cfm")
	value(t, "with transfer", sheet.MakeUpBalance(f, q), -60*cfm)
	for pressure, want := range map[string]sheet.Level{"0.019 inwg; within 0 inwg": sheet.Within, "0.02 inwg; within 0 inwg": sheet.Within, "0.021 inwg; within 0 inwg": sheet.Stop, "0.02 inwg": sheet.Unjudged, "?": sheet.Unjudged} {
		set(t, f, "hood.space-pressure", pressure)
		if v := sheet.SpaceVerdict(f); v.Level != want {
			t.Errorf("%s: %+v", pressure, v)
		}
	}
}
