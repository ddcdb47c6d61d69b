package sheet

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// NewAmps answers with the new motor's current at a fan speed and air
// temperature: shaft power by the basis, by the cube of speed and with density,
// as load on the new motor, and only then as amps. It lies between the lowest
// and the highest of the named methods.
func NewAmps(f *record.Fan, b *Basis, speed Answer[unit.Speed], air Answer[unit.Temperature]) Answer[unit.Current] {
	return ampsIn(f, b, speed, b.denser(air))
}

// ampsIn is [NewAmps] in air that much denser than at the basis' reading.
func ampsIn(f *record.Fan, b *Basis, speed Answer[unit.Speed], denser Answer[unit.Ratio]) Answer[unit.Current] {
	var a Ask
	s := &f.New
	n := Use(&a, "n₂", speed)
	b.ask(&a, f)
	p, n1 := Use(&a, "P₁", b.Power), Use(&a, "n₁", b.Speed)
	k := Use(&a, "ρ₂/ρ₁", denser)
	power, amps := Want(&a, "Pₙ", &s.MotorPower), Want(&a, "Iₙ", &s.MotorAmps)
	at := At{"load": power.Term, "fla": amps.Term}
	if known(&s.NoLoadAmps) {
		i0 := Want(&a, "I₀", &s.NoLoadAmps)
		i0.Band, at["i0"] = 0, i0.Term
	} else { // shown for what it is; the ends of the methods already hold it
		Take(&a, "I₀", amps.V()*(leastNoLoad+mostNoLoad)/2).Band = float64(amps.V() * (mostNoLoad - leastNoLoad) / 2)
	}
	p.Band = 0 // the ends of the methods already hold it
	if speed.From == FromTrial && b.trial != nil && speed.Value == b.Speed.Value {
		n.Band, n1.Band = 0, 0 // one reading, whose error cancels
	}
	m, lacks := plateOf(f, b.out)
	a.miss(lacks...)
	ends := func() (low, high unit.Current, err error) {
		r := float64(n.V() / n1.V())
		m.power, m.amps = power.V(), amps.V()
		factor := r * r * r * float64(k.V())
		return b.amps(m, factor, factor)
	}
	r := Solve(&a, b.From, "air.amps", at, func() (unit.Current, error) {
		low, high, err := ends()
		return low + (high-low)/2, err
	})
	if low, high, err := ends(); err == nil && r.Known() {
		r.Band += (high - low) / 2
	}
	return r
}

// ask asks for what the basis lacks.
func (b *Basis) ask(a *Ask, f *record.Fan) {
	if b.Known() {
		return
	}
	if fault := b.fault(); fault != nil {
		a.blame(fault.Place, fault.Err)
	}
	a.miss(b.Wanted...)
	if len(a.wanted) == 0 {
		a.miss(&f.Target.Power)
	}
}

func (b *Basis) fault() *Fault {
	if b.Power.Fault != nil {
		return b.Power.Fault
	}
	return b.Speed.Fault
}

// OldAmpsLoad answers with the load of the old motor as found.
func OldAmpsLoad(f *record.Fan) Answer[unit.Ratio] {
	return OldLoad(f, &f.Old)
}

// NewLoad answers with the new motor's load, as a share of its plate power, at
// a fan speed and air temperature.
func NewLoad(f *record.Fan, b *Basis, speed Answer[unit.Speed], air Answer[unit.Temperature]) Answer[unit.Ratio] {
	var a Ask
	b.ask(&a, f)
	p, n1, n2 := Use(&a, "P₁", b.Power), Use(&a, "n₁", b.Speed), Use(&a, "n₂", speed)
	k, plate := Use(&a, "ρ₂/ρ₁", b.denser(air)), Want(&a, "Pₙ", &f.New.MotorPower)
	return Solve(&a, b.From, "air.load.new", nil, func() (unit.Ratio, error) {
		r := float64(n2.V() / n1.V())
		return unit.Ratio(float64(p.V()/plate.V()) * r * r * r * float64(k.V())), nil
	})
}

