package store

import (
	"crypto/rand"
	"encoding/json"
	"errors"
	"slices"
	"strings"

	"roofside/calc/record"
)

// Scratch is the id of the record that a calculator works on when no fan has
// been opened.
const Scratch = "scratch"

const (
	fanPrefix  = "fan/"
	asidePart  = "aside/" // text that could not be read as a fan is set aside, never erased
	indexEntry = "index"
)

// ErrNone is returned for a fan that isn't there.
var ErrNone = errors.New("store: no such fan")

// Fans keeps fans on a shelf, an entry each, and the order they are served in.
type Fans struct{ Shelf Shelf }

// NewID returns an id that no fan has.
func NewID() string { return strings.ToLower(rand.Text()[:8]) }

// Load reads a fan. One that can't be read is set aside and reported.
func (s Fans) Load(id string) (*record.Fan, []record.Problem, error) {
	text, ok := s.Shelf.Get(fanPrefix + id)
	if !ok {
		return nil, nil, ErrNone
	}
	f, problems, err := record.Unmarshal([]byte(text))
	if err != nil {
		if put := s.Shelf.Put(asidePart+id, text); put != nil {
			return nil, nil, errors.Join(err, put)
		}
		s.Shelf.Delete(fanPrefix + id)
	}
	return f, problems, err
}

// Save writes a fan, and puts a new one at the end of the order.
func (s Fans) Save(id string, f *record.Fan) error {
	data, err := f.Marshal()
	if err != nil {
		return err
	}
	if _, known := s.Shelf.Get(fanPrefix + id); known || id == Scratch {
		return s.Shelf.Put(fanPrefix+id, string(data))
	}
	ids := s.IDs()
	if err := s.Shelf.Put(fanPrefix+id, string(data)); err != nil {
		return err
	}
	return s.order(append(ids, id))
}

// IDs lists the kept fans in order. What the index has lost is found again.
func (s Fans) IDs() []string {
	var listed, ids []string
	if text, ok := s.Shelf.Get(indexEntry); ok && json.Unmarshal([]byte(text), &listed) != nil {
		listed = nil // rebuilt below from the entries themselves
	}
	have := map[string]bool{}
	for _, k := range s.Shelf.Keys() {
		if id, ok := strings.CutPrefix(k, fanPrefix); ok && id != Scratch {
			have[id] = true
		}
	}
	for _, id := range listed {
		if have[id] {
			ids = append(ids, id)
			delete(have, id)
		}
	}
	rest := make([]string, 0, len(have))
	for id := range have {
		rest = append(rest, id)
	}
	slices.Sort(rest)
	return append(ids, rest...)
}

func (s Fans) order(ids []string) error {
	text, err := json.Marshal(ids)
	if err != nil {
		return err
	}
	return s.Shelf.Put(indexEntry, string(text))
}
