package raceway

import (
	"embed"
	"encoding/csv"
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

// parse reads a table: remarks "# key: text", then the columns exactly as
// given, then at least one row.
func parse[T any](text, columns string, row func(*record) T) ([]T, error) {
	found := map[string]bool{}
	for line := range strings.Lines(text) {
		remark, ok := strings.CutPrefix(line, "# ")
		if !ok {
			break
		}
		if key, rest, ok := strings.Cut(remark, ": "); ok && strings.TrimSpace(rest) != "" {
			found[key] = true
		}
	}
	for _, key := range heads {
		if !found[key] {
			return nil, errors.New("no " + key)
		}
	}
	reader := csv.NewReader(strings.NewReader(text))
	reader.Comment = '#'
	lines, err := reader.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(lines) < 2 || strings.Join(lines[0], ",") != columns {
		return nil, errors.New("other columns or no rows")
	}
	var all []T
	for _, cells := range lines[1:] {
		r := &record{columns: lines[0], cells: cells}
		t := row(r)
		if r.err != nil {
			return nil, fmt.Errorf("row %s: %w", cells[0], r.err)
		}
		all = append(all, t)
	}
	return all, nil
}

// table returns a function that reads an embedded table at its first call. The
// tables are part of the code: one that can't be read is a fault of the build.
func table[T any](name, columns string, row func(*record) T) func() []T {
	return sync.OnceValue(func() []T {
		text, err := files.ReadFile("tables/" + name + ".csv")
		if err != nil {
			panic(err)
		}
		all, err := parse(string(text), columns, row)
		if err != nil {
			panic(fmt.Errorf("table %s: %w", name, err))
		}
		return all
	})
}

// index returns a function that makes a map of a table at its first call.
func index[K comparable, T any](rows func() []T, key func(T) K) func() map[K]T {
	return sync.OnceValue(func() map[K]T {
		m := make(map[K]T, len(rows()))
		for _, t := range rows() {
			m[key(t)] = t
		}
		return m
	})
}
