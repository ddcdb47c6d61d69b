package unit

// ApparentPower is volts times amps in volt-amperes, whatever share of it does
// work.
type ApparentPower float64

// Apparent powers.
const (
	VoltAmpere     ApparentPower = 1
	KilovoltAmpere ApparentPower = 1000
)

// In returns s as a count of u.
func (s ApparentPower) In(u ApparentPower) float64 { return float64(s / u) }

var (
	kva = Unit{Symbol: "kVA", Label: "kVA", Size: float64(KilovoltAmpere)}
	va  = Unit{Symbol: "VA", Label: "VA", Size: 1}

	apparents = Kind{"apparent power", va, []Unit{kva, va}}
)

// Kind returns the kind of apparent powers.
func (ApparentPower) Kind() *Kind { return &apparents }

// Apparent is the scale of a motor's apparent power.
var Apparent = Scale{kva, kva}
