package page

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// swapping tells whether a kitchen is without its fan: nothing is to come
// between the hand and the record then.
func (b *bench) swapping() bool {
	if b.Fan.Step.Value().Open() {
		return true
	}
	for _, id := range b.Fans.IDs() {
		if b.briefOf(id).stage.Open() {
			return true
		}
	}
	return false
}

func (b *bench) newRoof() {
	id, err := b.Fans.AddRoof("")
	if err != nil {
		b.Trouble = err
		return
	}
	b.open["roof "+id] = true
	b.focus(widget.ID("roof-" + id))
}

// roof draws a roof with its fans in serving order.
func (b *bench) roof(r store.Roof, l *listing) app.UI {
	name := r.Name
	if name == "" {
		name = b.T("roof.unnamed")
	}
	id := "roof " + r.ID
	return app.Section().Class("roof").ID("r-"+r.ID).Body(
		app.Div().Class("roof-head").Body(
			app.H2().Text(name),
			widget.Button(id+" edit", b.T("roof.edit"), "", b.toggle(id)).Aria("expanded", boolean(b.open[id])).Aria("label", b.T("roof.edit")+": "+name),
		),
		app.Div().Body(app.If(b.open[id], func() app.UI { return b.roofEdit(r) })),
		app.Ol().Class("fans").Body(app.Range(r.Fans).Slice(func(i int) app.UI {
			if r.Fans[i] == b.ID {
				return b.openFan(b.overall(app.IsClient && !l.seen))
			}
			return b.fanLine(r.Fans[i], l.next())
		})),
		app.If(len(r.Fans) >= nearlyFull, func() app.UI {
			return app.P().Class("notice watch").Role("status").Text(b.T("roof.full", "n", strconv.Itoa(len(r.Fans)), "most", strconv.Itoa(record.MostFans)))
		}),
		app.If(len(r.Fans) < record.MostFans, func() app.UI {
			return widget.Button("start "+r.ID, b.T("home.start"), "", b.guarded(func() { b.Start(r.ID, record.NewFan()); b.hold() }))
		}),
	)
}

// nearlyFull is how many fans a roof has when it says how many its file holds.
const nearlyFull = record.MostFans - 10

func (b *bench) roofEdit(r store.Roof) app.UI {
	return app.Div().Class("fields").Body(
		widget.Field{
			Key: "roof-" + r.ID, Load: b.Loads(), Label: b.T("roof.name"), Plain: true, Text: r.Name,
			OnType: b.guardedText(func(s string) { b.Trouble = b.Fans.NameRoof(r.ID, s) }),
		}.UI(),
		app.Div().Class("row").Body(
			widget.Button("export "+r.ID, b.T("file.save"), "", b.guarded(func() { b.export(r.ID) })),
			app.If(len(r.Fans) > 0, func() app.UI {
				return widget.Button("print "+r.ID, b.T("print.roof"), "", b.guarded(func() { b.putOnPaper(printRoof + r.ID) }))
			}),
			widget.Button("readings "+r.ID, b.T("file.readings"), "", b.guarded(func() { b.exportReadings(r.ID) })),
		),
		app.Div().Class("row").Body(widget.Button("roof "+r.ID+" remove", b.T("roof.remove"), "", b.guarded(func() { b.RemoveRoof(r.ID) }))),
	)
}

// fanLine is one kept fan: what it is called, how far it has come, how it stands; or the
// place for that.
func (b *bench) fanLine(id string, filled bool) app.UI {
	if !filled {
		return b.memo("fan "+id, func() app.UI { return app.Li().Class("fan") })
	}
	s := b.briefOf(id)
	name := s.name
	if name == "" {
		name = b.T("fan.unnamed")
	}
	stage, next, level := b.stage(s.stage), b.nextStep(s.stage), ""
	if s.judged {
		level = string(levels[s.worst.Level])
	}
	draw := func() app.UI {
		return app.Li().Class("fan").Body(widget.Button("open "+id, "", "wide fan-line", b.guarded(func() { b.Take(id) })).Body(
			app.Strong().Text(name),
			app.Span().Class("tag").Text(stage),
			app.Span().Class("next quiet").Body(
				app.Span().Text(next),
				// Its place is kept from the first; a fan not weighed yet is not one without a stop.
				app.Span().Class("stands").Body(
					app.If(s.judged, func() app.UI { return b.levelMark(s.worst.Level) }),
					app.If(!s.weighed, func() app.UI { return app.Span().Aria("hidden", "true").Text("…") }),
				),
			),
		))
	}
	return b.memo("fan "+id, draw, name, stage, next, level, boolean(s.weighed), b.words.Tag)
}

// openFan is the fan on the desk, with what can be done to it here. A handler stays from
// the first drawing, and asks how far the fan has come when it is tapped.
func (b *bench) openFan(how standing) app.UI {
	stage := b.Fan.Step.Value()
	next := stage.Next()
	done, kind := b.T("step.done"), "primary"
	if next.Proven() && how.judged && how.worst.Level == sheet.Stop { // said beside it; the hand may know better
		done, kind = b.T("step.anyway"), ""
	}
	return app.Li().Class("fan open").Body(
		b.field("name"),
		app.P().Class("stage").Body(
			app.Span().Class("tag").Text(b.stage(stage)),
			app.Span().Body(app.If(how.judged, func() app.UI { return b.levelMark(how.worst.Level) })),
			app.Span().Body(app.If(how.judged && how.worst.Level != sheet.Within, func() app.UI { return app.Span().Class("because").Text(b.T("rule."+string(how.worst.Rule)) + ".") })),
			app.Span().Text(b.nextStep(stage)),
		),
		app.Div().Class("row").Body(
			app.If(next != "", func() app.UI {
				return widget.Button("step next", done, kind, b.guarded(func() { b.stand(b.Fan.Step.Value().Next()) }))
			}),
			app.If(stage != "", func() app.UI {
				return widget.Button("step back", b.T("step.back"), "", b.guarded(func() { b.stand(b.Fan.Step.Value().Previous()) }))
			}),
		),
		app.Div().Class("row").Body(app.Range(calculators).Slice(func(i int) app.UI {
			return app.A().Class("button").Href(href(calculators[i].route)).Text(b.T("tab." + calculators[i].key))
		})),
		app.Div().Class("row").Body(
			widget.Button("earlier", b.T("fan.earlier"), "", b.guarded(func() { b.Shift(-1) })),
			widget.Button("later", b.T("fan.later"), "", b.guarded(func() { b.Shift(+1) })),
			widget.Button("copy fan", b.T("fan.copy"), "", b.guarded(b.Copy)),
			widget.Button("remove fan", b.T("fan.remove"), "", b.guarded(b.Remove)),
		),
	)
}

// stage names the step that a swap has come to.
func (b *bench) stage(g record.Stage) string {
	if g == "" {
		return b.T("stage.none")
	}
	return b.option(string(g))
}

// nextStep says what comes after a step, "" after the last.
func (b *bench) nextStep(g record.Stage) string {
	if g = g.Next(); g == "" {
		return ""
	}
	return b.T("step.next", "what", b.T("next."+string(g)))
}

// levelMark is a verdict's sign and word.
func (b *bench) levelMark(l sheet.Level) app.UI {
	level := levels[l]
	return app.Span().Class("level "+string(level)).Body(widget.Mark(level), app.Span().Class("quiet").Text(b.T("level."+string(level))))
}

// stand records the step that the swap has come to.
func (b *bench) stand(g record.Stage) {
	b.Do("", func() { b.must(b.Fan.Step.Set(string(g))) })
}
