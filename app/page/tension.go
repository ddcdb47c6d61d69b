package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/belt"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// headline says how to press the belt, or, once it was read, what to do about it.
func (v *beltView) headline() app.UI {
	words, gives, wanted := v.order()
	body := []app.UI{ordering(app.Output().Name("tension").Class("move").Aria("live", "polite"), v.job.Order(sheet.OfBelt)).Text(words)}
	if gives != "" {
		body = append(body, app.P().Class("gives").Text(gives))
	}
	plate := v.job.Plate(sheet.OfBelt)
	if plate.Level >= sheet.Watch || v.last != nil {
		body = append(body, v.brief("tension", plate.Verdict).UI())
	}
	if len(wanted) > 0 {
		body = append(body, v.wanted("tension", wanted, 1))
	}
	e := v.set.Edges(record.NewBelt)
	return v.dataplate(sheet.OfBelt, plate, v.T("belt.label"), append(body,
		machine("set.deflection", v.set.Press), machine("set.force-least", e.Least), machine("set.force-most", e.Most))...)
}

// machine holds an answer whose figure stands in words beside it.
func machine[Q unit.Quantity](name string, a sheet.Answer[Q]) app.UI {
	o := app.Output().Name(name).Class("machine")
	if !a.Known() {
		return o
	}
	k := Q(0).Kind()
	return o.Body(app.Data().Value(exact(k.Data.Of(float64(a.Value)))).Attr("data-unit", k.Data.Symbol))
}

// order words the next move: what bars the belt, or press, or move the motor base, or
// leave it.
func (v *beltView) order() (words, gives string, wanted []record.Place) {
	words, gives, wanted = v.tensioned()
	bar, barred := sheet.Barred(v.bars)
	if !barred {
		return words, gives, wanted
	}
	if v.last == nil {
		gives = ""
	}
	if own := "belt.halt." + string(bar.Rule); v.words.Has(own) {
		return v.T(own), gives, nil
	}
	return v.T("power.verdict", "level", v.T("level."+string(levels[bar.Level])), "what", lowerFirst(v.T("rule."+string(bar.Rule)))), gives, nil
}

// tensioned words what the belt's tension asks for next.
func (v *beltView) tensioned() (words, gives string, wanted []record.Place) {
	t, age := v.set, record.NewBelt
	if v.last != nil {
		t, age = v.read, v.last.Belt.Age.Value()
	}
	e := t.Edges(age)
	asked := ""
	if e.Least.Known() && e.Most.Known() && t.Press.Known() {
		asked = v.pull(e)
	}
	if v.last == nil {
		switch {
		case e.Least.Fault != nil:
			return v.faulty(e.Least.Fault), "", nil
		case asked == "":
			return v.T("belt.unknown"), "", e.Least.Wanted
		}
		return v.T("belt.order", "h", v.marked(t.Press.Value), "force", asked), v.under(t, age), nil
	}
	x := v.taut
	switch {
	case x.Verdict.Fault != nil:
		return v.faulty(x.Verdict.Fault), "", nil
	case x.Verdict.Rule == sheet.RuleReadings:
		return v.T("belt.disagree"), "", nil
	case x.Lean == sheet.LeanUnsaid:
		return v.T("belt.unread"), "", x.Verdict.Wanted
	}
	figure, label := v.Figure(&unit.Pull, float64(x.Force.Value))
	gives = v.T("belt.gives", "read", figure, "band", v.Difference(&unit.Pull, float64(x.Force.Band)), "unit", label, "force", asked, "h", v.marked(t.Press.Value))
	return v.told(x, age), gives, nil
}

