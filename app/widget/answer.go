package widget

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// A Value is a computed figure as it is shown, with the unrounded number for
// machines.
type Value struct {
	Number   string // unrounded, in DataUnit
	DataUnit string
	Figure   string // rounded, in the user's unit and language
	Unit     string
	Band     string // "± 4", or empty
	From     string // where it was taken from
}

// An Answer is one figure with its verdict and its working, or what is missing.
type Answer struct {
	Name    string
	Label   string
	Value   *Value
	Words   string // the answer, where it is no figure
	Missing string // what is wanted, or what is wrong, in a sentence
	Verdict *Verdict
	Big     bool

	WorkingHelp string
	Open        bool
	Working     func() app.UI
	OnOpen      func()
}

// UI draws the answer.
func (a Answer) UI() app.UI {
	class := "answer"
	if a.Big {
		class += " big"
	}
	return own("answer-"+a.Name, 0).Body(app.Div().Class(class).Body(
		app.Div().Class("answer-line").Body(
			app.Span().Class("answer-label").Text(a.Label),
			a.output(),
			app.If(a.Working != nil, func() app.UI {
				return Button(a.Name+" working", "ƒ", "working", a.OnOpen).Aria("label", a.WorkingHelp+": "+a.Label).Title(a.WorkingHelp).Aria("expanded", text(a.Open))
			}),
		),
		app.If(a.Missing != "", func() app.UI { return app.P().Class("answer-missing").Text(a.Missing) }),
		app.If(a.Verdict != nil, func() app.UI { return a.Verdict.UI() }),
		app.If(a.Open && a.Working != nil, func() app.UI { return a.Working() }),
	))
}

func (a Answer) output() app.UI {
	o := app.Output().Name(a.Name).Class("answer-value")
	v := a.Value
	if a.Words != "" {
		return o.Body(app.Span().Text(a.Words))
	}
	if v == nil {
		return o.Body(app.Span().Class("unknown").Text("–"))
	}
	return o.Body(
		app.Data().Value(v.Number).Attr("data-unit", v.DataUnit).Text(v.Figure),
		app.If(v.Unit != "", func() app.UI { return app.Span().Class("answer-unit").Text(" " + v.Unit) }),
		app.If(v.Band != "", func() app.UI { return app.Span().Class("band").Text(" " + v.Band) }),
		app.If(v.From != "", func() app.UI { return app.Span().Class("from").Text(v.From) }),
	)
}

// A Level is how bad a verdict is; the names are those of classes in the style
// sheet.
type Level string

// The levels.
const (
	Within   Level = "within"
	Unjudged Level = "unjudged"
	Watch    Level = "watch"
	Stop     Level = "stop"
)

// marks are the shapes of the levels, so that none is told by color alone.
var marks = map[Level]string{Within: "✓", Unjudged: "?", Watch: "!", Stop: "✕"}

// A Verdict is a level in word, shape and color, with its reason.
type Verdict struct {
	Name   string // "" for one that machines don't count: nothing was begun there
	Level  Level
	Word   string
	Reason string
	Source string
	Link   string // to what the source says; none in a frame
}

// UI draws the verdict.
func (v Verdict) UI() app.UI {
	counted := string(v.Level)
	if v.Name == "" {
		counted = ""
	}
	return app.P().Class("verdict "+string(v.Level)).DataSet("verdict", counted).DataSet("of", v.Name).Body(
		Mark(v.Level),
		app.Strong().Text(v.Word),
		app.Span().Class("reason").Text(v.Reason),
		app.If(v.Source != "", func() app.UI { return Source(v.Source, v.Link) }),
	)
}

// Source names what an answer rests on, and leads to its entry.
func Source(words, link string) app.UI {
	if link == "" {
		return app.Small().Class("source").Text(words)
	}
	return app.A().Class("source").Href(link).Text(words)
}

// Mark is the shape of a level.
func Mark(l Level) app.UI {
	return app.Span().Class("mark "+string(l)).Aria("hidden", "true").Text(marks[l])
}

// A Line is one value put into a formula.
type Line struct {
	Symbol, Name, Value string
	Inner               *Working
}

// A Working is how an answer was reached.
type Working struct {
	Formula string
	Lines   []Line
	Result  string
	Valid   string
	Source  string
	Link    string
}

// UI draws the working.
func (w Working) UI() app.UI {
	return app.Div().Class("steps").Body(
		app.If(w.Formula != "", func() app.UI { return app.P().Class("formula").Text(w.Formula) }),
		app.Dl().Body(app.Range(w.Lines).Slice(func(i int) app.UI {
			l := w.Lines[i]
			return app.Div().Body(
				app.Dt().Body(app.Var().Text(l.Symbol), app.Text(" "+l.Name)),
				app.Dd().Body(app.Text(l.Value), app.If(l.Inner != nil, func() app.UI { return l.Inner.UI() })),
			)
		})),
		app.If(w.Result != "", func() app.UI { return app.P().Class("result").Text(w.Result) }),
		app.If(w.Valid != "", func() app.UI { return app.P().Class("valid").Text(w.Valid) }),
		app.If(w.Source != "", func() app.UI { return app.P().Body(Source(w.Source, w.Link)) }),
	)
}
