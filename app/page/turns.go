package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// turns draws the turns table: the new drive at every half turn.
func (v *driveView) turns() app.UI {
	if f := v.t.Speed.Fault; f != nil {
		return app.Section().Class("turns").Body(app.H2().Text(v.T("turns.title")), app.P().Class("answer-missing").Text(v.faulty(f)))
	}
	if v.Fan.New.Sheave.Value() == record.Fixed {
		return app.Section().Class("turns").Body(app.H2().Text(v.T("turns.title")), app.P().Class("field-note").Text(v.T("turns.fixed")), v.amps())
	}
	if len(v.t.Rows) == 0 {
		return app.Section().Class("turns").Body(app.H2().Text(v.T("turns.title")), app.P().Class("answer-missing").Text(v.T("turns.wanting")),
			v.wanted("turns", v.t.Speed.Wanted, mostWanted))
	}
	from := v.T("turns.from." + string(v.t.From))
	return app.Section().Class("turns").Body(
		app.H2().Text(v.T("turns.title")),
		app.P().Class("field-note").Text(from+" "+v.T("turns.band", "band", v.Difference(&unit.Share, float64(v.t.Band)))),
		app.Div().Class("scroll").TabIndex(0).Role("region").Aria("label", v.T("turns.title")).Body(
			app.Table().Class("turns-table").Body(
				app.THead().Body(v.memo("turns head", v.head, systemName(v.Settings.Units), v.words.Tag)),
				app.TBody().Body(v.rows()...),
			),
		),
		v.amps(),
		v.sheave(),
	)
}

// amps says what the amps of the table are carried from, or what they want.
func (v *driveView) amps() app.UI {
	b := v.t.Basis
	if b.Known() {
		says := v.T("basis.from." + string(b.From))
		if v.Fan.ColdestAir.State() != record.Known {
			says += " " + v.T("cold.none")
		}
		return app.P().Class("field-note").Text(says)
	}
	if len(b.Wanted) == 0 {
		return app.P().Class("field-note").Text(v.T("basis.no"))
	}
	return app.Div().Body(app.P().Class("field-note").Text(v.T("basis.wanted")), v.wanted("amps", b.Wanted, mostWanted))
}

func (v *driveView) columns() []string {
	units := v.Settings.Units
	length := unit.Shop.In(units).Label
	return []string{v.T("col.turns"), v.T("col.speed"), v.T("col.verdict"), v.T("col.target"), v.T("col.amps"), v.T("col.plate"),
		v.T("col.power"), v.T("col.base", "unit", length), v.T("col.pitch", "unit", length), v.T("col.shift", "unit", length)}
}

func (v *driveView) head() app.UI {
	columns := v.columns()
	return app.Tr().Body(app.Range(columns).Slice(func(i int) app.UI { return app.Th().Scope("col").Text(columns[i]) }))
}

var marks = []struct {
	mark sheet.Mark
	key  string
}{{sheet.MarkSet, "set"}, {sheet.MarkNow, "now"}, {sheet.MarkShipped, "shipped"}, {sheet.MarkTarget, "target"}, {sheet.MarkFound, "found"}}

// rows draws the rows, each that was tapped with its reasons under it.
func (v *driveView) rows() []app.UI {
	var list []app.UI
	for _, r := range v.t.Rows {
		open := v.open[rowID(r)]
		list = append(list, v.row(r, open))
		if open {
			list = append(list, app.Tr().Class("why").Body(app.Td().ColSpan(len(v.columns())).Body(app.Div().Body(v.why(r)...))))
		}
	}
	return list
}

func rowID(r sheet.Row) string { return "row " + exact(float64(r.Turns)) }

func (v *driveView) why(r sheet.Row) []app.UI {
	if len(r.Verdicts) == 0 {
		return []app.UI{app.P().Text(v.T("row.within"))}
	}
	var all []app.UI
	for i, d := range r.Verdicts {
		all = append(all, v.verdict(rowID(r)+" "+exact(float64(i)), d).UI())
	}
	return all
}

