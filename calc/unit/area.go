package unit

// Area is an area in square meters.
type Area float64

// Areas. The circular mil is the area of a circle 0.001 in across.
const (
	SquareMeter      Area = 1
	SquareMillimeter Area = 1e-6
	SquareInch       Area = 0.0254 * 0.0254
	CircularMil      Area = 0.0000254 * 0.0000254 * 0.785398163397448309615660845819875721
)

// In returns a as a count of u.
func (a Area) In(u Area) float64 { return float64(a / u) }

var (
	in2   = Unit{Symbol: "in2", Label: "in²", Size: float64(SquareInch), Also: []string{"in²", "sq in"}}
	mm2   = Unit{Symbol: "mm2", Label: "mm²", Size: float64(SquareMillimeter), Also: []string{"mm²"}}
	cmil  = Unit{Symbol: "cmil", Label: "cmil", Size: float64(CircularMil)}
	m2    = Unit{Symbol: "m2", Label: "m²", Size: 1, Also: []string{"m²"}}
	areas = Kind{"area", m2, []Unit{in2, mm2, cmil, m2}}
)

// Kind returns the kind of areas.
func (Area) Kind() *Kind { return &areas }

// Section is how the cross-section of a wire or a raceway is written.
var Section = Scale{in2, mm2}
