package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// inputs are the sections of the page: no more than the supply needs.
func (v *powerView) inputs(route string) []app.UI {
	list := []app.UI{v.supply()}
	if v.p.Next == sheet.StepSupply {
		return list
	}
	if v.p.Taken && !v.p.New {
		list = append(list, v.asFound())
	}
	list = append(list, v.reading(), v.rotation())
	if sheet.Rolls(v.Fan) {
		list = append(list, v.roll())
	}
	return append(list, v.motorPlate(), v.overload(), v.meters(), v.sharing(route), v.cautions("leads", "live", "bump", "code"))
}

func (v *powerView) supply() app.UI {
	supply := string(v.Fan.Supply.Value())
	return v.section("job", v.T("section.supply"), v.option(supply), func() app.UI {
		return app.Div().Body(v.fields("supply", "mount", "new.phases"), app.Div().Body(app.If(v.p.OfPhases.Level >= sheet.Watch, func() app.UI {
			return v.verdict("supply.phases", v.p.OfPhases).UI()
		})), app.Div().Body(app.If(v.words.Has("power.supply."+supply), func() app.UI {
			return app.P().Class("field-note").Text(v.T("power.supply." + supply))
		})))
	})
}

// readAt lists the fields of a reading that the supply calls for.
func (v *powerView) readAt(prefix string) []string {
	keys := []string{"volts-12"}
	if sheet.ThreePhase(v.Fan) {
		keys = []string{"volts-12", "volts-23", "volts-31", "amps-1", "amps-2", "amps-3"}
	} else {
		keys = append(keys, "amps-1")
	}
	keys = append(keys, "clamp-turns", "tipped-up")
	for i := range keys {
		keys[i] = prefix + keys[i]
	}
	return keys
}

// asFound shows what was read at the old fan, while that is judged.
func (v *powerView) asFound() app.UI {
	return v.section("amps", v.T("section.amps"), v.T("section.amps.sub"), func() app.UI {
		return v.fields(append([]string{"old.motor-power", "old.motor-volts", "old.motor-amps", "old.service-factor", "old.service-factor-amps", "old.no-load-amps"}, v.readAt("old.")...)...)
	})
}

// reading shows the latest reading; the others stand on the Drive page.
func (v *powerView) reading() app.UI {
	summary := v.T("readings.none")
	if v.p.Trial != nil {
		summary = v.side("trial." + v.p.Trial.ID + ".")
	}
	return v.section("readings", v.T("section.electrical"), summary, func() app.UI {
		var keys []string
		if t := v.p.Trial; t != nil {
			keys = v.readAt("trial." + t.ID + ".")
			if v.Fan.Supply.Value() != record.Inverter {
				keys = append(keys, "trial."+t.ID+".frequency")
			}
			if t.Leads.Value() != "" && sheet.Rolls(v.Fan) {
				keys = append(keys, "trial."+t.ID+".leads")
			}
		}
		return app.Div().Class("readings").Body(
			app.P().Class("field-note").Text(v.T("power.read."+string(v.Fan.Supply.Value()))),
			v.fields(keys...),
			widget.Button("add reading", v.T("readings.add"), "wide", v.guarded(func() { v.add("volts-12", nil) })).ID("add-reading"),
		)
	})
}

// add starts a reading on the sheave's setting as it is, and leads to a field of it.
// The first is on the one that was ordered, as on Drive and Belt: what one setting
// gives belongs into one reading.
func (v *powerView) add(field string, before func()) {
	now, first := sheet.NowTurns(v.Fan), len(v.Fan.Trials) == 0
	to, ordered := ordered(v.Fan)
	v.Do("", func() {
		if before != nil {
			before()
		}
		t := v.startTrial()
		switch {
		case first && ordered:
			v.must(orderedAt(t, to))
		case now.Known():
			v.must(record.Step(&t.Turns, now.Value))
		}
		v.open["readings"] = true
		v.focus(widget.ID("trial." + t.ID + "." + field))
	})
}

// motorPlate shows what Drive knows of the new motor, with what power asks.
func (v *powerView) motorPlate() app.UI {
	s := v.Fan.Supply.Value()
	keys := []string{"new.motor-volts", "new.motor-amps", "new.service-factor", "new.service-factor-amps", "new.motor-power"}
	if s != record.SinglePhase && s != record.Inverter && s != record.Direct {
		keys = append(keys, "new.no-load-amps")
	}
	if s != record.Inverter {
		keys = append(keys, "new.motor-frequency", "new.power-factor", "new.efficiency")
	}
	return v.section("plate", v.T("section.motor-plate"), v.T("section.shared"), func() app.UI { return v.fields(keys...) })
}

