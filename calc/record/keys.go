package record

import (
	"iter"
	"strings"
	"sync"

	"roofside/calc/unit"
)

// Places lists every place of f with its key, once.
func (f *Fan) Places() iter.Seq2[string, Place] {
	return f.walk
}

// Place returns the place with a key, or nil.
func (f *Fan) Place(key string) Place {
	for have, p := range f.Places() {
		if have == key {
			return p
		}
	}
	return nil
}

// KeyOf returns the key of a place of f, "" for none.
func (f *Fan) KeyOf(p Place) string {
	for k, have := range f.Places() {
		if have == p {
			return k
		}
	}
	return ""
}

// A lister walks the places and binds each to its facts.
type lister struct {
	*walk
	prefix string

	clamp, volts *Fact // of what the fan's meters read
}

// A walk goes from place to place. Keys are joined once: every fan has the same, but
// for its rows, and those keep their own.
type walk struct {
	yield   func(string, Place) bool
	keys    []string // of the places from here on, as far as they have been joined
	joined  []string // here
	stopped bool
}

// fixed are the keys of what is not in a list, in their order.
var fixed = sync.OnceValue(func() []string {
	f := &Fan{}
	l := f.lister(nil, func(string, Place) bool { return true })
	l.fan(f)
	return l.joined
})

func (f *Fan) lister(keys []string, yield func(string, Place) bool) *lister {
	return &lister{walk: &walk{yield: yield, keys: keys}, clamp: f.Clamp.reads(&clampAmps), volts: f.Voltmeter.reads(&meterVolts)}
}

// walk lists the places of f.
func (f *Fan) walk(yield func(string, Place) bool) { f.lister(fixed(), yield).fan(f) }

func (l *lister) add(key string, p Place) {
	if l.stopped {
		return
	}
	if len(l.keys) > 0 {
		key, l.keys = l.keys[0], l.keys[1:]
	} else {
		key = l.prefix + key
		l.joined = append(l.joined, key)
	}
	l.stopped = !l.yield(key, p)
}

func put[Q unit.Quantity](l *lister, key string, e *Entry[Q], f *Fact) {
	e.fact = f
	l.add(key, e)
}

func (l *lister) under(prefix string) *lister {
	m := *l
	m.prefix += prefix
	return &m
}

// row lists a row, which keeps its keys.
func (l *lister) row(prefix string, keys *[]string, list func(*lister)) {
	if l.stopped {
		return
	}
	if len(*keys) > 0 && !strings.HasPrefix((*keys)[0], prefix) {
		*keys = nil // its id was changed
	}
	m := *l
	m.walk, m.prefix = &walk{yield: l.yield, keys: *keys}, prefix
	list(&m)
	if m.stopped {
		l.stopped = true
	} else if *keys == nil {
		*keys = m.joined
	}
}

func (l *lister) fan(f *Fan) {
	l.add("name", &f.Name)
	l.add("step", &f.Step)
	l.add("supply", &f.Supply)
	l.add("mount", &f.Mount)
	l.add("same-wheel", &f.SameWheel)
	put(l, "altitude", &f.Altitude, &altitude)
	put(l, "coldest-air", &f.ColdestAir, &airTemperature)
	put(l, "hottest-air", &f.HottestAir, &airTemperature)
	l.add("code-edition", &f.Edition)
	l.under("target.").target(&f.Target)
	l.under("old.").side(&f.Old)
	l.under("new.").side(&f.New)
	l.under("new.").card(&f.Card)
	for _, t := range f.Trials {
		l.row(trialPrefix+t.ID+".", &t.keys, func(l *lister) { l.trial(t) })
	}
	l.under("hood.").hood(&f.Hood)
	l.under("want.").want(&f.Want)
	l.under("meter.").meters(f)
	l.under("opening.").opening(&f.Opening)
	l.under("raceway.").raceway(&f.Raceway)
	for _, w := range f.Wires {
		l.row(wirePrefix+w.ID+".", &w.keys, func(l *lister) { l.wire(w) })
	}
	l.under("box.").box(&f.Box)
	l.under("circuit.").circuit(&f.Circuit)
	l.under("check.").checks(f)
	l.under("handover.").handover(&f.Handover)
}

func (l *lister) target(t *Target) {
	put(l, "speed", &t.Speed, &reportSpeed)
	put(l, "tag-speed", &t.TagSpeed, &plateSpeed)
	put(l, "rated-speed", &t.Rated, &plateSpeed)
	put(l, "rated-power", &t.RatedPower, &platePower)
	l.add("use", &t.Use)
	put(l, "over", &t.Over, &share)
	put(l, "airflow", &t.Airflow, &reportFlow)
	put(l, "pressure", &t.Pressure, &reportPressure)
	put(l, "power", &t.Power, &reportPower)
	put(l, "air-temperature", &t.AirTemp, &airTemperature)
}

