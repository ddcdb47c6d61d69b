package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Belt answers which belt the new drive takes, how far and how hard to press it,
// and what was read at it means.
type Belt struct{ leaf }

// NewBelt returns the page.
func NewBelt() *Belt { return &Belt{leaf{route: "/belt/"}} }

// Render draws the page.
func (p *Belt) Render() app.UI {
	return p.draw(shared.T("belt.title"), func(b *bench) app.UI {
		if b.Fan.DirectDrive() {
			return app.Div().Body(app.P().Class("notice").Text(b.T("drive.direct")), b.fields("supply", "mount"))
		}
		v := newBeltView(b)
		clear(b.blamed)
		blame(b, v.set.Motor, v.set.Fan, v.set.Center, v.set.Span, sheet.LengthFor(b.Fan, v.set.Run))
		blame(b, v.set.Edges("").Least, v.taut.Force)
		for _, x := range v.fits {
			blame(b, x.Length, x.Center, x.Toward, x.Away)
		}
		return app.Div().Class("belt").Body(
			v.headline(),
			v.below(),
			b.ofSpeed(),
			app.Div().Class("columns").Body(
				app.Div().Class("answers").Body(v.press(), v.drawing(), v.which(), v.align()),
				app.Div().Class("inputs").Body(
					v.readings(), v.belt(), b.base(v.fromDrive(v.centers())), b.fresh(v.fromDrive(v.sheaves())), b.plate(), v.shaft(), b.amps(),
					b.sharing(p.route), b.cautions("lock", "belt", "pry", "code"),
				),
			),
		)
	})
}

// A beltView is the page with what the belt should take where it is to be set,
// and what was read last, unless the sheave is to be moved first: that undoes it.
type beltView struct {
	*bench
	job  *sheet.Job
	t    sheet.Table
	move sheet.Move // of the sheave
	set  *sheet.Tension
	fits []sheet.Fit
	bars []sheet.Held  // what stands against running it
	last *record.Trial // the latest trial, if a belt was read at it
	read *sheet.Tension
	taut sheet.Tautness
}

func newBeltView(b *bench) *beltView {
	job := sheet.JobOf(b.Fan, b.RuleMark(), false)
	v := &beltView{bench: b, job: job, t: job.Table(), set: job.Set()}
	v.move, _ = job.Move()
	on := job.Belt()
	v.fits, v.bars, v.last, v.read, v.taut = on.Fits, on.Bars, on.Last, on.Read, on.Taut
	return v
}

// moving tells whether the sheave is to be moved before the belt is tensioned.
func (v *beltView) moving() bool { return v.move.Do == sheet.DoOpen || v.move.Do == sheet.DoClose }

// tensionOf answers with what the belt should take at a trial.
func (v *beltView) tensionOf(t *record.Trial) *sheet.Tension {
	run := sheet.RunAt(v.Fan, sheet.TrialTurns(t), &t.Reading)
	return sheet.TensionAt(v.Fan, v.t.Basis, run, sheet.SpeedOf(v.Fan, v.t, t), v.RuleMark())
}

// at names the setting of a run.
func (v *beltView) at(r sheet.Run) string {
	switch {
	case v.Fan.New.Sheave.Value() == record.Fixed:
		return v.T("belt.fixed")
	case r.Turns.Known():
		return v.setting(r.Turns.Value)
	}
	return ""
}

// size writes a length of the shop.
func (b *bench) size(x unit.Length) string {
	figure, label := b.Figure(&unit.Shop, float64(x))
	return figure + " " + label
}

// marked writes a length in marks of the rule.
func (b *bench) marked(x unit.Length) string {
	return b.Locale.Localize(strings.ReplaceAll(b.Marked(x), "-", " "))
}
