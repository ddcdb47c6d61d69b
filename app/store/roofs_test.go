package store

import (
	"reflect"
	"slices"
	"strings"
	"testing"
)

// shape is the roofs in one line: name or id, colon, fans.
func shape(s Fans) string {
	var all []string
	for _, r := range s.Roofs() {
		name := r.Name
		if name == "" {
			name = "-"
		}
		all = append(all, name+":"+strings.Join(r.Fans, ","))
	}
	return strings.Join(all, " ")
}

// laid returns two roofs, of three fans and of one.
func laid(t *testing.T) (s Fans, north, south string) {
	t.Helper()
	s = Fans{Memory()}
	var err error
	if north, err = s.AddRoof("north"); err != nil {
		t.Fatal(err)
	}
	if south, err = s.AddRoof("south"); err != nil {
		t.Fatal(err)
	}
	for _, f := range []struct{ roof, id string }{{north, "a"}, {north, "b"}, {south, "x"}, {north, "c"}} {
		if err := s.Add(f.roof, "", f.id, named(t, f.id)); err != nil {
			t.Fatal(err)
		}
	}
	return s, north, south
}

func TestFansStandOnRoofsInTheirOrder(t *testing.T) {
	s, north, south := laid(t)
	steps := []struct {
		what string
		do   func() error
		want string
	}{
		{"as laid", func() error { return nil }, "north:a,b,c south:x"},
		{"named", func() error { return s.NameRoof(north, "N") }, "N:a,b,c south:x"},
		{"behind another", func() error { return s.Add(north, "a", "d", named(t, "d")) }, "N:a,d,b,c south:x"},
		{"behind one that is not there", func() error { return s.Add(north, "q", "e", named(t, "e")) }, "N:a,d,b,c,e south:x"},
		{"on a roof that is not there", func() error { return s.Add("q", "", "f", named(t, "f")) }, "N:a,d,b,c,e south:x,f"},
		{"earlier", func() error { return s.Shift("b", -1) }, "N:a,b,d,c,e south:x,f"},
		{"earlier than the first", func() error { return s.Shift("a", -1) }, "N:a,b,d,c,e south:x,f"},
		{"later than the last", func() error { return s.Shift("e", 1) }, "N:a,b,d,c south:e,x,f"},
		{"and back", func() error { return s.Shift("e", -1) }, "N:a,b,d,c,e south:x,f"},
		{"the last of all", func() error { return s.Shift("f", 1) }, "N:a,b,d,c,e south:x,f"},
		{"one that is not there", func() error { return s.Shift("q", 1) }, "N:a,b,d,c,e south:x,f"},
		{"saved again", func() error { return s.Save("b", named(t, "B")) }, "N:a,b,d,c,e south:x,f"},
	}
	for _, step := range steps {
		if err := step.do(); err != nil {
			t.Fatal(step.what, err)
		}
		if got := shape(s); got != step.want {
			t.Errorf("%s: %s, want %s", step.what, got, step.want)
		}
	}
	if roofs := s.Roofs(); RoofOf(roofs, "x") != 1 || RoofOf(roofs, "q") != -1 || roofs[1].ID != south {
		t.Errorf("%+v", roofs)
	}
}

func TestWhatIsRemovedComesBack(t *testing.T) {
	s, _, south := laid(t)
	before := s.Roofs()
	for what, remove := range map[string]func() (func() error, error){
		"a fan":  func() (func() error, error) { return s.Remove("b") },
		"a roof": func() (func() error, error) { return s.RemoveRoof(south) },
	} {
		back, err := remove()
		if err != nil {
			t.Fatal(what, err)
		}
		if reflect.DeepEqual(s.Roofs(), before) {
			t.Errorf("%s is still there", what)
		}
		for _, gone := range []string{"b", "x"} {
			if _, _, err := s.Load(gone); (err == ErrNone) != !slices.Contains(s.IDs(), gone) {
				t.Errorf("%s: %s: %v", what, gone, err)
			}
		}
		if err := back(); err != nil {
			t.Fatal(what, err)
		}
		if got := s.Roofs(); !reflect.DeepEqual(got, before) {
			t.Errorf("%s came back as %+v, was %+v", what, got, before)
		}
		if f, _, err := s.Load("b"); err != nil || f.Name.Text() != "b" {
			t.Errorf("%s: %v", what, err)
		}
	}
}

// An index of the time before roofs is read; a fan is listed once, and none is
// lost.
func TestIndexesOfOtherShapes(t *testing.T) {
	for text, want := range map[string]string{
		`["c","a","b"]`:                       "-:c,a,b",
		`["c"]`:                               "-:c,a,b",
		`{"roofs":[{"id":"r","fans":["b"]}]}`: "-:b,a,c",
		`{"roofs":[{"id":"r","name":"R","fans":["b","gone","b"]},{"id":"s","fans":["b","a"]}]}`: "R:b,c -:a",
		`{"roofs":[{"name":"no id","fans":["b"]}]}`:                                             "-:a,b,c",
		`{"roofs":7}`: "-:a,b,c",
		`null`:        "-:a,b,c",
	} {
		s := Fans{Memory()}
		for _, id := range []string{"a", "b", "c"} {
			if err := s.Save(id, named(t, id)); err != nil {
				t.Fatal(err)
			}
		}
		if err := s.Shelf.Put(indexEntry, text); err != nil {
			t.Fatal(err)
		}
		if got := shape(s); got != want {
			t.Errorf("index %s: %s, want %s", text, got, want)
		}
	}
}
