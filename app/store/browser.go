package store

import (
	"fmt"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// prefix sets this program's entries apart from others of the same origin.
const prefix = "roofside/"

// lastEntry is the moment of the last change, by which the journal is compared.
const lastEntry = "last"

// Browser returns the browser's own shelf, or one in memory where the browser
// refuses to keep anything.
func Browser() Shelf {
	if app.IsServer || app.Window().Get("roofside").Get("storage").String() != "kept" {
		return Memory()
	}
	return browser{app.Window().Get("localStorage")}
}

// Elsewhere calls told with the key of each entry that another tab of this site
// changes, for as long as the program runs.
func Elsewhere(told func(key string)) {
	app.Window().Call("addEventListener", "storage", app.FuncOf(func(_ app.Value, args []app.Value) any {
		if key, ok := strings.CutPrefix(args[0].Get("key").String(), prefix); ok && key != lastEntry {
			told(key)
		}
		return nil
	}))
}

type browser struct{ storage app.Value }

func (b browser) Get(key string) (string, bool) {
	v := b.storage.Call("getItem", prefix+key)
	if v.IsNull() || v.IsUndefined() {
		return "", false
	}
	return v.String(), true
}

// Put reports a full storage, which the browser throws.
func (b browser) Put(key, text string) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%w: %v", ErrFull, r)
		}
	}()
	b.storage.Call("setItem", prefix+key, text)
	noted(key)
	return nil
}

func (b browser) Delete(key string) {
	b.storage.Call("removeItem", prefix+key)
	noted(key)
}

// noted tells the journal, which is written down sooner than the storage is.
func noted(key string) { app.Window().Get("roofside").Call("noted", key) }

func (b browser) Keys() []string {
	var keys []string
	for i := range b.storage.Get("length").Int() {
		if k, ok := strings.CutPrefix(b.storage.Call("key", i).String(), prefix); ok {
			keys = append(keys, k)
		}
	}
	return keys
}

func (b browser) Lasting() bool { return true }
