package check

import (
	"maps"
	"slices"
	"testing"
	"time"
)

// A Call is one answer of a formula; its error, or none.
type Call = func() error

var sink error // so that no call is optimized away

// Allocations reports calls that fail or that allocate more often than most.
func Allocations(t *testing.T, most float64, calls map[string]Call) {
	t.Helper()
	for name, call := range calls {
		if err := call(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if n := testing.AllocsPerRun(100, func() { sink = call() }); n > most {
			t.Errorf("%s allocates %v times", name, n)
		}
	}
}

// Speed measures each call and reports those that take longer than most.
func Speed(b *testing.B, most time.Duration, calls map[string]Call) {
	for _, name := range slices.Sorted(maps.Keys(calls)) {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sink = calls[name]()
			}
			if each := b.Elapsed() / time.Duration(b.N); each > most {
				b.Errorf("takes %v, more than %v", each, most)
			}
		})
	}
}
