package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// Which setting is ordered, where more than one may be, or none: by 1750 rpm, 0.1 in and
// so 20.8 rpm at each half turn, from 833.3 rpm closed. The nearest wins; what stays under
// by no more than 1 % and its own band counts as on target; limits entered are kept.
func TestWhichSettingIsOrdered(t *testing.T) {
	const exact = "trial.a.speed"
	for _, c := range []struct {
		name string
		with []string
		do   sheet.Do
		to   float64
		why  sheet.Why
	}{
		{"closed alone is above, and none may be over", []string{"target.over", "0 %", "target.speed", "825 rpm"}, sheet.DoStay, 0, ""},
		// 3.5 to 3.2 in: 729.2, 722.9, 716.7 rpm.
		{"the first is the nearest", []string{"target.speed", "728 rpm", "new.anchor-pitch", "3.5 in", "new.second-anchor-pitch", "3.2 in"}, sheet.DoStay, 0, ""},
		{"no turn is stamped", []string{"new.most-turns", "0 turns"}, sheet.DoNone, 0, sheet.TooFast},
		{"no setting is allowed at all", []string{"new.section", "B", "new.most-turns", "1/2 turns"}, sheet.DoNone, 0, sheet.TooSlow},
		{"0.7 % short is as near as it comes", []string{"trial.a.turns", "0 turns", exact, "830 rpm; within 0 rpm", "target.speed", "836 rpm"}, sheet.DoStay, 0, ""},
		{"1.1 % short is not", []string{"trial.a.turns", "0 turns", exact, "830 rpm; within 0 rpm", "target.speed", "839.3 rpm"}, sheet.DoNone, 0, sheet.TooSlow},
		{"the section is not said", []string{"new.section", ""}, sheet.DoOpen, 3, ""},
		// Left alone: by a reading where it stands, not by one of another setting.
		{"read on target", []string{"target.speed", "740 rpm", "trial.a.turns", "2 turns", exact, "745 rpm"}, sheet.DoStay, 2, ""},
		{"read on target, and set on since", []string{"target.speed", "740 rpm", "trial.a.turns", "2 turns", exact, "745 rpm", "trial.b.turns", "0 turns"}, sheet.DoOpen, 2, ""},
		{"read on target, which the wheel must not turn at", []string{"target.speed", "740 rpm", "trial.a.turns", "2 turns", exact, "745 rpm", "new.wheel-max-speed", "735 rpm"}, sheet.DoNone, 0, sheet.MustNotBe},
		{"read on target, past the most turns", []string{"trial.a.turns", "3 turns", exact, "705 rpm", "new.most-turns", "2 turns"}, sheet.DoNone, 0, sheet.TooFast},
		// A target that is itself uncertain is no reason to move within its band; outside of it is.
		{"within the target's own band", []string{"new.turns", "3 turns", "target.speed", "712 rpm; within 5 rpm"}, sheet.DoStay, 3, ""},
		{"below the target's own band", []string{"new.turns", "5 turns", "target.speed", "712 rpm; within 5 rpm"}, sheet.DoClose, 3, ""},
		{"read within the target's own band", []string{"trial.a.turns", "3 turns", exact, "700 rpm; within 0 rpm", "target.speed", "712 rpm; within 15 rpm"}, sheet.DoStay, 3, ""},
		{"read below the target's own band", []string{"trial.a.turns", "3 turns", exact, "700 rpm; within 0 rpm", "target.speed", "722 rpm; within 15 rpm"}, sheet.DoClose, 2, ""},
		// Turning backward shows no load, and nothing of how a sheave that was not read is to stand.
		{"backward, and not read", []string{"new.rotation", "reverse"}, sheet.DoOpen, 3, ""},
		{"backward, and read", []string{"new.rotation", "reverse", "trial.a.turns", "2 turns", exact, "745 rpm"}, sheet.DoHold, 0, ""},
	} {
		f := fan(t, bench)
		set(t, f, c.with...)
		for whole, table := range map[bool]sheet.Table{true: sheet.TurnsTable(f), false: sheet.TableToSet(f)} {
			m, _ := sheet.NextMove(f, table)
			if m.Do != c.do || m.Why != c.why || c.why == "" && c.do != sheet.DoHold && float64(m.To) != c.to {
				t.Errorf("%s, whole %v: %s to %v, %s", c.name, whole, m.Do, m.To, m.Why)
			}
		}
	}
}

// Where no setting is found, what stands against the sheave as it is now is told by the
// short table as well, and where it stands need not be known for that.
func TestNoSettingTellsWhatStandsNow(t *testing.T) {
	f := fan(t, bench)
	set(t, f, "target.speed", "300 rpm", "new.wheel-max-speed", "800 rpm")
	table := sheet.TableToSet(f)
	m, _ := sheet.NextMove(f, table)
	if v, judged := sheet.Standing(f, table, m); !judged || v.Level != sheet.Stop || v.Rule != sheet.RuleWheelMax {
		t.Errorf("833 rpm on a wheel for 800: %+v", v)
	}
	set(t, f, "new.turns", "")
	table = sheet.TableToSet(f)
	if m, _ := sheet.NextMove(f, table); m.Do != sheet.DoNone || table.Now != -1 {
		t.Errorf("%+v", m)
	}
}

// The table has a row for where the sheave stands, also past the usual most and between
// two half turns at its end; it marks the setting nearest to the target, the first as any
// other; and one row is a table too.
func TestTheTableHasWhereTheSheaveStands(t *testing.T) {
	f := fan(t, bench)
	set(t, f, "new.turns", "7-1/4 turns")
	table := sheet.TurnsTable(f)
	if table.Now < 0 || table.Now != len(table.Rows)-1 || float64(table.Rows[table.Now].Turns) != 7.25 {
		t.Errorf("7¼ turns is row %d of %d", table.Now, len(table.Rows))
	}
	f = fan(t, bench)
	set(t, f, "target.speed", "830 rpm")
	if rows := sheet.TurnsTable(f).Rows; rows[0].Marks&sheet.MarkTarget == 0 || rows[1].Marks&sheet.MarkTarget != 0 {
		t.Errorf("marks %b, %b", rows[0].Marks, rows[1].Marks)
	}
	f = fan(t, bench)
	set(t, f, "new.section", "", "new.second-anchor-turns", "1/4 turns", "new.second-anchor-pitch", "3.95 in")
	if rows := sheet.TurnsTable(f).Rows; len(rows) != 1 {
		t.Errorf("%d rows up to a quarter turn", len(rows))
	}
}
