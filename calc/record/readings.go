package record

import (
	"encoding/csv"
	"io"
	"strings"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// readingDigits is how many significant digits a reading is written with.
const readingDigits = 6

// WriteReadings writes what instruments said at the fans of r as CSV, for a
// spreadsheet: a row for each old fan as found and for each trial, a column for
// each reading with its unit in the head, the point for decimals. What was not
// read is empty.
func (r *Roof) WriteReadings(w io.Writer, system unit.System) error {
	out := csv.NewWriter(w)
	head := []string{"fan", "reading", "at", "accepted", "turns open"}
	for k, p := range readings(NewFan(), &Reading{}, &BeltReading{}) {
		if m, ok := p.(Measure); ok {
			k += " (" + m.Fact().Scale.In(system).Symbol + ")"
		}
		head = append(head, k)
	}
	rows := [][]string{head}
	for _, f := range r.Fans {
		name := plainCell(f.Name.Text())
		if row, any := readingRow(f, &f.Old.Reading, &BeltReading{}, system); any {
			rows = append(rows, append([]string{name, "as found", "", "", ""}, row...))
		}
		for _, t := range f.Trials {
			row, _ := readingRow(f, &t.Reading, &t.Belt, system)
			rows = append(rows, append([]string{name, t.ID, t.At.Text(), t.Accepted.Text(), cell(&t.Turns, system)}, row...))
		}
	}
	return out.WriteAll(rows)
}

// readings lists the places of a reading, at the fan and at its belt, with their
// keys.
func readings(f *Fan, r *Reading, b *BeltReading) func(func(string, Place) bool) {
	return func(yield func(string, Place) bool) {
		l := f.lister(nil, yield)
		l.reading(r)
		l.belt(b)
	}
}

func readingRow(f *Fan, r *Reading, b *BeltReading, system unit.System) (row []string, any bool) {
	for _, p := range readings(f, r, b) {
		text := cell(p, system)
		any = any || text != ""
		row = append(row, text)
	}
	return row, any
}

func cell(p Place, system unit.System) string {
	m, ok := p.(Measure)
	switch {
	case p.State() != Known:
		return ""
	case !ok:
		return p.Text()
	}
	digits, _ := number.Split(number.Canonical(m.Base(), m.Fact().Scale.In(system), readingDigits))
	return digits
}

// plainCell keeps a spreadsheet from taking a name for a formula.
func plainCell(s string) string {
	if strings.IndexAny(s, "=+-@\t") == 0 {
		return "'" + s
	}
	return s
}
