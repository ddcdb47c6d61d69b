package picture

import "math"

const (
	plotHeight = 204.0
	footHeight = 38.0
)

// A frame is the plot's place in the drawing and its scales.
type frame struct {
	left, right, top, bottom float64

	mostFlow, mostPressure float64   // at the right and the upper edge
	flows, pressures       []float64 // ticks

	through Point   // the system curve goes through it
	rise    float64 // 1 if there is a curve, else 0
}

const (
	margin = 1.07 // beyond the largest airflow shown
	above  = 1.18 // beyond the largest pressure: the upper points' labels need room
	// A limit further out than this would squeeze the points together. It is
	// pointed at from the edge.
	reach = 1.6
)

// frame finds scales that show every point, the limits within reach and the
// curve as far as those. It reports false if no point can be drawn.
func (c Curve) frame() (frame, bool) {
	f := frame{right: width - 10}
	for _, p := range c.Points {
		if p.drawable() {
			f.mostFlow, f.mostPressure = max(f.mostFlow, p.Flow), max(f.mostPressure, p.Pressure)
		}
	}
	if f.mostFlow == 0 || f.mostPressure == 0 {
		return frame{}, false
	}
	if p := c.Points[0]; p.drawable() && p.Flow > 0 && p.Pressure > 0 {
		f.through, f.rise = p, 1
	}
	points := f.mostFlow
	for _, l := range c.Limits {
		if plausible(l.Flow) && l.Flow <= reach*points {
			f.mostFlow = max(f.mostFlow, l.Flow)
		}
	}
	f.mostFlow *= margin
	f.mostPressure = above * max(f.mostPressure, min(f.pressure(f.mostFlow), reach*reach*f.mostPressure))
	f.flows, f.pressures = round(f.mostFlow, 4), round(f.mostPressure, 5)

	widest := 0.0
	for _, p := range f.pressures {
		widest = max(widest, extent(c.tick(p)))
	}
	f.left = within(widest+8, 28, 84)
	return f, true
}

// pressure is the system curve's at an airflow.
func (f frame) pressure(flow float64) float64 {
	if f.rise == 0 {
		return 0
	}
	r := flow / f.through.Flow
	return f.through.Pressure * r * r
}

// ends is the airflow at which the curve leaves the frame.
func (f frame) ends() float64 {
	return min(f.mostFlow, f.through.Flow*math.Sqrt(f.mostPressure/f.through.Pressure))
}

func (f frame) x(flow float64) float64 { return f.left + (f.right-f.left)*(flow/f.mostFlow) }
func (f frame) y(pressure float64) float64 {
	return f.bottom - (f.bottom-f.top)*(pressure/f.mostPressure)
}

func (f frame) grid() pen {
	var p pen
	for _, q := range f.flows[1:] {
		p = p.line(spot{f.x(q), f.top}, spot{f.x(q), f.bottom})
	}
	for _, v := range f.pressures[1:] {
		p = p.line(spot{f.left, f.y(v)}, spot{f.right, f.y(v)})
	}
	return p
}

// round returns the multiples of 1, 2 or 5 times a power of ten from 0 up to
// most, about n of them. They are made from whole numbers, so that 0.3 is
// written as such.
func round(most float64, n int) []float64 {
	exponent := int(math.Floor(math.Log10(most / float64(n))))
	step := 10
	for _, s := range []int{5, 2, 1} {
		if float64(s)*math.Pow10(exponent)*float64(n) >= most*0.999 {
			step = s
		}
	}
	var ticks []float64
	for i := 0; ; i += step {
		x := float64(i) * math.Pow10(exponent)
		if exponent < 0 {
			x = float64(i) / math.Pow10(-exponent)
		}
		if x > most {
			return ticks
		}
		ticks = append(ticks, x)
	}
}

// plausible tells a figure that some fan could have in some unit. A wild one
// would draw nothing but rounding.
func plausible(x float64) bool { return x >= 1e-9 && x <= 1e12 }

func (p Point) drawable() bool {
	return (p.Flow == 0 || plausible(p.Flow)) && (p.Pressure == 0 || plausible(p.Pressure))
}
