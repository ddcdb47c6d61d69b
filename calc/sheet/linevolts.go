package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// ThreePhase tells whether three legs and three pairs can be read at a motor of a
// supply, however it drives its wheel. A drive's input and output are three phases. Of a
// supply that is not said, see [record.Direct], the plate tells, or that three were read;
// a motor that is plated for one phase has two wires, on whatever it lies.
func ThreePhase(f *record.Fan) bool {
	if oneOfThree(f) {
		return false
	}
	if f.Supply.Value() == record.Direct {
		return threeAtMaker(f)
	}
	use, err := phase.CheckUse(phase.CheckLostPhase, phase.Supply(f.Supply.Value()))
	return err == nil && use != phase.UseNo
}

// openLine returns the line that the volts of a reading say brings nothing.
func openLine(r *record.Reading) phase.Leg {
	for i := range r.Volts {
		if r.Volts[i].State() != record.Known {
			return phase.NoLeg
		}
	}
	line, err := phase.OpenLine(r.Volts[0].Value(), r.Volts[1].Value(), r.Volts[2].Value())
	if err != nil {
		return phase.NoLeg
	}
	return line
}

// oneOfThree tells whether the reading that is judged is of a motor plated for one phase
// on a supply of three, so that it lies across two of the lines. A drive has three legs,
// whatever is on it.
func oneOfThree(f *record.Fan) bool {
	s := f.Supply.Value()
	if s != record.ThreePhase && s != record.TwoSpeed && s != record.Direct || f.New.Fit.Phases.Value() != record.OnePhase {
		return false
	}
	j, taken := JudgedReading(f)
	return !taken || j.Side == &f.New
}

// threeAtMaker tells whether a motor whose supply is not said has three phases: by the
// new one's plate, or else because a second leg or pair was read.
func threeAtMaker(f *record.Fan) bool {
	j, taken := JudgedReading(f)
	if p := f.New.Fit.Phases.Value(); p != "" && (!taken || j.Side == &f.New) {
		return p == record.ThreePhases
	}
	if !taken {
		return false
	}
	r := j.Reading
	return known(&r.Amps[1]) || known(&r.Amps[2]) || known(&r.Volts[1]) || known(&r.Volts[2])
}

// LineVolts answers with the average voltage of a reading, or the one there is.
// Three that can't belong together have no average.
func LineVolts(f *record.Fan, r *record.Reading) Answer[unit.Voltage] {
	if ThreePhase(f) {
		if u := VoltsUnbalance(r).Share; u.Fault != nil {
			return Answer[unit.Voltage]{Fault: u.Fault}
		}
		return VoltsMean(r)
	}
	return Read("V", FromPlace, &r.Volts[0])
}

// LineAmps answers with the average current of a reading, or the one there is.
func LineAmps(f *record.Fan, r *record.Reading) Answer[unit.Current] {
	if ThreePhase(f) {
		return AmpsMean(r)
	}
	return LegAmps(r, 0)
}

// PlateVolts answers with the voltage of a reading over that of the plate, as the
// motor's leads are connected.
func PlateVolts(f *record.Fan, s *record.Side, r *record.Reading) Answer[unit.Ratio] {
	var a Ask
	v, plate := Use(&a, "V", LineVolts(f, r)), Want(&a, "Vₚ", &s.MotorVolts)
	return Solve(&a, FromPlace, "phase.plate.volts", At{"v": v.Term, "plate": plate.Term}, func() (unit.Ratio, error) {
		share, err := phase.VoltsAgainstPlate(v.V(), phase.Meter[unit.Voltage]{}, plate.V())
		return share.Value, err
	})
}

// PlateVoltsVerdict judges a voltage over the plate's: within a tenth either way.
func PlateVoltsVerdict(share Answer[unit.Ratio]) Verdict {
	l := limitOf[unit.Ratio]{rule: RulePlateVolts, method: "phase.plate.volts", scale: &unit.Share, level: Stop}
	high := l.hold(share, fixed(1+phase.PlateTolerance, ""))
	l.least = true
	low := l.hold(share, fixed(1-phase.PlateTolerance, ""))
	return Worst([]Verdict{low, high})
}

