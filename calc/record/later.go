package record

import (
	"errors"
	"maps"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"roofside/calc/number"
)

// What a later version of this library wrote is carried along untouched: keys that no
// place here has, and texts that a place here doesn't take though a later one may, such
// as an option that was added to a list. Nothing here goes by them; a value that is
// entered in the place of one stands instead of it.

// ErrLater is the problem of a text that is carried along, and not used.
var ErrLater = errors.New("written by a later version")

// mostLater is how many such texts a fan carries.
const mostLater = 300

// longestLater is how many bytes one of them may have.
const longestLater = 4 << 10

// Later returns the keys of what is carried along for a later version, in order.
func (f *Fan) Later() []string {
	return slices.Sorted(maps.Keys(f.carried()))
}

// carried returns what is carried along, but for places that hold something here.
func (f *Fan) carried() map[string]string {
	if len(f.later) == 0 {
		return nil
	}
	carried := maps.Clone(f.later)
	for k, p := range f.Places() {
		if p.State() != Unknown {
			delete(carried, k)
		}
	}
	return carried
}

// carry keeps a text that could not be taken, and tells whether it may be one of a
// later version.
func (f *Fan) carry(key, text string) bool {
	if _, has := f.later[key]; !isKey(key) || !isLater(text) || !has && len(f.later) >= mostLater {
		return false
	}
	if f.later == nil {
		f.later = map[string]string{}
	}
	f.later[key] = text
	return true
}

// drop forgets what is carried along of a row.
func (f *Fan) drop(row string) {
	maps.DeleteFunc(f.later, func(key, _ string) bool { return rowOf(key) == row })
}

// isKey tells whether a text is formed as keys are: words of lower-case letters and
// digits, joined by points and hyphens.
func isKey(s string) bool {
	for word := range strings.SplitSeq(strings.ReplaceAll(s, ".", "-"), "-") {
		if word == "" || strings.Trim(word, "abcdefghijklmnopqrstuvwxyz0123456789") != "" {
			return false
		}
	}
	return len(s) <= longestWord
}

// isLater tells whether a text may be that of a later version's place: valid, not
// empty, of no more than a note's length, without control characters but ends of line.
func isLater(text string) bool {
	return text != "" && len(text) <= longestLater && utf8.ValidString(text) && strings.TrimSpace(text) == text &&
		!strings.ContainsFunc(text, func(r rune) bool { return unicode.IsControl(r) && r != '\n' })
}

// ofLater tells whether a place of this version refused a text that a later one's may
// take: a word that is not among its options, or another word for how a value is known.
func ofLater(err error) bool {
	var e *number.Error
	return errors.As(err, &e) && (e.Rule == RuleOption || e.Rule == RuleRemark && isKey(e.Text) && !isBasis(e.Text))
}

// isSharedText tells whether what is carried along goes into a link, as [isShared] does.
func isSharedText(text string) bool {
	return !strings.HasPrefix(text, garbled) && !strings.ContainsFunc(text, isStep) && utf8.RuneCountInString(text) <= LongestSharedNote
}
