package unit_test

import (
	"fmt"
	"math"
	"math/big"
	"testing"

	"roofside/calc/unit"
)

// rat reads an exact number.
func rat(t *testing.T, s string) *big.Rat {
	t.Helper()
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		t.Fatalf("%q is no number", s)
	}
	return r
}

// Each unit from the definitions, worked in exact fractions: the foot is
// 0.3048 m and the pound 0.45359237 kg (international yard and pound, 1959),
// standard gravity 9.80665 m/s² (CGPM 1901), the horsepower 550 foot-pounds in
// a second, the degree Fahrenheit 5/9 K, the conventional inch of water that of
// 1000 kg/m³.
func TestUnitsAreTheirDefinitions(t *testing.T) {
	mul := func(rs ...*big.Rat) *big.Rat {
		p := big.NewRat(1, 1)
		for _, r := range rs {
			p.Mul(p, r)
		}
		return p
	}
	inv := func(r *big.Rat) *big.Rat { return new(big.Rat).Inv(r) }
	foot, inch := rat(t, "0.3048"), rat(t, "0.0254")
	pound, gravity := rat(t, "0.45359237"), rat(t, "9.80665")
	minute, thousand := rat(t, "60"), rat(t, "1000")
	lbf := mul(pound, gravity)
	for kind, want := range map[*unit.Kind]map[string]*big.Rat{
		unit.Length(0).Kind():      {"in": inch, "ft": foot, "mm": rat(t, "0.001"), "cm": rat(t, "0.01"), "m": rat(t, "1")},
		unit.Velocity(0).Kind():    {"fpm": mul(foot, inv(minute)), "m/s": rat(t, "1")},
		unit.Flow(0).Kind():        {"cfm": mul(foot, foot, foot, inv(minute)), "m3/h": rat(t, "1/3600"), "l/s": rat(t, "0.001"), "m3/s": rat(t, "1")},
		unit.Pressure(0).Kind():    {"inwg": mul(inch, thousand, gravity), "Pa": rat(t, "1"), "psi": mul(lbf, inv(inch), inv(inch))},
		unit.Power(0).Kind():       {"hp": mul(rat(t, "550"), foot, lbf), "kW": thousand, "W": rat(t, "1")},
		unit.Force(0).Kind():       {"lbf": lbf, "N": rat(t, "1")},
		unit.Temperature(0).Kind(): {"F": rat(t, "5/9"), "C": rat(t, "1"), "K": rat(t, "1")},
		unit.Density(0).Kind():     {"lb/ft3": mul(pound, inv(foot), inv(foot), inv(foot)), "kg/m3": rat(t, "1")},
		unit.Ratio(0).Kind():       {"1": rat(t, "1"), "%": rat(t, "0.01")},
	} {
		for _, u := range kind.Units {
			if want[u.Symbol] == nil {
				t.Errorf("%s of %s has no definition here", u.Symbol, kind.Name)
				continue
			}
			exact, _ := want[u.Symbol].Float64()
			if math.Abs(u.Size-exact) > 2*(math.Nextafter(exact, math.Inf(1))-exact) {
				t.Errorf("%s is %.17g, by definition %.17g", u.Symbol, u.Size, exact)
			}
		}
	}
}

// Fixed points of the temperature scales: water's triple point is 273.16 K
// (CGPM 1954) and lies at 0.01 °C; 0 °C is 32 °F, 100 °C is 212 °F, and both
// scales meet at −40.
func TestTemperatures(t *testing.T) {
	for _, c := range []struct{ celsius, fahrenheit, kelvin float64 }{{0.01, 32.018, 273.16}, {0, 32, 273.15}, {100, 212, 373.15}, {-40, -40, 233.15}} {
		k := unit.Temperature(0).Kind()
		f, _ := k.Unit("F")
		for _, got := range []float64{float64(unit.Celsius(c.celsius)), float64(unit.Fahrenheit(c.fahrenheit)), f.Base(c.fahrenheit)} {
			if math.Abs(got-c.kelvin) > 1e-9 {
				t.Errorf("%v °C, %v °F: %v K", c.celsius, c.fahrenheit, got)
			}
		}
		if back := unit.Celsius(c.celsius).Fahrenheit(); math.Abs(back-c.fahrenheit) > 1e-9 {
			t.Errorf("%v °C is %v °F", c.celsius, back)
		}
		if back := unit.Fahrenheit(c.fahrenheit).Celsius(); math.Abs(back-c.celsius) > 1e-9 {
			t.Errorf("%v °F is %v °C", c.fahrenheit, back)
		}
	}
}

// is reports a constant that is not one of the unit written with a symbol.
func is[Q unit.Quantity](t *testing.T, constant Q, symbol string) {
	t.Helper()
	if u, ok := constant.Kind().Unit(symbol); !ok || u.Base(1) != float64(constant) {
		t.Errorf("%v is not one %s, which is %v", constant, symbol, u.Base(1))
	}
}

