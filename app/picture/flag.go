package picture

import (
	"cmp"
	"slices"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

// A flag is a limit's label above the plot, where no point's label comes. Rows
// count upward from the plot. One further out than the plot reaches has no
// line, but an arrow.
type flag struct {
	Limit
	text   string
	x      float64
	anchor string
	beyond bool
	row    int
}

const (
	rowHeight = 17.0
	headroom  = 20.0 // for what the vertical axis is
)

// flags hangs each label to the left of its line, the leftmost lowest: so no
// line runs through a label.
func (c Curve) flags(f frame) []flag {
	var flags []flag
	for _, l := range c.Limits {
		if !plausible(l.Flow) {
			continue
		}
		g := flag{Limit: l, x: f.x(l.Flow), anchor: end, text: fitted(l.Label, width-24)}
		switch {
		case l.Flow > f.mostFlow:
			g.beyond, g.x, g.text = true, f.right, fitted(l.Label, width-40)+" →"
		case g.x-extent(g.text) < 2:
			g.anchor = start
			if g.x+extent(g.text) > width-2 {
				g.x, g.anchor = width-2, end
			}
		}
		flags = append(flags, g)
	}
	slices.SortStableFunc(flags, func(a, b flag) int { return cmp.Compare(a.Flow, b.Flow) })
	for i := 1; i < len(flags); i++ {
		flags[i].row = flags[i-1].row + 1
		if low, _ := flags[i].span(); low > flags[i-1].rightmost()+fontSize {
			flags[i].row = flags[i-1].row
		}
	}
	return flags
}

func (g flag) span() (low, high float64) {
	if g.anchor == start {
		return g.x, g.x + extent(g.text)
	}
	return g.x - extent(g.text), g.x
}

func (g flag) rightmost() float64 { _, high := g.span(); return high }

// drop is how far down the plot begins.
func (f frame) drop(flags []flag) float64 {
	if len(flags) == 0 {
		return headroom
	}
	return 4 + headroom + float64(flags[len(flags)-1].row+1)*rowHeight
}

func (c Curve) limits(f frame, flags []flag) []app.UI {
	var drawn []app.UI
	for _, g := range flags {
		class := "picture-watch"
		if g.Class == "stop" {
			class = "picture-stop"
		}
		floor := f.top - headroom - float64(g.row)*rowHeight
		x := g.x
		if !g.beyond {
			x = f.x(g.Flow)
			drawn = append(drawn, path("picture-limit "+class, pen(nil).line(spot{x, floor - rowHeight + 3}, spot{x, f.bottom})))
		}
		inset := 4.0
		if g.anchor == end {
			inset = -4
		}
		drawn = append(drawn, label("picture-text picture-strong "+class+"-text", g.anchor, g.x+inset, floor-5, g.text))
	}
	return drawn
}
