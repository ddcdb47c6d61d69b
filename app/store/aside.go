package store

import (
	"encoding/json"
	"errors"
	"maps"
	"slices"
	"strings"
)

// What can't be read is set aside under this, never erased.
const asidePart = "aside/"

// setAside moves an entry out of the way, beside what was set aside before.
func (s Fans) setAside(key, text string) error {
	to := asidePart + strings.TrimPrefix(key, fanPrefix)
	for have, ok := s.Shelf.Get(to); ok && have != text; have, ok = s.Shelf.Get(to) {
		to += "+"
	}
	if err := s.Shelf.Put(to, text); err != nil {
		return err
	}
	s.Shelf.Delete(key)
	return nil
}

// Aside returns what was set aside, by where it stood.
func (s Fans) Aside() map[string]string {
	aside := map[string]string{}
	for _, k := range s.Shelf.Keys() {
		if name, ok := strings.CutPrefix(k, asidePart); ok {
			aside[name], _ = s.Shelf.Get(k)
		}
	}
	return aside
}

// AsideFile returns what was set aside as one text, for somebody who can make
// something of it.
func (s Fans) AsideFile() string {
	var b strings.Builder
	aside := s.Aside()
	for _, name := range slices.Sorted(maps.Keys(aside)) {
		b.WriteString("# " + name + "\n" + aside[name] + "\n")
	}
	return b.String()
}

// DropAside erases what was set aside.
func (s Fans) DropAside() {
	for name := range s.Aside() {
		s.Shelf.Delete(asidePart + name)
	}
}

var errIndex = errors.New("store: the list of roofs can't be read")

// Mend sets aside a list of roofs that can't be read. The fans are found again
// without it, the names and the order of roofs are not.
func (s Fans) Mend() error {
	text, ok := s.Shelf.Get(indexEntry)
	if !ok || text == "" {
		return nil
	}
	if _, ok := readIndex(text); ok {
		return nil
	}
	if err := s.setAside(indexEntry, text); err != nil {
		return errors.Join(errIndex, err)
	}
	return errIndex
}

// readIndex reads the list of roofs, or that of fans as it was before there were
// roofs.
func readIndex(text string) ([]Roof, bool) {
	var now struct {
		Roofs *[]Roof `json:"roofs"`
	}
	if json.Unmarshal([]byte(text), &now) == nil && now.Roofs != nil {
		return slices.DeleteFunc(*now.Roofs, func(r Roof) bool { return r.ID == "" }), true
	}
	var before []string
	if json.Unmarshal([]byte(text), &before) == nil {
		return []Roof{{ID: firstRoof, Fans: before}}, true
	}
	return nil, false
}
