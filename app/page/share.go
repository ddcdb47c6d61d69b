package page

import (
	"strings"

	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/app/picture"
	"roofside/app/widget"
	"roofside/calc/record"
)

// sharing hands the open fan to another device: as a short link, which another phone
// can read off this one, and as a link that a person can read and change, for
// bookmarks and pages that preset one of ours.
func (b *bench) sharing(route string) app.UI {
	return b.section("share", b.T("share.title"), "", func() app.UI {
		short, out, tooLong := b.shortLink(route)
		plain, _ := b.plainLink(route)
		return app.Div().Class("share").Body(
			app.P().Class("field-note").Text(b.T("share.private")),
			app.Div().Class("row").Body(
				widget.Button("copy short", b.T("share.short"), "", b.guarded(func() {
					if link, _, err := b.shortLink(route); err == nil {
						b.copyLink(link)
					}
				})),
				widget.Button("copy link", b.T("share.plain"), "", b.guarded(func() {
					if link, ok := b.plainLink(route); ok {
						b.copyLink(link)
					}
				})),
			),
			app.Div().Role("status").Body(app.If(b.link != "" && (b.link == short || b.link == plain), func() app.UI {
				return app.Input().Type("text").Class("field-input").Name("link").ReadOnly(true).Aria("label", b.T("share.is")).Value(b.link)
			})),
			app.Div().Body(app.If(tooLong != nil, func() app.UI {
				return app.P().Class("field-note error").Text(b.T("share.long"))
			}).Else(func() app.UI {
				return app.P().Class("field-note").Text(b.T("share.length", "n", b.Locale.WriteFixed(float64(len(short)), 0)))
			})),
			app.Div().Body(app.If(len(out) > 0, func() app.UI {
				return app.P().Class("field-note").Text(b.T("share.out", "places", b.names(out), "n", b.Locale.WriteFixed(record.LongestSharedNote, 0)))
			})),
			app.Div().Body(app.If(tooLong == nil, func() app.UI { return b.code(short) })),
		)
	})
}

// code shows a link as a QR code once it is asked for.
func (b *bench) code(link string) app.UI {
	open := b.open["qr"]
	return app.Div().Class("qr").Body(
		widget.Button("qr", b.T("share.qr"), "", b.guarded(b.openCode)).Aria("expanded", boolean(open)),
		app.Div().Body(app.If(open, func() app.UI { return b.memo("qr", func() app.UI { return b.drawCode(link) }, link, b.words.Tag) })),
	)
}

// openCode opens or closes the code. A camera is to see the whole of it.
func (b *bench) openCode() {
	if b.open["qr"] = !b.open["qr"]; b.open["qr"] && b.live {
		b.ctx.Defer(func(app.Context) {
			if e := app.Window().GetElementByID("code"); e.Truthy() {
				e.Call("scrollIntoView", map[string]any{"block": "center"})
			}
		})
	}
}

func (b *bench) drawCode(link string) app.UI {
	q := picture.QR{Text: link, Title: b.T("share.qr"), Description: b.T("share.length", "n", b.Locale.WriteFixed(float64(len(link)), 0))}
	if !q.Fits() {
		return app.P().Class("field-note error").Text(b.T("share.qr.large"))
	}
	return app.Figure().Class("picture").ID("code").Body(q.UI(), app.FigCaption().Class("field-note").Text(b.T("share.qr.scan")))
}

// names lists places within a sentence.
func (b *bench) names(keys []string) string {
	var names []string
	for _, k := range keys {
		names = append(names, question(b.full(k)))
	}
	return strings.Join(names, ", ")
}

// shortLink returns the packed link of the open fan and the keys of what it leaves
// out.
func (b *bench) shortLink(route string) (string, []string, error) {
	part, out, err := b.Fan.Pack()
	return address(route) + "#" + part, out, err
}

// plainLink returns the link that can be read, unless its reader would refuse it.
func (b *bench) plainLink(route string) (string, bool) {
	fragment := b.Fan.Fragment()
	return address(route) + "#" + fragment, len(fragment) <= record.LongestLink
}

// address returns the whole address of a page.
func address(route string) string {
	if app.IsServer {
		return href(route)
	}
	return app.Window().Get("location").Get("origin").String() + href(route)
}

// copyLink gives a link through the clipboard, and shows it, for some browsers have
// none for this page.
func (b *bench) copyLink(link string) {
	b.link = link
	clipboard(link)
}

// clipboard takes a text, where the browser has one for this page.
func clipboard(text string) {
	if c := app.Window().Get("navigator").Get("clipboard"); c.Truthy() {
		c.Call("writeText", text)
	}
}
