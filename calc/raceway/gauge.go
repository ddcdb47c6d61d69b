package raceway

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// gauge returns the number of an AWG size: 0 for 1/0, -1 for 2/0 and so on.
func (w WireSize) gauge() int {
	return [...]int{18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3}[w.rank()]
}

// GaugeDiameter returns the diameter of a solid wire of an AWG size by its
// definition: 0.005 in · 92^((36 − n)/39). Errors: no such size.
//
// Method: raceway.gauge.
func GaugeDiameter(size WireSize) (unit.Length, error) {
	if size.rank() < 0 {
		return 0, limit.Break("size", limit.NotTabulated)
	}
	return 0.005 * unit.Inch * unit.Length(math.Pow(92, float64(36-size.gauge())/39)), nil
}

// GaugeArea returns the area of a solid wire of an AWG size by its definition.
// The code's table rounds it. Errors: no such size.
//
// Method: raceway.gauge.
func GaugeArea(size WireSize) (unit.Area, error) {
	d, err := GaugeDiameter(size)
	return circle(d), err
}

// A MetricWire is a conductor size of IEC 60228. Its area names a class of
// resistance and is no measured area; no AWG size equals one.
type MetricWire struct {
	Area       unit.Area
	Resistance unit.LineImpedance // most, of plain copper at 20 °C
	Known      source.Known
}

var metricWires = table("metric", "area,resistance,known", func(r *record) MetricWire {
	return MetricWire{
		unit.Area(r.number("area")) * unit.SquareMillimeter,
		unit.LineImpedance(r.number("resistance")) * unit.OhmPerKilometer, r.known("known"),
	}
})

// MetricWires returns every tabulated size, smallest first.
func MetricWires() []MetricWire { return append([]MetricWire(nil), metricWires()...) }

// NearestMetric returns the metric sizes about an area: the nearest by ratio,
// and the smallest not below it. Errors: area not above zero; beyond the table.
//
// Method: raceway.metric.
func NearestMetric(area unit.Area) (nearest, atLeast MetricWire, err error) {
	if err := limit.Positive("area", area); err != nil {
		return MetricWire{}, MetricWire{}, err
	}
	best := math.Inf(1)
	for _, w := range metricWires() {
		if far := math.Abs(math.Log(float64(w.Area / area))); far < best {
			nearest, best = w, far
		}
		if atLeast.Area == 0 && w.Area >= area*(1-slack) {
			atLeast = w
		}
	}
	if atLeast.Area == 0 {
		return MetricWire{}, MetricWire{}, limit.Break("area", NoSizeFits)
	}
	return nearest, atLeast, nil
}
