package sheet_test

import (
	"errors"
	"testing"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Only what can be handed over a counter as one is one line: what is brought and what
// stays, what is counted and what isn't yet, what is settled and what is open, what is
// at fault, stay apart.
func TestLinesThatAreAddedUp(t *testing.T) {
	f := record.NewFan()
	open := []record.Place{&f.New.Belts}
	some := sheet.Maybe[unit.Length]{V: 2, Known: true}
	strap := sheet.Material{Spec: sheet.Spec{Thing: sheet.Strap}, Plan: sheet.Bring, Count: 2}
	with := func(change func(*sheet.Material)) sheet.Material {
		m := strap
		change(&m)
		return m
	}
	for name, other := range map[string]sheet.Material{
		"another plan":  with(func(m *sheet.Material) { m.Plan = sheet.Keep }),
		"another thing": with(func(m *sheet.Material) { m.Thing = sheet.TheConduit }),
		"not counted":   with(func(m *sheet.Material) { m.Count = 0 }),
		"a length":      with(func(m *sheet.Material) { m.Amount = some }),
		"open":          with(func(m *sheet.Material) { m.Wanted = open }),
		"at fault":      with(func(m *sheet.Material) { m.Fault = &sheet.Fault{Err: errors.New("so")} }),
	} {
		for _, lists := range [][][]sheet.Material{{{strap}, {other}}, {{other}, {strap}}} {
			if sum := sheet.Sum(lists); len(sum) != 2 {
				t.Errorf("%s: %d lines", name, len(sum))
			}
		}
	}
	if sum := sheet.Sum([][]sheet.Material{{strap}, {strap, strap}}); len(sum) != 1 || sum[0].Count != 6 {
		t.Errorf("%+v", sum)
	}
}

// Straps that stand for distances of their own keep both reasons; the same is told once.
func TestReasonsOfStrapsThatAreAddedUp(t *testing.T) {
	strap := func(most unit.Length) sheet.Material {
		reason := sheet.Reason{Key: "held", Support: raceway.Support{Spacing: most}}
		return sheet.Material{Spec: sheet.Spec{Thing: sheet.Strap}, Plan: sheet.Bring, Count: 1, Reasons: []sheet.Reason{reason}}
	}
	if sum := sheet.Sum([][]sheet.Material{{strap(1)}, {strap(2)}, {strap(1)}}); len(sum) != 1 || len(sum[0].Reasons) != 2 {
		t.Errorf("%+v", sum)
	}
}

func TestSettledLines(t *testing.T) {
	f := record.NewFan()
	for _, c := range []struct {
		name string
		m    sheet.Material
		want bool
	}{
		{"to bring", sheet.Material{Plan: sheet.Bring}, true},
		{"stays", sheet.Material{Plan: sheet.Keep}, true},
		{"not sure", sheet.Material{Plan: sheet.Unsure}, false},
		{"open", sheet.Material{Plan: sheet.Bring, Wanted: []record.Place{&f.New.Belts}}, false},
		{"at fault", sheet.Material{Plan: sheet.Bring, Fault: &sheet.Fault{Err: errors.New("so")}}, false},
	} {
		if c.m.Settled() != c.want {
			t.Errorf("%s: %t", c.name, !c.want)
		}
	}
}

// A line says what it comes from as far as that holds something, and of two places at
// fault the first one.
func TestWhereALineComesFrom(t *testing.T) {
	f := demoRoof(t, "")
	from := map[string]int{}
	for _, m := range sheet.Materials(f) {
		for _, r := range m.Reasons {
			for _, p := range r.From {
				if p.State() != record.Known {
					t.Errorf("%s: %s comes from %s, which is not told", m.Thing, r.Key, f.KeyOf(p))
				}
				from[f.KeyOf(p)]++
			}
		}
	}
	if from["new.belt-number"] == 0 || from["new.belts"] == 0 {
		t.Errorf("the belt comes from neither its number nor the count of belts: %v", from)
	}
	f = demoRoof(t, "&old.curb-width=!wide&old.curb-length=!long")
	for _, m := range sheet.Materials(f) {
		if m.Thing == sheet.CurbAdapter && (m.Fault == nil || f.KeyOf(m.Fault.Place) != "old.curb-width") {
			t.Errorf("two at fault: %+v", m.Fault)
		}
	}
}
