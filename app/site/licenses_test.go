package site

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"testing"
)

func linked(t *testing.T) *debug.BuildInfo {
	t.Helper()
	program := "head\x30\x77\xaf\x0c\x92\x74\x08\x02\x41\xe1\xc1\x07\xe6\xd6\x18\xe6path\troofside/app\nmod\troofside\t(devel)\t\n" +
		"dep\tgithub.com/maxence-charriere/go-app/v10\tv10.1.11\n=>\t./.build/go-app\t(devel)\t\ndep\trsc.io/qr\tv0.2.0\th1:x\n" +
		"\xf9\x32\x43\x31\x86\x18\x20\x72\x00\x82\x42\x10\x41\x16\xd8\xf2tail"
	info, err := LinkedInto([]byte(program))
	if err != nil {
		t.Fatal(err)
	}
	return info
}

func TestLinkedInto(t *testing.T) {
	deps := linked(t).Deps
	if len(deps) != 2 || deps[0].Path != "github.com/maxence-charriere/go-app/v10" || deps[0].Version != "v10.1.11" || deps[1].Path != "rsc.io/qr" {
		t.Errorf("%+v", deps)
	}
	if _, err := LinkedInto([]byte("no marks in here")); err == nil {
		t.Error("a program that says nothing passes")
	}
}

// Each linked module's text is there, unaltered; one that can't be given stops
// the build.
func TestLicenses(t *testing.T) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	goroot := strings.TrimSpace(string(root))
	all, err := Licenses(linked(t), goroot)
	if err != nil {
		t.Fatal(err)
	}
	own, err := os.ReadFile(filepath.Join(goroot, "LICENSE"))
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Contains(all, bytes.TrimSpace(own)) {
		t.Error("Go's license is not in it as it is")
	}
	for _, want := range []string{"=== github.com/maxence-charriere/go-app/v10 v10.1.11: LICENSE ===", "=== rsc.io/qr v0.2.0: LICENSE ==="} {
		if !bytes.Contains(all, []byte(want)) {
			t.Errorf("no %s", want)
		}
	}
	for name, module := range map[string]*debug.Module{
		"another version": {Path: "rsc.io/qr", Version: "v0.1.0"},
		"unknown":         {Path: "example.org/none", Version: "v1.0.0"},
	} {
		if _, err := Licenses(&debug.BuildInfo{Deps: []*debug.Module{module}}, goroot); err == nil {
			t.Errorf("%s: taken", name)
		}
	}
	var b bytes.Buffer
	bare := t.TempDir()
	for _, name := range []string{"licenses.go", "LICENSE"} { // one is no license, one is empty
		if err := os.WriteFile(filepath.Join(bare, name), []byte(" \n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := addLicense(&b, "bare", bare); err == nil {
		t.Error("a module without a license is taken")
	}
}
