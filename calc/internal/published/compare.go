package published

import (
	"fmt"
	"math"
	"reflect"

	"roofside/calc/unit"
)

// In returns an input as a quantity. It panics when the case has none of that
// name or of another kind: a fault of the test, not of the library.
func In[Q unit.Quantity](c Case, name string) Q {
	v, ok := c.Inputs[name]
	if !ok || v.Word != "" {
		panic(fmt.Sprintf("case %s has no quantity %q", c.ID, name))
	}
	kind := Q(0).Kind()
	u, ok := kind.Unit(v.Unit)
	if !ok {
		panic(fmt.Sprintf("case %s: %q is no %s", c.ID, name, kind.Name))
	}
	return Q(u.Base(v.Number))
}

// Word returns an input that is a word; it panics as [In] does.
func Word(c Case, name string) string {
	v, ok := c.Inputs[name]
	if !ok || v.Word == "" {
		panic(fmt.Sprintf("case %s has no word %q", c.ID, name))
	}
	return v.Word
}

// Results are what an evaluation gives: quantities by name, bare numbers as
// float64.
type Results map[string]any

// Compare returns what is wrong with results: names missing or not asked for,
// kinds that differ, and values outside tolerance.
func Compare(c Case, got Results) []error {
	var wrong []error
	asked := map[string]bool{}
	for _, want := range c.Expected {
		asked[want.Name] = true
		g, ok := got[want.Name]
		if !ok {
			wrong = append(wrong, fmt.Errorf("%s: no result", want.Name))
			continue
		}
		x, err := in(g, want.Unit)
		if err != nil {
			wrong = append(wrong, fmt.Errorf("%s: %w", want.Name, err))
			continue
		}
		// A value typed in its unit may come back a bit away from it.
		const rounding = 1e-12
		allowed := want.Absolute + (want.Relative+rounding)*math.Abs(want.Number)
		if !(math.Abs(x-want.Number) <= allowed) {
			wrong = append(wrong, fmt.Errorf("%s: got %v %s, want %v ± %.3g", want.Name, x, want.Unit, want.Number, allowed))
		}
	}
	for name := range got {
		if !asked[name] {
			wrong = append(wrong, fmt.Errorf("%s: not asked for", name))
		}
	}
	return wrong
}

// in returns a result as a count of a unit.
func in(g any, symbol string) (float64, error) {
	if x, ok := g.(float64); ok {
		if symbol != "1" {
			return 0, fmt.Errorf("a bare number where %s is asked for", symbol)
		}
		return x, nil
	}
	q, ok := g.(interface{ Kind() *unit.Kind })
	if !ok {
		return 0, fmt.Errorf("%T is no quantity", g)
	}
	u, ok := q.Kind().Unit(symbol)
	if !ok {
		return 0, fmt.Errorf("a %s where %s is asked for", q.Kind().Name, symbol)
	}
	return u.Of(reflect.ValueOf(g).Float()), nil
}
