package desk

import (
	"math"
	"strconv"
	"strings"

	"roofside/calc/unit"
)

// decimals is how many decimals a computed figure shows in a unit: what an
// instrument of the trade resolves.
var decimals = map[string]int{
	"in": 2, "ft": 1, "mm": 1, "m": 2, "rpm": 0, "fpm": 0, "m/s": 2, "cfm": 0, "m3/h": 0,
	"inwg": 3, "Pa": 1, "hp": 2, "kW": 2, "kVA": 2, "lbf": 1, "N": 1, "V": 1, "A": 2, "Hz": 1,
	"lb/ft": 3, "kg/m": 3, "F": 0, "C": 0, "dF": 0, "dC": 0, "in2": 4, "mm2": 1, "in3": 2, "cm3": 1, "lb/ft3": 4, "kg/m3": 3, "deg": 1, "1": 3, "%": 1, "turns": 2,
}

// Figure writes a computed base value in the user's units and language.
func (d *Desk) Figure(s *unit.Scale, base float64) (figure, label string) {
	u := s.In(d.Settings.Units)
	switch {
	case u.Symbol == "turns":
		return d.Turns(unit.Turns(base)), u.Label
	case s == &unit.Tally:
		return d.Locale.WriteFixed(base, 0), u.Label
	}
	return strings.Replace(d.Locale.WriteFixed(u.Of(base), decimals[u.Symbol]), "-", "−", 1), u.Label
}

// Difference writes a difference of base values: of two temperatures too. One that
// nothing bounds is a question mark.
func (d *Desk) Difference(s *unit.Scale, base float64) string {
	if math.IsInf(base, 0) {
		return "?"
	}
	u := s.In(d.Settings.Units)
	n := decimals[u.Symbol]
	if x := base / u.Size; x < math.Pow10(-n)/2 && x > 0 {
		n++
	}
	return d.Locale.WriteFixed(base/u.Size, n)
}

// Signed writes a figure with its sign in front: a move, a deviation.
func (d *Desk) Signed(s *unit.Scale, base float64) string {
	f, label := d.Figure(s, math.Abs(base))
	sign := "+"
	if base < 0 {
		sign = "−"
	}
	if strings.Trim(f, "0.,") == "" {
		sign = "±"
	}
	return strings.TrimSpace(sign + f + " " + label)
}

// Turns writes a number of turns, halves and quarters as fractions.
func (d *Desk) Turns(t unit.Turns) string {
	whole, part := math.Modf(float64(t))
	quarters := part * 4
	if quarters != math.Trunc(quarters) || t < 0 {
		return d.Locale.WriteFixed(float64(t), 2)
	}
	glyph := [...]string{"", "¼", "½", "¾"}[int(quarters)]
	if whole == 0 && glyph != "" {
		return glyph
	}
	return d.Locale.WriteFixed(whole, 0) + glyph
}

// RuleMark returns the distance between the marks of the rule at hand: 1/16 in, or
// a millimeter.
func (d *Desk) RuleMark() unit.Length {
	if d.Settings.Units == unit.SI {
		return unit.Millimeter
	}
	return unit.Inch / 16
}

// Marked returns canonical text for a length of whole marks of the rule, inches as
// a fraction.
func (d *Desk) Marked(x unit.Length) string {
	n := int(math.Round(float64(x / d.RuleMark())))
	if d.Settings.Units == unit.SI {
		return strconv.Itoa(n) + " mm"
	}
	whole, part, over := n/16, n%16, 16
	for part > 0 && part%2 == 0 {
		part, over = part/2, over/2
	}
	fraction := strconv.Itoa(part) + "/" + strconv.Itoa(over)
	switch {
	case part == 0:
		return strconv.Itoa(whole) + " in"
	case whole == 0:
		return fraction + " in"
	}
	return strconv.Itoa(whole) + "-" + fraction + " in"
}
