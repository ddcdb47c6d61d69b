package widget

import "github.com/maxence-charriere/go-app/v10/pkg/app"

// A Stepper changes a count by half turns with two large buttons.
type Stepper struct {
	Key        string
	Label      string
	Figure     string // the count now
	Less, More string // what the buttons say
	LessHelp   string
	MoreHelp   string
	OnLess     func()
	OnMore     func()
}

// UI draws the stepper.
func (s Stepper) UI() app.UI {
	return own("step-"+s.Key, 0).Body(app.Div().Class("stepper").Role("group").Aria("label", s.Label).Body(
		Button(s.Key+" less", s.Less, "step", s.OnLess).Aria("label", s.LessHelp),
		app.Output().Class("step-value").Aria("live", "polite").Text(s.Figure),
		Button(s.Key+" more", s.More, "step", s.OnMore).Aria("label", s.MoreHelp),
	))
}

// A CountPad counts by taps on one large area, for hands in gloves. The count
// is the record's own, kept at each tap.
type CountPad struct {
	Key    string
	Title  string
	Help   string
	Figure string
	Tap    string // what one tap adds
	Back   string
	Zero   string
	Close  string
	OnTap  func()
	OnBack func()
	OnZero func()
	OnDone func()
}

// UI draws the pad.
func (c CountPad) UI() app.UI {
	return own("pad-"+c.Key, 0).Body(app.Div().Class("countpad").Role("group").Aria("label", c.Title).Body(
		app.P().Class("countpad-help").Text(c.Help),
		app.Button().Type("button").Name(c.Key+" tap").Class("countpad-tap").Body(
			app.Span().Class("countpad-figure").Aria("live", "polite").Text(c.Figure),
			app.Span().Class("countpad-add").Text(c.Tap),
		).OnClick(done(c.OnTap), app.EventScope(c.Key)),
		app.Div().Class("countpad-row").Body(
			Button(c.Key+" back", c.Back, "", c.OnBack),
			Button(c.Key+" zero", c.Zero, "", c.OnZero),
			Button(c.Key+" done", c.Close, "primary", c.OnDone),
		),
	))
}
