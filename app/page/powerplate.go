package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// headline says what the hand does next, or the worst verdict. It always has the
// same three lines, so that nothing below it moves.
func (v *powerView) headline() app.UI {
	p := v.p
	words := []app.UI{app.Text(v.next())}
	switch p.Next {
	case sheet.StepLost:
		words = append([]app.UI{widget.Mark(widget.Stop), app.Text(" ")}, words...)
	case sheet.StepVerdict:
		words = append([]app.UI{widget.Mark(levels[p.Worst.Level]), app.Text(" ")}, words...)
	}
	plate := v.job.Plate(sheet.OfPower)
	return v.dataplate(sheet.OfPower, plate, v.T("power.label"),
		ordering(app.Output().Name("power.next").Class("move").Aria("live", "polite"), v.job.Order(sheet.OfPower)).Body(words...),
		app.P().Class("gives").Text(v.gives(plate)),
		app.Div().Class("plate-foot").Body(v.foot()),
	)
}

// gives names the reading that is judged, its averages, and the worst of it where the
// words above tell the hand something else.
func (v *powerView) gives(plate sheet.Held) string {
	p := v.p
	s := v.T("power.none")
	if p.Taken {
		s = v.read()
	}
	if told := p.Next == sheet.StepVerdict || p.Next == sheet.StepLost; plate.Level >= sheet.Watch && !(told && plate.Rule == p.Worst.Rule) {
		s += " · " + v.T("power.verdict", "level", v.T("level."+string(levels[plate.Level])), "what", lowerFirst(v.T("rule."+string(plate.Rule))))
	}
	return s
}

func (v *powerView) read() string {
	p := v.p
	s := v.T("power.found")
	if p.Trial != nil {
		s = v.side("trial." + p.Trial.ID + ".")
	}
	if p.LineVolts.Known() && p.VoltsAt == p.Reading {
		s += " · " + v.volts(p.LineVolts)
	}
	if p.LineAmps.Known() {
		s += " · " + v.amps(p.LineAmps)
	}
	return s
}

func (v *powerView) share(a sheet.Answer[unit.Ratio]) string {
	return v.figure(sheet.Figure{Scale: &unit.Share, Base: float64(a.Value)})
}

// foot leads to where the next step is taken.
func (v *powerView) foot() app.UI {
	switch p := v.p; p.Next {
	case sheet.StepReading:
		return v.way("readings", "add-reading", v.T("readings.add"))
	case sheet.StepExchange:
		return v.way("rotation", "exchanged", v.T("section.rotation"))
	case sheet.StepRoll:
		return v.way("roll", "roll-next", v.T("section.roll"))
	case sheet.StepCause:
		return v.way("roll", "roll-says", v.T("section.roll"))
	default:
		wanted := p.Wanted
		if len(wanted) == 0 && p.Next == sheet.StepVerdict {
			wanted = v.about(p.Worst)
		}
		if p.Fault != nil && p.Fault.Place != nil {
			wanted = []record.Place{p.Fault.Place}
		}
		if len(wanted) > 0 {
			return v.bench.wanted("power", wanted, 1)
		}
		key := v.keyOf(&p.Reading.Volts[0])
		return app.Ul().Class("wanted").Body(app.Li().Body(
			widget.Button("to power "+key, v.T("section.electrical"), "to", v.guarded(func() { v.jump(key) }))))
	}
}

// about lists where the value stands that a verdict is about, where it is no reading
// of volts or amps.
func (v *powerView) about(w sheet.Verdict) []record.Place {
	switch w.Rule {
	case sheet.RuleOverloadDial, sheet.RuleOverloadLow, sheet.RuleOverloadTrip:
		return []record.Place{&v.Fan.New.Dial}
	case sheet.RuleLineFrequency, sheet.RuleFlux:
		if p := &v.p.VoltsAt.Frequency; v.p.New && p.State() == record.Known {
			return []record.Place{p}
		}
	case sheet.RulePhases, sheet.RuleOutputPhases:
		return []record.Place{&v.Fan.New.Fit.Phases}
	case sheet.RuleEfficiency:
		return []record.Place{&v.p.Side.PowerFactor}
	}
	return nil
}

// way leads to a part of the page that is no field.
func (v *powerView) way(section, id, label string) app.UI {
	return app.Ul().Class("wanted").Body(app.Li().Body(widget.Button("to "+id, label, "to", v.guarded(func() {
		v.open[section] = true
		v.focus(id)
	}))))
}

