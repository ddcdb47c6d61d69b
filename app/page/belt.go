package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/picture"
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
		if b.Fan.Supply.Value() == record.Direct {
			return app.Div().Body(app.P().Class("notice").Text(b.T("drive.direct")), b.fields("supply"))
		}
		v := newBeltView(b)
		clear(b.blamed)
		fits := sheet.Fits(b.Fan, v.set.Run)
		blame(b, v.set.Motor, v.set.Fan, v.set.Center, v.set.Span, sheet.LengthFor(b.Fan, v.set.Run))
		blame(b, v.set.Edges("").Least, v.taut.Force)
		for _, x := range fits {
			blame(b, x.Length, x.Center, x.Toward, x.Away)
		}
		return app.Div().Class("belt").Body(
			v.headline(),
			v.below(),
			app.Div().Class("columns").Body(
				app.Div().Class("answers").Body(v.press(), v.drawing(), v.which(fits), v.align()),
				app.Div().Class("inputs").Body(
					v.readings(), v.belt(), b.base(v.fromDrive(v.centers())), b.fresh(v.fromDrive(v.sheaves())), b.plate(), v.shaft(), b.amps(),
					b.copyLink(p.route), b.cautions("lock", "belt", "pry", "code"),
				),
			),
		)
	})
}

// A beltView is the page with what the belt should take where it is to be set,
// and what was read last, unless the sheave is to be moved first: that undoes it.
type beltView struct {
	*bench
	t    sheet.Table
	set  sheet.Tension
	last *record.Trial // the latest trial, if a belt was read at it
	read sheet.Tension
	taut sheet.Tautness
}

func newBeltView(b *bench) beltView {
	f := b.Fan
	v := beltView{bench: b, t: sheet.TurnsTable(f)}
	run := sheet.RunAt(f, sheet.SetTurns(f, v.t), nil)
	v.set = sheet.TensionAt(f, v.t.Basis, run, sheet.SetSpeed(f, v.t), b.RuleMark())
	if n := len(f.Trials); n > 0 && sheet.HasTension(f.Trials[n-1]) && !v.moving() {
		v.last = f.Trials[n-1]
		v.read = v.tensionOf(v.last)
		v.taut = v.read.Taut(v.last)
	}
	return v
}

// moving tells whether the sheave is to be moved before the belt is tensioned.
func (v *beltView) moving() bool {
	m, _ := sheet.NextMove(v.Fan, v.t)
	return m.Do == sheet.DoOpen || m.Do == sheet.DoClose
}

