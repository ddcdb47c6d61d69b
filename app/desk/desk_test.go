package desk

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"roofside/app/store"
	"roofside/calc/record"
	"roofside/calc/unit"
)

func fresh(t *testing.T) *Desk {
	t.Helper()
	return Open(store.Memory(), "en-US")
}

// sheave is the old fan sheave's place, and its key.
func sheave(d *Desk) (string, *record.Entry[unit.Length]) {
	return "old.fan-sheave", &d.Fan.Old.FanSheave
}

func TestTypingReachesTheRecordAndTheShelf(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	d.Type(key, p, "8 1/2")
	if got := p.Text(); got != "8-1/2 in" {
		t.Errorf("the record holds %q", got)
	}
	again := Open(d.Fans.Shelf, "en-US")
	if got := again.Fan.Old.FanSheave.Text(); got != "8-1/2 in" {
		t.Errorf("opened again it holds %q", got)
	}
}

func TestWhatIsNoValueIsKept(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	for _, typed := range []string{"abc", "0", "-3", "1e308", "8.6.1", "900 in"} {
		d.Type(key, p, typed)
		if p.State() != record.Garbled {
			t.Errorf("%q is in state %v", typed, p.State())
		}
		if _, err := d.Echo(key, p); err == nil {
			t.Errorf("%q: nothing is said beside the field", typed)
		}
		again := Open(d.Fans.Shelf, "en-US")
		if got := again.Text(key, &again.Fan.Old.FanSheave); got != typed {
			t.Errorf("%q came back as %q", typed, got)
		}
	}
}

// There and back gives the same digits: the record never changes.
func TestSwitchingUnitsChangesNoValue(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	for _, typed := range []string{"8.60", "3-1/2", "0.3", "7.777777"} {
		d.Type(key, p, typed)
		stored := p.Text()
		d.Switch(key, p)
		if got := d.Shown(key, p).Symbol; got != "mm" {
			t.Fatalf("switched to %s", got)
		}
		if got := d.Text(key, p); got == typed {
			t.Errorf("%q in millimeters is still %q", typed, got)
		}
		d.ChangeUnits(unit.SI)
		d.ChangeUnits(unit.US)
		if got := d.Text(key, p); got != typed || p.Text() != stored {
			t.Errorf("%q came back as %q, stored as %q", typed, got, p.Text())
		}
	}
}

func TestOneFieldSwitchesAlone(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	d.Switch(key, p)
	if got := d.Shown("old.motor-sheave", &d.Fan.Old.MotorSheave).Symbol; got != "in" {
		t.Errorf("the other field shows %s", got)
	}
	if got := d.Shown("new.fan-sheave", &d.Fan.New.FanSheave).Symbol; got != "mm" {
		t.Errorf("the twin of the other fan shows %s", got)
	}
}

func TestUndoTakesAValueBackWhole(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	for _, typed := range []string{"8", "8.", "8.6"} {
		d.Type(key, p, typed)
	}
	d.Type("old.motor-sheave", &d.Fan.Old.MotorSheave, "3.4")
	d.Undo()
	if f := d.Fan.Old; f.MotorSheave.State() != record.Unknown || f.FanSheave.Text() != "8.6 in" {
		t.Errorf("after one step back: %q, %q", f.MotorSheave.Text(), f.FanSheave.Text())
	}
	d.Undo()
	if got := d.Fan.Old.FanSheave.Text(); got != "" || d.CanUndo() {
		t.Errorf("after two steps back: %q", got)
	}
}

func TestALinkLosesNothing(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	d.Type(key, p, "8.6")
	d.Follow("old.motor-sheave=3.4in&nonsense=1")
	if d.ID != store.Scratch || d.Fan.Old.MotorSheave.Text() != "3.4 in" || d.Fan.Old.FanSheave.State() != record.Unknown {
		t.Error("the link is not what is open")
	}
	if len(d.Problems) != 1 || d.Problems[0].Key != "nonsense" {
		t.Errorf("problems: %v", d.Problems)
	}
	ids := d.Fans.IDs()
	if len(ids) != 1 {
		t.Fatalf("%d fans are kept", len(ids))
	}
	d.Take(ids[0])
	if got := d.Fan.Old.FanSheave.Text(); got != "8.6 in" {
		t.Errorf("the earlier scratch record holds %q", got)
	}
	d.Follow("")
	if d.ID != ids[0] {
		t.Error("an empty fragment closed the fan")
	}
}

