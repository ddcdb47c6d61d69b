package record

import (
	"roofside/calc/number"
	"roofside/calc/unit"
)

// Step adds to a count of turns or of things. An unknown count starts from
// nothing; one that comes back to what the place can't hold, or below nothing,
// is unknown again or none.
func Step[Q unit.Quantity](e *Entry[Q], by Q) error {
	n := max(e.Value()+by, 0)
	if e.fact.Check(float64(n)) != nil {
		return e.Set("")
	}
	return e.SetAmount(number.Canonical(float64(n), e.Kind().Units[0], 12))
}
