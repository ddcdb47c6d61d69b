package airflow

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Limits of a grease duct and its outlet: International Mechanical Code, 506.3.4
// and 506.3.13, as cited on a city's permit form; the velocity is NFPA 96's since
// 2002 as well. The edition adopted on the site decides.
//
// Method: air.duct.minimum.
const (
	GreaseDuctMinimumVelocity unit.Velocity = 500 * unit.FootPerMinute
	OutletAboveRoof           unit.Length   = 40 * unit.Inch
	OutletToIntake            unit.Length   = 10 * unit.Foot
)

// GreaseDuctOlderVelocity is the minimum of older guidance, still met in
// specifications: a US hospital design manual. Not the present code's.
const GreaseDuctOlderVelocity unit.Velocity = 1500 * unit.FootPerMinute

// MakeUpLimit is the greatest negative pressure at a hood's space: NFPA 96, 8-3, as
// quoted in print.
//
// Method: air.makeup.
const MakeUpLimit unit.Pressure = 0.02 * unit.InchOfWater

// Balancing tolerances of a public project specification, to either side of
// design. Hoods are often held to −0/+10 % (memory).
//
// Method: air.balance.
const (
	FanTolerance    unit.Ratio = 0.05
	OutletTolerance unit.Ratio = 0.10
)

// A Hood is the shape of a kitchen hood.
type Hood string

// Hoods of the code's tables.
const (
	WallCanopy   Hood = "wall"
	SingleIsland Hood = "single_island"
	DoubleIsland Hood = "double_island" // per side
	Eyebrow      Hood = "eyebrow"
	Backshelf    Hood = "backshelf"
	Dishwasher   Hood = "dishwasher" // Type II: heat and moisture, no grease
)

// sides is how many of a hood's sides its rate counts for.
func (h Hood) sides() float64 {
	if h == DoubleIsland {
		return 2
	}
	return 1
}

// A Duty is the class of the cooking under a hood.
type Duty string

// Duties of the code's tables.
const (
	Light      Duty = "light"
	Medium     Duty = "medium"
	Heavy      Duty = "heavy"
	ExtraHeavy Duty = "extra_heavy"
)

// Rates in cfm per linear foot of hood by duty, light to extra-heavy; zero is
// "not allowed". International Mechanical Code, 507.5, as a state's code of 2023 has
// them. Copies that are no code disagree (a single island at heavy duty is also given
// as 500), so a rate is to be confirmed in the adopted code.
var hoodRates = [...]struct {
	hood  Hood
	rates [4]float64
}{
	{WallCanopy, [4]float64{200, 300, 400, 550}},
	{SingleIsland, [4]float64{400, 500, 600, 700}},
	{DoubleIsland, [4]float64{250, 300, 400, 550}},
	{Eyebrow, [4]float64{250, 250, 0, 0}},
	{Backshelf, [4]float64{250, 300, 400, 0}},
}

// dishwasherRate is for any duty (memory).
const dishwasherRate = 100

// HoodRate returns the least exhaust of an unlisted hood for one foot of its
// length. A listed hood's label rules instead. A double island's is
// for each side; a dishwasher's takes no duty. Errors: no such hood or duty; a
// hood not allowed for the duty.
//
// Method: air.hood.
func HoodRate(hood Hood, duty Duty) (perFoot unit.Flow, err error) {
	if hood == Dishwasher {
		return dishwasherRate * unit.CubicFootPerMinute, nil
	}
	column := -1
	for i, d := range [...]Duty{Light, Medium, Heavy, ExtraHeavy} {
		if d == duty {
			column = i
		}
	}
	if column < 0 {
		return 0, limit.Break("duty", limit.NotTabulated)
	}
	for i := range hoodRates {
		if hoodRates[i].hood != hood {
			continue
		}
		if hoodRates[i].rates[column] == 0 {
			return 0, limit.Break("duty", limit.NotAllowed)
		}
		return unit.Flow(hoodRates[i].rates[column]) * unit.CubicFootPerMinute, nil
	}
	return 0, limit.Break("hood", limit.NotTabulated)
}

// HoodFlow returns the exhaust of a hood of the given length at a rate for each
// foot, of each side of a double island. Errors: an input not above zero.
//
// Method: air.hood.
func HoodFlow(hood Hood, perFoot unit.Flow, length unit.Length) (unit.Flow, error) {
	if err := limit.First(limit.Positive("perFoot", perFoot), limit.Positive("length", length)); err != nil {
		return 0, err
	}
	return limit.Result(perFoot * unit.Flow(hood.sides()*length.In(unit.Foot)))
}

// Older rates by area, for each square foot of hood opening: a military
// specification. Wall and double-island hoods.
const (
	AreaRate          unit.Flow = 100 * unit.CubicFootPerMinute
	AreaRateSolidFuel unit.Flow = 200 * unit.CubicFootPerMinute
)

// HoodFlowByArea returns the exhaust of a hood by the older method, at a rate
// for each square foot of its opening. Errors: an input not above zero.
//
// Method: air.hood.area.
func HoodFlowByArea(perSquareFoot unit.Flow, length, width unit.Length) (unit.Flow, error) {
	if err := check3("perSquareFoot", float64(perSquareFoot), "length", float64(length), "width", float64(width)); err != nil {
		return 0, err
	}
	return limit.Result(perSquareFoot * unit.Flow(length.In(unit.Foot)*width.In(unit.Foot)))
}
