package site

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
)

// A tree is a site in memory: content by slash-separated path.
type tree map[string][]byte

func readTree(dir, prefix string) (tree, error) {
	t := tree{}
	files := os.DirFS(dir)
	err := fs.WalkDir(files, ".", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		t[prefix+path], err = fs.ReadFile(files, path)
		return err
	})
	return t, err
}

func (t tree) paths() []string { return slices.Sorted(maps.Keys(t)) }

// take removes a file that is a template and gives its content.
func (t tree) take(path string) ([]byte, error) {
	content, ok := t[path]
	if !ok {
		return nil, fmt.Errorf("%s is missing", path)
	}
	delete(t, path)
	return content, nil
}

// version is a hash of all content, so that equal content keeps its version and
// any change brings a new one.
func (t tree) version(more ...[]byte) string {
	sum := sha256.New()
	add := func(name string, content []byte) { fmt.Fprintf(sum, "%s %x\n", name, sha256.Sum256(content)) }
	for _, path := range t.paths() {
		add(path, t[path])
	}
	for _, content := range more {
		add("", content)
	}
	return fmt.Sprintf("%x", sum.Sum(nil)[:8])
}

// write replaces what is in dir. It refuses to empty a folder that is not a
// site, for a slip of the hand in -out must not cost anyone their files.
func (t tree) write(dir string) error {
	there, err := os.ReadDir(dir)
	if err != nil && !os.IsNotExist(err) {
		return err
	}
	if len(there) > 0 {
		if _, err := os.Stat(filepath.Join(dir, "app-worker.js")); err != nil {
			return fmt.Errorf("%s is neither empty nor a site, so it is left alone: %w", dir, err)
		}
	}
	for _, entry := range there {
		if err := os.RemoveAll(filepath.Join(dir, entry.Name())); err != nil {
			return err
		}
	}
	for _, path := range t.paths() {
		name := filepath.Join(dir, filepath.FromSlash(path))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(name, t[path], 0o644); err != nil {
			return err
		}
	}
	return nil
}
