package number_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"golang.org/x/text/language"

	"roofside/calc/number"
	"roofside/calc/unit"
)

func locale(tag string) *number.Locale { return number.For(language.MustParse(tag)) }

const (
	plain = false
	echo  = true
)

func TestNumber(t *testing.T) {
	for _, c := range []struct {
		tag, typed string
		text       string
		value      float64
		echo       bool
		other      string
	}{
		{"en-US", "1750", "1750", 1750, plain, ""},
		{"en-US", "3.40", "3.40", 3.4, plain, ""},
		{"en-US", "+3.4", "3.4", 3.4, plain, ""},
		{"en-US", ".5", "0.5", 0.5, plain, ""},
		{"en-US", "5.", "5", 5, plain, ""},
		{"en-US", "-.5", "-0.5", -0.5, plain, ""},
		{"en-US", "- 5", "-5", -5, plain, ""},
		{"en-US", "−5", "-5", -5, plain, ""},
		{"en-US", "  5\t", "5", 5, plain, ""},

		// One mark with three digits behind it.
		{"en-US", "1,725", "1725", 1725, echo, "1.725"},
		{"en-US", "1.725", "1.725", 1.725, echo, "1725"},
		{"de-DE", "1,725", "1.725", 1.725, echo, "1725"},
		{"de-DE", "1.725", "1725", 1725, echo, "1.725"},
		{"en-US", "-1,725", "-1725", -1725, echo, "-1.725"},
		{"fr-FR", "1,725", "1.725", 1.725, echo, "1725"},
		{"fr-FR", "1.725", "1.725", 1.725, echo, "1725"},
		{"de-CH", "1,725", "1.725", 1.725, echo, "1725"},
		{"es-MX", "1,725", "1725", 1725, echo, "1.725"},
		{"en-IN", "123,456", "123456", 123456, echo, "123.456"},
		{"ar", "١٬٧٢٥", "1725", 1725, echo, "1.725"},
		{"ar", "١٫٧٢٥", "1.725", 1.725, echo, "1725"},
		{"ar-EG", "١٬٧٢٥", "1725", 1725, echo, "1.725"},
		{"ar", "1.725", "1.725", 1.725, echo, "1725"},
		{"ar", "1,725", "1725", 1725, echo, "1.725"},
		{"ar", "1,72", "1.72", 1.72, echo, ""},
		{"ar", "1,234.5", "1234.5", 1234.5, plain, ""},
		{"fa", "-1,234.5", "-1234.5", -1234.5, plain, ""},

		// A mark that can't be grouping.
		{"en-US", "1,72", "1.72", 1.72, echo, ""},
		{"en-US", "1,7255", "1.7255", 1.7255, echo, ""},
		{"en-US", "1234,567", "1234.567", 1234.567, echo, ""},
		{"en-US", "0,725", "0.725", 0.725, echo, ""},
		{"en-US", "0.725", "0.725", 0.725, plain, ""},
		{"en-US", "012,345", "012.345", 12.345, echo, ""},
		{"en-US", ",725", "0.725", 0.725, echo, ""},
		{"en-US", "1,", "1", 1, echo, ""},
		{"de-DE", "0.725", "0.725", 0.725, echo, ""},
		{"de-DE", "1,72", "1.72", 1.72, plain, ""},
		{"de-DE", "1.72", "1.72", 1.72, echo, ""},

		// Grouping.
		{"en-US", "1,234.5", "1234.5", 1234.5, plain, ""},
		{"de-DE", "1.234,5", "1234.5", 1234.5, plain, ""},
		{"en-US", "1,234.", "1234", 1234, plain, ""},
		{"en-US", "1,234,567", "1234567", 1234567, plain, ""},
		{"en-US", "1.234.567", "1234567", 1234567, echo, ""},
		{"de-DE", "1,234,567", "1234567", 1234567, echo, ""},
		{"hi-IN", "1,00,000", "100000", 100000, plain, ""},
		{"en-IN", "1,00,000.5", "100000.5", 100000.5, plain, ""},
		{"en-IN", "1,000,000", "1000000", 1000000, plain, ""},
		{"bn", "১,২৩,৪৫৬.৫", "123456.5", 123456.5, plain, ""},
		{"fr-FR", "1 234,5", "1234.5", 1234.5, plain, ""},
		{"fr-FR", "1\u00a0234", "1234", 1234, plain, ""},
		{"fr-FR", "1\u202f234", "1234", 1234, plain, ""},
		{"en-US", "1 234", "1234", 1234, echo, ""},
		{"en-US", "1 234.5", "1234.5", 1234.5, echo, ""},
		{"de-CH", "1’234.5", "1234.5", 1234.5, plain, ""},
		{"de-CH", "1'234'567", "1234567", 1234567, plain, ""},
		{"en-US", "1'234", "1234", 1234, echo, ""},
		{"fa", "\u200e−۱٬۲۳۴٫۵", "-1234.5", -1234.5, plain, ""},
		{"my", "၁,၂၃၄.၅", "1234.5", 1234.5, plain, ""},
		{"ar-EG", "١٬٢٣٤٫٥", "1234.5", 1234.5, echo, ""},

		// Fractions.
		{"en-US", "1/2", "1/2", 0.5, plain, ""},
		{"en-US", "3 1/2", "3-1/2", 3.5, plain, ""},
		{"en-US", "3-1/2", "3-1/2", 3.5, plain, ""},
		{"en-US", "3 - 1 / 2", "3-1/2", 3.5, plain, ""},
		{"en-US", "3–1/2", "3-1/2", 3.5, plain, ""},
		{"en-US", "3½", "3-1/2", 3.5, plain, ""},
		{"en-US", "3 ½", "3-1/2", 3.5, plain, ""},
		{"en-US", "½", "1/2", 0.5, plain, ""},
		{"en-US", "-3½", "-3-1/2", -3.5, plain, ""},
		{"en-US", "1⁄2", "1/2", 0.5, plain, ""},
		{"en-US", "3 1⁄2", "3-1/2", 3.5, plain, ""},
		{"en-US", "5⅞", "5-7/8", 5.875, plain, ""},
		{"hi-IN", "३ १/२", "3-1/2", 3.5, plain, ""},
	} {
		t.Run(c.tag+" "+c.typed, func(t *testing.T) {
			r, err := locale(c.tag).Number(c.typed)
			want := number.Reading{Text: c.text, Value: c.value, Echo: c.echo, Other: c.other}
			if err != nil || r != want {
				t.Errorf("got %+v, %v; want %+v", r, err, want)
			}
		})
	}
}

