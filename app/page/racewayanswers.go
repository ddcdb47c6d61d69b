package page

import (
	"slices"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// edition says which edition of the code an answer goes by.
func (v *racewayView) edition() string {
	if v.Fan.Edition.Value() == "" {
		return v.T("edition.taken", "year", string(sheet.Edition(v.Fan)))
	}
	return v.T("edition.of", "year", string(sheet.Edition(v.Fan)))
}

// filling shows how the conductors fill the raceway.
func (v *racewayView) filling() app.UI {
	f := v.Fan
	share := sheet.FillShare(f)
	fits := v.fill
	list := []app.UI{app.H2().Text(v.T("raceway.filling")), answer(v.bench, shown{name: "raceway.fill", scale: &unit.Share, verdict: &fits, apart: v.limit()}, share)}
	if smallest := sheet.SmallestRaceway(f); smallest.Known() || share.Known() {
		list = append(list, finding(v.bench, shown{name: "raceway.smallest"}, smallest, func(c raceway.Choice) string {
			return string(c.Conduit) + " " + string(c.Size)
		}))
	}
	if more, like := sheet.Room(f); like != nil && share.Known() {
		label := v.T("answer.raceway.room", "wire", string(like.Size.Value())+" "+string(like.Insulation.Value()))
		list = append(list, answer(v.bench, shown{name: "raceway.room", label: label, scale: &unit.Tally}, more))
	}
	if ratio, jam, three := sheet.Jam(f); three {
		list = append(list, answer(v.bench, shown{name: "raceway.jam", scale: &unit.Factor, verdict: &jam}, ratio))
	}
	return app.Section().Class("list").Aria("label", v.T("raceway.filling")).Body(append(list, v.cut())...)
}

// wiring shows what the circuit asks of its conductors and what they carry.
func (v *racewayView) wiring() app.UI {
	f := v.Fan
	c := v.c
	basis := v.edition()
	if f.Circuit.Terminals.Value() == "" {
		basis = v.T("terminals.taken") + " · " + basis
	}
	list := []app.UI{
		app.H2().Text(v.T("raceway.wiring")),
		answer(v.bench, shown{name: "circuit.demand", scale: &unit.Amperage}, c.Demand),
		app.If(!c.Demand.Known() && sheet.BeyondTables(f), func() app.UI { return app.P().Class("field-note").Text(v.T("wired-motor.beyond")) }),
		answer(v.bench, shown{name: "circuit.ampacity", scale: &unit.Amperage, verdict: &c.WireVerdict}, c.Carried),
		app.P().Class("field-note").Text(basis),
		v.sayings(slices.DeleteFunc(slices.Clone(c.Remarks), func(d sheet.Verdict) bool { return d.Level == sheet.Unjudged && len(d.Wanted) > 0 })), // the plate asks for those
	}
	if c.Least.Known() {
		list = append(list, finding(v.bench, shown{name: "circuit.wire"}, c.Least, func(a raceway.Ampacity) string {
			return string(a.Size) + " " + string(c.Wire.Insulation.Value())
		}))
	}
	if c.Wire != nil && c.Wire.Size.State() == record.Known {
		list = append(list, finding(v.bench, shown{name: "circuit.ground", verdict: &c.GroundVerdict}, c.Ground, func(g sheet.GroundWire) string {
			if g.Raised {
				return v.T("ground.raised", "size", string(g.Size), "table", string(g.Table), "wire", string(c.Wire.Size.Value()), "least", string(c.Least.Value.Size))
			}
			return string(g.Size)
		}), app.If(c.Ground.Known() && f.Circuit.Rating.State() == record.Unknown, func() app.UI { return app.P().Class("field-note").Text(v.T("ground.by")) }))
	}
	return app.Section().Class("list").Aria("label", v.T("raceway.wiring")).Body(append(list, v.more())...)
}

// sayings shows verdicts that stand beside no figure.
func (v *racewayView) sayings(all []sheet.Verdict) app.UI {
	return app.Div().Body(app.Range(all).Slice(func(i int) app.UI {
		name := string(all[i].Rule)
		if all[i].Of != nil {
			name += " " + all[i].Of.ID
		}
		return v.verdict(name, all[i]).UI()
	}))
}

// more shows what goes with the circuit; closed, it still says its worst verdict.
func (v *racewayView) more() app.UI {
	f, c := v.Fan, v.c
	var judged []sheet.Verdict
	if f.Circuit.Rating.State() != record.Unknown {
		judged = append(judged, c.DeviceVerdict)
	}
	if f.Circuit.Length.State() != record.Unknown {
		judged = append(judged, c.DropVerdict)
	}
	return v.section("wire-more", v.T("section.wire-more"), v.gist(judged...), func() app.UI {
		device := shown{name: "circuit.overcurrent", scale: &unit.Amperage, apart: v.edition()}
		if f.Circuit.Rating.State() != record.Unknown {
			device.verdict = &c.DeviceVerdict
		}
		return app.Div().Class("list").Body(
			answer(v.bench, shown{name: "circuit.motor-current", scale: &unit.Amperage}, c.Current),
			answer(v.bench, device, c.Device),
			answer(v.bench, shown{name: "circuit.disconnect", scale: &unit.Amperage, apart: v.T("disconnect.also")}, c.Disconnect),
			answer(v.bench, shown{name: "circuit.drop", scale: &unit.Potential}, c.Drop),
			answer(v.bench, shown{name: "circuit.drop-share", scale: &unit.Share, verdict: &c.DropVerdict}, c.DropShare),
		)
	})
}

// limit says which part of the raceway may be filled, and by how many wires that
// is decided.
func (v *racewayView) limit() string {
	filling := sheet.Filling(v.Fan)
	if !filling.Known() {
		return ""
	}
	key := "fill.more"
	switch n := filling.Value.Count; {
	case sheet.IsNipple(v.Fan):
		key = "fill.nipple"
	case n == 1:
		key = "fill.one"
	case n == 2:
		key = "fill.two"
	}
	figure, label := v.Figure(&unit.Share, float64(filling.Value.Limit))
	return v.T(key, "limit", figure+" "+label)
}

// box shows what a box must hold against what it holds, once a box is spoken of.
func (v *racewayView) box() app.UI {
	if !sheet.Boxed(v.Fan) {
		return app.Div()
	}
	f := v.Fan
	fits := sheet.BoxVerdict(f)
	return app.Section().Class("list").Aria("label", v.T("raceway.boxing")).Body(
		app.H2().Text(v.T("raceway.boxing")),
		answer(v.bench, shown{name: "box.needed", scale: &unit.Capacity, verdict: &fits, apart: v.edition()}, sheet.BoxNeeded(f)),
		answer(v.bench, shown{name: "box.volume", scale: &unit.Capacity}, sheet.BoxVolume(f)),
		answer(v.bench, shown{name: "box.fill", scale: &unit.Share}, sheet.BoxShare(f)),
		finding(v.bench, shown{name: "box.smallest"}, sheet.SmallestBox(f), func(b raceway.Box) string {
			return v.optionIn("box.size", string(b.Shape)+" "+b.Size)
		}),
		app.If(f.Raceway.Site.Value() != record.Indoors, func() app.UI { return app.P().Class("field-note").Text(v.T("box.wet")) }),
	)
}
