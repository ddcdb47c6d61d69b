package belt

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// Arc returns the angle over which the belt lies on the sheave of pitch
// diameter on, the other's being other. Errors: as [OpenLength], with on and
// other in place of driver and driven.
//
// Method: belt.arc.
func Arc(on, other, center unit.Length) (unit.Angle, error) {
	if err := limit.First(limit.Positive("on", on), limit.Positive("other", other), limit.Positive("center", center)); err != nil {
		return 0, err
	}
	if center <= on/2+other/2 {
		return 0, limit.Break("center", limit.SheavesOverlap)
	}
	return limit.Result(unit.Angle(math.Pi + 2*math.Asin(float64((on-other)/2/center))))
}

// ArcSmall returns the angle over which the belt lies on the smaller sheave,
// where it slips first. Errors: as [OpenLength].
//
// Method: belt.arc.
func ArcSmall(driver, driven, center unit.Length) (unit.Angle, error) {
	if err := checkSheaves(driver, driven, center); err != nil {
		return 0, err
	}
	return Arc(min(driver, driven), max(driver, driven), center)
}

// Slopes of the two short forms that [ArcByRule] takes.
const (
	RuleOf57 unit.Angle = 57.3 * unit.Degree // reads large: 2.7° at (D−d)/C = 1, 11° at 1.5
	RuleOf60 unit.Angle = 60 * unit.Degree   // within 1.1° up to (D−d)/C = 1.1, then large: 7.2° at 1.5
)

// ArcByRule returns the short form of [ArcSmall], 180° − slope·(D−d)/C, for
// comparison. Errors: as OpenLength; slope not above zero.
//
// Method: belt.arc.short.
func ArcByRule(driver, driven, center unit.Length, slope unit.Angle) (unit.Angle, error) {
	if err := limit.First(checkSheaves(driver, driven, center), limit.Positive("slope", slope)); err != nil {
		return 0, err
	}
	x := math.Abs(float64(driven-driver)) / float64(center)
	return limit.Result(math.Pi - slope*unit.Angle(x))
}

// ArcFactor returns the share of a belt's rating left at an arc on the smaller
// sheave: 1.25·(1 − 5^(−θ/180°)), one at half a turn. The closed form is from
// memory; it agrees with the printed table of classical belts within 0.005 from
// 83° to 180°. Errors: arc not above zero or more than a whole turn.
//
// Method: belt.arc.factor.
func ArcFactor(arc unit.Angle) (unit.Ratio, error) {
	if err := checkArc(arc); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(1.25 * (1 - math.Pow(5, -float64(arc)/math.Pi))))
}
