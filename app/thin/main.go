// Command thin lays out a copy of go-app without its server, for the program
// that runs in the browser: what serves files and writes pages brings net/http
// and the ciphers with it, an eighth of all that is sent. The copy is used by
// way of -modfile, and for that build alone.
package main

import (
	"bytes"
	_ "embed"
	"fmt"
	"io/fs"
	"log"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

const (
	module = "github.com/maxence-charriere/go-app/v10"
	// sum is what go.sum says of the version that was looked through. Another
	// version is to be looked through again before this is changed.
	sum = module + " v10.1.11 h1:4JUSlVQ8zVIeL3acFJEpuerP6FLoEQWg6CUTtHcz7Ro="
)

// server lists what the browser never calls.
var server = []string{"http.go", "resource.go", "static.go", "crypto.go"}

// instead holds what the rest still names.
//
//go:embed instead.txt
var instead []byte

func main() {
	if len(os.Args) != 2 {
		log.Fatal("thin FOLDER")
	}
	if err := lay(os.Args[1]); err != nil {
		log.Fatal("thin: ", err)
	}
}

func lay(folder string) error {
	sums, err := os.ReadFile("go.sum")
	if err != nil {
		return err
	}
	if !bytes.Contains(sums, []byte(sum)) {
		return fmt.Errorf("go.sum does not hold %q: look through that version of go-app first", sum)
	}
	from, err := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", module).Output()
	if err != nil {
		return err
	}
	copied := filepath.Join(folder, "go-app")
	if err := os.RemoveAll(copied); err != nil {
		return err
	}
	if err := copySource(strings.TrimSpace(string(from)), copied); err != nil {
		return err
	}
	for _, name := range server {
		if err := os.Remove(filepath.Join(copied, "pkg/app", name)); err != nil {
			return err
		}
	}
	if err := os.WriteFile(filepath.Join(copied, "pkg/app/instead.go"), instead, 0o644); err != nil {
		return err
	}
	mod, err := os.ReadFile("go.mod")
	if err != nil {
		return err
	}
	mod = fmt.Appendf(mod, "\nreplace %s => ./%s\n", module, filepath.ToSlash(copied))
	if err := os.WriteFile(filepath.Join(folder, "thin.mod"), mod, 0o644); err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(folder, "thin.sum"), sums, 0o644)
}

// copySource copies go.mod and the source of the packages, without tests.
func copySource(from, to string) error {
	return filepath.WalkDir(from, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name, err := filepath.Rel(from, path)
		if err != nil || d.IsDir() {
			return err
		}
		if slash := filepath.ToSlash(name); slash != "go.mod" && (!strings.HasPrefix(slash, "pkg/") || strings.HasSuffix(slash, "_test.go")) {
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