func TestNumberRefuses(t *testing.T) {
	for _, c := range []struct {
		tag, typed string
		want       number.Rule
	}{
		{"en-US", "", number.RuleEmpty},
		{"en-US", " \u00a0\u200e", number.RuleEmpty},
		{"en-US", "abc", number.RuleNoNumber},
		{"en-US", "5 in", number.RuleNoNumber},
		{"en-US", "-", number.RuleNoNumber},
		{"en-US", "+", number.RuleNoNumber},
		{"en-US", ".", number.RuleNoNumber},
		{"en-US", ",", number.RuleNoNumber},
		{"en-US", "/", number.RuleNoNumber},
		{"en-US", "-.", number.RuleNoNumber},
		{"en-US", "--5", number.RuleNoNumber},
		{"en-US", "+-5", number.RuleNoNumber},
		{"en-US", "5-", number.RuleNoNumber},
		{"en-US", "5-3", number.RuleNoNumber},
		{"en-US", "5+3", number.RuleNoNumber},
		{"en-US", "NaN", number.RuleNoNumber},
		{"en-US", "∞", number.RuleNoNumber},
		{"en-US", "\xff5", number.RuleNoNumber},
		{"en-US", "5\x00", number.RuleNoNumber},
		{"en-US", "1.2.3", number.RuleTwoMarks},
		{"de-DE", "1,2,3", number.RuleTwoMarks},
		{"en-US", "1..5", number.RuleTwoMarks},
		{"en-US", "0,123,456", number.RuleTwoMarks},
		{"en-US", "1,00,000", number.RuleTwoMarks},
		{"en-US", "1.234,5", number.RuleMarksMixed},
		{"de-DE", "1,234.5", number.RuleMarksMixed},
		{"fr-FR", "1 234.5", number.RuleMarksMixed},
		{"en-US", "1 234,5", number.RuleMarksMixed},
		{"en-US", "1,234 567", number.RuleMarksMixed},
		{"en-US", "1,234'567.8", number.RuleMarksMixed},
		{"en-US", "1,234.5.6", number.RuleMarksMixed},
		{"en-US", "1,234.5,678", number.RuleMarksMixed},
		{"en-US", "1,23.4", number.RuleGrouping},
		{"en-US", "0,123.4", number.RuleGrouping},
		{"en-US", "1 72", number.RuleGrouping},
		{"de-CH", "1'72", number.RuleGrouping},
		{"en-US", "1/2/3", number.RuleFraction},
		{"en-US", "1/", number.RuleFraction},
		{"en-US", "/2", number.RuleFraction},
		{"en-US", "1.5/2", number.RuleFraction},
		{"en-US", "1,5½", number.RuleFraction},
		{"en-US", "½½", number.RuleFraction},
		{"en-US", "½5", number.RuleFraction},
		{"en-US", "3 4/2", number.RuleFraction},
		{"fr-FR", "1 125/200", number.RuleFraction},
		{"en-US", "1/0", number.RuleDenominator},
		{"en-US", "3 1/0", number.RuleDenominator},
		{"en-US", "1e308", number.RuleExponent},
		{"en-US", "1E-5", number.RuleExponent},
		{"en-US", "1000000000000001", number.RuleTooLarge},
		{"en-US", strings.Repeat("9", 100), number.RuleTooLong},
		{"en-US", strings.Repeat("9", 400), number.RuleTooLong},
	} {
		t.Run(c.tag+" "+c.typed, func(t *testing.T) {
			r, err := locale(c.tag).Number(c.typed)
			if got := rule(t, err); got != c.want || r != (number.Reading{}) {
				t.Errorf("got %+v, rule %q; want rule %q", r, got, c.want)
			}
		})
	}
}