// tensionOf answers with what the belt should take at a trial.
func (v *beltView) tensionOf(t *record.Trial) sheet.Tension {
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

// which shows the belts to choose from, each with what it asks of the motor base.
func (v *beltView) which(fits []sheet.Fit) app.UI {
	return v.section("which", v.T("belt.which"), v.chosen(fits), func() app.UI {
		var list []app.UI
		if r := v.set.Run; r.Motor.Known() && r.Fan.Known() {
			list = append(list, app.P().Class("field-note").Text(v.T("belt.sheaves.at", "at", v.at(r), "motor", v.size(r.Motor.Value), "fan", v.size(r.Fan.Value))))
		}
		list = append(list, answer(v.bench, shown{name: "set.belt-length", scale: &unit.Shop}, sheet.LengthFor(v.Fan, v.set.Run)))
		for _, x := range fits {
			list = append(list, v.fit(x))
		}
		return app.Div().Class("list").Body(append(list, v.leftOpen()...)...)
	})
}

// chosen says of the belt entered how it stands, while the section is closed.
func (v *beltView) chosen(fits []sheet.Fit) string {
	x := fits[0]
	if x.Role != sheet.Fitted || x.Name == "" {
		return ""
	}
	worst, judged := firmest(x.Verdict, sheet.GrooveVerdict(&v.Fan.New))
	if !judged {
		return x.Name
	}
	said := v.T("level." + string(levels[worst.Level]))
	if worst.Level != sheet.Within {
		said += ": " + v.T("rule."+string(worst.Rule))
	}
	return x.Name + " · " + said
}

func (v *beltView) fit(x sheet.Fit) app.UI {
	s := shown{name: string(x.Role) + ".center", scale: &unit.Shop, label: v.T("belt.fit."+string(x.Role), "name", x.Name)}
	if x.Name == "" {
		s.label = v.T("belt.fit.none")
	}
	base := ""
	if x.Move.Known() {
		base = v.moved(x.Move.Value)
	}
	if x.Toward.Known() && x.Away.Known() {
		base += " · " + v.T("belt.left", "toward", v.short(x.Toward.Value), "away", v.short(x.Away.Value))
	}
	return app.Div().Class("fit").Body(
		answer(v.bench, s, x.Center),
		app.P().Class("field-note").Text(base),
		app.Div().Body(app.If(x.Move.Known(), func() app.UI { return v.verdict(s.name, x.Verdict).UI() })),
	)
}

// short writes travel that is left, below zero by as much as the base falls short.
func (b *bench) short(x unit.Length) string {
	if x < 0 {
		return "−" + b.size(-x)
	}
	return b.size(x)
}

// moved words which way the motor base goes, and how far.
func (v *beltView) moved(x unit.Length) string {
	figure := v.size(max(x, -x))
	switch {
	case strings.HasPrefix(v.Signed(&unit.Shop, float64(x)), "±"):
		return v.T("belt.move.none")
	case x < 0:
		return v.T("belt.move.toward", "far", figure)
	}
	return v.T("belt.move.away", "far", figure)
}

// leftOpen says what a belt's number and rating leave open.
func (v *beltView) leftOpen() []app.UI {
	f := v.Fan
	var list []app.UI
	if f.New.BeltNumber.State() == record.Known {
		list = append(list, v.verdict("new.groove", sheet.GrooveVerdict(&f.New)).UI())
	}
	if d := sheet.BeltNumberVerdict(&f.New); d.Level == sheet.Watch {
		list = append(list, v.verdict("new.belt-number", d).UI())
	}
	if f.Card.Rating.State() == record.Unknown {
		list = append(list, app.P().Class("field-note").Text(v.T("belt.unrated")))
	} else {
		share := sheet.Capacity(f, v.set.Power())
		verdict := sheet.CapacityVerdict(share)
		needed := ""
		if n := sheet.BeltsNeeded(f, v.set.Power()); n.Known() && verdict.Level != sheet.Within {
			needed = v.T("belt.needed", "n", v.Locale.WriteFixed(float64(n.Value), 0))
		}
		list = append(list, answer(v.bench, shown{name: "belt.capacity", scale: &unit.Share, verdict: &verdict, apart: needed}, share))
	}
	return append(list, app.P().Class("field-note").Text(v.T("belt.spread")))
}

// align shows how far the sheaves may be out of line, and judges the gap that was
// read.
func (v *beltView) align() app.UI {
	f := v.Fan
	most, aim := sheet.AlignmentGap(v.set.Run)
	verdict, read, summary := sheet.Verdict{}, false, ""
	gap := sheet.Answer[unit.Length]{}
	if n := len(f.Trials); n > 0 && f.Trials[n-1].Belt.Gap.State() != record.Unknown {
		t := f.Trials[n-1]
		gap, read = sheet.Read("x", sheet.FromTrial, &t.Belt.Gap), true
		verdict = sheet.AlignmentVerdict(t, sheet.RunAt(f, sheet.TrialTurns(t), &t.Reading))
		summary = v.T("level." + string(levels[verdict.Level]))
	} else if aim.Known() {
		summary = v.T("belt.aim", "gap", v.size(aim.Value))
	}
	return v.section("align", v.T("belt.align"), summary, func() app.UI {
		list := []app.UI{
			app.P().Class("field-note").Text(v.T("belt.align.help")),
			answer(v.bench, shown{name: "align.aim", scale: &unit.Shop}, aim),
			answer(v.bench, shown{name: "align.most", scale: &unit.Shop}, most),
		}
		if shift := sheet.BeltShift(f, v.set.Turns); shift.Known() && shift.Value != 0 && f.New.Sheave.Value() != record.Fixed {
			list = append(list, answer(v.bench, shown{name: "align.shift", scale: &unit.Shop, apart: v.T("belt.shift", "at", v.at(v.set.Run))}, shift))
		}
		if read {
			list = append(list, answer(v.bench, shown{name: "align.gap", scale: &unit.Shop, verdict: &verdict}, gap))
		}
		return app.Div().Class("list").Body(list...)
	})
}

// drawing is the drive to scale, from the answers' own numbers.
func (v *beltView) drawing() app.UI {
	t := v.set
	if !t.Motor.Known() || !t.Fan.Known() || !t.Center.Known() || !t.Span.Known() {
		return app.Div()
	}
	p := picture.Belt{
		Motor: t.Motor.Value, Fan: t.Fan.Value, Center: t.Center.Value,
		Title: v.T("picture.drive"), MotorLabel: v.T("picture.motor"), FanLabel: v.T("picture.fan"),
		CenterLabel: v.T("picture.centers", "c", v.size(t.Center.Value)), SpanLabel: v.T("picture.span", "t", v.size(t.Span.Value)),
		Description: v.T("picture.drive.says", "motor", v.size(t.Motor.Value), "fan", v.size(t.Fan.Value), "centers", v.size(t.Center.Value), "span", v.size(t.Span.Value)),
	}
	if t.Press.Known() {
		p.Press, p.PressLabel = t.Press.Value, v.T("picture.press", "h", v.marked(t.Press.Value))
	}
	draw := func() app.UI { return app.Figure().Body(p.UI(), app.FigCaption().Text(p.Description)) }
	return v.memo("drive drawing", draw, p.Description, p.PressLabel, exact(float64(p.Motor)), exact(float64(p.Fan)), exact(float64(p.Center)))
}

// marked writes a length in marks of the rule.
func (b *bench) marked(x unit.Length) string {
	return b.Locale.Localize(strings.ReplaceAll(b.Marked(x), "-", " "))
}
