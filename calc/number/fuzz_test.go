package number_test

import (
	"math"
	"testing"

	"roofside/calc/number"
	"roofside/calc/unit"
)

var locales = func() (all []*number.Locale) {
	for _, tag := range tags {
		all = append(all, locale(tag))
	}
	return all
}()

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

var typed = []string{"", "abc", "-", "+", ".", "1.2.3", "1,725", "1.725", "1,72", "0,725", "1.234,5", "1,00,000", "1 234,5",
	"1’234.5", "3 1/2", "3-1/2", "3½", "⅟2", "1/0", "1e308", "\u200e−۱٬۲۳۴٫۵", "၁,၂၃၄.၅", "999999999999999999999"}

func FuzzNumber(f *testing.F) {
	for i, s := range typed {
		f.Add(s, uint8(i))
	}
	f.Fuzz(func(t *testing.T, typed string, i uint8) {
		l := locales[int(i)%len(locales)]
		r, err := l.Number(typed)
		if err != nil {
			rule(t, err)
			return
		}
		x, err := number.Parse(r.Text)
		if err != nil || x != r.Value || !finite(x) {
			t.Fatalf("%q is %+v, parsed as %v, %v", typed, r, x, err)
		}
		if r.Other != "" {
			other, err := number.Parse(r.Other)
			ratio := max(math.Abs(other/x), math.Abs(x/other))
			if err != nil || !r.Echo || math.Abs(ratio-1000) > 1e-9 {
				t.Fatalf("%q is %+v; the other reading is %v, %v", typed, r, other, err)
			}
		}
		local := l.Localize(r.Text)
		if again, err := l.Number(local); err != nil || again.Text != r.Text || again.Value != r.Value {
			t.Fatalf("%q is %q, shown as %q and read as %+v, %v", typed, r.Text, local, again, err)
		}
	})
}

func FuzzQuantity(f *testing.F) {
	for i, s := range append(typed, `5' 6"`, `5'6 1/2"`, "5 ft. 6 in.", "1'234", "90mm", "2 in. w.g.", "1 1/min", "5°C", "2 ٪", "1e3 in") {
		f.Add(s, uint8(i), uint8(i/3), uint8(0))
		f.Add(s, uint8(i), uint8(0), uint8(2))
	}
	f.Fuzz(func(t *testing.T, typed string, i, j, n uint8) {
		l, k := locales[int(i)%len(locales)], unit.Kinds()[int(j)%len(unit.Kinds())]
		shown := k.Units[int(n)%len(k.Units)]
		r, err := l.Quantity(typed, k, shown)
		if err != nil {
			rule(t, err)
			return
		}
		base, same, err := number.ParseQuantity(r.Text, k)
		if err != nil || same != r.Text || base != r.Value || !finite(base) {
			t.Fatalf("%q is %+v, parsed as %v, %q, %v", typed, r, base, same, err)
		}
		if r.Other != "" {
			if _, same, err := number.ParseQuantity(r.Other, k); err != nil || same != r.Other || !r.Echo {
				t.Fatalf("%q is %+v; the other reading is %q, %v", typed, r, same, err)
			}
		}
		local := l.Localize(r.Text)
		if again, err := l.Quantity(local, k, shown); err != nil || again.Text != r.Text || again.Value != r.Value {
			t.Fatalf("%q is %q, shown as %q and read as %+v, %v", typed, r.Text, local, again, err)
		}
	})
}

func FuzzParseQuantity(f *testing.F) {
	for i, s := range []string{"", "-", "3.4in", "3-1/2 in", "5 ft 6-1/2 in", `5'6"`, "1750 1/min", "2 %", "0.85", "-0", "1e308 in", "3-4/2 in", "1/0 in", "-40 °F"} {
		f.Add(s, uint8(i))
		f.Add(s, uint8(0))
	}
	f.Fuzz(func(t *testing.T, text string, j uint8) {
		k := unit.Kinds()[int(j)%len(unit.Kinds())]
		base, canonical, err := number.ParseQuantity(text, k)
		if err != nil {
			rule(t, err)
			return
		}
		again, same, err := number.ParseQuantity(canonical, k)
		if err != nil || same != canonical || again != base || !finite(base) || len(canonical) > 64 {
			t.Fatalf("%q is %v, %q, then %v, %q, %v", text, base, canonical, again, same, err)
		}
		n, symbol := number.Split(canonical)
		if whole := n + " " + symbol; symbol != "ft" && symbol != "" && whole != canonical {
			t.Fatalf("%q is split into %q and %q", canonical, n, symbol)
		}
	})
}
