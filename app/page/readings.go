package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// readings is the log of trials: what was set, what was read.
func (v *driveView) readings() app.UI {
	ts := v.Fan.Trials
	summary := v.T("readings.none")
	if n := len(ts); n > 0 {
		summary = v.T("readings.count", "n", v.Locale.WriteFixed(float64(n), 0))
	}
	return v.section("readings", v.T("section.readings"), summary, func() app.UI {
		return app.Div().Class("readings").Body(
			app.P().Class("field-note").Text(v.T("readings.help")),
			app.Range(ts).Slice(func(i int) app.UI { return v.reading(len(ts)-1-i, ts[len(ts)-1-i]) }),
			widget.Button("add reading", v.T("readings.add"), "primary wide", v.guarded(v.addReading)),
		)
	})
}

// addReading opens a trial for a speed at the setting that the plate has ordered.
func (v *driveView) addReading() {
	v.openTrial("speed", func(t *record.Trial) bool { return t.Reading.Speed.State() != record.Unknown }, nil)
}

// openTrial opens the trial that a reading goes into, with the focus in one of its
// fields: the latest, where it is of the setting that was ordered and has no such
// reading yet; or else a new one, which more fills in. Where no setting is ordered
// the turns are left to be typed: a wrong guess would set the whole table.
// The table is made anew: a handler may be older than what was typed since.
func (b *bench) openTrial(field string, has func(*record.Trial) bool, more func(*record.Trial)) {
	to, ordered := ordered(b.Fan)
	b.Do("", func() {
		t := lastTrial(b.Fan)
		if t == nil || has(t) || ordered && (t.Turns.State() != record.Known || t.Turns.Value() != to) {
			t = b.startTrial()
			if ordered {
				b.must(orderedAt(t, to))
			}
		}
		if more != nil {
			more(t)
		}
		b.open["readings"], b.open["reading "+t.ID] = true, true
		b.focus(widget.ID("trial." + t.ID + "." + field))
	})
}

// ordered returns the setting that the plate of Drive orders, where it orders one.
func ordered(f *record.Fan) (to unit.Turns, ok bool) {
	if f.DirectDrive() {
		return 0, false
	}
	m, _ := sheet.NextMove(f, sheet.TurnsTable(f))
	return m.To, m.Do == sheet.DoOpen || m.Do == sheet.DoClose || m.Do == sheet.DoStay || m.Do == sheet.DoTension
}

// orderedAt sets a reading at a setting that was ordered: until something is read at
// it, nothing says that it was set.
func orderedAt(t *record.Trial, to unit.Turns) error {
	err := record.Step(&t.Turns, to)
	t.Turns.SetBasis(record.Computed)
	return err
}

// lastTrial returns the latest trial, or nil.
func lastTrial(f *record.Fan) *record.Trial {
	if n := len(f.Trials); n > 0 {
		return f.Trials[n-1]
	}
	return nil
}

// startTrial starts a reading with what is known of it before anything is read: its
// time, and how the leads stand.
func (b *bench) startTrial() *record.Trial {
	t := b.Fan.NewTrial()
	if t == nil {
		panic("the log is full")
	}
	b.must(t.At.Set(b.now()))
	b.must(t.Leads.Set(b.Fan.New.Leads.Text()))
	return t
}

func (v *driveView) reading(i int, t *record.Trial) app.UI {
	key := "trial." + t.ID + "."
	title := v.T("side.trial", "n", v.Locale.WriteFixed(float64(i+1), 0))
	summary := ""
	if t.Turns.State() == record.Known {
		summary = v.setting(t.Turns.Value())
	}
	if t.Reading.Speed.State() == record.Known {
		s, rpm := v.Figure(&unit.Rotation, float64(t.Reading.Speed.Value()))
		summary += " · " + s + " " + rpm
	}
	if t.Accepted.Value() == record.Yes {
		summary += " · " + v.T("readings.accepted")
	}
	return v.section("reading "+t.ID, title, summary, func() app.UI {
		keys := []string{key + "turns", key + "speed", key + "amps-1"}
		if v.Fan.Supply.Value() != record.SinglePhase {
			keys = append(keys, key+"amps-2", key+"amps-3", key+"volts-12", key+"volts-23", key+"volts-31")
		} else {
			keys = append(keys, key+"volts-12")
		}
		if v.Fan.Supply.Value() == record.Inverter {
			keys = append(keys, key+"frequency")
		}
		keys = append(keys, key+"air-temperature", key+"motor-tachometer", key+"tipped-up")
		if v.Fan.Supply.Value() == record.TwoSpeed {
			keys = append(keys, key+"run-at")
		}
		keys = append(keys, key+"accepted")
		doubt := sheet.TrialVerdict(v.Fan, t)
		return app.Div().Body(
			// Always there, so that what follows keeps its place, and a field its focus.
			app.Div().Body(app.If(t.Reading.Speed.State() == record.Known, func() app.UI { return v.verdict(t.ID, doubt).UI() })),
			v.stepper(key+"turns", &t.Turns),
			v.fields(keys...),
			widget.Button("remove "+t.ID, v.T("readings.remove"), "", v.guarded(func() {
				v.Do("", func() { v.Fan.RemoveTrial(t.ID) })
			})),
		)
	})
}
