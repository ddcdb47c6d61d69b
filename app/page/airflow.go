package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Airflow answers what a speed does to airflow, pressure, power and amps, and
// whether motor and wheel are safe there.
type Airflow struct{ leaf }

// NewAirflow returns the page.
func NewAirflow() *Airflow { return &Airflow{leaf{route: "/airflow/"}} }

// Render draws the page.
func (p *Airflow) Render() app.UI {
	return p.draw(shared.T("air.title"), func(b *bench) app.UI {
		f := b.Fan
		job := sheet.JobOf(f, b.RuleMark(), false)
		blown := job.Air()
		v := airView{bench: b, Blown: blown, job: job, ref: sheet.ReferencePoint(f), limits: sheet.SpeedLimits(f, blown.Basis)}
		clear(b.blamed)
		blame(b, v.At.Speed)
		blame(b, v.At.Airflow)
		blame(b, sheet.DuctVelocity(f, v.At.Airflow))
		blame(b, sheet.HoodLeast(f))
		return app.Div().Class("airflow").Body(
			v.headline(),
			b.ofSpeed(),
			app.Div().Class("columns").Body(
				app.Div().Class("answers").Body(v.point(), v.curve(), v.motor(), v.hood()),
				app.Div().Class("inputs").Body(v.reference(), v.want(), v.amps(), v.plate(), v.hoodInputs(), b.sharing(p.route), v.cautions("lock", "live", "hood", "code")),
			),
		)
	})
}

// An airView is the page with its two points.
type airView struct {
	*bench
	sheet.Blown
	job    *sheet.Job
	ref    sheet.Point
	limits []sheet.SpeedLimit
}

// headline says which limit comes first.
func (v *airView) headline() app.UI {
	first, ok, complete := sheet.FirstLimit(v.limits)
	words := v.T("air.nolimit")
	var body []app.UI
	if ok {
		s, rpm := v.Figure(&unit.Rotation, float64(first.Speed.Value))
		words = v.T("air.first."+string(first.Rule), "speed", s+" "+rpm)
	}
	body = append(body, app.Output().Name("first-limit").Class("move").Aria("live", "polite").Text(words))
	if ok && !complete {
		body = append(body, app.P().Class("gives").Text(v.T("air.incomplete")))
	}
	if v.At.Speed.Known() {
		s, rpm := v.Figure(&unit.Rotation, float64(v.At.Speed.Value))
		body = append(body, app.P().Class("gives").Text(v.T("air.at", "speed", s+" "+rpm)))
	}
	plate := v.job.Plate(sheet.OfAirflow)
	if plate.Rule != "" {
		worst := v.brief("at", plate.Verdict)
		if worst.Reason == "" {
			worst.Reason = v.T("air.within")
		}
		body = append(body, worst.UI())
	}
	return v.dataplate(sheet.OfAirflow, plate, v.T("air.label"), body...)
}

func (v *airView) point() app.UI {
	f := v.Fan
	list := []app.UI{
		answer(v.bench, shown{name: "at.fan-speed", scale: &unit.Rotation, verdict: &v.Wheel}, v.At.Speed),
	}
	if f.SameWheel.Value() == "" {
		list = append(list, app.P().Class("answer-missing").Text(v.T("air.samewheel")), v.fields("same-wheel"))
	}
	list = append(list,
		answer(v.bench, shown{name: "at.airflow", scale: &unit.Airflow}, v.At.Airflow),
		answer(v.bench, shown{name: "at.pressure", scale: &unit.AirPressure}, v.At.Pressure),
		answer(v.bench, shown{name: "at.power", scale: &unit.Shaft}, v.At.Power),
		answer(v.bench, shown{name: "at.density", scale: &unit.AirDensity}, sheet.Density(f, v.At.Air)),
	)
	return app.Section().Class("list").Aria("label", v.T("air.point")).Body(append([]app.UI{app.H2().Text(v.T("air.point"))}, list...)...)
}

