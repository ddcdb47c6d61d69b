package page

import (
	"slices"
	"strings"
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/store"
	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// What can be printed of a fan.
const (
	printSheet = "sheet"
	printLabel = "label"
)

// outward is what leaves the page: paper, a link, a file.
func (v *recordView) outward(route string) app.UI {
	return app.Section().Class("outward").Body(
		app.H2().Text(v.T("record.out")),
		app.Div().Class("row").Body(
			widget.Button("print sheet", v.T("print.sheet"), "", v.guarded(func() { v.putOnPaper(printSheet) })),
			widget.Button("print label", v.T("print.label"), "", v.guarded(func() { v.putOnPaper(printLabel) })),
			app.If(v.ID != store.Scratch, func() app.UI {
				return widget.Button("export roof", v.T("file.save"), "", v.guarded(v.exportOpen))
			}),
		),
		v.sharing(route),
	)
}

// exportOpen hands out the file of the roof that the open fan is on.
func (b *bench) exportOpen() {
	roofs := b.Fans.Roofs()
	if i := store.RoofOf(roofs, b.ID); i >= 0 {
		b.export(roofs[i].ID)
	}
}

// putOnPaper opens the browser's own print, once the page shows what is to be
// printed.
func (b *bench) putOnPaper(what string) {
	b.printing, b.paper = what, b.Saves()
	if b.live {
		b.ctx.Defer(func(app.Context) { app.Window().Call("print") })
	}
}

// atRest is how long nothing is typed before the paper is drawn anew: the browser's
// own command to print asks nobody, so it must be ready, and a stroke can't wait for
// it.
const atRest = 600 * time.Millisecond

// print is what goes on paper: unseen on the screen.
func (v *recordView) print() app.UI {
	switch now := v.Saves(); {
	case !v.live:
		v.paper = now
	case v.paper != now && !v.resting:
		v.rest()
	}
	return v.memo("paper", func() app.UI {
		now := newRecordView(v.bench)
		if v.printing == printLabel {
			return app.Div().Class("paper").Aria("hidden", "true").Body(now.coverLabel())
		}
		return app.Div().Class("paper").Aria("hidden", "true").Body(now.sheet())
	}, v.printing, v.words.Tag, systemName(v.Settings.Units), exact(float64(v.paper)))
}

// rest waits until nothing has been typed for a while, and lets the page be until then.
func (b *bench) rest() {
	now := b.Saves()
	b.resting = true
	b.ctx.After(atRest, func(ctx app.Context) {
		if b.Saves() != now {
			ctx.PreventUpdate()
			b.rest()
			return
		}
		b.resting, b.paper = false, now
	})
}

func (v *recordView) fanName() string {
	if name := v.Fan.Name.Text(); name != "" {
		return name
	}
	return v.T("fan.unnamed")
}

func (v *recordView) roofName() string {
	roofs := v.Fans.Roofs()
	if i := store.RoofOf(roofs, v.ID); i >= 0 {
		return roofs[i].Name
	}
	return ""
}

// sheet is the start-up record on one side of paper.
func (v *recordView) sheet() app.UI {
	h := &v.Fan.Handover
	rows := v.rows()
	return app.Article().Class("sheet").Body(
		app.Header().Body(
			app.H2().Text(v.T("record.title")),
			app.P().Body(app.Strong().Text(v.fanName()), app.If(v.roofName() != "", func() app.UI { return app.Text(" · " + v.roofName()) })),
			app.P().Text(v.T("print.by", "by", v.held(&h.By), "on", v.held(&h.On), "due", v.held(&h.BeltDue), "stage", v.stage(v.Fan.Step.Value()))),
			v.printedWorst(),
		),
		app.Table().Class("figures").Body(v.figureHead(), app.TBody().Body(app.Range(rows).Slice(func(i int) app.UI { return v.figureLine(rows[i], true) }))),
		app.Div().Class("two").Body(v.plates(), app.Div().Body(v.printedLog(), v.printedNotes())),
		v.printedChecks(),
		app.P().Class("small").Text(v.T("print.small")),
	)
}

// printedWorst says what is held against the fan, of the worst level there is: a record
// that shows verdicts beside its figures must not leave out a stop that has none there.
func (v *recordView) printedWorst() app.UI {
	all := v.against()
	worst := sheet.Plated(all)
	var names []string
	for _, x := range all {
		if name := v.T("rule." + string(x.Rule)); x.Level == worst.Level && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	if worst.Level == sheet.Within || len(all) == 0 {
		return app.Div()
	}
	return app.P().Class("held").Body(v.levelMark(worst.Level), app.Text(" "+strings.Join(names, ", ")))
}

// plates are old and new, line by line.
func (v *recordView) plates() app.UI {
	var lines []sheet.Line
	for _, l := range v.lines {
		if l.Old.State() != record.Unknown || l.New.State() != record.Unknown {
			lines = append(lines, l)
		}
	}
	return app.Table().Class("plates").Body(
		app.THead().Body(app.Tr().Body(app.Td(), app.Th().Text(v.T("side.old")), app.Th().Text(v.T("side.new")))),
		app.TBody().Body(app.Range(lines).Slice(func(i int) app.UI {
			l := lines[i]
			mark := ""
			if l.Differs() {
				mark = " ≠"
			}
			return app.Tr().Body(app.Th().Text(v.lineName(l)+mark), app.Td().Text(v.held(l.Old)), app.Td().Text(v.held(l.New)))
		})),
	)
}

// mostPrinted is how many readings a sheet has room for, the latest; the file has
// all.
const mostPrinted = 8

func (v *recordView) printedLog() app.UI {
	ts := v.Fan.Trials
	more := max(len(ts)-mostPrinted, 0)
	return app.Div().Body(
		app.H3().Text(v.T("section.readings")),
		v.logTable(ts[more:]),
		app.If(more > 0, func() app.UI { return app.P().Text(v.T("print.earlier", "n", v.whole(more))) }),
	)
}

func (v *recordView) printedNotes() app.UI {
	if v.Fan.Handover.Notes.State() != record.Known {
		return app.Div()
	}
	return app.Div().Body(app.H3().Text(v.label("handover.notes")), app.P().Class("notes-text").Text(v.Fan.Handover.Notes.Text()))
}

// printedMarks stand on paper for what became of an item.
var printedMarks = map[sheet.ItemState]string{sheet.Open: "☐", sheet.Done: "☑", sheet.NotApplicable: "–", sheet.Unreasoned: "☐", sheet.Failed: "✕"}

func (v *recordView) printedChecks() app.UI {
	return app.Div().Class("printed-checks").Body(app.Range(v.parts).Slice(func(i int) app.UI {
		p := v.parts[i]
		return app.Div().Body(app.H3().Text(v.T("part."+p.Name)), app.Ul().Body(app.Range(p.Items).Slice(func(i int) app.UI {
			item := p.Items[i]
			s := printedMarks[item.State] + " " + v.T("item."+item.Name)
			if item.State == sheet.NotApplicable {
				s += ": " + item.Check.Why.Text()
			}
			return app.Li().Text(s)
		})))
	}))
}

// coverLabel is for the inside of the fan's cover.
func (v *recordView) coverLabel() app.UI {
	f := v.Fan
	left := f.Left()
	if left == nil {
		left = &record.Trial{}
	}
	line := func(label, value string) app.UI { return app.Tr().Body(app.Th().Text(label), app.Td().Text(value)) }
	pitch := func(a sheet.Answer[unit.Length]) string {
		if !a.Known() {
			return "—"
		}
		s, u := v.Figure(&unit.Shop, float64(a.Value))
		return s + " " + u
	}
	var rows []app.UI
	if v.driven {
		rows = append(rows,
			line(v.T("figure.turns"), v.held(&left.Turns)),
			line(v.T("print.sheaves"), pitch(sheet.MotorPitchAt(&f.New, sheet.TrialTurns(left)))+" / "+pitch(sheet.FanPitch(&f.New))),
			line(v.label("new.belt-number"), v.held(&f.New.BeltNumber)),
			line(v.T("figure.speed"), v.held(&left.Reading.Speed)))
	}
	rows = append(rows,
		line(v.T("figure.amps"), v.three(&left.Reading.Amps[0], &left.Reading.Amps[1], &left.Reading.Amps[2])),
		line(v.T("figure.volts"), v.three(&left.Reading.Volts[0], &left.Reading.Volts[1], &left.Reading.Volts[2])),
		line(v.label("handover.on"), v.held(&f.Handover.On)))
	if v.driven {
		rows = append(rows, line(v.label("handover.belt-due"), v.held(&f.Handover.BeltDue)))
	}
	return app.Article().Class("fan-label").Body(
		app.H2().Text(v.fanName()),
		app.Table().Body(app.TBody().Body(rows...)),
		app.If(f.New.Restart.Value() == record.ByItself, func() app.UI { return app.P().Text(v.T("print.restart")) }),
	)
}
