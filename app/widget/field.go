package widget

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// A Field is one value to be typed, with its unit, how it is known, and what
// is wrong with it.
type Field struct {
	Key   string
	Load  int
	Label string
	Side  string // whose value it is, for those who can't see where it stands
	Text  string
	Plain bool // any text, not a number
	Date  bool // a day, of the browser's own calendar
	Lines bool // any text, in lines
	Fixed bool // can be read, not changed

	Unit      string
	UnitHelp  string // what a tap on the unit does; "" for a unit that can't be switched
	Basis     string
	BasisHelp string

	Error string
	Note  string // how it was read, or what to do instead
	Other string // the other reading, to be tapped

	Choosing bool     // the ways of knowing are laid out
	Ways     []Option // with the one that holds chosen

	Keys     []string // signs a phone's keypad may lack, shown while the field has the focus
	KeysHelp string

	OnType  func(string)
	OnFocus func()
	OnUnit  func()
	OnBasis func()
	OnOther func()
	OnWay   func(string)
}

// An Option is one of a few to choose from.
type Option struct {
	Value, Label string
	Chosen       bool
}

// UI draws the field.
func (f Field) UI() app.UI {
	if f.Lines {
		return f.lines()
	}
	id := ID(f.Key)
	input := app.Input().Type("text").ID(id).Name(f.Key).Value(f.Text).Class("field-input").
		AutoComplete(false).Attr("autocapitalize", "off").Spellcheck(false).Attr("enterkeyhint", "next").
		OnInput(typed(f.OnType), app.EventScope(f.Key, f.Load))
	if f.OnFocus != nil {
		input = input.OnFocus(done(f.OnFocus), app.EventScope(f.Key, f.Load))
	}
	if f.Side != "" {
		input = input.Aria("label", f.Side+": "+f.Label)
	}
	switch {
	case f.Date:
		input = input.Type("date")
	case !f.Plain:
		input = input.Attr("inputmode", "decimal")
	}
	if f.Fixed {
		input = input.ReadOnly(true)
	}
	if f.Error != "" {
		input = input.Aria("invalid", "true")
	}
	if f.Error != "" || f.Note != "" {
		input = input.Aria("describedby", id+"-note")
	}
	return own(f.Key, f.Load).Body(app.Div().Class("field").Body(
		app.Div().Class("field-head").Body(
			app.Label().For(id).Text(f.Label),
			app.If(f.Basis != "", func() app.UI {
				return Button(f.Key+" basis", f.Basis, "basis", f.OnBasis).Title(f.BasisHelp).Aria("expanded", text(f.Choosing))
			}),
		),
		app.Div().Class("field-row").Body(
			input,
			app.If(f.UnitHelp != "", func() app.UI {
				return Button(f.Key+" unit", f.Unit, "unit", f.OnUnit).Title(f.UnitHelp).Aria("label", f.Unit+", "+f.UnitHelp)
			}).ElseIf(f.Unit != "", func() app.UI {
				return app.Span().Class("unit").Text(f.Unit)
			}),
		),
		app.If(len(f.Keys) > 0, func() app.UI { return &keyRow{Field: id, Help: f.KeysHelp, Signs: f.Keys} }),
		app.If(f.Choosing, func() app.UI {
			return choices(f.Key+" known", f.BasisHelp, f.Ways, f.OnWay)
		}),
		app.If(f.Error != "" || f.Note != "", func() app.UI {
			return app.P().ID(id+"-note").Class(noteClass(f.Error)).Body(
				app.Text(f.Error+f.Note),
				app.If(f.Other != "", func() app.UI {
					return Button(f.Key+" other", f.Other, "other", f.OnOther)
				}),
			)
		}),
	))
}

// lines draws a field of text in lines.
func (f Field) lines() app.UI {
	id := ID(f.Key)
	area := app.Textarea().ID(id).Name(f.Key).Class("field-input lines").Rows(4).ReadOnly(f.Fixed).Text(f.Text).
		OnInput(typed(f.OnType), app.EventScope(f.Key, f.Load))
	return own(f.Key, f.Load).Body(app.Div().Class("field").Body(
		app.Div().Class("field-head").Body(app.Label().For(id).Text(f.Label)),
		area,
		app.If(f.Note != "", func() app.UI { return app.P().ID(id + "-note").Class("field-note").Text(f.Note) }),
	))
}

func noteClass(err string) string {
	if err != "" {
		return "field-note error"
	}
	return "field-note"
}

func text(b bool) string {
	if b {
		return "true"
	}
	return "false"
}

// A Choice is a few words, one of which may be chosen; the chosen one taken
// again leaves none.
type Choice struct {
	Key     string
	Label   string
	Side    string
	Note    string
	Error   string
	Options []Option
	OnTake  func(string)
}

// UI draws the choice.
func (c Choice) UI() app.UI {
	label := c.Label
	if c.Side != "" {
		label = c.Side + ": " + c.Label
	}
	return own(c.Key, 0).Body(app.Div().Class("field").ID(ID(c.Key)).TabIndex(-1).Body(
		app.Div().Class("field-head").Body(app.Span().Class("label").Text(c.Label)),
		choices(c.Key, label, c.Options, c.OnTake),
		noted(ID(c.Key), c.Error, c.Note),
	))
}

func choices(name, label string, options []Option, take func(string)) app.UI {
	return app.Div().Class("choices").Role("group").Aria("label", label).Body(
		app.Range(options).Slice(func(i int) app.UI {
			o := options[i]
			return app.Button().Type("button").Name(name).Value(o.Value).Class("choice").Text(o.Label).
				Aria("pressed", text(o.Chosen)).
				OnClick(done(func() { take(o.Value) }), app.EventScope(name, o.Value))
		}),
	)
}
