//go:build e2e

package e2e

import (
	"context"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// A Phone is a browser with a fresh profile and a small screen, and the server
// of the site it looks at.
type Phone struct {
	Site *Server

	t       *testing.T
	ctx     context.Context // the browser
	lang    string
	offline bool
	tabs    []*Tab
}

// NewPhone makes a phone set to American English, and serves dist/ to it. Its
// browser is one process for all of them, in which each has a profile of its own.
func NewPhone(t *testing.T) *Phone {
	t.Helper()
	browser, err := shared()
	if err != nil {
		t.Fatal("starting the browser: ", err)
	}
	ctx, cancel := chromedp.NewContext(browser, chromedp.WithNewBrowserContext())
	return newPhone(t, NewServer(t, dist), "en-US", ctx, cancel)
}

// NewPhoneIn starts a browser set to a language, and serves dist/ to it.
func NewPhoneIn(t *testing.T, lang string) *Phone {
	t.Helper()
	return startPhone(t, NewServer(t, dist), lang)
}

// startPhone starts a browser for this phone alone.
func startPhone(t *testing.T, site *Server, lang string, more ...chromedp.ExecAllocatorOption) *Phone {
	t.Helper()
	ctx, stop := newBrowser(lang, more...)
	return newPhone(t, site, lang, ctx, stop)
}

func newPhone(t *testing.T, site *Server, lang string, ctx context.Context, stop func()) *Phone {
	t.Helper()
	p := &Phone{Site: site, t: t, ctx: ctx, lang: lang}
	t.Cleanup(func() {
		p.finish()
		stop()
	})
	if err := chromedp.Do(ctx); err != nil {
		t.Fatal("starting the browser: ", err)
	}
	return p
}

// Open opens a path of the site cold, in a new tab, and waits until the program
// shows its page.
func (p *Phone) Open(path string) *Tab {
	p.t.Helper()
	tab := p.NewTab()
	tab.Go(path)
	return tab
}

// Hold keeps a tab of the site open, and with it the compiled program, for a test
// that opens many.
func (p *Phone) Hold() {
	p.t.Helper()
	p.Open("/settings/").AwaitInstalled()
}

// NewTab opens an empty tab.
func (p *Phone) NewTab() *Tab {
	p.t.Helper()
	ctx, cancel := chromedp.NewContext(p.ctx)
	tab := &Tab{p: p, t: p.t, ctx: ctx, cancel: cancel}
	p.attach(tab)
	tab.do("preparing a tab",
		chromedp.EmulateViewport(360, 740, chromedp.EmulateScale(2), chromedp.EmulateMobile, chromedp.EmulateTouch),
		// Keys go to the tab that is asked, whichever the browser has in front.
		command(emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true}))
	if p.offline {
		tab.setOffline(true)
	}
	return tab
}

func (p *Phone) attach(tab *Tab) {
	p.t.Helper()
	if err := chromedp.Listen(tab.ctx, tab.hear); err != nil {
		p.t.Fatal(err)
	}
	p.tabs = append(p.tabs, tab)
}

// Offline takes the server away and tells every tab that there is no network.
func (p *Phone) Offline() {
	p.t.Helper()
	p.Site.Stop()
	p.setOffline(true)
}

// Online brings the server and the network back.
func (p *Phone) Online() {
	p.t.Helper()
	p.Site.Start()
	p.setOffline(false)
}

func (p *Phone) setOffline(offline bool) {
	p.offline = offline
	for _, tab := range p.tabs {
		if !tab.closed {
			tab.setOffline(offline)
		}
	}
}

func (t *Tab) setOffline(offline bool) {
	t.t.Helper()
	t.do("setting the network", command(network.OverrideNetworkState, network.OverrideNetworkStateParams{
		Offline: offline, DownloadThroughput: -1, UploadThroughput: -1,
	}))
}

// finish keeps what helps to understand a failure, and holds every tab to a
// clean console.
func (p *Phone) finish() {
	for _, tab := range p.tabs {
		tab.judge()
	}
	if p.t.Failed() {
		for i, tab := range p.tabs {
			tab.keep(i)
		}
	}
}
