package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// Drive answers what speed a drive gives, and how the new motor sheave must be
// set to bring the new fan to its target.
type Drive struct{ leaf }

// NewDrive returns the page.
func NewDrive() *Drive { return &Drive{leaf{route: "/drive/"}} }

// Render draws the page.
func (p *Drive) Render() app.UI {
	return p.draw(shared.T("drive.title"), func(b *bench) app.UI {
		if b.Fan.DirectDrive() {
			return app.Div().Body(app.P().Class("notice").Text(b.T("drive.direct")), b.fields("supply", "mount"))
		}
		v := newDriveView(b)
		clear(b.blamed)
		blame(b, v.t.Target, v.t.Speed, v.found)
		blame(b, sheet.MotorPitch(&b.Fan.Old), sheet.FanPitch(&b.Fan.Old), sheet.MotorPitch(&b.Fan.New), sheet.BeltLength(&b.Fan.New), sheet.BeltLength(&b.Fan.Old))
		return app.Div().Class("drive").Body(
			v.headline(),
			v.below(),
			b.ofSpeed(),
			app.Div().Class("columns").Body(
				app.Div().Class("answers").Body(v.compare(), v.turns(), v.sheaves()),
				app.Div().Class("inputs").Body(
					v.job(), v.target(), v.old(), b.amps(), b.plate(), v.fresh(v.T("section.new.sub")), v.base(v.T("section.base.sub"), "new.belt-number"), v.readings(),
					b.sharing(p.route), b.cautions("lock", "belt", "live", "code"),
				),
			),
		)
	})
}

// A driveView is the page with the table it is drawn from.
type driveView struct {
	*bench
	t       sheet.Table
	found   sheet.Answer[unit.Speed]
	next    sheet.Move
	wanting []record.Place // before it is known
	made    *sheet.Job
	stands  []sheet.Held // on the page
	worst   sheet.Held   // of it
	judged  bool         // by more than what is wanted first
}

func newDriveView(b *bench) *driveView {
	job := sheet.JobOf(b.Fan, b.RuleMark(), true)
	v := &driveView{bench: b, made: job, t: job.Table(), found: sheet.FanSpeed(b.Fan, &b.Fan.Old)}
	v.next, v.wanting = job.Move()
	v.stands, v.worst = job.Stands(sheet.OfDrive), job.Plate(sheet.OfDrive)
	v.judged = v.worst.Rule != "" && v.worst.Rule != sheet.RuleSetting
	return v
}

// stood returns what stands under a name, for a line of its own; nil where that is in
// order.
func (v *driveView) stood(name string) *sheet.Verdict {
	if d, ok := sheet.Named(v.stands, name); ok && d.Level >= sheet.Watch {
		return &d
	}
	return nil
}

// compare sets target, as found, as shipped and as it is now side by side.
func (v *driveView) compare() app.UI {
	f := v.Fan
	shipped := v.t.AsShipped(f)
	now, label := v.t.SpeedAt(f, sheet.NowTurns(f)), v.T("answer.new.fan-speed")
	if left := f.Left(); left != nil && left == f.Trials[len(f.Trials)-1] && left.Reading.Speed.State() == record.Known {
		now, label = sheet.LeftSpeed(f), v.T("answer.left.fan-speed")
	}
	fromTarget := v.apart(v.found)
	if v.found.Value == v.t.Target.Value { // its own
		fromTarget = ""
	}
	rotation := &unit.Rotation
	var sources *sheet.Verdict // one source alone has nothing to agree with, and that alarms nobody
	if t := sheet.TargetVerdict(f); t.Level != sheet.Unjudged {
		sources = &t
	}
	mismatch, read := sheet.Named(v.stands, "old.mismatch")
	return app.Section().Class("compare").Aria("label", v.T("compare")).Body(
		app.Div().Class("four").Body(
			answer(v.bench, shown{name: "target.fan-speed", scale: rotation, big: true, verdict: sources}, v.t.Target),
			answer(v.bench, shown{name: "old.fan-speed", scale: rotation, big: true, apart: fromTarget}, v.found),
			answer(v.bench, shown{name: "shipped.fan-speed", scale: rotation, big: true, apart: v.apart(shipped)}, shipped),
			answer(v.bench, shown{name: "new.fan-speed", label: label, scale: rotation, big: true, apart: v.apart(now)}, now),
		),
		app.If(read, func() app.UI {
			return answer(v.bench, shown{name: "old.mismatch", scale: &unit.Share, verdict: &mismatch}, sheet.Mismatch(f, &f.Old))
		}),
		v.doubts(),
		v.section("more", v.T("section.more"), "", func() app.UI {
			speed := sheet.BeltSpeedVerdict(sheet.BeltSpeed(f, &f.Old))
			return app.Div().Class("list").Body(
				answer(v.bench, shown{name: "old.ratio", scale: &unit.Factor}, sheet.Ratio(&f.Old)),
				answer(v.bench, shown{name: "old.motor-pitch", scale: &unit.Shop}, sheet.MotorPitch(&f.Old)),
				answer(v.bench, shown{name: "old.fan-pitch", scale: &unit.Shop}, sheet.FanPitch(&f.Old)),
				answer(v.bench, shown{name: "old.belt-speed", scale: &unit.Airspeed, verdict: &speed}, sheet.BeltSpeed(f, &f.Old)),
				answer(v.bench, shown{name: "old.arc", scale: &unit.Arc}, sheet.Arc(&f.Old)),
				answer(v.bench, shown{name: "new.motor-pitch", scale: &unit.Shop}, sheet.MotorPitchAt(&f.New, sheet.NowTurns(f))),
				answer(v.bench, shown{name: "new.belt-length", scale: &unit.Shop}, sheet.BeltLength(&f.New)),
				answer(v.bench, shown{name: "new.arc", scale: &unit.Arc}, sheet.Arc(&f.New)),
			)
		}),
	)
}

