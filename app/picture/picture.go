// Package picture draws the trade's things as SVG: a sheave in section, a
// system curve with its operating points, three legs around their average. Figures and words come in ready-made;
// what is computed here is where to put the ink.
//
// Drawings are built from elements and not from raw markup, because an element
// can't be broken open by a user's text and because only the attributes that
// changed are then sent to the browser.
//
// Coordinates are those of a drawing 320 wide, the room a phone leaves, so that
// on a phone a unit is about a pixel.
package picture

import (
	"math"
	"strconv"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

const (
	width    = 320.0
	fontSize = 12.0
)

// Anchors of a text: the end of it that stands at its place.
const (
	start  = "start"
	middle = "middle"
	end    = "end"
)

func element(tag string) app.HTMLElem {
	return app.Elem(tag).XMLNS("http://www.w3.org/2000/svg")
}

// drawing is the outer svg element. Its title is its name and its desc its
// description for those who can't see it.
func drawing(class string, height float64, title, description string, body ...app.UI) app.UI {
	body = append([]app.UI{element("title").Text(title), element("desc").Text(description)}, body...)
	return element("svg").Class("picture-drawing", class).Role("img").
		Attr("viewBox", "0 0 "+number(width)+" "+number(height)).
		Attr("font-size", number(fontSize)).Body(body...)
}

func group(body ...app.UI) app.UI { return element("g").Body(body...) }

func path(class string, p pen) app.UI {
	return element("path").Class(class).Attr("d", string(p))
}

func label(class, anchor string, x, y float64, text string) app.UI {
	t := element("text").Class(class).Attr("x", number(x)).Attr("y", number(y)).Text(text)
	if anchor != start {
		t = t.Attr("text-anchor", anchor)
	}
	return t
}

func number(x float64) string { return string(digits(nil, x)) }

// digits writes a coordinate to a tenth of a unit: nobody sees less.
func digits(p []byte, x float64) []byte {
	n := int64(math.Round(10 * x))
	if n < 0 {
		p, n = append(p, '-'), -n
	}
	p = strconv.AppendInt(p, n/10, 10)
	if n%10 != 0 {
		p = append(p, '.', byte('0'+n%10))
	}
	return p
}

// A pen writes the d attribute of a path.
type pen []byte

// A spot is a place in a drawing.
type spot struct{ x, y float64 }

func (p pen) to(verb byte, spots ...spot) pen {
	if p == nil {
		p = make(pen, 0, 96)
	}
	p = append(p, verb)
	for i, s := range spots {
		if i > 0 {
			p = append(p, ' ')
		}
		p = digits(p, s.x)
		p = append(p, ' ')
		p = digits(p, s.y)
	}
	return p
}

func (p pen) line(from, to spot) pen { return p.to('M', from).to('L', to) }

func (p pen) shape(spots ...spot) pen {
	return append(p.to('M', spots[0]).to('L', spots[1:]...), 'Z')
}

// extent estimates from above how wide a text is in the system fonts of
// phones. What can't be measured before it is drawn is kept apart by this.
func extent(text string) float64 {
	w := 0.0
	for _, r := range text {
		switch {
		case r == ' ' || r == '.' || r == ',' || r == ':' || r == '·' || r == 'i' || r == 'l' || r == '\u00a0' || r == '\u202f':
			w += 0.34
		case r == 'm' || r == 'w' || r == 'M' || r == 'W' || r == '%' || r == '→':
			w += 0.95
		case r < 0x1100:
			w += 0.62
		default:
			w += 1.05
		}
	}
	return w * fontSize
}

// fitted shortens a text to the room there is for it.
func fitted(text string, room float64) string {
	if extent(text) <= room {
		return text
	}
	runes := []rune(text)
	for len(runes) > 0 && extent(string(runes))+fontSize > room {
		runes = runes[:len(runes)-1]
	}
	return string(runes) + "…"
}
