package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
)

// The table is made anew at every keystroke; 50 µs is its budget.
func BenchmarkTurnsTable(b *testing.B) {
	f := demo(b)
	set(b, f, "new.most-turns", "10 turns") // 23 rows
	b.ReportAllocs()
	for b.Loop() {
		if t := sheet.TurnsTable(f); len(t.Rows) != 23 {
			b.Fatal(len(t.Rows))
		}
	}
}

func BenchmarkTurnsTableOfDemo(b *testing.B) {
	f := demo(b)
	b.ReportAllocs()
	for b.Loop() {
		sheet.TurnsTable(f)
	}
}

// Time depends on the machine, memory does not: what a keystroke leaves to be
// collected is held here.
func TestTurnsTableAllocates(t *testing.T) {
	f := demo(t)
	set(t, f, "new.most-turns", "10 turns")
	if n := testing.AllocsPerRun(100, func() { sheet.TurnsTable(f) }); n > 240 {
		t.Errorf("%v allocations", n)
	}
}

// The belt page asks for all of this at every keystroke.
func BenchmarkTensionOfDemo(b *testing.B) {
	f := demo(b)
	set(b, f, "new.belts", "1")
	b.ReportAllocs()
	for b.Loop() {
		tension(f)
	}
}
