package number

import (
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
func (l *Locale) Number(typed string) (Reading, error) {
	if tooLong(typed, maxTyped) {
		return Reading{}, &Error{RuleTooLong, clip(typed)}
	}
	s := fold(typed)
	if s == "" {
		return Reading{}, &Error{RuleEmpty, ""}
	}
	r, rule := l.number(s)
	if rule == "" {
		r.Value, rule = value(r.Text)
	}
	if rule != "" {
		return Reading{}, &Error{rule, typed}
	}
	if r.Other != "" {
		if _, err := Parse(r.Other); err != nil {
			r.Other = ""
		}
	}
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
	s = strings.TrimPrefix(s, "+")
	if f, ok := splitFeet(s, k, loose); ok {
		return l.feet(f, typed)
	}
	number, spelled := l.cutUnit(s, k)
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
	return settle(r, k, u, typed)
}

// settle completes a reading of a number with its unit and base value.
func settle(r Reading, k *unit.Kind, u unit.Unit, typed string) (Reading, error) {
	r.Text = with(r.Text, u)
	if r.Other != "" {
		r.Other = with(r.Other, u)
		if _, _, err := ParseQuantity(r.Other, k); err != nil {
			r.Other = "" // what no one can mean is not offered
		}
	}
	var err error
	r.Value, r.Text, err = ParseQuantity(r.Text, k)
	return r, retell(err, typed)
}

// retell lets an error about canonical text speak of what was typed.
func retell(err error, typed string) error {
	e, ok := err.(*Error)
	if !ok || e.Rule == RuleUnit || e.Rule == RuleWrongKind {
		return err
	}
	return &Error{e.Rule, clip(typed)}
}

// feet reads a length in feet and inches.
func (l *Locale) feet(f feet, typed string) (Reading, error) {
	r, rule := l.number(f.inches)
	if rule != "" {
		return Reading{}, &Error{rule, typed}
	}
	f.inches = r.Text
	r.Other = "" // thousands of inches behind a foot are no second reading
	var err error
	r.Value, r.Text, err = f.parse(typed)
	return r, retell(err, typed)
}

// cutUnit parts a folded quantity into number and unit.
func (l *Locale) cutUnit(s string, k *unit.Kind) (number, spelled string) {
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
