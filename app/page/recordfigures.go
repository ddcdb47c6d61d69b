package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// The columns of the record's figures, in the order of time.
var figureColumns = [...]string{"target", "found", "shipped", "left"}

// A figureRow is one thing in the columns that have it, how far it was left from
// the target, and what that means.
type figureRow struct {
	name    string
	cells   [len(figureColumns)]*widget.Value
	apart   string
	verdict *sheet.Verdict
}

func (r *figureRow) empty() bool {
	for _, c := range r.cells {
		if c != nil {
			return false
		}
	}
	return true
}

// cell writes an answer of a row, or nothing where it isn't known.
func cell[Q unit.Quantity](v *recordView, scale *unit.Scale, a sheet.Answer[Q]) *widget.Value {
	if !a.Known() {
		return nil
	}
	return v.value(scale, Q(0).Kind(), float64(a.Value), float64(a.Band))
}

// rows are what the record shows of both fans.
func (v *recordView) rows() []figureRow {
	f, old, fresh := v.Fan, &v.Fan.Old, &v.Fan.New
	left := f.Left()
	if left == nil {
		left = &record.Trial{}
	}
	r := &left.Reading
	var rows []figureRow
	if v.driven {
		turns := sheet.TrialTurns(left)
		leftSpeed, target := sheet.LeftSpeed(f), v.table.Target
		speed := figureRow{name: "speed", cells: [4]*widget.Value{
			cell(v, &unit.Rotation, target), cell(v, &unit.Rotation, sheet.FanSpeed(f, old)), cell(v, &unit.Rotation, v.table.AsShipped(f)), cell(v, &unit.Rotation, leftSpeed)}}
		if by, ok := sheet.Apart(leftSpeed, target); ok {
			speed.apart = v.Signed(&unit.Share, float64(by))
			if verdict, ok := sheet.Named(v.running, "left.fan-speed"); ok {
				speed.verdict = &verdict
			}
		}
		rows = append(rows,
			figureRow{name: "turns", cells: [4]*widget.Value{nil, cell(v, &unit.TurnCount, sheet.Turns(old)), cell(v, &unit.TurnCount, sheet.Turns(fresh)), cell(v, &unit.TurnCount, turns)}},
			figureRow{name: "motor-sheave", cells: [4]*widget.Value{nil, cell(v, &unit.Shop, sheet.MotorPitch(old)), cell(v, &unit.Shop, sheet.MotorPitch(fresh)), cell(v, &unit.Shop, sheet.MotorPitchAt(fresh, turns))}},
			figureRow{name: "fan-sheave", cells: [4]*widget.Value{nil, cell(v, &unit.Shop, sheet.FanPitch(old)), cell(v, &unit.Shop, sheet.FanPitch(fresh)), nil}},
			speed)
	}
	electrical := v.proof.Trial == left
	volts := figureRow{name: "volts", cells: [4]*widget.Value{nil, cell(v, &unit.Potential, sheet.LineVolts(f, &old.Reading)), cell(v, &unit.Potential, sheet.Read("U", sheet.FromPlate, &fresh.MotorVolts)), cell(v, &unit.Potential, sheet.LineVolts(f, r))}}
	amps := figureRow{name: "amps", cells: [4]*widget.Value{nil, cell(v, &unit.Amperage, sheet.LineAmps(f, &old.Reading)), cell(v, &unit.Amperage, sheet.Read("I", sheet.FromPlate, &fresh.MotorAmps)), cell(v, &unit.Amperage, sheet.LineAmps(f, r))}}
	if electrical {
		volts.verdict, amps.verdict = &v.proof.OfPlateVolts, &v.proof.OfLegs
	}
	rows = append(rows,
		figureRow{name: "airflow", cells: [4]*widget.Value{cell(v, &unit.Airflow, sheet.Read("Q", "", &f.Target.Airflow)), cell(v, &unit.Airflow, sheet.Read("Q", "", &old.Reading.Airflow)), nil, cell(v, &unit.Airflow, sheet.Read("Q", "", &r.Airflow))}},
		v.hood(),
		figureRow{name: "pressure", cells: [4]*widget.Value{cell(v, &unit.AirPressure, sheet.Read("p", "", &f.Target.Pressure)), cell(v, &unit.AirPressure, sheet.Read("p", "", &old.Reading.Pressure)), nil, cell(v, &unit.AirPressure, sheet.Read("p", "", &r.Pressure))}},
		volts, amps,
		figureRow{name: "force", cells: [4]*widget.Value{3: cell(v, &unit.Pull, sheet.Read("F", "", &left.Belt.Force))}},
		figureRow{name: "frequency", cells: [4]*widget.Value{3: cell(v, &unit.Cycles, sheet.Read("f", "", &left.Belt.Frequency))}},
	)
	kept := rows[:0]
	for _, r := range rows {
		if !r.empty() {
			kept = append(kept, r)
		}
	}
	return kept
}

// hood is what the hood needs and what was measured at it.
func (v *recordView) hood() figureRow {
	f := v.Fan
	r := figureRow{name: "hood", cells: [4]*widget.Value{cell(v, &unit.Airflow, sheet.HoodLeast(f)), nil, nil, cell(v, &unit.Airflow, sheet.Read("Q", "", &f.Hood.Airflow))}}
	if f.Hood.Airflow.State() == record.Known {
		verdict := sheet.HoodVerdict(f, sheet.HoodAirflow(f, sheet.Point{}))
		r.verdict = &verdict
	}
	return r
}

