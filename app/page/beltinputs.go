package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// belt asks which belt it is and what its maker says of it.
func (v *beltView) belt() app.UI {
	return v.section("belt", v.T("section.belt"), v.Fan.New.BeltNumber.Text(), func() app.UI {
		return app.Div().Body(
			v.fields("new.belt-number", "new.belts", "new.groove"),
			app.H3().Text(v.T("belt.card")),
			v.fields("new.belt-listed-force", "new.belt-rating", "new.belt-mass"),
		)
	})
}

// fromDrive says that a section holds what Drive knows, and what that is.
func (v *beltView) fromDrive(what string) string {
	return strings.TrimPrefix(what+" · "+v.T("belt.from-drive"), " · ")
}

func (v *beltView) centers() string {
	if c := &v.Fan.New.Center; c.State() == record.Known {
		return v.size(c.Value())
	}
	return ""
}

func (v *beltView) sheaves() string {
	if r := v.set.Run; r.Motor.Known() && r.Fan.Known() {
		return v.T("belt.sheaves", "motor", v.size(r.Motor.Value), "fan", v.size(r.Fan.Value))
	}
	return ""
}

// shaft asks what the fan takes, where amps don't tell it.
func (v *beltView) shaft() app.UI {
	return v.section("shaft", v.T("section.shaft"), v.fromDrive(""), func() app.UI {
		if v.Fan.SameWheel.Value() == record.No {
			return v.fields("same-wheel", "target.rated-speed", "target.rated-power", "target.air-temperature")
		}
		return v.fields("same-wheel", "target.speed", "target.power", "target.air-temperature")
	})
}

// readings is the log of trials, as far as the belt goes.
func (v *beltView) readings() app.UI {
	ts := v.Fan.Trials
	summary := v.T("readings.none")
	if n := len(ts); n > 0 {
		summary = v.T("readings.count", "n", v.Locale.WriteFixed(float64(n), 0))
	}
	return v.section("readings", v.T("section.belt-readings"), summary, func() app.UI {
		return app.Div().Class("readings").Body(
			app.P().Class("field-note").Text(v.T("belt.readings.help")),
			app.Range(ts).Slice(func(i int) app.UI { return v.reading(len(ts)-1-i, ts[len(ts)-1-i]) }),
		)
	})
}

// addBeltReading opens a trial for what was read at the belt, pressed in as ordered. A
// belt on a new drive is new at its first reading.
func (b *bench) addBeltReading() {
	v := newBeltView(b) // a handler may be older than what was typed since
	ts := v.Fan.Trials
	v.openTrial("belt-force", sheet.HasTension, func(t *record.Trial) {
		if t.Belt.Age.State() == record.Unknown {
			age := record.NewBelt
			for _, before := range ts {
				if said := before.Belt.Age.Value(); said != "" {
					age = said
				}
			}
			v.must(t.Belt.Age.Set(string(age)))
		}
		if t.Belt.Deflection.State() == record.Unknown && v.set.Press.Known() {
			v.must(t.Belt.Deflection.Set(v.Marked(v.set.Press.Value)))
		}
	})
}

func (v *beltView) reading(i int, t *record.Trial) app.UI {
	key := "trial." + t.ID + "."
	title, summary := v.T("side.trial", "n", v.Locale.WriteFixed(float64(i+1), 0)), ""
	if t.Turns.State() == record.Known {
		summary = v.setting(t.Turns.Value())
	}
	if f := &t.Belt.Force; f.State() == record.Known {
		figure, label := v.Figure(&unit.Pull, float64(f.Value()))
		summary += " · " + figure + " " + label
	}
	return v.section("reading "+t.ID, title, summary, func() app.UI {
		turns := []string{key + "turns"}
		if v.Fan.New.Sheave.Value() == record.Fixed {
			turns = nil
		}
		said := v.tensionOf(t).Taut(t).Verdict
		return app.Div().Body(
			// Always there, so that what follows keeps its place, and a field its focus.
			app.Div().Body(app.If(sheet.HasTension(t) && t != v.last, func() app.UI { return v.verdict(t.ID, said).UI() })),
			v.fields(key+"belt-age", key+"belt-force", key+"belt-deflection", key+"belt-frequency", key+"alignment-gap"),
			v.fields(append(turns, key+"speed", key+"accepted")...),
			widget.Button("remove "+t.ID, v.T("readings.remove"), "", v.guarded(func() {
				v.Do("", func() { v.Fan.RemoveTrial(t.ID) })
			})),
		)
	})
}
