package unit

// TemperatureDifference is how far two temperatures are apart, in kelvins. It
// has no zero point: 33 °C apart is 59.4 °F apart.
type TemperatureDifference float64

// Differences of temperature.
const (
	KelvinApart     TemperatureDifference = 1
	FahrenheitApart TemperatureDifference = 1 / 1.8
)

// In returns d as a count of u.
func (d TemperatureDifference) In(u TemperatureDifference) float64 { return float64(d / u) }

// Plus returns the temperature d above t.
func (t Temperature) Plus(d TemperatureDifference) Temperature { return t + Temperature(d) }

var (
	apartF      = Unit{Symbol: "dF", Label: "°F", Size: float64(FahrenheitApart), Also: []string{"°f"}}
	apartC      = Unit{Symbol: "dC", Label: "°C", Size: 1, Also: []string{"°c"}}
	differences = Kind{"temperature difference", kelvin, []Unit{apartF, apartC, kelvin}}
)

// Kind returns the kind of temperature differences.
func (TemperatureDifference) Kind() *Kind { return &differences }

// Warming is how a difference of temperature is written.
var Warming = Scale{apartF, apartC}
