package sheet_test

import (
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// widths are bands that a value is given, one wider than the other.
var widths = []string{"0 %", "1 %", "4 %", "15 %", "60 %", "100 %", "300 %"}

// Less known is never surer: no verdict is within at a wider band that is not at a
// narrower one of the same value, for what is ordered alike. JCGM 106:2012: the wider
// the interval of a value, the less is accepted.
func TestLessKnownIsNeverSurer(t *testing.T) {
	tried := 0
	for i, c := range corpus(t) {
		if !sampled(i, 12) {
			continue
		}
		f := c.open(t)
		for key, p := range f.Places() {
			m, ok := p.(record.Measure)
			if !ok || p.State() != record.Known {
				continue
			}
			text, amount := p.Text(), m.Amount()
			var was map[string]sheet.Verdict
			var moved sheet.Move
			for _, w := range widths {
				if strings.HasSuffix(amount, "%") || p.Set(amount+"; within "+w) != nil {
					break
				}
				now, move := standing(f), order(f)
				if was != nil && move.Do == moved.Do && move.To == moved.To {
					for name, v := range now {
						if before, has := was[name]; has && v.Level == sheet.Within && before.Level != sheet.Within {
							t.Errorf("%s: %s is within at %s = %s within %s, and %v (%s) at less", c.id, name, key, amount, w, before.Level, before.Rule)
						}
						tried++
					}
				}
				was, moved = now, move
			}
			p.Set(text)
		}
	}
	t.Logf("%d verdicts compared", tried)
}