func (l *lister) side(s *Side) {
	put(l, "motor-power", &s.MotorPower, &platePower)
	put(l, "motor-volts", &s.MotorVolts, &plateVolts)
	put(l, "motor-amps", &s.MotorAmps, &plateAmps)
	put(l, "service-factor", &s.ServiceFactor, &serviceFactor)
	put(l, "service-factor-amps", &s.ServiceFactorAmps, &plateAmps)
	put(l, "motor-speed", &s.MotorSpeed, &plateSpeed)
	put(l, "motor-frequency", &s.MotorFrequency, &plateFrequency)
	put(l, "minimum-circuit-ampacity", &s.MinimumAmpacity, &plateAmps)
	put(l, "maximum-overcurrent", &s.MaximumDevice, &plateAmps)
	put(l, "power-factor", &s.PowerFactor, &plateFactor)
	put(l, "efficiency", &s.Efficiency, &efficiency)
	l.add("rise-40", &s.CoolRise)
	l.add("leads", &s.Leads)
	l.add("rotation", &s.Rotation)
	l.add("rotation-low", &s.RotationLow)
	l.add("rotation-leads", &s.RotationLeads)
	l.add("protection", &s.Protection)
	l.add("restart", &s.Restart)
	put(l, "overload-dial", &s.Dial, &dialAmps)
	put(l, "wheel-diameter", &s.WheelDiameter, &diameter)
	put(l, "wheel-max-speed", &s.WheelMax, &plateSpeed)
	l.add("section", &s.Section)
	l.add("groove", &s.Groove)
	l.add("sheave", &s.Sheave)
	put(l, "motor-sheave", &s.MotorSheave, &diameter)
	put(l, "motor-sheave-outside", &s.MotorOutside, &taped)
	put(l, "motor-sheave-gap", &s.MotorGap, &gap)
	put(l, "groove-angle", &s.GrooveAngle, &grooveAngle)
	put(l, "fan-sheave", &s.FanSheave, &diameter)
	put(l, "fan-sheave-outside", &s.FanOutside, &taped)
	put(l, "turns", &s.Turns, &turnsOpen)
	put(l, "anchor-turns", &s.AnchorTurns, &stampedTurns)
	put(l, "anchor-pitch", &s.AnchorPitch, &diameter)
	put(l, "second-anchor-turns", &s.SecondAnchorTurns, &stampedTurns)
	put(l, "second-anchor-pitch", &s.SecondAnchorPitch, &diameter)
	put(l, "most-turns", &s.MostTurns, &stampedTurns)
	put(l, "flange-lead", &s.FlangeLead, &lead)
	l.add("belt-number", &s.BeltNumber)
	l.add("belts", &s.Belts)
	put(l, "center-distance", &s.Center, &taped)
	put(l, "travel-toward", &s.TravelToward, &travel)
	put(l, "travel-away", &s.TravelAway, &travel)
	l.fit(&s.Fit)
	put(l, "count-fan-turns", &s.CountFan, &countedTurns)
	put(l, "count-motor-turns", &s.CountMotor, &countedTurns)
	l.add("belt-healthy", &s.BeltHealthy)
	put(l, "no-load-amps", &s.NoLoadAmps, l.clamp)
	l.reading(&s.Reading)
}

func (l *lister) reading(r *Reading) {
	put(l, "speed", &r.Speed, &tachometer)
	put(l, "motor-tachometer", &r.MotorTach, &tachometer)
	for i, leg := range []string{"amps-1", "amps-2", "amps-3"} {
		put(l, leg, &r.Amps[i], l.clamp)
	}
	for i, pair := range []string{"volts-12", "volts-23", "volts-31"} {
		put(l, pair, &r.Volts[i], l.volts)
	}
	put(l, "clamp-turns", &r.ClampTurns, &clampTurns)
	put(l, "frequency", &r.Frequency, &meterFrequency)
	put(l, "air-temperature", &r.AirTemp, &airTemperature)
	put(l, "airflow", &r.Airflow, &flow)
	put(l, "pressure", &r.Pressure, &pressure)
	l.add("tipped-up", &r.TippedUp)
	l.add("run-at", &r.RunAt)
}

func (l *lister) trial(t *Trial) {
	put(l, "turns", &t.Turns, &turnsOpen)
	l.add("at", &t.At)
	l.add("accepted", &t.Accepted)
	l.add("leads", &t.Leads)
	l.reading(&t.Reading)
	l.belt(&t.Belt)
}

func (l *lister) card(c *BeltCard) {
	put(l, "belt-rating", &c.Rating, &platePower)
	put(l, "belt-listed-force", &c.Force, &listedForce)
	put(l, "belt-mass", &c.Mass, &beltMass)
}

func (l *lister) belt(b *BeltReading) {
	l.add("belt-age", &b.Age)
	put(l, "belt-force", &b.Force, &pressed)
	put(l, "belt-deflection", &b.Deflection, &deflection)
	put(l, "belt-frequency", &b.Frequency, &plucked)
	put(l, "alignment-gap", &b.Gap, &offset)
}

func (l *lister) hood(h *Hood) {
	l.add("listing", &h.Listing)
	put(l, "label-airflow", &h.LabelAirflow, &reportFlow)
	l.add("kind", &h.Kind)
	l.add("duty", &h.Duty)
	put(l, "length", &h.Length, &hoodLength)
	put(l, "airflow", &h.Airflow, &flow)
	put(l, "duct-width", &h.DuctWidth, &duct)
	put(l, "duct-height", &h.DuctHeight, &duct)
	put(l, "duct-diameter", &h.DuctDiameter, &duct)
	put(l, "makeup-airflow", &h.MakeUp, &flowOrNone)
	put(l, "transfer-airflow", &h.Transfer, &flowOrNone)
	put(l, "space-pressure", &h.SpacePressure, &spacePressure)
}

func (l *lister) meters(f *Fan) {
	put(l, "clamp-accuracy", &f.Clamp.Share, &meterShare)
	put(l, "clamp-digits", &f.Clamp.Digits, &clampDigits)
	put(l, "voltmeter-accuracy", &f.Voltmeter.Share, &meterShare)
	put(l, "voltmeter-digits", &f.Voltmeter.Digits, &voltsDigits)
}

func (l *lister) want(w *Want) {
	l.add("goal", &w.Goal)
	put(l, "speed", &w.Speed, &wish.speed)
	put(l, "airflow", &w.Airflow, &wish.flow)
	put(l, "pressure", &w.Pressure, &wish.pressure)
	put(l, "power", &w.Power, &wish.power)
	put(l, "air-temperature", &w.AirTemp, &airTemperature)
}
