// Package published reads check values: cases from outside the library, with
// inputs, expected results, tolerance and source, one row each. It is for tests.
package published

import (
	"encoding/csv"
	"fmt"
	"io"
	"os"
	"slices"
	"strconv"
	"strings"
)

// A Value is a number with its unit's symbol, or a word.
type Value struct {
	Word   string // for a value without a number
	Number float64
	Unit   string
}

// A Tolerance is how far a result may be from the expected value.
type Tolerance struct {
	Absolute float64 // in the expected value's unit
	Relative float64
}

// An Expected is one result that a case asks for.
type Expected struct {
	Name string
	Value
	Tolerance
}

// A Case is one row.
type Case struct {
	ID, Topic, Source string
	HowKnown          string // looked_up, derived, memory
	Class             string // published: the source prints the answer; derived; memory
	Inputs            map[string]Value
	Expected          []Expected
}

var columns = []string{"id", "topic", "inputs", "expected", "tolerance", "source", "how_known", "class"}

// Load reads the cases of a file. Errors: the file can't be read, or a row is
// malformed; the row is named.
func Load(path string) ([]Case, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	cases, err := Read(f)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return cases, f.Close()
}

// Rows reads the rows of a file of another form. Errors: the file can't be
// read, or its columns are others.
func Rows(path string, columns ...string) ([][]string, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	rows, err := table(f, columns)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return rows, f.Close()
}

func table(r io.Reader, columns []string) ([][]string, error) {
	c := csv.NewReader(r)
	c.Comment = '#'
	rows, err := c.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(rows) == 0 || !slices.Equal(rows[0], columns) {
		return nil, fmt.Errorf("columns are not %v", columns)
	}
	return rows[1:], nil
}

// Read reads cases. Errors: as [Load].
func Read(r io.Reader) ([]Case, error) {
	rows, err := table(r, columns)
	if err != nil {
		return nil, err
	}
	var cases []Case
	seen := map[string]bool{}
	for _, row := range rows {
		k, err := parse(row)
		if err != nil {
			return nil, fmt.Errorf("case %s: %w", row[0], err)
		}
		if seen[k.ID] {
			return nil, fmt.Errorf("case %s: twice", k.ID)
		}
		seen[k.ID] = true
		cases = append(cases, k)
	}
	return cases, nil
}

func parse(row []string) (Case, error) {
	k := Case{ID: row[0], Topic: row[1], Source: row[5], HowKnown: row[6], Class: row[7], Inputs: map[string]Value{}}
	if k.ID == "" || k.Source == "" {
		return k, fmt.Errorf("no id or no source")
	}
	for part := range strings.SplitSeq(row[2], ";") {
		name, v, err := value(part)
		if err != nil {
			return k, err
		}
		if _, twice := k.Inputs[name]; twice {
			return k, fmt.Errorf("input %q twice", name)
		}
		k.Inputs[name] = v
	}
	for part := range strings.SplitSeq(row[3], ";") {
		name, v, err := value(part)
		if err != nil {
			return k, err
		}
		if v.Word != "" {
			return k, fmt.Errorf("expected %q is no number with a unit", name)
		}
		k.Expected = append(k.Expected, Expected{Name: name, Value: v})
	}
	return k, tolerances(row[4], k.Expected)
}

// value reads name=number[unit] or name=word.
func value(text string) (string, Value, error) {
	name, rest, ok := strings.Cut(text, "=")
	if !ok || name == "" || rest == "" {
		return "", Value{}, fmt.Errorf("%q is not name=value", text)
	}
	number, tail, ok := strings.Cut(rest, "[")
	if !ok {
		return name, Value{Word: rest}, nil
	}
	symbol, ok := strings.CutSuffix(tail, "]")
	x, err := strconv.ParseFloat(number, 64)
	if !ok || symbol == "" || err != nil {
		return "", Value{}, fmt.Errorf("%q is not name=number[unit]", text)
	}
	return name, Value{Number: x, Unit: symbol}, nil
}

// tolerances reads "abs=x" or "rel=x" for all, or "name:abs=x;name:rel=y".
func tolerances(text string, expected []Expected) error {
	for part := range strings.SplitSeq(text, ";") {
		name, rule, one := strings.Cut(part, ":")
		if !one {
			name, rule = "", part
		}
		kind, number, _ := strings.Cut(rule, "=")
		x, err := strconv.ParseFloat(number, 64)
		if err != nil || x < 0 {
			return fmt.Errorf("tolerance %q is not abs=number or rel=number", part)
		}
		var t Tolerance
		switch kind {
		case "abs":
			t.Absolute = x
		case "rel":
			t.Relative = x
		default:
			return fmt.Errorf("tolerance %q is not abs=number or rel=number", part)
		}
		found := false
		for i := range expected {
			if name == "" || expected[i].Name == name {
				expected[i].Tolerance = t
				found = true
			}
		}
		if !found {
			return fmt.Errorf("tolerance for %q, which is not expected", name)
		}
	}
	return nil
}
