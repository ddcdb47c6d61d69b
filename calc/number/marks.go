package number

import (
	"strings"
	"unicode/utf8"
)

// The Arabic marks are named for what they are, in any locale: U+066B ARABIC
// DECIMAL SEPARATOR and U+066C ARABIC THOUSANDS SEPARATOR.
const (
	arabicDecimal   = '\u066b'
	arabicThousands = '\u066c'
)

// number reads a folded number without a unit; the reading has no value yet.
func (l *Locale) number(s string) (Reading, Rule) {
	number, rest := cut(s)
	if rest != "" {
		if digits(number) == len(number) && number != "" && exponent(rest) {
			return Reading{}, RuleExponent
		}
		return Reading{}, RuleNoNumber
	}
	minus := ""
	switch number[0] {
	case '-':
		minus, number = "-", number[1:]
	case '+':
		number = number[1:]
	}
	number = strings.TrimPrefix(number, " ")
	if !strings.ContainsAny(number, "0123456789") || strings.Contains(number, "+") {
		return Reading{}, RuleNoNumber
	}
	var r Reading
	var rule Rule
	switch {
	case strings.Contains(number, "/"):
		r.Text, rule = mixed(number)
	case strings.Contains(number, "-"):
		rule = RuleNoNumber
	default:
		r, rule = l.marked(number)
	}
	if rule != "" {
		return Reading{}, rule
	}
	r.Text = minus + r.Text
	if r.Other != "" {
		r.Other = minus + r.Other
	}
	return r, ""
}

// mixed returns the canonical text of a fraction: 1/2, 3 1/2, 3-1/2.
func mixed(s string) (string, Rule) {
	over, under, _ := strings.Cut(s, "/")
	over, under = strings.TrimSuffix(over, " "), strings.TrimPrefix(under, " ")
	at := strings.LastIndexAny(over, " -") + 1
	whole, top := over[:at], over[at:]
	hyphen := strings.Contains(whole, "-")
	whole = strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(whole, " "), "-"), " ")
	if !all(under) || !all(top) || at > 0 && !all(whole) {
		return "", RuleFraction
	}
	if at == 0 {
		return top + "/" + under, ""
	}
	if !hyphen && len(top) == 3 {
		return "", RuleFraction // 1 125/200: is it 1-125/200, or 1125/200 with its thousands apart?
	}
	return whole + "-" + top + "/" + under, ""
}

func all(s string) bool { return s != "" && digits(s) == len(s) }

// marked reads digits with any marks among them.
func (l *Locale) marked(s string) (Reading, Rule) {
	first := strings.IndexFunc(s, isMark)
	if first < 0 {
		return Reading{Text: s}, ""
	}
	m, _ := utf8.DecodeRuneInString(s[first:])
	groups := strings.Split(s, string(m))
	last := groups[len(groups)-1]
	switch {
	case strings.ContainsFunc(last, isMark):
		return l.twoMarks(groups, m, last)
	case strings.ContainsFunc(strings.Join(groups, ""), isMark):
		return Reading{}, RuleMarksMixed
	case len(groups) == 2 && !pure(m):
		return l.oneMark(groups[0], groups[1], m), ""
	case l.grouped(groups):
		return Reading{Text: strings.Join(groups, ""), Echo: m != l.groupMark}, ""
	case pure(m):
		return Reading{}, RuleGrouping
	}
	return Reading{}, RuleTwoMarks
}

// oneMark reads digits with one mark that may be a decimal or a grouping mark.
func (l *Locale) oneMark(head, tail string, m rune) Reading {
	fraction := point(head, tail)
	if !l.grouped([]string{head, tail}) {
		return Reading{Text: fraction, Echo: m != l.decimalMark}
	}
	if m == l.groupMark || m == arabicThousands {
		return Reading{Text: head + tail, Echo: true, Other: fraction}
	}
	return Reading{Text: fraction, Echo: true, Other: head + tail}
}

// twoMarks reads groups parted by m, the last of which holds other marks.
func (l *Locale) twoMarks(groups []string, m rune, last string) (Reading, Rule) {
	at := strings.IndexFunc(last, isMark)
	d, size := utf8.DecodeRuneInString(last[at:])
	tail := last[at+size:]
	groups[len(groups)-1] = last[:at]
	switch {
	case strings.ContainsFunc(strings.Join(groups, "")+tail, isMark),
		m != l.groupMark && m != arabicThousands && !pure(m),
		d != l.decimalMark && d != arabicDecimal:
		return Reading{}, RuleMarksMixed
	case !l.grouped(groups):
		return Reading{}, RuleGrouping
	}
	return Reading{
		Text: point(strings.Join(groups, ""), tail),
		Echo: m != l.groupMark || d != l.decimalMark,
	}, ""
}

// grouped reports whether the groups are such as the locale makes, or
// thousands. No number is grouped that starts with a zero.
func (l *Locale) grouped(groups []string) bool {
	return groups[0] != "" && groups[0][0] != '0' &&
		(sized(groups, l.primary, l.secondary) || sized(groups, 3, 3))
}

func sized(groups []string, primary, secondary int) bool {
	n := len(groups) - 1
	if len(groups[n]) != primary || len(groups[0]) > secondary {
		return false
	}
	for _, g := range groups[1:n] {
		if len(g) != secondary {
			return false
		}
	}
	return true
}

// point returns canonical text of the digits before and behind a decimal mark.
func point(whole, decimals string) string {
	if whole == "" {
		whole = "0"
	}
	if decimals == "" {
		return whole
	}
	return whole + "." + decimals
}

func isMark(r rune) bool { return r < '0' || r > '9' }

// pure reports whether a mark is grouping everywhere, and so has one reading.
func pure(m rune) bool { return m == ' ' || m == '\'' }