// A page elsewhere that sends links by the hundred fills no list of fans.
func TestAFloodOfLinks(t *testing.T) {
	d := fresh(t)
	d.Type("name", &d.Fan.Name, "Mine")
	for i := range 600 {
		if i == 300 {
			d = Open(d.Fans.Shelf, "en-US") // it may open the page anew
		}
		d.Follow(fmt.Sprintf("name=Theirs %d", i))
	}
	ids := d.Fans.IDs()
	if len(ids) != 1 {
		t.Fatalf("%d fans are kept", len(ids))
	}
	if f, _, err := d.Fans.Load(ids[0]); err != nil || f.Name.Text() != "Mine" {
		t.Errorf("kept is %q, %v", f.Name.Text(), err)
	}
	d.Type("name", &d.Fan.Name, "Theirs, mended")
	d.Follow("name=Another")
	if n := len(d.Fans.IDs()); n != 2 {
		t.Errorf("%d fans are kept after one of them was worked on", n)
	}
}

func TestAKeptFanIsNotChangedByALink(t *testing.T) {
	d := fresh(t)
	f := record.NewFan()
	d.Start("", f)
	id := d.ID
	d.Follow("old.fan-sheave=9in")
	d.Take(id)
	if got := d.Fan.Old.FanSheave.Text(); got != "" {
		t.Errorf("the kept fan holds %q", got)
	}
}

func TestARecordOfALaterFormIsNotWritten(t *testing.T) {
	d := fresh(t)
	const later = `{"form":2,"fan":{"name":"Later","unheard-of":"1"}}`
	if err := d.Fans.Shelf.Put("fan/later", later); err != nil {
		t.Fatal(err)
	}
	d.Take("later")
	d.Type("name", &d.Fan.Name, "changed")
	d.Undo()
	if got, _ := d.Fans.Shelf.Get("fan/later"); got != later {
		t.Errorf("it was rewritten: %s", got)
	}
	if d.Fan.Name.Text() != "Later" {
		t.Errorf("its name is %q", d.Fan.Name.Text())
	}
}

// A site rolled back meets records of the version that was withdrawn.
func TestARecordOfALaterVersionLosesNothingByAKey(t *testing.T) {
	shelf := store.Memory()
	const before = `{"form":1,"fan":{"check.crane-booked":"done","old.bearing-noise":"3 dB","supply":"steam","trial.t1.sound":"61 dB"}}`
	if err := shelf.Put("fan/scratch", before); err != nil {
		t.Fatal(err)
	}
	d := Open(shelf, "en-US")
	if len(d.Problems) != 4 {
		t.Errorf("said of it: %v", d.Problems)
	}
	key, p := sheave(d)
	d.Do(key, func() { d.Type(key, p, "8 1/2") })
	const after = `{"form":1,"fan":{"check.crane-booked":"done","old.bearing-noise":"3 dB","old.fan-sheave":"8-1/2 in","supply":"steam","trial.t1.sound":"61 dB"}}`
	if got, _ := shelf.Get("fan/scratch"); got != after {
		t.Errorf("after a key it holds\n%s", got)
	}
	d.Undo()
	if got, _ := shelf.Get("fan/scratch"); got != before {
		t.Errorf("after an undo it holds\n%s", got)
	}
}

func TestADamagedRecordIsSetAside(t *testing.T) {
	d := fresh(t)
	if err := d.Fans.Shelf.Put("fan/broken", `{"form":1,"fan":`); err != nil {
		t.Fatal(err)
	}
	d.Take("broken")
	if !d.Damaged || d.ID != store.Scratch {
		t.Errorf("damaged %v, open %q", d.Damaged, d.ID)
	}
	if got, _ := d.Fans.Shelf.Get("aside/broken"); !strings.HasPrefix(got, `{"form":1`) {
		t.Errorf("set aside: %q", got)
	}
}

// full is a shelf without room.
type full struct{ store.Shelf }

func (full) Put(string, string) error { return store.ErrFull }

func TestAFullDeviceIsSaidAndTheRecordGoesOn(t *testing.T) {
	d := Open(full{store.Memory()}, "en-US")
	key, p := sheave(d)
	d.Type(key, p, "8.6")
	if !errors.Is(d.Trouble, store.ErrFull) {
		t.Errorf("trouble: %v", d.Trouble)
	}
	if p.Text() != "8.6 in" {
		t.Errorf("the record holds %q", p.Text())
	}
}

// tight is a shelf that takes no new entry.
type tight struct{ store.Shelf }

func (s tight) Put(key, text string) error {
	if _, ok := s.Get(key); !ok {
		return store.ErrFull
	}
	return s.Shelf.Put(key, text)
}

