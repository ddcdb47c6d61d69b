package record

import "strings"

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