// motor shows load and amps of both motors, and the speeds at which the new
// one meets its limits.
func (v *airView) motor() app.UI {
	f := v.Fan
	return app.Section().Class("list").Body(
		app.H2().Text(v.T("air.motor")),
		answer(v.bench, shown{name: "old.load", scale: &unit.Share}, sheet.OldAmpsLoad(f)),
		answer(v.bench, shown{name: "old.shaft-power", scale: &unit.Shaft}, sheet.OldPower(f)),
		answer(v.bench, shown{name: "new.load", scale: &unit.Share}, sheet.NewLoad(f, v.Basis, v.At.Speed, v.At.Air)),
		answer(v.bench, shown{name: "new.amps", scale: &unit.Amperage, verdict: &v.Motor}, sheet.NewAmps(f, v.Basis, v.At.Speed, v.At.Air)),
		app.If(v.Basis.Known(), func() app.UI {
			return app.P().Class("field-note").Text(v.T("basis.from." + string(v.Basis.From)))
		}),
		app.Range(v.limits).Slice(func(i int) app.UI {
			l := v.limits[i]
			return answer(v.bench, shown{name: "limit." + string(l.Rule), scale: &unit.Rotation}, l.Speed)
		}),
		app.If(sheet.VoltageUnbalance(f).Known(), func() app.UI {
			return answer(v.bench, shown{name: "volts-unbalance", scale: &unit.Share, verdict: &v.Volts}, sheet.VoltageUnbalance(f))
		}),
	)
}

func (v *airView) hood() app.UI {
	f := v.Fan
	q, velocity, duct, hood, space := v.Exhaust, v.Velocity, v.Duct, v.Hood, v.Space
	return v.section("hood-answers", v.T("air.hood"), v.gist(v.hoodVerdicts(hood, duct, space)...), func() app.UI {
		return app.Div().Class("list").Body(
			answer(v.bench, shown{name: "hood.exhaust", scale: &unit.Airflow, verdict: &hood, idle: hood.Level == sheet.Unjudged}, q),
			answer(v.bench, shown{name: "hood.least", scale: &unit.Airflow}, sheet.HoodLeast(f)),
			answer(v.bench, shown{name: "duct.velocity", scale: &unit.Airspeed, verdict: &duct}, velocity),
			answer(v.bench, shown{name: "makeup.short", scale: &unit.Airflow}, sheet.MakeUpBalance(f, q)),
			app.If(f.Hood.SpacePressure.State() == record.Known, func() app.UI { return v.verdict("space", space).UI() }),
			app.P().Class("field-note").Text(v.T("air.proof")),
		)
	})
}

// gist words the worst verdict of a closed section.
func (b *bench) gist(all ...sheet.Verdict) string {
	if len(all) == 0 {
		return ""
	}
	worst := sheet.Worst(all)
	s := b.T("level." + string(levels[worst.Level]))
	if worst.Level != sheet.Within {
		s += ": " + b.T("rule."+string(worst.Rule))
	}
	return s
}

// hoodVerdicts leaves out what nothing was entered for.
func (v *airView) hoodVerdicts(hood, duct, space sheet.Verdict) (all []sheet.Verdict) {
	h := &v.Fan.Hood
	if h.Listing.State() != record.Unknown || h.LabelAirflow.State() != record.Unknown || h.Airflow.State() != record.Unknown {
		all = append(all, hood)
	}
	if h.DuctWidth.State() != record.Unknown || h.DuctDiameter.State() != record.Unknown {
		all = append(all, duct)
	}
	if h.SpacePressure.State() != record.Unknown {
		all = append(all, space)
	}
	return all
}

func (v *airView) reference() app.UI {
	return v.section("reference", v.T("section.reference"), v.T("section.reference.sub"), func() app.UI {
		keys := []string{"same-wheel", "target.speed", "target.airflow", "target.pressure", "target.power", "target.air-temperature"}
		if v.Fan.SameWheel.Value() == record.No {
			keys[1], keys[4] = "target.rated-speed", "target.rated-power"
		}
		if v.Fan.Target.Airflow.State() != record.Known {
			keys = append(keys, "old.speed", "old.airflow", "old.pressure")
		}
		return v.fields(append(keys, "altitude")...)
	})
}

func (v *airView) want() app.UI {
	goals := map[record.Goal]string{record.GoalAirflow: "want.airflow", record.GoalPressure: "want.pressure", record.GoalPower: "want.power"}
	return v.section("want", v.T("section.want"), "", func() app.UI {
		key, ok := goals[v.Fan.Want.Goal.Value()]
		if !ok {
			key = "want.speed"
		}
		return v.fields("want.goal", key, "want.air-temperature")
	})
}

func (v *airView) hoodInputs() app.UI {
	h := &v.Fan.Hood
	return v.section("hood", v.T("section.hood"), v.T("section.hood.sub"), func() app.UI {
		keys := []string{"hood.listing", "hood.label-airflow"}
		if h.Listing.Value() == record.Unlisted {
			keys = []string{"hood.listing", "hood.kind", "hood.duty", "hood.length"}
		}
		keys = append(keys, "hood.airflow", "hood.duct-width", "hood.duct-height", "hood.duct-diameter",
			"hood.makeup-airflow", "hood.transfer-airflow", "hood.space-pressure")
		return v.fields(keys...)
	})
}
