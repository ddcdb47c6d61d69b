package page

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// plans is the order in which a list is shown: what the truck needs comes first.
var plans = []sheet.Plan{sheet.Bring, sheet.Unsure, sheet.Keep}

// withPlan returns the lines of a list with a plan.
func withPlan(list []sheet.Material, p sheet.Plan) (lines []sheet.Material) {
	for _, m := range list {
		if m.Plan == p {
			lines = append(lines, m)
		}
	}
	return lines
}

// materials draws what to bring: how much of what, why, and the ways to what is
// still wanted of the open fan.
func (b *bench) materials(list []sheet.Material) app.UI {
	key, shown := "materials", []string{b.materialsText(list), systemName(b.Settings.Units)}
	for _, m := range list {
		open, elsewhere := b.lack(m)
		shown = append(append(shown, b.origins(m)...), b.every(open))
		for _, r := range m.Reasons {
			elsewhere = elsewhere || len(b.here(r.From)) < len(r.From)
		}
		if elsewhere { // a roof's list stands beside its open fan's
			key = "materials roof"
		}
	}
	return b.memo(key, func() app.UI { return b.planned(list) }, shown...)
}

func (b *bench) planned(list []sheet.Material) app.UI {
	return app.Div().Class("materials").Body(app.Range(plans).Slice(func(i int) app.UI {
		lines := withPlan(list, plans[i])
		return app.If(len(lines) > 0, func() app.UI {
			return app.Section().Aria("label", b.T("materials."+string(plans[i]))).Body(
				app.H3().Text(b.T("materials."+string(plans[i]))),
				app.Ul().Body(app.Range(lines).Slice(func(j int) app.UI {
					return b.material("materials "+string(plans[i])+" "+strconv.Itoa(j), lines[j])
				})),
			)
		})
	}))
}

func (b *bench) material(name string, m sheet.Material) app.UI {
	open, elsewhere := b.lack(m)
	return app.Li().Body(
		app.Span().Class("quantity").Text(b.howMuch(m)),
		app.Div().Body(
			app.Strong().Text(b.thing(m)),
			app.Small().Text(strings.Join(b.reasons(m), " ")),
			app.Small().Class("quiet").Text(strings.Join(b.origins(m), " · ")),
			app.If(m.Fault != nil, func() app.UI { return app.Small().Text(b.lacking(m)) }),
			app.If(elsewhere, func() app.UI { return app.Small().Text(b.T("materials.elsewhere")) }),
			app.If(len(open) > 0, func() app.UI { return b.wanted(name, open, mostWanted) }),
		),
	)
}

// lack returns the places of the open fan that would settle a line, and whether
// there are others.
func (b *bench) lack(m sheet.Material) (open []record.Place, elsewhere bool) {
	wanted := m.Wanted
	if m.Fault != nil && m.Fault.Place != nil {
		wanted = append([]record.Place{m.Fault.Place}, wanted...)
	}
	open = b.here(wanted)
	return open, len(open) < len(wanted)
}

// here returns the places that are the open fan's.
func (b *bench) here(places []record.Place) (own []record.Place) {
	for _, p := range places {
		if b.keyOf(p) != "" {
			own = append(own, p)
		}
	}
	return own
}

// lacking says what is at fault in a line.
func (b *bench) lacking(m sheet.Material) string {
	if m.Fault.Place != nil && b.keyOf(m.Fault.Place) == "" { // in another fan of the roof
		return ""
	}
	return b.faulty(m.Fault)
}

// materialsText writes the list as plain text, for a message or a clipboard.
func (b *bench) materialsText(list []sheet.Material) string {
	var out strings.Builder
	for _, p := range plans {
		lines := withPlan(list, p)
		if len(lines) == 0 {
			continue
		}
		if out.Len() > 0 {
			out.WriteString("\n")
		}
		out.WriteString(b.T("materials."+string(p)) + "\n")
		for _, m := range lines {
			out.WriteString("- " + strings.TrimSpace(b.howMuch(m)+" "+b.thing(m)) + "\n  " + strings.Join(b.reasons(m), " ") + "\n")
			open, elsewhere := b.lack(m)
			switch {
			case m.Fault != nil && b.lacking(m) != "":
				out.WriteString("  " + b.lacking(m) + "\n")
			case len(open) > 0:
				out.WriteString("  " + b.T("wanted", "places", b.every(open)) + "\n")
			}
			if elsewhere {
				out.WriteString("  " + b.T("materials.elsewhere") + "\n")
			}
		}
	}
	return out.String()
}

// every names places, all of them.
func (b *bench) every(ps []record.Place) string {
	var names []string
	for _, p := range ps {
		names = append(names, b.named(p))
	}
	return strings.Join(names, ", ")
}

