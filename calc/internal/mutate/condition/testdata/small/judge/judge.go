// Package judge has conditions that its tests hold, and some that they don't: the
// tests of the tool know which.
package judge

// A Level is a plain order.
type Level int

// Held is tried on every side of its limits.
func Held(x, most float64) string {
	switch {
	case x < 0:
		return "refused"
	case x <= most && most > 0:
		return "within"
	}
	return "above"
}

// Loose is never tried at its limit, nor with b false.
func Loose(x Level, b bool) bool {
	return x >= 3 && b
}

// Either is tried with neither and with both: exchanging || is not noticed, nor is
// dropping one.
func Either(a, b bool) bool { return a || b }

// Unasked is called by no test.
func Unasked(s []int) bool {
	if len(s) == 0 {
		return true
	}
	return false
}

// Larger gives the same whatever is done between equals.
func Larger(x, y int) int {
	if x > y {
		return x
	}
	return y
}

// Count does not end in time where nothing holds it at n; c below 0 is not tried.
func Count(n int) (c int) {
	for c != n && c >= 0 {
		c++
	}
	return c
}

// Abroad is tried by another package alone.
func Abroad[Q ~int | ~float64](q Q) bool {
	if !(q < 5) { // a comment holds && and ||
		return false
	}
	return true
}

const least = 3 < 4 // a constant has no tests

var table = [...]bool{least, len("a") == 1}

// Of asks a table that is filled before any test.
func Of(i int) bool { return table[i] }

type word bool

// Named is of a type of its own, which a plain bool can't stand for.
func Named(x, y int) word { return x < y }
