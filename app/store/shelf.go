// Package store keeps records on the device. It is the only place that touches
// the browser's storage; what it keeps is text under a key.
package store

import (
	"errors"
	"maps"
	"slices"
)

// ErrFull is returned when the device has no room or refuses to keep anything.
var ErrFull = errors.New("store: the device keeps nothing more")

// A Shelf keeps text under keys.
type Shelf interface {
	Get(key string) (text string, ok bool)
	Has(key string) bool
	Put(key, text string) error
	Delete(key string)
	Keys() []string
	Lasting() bool // whether what is put is there after the page is closed
}

// Memory is a shelf that lasts as long as the page.
func Memory() Shelf { return memory{} }

type memory map[string]string

func (m memory) Get(key string) (string, bool) { t, ok := m[key]; return t, ok }
func (m memory) Has(key string) bool           { _, ok := m[key]; return ok }
func (m memory) Put(key, text string) error    { m[key] = text; return nil }
func (m memory) Delete(key string)             { delete(m, key) }
func (m memory) Keys() []string                { return slices.Sorted(maps.Keys(m)) }
func (m memory) Lasting() bool                 { return false }

// Watched is a shelf that tells the key of each change made through it.
func Watched(shelf Shelf, told func(key string)) Shelf { return watched{shelf, told} }

type watched struct {
	Shelf
	told func(key string)
}

func (w watched) Put(key, text string) error {
	defer w.told(key)
	return w.Shelf.Put(key, text)
}

func (w watched) Delete(key string) {
	defer w.told(key)
	w.Shelf.Delete(key)
}
