package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"roofside/calc/internal/published"
)

// readers are the tests that read a file of testdata/published which is not of
// cases, and its column of expected values.
var readers = map[string]struct{ column, dir, run string }{
	"units":       {"value", "calc/unit", "TestUnitsAreThose"},
	"icu-numbers": {"plain", "calc/number", "ICU"},
}

// cells returns every expected value of testdata/published, a group a file.
func cells(root string) ([]group, error) {
	files, err := filepath.Glob(filepath.Join(root, "testdata/published/*.csv"))
	if err != nil {
		return nil, err
	}
	var groups []group
	for _, path := range files {
		name := strings.TrimSuffix(filepath.Base(path), ".csv")
		r, other := readers[name]
		if !other {
			r.column, r.dir, r.run = "expected", "calc/internal/published", "TestCases"
		}
		binary := filepath.Join(root, name+".test")
		if out, err := command(root, "go", "test", "-c", "-vet=off", "-o", binary, "./"+r.dir); err != nil {
			return nil, fmt.Errorf("%s: %w\n%s", r.dir, err, out)
		}
		g := group{name: "cells of " + name, finds: func(root string) (bool, error) {
			_, err := command(filepath.Join(root, r.dir), binary, "-test.run", r.run)
			return failed(err)
		}}
		var cases []published.Case
		if !other {
			if cases, err = published.Load(path); err != nil {
				return nil, err
			}
		}
		t := table{name: name, column: r.column, cases: cases}
		if g.mutants, err = t.read(path); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
		groups = append(groups, g)
	}
	return groups, nil
}

// A table is a file of testdata/published.
type table struct {
	name, column string
	cases        []published.Case // none where the file is of another form
	lines        [][]byte         // no cell holds an end of line
	columns      []string
}

func (t *table) read(path string) ([]mutant, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	t.lines = bytes.Split(text, []byte("\n"))
	var mutants []mutant
	for i, line := range t.lines {
		if len(line) == 0 || line[0] == '#' {
			continue
		}
		row, err := csv.NewReader(bytes.NewReader(line)).Read()
		switch {
		case err != nil:
			return nil, err
		case t.columns == nil:
			t.columns = row
		case published.Unanswered[t.name][row[0]] == "":
			at := slices.Index(t.columns, t.column)
			for _, c := range changes(row[at]) {
				m := mutant{file: "testdata/published/" + t.name + ".csv", line: i + 1, from: text, change: [2]string{c.number, hundredth(c.number, 1)}}
				m.to = t.with(i, at, row, c.with(m.change[1]))
				if share := t.tolerance(row[0], c.name); share >= 0.005 {
					m.coarse = t.with(i, at, row, c.with(hundredth(c.number, 1+200*share)))
				}
				mutants = append(mutants, m)
			}
		}
	}
	return mutants, nil
}

// with returns the file with a cell of a row changed.
func (t *table) with(line, column int, row []string, cell string) []byte {
	row = slices.Clone(row)
	row[column] = cell
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Write(row) // a Buffer takes everything
	w.Flush()
	lines := slices.Clone(t.lines)
	lines[line] = bytes.TrimSuffix(b.Bytes(), []byte("\n"))
	return bytes.Join(lines, []byte("\n"))
}

// tolerance returns a case's tolerance for a result, as a share of it.
func (t *table) tolerance(id, name string) float64 {
	for _, c := range t.cases {
		for _, e := range c.Expected {
			if c.ID == id && e.Name == name {
				return e.Absolute/math.Abs(e.Number) + e.Relative
			}
		}
	}
	return 0
}

// A change is a number in a cell, with what stands before and after it there.
type change struct{ before, name, number, after string }

func (c change) with(number string) string { return c.before + number + c.after }

// changes returns the numbers of a cell: one alone, or name=number[unit];… A
// zero has no hundredth.
func changes(cell string) []change {
	if hundredth(cell, 1) != "" {
		return []change{{number: cell}}
	}
	var all []change
	at := 0
	for part := range strings.SplitSeq(cell, ";") {
		name, rest, _ := strings.Cut(part, "=")
		number, _, _ := strings.Cut(rest, "[")
		if hundredth(number, 1) != "" {
			start := at + len(name) + 1
			all = append(all, change{cell[:start], name, number, cell[start+len(number):]})
		}
		at += len(part) + 1
	}
	return all
}

// hundredth returns a number larger by a count of hundredths, or "" for what is
// no number or zero.
func hundredth(number string, hundredths float64) string {
	x, err := strconv.ParseFloat(number, 64)
	if err != nil || x == 0 {
		return ""
	}
	return strconv.FormatFloat(x*(1+hundredths/100), 'g', -1, 64)
}
