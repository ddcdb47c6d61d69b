package sheet

import "roofside/calc/record"

// box is a larger box where the one that is spoken of is too small.
func (l *bringing) box() {
	b := &l.f.Box
	places := []record.Place{&b.Size, &b.Volume, &b.Devices, &b.Clamps}
	spoken := false
	for _, p := range places {
		spoken = spoken || p.State() != record.Unknown
	}
	if !spoken {
		return
	}
	m := Material{Spec: Spec{Thing: TheBox}, Plan: Keep, Count: 1}
	switch v := BoxVerdict(l.f); v.Level {
	case Stop:
		m.Plan = Bring
		if box := SmallestBox(l.f); box.Known() {
			m.Box, m.Volume = string(box.Value.Shape)+" "+box.Value.Size, some(box.Value.Volume)
		} else {
			m.Count = 0
			m.Volume = told(&m, BoxNeeded(l.f))
			m.lacks(box.Wanted, box.Fault)
		}
		m.why("box-small", v.Method, places...)
	case Unjudged:
		m.Plan, m.Count = Unsure, 0
		m.lacks(v.Wanted, v.Fault)
		m.why("box-unknown", v.Method, places...)
	default:
		if b.Size.State() == record.Known {
			m.Box = b.Size.Text()
		}
		m.Volume = told(&m, BoxVolume(l.f))
		m.why("box-holds", v.Method, places...)
	}
	l.put(m)
}
