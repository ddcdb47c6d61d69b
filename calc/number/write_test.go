package number_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/text/language"
	"golang.org/x/text/language/display"
	"golang.org/x/text/message"
	xnumber "golang.org/x/text/number"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// tags cover every way in which CLDR's languages differ in marks, digits,
// groups and minus signs.
var tags = []string{
	"en-US", "en-GB", "en-IN", "en-ZA", "en-US-u-va-posix", "es-ES", "es-MX", "es-US", "es-CR", "pt-BR", "pt-PT",
	"de-DE", "de-CH", "de-AT", "fr-FR", "fr-CH", "fr-CA", "it-IT", "nl", "sv", "fi", "pl", "ru", "uk", "tr", "el",
	"he", "ar", "ar-EG", "ar-LY", "ar-u-nu-arab", "fa", "ur", "ckb", "ks", "hi", "mr", "bn", "ne", "ta", "my", "th",
	"dz", "ja", "zh", "ko", "vi", "km", "sl", "eu", "gsw", "wae", "ccp",
}

func TestWrite(t *testing.T) {
	for _, c := range []struct {
		tag    string
		x      float64
		digits int
		want   string
	}{
		{"en-US", 691.860465, 4, "691.9"},
		{"en-US", 1750, 4, "1,750"},
		{"en-US", 1750, 6, "1,750.00"},
		{"en-US", 9.996, 3, "10.0"},
		{"en-US", 99.96, 3, "100"},
		{"en-US", 999.6, 3, "1,000"},
		{"en-US", 2.675, 3, "2.68"},
		{"en-US", 0.125, 2, "0.13"},
		{"en-US", -0.125, 2, "-0.13"},
		{"en-US", 0, 4, "0"},
		{"en-US", math.Copysign(0, -1), 4, "0"},
		{"en-US", 123456, 2, "120,000"},
		{"en-US", 123, 0, "100"},
		{"en-US", 0.5, 1000, "0.50000000000000000"}, // 17 digits
		{"en-US", 0.000001, 1, "0.000001"},
		{"en-US", 0.00000099, 2, "9.9×10⁻⁷"},
		{"en-US", 0.00000099, 1, "0.000001"},
		{"en-US", 1.5e-9, 3, "1.50×10⁻⁹"},
		{"en-US", -1e300, 2, "-1.0×10³⁰⁰"},
		{"en-US", 5e12, 1, "5,000,000,000,000"},
		{"en-US", 9.9e12, 1, "1×10¹³"},
		{"en-US", math.MaxFloat64, 3, "1.80×10³⁰⁸"},
		{"en-US", 5e-324, 1, "5×10⁻³²⁴"},
		{"en-US", math.Inf(-1), 3, ""},
		{"en-US", math.NaN(), 3, ""},
		{"de-DE", 1234.5, 5, "1.234,5"},
		{"de-CH", 1234.5, 5, "1’234.5"},
		{"fr-FR", 1234.5, 5, "1\u00a0234,5"},
		{"sv", -1.5, 2, "−1,5"},
		{"hi-IN", 1234567, 7, "12,34,567"},
		{"bn", 1234567.5, 8, "১২,৩৪,৫৬৭.৫"},
		{"fa", 1234.5, 5, "۱٬۲۳۴٫۵"},
		{"de-DE", 1.5e-9, 2, "1,5×10⁻⁹"},
	} {
		t.Run(c.tag+" "+c.want, func(t *testing.T) {
			if got := locale(c.tag).Write(c.x, c.digits); got != c.want {
				t.Errorf("Write(%v, %d) = %q; want %q", c.x, c.digits, got, c.want)
			}
		})
	}
}

