//go:build e2e

package e2e

import (
	"bytes"
	"context"
	"encoding/json"
	"image/png"
	"io"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"roofside/app/site"
)

// The manifest as it is served can be installed, in the browser's own judgment,
// and all that it names is there: icons of the size they claim, the start page,
// a shortcut to each page that computes.
func TestInstall(t *testing.T) {
	t.Parallel()
	p := NewPhoneIn(t, "en-US") // with a browser of its own: from a private window it installs nothing
	tab := p.Open("/")
	tab.AwaitInstalled()
	manifestURL := Eval[string](tab, `document.querySelector("link[rel=manifest]").href`)
	var manifest struct {
		ID, Name, Display, Scope string
		Start                    string `json:"start_url"`
		Icons                    []struct{ Src, Type, Sizes, Purpose string }
		Shortcuts                []struct{ Name, URL string }
	}
	body, kind := fetch(t, manifestURL)
	if kind != "application/manifest+json" {
		t.Errorf("served as %q", kind)
	}
	if err := json.Unmarshal(body, &manifest); err != nil {
		t.Fatal(err)
	}
	if manifest.Name != "Roofside" || manifest.ID != "/" || manifest.Display != "standalone" || manifest.Scope != "/" || manifest.Start != "/" {
		t.Errorf("%+v", manifest)
	}
	at := func(path string) string {
		full, err := url.JoinPath(p.Site.URL, path)
		if err != nil {
			t.Fatal(err)
		}
		return full
	}
	var purposes, shortcuts []string
	for _, icon := range manifest.Icons {
		body, kind := fetch(t, at(icon.Src))
		if kind != icon.Type {
			t.Errorf("%s is served as %q", icon.Src, kind)
		}
		if icon.Type == "image/png" {
			picture, err := png.DecodeConfig(bytes.NewReader(body))
			if err != nil {
				t.Fatal(err)
			}
			if side := map[string]int{"192x192": 192, "512x512": 512}[icon.Sizes]; picture.Width != side || picture.Height != side {
				t.Errorf("%s: %d by %d, said to be %s", icon.Src, picture.Width, picture.Height, icon.Sizes)
			}
		}
		purposes = append(purposes, icon.Purpose)
	}
	if !slices.Contains(purposes, "maskable") || !slices.Contains(purposes, "any") {
		t.Errorf("icons for %q", purposes)
	}
	for _, s := range manifest.Shortcuts {
		if _, kind := fetch(t, at(s.URL)); !strings.HasPrefix(kind, "text/html") || s.Name == "" {
			t.Errorf("shortcut %q to %s: %q", s.Name, s.URL, kind)
		}
		shortcuts = append(shortcuts, s.URL)
	}
	if want := []string{"/drive/", "/airflow/", "/belt/", "/power/", "/raceway/", "/record/"}; !slices.Equal(shortcuts, want) {
		t.Errorf("shortcuts to %q, not %q", shortcuts, want)
	}
	for _, tag := range []string{`link[rel="apple-touch-icon"]`, `meta[name="apple-mobile-web-app-title"]`, `meta[name="apple-mobile-web-app-capable"][content="yes"]`, `meta[name="theme-color"]`} {
		if !Eval[bool](tab, "!!document.querySelector('"+tag+"')") {
			t.Errorf("no %s", tag)
		}
	}
	said, err := chromedp.Run(tab.ctx, chromedp.Action[[]*page.InstallabilityError](func(ctx context.Context, target *chromedp.Target) ([]*page.InstallabilityError, error) {
		result, err := cdp.Call(ctx, target, page.GetInstallabilityErrors, cdp.Empty{})
		if err != nil {
			return nil, err
		}
		return result.InstallabilityErrors, nil
	}))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range said {
		t.Errorf("the browser would not install it: %s", e.ErrorID)
	}
}

func fetch(t *testing.T, address string) (body []byte, kind string) {
	t.Helper()
	answer, err := http.Get(address)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	if answer.StatusCode != http.StatusOK {
		t.Fatalf("%s: %s", address, answer.Status)
	}
	if body, err = io.ReadAll(answer.Body); err != nil {
		t.Fatal(err)
	}
	return body, answer.Header.Get("Content-Type")
}

// Every module that the served program was linked from is named on the page of
// sources and has its license in the file, which is there without signal too.
func TestLicenses(t *testing.T) {
	t.Parallel()
	program, err := os.ReadFile(filepath.Join(dist, "web", "app.wasm"))
	if err != nil {
		t.Fatal(err)
	}
	info, err := site.LinkedInto(program)
	if err != nil {
		t.Fatal(err)
	}
	if len(info.Deps) < 5 {
		t.Fatalf("the program says it was linked from %d modules", len(info.Deps))
	}
	p := NewPhone(t)
	p.Open("/").AwaitInstalled()
	p.Offline()
	tab := p.Open("/sources/")
	named := tab.Text(".built")
	link := Eval[string](tab, `document.querySelector(".built a").href`)
	texts := p.NewTab()
	texts.Visit(link)
	licenses := Eval[string](texts, `document.body.innerText`)
	for _, module := range info.Deps {
		name := module.Path + " " + module.Version
		if !strings.Contains(named, name) {
			t.Errorf("%s is not named", name)
		}
		_, text, found := strings.Cut(licenses, "=== "+name+": ")
		text, _, _ = strings.Cut(text, "\n=== ")
		if !found || len(text) < 500 {
			t.Errorf("%s: its license is %d characters long", name, len(text))
		}
	}
}