// figures shows them side by side.
func (v *recordView) figures() app.UI { return v.standing("figures", v.drawFigures, v.Figures()) }

func (v *recordView) drawFigures() app.UI {
	rows := v.rows()
	return app.Section().Class("figures").Body(
		app.H2().Text(v.T("record.figures")),
		app.If(len(rows) == 0, func() app.UI { return app.P().Class("field-note").Text(v.T("record.figures.none")) }).
			Else(func() app.UI {
				return app.Table().Body(v.figureHead(), app.TBody().Body(app.Range(rows).Slice(func(i int) app.UI { return v.figureLine(rows[i], false) })))
			}),
		app.If(v.Fan.Left() == nil && len(v.Fan.Trials) > 0, func() app.UI { return app.P().Class("field-note").Text(v.T("record.left.none")) }),
	)
}

func (v *recordView) figureHead() app.UI {
	return app.THead().Body(app.Tr().Body(app.Td(), app.Range(figureColumns[:]).Slice(func(i int) app.UI {
		return app.Th().Scope("col").Text(v.T("column." + figureColumns[i]))
	})))
}

// figureLine is a row of the table; what is printed has no names, for each answer has
// one on a page.
func (v *recordView) figureLine(r figureRow, printed bool) app.UI {
	return app.Tr().Body(
		app.Th().Scope("row").Body(
			app.Text(v.T("figure."+r.name)),
			app.If(r.unit() != "", func() app.UI { return app.Small().Text(r.unit()) }),
			app.If(r.apart != "" || r.verdict != nil, func() app.UI { return v.figureVerdict(r, printed) }),
		),
		app.Range(r.cells[:]).Slice(func(i int) app.UI {
			c := r.cells[i]
			if c == nil {
				return app.Td().Text("—")
			}
			if printed {
				return app.Td().Text(c.Figure)
			}
			return app.Td().Body(app.Output().Name("record." + r.name + "." + figureColumns[i]).Body(
				app.Data().Value(c.Number).Attr("data-unit", c.DataUnit).Text(c.Figure)))
		}),
	)
}

func (v *recordView) figureVerdict(r figureRow, printed bool) app.UI {
	if r.verdict == nil {
		return app.Small().Text(r.apart)
	}
	level := levels[r.verdict.Level]
	said := app.Span().Class("level " + string(level))
	if !printed {
		said = said.DataSet("verdict", string(level)).DataSet("of", "record."+r.name)
	}
	return said.Body(widget.Mark(level), app.Small().Text(r.apart+" "+v.T("level."+string(level))))
}

// unit is that of the row, which all its cells share.
func (r *figureRow) unit() string {
	for _, c := range r.cells {
		if c != nil {
			return c.Unit
		}
	}
	return ""
}

// log lists what was read on the new drive, and which reading was accepted.
func (v *recordView) log() app.UI {
	ts := v.Fan.Trials
	return v.section("log", v.T("section.readings"), v.T("readings.count", "n", v.whole(len(ts))), func() app.UI {
		if len(ts) == 0 {
			return app.P().Class("field-note").Text(v.T("readings.none"))
		}
		return v.standing("log", func() app.UI {
			return app.Div().Class("scroll").TabIndex(0).Role("region").Aria("label", v.T("section.readings")).Body(v.logTable(ts))
		}, v.Figures())
	})
}

func (v *recordView) logTable(ts []*record.Trial) app.UI {
	heads := []string{"turns", "speed", "amps", "volts", "left"}
	return app.Table().Class("log").Body(
		app.THead().Body(app.Tr().Body(app.Th().Scope("col").Text("#"), app.Range(heads).Slice(func(i int) app.UI { return app.Th().Scope("col").Text(v.T("log." + heads[i])) }))),
		app.TBody().Body(app.Range(ts).Slice(func(i int) app.UI {
			t := ts[i]
			accepted := ""
			if t.Accepted.Value() == record.Yes {
				accepted = "✓ " + v.T("readings.accepted")
			}
			return app.Tr().Body(
				app.Th().Scope("row").Body(app.Text(v.whole(i+1)), app.Small().Text(v.when(&t.At))),
				app.Td().Text(v.held(&t.Turns)), app.Td().Text(v.held(&t.Reading.Speed)),
				app.Td().Text(v.three(&t.Reading.Amps[0], &t.Reading.Amps[1], &t.Reading.Amps[2])),
				app.Td().Text(v.three(&t.Reading.Volts[0], &t.Reading.Volts[1], &t.Reading.Volts[2])),
				app.Td().Text(accepted),
			)
		})),
	)
}

// three writes the readings of three legs or pairs, with their unit once.
func (v *recordView) three(places ...record.Place) string {
	var figures []string
	unit := ""
	for _, p := range places {
		if p.State() != record.Known {
			continue
		}
		figure := v.held(p)
		if at := strings.LastIndexByte(figure, ' '); at > 0 && (unit == "" || figure[at:] == unit) {
			figure, unit = figure[:at], figure[at:]
		}
		figures = append(figures, figure)
	}
	if figures == nil {
		return "—"
	}
	return strings.Join(figures, " / ") + unit
}

// when writes the moment of a reading as the clock on the wall had it.
func (v *recordView) when(m *record.Moment) string {
	if m.State() != record.Known {
		return ""
	}
	return m.Value().Format("2006-01-02 15:04")
}
