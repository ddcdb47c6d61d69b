package site

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime/debug"
)

// LinkedInto reads from a compiled program which modules it was linked from: the
// compiler writes that between two marks (cmd/go/internal/modload, build.go).
// The package debug/buildinfo reads no wasm.
func LinkedInto(program []byte) (*debug.BuildInfo, error) {
	_, after, found := bytes.Cut(program, []byte("\x30\x77\xaf\x0c\x92\x74\x08\x02\x41\xe1\xc1\x07\xe6\xd6\x18\xe6"))
	said, _, closed := bytes.Cut(after, []byte("\xf9\x32\x43\x31\x86\x18\x20\x72\x00\x82\x42\x10\x41\x16\xd8\xf2"))
	if !found || !closed {
		return nil, errors.New("the program does not say which modules it was linked from")
	}
	return debug.ParseBuildInfo(string(said))
}

// Licenses gives the license texts of Go and of all modules of a program, as
// their authors wrote them. A module without one is an error.
func Licenses(info *debug.BuildInfo, goroot string) ([]byte, error) {
	var all bytes.Buffer
	if err := addLicense(&all, "Go, its standard library, its runtime and wasm_exec.js", goroot); err != nil {
		return nil, err
	}
	for _, module := range info.Deps {
		folder, err := folderOf(module)
		if err != nil {
			return nil, err
		}
		if err := addLicense(&all, module.Path+" "+module.Version, folder); err != nil {
			return nil, err
		}
	}
	return all.Bytes(), nil
}

// folderOf asks where a module's source lies, and that it is of the version in
// the program.
func folderOf(module *debug.Module) (string, error) {
	said, err := exec.Command("go", "list", "-m", "-json", module.Path).Output()
	if err != nil {
		return "", fmt.Errorf("asking where %s is: %w", module.Path, err)
	}
	var there struct{ Version, Dir string }
	if err := json.Unmarshal(said, &there); err != nil {
		return "", err
	}
	if there.Version != module.Version || there.Dir == "" {
		return "", fmt.Errorf("%s: the program holds %s, here is %q in %q", module.Path, module.Version, there.Version, there.Dir)
	}
	return there.Dir, nil
}

var license = regexp.MustCompile(`(?i)^(licen[cs]e|copying|notice|patents)([.-].*)?$`)

func addLicense(all *bytes.Buffer, name, folder string) error {
	entries, err := os.ReadDir(folder) // sorted
	if err != nil {
		return err
	}
	before := all.Len()
	for _, e := range entries {
		if e.IsDir() || !license.MatchString(e.Name()) {
			continue
		}
		text, err := os.ReadFile(filepath.Join(folder, e.Name()))
		if err != nil {
			return err
		}
		if len(bytes.TrimSpace(text)) > 0 {
			fmt.Fprintf(all, "=== %s: %s ===\n\n%s\n\n", name, e.Name(), bytes.TrimSpace(text))
		}
	}
	if all.Len() == before {
		return fmt.Errorf("%s: no license in %s", name, folder)
	}
	return nil
}
