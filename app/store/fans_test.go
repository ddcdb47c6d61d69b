package store

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
)

func named(t *testing.T, name string) *record.Fan {
	t.Helper()
	f := record.NewFan()
	if err := f.Name.Set(name); err != nil {
		t.Fatal(err)
	}
	return f
}

func TestFansKeepTheirOrder(t *testing.T) {
	s := Fans{Memory()}
	for _, id := range []string{"c", "a", "b"} {
		if err := s.Save(id, named(t, id)); err != nil {
			t.Fatal(err)
		}
	}
	if err := s.Save(Scratch, named(t, "scratch")); err != nil {
		t.Fatal(err)
	}
	if err := s.Save("a", named(t, "again")); err != nil {
		t.Fatal(err)
	}
	if got := s.IDs(); !slices.Equal(got, []string{"c", "a", "b"}) {
		t.Errorf("order %v", got)
	}
	f, problems, err := s.Load("a")
	if err != nil || problems != nil || f.Name.Text() != "again" {
		t.Errorf("%q %v %v", f.Name.Text(), problems, err)
	}
}

// The entries are the truth: an index that is lost or broken is made anew.
func TestALostIndexLosesNoFan(t *testing.T) {
	s := Fans{Memory()}
	for _, id := range []string{"b", "a"} {
		if err := s.Save(id, named(t, id)); err != nil {
			t.Fatal(err)
		}
	}
	for _, index := range []string{"", "[", `["gone","b"]`, `{"a":1}`} {
		if err := s.Shelf.Put(indexEntry, index); err != nil {
			t.Fatal(err)
		}
		got := s.IDs()
		slices.Sort(got)
		if !slices.Equal(got, []string{"a", "b"}) {
			t.Errorf("index %q: %v", index, got)
		}
	}
}

// What can't be read is set aside and handed out; nothing set aside before is
// written over, and a list that can be read stays.
func TestWhatCantBeReadIsSetAside(t *testing.T) {
	s := Fans{Memory()}
	if err := s.Save("a", named(t, "A")); err != nil {
		t.Fatal(err)
	}
	if err := s.Mend(); err != nil || len(s.Aside()) != 0 {
		t.Errorf("a whole list is mended: %v", err)
	}
	for _, broken := range []string{`{"roofs":[{"id":"x","name":"North"`, `{"roofs":7}`, `7`} {
		if err := s.Shelf.Put(indexEntry, broken); err != nil {
			t.Fatal(err)
		}
		if err := s.Mend(); err == nil {
			t.Errorf("%s passes for a list", broken)
		}
		if got := s.IDs(); !slices.Equal(got, []string{"a"}) {
			t.Errorf("after %s: %v", broken, got)
		}
		if err := s.Shelf.Put(fanPrefix+"b", broken); err != nil {
			t.Fatal(err)
		}
		if _, _, err := s.Load("b"); err == nil || errors.Is(err, ErrNone) {
			t.Errorf("%s passes for a fan: %v", broken, err)
		}
	}
	if got := s.Aside(); len(got) != 6 || got["index"] == "" || got["b++"] != "7" {
		t.Errorf("set aside: %v", got)
	}
	if got := s.AsideFile(); !strings.Contains(got, `"name":"North"`) || strings.Count(got, "# ") != 6 {
		t.Errorf("the file: %s", got)
	}
	s.DropAside()
	if got := s.Aside(); len(got) != 0 {
		t.Errorf("still there: %v", got)
	}
}

func TestAFanThatIsNotThere(t *testing.T) {
	if _, _, err := (Fans{Memory()}).Load("nobody"); !errors.Is(err, ErrNone) {
		t.Error(err)
	}
}

func TestIDsDiffer(t *testing.T) {
	seen := map[string]bool{}
	for range 1000 {
		id := NewID()
		if len(id) != 10 || seen[id] {
			t.Fatalf("id %q", id)
		}
		seen[id] = true
	}
}

func TestAWatchedShelfTellsOfEachChange(t *testing.T) {
	var told []string
	s := Fans{Watched(Memory(), func(key string) { told = append(told, key) })}
	if err := s.Save("a", named(t, "A")); err != nil {
		t.Fatal(err)
	}
	s.Text("a")
	s.IDs()
	s.Forget("a")
	if want := []string{fanPrefix + "a", indexEntry, fanPrefix + "a"}; !slices.Equal(told, want) {
		t.Errorf("told of %v, want %v", told, want)
	}
}
