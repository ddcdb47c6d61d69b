package condition

import (
	"bytes"
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"
)

func small(t *testing.T) (Run, *bytes.Buffer) {
	t.Helper()
	root, err := filepath.Abs("testdata/small")
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	return Run{Root: root, Out: &out, grace: time.Second}, &out
}

func judged(t *testing.T, r Run) Tally {
	t.Helper()
	tally, err := r.Package("judge")
	if err != nil {
		t.Fatal(err)
	}
	return tally
}

func told(all []Mutant) (words []string) {
	for _, m := range all {
		words = append(words, fmt.Sprintf("%s: %s for %s", m.In, m.To, m.From))
	}
	return words
}

// What survives is what the comments of testdata/small say, and nothing else.
func TestSurvivorsAreThose(t *testing.T) {
	t.Parallel()
	r, out := small(t)
	tally := judged(t, r)
	want := []string{
		"Loose: x > 3 for x >= 3",
		"Loose: true for b",
		"Either: false for a",
		"Either: false for b",
		"Either: a && b for a || b",
		"Unasked: len(s) != 0 for len(s) == 0",
		"Larger: x >= y for x > y",
		"Count: true for c >= 0",
	}
	got := told(tally.Survived)
	slices.Sort(got)
	slices.Sort(want)
	if !slices.Equal(got, want) {
		t.Errorf("survived\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	// Named is all that does not compile; the loop never ends without its condition.
	if tally.Left != 1 || tally.Late != 2 || tally.Found+len(tally.Survived) != tally.Changed || len(tally.Wrong) > 0 {
		t.Errorf("%+v", tally)
	}
	for _, line := range []string{
		"survived, met by no test: judge/judge.go:30: Unasked: len(s) != 0 for len(s) == 0\n",
		"survived, met by no test: judge/judge.go:21: Loose: x > 3 for x >= 3\n",
		"survived: judge/judge.go:38: Larger: x >= y for x > y\n",
		"out of time: judge/judge.go:46: Count: true for c != n\n",
	} {
		if !strings.Contains(out.String(), line) {
			t.Errorf("no line %q in\n%s", line, out)
		}
	}
}

var larger = Indifferent{"judge/judge.go", "Larger", "x > y", "x >= y", "equals are alike"}

func TestNamesAreHeldToWhatTheySay(t *testing.T) {
	t.Parallel()
	r, out := small(t)
	r.Only = func(_ string, line int) bool { return line > 30 && line < 45 }
	r.Indifferent = []Indifferent{
		larger,
		{"judge/judge.go", "Larger", "x > y", "!(x > y)", "not so: a test finds it"},
		{"judge/judge.go", "Held", "x > y", "x >= y", "stands in no such function"},
		{"other/judge.go", "Larger", "x > y", "x >= y", "another package's is not asked for"},
	}
	tally := judged(t, r)
	if tally.Named != 1 || len(tally.Survived) > 0 || tally.Found != 1 || len(tally.Wrong) != 2 {
		t.Errorf("%+v", tally)
	}
	for _, line := range []string{
		"judge/judge.go: Held: no condition stands so: x >= y for x > y\n",
		"judge/judge.go:38: Larger: !(x > y) for x > y: named as indifferent, and found\n",
		"1 named as indifferent",
	} {
		if !strings.Contains(out.String(), line) {
			t.Errorf("no line %q in\n%s", line, out)
		}
	}
}

func TestTestsThatFailAnywayProveNothing(t *testing.T) {
	t.Setenv("SMALL_FAILS", "yes")
	r, _ := small(t)
	if _, err := r.Package("judge"); err == nil || !strings.Contains(err.Error(), "TestCount fails before anything is changed") {
		t.Error(err)
	}
	if _, err := r.Package("nowhere"); err == nil {
		t.Error("there is no such package")
	}
}

func TestSkippedTestsFindNothing(t *testing.T) {
	t.Parallel()
	r, _ := small(t)
	r.Skip = regexp.MustCompile("Held|Larger")
	r.Only = func(_ string, line int) bool { return line < 18 }
	if tally := judged(t, r); tally.Found != 0 || len(tally.Survived) != tally.Changed || tally.Changed != 8 {
		t.Errorf("%+v", tally)
	}
}

func TestTheSameSeedDrawsTheSame(t *testing.T) {
	all := make([]Mutant, 100)
	for i := range all {
		all[i].id, all[i].Line = i, i
	}
	r := Run{Each: 10, Seed: 1}
	first := r.drawn(all)
	if len(first) != 10 || !slices.Equal(first, r.drawn(all)) || !slices.IsSortedFunc(first, func(a, b Mutant) int { return a.id - b.id }) {
		t.Error(first)
	}
	r.Seed = 2
	if slices.Equal(first, r.drawn(all)) {
		t.Error("another seed, and the same drawn")
	}
	r.Each = 0
	if len(r.drawn(all)) != len(all) {
		t.Error("not all")
	}
}
