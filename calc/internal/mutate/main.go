// Package main tries the proof: it changes one figure by 1 % and runs the tests
// that stand on it, figure after figure. A figure whose change no test finds is a
// survivor: nothing proves it. Figures are the expected values of
// testdata/published, all of them, and the numbers written in the formulas and
// their tables, evenly spread ones or all. It works on a copy.
//
// Run it from the root of the module: go run ./calc/internal/mutate
package main

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

func main() {
	every := flag.Bool("all", false, "change every number of the formulas and tables, not some of each package")
	each := flag.Int("each", 5, "how many numbers of a package, and of its tables, to change")
	only := flag.String("only", "", "change only what stands where one of these begins: calc/belt,calc/drive/motor.go:17:")
	flag.Parse()
	if *every {
		*each = 0
	}
	survived, err := run(*each, strings.Split(*only, ","))
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(2)
	}
	if survived > 0 {
		os.Exit(1)
	}
}

func run(each int, only []string) (survived int, err error) {
	root, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(root)
	if err := copyModule(root); err != nil {
		return 0, err
	}
	before := []string{"./calc/number", "./calc/internal/published"}
	for _, name := range packages {
		before = append(before, "./calc/"+name)
	}
	if out, err := test(root, before...); err != nil {
		return 0, fmt.Errorf("the tests fail before anything is changed: %w\n%s", err, out)
	}
	cells, err := cells(root)
	if err != nil {
		return 0, err
	}
	literals, err := literals(root)
	if err != nil {
		return 0, err
	}
	for _, group := range append(cells, literals...) {
		var left []mutant
		for _, m := range group.mutants {
			where := fmt.Sprintf("%s:%d:", m.file, m.line)
			if slices.ContainsFunc(only, func(o string) bool { return strings.HasPrefix(where, o) }) {
				left = append(left, m)
			}
		}
		if len(left) == 0 {
			continue
		}
		group.mutants = left
		if group.sampled {
			group.mutants = spread(group.mutants, each)
		}
		n, err := group.try(root)
		if err != nil {
			return 0, err
		}
		survived += n
	}
	return survived, nil
}

// copyModule copies what the library's tests need.
func copyModule(to string) error {
	for _, name := range []string{"go.mod", "go.sum", "calc", "testdata"} {
		err := filepath.WalkDir(name, func(path string, d fs.DirEntry, err error) error {
			if err != nil {
				return err
			}
			target := filepath.Join(to, path)
			if d.IsDir() {
				return os.MkdirAll(target, 0o755)
			}
			text, err := os.ReadFile(path)
			if err != nil {
				return err
			}
			return os.WriteFile(target, text, 0o644)
		})
		if err != nil {
			return err
		}
	}
	return nil
}

func test(root string, args ...string) (string, error) {
	return command(root, "go", append([]string{"test", "-vet=off"}, args...)...)
}

func command(dir, name string, args ...string) (string, error) {
	c := exec.Command(name, args...)
	c.Dir = dir
	out, err := c.CombinedOutput()
	return string(out), err
}

// spread returns n mutants evenly spread over all, or all for none.
func spread(all []mutant, n int) []mutant {
	if n <= 0 || n >= len(all) {
		return all
	}
	some := make([]mutant, n)
	for i := range some {
		some[i] = all[(2*i+1)*len(all)/(2*n)]
	}
	return some
}
