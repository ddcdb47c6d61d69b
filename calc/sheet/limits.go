package sheet

import (
	"math"

	"roofside/calc/airflow"
	"roofside/calc/drive"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// motorLimits are the currents that a motor's amps are held against.
type motorLimits struct {
	plate   Answer[unit.Current] // that the legs' average is held against: less what voltage unbalance takes off
	full    Answer[unit.Current] // as plated, that each leg is held against
	service Answer[unit.Current]
	side    *record.Side
	less    bool // plate is less than what is plated, or the volts leave none that is known
	void    bool // the service factor gives nothing here: the plate is the stop
}

// Beyond these a service factor gives nothing (common practice).
const (
	serviceAltitude    = 3300 * unit.Foot
	serviceUnbalance   = 0.01
	serviceAirCelsius  = 40
	serviceTemperature = unit.Temperature(serviceAirCelsius + 273.15)
)

// limitsOf returns what the amps of a side's motor are held against. Unbalanced volts
// are counted once: the curve of NEMA MG 1, 14.36, already holds the amps that they set
// apart, so that the average goes by the derated plate and each leg by the plate itself.
// What is read ahead of a drive does not reach its motor.
func limitsOf(f *record.Fan, s *record.Side) motorLimits {
	u := VoltageUnbalance(f)
	if f.Supply.Value() == record.Inverter {
		u = Answer[unit.Ratio]{}
	}
	plate := Read("Iₙ", FromPlace, &s.MotorAmps)
	l := motorLimits{side: s, plate: plate, full: plate, service: serviceAmps(s, plate), void: serviceVoid(f, u)}
	if u.Known() || u.Fault != nil {
		var a Ask
		full, share := Use(&a, "Iₙ", plate), Use(&a, "u", u)
		l.plate = Solve(&a, FromPlace, "phase.derating", At{"unbalance": share.Term}, func() (unit.Current, error) {
			d, err := phase.VoltageDerating(min(share.V(), max(u.Value, phase.UnbalanceMost))) // an error past the curve's end takes no more
			return full.V() * unit.Current(d.Factor), err
		})
		l.less = l.plate.Value < plate.Value*(1-slack)
	}
	if l.void {
		l.service = l.plate
	}
	return l
}

// each returns the limits that one leg is held against.
func (l motorLimits) each() motorLimits {
	if l.void {
		l.service = l.full
	}
	l.plate, l.less = l.full, false
	return l
}

// serviceAmps answers with the amps at the service factor: as plated, else what
// the plate's factor makes of full-load amps by the methods that tell load.
func serviceAmps(s *record.Side, full Answer[unit.Current]) Answer[unit.Current] {
	if known(&s.ServiceFactorAmps) || !known(&s.ServiceFactor) {
		return Read("Iₛ", FromPlace, &s.ServiceFactorAmps)
	}
	var straight, bent Ask
	k, i := Want(&straight, "SF", &s.ServiceFactor), Use(&straight, "Iₙ", full)
	high := Solve(&straight, FromPlace, "air.amps", At{"load": k.Term, "fla": i.Term}, func() (unit.Current, error) {
		return airflow.AmpsProportional(k.V(), i.V(), unit.Volt, unit.Volt)
	})
	k, i = Want(&bent, "SF", &s.ServiceFactor), Use(&bent, "Iₙ", full)
	low := Solve(&bent, FromPlace, "air.amps", At{"load": k.Term, "fla": i.Term}, func() (unit.Current, error) {
		return airflow.AmpsHalfNoLoad(k.V(), i.V()*mostNoLoad, i.V())
	})
	return spread("Iₛ", []Answer[unit.Current]{low, high})
}

// serviceVoid tells whether the new motor's service factor gives nothing: on a
// variable frequency drive, above 3300 ft, in air above 40 °C, or with more
// than 1 % of voltage unbalance (common practice).
func serviceVoid(f *record.Fan, u Answer[unit.Ratio]) bool {
	high := f.Altitude.Value() > serviceAltitude*(1+slack) // what isn't known is zero
	hot := false
	if t := lastTrial(f); t != nil {
		hot = t.Reading.AirTemp.Value() > serviceTemperature*(1+slack)
	}
	return f.Supply.Value() == record.Inverter || high || hot || float64(u.Value) > serviceUnbalance*(1+slack)
}

func lastTrial(f *record.Fan) *record.Trial {
	if len(f.Trials) == 0 {
		return nil
	}
	return f.Trials[len(f.Trials)-1]
}

// VoltageUnbalance answers with the unbalance of the line voltages, of the
// latest trial that has all three, or of the old fan.
func VoltageUnbalance(f *record.Fan) Answer[unit.Ratio] {
	r := voltsReading(f)
	if !volted(r) { // the common case, at no cost
		return Answer[unit.Ratio]{Wanted: []record.Place{&r.Volts[0], &r.Volts[1], &r.Volts[2]}}
	}
	return VoltsUnbalance(r).Share
}

func voltsReading(f *record.Fan) *record.Reading {
	r := &f.Old.Reading
	for _, t := range f.Trials {
		if known(&t.Reading.Volts[0]) && known(&t.Reading.Volts[1]) && known(&t.Reading.Volts[2]) {
			r = &t.Reading
		}
	}
	return r
}

// volted tells whether any volts were entered.
func volted(r *record.Reading) bool {
	return known(&r.Volts[0]) || known(&r.Volts[1]) || known(&r.Volts[2])
}

// judge holds a range of amps against the plate and the service factor.
func (l motorLimits) judge(low, high unit.Current) Verdict {
	v := Verdict{Rule: RulePlateAmps, Method: "motor.limits", Value: Figure{&unit.Amperage, float64(high)}}
	if math.IsInf(float64(high), 0) { // amps that nothing bounds
		v.Value = Figure{}
	}
	if !l.plate.Known() {
		v.Level, v.Wanted = Unjudged, l.plate.open()
		return v
	}
	plate := l.plate.Value
	least, most := l.plate.Low(), l.plate.High()
	v.Limit, v.Less = Figure{&unit.Amperage, float64(plate)}, l.less
	if l.service.Known() && low > l.service.High()*(1+slack) {
		v.Level, v.Rule, v.Value.Base, v.Limit.Base = Stop, RuleServiceAmps, float64(low), float64(l.service.High())
		if l.void {
			v.Rule = RuleServiceVoid
		}
		return v
	}
	if trip := l.full.Value * unit.Current(phase.OverloadMost); low > trip*(1+slack) { // no overload protection may let it through
		return Verdict{Level: Stop, Rule: RuleTripAmps, Method: "phase.overload", Value: Figure{&unit.Amperage, float64(low)}, Limit: Figure{&unit.Amperage, float64(trip)}}
	}
	switch {
	case high <= least*(1+slack):
	case low > most*(1+slack):
		v.Level, v.Value.Base = Watch, float64(low)
		if l.service.Known() && high > l.service.Low()*(1+slack) {
			v.Rule, v.Limit.Base, v.Less = RuleServiceNear, float64(l.service.Value), false
		}
		if v.Wanted = l.service.open(); l.service.Band > 0 {
			v.Wanted = []record.Place{&l.side.ServiceFactorAmps}
		}
	default:
		v.Level = Unjudged
	}
	return v
}

// usualTurns returns the least and greatest usual opening of the new sheave.
func usualTurns(s *record.Side) (least, most Answer[unit.Turns]) {
	section := drive.Section(s.Section.Value())
	if s.Section.State() == record.Unknown { // the belt's number may tell it
		section, _, _ = parseBelt(s.BeltNumber.Text())
	}
	most = Read("t", FromStamp, &s.MostTurns)
	if !known(&s.MostTurns) {
		if t, ok := drive.UsualMostTurns(section); ok {
			most = fixed(t, "drive.adjustable.usual")
		} else if section == "" {
			most.Wanted = []record.Place{&s.Section}
		}
	}
	if t, ok := drive.UsualLeastTurns(section); ok {
		return fixed(t, "drive.adjustable.usual"), most
	}
	return Answer[unit.Turns]{Wanted: []record.Place{&s.Section}}, most
}

// leastSheave answers with the least pitch diameter for a motor of the new
// fan's plate, and for its section; unknown where no table covers it. A narrow sheave's
// outside diameter is its pitch diameter.
func leastSheave(s *record.Side) (motor, section unit.Length) {
	cross := drive.Section(s.Section.Value())
	outside, narrow := drive.MinimumOutside(cross)
	least := drive.MinimumMotorSheave
	if narrow {
		section, least = outside, drive.MinimumMotorOutside
	} else if d, ok := drive.MinimumDatum(cross, grooveOf(s)); ok {
		section = d
	}
	motor, _, _ = least(s.MotorPower.Value(), poles(s)) // none for a motor that isn't known, nor for one of no table
	return motor, section
}
