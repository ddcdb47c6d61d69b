package record

import (
	"strings"
	"time"

	"roofside/calc/number"
)

// Rules for text that is no time.
const (
	RuleMoment number.Rule = "moment" // no date with a time of day
	RuleDay    number.Rule = "day"    // no date
)

// A Moment is the place of a date and time of day; its canonical text is that
// of RFC 3339 to the minute or second.
type Moment struct{ stamp }

// Text returns the canonical text of m.
func (m *Moment) Text() string { return m.text(time.RFC3339) }

// Set takes canonical text.
func (m *Moment) Set(text string) error { return m.set(text, time.RFC3339, RuleMoment) }

// A Day is the place of a date; its canonical text is that of ISO 8601, and its
// value midnight UTC.
type Day struct{ stamp }

// Text returns the canonical text of d.
func (d *Day) Text() string { return d.text(time.DateOnly) }

// Set takes canonical text.
func (d *Day) Set(text string) error { return d.set(text, time.DateOnly, RuleDay) }

// A stamp is a time, or text that is none.
type stamp struct {
	blank
	value time.Time
}

// State returns whether s holds a time.
func (s *stamp) State() State {
	if !s.value.IsZero() {
		return Known
	}
	return s.state
}

// Value returns the time; it means something only when the state is Known.
func (s *stamp) Value() time.Time { return s.value }

func (s *stamp) text(layout string) string {
	if !s.value.IsZero() {
		return s.value.Format(layout)
	}
	return s.raw
}

func (s *stamp) set(text, layout string, rule number.Rule) error {
	text = strings.TrimSpace(text)
	if s.take(text) {
		s.value = time.Time{}
		return nil
	}
	t, err := time.Parse(layout, text)
	if err != nil || t.Year() < 1970 || t.Year() > 9999 {
		*s = stamp{blank: blank{Garbled, Garble(text)}}
		return &number.Error{Rule: rule, Text: text}
	}
	*s = stamp{value: t}
	return nil
}
