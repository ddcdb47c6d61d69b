// Package page holds the pages, one file each, and what they share: the bench
// that the user works at.
package page

import (
	"fmt"
	"maps"
	"net/url"
	"slices"
	"strings"
	"sync"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/desk"
	"roofside/app/store"
	"roofside/app/text"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A bench is the desk with what is laid open on it. There is one, for there is
// one user; pages are views on it and come and go.
type bench struct {
	*desk.Desk
	words *text.Catalog

	open     map[string]bool // sections and workings
	choosing string          // the field whose ways of knowing are laid out
	pad      string          // the place that is being counted
	embedded bool
	update   bool   // a new version waits
	link     string // as last copied
	printing string // what goes on paper
	paper    int    // the change of the record that is on it
	resting  bool   // the next is waited for
	copied   string // as last copied, but for a link

	blocked    bool // the browser keeps nothing for this page
	reckoning  *reckoned
	matching   *matched
	perishable bool   // the browser promises nothing for what is stored
	title      string // as the browser shows it
	typing     string // the field that has the focus
	bound      string // the field that a jump to another page leads to

	arrival     *arrival                 // a file that was chosen
	briefs      map[string]brief         // of kept fans
	listing     bool                     // some are about to be drawn or weighed
	weighed     weighed                  // the open fan
	drawings    map[string]func() app.UI // how the parts of the page are drawn
	fieldsDrawn map[string]drawnField    // of the fields, as last drawn
	blamed      map[record.Place]error   // values that a formula refused, while a page is drawn

	visited bool // a page has been shown before this one

	crash  string // what went wrong in the hand
	ctx    app.Context
	live   bool // a page is mounted, so that ctx can be used
	places map[string]record.Place
	keyed  map[record.Place]string // the same, the other way
	of     *record.Fan             // whose places those are,
	rows   [2]int                  // and with how many trials and rows of conductors
}

var shared = unopened()

// unopened is what the site is written from; a browser's own follows in Begin.
func unopened() *bench {
	if app.IsClient {
		return nil
	}
	return newBench(store.Memory(), "en-US")
}

func newBench(shelf store.Shelf, language string) *bench {
	b := &bench{open: map[string]bool{}, blamed: map[record.Place]error{}, briefs: map[string]brief{}, drawings: map[string]func() app.UI{}, fieldsDrawn: map[string]drawnField{}}
	b.Desk = desk.Open(store.Watched(shelf, b.outdated), language)
	b.words = text.For(b.Settings.TextTag())
	return b
}

// speak puts the words of the chosen language on the screen.
func (b *bench) speak() {
	b.words = text.For(b.Settings.TextTag())
	if app.IsClient {
		app.Window().Get("document").Get("documentElement").Set("lang", b.words.Tag)
	}
}

// asked lets an address choose words, units and looks for as long as the page
// is open. What it asks for that there isn't is passed over.
func (b *bench) asked(q url.Values) {
	b.Ask(func(s *desk.Settings) {
		if lang := q.Get("lang"); text.Knows(lang) {
			s.Language = text.For(lang).Tag
		}
		if y, ok := systems[q.Get("units")]; ok {
			s.Units, s.Fields = y, map[string]unit.System{}
		}
		if look := q.Get("look"); look != "" && slices.Contains(looks, look) {
			s.Look = look
		}
	})
}

// Begin opens the bench in the browser. An embedded page keeps nothing, so
// that two frames never meet.
func Begin() {
	u := app.Window().URL()
	_, embedded := u.Query()["embed"]
	shelf := store.Memory()
	if !embedded {
		shelf = store.Browser()
	}
	shared = newBench(shelf, app.Window().Get("navigator").Get("language").String())
	shared.embedded, shared.blocked = embedded, !embedded && !shelf.Lasting()
	shared.resume()
	if shelf.Lasting() {
		store.Elsewhere(shared.follows)
	}
	if embedded {
		app.Window().Get("roofside").Set("storage", "none") // by choice: what ends the program must not say it is kept
	}
	shared.asked(u.Query())
	shared.speak()
	if fragment := u.EscapedFragment(); fragment != "" && !entryOf(fragment) {
		shared.guarded(func() { shared.Follow(fragment) })()
		u.Fragment, u.RawFragment = "", ""
		app.Window().Get("history").Call("replaceState", nil, "", u.String())
	}
	// Held for as long as the program runs.
	app.Window().Call("addEventListener", "roofside-offline", app.FuncOf(func(app.Value, []app.Value) any {
		if shared.live {
			shared.ctx.Dispatch(func(app.Context) {})
		}
		return nil
	}))
	app.Window().Call("addEventListener", "roofside-update", app.FuncOf(func(app.Value, []app.Value) any {
		shared.tell()
		return nil
	}))
}

// follows goes on with what another tab has changed.
func (b *bench) follows(key string) {
	if b.live {
		b.ctx.Dispatch(func(app.Context) {
			b.printing = "" // what a roof's sheets show may be another's by now
			b.outdated(key)
			if store.FanOf(key) == b.ID {
				b.weighed = weighed{}
			}
			b.Follows(key)
		})
	}
}

// place returns the place with a key.
func (b *bench) place(key string) record.Place {
	if rows := [2]int{len(b.Fan.Trials), len(b.Fan.Wires)}; b.of != b.Fan || b.rows != rows || b.places == nil {
		b.places, b.of, b.rows = maps.Collect(b.Fan.Places()), b.Fan, rows
		b.keyed = make(map[record.Place]string, len(b.places))
		for k, p := range b.places {
			b.keyed[p] = k
		}
	}
	return b.places[key]
}

// keyOf returns the key of a place.
func (b *bench) keyOf(p record.Place) string {
	b.place("")
	return b.keyed[p]
}

// anchors tells whether the engine itself keeps what is looked at in its place.
var anchors = sync.OnceValue(func() bool {
	return app.Window().Get("CSS").Call("supports", "overflow-anchor", "auto").Bool()
})

// still keeps the element under the hand where it is on the screen while what stands
// above it changes its height, where the engine doesn't: it takes a layout more.
func (b *bench) still() {
	if !b.live || anchors() {
		return
	}
	document := app.Window().Get("document")
	held := document.Get("activeElement")
	if !held.Truthy() || held.Equal(document.Get("body")) {
		return // nothing is under the hand, and asking where it is costs a layout
	}
	top := func() float64 { return held.Call("getBoundingClientRect").Get("top").Float() }
	before := top()
	b.ctx.Defer(func(app.Context) {
		if moved := top() - before; held.Get("isConnected").Bool() && (moved > 1 || moved < -1) {
			app.Window().Call("scrollBy", 0, moved)
		}
	})
}

// guarded runs what a hand has caused. If it fails, the record is as it was
// last kept, the failure is shown, and the page goes on.
func (b *bench) guarded(act func()) func() {
	return func() {
		defer b.catch()
		inject("handler")
		b.still()
		act()
	}
}

func (b *bench) guardedText(act func(string)) func(string) {
	return func(s string) { b.guarded(func() { act(s) })() }
}

func (b *bench) catch() {
	if r := recover(); r != nil {
		b.crash = fmt.Sprint(r)
	}
}

// inject fails on purpose where a browser test has asked for it by setting
// window.roofside.fail. No link and no record can.
func inject(where string) {
	if app.IsServer {
		return
	}
	if app.Window().Get("roofside").Get("fail").String() == where {
		app.Window().Get("roofside").Set("fail", "")
		panic("a failure injected into a " + where)
	}
}

// toggle opens or closes a section or a working.
func (b *bench) toggle(id string) func() {
	return b.guarded(func() { b.open[id] = !b.open[id] })
}

// T returns a sentence of the catalog.
func (b *bench) T(key string, pairs ...string) string { return b.words.T(key, pairs...) }

// focus moves the focus to an element once the page has been drawn.
func (b *bench) focus(id string) {
	if !b.live {
		return
	}
	b.ctx.Defer(func(app.Context) {
		if e := app.Window().GetElementByID(id); e.Truthy() {
			if id != "main" {
				e.Call("scrollIntoView", map[string]any{"block": "center"})
			}
			e.Call("focus", map[string]any{"preventScroll": true})
		}
	})
}

// href returns the address of a page of this site, wherever the site stands.
func href(route string) string {
	if app.IsClient {
		return rootOnce() + route
	}
	return root() + route
}

// rootOnce asks the browser once: it is asked at each link, and the site stays where it is.
var rootOnce = sync.OnceValue(root)

func root() string { return strings.TrimRight(app.Getenv("GOAPP_ROOT_PREFIX"), "/") }

// tell says that a new version waits.
func (b *bench) tell() {
	if b.live {
		b.ctx.Dispatch(func(app.Context) { b.update = true })
	}
}
