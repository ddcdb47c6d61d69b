package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/picture"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// cut draws the conduit cut across, with its conductors to scale.
func (v *racewayView) cut() app.UI {
	inside, discs, ok := sheet.Section(v.Fan)
	if !ok || len(discs) == 0 {
		return app.Div()
	}
	p := picture.Conduit{
		Inside: inside, Title: v.T("picture.conduit"), InsideLabel: v.fine(inside),
		Outside: func(n int) string { return v.T("picture.outside", "n", v.Locale.WriteFixed(float64(n), 0)) },
	}
	total := 0
	var names []string
	for _, d := range discs {
		kind := string(d.Wire.Role.Value())
		if kind == "" {
			kind = string(record.MotorCircuit)
		}
		name := v.rowName(d.Wire)
		p.Wires = append(p.Wires, picture.Wire{Diameter: d.Diameter, Count: d.Count, Kind: kind, Mark: string(d.Wire.Size.Value()), Label: strings.Replace(name, " · ", " ", 1)})
		names = append(names, name)
		total += d.Count
	}
	caption := v.T("picture.conduit.says", "conduit", string(v.Fan.Raceway.Conduit.Value())+" "+string(v.Fan.Raceway.Size.Value()))
	if total > picture.MostDrawn {
		p.Outside = func(int) string { return v.T("picture.outside.many") }
		caption += " " + v.T("picture.more", "n", v.Locale.WriteFixed(picture.MostDrawn, 0), "all", v.Locale.WriteFixed(float64(total), 0))
	}
	p.Description = caption + " " + strings.Join(names, "; ")
	if fill := sheet.FillShare(v.Fan); fill.Known() {
		figure, label := v.Figure(&unit.Share, float64(fill.Value))
		p.Description += "; " + v.T("answer.raceway.fill") + " " + figure + " " + label
	}
	shown := []string{p.Description, p.InsideLabel}
	for _, w := range p.Wires {
		shown = append(shown, w.Label, w.Kind, exact(float64(w.Diameter)))
	}
	draw := func() app.UI { return app.Figure().Body(p.UI(), app.FigCaption().Text(caption)) }
	return v.memo("conduit", draw, shown...)
}

// chainPicture draws the adapter's parts between opening and conduit.
func (v *racewayView) chainPicture() app.UI {
	o, r := &v.Fan.Opening, &v.Fan.Raceway
	c := picture.Chain{
		Title: v.T("picture.chain"), Description: v.end(),
		Opening: picture.Opening{Kind: string(o.Kind.Value()), Across: across(o.Size.Value())},
		Conduit: picture.Tube{Across: across(r.Size.Value()), Flexible: sheet.Flexible(v.Fan)},
	}
	if k := o.Kind.Value(); k == "knockout" || k == "ring-knockout" {
		if hole, err := raceway.HoleOf(raceway.TradeSize(o.Size.Value())); err == nil {
			c.Opening.Across = hole.Nominal
		}
	}
	c.OpeningLabel, c.EndLabel, _ = strings.Cut(v.end(), " → ")
	for _, p := range v.adapter.Value.Parts {
		link := picture.Link{Left: face(p.From), Right: face(p.To), Nut: p.Kind == raceway.Locknut || p.Kind == raceway.EndBushing, Inside: p.Kind == raceway.EndBushing}
		if p.Kind == raceway.LocknutPair { // two plates, as they lie on either side of the metal
			link.Left.Kind, link.Right.Kind = "panel", "panel"
		}
		c.Links = append(c.Links, link)
		c.Description += "; " + v.part(p)
	}
	return c.UI()
}

func face(s raceway.Side) picture.Face {
	f := picture.Face{Kind: string(s.Face), Across: across(record.TradeSize(s.Size))}
	if s.Face == raceway.Panel {
		f.Across = s.Hole.Nominal
	}
	return f
}

// across is how wide a trade size is drawn: as the pipe that its thread is cut
// on, for a conduit's own outside is told by its type.
func across(size record.TradeSize) unit.Length {
	t, err := raceway.ThreadOf(raceway.TradeSize(size))
	if err != nil {
		return 0
	}
	return t.Outside
}
