package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Window is a least and a greatest voltage.
type Window struct{ Low, High unit.Voltage }

// A System is a nominal system voltage with the windows that a supply is held to:
// at the service and at the motor, range A as the rule and B as the exception. ANSI
// C84.1, Table 1 (memory). Motor is the plate voltage made for it: a US DOE motor
// tip sheet.
type System struct {
	Nominal, Motor unit.Voltage
	ServiceA, UseA Window
	ServiceB, UseB Window
}

var systems = [...]System{
	{208, 200, Window{197, 218}, Window{187, 218}, Window{191, 220}, Window{180, 220}},
	{240, 230, Window{228, 252}, Window{216, 252}, Window{220, 254}, Window{208, 254}},
	{480, 460, Window{456, 504}, Window{432, 504}, Window{440, 508}, Window{416, 508}},
	{600, 575, Window{570, 630}, Window{540, 630}, Window{550, 635}, Window{520, 635}},
}

// SystemOf returns the system of a nominal voltage. Errors: no such system.
//
// Method: phase.system.
func SystemOf(nominal unit.Voltage) (System, error) {
	if err := limit.Positive("nominal", nominal); err != nil {
		return System{}, err
	}
	for i := range systems {
		if systems[i].Nominal == nominal {
			return systems[i], nil
		}
	}
	return System{}, limit.Break("nominal", limit.NotTabulated)
}

// SystemNear returns the system whose nominal voltage is nearest to a reading, in
// proportion. Errors: v not above zero; outside what that one allows at a motor even
// as an exception.
//
// Method: phase.system.
func SystemNear(v unit.Voltage) (System, error) {
	if err := limit.Positive("v", v); err != nil {
		return System{}, err
	}
	best := 0
	for i := range systems {
		if apart(v, systems[i].Nominal) < apart(v, systems[best].Nominal) {
			best = i
		}
	}
	s := systems[best]
	if v < s.UseB.Low || v > s.UseB.High {
		return System{}, limit.Break("v", limit.NotTabulated)
	}
	return s, nil
}

func apart(v, w unit.Voltage) float64 {
	return math.Abs(math.Log(float64(v)) - math.Log(float64(w)))
}

// VoltsAtMotor returns how a voltage at a motor stands to its system: within in
// range A, watch in B, stop outside. Errors: v not above zero; a meter below zero
// or as coarse as its reading; no such system.
//
// Method: phase.system.
func VoltsAtMotor(v unit.Voltage, meter Meter[unit.Voltage], nominal unit.Voltage) (Verdict, error) {
	if err := limit.First(limit.Positive("v", v), meter.check()); err != nil {
		return Verdict{}, err
	}
	s, err := SystemOf(nominal)
	if err != nil {
		return Verdict{}, err
	}
	low, high := meter.around(v)
	if _, err := limit.Result(high); err != nil {
		return Verdict{}, err
	}
	a, b := s.standing(low), s.standing(high)
	best, worst := a, b
	if rank(best) > rank(worst) {
		best, worst = worst, best
	}
	if low <= s.UseA.High && high >= s.UseA.Low { // some voltage in range A is possible
		best = Within
	}
	r := Verdict{Standing: best, Best: best, Worst: worst}
	if best != worst {
		r.Standing, r.Reason = Unjudged, ReasonBand
	}
	return r, nil
}

func (s System) standing(v unit.Voltage) Standing {
	const slack = 1e-9
	in := func(w Window) bool { return v >= w.Low*(1-slack) && v <= w.High*(1+slack) }
	switch {
	case in(s.UseA):
		return Within
	case in(s.UseB):
		return Watch
	}
	return Stop
}

func rank(s Standing) int {
	switch s {
	case Within:
		return 0
	case Watch:
		return 1
	}
	return 2
}

// PlateOnSystem returns how a motor's plate voltage suits a system: within for the
// one made for it or the system's own, watch for another within [PlateTolerance],
// which has little room for a drop on the way (230 on 208: inside by 1 V), stop for
// others. Errors: plate not above zero, no such system.
//
// Method: phase.system.plate.
func PlateOnSystem(plate, nominal unit.Voltage) (Standing, error) {
	if err := limit.Positive("plate", plate); err != nil {
		return "", err
	}
	s, err := SystemOf(nominal)
	if err != nil {
		return "", err
	}
	if plate == s.Motor || plate == s.Nominal {
		return Within, nil
	}
	if off := math.Abs(float64(s.Nominal/plate) - 1); off > float64(PlateTolerance)*(1+1e-9) {
		return Stop, nil
	}
	return Watch, nil
}
