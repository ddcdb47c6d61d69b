package page

import (
	"strconv"
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// A shown is how one answer is to be drawn.
type shown struct {
	name    string
	label   string
	scale   *unit.Scale
	verdict *sheet.Verdict
	big     bool
	plain   bool   // without the way it was reached
	idle    bool   // the verdict is of what was not begun
	apart   string // how far from what it is held against
}

// answer draws an answer: the value, or what is wanted, or what is at fault.
func answer[Q unit.Quantity](b *bench, s shown, a sheet.Answer[Q]) app.UI {
	w := widget.Answer{Name: s.name, Label: s.label, Big: s.big, WorkingHelp: b.T("working")}
	if s.label == "" {
		w.Label = b.T("answer." + s.name)
	}
	switch {
	case a.Known():
		w.Value = b.value(s.scale, Q(0).Kind(), float64(a.Value), float64(a.Band))
		if a.From != sheet.FromPlace {
			w.Value.From = b.T("from." + string(a.From))
		}
		if s.apart != "" {
			w.Value.From = strings.TrimPrefix(w.Value.From+" · "+s.apart, " · ")
		}
		if !s.plain {
			id := "working " + s.name
			w.Open, w.OnOpen = b.open[id], b.toggle(id)
			w.Working = func() app.UI { return b.working(s, &a.Steps, float64(a.Value)).UI() }
		}
	case a.Fault != nil:
		w.Missing = b.faulty(a.Fault)
	case s.big:
		w.Missing = b.T("wanted", "places", b.first(a.Wanted))
	default:
		w.Missing = b.T("wanted", "places", b.list(a.Wanted))
	}
	if s.verdict != nil && (a.Known() || s.verdict.Level >= sheet.Watch) { // what is wrong outright needs no figure
		w.Verdict = b.verdict(s.name, *s.verdict)
		if s.idle {
			w.Verdict.Name = ""
		}
	}
	return b.drawn(w)
}

// finding draws an answer that is no figure, in words.
func finding[T any](b *bench, s shown, f sheet.Finding[T], say func(T) string) app.UI {
	words := ""
	if f.Known() {
		words = say(f.Value)
	}
	return b.said(s, words, f.Method, f.Wanted, f.Fault)
}

func (b *bench) said(s shown, words, method string, wanted []record.Place, fault *sheet.Fault) app.UI {
	w := widget.Answer{Name: s.name, Label: b.T("answer." + s.name), Words: words, WorkingHelp: b.T("working")}
	switch {
	case words != "":
		id := "working " + s.name
		w.Open, w.OnOpen = b.open[id], b.toggle(id)
		w.Working = func() app.UI { return b.steps(&sheet.Steps{Method: method}).UI() }
	case fault != nil:
		w.Missing = b.faulty(fault)
	default:
		w.Missing = b.T("wanted", "places", b.list(wanted))
	}
	if s.verdict != nil {
		w.Verdict = b.verdict(s.name, *s.verdict)
	}
	return b.drawn(w)
}

// drawn draws an answer anew only where it shows something else.
func (b *bench) drawn(w widget.Answer) app.UI {
	if w.Open {
		return w.UI()
	}
	shown := []string{w.Label, w.Missing, w.Words}
	if v := w.Value; v != nil {
		shown = append(shown, v.Number, v.Figure, v.Unit, v.Band, v.From)
	}
	if v := w.Verdict; v != nil {
		shown = append(shown, v.Name, v.Word, v.Reason)
	}
	return b.memo("answer "+w.Name, w.UI, shown...)
}

// value writes a computed figure, and its unrounded number for machines.
func (b *bench) value(scale *unit.Scale, k *unit.Kind, base, band float64) *widget.Value {
	figure, label := b.Figure(scale, base)
	v := &widget.Value{
		Number:   strconv.FormatFloat(k.Data.Of(base), 'g', -1, 64),
		DataUnit: k.Data.Symbol, Figure: figure, Unit: label,
	}
	if band > 0 {
		v.Band = "± " + b.Difference(scale, band)
	}
	return v
}

// faulty says what is wrong and where.
func (b *bench) faulty(f *sheet.Fault) string {
	where := ""
	if f.Place != nil {
		where = b.full(b.keyOf(f.Place))
	}
	if f.Garbled() {
		return b.T("garbled", "place", where)
	}
	why := b.fault(f.Err)
	if where == "" {
		return why
	}
	return b.T("fault", "place", where, "why", why)
}

// blame notes a formula's refusal beside the field whose value it refuses.
func blame[Q unit.Quantity](b *bench, answers ...sheet.Answer[Q]) {
	for _, a := range answers {
		b.accuse(a.Fault)
	}
}

func (b *bench) accuse(f *sheet.Fault) {
	if f != nil && f.Place != nil && !f.Garbled() {
		b.blamed[f.Place] = f.Err
	}
}

// working words how an answer was reached. It is made only when opened.
func (b *bench) working(s shown, steps *sheet.Steps, value float64) widget.Working {
	w := b.steps(steps)
	if s.scale != nil {
		figure, label := b.Figure(s.scale, value)
		w.Result = strings.TrimSpace("= " + figure + " " + label)
	}
	return w
}

func (b *bench) steps(steps *sheet.Steps) widget.Working {
	var w widget.Working
	if m, ok := source.Lookup(steps.Method); ok {
		w.Formula, w.Valid, w.Source, w.Link = b.formula(m), b.valid(m), b.sourceOf(steps.Method), b.entry(steps.Method)
	}
	for _, t := range steps.Terms {
		w.Lines = append(w.Lines, b.line(t))
	}
	return w
}

func (b *bench) line(t *sheet.Term) widget.Line {
	l := widget.Line{Symbol: t.Symbol}
	scale := scaleOf(t)
	figure, label := b.Figure(&scale, t.Base)
	l.Value = strings.TrimSpace(figure + " " + label)
	if t.Band > 0 {
		l.Value += " ± " + b.Difference(&scale, t.Band)
	}
	switch {
	case t.Place != nil:
		l.Name = b.full(b.keyOf(t.Place))
		if m, ok := t.Place.(record.Measure); ok {
			l.Value = b.amount(m.Amount())
			if m.Basis() != "" {
				l.Value += ", " + b.T("basis."+string(m.Basis()))
			}
		} else {
			l.Value = t.Place.Text() // a number told in words
		}
	case t.Of != nil:
		if t.From != sheet.FromPlace {
			l.Name = b.T("from." + string(t.From))
		}
		if len(t.Of.Terms) > 1 || t.Of.Method != "" {
			inner := b.steps(t.Of)
			l.Inner = &inner
		} else if len(t.Of.Terms) == 1 {
			inner := b.line(t.Of.Terms[0])
			inner.Symbol = t.Symbol
			return inner
		}
	}
	return l
}

// scaleOf returns the units that a term is written in: those of its place, or
// the usual ones of its kind.
func scaleOf(t *sheet.Term) unit.Scale {
	if m, ok := t.Place.(record.Measure); ok {
		return m.Fact().Scale
	}
	if s, ok := scales[t.Kind.Name]; ok {
		return s
	}
	return unit.Factor
}

var scales = map[string]unit.Scale{
	"length": unit.Shop, "speed": unit.Rotation, "velocity": unit.Airspeed, "airflow": unit.Airflow,
	"pressure": unit.AirPressure, "power": unit.Shaft, "force": unit.Pull, "voltage": unit.Potential,
	"current": unit.Amperage, "frequency": unit.Cycles, "temperature": unit.Warmth, "density": unit.AirDensity,
	"linear mass": unit.BeltMass, "apparent power": unit.Apparent, "angle": unit.Arc, "ratio": unit.Factor, "turns": unit.TurnCount,
	"area": unit.Section, "volume": unit.Capacity, "temperature difference": unit.Warming, "mass": unit.Weight,
}

// ofSpeed says which speed of a two-speed motor all figures are for.
func (b *bench) ofSpeed() app.UI {
	return app.Div().Body(app.If(b.Fan.Supply.Value() == record.TwoSpeed, func() app.UI {
		return app.P().Class("notice").Text(b.T("two-speed"))
	}))
}
