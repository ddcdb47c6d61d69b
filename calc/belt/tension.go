package belt

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A TensionConstant is the leading figure of the formula for static tension,
// in lbf·(1000 ft/min)/hp.
type TensionConstant float64

// The two published constants. Statics give the first exactly: half of 33000
// ft·lbf/min over 1000, with the arc factor's own tension ratio. The second is
// from memory and sets 9 % less; shown beside it for comparison.
const (
	TensionByStatics TensionConstant = 16.5
	TensionByTrade   TensionConstant = 15
)

// EffectivePull returns the pull with which a belt drive carries power at belt
// speed v: tight less slack strand, all belts together. Errors: an input not
// above zero.
//
// Method: belt.pull.
func EffectivePull(power unit.Power, v unit.Velocity) (unit.Force, error) {
	if err := limit.First(limit.Positive("power", power), limit.Positive("v", v)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Force(float64(power) / float64(v)))
}

// TensionRatio returns tight over slack strand that the arc factor stands for:
// 5^(θ/180°), with θ the arc on the smaller sheave. Errors: arc not above zero
// or more than a whole turn.
//
// Method: belt.tension.ratio.
func TensionRatio(arc unit.Angle) (unit.Ratio, error) {
	if err := checkArc(arc); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(math.Pow(5, float64(arc)/math.Pi)))
}

// Strands returns the tensions of the tight and the slack strand of a drive that
// carries power at belt speed v just as the arc factor assumes: all belts
// together, without centrifugal tension. Errors: an input not above zero, arc
// more than a whole turn.
//
// Method: belt.tension.strands.
func Strands(power unit.Power, v unit.Velocity, arc unit.Angle) (tight, slack unit.Force, err error) {
	pull, err := EffectivePull(power, v)
	if err != nil {
		return 0, 0, err
	}
	ratio, err := TensionRatio(arc)
	if err != nil {
		return 0, 0, err
	}
	if slack, err = limit.Result(pull / unit.Force(ratio-1)); err != nil {
		return 0, 0, err
	}
	if tight, err = limit.Result(slack + pull); err != nil {
		return 0, 0, err
	}
	return tight, slack, nil
}

// StrandsAt returns the tensions of the tight and the slack strand of a drive whose
// belts were set to a strand tension at rest and now pull: all belts together, half
// the pull more and half less than at rest. Errors: tension or pull not above
// zero, no belt, a pull that leaves the slack strand none.
//
// Method: belt.tension.loaded.
func StrandsAt(tension unit.Force, belts int, pull unit.Force) (tight, slack unit.Force, err error) {
	if err := limit.First(limit.Positive("tension", tension), checkBelts(belts), limit.Positive("pull", pull)); err != nil {
		return 0, 0, err
	}
	rest, err := limit.Result(tension * unit.Force(belts))
	if err != nil {
		return 0, 0, err
	}
	if pull/2 >= rest {
		return 0, 0, limit.Break("pull", limit.OutOfRange)
	}
	if tight, err = limit.Result(rest + pull/2); err != nil {
		return 0, 0, err
	}
	return tight, rest - pull/2, nil
}

// StaticTension returns the tension to set in each strand of each belt at rest:
// k·(2.5 − Ac)/Ac · power/(belts·v), with Ac the [ArcFactor] of the arc on the
// smaller sheave, and mass·v² for what the belt's own turning takes; a mass of
// zero leaves that term out, which is some 4 % low at 1600 ft/min. The textbook's
// page is not clear on whether the whole or half of mass·v² is added; statics
// ask for the whole. power is the shaft's: the least that carries it; the textbook
// takes [DesignPower], with a service factor. Errors: an input not above zero, mass below zero, arc more than a whole
// turn, no belt.
//
// Method: belt.tension.
func StaticTension(power unit.Power, v unit.Velocity, arc unit.Angle, belts int, mass unit.LinearMass, k TensionConstant) (unit.Force, error) {
	if err := limit.First(limit.Positive("power", power), limit.Positive("v", v), checkBelts(belts), limit.NonNegative("mass", mass), limit.Positive("k", k)); err != nil {
		return 0, err
	}
	own, err := CentrifugalTension(mass, v)
	if err != nil {
		return 0, err
	}
	// (2.5 − Ac)/Ac is (R + 1)/(R − 1) exactly: Ac = 1.25·(1 − 1/R).
	R, err := TensionRatio(arc)
	if err != nil {
		return 0, err
	}
	if R <= 1 {
		return 0, limit.Break("arc", limit.OutOfRange)
	}
	HP, S := power.In(unit.Horsepower), v.In(unit.FootPerMinute)/1000 // the source works in hp, 1000 ft/min and lbf
	Ts := float64(k) * float64((R+1)/(R-1)) * HP / (float64(belts) * S)
	return limit.Result(unit.Force(Ts)*unit.PoundForce + own)
}

// CentrifugalTension returns the part of a strand's tension that bends the
// running belt around the sheaves and presses on none: mass·v². Errors: mass
// below zero, v not above zero.
//
// Method: belt.tension.own.
func CentrifugalTension(mass unit.LinearMass, v unit.Velocity) (unit.Force, error) {
	if err := limit.First(limit.NonNegative("mass", mass), limit.Positive("v", v)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Force(float64(mass) * float64(v) * float64(v)))
}

// DesignPower returns shaft power times a service factor. Errors: power not above
// zero, factor below one.
//
// Method: belt.power.design.
func DesignPower(power unit.Power, factor unit.Ratio) (unit.Power, error) {
	if err := limit.First(limit.Positive("power", power), limit.Positive("factor", factor)); err != nil {
		return 0, err
	}
	if factor < 1 {
		return 0, limit.Break("factor", limit.OutOfRange)
	}
	return limit.Result(power * unit.Power(factor))
}

// Service factors for fans: from a motor started softly that runs ten hours a day at
// most, to one started across the line that runs more than sixteen. A handbook on
// industrial power, Table 8.5, for fans to 75 kW; a table of the trade has the same
// for fans to 10 hp.
const (
	ServiceFactorLow  unit.Ratio = 1.0
	ServiceFactorHigh unit.Ratio = 1.3
)

func checkArc(arc unit.Angle) error {
	if err := limit.Positive("arc", arc); err != nil {
		return err
	}
	if arc > 2*math.Pi {
		return limit.Break("arc", limit.OutOfRange)
	}
	return nil
}

// mostBelts bounds what is read as a count of belts on one drive.
const mostBelts = 100

func checkBelts(belts int) error {
	if belts < 1 {
		return limit.Break("belts", limit.NotPositive)
	}
	if belts > mostBelts {
		return limit.Break("belts", limit.OutOfRange)
	}
	return nil
}
