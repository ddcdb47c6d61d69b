package picture

import (
	"math"

	"roofside/calc/unit"
)

// A section is a sheave cut through its axis: lengths in meters, x along the
// shaft from where the flanges meet when closed, r away from the axis.
type section struct {
	slope       float64 // of a flange's face: x gained per r
	apex        float64 // where the closed faces meet
	bore        float64 // of the movable flange, on the fixed one's barrel
	rim         float64
	shaft       float64
	gap, most   float64 // between the flanges, at this setting and at the most open
	pitch       float64 // the belt's pitch radius
	above       float64 // from the belt's pitch line to its top
	below       float64 // and to its bottom
	half        float64 // the belt's half width at its pitch line
	thin, thick float64 // of a flange at its rim and at its collar
	collar      float64 // a collar's outer radius
	left, right float64 // ends of the sheave along the shaft
}

// A belt of the commonest section, for a drawing whose belt is not known.
const (
	usualWidth = unit.Inch / 2
	usualDepth = unit.Inch * 5 / 16
	usualAngle = 36 * unit.Degree
)

// section lays the sheave out. It reports false if there is nothing to draw.
func (s Sheave) section() (section, bool) {
	closed, open, pitch := float64(s.Closed)/2, float64(s.Open)/2, float64(s.Pitch)/2
	if !drawable(closed) || !drawable(open) || !drawable(pitch) || open > closed {
		return section{}, false
	}
	angle := within(float64(orUsual(s.Angle, usualAngle)), 20*float64(unit.Degree), 60*float64(unit.Degree))
	belt := min(float64(orUsual(s.BeltWidth, usualWidth)), 0.6*closed)
	depth := min(float64(orUsual(s.BeltDepth, usualDepth)), 0.36*closed, belt)

	c := section{slope: math.Tan(angle / 2), above: 0.3 * depth, below: 0.7 * depth}
	c.pitch = within(pitch, 0.3*closed, 1.15*closed)
	open = min(open, c.pitch) // past the usual opening the flange goes further
	c.apex = closed - belt/2/c.slope + c.above
	c.bore = max(min(c.apex, open-c.below)-0.02*closed, 0.2*closed)
	c.apex = max(c.apex, c.bore)
	c.half = (closed - c.apex) * c.slope
	c.gap = 2 * c.slope * max(0, closed-c.pitch)
	c.most = 2 * c.slope * (closed - open)
	c.rim = closed + c.above + 0.02*closed
	c.shaft = min(0.5*c.bore, 0.25*closed)
	c.thin, c.thick = 0.05*closed, 0.13*closed
	c.collar = c.bore + 0.2*(c.rim-c.bore)
	c.left = -c.back(c.collar) - 0.2*closed
	c.right = c.most + c.back(c.collar) + 0.36*closed
	return c, true
}

// face is how far a flange's face stands from the plane where the closed
// flanges meet.
func (c section) face(r float64) float64 { return max(0, r-c.apex) * c.slope }

// back is how far the flange's back stands from that plane, at its collar.
func (c section) back(r float64) float64 { return c.face(r) + c.thick }

// fixed is the outline of the fixed flange, with the barrel that carries the
// movable one.
func (c section) fixed() []spot {
	return []spot{
		{0, c.bore}, {0, c.apex}, {-c.face(c.rim), c.rim}, {-c.face(c.rim) - c.thin, c.rim},
		{-c.back(c.collar), c.collar}, {c.left, c.collar}, {c.left, c.shaft}, {c.right, c.shaft}, {c.right, c.bore},
	}
}

// movable is the outline of the movable flange with its collar.
func (c section) movable() []spot {
	end := c.gap + c.right - c.most - 0.06*c.rim
	return []spot{
		{c.gap, c.bore}, {c.gap, c.apex}, {c.gap + c.face(c.rim), c.rim}, {c.gap + c.face(c.rim) + c.thin, c.rim},
		{c.gap + c.back(c.collar), c.collar}, {end, c.collar}, {end, c.bore},
	}
}

// screw is the set screw in the movable flange's collar.
func (c section) screw() []spot {
	end := c.gap + c.right - c.most - 0.06*c.rim
	middle := (c.gap + c.back(c.collar) + end) / 2
	w := (end - c.gap - c.back(c.collar)) / 5
	return []spot{{middle - w, c.bore}, {middle - w, c.collar}, {middle + w, c.collar}, {middle + w, c.bore}}
}

// belt is the belt's outline, midway between the flanges.
func (c section) belt() []spot {
	top, bottom := c.half+c.above*c.slope, max(0, c.half-c.below*c.slope)
	x := c.gap / 2
	return []spot{
		{x - top, c.pitch + c.above}, {x + top, c.pitch + c.above},
		{x + bottom, c.pitch - c.below}, {x - bottom, c.pitch - c.below},
	}
}

// cord is the belt's pitch line within it.
func (c section) cord() []spot {
	return []spot{{c.gap/2 - c.half, c.pitch}, {c.gap/2 + c.half, c.pitch}}
}

// drawable tells a size that some sheave could have: a wild one would draw
// nothing but rounding.
func drawable(r float64) bool { return r >= 1e-3 && r <= 10 }

func within(x, low, high float64) float64 { return max(low, min(high, x)) }

func orUsual[Q ~float64](q, usual Q) Q {
	if q > 0 && float64(q) < math.MaxFloat64 {
		return q
	}
	return usual
}
