package number

import (
	"math"
	"strconv"

	"roofside/calc/unit"
)

// A decimal is the magnitude d₀.d₁d₂… × 10^exp of a finite float.
type decimal struct {
	digits []byte // ASCII
	exp    int
	store  [24]byte
}

// set makes d the shortest decimal that stands for |x|.
func (d *decimal) set(x float64) {
	b := strconv.AppendFloat(d.store[:0], math.Abs(x), 'e', -1, 64) // d.dde±xx
	e := 0
	for b[e] != 'e' {
		e++
	}
	exp, sign := 0, 1
	for _, c := range b[e+1:] {
		switch {
		case c == '-':
			sign = -1
		case isDigit(c):
			exp = exp*10 + int(c-'0')
		}
	}
	d.exp = sign * exp
	if e > 1 {
		copy(b[1:], b[2:e])
		e--
	}
	d.digits = b[:e]
}

// round keeps n digits, half away from zero; n may be 0 or negative.
func (d *decimal) round(n int) {
	if n >= len(d.digits) {
		return
	}
	if n < 0 || d.digits[max(n, 0)] < '5' {
		d.digits = d.digits[:max(n, 0)]
		return
	}
	for i := n - 1; i >= 0; i-- {
		if d.digits[i] < '9' {
			d.digits[i]++
			d.digits = d.digits[:i+1]
			return
		}
	}
	d.digits = append(d.digits[:0], '1') // 9.996 carries to 10.0
	d.exp++
}

// zero reports whether nothing but zeros is left.
func (d *decimal) zero() bool {
	for _, c := range d.digits {
		if c != '0' {
			return false
		}
	}
	return true
}

// trim drops zeros at the end.
func (d *decimal) trim() {
	for len(d.digits) > 0 && d.digits[len(d.digits)-1] == '0' {
		d.digits = d.digits[:len(d.digits)-1]
	}
	if len(d.digits) == 0 {
		d.exp = 0
	}
}

// append writes d with a point and the given count of decimals to b.
func (d *decimal) append(b []byte, decimals int) []byte {
	for p := max(d.exp, 0); p >= -decimals; p-- {
		if p == -1 {
			b = append(b, '.')
		}
		c := byte('0')
		if i := d.exp - p; i >= 0 && i < len(d.digits) {
			c = d.digits[i]
		}
		b = append(b, c)
	}
	return b
}

// mostDigits is how many significant digits the shortest decimal of a float64
// can have; more would be invented.
const mostDigits = 17

// Canonical writes a base value in a unit as canonical text, to at most the
// given count of significant digits and without trailing zeros. It writes
// nothing for what canonical text can't hold: infinities, NaN and counts
// beyond [Largest]. What is too small for it is 0.
func Canonical(x float64, u unit.Unit, digits int) string {
	n := u.Of(x)
	if !(math.Abs(n) <= Largest) {
		return ""
	}
	if math.Abs(n*u.Size) < noise*math.Abs(u.Zero) {
		n = 0
	}
	var d decimal
	d.set(n)
	d.round(min(max(digits, 1), mostDigits))
	d.round(d.exp + 1 + maxDecimals)
	d.trim()
	b := make([]byte, 0, maxText)
	if n < 0 && !d.zero() {
		b = append(b, '-')
	}
	return with(string(d.append(b, max(0, len(d.digits)-1-d.exp))), u)
}

// noise is what rounding leaves, in parts of its zero point, of a temperature
// that is zero: the difference of two equal temperatures.
const noise = 1e-12

// maxDecimals leaves room in canonical text for a sign, sixteen digits before
// the point and a unit.
const maxDecimals = 36
