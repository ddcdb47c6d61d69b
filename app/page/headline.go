package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// headline says what the hand does next.
func (v *driveView) headline() app.UI {
	m, wanted := v.next, v.wanting
	body := []app.UI{ordering(app.Output().Name("move").Class("move").Aria("live", "polite"), v.made.Order(sheet.OfDrive)).Text(v.move(m, wanted))}
	t := v.t.Target
	worst, judged := v.worst.Verdict, v.judged
	set := m.Do == sheet.DoOpen || m.Do == sheet.DoClose || m.Do == sheet.DoStay
	if set {
		figure, rpm := v.Figure(&unit.Rotation, float64(m.Speed))
		target, _ := v.Figure(&unit.Rotation, float64(t.Value))
		body = append(body, app.P().Class("gives").Body(
			app.Output().Name("set.fan-speed").Body(app.Data().Value(exact(float64(m.Speed))).Attr("data-unit", "rpm").Text(figure), app.Text(" "+rpm)),
			app.Text(" · "+v.T("move.target", "target", target+" "+rpm)+" · "+v.Signed(&unit.Share, float64(m.Over))),
			app.Output().Name("set.turns").Class("machine").Body(app.Data().Value(exact(float64(m.To))).Attr("data-unit", "1")),
		))
		body = append(body, app.Div().Class("plate-foot").Body(
			v.brief("set", worst).UI(),
			widget.Button("set working", "ƒ", "working", v.toggle("working set")).Aria("label", v.T("working")).Aria("expanded", boolean(v.open["working set"])),
		))
	}
	if judged && !set {
		body = append(body, v.brief("set", worst).UI())
	}
	if len(wanted) > 0 {
		body = append(body, v.wanted("move", wanted, 1))
	}
	return v.dataplate(sheet.OfDrive, v.worst, v.T("move.label"), body...)
}

// below says, under the plate that stays in view, what goes with the move: why
// it is judged so, what to mind, the motor base, and a reading that can't be
// what it seems.
func (v *driveView) below() app.UI {
	var body []app.UI
	m := v.next
	moving := v.t.Set >= 0 && m.Do != sheet.DoHold && m.Do != sheet.DoTension && m.Do != sheet.DoCheck
	if v.judged {
		body = append(body, v.verdict(v.worst.Name, v.worst.Verdict).UI())
	}
	for _, a := range v.t.Alarms {
		if a.Rule != v.worst.Rule {
			body = append(body, v.verdict(a.Name, a.Verdict).UI())
		}
	}
	if left := v.stood("left.fan-speed"); left != nil {
		if left.Rule == sheet.RuleBelow && left.Level == sheet.Watch {
			body = append(body, app.P().Class("stepwise").Text(v.T("left.below")))
		}
		body = append(body, v.verdict("left.fan-speed", *left).UI())
	}
	if m.Stepwise {
		body = append(body, app.P().Class("stepwise").Text(v.T("move.stepwise")))
	}
	if moving && v.open["working set"] {
		a := v.t.SpeedAt(v.Fan, sheet.Setting(v.t.Rows[v.t.Set].Turns))
		body = append(body, v.working(shown{scale: &unit.Rotation}, &a.Steps, float64(a.Value)).UI())
	}
	if moving {
		if s := v.follow(v.t.Rows[v.t.Set]); s != "" {
			body = append(body, app.P().Class("follow").Text(s))
		}
	}
	return app.Div().Class("below").Body(body...)
}

// follow says what the setting asks of the motor base, which takes up the belt's
// slack, and of the alignment.
func (v *driveView) follow(r sheet.Row) string {
	if !r.Base.Known || r.Base.V == 0 {
		return ""
	}
	for _, d := range r.Verdicts {
		if d.Rule == sheet.RuleTravel && d.Level == sheet.Watch { // the base has not that far to go
			return v.reason(d)
		}
	}
	key, far := "follow.away", r.Base.V
	if far < 0 {
		key, far = "follow.toward", -far
	}
	shift := v.aside(max(r.Shift, -r.Shift))
	inch := unit.Shop.In(v.Settings.Units).Label
	figure, _ := v.Figure(&unit.Shop, float64(far))
	return v.T(key, "far", figure+" "+inch, "shift", strings.TrimPrefix(shift, "+")+" "+inch)
}

// move words the next move, relative to the hand.
func (v *driveView) move(m sheet.Move, wanted []record.Place) string {
	switch m.Do {
	case sheet.DoHold, sheet.DoCheck:
		return v.T("move." + string(m.Do))
	case sheet.DoTension:
		return v.T("move.tension", "to", v.setting(m.To))
	case sheet.DoFrequency:
		s, hz := v.Figure(&unit.Cycles, float64(m.Frequency))
		return v.T("move.frequency", "f", s+" "+hz)
	case sheet.DoNone:
		words, sheave := v.T("move.none."+string(m.Why)), v.T("move.sheave.none")
		if m.Sheave != "" {
			sheave = v.T("move.sheave."+string(m.Sheave), "pitch", v.size(m.Pitch))
		}
		return words + " " + sheave
	case sheet.DoFixed:
		s, rpm := v.Figure(&unit.Rotation, float64(m.Speed))
		return v.T("move.fixed", "speed", s+" "+rpm, "over", v.Signed(&unit.Share, float64(m.Over)))
	case sheet.DoAsk:
		if f := v.t.Speed.Fault; f != nil {
			return v.faulty(f)
		}
		if f := v.t.Target.Fault; f != nil {
			return v.faulty(f)
		}
		return v.T("move.unknown")
	case sheet.DoStay:
		return v.T("move.stay", "to", v.setting(m.To))
	}
	count := "move.turns"
	if m.Turns <= 1 {
		count = "move.turn"
	}
	return v.T("move."+string(m.Do), "from", v.setting(m.From), "to", v.setting(m.To), "turns", v.T(count, "n", v.Turns(m.Turns)))
}

// setting names a setting of the sheave.
func (b *bench) setting(t unit.Turns) string {
	if t == 0 {
		return b.T("turns.closed")
	}
	return b.T("turns.open", "n", b.Turns(t))
}
