package number

import (
	"strings"
	"testing"
	"unicode"

	"golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"
	"golang.org/x/text/unicode/norm"
)

// The reference is Unicode's own decomposition of its fraction signs.
func TestFractionSigns(t *testing.T) {
	found := 0
	for r := rune(0); r <= unicode.MaxRune; r++ {
		over, under, ok := strings.Cut(norm.NFKD.String(string(r)), "\u2044")
		if !ok || !all(over) || !all(under) {
			continue
		}
		found++
		if got, want := fold("3"+string(r)), "3 "+over+"/"+under; got != want {
			t.Errorf("3%c is folded to %q; want %q", r, got, want)
		}
	}
	if found != len(vulgar) {
		t.Errorf("Unicode has %d fraction signs, the table %d", found, len(vulgar))
	}
}

// The reference is x/text's table of numbering systems.
func TestDigitsOfEveryScript(t *testing.T) {
	for _, system := range strings.Fields(`adlm ahom arab arabext bali beng bhks brah cakm cham deva fullwide gujr guru
		hmng java kali khmr knda lana lanatham laoo latn lepc limb mathbold mathdbl mathmono mathsanb mathsans mlym modi
		mong mroo mtei mymr mymrshan mymrtlng newa nkoo olck orya osma saur shrd sind sinh sora sund takr talu tamldec
		telu thai tibt tirh vaii wara`) {
		tag := language.MustParse("en-u-nu-" + system)
		written := message.NewPrinter(tag).Sprint(number.Decimal(9876543210, number.NoSeparator()))
		if system != "latn" && written == "9876543210" {
			t.Errorf("x/text has no digits of %s", system)
		}
		if got := fold(written); got != "9876543210" {
			t.Errorf("%s: %s is folded to %q", system, written, got)
		}
	}
}

func TestFold(t *testing.T) {
	for typed, want := range map[string]string{
		"":                      "",
		" \t\n":                 "",
		"\u200f\u061c-\u206912": "-12",
		" 1\u00a0\u202f 2 ":     "1 2",
		"5′ 6″":                 `5' 6"`,
		"5’6’’":                 `5'6"`,
		"＋5":                    "+5",
		"''''":                  `""`,
		"1⁄2":                   "1/2",
		"\u22125\u20133":        "-5-3",
		"½5":                    "1/2 5",
		"１，２３４．５％":              "1,234.5%",
		"21 ˚C":                 "21 °C",
	} {
		if got := fold(typed); got != want {
			t.Errorf("fold(%q) = %q; want %q", typed, got, want)
		}
	}
}
