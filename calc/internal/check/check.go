// Package check holds what the tests of formulas say again and again: that a
// result is near a figure, that a call gives a result, that it refuses an input
// by a rule.
package check

import (
	"errors"
	"math"
	"testing"

	"roofside/calc/limit"
)

// Near reports a quantity further than slack from the wanted one, in parts of
// the wanted one.
func Near[Q ~float64](t *testing.T, what string, got, want Q, slack float64) {
	t.Helper()
	Within(t, what, got, want, Q(slack*math.Max(math.Abs(float64(want)), 1e-12)))
}

// Within reports a quantity further than slack from the wanted one.
func Within[Q ~float64](t *testing.T, what string, got, want, slack Q) {
	t.Helper()
	if !(math.Abs(float64(got-want)) <= float64(slack)) {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

// Value returns a function that passes a result on and ends the test at an
// error, so that a formula can be called inside an expression.
func Value[Q any](t *testing.T) func(Q, error) Q {
	return func(q Q, err error) Q {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
}

// Broken reports an error that is not of this parameter and rule.
func Broken(t *testing.T, name string, err error, parameter string, rule limit.Rule) {
	t.Helper()
	var e *limit.Error
	if !errors.As(err, &e) || e.Parameter != parameter || e.Rule != rule {
		t.Errorf("%s: got %v, want %s: %s", name, err, parameter, rule)
	}
}
