package airflow

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Standard air, on which fan ratings stand. Dry air at this temperature and
// pressure is really 0.0749 lb/ft³; the trade's round figure is kept.
const (
	StandardDensity  unit.Density     = 0.075 * unit.PoundPerCubicFoot
	StandardPressure unit.Pressure    = 14.696 * unit.PSI
	StandardWarmth   unit.Temperature = (70 + 459.67) / 1.8 // 70 °F
)

// Atmosphere: the pressure and temperature of the standard atmosphere, per foot
// of altitude (memory; against ASHRAE Fundamentals 2017, ch. 1, Table 1, within
// 0.0024 psi to 10 000 ft and 0.15 % at 30 000 ft).
const (
	pressureFall    = 6.8754e-6
	pressureExpo    = 5.2559
	temperatureFall = 0.00356620 // °F
	seaLevelWarmth  = 59         // °F
)

// gasConstant is that of dry air, in ft·lbf/(lb·°R).
const gasConstant = 53.350

// vaporFactor is the molar mass of dry air over that of water (memory).
const vaporFactor = 1.607858

// PressureAt returns the absolute pressure of the standard atmosphere at an
// altitude; weather moves it by 3 %. Meant for −1000 to 36 000 ft. Errors:
// altitude not finite, or above what the formula can take (145 000 ft).
//
// Method: air.pressure.
func PressureAt(altitude unit.Length) (unit.Pressure, error) {
	if err := limit.Finite("altitude", altitude); err != nil {
		return 0, err
	}
	base := 1 - pressureFall*altitude.In(unit.Foot)
	if base <= 0 {
		return 0, limit.Break("altitude", limit.OutOfRange)
	}
	return limit.Result(StandardPressure * unit.Pressure(math.Pow(base, pressureExpo)))
}

// TemperatureAt returns the temperature of the standard atmosphere at an
// altitude: a reference, not a forecast. Range and errors as [PressureAt].
//
// Method: air.pressure.
func TemperatureAt(altitude unit.Length) (unit.Temperature, error) {
	if _, err := PressureAt(altitude); err != nil {
		return 0, err
	}
	t, err := limit.Result(unit.Fahrenheit(seaLevelWarmth - temperatureFall*altitude.In(unit.Foot)))
	if err != nil {
		return 0, err
	}
	if t <= 0 {
		return 0, limit.Break("altitude", limit.OutOfRange)
	}
	return t, nil
}

// DensityFactor returns the density of air at an altitude and temperature as a
// share of standard air. Humidity is left out; it takes up to 3 % more off in
// hot wet air. Errors: as [PressureAt]; temperature not above absolute zero.
//
// Method: air.density.
func DensityFactor(altitude unit.Length, temperature unit.Temperature) (unit.Ratio, error) {
	p, err := PressureAt(altitude)
	if err != nil {
		return 0, err
	}
	if err := limit.Positive("temperature", temperature); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(p/StandardPressure) * unit.Ratio(StandardWarmth/temperature))
}

// Density returns the density of air at an altitude and temperature, scaled
// from [StandardDensity]. Errors: as [DensityFactor].
//
// Method: air.density.
func Density(altitude unit.Length, temperature unit.Temperature) (unit.Density, error) {
	f, err := DensityFactor(altitude, temperature)
	if err != nil {
		return 0, err
	}
	return limit.Result(StandardDensity * unit.Density(f))
}

// MoistDensity returns the density of air of a known absolute pressure,
// temperature and humidity ratio, the mass of water per mass of dry air; zero is
// dry air. An ideal gas: within 0.1 % of tables of real air. Errors: pressure or
// temperature not above zero, humidity below zero.
//
// Method: air.density.moist.
func MoistDensity(pressure unit.Pressure, temperature unit.Temperature, humidity unit.Ratio) (unit.Density, error) {
	if err := limit.First(limit.Positive("pressure", pressure), limit.Positive("temperature", temperature),
		limit.NonNegative("humidity", humidity)); err != nil {
		return 0, err
	}
	p := pressure.In(unit.PSI) * 144 // lbf/ft²
	T := float64(temperature) * 1.8  // °R
	W := float64(humidity)
	rho := p / (gasConstant * T) * (1 + W) / (1 + vaporFactor*W)
	return limit.Result(unit.Density(rho) * unit.PoundPerCubicFoot)
}
