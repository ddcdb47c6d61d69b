package unit

// LinearMass is a mass for each length in kilograms per meter: of a belt.
type LinearMass float64

// Linear masses. The pound is 0.45359237 kg, the foot 0.3048 m.
const (
	KilogramPerMeter LinearMass = 1
	PoundPerFoot     LinearMass = 0.45359237 / 0.3048
)

// In returns m as a count of u.
func (m LinearMass) In(u LinearMass) float64 { return float64(m / u) }

var (
	lbft = Unit{Symbol: "lb/ft", Label: "lb/ft", Size: float64(PoundPerFoot)}
	kgm  = Unit{Symbol: "kg/m", Label: "kg/m", Size: 1}

	linearMasses = Kind{"linear mass", kgm, []Unit{lbft, kgm}}
)

// Kind returns the kind of masses for each length.
func (LinearMass) Kind() *Kind { return &linearMasses }

// BeltMass is the scale of a belt's mass for each length.
var BeltMass = Scale{lbft, kgm}
