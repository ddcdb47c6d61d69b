package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
)

// printRoof begins what is printed of a whole roof; its id follows.
const printRoof = "roof "

// roofOnPaper is a sheet for each fan of the roof that is to be printed: nothing until
// that is asked for, and nothing any more once something has changed.
func (b *bench) roofOnPaper(roofs []store.Roof) app.UI {
	return app.Div().Class("on-paper").Body(app.Range(roofs).Slice(func(i int) app.UI {
		r := roofs[i]
		if b.printing != printRoof+r.ID || b.paper != b.Saves() {
			return app.Div()
		}
		return b.memo("paper of roof", func() app.UI {
			return app.Div().Class("paper").Aria("hidden", "true").Body(b.sheets(r)...)
		}, b.printing, b.words.Tag, systemName(b.Settings.Units), exact(float64(b.paper)))
	}))
}

// sheets are those of a roof's fans, in their order. A fan that can't be read has none,
// and is said to be set aside.
func (b *bench) sheets(r store.Roof) (all []app.UI) {
	for _, id := range r.Fans {
		if other := b.with(id); other != nil {
			all = append(all, newRecordView(other).sheet())
		}
	}
	return all
}

// with returns the bench with another fan on it, to be looked at and not worked on.
func (b *bench) with(id string) *bench {
	if id == b.ID {
		return b
	}
	f, _, err := b.Fans.Load(id)
	if err != nil {
		b.Damaged = true
		return nil
	}
	desk, other := *b.Desk, *b
	desk.Fan, desk.ID = f, id
	other.Desk, other.places, other.keyed, other.of, other.reckoning = &desk, nil, nil, nil, nil
	return &other
}
