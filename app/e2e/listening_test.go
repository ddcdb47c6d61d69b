//go:build e2e && engines

package e2e

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"os"
	"path/filepath"
	"testing"
)

//go:embed hear.js
var hear []byte

// listening copies the site and lets its first script listen for what goes
// wrong: not every engine's protocol tells of it. The worker is given the
// changed script's digest, or it would refuse it.
func listening(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS(dist)); err != nil {
		t.Fatal(err)
	}
	first, worker := filepath.Join(dir, "web", "first", "storage.js"), filepath.Join(dir, "app-worker.js")
	script, err := os.ReadFile(first)
	if err != nil {
		t.Fatal(err)
	}
	list, err := os.ReadFile(worker)
	if err != nil {
		t.Fatal(err)
	}
	changed := append(bytes.Clone(hear), script...)
	if !bytes.Contains(list, digest(script)) {
		t.Fatal("the worker does not list the first script")
	}
	for name, content := range map[string][]byte{first: changed, worker: bytes.ReplaceAll(list, digest(script), digest(changed))} {
		if err := os.WriteFile(name, content, 0o644); err != nil {
			t.Fatal(err)
		}
		for _, ending := range []string{".br", ".gz"} {
			if err := os.RemoveAll(name + ending); err != nil {
				t.Fatal(err)
			}
		}
	}
	return dir
}

func digest(content []byte) []byte {
	sum := sha256.Sum256(content)
	return []byte(base64.StdEncoding.EncodeToString(sum[:]))
}
