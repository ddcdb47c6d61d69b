package limit_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"roofside/calc/limit"
)

func rule(t *testing.T, err error) limit.Rule {
	t.Helper()
	if err == nil {
		return ""
	}
	var e *limit.Error
	if !errors.As(err, &e) {
		t.Fatalf("%v is no limit.Error", err)
	}
	if e.Parameter != "x" {
		t.Errorf("parameter %q", e.Parameter)
	}
	return e.Rule
}

func TestChecks(t *testing.T) {
	for _, test := range []struct {
		x                             float64
		finite, positive, nonNegative limit.Rule
	}{
		{1, "", "", ""},
		{math.SmallestNonzeroFloat64, "", "", ""},
		{0, "", limit.NotPositive, ""},
		{math.Copysign(0, -1), "", limit.NotPositive, ""},
		{-1, "", limit.NotPositive, limit.Negative},
		{math.NaN(), limit.NotFinite, limit.NotFinite, limit.NotFinite},
		{math.Inf(1), limit.NotFinite, limit.NotFinite, limit.NotFinite},
		{math.Inf(-1), limit.NotFinite, limit.NotFinite, limit.NotFinite},
	} {
		if r := rule(t, limit.Finite("x", test.x)); r != test.finite {
			t.Errorf("Finite(%v): %q", test.x, r)
		}
		if r := rule(t, limit.Positive("x", test.x)); r != test.positive {
			t.Errorf("Positive(%v): %q", test.x, r)
		}
		if r := rule(t, limit.NonNegative("x", test.x)); r != test.nonNegative {
			t.Errorf("NonNegative(%v): %q", test.x, r)
		}
	}
}

func TestFirst(t *testing.T) {
	a, b := limit.Break("a", limit.Negative), limit.Break("b", limit.Negative)
	if got := limit.First(nil, a, b); got != a {
		t.Errorf("got %v", got)
	}
	if got := limit.First(nil, nil); got != nil {
		t.Errorf("got %v", got)
	}
}

func ExamplePositive() {
	fmt.Println(limit.Positive("driver", -3.0))
	// Output: driver: notPositive
}

func ExampleResult() {
	zero := 0.0
	fmt.Println(limit.Result(1 / zero))
	// Output: 0 overflow
}

// The inner formula calls belt length what the outer one has as center.
func ExampleRename() {
	fmt.Println(limit.Rename(limit.Break("pitchLength", limit.NotTabulated), "pitchLength", "center"))
	fmt.Println(limit.Rename(limit.Break("section", limit.NotTabulated), "pitchLength", "center"))
	fmt.Println(limit.Rename(nil, "pitchLength", "center"))
	// Output:
	// center: notTabulated
	// section: notTabulated
	// <nil>
}
