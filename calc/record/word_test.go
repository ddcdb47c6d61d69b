package record_test

import (
	"errors"
	"strings"
	"testing"
	"time"

	"roofside/calc/number"
	"roofside/calc/record"
)

func TestWord(t *testing.T) {
	var w record.Word
	for _, c := range []struct {
		typed, text string
		state       record.State
	}{
		{"", "", record.Unknown},
		{" \t\n", "", record.Unknown},
		{"?", "?", record.Illegible},
		{"A50?", "A50?", record.Known},
		{"!A50", "!A50", record.Known},
		{"  Line 2,\n west\x00", "Line 2,  west", record.Known},
		{"a\xff\xfeb\uFFFDc", "a b c", record.Known},
		{"fan \u202e2 tixe\u202c", "fan 2 tixe", record.Known},
		{strings.Repeat("é", 61), strings.Repeat("é", 60), record.Known},
		{"x" + strings.Repeat("é", 60), "x" + strings.Repeat("é", 59), record.Known},
		{strings.Repeat("x", 119) + " y", strings.Repeat("x", 119), record.Known},
	} {
		if err := w.Set(c.typed); err != nil || w.Text() != c.text || w.State() != c.state {
			t.Errorf("%q becomes %q in state %v, %v", c.typed, w.Text(), w.State(), err)
		}
	}
}

func TestMoment(t *testing.T) {
	var m record.Moment
	for _, text := range []string{"2026-03-09T14:05:00Z", "2026-03-09T14:05:00-06:00", "1970-01-01T00:00:00Z", "9999-12-31T23:59:59Z", "2024-02-29T00:00:00+14:00"} {
		if err := m.Set(text); err != nil || m.Text() != text || m.State() != record.Known {
			t.Errorf("%q becomes %q, %v", text, m.Text(), err)
		}
	}
	if want := time.Date(2024, 2, 28, 10, 0, 0, 0, time.UTC); !m.Value().Equal(want) {
		t.Errorf("14 hours east of %v is %v", want, m.Value())
	}
	for _, text := range []string{"2026-03-09", "2026-03-09 14:05", "2026-03-09T14:05", "2025-02-29T00:00:00Z", "1969-12-31T23:59:59Z", "0001-01-01T00:00:00Z", "now", "2026-03-09T24:00:00Z"} {
		var e *number.Error
		if err := m.Set(text); !errors.As(err, &e) || e.Rule != record.RuleMoment || m.State() != record.Garbled || record.Typed(&m) != text || !m.Value().IsZero() {
			t.Errorf("%q becomes %q in state %v, %v", text, m.Text(), m.State(), err)
		}
	}
	for text, state := range map[string]record.State{"": record.Unknown, "?": record.Illegible, "!noon": record.Garbled} {
		set(t, &m, "2026-03-09T14:05:00Z")
		if err := m.Set(text); err != nil || m.State() != state || m.Text() != text || !m.Value().IsZero() {
			t.Errorf("%q becomes %q in state %v, %v", text, m.Text(), m.State(), err)
		}
	}
}

func TestChoice(t *testing.T) {
	var c record.Choice[record.Supply]
	for _, word := range c.Options() {
		if err := c.Set(" " + word + " "); err != nil || string(c.Value()) != word || c.Text() != word || c.State() != record.Known {
			t.Errorf("%q becomes %q, %v", word, c.Text(), err)
		}
	}
	for _, word := range []string{"Three-phase", "three phase", "three-phase; guessed", "0", "steam"} {
		var e *number.Error
		if err := c.Set(word); !errors.As(err, &e) || e.Rule != record.RuleOption || c.State() != record.Garbled || c.Value() != "" || record.Typed(&c) != word {
			t.Errorf("%q becomes %q in state %v, %v", word, c.Text(), c.State(), err)
		}
	}
	for text, state := range map[string]record.State{"": record.Unknown, "?": record.Illegible, "!": record.Garbled} {
		set(t, &c, "direct")
		if err := c.Set(text); err != nil || c.State() != state || c.Text() != text || c.Value() != "" {
			t.Errorf("%q becomes %q in state %v, %v", text, c.Text(), c.State(), err)
		}
	}
}

// What is garbled is kept so that reading it again changes nothing.
func TestGarbledTextSettles(t *testing.T) {
	for _, typed := range []string{"", " ", "  three\t", strings.Repeat("x", 119) + " y", strings.Repeat("é", 100), "\xff\xfe", strings.Repeat("\xbf", 200), "!!", "?"} {
		for _, p := range []record.Place{&everything().Old.MotorSheave, &record.Choice[record.Supply]{}, &record.Moment{}} {
			if err := p.Set(record.Garble(typed)); err != nil || p.State() != record.Garbled {
				t.Errorf("%q: state %v, %v", typed, p.State(), err)
			}
			settles(t, p)
			if err := p.Set("x" + typed[min(1, len(typed)):]); err == nil {
				t.Errorf("%q is taken", typed)
			}
			settles(t, p)
		}
	}
}

func settles(t *testing.T, p record.Place) {
	t.Helper()
	text := p.Text()
	if err := p.Set(text); err != nil || p.Text() != text {
		t.Errorf("settles from %q to %q, %v", text, p.Text(), err)
	}
	if len(record.Typed(p)) > 120 {
		t.Errorf("%d bytes are kept", len(record.Typed(p)))
	}
}
