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
	script, worker := filepath.Join(dir, first), filepath.Join(dir, "app-worker.js")
	content, err := os.ReadFile(script)
	if err != nil {
		t.Fatal(err)
	}
	list, err := os.ReadFile(worker)
	if err != nil {
		t.Fatal(err)
	}
	changed := append(bytes.Clone(hear), content...)
	if !bytes.Contains(list, digest(content)) {
		t.Fatal("the worker does not list the first script")
	}
	for name, text := range map[string][]byte{script: changed, worker: bytes.ReplaceAll(list, digest(content), digest(changed))} {
		if err := os.WriteFile(name, text, 0o644); err != nil {
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