func (v *driveView) row(r sheet.Row, open bool) app.UI {
	class := ""
	for _, m := range marks {
		if r.Marks&m.mark != 0 {
			class += " row-" + m.key
		}
	}
	speed, _ := v.Figure(&unit.Rotation, float64(r.Speed))
	pitch, _ := v.Figure(&unit.Shop, float64(r.Pitch))
	turns, exactly := exact(float64(r.Turns)), exact(float64(r.Speed))
	cells := [7]string{v.percent(r.OfTarget), v.ampsRange(r), v.plateRange(r), v.percent(r.Power), v.travel(r.Base), pitch, v.aside(r.Shift)}
	head, verdict := v.rowHead(r), v.rowVerdict(r, open)
	draw := func() app.UI { // with few attributes: a stroke draws all rows anew, and each attribute costs it
		return app.Tr().Class(class).DataSet("turns", turns).Body(
			head,
			app.Td().Body(app.Data().Value(exactly).Attr("data-unit", "rpm").Text(speed)),
			verdict,
			app.Range(cells[:]).Slice(func(i int) app.UI { return app.Td().Text(cells[i]) }),
		)
	}
	return v.memo("row "+turns, draw, class, exactly, speed, head.Digest, verdict.Digest, cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6])
}

// rowHead names a row's setting and what is marked there. It is a part by itself, as the
// verdict is: a stroke moves the figures of every row, and these of few.
func (v *driveView) rowHead(r sheet.Row) *memo {
	shown := []string{v.Turns(r.Turns)}
	for _, m := range marks {
		if r.Marks&m.mark != 0 {
			shown = append(shown, v.T("mark."+m.key))
		}
	}
	draw := func() app.UI {
		return app.Th().Scope("row").Body(app.Strong().Text(shown[0]), app.Range(shown[1:]).Slice(func(i int) app.UI {
			return app.Span().Class("tag").Text(shown[1+i])
		}))
	}
	return v.memo("head of "+rowID(r), draw, shown...)
}

// rowVerdict names the limit that decides a row; a tap says why.
func (v *driveView) rowVerdict(r sheet.Row, open bool) *memo {
	worst := r.Verdict()
	level, id := levels[worst.Level], rowID(r)
	short := v.T("level." + string(level))
	spoken := v.Turns(r.Turns) + ": " + short
	if len(r.Verdicts) > 0 {
		short = v.T("rule." + string(worst.Rule))
		spoken += ": " + short
	}
	draw := func() app.UI {
		return app.Td().Class("level " + string(level)).Body(
			widget.Button(id, "", "row-why", v.toggle(id)).Aria("expanded", boolean(open)).Aria("label", spoken).Body(widget.Mark(level), app.Span().Text(short)),
		)
	}
	return v.memo("verdict of "+id, draw, string(level), spoken, short, boolean(open))
}

func (v *driveView) percent(r sheet.Maybe[unit.Ratio]) string {
	if !r.Known {
		return "–"
	}
	if v.Fan.SameWheel.Value() == "" {
		return "–"
	}
	s, label := v.Figure(&unit.Share, float64(r.V))
	return s + " " + label
}

func (v *driveView) ampsRange(r sheet.Row) string {
	if !r.AmpsLow.Known {
		return "–"
	}
	low, _ := v.Figure(&unit.Amperage, float64(r.AmpsLow.V))
	high, a := v.Figure(&unit.Amperage, float64(r.AmpsHigh.V))
	if r.Beyond {
		high = ">\u202f" + high
	}
	if r.AmpsLow == r.AmpsHigh {
		return high + " " + a
	}
	return low + "–" + high + " " + a
}

func (v *driveView) plateRange(r sheet.Row) string {
	if !r.LoadHigh.Known {
		return "–"
	}
	s, label := v.Figure(&unit.Share, float64(r.LoadHigh.V))
	if r.Beyond {
		return "> " + s + " " + label
	}
	return "≤ " + s + " " + label
}

func (v *driveView) travel(m sheet.Maybe[unit.Length]) string {
	if !m.Known {
		return "–"
	}
	return v.aside(m.V)
}

// aside writes the sideways shift of the belt, which is small.
func (v *driveView) aside(x unit.Length) string {
	if x == 0 {
		return "0"
	}
	sign := "+"
	if x < 0 {
		sign, x = "−", -x
	}
	return sign + v.Difference(&unit.Shop, float64(x))
}
