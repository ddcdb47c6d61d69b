package page

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/widget"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// opening asks what the conduit comes to, and what it is.
func (v *racewayView) opening() app.UI {
	o, r := &v.Fan.Opening, &v.Fan.Raceway
	return v.section("opening", v.T("section.opening"), v.end(), func() app.UI {
		keys := []string{"opening.kind"}
		if o.Kind.Value() == record.OpeningConduit {
			keys = append(keys, "opening.conduit")
		}
		keys = append(keys, "opening.size", "raceway.conduit", "raceway.size")
		if r.Conduit.Value() == "FMC" && r.Size.Value() == "3/8" {
			keys = append(keys, "raceway.fittings")
		}
		return app.Div().Body(v.fields(append(keys, "raceway.place", "raceway.use", "raceway.length")...), v.outsides())
	})
}

// outsides tells an unmarked conduit by its outside.
func (v *racewayView) outsides() app.UI {
	list := ""
	for _, o := range sheet.Outsides(v.Fan) {
		list += ", " + string(o.Size) + ": " + v.fine(o.Diameter)
	}
	if list == "" {
		return app.Div()
	}
	return app.P().Class("field-note").Text(v.T("conduit.outsides", "conduit", string(v.Fan.Raceway.Conduit.Value()), "list", list[2:], "known", v.sourceOf("raceway.outside")))
}

// conductors asks what is in the raceway, a row for each sort.
func (v *racewayView) conductors() app.UI {
	ws := v.Fan.Wires
	return v.section("wires", v.T("section.wires"), v.counted(len(ws)), func() app.UI {
		return app.Div().Class("wires").Body(
			app.P().Class("field-note").Text(v.T("wires.help")),
			app.Range(ws).Slice(func(i int) app.UI { return v.row(ws[i]) }),
			app.If(len(ws) < record.MostWires, func() app.UI {
				return widget.Button("add wire", v.T("wires.add"), "primary wide", v.guarded(v.addWire))
			}).Else(func() app.UI {
				return app.P().Class("field-note").Text(v.T("wires.full", "n", v.Locale.WriteFixed(record.MostWires, 0)))
			}),
		)
	})
}

func (v *racewayView) counted(rows int) string {
	if rows == 0 {
		return v.T("wires.none")
	}
	return v.T("wires.count", "n", v.Locale.WriteFixed(float64(rows), 0))
}

// addWire starts a row: the motor's circuit first, then its ground.
func (v *racewayView) addWire() {
	v.Do("", func() {
		role, grounded := record.MotorCircuit, false
		for _, w := range v.Fan.Wires {
			grounded = grounded || w.Role.Value() == record.Grounding
			role = record.Grounding
		}
		w := v.Fan.NewWire()
		if w == nil {
			panic("the list is full")
		}
		if role == record.MotorCircuit || !grounded {
			v.must(w.Role.Set(string(role)))
		}
		v.open["wires"], v.open["wire "+w.ID] = true, true
		v.focus(widget.ID("wire." + w.ID + ".count"))
	})
}

// rowName says what a row holds, as far as it is known.
func (v *racewayView) rowName(w *record.Wire) string {
	count, size, insulation := "?", "?", ""
	if w.Count.State() == record.Known {
		count = v.Locale.WriteFixed(float64(w.Count.Value()), 0)
	}
	if w.Size.State() == record.Known {
		size = string(w.Size.Value())
	}
	if i := w.Insulation.Value(); i != "" {
		insulation = " " + v.option(string(i))
	}
	name := count + " × " + size + insulation
	if role := w.Role.Value(); role != "" {
		name += " · " + v.option(string(role))
	}
	return name
}

