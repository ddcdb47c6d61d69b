package page

import (
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
)

// A listing fills the list of fans: at first the rows that the screen may show, the rest
// in the strokes after. A row takes a slow phone some milliseconds, and a roof may have
// forty. Each has its place from the first, so that nothing moves when it comes.
type listing struct {
	rows int // of closed fans, that are filled
	left int // of those, for what is still to be drawn
	due  bool
	seen bool // the first of it was drawn
}

const (
	rowHeight = 78 // px, about, with the gap below it
	rowsMore  = 15
	rest      = 30 * time.Millisecond // lets the hand in between
)

// begin goes before the rows.
func (l *listing) begin() {
	if l.rows == 0 && app.IsClient {
		_, height := app.Window().Size()
		l.rows = max(height/rowHeight, 6)
	}
	l.left, l.due = l.rows, false
}

// next tells whether the next row is filled.
func (l *listing) next() bool {
	if app.IsServer {
		return true
	}
	l.left--
	l.due = l.due || l.left < 0
	return l.left >= 0
}

// later goes on with what is left out of a stroke: how the open fan stands, then the
// rows, then how the others stand.
func (b *bench) later(l *listing, roofs []store.Roof) {
	if b.listing || !b.live {
		return
	}
	work := func() { l.rows += rowsMore }
	switch {
	case !l.seen:
		work = func() { l.seen = true }
	case !l.due:
		if work = b.weighing(roofs); work == nil {
			return
		}
	}
	b.listing = true
	b.ctx.Defer(func(ctx app.Context) { // once this stroke is drawn, so that it is seen first
		ctx.After(rest, func(app.Context) { b.listing = false; work() })
	})
}
