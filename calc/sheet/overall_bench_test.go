package sheet_test

import (
	"os"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

func complete(t testing.TB) *record.Fan {
	t.Helper()
	data, err := os.ReadFile("../record/testdata/complete-fan.txt")
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	for line := range strings.Lines(string(data)) {
		k, v, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "=")
		texts[k] = v
	}
	f := record.NewFan()
	if p := f.Apply(texts); p != nil {
		t.Fatal(p)
	}
	return f
}

func BenchmarkX(b *testing.B) {
	f := complete(b)
	data, _ := f.Marshal()
	b.Log(len(data))
	b.Run("unmarshal", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			record.Unmarshal(data)
		}
	})
	b.Run("newfan", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			record.NewFan()
		}
	})
	b.Run("texts", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			f.Texts()
		}
	})
	b.Run("marshal", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			f.Marshal()
		}
	})
	b.Run("table", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			sheet.TurnsTable(f)
		}
	})
	b.Run("standing", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			t := sheet.TurnsTable(f)
			m, _ := sheet.NextMove(f, t)
			sheet.Standing(f, t, m)
		}
	})
	b.Run("prove", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			sheet.Prove(f)
		}
	})
	b.Run("raceway", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			c := sheet.CircuitOf(f)
			c.Verdicts(f)
			sheet.FillVerdict(f)
			sheet.JointVerdicts(f, sheet.Adapter(f))
		}
	})
}