// apart writes how far a speed lies from the target.
func (v *driveView) apart(a sheet.Answer[unit.Speed]) string {
	r, ok := sheet.Apart(a, v.t.Target)
	if !ok {
		return ""
	}
	return strings.ReplaceAll(v.Signed(&unit.Share, float64(r)), " ", "\u00a0") // a sign is not parted from its number
}

// doubts shows what looks like a blunder, and nothing where nothing does.
func (v *driveView) doubts() app.UI {
	var list []app.UI
	for _, name := range []string{"old.swapped", "new.swapped", "new.belt-number"} {
		if d := v.stood(name); d != nil {
			list = append(list, v.verdict(name, *d).UI())
		}
	}
	return app.Div().Class("doubts").Body(list...)
}

// sheaves says which other sheave would reach the target.
func (v *driveView) sheaves() app.UI {
	open := v.t.Target.Known() && len(v.t.Rows) > 0 && v.t.Set < 0
	body := func() app.UI {
		s := v.made.Sheaves()
		return app.Div().Body(
			app.Div().Body(app.If(v.stood("need.target") != nil, func() app.UI { return v.verdict("need.target", *v.stood("need.target")).UI() })),
			app.Div().Class("list").Body(
				answer(v.bench, shown{name: "need.motor-sheave", scale: &unit.Shop, verdict: doubtful(s.MotorVerdict)}, s.Motor),
				answer(v.bench, shown{name: "need.fan-sheave", scale: &unit.Shop, verdict: doubtful(s.FanVerdict)}, s.Fan),
				answer(v.bench, shown{name: "need.motor-speed", scale: &unit.Rotation}, s.Speed),
				app.If(v.Fan.Supply.Value() == record.Inverter, func() app.UI {
					return answer(v.bench, shown{name: "need.frequency", scale: &unit.Cycles, verdict: doubtful(s.FrequencyVerdict)}, s.Frequency)
				}),
			),
		)
	}
	if open {
		return app.Section().Class("section").Body(app.H2().Text(v.T("section.sheaves")), body())
	}
	return v.section("sheaves", v.T("section.sheaves"), "", body)
}

// doubtful returns a verdict that is worth a line under its answer.
func doubtful(d sheet.Verdict) *sheet.Verdict {
	if d.Level == sheet.Within {
		return nil
	}
	return &d
}

func (v *driveView) job() app.UI {
	return v.section("job", v.T("section.job"), v.option(string(v.Fan.Supply.Value())), func() app.UI {
		supply := string(v.Fan.Supply.Value())
		return app.Div().Body(v.fields("name", "supply", "mount", "same-wheel"), app.If(v.words.Has("supply."+supply), func() app.UI {
			return app.P().Class("field-note").Text(v.T("supply." + supply))
		}))
	})
}

// target shows where the target comes from and how far its origins lie apart.
func (v *driveView) target() app.UI {
	summary := ""
	if v.t.Target.Known() {
		s, rpm := v.Figure(&unit.Rotation, float64(v.t.Target.Value))
		summary = s + " " + rpm
	}
	return v.section("target", v.T("section.target"), summary, func() app.UI {
		keys := []string{"target.speed", "target.tag-speed", "old.belt-healthy", "target.over"}
		if v.Fan.SameWheel.Value() == record.No {
			keys = []string{"target.rated-speed", "target.over"}
		}
		return app.Div().Body(v.fields(keys...), v.origins())
	})
}

func (v *driveView) origins() app.UI {
	cs := sheet.Targets(v.Fan)
	return app.Div().Class("origins").Body(app.Range(cs).Slice(func(i int) app.UI {
		c := cs[i]
		said := ""
		switch {
		case c.Speed.Known():
			s, rpm := v.Figure(&unit.Rotation, float64(c.Speed.Value))
			said = s + " " + rpm
			if !c.Chosen {
				said += " (" + v.Signed(&unit.Share, float64(c.Apart)) + ")"
			}
		case c.Speed.Fault != nil:
			said = v.faulty(c.Speed.Fault)
		default:
			said = v.T("wanted", "places", v.list(c.Speed.Wanted))
		}
		use := func() {
			v.Do("target.use", func() { v.must(v.Fan.Target.Use.Set(string(c.Origin))) })
		}
		return widget.Button("use "+string(c.Origin), "", "origin", v.guarded(use)).Aria("pressed", boolean(c.Chosen)).
			Body(app.Span().Text(v.T("origin."+string(c.Origin))), app.Strong().Text(said))
	}))
}
