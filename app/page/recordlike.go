package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// fitNames are what decides whether the new fan stands where the old one stood, and
// no other page asks.
var fitNames = []string{"model", "phases", "frame", "motor-bore", "motor-key", "fan-bore", "fan-key", "curb-width", "curb-length", "inlet", "weight", "hinge", "discharge"}

// fit asks it of both fans, side by side.
func (v *recordView) fit() app.UI {
	return v.section("fit", v.T("section.fit"), v.T("section.fit.sub"), func() app.UI {
		return app.Div().Body(
			app.P().Class("field-note").Text(v.T("fit.help")),
			app.Range(fitNames).Slice(func(i int) app.UI {
				old, fresh := "old."+fitNames[i], "new."+fitNames[i]
				return app.FieldSet().Class("pair").Body(app.Legend().Text(v.label(fresh)), v.paired(old), v.paired(fresh))
			}),
		)
	})
}

// likeForLike holds the new fan against the old one: what differs first, with what
// it means and the page that settles it.
func (v *recordView) likeForLike() app.UI {
	var differ, same, unknown []sheet.Line
	for _, l := range v.lines {
		switch {
		case l.Differs() || l.Level == sheet.Stop:
			differ = append(differ, l)
		case l.Likeness == sheet.Alike:
			same = append(same, l)
		default:
			unknown = append(unknown, l)
		}
	}
	summary := v.T("like.tally", "differ", v.whole(len(differ)), "same", v.whole(len(same)), "unknown", v.whole(len(unknown)))
	draw := func() app.UI {
		return app.Div().Class("like").Body(
			app.Range(differ).Slice(func(i int) app.UI { return v.difference(differ[i]) }),
			v.curb(),
			app.If(len(same) > 0, func() app.UI {
				return app.P().Body(widget.Mark(widget.Within), app.Text(" "+v.T("like.same", "what", v.names(same))))
			}),
			app.If(len(unknown) > 0, func() app.UI {
				return app.Div().Body(
					app.P().Body(widget.Mark(widget.Unjudged), app.Text(" "+v.T("like.unknown", "what", v.names(unknown)))),
					v.bench.wanted("like", missing(unknown), mostWanted),
				)
			}),
			app.P().Body(widget.Source(v.sourceOf("fit.alike"), v.entry("fit.alike"))),
		)
	}
	return v.section("like", v.T("section.like"), summary, func() app.UI {
		return v.standing("like", draw, v.Fits(), boolean(v.open["working curb.clearance"]), boolean(v.open["working curb.clearance-along"]))
	})
}

// missing returns of each line the place that isn't known.
func missing(lines []sheet.Line) (places []record.Place) {
	for _, l := range lines {
		if l.Old.State() != record.Known {
			places = append(places, l.Old)
		} else {
			places = append(places, l.New)
		}
	}
	return places
}

func (v *recordView) names(lines []sheet.Line) string {
	s := ""
	for i, l := range lines {
		if i > 0 {
			s += ", "
		}
		s += lowerFirst(v.lineName(l))
	}
	return s
}

func (v *recordView) lineName(l sheet.Line) string { return v.label(v.keyOf(l.New)) }

func (v *recordView) difference(l sheet.Line) app.UI {
	level := levels[l.Level]
	reason := v.consequence(l)
	if limit := v.alikeWithin(l); limit != "" {
		reason += " " + limit
	}
	return app.Div().Class("difference").Body(
		app.H3().Text(v.lineName(l)),
		app.If(l.Old != l.New, func() app.UI {
			return app.P().Class("from-to").Body(app.Span().Text(v.held(l.Old)), app.Text(" → "), app.Strong().Text(v.held(l.New)))
		}),
		(&widget.Verdict{Name: "like." + l.Name, Level: level, Word: v.T("level." + string(level)), Reason: reason, Source: v.sourceOf(l.Method), Link: v.entry(l.Method)}).UI(),
		app.If(l.Settled != "", func() app.UI {
			return app.A().Class("button").Href(href("/" + string(l.Settled) + "/")).Text(v.T("tab." + string(l.Settled)))
		}),
	)
}

// alikeWithin says how far the two values of a difference may lie apart. Words are the
// same or are not.
func (v *recordView) alikeWithin(l sheet.Line) string {
	if _, measured := l.New.(record.Measure); !measured || !l.Differs() || l.Method != "fit.alike" {
		return ""
	}
	if l.Apart == 0 {
		return v.T("like.exact")
	}
	return v.T("like.within", "share", v.figure(sheet.Figure{Scale: &unit.Share, Base: float64(l.Apart)}))
}

var likenessKeys = map[sheet.Likeness]string{sheet.More: "more", sheet.Less: "less", sheet.Other: "other"}

// consequence says what a difference means.
func (v *recordView) consequence(l sheet.Line) string {
	if key := "like." + l.Name + ".stop"; l.Level == sheet.Stop && v.words.Has(key) {
		return v.T(key)
	}
	if key := "like." + l.Name + "." + likenessKeys[l.Likeness]; v.words.Has(key) {
		return v.T(key)
	}
	return v.T("like." + l.Name)
}

// held writes what a place holds, as the screen shows values.
func (b *bench) held(p record.Place) string {
	switch p := p.(type) {
	case record.Measure:
		if p.State() == record.Known {
			return b.amount(p.Amount())
		}
	case record.Selector:
		if p.State() == record.Known {
			return b.optionIn(b.keyOf(p), p.Text())
		}
	default:
		if p.State() == record.Known {
			return p.Text()
		}
	}
	if p.State() == record.Illegible {
		return b.T("basis.illegible")
	}
	return "—"
}

// curb says how the new base goes over the old curb.
func (v *recordView) curb() app.UI {
	clearance := func(name string, a sheet.Answer[unit.Length]) app.UI {
		verdict := sheet.ClearanceVerdict(a)
		return answer(v.bench, shown{name: name, scale: &unit.Shop, verdict: &verdict}, a)
	}
	return app.Div().Class("list").Body(
		clearance("curb.clearance", v.over[0]),
		clearance("curb.clearance-along", v.over[1]),
	)
}
