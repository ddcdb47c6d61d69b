package unit

// The units of each kind. A symbol is never changed once a record or a link
// carrying it has been published. What is typed in English and in Spanish is read
// the same on every screen, whatever its language.
var (
	inch       = Unit{Symbol: "in", Label: "in", Size: float64(Inch), Also: []string{`"`, "″", "''", "inch", "inches", "pulg", "pulgada", "pulgadas"}}
	foot       = Unit{Symbol: "ft", Label: "ft", Size: float64(Foot), Also: []string{"'", "′", "foot", "feet", "pie", "pies"}}
	millimeter = Unit{Symbol: "mm", Label: "mm", Size: float64(Millimeter)}
	centimeter = Unit{Symbol: "cm", Label: "cm", Size: float64(Centimeter)}
	meter      = Unit{Symbol: "m", Label: "m", Size: 1}
	rpm        = Unit{Symbol: "rpm", Label: "rpm", Size: 1, Also: []string{"r/min", "1/min", "min-1"}}
	fpm        = Unit{Symbol: "fpm", Label: "fpm", Size: float64(FootPerMinute), Also: []string{"ft/min"}}
	mps        = Unit{Symbol: "m/s", Label: "m/s", Size: 1}
	cfm        = Unit{Symbol: "cfm", Label: "cfm", Size: float64(CubicFootPerMinute), Also: []string{"ft3/min", "ft³/min"}}
	m3h        = Unit{Symbol: "m3/h", Label: "m³/h", Size: float64(CubicMeterPerHour), Also: []string{"m³/h"}}
	lps        = Unit{Symbol: "l/s", Label: "L/s", Size: float64(LiterPerSecond)}
	m3s        = Unit{Symbol: "m3/s", Label: "m³/s", Size: 1, Also: []string{"m³/s"}}
	inwg       = Unit{Symbol: "inwg", Label: "in wg", Size: float64(InchOfWater), Also: []string{"in wg", "in. wg", "in w.g.", "inh2o", "in h2o"}}
	pascal     = Unit{Symbol: "Pa", Label: "Pa", Size: 1}
	psi        = Unit{Symbol: "psi", Label: "psi", Size: float64(PSI)}
	hp         = Unit{Symbol: "hp", Label: "hp", Size: float64(Horsepower)}
	kilowatt   = Unit{Symbol: "kW", Label: "kW", Size: float64(Kilowatt)}
	watt       = Unit{Symbol: "W", Label: "W", Size: 1}
	lbf        = Unit{Symbol: "lbf", Label: "lbf", Size: float64(PoundForce), Also: []string{"lb"}}
	newton     = Unit{Symbol: "N", Label: "N", Size: 1}
	volt       = Unit{Symbol: "V", Label: "V", Size: 1, Also: []string{"volt", "volts", "voltio", "voltios"}}
	ampere     = Unit{Symbol: "A", Label: "A", Size: 1, Also: []string{"amp", "amps", "amperes", "amperio", "amperios"}}
	hertz      = Unit{Symbol: "Hz", Label: "Hz", Size: 1}
	fahrenheit = Unit{Symbol: "F", Label: "°F", Size: 1 / 1.8, Zero: 459.67 / 1.8, Also: []string{"°f"}}
	celsius    = Unit{Symbol: "C", Label: "°C", Size: 1, Zero: 273.15, Also: []string{"°c"}}
	kelvin     = Unit{Symbol: "K", Label: "K", Size: 1}
	lbft3      = Unit{Symbol: "lb/ft3", Label: "lb/ft³", Size: float64(PoundPerCubicFoot), Also: []string{"lb/ft³"}}
	kgm3       = Unit{Symbol: "kg/m3", Label: "kg/m³", Size: 1, Also: []string{"kg/m³"}}
	degree     = Unit{Symbol: "deg", Label: "°", Size: float64(Degree), Also: []string{"°"}}
	radian     = Unit{Symbol: "rad", Label: "rad", Size: 1}
	percent    = Unit{Symbol: "%", Label: "%", Size: float64(Percent)}
	one        = Unit{Symbol: "1", Label: "", Size: 1, Also: []string{""}}
	turn       = Unit{Symbol: "turns", Label: "turns", Size: 1, Also: []string{"turn", "vuelta", "vueltas"}}
)

