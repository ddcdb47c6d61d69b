package main

import (
	"fmt"
	"os/exec"
)

// figuresOf changes figures and returns how many of these survived.
func figuresOf(root string, each int, places []string) (survived int, err error) {
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
			if begins(places, m.file, m.line) {
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
