package picture

import (
	"cmp"
	"math"
	"slices"

	"github.com/maxence-charriere/go-app/v10/pkg/app"
)

const (
	radius    = 6.0 // of a marker
	sign      = 4.5 // of the same shape beside its label
	tagHeight = 29.0
)

// A box is a part of the drawing that is taken.
type box struct{ left, top, right, bottom float64 }

// overlap is the area that two boxes share.
func (b box) overlap(o box) float64 {
	w, h := min(b.right, o.right)-max(b.left, o.left), min(b.bottom, o.bottom)-max(b.top, o.top)
	if w <= 0 || h <= 0 {
		return 0
	}
	return w * h
}

// sign is where a label that fills b and belongs to a point at s has its sign:
// in its first line, on the side of the point.
func (b box) sign(s spot) spot {
	if b.left+b.right < 2*s.x {
		return spot{b.right, b.top + 8}
	}
	return spot{b.left, b.top + 8}
}

// A tag is a point's label: its name with its sign, and its figures below.
type tag struct {
	Point
	at            spot // the point
	name, figures string
	box           box
}

// tags finds each point's label a place of its own: the nearest one that
// covers no label, no marker, no limit's line and not the curve. Who chooses
// first matters: from above and from below are tried.
func (c Curve) tags(f frame) []tag {
	var taken []box
	for _, l := range c.Limits {
		if plausible(l.Flow) && l.Flow <= f.mostFlow {
			taken = append(taken, box{f.x(l.Flow) - 3, f.top, f.x(l.Flow) + 3, f.bottom})
		}
	}
	var tags []tag
	for _, p := range c.Points {
		if !p.drawable() {
			continue
		}
		t := tag{Point: p, at: spot{f.x(p.Flow), f.y(p.Pressure)}}
		room := 0.62 * (f.right - f.left)
		t.name, t.figures = fitted(p.Label, room-16), fitted(figures(p), room)
		tags = append(tags, t)
		taken = append(taken, box{t.at.x - radius, t.at.y - radius, t.at.x + radius, t.at.y + radius})
	}
	slices.SortStableFunc(tags, func(a, b tag) int { return cmp.Compare(a.at.y, b.at.y) })
	taken = slices.Clip(taken)
	cost := settle(tags, f, taken)
	if cost < float64(len(tags))*tagHeight {
		return tags // all near
	}
	below := slices.Clone(tags)
	slices.Reverse(below)
	if settle(below, f, taken) < cost {
		return below
	}
	return tags
}

// settle places the labels in turn and returns how badly they lie.
func settle(tags []tag, f frame, taken []box) float64 {
	sum := 0.0
	for i := range tags {
		sum += tags[i].place(f, taken)
		taken = append(taken, tags[i].box)
	}
	return sum
}

func figures(p Point) string {
	if p.FlowText == "" || p.PressureText == "" {
		return p.FlowText + p.PressureText
	}
	return p.FlowText + " · " + p.PressureText
}

// place looks beside the point, then ever further away. On the left is better
// than on the right: that is where a system curve leaves room. It returns how
// far away the label is and how much it covers.
func (t *tag) place(f frame, taken []box) float64 {
	w, h := max(extent(t.name)+16, extent(t.figures)), tagHeight
	if t.figures == "" {
		h = tagHeight / 2
	}
	least := math.Inf(1)
	// try reports false if no place further out can be better.
	try := func(left, top float64) bool {
		b := box{left, top, left + w, top + h}
		if b.top < f.top || b.bottom > f.bottom {
			return false
		}
		cost := t.at.distance(b.sign(t.at))
		if cost >= least {
			return false
		}
		if left+w/2 > t.at.x {
			cost += 3
		}
		if b.left < f.left || b.right > width-2 {
			return true
		}
		for i := 0; i < len(taken) && cost < least; i++ {
			if o := b.overlap(taken[i]); o > 0 {
				cost += 500 + o
			}
		}
		if cost < least && f.crosses(b) {
			cost += 500
		}
		if cost < least {
			least, t.box = cost, b
		}
		return true
	}
	// Half a label's height, so that labels of points that coincide stack closely.
	const away, step, stride = radius + 5, tagHeight / 2, 20
	row := func(top float64) {
		for left := t.at.x - away - w; left >= f.left && try(left, top); left -= stride {
		}
		for left := t.at.x + away; left <= width-2-w && try(left, top); left += stride {
		}
	}
	for k := 0.0; k < f.bottom-f.top && k-h/2 < least; k += step {
		row(t.at.y - h/2 - k)
		row(t.at.y - h/2 + k)
	}
	if math.IsInf(least, 1) {
		least = f.right * f.bottom
		left := within(t.at.x-w/2, f.left, width-2-w)
		top := within(t.at.y-away-h, f.top, f.bottom-h)
		t.box = box{left, top, left + w, top + h}
	}
	return least
}

// crosses tells whether the curve runs through a box. It rises, so it passes
// below a box if it is below its right lower corner, and above likewise.
func (f frame) crosses(b box) bool {
	if f.rise == 0 {
		return false
	}
	at := func(x float64) float64 { return f.y(f.pressure((x - f.left) / (f.right - f.left) * f.mostFlow)) }
	return at(b.right) < b.bottom && at(b.left) > b.top
}

func (s spot) distance(o spot) float64 { return math.Sqrt((s.x-o.x)*(s.x-o.x) + (s.y-o.y)*(s.y-o.y)) }

// points draws leaders first, then labels, then markers, so that nothing hides
// a marker; and of those the ring last, for one sees through it.
func (c Curve) points(f frame) []app.UI {
	var leaders pen
	var labels, solid, rings []app.UI
	for _, t := range c.tags(f) {
		near, anchor, sense := t.box.sign(t.at), start, 1.0
		if near.x == t.box.right {
			anchor, sense = end, -1
		}
		if near.distance(t.at) > radius+10 {
			leaders = leaders.line(t.at, near)
		}
		labels = append(labels,
			t.marker(spot{near.x + sense*6, near.y}, sign),
			label("picture-text picture-strong", anchor, near.x+sense*15, t.box.top+12, t.name),
			label("picture-text", anchor, near.x, t.box.top+26, t.figures),
		)
		if m := t.marker(t.at, radius); t.class() == "found" {
			rings = append(rings, m)
		} else {
			solid = append(solid, m)
		}
	}
	drawn := []app.UI{group(labels...), group(solid...), group(rings...)}
	if len(leaders) > 0 {
		drawn = append([]app.UI{path("picture-leader", leaders)}, drawn...)
	}
	return drawn
}