var (
	lengths      = Kind{"length", meter, []Unit{inch, foot, millimeter, centimeter, meter}}
	speeds       = Kind{"speed", rpm, []Unit{rpm}}
	velocities   = Kind{"velocity", mps, []Unit{fpm, mps}}
	flows        = Kind{"airflow", m3s, []Unit{cfm, m3h, lps, m3s}}
	pressures    = Kind{"pressure", pascal, []Unit{inwg, pascal, psi}}
	powers       = Kind{"power", watt, []Unit{hp, kilowatt, watt}}
	forces       = Kind{"force", newton, []Unit{lbf, newton}}
	voltages     = Kind{"voltage", volt, []Unit{volt}}
	currents     = Kind{"current", ampere, []Unit{ampere}}
	frequencies  = Kind{"frequency", hertz, []Unit{hertz}}
	temperatures = Kind{"temperature", kelvin, []Unit{fahrenheit, celsius, kelvin}}
	densities    = Kind{"density", kgm3, []Unit{lbft3, kgm3}}
	angles       = Kind{"angle", degree, []Unit{degree, radian}}
	ratios       = Kind{"ratio", one, []Unit{one, percent}}
	turns        = Kind{"turns", one, []Unit{turn}}
)

// Kind returns the kind of lengths.
func (Length) Kind() *Kind { return &lengths }

// Kind returns the kind of rotational speeds.
func (Speed) Kind() *Kind { return &speeds }

// Kind returns the kind of linear speeds.
func (Velocity) Kind() *Kind { return &velocities }

// Kind returns the kind of volume flows.
func (Flow) Kind() *Kind { return &flows }

// Kind returns the kind of pressures.
func (Pressure) Kind() *Kind { return &pressures }

// Kind returns the kind of powers.
func (Power) Kind() *Kind { return &powers }

// Kind returns the kind of forces.
func (Force) Kind() *Kind { return &forces }

// Kind returns the kind of voltages.
func (Voltage) Kind() *Kind { return &voltages }

// Kind returns the kind of currents.
func (Current) Kind() *Kind { return &currents }

// Kind returns the kind of frequencies.
func (Frequency) Kind() *Kind { return &frequencies }

// Kind returns the kind of temperatures.
func (Temperature) Kind() *Kind { return &temperatures }

// Kind returns the kind of densities.
func (Density) Kind() *Kind { return &densities }

// Kind returns the kind of angles.
func (Angle) Kind() *Kind { return &angles }

// Kind returns the kind of ratios.
func (Ratio) Kind() *Kind { return &ratios }

// Kind returns the kind of counted turns.
func (Turns) Kind() *Kind { return &turns }

// Kinds returns every kind of the package.
func Kinds() []*Kind {
	return []*Kind{&lengths, &speeds, &velocities, &flows, &pressures, &powers, &forces, &voltages,
		&currents, &frequencies, &temperatures, &densities, &angles, &ratios, &turns, &linearMasses, &apparents,
		&areas, &volumes, &lineImpedances, &resistivities, &differences, &counts, &masses}
}

// Scales, named for what is written in them.
var (
	Shop        = Scale{inch, millimeter} // lengths at the bench: sheaves, centers, travel
	Site        = Scale{foot, meter}      // lengths of the place: altitude, a hood
	Rotation    = Scale{rpm, rpm}
	Airspeed    = Scale{fpm, mps}
	Airflow     = Scale{cfm, m3h}
	AirPressure = Scale{inwg, pascal}
	Shaft       = Scale{hp, kilowatt}
	Input       = Scale{kilowatt, kilowatt} // electrical power: kW beside kVA everywhere
	Pull        = Scale{lbf, newton}
	Potential   = Scale{volt, volt}
	Amperage    = Scale{ampere, ampere}
	Cycles      = Scale{hertz, hertz}
	Warmth      = Scale{fahrenheit, celsius}
	AirDensity  = Scale{lbft3, kgm3}
	Arc         = Scale{degree, degree}
	Factor      = Scale{one, one}
	Share       = Scale{percent, percent}
	TurnCount   = Scale{turn, turn}
)
