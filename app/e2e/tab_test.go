//go:build e2e

package e2e

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"
)

// patience is how long a condition may take to come true. It bounds failures;
// what succeeds goes on at once.
const patience = 45 * time.Second

// A Tab is one page of the browser, or a frame in one.
type Tab struct {
	p        *Phone
	t        *testing.T
	ctx      context.Context
	cancel   context.CancelFunc
	closed   bool
	console  console
	measured map[string]float64 // as of the last measure
	expected []string
	allowed  []string
}

// Go opens a path of the site in this tab and waits until the program shows it.
func (t *Tab) Go(path string) {
	t.t.Helper()
	t.Visit(t.p.Site.URL + path)
	t.AwaitMounted()
}

// Visit opens any address and waits for nothing but its load.
func (t *Tab) Visit(url string) {
	t.t.Helper()
	t.do("opening "+url, chromedp.Navigate(url))
}

// Reload loads the page anew and waits until the program shows it.
func (t *Tab) Reload() {
	t.t.Helper()
	t.do("reloading", chromedp.Reload())
	t.AwaitMounted()
}

// Close closes the tab.
func (t *Tab) Close() {
	t.closed = true
	t.cancel()
}

// AwaitMounted waits until the Go program has taken the page over.
func (t *Tab) AwaitMounted() {
	t.t.Helper()
	t.Await(`document.readyState === "complete" && !document.getElementById("app-wasm-loader")`)
}

// AwaitInstalled waits until the device holds the whole site that the page is
// of. Another copy nearer the root of the host does not count.
func (t *Tab) AwaitInstalled() {
	t.t.Helper()
	t.Await(`navigator.serviceWorker.getRegistration().then((r) => r && r.active && r.active.state === "activated" &&
		r.scope === new URL(".", document.querySelector("link[rel=manifest]").href).href)`)
}

// Await waits until a JavaScript expression, or what it promises, is true.
func (t *Tab) Await(expression string) {
	t.t.Helper()
	var last any
	var err error
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(10 * time.Millisecond) {
		// Between two pages there is nothing to ask; that is no failure yet.
		if last, err = eval[any](t, "(async () => { const v = await ("+expression+"); return v ? true : String(v); })()"); err == nil && last == true {
			return
		}
	}
	t.t.Fatalf("this did not come true: %s\nlast: %v %v", expression, last, err)
}

// Eval gives the value of a JavaScript expression, or of what it promises.
func Eval[T any](t *Tab, expression string) T {
	t.t.Helper()
	value, err := eval[T](t, expression)
	if err != nil {
		t.t.Fatalf("%s: %v", expression, err)
	}
	return value
}

func eval[T any](t *Tab, expression string) (T, error) {
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	return chromedp.Run(ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
}

// Frame waits for a frame from another site whose address holds a text, and
// gives it as a tab of its own.
func (t *Tab) Frame(address string) *Tab {
	t.t.Helper()
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); time.Sleep(10 * time.Millisecond) {
		targets, err := chromedp.Targets(t.ctx)
		if err != nil {
			t.t.Fatal(err)
		}
		for _, info := range targets {
			if own := chromedp.FromContext(t.ctx).BrowserContextID; own != "" && info.BrowserContextID != own {
				continue // another phone's
			}
			if info.Type == "iframe" && strings.Contains(info.URL, address) {
				return t.attachFrame(info.TargetID)
			}
		}
	}
	t.t.Fatalf("no frame whose address holds %q", address)
	return nil
}

func (t *Tab) attachFrame(id target.ID) *Tab {
	t.t.Helper()
	ctx, cancel := chromedp.NewContext(t.p.ctx, chromedp.WithTargetID(id))
	frame := &Tab{p: t.p, t: t.t, ctx: ctx, cancel: cancel}
	t.p.attach(frame)
	return frame
}

// do runs steps and ends the test if one fails or takes too long.
func (t *Tab) do(what string, steps ...chromedp.Action[chromedp.Void]) {
	t.t.Helper()
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	if err := chromedp.Do(ctx, steps...); err != nil {
		t.t.Fatalf("%s: %v", what, err)
	}
}

// command makes a step of a command of the browser's protocol.
func command[P, R any](c cdp.Command[P, R], parameters P) chromedp.Action[chromedp.Void] {
	return func(ctx context.Context, target *chromedp.Target) (chromedp.Void, error) {
		_, err := cdp.Call(ctx, target, c, parameters)
		if err != nil {
			err = fmt.Errorf("%s: %w", c.Method, err)
		}
		return chromedp.Void{}, err
	}
}