// What needs room for a second record leaves the first as it is where there is none.
func TestWithoutRoomNothingIsReplaced(t *testing.T) {
	d := Open(store.Memory(), "en-US")
	d.Type("name", &d.Fan.Name, "Mine")
	d.Fans.Shelf = tight{d.Fans.Shelf}
	for what, act := range map[string]func(){
		"keeping":          d.Keep,
		"a link":           func() { d.Follow("name=Other") },
		"a link of a copy": func() { d.Follow("name=Mine&supply=direct") },
	} {
		d.Trouble = nil
		act()
		if !errors.Is(d.Trouble, store.ErrFull) {
			t.Errorf("%s: trouble %v", what, d.Trouble)
		}
		if f, _, err := d.Fans.Load(store.Scratch); err != nil || f.Name.Text() != "Mine" || d.ID != store.Scratch || d.Fan.Name.Text() != "Mine" {
			t.Errorf("%s: the scratch record is gone: %v", what, err)
		}
	}
}

// What only the screen holds, because the device is full, is no less than what it keeps.
func TestALinkKeepsWhatIsOnlyOnTheScreen(t *testing.T) {
	shelf := store.Memory()
	d := Open(shelf, "en-US")
	d.Follow("name=Mine")
	d.Fans.Shelf = full{shelf}
	d.Type("name", &d.Fan.Name, "Mine, changed")
	d.Fans.Shelf = shelf
	d.Follow("name=Other")
	ids := d.Fans.IDs()
	if len(ids) != 1 {
		t.Fatalf("kept: %v", ids)
	}
	if f, _, err := d.Fans.Load(ids[0]); err != nil || f.Name.Text() != "Mine, changed" {
		t.Errorf("kept: %q, %v", f.Name.Text(), err)
	}
}

// A fan that another tab has removed stays on the desk, which says so, and is kept
// again with its next change.
func TestAFanRemovedElsewhere(t *testing.T) {
	first := fresh(t)
	first.Start("", record.NewFan())
	id := first.ID
	second := Open(first.Fans.Shelf, "en-US")
	first.Remove()
	if second.Follows("fan/"+id) || !second.Gone || second.ID != id {
		t.Errorf("gone %v, open %q", second.Gone, second.ID)
	}
	second.Type("name", &second.Fan.Name, "Still here")
	if f, _, err := second.Fans.Load(id); err != nil || f.Name.Text() != "Still here" || second.Gone {
		t.Errorf("%v, gone %v", err, second.Gone)
	}
	if ids := second.Fans.IDs(); len(ids) != 1 {
		t.Errorf("it stands %d times", len(ids))
	}
}

func TestTheOtherReadingIsOneTapAway(t *testing.T) {
	d := fresh(t)
	p := &d.Fan.Old.MotorSpeed
	d.Type("old.motor-speed", p, "1,725")
	r, err := d.Echo("old.motor-speed", p)
	if err != nil || p.Text() != "1725 rpm" || r.Other == "" {
		t.Fatalf("%q, other %q, %v", p.Text(), r.Other, err)
	}
	d.TakeOther("old.motor-speed", p, r.Other)
	if p.Text() != "1.725 rpm" {
		t.Errorf("the other reading is %q", p.Text())
	}
}

func TestUnitsFollowTheBrowsersRegion(t *testing.T) {
	for tag, want := range map[string]unit.System{"en-US": unit.US, "es-US": unit.US, "en": unit.US, "": unit.US, "x!": unit.US, "de-DE": unit.SI, "es-MX": unit.SI, "en-CA": unit.SI} {
		if got := Open(store.Memory(), tag).Settings.Units; got != want {
			t.Errorf("%q: %v", tag, got)
		}
	}
}

func TestTurnsAreWrittenAsTheHandCountsThem(t *testing.T) {
	d := fresh(t)
	for turns, want := range map[unit.Turns]string{0: "0", 0.5: "½", 2.5: "2½", 1.25: "1¼", 3: "3", 2.4: "2.40"} {
		if got := d.Turns(turns); got != want {
			t.Errorf("%v is written %q, not %q", float64(turns), got, want)
		}
	}
}