// told words what to do about a reading that leans one way, sure or not. A base
// without travel that way is not sent there. A belt that is left as it is goes on by
// its age: a new one is to be run.
func (v *beltView) told(x sheet.Tautness, age record.BeltAge) string {
	toward, away := sheet.TravelLeft(v.Fan, v.read.Run)
	lean, left := "taut", sheet.Answer[unit.Length]{}
	switch x.Lean {
	case sheet.LeanLoose:
		lean, left = "loose", away
	case sheet.LeanTight:
		lean, left = "tight", toward
	}
	if x.Verdict.Level == sheet.Unjudged {
		lean += ".maybe"
	}
	switch {
	case x.Lean == sheet.LeanNone:
		lean += "." + string(age)
	case left.Known() && left.Low() <= 0:
		lean += ".end"
	}
	return v.T("belt.told." + lean)
}

// pull writes the force between two edges.
func (b *bench) pull(e sheet.Edges) string {
	low, _ := b.Figure(&unit.Pull, float64(e.Least.Value))
	high, label := b.Figure(&unit.Pull, float64(e.Most.Value))
	return low + "\u2060–\u2060" + high + "\u00a0" + label // in one line
}

// under says for what the force holds.
func (v *beltView) under(t *sheet.Tension, age record.BeltAge) string {
	parts := []string{v.T("belt.age." + string(age)), v.T("belt.by." + string(t.Rules()))}
	if at := v.at(t.Run); at != "" {
		parts = append(parts, at)
	}
	return strings.Join(parts, " · ")
}

// below says, under the plate that stays in view, why the belt is judged so, what
// the sheave and the motor base need first, and what comes after.
func (v *beltView) below() app.UI {
	var body []app.UI
	_, barred := sheet.Barred(v.bars)
	for _, a := range v.bars {
		body = append(body, v.verdict("bar."+a.Name, a.Verdict).UI())
	}
	if v.last != nil {
		body = append(body, v.verdict("tension-why", v.taut.Verdict).UI())
		body = append(body, v.besides()...)
		if surer := v.read.Surer(v.last, v.taut); len(surer) > 0 {
			body = append(body, app.P().Class("follow").Text(v.T("belt.surer")), v.wanted("surer", surer, mostWanted))
		}
	}
	drive, never := &driveView{bench: v.bench, t: v.t}, v.T("belt.never")
	if v.moving() {
		body = append(body, app.P().Class("stepwise").Text(v.T("belt.first")+" "+drive.move(v.move, nil)))
		if s := drive.follow(v.t.Rows[v.t.Set]); s != "" && !barred { // another belt lies tight elsewhere
			body, never = append(body, app.P().Class("follow").Text(s)), ""
		}
	}
	return app.Div().Class("below").Body(
		app.Div().Body(body...),
		widget.Button("add tension", v.T("belt.add"), "primary wide", v.guarded(v.addBeltReading)),
		app.P().Class("field-note").Text(never),
		app.Div().Body(v.then()),
	)
}

// besides says of a reading how near it is to an edge, and where what it is held against
// is not all that could be asked.
func (v *beltView) besides() (notes []app.UI) {
	x, say := v.taut, func(key string, values ...string) {
		notes = append(notes, app.P().Class("follow").Text(v.T(key, values...)))
	}
	e := v.read.Edges(v.last.Belt.Age.Value())
	if x.Verdict.Near {
		far := x.Verdict.Value.Base - x.Verdict.Limit.Base
		say("belt.near", "far", v.force(unit.Force(max(far, -far))), "limit", v.force(unit.Force(x.Verdict.Limit.Base)), "band", v.force(x.Force.Band))
	}
	if x.Above {
		say("belt.above", "over", v.force(e.Over.Value))
	}
	if x.Verdict.Rule == sheet.RuleTight && v.read.Rules() != sheet.ByListed {
		say("belt.card.ask")
	}
	return notes
}

// force writes a force.
func (b *bench) force(x unit.Force) string {
	figure, label := b.Figure(&unit.Pull, float64(x))
	return figure + "\u00a0" + label
}

