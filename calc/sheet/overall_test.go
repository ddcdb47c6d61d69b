package sheet_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Each part of the job decides by itself what is said of the whole fan. What a part
// says is held to its sources in the part's own tests.
func TestOverallIsTheWorstOfAll(t *testing.T) {
	inOrder := join([]string{"supply", "three-phase", "new.motor-volts", "208 V", "new.motor-amps", "6.6 A", "old.curb-width", "24 in", "new.curb-width", "24.25 in"}, evenVolts, evenAmps, proven)
	for _, c := range []struct {
		name   string
		texts  []string
		judged bool
		level  sheet.Level
		rule   sheet.Rule
	}{
		{"nothing", nil, false, sheet.Within, ""},
		{"a supply", []string{"supply", "three-phase"}, false, sheet.Within, ""},
		{"direct, in order", []string{"supply", "direct", "old.curb-width", "24 in", "new.curb-width", "24.25 in"}, false, sheet.Within, ""},
		{"it turned the wrong way", []string{"supply", "three-phase", "new.rotation", "reverse"}, true, sheet.Stop, sheet.RuleRotation},
		{"the belt is shorter than its way", []string{"new.section", "A", "new.sheave", "fixed", "new.motor-sheave", "3.5 in", "new.fan-sheave", "9 in", "new.center-distance", "14 in", "new.belt-number", "A10"}, true, sheet.Stop, sheet.RuleShort},
		{"a base that does not go over", []string{"old.curb-width", "24 in", "new.curb-width", "23 in"}, true, sheet.Stop, sheet.RuleCurb},
		{"along too", []string{"old.curb-length", "24 in", "new.curb-length", "23 in"}, true, sheet.Stop, sheet.RuleCurb},
		{"a conduit that must stay dry", []string{"raceway.conduit", "FMC", "raceway.place", "outdoors"}, true, sheet.Stop, sheet.RuleConduitWet},
		{"a raceway too full", append(rowsOf("9"), "raceway.conduit", "LFMC", "raceway.size", "3/8"), true, sheet.Stop, sheet.RuleFillSmall},
		{"a box too small", append(rowsOf("9"), "raceway.conduit", "LFMC", "raceway.size", "1", "box.volume", "2 in3", "box.devices", "0", "box.clamps", "no"), true, sheet.Stop, sheet.RuleBoxFill},
		{"a kitchen too far below the room", []string{"hood.space-pressure", "0.03 inwg"}, true, sheet.Stop, sheet.RuleSpacePressure},
		{"a hood that draws too little", []string{"hood.listing", "listed", "hood.label-airflow", "3000 cfm", "hood.airflow", "2000 cfm"}, true, sheet.Stop, sheet.RuleLabelAirflow},
		{"a hood that was not measured", []string{"hood.listing", "listed", "hood.label-airflow", "3000 cfm", "want.speed", "300 rpm"}, false, sheet.Within, ""},
		{"air too slow in the duct", []string{"hood.airflow", "300 cfm", "hood.duct-width", "18 in", "hood.duct-height", "12 in"}, true, sheet.Watch, sheet.RuleDuct},
		{"grease thrown on the roof", []string{"new.discharge", "down"}, true, sheet.Stop, sheet.RuleUnlike},
		{"another weight", []string{"old.weight", "100 lb", "new.weight", "200 lb"}, false, sheet.Within, ""},
		{"a phase lost", join(inOrder, []string{"trial.t1.amps-1", "0 A"}), true, sheet.Stop, sheet.RuleLostPhase},
		{"of a direct one too", join(inOrder, []string{"supply", "direct", "new.rotation", "reverse"}), true, sheet.Stop, sheet.RuleRotation},
	} {
		f := made(t, c.texts...)
		v, judged := sheet.Overall(f)
		if judged != c.judged || v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: judged %v, level %d by %s; want %v, %d by %s", c.name, judged, v.Level, v.Rule, c.judged, c.level, c.rule)
		}
	}
}

