package sheet

import "roofside/calc/record"

// An ItemState is what became of one thing that the record must show.
type ItemState int

// The states of an item.
const (
	Open ItemState = iota
	Done
	NotApplicable
	Unreasoned // said not to apply, without a reason
	Failed     // what was read says stop
)

// An Item is one thing that must be done, or stand in the record, before the fan is
// handed over.
type Item struct {
	Name  string
	State ItemState
	Check *record.Check // nil where a value in the record says it
	Place record.Place  // what settles it
}

// Settled tells whether nothing more is to be done about the item.
func (i Item) Settled() bool { return i.State == Done || i.State == NotApplicable }

// A Part is the items of one part of the job.
type Part struct {
	Name  string
	Items []Item
}

// Handover lists what the record must show before the fan is handed over, in the
// order of the job: checks, which are ticked, and values, which speak for
// themselves. held is what stands on the fan's pages, see [Job.Stands]: an item asks all
// of it that speaks about the item, and is not done while any of that is wrong, though it
// was ticked or read.
func Handover(f *record.Fan, held ...Held) []Part {
	h := handover{f: f, left: f.Left()}
	if h.left == nil {
		h.left = &record.Trial{}
		h.none = true
	}
	parts := []Part{{"survey", h.survey()}}
	for _, g := range record.CheckGroups() {
		var items []Item
		for _, name := range g.Checks {
			items = append(items, checked(name, f.Check(name)))
			items = append(items, h.after(name)...)
		}
		for i := range items {
			items[i].hear(held)
		}
		parts = append(parts, Part{g.Name, items})
	}
	last := &parts[len(parts)-1]
	last.Items = append(last.Items, h.stands("by", &f.Handover.By), h.stands("on", &f.Handover.On))
	if !f.DirectDrive() {
		last.Items = append(last.Items, h.stands("belt-due", &f.Handover.BeltDue))
	}
	return parts
}

// Outstanding returns what is still to be done about a handover, in order.
func Outstanding(parts []Part) (open []Item) {
	for _, p := range parts {
		for _, i := range p.Items {
			if !i.Settled() {
				open = append(open, i)
			}
		}
	}
	return open
}

// hear takes back what a verdict speaks against: after a stop it has failed.
func (i *Item) hear(held []Held) {
	if i.State != Done {
		return
	}
	for _, h := range held {
		switch {
		case !i.hears(h.About):
		case h.Level == Stop:
			i.State = Failed
			return
		case h.Level == Watch:
			i.State = Open
		}
	}
}

// hears tells whether what is said about an item is about i: its own, and of a belt that
// is run in its tension, of a fan that was bumped with it the rotation.
func (i *Item) hears(about string) bool {
	switch i.Name {
	case "run-in":
		return about == aboutTension
	case "bumped-with-belt":
		return about == aboutRotation
	}
	return about == i.Name
}

type handover struct {
	f    *record.Fan
	left *record.Trial // as it was left, or an empty one
	none bool
}

func checked(name string, c *record.Check) Item {
	i := Item{Name: name, Check: c, Place: &c.State}
	switch {
	case c.State.Value() == record.Done:
		i.State = Done
	case c.State.Value() == record.NotApplicable && c.Why.State() == record.Known:
		i.State = NotApplicable
	case c.State.Value() == record.NotApplicable:
		i.State, i.Place = Unreasoned, &c.Why
	}
	return i
}

// looked is done where each place holds a value, or somebody looked and it can't be
// read; otherwise it leads to the first that doesn't.
func looked(name string, places ...record.Place) Item {
	for _, p := range places {
		if s := p.State(); s != record.Known && s != record.Illegible {
			return Item{Name: name, Place: p}
		}
	}
	return Item{Name: name, State: Done, Place: places[0]}
}

// stands is done where each place holds a value.
func (h *handover) stands(name string, places ...record.Place) Item {
	for _, p := range places {
		if p.State() != record.Known {
			return Item{Name: name, Place: p}
		}
	}
	return Item{Name: name, State: Done, Place: places[0]}
}

// ofLeft is a reading of the trial that was accepted; without one, that is what is
// missing.
func (h *handover) ofLeft(name string, places ...record.Place) Item {
	if h.none {
		if n := len(h.f.Trials); n > 0 {
			return Item{Name: name, Place: &h.f.Trials[n-1].Accepted}
		}
		return Item{Name: name}
	}
	return h.stands(name, places...)
}

func (h *handover) survey() []Item {
	old := &h.f.Old
	items := []Item{{Name: "target"}}
	if t := TargetSpeed(h.f); t.Known() {
		items[0].State = Done
	} else if open := t.open(); len(open) > 0 {
		items[0].Place = open[0]
	}
	if h.f.DirectDrive() {
		items = nil
	}
	return append(items, looked("old-plate", &old.MotorPower, &old.MotorVolts, &old.MotorAmps))
}

// after returns the values that are due behind a check.
func (h *handover) after(check string) []Item {
	f, left := h.f, h.left
	belt := !f.DirectDrive()
	switch check {
	case "line-volts-first":
		return []Item{h.rotation()}
	case "turns-free":
		if belt {
			return []Item{h.ofLeft("alignment", &left.Belt.Gap), h.tension()}
		}
	case "fan-down":
		items := []Item{h.volts(), h.amps()}
		if belt {
			items = append(items, h.ofLeft("speed", &left.Reading.Speed), h.ofLeft("run-in", &left.Belt.Age))
			if run := &items[len(items)-1]; left.Belt.Age.Value() != record.RunInBelt {
				run.State = Open
			}
		}
		return append(items, h.stands("hood-airflow", &f.Hood.Airflow))
	}
	return nil
}

func (h *handover) rotation() Item {
	i := Item{Name: "rotation", Place: &h.f.New.Rotation}
	switch RotationVerdict(h.f).Level {
	case Within:
		i.State = Done
	case Stop:
		i.State = Failed
	}
	return i
}

func (h *handover) tension() Item {
	i := h.ofLeft("tension", &h.left.Belt.Force)
	if HasTension(h.left) {
		i.State = Done
	}
	return i
}

// lines is how many legs there are to read amps on, and pairs to read volts between.
func (h *handover) lines() int {
	if ThreePhase(h.f) {
		return 3
	}
	return 1
}

func (h *handover) amps() Item {
	var places []record.Place
	for i := range h.lines() {
		places = append(places, &h.left.Reading.Amps[i])
	}
	return h.ofLeft("amps", places...)
}

func (h *handover) volts() Item {
	var places []record.Place
	for i := range h.lines() {
		places = append(places, &h.left.Reading.Volts[i])
	}
	return h.ofLeft("volts", places...)
}
