package number

import (
	"strings"

	"roofside/calc/unit"
)

// inchesPerFoot is exact: the foot is a third of the yard of 36 inches.
const inchesPerFoot = 12

// feet is a length in feet and inches, taken apart but not yet read.
type feet struct {
	minus  string // "-" or ""
	whole  string // digits
	inches string // a number, perhaps
}

// splitFeet takes s apart at its foot and inch signs. It reports false when s
// has no inches behind the foot, or could be a number grouped by apostrophes.
func splitFeet(s string, k *unit.Kind, how spelling) (feet, bool) {
	if k != unit.Length(0).Kind() {
		return feet{}, false
	}
	f := feet{}
	if strings.HasPrefix(s, "-") {
		f.minus = "-"
	}
	rest := s[len(f.minus):]
	n := digits(rest)
	f.whole, rest = rest[:n], rest[n:]
	n = strings.IndexAny(rest, "0123456789")
	if f.whole == "" || n <= 0 || rest[n-1] == '.' || rest[:n] == "'" && digits(rest[n:]) == 3 {
		return feet{}, false
	}
	foot := strings.TrimPrefix(strings.TrimSuffix(rest[:n], " "), " ")
	if how == loose {
		foot = strings.TrimRight(foot, " -") // 5'-6" is usual on drawings
	}
	number, inch := cut(rest[n:])
	f.inches = strings.TrimSuffix(number, " ")
	return f, isFoot(foot, how) && (isInch(inch, how) || inch == "" && how == loose)
}

func isFoot(spelled string, how spelling) bool {
	u, ok := find(unit.Length(0).Kind(), spelled, how)
	return ok && u.Symbol == "ft"
}

func isInch(spelled string, how spelling) bool {
	u, ok := find(unit.Length(0).Kind(), spelled, how)
	return ok && u.Symbol == "in"
}

// parse reads f, whose inches have to be canonical; text is all of it.
func (f feet) parse(text string) (base float64, canonical string, err error) {
	if n := scan(f.inches); n < len(f.inches) || n == 0 {
		return 0, "", &Error{misread(f.inches[n:]), text}
	}
	w, rule := value(f.whole)
	if rule != "" {
		return 0, "", &Error{rule, text}
	}
	i, rule := value(f.inches)
	if rule != "" {
		return 0, "", &Error{rule, text}
	}
	if i >= inchesPerFoot {
		return 0, "", &Error{RuleFeet, text}
	}
	canonical = f.minus + f.whole + " ft " + f.inches + " in"
	if len(canonical) > maxText {
		return 0, "", &Error{RuleTooLong, clip(text)}
	}
	x := w*inchesPerFoot + i
	if f.minus != "" && x != 0 {
		x = -x
	}
	return float64(unit.Length(x) * unit.Inch), canonical, nil
}