// What was removed comes back by undo, opened; the order goes on.
func TestFansAreCopiedShiftedRemovedAndBroughtBack(t *testing.T) {
	d := fresh(t)
	roof, err := d.Fans.AddRoof("roof")
	if err != nil {
		t.Fatal(err)
	}
	first := record.NewFan()
	first.Apply(map[string]string{"name": "first", "new.motor-power": "2 hp", "old.amps-1": "3 A"})
	d.Start(roof, first)
	id := d.ID
	d.Start(roof, record.NewFan())
	d.Take(id)
	d.Copy()
	if ids := d.Fans.IDs(); len(ids) != 3 || ids[0] != id || ids[1] != d.ID {
		t.Errorf("the copy %s stands in %v", d.ID, ids)
	}
	if got := d.Fan.Texts(); len(got) != 1 || got["new.motor-power"] != "2 hp" {
		t.Errorf("the copy holds %v", got)
	}
	d.Shift(-1)
	if ids := d.Fans.IDs(); ids[0] != d.ID {
		t.Errorf("shifted: %v", ids)
	}
	d.Take(id)
	before := d.Fans.Roofs()
	d.Remove()
	if d.ID != store.Scratch || len(d.Fans.IDs()) != 2 || !d.CanUndo() {
		t.Errorf("removed: %s is open of %v", d.ID, d.Fans.IDs())
	}
	d.Undo()
	if d.ID != id || d.Fan.Name.Text() != "first" || len(d.Fans.Roofs()[0].Fans) != len(before[0].Fans) {
		t.Errorf("undone: %s %q of %v", d.ID, d.Fan.Name.Text(), d.Fans.IDs())
	}
	d.RemoveRoof(roof)
	if d.ID != store.Scratch || len(d.Fans.IDs()) != 0 {
		t.Errorf("roof removed: %s of %v", d.ID, d.Fans.IDs())
	}
	d.Undo()
	if d.ID != id || len(d.Fans.IDs()) != 3 {
		t.Errorf("undone: %s of %v", d.ID, d.Fans.IDs())
	}
}

// What an address asks for holds on the screen and is not kept; what the user
// chooses meanwhile is.
func TestWhatAnAddressAsksForIsNotKept(t *testing.T) {
	d := fresh(t)
	key, p := sheave(d)
	d.Ask(func(s *Settings) {
		s.Units, s.Fields, s.Language, s.Look = unit.SI, map[string]unit.System{}, "es", "sun"
	})
	d.Switch(key, p)
	d.Change(func(s *Settings) { s.Look = "dark" })
	if d.Settings.Units != unit.SI || d.Settings.Language != "es" || d.Settings.Look != "dark" {
		t.Errorf("on the screen: %+v", d.Settings)
	}
	kept := Open(d.Fans.Shelf, "en-US").Settings
	if kept.Units != unit.US || kept.Language != "" || kept.Look != "dark" || len(kept.Fields) != 0 {
		t.Errorf("kept: %+v", kept)
	}
}

func TestALengthIsWrittenInMarksOfTheRule(t *testing.T) {
	d := fresh(t)
	for in, want := range map[float64]string{1. / 16: "1/16 in", 0.25: "1/4 in", 1.25: "1-1/4 in", 1.5625: "1-9/16 in", 2: "2 in"} {
		if got := d.Marked(unit.Length(in) * unit.Inch); got != want {
			t.Errorf("%v in is written %q, not %q", in, got, want)
		}
	}
	d.ChangeUnits(unit.SI)
	if got := d.Marked(6 * unit.Millimeter); got != "6 mm" || d.RuleMark() != unit.Millimeter {
		t.Errorf("6 mm is written %q", got)
	}
}

// Two desks on one shelf, as two tabs are: the second takes up what the first
// has made of the fan they both have open.
func TestASecondDeskFollows(t *testing.T) {
	first := fresh(t)
	key, p := sheave(first)
	first.Type(key, p, "8.4")
	second := Open(first.Fans.Shelf, "en-US")
	first.Type(key, p, "8.6")
	if second.Follows("fan/other") || second.Follows("settings") {
		t.Error("it follows another entry")
	}
	if !second.Follows("fan/"+second.ID) || !second.Followed || second.Fan.Old.FanSheave.Text() != "8.6 in" {
		t.Errorf("it holds %q", second.Fan.Old.FanSheave.Text())
	}
	if second.Text(key, &second.Fan.Old.FanSheave) != "8.6" {
		t.Errorf("it shows %q", second.Text(key, &second.Fan.Old.FanSheave))
	}
	if second.Follows("fan/" + second.ID) {
		t.Error("it follows what it holds already")
	}
}

// A link of the same fan that leaves out what no link carries doesn't wipe it out.
func TestALinkLosesNothingThatItDoesNotCarry(t *testing.T) {
	d := Open(store.Memory(), "en-US")
	d.Follow("name=Mine&old.turns=!two")
	if err := d.Fan.Handover.Notes.Set(strings.Repeat("x", 200)); err != nil {
		t.Fatal(err)
	}
	d.save()
	part, out, err := d.Fan.Pack()
	if err != nil || len(out) != 2 {
		t.Fatal(out, err)
	}
	d.Follow(part)
	ids := d.Fans.IDs()
	if len(ids) != 1 {
		t.Fatalf("kept: %v", ids)
	}
	if f, _, err := d.Fans.Load(ids[0]); err != nil || f.Old.Turns.Text() != "!two" || len(f.Handover.Notes.Text()) != 200 {
		t.Errorf("kept: %q, %v", f.Texts(), err)
	}
}
