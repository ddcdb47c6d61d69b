package number

import (
	"strconv"
	"strings"
)

const (
	// maxText bounds canonical text, in bytes.
	maxText = 64
	// Largest bounds the count of a unit. Up to here a float64 tells every
	// integer from the next, and no quantity of the trade comes near.
	Largest = 1e15
)

// Parse reads a canonical number.
func Parse(text string) (float64, error) {
	switch {
	case text == "":
		return 0, &Error{RuleEmpty, text}
	case len(text) > maxText:
		return 0, &Error{RuleTooLong, clip(text)}
	}
	n := scan(text)
	if n < len(text) {
		return 0, &Error{misread(text[n:]), text}
	}
	x, rule := value(text)
	if rule != "" {
		return 0, &Error{rule, text}
	}
	return x, nil
}

// scan returns the length of the longest canonical number that s begins with.
func scan(s string) int {
	start := 0
	if strings.HasPrefix(s, "-") {
		start = 1
	}
	n := start + digits(s[start:])
	if n == start {
		return 0
	}
	end := n
	if over := fraction(s[n:]); over > 0 {
		return n + over
	}
	switch {
	case strings.HasPrefix(s[n:], "."):
		if d := digits(s[n+1:]); d > 0 {
			end = n + 1 + d
		}
	case strings.HasPrefix(s[n:], "-"):
		if d := digits(s[n+1:]); d > 0 {
			if over := fraction(s[n+1+d:]); over > 0 {
				end = n + 1 + d + over
			}
		}
	}
	return end
}

// fraction returns the length of a stroke and the denominator behind it.
func fraction(s string) int {
	if !strings.HasPrefix(s, "/") {
		return 0
	}
	if d := digits(s[1:]); d > 0 {
		return 1 + d
	}
	return 0
}

func digits(s string) int {
	n := 0
	for n < len(s) && isDigit(s[n]) {
		n++
	}
	return n
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

// misread tells why nothing canonical can go on as rest does.
func misread(rest string) Rule {
	if exponent(rest) {
		return RuleExponent
	}
	return RuleNoNumber
}

// exponent reports whether s begins with an exponent as programs write it:
// e308, E-5.
func exponent(s string) bool {
	if s == "" || s[0] != 'e' && s[0] != 'E' {
		return false
	}
	return digits(strings.TrimLeft(s[1:], "+-")) > 0
}

// value returns the value of a canonical number, never -0.
func value(text string) (float64, Rule) {
	size, negative := strings.CutPrefix(text, "-")
	x, rule := magnitude(size)
	switch {
	case rule != "":
		return 0, rule
	case x > Largest:
		return 0, RuleTooLarge
	case negative && x != 0:
		return -x, ""
	}
	return x, ""
}

func magnitude(text string) (float64, Rule) {
	over, under, ok := strings.Cut(text, "/")
	if !ok {
		return plain(text)
	}
	whole, top, mixed := strings.Cut(over, "-")
	if !mixed {
		whole, top = "0", over
	}
	w, ruleW := plain(whole)
	n, ruleN := plain(top)
	d, ruleD := plain(under)
	switch {
	case ruleW != "" || ruleN != "" || ruleD != "":
		return 0, RuleTooLarge
	case d == 0:
		return 0, RuleDenominator
	case mixed && n >= d:
		return 0, RuleFraction // 3-4/2 is a slip of the finger
	}
	return (w*d + n) / d, ""
}

func plain(text string) (float64, Rule) {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil { // the text is digits with at most one point, so only the range is left
		return 0, RuleTooLarge
	}
	return x, ""
}