// meters asks what the meters' makers state.
func (v *powerView) meters() app.UI {
	return v.section("meters", v.T("section.meters"), v.T("section.meters.sub"), func() app.UI {
		return app.Div().Body(
			app.P().Class("field-note").Text(v.T("power.meters")),
			v.fields("meter.voltmeter-accuracy", "meter.voltmeter-digits", "meter.clamp-accuracy", "meter.clamp-digits"),
		)
	})
}

// overload says what the protection may be set to: the code's greatest trip current
// and the relay's dial are two things.
func (v *powerView) overload() app.UI {
	s := &v.Fan.New
	return v.section("overload", v.T("section.overload"), v.protection(), func() app.UI {
		o := sheet.OverloadOf(v.Fan)
		keys := []string{"new.protection", "new.restart"}
		if s.Protection.Value() != record.ThermalProtector {
			keys = append(keys, "new.overload-dial")
		}
		if o.AsksRise {
			keys = append(keys, "new.rise-40")
		}
		if s.Protection.Value() == record.ThermalProtector { // it has no dial, and the relay's figures are not its own
			return app.Div().Body(app.Div().Body(v.restarts()...), v.fields(keys...))
		}
		list := []app.UI{
			answer(v.bench, shown{name: "overload.dial", scale: &unit.Amperage}, o.Dial),
			app.Div().Body(app.If(s.Dial.State() == record.Known, func() app.UI { return v.verdict("overload.set", o.Verdict).UI() })),
		}
		if o.Small {
			list = append(list, app.P().Class("field-note").Text(v.T("overload.small")))
		}
		list = append(list,
			answer(v.bench, shown{name: "overload.trip", scale: &unit.Amperage}, o.Trip),
			answer(v.bench, shown{name: "overload.after-failure", scale: &unit.Amperage}, o.AfterFailure),
			app.P().Class("field-note").Text(v.T("overload.two")),
		)
		return app.Div().Body(app.Div().Class("list").Body(list...), app.Div().Body(v.restarts()...), v.fields(keys...))
	})
}

func (v *powerView) protection() string {
	if p := v.Fan.New.Protection.Value(); p != "" {
		return v.option(string(p))
	}
	return ""
}

// restarts warns of what starts again by itself, and of what has no dial.
func (v *powerView) restarts() []app.UI {
	s := &v.Fan.New
	var list []app.UI
	say := func(key string) { list = append(list, app.P().Class("stepwise").Text(v.T(key))) }
	if s.Protection.Value() == record.ThermalProtector {
		say("overload.integral")
	}
	if s.Protection.Value() == record.Heaters {
		say("overload.heaters")
	}
	if s.Restart.Value() == record.ByItself {
		say("overload.restart")
	}
	return list
}

// rotation asks which way the wheel turned, and says what turns it round.
func (v *powerView) rotation() app.UI {
	level := sheet.RotationVerdict(v.Fan)
	summary := v.T("rotation." + string(levels[level.Level]))
	return v.section("rotation", v.T("section.rotation"), summary, func() app.UI {
		keys := []string{"new.rotation"}
		if v.Fan.Supply.Value() == record.TwoSpeed {
			keys = append(keys, "new.rotation-low")
		}
		wrong := level.Level == sheet.Stop
		return app.Div().Body(
			app.P().Class("field-note").Text(v.T("power.bump")),
			app.Div().Body(app.If(level.Rule == sheet.RuleRotationLeads, func() app.UI { return v.verdict("rotation.leads", level).UI() })),
			v.fields(keys...),
			app.Div().Body(app.If(wrong, func() app.UI {
				return app.Div().Body(
					app.P().Class("stepwise").Text(v.T("swap."+string(sheet.Reversal(v.Fan)))),
					widget.Button("exchanged", v.T("rotation.exchanged"), "wide", v.guarded(v.exchanged)).ID("exchanged"),
				)
			})),
		)
	})
}

// exchanged notes that what turns the motor round was done: it is to be bumped
// again, and a lead roll would begin anew.
func (v *powerView) exchanged() {
	s := &v.Fan.New
	v.Do("", func() {
		if sheet.Rolls(v.Fan) {
			v.must(s.Leads.Set(string(sheet.Exchanged(sheet.LeadsNow(v.Fan)))))
		}
		for _, r := range []*record.Choice[record.Rotation]{&s.Rotation, &s.RotationLow} {
			if r.Value() == record.WrongWay {
				v.must(r.Set(""))
			}
		}
		v.focus(widget.ID("new.rotation"))
	})
}

// leads names an order of leads as the hand finds it: T3 T1 T2.
func leads(o record.Leads) string { return "T" + strings.ReplaceAll(string(o), "-", " T") }
