package record

import (
	"strings"
	"unicode"
)

// Handover is what closes the record: who did the work, when, when to come back,
// and what no other place holds.
type Handover struct {
	By      Word
	On      Day
	BeltDue Day // to tension the belt again
	Notes   Note
}

func (l *lister) handover(h *Handover) {
	l.add("by", &h.By)
	l.add("on", &h.On)
	l.add("belt-due", &h.BeltDue)
	l.add("notes", &h.Notes)
}

// A Note is the place of free text in lines. Its canonical text is the text
// itself.
type Note struct{ text string }

// LongestNote is how many bytes of a note are kept.
const LongestNote = 2000

// State returns whether n holds text.
func (n *Note) State() State {
	if n.text == "" {
		return Unknown
	}
	return Known
}

// Text returns the text.
func (n *Note) Text() string { return n.text }

// Set takes any text; control characters other than the end of a line become
// spaces, marks that turn the direction of writing go, and what is beyond 2000
// bytes is cut off.
func (n *Note) Set(text string) error {
	text = strings.ReplaceAll(text, "\r\n", "\n")
	n.text = strings.TrimSpace(clip(cleaned(text, '\n'), LongestNote))
	return nil
}

// cleaned returns text that can be shown as it is: valid, without control
// characters but for those kept, and without the marks that turn the direction of
// writing, behind which a name can hide what it says.
func cleaned(text string, keep ...rune) string {
	return strings.Map(func(r rune) rune {
		switch {
		case strings.ContainsRune(string(keep), r):
			return r
		case unicode.IsControl(r) || r == unicode.ReplacementChar:
			return ' '
		case unicode.Is(unicode.Bidi_Control, r):
			return -1
		}
		return r
	}, strings.ToValidUTF8(text, " "))
}
