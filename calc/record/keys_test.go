package record_test

import (
	"flag"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
)

var update = flag.Bool("update", false, "add new keys to the published ones")

const published = "../../testdata/keys.txt"

// everything returns a fan with a row in each list, so that every key occurs.
func everything() *record.Fan {
	f := record.NewFan()
	f.NewTrial()
	f.NewWire()
	return f
}

// kindOf says what a place holds: a kind of quantity, the words to choose
// from, text or a moment.
func kindOf(p record.Place) string {
	switch p := p.(type) {
	case record.Measure:
		return p.Kind().Name
	case record.Selector:
		return strings.Join(p.Options(), "|")
	case *record.Word:
		return "text"
	case *record.Moment:
		return "moment"
	}
	return ""
}

func TestKeysAreUniqueAndPlain(t *testing.T) {
	plain := regexp.MustCompile(`^[a-z0-9.-]+$`)
	keys, places := map[string]bool{}, map[record.Place]string{}
	for k, p := range everything().Places() {
		if !plain.MatchString(k) {
			t.Errorf("%q is not plain", k)
		}
		if keys[k] {
			t.Errorf("%s is listed twice", k)
		}
		if other, twice := places[p]; twice {
			t.Errorf("%s and %s are one place", k, other)
		}
		keys[k], places[p] = true, k
	}
	if len(keys) < 100 {
		t.Errorf("only %d keys listed", len(keys))
	}
}

// Published keys and words are kept for ever: records and links carry them.
func TestPublishedKeysStay(t *testing.T) {
	have := map[string]string{}
	for k, p := range everything().Places() {
		have[k] = kindOf(p)
	}
	text, err := os.ReadFile(published)
	if err != nil && !*update {
		t.Fatal(err)
	}
	kept := map[string]string{}
	for line := range strings.Lines(string(text)) {
		if k, kind, ok := strings.Cut(strings.TrimSpace(line), " "); ok && k != "#" {
			kept[k] = kind
		}
	}
	for k, kind := range kept {
		switch now, ok := have[k]; {
		case !ok:
			t.Errorf("published key %s is gone", k)
		case !strings.Contains(kind, "|"):
			if now != kind {
				t.Errorf("%s holds %s, published as %s", k, now, kind)
			}
		default:
			for word := range strings.SplitSeq(kind, "|") {
				if !slices.Contains(strings.Split(now, "|"), word) {
					t.Errorf("%s no longer takes %s", k, word)
				}
			}
		}
	}
	if *update {
		lines := []string{"# Published keys of a fan's record and what each holds; t1 stands for any trial, w1 for any row of conductors. Kept for ever: lines are added only.\n"}
		for k := range everything().Places() {
			lines = append(lines, k+" "+have[k]+"\n")
		}
		if !t.Failed() {
			if err := os.WriteFile(published, []byte(strings.Join(lines, "")), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		return
	}
	for k, kind := range have {
		if kept[k] != kind {
			t.Errorf("%s %s is not published: run with -update", k, kind)
		}
	}
}

func TestPlaceAndKeyOf(t *testing.T) {
	f := everything()
	for k, p := range f.Places() {
		if f.Place(k) != p || f.KeyOf(p) != k {
			t.Errorf("%s leads elsewhere", k)
		}
	}
	if f.Place("old.nothing") != nil || f.KeyOf(&record.Word{}) != "" {
		t.Error("found a place that is not there")
	}
}

// Leaving the list early, at any place, must end it.
func TestPlacesCanBeLeft(t *testing.T) {
	total := 0
	for range everything().Places() {
		total++
	}
	for stop := 1; stop <= total; stop++ {
		n := 0
		for range everything().Places() {
			if n++; n == stop {
				break
			}
		}
		if n != stop {
			t.Errorf("left at %d of %d places", n, stop)
		}
	}
}
