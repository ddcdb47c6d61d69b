// Package unit holds typed quantities. Each is a float64 in its SI unit, so
// that a length can't be passed for a speed; the one exception is [Speed],
// which is kept in revolutions per minute because every plate, tachometer and
// formula of the trade is, and a count of 1750 must stay 1750.
//
// What the types do not catch: products (a Length times a Length is still a
// Length to the compiler), pitch against outside diameter, gauge against
// absolute pressure. Parameter names and comments say which is meant.
//
// Each unit is written from its legal definition, never from another unit:
// typed constants round at every step. A conversion there and back may differ
// in the last bit, so bounds are compared with relative slack and text is
// printed by significant digits.
package unit

import "math"

// Length is a length in meters.
type Length float64

// Lengths. The inch is 25.4 mm exactly (international yard and pound, 1959).
const (
	Meter      Length = 1
	Millimeter Length = 1e-3
	Centimeter Length = 1e-2
	Inch       Length = 0.0254
	Foot       Length = 0.3048
)

// In returns l as a count of u.
func (l Length) In(u Length) float64 { return float64(l / u) }

// Speed is a rotational speed in revolutions per minute.
type Speed float64

// RPM is one revolution per minute.
const RPM Speed = 1

// RadiansPerSecond returns the angular velocity of s.
func (s Speed) RadiansPerSecond() float64 { return float64(s) * math.Pi / 30 }

// Velocity is a linear speed in meters per second: of a belt, a blade tip, air.
type Velocity float64

// Velocities. The foot per minute is 0.3048 m in 60 s.
const (
	MeterPerSecond Velocity = 1
	FootPerMinute  Velocity = 0.00508
)

// In returns v as a count of u.
func (v Velocity) In(u Velocity) float64 { return float64(v / u) }

// Flow is a volume flow in cubic meters per second.
type Flow float64

// Flows. The cubic foot is 0.028316846592 m³ exactly.
const (
	CubicMeterPerSecond Flow = 1
	CubicMeterPerHour   Flow = 1.0 / 3600
	LiterPerSecond      Flow = 1e-3
	CubicFootPerMinute  Flow = 0.028316846592 / 60
)

// In returns q as a count of u.
func (q Flow) In(u Flow) float64 { return float64(q / u) }

// Pressure is a pressure in pascals; gauge or absolute as the name says.
type Pressure float64

// Pressures. The inch of water is the conventional one (water of 1000 kg/m³
// under standard gravity); that of water at 60 °F is 0.1 % smaller. The psi is
// one lbf on one square inch.
const (
	Pascal      Pressure = 1
	InchOfWater Pressure = 249.08891
	PSI         Pressure = 4.4482216152605 / (0.0254 * 0.0254)
)

// In returns p as a count of u.
func (p Pressure) In(u Pressure) float64 { return float64(p / u) }

// Power is a power in watts.
type Power float64

// Powers. The horsepower is 550 ft·lbf/s.
const (
	Watt       Power = 1
	Kilowatt   Power = 1000
	Horsepower Power = 745.69987158227022
)

// In returns w as a count of u.
func (w Power) In(u Power) float64 { return float64(w / u) }

// Force is a force in newtons.
type Force float64

// Forces. The pound-force is 0.45359237 kg under 9.80665 m/s².
const (
	Newton     Force = 1
	PoundForce Force = 4.4482216152605
)

// In returns f as a count of u.
func (f Force) In(u Force) float64 { return float64(f / u) }

// Voltage is an electric potential difference in volts, rms.
type Voltage float64

// Volt is one volt.
const Volt Voltage = 1

// Current is an electric current in amperes, rms.
type Current float64

// Ampere is one ampere.
const Ampere Current = 1

// Frequency is a frequency in hertz.
type Frequency float64

// Hertz is one cycle per second.
const Hertz Frequency = 1

// Temperature is a temperature in kelvins.
type Temperature float64

// Kelvin is one kelvin above absolute zero.
const Kelvin Temperature = 1

// Celsius returns the temperature of t degrees Celsius.
func Celsius(t float64) Temperature { return Temperature(t + 273.15) }

// Fahrenheit returns the temperature of t degrees Fahrenheit.
func Fahrenheit(t float64) Temperature { return Temperature((t + 459.67) / 1.8) }

// Celsius returns t in degrees Celsius.
func (t Temperature) Celsius() float64 { return float64(t) - 273.15 }

// Fahrenheit returns t in degrees Fahrenheit.
func (t Temperature) Fahrenheit() float64 { return float64(t)*1.8 - 459.67 }

// Density is a mass density in kilograms per cubic meter.
type Density float64

// Densities. The pound is 0.45359237 kg, the cubic foot 0.028316846592 m³.
const (
	KilogramPerCubicMeter Density = 1
	PoundPerCubicFoot     Density = 0.45359237 / 0.028316846592
)

// In returns d as a count of u.
func (d Density) In(u Density) float64 { return float64(d / u) }

// Angle is a plane angle in radians.
type Angle float64

// Angles.
const (
	Radian Angle = 1
	Degree Angle = math.Pi / 180
)

// In returns a as a count of u.
func (a Angle) In(u Angle) float64 { return float64(a / u) }

// Ratio is a quotient of two like quantities; per cent is 0.01.
type Ratio float64

// Percent is one in a hundred.
const Percent Ratio = 0.01

// Turns counts turns: of a sheave's movable flange from fully closed, of a
// wheel turned by hand.
type Turns float64

// Turn is one turn.
const Turn Turns = 1
