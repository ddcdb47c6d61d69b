package store

import (
	"encoding/json"
	"fmt"
	"strings"
	"sync"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// prefix sets this program's entries apart from others of the same origin, and from
// another copy's: see web/first/storage.js.
var prefix = sync.OnceValue(func() string { return app.Window().Get("roofside").Get("prefix").String() })

// lastEntry is the moment of the last change, by which the journal is compared.
const lastEntry = "last"

// Browser returns the browser's own shelf, or one in memory where the browser
// refuses to keep anything.
func Browser() Shelf {
	if app.IsServer || app.Window().Get("roofside").Get("storage").String() != "kept" {
		return Memory()
	}
	return browser{app.Window().Get("localStorage"), app.Window().Get("sessionStorage")}
}

// Elsewhere calls told with the key of each entry that another tab of this site
// changes, for as long as the program runs.
func Elsewhere(told func(key string)) {
	app.Window().Call("addEventListener", "storage", app.FuncOf(func(_ app.Value, args []app.Value) any {
		if key, ok := strings.CutPrefix(args[0].Get("key").String(), prefix()); ok && key != lastEntry {
			told(key)
		}
		return nil
	}))
}

// browser is what all tabs share, and what this tab has for itself: that outlives a
// reload, not the tab.
type browser struct{ storage, tab app.Value }

func (b browser) Get(key string) (string, bool) {
	if key == OpenEntry {
		if text, ok := get(b.tab, key); ok {
			return text, true
		}
	}
	return get(b.storage, key)
}

// Has leaves the text where it is: a save asks this at every stroke.
func (b browser) Has(key string) bool {
	return !b.storage.Call("getItem", prefix()+key).IsNull()
}

func get(storage app.Value, key string) (string, bool) {
	v := storage.Call("getItem", prefix()+key)
	if v.IsNull() || v.IsUndefined() {
		return "", false
	}
	return v.String(), true
}

func (b browser) Put(key, text string) error {
	if key == OpenEntry && put(b.tab, key, text) != nil {
		b.tab.Call("removeItem", prefix()+key) // an older one would be taken for it
	}
	if err := put(b.storage, key, text); err != nil {
		return err
	}
	noted(key)
	return nil
}

// put reports a full storage, which the browser throws.
func put(storage app.Value, key, text string) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%w: %v", ErrFull, r)
		}
	}()
	storage.Call("setItem", prefix()+key, text)
	return nil
}

func (b browser) Delete(key string) {
	if key == OpenEntry {
		b.tab.Call("removeItem", prefix()+key)
	}
	b.storage.Call("removeItem", prefix()+key)
	noted(key)
}

// noted tells the journal, which is written down sooner than the storage is.
func noted(key string) { app.Window().Get("roofside").Call("noted", key) }

// Keys asks the browser once: a question for each key costs a slow phone as much as a
// row of the list.
func (b browser) Keys() []string {
	var all, keys []string
	text := app.Window().Get("JSON").Call("stringify", app.Window().Get("Object").Call("keys", b.storage)).String()
	if err := json.Unmarshal([]byte(text), &all); err != nil {
		panic(err) // what JSON.stringify makes of texts can be read
	}
	for _, k := range all {
		if k, ok := strings.CutPrefix(k, prefix()); ok {
			keys = append(keys, k)
		}
	}
	return keys
}

func (b browser) Lasting() bool { return true }