// apart says that the belt maker's card and the power that the fan takes disagree.
func (v *beltView) apart() (notes []app.UI) {
	age := record.NewBelt
	if v.last != nil && v.last.Belt.Age.State() == record.Known {
		age = v.last.Belt.Age.Value()
	}
	if t := v.set; t.CardApart(age) {
		notes = append(notes, app.P().Class("follow").Text(v.T("belt.card.apart", "card", v.pull(t.Listed.Of(age)), "power", v.pull(t.Measured.Of(age)))))
	}
	return notes
}

// then is what comes after a belt was set, with the date to come back; nothing while
// it must not be run. The sheaves come first where no gap in order was read.
func (v *beltView) then() app.UI {
	if _, barred := sheet.Barred(v.bars); barred {
		return app.Div()
	}
	when := v.T("belt.back")
	if t := lastTrial(v.Fan); t != nil {
		if at, ok := sheet.LookAgain(t); ok {
			when = v.T("belt.back.by", "date", at.Format("2006-01-02"))
		}
	}
	steps := []string{v.T("belt.run"), v.T("belt.again"), v.T("belt.speed"), when}
	most, _ := sheet.AlignmentGap(v.set.Run)
	if _, aligned := sheet.AlignmentNow(v.Fan); aligned.Level == sheet.Unjudged && most.Known() {
		steps = append([]string{v.T("belt.aligned", "gap", v.size(most.Value))}, steps...)
	}
	return v.memo("belt then", func() app.UI {
		return app.Ol().Class("then").Body(app.Range(steps).Slice(func(i int) app.UI { return app.Li().Text(steps[i]) }))
	}, steps...)
}

// press shows how far and how hard, by what is known of the power, side by side.
func (v *beltView) press() app.UI {
	t := v.set
	list := []app.UI{app.H2().Text(v.T("belt.press"))}
	if t.Press.Known() {
		off, percent := v.Figure(&unit.Share, float64(t.Off.Value))
		list = append(list, app.P().Class("field-note").Text(v.T("belt.mark", "h", v.marked(t.Press.Value), "off", off+" "+percent)))
	}
	list = append(append(list, v.forces()), v.apart()...)
	if t.UnderLists() {
		figure, label := v.Figure(&unit.Airspeed, float64(belt.ListedFrom))
		list = append(list, app.P().Class("field-note").Text(v.T("belt.under-lists", "least", figure+" "+label)))
	}
	edge := t.Edges(record.NewBelt)
	list = append(list,
		answer(v.bench, shown{name: "set.center", scale: &unit.Shop}, t.Center),
		answer(v.bench, shown{name: "set.span", scale: &unit.Shop}, t.Span),
		v.section("belt-more", v.T("belt.more"), "", func() app.UI {
			speed := sheet.BeltSpeedVerdict(t.Speed)
			return app.Div().Class("list").Body(
				answer(v.bench, shown{name: "measured.power", scale: &unit.Shaft}, t.Measured.Power),
				answer(v.bench, shown{name: "measured.tension", scale: &unit.Pull}, t.Measured.Tension),
				answer(v.bench, shown{name: "plate.power", scale: &unit.Shaft}, t.Plate.Power),
				answer(v.bench, shown{name: "plate.tension", scale: &unit.Pull}, t.Plate.Tension),
				answer(v.bench, shown{name: "set.belt-speed", scale: &unit.Airspeed, verdict: &speed}, t.Speed),
				answer(v.bench, shown{name: "set.arc", scale: &unit.Arc}, t.Arc),
				answer(v.bench, shown{name: "set.frequency-least", scale: &unit.Cycles}, t.Frequency(edge.Least)),
				answer(v.bench, shown{name: "set.frequency-most", scale: &unit.Cycles}, t.Frequency(edge.Most)),
				answer(v.bench, shown{name: "set.shaft-load", scale: &unit.Pull}, t.ShaftLoad(edge.Most)),
			)
		}),
	)
	return app.Section().Class("list").Body(list...)
}
