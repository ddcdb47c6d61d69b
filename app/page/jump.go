package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
)

// homes tells on which page a section stands, for the way to a field that the
// page in view does not have.
var homes = map[string]string{
	"job": "/drive/", "target": "/drive/", "old": "/drive/", "amps": "/drive/", "plate": "/drive/", "new": "/drive/", "base": "/drive/", "readings": "/drive/",
	"reference": "/airflow/", "want": "/airflow/", "hood": "/airflow/",
	"belt": "/belt/", "shaft": "/belt/",
	"rotation": "/power/", "roll": "/power/", "overload": "/power/", "meters": "/power/",
	"fit": "/record/", "closing": "/record/",
	"opening": "/raceway/", "wired-motor": "/raceway/", "circuit": "/raceway/", "box": "/raceway/", "wires": "/raceway/",
}

// jump opens the section a field stands in and moves the focus there; where the
// page in view does not have it, on the page that does.
func (b *bench) jump(key string) {
	b.unfold(key)
	if !b.live {
		return
	}
	b.ctx.Defer(func(ctx app.Context) {
		if b.land(key) {
			return
		}
		for _, id := range sectionsOf(key) {
			route, ok := homes[id]
			if strings.HasPrefix(id, "part ") {
				route, ok = "/record/", true
			}
			if ok {
				b.bound = key
				ctx.Navigate(href(route))
				return
			}
		}
	})
}

// land moves the focus to a field, if the page has it.
func (b *bench) land(key string) bool {
	e := app.Window().GetElementByID(widget.ID(key))
	if !e.Truthy() {
		return false
	}
	e.Call("scrollIntoView", map[string]any{"block": "center"})
	e.Call("focus", map[string]any{"preventScroll": true})
	return true
}

// follow goes on with a jump that has led to another page; it tells whether there was
// one.
func (b *bench) follow(ctx app.Context) bool {
	key := b.bound
	if b.bound = ""; key == "" {
		return false
	}
	b.unfold(key)
	ctx.Defer(func(app.Context) { b.land(key) })
	return true
}
