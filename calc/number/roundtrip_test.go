package number_test

import (
	"fmt"
	"math/rand/v2"
	"regexp"
	"testing"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// canonicalNumbers are the forms of a canonical number, and each that a mark
// could make ambiguous.
func canonicalNumbers(rng *rand.Rand) []string {
	n := func(below int) int { return rng.IntN(below) }
	return []string{
		"0", "0.5", "-0.5", "007", "0.000", "1.725", "1725", "-12.345", "999.999", "0.725", "1000000", "3.40", "1/2", "3-1/2", "-3-1/2",
		fmt.Sprint(n(10)), fmt.Sprint(n(1e9)), fmt.Sprint(-n(1e6)),
		fmt.Sprintf("%d.%d", n(1000), n(10)), fmt.Sprintf("%d.%03d", n(2000), n(1000)), fmt.Sprintf("-%d.%06d", n(1e6), n(1e6)),
		fmt.Sprintf("%d/%d", n(64), 1+n(64)), fmt.Sprintf("%d-%d/%d", n(100), n(16), 16+n(48)), fmt.Sprintf("-%d-%d/%d", n(9), n(200), 200+n(99)),
	}
}

// What a person of the locale is shown is read back as the same text, echoed
// only where three digits follow the mark.
func TestLocalizedTextIsReadBack(t *testing.T) {
	for _, tag := range tags {
		t.Run(tag, func(t *testing.T) {
			l, rng := locale(tag), rand.New(rand.NewPCG(5, 6))
			for _, k := range unit.Kinds() {
				for _, u := range k.Units {
					for _, n := range canonicalNumbers(rng) {
						if u.Symbol == "1" {
							readBack(t, l, n, k, u)
							continue
						}
						readBack(t, l, n+" "+u.Symbol, k, k.Units[rng.IntN(len(k.Units))])
					}
				}
			}
			for range 20 {
				c := fmt.Sprintf("%d ft %d in", rng.IntN(100), rng.IntN(12))
				readBack(t, l, c, unit.Length(0).Kind(), unit.Shop.SI)
				c = fmt.Sprintf("-%d ft %d.%03d in", rng.IntN(100), rng.IntN(12), rng.IntN(1000))
				readBack(t, l, c, unit.Length(0).Kind(), unit.Shop.SI)
				c = fmt.Sprintf("%d ft %d-%d/16 in", rng.IntN(100), rng.IntN(12), rng.IntN(16))
				readBack(t, l, c, unit.Length(0).Kind(), unit.Shop.SI)
			}
		})
	}
}

var couldBeGrouped = regexp.MustCompile(`(^|[ -])[1-9]\d{0,2}\.\d{3}( |$)`)

func readBack(t *testing.T, l *number.Locale, canonical string, k *unit.Kind, shown unit.Unit) {
	t.Helper()
	base, same, err := number.ParseQuantity(canonical, k)
	if err != nil || same != canonical {
		t.Fatalf("%q is not canonical: %q, %v", canonical, same, err)
	}
	local := l.Localize(canonical)
	r, err := l.Quantity(local, k, shown)
	if err != nil || r.Text != canonical || r.Value != base || r.Echo != couldBeGrouped.MatchString(canonical) {
		t.Errorf("%q is shown as %q and read as %+v, %v; want %v", canonical, local, r, err, base)
	}
}

func TestLocalize(t *testing.T) {
	for _, c := range []struct{ tag, canonical, want string }{
		{"en-US", "1.725 in", "1.725 in"},
		{"de-DE", "1.725 in", "1,725 in"},
		{"de-DE", "1725 in", "1725 in"},
		{"de-DE", "1725.5", "1725,5"},
		{"fr-FR", "3-1/2 in", "3-1/2 in"},
		{"hi-IN", "3.40 in", "3.40 in"},
		{"bn", "3-1/2 in", "৩-১/২ in"},
		{"sv", "-40 F", "−40 °F"},
		{"en-US", "1200 m3/h", "1200 m³/h"},
		{"en-US", "45 deg", "45 °"},
		{"de-DE", "5 ft 6.5 in", "5 ft 6,5 in"},

		// Not canonical, so not touched.
		{"de-DE", "", ""},
		{"de-DE", "1,725", "1,725"},
		{"de-DE", "1.5in", "1.5in"},
		{"de-DE", "1.5 cubits", "1.5 cubits"},
		{"de-DE", "1.5 ", "1.5 "},
		{"de-DE", "1.5 1", "1.5 1"},
		{"de-DE", "5 ft 12.5 in", "5 ft 12.5 in"},
		{"de-DE", "5 ft -1.5 in", "5 ft -1.5 in"},
		{"de-DE", "1.5.2 in", "1.5.2 in"},
		{"bn", "3/0", "3/0"},
	} {
		if got := locale(c.tag).Localize(c.canonical); got != c.want {
			t.Errorf("%s: Localize(%q) = %q; want %q", c.tag, c.canonical, got, c.want)
		}
	}
}

// A value written as canonical text is the same to the digits asked for.
func TestCanonicalIsRead(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for _, k := range unit.Kinds() {
		for _, u := range k.Units {
			for range 50 {
				x := u.Base(2000 * (rng.Float64() - 0.5))
				text := number.Canonical(x, u, 15)
				base, same, err := number.ParseQuantity(text, k)
				slack := 1e-13 * (abs(x) + abs(u.Zero))
				if err != nil || same != text || abs(base-x) > slack {
					t.Errorf("%v in %s is %q, read as %v, %q, %v", x, u.Symbol, text, base, same, err)
				}
			}
		}
	}
}

func abs(x float64) float64 { return max(x, -x) }