// MotorVerdict judges the new motor's current against its plate and its
// service-factor amps, at the coldest start where that is known.
func MotorVerdict(f *record.Fan, b *Basis, speed Answer[unit.Speed]) Verdict {
	cold := b.coldest(f)
	amps := ampsIn(f, b, speed, cold)
	if v := stoppedOnDrive(f, limitsOf(f, &f.New), speed); !amps.Known() && v.Level == Stop {
		return v
	}
	if !amps.Known() {
		return Verdict{Level: Unjudged, Rule: RulePlateAmps, Method: "motor.limits", Wanted: amps.open(), Fault: amps.Fault}
	}
	l := limitsOf(f, &f.New)
	v := l.judge(amps.Low(), amps.High())
	v.Cold = cold.Value != 1
	if denser, tells := b.frozen(f); v.Level == Within && tells != nil {
		if colder := ampsIn(f, b, speed, fixed(denser, "air.density.ratio")); l.judge(colder.Low(), colder.High()).Level != Within {
			v = Verdict{Level: Unjudged, Rule: v.Rule, Method: v.Method, Wanted: []record.Place{tells}}
		}
	}
	if v.Level == Unjudged && len(v.Wanted) == 0 {
		v.Wanted = unsettledAmps(f)
	}
	return v
}

// WheelVerdict judges a speed of the new fan against its wheel's greatest.
func WheelVerdict(f *record.Fan, speed Answer[unit.Speed]) Verdict {
	faster := 0.
	if speed.From != FromTachometer && speed.From != FromTrial && speed.From != FromPlace {
		faster = rise(f)
		if f.Supply.Value() != record.Inverter && FanBasis(f).Known() {
			faster = 0
		}
	}
	return wheelVerdict(f, speed, Read("n", FromStamp, &f.New.WheelMax), faster)
}

// wheelVerdict judges a speed that may be higher by a share of itself, but not so much
// lower: see [rise]. The band of a speed by the plate holds that share already.
func wheelVerdict(f *record.Fan, speed, most Answer[unit.Speed], faster float64) Verdict {
	if f.Supply.Value() == record.Inverter {
		speed.Band += unit.Speed(faster) * speed.Value
	}
	may := speed
	if up := unit.Speed(faster) * speed.Value / 2; speed.Band >= 2*up*(1-slack) {
		may.Value, may.Band = speed.Value+up, speed.Band-up
	}
	v := limitOf[unit.Speed]{rule: RuleWheelMax, method: "wheel.max", scale: &unit.Rotation, level: Stop}.hold(may, most)
	if v.Value.Scale != nil {
		v.Value.Base = float64(speed.Value)
	}
	return v
}

// rise returns the share by which the new motor may turn faster than it is taken
// to: with its load unknown, up to its field, but not so much slower.
func rise(f *record.Fan) float64 {
	s, r := &f.New, running(f)
	n, field := MotorSpeed(f, s, r, noLoad), Synchronous(s, r)
	if n.From != FromPlate && n.From != FromInverter || !n.Known() || !field.Known() {
		return 0
	}
	return max(0, float64(field.Value/n.Value)-1)
}

// UnbalanceVerdict judges the voltage unbalance at the motor, or ahead of its drive:
// above 1 % it derates the motor, above 5 % the motor is not to be run.
func UnbalanceVerdict(f *record.Fan) Verdict {
	return SupplyUnbalance(f, &f.New, voltsReading(f)).Verdict
}

// A SpeedLimit is the speed at which one limit is met.
type SpeedLimit struct {
	Rule  Rule
	Level Level // beyond it
	Speed Answer[unit.Speed]
}

// SpeedLimits answers with the speeds at which the new fan meets its limits:
// plate amps, service-factor amps, the wheel's greatest speed. Amps are taken
// at the high end of the methods and at the coldest start.
func SpeedLimits(f *record.Fan, b *Basis) []SpeedLimit {
	l := limitsOf(f, &f.New)
	out := []SpeedLimit{{RulePlateAmps, Watch, ampsSpeed(f, b, l.plate)}}
	if l.void {
		out[0] = SpeedLimit{RuleServiceVoid, Stop, out[0].Speed}
	} else {
		out = append(out, SpeedLimit{RuleServiceAmps, Stop, ampsSpeed(f, b, l.service)})
	}
	return append(out, SpeedLimit{RuleWheelMax, Stop, Read("n", FromStamp, &f.New.WheelMax)})
}

