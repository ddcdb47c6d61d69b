// Package desk is what is open in front of the user: one fan, what is being
// typed into it, how values are written, and the way back from the last
// change. It knows the record and the shelf, and nothing of the screen.
package desk

import (
	"errors"
	"maps"
	"slices"

	"roofside/app/store"
	"roofside/calc/number"
	"roofside/calc/record"
)

// A Desk holds the open fan.
type Desk struct {
	Fan      *record.Fan
	ID       string
	Settings Settings // that hold on the screen
	Locale   *number.Locale
	Fans     store.Fans

	Problems []record.Problem // of the link or the entry the fan came from
	Trouble  error            // why the last change was not kept on the device
	Damaged  bool             // an entry could not be read and was set aside
	Followed bool             // the open fan was changed in another tab, and is shown as it stands there
	Gone     bool             // the open fan was removed in another tab

	typed   map[string]string // as typed, while it is on the screen
	back    []change
	kept    Settings
	saves   int            // how often a change was kept
	figures int            // how often one that an answer may go by,
	fits    int            // and one that the comparison of the fans may
	load    int            // how often all fields were loaded anew,
	loads   map[string]int // and each by itself
}

// change is the way back from something that was done.
type change struct {
	key  string
	back func()
}

const mostBack = 30

// Open returns the desk with what was open last time.
func Open(shelf store.Shelf, browserLanguage string) *Desk {
	d := &Desk{Fans: store.Fans{Shelf: shelf}, typed: map[string]string{}, loads: map[string]int{}}
	d.Settings = readSettings(shelf, browserLanguage)
	d.kept = d.Settings
	d.Locale = number.For(d.Settings.numberTag())
	id, ok := shelf.Get(store.OpenEntry)
	if !ok {
		id = store.Scratch
	}
	mended := d.Fans.Mend()
	d.Take(id)
	d.Damaged = d.Damaged || mended != nil
	return d
}

// Take opens a fan by its id; one that isn't there, or can't be read, leaves an
// empty scratch record on the desk.
func (d *Desk) Take(id string) {
	f, problems, err := d.Fans.Load(id)
	d.Damaged = err != nil && !errors.Is(err, store.ErrNone)
	if err != nil {
		f, problems, id = record.NewFan(), nil, store.Scratch
	}
	d.put(id, f, problems)
}

// Follows takes up what another tab has made of the open fan's entry: two tabs
// on one fan would else write over each other. It tells whether it did. A fan
// removed there stays on the desk, and is kept again with its next change.
func (d *Desk) Follows(key string) bool {
	if store.FanOf(key) != d.ID {
		return false
	}
	f, problems, err := d.Fans.Load(d.ID)
	d.Gone = errors.Is(err, store.ErrNone) && d.ID != store.Scratch
	if err != nil || maps.Equal(f.Texts(), d.Fan.Texts()) {
		return false
	}
	d.Fan, d.Problems, d.back, d.Followed = f, problems, nil, true
	d.Reload()
	return true
}

func (d *Desk) put(id string, f *record.Fan, problems []record.Problem) {
	d.Fan, d.ID, d.Problems, d.back, d.Followed, d.Gone = f, id, problems, nil, false, false
	d.Reload()
	d.note(d.Fans.Shelf.Put(store.OpenEntry, id))
}

// Follow opens a link's fragment on the scratch record. A scratch record with something
// in it is kept as a fan first, so that a link loses nothing; but for what another link
// has brought, as long as nothing was done with it: a page elsewhere may send hundreds.
func (d *Desk) Follow(fragment string) {
	texts, problems := record.ParseFragment(fragment)
	if len(texts) == 0 && len(problems) == 0 {
		return
	}
	f := record.NewFan()
	problems = append(problems, f.Apply(texts)...)
	old, _, err := d.Fans.Load(store.Scratch)
	if d.ID == store.Scratch {
		old, err = d.Fan, nil // which a full device may not have kept
	}
	if err == nil && !old.Empty() && !maps.Equal(old.Texts(), f.Texts()) && !d.unread(old) {
		if err := d.Fans.Save(store.NewID(), old); err != nil {
			d.note(err) // with no room for both, what is there stays
			return
		}
	}
	d.put(store.Scratch, f, problems)
	d.save()
	_ = d.Fans.Shelf.Put(arrivedEntry, d.Fans.Text(store.Scratch)) // where it can't be noted, the record counts as read
}

// arrivedEntry holds what the last link has brought.
const arrivedEntry = "arrived"

// unread tells whether a scratch record stands as a link has brought it.
func (d *Desk) unread(scratch *record.Fan) bool {
	arrived, ok := d.Fans.Shelf.Get(arrivedEntry)
	now, err := scratch.Marshal()
	return ok && err == nil && arrived == string(now)
}

// Do changes the record, keeps it, and remembers the way back. Changes under
// the same key, such as the strokes of one value, go back together.
func (d *Desk) Do(key string, act func()) {
	if d.Fan.ReadOnly() {
		return
	}
	if len(d.back) == 0 || d.back[len(d.back)-1].key != key || key == "" {
		texts := d.Fan.Texts()
		d.remember(key, func() {
			d.Fan = record.NewFan()
			d.Problems = slices.DeleteFunc(d.Fan.Apply(texts), func(p record.Problem) bool { return p.Err == record.ErrLater }) // known before
			d.Reload()
			d.save()
		})
	}
	act()
	if !record.Silent(key) {
		d.figures++
	}
	if !record.Alone(key) {
		d.fits++
	}
	d.save()
}

// Figures counts the changes that an answer may have moved by, while a fan is on the
// desk.
func (d *Desk) Figures() int { return d.figures }

// Fits counts those that the comparison of the two fans, or what is to be brought, may
// have moved by: the same and more.
func (d *Desk) Fits() int { return d.fits }

func (d *Desk) remember(key string, back func()) {
	d.back = append(d.back, change{key, back})
	if len(d.back) > mostBack {
		d.back = d.back[1:]
	}
}

// CanUndo tells whether there is a way back.
func (d *Desk) CanUndo() bool { return len(d.back) > 0 }

// Undo takes the last change back.
func (d *Desk) Undo() {
	if len(d.back) == 0 {
		return
	}
	last := d.back[len(d.back)-1]
	d.back = d.back[:len(d.back)-1]
	last.back()
}

// Reload makes every field show the record again instead of what was typed.
func (d *Desk) Reload() {
	d.load++
	clear(d.typed)
}

// ReloadField makes one field show the record again.
func (d *Desk) ReloadField(key string) {
	d.loads[key]++
	delete(d.typed, key)
}

// Loads counts the reloads of all fields: what belongs to an earlier record is
// to be drawn anew.
func (d *Desk) Loads() int { return d.load }

// LoadsOf counts those of one field, so that it can tell that it is to be drawn
// anew.
func (d *Desk) LoadsOf(key string) int { return d.load + d.loads[key] }

func (d *Desk) save() {
	d.saves++
	d.note(d.Fans.Save(d.ID, d.Fan))
	d.Gone = d.Gone && d.Trouble != nil // it is there again
}

// Saves counts the changes that were kept.
func (d *Desk) Saves() int { return d.saves }

func (d *Desk) note(err error) { d.Trouble = err }
