package sheet

import (
	"roofside/calc/airflow"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Basis is the power that the fan is known to take at one speed, from which
// it is carried to others by the fan laws: from amps of a trial of the new
// drive, else of the old motor, else from the balance report. Amps themselves
// are never carried by the cube.
type Basis struct {
	From   From
	Speed  Answer[unit.Speed]
	Air    Answer[unit.Temperature] // of that reading; unknown air is taken as unchanged
	Power  Answer[unit.Power]       // the middle of the methods
	Wanted []record.Place           // why there is none
	trial  *record.Trial            // of the new drive, where its amps are the basis
	chains []chain
	volts  unit.Voltage // of that reading; 0 when not read

	open bool           // what it rests on is known, and bounds nothing
	out  unit.Frequency // of a drive, that amps are asked at; 0 for the one that was read
}

// A chain carries one method of telling load through the fan laws, so that
// what one motor's amps said is turned back to the other's the same way.
type chain struct {
	low, high unit.Power
	half      bool
	assumed   float64
}

// Known tells whether there is a basis.
func (b *Basis) Known() bool { return len(b.chains) > 0 }

// FanBasis returns what the new fan's power is carried from. Readings that
// can't be are a fault and hide what would come after them.
func FanBasis(f *record.Fan) *Basis { return fanBasis(f, trialsOf(f)) }

func fanBasis(f *record.Fan, s *trials) *Basis {
	for i := len(f.Trials) - 1; i >= 0; i-- {
		t := f.Trials[i]
		if !clamped(&t.Reading) {
			continue
		}
		b := ampsBasis(f, FromTrialAmps, &f.New, &t.Reading, trialSpeed(s, t))
		b.trial = t
		if b.Known() || b.said() {
			return b
		}
	}
	t := &f.Target
	if f.SameWheel.Value() == record.No { // the old motor tells nothing of another wheel
		return powerBasis(t, &t.RatedPower, Read("n", FromRating, &t.Rated))
	}
	if f.SameWheel.Value() != record.Yes {
		ask := []record.Place{&f.SameWheel}
		return &Basis{Wanted: ask, Power: Answer[unit.Power]{Wanted: ask}, Speed: Answer[unit.Speed]{Wanted: ask}}
	}
	if clamped(&f.Old.Reading) && ampsTellLoad(f) {
		if b := ampsBasis(f, FromOldAmps, &f.Old, &f.Old.Reading, FanSpeed(f, &f.Old)); b.Known() || b.said() || !known(&t.Power) {
			return b
		}
	}
	b := powerBasis(t, &t.Power, Read("n", FromReport, &t.Speed))
	if known(&t.Power) || !ampsTellLoad(f) {
		return b
	}
	if trial := lastTrial(f); trial != nil {
		b.Wanted = append([]record.Place{&trial.Reading.Amps[0]}, b.Wanted...)
	} else if runs := known(&f.Old.Reading.Speed) || !known(&f.Old.CountFan); runs { // a fan whose turns were counted by hand gives no amps
		b.Wanted = append([]record.Place{&f.Old.Reading.Amps[0]}, b.Wanted...)
	}
	return b
}

// said tells whether a basis hides what would come after it, though it is none: it is
// at fault, or nothing bounds it.
func (b *Basis) said() bool { return b.open || b.Power.Fault != nil || b.Speed.Fault != nil }

// clamped tells whether any leg's amps were entered.
func clamped(r *record.Reading) bool {
	return known(&r.Amps[0]) || known(&r.Amps[1]) || known(&r.Amps[2])
}

// powerBasis returns a basis from the power that a report or a rating states at
// a speed.
func powerBasis(t *record.Target, power *record.Entry[unit.Power], speed Answer[unit.Speed]) *Basis {
	p := Read("P", FromReport, power)
	b := &Basis{From: FromReport, Speed: speed, Air: Read("T", FromReport, &t.AirTemp), Power: p, Wanted: append(p.open(), speed.open()...)}
	if p.Known() {
		low, high := p.Low(), p.High()
		b.chains = []chain{{low: low, high: high}, {low: low, high: high, half: true, assumed: leastNoLoad}, {low: low, high: high, half: true, assumed: mostNoLoad}}
	}
	return b.bounded()
}

// trialSpeed answers with the fan's speed at a trial: read, or else what the
// drive gives at its turns. A tachometer that has caught twice or half is not
// read.
func trialSpeed(s *trials, t *record.Trial) Answer[unit.Speed] {
	if s.believed(t) {
		return Read("n₂", FromTachometer, &t.Reading.Speed)
	}
	return trialExpected(s.f, t)
}

// trialExpected answers with the speed that motor and sheaves give the fan at a
// trial, whatever a tachometer on it says.
func trialExpected(f *record.Fan, t *record.Trial) Answer[unit.Speed] {
	return trialAt(f, t, MotorSpeed(f, &f.New, &t.Reading, noLoad))
}

// trialAt is [trialExpected] of a motor at a speed.
func trialAt(f *record.Fan, t *record.Trial, motor Answer[unit.Speed]) Answer[unit.Speed] {
	return byThePitches(motor, MotorPitchAt(&f.New, Read("t", FromPlace, &t.Turns)), FanPitch(&f.New))
}

func ampsBasis(f *record.Fan, from From, s *record.Side, r *record.Reading, speed Answer[unit.Speed]) *Basis {
	b := &Basis{From: from, Speed: speed, Air: Read("T", FromPlace, &r.AirTemp)}
	if v := VoltsMean(r); v.Known() {
		b.volts = v.Value
	}
	var powers []Answer[unit.Power]
	for _, share := range Shares(f, s, r) {
		p := shaftPower(s, share)
		powers = append(powers, p)
		if p.Known() {
			b.chains = append(b.chains, chain{max(p.Low(), 0), p.High(), share.half, share.assumed})
		}
	}
	if len(powers) == 0 { // amps that don't tell load
		b.Wanted = []record.Place{&f.Target.Power}
		b.Power.Wanted = b.Wanted
		return b
	}
	b.Power = spread("P", powers)
	b.Wanted = append(b.Power.open(), speed.open()...)
	return b.bounded()
}

// bounded returns b where its power and its speed are known to lie somewhere;
// otherwise there is no basis, and what would bound it is wanted.
func (b *Basis) bounded() *Basis {
	b.open = !b.Power.Bounded() || !b.Speed.Bounded()
	b.Power, b.Speed = settled(b.Power), settled(b.Speed)
	if !b.Power.Known() || !b.Speed.Known() {
		b.chains, b.Wanted = nil, append(b.Power.open(), b.Speed.open()...)
	}
	return b
}

// settled returns an answer that something bounds as it is; of any other, what it
// wants to be bounded.
func settled[Q unit.Quantity](a Answer[Q]) Answer[Q] {
	if a.Bounded() {
		return a
	}
	open := Answer[Q]{From: a.From}
	if p := a.Steps.Unsettled(); p != nil {
		open.Wanted = []record.Place{p}
	}
	return open
}

func shaftPower(s *record.Side, share Share) Answer[unit.Power] {
	var a Ask
	plate, load := Want(&a, "Pₙ", &s.MotorPower), Use(&a, "L", share.Load)
	return Solve(&a, FromPlace, "air.shaft", nil, func() (unit.Power, error) {
		return plate.V() * unit.Power(load.V()), nil
	})
}

// A motor is a motor's plate, in plain numbers.
type motor struct {
	power  unit.Power
	amps   unit.Current
	noLoad unit.Current // 0 when not read
	volts  unit.Voltage // of the plate; 0 when not read
	torque float64      // what a share of plate power takes of plate torque
}

// plateOf returns the new motor's plate. Below its plate frequency a motor on a
// drive gives its plate's torque only, at plate amps, and so the less power the
// slower it runs: load counts by torque there, and the drive's output is wanted, unless
// it is out that is asked about.
func plateOf(f *record.Fan, out unit.Frequency) (m motor, wanted []record.Place) {
	s := &f.New
	var a Ask
	m.torque = 1
	if f.Supply.Value() == record.Inverter {
		base := Use(&a, "f₀", PlateFrequency(s))
		if out == 0 {
			out = Want(&a, "f", &driven(f).Frequency).V()
		}
		if out > 0 {
			m.torque = max(1, float64(base.V()/out))
		}
	}
	p, i := Want(&a, "Pₙ", &s.MotorPower), Want(&a, "Iₙ", &s.MotorAmps)
	m.power, m.amps = p.V(), i.V()
	if known(&s.NoLoadAmps) {
		m.noLoad = Want(&a, "I₀", &s.NoLoadAmps).V()
	}
	if known(&s.MotorVolts) {
		m.volts = Want(&a, "Vₙ", &s.MotorVolts).V()
	}
	if a.fault != nil {
		return m, []record.Place{a.fault.Place}
	}
	return m, a.wanted
}

// draw returns the amps a motor takes to give power p, the way a chain tells
// load.
func (m motor) draw(c chain, p unit.Power, volts unit.Voltage) (unit.Current, error) {
	load := unit.Ratio(float64(p/m.power) * m.torque)
	if load == 0 {
		return 0, nil // the least that a reading within its band may mean
	}
	if !c.half {
		plate := m.volts
		if plate == 0 || volts == 0 {
			plate, volts = unit.Volt, unit.Volt
		}
		return airflow.AmpsProportional(load, m.amps, volts, plate)
	}
	i0 := m.noLoad
	if i0 == 0 {
		k := c.assumed
		if k == 0 {
			k = leastNoLoad
		}
		i0 = m.amps * unit.Current(k)
	}
	return airflow.AmpsHalfNoLoad(load, i0, m.amps)
}

// amps returns the lowest and highest current of the methods between two
// factors of the basis' power.
func (b *Basis) amps(m motor, least, most float64) (low, high unit.Current, err error) {
	for i, c := range b.chains {
		l, err := m.draw(c, c.low*unit.Power(least), b.volts)
		if err != nil {
			return 0, 0, err
		}
		h, err := m.draw(c, c.high*unit.Power(most), b.volts)
		if err != nil {
			return 0, 0, err
		}
		if i == 0 {
			low, high = l, h
		}
		low, high = min(low, l), max(high, h)
	}
	return low, high, nil
}

// load returns the middle of the methods' load of a motor at factor times the
// basis' power.
func (b *Basis) load(m motor, factor float64) unit.Ratio {
	return unit.Ratio(float64(b.Power.Value/m.power) * factor)
}

// denser answers with how much denser air at t is than at the basis' reading.
func (b *Basis) denser(t Answer[unit.Temperature]) Answer[unit.Ratio] { return DensityRatio(b.Air, t) }

// coldest answers with how much denser the air of the coldest start is than at
// the basis' reading; where the reading itself was in colder air, that counts.
func (b *Basis) coldest(f *record.Fan) Answer[unit.Ratio] {
	var a Ask
	k := Use(&a, "ρ₂/ρ₁", b.denser(Read("T", FromPlace, &f.ColdestAir)))
	return Solve(&a, FromPlace, "air.density.ratio", nil, func() (unit.Ratio, error) { return max(1, k.V()), nil })
}

// Where the coldest start isn't entered, a motor is within only if it would be
// so at −40° too, on either scale (memory); where the reading's own air isn't known,
// only if it would be so had that been of the standard's 70 °F.
const (
	frozenAir   unit.Temperature = -40 + 273.15
	standardAir unit.Temperature = 70*5./9 + 273.15 - 32*5./9
)

// frozen returns how much denser the air of the coldest start may be than at the basis'
// reading, and what would tell; nil where both are known.
func (b *Basis) frozen(f *record.Fan) (unit.Ratio, record.Place) {
	air, coldest, tells := standardAir, frozenAir, record.Place(&f.ColdestAir)
	if b.Air.Known() {
		air = b.Air.Value
	}
	if f.ColdestAir.State() == record.Known {
		if tells = nil; len(b.Air.Wanted) > 0 {
			tells = b.Air.Wanted[0]
		}
		coldest = f.ColdestAir.Value()
	}
	return unit.Ratio(max(1, air/coldest)), tells
}
