package store

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"strings"

	"roofside/calc/record"
)

// Scratch is the id of the record that a calculator works on when no fan has
// been opened.
const Scratch = "scratch"

// OpenEntry holds the id of the fan that is open. In a browser each tab has its own, and
// a new tab begins with the one that any tab opened last.
const OpenEntry = "open"

const (
	fanPrefix  = "fan/"
	indexEntry = "index"
)

// ErrNone is returned for a fan that isn't there.
var ErrNone = errors.New("store: no such fan")

// Fans keeps fans on a shelf, an entry each, and the order they are served in.
type Fans struct{ Shelf Shelf }

// NewID returns an id that no fan has.
func NewID() string { return fmt.Sprintf("%010x", rand.Uint64()>>24) }

// Load reads a fan. One that can't be read is set aside and reported.
func (s Fans) Load(id string) (*record.Fan, []record.Problem, error) {
	text, ok := s.Shelf.Get(fanPrefix + id)
	if !ok {
		return nil, nil, ErrNone
	}
	f, problems, err := record.Unmarshal([]byte(text))
	if err != nil {
		return nil, nil, errors.Join(err, s.setAside(fanPrefix+id, text))
	}
	return f, problems, err
}

// Forget erases a fan's entry, and nothing of the list.
func (s Fans) Forget(id string) { s.Shelf.Delete(fanPrefix + id) }

// FanOf returns the id of the fan whose entry has a key, "" for any other entry.
func FanOf(key string) string {
	id, _ := strings.CutPrefix(key, fanPrefix)
	if id == key {
		return ""
	}
	return id
}

// Text returns a fan's entry as it stands, "" for none.
func (s Fans) Text(id string) string {
	text, _ := s.Shelf.Get(fanPrefix + id)
	return text
}

// Save writes a fan. One that is on no roof comes to stand on the last.
func (s Fans) Save(id string, f *record.Fan) error {
	if id != Scratch && !s.Shelf.Has(fanPrefix+id) {
		return s.Add("", "", id, f)
	}
	data, err := f.Marshal()
	if err != nil {
		return err
	}
	return s.Shelf.Put(fanPrefix+id, string(data))
}

// IDs lists the kept fans, roof by roof, in their order.
func (s Fans) IDs() []string {
	var ids []string
	for _, r := range s.Roofs() {
		ids = append(ids, r.Fans...)
	}
	return ids
}