// howMuch writes how much a line asks for, before what.
func (b *bench) howMuch(m sheet.Material) string {
	switch {
	case m.Amount.Known:
		return b.measured(&unit.Site, float64(m.Amount.V))
	case m.Count > 0:
		return b.whole(m.Count) + " ×"
	case m.Plan == sheet.Bring:
		return b.T("materials.many")
	}
	return ""
}

// measured writes a figure with its unit.
func (b *bench) measured(s *unit.Scale, base float64) string {
	return b.figure(sheet.Figure{Scale: s, Base: base})
}

// thing names what a line is about as it is asked for over a counter, with all that
// is known of it.
func (b *bench) thing(m sheet.Material) string {
	said := []string{b.head(m)}
	add := func(key string, s *unit.Scale, base float64, known bool) {
		if known {
			said = append(said, b.T("material."+key, "value", b.measured(s, base)))
		}
	}
	if m.Section != "" {
		said = append(said, b.T("material.section", "section", m.Section))
	}
	add("length", &unit.Shop, float64(m.Length.V), m.Length.Known)
	add("pitch", &unit.Shop, float64(m.Pitch.V), m.Pitch.Known)
	add("bore", &unit.Shop, float64(m.Bore.V), m.Bore.Known)
	add("inside", &unit.Shop, float64(m.Inside.V), m.Inside.Known)
	add("key", &unit.Shop, float64(m.Key.V), m.Key.Known)
	add("across", &unit.Shop, float64(m.Across.V), m.Across.Known)
	add("along", &unit.Shop, float64(m.Along.V), m.Along.Known)
	if m.Weight.Known {
		said = append(said, b.measured(&unit.Weight, float64(m.Weight.V)))
	}
	if m.Volume.Known {
		said = append(said, b.measured(&unit.Capacity, float64(m.Volume.V)))
	}
	switch {
	case m.Turns.Known && m.Turns.V == 0:
		said = append(said, b.T("turns.closed"))
	case m.Turns.Known:
		said = append(said, b.T("material.turns", "n", b.Turns(m.Turns.V)))
	}
	if m.Thing == sheet.WireConnector && m.Wire != "" {
		said = append(said, b.T("material.for", "wire", string(m.Wire)))
	}
	if m.Amount.Known && m.Count > 1 {
		key := "material.wires"
		if m.Thing == sheet.TheConduit {
			key = "material.sticks"
		}
		said = append(said, b.T(key, "n", b.whole(m.Count), "each", b.measured(&unit.Site, float64(raceway.StickLength))))
	}
	if m.Wet {
		said = append(said, b.T("material.wet"))
	}
	return strings.Join(said, ", ")
}

// head names a thing by its words.
func (b *bench) head(m sheet.Material) string {
	for _, kind := range []raceway.PartKind{raceway.Connector, raceway.Locknut, raceway.SealedHub, raceway.ReducingBushing, raceway.Enlarger, raceway.ReducingWashers, raceway.Coupling, raceway.CloseNipple} {
		if m.Thing == sheet.Thing(kind) {
			return b.fitting(kind, m.Size, m.To, m.Conduit)
		}
	}
	box := ""
	if m.Box != "" {
		box = b.optionIn("box.size", m.Box)
	}
	insulation := ""
	if m.Insulation != "" {
		insulation = b.option(string(m.Insulation))
	}
	return strings.TrimSpace(b.T("material."+string(m.Thing), "name", m.Name, "size", string(m.Size), "conduit", string(m.Conduit),
		"wire", strings.TrimSpace(string(m.Wire)+" "+insulation), "box", box))
}

// reasons says why a line stands.
func (b *bench) reasons(m sheet.Material) []string {
	var said []string
	for _, r := range m.Reasons {
		key := "reason." + r.Key
		if r.Support.Free > 0 {
			key = "reason.held.free"
		}
		said = append(said, b.T(key,
			"apart", b.measured(&unit.Site, float64(r.Support.Spacing)), "ends", b.measured(&unit.Site, float64(r.Support.Ends)), "free", b.measured(&unit.Site, float64(r.Support.Free)),
			"each", b.measured(&unit.Site, float64(raceway.StickLength)),
			"left", b.measured(&unit.Shop, float64(raceway.FreeConductor)), "makeup", b.measured(&unit.Shop, float64(raceway.MakeUp))))
	}
	return said
}

// origins says what the reasons of a line come from in the open fan's record, and
// where the rules stand that no other page shows.
func (b *bench) origins(m sheet.Material) []string {
	var said []string
	for _, r := range m.Reasons {
		if from := b.here(r.From); len(from) > 0 {
			said = append(said, b.T("materials.from", "places", b.list(from)))
		}
		if ruling[r.Method] {
			said = append(said, b.sourceOf(r.Method))
		}
	}
	return said
}

// ruling are the methods whose source stands beside a line.
var ruling = map[string]bool{"raceway.support": true, "raceway.sticks": true, "raceway.cut": true}