// No reading may be a thousand times another in silence.
func TestOneMarkBeforeThreeDigitsIsAlwaysEchoed(t *testing.T) {
	for _, tag := range tags {
		l := locale(tag)
		for _, m := range []string{".", ",", "٫", "٬"} {
			for _, head := range []string{"1", "12", "999"} {
				whole, fraction := head+"725", head+".725"
				r, err := l.Number(head + m + "725")
				readings := [2]string{r.Text, r.Other}
				if err != nil || !r.Echo || readings != [2]string{whole, fraction} && readings != [2]string{fraction, whole} {
					t.Errorf("%s: %s%s725 is %+v, %v; want both readings", tag, head, m, r, err)
				}
			}
		}
	}
}

func TestQuantity(t *testing.T) {
	length, power := unit.Length(0).Kind(), unit.Power(0).Kind()
	speed, warmth := unit.Speed(0).Kind(), unit.Temperature(0).Kind()
	pressure, density := unit.Pressure(0).Kind(), unit.Density(0).Kind()
	ratio, turns, angle := unit.Ratio(0).Kind(), unit.Turns(0).Kind(), unit.Angle(0).Kind()
	inch, foot, watt := unit.Shop.US, unit.Site.US, power.Data
	for _, c := range []struct {
		tag, typed string
		kind       *unit.Kind
		shown      unit.Unit
		text       string
		base       float64
		echo       bool
		other      string
	}{
		{"en-US", "3.4", length, inch, "3.4 in", 3.4 * 0.0254, plain, ""},
		{"en-US", "90mm", length, inch, "90 mm", 0.09, plain, ""},
		{"en-US", "90 MM", length, inch, "90 mm", 0.09, plain, ""},
		{"en-US", "2 M", length, inch, "2 m", 2, plain, ""},
		{"en-US", "3.4 in.", length, foot, "3.4 in", 3.4 * 0.0254, plain, ""},
		{"en-US", "3.4 Inches", length, foot, "3.4 in", 3.4 * 0.0254, plain, ""},
		{"en-US", "1,725mm", length, inch, "1725 mm", 1.725, echo, "1.725 mm"},
		{"de-DE", "1,725 m", length, inch, "1.725 m", 1.725, echo, "1725 m"},
		{"en-US", "1/2 kw", power, watt, "1/2 kW", 500, plain, ""},
		{"en-US", "500 w", power, unit.Shaft.US, "500 W", 500, plain, ""},
		{"en-US", "1750 1/min", speed, unit.Rotation.US, "1750 rpm", 1750, plain, ""},
		{"en-US", "1750 min-1", speed, unit.Rotation.US, "1750 rpm", 1750, plain, ""},
		{"en-US", "1,750 RPM", speed, unit.Rotation.US, "1750 rpm", 1750, echo, "1.750 rpm"},
		{"ar", "1,750 rpm", speed, unit.Rotation.US, "1750 rpm", 1750, echo, "1.750 rpm"},
		{"ar", "١٬٧٥٠ rpm", speed, unit.Rotation.US, "1750 rpm", 1750, echo, "1.750 rpm"},
		{"en-US", "32°F", warmth, unit.Warmth.SI, "32 F", 273.15, plain, ""},
		{"en-US", "0 c", warmth, unit.Warmth.US, "0 C", 273.15, plain, ""},
		{"es-ES", "0 ºC", warmth, unit.Warmth.US, "0 C", 273.15, plain, ""},
		{"en-US", "45°", angle, angle.Data, "45 deg", 0.78539816339744831, plain, ""}, // π/4
		{"en-US", "2 in wg", pressure, unit.AirPressure.SI, "2 inwg", 2 * 249.08891, plain, ""},
		{"en-US", "2 in. w.g.", pressure, unit.AirPressure.SI, "2 inwg", 2 * 249.08891, plain, ""},
		{"en-US", "1.2 kg/m³", density, unit.AirDensity.US, "1.2 kg/m3", 1.2, plain, ""},
		{"en-US", "2", ratio, unit.Share.US, "2 %", 0.02, plain, ""},
		{"en-US", "2%", ratio, unit.Factor.US, "2 %", 0.02, plain, ""},
		{"ar", "٢٪", ratio, unit.Factor.US, "2 %", 0.02, plain, ""},
		{"en-US", "0.85", ratio, unit.Factor.US, "0.85", 0.85, plain, ""},
		{"en-US", "2½", turns, unit.TurnCount.US, "2-1/2 turns", 2.5, plain, ""},
		{"es-MX", "2½ vueltas", turns, unit.TurnCount.US, "2-1/2 turns", 2.5, plain, ""},
		{"en-US", "8.5 pulg.", length, unit.Shop.SI, "8.5 in", 8.5 * 0.0254, plain, ""},
		{"es-MX", "5 pies 6 pulg", length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},

		// Feet and inches.
		{"en-US", "5'", length, inch, "5 ft", 5 * 0.3048, plain, ""},
		{"en-US", `6"`, length, foot, "6 in", 6 * 0.0254, plain, ""},
		{"en-US", "6''", length, foot, "6 in", 6 * 0.0254, plain, ""},
		{"en-US", `5' 6"`, length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},
		{"en-US", `5'6 1/2"`, length, inch, "5 ft 6-1/2 in", 66.5 * 0.0254, plain, ""},
		{"en-US", `5’ 6½”`, length, inch, "5 ft 6-1/2 in", 66.5 * 0.0254, plain, ""},
		{"en-US", "5′ 6″", length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},
		{"en-US", `5'-6 1/2"`, length, inch, "5 ft 6-1/2 in", 66.5 * 0.0254, plain, ""},
		{"en-US", "5 ft 6 in", length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},
		{"en-US", "5 ft. 6 in.", length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},
		{"en-US", "5 feet 6", length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},
		{"en-US", "5'6", length, inch, "5 ft 6 in", 66 * 0.0254, plain, ""},
		{"en-US", "-5'6\"", length, inch, "-5 ft 6 in", -66 * 0.0254, plain, ""},
		{"de-DE", "5 ft 6,5 in", length, inch, "5 ft 6.5 in", 66.5 * 0.0254, plain, ""},
		{"de-CH", "1'234", length, inch, "1234 in", 1234 * 0.0254, plain, ""},
		{"en-US", "1'234 ft", length, inch, "1234 ft", 1234 * 0.3048, echo, ""},
	} {
		t.Run(c.tag+" "+c.typed, func(t *testing.T) {
			r, err := locale(c.tag).Quantity(c.typed, c.kind, c.shown)
			if err != nil || r.Text != c.text || !near(r.Value, c.base) || r.Echo != c.echo || r.Other != c.other {
				t.Errorf("got %+v, %v; want %q, %v, %v, %q", r, err, c.text, c.base, c.echo, c.other)
			}
		})
	}
}

