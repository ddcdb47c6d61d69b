//go:build e2e

package e2e

import (
	"encoding/base64"
	"fmt"
	"image"
	"image/png"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"roofside/calc/record"
)

// completeFan is an invented fan with every page filled in, as a link.
func completeFan(t *testing.T) string {
	t.Helper()
	var parts []string
	for key, text := range completeTexts(t) {
		parts = append(parts, key+"="+url.PathEscape(text))
	}
	return "#" + strings.Join(parts, "&")
}

// halved reads a screenshot and gives its pixels at half the size, as RGBA.
func halved(t *testing.T, file string) (pixels []byte, width, height int) {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	shot, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	at := func(x, y, channel int) int {
		r, g, b, _ := shot.At(x, y).RGBA()
		return int([]uint32{r, g, b}[channel] >> 8)
	}
	small := image.NewRGBA(image.Rect(0, 0, shot.Bounds().Dx()/2, shot.Bounds().Dy()/2))
	for y := range small.Rect.Dy() {
		for x := range small.Rect.Dx() {
			p := small.Pix[small.PixOffset(x, y):]
			for c := range 3 {
				p[c] = byte((at(2*x, 2*y, c) + at(2*x+1, 2*y, c) + at(2*x, 2*y+1, c) + at(2*x+1, 2*y+1, c)) / 4)
			}
			p[3] = 255
		}
	}
	return small.Pix, small.Rect.Dx(), small.Rect.Dy()
}

// scratch returns what the scratch record holds, as it is kept.
func (t *Tab) scratch() string {
	t.t.Helper()
	return Eval[string](t, `Object.entries(localStorage).filter(([k]) => k.endsWith("scratch")).map(([, v]) => v).join()`)
}

// Another phone reads a complete fan off the screen of this one, with no signal. The
// screenshot is scaled to half: a camera sees no better.
func TestAnotherPhoneReadsTheFanOffThisOne(t *testing.T) {
	t.Parallel()
	decoder, err := os.ReadFile(filepath.Join(top, ".build/jsqr/jsQR.js"))
	if err != nil {
		t.Fatal(err, "; app/e2e/install-jsqr brings it")
	}
	sender := NewPhone(t)
	tab := sender.Open("/drive/" + completeFan(t))
	for _, look := range []string{"dark", "light"} {
		tab.Go("/drive/?look=" + look)
		tab.open("share")
		tab.Click(`button[name="qr"]`)
		tab.Await(`document.querySelector(".picture-qr")`)
		tab.Rest()
		tab.Shoot("share-" + look)
	}
	if side := Eval[int](tab, `+document.querySelector(".picture-qr").getAttribute("viewBox").split(" ")[2]`); side > 4*24+17+2*4 {
		t.Errorf("%d modules with the quiet zone are more than version 24 has", side)
	}
	kept, move := tab.scratch(), tab.outputText("move")

	reader := sender.Open("/sources/")
	Eval[bool](reader, "(() => { "+string(decoder)+"; return true; }).call(window)")
	link := ""
	for _, look := range []string{"dark", "light"} {
		pixels, width, height := halved(t, filepath.Join(top, ".build", "share-"+look+".png"))
		if width != 360 {
			t.Fatalf("half the screenshot is %d wide", width)
		}
		link = Eval[string](reader, fmt.Sprintf(`(() => {
			const pixels = Uint8ClampedArray.from(atob(%q), (c) => c.charCodeAt(0));
			return jsQR(pixels, %d, %d)?.data ?? "";
		})()`, base64.StdEncoding.EncodeToString(pixels), width, height))
		if !strings.HasPrefix(link, sender.Site.URL+"/drive/#z1=") {
			t.Fatalf("in %s look the code says %q", look, link)
		}
	}
	t.Logf("a link of %d characters was read", len(link))
	if len(link) > 1100 {
		t.Errorf("the link has %d characters", len(link))
	}

	receiver := NewPhone(t)
	receiver.Site = sender.Site
	first := receiver.Open("/")
	first.AwaitInstalled()
	first.Close()
	receiver.Offline()
	there := receiver.NewTab()
	there.Visit(link)
	there.AwaitMounted()
	there.Await(`location.hash === ""`)
	if got := there.outputText("move"); got != move {
		t.Errorf("the other phone says %q, this one %q", got, move)
	}
	if got := there.scratch(); got != kept || len(kept) < 5000 {
		t.Errorf("the other phone holds\n%s\nthis one\n%s", got, kept)
	}
	there.Shoot("share-read")
}

// The short link is copied as it is shown, and a link cut short is refused whole.
func TestTheShortLinkIsCopied(t *testing.T) {
	t.Parallel()
	p := NewPhone(t)
	tab := p.Open("/drive/#old.motor-speed=1750rpm&old.motor-sheave=3.4in&old.fan-sheave=8.6in")
	tab.open("share")
	tab.Click(`button[name="copy short"]`)
	tab.Await(`document.querySelector('input[name="link"]')`)
	link := Eval[string](tab, `document.querySelector('input[name="link"]').value`)
	tab.Click(`button[name="copy link"]`)
	tab.Await(`document.querySelector('input[name="link"]').value.includes("#old.motor-speed=1750%20rpm&")`)

	other := p.Open(strings.TrimPrefix(link, p.Site.URL))
	other.AwaitValue("old.fan-speed", 1750*3.4/8.6, 1e-9, "rpm")
	cut := p.Open(strings.TrimPrefix(link[:len(link)-6], p.Site.URL))
	cut.AwaitText(".notice", "z1: cut short or altered; nothing of it is used")
	cut.AwaitNoValue("old.fan-speed")
}

// A packed link that is opened on a filled scratch record replaces nothing: what was
// there is kept as a fan.
func TestAPackedLinkReplacesNothing(t *testing.T) {
	t.Parallel()
	f := record.NewFan()
	if p := f.Apply(map[string]string{"name": "From afar", "old.motor-speed": "1150 rpm"}); p != nil {
		t.Fatal(p)
	}
	part, _, err := f.Pack()
	if err != nil {
		t.Fatal(err)
	}
	p := NewPhone(t)
	mine := p.Open("/drive/#name=Mine")
	mine.AwaitText(".fan-name", "Mine")
	mine.open("old")
	mine.Type("old.motor-speed", "1750")
	mine.Close()
	tab := p.Open("/drive/#" + part)
	tab.AwaitText(".fan-name", "From afar")
	tab.Click(`.tabs a[href="/"]`)
	tab.Await(`[...document.querySelectorAll(".fan strong")].map((f) => f.textContent).join() === "Mine"`)
	tab.Click(`.fan button`)
	tab.Go("/drive/")
	tab.open("old")
	if got := tab.FieldText("old.motor-speed"); got != "1750" {
		t.Errorf("its motor's speed is %q", got)
	}
}
