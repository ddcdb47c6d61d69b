package record

import (
	"strconv"

	"roofside/calc/unit"
)

// Step adds turns to a count, as a hand turns on. An unknown count starts from
// nothing; one that comes back to what the place can't hold, or below nothing,
// is unknown again or none.
func Step(e *Entry[unit.Turns], by unit.Turns) error {
	n := max(e.Value()+by, 0)
	if e.fact.Check(float64(n)) != nil {
		return e.Set("")
	}
	return e.SetAmount(strconv.FormatFloat(float64(n), 'f', -1, 64) + " " + e.Kind().Units[0].Symbol)
}
