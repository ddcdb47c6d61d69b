package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// A closed sheave is a setting like another: what is said of its speed stands, whether it
// is the one to set or the nearest that misses the target.
func TestAClosedSheaveIsASetting(t *testing.T) {
	const drive = "supply=three-phase&same-wheel=yes&coldest-air=70 F&target.power=1.0 hp&new.motor-power=3 hp&new.motor-amps=9.2 A&new.service-factor=1.15&new.motor-speed=1750 rpm&new.motor-frequency=60 Hz&new.phases=3&new.wheel-max-speed=1200 rpm" +
		"&new.section=A&new.sheave=adjustable&new.anchor-turns=0 turns&new.anchor-pitch=4.0 in&new.second-anchor-turns=5 turns&new.second-anchor-pitch=3.0 in&new.most-turns=5 turns&new.fan-sheave=8.4 in&new.turns=3 turns&target.speed="
	for target, want := range map[string]sheet.Level{"832 rpm": sheet.Within, "880 rpm": sheet.Watch} { // 4.0 / 8.4 of 1750 to 1775 rpm, less slip
		f := fan(t, drive+target)
		table := sheet.TurnsTable(f)
		v, has := sheet.Named(ask(f).Stands(sheet.OfDrive), "set."+string(sheet.RuleBelow))
		if !has {
			v, has = sheet.Named(ask(f).Stands(sheet.OfDrive), "set."+string(sheet.RuleTarget))
		}
		if set := table.Set == 0; set != (want == sheet.Within) || !has || v.Level != want || sheet.SettingVerdict(f, table).Rule != v.Rule {
			t.Errorf("%s: set %d, stands %v, %+v", target, table.Set, has, v)
		}
	}
}

// How far a sheave opens goes by its belt's section, or is stamped on it: of a section
// that has no usual most, the stamp is asked for, and of none the section.
func TestWhatTellsHowFarASheaveOpens(t *testing.T) {
	for section, want := range map[string]string{"": "new.section", "5V": "new.most-turns", "A": ""} {
		f := fan(t, "supply=three-phase&new.motor-speed=1750rpm&new.sheave=adjustable&new.anchor-turns=0&new.anchor-pitch=4in&new.second-anchor-turns=5&new.second-anchor-pitch=3in&new.fan-sheave=8in&new.turns=3&new.section="+section)
		wanted := ""
		for _, v := range sheet.TurnsTable(f).Rows[6].Verdicts {
			if v.Rule == sheet.RuleUsualTurns && len(v.Wanted) > 0 {
				wanted = f.KeyOf(v.Wanted[0])
			}
		}
		if wanted != want {
			t.Errorf("section %q: wants %q", section, wanted)
		}
	}
}
