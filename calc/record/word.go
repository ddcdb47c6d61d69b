package record

import (
	"strings"
	"time"

	"roofside/calc/number"
)

// A Word is the place of free text on one line: a name, a belt number. Its
// canonical text is the text itself, so that no text is impossible.
type Word struct{ text string }

const longestWord = 120

// State returns whether w holds text.
func (w *Word) State() State {
	switch w.text {
	case "":
		return Unknown
	case illegible:
		return Illegible
	}
	return Known
}

// Text returns the text.
func (w *Word) Text() string { return w.text }

// Set takes any text; control characters become spaces, marks that turn the
// direction of writing go, and what is beyond 120 bytes is cut off.
func (w *Word) Set(text string) error {
	w.text = strings.TrimSpace(clip(cleaned(text), longestWord))
	return nil
}

// A Moment is the place of a date and time of day; its canonical text is that
// of RFC 3339 to the minute or second.
type Moment struct {
	blank
	value time.Time
}

// RuleMoment is broken by text that is no date and time.
const RuleMoment number.Rule = "moment"

// State returns whether m holds a time.
func (m *Moment) State() State {
	if !m.value.IsZero() {
		return Known
	}
	return m.state
}

// Text returns the canonical text of m.
func (m *Moment) Text() string {
	if !m.value.IsZero() {
		return m.value.Format(time.RFC3339)
	}
	return m.raw
}

// Set takes canonical text.
func (m *Moment) Set(text string) error {
	text = strings.TrimSpace(text)
	if m.take(text) {
		m.value = time.Time{}
		return nil
	}
	t, err := time.Parse(time.RFC3339, text)
	if err != nil || t.Year() < 1970 || t.Year() > 9999 {
		*m = Moment{blank: blank{Garbled, Garble(text)}}
		return &number.Error{Rule: RuleMoment, Text: text}
	}
	*m = Moment{value: t}
	return nil
}

// Value returns the time; it means something only when the state is Known.
func (m *Moment) Value() time.Time { return m.value }
