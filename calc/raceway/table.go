package raceway

import (
	"embed"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"

	"roofside/calc/source"
)

//go:embed tables/*.csv
var files embed.FS

// A record is one row of a table. Its methods read a cell by its column; the
// first cell that is malformed is kept as the row's error.
type record struct {
	columns, cells []string
	err            error
}

func (r *record) fail(column, why string) {
	if r.err == nil {
		r.err = fmt.Errorf("%s: %s", column, why)
	}
}

func (r *record) cell(column string) string {
	for i, c := range r.columns {
		if c == column {
			return r.cells[i]
		}
	}
	r.fail(column, "no such column")
	return ""
}

func (r *record) text(column string) string {
	s := r.cell(column)
	if s == "" {
		r.fail(column, "empty")
	}
	return s
}

func (r *record) number(column string) float64 {
	x, err := strconv.ParseFloat(r.cell(column), 64)
	if err != nil || !(x >= 0) || math.IsInf(x, 1) {
		r.fail(column, "no number")
		return 0
	}
	return x
}

// optional is number, or zero for an empty cell.
func (r *record) optional(column string) float64 {
	if r.cell(column) == "" {
		return 0
	}
	return r.number(column)
}

func (r *record) whole(column string) int {
	n, err := strconv.Atoi(r.cell(column))
	if err != nil || n < 0 {
		r.fail(column, "no whole number")
	}
	return n
}

func (r *record) known(column string) source.Known {
	switch k := source.Known(r.cell(column)); k {
	case source.LookedUp, source.Derived, source.CommonPractice, source.Memory:
		return k
	}
	r.fail(column, "no way of knowing")
	return ""
}

// heads are the remarks that every table begins with.
var heads = [...]string{"source", "edition", "known"}

// read reads the rows of a table: remarks "# key: text", then the columns
// exactly as given, then at least one row, its cells parted by commas.
func read(text, columns string) ([]record, error) {
	found := map[string]bool{}
	var names []string
	var records []record
	for line := range strings.Lines(text) {
		line = strings.TrimSuffix(line, "\n")
		switch cells := strings.Split(line, ","); {
		case strings.HasPrefix(line, "# "):
			if key, rest, ok := strings.Cut(line[2:], ": "); ok && strings.TrimSpace(rest) != "" {
				found[key] = true
			}
		case names == nil:
			if line != columns {
				return nil, errors.New("other columns")
			}
			names = cells
		case len(cells) != len(names) || strings.Contains(line, `"`):
			return nil, errors.New("row " + cells[0] + ": cells are not one for each column")
		default:
			records = append(records, record{columns: names, cells: cells})
		}
	}
	for _, key := range heads {
		if !found[key] {
			return nil, errors.New("no " + key)
		}
	}
	if len(records) == 0 {
		return nil, errors.New("no rows")
	}
	return records, nil
}

// parse reads a table row by row. Errors: as read; the first row that its own
// function finds malformed.
func parse(text, columns string, row func(*record)) error {
	records, err := read(text, columns)
	for i := range records {
		r := &records[i]
		if row(r); r.err != nil {
			return fmt.Errorf("row %s: %w", r.cells[0], r.err)
		}
	}
	return err
}

// A lazy table is read at its first use. The tables are part of the code: one
// that can't be read is a fault of the build.
type lazy struct {
	name, columns string
	row           func(*record)
	once          sync.Once
}

func (l *lazy) load() {
	l.once.Do(func() {
		text, err := files.ReadFile("tables/" + l.name + ".csv")
		if err == nil {
			err = parse(string(text), l.columns, l.row)
		}
		if err != nil {
			panic(fmt.Errorf("table %s: %w", l.name, err))
		}
	})
}

// table returns a function that gives the rows of an embedded table. It is
// small, for the compiler makes it anew for every kind of row.
func table[T any](name, columns string, row func(*record) T) func() []T {
	var all []T
	l := &lazy{name: name, columns: columns, row: func(r *record) { all = append(all, row(r)) }}
	return func() []T {
		l.load()
		return all
	}
}

// index returns a function that makes a map of a table at its first call.
func index[K comparable, T any](rows func() []T, key func(T) K) func() map[K]T {
	var once sync.Once
	m := map[K]T{}
	return func() map[K]T {
		once.Do(func() {
			for _, t := range rows() {
				m[key(t)] = t
			}
		})
		return m
	}
}
