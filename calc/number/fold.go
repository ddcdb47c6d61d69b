package number

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// fold writes what people type in one alphabet: every decimal digit in ASCII,
// every minus as '-', every apostrophe and prime as ' or ", every run of
// spaces as one space, a fraction sign as its digits. Marks of direction are
// dropped: they say how to draw a number, not what it is.
func fold(typed string) string {
	b := make([]byte, 0, maxText)
	last := ' ' // so that spaces in front are dropped
	put := func(r rune) {
		if r != ' ' || last != ' ' {
			b = utf8.AppendRune(b, r)
			last = r
		}
	}
	for _, r := range typed {
		switch {
		case r < utf8.RuneSelf && r != '\'' && r > ' ' && r != 0x7f:
			put(r)
		case unicode.IsSpace(r):
			put(' ')
		case unicode.Is(unicode.Bidi_Control, r):
		case isApostrophe(r) && last == '\'': // '' stands for "
			b = b[:len(b)-1]
			put('"')
		case isApostrophe(r):
			put('\'')
		case vulgar[r] != "":
			put(' ') // 3½ is 3 1/2, not 31/2
			for _, c := range vulgar[r] {
				put(c)
			}
			put(' ')
		default:
			put(alike(r))
		}
	}
	return strings.TrimSuffix(string(b), " ")
}

// inASCII returns the ASCII digit for a digit of any script, and any other
// rune as it is. Unicode lays out the digits of each script from zero to nine
// without a gap (The Unicode Standard, 4.6).
func inASCII(r rune) rune {
	for _, t := range unicode.Nd.R16 {
		if rune(t.Lo) <= r && r <= rune(t.Hi) {
			return '0' + (r-rune(t.Lo))%10
		}
	}
	for _, t := range unicode.Nd.R32 {
		if rune(t.Lo) <= r && r <= rune(t.Hi) {
			return '0' + (r-rune(t.Lo))%10
		}
	}
	return r
}

func isApostrophe(r rune) bool {
	switch r {
	case '\'', '‘', '’', 'ʹ', 'ʼ', '′', '＇':
		return true
	}
	return false
}

// alike returns the rune that stands for r in folded text.
func alike(r rune) rune {
	switch r {
	case '“', '”', '„', 'ʺ', '″', '＂':
		return '"'
	case '\u2010', '\u2011', '\u2012', '\u2013', '\u2212', '\uff0d':
		return '-'
	case '\uff0b':
		return '+'
	case '\u2044', '\u2215', '\uff0f':
		return '/'
	case '،', '，':
		return ','
	case '．':
		return '.'
	case '٪', '％':
		return '%'
	case 'º', '˚': // the ordinal on Spanish keyboards, the ring
		return '°'
	}
	return inASCII(r)
}

// vulgar holds the fraction signs of Unicode (Latin-1 Supplement and Number
// Forms).
var vulgar = map[rune]string{
	'¼': "1/4", '½': "1/2", '¾': "3/4",
	'⅐': "1/7", '⅑': "1/9", '⅒': "1/10",
	'⅓': "1/3", '⅔': "2/3",
	'⅕': "1/5", '⅖': "2/5", '⅗': "3/5", '⅘': "4/5",
	'⅙': "1/6", '⅚': "5/6",
	'⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8",
	'↉': "0/3",
}
