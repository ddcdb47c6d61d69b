package unit

// Volume is a volume in cubic meters.
type Volume float64

// Volumes.
const (
	CubicMeter      Volume = 1
	CubicCentimeter Volume = 1e-6
	CubicInch       Volume = 0.0254 * 0.0254 * 0.0254
)

// In returns v as a count of u.
func (v Volume) In(u Volume) float64 { return float64(v / u) }

var (
	in3     = Unit{Symbol: "in3", Label: "in³", Size: float64(CubicInch), Also: []string{"in³", "cu in"}}
	cm3     = Unit{Symbol: "cm3", Label: "cm³", Size: float64(CubicCentimeter), Also: []string{"cm³"}}
	m3      = Unit{Symbol: "m3", Label: "m³", Size: 1, Also: []string{"m³"}}
	volumes = Kind{"volume", m3, []Unit{in3, cm3, m3}}
)

// Kind returns the kind of volumes.
func (Volume) Kind() *Kind { return &volumes }

// Capacity is how the volume of a box is written.
var Capacity = Scale{in3, cm3}
