package record

import (
	"slices"
	"strconv"
	"strings"
)

// The lists of the record: a row's key is the list's name, its id and the name
// of the place, as in trial.k3.speed.
const (
	trialPrefix = "trial."
	wirePrefix  = "wire."
)

// rowOf returns the part of a key that names a row, such as trial.k3, and ""
// for any other key. An id is one to eight lower-case letters and digits.
func rowOf(key string) string {
	list, rest, _ := strings.Cut(key, ".")
	id, _, ok := strings.Cut(rest, ".")
	if !ok || !isID(id) || list+"." != trialPrefix && list+"." != wirePrefix {
		return ""
	}
	return list + "." + id
}

func isID(s string) bool {
	for _, c := range []byte(s) {
		if (c < 'a' || c > 'z') && (c < '0' || c > '9') {
			return false
		}
	}
	return 1 <= len(s) && len(s) <= 8
}

// startRow starts the row with a name. It reports false for one that can't be,
// that is there already, or that the list has no room for.
func (f *Fan) startRow(row string) bool {
	if id, ok := strings.CutPrefix(row, trialPrefix); ok {
		return f.addTrial(id) != nil
	}
	if id, ok := strings.CutPrefix(row, wirePrefix); ok {
		return f.addWire(id) != nil
	}
	return false
}

// removeRow takes a row out that Apply had started, and nothing of what is carried along.
func (f *Fan) removeRow(row string) {
	if id, ok := strings.CutPrefix(row, trialPrefix); ok {
		f.removeTrial(id)
	}
	if id, ok := strings.CutPrefix(row, wirePrefix); ok {
		f.removeWire(id)
	}
}

// full tells whether a row is one more than its list holds.
func (f *Fan) full(row string) bool {
	if id, ok := strings.CutPrefix(row, trialPrefix); ok {
		return f.Trial(id) == nil && len(f.Trials) >= mostTrials
	}
	id, ok := strings.CutPrefix(row, wirePrefix)
	return ok && f.Wire(id) == nil && len(f.Wires) >= MostWires
}

// place puts a row among others in the order of the ids: one that is shorter, or
// of the same length and alphabetically first, was given first.
func place[R any](rows []R, r R, id func(R) string) []R {
	i := len(rows)
	for i > 0 && (len(id(r)) < len(id(rows[i-1])) || len(id(r)) == len(id(rows[i-1])) && id(r) < id(rows[i-1])) {
		i--
	}
	return slices.Insert(slices.Clip(rows), i, r)
}

// nextID returns the id behind all others: a letter and a number.
func nextID[R any](rows []R, letter string, id func(R) string) string {
	n := 1
	for _, r := range rows {
		if k, err := strconv.Atoi(strings.TrimPrefix(id(r), letter)); err == nil && k >= n {
			n = k + 1
		}
	}
	return letter + strconv.Itoa(n)
}

// without returns the rows but one, in a list of its own.
func without[R comparable](rows []R, out R) []R {
	return slices.DeleteFunc(slices.Clone(rows), func(r R) bool { return r == out })
}

// bind binds the places of a new row to their facts.
func bind(list func(*lister)) {
	list(&lister{walk: &walk{yield: func(string, Place) bool { return true }}})
}
