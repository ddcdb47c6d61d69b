package number

import (
	"errors"
	"strings"

	"roofside/calc/unit"
)

// A Reading is what was typed, understood.
type Reading struct {
	Text  string  // canonical text
	Value float64 // of a quantity the base value
	Echo  bool    // show how it was read: a mark was not used as the locale has it, or could be meant otherwise
	Other string  // canonical text of the other possible reading, or ""
}

// maxTyped bounds what is read, in runes: with canonical text of full length
// in any locale and some spaces it still fits.
const maxTyped = 2 * maxText

// Number reads a number as a person of the locale types it: with decimal and
// grouping marks, digits of any script, a fraction. It never misses by a
// factor of 1000 in silence: one mark with three digits behind it is read as
// the locale has it and echoed with the other reading; a mark that can't be
// grouping is a decimal mark; marks that contradict the locale are refused.
// Where a language has digits of its own, European ones bring their own marks.
func (l *Locale) Number(typed string) (Reading, error) {
	if tooLong(typed, maxTyped) {
		return Reading{}, &Error{RuleTooLong, clip(typed)}
	}
	s := fold(typed)
	if s == "" {
		return Reading{}, &Error{RuleEmpty, ""}
	}
	r, rule := l.typing(typed).number(s)
	if rule != "" {
		return Reading{}, &Error{rule, typed}
	}
	x, err := Parse(r.Text)
	if err != nil {
		return Reading{}, retell(err, typed)
	}
	r.Value = x
	return r, nil
}

// Quantity reads a quantity as a person of the locale types it: a number with
// any spelling of a unit of the kind behind it, or with none, when it is of
// the unit that is shown. A length may be in feet and inches.
func (l *Locale) Quantity(typed string, k *unit.Kind, shown unit.Unit) (Reading, error) {
	if tooLong(typed, maxTyped) {
		return Reading{}, &Error{RuleTooLong, clip(typed)}
	}
	s := fold(typed)
	if s == "" {
		return Reading{}, &Error{RuleEmpty, ""}
	}
	l = l.typing(typed)
	if f, ok := splitFeet(s, k, loose); ok {
		return l.feet(f, typed)
	}
	number, spelled := cutUnit(s, k)
	if number == "" {
		return Reading{}, &Error{RuleNoNumber, typed}
	}
	u := shown
	if spelled != "" {
		var ok bool
		if u, ok = find(k, spelled, loose); !ok {
			if exponent(spelled) {
				return Reading{}, &Error{RuleExponent, typed}
			}
			return Reading{}, stranger(spelled, loose)
		}
	}
	r, rule := l.number(number)
	if rule != "" {
		return Reading{}, &Error{rule, typed}
	}
	base, text, err := ParseQuantity(with(r.Text, u), k)
	if err != nil {
		return Reading{}, retell(err, typed)
	}
	r.Value, r.Text = base, text
	if r.Other != "" {
		r.Other = with(r.Other, u)
	}
	return r, nil
}

// retell lets an error about canonical text speak of what was typed.
func retell(err error, typed string) error {
	var e *Error
	if !errors.As(err, &e) || e.Rule == RuleUnit || e.Rule == RuleWrongKind {
		return err
	}
	if e.Rule == RuleTooLong {
		typed = clip(typed)
	}
	return &Error{e.Rule, typed}
}

// feet reads a length in feet and inches.
func (l *Locale) feet(f feet, typed string) (Reading, error) {
	r, rule := l.number(f.inches)
	if rule != "" {
		return Reading{}, &Error{rule, typed}
	}
	f.inches = r.Text
	base, text, err := f.parse(typed)
	if err != nil {
		return Reading{}, retell(err, typed)
	}
	return Reading{Text: text, Value: base, Echo: r.Echo}, nil // thousands of inches are no other reading
}

// cutUnit parts a folded quantity into number and unit.
func cutUnit(s string, k *unit.Kind) (number, spelled string) {
	for _, u := range k.Units {
		for _, a := range u.Also {
			if a != "" && isDigit(a[0]) && len(s) > len(a) && strings.EqualFold(s[len(s)-len(a):], a) { // 1/min
				if number, ok := strings.CutSuffix(s[:len(s)-len(a)], " "); ok {
					return number, a
				}
			}
		}
	}
	number, spelled = cut(s)
	return strings.TrimSuffix(number, " "), spelled
}

// cut parts s before the first rune that can't belong to a number.
func cut(s string) (number, rest string) {
	for i, r := range s {
		between := r == '\'' && i > 0 && isDigit(s[i-1]) && i+1 < len(s) && isDigit(s[i+1])
		if !between && !strings.ContainsRune("0123456789.,٫٬ /+-", r) {
			return s[:i], s[i:]
		}
	}
	return s, ""
}
