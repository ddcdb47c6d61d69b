package page

import (
	"errors"
	"strconv"
	"strings"
	"unicode"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
)

// An arrival is a file that was chosen, before it is taken.
type arrival struct {
	roof  *record.Roof
	doubt int    // values that could not be used
	why   string // why there is no roof
}

// export hands the file of a roof to the user.
func (b *bench) export(id string) {
	roof := b.roofOf(id)
	data, err := roof.Marshal()
	if err != nil {
		b.arrival = &arrival{why: b.T("file.newer")}
		if errors.Is(err, record.ErrTooLarge) {
			b.arrival.why = b.T("file.full", "most", strconv.Itoa(record.MostFans))
		}
		return
	}
	save(fileName(roof.Name)+".roof.json", "application/json", string(data))
}

// exportReadings hands what was read on a roof to the user, as CSV.
func (b *bench) exportReadings(id string) {
	roof := b.roofOf(id)
	var text strings.Builder
	b.must(roof.WriteReadings(&text, b.Settings.Units, b.Locale.DecimalMark())) // a builder takes everything
	save(fileName(roof.Name)+".csv", "text/csv", text.String())
}

func save(name, kind, text string) { app.Window().Get("roofside").Call("save", name, kind, text) }

// roofOf reads a roof as it is kept now: a handler may be older than its name and its fans.
func (b *bench) roofOf(id string) *record.Roof {
	roof := &record.Roof{}
	for _, r := range b.Fans.Roofs() {
		if r.ID != id {
			continue
		}
		roof.Name = r.Name
		for _, fan := range r.Fans {
			if f, _, err := b.Fans.Load(fan); err == nil {
				roof.Fans = append(roof.Fans, f)
			}
		}
	}
	return roof
}

// fileName makes a name that any file system takes.
func fileName(s string) string {
	s = strings.Trim(strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return r
		}
		return '-'
	}, s), "-")
	if s == "" {
		return "roof"
	}
	return s
}

// pick lets the user choose a file.
func (b *bench) pick() {
	app.Window().Get("roofside").Call("pick").Then(func(text app.Value) {
		b.ctx.Dispatch(func(app.Context) { b.guarded(func() { b.arrive(text.String()) })() })
	})
}

// arrive reads a file and lays out what it holds.
func (b *bench) arrive(text string) {
	roof, problems, err := record.UnmarshalRoof([]byte(text))
	a := &arrival{roof: roof}
	for _, p := range problems {
		for _, part := range p {
			if part.Err != record.ErrLater { // which is carried along
				a.doubt++
			}
		}
	}
	switch {
	case errors.Is(err, record.ErrNewer):
		a.why = b.T("file.newer")
	case errors.Is(err, record.ErrTooLarge):
		a.why = b.T("file.large")
	case err != nil:
		a.why = b.T("file.not")
	}
	b.arrival = a
}

// arrived shows what a file holds, and takes it on the user's word: as a roof of
// its own, so that it replaces nothing.
func (b *bench) arrived() app.UI {
	a := b.arrival
	if a == nil {
		return app.Div()
	}
	leave := widget.Button("file leave", b.T("file.leave"), "", b.guarded(func() { b.arrival = nil }))
	if a.roof == nil {
		return app.Div().Class("notice watch").Role("status").Body(app.P().Text(a.why), leave)
	}
	return app.Div().Class("notice").Role("status").Body(
		app.P().Text(b.counted("file.holds.one", "file.holds", len(a.roof.Fans), "roof", a.roof.Name)),
		app.Ul().Body(app.Range(a.roof.Fans).Slice(func(i int) app.UI {
			name := a.roof.Fans[i].Name.Text()
			if name == "" {
				name = b.T("fan.unnamed")
			}
			return app.Li().Text(name)
		})),
		app.If(a.doubt > 0, func() app.UI {
			return app.P().Text(b.counted("file.doubt.one", "file.doubt", a.doubt))
		}),
		app.Div().Class("row").Body(widget.Button("file take", b.T("file.take"), "primary", b.guarded(b.takeArrival)), leave),
	)
}

// takeArrival adds the roof, or, where there is no room for all of it, nothing.
func (b *bench) takeArrival() {
	id, err := b.Fans.AddRoof(b.arrival.roof.Name)
	for _, f := range b.arrival.roof.Fans {
		if err == nil {
			err = b.Fans.Add(id, "", store.NewID(), f)
		}
	}
	if err != nil {
		_, undone := b.Fans.RemoveRoof(id)
		b.Trouble = errors.Join(err, undone)
		return
	}
	b.arrival, b.Trouble = nil, nil
}