func TestConstantsAreUnits(t *testing.T) {
	is(t, unit.Meter, "m")
	is(t, unit.Millimeter, "mm")
	is(t, unit.Centimeter, "cm")
	is(t, unit.Inch, "in")
	is(t, unit.Foot, "ft")
	is(t, unit.RPM, "rpm")
	is(t, unit.MeterPerSecond, "m/s")
	is(t, unit.FootPerMinute, "fpm")
	is(t, unit.CubicMeterPerSecond, "m3/s")
	is(t, unit.CubicMeterPerHour, "m3/h")
	is(t, unit.LiterPerSecond, "l/s")
	is(t, unit.CubicFootPerMinute, "cfm")
	is(t, unit.Pascal, "Pa")
	is(t, unit.InchOfWater, "inwg")
	is(t, unit.PSI, "psi")
	is(t, unit.Watt, "W")
	is(t, unit.Kilowatt, "kW")
	is(t, unit.Horsepower, "hp")
	is(t, unit.Newton, "N")
	is(t, unit.PoundForce, "lbf")
	is(t, unit.Volt, "V")
	is(t, unit.Ampere, "A")
	is(t, unit.Hertz, "Hz")
	is(t, unit.Kelvin, "K")
	is(t, unit.KilogramPerCubicMeter, "kg/m3")
	is(t, unit.PoundPerCubicFoot, "lb/ft3")
	is(t, unit.Radian, "rad")
	is(t, unit.Degree, "deg")
	is(t, unit.Percent, "%")
	is(t, unit.Turn, "turns")
	is(t, unit.KilogramPerMeter, "kg/m")
	is(t, unit.PoundPerFoot, "lb/ft")
	is(t, unit.VoltAmpere, "VA")
	is(t, unit.KilovoltAmpere, "kVA")
	is(t, unit.SquareMeter, "m2")
	is(t, unit.SquareMillimeter, "mm2")
	is(t, unit.SquareInch, "in2")
	is(t, unit.CircularMil, "cmil")
	is(t, unit.CubicMeter, "m3")
	is(t, unit.CubicCentimeter, "cm3")
	is(t, unit.CubicInch, "in3")
	is(t, unit.OhmPerMeter, "ohm/m")
	is(t, unit.OhmPerKilometer, "ohm/km")
	is(t, unit.OhmPerThousandFeet, "ohm/kft")
	is(t, unit.OhmMeter, "ohm-m")
	is(t, unit.OhmCircularMilPerFoot, "ohm-cmil/ft")
	is(t, unit.KelvinApart, "K")
	is(t, unit.FahrenheitApart, "dF")
}

// A turn is 2π radians and 360 degrees.
func TestTurning(t *testing.T) {
	if got := unit.Speed(60).RadiansPerSecond(); math.Abs(got-2*math.Pi) > 1e-12 {
		t.Errorf("60 rpm is %v rad/s", got)
	}
	if got := unit.Angle(2 * math.Pi).In(unit.Degree); math.Abs(got-360) > 1e-12 {
		t.Errorf("a turn is %v degrees", got)
	}
}

func TestEveryKindIsSound(t *testing.T) {
	names := map[string]bool{}
	for _, k := range unit.Kinds() {
		if names[k.Name] {
			t.Errorf("two kinds are called %s", k.Name)
		}
		names[k.Name] = true
		symbols := map[string]bool{}
		for _, u := range k.Units {
			if symbols[u.Symbol] || u.Symbol == "" || !(u.Size > 0) {
				t.Errorf("%s: unit %q, size %v", k.Name, u.Symbol, u.Size)
			}
			symbols[u.Symbol] = true
			for _, x := range []float64{0, 1, -3.25, 1e-6, 1e6} {
				if back := u.Of(u.Base(x)); math.Abs(back-x) > 1e-9*max(1, math.Abs(x)) {
					t.Errorf("%v %s came back as %v", x, u.Symbol, back)
				}
			}
		}
		if _, ok := k.Unit(k.Data.Symbol); !ok && k.Data.Symbol != "1" { // a count is a count in any language
			t.Errorf("%s: machines are told %q, which can't be read", k.Name, k.Data.Symbol)
		}
	}
}

func TestAScaleHasTwoSides(t *testing.T) {
	s := unit.Shop
	if s.In(unit.US).Symbol != "in" || s.In(unit.SI).Symbol != "mm" {
		t.Errorf("%s, %s", s.In(unit.US).Symbol, s.In(unit.SI).Symbol)
	}
	if s.Other(s.US).Symbol != "mm" || s.Other(s.SI).Symbol != "in" {
		t.Error("a scale's other unit is not the other")
	}
}

func ExampleLength_In() {
	fmt.Printf("%.3f in\n", unit.Length(90*unit.Millimeter).In(unit.Inch))
	// Output: 3.543 in
}

func ExampleUnit_Base() {
	rpm, _ := unit.Speed(0).Kind().Unit("rpm")
	horsepower, _ := unit.Power(0).Kind().Unit("hp")
	fmt.Printf("%v, %.1f W\n", rpm.Base(1750), horsepower.Base(2))
	// Output: 1750, 1491.4 W
}
