//go:build e2e

package e2e

import (
	"context"
	"sync"

	"github.com/chromedp/chromedp"
)

// newBrowser makes a browser of a language, that the first use starts.
func newBrowser(lang string, more ...chromedp.ExecAllocatorOption) (ctx context.Context, stop func()) {
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath("chromium"),
		chromedp.NoSandbox, // tests may run as root, which the sandbox refuses
		chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true),
		// The driver's own, and the popups of the address bar: those are pages too, and
		// each new window starts a process for them.
		chromedp.Flag("disable-features", "Translate,BlinkGenPropertyTrees,WebUIOmniboxPopup,WebUIOmniboxAimPopup,WebUIOmniboxFullPopup"),
		// The tabs of a phone share a process, as they do where memory is short,
		// and with it the compiled program, as long as one of them is open.
		chromedp.Flag("process-per-site", true),
		chromedp.Flag("js-flags", compiler),
		chromedp.Flag("lang", lang),
		chromedp.Flag("accept-lang", lang),
	)
	allocator, stopAll := chromedp.NewExecAllocator(context.Background(), append(options, more...)...)
	ctx, cancel := chromedp.NewContext(allocator)
	return ctx, func() {
		cancel()
		stopAll()
	}
}

// shared starts the browser of all phones of NewPhone, once. TestMain stops it.
var (
	shared     = sync.OnceValues(startShared)
	stopShared = func() {}
)

func startShared() (context.Context, error) {
	ctx, stop := newBrowser("en-US")
	stopShared = stop
	return ctx, chromedp.Do(ctx)
}
