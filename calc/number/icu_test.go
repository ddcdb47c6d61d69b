package number_test

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"roofside/calc/internal/published"
	"roofside/calc/number"
)

// An icuRow is a number as ICU writes it; the file says which ICU.
type icuRow struct {
	locale   string
	decimals bool // n counts decimals, not significant digits
	n        int
	number   float64
	plain    float64
	text     string
}

func (r icuRow) write(l *number.Locale) string {
	if r.decimals {
		return l.WriteFixed(r.number, r.n)
	}
	return l.Write(r.number, r.n)
}

func icuRows(t *testing.T) (rows []icuRow) {
	t.Helper()
	table, err := published.Rows("../../testdata/published/icu-numbers.csv", "locale", "count", "n", "number", "plain", "text")
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range table {
		r := icuRow{locale: row[0], decimals: row[1] == "decimals"}
		var errs [4]error
		r.n, errs[0] = strconv.Atoi(row[2])
		r.number, errs[1] = strconv.ParseFloat(row[3], 64)
		r.plain, errs[2] = strconv.ParseFloat(row[4], 64)
		r.text, errs[3] = strconv.Unquote(`"` + row[5] + `"`)
		for _, err := range errs {
			if err != nil {
				t.Fatalf("%v: %v", row, err)
			}
		}
		rows = append(rows, r)
	}
	return rows
}

// A difference turns what x/text writes into what ICU writes. x/text 0.44 has
// CLDR 32 of 2017, ICU in the file has CLDR 48.
type difference struct {
	why  string
	mend func(ours string, r icuRow) string
}

func replaced(why, ours, theirs string) difference {
	return difference{why, func(s string, _ icuRow) string { return strings.ReplaceAll(s, ours, theirs) }}
}

func writtenBy(why, tag string) difference {
	return difference{why, func(_ string, r icuRow) string { return r.write(locale(tag)) }}
}

// fourTogether leaves four digits without their grouping mark.
func fourTogether(mark string) difference {
	return difference{
		"CLDR's minimum of grouping digits is 2 here: 1234 stands without a mark, 12.345 with one; x/text does not know the rule",
		func(ours string, r icuRow) string {
			if size := abs(r.plain); 1000 <= size && size < 10000 {
				return strings.ReplaceAll(ours, mark, "")
			}
			return ours
		},
	}
}

var (
	narrowSpace = replaced("French groups with the narrow no-break space in CLDR 48, with the wide one in CLDR 32", "\u00a0", "\u202f")
	apostrophe  = replaced("Swiss groups are parted by the typewriter's apostrophe in CLDR 48, by ’ in CLDR 32", "’", "'")
	mathMinus   = replaced("Croatian has the mathematical minus in CLDR 48, the hyphen in CLDR 32", "-", "−")

	differences = map[string][]difference{
		"fr": {narrowSpace}, "fr-CH": {narrowSpace},
		"de-CH": {apostrophe}, "it-CH": {fourTogether("’"), apostrophe},
		"es-ES": {fourTogether(".")}, "it": {fourTogether(".")}, "sl": {fourTogether(".")},
		"pt-PT": {fourTogether("\u00a0")}, "pl": {fourTogether("\u00a0")}, "hu": {fourTogether("\u00a0")},
		"bg": {fourTogether("\u00a0")}, "et": {fourTogether("\u00a0")}, "lv": {fourTogether("\u00a0")},
		"hr":    {mathMinus},
		"ne":    {writtenBy("Nepali groups in twos above the thousands in CLDR 48, in threes in CLDR 32; Marathi has the same digits", "mr")},
		"ar":    {writtenBy("Arabic without a country has European digits in CLDR 48, its own in CLDR 32", "ar-u-nu-latn")},
		"ar-EG": {writtenBy("x/text's tables give Egypt European digits", "ar-u-nu-arab")},
	}
)

// Where ICU writes a number otherwise, the differences listed account for
// every character of it, and each of them is needed.
func TestNumbersAreWrittenAsICU(t *testing.T) {
	locales, needed := map[string]bool{}, map[string]int{}
	for _, r := range icuRows(t) {
		locales[r.locale] = true
		got := r.write(locale(r.locale))
		if own, err := locale(r.locale).Number(got); err != nil || own.Value != r.plain {
			t.Errorf("%s: %v is rounded to %v, %v; by ICU to %v", r.locale, r.number, own.Value, err, r.plain)
		}
		for _, d := range differences[r.locale] {
			mended := d.mend(got, r)
			if mended != got {
				needed[r.locale+d.why]++
			}
			got = mended
		}
		if got != r.text {
			t.Errorf("%s: %v to %d is %q, by ICU %q", r.locale, r.number, r.n, got, r.text)
		}
	}
	if len(locales) < 25 {
		t.Errorf("only %d locales", len(locales))
	}
	for tag, list := range differences {
		for _, d := range list {
			if needed[tag+d.why] == 0 {
				t.Errorf("%s: nothing differs so: %s", tag, d.why)
			}
		}
	}
}

// refused are the locales in which some number that ICU writes is not read.
var refused = map[string]string{"ne": "12,34,567 is not grouped as x/text has it; a refusal is no wrong number"}

// What ICU writes in a language is read there as the number it is, or refused;
// where a mark could be meant otherwise, both readings are offered.
func TestNumbersOfICUAreRead(t *testing.T) {
	var not []string
	for _, r := range icuRows(t) {
		got, err := locale(r.locale).Number(r.text)
		switch {
		case err != nil && refused[r.locale] == "":
			t.Errorf("%s: %q is refused: %v", r.locale, r.text, err)
		case err != nil:
			not = append(not, r.locale)
		case got.Value != r.plain:
			t.Errorf("%s: %q is read as %v; want %v", r.locale, r.text, got.Value, r.plain)
		}
	}
	for tag := range refused {
		if !slices.Contains(not, tag) {
			t.Errorf("%s: everything is read", tag)
		}
	}
}
