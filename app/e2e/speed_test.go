//go:build e2e && speed

package e2e

import "testing"

// Reported, not judged: a clock on a shared machine proves nothing. The budget
// is, at a processor four times slower, 16 ms of script at the median and 33 at
// the 95th percentile, and 60 ms from key to page.
func TestKeystrokes(t *testing.T) {
	for _, c := range []struct{ path, section, field, text string }{
		{"/drive/", "new", "new.fan-sheave", "123456789123456789123456789123"},
		{"/drive/", "target", "target.speed", "000000000000000000000000000000"},
		{"/airflow/", "reference", "target.airflow", "123456789123456789123456789123"},
		{"/belt/", "base", "new.center-distance", "123456789123456789123456789123"},
		{"/belt/", "new", "new.fan-sheave", "123456789123456789123456789123"},
	} {
		p := NewPhone(t)
		tab := p.Open(c.path + demo)
		tab.open(c.section)
		before := map[string]string{"target.speed": "712.", "new.center-distance": "15."}[c.field]
		if before == "" {
			before = "8."
		}
		tab.Type(c.field, before)
		tab.Slow(4)
		t.Log(c.path, c.field, tab.Strokes(c.field, c.text))
	}
}
