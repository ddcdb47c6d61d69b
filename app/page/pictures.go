package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/picture"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// curve draws the system curve with its points and limits, from the answers'
// own numbers.
func (v *airView) curve() app.UI {
	c := picture.Curve{
		AxisFlow: v.T("place.airflow") + ", " + unit.Airflow.In(v.Settings.Units).Label, AxisPressure: v.T("place.pressure") + ", " + unit.AirPressure.In(v.Settings.Units).Label,
		Tick:  func(x float64) string { return v.Locale.Localize(exact(x)) },
		Title: v.T("picture.curve"), Description: v.T("picture.curve.says"),
	}
	v.plot(&c, v.ref, "report", v.T("picture.known"))
	if left := v.Fan.Left(); left != nil {
		speed := sheet.LeftSpeed(v.Fan)
		v.plot(&c, sheet.PointAt(v.Fan, speed, sheet.Read("T₂", sheet.FromTrial, &left.Reading.AirTemp)), "left", v.T("picture.left"))
	}
	v.plot(&c, v.At, "planned", v.T("picture.planned"))
	if len(c.Points) == 0 {
		return app.Div()
	}
	for _, l := range v.limits {
		at := sheet.PointAt(v.Fan, l.Speed, v.At.Air)
		if !at.Airflow.Known() {
			continue
		}
		flow, _ := v.Figure(&unit.Airflow, float64(at.Airflow.Value))
		c.Limits = append(c.Limits, picture.Limit{
			Flow: v.shown(&unit.Airflow, float64(at.Airflow.Value)), FlowText: flow,
			Label: v.T("rule." + string(l.Rule) + ".short"), Class: string(levels[l.Level]),
		})
	}
	shown := []string{c.AxisFlow, c.AxisPressure, c.Tick(0.5)}
	for _, p := range c.Points {
		shown = append(shown, p.Label, exact(p.Flow), exact(p.Pressure), p.FlowText, p.PressureText)
	}
	for _, l := range c.Limits {
		shown = append(shown, l.Label, l.Class, exact(l.Flow), l.FlowText)
	}
	return v.memo("curve", c.UI, shown...)
}

// plot adds a point that has both an airflow and a pressure.
func (v *airView) plot(c *picture.Curve, p sheet.Point, class, label string) {
	if !p.Airflow.Known() || !p.Pressure.Known() {
		return
	}
	flow, flowUnit := v.Figure(&unit.Airflow, float64(p.Airflow.Value))
	pressure, pressureUnit := v.Figure(&unit.AirPressure, float64(p.Pressure.Value))
	c.Points = append(c.Points, picture.Point{
		Flow: v.shown(&unit.Airflow, float64(p.Airflow.Value)), Pressure: v.shown(&unit.AirPressure, float64(p.Pressure.Value)),
		Label: label, Class: class, FlowText: flow + " " + flowUnit, PressureText: pressure + " " + pressureUnit,
	})
}

// shown returns a base value in the unit that is shown.
func (b *bench) shown(s *unit.Scale, base float64) float64 { return s.In(b.Settings.Units).Of(base) }

// sheave draws the new motor sheave at the setting to set, or else as it is.
func (v *driveView) sheave() app.UI {
	i := v.t.Set
	if i < 0 {
		i = v.t.Now
	}
	if i < 0 {
		return app.Div()
	}
	row := v.t.Rows[i]
	figure, inch := v.Figure(&unit.Shop, float64(row.Pitch))
	p := picture.Sheave{
		Closed: v.t.Rows[0].Pitch, Open: v.t.Rows[len(v.t.Rows)-1].Pitch, Pitch: row.Pitch,
		Title: v.T("picture.sheave"), PitchLabel: v.T("picture.pitch", "d", figure+" "+inch),
		Description: strings.TrimSpace(v.T("picture.sheave.says", "setting", v.setting(row.Turns), "pitch", figure+" "+inch)),
	}
	if a := &v.Fan.New.GrooveAngle; a.State() == record.Known {
		p.Angle = a.Value()
	}
	if need := sheet.PitchForTarget(v.Fan, v.t); need.Known() {
		target, _ := v.Figure(&unit.Shop, float64(need.Value))
		p.Target, p.TargetLabel = need.Value, v.T("picture.target", "d", target+" "+inch)
	}
	draw := func() app.UI { return app.Figure().Body(p.UI(), app.FigCaption().Text(p.Description)) }
	return v.memo("sheave", draw, p.Description, p.TargetLabel, exact(float64(p.Closed)), exact(float64(p.Open)), exact(float64(p.Target)), exact(float64(p.Angle)))
}
