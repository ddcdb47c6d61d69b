package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// packages hold the formulas and their constants.
var packages = []string{"unit", "drive", "belt", "airflow", "phase", "raceway"}

// literals returns the numbers in the code of each package, and in raceway's
// tables.
func literals(root string) ([]group, error) {
	var groups []group
	for _, name := range packages {
		g := group{name: "numbers of " + name, sampled: true, finds: testsOf(name)}
		files, err := filepath.Glob(filepath.Join(root, "calc", name, "*.go"))
		if err != nil {
			return nil, err
		}
		for _, path := range files {
			if strings.HasSuffix(path, "_test.go") {
				continue
			}
			m, err := literalsOf(root, path)
			if err != nil {
				return nil, err
			}
			g.mutants = append(g.mutants, m...)
		}
		groups = append(groups, g)
	}
	g := group{name: "tables of raceway", sampled: true, finds: testsOf("raceway")}
	files, err := filepath.Glob(filepath.Join(root, "calc/raceway/tables/*.csv"))
	if err != nil {
		return nil, err
	}
	for _, path := range files {
		m, err := tableCells(root, path)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
		g.mutants = append(g.mutants, m...)
	}
	return append(groups, g), nil
}

// testsOf returns what runs a package's own tests, and where they find nothing
// the published cases.
func testsOf(name string) func(string) (bool, error) {
	return func(root string) (bool, error) {
		if _, err := command(root, "go", "build", "./calc/"+name); err != nil {
			return false, errVoid
		}
		for _, dir := range []string{name, "internal/published"} {
			_, err := test(root, "-failfast", "./calc/"+dir)
			if found, err := failed(err); found || err != nil {
				return found, err
			}
		}
		return false, nil
	}
}

// indifferent are numbers that may be 1 % off: § stands before each in its line.
var indifferent = []struct{ file, line, why string }{
	{"calc/belt/belt.go", "C := (L - math.Pi*touching) / §2", "where the solver starts"},
	{"calc/belt/belt.go", "sin := (D - d) / §2 / C", "the solver's slope: it ends at the same root"},
	{"calc/belt/belt.go", "- L) / (§2 * math.Sqrt(", "the solver's slope: it ends at the same root"},
	{"calc/belt/belt.go", "math.Sqrt((§1-sin)", "the solver's slope: it ends at the same root"},
	{"calc/belt/belt.go", "(1-sin)*(§1+sin)", "the solver's slope: it ends at the same root"},
	{"calc/belt/belt.go", "§32*r*r > 1", "what is refused here is refused below too"},
	{"calc/belt/fit.go", "int(max(n, §1))", "a whole number of belts"},
	{"calc/raceway/drop.go", "min(float64(powerFactor), §1)", "a bound for what rounding leaves above it"},
	{"calc/drive/motor.go", "mostPoles = §16", "a whole number of poles"},
	{"calc/phase/meter.go", "m.Floor * §2", "twice is far from an overflow"},
	{"calc/phase/phase.go", "unit.Percent), §5)", "a bound for what rounding leaves above it"},
	{"calc/phase/roll.go", "sum / §3 * float64(max", "drift is a ratio of averages"},
	{"calc/phase/sequence.go", "(1+root), §1)", "a bound for what rounding leaves above it"},
	{"calc/phase/supply.go", "if s.Low <= §1 &&", "whether the least deviation is 0 or a hundredth, it is within"},
	{"calc/phase/supply.go", "&& s.High >= §1 {", "whether the least deviation is 0 or a hundredth, it is within"},
	{"calc/raceway/ampacity.go", "f := unit.Ratio(§1)", "the table's first row stands in for it"},
}

// least is the smallest number that is a figure; below are allowances for
// rounding.
const least = 1e-6

func literalsOf(root, path string) ([]mutant, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	file, err := filepath.Rel(root, path)
	if err != nil {
		return nil, err
	}
	set := token.NewFileSet()
	parsed, err := parser.ParseFile(set, path, text, 0)
	if err != nil {
		return nil, err
	}
	left := map[string]bool{}
	for _, i := range indifferent {
		if i.file == file {
			left[i.line] = true
		}
	}
	lines := strings.Split(string(text), "\n")
	var mutants []mutant
	for _, n := range figures(parsed) {
		at := set.Position(n.Pos())
		if line := free(file, lines[at.Line-1], at.Column-1); line != "" {
			delete(left, line)
			continue
		}
		number := strings.ReplaceAll(n.Value, "_", "")
		to := hundredth(number, 1)
		m := mutant{file: file, line: at.Line, from: text, change: [2]string{n.Value, to}}
		m.to = spliced(text, at.Offset, n.Value, to)
		if x, err := strconv.Atoi(number); err == nil && x >= 100 {
			m.whole = spliced(text, at.Offset, n.Value, strconv.Itoa(int(math.Ceil(float64(x)*1.01))))
		}
		mutants = append(mutants, m)
	}
	for line := range left {
		return nil, fmt.Errorf("%s: no number stands so: %s", file, line)
	}
	return mutants, nil
}

// figures returns the numbers of a file that are not zero, an index or an
// allowance for rounding.
func figures(f *ast.File) (all []*ast.BasicLit) {
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.ImportSpec, *ast.IndexExpr, *ast.ArrayType:
			return false
		case *ast.BasicLit:
			x, err := strconv.ParseFloat(strings.ReplaceAll(n.Value, "_", ""), 64)
			if (n.Kind == token.INT || n.Kind == token.FLOAT) && err == nil && x >= least {
				all = append(all, n)
			}
		}
		return true
	})
	return all
}

// free returns the entry of indifferent for the number at a column, or "".
func free(file, line string, column int) string {
	for _, i := range indifferent {
		before, after, _ := strings.Cut(i.line, "§")
		if i.file == file && strings.HasSuffix(line[:column], before) && strings.HasPrefix(line[column:], after) {
			return i.line
		}
	}
	return ""
}

func spliced(text []byte, at int, from, to string) []byte {
	return slices.Concat(text[:at], []byte(to), text[at+len(from):])
}

func tableCells(root, path string) ([]mutant, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	file, err := filepath.Rel(root, path)
	if err != nil {
		return nil, err
	}
	var mutants []mutant
	t := table{lines: bytes.Split(text, []byte("\n"))}
	for i, line := range t.lines {
		if len(line) == 0 || line[0] == '#' {
			continue
		}
		row, err := csv.NewReader(bytes.NewReader(line)).Read()
		if err != nil {
			return nil, err
		}
		for c, cell := range row {
			if to := hundredth(cell, 1); to != "" {
				mutants = append(mutants, mutant{file: file, line: i + 1, from: text, to: t.with(i, c, row, to), change: [2]string{cell, to}})
			}
		}
	}
	return mutants, nil
}
