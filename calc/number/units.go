package number

import (
	"strings"

	"roofside/calc/unit"
)

// A spelling is which spellings of a unit are taken for it.
type spelling int

const (
	strict spelling = iota // the symbol exactly, or one of Also
	loose                  // the label too, all in any case and with any full stops: in. w.g., R.P.M.
)

// find returns the unit of k that is spelled so. An exact spelling goes before
// one that differs by case, and one that fits two units fits none.
func find(k *unit.Kind, spelled string, s spelling) (unit.Unit, bool) {
	for _, u := range k.Units {
		if u.Symbol == spelled && spelled != one || s == loose && u.Label == spelled && spelled != "" {
			return u, true
		}
	}
	found := -1
	for i, u := range k.Units {
		if !also(u, spelled) && (s == strict || !caseless(u, spelled)) {
			continue
		}
		if found >= 0 {
			return unit.Unit{}, false
		}
		found = i
	}
	if found >= 0 {
		return k.Units[found], true
	}
	if s == loose && strings.Contains(spelled, ".") {
		return find(k, strings.ReplaceAll(spelled, ".", ""), loose)
	}
	return unit.Unit{}, false
}

// one is the symbol of the unit that is not written.
const one = "1"

func also(u unit.Unit, spelled string) bool {
	if spelled == "" {
		return false
	}
	for _, a := range u.Also {
		if strings.EqualFold(a, spelled) {
			return true
		}
	}
	return false
}

func caseless(u unit.Unit, spelled string) bool {
	return spelled != "" && spelled != one && (strings.EqualFold(u.Symbol, spelled) || strings.EqualFold(u.Label, spelled))
}

// unwritten returns the unit of k that a number alone counts.
func unwritten(k *unit.Kind) (unit.Unit, bool) {
	if k == unit.Turns(0).Kind() {
		return k.Units[0], true
	}
	return k.Unit(one)
}

// stranger returns the error for a spelling that no unit of k has.
func stranger(spelled string, s spelling) error {
	for _, k := range unit.Kinds() {
		if _, ok := find(k, spelled, s); ok {
			return &Error{RuleWrongKind, spelled}
		}
	}
	return &Error{RuleUnit, spelled}
}

// with returns the canonical text of a canonical number of u.
func with(number string, u unit.Unit) string {
	if u.Symbol == one {
		return number
	}
	return number + " " + u.Symbol
}