// next words the next step.
func (v *powerView) next() string {
	p := v.p
	switch p.Next {
	case sheet.StepLost:
		return v.lost()
	case sheet.StepFault:
		if p.Fault.Place != nil {
			return v.T("power.next.fault", "place", lowerFirst(v.full(v.keyOf(p.Fault.Place))))
		}
		return v.faulty(p.Fault)
	case sheet.StepVerdict:
		if p.Worst.Level == sheet.Within {
			return v.within()
		}
		return v.T("power.verdict", "level", v.T("level."+string(levels[p.Worst.Level])), "what", lowerFirst(v.T("rule."+string(p.Worst.Rule))))
	case sheet.StepCause:
		return v.cause()
	case sheet.StepVolts, sheet.StepAmps:
		key := "power.next." + string(p.Next)
		if !p.Three {
			key += ".one"
		}
		if p.Next == sheet.StepAmps && v.Fan.DirectDrive() { // no belt to put on first
			key += ".direct"
		}
		return v.T(key)
	}
	return v.T("power.next." + string(p.Next))
}

func (v *powerView) within() string {
	p := v.p
	if p.Three && p.Amps.Verdict.Level == sheet.Within {
		return v.T("power.within", "amps", v.share(p.Amps.Share), "volts", v.share(p.Volts.Share))
	}
	return v.T("power.within.one", "amps", v.amps(p.LineAmps), "volts", v.volts(p.LineVolts))
}

func (v *powerView) amps(a sheet.Answer[unit.Current]) string {
	return v.figure(sheet.Figure{Scale: &unit.Amperage, Base: float64(a.Value)})
}

func (v *powerView) volts(a sheet.Answer[unit.Voltage]) string {
	return v.figure(sheet.Figure{Scale: &unit.Potential, Base: float64(a.Value)})
}

// lost says which phase is lost, and where.
func (v *powerView) lost() string {
	return v.T("power.lost."+string(v.p.Lost.Loss), v.deadLegs()...)
}

// deadLegs fills in the legs of a sentence on a lost phase: the one that tells it, and
// the two that carry nothing.
func (v *powerView) deadLegs() []string {
	l := &v.p.Lost
	legs := []string{"leg", v.whole(int(l.Leg))}
	if dead := l.Dead(); l.Loss == phase.LossPair {
		legs = append(legs, "one", v.whole(int(dead[0])), "other", v.whole(int(dead[1])))
	}
	return legs
}

// whole writes a whole number.
func (b *bench) whole(n int) string { return b.Locale.WriteFixed(float64(n), 0) }

// below says, under the plate that stays in view, how the step is taken and why.
func (v *powerView) below() app.UI {
	p := v.p
	var body []app.UI
	say := func(key string) { body = append(body, app.P().Class("follow").Text(v.T(key))) }
	switch p.Next {
	case sheet.StepLost:
		body = append(body, v.verdict("lost", p.OfLost).UI())
		body = append(body, app.P().Class("follow").Text(v.T("power.lost."+string(p.Lost.Loss)+".do", v.deadLegs()...)))
	case sheet.StepExchange:
		say("swap." + string(sheet.Reversal(v.Fan)))
	case sheet.StepRotation:
		if p.OfRotation.Rule == sheet.RuleRotationLeads {
			body = append(body, v.verdict("rotation.stale", p.OfRotation).UI())
		}
		say("power.bump")
	case sheet.StepAmps:
		if !v.Fan.DirectDrive() {
			say("power.belt-on")
		}
		if p.Worst.Level >= sheet.Watch {
			body = append(body, v.verdict("power", p.Worst).UI())
		}
	case sheet.StepRoll:
		say("roll.how")
	case sheet.StepCause:
		say("roll.do." + string(p.Roll.Found.Cause))
	case sheet.StepFault:
		body = append(body, app.P().Class("follow").Text(v.faulty(p.Fault)))
	case sheet.StepVerdict:
		if p.Worst.Level != sheet.Within {
			body = append(body, v.verdict("power", p.Worst).UI())
		}
	default:
		switch {
		case p.Taken && p.Worst.Level >= sheet.Watch:
			body = append(body, v.verdict("power", p.Worst).UI())
		case !p.Taken && p.OfPhases.Level >= sheet.Watch:
			body = append(body, v.verdict("power", p.OfPhases).UI())
		}
	}
	return app.Div().Class("below").Body(body...)
}
