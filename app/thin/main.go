// Command thin lays out copies of modules without what the browser never
// calls, for the program that runs there: go-app's server brings net/http and
// the ciphers with it, and validator's rules for things no fan has bring the
// Domain Name System, every country's post codes and the marks of every kind
// of file. The copies are used by way of -modfile, and for that build alone.
package main

import (
	"bytes"
	"encoding/json"
	"errors"
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
		from, err := m.bring()
		if err != nil {
			return fmt.Errorf("%s: %w", m.path, err)
		}
		to := filepath.Join(copies, filepath.FromSlash(m.path))
		if err := m.copySource(from, to); err != nil {
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

// bring is the folder where the module's source stands, fetched where it isn't
// there: this is the first that a fresh machine runs, with nothing fetched yet.
func (m module) bring() (string, error) {
	said, err := exec.Command("go", "mod", "download", "-json", m.path).Output()
	var got struct{ Dir, Error string }
	if unread := json.Unmarshal(said, &got); unread != nil {
		return "", errors.Join(err, unread)
	}
	if got.Error != "" {
		return "", errors.New(got.Error)
	}
	return got.Dir, err
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
