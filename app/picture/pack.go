package picture

import "math"

// A disc is one conductor in a raceway's section: lengths in radii of the
// raceway, from its middle, up positive.
type disc struct {
	at   spot
	r    float64
	wire int // of which row
}

// MostDrawn is how many conductors a section shows; more would be dots.
const MostDrawn = 40

// pack lays discs into the raceway as they would lie there: the largest first,
// each as low as it goes. What finds no room that way is returned apart.
func pack(discs []disc) (in, out []disc) {
	for _, d := range discs {
		if at, ok := lowest(in, d.r); ok {
			d.at = at
			in = append(in, d)
		} else {
			out = append(out, d)
		}
	}
	return in, out
}

// slackness is by how much two discs may seem to overlap: rounding.
const slackness = 1e-6

// lowest returns the lowest place for a disc of radius r among others: at the
// bottom, against the wall and one of them, or against two.
func lowest(in []disc, r float64) (spot, bool) {
	room := 1 - r
	if room < 0 {
		return spot{}, false
	}
	best, found := spot{}, false
	try := func(p spot) {
		if found && !lower(p, best) || math.Hypot(p.x, p.y) > room+slackness {
			return
		}
		for _, d := range in {
			if math.Hypot(p.x-d.at.x, p.y-d.at.y) < r+d.r-slackness {
				return
			}
		}
		best, found = p, true
	}
	try(spot{0, -room})
	for i, d := range in {
		for _, p := range meets(spot{}, room, d.at, r+d.r) {
			try(p)
		}
		for _, e := range in[:i] {
			for _, p := range meets(d.at, r+d.r, e.at, r+e.r) {
				try(p)
			}
		}
	}
	return best, found
}

// lower orders places: by height, then nearer the middle, then left.
func lower(p, q spot) bool {
	switch {
	case math.Abs(p.y-q.y) > slackness:
		return p.y < q.y
	case math.Abs(math.Abs(p.x)-math.Abs(q.x)) > slackness:
		return math.Abs(p.x) < math.Abs(q.x)
	}
	return p.x < q.x
}

// meets returns where two circles cross.
func meets(a spot, ra float64, b spot, rb float64) []spot {
	dx, dy := b.x-a.x, b.y-a.y
	d := math.Hypot(dx, dy)
	if d == 0 || d > ra+rb || d < math.Abs(ra-rb) {
		return nil
	}
	along := (d*d + ra*ra - rb*rb) / (2 * d)
	across := math.Sqrt(max(0, ra*ra-along*along))
	x, y := a.x+along*dx/d, a.y+along*dy/d
	return []spot{{x + across*dy/d, y - across*dx/d}, {x - across*dy/d, y + across*dx/d}}
}