func TestWriteFixed(t *testing.T) {
	for _, c := range []struct {
		tag      string
		x        float64
		decimals int
		want     string
	}{
		{"en-US", 2.675, 2, "2.68"},
		{"en-US", 0.125, 2, "0.13"},
		{"en-US", -0.125, 2, "-0.13"},
		{"en-US", 1.005, 2, "1.01"},
		{"en-US", 0.5, 0, "1"},
		{"en-US", 0.49, 0, "0"},
		{"en-US", 1.5, 0, "2"},
		{"en-US", 2.5, 0, "3"},
		{"en-US", 0.05, 1, "0.1"},
		{"en-US", 0.04, 1, "0.0"},
		{"en-US", 9.99, 1, "10.0"},
		{"en-US", -0.001, 2, "0.00"},
		{"en-US", math.Copysign(0, -1), 1, "0.0"},
		{"en-US", 5e-324, 2, "0.00"},
		{"en-US", 1234.5, -3, "1,235"},
		{"en-US", 1e12, 2, "1,000,000,000,000.00"},
		{"en-US", 1.25e13, 2, "1.25×10¹³"},
		{"en-US", 0.5, 1000, "0.50000000000000000000"}, // 20 decimals
		{"en-US", math.Inf(1), 2, ""},
		{"en-US", math.NaN(), 2, ""},
		{"de-DE", 1234.5, 2, "1.234,50"},
	} {
		t.Run(c.tag+" "+c.want, func(t *testing.T) {
			if got := locale(c.tag).WriteFixed(c.x, c.decimals); got != c.want {
				t.Errorf("WriteFixed(%v, %d) = %q; want %q", c.x, c.decimals, got, c.want)
			}
		})
	}
}

// The reference is x/text, given a number that strconv has rounded. A float
// drawn at random is no tie, so the two ways to round ties don't matter.
func TestWriteAgreesWithText(t *testing.T) {
	for _, tag := range tags {
		t.Run(tag, func(t *testing.T) {
			l, p := locale(tag), message.NewPrinter(language.MustParse(tag))
			rng := rand.New(rand.NewPCG(1, 2))
			for range 300 {
				x := math.Pow(10, -6+18*rng.Float64())
				if rng.IntN(3) == 0 {
					x = -x
				}
				n := 1 + rng.IntN(12)
				mantissa, power, _ := strings.Cut(strconv.FormatFloat(x, 'e', n-1, 64), "e")
				e, err := strconv.Atoi(power)
				if err != nil {
					t.Fatal(err)
				}
				rounded, err := strconv.ParseFloat(mantissa+"e"+power, 64)
				if err != nil {
					t.Fatal(err)
				}
				want := p.Sprint(xnumber.Decimal(rounded, xnumber.Scale(max(0, n-1-e))))
				got := l.Write(x, n)
				if got != want {
					t.Errorf("Write(%v, %d) = %q; want %q", x, n, got, want)
				}
				if back, err := l.Number(got); err != nil || back.Value != rounded {
					t.Errorf("%q is read as %+v, %v; want %v", got, back, err, rounded)
				}
			}
		})
	}
}

// Any tag makes a locale, and one that writes as x/text does.
func TestEveryLanguage(t *testing.T) {
	all := display.Supported.Tags()
	for _, s := range []string{"und", "zz", "en-u-nu-roman", "zh-u-nu-hanidec", "ta-u-nu-taml", "en-u-nu-latn", "art-x-home"} {
		all = append(all, language.Make(s))
	}
	for _, tag := range all {
		l, p := number.For(tag), message.NewPrinter(tag)
		want := p.Sprint(xnumber.Decimal(-1234567.25, xnumber.Scale(2)))
		if got := l.Write(-1234567.25, 9); got != want {
			t.Errorf("%s: Write is %q; want %q", tag, got, want)
		}
		if r, err := l.Number(want); err != nil || r.Value != -1234567.25 || r.Echo {
			t.Errorf("%s: %q is read as %+v, %v", tag, want, r, err)
		}
	}
}

func TestWriteFixedAgreesWithText(t *testing.T) {
	for _, tag := range tags {
		l, p := locale(tag), message.NewPrinter(language.MustParse(tag))
		rng := rand.New(rand.NewPCG(3, 4))
		for range 100 {
			x, decimals := math.Pow(10, -2+12*rng.Float64()), rng.IntN(5)
			want := p.Sprint(xnumber.Decimal(x, xnumber.Scale(decimals)))
			if got := l.WriteFixed(x, decimals); got != want {
				t.Errorf("%s: WriteFixed(%v, %d) = %q; want %q", tag, x, decimals, got, want)
			}
		}
	}
}

func BenchmarkFor(b *testing.B) {
	tag := language.MustParse("hi-IN")
	for b.Loop() {
		number.For(tag)
	}
}

func BenchmarkWrite(b *testing.B) {
	l := locale("hi-IN")
	for b.Loop() {
		l.Write(1234567.891, 9)
	}
}

func BenchmarkQuantity(b *testing.B) {
	l, k := locale("de-DE"), unit.Length(0).Kind()
	for b.Loop() {
		if _, err := l.Quantity("1.234,5 mm", k, unit.Shop.US); err != nil {
			b.Fatal(err)
		}
	}
}
