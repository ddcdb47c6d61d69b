package number

import (
	"strings"
	"sync"

	"roofside/calc/unit"
)

// Localize returns canonical text as a person of the locale writes it: its
// digits and decimal mark, no grouping, the unit by its label. What it returns
// is read back as the same text, and never echoed as a grouped number. Text
// that is not canonical is returned as it is.
func (l *Locale) Localize(canonical string) string {
	number, symbol := Split(canonical)
	if feet, inches, ok := strings.Cut(number, " ft "); ok {
		if _, same, err := ParseQuantity(canonical, unit.Length(0).Kind()); err != nil || same != canonical {
			return canonical
		}
		inches = strings.TrimSuffix(inches, " in")
		return l.translate(feet) + " " + label("ft") + " " + l.translate(inches) + " " + label("in")
	}
	if _, err := Parse(number); err != nil {
		return canonical
	}
	switch {
	case symbol == "" && len(number) == len(canonical):
		return l.translate(number)
	case label(symbol) == "":
		return canonical
	}
	return l.translate(number) + " " + label(symbol)
}

// translate writes a canonical number in the locale's digits and marks.
func (l *Locale) translate(number string) string {
	size, negative := strings.CutPrefix(number, "-")
	if strings.Contains(size, "/") {
		return l.fraction(size, negative)
	}
	return l.dress([]byte(size), negative, false)
}

func (l *Locale) fraction(size string, negative bool) string {
	var b strings.Builder
	if negative {
		b.WriteString(l.minus)
	}
	for _, r := range size {
		if isDigit(byte(r)) {
			r = l.digits[r-'0']
		}
		b.WriteRune(r)
	}
	return b.String()
}

// label returns the label of the unit with a symbol, or "".
func label(symbol string) string { return labels()[symbol] }

var labels = sync.OnceValue(func() map[string]string {
	m := map[string]string{}
	for _, k := range unit.Kinds() {
		for _, u := range k.Units {
			m[u.Symbol] = u.Label
		}
	}
	return m
})
