package published_test

import (
	"maps"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	. "roofside/calc/internal/published"
)

// A collection is a file of cases with what answers them.
type collection struct {
	file    string
	answers []map[string]answer
}

var collections = []collection{
	{"mechanical", []map[string]answer{driveAnswers, beltAnswers, tensionAnswers, airAnswers}},
	{"electrical-phase", []map[string]answer{phaseAnswers}},
	{"electrical-raceway", []map[string]answer{racewayAnswers, wireAnswers}},
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

func (k collection) all(t *testing.T) map[string]answer {
	t.Helper()
	all := map[string]answer{}
	for _, part := range k.answers {
		for id, a := range part {
			if all[id] != nil {
				t.Errorf("case %s is answered twice", id)
			}
			all[id] = a
		}
	}
	return all
}

func (k collection) load(t *testing.T) []Case {
	t.Helper()
	cases, err := Load("../../../testdata/published/" + k.file + ".csv")
	if err != nil {
		t.Fatal(err)
	}
	return cases
}

// each runs f for every file of cases.
func each(t *testing.T, f func(t *testing.T, k collection)) {
	for _, k := range collections {
		t.Run(k.file, func(t *testing.T) { f(t, k) })
	}
}

// elsewhere are the files of another form, with the package whose tests read them.
var elsewhere = map[string]string{"units": "unit", "icu-numbers": "number"}

func TestEveryFileOfCasesIsRun(t *testing.T) {
	files, err := filepath.Glob("../../../testdata/published/*.csv")
	if err != nil || len(files) == 0 {
		t.Fatal(files, err)
	}
	for _, f := range files {
		name := strings.TrimSuffix(filepath.Base(f), ".csv")
		if elsewhere[name] == "" && !slices.ContainsFunc(collections, func(k collection) bool { return k.file == name }) {
			t.Errorf("%s is read by no test", name)
		}
	}
}

func TestEveryCaseIsAnsweredOrExcused(t *testing.T) {
	each(t, func(t *testing.T, k collection) {
		left, unanswered := map[string]bool{}, Unanswered[k.file]
		for id := range k.all(t) {
			left[id] = true
			if unanswered[id] != "" {
				t.Errorf("case %s is answered and excused", id)
			}
		}
		for id := range unanswered {
			left[id] = true
		}
		for _, c := range k.load(t) {
			if !left[c.ID] {
				t.Errorf("case %s (%s) has no answer and no reason for having none", c.ID, c.Topic)
			}
			delete(left, c.ID)
		}
		for _, id := range slices.Sorted(maps.Keys(left)) {
			t.Errorf("case %s is not in the file", id)
		}
	})
}

func TestCasesSayHowTheyAreKnown(t *testing.T) {
	each(t, func(t *testing.T, k collection) {
		for _, c := range k.load(t) {
			want := map[string]string{"looked_up": "published", "derived": "derived", "memory": "memory"}[c.HowKnown]
			if want == "" || c.Class != want {
				t.Errorf("case %s: how_known %q with class %q", c.ID, c.HowKnown, c.Class)
			}
		}
	})
}

func TestCases(t *testing.T) {
	each(t, func(t *testing.T, k collection) {
		all := k.all(t)
		for _, c := range k.load(t) {
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
	})
}
