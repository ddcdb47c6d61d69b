package record

import "roofside/calc/unit"

// A Meter is what a meter's maker states of its accuracy, as far as it was
// entered: a share of the reading, and what a count of last digits comes to. The
// usual meter's stands for the rest.
type Meter[Q unit.Quantity] struct {
	Share  Entry[unit.Ratio]
	Digits Entry[Q]
	fact   *Fact
}

// stated is a meter of any quantity.
type stated interface {
	band(usual Band) Band
	garbled() Place
}

// reads returns the fact of what is read with m, from that of a usual meter.
func (m *Meter[Q]) reads(usual *Fact) *Fact {
	if m.fact == nil {
		f := *usual
		f.meter, m.fact = m, &f
	}
	return m.fact
}

func (m *Meter[Q]) band(usual Band) Band {
	if m.Share.State() == Known {
		usual.Rel = m.Share.Base()
	}
	if m.Digits.State() == Known {
		usual.Abs = m.Digits.Base()
	}
	return usual
}

func (m *Meter[Q]) garbled() Place {
	for _, p := range [...]Place{&m.Share, &m.Digits} {
		if p.State() == Garbled {
			return p
		}
	}
	return nil
}
