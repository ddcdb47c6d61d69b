package page

import (
	"slices"
	"time"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Record is the start-up record: as found, as left, what was checked, what differs
// and what to bring.
type Record struct{ leaf }

// NewRecord returns the page.
func NewRecord() *Record { return &Record{leaf{route: "/record/"}} }

// Render draws the page.
func (p *Record) Render() app.UI {
	return p.draw(shared.T("record.title"), func(b *bench) app.UI {
		v := newRecordView(b)
		return app.Div().Class("record").Body(
			app.Div().Class("screen").Body(
				v.headline(),
				app.Div().Class("columns").Body(
					app.Div().Class("answers").Body(v.figures(), v.log(), v.likeForLike(), v.bring()),
					app.Div().Class("inputs").Body(
						v.fit(),
						v.checks(),
						v.closing(),
						v.outward(p.route),
					),
				),
				b.cautions("code"),
			),
			v.print(),
		)
	})
}

// A recordView is the page with what the record holds.
type recordView struct {
	*bench
	*reckoned
	*matched
	parts  []sheet.Part
	due    []sheet.Item // what is not settled
	driven bool         // by a belt
}

func newRecordView(b *bench) *recordView {
	f := b.Fan
	v := &recordView{bench: b, reckoned: b.reckon(), matched: b.match(), driven: !f.DirectDrive()}
	v.parts = sheet.Handover(f, v.against()...)
	v.due = sheet.Outstanding(v.parts)
	return v
}

// What is reckoned of a fan holds until something is typed that it goes by: most of
// what is typed on this page is not.
type reckoned struct {
	of      *record.Fan
	figures int
	table   sheet.Table
	proof   *sheet.Proof
	running []sheet.Held
}

func (b *bench) reckon() *reckoned {
	if r := b.reckoning; r != nil && r.of == b.Fan && r.figures == b.Figures() {
		return r
	}
	job := sheet.JobOf(b.Fan, b.RuleMark(), false)
	b.reckoning = &reckoned{of: b.Fan, figures: b.Figures(), table: job.Table(), proof: job.Proof(), running: job.Running()}
	return b.reckoning
}

// What is compared of the two fans holds until something is typed that it goes by.
type matched struct {
	of    *record.Fan
	fits  int
	lines []sheet.Line
	over  [2]sheet.Answer[unit.Length] // how the base goes over the curb, both ways
	unfit []sheet.Held
}

func (b *bench) match() *matched {
	if c := b.matching; c != nil && c.of == b.Fan && c.fits == b.Fits() {
		return c
	}
	lines := sheet.LikeForLike(b.Fan)
	b.matching = &matched{
		of: b.Fan, fits: b.Fits(), lines: lines, unfit: sheet.Fitting(b.Fan, lines),
		over: [2]sheet.Answer[unit.Length]{sheet.Clearance(b.Fan, false), sheet.Clearance(b.Fan, true)},
	}
	return b.matching
}

// standing returns a part of the page that only what is counted moves: the changes
// that are felt there, and what it is opened to.
func (v *recordView) standing(key string, draw func() app.UI, count int, shown ...string) app.UI {
	return v.memo("record "+key, draw, append(shown, exact(float64(count)), systemName(v.Settings.Units), v.words.Tag)...)
}

// headline says what is still missing, the first in the order of the job; and once
// nothing is, hands over.
func (v *recordView) headline() app.UI {
	words, foot := v.T("record.complete"), app.UI(app.Div())
	if n := len(v.due); n > 0 {
		first := v.due[0]
		words = v.T("record.next", "what", lowerFirst(v.T("item."+first.Name)))
		foot = v.toItem(first)
	} else if v.Fan.Step.Value() != record.HandedOver {
		foot = widget.Button("hand over", v.T("record.hand"), "primary", v.guarded(func() { v.stand(record.HandedOver) }))
	}
	line := []app.UI{app.Div()}
	worst, more := v.worst()
	if worst.Rule != "" && worst.Level != sheet.Within { // within, of what there is to judge, is no news beside what is open
		w := v.brief("record", worst.Verdict)
		if more > 0 {
			w.Reason += " " + v.T("wanted.more", "n", v.whole(more))
		}
		line[0] = w.UI()
	}
	if worst.Level == sheet.Stop && len(v.due) == 0 { // every item is done, and still it is not
		words = v.T("record.stopped")
	}
	return v.dataplate(sheet.OfRecord, worst, v.T("record.label"),
		app.Output().Name("record.next").Class("move").Aria("live", "polite").Text(words),
		app.P().Class("gives").Text(v.tally(v.parts)),
		app.Div().Class("plate-foot").Body(append(line, foot)...),
	)
}

// against is all that is held against the fan.
func (v *recordView) against() []sheet.Held { return slices.Concat(v.running, v.unfit) }

// worst is the worst of it, and how many stops there are beside that.
func (v *recordView) worst() (worst sheet.Held, more int) {
	all := v.against()
	worst = sheet.Plated(all)
	stops := map[sheet.Rule]bool{}
	for _, x := range all {
		if x.Level == sheet.Stop {
			stops[x.Rule] = true
		}
	}
	return worst, max(len(stops)-1, 0)
}

// tally counts what is settled.
func (v *recordView) tally(parts []sheet.Part) string {
	done, all := 0, 0
	for _, p := range parts {
		for _, i := range p.Items {
			if all++; i.Settled() {
				done++
			}
		}
	}
	return v.T("record.tally", "n", v.whole(done), "all", v.whole(all))
}

// toItem leads to where an item is settled.
func (v *recordView) toItem(i sheet.Item) app.UI {
	label := v.T("record.to")
	if i.Check != nil {
		return widget.Button("to item "+i.Name, label, "to", v.guarded(func() {
			v.openPart(i.Name)
			v.focus(itemID(i.Name))
		}))
	}
	if i.Place == nil { // a reading that there is none of yet
		return app.A().Class("button to").Href(href("/power/")).Text(v.T("tab.power"))
	}
	key := v.keyOf(i.Place)
	return widget.Button("to item "+key, v.full(key), "to", v.guarded(func() { v.jump(key) }))
}

// openPart opens the section that a check stands in.
func (v *recordView) openPart(item string) {
	for _, p := range v.parts {
		for _, i := range p.Items {
			if i.Name == item {
				v.open["part "+p.Name] = true
			}
		}
	}
}

func itemID(name string) string { return "check-" + name }

// closing asks what closes the record. Days that are known are offered, not typed.
func (v *recordView) closing() app.UI {
	h := &v.Fan.Handover
	return v.section("closing", v.T("section.closing"), h.By.Text(), func() app.UI {
		keys := []string{"name", "handover.by", "handover.on"}
		if v.driven {
			keys = append(keys, "handover.belt-due")
		}
		var due time.Time
		if t := lastTrial(v.Fan); t != nil && v.driven {
			due, _ = sheet.LookAgain(t)
		}
		offer := func(key, label string, day time.Time) app.UI {
			text := day.Format(time.DateOnly)
			return widget.Button("offer "+key+" "+text, label, "", v.guarded(func() {
				v.Do(key, func() { v.must(v.place(key).Set(text)) })
				v.Reload()
			}))
		}
		return app.Div().Body(
			v.fields(keys...),
			app.Div().Class("row").Body(
				app.If(h.On.State() != record.Known, func() app.UI { return offer("handover.on", v.T("record.today"), time.Now()) }),
				app.If(h.BeltDue.State() != record.Known && !due.IsZero(), func() app.UI {
					return offer("handover.belt-due", v.T("record.due", "date", due.Format(time.DateOnly)), due)
				}),
			),
			v.fields("handover.notes"),
		)
	})
}