func TestQuantityRefuses(t *testing.T) {
	for _, c := range []struct {
		typed string
		rule  number.Rule
		text  string // what the error speaks of
	}{
		{"", number.RuleEmpty, ""},
		{"abc", number.RuleNoNumber, "abc"},
		{"in", number.RuleNoNumber, "in"},
		{"+", number.RuleNoNumber, "+"},
		{"- in", number.RuleNoNumber, "- in"},
		{"+-5", number.RuleNoNumber, "+-5"},
		{"5 cubits", number.RuleUnit, "cubits"},
		{"5 kM/h", number.RuleUnit, "kM/h"},
		{"5 psi", number.RuleWrongKind, "psi"},
		{"5 KW", number.RuleWrongKind, "KW"},
		{"5 min", number.RuleUnit, "min"},
		{"1e308", number.RuleExponent, "1e308"},
		{"1e308 in", number.RuleExponent, "1e308 in"},
		{"1.2.3 in", number.RuleTwoMarks, "1.2.3 in"},
		{"1.234,5 in", number.RuleMarksMixed, "1.234,5 in"},
		{"1/0 in", number.RuleDenominator, "1/0 in"},
		{`5' 14"`, number.RuleFeet, `5' 14"`},
		{`5' 234"`, number.RuleFeet, `5' 234"`},
		{`5'.5"`, number.RuleUnit, `'.5"`},
		{`5.5' 6"`, number.RuleUnit, `' 6"`},
		{`5' 1/0"`, number.RuleDenominator, `5' 1/0"`},
		{`5' 1.2.3"`, number.RuleTwoMarks, `5' 1.2.3"`},
		{"5 ft 6 mm", number.RuleUnit, "ft 6 mm"},
		{`5' 6.` + strings.Repeat("0", 60) + `"`, number.RuleTooLong, "5' 6.000000000000000…"},
		{strings.Repeat("9", 20) + " in", number.RuleTooLarge, strings.Repeat("9", 20) + " in"},
		{strings.Repeat("9", 400), number.RuleTooLong, strings.Repeat("9", 20) + "…"},
	} {
		t.Run(c.typed, func(t *testing.T) {
			r, err := locale("en-US").Quantity(c.typed, unit.Length(0).Kind(), unit.Shop.US)
			var e *number.Error
			if !errors.As(err, &e) || e.Rule != c.rule || e.Text != c.text || r != (number.Reading{}) {
				t.Errorf("got %+v, %v; want %q about %q", r, err, c.rule, c.text)
			}
		})
	}
}

