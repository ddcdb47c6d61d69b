package page

import (
	"math"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/picture"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// align shows how far the sheaves may be out of line, and judges the gap that was
// read.
func (v *beltView) align() app.UI {
	f := v.Fan
	most, aim := sheet.AlignmentGap(v.set.Run)
	summary := ""
	gap := sheet.Answer[unit.Length]{}
	read, verdict := sheet.AlignmentNow(f)
	if read != nil {
		gap = sheet.Read("x", sheet.FromTrial, &read.Belt.Gap)
		summary = v.T("level." + string(levels[verdict.Level]))
	} else if most.Known() {
		summary = v.T("belt.aim", "gap", v.size(most.Value))
	}
	return v.section("align", v.T("belt.align"), summary, func() app.UI {
		list := []app.UI{
			app.P().Class("field-note").Text(v.T("belt.align.help")),
			answer(v.bench, shown{name: "align.aim", scale: &unit.Shop}, aim),
			answer(v.bench, shown{name: "align.most", scale: &unit.Shop}, most),
		}
		if shift := sheet.BeltShift(f, v.set.Turns); shift.Known() && shift.Value != 0 && f.New.Sheave.Value() != record.Fixed {
			list = append(list, answer(v.bench, shown{name: "align.shift", scale: &unit.Shop, apart: v.T("belt.shift", "at", v.at(v.set.Run))}, shift))
		}
		if read != nil {
			list = append(list, answer(v.bench, shown{name: "align.gap", scale: &unit.Shop, verdict: &verdict}, gap))
			if verdict.Near {
				far := unit.Length(max(verdict.Limit.Base-verdict.Value.Base, verdict.Value.Base-verdict.Limit.Base))
				list = append(list, app.P().Class("follow").Text(v.T("belt.near", "far", v.size(far), "limit", v.size(unit.Length(verdict.Limit.Base)), "band", v.size(gap.Band))))
			}
		}
		return app.Div().Class("list").Body(list...)
	})
}

// drawing is the drive to scale, from the answers' own numbers.
func (v *beltView) drawing() app.UI {
	t := v.set
	if !t.Motor.Known() || !t.Fan.Known() || !t.Center.Known() || !t.Span.Known() {
		return app.Div()
	}
	p := picture.Belt{
		Motor: t.Motor.Value, Fan: t.Fan.Value, Center: t.Center.Value,
		Title: v.T("picture.drive"), MotorLabel: v.T("picture.motor"), FanLabel: v.T("picture.fan"),
		CenterLabel: v.T("picture.centers", "c", v.size(t.Center.Value)), SpanLabel: v.T("picture.span", "t", v.size(t.Span.Value)),
		Description: v.T("picture.drive.says", "motor", v.size(t.Motor.Value), "fan", v.size(t.Fan.Value), "centers", v.size(t.Center.Value), "span", v.size(t.Span.Value)),
	}
	if t.Press.Known() {
		p.Press, p.PressLabel = t.Press.Value, v.T("picture.press", "h", v.marked(t.Press.Value))
	}
	draw := func() app.UI { return app.Figure().Body(p.UI(), app.FigCaption().Text(p.Description)) }
	scale := func(x unit.Length) string { return exact(math.Round(1000 * float64(x/p.Center))) } // finer than a screen shows
	return v.memo("drive drawing", draw, p.Description, p.PressLabel, p.CenterLabel, p.SpanLabel, scale(p.Motor), scale(p.Fan))
}