// A belt's tension is held against a fan once it was read, and while no move of the
// sheave undoes it.
func TestOverallHasTheTension(t *testing.T) {
	judged := func(f *record.Fan) (levels map[sheet.Rule]sheet.Level) {
		levels = map[sheet.Rule]sheet.Level{}
		for _, v := range sheet.JobOf(f, unit.Inch/16, false).Running() {
			if levels[v.Rule] <= v.Level {
				levels[v.Rule] = v.Level
			}
		}
		return levels
	}
	with := func(texts ...string) *record.Fan {
		f := demo(t)
		set(t, f, join(left, []string{"new.belts", "1", "trial.t1.turns", "3 turns"}, texts)...)
		return f
	}
	for _, c := range []struct {
		name  string
		texts []string
		rule  sheet.Rule
		level sheet.Level
	}{
		{"loose", []string{"trial.t1.belt-frequency", "10 Hz"}, sheet.RuleLoose, sheet.Watch},
		{"tight", []string{"trial.t1.belt-frequency", "90 Hz"}, sheet.RuleTight, sheet.Watch},
		{"its age not said", []string{"trial.t1.belt-age", "", "trial.t1.belt-frequency", "44 Hz"}, sheet.RuleTension, sheet.Unjudged},
		{"readings apart", []string{"trial.t1.belt-frequency", "90 Hz", "trial.t1.belt-force", "1 lbf", "trial.t1.belt-deflection", "1/4 in"}, sheet.RuleReadings, sheet.Unjudged},
	} {
		f := with(c.texts...)
		level, ok := judged(f)[c.rule]
		if !ok || level != c.level {
			t.Errorf("%s: level %d of %s in %v", c.name, level, c.rule, judged(f))
		}
		if worst, _ := sheet.Overall(f); worst.Level < c.level {
			t.Errorf("%s: the fan stands at %d", c.name, worst.Level)
		}
	}
	for name, f := range map[string]*record.Fan{
		"not read":          with("trial.t1.belt-frequency", "", "trial.t1.belt-age", ""),
		"the sheave moves":  with("trial.t1.turns", "1 turns", "trial.t1.belt-frequency", "10 Hz", "trial.t1.speed", "790 rpm"),
		"driven by no belt": with("supply", "direct", "trial.t1.belt-frequency", "10 Hz"),
	} {
		for rule := range judged(f) {
			if rule == sheet.RuleLoose || rule == sheet.RuleTight || rule == sheet.RuleTension {
				t.Errorf("%s: judged by %s", name, rule)
			}
		}
	}
}

// A tension stands the same by whole marks of any rule.
func TestTensionIsJudgedAlikeByAnyMark(t *testing.T) {
	levels := map[sheet.Level]bool{}
	for hz := 10; hz < 90; hz++ {
		f := demo(t)
		off := " Hz"
		if hz%2 > 0 {
			off = " Hz; within 40 %" // no better than anyone's ear
		}
		set(t, f, join(left, []string{"new.belts", "1", "new.belt-mass", "0.07 lb/ft", "trial.t1.turns", "3 turns", "trial.t1.belt-frequency", fmt.Sprint(hz, off)})...)
		table := sheet.TableToSet(f)
		m, _ := sheet.NextMove(f, table)
		_, _, inch := sheet.TensionNow(f, table, m, unit.Inch/16)
		_, _, milli := sheet.TensionNow(f, table, m, unit.Millimeter)
		levels[inch.Verdict.Level] = true
		if inch.Verdict.Level != milli.Verdict.Level || inch.Verdict.Rule != milli.Verdict.Rule {
			t.Errorf("%d Hz: %d by %s, and %d by %s", hz, inch.Verdict.Level, inch.Verdict.Rule, milli.Verdict.Level, milli.Verdict.Rule)
		}
	}
	if len(levels) < 3 {
		t.Errorf("only the levels %v were reached", levels)
	}
}

func rowsOf(count string) []string {
	return []string{"wire.w1.count", count, "wire.w1.size", "12", "wire.w1.insulation", "THWN-2"}
}

// The drive's own verdict is among them.
func TestOverallHasTheDrive(t *testing.T) {
	f := demo(t)
	set(t, f, "new.wheel-max-speed", "500 rpm", "new.belt-number", "")
	if v, judged := sheet.Overall(f); !judged || v.Level != sheet.Stop || v.Rule != sheet.RuleWheelMax {
		t.Errorf("judged %v, level %d by %s", judged, v.Level, v.Rule)
	}
}

// complete is an invented fan with every page filled in.
func complete(t testing.TB) *record.Fan {
	t.Helper()
	data, err := os.ReadFile("../record/testdata/complete-fan.txt")
	if err != nil {
		t.Fatal(err)
	}
	f := record.NewFan()
	for line := range strings.Lines(string(data)) {
		key, text, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "=")
		if p := f.Apply(map[string]string{key: text}); len(p) > 0 {
			t.Fatal(p)
		}
	}
	return f
}

