package page

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/raceway"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// part names a part as it is asked for over a counter.
func (b *bench) part(p raceway.Part) string {
	size, to, conduit := p.Sizes()
	return b.fitting(p.Kind, size, to, conduit)
}

// fitting names a fitting by its kind and sizes.
func (b *bench) fitting(kind raceway.PartKind, size, to raceway.TradeSize, conduit raceway.Conduit) string {
	key := "part." + string(kind)
	if kind == raceway.Coupling && conduit == "" {
		key += ".threaded"
	}
	return b.T(key, "size", string(size), "to", string(to), "conduit", string(conduit))
}

// chain shows the parts between opening and conduit in order, each with its
// numbers, and what has to be seen to.
func (v *racewayView) chain() app.UI {
	a, verdicts := v.adapter, v.joint
	if !a.Known() {
		return v.sayings(verdicts)
	}
	notes := v.jointNotes(a.Value)
	shown := []string{v.takeAlong(), v.end(), systemName(v.Settings.Units), string(v.Settings.TextTag()), exact(float64(v.Loads()))}
	for _, d := range verdicts {
		shown = append(shown, string(d.Rule), string(levels[d.Level]))
	}
	draw := func() app.UI {
		return app.Section().Class("chain").Aria("label", v.T("raceway.chain")).Body(
			v.chainPicture(),
			app.Ol().Class("parts").Body(app.Range(a.Value.Parts).Slice(func(i int) app.UI {
				p := a.Value.Parts[i]
				return app.Li().Body(app.Strong().Text(v.part(p)), app.Small().Class("quiet").Text(v.numbers(p)))
			})),
			v.sayings(verdicts),
			app.Ul().Class("notes").Body(app.Range(notes).Slice(func(i int) app.UI { return app.Li().Text(notes[i]) })),
			app.P().Class("source").Text(v.sourceOf("raceway.adapter")+" · "+v.T("joint.thread")+": "+v.sourceOf("raceway.thread")+" · "+v.T("joint.knockout")+": "+v.sourceOf("raceway.knockout")),
		)
	}
	return v.memo("chain", draw, append(shown, notes...)...)
}

// jointNotes words the conditions that have no limit.
func (v *racewayView) jointNotes(a raceway.Adapter) []string {
	var notes []string
	for _, c := range a.Conditions {
		if c != raceway.BondOver250 {
			notes = append(notes, v.T("joint."+string(c)))
		}
	}
	if free := sheet.HangingFree(v.Fan); free.Known() {
		length, label := v.Figure(&unit.Site, float64(free.Value))
		notes = append(notes, v.T("joint.free", "length", length+" "+label))
	}
	return notes
}

// numbers lists what names and measures the two sides of a part: trade size,
// designator, thread and knockout are four different numbers.
func (b *bench) numbers(p raceway.Part) string {
	sides := []string{b.sideOf(p.From)}
	if to := b.sideOf(p.To); to != sides[0] {
		sides = append(sides, to)
	}
	return strings.Join(sides, "; ")
}

func (b *bench) sideOf(s raceway.Side) string {
	return b.T("joint."+string(s.Face),
		"size", string(s.Size), "designator", strconv.Itoa(s.Designator), "conduit", string(s.Conduit),
		"threads", b.Locale.Localize(exact(s.Thread.PerInch)), "across", b.fine(s.Thread.Outside),
		"hole", b.fine(s.Hole.Nominal), "least", b.fine(s.Hole.Least), "most", b.fine(s.Hole.Most))
}

// fine writes a dimension of a fitting to the thousandth of an inch, or the
// hundredth of a millimeter.
func (b *bench) fine(x unit.Length) string {
	u := unit.Shop.In(b.Settings.Units)
	digits := 3
	if b.Settings.Units == unit.SI {
		digits = 2
	}
	return b.Locale.WriteFixed(u.Of(float64(x)), digits) + " " + u.Label
}

// end names both ends of the joint.
func (v *racewayView) end() string {
	o, r := &v.Fan.Opening, &v.Fan.Raceway
	if o.Kind.Value() == "" || o.Size.Value() == "" || r.Conduit.Value() == "" || r.Size.Value() == "" {
		return ""
	}
	from := v.option(string(o.Kind.Value()))
	if c := o.Conduit.Value(); c != "" && from == v.option("conduit") {
		from = string(c)
	}
	return from + " " + string(o.Size.Value()) + " → " + string(r.Conduit.Value()) + " " + string(r.Size.Value())
}
