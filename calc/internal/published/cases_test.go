package published_test

import (
	"maps"
	"slices"
	"testing"

	. "roofside/calc/internal/published"
)

// Cases that no formula answers yet, with the reason.
const (
	tension = "belt tension comes with the belt package's later part"
)

var unanswered = map[string]string{
	"C01": tension, "C02": "a machine's own table, no formula behind it", "C03": tension, "C04": tension,
	"C05": tension, "C06": "a rule of thumb that the tool does not use", "C07": tension, "C08": tension,
	"C09": tension, "C11": tension, "C12": tension, "C13": tension, "C14": tension, "C15": tension,
	"C16": tension, "C17": tension,
}

// An answer evaluates a case with the library.
type answer func(c Case) Results

// must passes a formula's result on; a formula that refuses a published case is
// a failure, which the test turns the panic into.
func must[Q any](q Q, err error) Q {
	if err != nil {
		panic(err)
	}
	return q
}

func answers(t *testing.T) map[string]answer {
	t.Helper()
	all := map[string]answer{}
	for _, part := range []map[string]answer{driveAnswers, beltAnswers, airAnswers} {
		for id, a := range part {
			if all[id] != nil {
				t.Errorf("case %s is answered twice", id)
			}
			all[id] = a
		}
	}
	return all
}

func load(t *testing.T) []Case {
	t.Helper()
	cases, err := Load("../../../testdata/published/mechanical.csv")
	if err != nil {
		t.Fatal(err)
	}
	return cases
}

func TestEveryCaseIsAnsweredOrExcused(t *testing.T) {
	left := map[string]bool{}
	for id := range answers(t) {
		left[id] = true
		if unanswered[id] != "" {
			t.Errorf("case %s is answered and excused", id)
		}
	}
	for id := range unanswered {
		left[id] = true
	}
	for _, c := range load(t) {
		if !left[c.ID] {
			t.Errorf("case %s (%s) has no answer and no reason for having none", c.ID, c.Topic)
		}
		delete(left, c.ID)
	}
	for _, id := range slices.Sorted(maps.Keys(left)) {
		t.Errorf("case %s is not in the file", id)
	}
}

func TestCasesSayHowTheyAreKnown(t *testing.T) {
	for _, c := range load(t) {
		want := map[string]string{"looked_up": "published", "derived": "derived", "memory": "memory"}[c.HowKnown]
		if want == "" || c.Class != want {
			t.Errorf("case %s: how_known %q with class %q", c.ID, c.HowKnown, c.Class)
		}
	}
}

func TestCases(t *testing.T) {
	all := answers(t)
	for _, c := range load(t) {
		a := all[c.ID]
		if a == nil {
			continue
		}
		t.Run(c.ID, func(t *testing.T) {
			defer func() {
				if fault := recover(); fault != nil {
					t.Errorf("%s, from %s: %v", c.Topic, c.Source, fault)
				}
			}()
			for _, wrong := range Compare(c, a(c)) {
				t.Errorf("%s, from %s: %v", c.Topic, c.Source, wrong)
			}
		})
	}
}
