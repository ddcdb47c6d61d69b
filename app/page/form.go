package page

import (
	"errors"
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/text"
	"roofside/app/widget"
	"roofside/calc/number"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// field draws the field of a place: a choice, a quantity or plain text.
func (b *bench) field(key string) app.UI { return b.fieldAs(key, b.label(key), b.side(key)) }

// paired draws the field of a place that stands beside its twin under one name, so
// that it is told by whose it is.
func (b *bench) paired(key string) app.UI {
	side, _, _ := strings.Cut(key, ".")
	return b.fieldAs(key, b.T("pair."+side), b.label(key))
}

func (b *bench) fieldAs(key, label, side string) app.UI {
	p := b.place(key)
	now := fieldState{
		place: p, text: p.Text(), typed: b.Typed(key), label: label, side: side, load: b.LoadsOf(key),
		typing: b.typing == key, fixed: b.Fan.ReadOnly(), words: b.words, locale: b.Locale, units: b.Settings.Units,
	}
	_, blamed := b.blamed[p]
	whole := !blamed && b.choosing != key // then the state says all that the field shows
	if was, ok := b.fieldsDrawn[key]; ok && whole && was.fieldState == now {
		return &memo{Key: was.key, Digest: was.digest}
	}
	var m *memo
	switch p := p.(type) {
	case record.Selector:
		m = b.choice(key, p, label, side)
	case record.Measure:
		m = b.quantity(key, p, label, side)
	default:
		m = b.plain(key, p, label, side)
	}
	if delete(b.fieldsDrawn, key); whole {
		b.fieldsDrawn[key] = drawnField{now, m.Key, m.Digest}
	}
	return m
}

// A fieldState is all that a field is drawn from, where nothing is wrong with its value and
// its ways of being known are not laid out: most fields stay as they are at a stroke.
type fieldState struct {
	place                    record.Place
	text, typed, label, side string
	load                     int
	typing, fixed            bool
	words                    *text.Catalog
	locale                   *number.Locale
	units                    unit.System
}

type drawnField struct {
	fieldState
	key, digest string // of its memo
}

// plain draws the field of what is no quantity: a name, a day, a note.
func (b *bench) plain(key string, p record.Place, label, side string) *memo {
	f := widget.Field{
		Key: key, Load: b.LoadsOf(key), Label: label, Side: side, Plain: true, Fixed: b.Fan.ReadOnly(), Text: b.Text(key, p),
		OnType: b.guardedText(func(s string) { b.Type(key, p, s) }),
	}
	switch p.(type) {
	case *record.Day:
		if f.Date = p.State() != record.Garbled; !f.Date { // a browser's calendar shows nothing of what is no day
			f.Error = b.fault(&number.Error{Rule: record.RuleDay, Text: record.Typed(p)})
		}
	case *record.Note:
		f.Lines, f.Note = true, b.hint(key)
	}
	if fault, ok := b.blamed[p]; ok {
		f.Error = b.fault(fault)
	}
	return b.memo("field "+key, f.UI, exact(float64(f.Load)), label, side, f.Text, f.Error, f.Note, boolean(f.Date), boolean(f.Fixed))
}

// fields draws several.
func (b *bench) fields(keys ...string) app.UI {
	return app.Div().Class("fields").Body(app.Range(keys).Slice(func(i int) app.UI { return b.field(keys[i]) }))
}

// mostChips is how many words are laid out to be tapped at once; of more, one
// is chosen from a list.
const mostChips = 10

func (b *bench) choice(key string, p record.Selector, label, side string) *memo {
	take := b.guardedText(func(s string) { b.take(key, s) })
	note, wrong := b.hint(key), ""
	if fault, ok := b.blamed[p]; ok {
		note, wrong = "", b.fault(fault)
	}
	var options []widget.Option
	for _, o := range p.Options() {
		options = append(options, widget.Option{Value: o, Label: b.optionIn(key, o), Chosen: p.Text() == o})
	}
	if len(options) > mostChips {
		s := widget.Select{Key: key, Load: b.LoadsOf(key), Label: label, Side: side, None: b.T("choice.none"), Note: note, Error: wrong, Options: options, OnTake: take}
		return b.memo("choice "+key, s.UI, exact(float64(s.Load)), label, side, note, wrong, p.Text())
	}
	c := widget.Choice{Key: key, Label: label, Side: side, Note: note, Error: wrong, Options: options, OnTake: take}
	shown := []string{label, side, note, wrong, p.Text()}
	for _, o := range options {
		shown = append(shown, o.Label)
	}
	return b.memo("choice "+key, c.UI, shown...)
}

// take chooses one of a place's words; the chosen one again leaves none.
func (b *bench) take(key, word string) {
	p := b.place(key).(record.Selector) // of the record that is open then: handlers outlive a link and an undo
	b.Do(key, func() {
		if r, ok := p.(*record.Choice[record.Rotation]); ok && word != "" && strings.HasPrefix(key, "new.") {
			if p.Text() == word && !sheet.RotationStale(b.Fan) {
				word = ""
			}
			b.must(sheet.RotationSeen(b.Fan, r, record.Rotation(word)))
			return
		}
		if p.Text() == word {
			word = ""
		}
		leads := sheet.LeadsNow(b.Fan)
		b.must(p.Set(word))
		if sheet.Reverses(leads, sheet.LeadsNow(b.Fan)) { // what was proven is proven no more
			b.must(b.Fan.New.Rotation.Set(""))
			b.must(b.Fan.New.RotationLow.Set(""))
		}
	})
}

// hint is a remark on a field, by its key or else by its name.
func (b *bench) hint(key string) string {
	for _, hint := range []string{"hint." + key, "hint." + fieldName(key)} {
		if b.words.Has(hint) {
			return b.T(hint, "nipple", b.nipple())
		}
	}
	return ""
}

// must stops at what can't go wrong unless the program does.
func (b *bench) must(err error) {
	if err != nil {
		panic(err)
	}
}

func fieldName(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// option words one of a closed set; section names are their own words.
func (b *bench) option(o string) string {
	if k := "option." + o; b.words.Has(k) {
		return b.T(k, "nipple", b.nipple())
	}
	return o
}

// nipple writes the greatest length of a nipple as the code gives it in each system of
// units (Chapter 9, note 4).
func (b *bench) nipple() string { return b.T("nipple." + systemName(b.Settings.Units)) }

// optionIn words an option of a place where others share its spelling: a trade
// size stands with its metric designator, a box with its shape.
func (b *bench) optionIn(key, o string) string {
	switch key {
	case "opening.size", "raceway.size":
		if n, err := raceway.Designator(raceway.TradeSize(o)); err == nil {
			return o + " (" + strconv.Itoa(n) + ")"
		}
	case "mount":
		return b.T("mount." + o)
	case "old.phases", "new.phases":
		return b.T("phases." + o)
	case "box.size":
		shape, size, _ := strings.Cut(o, " ")
		words := strings.NewReplacer("single", b.T("shape.single"), "multiple", b.T("shape.multiple"), " x ", " × ", "-", "\u2011") // a size is not broken at its hyphen
		return b.T("shape."+shape) + " " + words.Replace(size)
	}
	return b.option(o)
}

func (b *bench) quantity(key string, m record.Measure, label, side string) *memo {
	shown, scale := b.Shown(key, m), m.Fact().Scale
	f := widget.Field{
		Key: key, Load: b.LoadsOf(key), Label: label, Side: side, Text: b.Text(key, m), Unit: b.unit(shown.Label), Fixed: b.Fan.ReadOnly(),
		OnType:  b.guardedText(func(s string) { b.Type(key, m, s) }),
		OnFocus: b.guarded(func() { b.typing = key }),
	}
	if b.typing == key {
		f.Keys, f.KeysHelp = b.keys(m), b.T("keys")
	}
	if scale.US.Symbol != scale.SI.Symbol {
		f.UnitHelp = b.T("unit.switch", "unit", scale.Other(shown).Label)
		f.OnUnit = b.guarded(func() { b.Switch(key, m) })
	}
	b.basis(&f, key, m)
	b.noteOn(&f, key, m)
	return b.memo("field "+key, f.UI, exact(float64(f.Load)), f.Label, f.Side, f.Text, f.Unit, f.Basis, f.Error, f.Note, f.Other, strings.Join(f.Keys, ""), chosen(f.Ways))
}

// chosen tells which of the ways laid out holds.
func chosen(ways []widget.Option) string {
	s := ""
	for _, w := range ways {
		s += w.Value + boolean(w.Chosen)
	}
	return s
}

// keys lists the signs that belong to a kind of value.
func (b *bench) keys(m record.Measure) []string {
	mark := string([]rune(b.Locale.Localize("0.5"))[1])
	switch m.Kind().Name {
	case "length":
		if m.Fact().Scale.US.Symbol == "ft" {
			return []string{mark, "½", "/", " ", "'", `"`}
		}
		return []string{mark, "½", "¼", "¾", "/", " ", `"`}
	case "turns":
		return []string{mark, "½", "¼", "¾"}
	case "count":
		return nil
	}
	return []string{mark}
}

// basis offers how the value is known, and that it can't be read.
func (b *bench) basis(f *widget.Field, key string, m record.Measure) {
	switch m.State() {
	case record.Illegible:
		f.Basis = b.T("basis.illegible")
	case record.Known:
		if m.Basis() != "" {
			f.Basis = b.T("basis." + string(m.Basis()))
		}
	default:
		f.Basis = b.T("basis.none")
		if m.Fact().Basis == record.Stamped {
			f.Basis = b.T("basis.unread")
		}
	}
	f.BasisHelp = b.T("basis.help")
	f.OnBasis = b.guarded(func() {
		if b.choosing == key {
			b.choosing = ""
		} else {
			b.choosing = key
		}
	})
	if f.Choosing = b.choosing == key; !f.Choosing {
		return
	}
	for _, w := range record.Bases() {
		f.Ways = append(f.Ways, widget.Option{Value: string(w), Label: b.T("basis." + string(w)), Chosen: m.State() == record.Known && m.Basis() == w})
	}
	f.Ways = append(f.Ways, widget.Option{Value: illegible, Label: b.T("basis.cant"), Chosen: m.State() == record.Illegible})
	f.OnWay = b.guardedText(func(w string) {
		b.Do(key+" known", func() {
			if w == illegible {
				b.must(m.Set(illegible))
				b.ReloadField(key)
			} else {
				m.SetBasis(record.Basis(w))
			}
		})
		b.choosing = ""
	})
}

const illegible = "?"

// noteOn says beside the field what is wrong with it, how it was read, or what
// serves when it can't be read.
func (b *bench) noteOn(f *widget.Field, key string, m record.Measure) {
	r, err := b.Echo(key, m)
	switch {
	case err != nil:
		f.Error = b.refusal(key, err)
	case r.Echo && r.Other != "":
		f.Note = b.T("echo.either", "read", b.amount(r.Text))
		f.Other = b.T("echo.other", "read", b.amount(r.Other))
		f.OnOther = b.guarded(func() { // the button outlives what it was drawn for
			if r, err := b.Echo(key, m); err == nil && r.Other != "" {
				b.TakeOther(key, m, r.Other)
			}
		})
	case r.Echo:
		f.Note = b.T("echo.read", "read", b.amount(r.Text))
	case m.State() == record.Illegible && b.words.Has("instead."+fieldName(key)):
		f.Note = b.T("instead." + fieldName(key))
	default:
		f.Note = b.hint(key)
	}
	if err == nil && m.State() == record.Known && m.Band() > 0 && b.choosing == key {
		f.Note = b.T("basis.band", "band", b.Difference(&m.Fact().Scale, m.Band()), "unit", b.unit(m.Fact().Scale.In(b.Settings.Units).Label))
	}
	if fault, ok := b.blamed[m]; ok && f.Error == "" && !errors.As(fault, new(*number.Error)) {
		f.Error = b.fault(fault)
		f.Note, f.Other = "", ""
	}
}

// refusal words what is wrong with what was typed, in the field's own words where it
// has some.
func (b *bench) refusal(key string, err error) string {
	var n *number.Error
	if errors.As(err, &n) {
		if own := "refused." + string(n.Rule) + "." + fieldName(key); b.words.Has(own) {
			return b.T(own)
		}
	}
	return b.fault(err)
}

// section draws a part of a page that opens and closes; what is closed costs
// nothing to draw.
func (b *bench) section(id, title, summary string, body func() app.UI) app.UI {
	open := b.open[id]
	head := func() app.UI {
		return app.H2().Body(widget.Button("section "+id, title, "section-head", b.toggle(id)).Aria("expanded", boolean(open)).
			Body(app.Span().Text(title), app.If(summary != "", func() app.UI { return app.Small().Text(summary) })))
	}
	return app.Section().Class("section").ID(id).Body(
		b.memo("section "+id, head, title, summary, boolean(open)),
		app.If(open, body),
	)
}

func boolean(b bool) string {
	if b {
		return "true"
	}
	return "false"
}

// mostWanted is how many ways to a field are laid out at once; the plate that
// stays in view has room for one, or it would hide the fields.
const mostWanted = 3

// wanted lists what is missing, each a way to its field.
func (b *bench) wanted(name string, ps []record.Place, most int) app.UI {
	shown := ps[:min(len(ps), most)]
	return app.Ul().Class("wanted").Aria("label", b.T("wanted.label")).Body(app.Range(shown).Slice(func(i int) app.UI {
		key := b.keyOf(shown[i])
		return app.Li().Body(widget.Button("to "+name+" "+key, b.full(key), "to", b.guarded(func() { b.jump(key) })))
	}), app.If(len(ps) > most, func() app.UI {
		return app.Li().Class("more").Text(strings.TrimSpace(b.others(len(ps) - most)))
	}))
}
