package number_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// rule returns the rule that err names, and "" for no error.
func rule(t *testing.T, err error) number.Rule {
	t.Helper()
	if err == nil {
		return ""
	}
	var e *number.Error
	if !errors.As(err, &e) {
		t.Fatalf("%v is a %T, not a *number.Error", err, err)
	}
	return e.Rule
}

// near reports whether two values differ by no more than a few roundings.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-14*math.Abs(b) }

func TestParse(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       float64
		rule       number.Rule
	}{
		{"whole", "1750", 1750, ""},
		{"decimal", "3.40", 3.4, ""},
		{"negative", "-0.5", -0.5, ""},
		{"leading zeros", "007", 7, ""},
		{"fraction", "1/2", 0.5, ""},
		{"improper fraction", "7/4", 1.75, ""},
		{"mixed", "3-1/2", 3.5, ""},
		{"negative mixed", "-3-1/2", -3.5, ""},
		{"largest", "1000000000000000", 1e15, ""},

		{"empty", "", 0, number.RuleEmpty},
		{"letters", "abc", 0, number.RuleNoNumber},
		{"lone minus", "-", 0, number.RuleNoNumber},
		{"plus", "+5", 0, number.RuleNoNumber},
		{"two minus", "--5", 0, number.RuleNoNumber},
		{"no whole", ".5", 0, number.RuleNoNumber},
		{"no decimals", "5.", 0, number.RuleNoNumber},
		{"two points", "1.2.3", 0, number.RuleNoNumber},
		{"comma", "1,5", 0, number.RuleNoNumber},
		{"space", "3 1/2", 0, number.RuleNoNumber},
		{"unit", "5 in", 0, number.RuleNoNumber},
		{"other digits", "٥", 0, number.RuleNoNumber},
		{"not a number", "NaN", 0, number.RuleNoNumber},
		{"infinity", "Inf", 0, number.RuleNoNumber},
		{"hexadecimal", "0x10", 0, number.RuleNoNumber},
		{"underscore", "1_000", 0, number.RuleNoNumber},
		{"no denominator", "1/", 0, number.RuleNoNumber},
		{"range", "3-4", 0, number.RuleNoNumber},
		{"two strokes", "1/2/3", 0, number.RuleNoNumber},
		{"decimal fraction", "1.5/2", 0, number.RuleNoNumber},
		{"exponent", "1e308", 0, number.RuleExponent},
		{"exponent with sign", "1E-5", 0, number.RuleExponent},
		{"zero denominator", "1/0", 0, number.RuleDenominator},
		{"zero over zero", "3-0/00", 0, number.RuleDenominator},
		{"mixed with improper fraction", "3-4/2", 0, number.RuleFraction},
		{"mixed with a whole", "3-2/2", 0, number.RuleFraction},
		{"above largest", "1000000000000001", 0, number.RuleTooLarge},
		{"400 digits", strings.Repeat("9", 400), 0, number.RuleTooLong},
		{"few runes of many bytes", strings.Repeat("𑄷", 17), 0, number.RuleTooLong},
	} {
		t.Run(c.name, func(t *testing.T) {
			x, err := number.Parse(c.text)
			if got := rule(t, err); x != c.want || got != c.rule {
				t.Errorf("Parse(%q) = %v, rule %q; want %v, rule %q", c.text, x, got, c.want, c.rule)
			}
		})
	}
}

func TestParseHasNoNegativeZero(t *testing.T) {
	for _, text := range []string{"-0", "-0.00", "-0/3"} {
		if x, err := number.Parse(text); err != nil || math.Signbit(x) {
			t.Errorf("Parse(%q) = %v, %v; want 0 without sign", text, x, err)
		}
	}
}

