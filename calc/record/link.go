package record

import (
	"errors"
	"maps"
	"net/url"
	"slices"
	"strings"
	"unicode/utf8"
)

// Errors of a part of a link.
var (
	ErrEscape = errors.New("broken escape")
	ErrPart   = errors.New("no key=text")
	ErrTwice  = errors.New("given twice")
	ErrLong   = errors.New("too long")
)

// LongestLink is the longest fragment that is read.
const LongestLink = 16 << 10

// ParseFragment reads the fragment of a link, key=text&key=text, where a part may
// be packed (see [Fan.Pack]). A part that can't be read is reported and the rest is
// used.
func ParseFragment(fragment string) (map[string]string, []Problem) {
	texts := map[string]string{}
	var problems []Problem
	take := func(key, text string) {
		if _, twice := texts[key]; twice {
			problems = append(problems, Problem{clip(key, longestWord), clip(text, longestWord), ErrTwice})
			return
		}
		texts[key] = text
	}
	fragment = strings.TrimPrefix(fragment, "#")
	if len(fragment) > LongestLink {
		return texts, []Problem{{Text: clip(fragment, longestWord), Err: ErrLong}}
	}
	for part := range strings.SplitSeq(fragment, "&") {
		if part == "" {
			continue
		}
		key, text, ok := strings.Cut(part, "=")
		if !ok || key == "" {
			problems = append(problems, Problem{clip(part, longestWord), "", ErrPart})
			continue
		}
		value, err := url.PathUnescape(text)
		switch {
		case isPacked(key):
			unpacked, err := unpack(key, text)
			if err != nil {
				problems = append(problems, Problem{clip(key, longestWord), "", err})
			}
			for _, k := range slices.Sorted(maps.Keys(unpacked)) {
				take(k, unpacked[k])
			}
		case err != nil, !utf8.ValidString(value):
			problems = append(problems, Problem{clip(key, longestWord), clip(strings.ReplaceAll(text, "%FF", "%"), longestWord), ErrEscape})
		default:
			take(key, value)
		}
	}
	return texts, problems
}

// escape percent-encodes what would end a part of a fragment or break when a
// link is pasted into other text; what a person reads in a link stays plain.
func escape(text string) string {
	const plain = "/;:,@$!*'()?."
	var b strings.Builder
	for i := range len(text) {
		switch c := text[i]; {
		case c == ' ':
			b.WriteString("%20")
		case 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9' || c == '-' || c == '_' || c == '~',
			strings.IndexByte(plain, c) >= 0:
			b.WriteByte(c)
		default:
			const hex = "0123456789ABCDEF"
			b.WriteByte('%')
			b.WriteByte(hex[c>>4])
			b.WriteByte(hex[c&15])
		}
	}
	return b.String()
}
