package number

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"
)

// A Locale is how numbers look in a language and region. It is made by [For]
// and never changes.
type Locale struct {
	decimal, group string   // marks as written
	minus          string   // what stands before a negative number
	digits         [10]rune // from zero to nine
	primary        int      // size of the group next to the decimal mark; 0 for no grouping
	secondary      int      // size of the groups before it

	decimalMark, groupMark rune // marks as [fold] leaves them; groupMark 0 for no grouping

	european *Locale // how numbers typed in European digits look, where the language has its own
}

// For returns the locale of a language tag. Marks, digits and groups are taken
// from numbers formatted by golang.org/x/text, so that they are those of CLDR.
func For(tag language.Tag) *Locale {
	p := message.NewPrinter(tag)
	format := func(x float64, opts ...number.Option) string {
		return p.Sprint(number.Decimal(x, opts...))
	}
	l := &Locale{}
	for i, r := range []rune(format(9876543210, number.NoSeparator())) {
		l.digits[9-i] = r
	}
	half := format(0.5)
	l.decimal = strings.TrimFunc(half, unicode.IsDigit)
	l.decimalMark = mark(l.decimal)
	negative := format(-1)
	l.minus = negative[:strings.IndexRune(negative, l.digits[1])]
	l.deriveGroups(format(11111111111))
	if l.digits[0] != '0' {
		if t, err := tag.SetTypeForKey("nu", "latn"); err == nil {
			l.european = For(t)
		}
	}
	return l
}

// typing returns the locale whose marks go with the digits of a text: in Arabic
// 1,750 has a European comma, which groups, where ١٬٧٥٠ has an Arabic one.
func (l *Locale) typing(typed string) *Locale {
	own := func(r rune) bool { return r > unicode.MaxASCII && unicode.IsDigit(r) }
	if l.european == nil || strings.ContainsFunc(typed, own) {
		return l
	}
	return l.european
}

// deriveGroups takes the grouping mark and the sizes of groups from a number
// long enough to have three groups.
func (l *Locale) deriveGroups(long string) {
	notDigit := func(r rune) bool { return !unicode.IsDigit(r) }
	groups := strings.FieldsFunc(long, notDigit)
	if len(groups) < 3 {
		return
	}
	at := strings.IndexFunc(long, notDigit)
	l.group = long[at : at+strings.IndexFunc(long[at:], unicode.IsDigit)]
	l.groupMark = mark(l.group)
	l.primary = utf8.RuneCountInString(groups[len(groups)-1])
	l.secondary = utf8.RuneCountInString(groups[len(groups)-2])
}

// mark returns a mark as [fold] leaves it between digits.
func mark(written string) rune {
	r, _ := utf8.DecodeRuneInString(fold("0" + written + "0")[1:])
	return r
}

// DecimalMark returns the mark that l writes decimals with.
func (l *Locale) DecimalMark() rune { return l.decimalMark }