func TestParseQuantity(t *testing.T) {
	length, ratio := unit.Length(0).Kind(), unit.Ratio(0).Kind()
	speed, turns := unit.Speed(0).Kind(), unit.Turns(0).Kind()
	warmth, angle := unit.Temperature(0).Kind(), unit.Angle(0).Kind()
	for _, c := range []struct {
		name, text string
		kind       *unit.Kind
		base       float64 // by the unit's definition
		canonical  string
		rule       number.Rule
	}{
		{"inch", "3-1/2 in", length, 3.5 * 0.0254, "3-1/2 in", ""},
		{"digits stay", "3.40 in", length, 3.40 * 0.0254, "3.40 in", ""},
		{"no space", "3.4in", length, 3.4 * 0.0254, "3.4 in", ""},
		{"rpm", "1750rpm", speed, 1750, "1750 rpm", ""},
		{"unit with digits", "1750 1/min", speed, 1750, "1750 rpm", ""},
		{"other spelling", "90 Inches", length, 90 * 0.0254, "90 in", ""},
		{"inch sign", `6"`, length, 6 * 0.0254, "6 in", ""},
		{"foot sign", "5'", length, 5 * 0.3048, "5 ft", ""},
		{"per cent", "2 %", ratio, 0.02, "2 %", ""},
		{"ratio", "0.85", ratio, 0.85, "0.85", ""},
		{"turns", "2.5", turns, 2.5, "2.5 turns", ""},
		{"one turn", "1 turn", turns, 1, "1 turns", ""},
		{"feet and inches", "5 ft 6 in", length, 66 * 0.0254, "5 ft 6 in", ""},
		{"feet and a fraction", "5 ft 6-1/2 in", length, 66.5 * 0.0254, "5 ft 6-1/2 in", ""},
		{"feet and inches by sign", `5'6"`, length, 66 * 0.0254, "5 ft 6 in", ""},
		{"feet and inches in one", "5ft6in", length, 66 * 0.0254, "5 ft 6 in", ""},
		{"negative feet and inches", "-5 ft 6 in", length, -66 * 0.0254, "-5 ft 6 in", ""},
		{"freezing", "32 F", warmth, 273.15, "32 F", ""},
		{"degree sign", "0 °C", warmth, 273.15, "0 C", ""},
		{"straight angle", "180 deg", angle, math.Pi, "180 deg", ""},

		{"empty", "", length, 0, "", number.RuleEmpty},
		{"letters", "abc", length, 0, "", number.RuleNoNumber},
		{"unit alone", "in", length, 0, "", number.RuleNoNumber},
		{"lone minus", "-", length, 0, "", number.RuleNoNumber},
		{"space in front", " 3 in", length, 0, "", number.RuleNoNumber},
		{"two spaces", "3  in", length, 0, "", number.RuleNoNumber},
		{"space behind", "0.5 ", ratio, 0, "", number.RuleNoNumber},
		{"space in mixed", "3 1/2 in", length, 0, "", number.RuleNoNumber},
		{"two points", "1.2.3 in", length, 0, "", number.RuleNoNumber},
		{"comma", "1,5 in", length, 0, "", number.RuleNoNumber},
		{"unwritten unit", "0.5 1", ratio, 0, "", number.RuleNoNumber},
		{"no unit", "3.4", length, 0, "", number.RuleNoUnit},
		{"symbol in other case", "1750 RPM", speed, 0, "", number.RuleUnit},
		{"unknown unit", "3 cubits", length, 0, "", number.RuleUnit},
		{"unit behind feet", "5 ft 6 mm", length, 0, "", number.RuleUnit},
		{"missing inch", "5 ft 6", length, 0, "", number.RuleUnit},
		{"other kind", "3 psi", length, 0, "", number.RuleWrongKind},
		{"feet of another kind", "5 ft 6 in", speed, 0, "", number.RuleUnit},
		{"twelve inches", "5 ft 12 in", length, 0, "", number.RuleFeet},
		{"comma in inches", "5 ft 6,5 in", length, 0, "", number.RuleNoNumber},
		{"improper fraction of inches", "5 ft 1-4/3 in", length, 0, "", number.RuleFraction},
		{"large feet", strings.Repeat("9", 16) + " ft 6 in", length, 0, "", number.RuleTooLarge},
		{"exponent", "1e308 in", length, 0, "", number.RuleExponent},
		{"exponent alone", "1e308", length, 0, "", number.RuleExponent},
		{"zero denominator", "3-1/0 in", length, 0, "", number.RuleDenominator},
		{"zero denominator of inches", "5 ft 1/0 in", length, 0, "", number.RuleDenominator},
		{"large", strings.Repeat("9", 16) + " in", length, 0, "", number.RuleTooLarge},
		{"400 digits", strings.Repeat("9", 400) + " in", length, 0, "", number.RuleTooLong},
		{"longer with its unit", "0." + strings.Repeat("1", 62), turns, 0, "", number.RuleTooLong},
	} {
		t.Run(c.name, func(t *testing.T) {
			base, canonical, err := number.ParseQuantity(c.text, c.kind)
			if got := rule(t, err); !near(base, c.base) || canonical != c.canonical || got != c.rule {
				t.Errorf("ParseQuantity(%q) = %v, %q, rule %q; want %v, %q, rule %q",
					c.text, base, canonical, got, c.base, c.canonical, c.rule)
			}
		})
	}
}

func TestErrorNamesTheUnit(t *testing.T) {
	length := unit.Length(0).Kind()
	for text, want := range map[string]string{"3 cubits": "cubits", "3 psi": "psi"} {
		_, _, err := number.ParseQuantity(text, length)
		var e *number.Error
		if !errors.As(err, &e) || e.Text != want {
			t.Errorf("ParseQuantity(%q): %v; want an error about %q", text, err, want)
		}
	}
}

