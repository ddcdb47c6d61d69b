package desk

import (
	"roofside/app/store"
	"roofside/calc/record"
)

// Start puts a new fan on the desk and keeps it at the end of a roof, the last
// one for "".
func (d *Desk) Start(roof string, f *record.Fan) {
	d.startAfter(roof, "", f)
}

func (d *Desk) startAfter(roof, after string, f *record.Fan) {
	id := store.NewID()
	err := d.Fans.Add(roof, after, id, f)
	d.put(id, f, nil)
	if err != nil {
		d.note(err)
	}
}

// Keep turns the scratch record into a kept fan. Where there is no room for that it
// stays what it was.
func (d *Desk) Keep() {
	if d.ID != store.Scratch {
		return
	}
	f, id := d.Fan, store.NewID()
	if err := d.Fans.Add("", "", id, f); err != nil {
		d.note(err)
		return
	}
	d.Fans.Forget(store.Scratch)
	d.put(id, f, nil)
}

// Copy starts a fan of the same make behind the one that is open.
func (d *Desk) Copy() {
	if roofs := d.Fans.Roofs(); store.RoofOf(roofs, d.ID) >= 0 {
		d.startAfter(roofs[store.RoofOf(roofs, d.ID)].ID, d.ID, d.Fan.Twin())
	}
}

// Shift moves the open fan in the order of serving.
func (d *Desk) Shift(by int) { d.note(d.Fans.Shift(d.ID, by)) }

// Remove takes the open fan away; undo brings it back and opens it.
func (d *Desk) Remove() {
	if d.ID == store.Scratch {
		return
	}
	id := d.ID
	d.leave(func() (func() error, error) { return d.Fans.Remove(id) }, func() { d.Take(id) })
}

// RemoveRoof takes a roof away with its fans; undo brings it back.
func (d *Desk) RemoveRoof(roof string) {
	open, roofs := d.ID, d.Fans.Roofs()
	if i := store.RoofOf(roofs, open); i < 0 || roofs[i].ID != roof {
		open = ""
	}
	d.leave(func() (func() error, error) { return d.Fans.RemoveRoof(roof) }, func() {
		if open != "" {
			d.Take(open)
		}
	})
}

// leave removes something that the open fan may be among, and remembers the way
// back.
func (d *Desk) leave(remove func() (func() error, error), reopen func()) {
	back, err := remove()
	if err != nil {
		d.note(err)
		return
	}
	if _, _, err := d.Fans.Load(d.ID); err != nil {
		d.Take(store.Scratch)
	}
	d.remember("", func() {
		if err := back(); err != nil {
			d.note(err)
			return
		}
		reopen()
	})
}
