package number

import (
	"bytes"
	"math"
	"strings"
	"unicode/utf8"
)

// Numbers are written out from 10^plainLeast to below 10^(plainMost+1);
// beyond, zeros can't be counted at a glance, and a power of ten is written.
const (
	plainLeast = -6
	plainMost  = 12
)

// Write returns x rounded to a count of significant digits, zeros at the end
// included, as the locale has it. Zero is a bare digit. Below 0.000001 and
// from 10 000 000 000 000 up it writes a power of ten, as in 1.50×10⁻⁹. For
// an infinity or NaN it writes nothing, for no number would be true.
func (l *Locale) Write(x float64, digits int) string {
	if math.IsInf(x, 0) || math.IsNaN(x) {
		return ""
	}
	var d decimal
	d.set(x)
	if d.zero() {
		return string(l.digits[0])
	}
	n := min(max(digits, 1), mostDigits)
	d.round(n)
	if d.exp < plainLeast || d.exp > plainMost {
		return l.power(&d, x < 0, n)
	}
	return l.out(&d, x < 0, max(0, n-1-d.exp))
}

// mostFixed bounds the decimals of [Locale.WriteFixed].
const mostFixed = 20

// WriteFixed returns x rounded to a count of decimals as the locale has it. It
// rounds the decimal as written, half away from zero: 2.675 to 2.68, 0.125 to
// 0.13. What rounds to zero has no minus. Large and non-finite numbers are
// written as by [Locale.Write].
func (l *Locale) WriteFixed(x float64, decimals int) string {
	if math.IsInf(x, 0) || math.IsNaN(x) {
		return ""
	}
	decimals = min(max(decimals, 0), mostFixed)
	var d decimal
	d.set(x)
	d.round(d.exp + 1 + decimals)
	if d.exp > plainMost {
		return l.power(&d, x < 0, len(d.digits))
	}
	return l.out(&d, x < 0 && !d.zero(), decimals)
}

func (l *Locale) out(d *decimal, negative bool, decimals int) string {
	var store [64]byte
	return l.dress(d.append(store[:0], decimals), negative, true)
}

// power writes d as n digits and a power of ten. The exponent is in the raised
// European digits, which every font has.
func (l *Locale) power(d *decimal, negative bool, n int) string {
	exp := d.exp
	d.exp = 0
	var b strings.Builder
	b.WriteString(l.out(d, negative, n-1))
	b.WriteString("×")
	b.WriteRune(l.digits[1])
	b.WriteRune(l.digits[0])
	b.WriteString(raised(exp))
	return b.String()
}

func raised(n int) string {
	digits := []rune("⁰¹²³⁴⁵⁶⁷⁸⁹")
	if n < 0 {
		return "⁻" + raised(-n)
	}
	if n < 10 {
		return string(digits[n])
	}
	return raised(n/10) + string(digits[n%10])
}

// dress puts ASCII digits with at most one point into the locale's digits and
// marks.
func (l *Locale) dress(plain []byte, negative, grouped bool) string {
	whole := bytes.IndexByte(plain, '.')
	if whole < 0 {
		whole = len(plain)
	}
	grouped = grouped && l.primary > 0
	var store [64]byte
	b := store[:0]
	if negative {
		b = append(b, l.minus...)
	}
	for i, c := range plain {
		switch {
		case c == '.':
			b = append(b, l.decimal...)
		default:
			if grouped && i > 0 && l.groupStarts(whole-i) {
				b = append(b, l.group...)
			}
			b = utf8.AppendRune(b, l.digits[c-'0'])
		}
	}
	return string(b)
}

// groupStarts reports whether a group starts with the given count of digits
// left before the decimal mark.
func (l *Locale) groupStarts(left int) bool {
	return left == l.primary || left > l.primary && (left-l.primary)%l.secondary == 0
}
