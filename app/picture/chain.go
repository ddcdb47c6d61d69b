package picture

import (
	"github.com/maxence-charriere/go-app/v10/pkg/app"

	"roofside/calc/unit"
)

// A Chain is the parts between an opening and a conduit, in order and apart, as
// they lie on the bench. Heights are to scale; lengths are not.
type Chain struct {
	Opening Opening
	Links   []Link
	Conduit Tube

	Title, Description     string
	OpeningLabel, EndLabel string
}

// An Opening is what the chain begins at.
type Opening struct {
	Kind   string      // hub, knockout, ring-knockout, fitting or conduit
	Across unit.Length // of its thread or hole
}

// A Link is one part, by the faces of its two sides.
type Link struct {
	Left, Right Face
	Nut         bool // flat, of a thread's size
	Inside      bool // behind the opening's metal, where nothing else is
}

// A Face is how one side of a part is made: male, female, panel or conduit.
type Face struct {
	Kind   string
	Across unit.Length // of its thread, of the hole, or of the conduit
}

// A Tube is the conduit at the end.
type Tube struct {
	Across   unit.Length
	Flexible bool
}

const (
	chainHeight = 156.0
	chainAxis   = 74.0
	tallestPart = 62.0 // the largest diameter drawn
	endWidth    = 46.0
	widest      = 56.0 // of a part
	between     = 8.0
)

// UI draws the chain, or nothing without a size.
func (c Chain) UI() app.UI {
	most := float64(c.Opening.Across)
	for _, l := range c.Links {
		most = max(most, float64(l.Left.Across), float64(l.Right.Across))
	}
	most = max(most, float64(c.Conduit.Across))
	if !drawable(most) {
		return app.Div()
	}
	v := chainView{scale: tallestPart / most}
	n := 0.0
	for _, l := range c.Links {
		if !l.Inside {
			n++
		}
	}
	room := width - 2*endWidth - (n+1)*between
	each := 0.0
	if n > 0 {
		each = min(widest, room/n)
	}
	used := 2*endWidth + n*each + (n+1)*between
	x := (width - used) / 2
	body := []app.UI{v.opening(c.Opening, x)}
	x += endWidth + between
	for i, l := range c.Links {
		if l.Inside {
			const room = endWidth - 12 // left of the metal
			left := (width - used) / 2
			body = append(body, v.link(l, left, room), label("picture-text picture-strong", middle, left+room/2, 12, string(rune('1'+i))))
			continue
		}
		body = append(body, v.link(l, x, each), label("picture-text picture-strong", middle, x+each/2, 12, string(rune('1'+i))))
		x += each + between
	}
	body = append(body, v.tube(c.Conduit, x, x+endWidth),
		path("picture-axis", pen(nil).line(spot{2, chainAxis}, spot{width - 2, chainAxis})),
		label("picture-text", start, 4, chainHeight-6, fitted(c.OpeningLabel, 0.62*width)),
		label("picture-text", end, width-4, chainHeight-6, fitted(c.EndLabel, 0.36*width)))
	return app.Figure().Class("picture").Body(drawing("picture-chain", chainHeight, c.Title, c.Description, body...))
}

type chainView struct{ scale float64 }

// half is half the height of a diameter, never too small to be seen.
func (v chainView) half(across unit.Length) float64 { return max(4, v.scale*float64(across)/2) }

func box4(left, right, half float64) []spot {
	return []spot{{left, chainAxis - half}, {right, chainAxis - half}, {right, chainAxis + half}, {left, chainAxis + half}}
}

