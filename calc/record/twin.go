package record

import (
	"maps"
	"strings"
)

// Twin returns a fan of the same make as f, of which nothing has been read yet:
// plates, sheaves, opening and target as they stand, without what was measured,
// counted, seen or set at f, its trials, its wiring, its checks, its steps and its name.
func (f *Fan) Twin() *Fan {
	c := NewFan()
	texts := f.Texts()
	for k, p := range f.Places() {
		if ownOf(p) {
			delete(texts, k)
		}
	}
	maps.DeleteFunc(texts, func(k, _ string) bool { return strings.HasPrefix(k, trialPrefix) || wiring(k) })
	delete(texts, "name")
	delete(texts, "step")
	for _, k := range seen {
		delete(texts, "old."+k)
		delete(texts, "new."+k)
	}
	c.applyOwn(texts)
	return c
}

// seen is what somebody saw or set at one fan, and did not measure: above all, a
// rotation that is proven at one proves nothing of another.
var seen = [...]string{"belt-healthy", "tipped-up", "run-at", "leads", "rotation", "rotation-low", "rotation-leads", "overload-dial"}

// wiring tells whether a key is of the conduit that comes to one fan, of what is
// in it, or of the work done there.
func wiring(key string) bool {
	for _, prefix := range [...]string{wirePrefix, "raceway.", "box.", "circuit.", "check.", "handover."} {
		if strings.HasPrefix(key, prefix) {
			return true
		}
	}
	return false
}

// ownOf tells whether a place holds what is one fan's alone.
func ownOf(p Place) bool {
	m, ok := p.(Measure)
	if !ok {
		return false
	}
	if p.State() != Known {
		return true
	}
	return m.Basis() == Measured || m.Basis() == Counted
}
