package record_test

import (
	"fmt"
	"strings"
	"testing"

	"roofside/calc/record"
)

func ids(f *record.Fan) string {
	var all []string
	for _, t := range f.Trials {
		all = append(all, t.ID)
	}
	return strings.Join(all, " ")
}

func TestTrialsStandInTheOrderOfTheirIDs(t *testing.T) {
	f := record.NewFan()
	problems := f.Apply(map[string]string{
		"trial.t10.turns": "1 turns", "trial.t9.turns": "2 turns", "trial.b.speed": "700 rpm", "trial.a.speed": "690 rpm", "trial.zz.accepted": "yes",
	})
	if problems != nil || ids(f) != "a b t9 zz t10" {
		t.Errorf("%s, %v", ids(f), problems)
	}
	if n := f.NewTrial(); n == nil || n.ID != "t11" || ids(f) != "a b t9 zz t10 t11" {
		t.Errorf("started %v in %s", n, ids(f))
	}
	if f.Left() != f.Trial("zz") {
		t.Error("left is not the last accepted")
	}
	set(t, &f.Trial("t10").Accepted, "yes")
	if f.Left() != f.Trial("t10") {
		t.Error("left is not the last accepted")
	}
	f.RemoveTrial("t9")
	f.RemoveTrial("nothing")
	if ids(f) != "a b zz t10 t11" || f.Trial("t9") != nil {
		t.Errorf("left %s", ids(f))
	}
	if f.Trial("t11").Turns.Fact() == nil {
		t.Error("a new trial's places know nothing of their bounds")
	}
}

func TestJunkKeysLeaveNoTrial(t *testing.T) {
	f := record.NewFan()
	junk := map[string]string{
		"trial": "1", "trial.": "1", "trial.x": "1", "trial.x.": "1", "trial.x.smell": "bad", "trial.Q1.turns": "1 turns",
		"trial.k-3.turns": "1 turns", "trial.ninechars.turns": "1 turns", "trial.y.turns": "many", "trial.z.turns": "",
	}
	problems := f.Apply(junk)
	if len(f.Trials) != 0 {
		t.Errorf("left %s", ids(f))
	}
	if len(problems) != len(junk)-1 { // an empty text says nothing and is no problem
		t.Errorf("%d problems: %v", len(problems), problems)
	}
}

func TestTrialsAreLimited(t *testing.T) {
	f := record.NewFan()
	texts := map[string]string{}
	for i := range 70 {
		texts[fmt.Sprintf("trial.k%02d.turns", i)] = "1 turns"
	}
	if problems := f.Apply(texts); len(f.Trials) != 60 || len(problems) != 10 || problems[0].Key != "trial.k60.turns" {
		t.Errorf("%d trials, %d problems", len(f.Trials), len(problems))
	}
	if f.NewTrial() != nil {
		t.Error("a trial too many")
	}
}