// A roof asks it of each of its fans.
func BenchmarkOverall(b *testing.B) {
	f := complete(b)
	b.ReportAllocs()
	for b.Loop() {
		sheet.Overall(f)
	}
}

func BenchmarkUnmarshal(b *testing.B) {
	data, err := complete(b).Marshal()
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := record.Unmarshal(data); err != nil {
			b.Fatal(err)
		}
	}
}

// A fan is judged by the table that judges no more than what it orders: it says of the
// drive what the whole one says.
func TestTheShortTableJudgesAsTheWholeOne(t *testing.T) {
	for _, f := range []*record.Fan{demo(t), complete(t)} {
		for _, texts := range [][]string{nil, {"new.wheel-max-speed", "500 rpm"}, {"new.wheel-max-speed", "716 rpm"}, {"new.motor-amps", "3 A"}, {"target.speed", "300 rpm"}, {"target.speed", "1500 rpm"}, {"new.travel-toward", "0 in"}, {"new.motor-amps", ""}, {"target.speed", ""}} {
			set(t, f, texts...)
			whole, short := sheet.TurnsTable(f), sheet.TableToSet(f)
			m, _ := sheet.NextMove(f, whole)
			n, _ := sheet.NextMove(f, short)
			a, judged := sheet.Standing(f, whole, m)
			b, also := sheet.Standing(f, short, n)
			if judged != also || a.Level != b.Level || a.Rule != b.Rule {
				t.Errorf("with %v: %v %d by %s, and %v %d by %s", texts, judged, a.Level, a.Rule, also, b.Level, b.Rule)
			}
		}
	}
}

// What stands alone is neither compared nor brought.
func TestWhatStandsAloneIsNotCompared(t *testing.T) {
	say := func(f *record.Fan) string {
		var s strings.Builder
		for _, l := range sheet.LikeForLike(f) {
			fmt.Fprintln(&s, l.Name, l.Likeness, l.Level)
		}
		for _, along := range []bool{false, true} {
			c := sheet.Clearance(f, along)
			fmt.Fprintln(&s, c.Known(), c.Value)
		}
		for _, m := range sheet.Materials(f) {
			fmt.Fprintln(&s, m.Thing, m.Plan, m.Count, m.Amount, len(m.Reasons), len(m.Wanted))
		}
		return s.String()
	}
	plain := demo(t)
	want, alone := say(plain), 0
	for key := range plain.Places() {
		f := demo(t)
		for _, text := range []string{"2026-03-09", "done", "some words"} {
			if record.Alone(key) && f.Place(key).Set(text) == nil {
				alone++
				break
			}
		}
		if got := say(f); got != want {
			t.Errorf("%s moves\n%s\nto\n%s", key, want, got)
		}
	}
	if alone < 30 || record.Alone("old.weight") {
		t.Errorf("%d places stand alone", alone)
	}
}

// What is silent moves nothing that runs: neither the table nor the proof nor what is
// held against them.
func TestSilentPlacesMoveNothing(t *testing.T) {
	base := map[string]string{"new.belts": "1", "trial.t1.turns": "3 turns"}
	for i := 0; i < len(left); i += 2 {
		base[left[i]] = left[i+1]
	}
	say := func(f *record.Fan) string {
		job := sheet.JobOf(f, unit.Inch/16, false)
		table := job.Table()
		var s strings.Builder
		for _, v := range job.Running() {
			fmt.Fprintln(&s, v.Level, v.Rule, v.Value.Base, v.Limit.Base, len(v.Wanted))
		}
		for _, r := range table.Rows {
			fmt.Fprintln(&s, r.Turns, r.Speed, r.Verdict().Rule, r.Verdict().Level)
		}
		return s.String()
	}
	plain := demo(t)
	plain.Apply(base)
	want, moved := say(plain), 0
	if !strings.Contains(want, " belt-") {
		t.Errorf("the belt's tension is not among what is judged:\n%s", want)
	}
	for key := range plain.Places() {
		if !record.Silent(key) {
			continue
		}
		f := demo(t)
		f.Apply(base)
		p := f.Place(key)
		for _, text := range []string{"1 in", "99 lb", "2026-03-09", "done", "1", "far", "down", "some words"} {
			if p.Set(text) == nil {
				moved++
				break
			}
		}
		if got := say(f); got != want {
			t.Errorf("%s moves\n%s\nto\n%s", key, want, got)
		}
	}
	if moved < 50 || record.Silent("new.motor-amps") || record.Silent("trial.t1.speed") || !record.Silent("old.weight") {
		t.Errorf("%d silent places were filled", moved)
	}
}
