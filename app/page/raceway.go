package page

import (
	"slices"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// Raceway answers which parts go between an opening and a conduit, whether the
// conductors fit raceway and box, and whether they carry what the fan takes.
type Raceway struct{ leaf }

// NewRaceway returns the page.
func NewRaceway() *Raceway { return &Raceway{leaf{route: "/raceway/"}} }

// Render draws the page.
func (p *Raceway) Render() app.UI {
	return p.draw(shared.T("raceway.title"), func(b *bench) app.UI {
		f := b.Fan
		job := sheet.JobOf(f, b.RuleMark(), false)
		v := racewayView{b, job, job.Adapter(), job.Joint(), job.Fill(), job.Circuit()}
		v.accuseAll()
		return app.Div().Class("raceway").Body(
			v.headline(),
			v.chain(),
			app.Div().Class("columns").Body(
				app.Div().Class("answers").Body(
					app.If(len(f.Wires) == 0 || sheet.Piped(f), v.filling), v.wiring(), v.box(),
				),
				app.Div().Class("inputs").Body(
					v.opening(), v.conductors(), v.motor(), v.circuit(), v.boxInputs(),
					b.sharing(p.route), v.cautioned(),
				),
			),
		)
	})
}

// A racewayView is the page with what its plate says.
type racewayView struct {
	*bench
	job     *sheet.Job
	adapter sheet.Finding[raceway.Adapter]
	joint   []sheet.Verdict
	fill    sheet.Verdict
	c       *sheet.Circuit
}

// accuseAll notes beside the fields what the formulas refuse.
func (v *racewayView) accuseAll() {
	f := v.Fan
	clear(v.blamed)
	if sheet.Boxed(f) {
		blame(v.bench, sheet.BoxNeeded(f), sheet.BoxVolume(f))
	}
	blame(v.bench, v.c.Device, v.c.Demand)
	blame(v.bench, v.c.Drop)
	blame(v.bench, v.c.Carried)
	blame(v.bench, sheet.FillShare(f))
	for _, d := range v.c.Remarks {
		v.accuse(d.Fault)
	}
	v.accuse(v.adapter.Fault)
}

// cautioned lists the cautions, with those of aluminum and of another circuit's
// wires where there are any.
func (v *racewayView) cautioned() app.UI {
	which := []string{"lock", "duct", "live", "code"}
	for _, d := range v.c.Remarks {
		if d.Rule == sheet.RuleAluminum {
			which = append(which, "aluminum")
		}
	}
	if slices.ContainsFunc(v.Fan.Wires, func(w *record.Wire) bool { return w.Role.Value() == record.OtherCircuit }) {
		which = append(which, "other")
	}
	return v.cautions(which...)
}

// headline says what to take along, and how fill, wires, joint and box stand.
func (v *racewayView) headline() app.UI {
	fill, wires := "fill", "wires"
	filled := []sheet.Verdict{v.fill}
	if len(v.Fan.Wires) == 0 { // said in words, but not held against it
		fill, wires = "", ""
	} else if _, jam, three := sheet.Jam(v.Fan); three {
		filled = append(filled, jam)
	}
	briefs := []app.UI{v.standing("fill", fill, sheet.Worst(filled)), v.standing("wires", wires, sheet.Worst(v.c.Verdicts(v.Fan)).Verdict)}
	if v.adapter.Known() || len(v.joint) > 0 {
		briefs = append(briefs, v.standing("joint", "joint", sheet.Worst(v.joint)))
	}
	if sheet.Boxed(v.Fan) {
		briefs = append(briefs, v.standing("box", "box", v.job.Box()))
	}
	class := "move"
	if len(v.adapter.Value.Parts) > 2 {
		class += " long"
	}
	return v.dataplate(sheet.OfRaceway, v.job.Plate(sheet.OfRaceway), v.T("raceway.label"),
		app.Output().Name("take-along").Class(class).Aria("live", "polite").Text(v.takeAlong()),
		app.Div().Class("briefs").Body(briefs...),
		v.next(),
	)
}

// standing is a verdict's word on the plate; where several may have decided it,
// what is wrong is named.
func (v *racewayView) standing(name, of string, d sheet.Verdict) app.UI {
	level := levels[d.Level]
	reason := lowerFirst(v.T("level." + string(level)))
	settled := d.Level == sheet.Unjudged && len(d.Wanted) == 0 && d.Fault == nil // nothing on the plate leads on
	if (d.Level >= sheet.Watch || settled) && (name == "wires" || name == "joint") {
		reason += ", " + lowerFirst(v.T("rule."+string(d.Rule)))
	}
	return widget.Verdict{Name: of, Level: level, Word: v.T("raceway." + name), Reason: reason}.UI()
}

func (v *racewayView) takeAlong() string {
	a := v.adapter
	switch {
	case a.Fault != nil:
		return v.faulty(a.Fault)
	case !a.Known():
		return v.T("raceway.ask")
	case len(a.Value.Parts) == 0:
		return v.T("raceway.nothing")
	}
	var names []string
	for _, p := range a.Value.Parts {
		names = append(names, v.part(p))
	}
	return v.T("raceway.take", "parts", strings.Join(names, ", "))
}

// next is the way to what is missing next: for the adapter first, then for fill,
// wires, joint and box.
func (v *racewayView) next() app.UI {
	wanted := v.adapter.Wanted
	if v.adapter.Fault != nil && v.adapter.Fault.Place != nil {
		wanted = []record.Place{v.adapter.Fault.Place}
	}
	if len(wanted) == 0 && len(v.Fan.Wires) == 0 {
		return app.Ul().Class("wanted").Aria("label", v.T("wanted.label")).Body(
			app.Li().Body(widget.Button("to first wire", v.T("wires.first"), "to", v.guarded(v.addWire))))
	}
	for _, d := range v.job.Stands(sheet.OfRaceway) {
		if len(wanted) == 0 && d.Level == sheet.Unjudged {
			wanted = d.Wanted
		}
	}
	if len(wanted) == 0 {
		return app.Div()
	}
	return v.wanted("raceway", wanted, 1)
}
