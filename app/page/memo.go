package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// A memo is a part of a page that is drawn anew only when what it shows has
// changed. go-app compares a component's exported fields before it redraws it;
// functions never compare equal, so the way to draw is kept on the bench.
type memo struct {
	app.Compo
	Key    string
	Digest string
}

// Render draws the part.
func (m *memo) Render() app.UI { return shared.drawings[m.Key]() }

// memo returns a part that shows the given texts and nothing else. What its
// handlers hold must not outlive a reload of the record.
func (b *bench) memo(key string, draw func() app.UI, shown ...string) *memo {
	b.drawings[key] = draw
	return &memo{Key: key, Digest: exact(float64(b.Loads())) + strings.Join(shown, "\x00")}
}
