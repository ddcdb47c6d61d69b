package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Power answers whether volts and amps are balanced, whether a phase is lost,
// whether it is the supply or the motor, and whether rotation is proven.
type Power struct{ leaf }

// NewPower returns the page.
func NewPower() *Power { return &Power{leaf{route: "/power/"}} }

// OnNav lays the supply out where nobody has said it: it is asked before anything
// else.
func (p *Power) OnNav(ctx app.Context) {
	p.leaf.OnNav(ctx)
	if app.IsClient && shared.Fan.Supply.State() != record.Known {
		shared.open["job"] = true
	}
}

// Render draws the page.
func (p *Power) Render() app.UI {
	return p.draw(shared.T("power.title"), func(b *bench) app.UI {
		v := newPowerView(b)
		clear(b.blamed)
		blame(b, v.p.Volts.Share, v.p.Amps.Share, v.p.PlateVolts, v.p.Load)
		blame(b, v.p.LineAmps)
		blame(b, v.p.LineVolts)
		return app.Div().Class("power").Body(
			v.headline(),
			v.below(),
			app.Div().Class("columns").Body(
				app.Div().Class("answers").Body(v.answers()...),
				app.Div().Class("inputs").Body(v.inputs(p.route)...),
			),
		)
	})
}

// A powerView is the page with what is proven.
type powerView struct {
	*bench
	job *sheet.Job
	p   *sheet.Proof
}

func newPowerView(b *bench) powerView {
	job := sheet.JobOf(b.Fan, b.RuleMark(), false)
	return powerView{b, job, job.Proof()}
}

// answers are what the reading says: of volts, of amps, of the load.
func (v *powerView) answers() []app.UI {
	if !v.p.Taken {
		return nil
	}
	return []app.UI{v.ofVolts(), v.ofAmps(), v.ofLoad()}
}

func (v *powerView) ofVolts() app.UI {
	p := v.p
	list := []app.UI{app.H2().Text(v.T("power.of.volts"))}
	if p.Three {
		list = append(list, answer(v.bench, shown{name: "volts.unbalance", scale: &unit.Share, verdict: &p.Volts.Verdict, apart: v.farthest(p.Volts, "volts")}, p.Volts.Share))
	}
	list = append(list,
		answer(v.bench, shown{name: "volts.line", label: v.single("power.of.volts"), scale: &unit.Potential}, p.LineVolts),
		answer(v.bench, shown{name: "volts.of-plate", scale: &unit.Share, verdict: &p.OfPlateVolts}, p.PlateVolts),
	)
	if p.OfFrequency.Level >= sheet.Watch {
		list = append(list, v.verdict("volts.frequency", p.OfFrequency).UI())
	}
	if p.System.Known() {
		list = append(list, answer(v.bench, shown{name: "volts.system", scale: &unit.Potential, verdict: doubtful(p.OfSystem)}, p.System))
		if p.OfPlateSystem.Level >= sheet.Watch {
			list = append(list, v.verdict("volts.plate", p.OfPlateSystem).UI())
		}
	}
	return app.Section().Class("list").Body(append(list, v.asks(sheet.RuleDoubleVolts, sheet.RuleHalfVolts), v.legs("volts"))...)
}

func (v *powerView) ofAmps() app.UI {
	p := v.p
	list := []app.UI{app.H2().Text(v.T("power.of.amps"))}
	if v.dead() {
		return app.Section().Class("list").Body(append(list, v.legs("amps"))...)
	}
	if p.Three && p.OfLost.Level != sheet.Within {
		list = append(list, v.verdict("amps.lost", p.OfLost).UI())
	}
	if p.Three {
		list = append(list, answer(v.bench, shown{name: "amps.unbalance", scale: &unit.Share, verdict: &p.Amps.Verdict, apart: v.farthest(p.Amps, "amps")}, p.Amps.Share))
	}
	list = append(list, answer(v.bench, shown{name: "amps.line", label: v.single("power.of.amps"), scale: &unit.Amperage, verdict: &p.OfLegs}, p.LineAmps))
	if k := sheet.Amplification(p.Volts, p.Amps); k.Known() {
		list = append(list, answer(v.bench, shown{name: "amps.of-volts", scale: &unit.Factor}, k), app.P().Class("field-note").Text(v.T("power.made."+string(sheet.MadeOf(k)))))
	}
	return app.Section().Class("list").Body(append(list, v.asks(sheet.RuleDoubleAmps, sheet.RuleHalfAmps), v.legs("amps"))...)
}

// single names what is no average, for there is one of it.
func (v *powerView) single(key string) string {
	if v.p.Three {
		return ""
	}
	return v.T(key)
}

// dead tells whether a phase is lost: then amps are used for nothing.
func (v *powerView) dead() bool { return v.p.Three && v.p.OfLost.Level == sheet.Stop }

// asks shows what looks like another connection of the leads.
func (v *powerView) asks(rules ...sheet.Rule) app.UI {
	var list []app.UI
	for _, a := range v.p.Asks {
		for _, r := range rules {
			if a.Rule == r {
				list = append(list, v.verdict("ask."+string(r), a).UI())
			}
		}
	}
	return app.Div().Body(list...)
}

func (v *powerView) farthest(u sheet.Unbalance, of string) string {
	if !u.Share.Known() || u.Leg == phase.NoLeg {
		return ""
	}
	key := "power.farthest"
	if !u.Certain {
		key = "power.perhaps"
	}
	return v.T(key, "leg", lowerFirst(v.leg(of, int(u.Leg)-1)))
}

func (v *powerView) leg(of string, i int) string {
	if of == "volts" {
		return [3]string{"1–2", "2–3", "3–1"}[i]
	}
	return v.T("power.leg", "n", v.whole(i+1))
}

func (v *powerView) ofLoad() app.UI {
	f, p := v.Fan, v.p
	output := f.Supply.Value() == record.Inverter
	return v.section("load", v.T("section.load"), "", func() app.UI {
		var list []app.UI
		if v.dead() {
			return app.Div().Class("list").Body(app.P().Class("field-note").Text(v.T("power.dead")))
		}
		if output {
			return app.Div().Class("list").Body(app.P().Class("field-note").Text(v.T("supply.drive")))
		}
		if p.Three {
			list = append(list,
				answer(v.bench, shown{name: "motor.load", scale: &unit.Share}, p.Load),
				answer(v.bench, shown{name: "motor.derating", scale: &unit.Share}, p.Derating),
				answer(v.bench, shown{name: "motor.headroom", scale: &unit.Share}, p.Headroom),
			)
		}
		var agrees *sheet.Verdict
		if p.OfEfficiency.Value.Scale != nil {
			agrees = &p.OfEfficiency
		}
		return app.Div().Class("list").Body(append(list,
			answer(v.bench, shown{name: "power.apparent", scale: &unit.Apparent}, sheet.Apparent(f, p.Reading)),
			answer(v.bench, shown{name: "power.real", scale: &unit.Input}, sheet.RealPower(f, p.Side, p.Reading)),
			answer(v.bench, shown{name: "power.shaft", scale: &unit.Shaft, verdict: agrees}, sheet.ShaftPower(f, p.Side, p.Reading)),
		)...)
	})
}
