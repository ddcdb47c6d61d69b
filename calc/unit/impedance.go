package unit

// LineImpedance is the resistance, reactance or impedance of a conductor by its
// length, in ohms per meter.
type LineImpedance float64

// Impedances by length.
const (
	OhmPerMeter        LineImpedance = 1
	OhmPerKilometer    LineImpedance = 1e-3
	OhmPerThousandFeet LineImpedance = 1 / 304.8
)

// In returns z as a count of u.
func (z LineImpedance) In(u LineImpedance) float64 { return float64(z / u) }

var (
	ohmkft         = Unit{Symbol: "ohm/kft", Label: "Ω/kft", Size: float64(OhmPerThousandFeet)}
	ohmkm          = Unit{Symbol: "ohm/km", Label: "Ω/km", Size: float64(OhmPerKilometer)}
	ohmm           = Unit{Symbol: "ohm/m", Label: "Ω/m", Size: 1}
	lineImpedances = Kind{"impedance by length", ohmm, []Unit{ohmkft, ohmkm, ohmm}}
)

// Kind returns the kind of impedances by length.
func (LineImpedance) Kind() *Kind { return &lineImpedances }

// Wiring is how the impedance of a conductor by its length is written.
var Wiring = Scale{ohmkft, ohmkm}

// Resistivity is the resistance of a conductor by its length, times its area, in
// ohm meters.
type Resistivity float64

// Resistivities. The second is of a wire 1 ft long and 1 cmil thick, which the
// trade calls K.
const (
	OhmMeter              Resistivity = 1
	OhmCircularMilPerFoot Resistivity = 0.0000254 * 0.0000254 * 0.785398163397448309615660845819875721 / 0.3048
)

// In returns k as a count of u.
func (k Resistivity) In(u Resistivity) float64 { return float64(k / u) }

var (
	ohmcmilft     = Unit{Symbol: "ohm-cmil/ft", Label: "Ω·cmil/ft", Size: float64(OhmCircularMilPerFoot)}
	ohmmeter      = Unit{Symbol: "ohm-m", Label: "Ω·m", Size: 1}
	resistivities = Kind{"resistivity", ohmmeter, []Unit{ohmcmilft, ohmmeter}}
)

// Kind returns the kind of resistivities.
func (Resistivity) Kind() *Kind { return &resistivities }
