package condition

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// A place is a line of a file of the package, by the file's name alone.
type place struct {
	file string
	line int
}

// build writes the package's schema into dir and compiles the tests that stand on
// it, its own first. Conditions that the compiler won't have there are left out:
// those of a boolean type with a name, say, that a plain one can't stand for.
func (r Run) build(pkg, dir string) (all []Mutant, tests []*binary, left int, err error) {
	listed, err := r.list("-f", "{{.Dir}}\n{{.Name}}\n{{join .GoFiles \"\\n\"}}", "./"+pkg)
	if err != nil {
		return nil, nil, 0, err
	}
	out := map[place]bool{}
	for {
		if all, err = r.write(pkg, dir, listed, out); err != nil {
			return nil, nil, 0, err
		}
		tests, err = r.compile(pkg, dir)
		var wrong badText
		if !errors.As(err, &wrong) {
			return all, tests, left, err
		}
		before := left
		for _, m := range all {
			if p := (place{filepath.Base(m.File), m.Line}); slices.Contains(wrong.at, p) {
				out[p] = true
				left++
			}
		}
		if left == before {
			return nil, nil, 0, err
		}
	}
}

// write writes the package's files with all mutants, what they call, and the
// overlay that puts them in the place of those in the tree.
func (r Run) write(pkg, dir string, listed []string, out map[place]bool) ([]Mutant, error) {
	var all []Mutant
	next := 0
	replace := map[string]string{}
	home, name := listed[0], listed[1]
	for _, file := range listed[2:] {
		text, err := os.ReadFile(filepath.Join(home, file))
		if err != nil {
			return nil, err
		}
		skip := func(line int) bool { return out[place{file, line}] }
		found, changed, err := schemaOf(pkg+"/"+file, text, &next, skip)
		if err != nil {
			return nil, err
		}
		all = append(all, found...)
		replace[filepath.Join(home, file)] = filepath.Join(dir, file)
		if err := os.WriteFile(filepath.Join(dir, file), changed, 0o644); err != nil {
			return nil, err
		}
	}
	const called = "mutants_of_conditions.go"
	replace[filepath.Join(home, called)] = filepath.Join(dir, called)
	overlay, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return nil, err
	}
	return all, errors.Join(
		os.WriteFile(filepath.Join(dir, called), fmt.Appendf(nil, helper, name, next+1), 0o644),
		os.WriteFile(filepath.Join(dir, "overlay.json"), overlay, 0o644))
}

// compile builds the test binaries of the packages that use the one changed.
func (r Run) compile(pkg, dir string) ([]*binary, error) {
	lines, err := r.list("-test", "-f", "{{.ImportPath}} {{join .Deps \" \"}}", "./...")
	if err != nil {
		return nil, err
	}
	module, err := r.list("-m")
	if err != nil {
		return nil, err
	}
	var all []*binary
	for _, line := range lines {
		words := strings.Fields(line)
		name, isTest := strings.CutSuffix(words[0], ".test")
		name = strings.TrimPrefix(name, module[0]+"/")
		if !isTest || !slices.Contains(words, module[0]+"/"+pkg) {
			continue
		}
		b := &binary{dir: filepath.Join(r.Root, name), path: filepath.Join(dir, strings.ReplaceAll(name, "/", "-")+".test")}
		c := exec.Command("go", "test", "-c", "-vet=off", "-overlay", filepath.Join(dir, "overlay.json"), "-o", b.path, "./"+name)
		c.Dir = r.Root
		if text, err := c.CombinedOutput(); err != nil {
			return nil, badText{placesIn(string(text)), fmt.Errorf("%s: %w\n%s", name, err, text)}
		}
		if name == pkg {
			all = slices.Insert(all, 0, b) // its own tests know it best
		} else {
			all = append(all, b)
		}
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("%s: no tests stand on it", pkg)
	}
	return all, nil
}

// badText is what the compiler says of a schema, and of which places.
type badText struct {
	at []place
	error
}

var said = regexp.MustCompile(`(?m)([^/\s]+\.go):(\d+):\d+: `)

func placesIn(text string) (all []place) {
	for _, m := range said.FindAllStringSubmatch(text, -1) {
		line, err := strconv.Atoi(m[2])
		if err != nil {
			continue // more digits than a file has lines
		}
		all = append(all, place{m[1], line})
	}
	return all
}

// list returns the lines that go list prints.
func (r Run) list(args ...string) ([]string, error) {
	c := exec.Command("go", append([]string{"list"}, args...)...)
	c.Dir = r.Root
	text, err := c.Output()
	if err != nil {
		var exit *exec.ExitError
		if errors.As(err, &exit) {
			err = fmt.Errorf("go list: %w\n%s", err, exit.Stderr)
		}
		return nil, err
	}
	return strings.Split(strings.TrimSpace(string(text)), "\n"), nil
}
