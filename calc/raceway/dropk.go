package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// ResistivityOf returns the K of a conductor: its direct-current resistance by
// length times its area, at 75 °C. Errors: no such size; a build that the size
// is not tabulated in; no such material.
//
// Method: raceway.resistivity.
func ResistivityOf(size WireSize, build Build, material Material) (unit.Resistivity, error) {
	p, err := PropertyOf(size, build)
	if err != nil {
		return 0, err
	}
	switch material {
	case Copper:
		return unit.Resistivity(p.Copper) * unit.Resistivity(p.Area), nil
	case Aluminum:
		return unit.Resistivity(p.Aluminum) * unit.Resistivity(p.Area), nil
	}
	return 0, limit.Break("material", limit.NotTabulated)
}

// ResistanceOf returns the direct-current resistance by length of a conductor of
// an area of metal. Errors: an input not above zero.
//
// Method: raceway.resistivity.
func ResistanceOf(k unit.Resistivity, area unit.Area) (unit.LineImpedance, error) {
	if err := limit.First(limit.Positive("k", k), limit.Positive("area", area)); err != nil {
		return 0, err
	}
	return limit.Result(unit.LineImpedance(float64(k) / float64(area)))
}

// VoltageDropByK returns the drop between lines by direct-current resistance
// alone: √3·K·I·L/A for three phases, 2·K·I·L/A for one, L one way. It leaves
// reactance and power factor out: against [VoltageDrop] it is high for small
// wire at a motor's power factor and low for large wire. Errors: current or
// length below zero; k or area not above zero; no such supply.
//
// Method: raceway.drop.k.
func VoltageDropByK(phases Phases, current unit.Current, length unit.Length, k unit.Resistivity, area unit.Area) (unit.Voltage, error) {
	n, err := phases.lines()
	if err := limit.First(err, limit.NonNegative("current", current), limit.NonNegative("length", length),
		limit.Positive("k", k), limit.Positive("area", area)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Voltage(n * float64(current) * float64(length) * (float64(k) / float64(area))))
}

// AreaForDrop returns the area of metal at which [VoltageDropByK] is a given
// drop. Errors: an input not above zero; no such supply.
//
// Method: raceway.drop.k.
func AreaForDrop(phases Phases, current unit.Current, length unit.Length, k unit.Resistivity, drop unit.Voltage) (unit.Area, error) {
	n, err := phases.lines()
	if err := limit.First(err, limit.Positive("current", current), limit.Positive("length", length),
		limit.Positive("k", k), limit.Positive("drop", drop)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Area(n * float64(current) * float64(length) * (float64(k) / float64(drop))))
}

// A Coefficient is how much a resistance rises by kelvin, as a part of what it
// is at a base temperature.
type Coefficient float64

// Coefficients at the 75 °C of Tables 8 and 9: Table 8, note 2 (memory).
const (
	CopperAt75   Coefficient = 0.00323
	AluminumAt75 Coefficient = 0.00330
)

// ResistanceAt returns a resistance at another temperature than the base one
// that it and its coefficient are given for: R·(1 + α·(t − base)). Errors: a
// resistance or a coefficient below zero; a temperature not above absolute zero;
// so far below base that no resistance is left.
//
// Method: raceway.resistance.temperature.
func ResistanceAt(resistance unit.LineImpedance, coefficient Coefficient, base, t unit.Temperature) (unit.LineImpedance, error) {
	if err := limit.First(limit.NonNegative("resistance", resistance), limit.NonNegative("coefficient", coefficient),
		limit.Positive("base", base), limit.Positive("t", t)); err != nil {
		return 0, err
	}
	factor := 1 + float64(coefficient)*float64(t-base)
	if factor <= 0 {
		return 0, limit.Break("t", limit.OutOfRange)
	}
	return limit.Result(resistance * unit.LineImpedance(factor))
}
