package page

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/unit"
)

func exact(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// old asks what the old drive was.
func (v *driveView) old() app.UI {
	s := &v.Fan.Old
	return v.section("old", v.T("section.old"), v.T("section.old.sub"), func() app.UI {
		motor := []string{"old.motor-speed"}
		if v.Fan.Supply.Value() == record.Inverter {
			motor = append(motor, "old.motor-frequency", "old.frequency")
		}
		motor = append(motor, "old.motor-tachometer", "old.speed")
		return app.Div().Body(
			v.fields(motor...),
			app.H3().Text(v.T("count.title")),
			app.P().Class("field-note").Text(v.T("count.help")),
			v.fields("old.count-fan-turns", "old.count-motor-turns"),
			v.counter("old.count-motor-turns", &s.CountMotor, 0.25),
			app.H3().Text(v.T("drive.sheaves")),
			v.fields(sheaveKeys("old.", s)...),
			v.fields("old.fan-sheave", "old.fan-sheave-outside", "old.center-distance"),
		)
	})
}

// sheaveKeys lists the fields of a motor sheave that its kind calls for.
func sheaveKeys(side string, s *record.Side) []string {
	keys := []string{"section", "groove", "sheave"}
	if s.Sheave.Value() == record.Adjustable {
		keys = append(keys, "turns", "anchor-turns", "anchor-pitch", "second-anchor-turns", "second-anchor-pitch")
		switch {
		case s.Turns.State() == record.Illegible: // it can't be closed to be counted
			keys = append(keys, "motor-sheave-outside", "motor-sheave-gap", "groove-angle")
		case s.AnchorPitch.State() != record.Known:
			keys = append(keys, "motor-sheave")
		}
	} else {
		keys = append(keys, "motor-sheave")
		if s.MotorSheave.State() != record.Known {
			keys = append(keys, "motor-sheave-outside")
		}
	}
	for i := range keys {
		keys[i] = side + keys[i]
	}
	return keys
}

// fresh asks what the new drive is.
func (b *bench) fresh(sub string) app.UI {
	s := &b.Fan.New
	return b.section("new", b.T("section.new"), sub, func() app.UI {
		keys := []string{"new.section", "new.sheave"}
		if s.Sheave.Value() != record.Fixed {
			keys = append(keys, "new.anchor-turns", "new.anchor-pitch", "new.second-anchor-turns", "new.second-anchor-pitch", "new.most-turns", "new.flange-lead", "new.turns")
			if s.Turns.State() == record.Illegible {
				keys = append(keys, "new.motor-sheave-outside", "new.motor-sheave-gap", "new.groove-angle")
			}
		} else {
			keys = append(keys, "new.motor-sheave")
		}
		return app.Div().Body(
			b.fields(keys...),
			app.If(s.Sheave.Value() != record.Fixed, func() app.UI {
				return app.Div().Body(b.stepper("new.turns", &s.Turns), b.counter("new.turns", &s.Turns, 0.5))
			}),
			app.P().Class("field-note").Text(b.T("sheave.two")),
			b.fields("new.fan-sheave", "new.fan-sheave-outside"),
		)
	})
}

// base asks where the motor base stands.
func (b *bench) base(sub string, more ...string) app.UI {
	return b.section("base", b.T("section.base"), sub, func() app.UI {
		return b.fields(append([]string{"new.center-distance", "new.travel-toward", "new.travel-away"}, more...)...)
	})
}

// stepper changes a number of turns by halves.
func (b *bench) stepper(key string, e *record.Entry[unit.Turns]) app.UI {
	shown := "–"
	if e.State() == record.Known {
		shown = b.setting(e.Value())
	}
	draw := widget.Stepper{
		Key: key, Label: b.full(key), Figure: shown, Less: "−½", More: "+½",
		LessHelp: "−½, " + b.T("step.less"), MoreHelp: "+½, " + b.T("step.more"),
		OnLess: b.guarded(func() { b.step(key, -0.5) }), OnMore: b.guarded(func() { b.step(key, +0.5) }),
	}.UI
	return b.memo("stepper "+key, draw, shown)
}

// step turns a count on or back.
func (b *bench) step(key string, by unit.Turns) {
	b.Do(key, func() {
		b.ReloadField(key)
		b.must(record.Step(b.place(key).(*record.Entry[unit.Turns]), by))
	})
}

// count lays the count pad out for a place, or puts it away. It is kept, for a
// phone may end the program while its screen is locked.
func (b *bench) count(key string) {
	if b.pad = key; key == "" {
		b.Fans.Shelf.Delete(padEntry)
	} else if err := b.Fans.Shelf.Put(padEntry, key); err != nil {
		b.Trouble = err
	}
}

const padEntry = "pad"

// resume lays out the count pad that was open when the program ended.
func (b *bench) resume() {
	if key, ok := b.Fans.Shelf.Get(padEntry); ok && b.place(key) != nil {
		b.pad = key
		b.unfold(key)
	}
}

// counter is the pad for counting turns by taps.
func (b *bench) counter(key string, e *record.Entry[unit.Turns], by unit.Turns) app.UI {
	if b.pad != key {
		return widget.Button("count "+key, b.T("count.start", "n", b.Turns(by)), "wide", b.guarded(func() { b.count(key) }))
	}
	shown := b.Turns(0)
	if e.State() == record.Known {
		shown = b.Turns(e.Value())
	}
	return widget.CountPad{
		Key: key, Title: b.full(key), Help: b.T("count.pad"), Figure: shown, Tap: "+" + b.Turns(by),
		Back: b.T("count.back"), Zero: b.T("count.zero"), Close: b.T("count.done"),
		OnTap:  b.guarded(func() { b.step(key, by) }),
		OnBack: b.guarded(func() { b.step(key, -by) }),
		OnZero: b.guarded(func() {
			b.Do(key+" zero", func() {
				b.ReloadField(key)
				b.must(b.place(key).Set(""))
			})
		}),
		OnDone: b.guarded(func() { b.count("") }),
	}.UI()
}
