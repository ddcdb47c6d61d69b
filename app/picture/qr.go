package picture

import (
	"strconv"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
	"rsc.io/qr/coding"
)

// QR is a text as a QR code (ISO/IEC 18004), black on white in every look: cameras
// look for it so.
type QR struct {
	Text, Title, Description string
}

const (
	largestQR = 24 // version; a phone shows the modules of a larger one too small
	quiet     = 4  // modules of white on every side, as the standard asks
	module    = 3  // pixels of the page: whole ones, for a reader stumbles over uneven modules
)

// shape returns the least version that holds the text, and the strongest correction
// of errors that this version has room for.
func (q QR) shape() (coding.Version, coding.Level, bool) {
	text := coding.String(q.Text)
	for v := coding.Version(coding.MinVersion); v <= largestQR; v++ {
		for l := coding.H; l >= coding.L; l-- {
			if text.Bits(v) <= 8*v.DataBytes(l) {
				return v, l, true
			}
		}
	}
	return 0, 0, false
}

// Fits tells whether the text goes into a code that a phone reads off another.
func (q QR) Fits() bool {
	_, _, ok := q.shape()
	return ok
}

// UI draws the code, or nothing if the text doesn't fit.
func (q QR) UI() app.UI {
	v, l, ok := q.shape()
	if !ok {
		return app.Div()
	}
	// The standard lets a reader meet any mask. Deflated text is as good as random
	// under each, so that none is looked for.
	plan, err := coding.NewPlan(v, l, 0)
	if err != nil {
		return app.Div()
	}
	code, err := plan.Encode(coding.String(q.Text))
	if err != nil {
		return app.Div()
	}
	n := code.Size + 2*quiet
	side := strconv.Itoa(n)
	return element("svg").Class("picture-qr").Role("img").Attr("viewBox", "0 0 "+side+" "+side).Attr("width", strconv.Itoa(module*n)).Attr("shape-rendering", "crispEdges").Body(
		element("title").Text(q.Title), element("desc").Text(q.Description),
		element("rect").Class("picture-qr-paper").Attr("width", side).Attr("height", side),
		path("picture-qr-ink", modules(code)),
	)
}

// modules draws the black modules, each run along a row as one box.
func modules(code *coding.Code) pen {
	p := make(pen, 0, 8*code.Size*code.Size)
	for y := range code.Size {
		for x := 0; x < code.Size; x++ {
			from := x
			for x < code.Size && code.Black(x, y) {
				x++
			}
			if x > from {
				p = p.to('M', spot{float64(from + quiet), float64(y + quiet)})
				p = strconv.AppendInt(append(p, 'h'), int64(x-from), 10)
				p = strconv.AppendInt(append(p, "v1h"...), int64(from-x), 10)
				p = append(p, 'z')
			}
		}
	}
	return p
}
