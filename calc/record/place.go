// Package record holds what is known of a fan, each value in one place.
//
// A place's identity is its pointer; its key is only the spelling, listed once
// by [Fan.Places]. The one stored truth of a place is its canonical text, free
// of any language; the value follows from it. One codec of key and text serves
// storage, links, files and undo. Keys and canonical spellings are published:
// they are added to and never changed.
//
// Terms: old is the fan that has failed, as found; new is its replacement, as
// shipped; each trial is one setting of the new drive with its readings, and
// the new fan as left is the last trial accepted; target is what the new fan
// is to do.
package record

import "strings"

// A State says whether a place holds a value. No number stands for unknown.
type State int

// The states of a place.
const (
	Unknown   State = iota // nothing has been entered
	Known                  // a value
	Illegible              // somebody looked, and it can't be read
	Garbled                // text was entered that is no value here; it is kept
)

// A Place is where one value of the record stands.
type Place interface {
	// Set takes canonical text: "" for unknown, "?" for illegible, "!" and
	// anything for text that is kept though it is no value. Text that is not
	// canonical, or that the place can't hold, is kept as garbled and
	// reported.
	Set(text string) error
	Text() string
	State() State
}

// The first byte of the canonical text of a place without a value.
const (
	illegible = "?"
	garbled   = "!"
)

// Garble returns the canonical text that keeps typed text which is no value.
// It is valid UTF-8 without space at its ends, so that storing it and reading
// it back changes nothing.
func Garble(typed string) string {
	return garbled + strings.TrimSpace(clip(strings.TrimSpace(strings.ToValidUTF8(typed, "\uFFFD")), longestWord))
}

// Typed returns the text kept by a garbled place, as it was typed.
func Typed(p Place) string {
	if p.State() != Garbled {
		return ""
	}
	return p.Text()[len(garbled):]
}

// blank holds the two states that carry no value, and the garbled one.
type blank struct {
	state State
	raw   string
}

// take handles the canonical texts that carry no value.
func (b *blank) take(text string) (done bool) {
	switch {
	case text == "":
		*b = blank{}
	case text == illegible:
		*b = blank{state: Illegible, raw: text}
	case text[:1] == garbled:
		*b = blank{state: Garbled, raw: Garble(text[len(garbled):])}
	default:
		return false
	}
	return true
}

// clip cuts s to at most n bytes without breaking a rune.
func clip(s string, n int) string {
	if len(s) <= n {
		return s
	}
	for n > 0 && s[n]&0xC0 == 0x80 {
		n--
	}
	return s[:n]
}
