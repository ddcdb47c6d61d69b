package raceway

import (
	"roofside/calc/limit"
)

// A TradeSize names a raceway's size in inches; it is no dimension.
type TradeSize string

// Trade sizes whose areas are tabulated here.
const (
	Size3by8  TradeSize = "3/8"
	Size1by2  TradeSize = "1/2"
	Size3by4  TradeSize = "3/4"
	Size1     TradeSize = "1"
	Size1and4 TradeSize = "1-1/4"
	Size1and2 TradeSize = "1-1/2"
	Size2     TradeSize = "2"
)

// TradeSizes returns the trade sizes whose areas are tabulated, smallest first.
func TradeSizes() []TradeSize {
	return []TradeSize{Size3by8, Size1by2, Size3by4, Size1, Size1and4, Size1and2, Size2}
}

var sizes = [...]TradeSize{Size3by8, Size1by2, Size3by4, Size1, Size1and4, Size1and2, Size2}

// rank returns the place of s among the trade sizes, -1 for none of them.
func (s TradeSize) rank() int {
	for i := range sizes {
		if sizes[i] == s {
			return i
		}
	}
	return -1
}

type designation struct {
	size       TradeSize
	designator int
}

var designations = table("designator", "size,designator", func(r *record) designation {
	return designation{TradeSize(r.text("size")), r.whole("designator")}
})

// Designator returns the metric designator of a trade size, 3/8 to 6: another
// name of the same raceway, no dimension. Errors: no such trade size.
//
// Method: raceway.designator.
func Designator(size TradeSize) (int, error) {
	for _, d := range designations() {
		if d.size == size {
			return d.designator, nil
		}
	}
	return 0, limit.Break("size", limit.NotTabulated)
}

// SizeOf returns the trade size of a metric designator. Errors: no such
// designator.
//
// Method: raceway.designator.
func SizeOf(designator int) (TradeSize, error) {
	for _, d := range designations() {
		if d.designator == designator {
			return d.size, nil
		}
	}
	return "", limit.Break("designator", limit.NotTabulated)
}
