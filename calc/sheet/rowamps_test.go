package sheet_test

import (
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// carrying is the bench with its load: 1.15 hp at 700 rpm and 90 °F by the report, which
// is the coldest that it starts in. At 1750 rpm of the motor, 3 turns open are 708 rpm and
// 4.6 A at most (half the no-load current taken off), closed 833 rpm and 6.4.
const carrying = bench + "&target.power=1.15hp&target.air-temperature=90F&coldest-air=90F&new.no-load-amps=3.4A&new.service-factor=1.15"

// rowAt is the row of a fan's table at a setting.
func rowAt(t *testing.T, f *record.Fan, turns unit.Turns) sheet.Row {
	t.Helper()
	table := sheet.TurnsTable(f)
	for _, r := range table.Rows {
		if r.Turns == turns {
			return r
		}
	}
	t.Fatalf("no row at %v turns of %d: %v", turns, len(table.Rows), table.Speed.Wanted)
	return sheet.Row{}
}

// rowSays is what a row says by one of the rules: level and what is wanted.
func rowSays(f *record.Fan, r sheet.Row, rules ...sheet.Rule) string {
	for _, v := range r.Verdicts {
		if slices.Contains(rules, v.Rule) {
			return strings.TrimSpace(levelNames[v.Level] + " " + wantedOf(f, v))
		}
	}
	return "within"
}

func changed(t *testing.T, link, more string) *record.Fan {
	t.Helper()
	f := fan(t, link)
	for part := range strings.SplitSeq(strings.TrimPrefix(more, "&"), "&") {
		if key, text, ok := strings.Cut(part, "="); ok {
			f.Apply(map[string]string{key: text})
		}
	}
	return f
}

// Amps at a setting: what isn't known is asked for, and never hides a motor that is
// surely overloaded. (The fan laws: power as the cube of speed and with density.)
func TestAmpsOfASetting(t *testing.T) {
	for _, c := range []struct {
		name, more string
		turns      unit.Turns
		want       string
	}{
		{"as it should be", "", 3, "within"},
		{"the motor's power not read", "&new.motor-power=", 3, "unjudged new.motor-power"},
		{"its amps not read", "&new.motor-amps=", 3, "unjudged new.motor-amps"},
		{"a coldest start that is none", "&coldest-air=!cold", 3, "unjudged coldest-air"},
		// 305 K over 233 are 1.31: 0.60 of load become 0.78, and 5.5 A; 0.83 become 1.09, and 7.0.
		{"the coldest start not told, and enough in any cold", "&coldest-air=", 3, "within"},
		{"the coldest start not told, and too much in great cold", "&coldest-air=", 1, "unjudged coldest-air"},
		// 1.1 · 1.686 = 1.85 of its power: 12 A in the warmest air, of 7.6 at its service factor.
		{"the coldest start not told, and far too much without", "&coldest-air=&target.power=2.2hp", 0, "stop"},
		// 0.59 · 1.686 of its power are 6.6 A, give or take: what would narrow it is asked for.
		{"near the plate", "&target.power=1.18hp", 0, "unjudged old.no-load-amps"},
		{"near the plate, its own no-load amps not read", "&target.power=1.18hp&new.no-load-amps=", 0, "unjudged new.no-load-amps"},
		{"near the plate, and a trial is begun", "&target.power=1.18hp&trial.a.turns=0 turns", 0, "unjudged trial.a.amps-1"},
	} {
		f := changed(t, carrying, c.more)
		got := rowSays(f, rowAt(t, f, c.turns), sheet.RulePlateAmps, sheet.RuleServiceAmps, sheet.RuleServiceNear, sheet.RuleServiceVoid, sheet.RuleTripAmps)
		if got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// A row that was read has the amps that were read, whatever the error of the speed: it is
// one error, and cancels. Two speeds that were told apart from each other may lie apart by
// both errors, 4 % each, and amps by the cube: 12 % each.
func TestOneErrorOfSpeedIsNotTwo(t *testing.T) {
	const amps = "&trial.a.amps-1=5.4A&trial.a.amps-2=5.4A&trial.a.amps-3=5.4A"
	for _, c := range []struct {
		name, more string
		apart      bool
	}{
		{"amps and speed of one reading", "&trial.a.turns=3 turns&trial.a.speed=716 rpm;within 30 rpm" + amps, false},
		{"amps at a setting whose speed was not read", "&new.motor-speed=1750rpm;within 70rpm&trial.a.turns=3 turns" + amps, false},
		{"the speed read again later", "&trial.a.turns=3 turns&trial.a.speed=716 rpm;within 30 rpm" + amps + "&trial.b.turns=3 turns&trial.b.speed=716 rpm;within 30 rpm", true},
		{"the speed read later alone", "&new.motor-speed=1750rpm;within 70rpm&trial.a.turns=3 turns" + amps + "&trial.b.turns=3 turns&trial.b.speed=716 rpm;within 30 rpm", true},
		{"a setting that was not written down", "&new.motor-speed=1750rpm;within 70rpm&trial.a.speed=716 rpm;within 30 rpm" + amps, true},
	} {
		f := changed(t, carrying, c.more)
		r := rowAt(t, f, 3)
		if high := float64(r.AmpsHigh.V); !r.AmpsHigh.Known || high < 5.4 || c.apart != (high > 5.4*1.12) {
			t.Errorf("%s: up to %.3g A", c.name, high)
		}
	}
	// By the report 0.575 of its power at 700 rpm; the speed at this setting by another
	// tachometer: up to 0.65, and 1.7 + 0.65 · 4.9 = 4.9 A.
	f := changed(t, carrying, "&trial.a.turns=3 turns&trial.a.speed=700 rpm;within 30 rpm")
	if r := rowAt(t, f, 3); float64(r.LoadHigh.V) < 4.85/6.6 {
		t.Errorf("by the report: up to %.3g of the plate's amps", float64(r.LoadHigh.V))
	}
}

// A wheel near its greatest speed: what tells the load tells how fast the motor turns,
// 1750 rpm or nearly 1800; of a speed that was read it tells nothing.
func TestWheelOfASetting(t *testing.T) {
	for _, c := range []struct {
		name, more string
		turns      unit.Turns
		want       string
	}{
		{"708 rpm, 729 without load", "&new.wheel-max-speed=720rpm", 3, "unjudged old.amps-1 target.power"},
		{"833 rpm", "&new.wheel-max-speed=720rpm", 0, "stop"},
		{"its greatest not read", "&new.wheel-max-speed=", 3, "unjudged new.wheel-max-speed"},
		{"716 rpm read, give or take 5", "&new.wheel-max-speed=718rpm&trial.a.turns=3 turns&trial.a.speed=716rpm;within 5rpm", 3, "unjudged"},
		{"716 rpm read, give or take 5, of 750", "&new.wheel-max-speed=750rpm&trial.a.turns=3 turns&trial.a.speed=716rpm;within 5rpm", 3, "within"},
	} {
		f := changed(t, bench, c.more)
		if got := rowSays(f, rowAt(t, f, c.turns), sheet.RuleWheelMax); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}
