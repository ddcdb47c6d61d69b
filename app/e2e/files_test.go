//go:build e2e

package e2e

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// downloads lets the browser put files into a folder, and returns it.
func (t *Tab) downloads() string {
	t.t.Helper()
	dir := t.t.TempDir()
	t.do("allowing downloads", command(browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior: browser.SetDownloadBehaviorBehaviorAllow, DownloadPath: dir, BrowserContextID: chromedp.FromContext(t.ctx).BrowserContextID,
	}))
	return dir
}

// downloaded waits for a file and returns what is in it.
func (t *Tab) downloaded(pattern string) string {
	t.t.Helper()
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(10 * time.Millisecond) {
		files, err := filepath.Glob(pattern)
		if err != nil {
			t.t.Fatal(err)
		}
		if len(files) == 1 {
			if content, err := os.ReadFile(files[0]); err == nil && len(content) > 0 {
				return string(content)
			}
		}
	}
	t.t.Fatalf("no file %s came", pattern)
	return ""
}

// hand clicks what asks for a file, and hands it one.
func (t *Tab) hand(selector, file string) {
	t.t.Helper()
	asked := make(chan cdp.BackendNodeID, 1)
	if err := chromedp.Listen(t.ctx, func(event any) {
		if e, ok := event.(*page.EventFileChooserOpened); ok {
			select {
			case asked <- e.BackendNodeID:
			default:
			}
		}
	}); err != nil {
		t.t.Fatal(err)
	}
	t.do("waiting for a file chooser", command(page.SetInterceptFileChooserDialog, page.SetInterceptFileChooserDialogParams{Enabled: true}))
	t.Click(selector)
	select {
	case node := <-asked:
		t.do("handing over "+file, command(dom.SetFileInputFiles, dom.SetFileInputFilesParams{Files: []string{file}, BackendNodeID: node}))
	case <-time.After(patience):
		t.t.Fatalf("%s asked for no file", selector)
	}
}

// everything is what the site has stored of its own, but for the moment of the last
// change.
func (t *Tab) everything() string {
	t.t.Helper()
	return Eval[string](t, `JSON.stringify(Object.entries(localStorage).filter(([k]) => k.startsWith("roofside/") && k !== "roofside/last").sort())`)
}

// A roof goes out as a file and comes into another browser as a roof of its own;
// files that are no roof's change nothing.
func TestRoofsGoOutAndIn(t *testing.T) {
	t.Parallel()
	tab := NewPhone(t).Open("/")
	tab.Click(`button[name="demo"]`)
	dir := tab.downloads()
	tab.Click(`.roof-head button`)
	tab.Click(`button[name^="export "]`)
	file := tab.downloaded(filepath.Join(dir, "*.roof.json"))
	tab.Click(`button[name^="readings "]`)
	if csv := tab.downloaded(filepath.Join(dir, "*.csv")); !strings.Contains(csv, "Hood line 1, east") || !strings.Contains(csv, "846") {
		t.Errorf("the readings:\n%s", csv)
	}

	other := NewPhone(t).Open("/")
	other.stock(1, "f1")
	other.Reload()
	other.Await(`document.querySelectorAll(".fan").length === 1`)
	stored := other.everything()
	kept := filepath.Join(t.TempDir(), "kept.json")
	for _, c := range []struct{ content, says string }{
		{file[:len(file)/2], "cut off"},
		{"\x89PNG", "no roof"},
		{"", "no roof"},
		{strings.Replace(file, `"form": 1`, `"form": 2`, 1), "newer version"},
		{strings.Replace(file, `"form": 1`, `"form": 0`, 1), "no roof"},
		{file + strings.Repeat(" ", 8<<20), "Too large"},
		{`{"form":1,"roof":"R","fans":[{}` + strings.Repeat(",{}", 200) + `]}`, "Too large"},
		{strings.Repeat(`{"form":1,"roof":`, 100_000), "no roof"},
		{`{"form":1,"roof":"R","fans":[{"name":{"name":"A"}}]}`, "no roof"},
		{`{"form":1,"roof":"R","fans":[],"fans":null,"__proto__":{"form":2}}`, "no roof"},
	} {
		if err := os.WriteFile(kept, []byte(c.content), 0o600); err != nil {
			t.Fatal(err)
		}
		other.hand(`button[name="open file"]`, kept)
		other.AwaitText(".notice", c.says)
		other.Click(`button[name="file leave"]`)
		other.Await(`!document.querySelector(".notice")`)
		if now := other.everything(); now != stored {
			t.Errorf("%.40q changed what is stored from %.200s to %.200s", c.content, stored, now)
		}
	}

	// What a file says is shown as text, and taken only on the user's word.
	hostile := `{"form":1,"roof":"<img src=x onerror=alert(1)>\u202e","fans":[{"name":"<script>alert(2)</script>","old.motor-speed":"1e999 rpm","__proto__":"x","trial.` + strings.Repeat("a", 40) + `.speed":"1 rpm"}]}`
	if err := os.WriteFile(kept, []byte(hostile), 0o600); err != nil {
		t.Fatal(err)
	}
	other.hand(`button[name="open file"]`, kept)
	other.AwaitText(".notice", "“<img src=x onerror=alert(1)>”")
	other.AwaitText(".notice", "<script>alert(2)</script>")
	other.AwaitText(".notice", "2 values in it can't be used")
	if now := other.everything(); now != stored {
		t.Error("a file is taken before the word")
	}
	other.Click(`button[name="file leave"]`)
	other.Await(`!document.querySelector(".notice")`)

	if err := os.WriteFile(kept, []byte(file), 0o600); err != nil {
		t.Fatal(err)
	}
	other.hand(`button[name="open file"]`, kept)
	other.AwaitText(".notice", "Bread oven")
	other.Await(`document.querySelectorAll(".fan").length === 1`)
	other.Click(`button[name="file take"]`)
	other.Await(`document.querySelectorAll(".fan").length === 5`)
	other.Click(`.roof:last-child .fan button`)
	other.Go("/drive/")
	other.AwaitValue("set.turns", 3, 0, "1")
}
