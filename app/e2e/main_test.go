//go:build e2e

package e2e

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// top is the top of the repository as seen from here, where tests run.
const top = "../.."

var (
	dist     = filepath.Join(top, "dist")
	failures = filepath.Join(top, ".build", "e2e-failures")
)

// TestMain fails at once where a tool is missing: a skipped test proves nothing.
func TestMain(m *testing.M) {
	if _, err := exec.LookPath("chromium"); err != nil {
		fmt.Fprintln(os.Stderr, "the browser tests need Chromium; app/e2e/install-chromium brings it:", err)
		os.Exit(1)
	}
	if _, err := os.Stat(filepath.Join(dist, "app-worker.js")); err != nil {
		fmt.Fprintln(os.Stderr, `the browser tests need the site; "make site" writes it:`, err)
		os.Exit(1)
	}
	if err := os.RemoveAll(failures); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	code := m.Run()
	stopShared()
	os.Exit(code)
}