func TestSpellingThatFitsTwoUnitsFitsNone(t *testing.T) {
	milli, mega := unit.Unit{Symbol: "mW", Size: 1e-3}, unit.Unit{Symbol: "MW", Size: 1e6}
	power := &unit.Kind{Name: "power", Data: milli, Units: []unit.Unit{milli, mega}}
	us := locale("en-US")
	for _, u := range power.Units {
		if r, err := us.Quantity("5 "+u.Symbol, power, u); err != nil || r.Value != 5*u.Size {
			t.Errorf("5 %s is %+v, %v", u.Symbol, r, err)
		}
	}
	if r, err := us.Quantity("5 mw", power, milli); rule(t, err) != number.RuleUnit {
		t.Errorf("5 mw is %+v, %v; want a refusal", r, err)
	}
}

func TestUnitThatStartsWithADigitNeedsASpace(t *testing.T) {
	r, err := locale("en-US").Quantity("17501/min", unit.Speed(0).Kind(), unit.Rotation.US)
	if rule(t, err) != number.RuleUnit {
		t.Errorf("17501/min is %+v, %v; want a refusal", r, err)
	}
}

func TestShownUnitOfAnotherKindIsRefused(t *testing.T) {
	r, err := locale("en-US").Quantity("5", unit.Length(0).Kind(), unit.Rotation.US)
	if rule(t, err) != number.RuleWrongKind {
		t.Errorf("5 rpm as a length is %+v, %v; want a refusal", r, err)
	}
}

func TestErrorsInEnglish(t *testing.T) {
	for _, c := range []struct {
		err  number.Error
		want string
	}{
		{number.Error{Rule: number.RuleUnit, Text: "cubits"}, `"cubits" is not a known unit`},
		{number.Error{Rule: number.RuleEmpty}, "nothing is written"},
		{number.Error{Rule: "above bound", Text: "5"}, `"5" above bound`}, // a rule of another package
	} {
		if got := c.err.Error(); got != c.want {
			t.Errorf("got %q; want %q", got, c.want)
		}
	}
}

// In each kind every spelling is read as its own unit, in capitals too.
func TestEverySpellingIsRead(t *testing.T) {
	us := locale("en-US")
	for _, k := range unit.Kinds() {
		for _, u := range k.Units {
			for _, s := range append([]string{u.Symbol, u.Label}, u.Also...) {
				if s == "" || s == "1" {
					continue
				}
				for _, typed := range []string{"2 " + s, "2 " + strings.ToUpper(s), "2 " + strings.ToLower(s)} {
					r, err := us.Quantity(typed, k, k.Units[len(k.Units)-1])
					if err != nil || r.Text != fmt.Sprintf("2 %s", u.Symbol) {
						t.Errorf("%s: %q is %q, %v; want %s", k.Name, typed, r.Text, err, u.Symbol)
					}
				}
			}
		}
	}
}
