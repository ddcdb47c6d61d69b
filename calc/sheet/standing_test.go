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