// link draws a part: its two sides, and a hexagon's edge between unlike ones.
func (v chainView) link(l Link, x, w float64) app.UI {
	mid := x + w/2
	if l.Nut {
		half := v.half(max(l.Left.Across, l.Right.Across))
		return group(append(v.side(Face{"panel", l.Left.Across}, mid-5, mid+5), path("picture-hidden",
			pen(nil).line(spot{mid - 5, chainAxis - half}, spot{mid + 5, chainAxis - half}).line(spot{mid - 5, chainAxis + half}, spot{mid + 5, chainAxis + half})))...)
	}
	if l.Left.Kind == "panel" && l.Right.Kind == "panel" {
		return group(append(v.side(l.Left, mid-7, mid-2), v.side(l.Right, mid+2, mid+7)...)...)
	}
	if l.Left.Kind == "panel" {
		mid = x + 6
	} else if l.Right.Kind == "panel" {
		mid = x + w - 6
	}
	drawn := append(v.side(l.Left, x, mid), v.side(l.Right, mid, x+w)...)
	if l.Left.Kind != l.Right.Kind && l.Left.Kind != "panel" && l.Right.Kind != "panel" {
		half := 1.25 * max(v.half(l.Left.Across), v.half(l.Right.Across))
		drawn = append(drawn, path("picture-movable", pen(nil).shape(box4(mid-3, mid+3, half)...)))
	}
	return group(drawn...)
}

// side draws one half of a part between two places along the axis; outer is the
// face's own edge.
func (v chainView) side(f Face, left, right float64) []app.UI {
	half := v.half(f.Across)
	switch f.Kind {
	case "male":
		return []app.UI{path("picture-fixed", pen(nil).shape(box4(left, right, half)...)), path("picture-fine", threads(left, right, half))}
	case "panel":
		return []app.UI{path("picture-fixed", pen(nil).shape(box4(left, right, 1.3*half)...))}
	}
	body := path("picture-fixed", pen(nil).shape(box4(left, right, 1.2*half)...))
	inside := path("picture-hidden", pen(nil).line(spot{left, chainAxis - half}, spot{right, chainAxis - half}).line(spot{left, chainAxis + half}, spot{right, chainAxis + half}))
	return []app.UI{body, inside}
}

// threads are the slanted lines of a thread.
func threads(left, right, half float64) pen {
	var p pen
	for x := left + 3; x+2 < right; x += 5 {
		p = p.line(spot{x, chainAxis - half}, spot{x + 2, chainAxis + half})
	}
	return p
}

// opening draws what the chain begins at: a wall with a hole in it, or with a
// thread on it, or a conduit's end.
func (v chainView) opening(o Opening, x float64) app.UI {
	half, right := v.half(o.Across), x+endWidth
	const wall, reach = 7.0, 56.0
	hole := pen(nil).
		shape(spot{right - wall, chainAxis - reach}, spot{right, chainAxis - reach}, spot{right, chainAxis - half}, spot{right - wall, chainAxis - half}).
		shape(spot{right - wall, chainAxis + half}, spot{right, chainAxis + half}, spot{right, chainAxis + reach}, spot{right - wall, chainAxis + reach})
	switch o.Kind {
	case "knockout":
		return path("picture-fixed", hole)
	case "ring-knockout":
		rings := pen(nil).line(spot{right - wall/2, chainAxis - half - 3}, spot{right - wall/2, chainAxis - half - 12}).line(spot{right - wall/2, chainAxis + half + 3}, spot{right - wall/2, chainAxis + half + 12})
		return group(path("picture-fixed", hole), path("picture-hidden", rings))
	case "conduit":
		return v.tube(Tube{Across: o.Across}, x, right)
	case "fitting":
		plate := path("picture-fixed", pen(nil).shape(box4(right-24, right-24+wall, reach)...))
		return group(append([]app.UI{plate}, v.side(Face{"male", o.Across}, right-24+wall, right)...)...)
	}
	plate := path("picture-fixed", pen(nil).shape(box4(right-24, right-24+wall, reach)...))
	return group(append([]app.UI{plate}, v.side(Face{"female", o.Across}, right-24+wall, right)...)...)
}

// tube draws the conduit; a flexible one is corrugated.
func (v chainView) tube(t Tube, left, right float64) app.UI {
	half := v.half(t.Across)
	if !t.Flexible {
		return path("picture-movable", pen(nil).shape(box4(left, right, half)...))
	}
	const turn = 4.0
	var top, bottom []spot
	for i := 0; left+float64(i)*turn <= right; i++ {
		h := half
		if i%2 == 1 {
			h -= 3
		}
		top = append(top, spot{left + float64(i)*turn, chainAxis - h})
		bottom = append([]spot{{left + float64(i)*turn, chainAxis + h}}, bottom...)
	}
	return path("picture-movable", pen(nil).shape(append(top, bottom...)...))
}