// FirstLimit returns the limit that is met at the lowest speed; false when
// none is known. complete tells whether every limit is known: one that isn't
// could come first.
func FirstLimit(ls []SpeedLimit) (first SpeedLimit, ok, complete bool) {
	complete = true
	for _, l := range ls {
		if !l.Speed.Known() {
			complete = false
			continue
		}
		if !ok || l.Speed.Value < first.Speed.Value*(1-slack) {
			first, ok = l, true
		}
	}
	return first, ok, complete
}

// ampsSpeed answers with the fan speed at which the high end of the methods
// reaches a current: by each method amps go in a straight line with the cube of
// speed, and the one that gets there first counts.
func ampsSpeed(f *record.Fan, b *Basis, most Answer[unit.Current]) Answer[unit.Speed] {
	var a Ask
	most = settled(most)
	i := Use(&a, "I", most)
	i.Base, i.Band = float64(most.Low()), 0
	b.ask(&a, f)
	n1, k := Use(&a, "n₁", b.Speed), Use(&a, "ρ₂/ρ₁", b.coldest(f))
	power := Want(&a, "Pₙ", &f.New.MotorPower)
	at := At{"i": i.Term, "load": power.Term, "i0": {Place: &f.New.NoLoadAmps}}
	m, wanted := plateOf(f, b.out)
	a.miss(wanted...)
	return Solve(&a, b.From, "air.limit", at, func() (unit.Speed, error) {
		least := math.Inf(1)
		for _, c := range b.chains {
			once, err := m.draw(c, c.high, b.volts)
			if err != nil {
				return 0, err
			}
			twice, err := m.draw(c, 2*c.high, b.volts)
			if err != nil {
				return 0, err
			}
			least = min(least, 1+float64((i.V()-once)/(twice-once)))
		}
		if least <= 0 {
			return 0, limit.Break("i", limit.OutOfRange) // the motor idles on more
		}
		return n1.V() * unit.Speed(math.Cbrt(least/float64(k.V()))), nil
	})
}

// stoppedOnDrive is the stop of a motor on a drive whose least amps at a speed are too
// many; anything else is within.
func stoppedOnDrive(f *record.Fan, l motorLimits, speed Answer[unit.Speed]) Verdict {
	if least := leastOnDrive(f, speed); least.Known() {
		if v := l.judge(least.Low(), least.High()); v.Level == Stop {
			return v
		}
	}
	return Verdict{}
}

// leastOnDrive answers with the least that the new motor may take at a speed, by the amps
// of its drive's output at the latest reading. They tell no load, but torque grows with
// the square of speed, and what a motor draws above its idling current at least as much.
func leastOnDrive(f *record.Fan, speed Answer[unit.Speed]) Answer[unit.Current] {
	t, s := lastTrial(f), &f.New
	if f.Supply.Value() != record.Inverter || t == nil {
		return Answer[unit.Current]{Wanted: []record.Place{&f.Supply}}
	}
	var a Ask
	n := Use(&a, "n₂", speed)
	n1, i, full := Use(&a, "n₁", trialSpeed(trialsOf(f), t)), Use(&a, "I", AmpsMean(&t.Reading)), Want(&a, "Iₙ", &s.MotorAmps)
	idle := full.V() * mostNoLoad
	if known(&s.NoLoadAmps) {
		idle = Want(&a, "I₀", &s.NoLoadAmps).V()
	}
	return Solve(&a, FromTrialAmps, "air.amps", At{"i": i.Term, "fla": full.Term}, func() (unit.Current, error) {
		r := float64(n.V() / n1.V())
		if r < 1 {
			return 0, nil
		}
		load := max(0, i.V()-idle/2)
		return limit.Result(min(i.V(), idle/2) + load*unit.Current(r*r))
	})
}