// SystemVolts answers with the nominal voltage of the system that a reading's
// voltage is nearest to.
func SystemVolts(f *record.Fan, r *record.Reading) Answer[unit.Voltage] {
	var a Ask
	v := Use(&a, "V", LineVolts(f, r))
	v.Band = 0
	return Solve(&a, FromPlace, "phase.system", At{"v": v.Term}, func() (unit.Voltage, error) {
		s, err := phase.SystemNear(v.V())
		return s.Nominal, err
	})
}

// SystemVerdict judges a reading's voltage against what its system may bring to a
// motor. The windows are known from memory only, and so stop nobody.
func SystemVerdict(f *record.Fan, r *record.Reading) Verdict {
	v := Verdict{Level: Unjudged, Rule: RuleSystemVolts, Method: "phase.system"}
	volts, system := LineVolts(f, r), SystemVolts(f, r)
	if !system.Known() {
		v.Wanted, v.Fault = system.Wanted, system.Fault
		return v
	}
	found, err := phase.VoltsAtMotor(volts.Value, phase.Meter[unit.Voltage]{Floor: volts.Band}, system.Value)
	if err != nil {
		v.Fault = &Fault{Err: err}
		return v
	}
	v.Level = min(standings[found.Standing], Watch)
	if v.Level != Unjudged {
		v.Value, v.Limit = Figure{&unit.Potential, float64(volts.Value)}, Figure{&unit.Potential, float64(system.Value)}
	}
	return v
}

// PlateSystemVerdict judges whether a motor's plate suits the system: 230 V on
// 208 V has little room for a drop on the way, 440 V on 480 V little above.
func PlateSystemVerdict(s *record.Side, system Answer[unit.Voltage]) Verdict {
	v := Verdict{Level: Unjudged, Rule: RulePlateSystem, Method: "phase.system.plate"}
	plate := Read("Vₚ", FromPlate, &s.MotorVolts)
	if !plate.Known() || !system.Known() {
		v.Wanted = append(append(v.Wanted, plate.open()...), system.open()...)
		return v
	}
	v.Value, v.Limit = Figure{&unit.Potential, float64(plate.Value)}, Figure{&unit.Potential, float64(system.Value)}
	standing, err := phase.PlateOnSystem(plate.Value, system.Value)
	if err != nil {
		v.Fault = &Fault{Err: err}
		return v
	}
	if v.Level = standings[standing]; v.Level != Within && plate.Value < system.Value {
		v.Rule = RulePlateHigh
	}
	return v
}

// ConnectionVerdicts asks about the motor's connection, high voltage or low, where
// volts or amps lie near twice or half the plate's. Half the amps may also be a
// light load.
func ConnectionVerdicts(f *record.Fan, s *record.Side, volts, amps *record.Reading) []Verdict {
	var all []Verdict
	if hint, ok := connection(LineVolts(f, volts), &s.MotorVolts); ok {
		all = append(all, Verdict{Level: Watch, Rule: connectionRules[hint][0], Method: "phase.connection"})
	}
	switch hint, ok := connection(LineAmps(f, amps), &s.MotorAmps); {
	case hint == phase.ConnectionDouble:
		all = append(all, Verdict{Level: Watch, Rule: connectionRules[hint][1], Method: "phase.connection"})
	case ok:
		all = append(all, Verdict{Level: Unjudged, Rule: connectionRules[hint][1], Method: "phase.connection"})
	}
	return all
}

var connectionRules = map[phase.Connection][2]Rule{
	phase.ConnectionDouble: {RuleDoubleVolts, RuleDoubleAmps},
	phase.ConnectionHalf:   {RuleHalfVolts, RuleHalfAmps},
}

func connection[Q metered](reading Answer[Q], plate *record.Entry[Q]) (phase.Connection, bool) {
	hint, err := phase.ConnectionHint(reading.Value, plate.Value()) // what isn't known is zero, which has none
	return hint, err == nil && hint != phase.ConnectionPlain
}
