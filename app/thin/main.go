// Command thin lays out copies of modules without what the browser never
// calls, for the program that runs there: go-app's server brings net/http and
// the ciphers with it, and validator's rules for things no fan has bring the
// Domain Name System, every country's post codes and the marks of every kind
// of file. The copies are used by way of -modfile, and for that build alone.
package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"log"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// A module is copied and cut. Its sum is what go.sum says of the version that
// was looked through; another version is to be looked through again before
// this is changed.
type module struct {
	path, version, sum string
	source             string // the folder whose packages are wanted
	cut                func(source string) error
}

var modules = []module{goApp, validator, uuid}

func main() {
	if len(os.Args) != 2 {
		log.Fatal("thin FOLDER")
	}
	if err := lay(os.Args[1]); err != nil {
		log.Fatal("thin: ", err)
	}
}

func lay(folder string) error {
	mod, err := os.ReadFile("go.mod")
	if err != nil {
		return err
	}
	sums, err := os.ReadFile("go.sum")
	if err != nil {
		return err
	}
	copies := filepath.Join(folder, "thin")
	if err := os.RemoveAll(copies); err != nil {
		return err
	}
	for _, m := range modules {
		if line := m.path + " " + m.version + " " + m.sum; !bytes.Contains(sums, []byte(line+"\n")) {
			return fmt.Errorf("go.sum does not hold %q: look through that version first", line)
		}
		from, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", m.path).Output()
		if err != nil {
			return err
		}
		to := filepath.Join(copies, filepath.FromSlash(m.path))
		if err := m.copySource(strings.TrimSpace(string(from)), to); err != nil {
			return err
		}
		if err := m.cut(filepath.Join(to, m.source)); err != nil {
			return fmt.Errorf("%s: %w", m.path, err)
		}
		mod = fmt.Appendf(mod, "\nreplace %s => ./%s\n", m.path, filepath.ToSlash(to))
	}
	if err := os.WriteFile(filepath.Join(folder, "thin.mod"), mod, 0o644); err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(folder, "thin.sum"), sums, 0o644)
}

// copySource copies go.mod and the source of the wanted packages, without
// tests.
func (m module) copySource(from, to string) error {
	return filepath.WalkDir(from, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name, err := filepath.Rel(from, path)
		if err != nil || d.IsDir() {
			return err
		}
		wanted := strings.HasSuffix(name, ".go") && !strings.HasSuffix(name, "_test.go") &&
			(m.source == "." && filepath.Dir(name) == "." || strings.HasPrefix(filepath.ToSlash(name), m.source+"/"))
		if !wanted && name != "go.mod" {
			return nil
		}
		content, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		target := filepath.Join(to, name)
		if err := os.MkdirAll(filepath.Dir(target), 0o755); err != nil {
			return err
		}
		return os.WriteFile(target, content, 0o644)
	})
}
