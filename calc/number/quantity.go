package number

import (
	"strings"

	"roofside/calc/unit"
)

// ParseQuantity reads a canonical quantity of a kind, and returns its base
// value and its text with the unit's own symbol. Because links are typed by
// hand, the space before the unit may be missing; so may the unit of a ratio
// and of turns, which are then ones and turns.
func ParseQuantity(text string, k *unit.Kind) (base float64, canonical string, err error) {
	switch {
	case text == "":
		return 0, "", &Error{RuleEmpty, text}
	case len(text) > maxText:
		return 0, "", &Error{RuleTooLong, clip(text)}
	}
	if f, ok := splitFeet(text, k, strict); ok {
		return f.parse(text)
	}
	n := scan(text)
	if n == 0 {
		return 0, "", &Error{RuleNoNumber, text}
	}
	u, err := unitBehind(text, n, k)
	if err != nil {
		return 0, "", err
	}
	x, rule := value(text[:n])
	if rule != "" {
		return 0, "", &Error{rule, text}
	}
	canonical = with(text[:n], u)
	if len(canonical) > maxText {
		return 0, "", &Error{RuleTooLong, clip(text)}
	}
	return u.Base(x), canonical, nil
}

// unitBehind returns the unit that stands in text after the number text[:n].
func unitBehind(text string, n int, k *unit.Kind) (unit.Unit, error) {
	spelled := strings.TrimPrefix(text[n:], " ")
	if text[n:] == "" {
		if u, ok := unwritten(k); ok {
			return u, nil
		}
		return unit.Unit{}, &Error{RuleNoUnit, text}
	}
	if u, ok := find(k, spelled, strict); ok {
		return u, nil
	}
	if spelled == "" || exponent(text[n:]) || strings.ContainsRune(" .,/+-0123456789", rune(spelled[0])) {
		return unit.Unit{}, &Error{misread(text[n:]), text}
	}
	return unit.Unit{}, stranger(spelled, strict)
}

// Quantity reads a canonical quantity.
func Quantity[Q unit.Quantity](text string) (Q, error) {
	var q Q
	base, _, err := ParseQuantity(text, q.Kind())
	return Q(base), err
}

// Split returns the number of a canonical quantity and the symbol of its unit,
// which is empty where none is written. Feet and inches are one number, whose
// unit is the foot.
func Split(canonical string) (number, symbol string) {
	number, symbol, _ = strings.Cut(canonical, " ")
	if strings.HasPrefix(symbol, "ft ") {
		return canonical, "ft"
	}
	return number, symbol
}
