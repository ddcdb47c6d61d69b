package unit

// Count is a number of things. What is counted is whole, and whoever takes a
// count checks that.
type Count float64

var counts = Kind{"count", one, []Unit{one}}

// Kind returns the kind of counts.
func (Count) Kind() *Kind { return &counts }

// Tally is how a count is written.
var Tally = Scale{one, one}
