package desk

import (
	"strings"

	"roofside/calc/number"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// fieldDigits is how many significant digits a value shows in a unit it was not
// typed in.
const fieldDigits = 6

// Shown returns the unit a place is shown in: the one chosen for this field, or
// the system's.
func (d *Desk) Shown(key string, m record.Measure) unit.Unit {
	y := d.Settings.Units
	if own, ok := d.Settings.Fields[fieldName(key)]; ok {
		y = own
	}
	return m.Fact().Scale.In(y)
}

// fieldName leaves out whose value it is, so that a unit switched for one sheave
// is switched for its twin.
func fieldName(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// Switch changes the unit of one field. The value stays.
func (d *Desk) Switch(key string, m record.Measure) {
	other := unit.SI
	if d.Shown(key, m).Symbol == m.Fact().Scale.SI.Symbol {
		other = unit.US
	}
	d.Settings.Fields[fieldName(key)] = other
	d.Reload()
	d.keepSettings()
}

// Text returns what the field of a place holds: as typed; or the record's text
// in the language, in the unit shown.
func (d *Desk) Text(key string, p record.Place) string {
	if t, ok := d.typed[key]; ok {
		return t
	}
	switch p.State() {
	case record.Garbled:
		return record.Typed(p)
	case record.Unknown, record.Illegible:
		return ""
	}
	m, ok := p.(record.Measure)
	if !ok {
		return p.Text()
	}
	shown := d.Shown(key, m)
	digits, symbol := number.Split(m.Amount())
	if symbol != shown.Symbol && !(symbol == "" && shown.Symbol == "1") {
		digits, _ = number.Split(number.Canonical(m.Base(), shown, fieldDigits))
	}
	return d.Locale.Localize(digits)
}

// Typed returns what was typed into a field since it was loaded.
func (d *Desk) Typed(key string) string { return d.typed[key] }

// Type takes what was typed into the field of a place.
func (d *Desk) Type(key string, p record.Place, typed string) {
	d.Do(key, func() {
		d.typed[key] = typed
		if err := d.take(key, p, typed); err != nil {
			d.note(p.Set(record.Garble(typed)))
		}
	})
}

func (d *Desk) take(key string, p record.Place, typed string) error {
	m, ok := p.(record.Measure)
	if !ok || strings.TrimSpace(typed) == "" {
		return p.Set(strings.TrimSpace(typed))
	}
	r, err := d.Read(key, m, typed)
	if err != nil {
		return err
	}
	return m.SetAmount(r.Text)
}

// Read reads what is typed in the field of a place, by the language and the
// unit shown, and checks that the place can hold it.
func (d *Desk) Read(key string, m record.Measure, typed string) (number.Reading, error) {
	r, err := d.Locale.Quantity(typed, m.Kind(), d.Shown(key, m))
	if err == nil {
		err = m.Fact().Check(r.Value)
	}
	return r, err
}

// Echo returns how the text in a field was read where that is worth showing,
// and why it could not be where it couldn't.
func (d *Desk) Echo(key string, p record.Place) (r number.Reading, err error) {
	m, ok := p.(record.Measure)
	typed, isTyped := d.typed[key]
	if p.State() == record.Garbled && !isTyped {
		typed, isTyped = record.Typed(p), true
	}
	if !ok || !isTyped || strings.TrimSpace(typed) == "" {
		return number.Reading{}, nil
	}
	return d.Read(key, m, typed)
}

// TakeOther puts the other reading of what was typed into the place.
func (d *Desk) TakeOther(key string, m record.Measure, other string) {
	d.Do("", func() {
		d.ReloadField(key)
		d.note(m.SetAmount(other))
	})
}
