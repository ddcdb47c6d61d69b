package record

// Twin returns a fan of the same make as f, of which nothing has been read yet:
// plates, sheaves and target as they stand, without what was measured or
// counted at f, its trials, its steps and its name.
func (f *Fan) Twin() *Fan {
	c := NewFan()
	texts := f.Texts()
	for k, p := range f.Places() {
		if _, trial := trialOf(k); trial || ownOf(p) {
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
