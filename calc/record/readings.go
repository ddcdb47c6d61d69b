package record

import (
	"io"
	"strings"

	"roofside/calc/number"
	"roofside/calc/unit"
)

// readingDigits is how many significant digits a reading is written with.
const readingDigits = 6

// WriteReadings writes what instruments said at the fans of r as CSV (RFC 4180), for a
// spreadsheet: a row for each old fan as found and for each trial, a column for each
// reading with its unit in the head. decimal is the mark that the spreadsheet's language
// writes decimals with, the point for any but the comma; where that is it, cells are parted by semicolons, as such
// a spreadsheet expects. Every cell is quoted, and a byte order mark tells the encoding.
// What was not read is empty.
func (r *Roof) WriteReadings(w io.Writer, system unit.System, decimal rune) error {
	if decimal != ',' {
		decimal = '.'
	}
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
		if row, any := readingRow(f, &f.Old.Reading, &BeltReading{}, system, decimal); any {
			rows = append(rows, append([]string{name, "as found", "", "", ""}, row...))
		}
		for _, t := range f.Trials {
			row, _ := readingRow(f, &t.Reading, &t.Belt, system, decimal)
			rows = append(rows, append([]string{name, t.ID, t.At.Text(), t.Accepted.Text(), cell(&t.Turns, system, decimal)}, row...))
		}
	}
	return writeCells(w, rows, decimal)
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

func readingRow(f *Fan, r *Reading, b *BeltReading, system unit.System, decimal rune) (row []string, any bool) {
	for _, p := range readings(f, r, b) {
		text := cell(p, system, decimal)
		any = any || text != ""
		row = append(row, text)
	}
	return row, any
}

func cell(p Place, system unit.System, decimal rune) string {
	m, ok := p.(Measure)
	switch {
	case p.State() != Known:
		return ""
	case !ok:
		return p.Text()
	}
	digits, _ := number.Split(number.Canonical(m.Base(), m.Fact().Scale.In(system), readingDigits))
	return strings.Replace(digits, ".", string(decimal), 1)
}

// writeCells writes rows, each cell in quotes.
func writeCells(w io.Writer, rows [][]string, decimal rune) error {
	part := ","
	if decimal == ',' {
		part = ";"
	}
	var b strings.Builder
	b.WriteString("\ufeff")
	for _, row := range rows {
		for i, c := range row {
			if i > 0 {
				b.WriteString(part)
			}
			b.WriteString(`"` + strings.ReplaceAll(c, `"`, `""`) + `"`)
		}
		b.WriteString("\r\n")
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// plainCell keeps a spreadsheet from taking a name for a formula, whether it begins with
// the signs of ASCII or with their wide twins.
func plainCell(s string) string {
	if strings.IndexAny(s, "=+-@\t\r＝＋－＠") == 0 {
		return "'" + s
	}
	return s
}
