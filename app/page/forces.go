package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// forces is the table of forces: what they are set by, for a new belt and for one
// that has run in.
func (v *beltView) forces() app.UI {
	t := v.set
	rules := t.Rules()
	label := unit.Pull.In(v.Settings.Units).Label
	var rows []ruled
	digest := []string{v.words.Tag, label}
	row := func(by sheet.By, power sheet.Answer[unit.Power], fresh, runIn sheet.Edges) {
		r := ruled{by: by, rules: by == rules, fresh: v.cell(fresh), runIn: v.cell(runIn)}
		switch {
		case power.Known():
			s, hp := v.Figure(&unit.Shaft, float64(power.Value))
			r.note = s + " " + hp
		case fresh.Least.Fault != nil:
			r.note = v.faulty(fresh.Least.Fault)
		case len(fresh.Least.Wanted) > 0:
			r.note = v.T("wanted", "places", v.first(fresh.Least.Wanted))
		}
		digest = append(digest, boolean(r.rules), string(by), r.note)
		for _, c := range [2]band{r.fresh, r.runIn} {
			digest = append(digest, c.least, c.most, c.exactLeast, c.exactMost)
		}
		rows = append(rows, r)
	}
	if v.Fan.Card.Force.State() != record.Unknown {
		row(sheet.ByListed, sheet.Answer[unit.Power]{}, t.Listed.New, t.Listed.RunIn)
	}
	row(sheet.ByMeasured, t.Measured.Power, t.Measured.New, t.Measured.RunIn)
	row(sheet.ByPlate, t.Plate.Power, t.Plate.New, t.Plate.RunIn)
	return v.memo("forces", func() app.UI {
		return app.Table().Class("forces").Body(
			app.THead().Body(app.Tr().Body(app.Th().Scope("col").Text(v.T("belt.by")), app.Th().Scope("col").Text(v.T("belt.age.new")+", "+label), app.Th().Scope("col").Text(v.T("belt.age.used")+", "+label))),
			app.TBody().Body(app.Range(rows).Slice(func(i int) app.UI { return v.ruled(rows[i]) })),
		)
	}, digest...)
}

// A ruled row of the table of forces, with what it is set by.
type ruled struct {
	by           sheet.By
	rules        bool
	note         string
	fresh, runIn band
}

func (v *beltView) ruled(r ruled) app.UI {
	class := ""
	if r.rules {
		class = "rules"
	}
	return app.Tr().Class(class).Body(
		app.Th().Scope("row").Body(app.Span().Text(v.T("belt.by."+string(r.by))), app.If(r.rules, func() app.UI { return app.Span().Class("tag").Text(v.T("belt.rules")) }), app.Small().Text(r.note)),
		r.fresh.drawn(string(r.by)+".new"), r.runIn.drawn(string(r.by)+".run-in"),
	)
}

// A band holds the two forces of a band, as they are shown and for machines; none while
// they are not known.
type band struct{ least, most, exactLeast, exactMost string }

func (v *beltView) cell(e sheet.Edges) (c band) {
	if e.Least.Known() && e.Most.Known() {
		c.least, _ = v.Figure(&unit.Pull, float64(e.Least.Value))
		c.most, _ = v.Figure(&unit.Pull, float64(e.Most.Value))
		c.exactLeast, c.exactMost = exact(float64(e.Least.Value)), exact(float64(e.Most.Value))
	}
	return c
}

func (c band) drawn(name string) app.UI {
	if c.least == "" {
		return app.Td().Body(app.Output().Name(name+"-least").Text("–"), app.Output().Name(name+"-most"))
	}
	force := func(end, shown, exact string) app.UI {
		return app.Output().Name(name + end).Body(app.Data().Value(exact).Attr("data-unit", "N").Text(shown))
	}
	return app.Td().Body(force("-least", c.least, c.exactLeast), app.Text("–"), force("-most", c.most, c.exactMost))
}
