// Package main tries the proof: it changes one figure by 1 %, or turns one condition
// about, and runs the tests that stand on it, one after another. What changes and no
// test finds is a survivor: nothing proves it. Figures are the expected values of
// testdata/published, all of them, and the numbers written in the formulas and
// their tables, evenly spread ones or all; conditions are some of each package, drawn
// by a seed, or all. It works on a copy.
//
// Run it from the root of the module: go run ./calc/internal/mutate
package main

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"roofside/calc/internal/mutate/condition"
)

func main() {
	every := flag.Bool("all", false, "change every number of the formulas and tables, and every condition, not some of each package")
	each := flag.Int("each", 5, "how many numbers of a package, and of its tables, to change")
	only := flag.String("only", "", "change only what stands where one of these begins: calc/belt,calc/drive/motor.go:17:")
	kinds := flag.String("kinds", "figures,conditions", "what to change")
	folders := flag.String("in", "calc/phase,calc/sheet", "packages whose conditions to change")
	c := condition.Run{Out: os.Stdout}
	for _, s := range sameAnyway {
		c.Indifferent = append(c.Indifferent, condition.Indifferent(s))
	}
	flag.IntVar(&c.Each, "conditions", 25, "how many changes of conditions to try in a package")
	flag.Uint64Var(&c.Seed, "seed", 1, "by which these are drawn")
	flag.IntVar(&c.Jobs, "jobs", 1, "how many changed conditions to try at once")
	flag.BoolVar(&c.Short, "short", false, "for conditions, leave out tests that take long")
	flag.Func("skip", "for conditions, leave out tests whose names match", func(text string) (err error) {
		c.Skip, err = regexp.Compile(text)
		return err
	})
	flag.Parse()
	if *every {
		*each, c.Each = 0, 0
	}
	places := strings.Split(*only, ",")
	c.Only = func(file string, line int) bool { return begins(places, file, line) }
	bad, err := run(strings.Split(*kinds, ","), strings.Split(*folders, ","), *each, places, c)
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(2)
	}
	if bad > 0 {
		os.Exit(1)
	}
}

// run returns how many changes survived, or were named wrongly as indifferent.
func run(kinds, folders []string, each int, places []string, c condition.Run) (bad int, err error) {
	if c.Root, err = os.MkdirTemp("", "mutate"); err != nil {
		return 0, err
	}
	defer os.RemoveAll(c.Root)
	if err := copyModule(c.Root); err != nil {
		return 0, err
	}
	for _, kind := range kinds {
		switch kind {
		case "figures":
			n, err := figuresOf(c.Root, each, places)
			if err != nil {
				return 0, err
			}
			bad += n
		case "conditions":
			for _, folder := range folders {
				asked := func(p string) bool { return strings.HasPrefix(p, folder) || strings.HasPrefix(folder, p) }
				if !slices.ContainsFunc(places, asked) {
					continue // it would be compiled for nothing
				}
				t, err := c.Package(folder)
				if err != nil {
					return 0, err
				}
				bad += len(t.Survived) + len(t.Wrong)
			}
		default:
			return 0, fmt.Errorf("%s: no kind of change", kind)
		}
	}
	return bad, nil
}

// begins tells whether a place is among those asked for.
func begins(places []string, file string, line int) bool {
	where := fmt.Sprintf("%s:%d:", file, line)
	return slices.ContainsFunc(places, func(p string) bool { return strings.HasPrefix(where, p) })
}

// copyModule copies what the library's tests need.
func copyModule(to string) error {
	for _, name := range []string{"go.mod", "go.sum", "README.md", "calc", "testdata"} {
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
