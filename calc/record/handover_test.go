package record_test

import (
	"errors"
	"strings"
	"testing"

	"roofside/calc/number"
	"roofside/calc/record"
)

func TestDay(t *testing.T) {
	var d record.Day
	for _, text := range []string{"2026-03-23", "2024-02-29", "1970-01-01", "9999-12-31"} {
		if err := d.Set(text); err != nil || d.Text() != text || d.State() != record.Known || d.Value().Format("2006-01-02") != text {
			t.Errorf("%q becomes %q, %v", text, d.Text(), err)
		}
	}
	for _, text := range []string{"2025-02-29", "23.3.2026", "3/23/2026", "2026-03-23T10:00:00Z", "1969-12-31", "0001-01-01", "soon"} {
		var e *number.Error
		if err := d.Set(text); !errors.As(err, &e) || e.Rule != record.RuleDay || d.State() != record.Garbled || record.Typed(&d) != text || !d.Value().IsZero() {
			t.Errorf("%q becomes %q in state %v, %v", text, d.Text(), d.State(), err)
		}
	}
	for text, state := range map[string]record.State{"": record.Unknown, "?": record.Illegible, "!soon": record.Garbled} {
		set(t, &d, "2026-03-23")
		if err := d.Set(text); err != nil || d.State() != state || d.Text() != text || !d.Value().IsZero() {
			t.Errorf("%q becomes %q in state %v, %v", text, d.Text(), d.State(), err)
		}
	}
}

func TestNote(t *testing.T) {
	var n record.Note
	for _, c := range []struct{ typed, text string }{
		{"", ""},
		{" \n\t ", ""},
		{"?", "?"},
		{"Curb out of level:\r\n3/8 in to the north\n", "Curb out of level:\n3/8 in to the north"},
		{"a\x00b\x1b[2Jc", "a b [2Jc"},
		{"left \u202eright\u2066 left", "left right left"},
		{strings.Repeat("é", 1001), strings.Repeat("é", 1000)},
	} {
		set(t, &n, c.typed)
		if n.Text() != c.text || (n.State() == record.Known) != (c.text != "") {
			t.Errorf("%q becomes %q in state %v", c.typed, n.Text(), n.State())
		}
	}
}

// A check has its own place and its own reason, and its name is in one group only.
func TestChecksAreFoundByName(t *testing.T) {
	f := record.NewFan()
	seen := map[*record.Check]string{}
	for _, g := range record.CheckGroups() {
		for _, name := range g.Checks {
			c := f.Check(name)
			if c == nil || seen[c] != "" {
				t.Fatalf("%s of %s is %v, also of %q", name, g.Name, c, seen[c])
			}
			seen[c] = name
			if f.Place("check."+name) != &c.State || f.Place("check."+name+"-why") != &c.Why {
				t.Errorf("%s is not behind its key", name)
			}
		}
	}
	if len(seen) != len(f.Checks) {
		t.Errorf("%d names for %d checks", len(seen), len(f.Checks))
	}
	if f.Check("dance") != nil {
		t.Error("a check of no name")
	}
}
