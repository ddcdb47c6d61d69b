package page

import (
	"math"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/picture"
	"roofside/app/widget"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// roll leads through a lead roll: three readings, all leads moved by one place in
// between.
func (v *powerView) roll() app.UI {
	r := v.p.Roll
	if !v.p.Taken || !v.p.New {
		r = sheet.LeadRoll(v.Fan)
	}
	return v.section("roll", v.T("section.roll"), v.rollSummary(r), func() app.UI {
		return app.Div().Body(
			app.P().Class("field-note").Text(v.T("roll.what")),
			app.Div().ID("roll-says").TabIndex(-1).Body(v.rollSays(r)...),
			app.Div().Body(app.If(len(r.Trials) > 1, func() app.UI { return v.rollTable(r) })),
			app.Div().Body(app.If(r.Before == phase.BeforeNothing && !r.Known, func() app.UI {
				return app.Div().Body(
					app.P().Class("stepwise").Text(v.T("roll.how")),
					widget.Button("roll next", v.T("roll.moved", "leads", leads(sheet.Moved(sheet.LeadsNow(v.Fan)))), "wide", v.guarded(v.rolled)).ID("roll-next"),
				)
			})),
			v.fields("new.leads"),
		)
	})
}

func (v *powerView) rollSummary(r sheet.Roll) string {
	switch {
	case r.Known:
		return v.T("roll.cause." + string(r.Found.Cause))
	case len(r.Trials) > 1:
		return v.T("roll.of", "n", v.whole(len(r.Trials)))
	}
	return ""
}

// rollSays says what stands in the way of a roll, how far it is, or what it tells.
func (v *powerView) rollSays(r sheet.Roll) []app.UI {
	var list []app.UI
	say := func(s string) { list = append(list, app.P().Text(s)) }
	switch {
	case r.Fault != nil:
		say(v.faulty(r.Fault))
	case r.Known:
		list = append(list, app.P().Class("stepwise").Body(app.Output().Name("roll.cause").Body(app.Text(v.cause()))))
		say(v.evidence(r))
		say(v.T("roll.do." + string(r.Found.Cause)))
	case r.Before != phase.BeforeNothing:
		s := v.T("roll.before." + string(r.Before))
		if len(r.Wanted) > 0 {
			s += " " + v.T("wanted", "places", v.list(r.Wanted))
		}
		say(s)
	case len(r.Trials) == 2:
		say(v.T("roll.two"))
	case len(r.Wanted) > 0:
		say(v.T("wanted", "places", v.list(r.Wanted)))
	}
	return list
}

// cause words what a roll has told.
func (v *powerView) cause() string {
	found := v.p.Roll.Found
	if found.Cause == phase.CauseUnjudged {
		return v.T("roll.unjudged." + string(found.Reason))
	}
	s := v.T("roll.told."+string(found.Cause), "line", v.whole(int(found.Line)), "lead", v.whole(int(v.p.Roll.Lead)))
	if found.Confidence == phase.Likely {
		s = v.T("roll.likely", "cause", lowerFirst(s))
	}
	return s
}

func (v *powerView) evidence(r sheet.Roll) string {
	of := func(x unit.Ratio) string { return v.figure(sheet.Figure{Scale: &unit.Share, Base: float64(x)}) }
	f := r.Found
	return v.T("roll.evidence", "line", v.whole(int(f.Line)), "lead", v.whole(int(r.Lead)), "supply", of(f.Supply), "motor", of(f.Motor),
		"rest", of(f.Rest), "meter", of(f.Meter), "onLine", v.whole(f.OnLine), "onLead", v.whole(f.OnLead))
}

// rolled notes that all leads were moved by one place, and starts the reading there.
// The reading before it is that of the place they stood at.
func (v *powerView) rolled() {
	f := v.Fan
	now := sheet.LeadsNow(f)
	v.add("amps-1", func() {
		if last := f.Trials[len(f.Trials)-1]; last.Leads.Value() == "" {
			v.must(last.Leads.Set(string(now)))
		}
		v.must(f.New.Leads.Set(string(sheet.Moved(now))))
	})
}

// rollTable shows the positions: what each line drew with which lead on it.
func (v *powerView) rollTable(r sheet.Roll) app.UI {
	row := func(i int) app.UI {
		t := r.Trials[i]
		far := sheet.AmpsUnbalance(v.Fan, &v.Fan.New, &t.Reading).Leg
		return app.Tr().Body(
			app.Th().Scope("row").Text(v.side("trial."+t.ID+".")),
			app.Range([]int{0, 1, 2}).Slice(func(l int) app.UI { return v.rollCell(t, l, far) }),
		)
	}
	return app.Div().Class("scroll").TabIndex(0).Role("region").Aria("label", v.T("section.roll")).Body(app.Table().Class("roll-table").Body(
		app.THead().Body(app.Tr().Body(app.Td(), app.Th().Scope("col").Text("L1"), app.Th().Scope("col").Text("L2"), app.Th().Scope("col").Text("L3"))),
		app.TBody().Body(app.Range(r.Trials).Slice(row)),
	))
}

func (v *powerView) rollCell(t *record.Trial, line int, far phase.Leg) app.UI {
	drew := "–"
	if a := sheet.LegAmps(&t.Reading, line); a.Known() {
		drew = v.amps(a)
	}
	lead := "T" + string(t.Leads.Value()[2*line])
	if far == phase.Leg(line+1) {
		return app.Td().Class("far").Body(app.Strong().Text(drew), app.Span().Class("quiet").Text(lead), app.Span().Class("tag").Text(v.T("roll.far")))
	}
	return app.Td().Body(app.Text(drew), app.Span().Class("quiet").Text(lead))
}

// drawn rounds a share to what can be seen of it, so that a further digit draws
// nothing anew.
func drawn(share float64) float64 { return math.Round(share*1e4) / 1e4 }

// legs draws three readings around their average, from the answers' own numbers.
func (v *powerView) legs(of string) app.UI {
	p := v.p
	u, bound, scale := p.Volts, phase.UnbalanceFree, &unit.Potential
	if of == "amps" {
		u, bound, scale = p.Amps, phase.CurrentUnbalanceMost, &unit.Amperage
	}
	lost := of == "amps" && v.dead()
	if !p.Three || !u.Share.Known() && !lost {
		return app.Div()
	}
	bars, mean := sheet.Around(p.VoltsAt, true)
	if of == "amps" {
		bars, mean = sheet.Around(p.Reading, false)
	}
	limit, average := v.figure(sheet.Figure{Scale: &unit.Share, Base: float64(bound)}), v.figure(sheet.Figure{Scale: scale, Base: mean})
	l := picture.Legs{
		Limit: float64(bound), Class: "watch",
		AverageText: v.T("picture.average", "value", average), LimitText: v.T("picture.limit", "limit", limit),
		ReadingHead: v.T("picture.reading"), OffHead: v.T("picture.off"), Farthest: v.T("roll.far"),
		Title: v.T("picture.legs." + of), Description: v.T("picture.legs.says", "average", average, "limit", limit),
	}
	if lost { // no unbalance to speak of
		l.Limit, l.LimitText, l.Description = 0, "", v.lost()
	}
	digest := []string{l.Description, l.AverageText, l.LimitText, l.Title}
	for i, b := range bars {
		l.Bars[i] = picture.Bar{
			Off: drawn(b.Off), Low: drawn(b.Low), High: drawn(b.High), Far: u.Leg == phase.Leg(i+1) || lost && p.Lost.Leg == phase.Leg(i+1),
			Label: v.leg(of, i), ReadingText: v.figure(sheet.Figure{Scale: scale, Base: b.Reading}), OffText: v.Signed(&unit.Share, b.Off),
		}
		digest = append(digest, exact(l.Bars[i].Off), exact(l.Bars[i].Low), exact(l.Bars[i].High), l.Bars[i].ReadingText, boolean(l.Bars[i].Far))
	}
	return v.memo("legs "+of, l.UI, digest...)
}
