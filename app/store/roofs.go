package store

import (
	"encoding/json"
	"slices"
	"strings"

	"roofside/calc/record"
)

// A Roof is a list of fans in the order they are served in: the one needed first
// comes first.
type Roof struct {
	ID   string   `json:"id"`
	Name string   `json:"name,omitempty"`
	Fans []string `json:"fans"`
}

// index is what the entry of the list holds. Before there were roofs it was the list
// of fans alone.
type index struct {
	Roofs []Roof `json:"roofs"`
}

// firstRoof is the id of the roof of fans that stand on none.
const firstRoof = "roof"

// Roofs lists the roofs with their fans. The entries of fans are the truth: a
// fan that the index has lost is found again, on the first roof.
func (s Fans) Roofs() []Roof {
	listed := s.listed()
	have := map[string]bool{}
	for _, k := range s.Shelf.Keys() {
		if id, ok := strings.CutPrefix(k, fanPrefix); ok && id != Scratch {
			have[id] = true
		}
	}
	for i := range listed {
		listed[i].Fans = slices.DeleteFunc(slices.Clone(listed[i].Fans), func(id string) bool {
			first := have[id]
			delete(have, id)
			return !first
		})
	}
	lost := make([]string, 0, len(have))
	for id := range have {
		lost = append(lost, id)
	}
	if len(lost) == 0 {
		return listed
	}
	slices.Sort(lost)
	if len(listed) == 0 {
		listed = []Roof{{ID: firstRoof}}
	}
	listed[0].Fans = append(listed[0].Fans, lost...)
	return listed
}

// listed reads the list; one that is broken lists nothing, and [Fans.Mend] sets it
// aside.
func (s Fans) listed() []Roof {
	text, _ := s.Shelf.Get(indexEntry)
	roofs, _ := readIndex(text)
	return roofs
}

func (s Fans) arrange(roofs []Roof) error {
	text, err := json.Marshal(index{roofs})
	if err != nil {
		return err
	}
	return s.Shelf.Put(indexEntry, string(text))
}

// RoofOf returns the roof that a fan stands on, or -1.
func RoofOf(roofs []Roof, fan string) int {
	return slices.IndexFunc(roofs, func(r Roof) bool { return slices.Contains(r.Fans, fan) })
}

// AddRoof puts a new roof after the others and returns its id.
func (s Fans) AddRoof(name string) (string, error) {
	id := NewID()
	return id, s.arrange(append(s.Roofs(), Roof{ID: id, Name: name}))
}

// NameRoof names a roof.
func (s Fans) NameRoof(id, name string) error {
	roofs := s.Roofs()
	for i := range roofs {
		if roofs[i].ID == id {
			roofs[i].Name = name
		}
	}
	return s.arrange(roofs)
}

// Add keeps a new fan on a roof: after another fan, or else at its end. A roof
// that isn't there is the last one, or is started.
func (s Fans) Add(roof, after, id string, f *record.Fan) error {
	roofs := s.Roofs()
	data, err := f.Marshal()
	if err != nil {
		return err
	}
	if err := s.Shelf.Put(fanPrefix+id, string(data)); err != nil {
		return err
	}
	if len(roofs) == 0 {
		roofs = []Roof{{ID: firstRoof}}
	}
	i := slices.IndexFunc(roofs, func(r Roof) bool { return r.ID == roof })
	if i < 0 {
		i = len(roofs) - 1
	}
	at := slices.Index(roofs[i].Fans, after) + 1
	if at == 0 {
		at = len(roofs[i].Fans)
	}
	roofs[i].Fans = slices.Insert(roofs[i].Fans, at, id)
	return s.arrange(roofs)
}

// Shift moves a fan in the order of its roof, earlier by a negative number. At
// an end of the list it goes on to the neighboring roof.
func (s Fans) Shift(id string, by int) error {
	roofs := s.Roofs()
	i := RoofOf(roofs, id)
	if i < 0 {
		return nil
	}
	fans := roofs[i].Fans
	at := slices.Index(fans, id)
	to := at + by
	roofs[i].Fans = slices.Delete(fans, at, at+1)
	switch {
	case to < 0 && i > 0:
		i--
		to = len(roofs[i].Fans)
	case to > len(roofs[i].Fans) && i+1 < len(roofs):
		i, to = i+1, 0
	}
	to = min(max(to, 0), len(roofs[i].Fans))
	roofs[i].Fans = slices.Insert(roofs[i].Fans, to, id)
	return s.arrange(roofs)
}

// Remove takes a fan away and returns the way to bring it back.
func (s Fans) Remove(id string) (back func() error, err error) {
	return s.without(func(roofs []Roof) []Roof {
		for i := range roofs {
			roofs[i].Fans = slices.DeleteFunc(roofs[i].Fans, func(f string) bool { return f == id })
		}
		return roofs
	}, id)
}

// RemoveRoof takes a roof away with its fans and returns the way to bring it
// back.
func (s Fans) RemoveRoof(id string) (back func() error, err error) {
	var fans []string
	for _, r := range s.Roofs() {
		if r.ID == id {
			fans = r.Fans
		}
	}
	return s.without(func(roofs []Roof) []Roof {
		return slices.DeleteFunc(roofs, func(r Roof) bool { return r.ID == id })
	}, fans...)
}

// without rearranges the roofs, then takes fans off the shelf.
func (s Fans) without(change func([]Roof) []Roof, fans ...string) (back func() error, err error) {
	before, _ := json.Marshal(index{s.Roofs()}) // strings and lists can't fail
	texts := map[string]string{}
	for _, id := range fans {
		if text, ok := s.Shelf.Get(fanPrefix + id); ok {
			texts[fanPrefix+id] = text
		}
	}
	if err := s.arrange(change(s.Roofs())); err != nil {
		return nil, err
	}
	for k := range texts {
		s.Shelf.Delete(k)
	}
	return func() error {
		for k, text := range texts {
			if err := s.Shelf.Put(k, text); err != nil {
				return err
			}
		}
		return s.Shelf.Put(indexEntry, string(before))
	}, nil
}
