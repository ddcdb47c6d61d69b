package unit

// Mass is a mass in kilograms: of a fan.
type Mass float64

// Masses. The pound is 0.45359237 kg.
const (
	Kilogram Mass = 1
	Pound    Mass = 0.45359237
)

// In returns m as a count of u.
func (m Mass) In(u Mass) float64 { return float64(m / u) }

var (
	pound    = Unit{Symbol: "lb", Label: "lb", Size: float64(Pound)}
	kilogram = Unit{Symbol: "kg", Label: "kg", Size: 1}

	masses = Kind{"mass", kilogram, []Unit{pound, kilogram}}
)

// Kind returns the kind of masses.
func (Mass) Kind() *Kind { return &masses }

// Weight is the scale of what a crane lifts.
var Weight = Scale{pound, kilogram}
