package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// which shows the belts to choose from, each with what it asks of the motor base.
func (v *beltView) which() app.UI {
	return v.section("which", v.T("belt.which"), v.chosen(), func() app.UI {
		var list []app.UI
		if r := v.set.Run; r.Motor.Known() && r.Fan.Known() {
			list = append(list, app.P().Class("field-note").Text(v.chosenFor(r)))
		}
		list = append(list, answer(v.bench, shown{name: "set.belt-length", scale: &unit.Shop}, sheet.LengthFor(v.Fan, v.set.Run)))
		for _, x := range v.fits {
			list = append(list, v.fit(x))
		}
		return app.Div().Class("list").Body(append(list, v.leftOpen()...)...)
	})
}

// chosen says of the belt entered how it stands, while the section is closed.
func (v *beltView) chosen() string {
	x := v.fits[0]
	if x.Role != sheet.Fitted || x.Name == "" {
		return ""
	}
	worst := sheet.Worst([]sheet.Verdict{x.Verdict, sheet.GrooveVerdict(&v.Fan.New)})
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
	var base []string
	if x.Move.Known() {
		base = append(base, v.moved(x.Move.Value))
	}
	if x.Toward.Known() && x.Away.Known() {
		base = append(base, v.T("belt.left", "toward", v.short(x.Toward.Value), "away", v.short(x.Away.Value)))
	}
	return app.Div().Class("fit").Body(
		answer(v.bench, s, x.Center),
		app.P().Class("field-note").Text(strings.Join(base, " · ")),
		app.Div().Body(app.If(x.Move.Known(), func() app.UI { return v.verdict(s.name, x.Verdict).UI() })),
	)
}

// chosenFor names the sheaves that a belt is chosen for.
func (v *beltView) chosenFor(r sheet.Run) string {
	motor, fan := v.size(r.Motor.Value), v.size(r.Fan.Value)
	if v.Fan.New.Sheave.Value() == record.Fixed || !r.Turns.Known() {
		return v.T("belt.sheaves", "motor", motor, "fan", fan)
	}
	return v.T("belt.sheaves.at", "at", v.at(r), "motor", motor, "fan", fan)
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
	if d, ok := sheet.Named(v.bars, "new.belt-number"); ok {
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
	spread := v.T("belt.spread")
	if x, ok := v.fits[0].LengthSpread(); ok {
		spread = v.T("belt.spread.of", "spread", v.size(x))
	}
	return append(list, app.P().Class("field-note").Text(spread))
}