func TestEveryUnitIsRead(t *testing.T) {
	for _, k := range unit.Kinds() {
		for _, u := range k.Units {
			if u.Symbol == "1" {
				continue
			}
			base, canonical, err := number.ParseQuantity("2 "+u.Symbol, k)
			if err != nil || base != u.Base(2) || canonical != "2 "+u.Symbol {
				t.Errorf("%s: 2 %s is %v, %q, %v", k.Name, u.Symbol, base, canonical, err)
			}
		}
	}
}

func TestSplit(t *testing.T) {
	for canonical, want := range map[string][2]string{
		"3-1/2 in":      {"3-1/2", "in"},
		"1750 rpm":      {"1750", "rpm"},
		"0.85":          {"0.85", ""},
		"5 ft":          {"5", "ft"},
		"5 ft 6-1/2 in": {"5 ft 6-1/2 in", "ft"},
		"-1 ft 6 in":    {"-1 ft 6 in", "ft"},
		"":              {"", ""},
		"0.075 lb/ft3":  {"0.075", "lb/ft3"},
		"-40 F":         {"-40", "F"},
		"2-1/2 turns":   {"2-1/2", "turns"},
		"-0 in":         {"-0", "in"},
	} {
		n, symbol := number.Split(canonical)
		if n != want[0] || symbol != want[1] {
			t.Errorf("Split(%q) = %q, %q; want %q", canonical, n, symbol, want)
		}
	}
}

func TestCanonical(t *testing.T) {
	inch, fahrenheit := unit.Shop.US, unit.Warmth.US
	for _, c := range []struct {
		name   string
		x      float64
		unit   unit.Unit
		digits int
		want   string
	}{
		{"noise of conversion is rounded off", 3.4 * 0.0254, inch, 6, "3.4 in"},
		{"whole", 1750, unit.Rotation.US, 4, "1750 rpm"},
		{"digits before the point are rounded too", 1756, unit.Rotation.US, 3, "1760 rpm"},
		{"carry", 9.996, unit.Factor.US, 3, "10"},
		{"per cent", 0.125, unit.Share.US, 6, "12.5 %"},
		{"no exponent below", 1.5e-9, unit.Factor.US, 6, "0.0000000015"},
		{"no exponent above", 1e15, unit.Factor.US, 6, "1000000000000000"},
		{"negative", -2.5, unit.Factor.US, 6, "-2.5"},
		{"zero", 0, inch, 6, "0 in"},
		{"negative zero", math.Copysign(0, -1), inch, 6, "0 in"},
		{"too small for the text", -1e-300, unit.Factor.US, 6, "0"},
		{"zero on a scale with a zero point", 459.67 / 1.8, fahrenheit, 6, "0 F"},
		{"one bit above a zero point", math.Nextafter(273.15, 300), unit.Warmth.SI, 6, "0 C"},
		{"freezing", 273.15, fahrenheit, 6, "32 F"},
		{"no digits", 123, unit.Factor.US, 0, "100"},
		{"more digits than there are", 0.1, unit.Factor.US, 1000, "0.1"},
		{"above largest", 1.1e15, unit.Factor.US, 6, ""},
		{"infinite", math.Inf(1), inch, 6, ""},
		{"not a number", math.NaN(), inch, 6, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := number.Canonical(c.x, c.unit, c.digits); got != c.want {
				t.Errorf("Canonical(%v, %q, %d) = %q; want %q", c.x, c.unit.Symbol, c.digits, got, c.want)
			}
		})
	}
}

// A rule without a text that breaks it, or without an English sentence, would
// show here.
func TestEveryRuleIsBrokenBySomeText(t *testing.T) {
	broken := map[number.Rule]bool{}
	us := locale("en-US")
	for _, text := range []string{"", strings.Repeat("9", 400), strings.Repeat("9", 20), "abc", "1e308", "1.2.3 in",
		"1.234,5", "1 72", "3 4/2", "1/0", "5' 14\"", "5 cubits", "5 psi"} {
		_, err := us.Quantity(text, unit.Length(0).Kind(), unit.Shop.US)
		broken[rule(t, err)] = true
	}
	_, _, err := number.ParseQuantity("5", unit.Length(0).Kind())
	broken[rule(t, err)] = true
	for _, r := range number.Rules() {
		if !broken[r] {
			t.Errorf("no text breaks %q", r)
		}
	}
	for r := range broken {
		if !slices.Contains(number.Rules(), r) {
			t.Errorf("Rules lacks %q", r)
		}
	}
}
