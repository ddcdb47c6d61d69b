package sheet_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
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

// What is silent moves nothing that runs: neither the table nor the proof nor what is
// held against them.
func TestSilentPlacesMoveNothing(t *testing.T) {
	base := map[string]string{}
	for i := 0; i < len(left); i += 2 {
		base[left[i]] = left[i+1]
	}
	say := func(f *record.Fan) string {
		table, proof := sheet.TableToSet(f), sheet.Prove(f)
		var s strings.Builder
		for _, v := range sheet.Running(f, table, proof) {
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
