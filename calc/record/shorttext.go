package record

import (
	_ "embed"
	"maps"
	"slices"
	"strings"
	"sync"
	"unicode/utf8"
)

// z1 lists the places that the short text knows, a line each, in the order of
// [Fan.Places] on the day it was published: the key, "*" in place of a row's id;
// then, for a quantity, the unit it is usually written in, unless it is a bare
// number; for a choice, its options. The last line holds the words of how a value
// is known, for the dictionary alone: what is used most stands last. Links depend
// on every byte of it: it is never changed. A place added later is written with its
// key.
//
//go:embed z1.txt
var z1 string

// The short text names no places. Each value stands behind a control character,
// which no value holds, that says how far on in z1 its place is. Values are
// canonical text, but for a choice one letter, A for the first option; and a
// quantity in its usual unit is its figures alone.
const (
	stepNext = 0x0B // the place on the next line, and so on up to
	stepLast = 0x1C // the 18th line from here
	stepFar  = 0x1D // 18 lines are passed over; no value
	stepRow  = 0x1E // the row of a list, as trial.t1: the next line is the first of the list
	stepKey  = 0x1F // key=text, of a place that isn't in z1 or a value it can't shorten
)

const farLines = stepLast - stepNext + 1

func isStep(r rune) bool { return stepNext <= r && r <= stepKey }

// A z1Line is a line of z1.
type z1Line struct {
	key     string
	list    string // as trial of trial.*.speed,
	rest    string // and .speed
	unit    string
	options []string
}

// A z1Table is z1 as read.
type z1Table struct {
	lines []z1Line
	index map[string]int
	first map[string]int // line of each list
}

var table = sync.OnceValue(func() z1Table {
	t := z1Table{index: map[string]int{}, first: map[string]int{}}
	for line := range strings.Lines(z1) {
		if line[0] == ';' {
			continue
		}
		key, what, _ := strings.Cut(strings.TrimSuffix(line, "\n"), " ")
		l := z1Line{key: key}
		if list, rest, ok := strings.Cut(key, ".*"); ok {
			l.list, l.rest = list, rest
			if _, begun := t.first[list]; !begun {
				t.first[list] = len(t.lines)
			}
		}
		if strings.Contains(what, "|") {
			l.options = strings.Split(what, "|")
		} else {
			l.unit = what
		}
		t.index[key] = len(t.lines)
		t.lines = append(t.lines, l)
	}
	return t
})

// short returns the short form of a canonical text, if there is one.
func (l *z1Line) short(text string) (string, bool) {
	s := text
	if l.options != nil {
		for i, o := range l.options {
			if o == text {
				s = string(rune('A' + i))
			}
		}
	} else if l.unit != "" {
		s = strings.TrimSuffix(text, " "+l.unit)
	}
	back, ok := l.long(s)
	return s, ok && back == text
}

// long returns the canonical text of a short form.
func (l *z1Line) long(s string) (string, bool) {
	switch {
	case s == "" || strings.ContainsFunc(s, isStep):
		return "", false
	case l.options != nil && s != illegible:
		i := int(s[0]) - 'A'
		if len(s) != 1 || i < 0 || i >= len(l.options) {
			return "", false
		}
		return l.options[i], true
	case l.unit != "" && strings.Trim(s, "0123456789./- ") == "":
		return s + " " + l.unit, true
	}
	return s, true
}

// shortText returns the known places of f as short text, and the keys of those
// that stay out.
func (f *Fan) shortText() (text string, out []string) {
	var b strings.Builder
	t, next, at := table(), 0, "" // the row that is being written
	for key, p := range f.Places() {
		if p.State() == Unknown {
			continue
		}
		if !isShared(p) {
			out = append(out, key)
			continue
		}
		name, row, from := key, rowOf(key), next
		enters := row != "" && row != at
		if row != "" {
			list, _, _ := strings.Cut(row, ".")
			name = list + ".*" + key[len(row):]
			if enters {
				from = t.first[list]
			}
		}
		i, ok := t.index[name]
		s := ""
		if ok = ok && i >= from; ok {
			s, ok = t.lines[i].short(p.Text())
		}
		if !ok {
			b.WriteByte(stepKey)
			b.WriteString(key + "=" + p.Text())
			continue
		}
		if enters {
			b.WriteByte(stepRow)
			b.WriteString(row)
			at = row
		}
		for ; i-from >= farLines; from += farLines {
			b.WriteByte(stepFar)
		}
		b.WriteByte(byte(stepNext + i - from))
		b.WriteString(s)
		next = i + 1
	}
	carried := f.carried()
	for _, key := range slices.Sorted(maps.Keys(carried)) {
		if !isSharedText(carried[key]) {
			out = append(out, key)
			continue
		}
		b.WriteByte(stepKey)
		b.WriteString(key + "=" + carried[key])
	}
	return b.String(), out
}

// isShared tells whether a place that holds something goes into a link.
func isShared(p Place) bool {
	if n, ok := p.(*Note); ok {
		return utf8.RuneCountInString(n.Text()) <= LongestSharedNote
	}
	return p.State() != Garbled
}

// readShort returns the keys and canonical texts of a short text.
func readShort(text string) (map[string]string, error) {
	texts := map[string]string{}
	t, next, row := table(), 0, ""
	for len(text) > 0 {
		step, rest := text[0], text[1:]
		end := strings.IndexFunc(rest, isStep)
		if end < 0 {
			end = len(rest)
		}
		value := rest[:end]
		text = rest[end:]
		key, ok := "", true
		switch {
		case step == stepFar:
			if next += farLines; value != "" {
				return nil, ErrDamaged
			}
			continue
		case step == stepRow:
			list, _, _ := strings.Cut(value, ".")
			if next, ok = t.first[list]; !ok || rowOf(value+".") != value {
				return nil, ErrDamaged
			}
			row = value
			continue
		case step == stepKey:
			key, value, ok = strings.Cut(value, "=")
			ok = ok && key != "" && value != ""
		case isStep(rune(step)) && next+int(step-stepNext) < len(t.lines):
			next += int(step-stepNext) + 1
			l := &t.lines[next-1]
			if key = l.key; l.list != "" {
				key, ok = row+l.rest, strings.HasPrefix(row, l.list+".")
			}
			if ok {
				value, ok = l.long(value)
			}
		default:
			ok = false
		}
		if _, twice := texts[key]; twice || !ok {
			return nil, ErrDamaged
		}
		texts[key] = value
	}
	return texts, nil
}
