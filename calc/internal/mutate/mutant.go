package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// A mutant is a file with one figure changed.
type mutant struct {
	file     string // from the root
	line     int
	from, to []byte    // the file before and after
	whole    []byte    // with a whole number, where no other compiles
	coarse   []byte    // with a change past the test's tolerance, where that is too wide to tell 1 %
	change   [2]string // the figure before and after
}

// A group are mutants that the same tests should find.
type group struct {
	name    string
	mutants []mutant
	sampled bool
	finds   func(root string) (bool, error) // runs the tests
}

// errVoid is what tests return that don't compile: there is nothing to find.
var errVoid = errors.New("does not compile")

// try changes, tests and puts back, and returns how many changes were not found.
func (g group) try(root string) (survived int, err error) {
	var found, coarse, void int
	for _, m := range g.mutants {
		ok, err := g.with(root, m, m.to)
		late := false
		if errors.Is(err, errVoid) && m.whole != nil {
			ok, err = g.with(root, m, m.whole)
		}
		if err == nil && !ok && m.coarse != nil {
			late, err = g.with(root, m, m.coarse)
		}
		switch {
		case errors.Is(err, errVoid):
			void++
		case err != nil:
			return 0, err
		case ok:
			found++
		case late:
			coarse++
		default:
			survived++
			fmt.Printf("survived: %s:%d: %s for %s\n", m.file, m.line, m.change[1], m.change[0])
		}
	}
	fmt.Printf("%-32s %4d changed, %4d found, %2d survived", g.name, len(g.mutants)-void, found+coarse, survived)
	if coarse > 0 {
		fmt.Printf("; %d found only past their tolerance, which is printed wider than 0.5 %%", coarse)
	}
	fmt.Println()
	return survived, nil
}

func (g group) with(root string, m mutant, text []byte) (found bool, err error) {
	path := filepath.Join(root, m.file)
	if err := os.WriteFile(path, text, 0o644); err != nil {
		return false, err
	}
	found, err = g.finds(root)
	return found, errors.Join(err, os.WriteFile(path, m.from, 0o644))
}

// failed tells a test that failed from one that could not be run.
func failed(err error) (bool, error) {
	var exit *exec.ExitError
	if err == nil || errors.As(err, &exit) {
		return err != nil, nil
	}
	return false, err
}
