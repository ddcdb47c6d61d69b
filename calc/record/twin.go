package record

import "strings"

// Twin returns a fan of the same make as f, of which nothing has been read yet:
// plates, sheaves, opening and target as they stand, without what was measured
// or counted at f, its trials, its wiring, its steps and its name.
func (f *Fan) Twin() *Fan {
	c := NewFan()
	texts := f.Texts()
	for k, p := range f.Places() {
		if strings.HasPrefix(k, trialPrefix) || wiring(k) || ownOf(p) {
			delete(texts, k)
		}
	}
	for _, k := range [...]string{"name", "step", "old.belt-healthy", "old.tipped-up", "new.belt-healthy", "new.tipped-up"} {
		delete(texts, k)
	}
	for _, p := range c.Apply(texts) {
		panic("record: own text refused: " + p.Key + " " + p.Err.Error())
	}
	return c
}

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