func (v *racewayView) row(w *record.Wire) app.UI {
	key := "wire." + w.ID + "."
	return v.section("wire "+w.ID, v.side(key), v.rowName(w), func() app.UI {
		keys := []string{key + "size", key + "insulation"}
		if w.Insulation.Value() == record.Unmarked {
			keys = append(keys, key+"diameter")
		}
		return app.Div().Body(
			v.fields(key+"count"),
			v.tallier(key+"count", &w.Count),
			v.fields(append(keys, key+"role")...),
			widget.Button("remove "+w.ID, v.T("wires.remove"), "", v.guarded(func() {
				v.Do("", func() { v.Fan.RemoveWire(w.ID) })
			})),
		)
	})
}

// tallier counts up and down.
func (b *bench) tallier(key string, e *record.Entry[unit.Count]) app.UI {
	shown := "–"
	if e.State() == record.Known {
		shown = b.Locale.WriteFixed(float64(e.Value()), 0)
	}
	step := func(by unit.Count) func() {
		return b.guarded(func() {
			b.Do(key, func() {
				b.ReloadField(key)
				b.must(record.Step(b.place(key).(*record.Entry[unit.Count]), by)) // of the record that is open then
			})
		})
	}
	draw := widget.Stepper{
		Key: key, Label: b.full(key), Figure: shown, Less: "−1", More: "+1",
		LessHelp: "−1, " + b.T("tally.less"), MoreHelp: "+1, " + b.T("tally.more"), OnLess: step(-1), OnMore: step(+1),
	}.UI
	return b.memo("stepper "+key, draw, shown)
}

// motor shows what Drive knows of the new motor, to be changed here too.
func (v *racewayView) motor() app.UI {
	s := &v.Fan.New
	summary := ""
	if s.MotorPower.State() == record.Known && s.MotorVolts.State() == record.Known {
		power, hp := v.Figure(&unit.Shaft, float64(s.MotorPower.Value()))
		volts, label := v.Figure(&unit.Potential, float64(s.MotorVolts.Value()))
		summary = power + " " + hp + " · " + volts + " " + label
	}
	return v.section("wired-motor", v.T("section.wired-motor"), summary, func() app.UI {
		help := v.T("wired-motor.help")
		if sheet.BeyondTables(v.Fan) {
			help += " " + v.T("wired-motor.beyond")
		}
		return app.Div().Body(app.P().Class("field-note").Text(help), v.fields(wiredMotor...))
	})
}

// circuit asks what feeds the motor and where its wires run.
func (v *racewayView) circuit() app.UI {
	f := v.Fan
	return v.section("circuit", v.T("section.circuit"), v.edition(), func() app.UI {
		keys := []string{"new.minimum-circuit-ampacity", "new.maximum-overcurrent", "circuit.material", "circuit.terminals", "hottest-air"}
		if f.Raceway.Site.Value() != record.Indoors {
			keys = append(keys, "raceway.exposure")
			if f.Raceway.Exposure.Value() == record.Rooftop {
				keys = append(keys, "raceway.height")
			}
		}
		return v.fields(append(keys, "circuit.device", "circuit.device-rating", "circuit.length", "code-edition")...)
	})
}

// boxInputs asks for the box and for what is in it of each row.
func (v *racewayView) boxInputs() app.UI {
	summary := ""
	if d := sheet.BoxVerdict(v.Fan); sheet.Boxed(v.Fan) {
		summary = v.T("level." + string(levels[d.Level]))
	}
	return v.section("box", v.T("section.box"), summary, func() app.UI {
		ws := v.Fan.Wires
		return app.Div().Body(
			v.fields("box.size", "box.volume", "box.devices", "box.clamps"),
			app.If(len(ws) > 0, func() app.UI { return app.P().Class("field-note").Text(v.T("box.help")) }),
			app.Range(ws).Slice(func(i int) app.UI {
				key := "wire." + ws[i].ID + "."
				keys := []string{key + "where", key + "box-count"}
				if ws[i].Where.Value() == record.InRaceway {
					keys = keys[:1]
				}
				return app.Div().Body(app.H3().Text(v.rowName(ws[i])), v.fields(keys...))
			}),
		)
	})
}
