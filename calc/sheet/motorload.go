package sheet

import (
	"math"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// NewAmps answers with the new motor's current at a fan speed and air
// temperature: shaft power by the basis, by the cube of speed and with density,
// as load on the new motor, and only then as amps. It lies between the lowest
// and the highest of the named methods.
func NewAmps(f *record.Fan, b *Basis, speed Answer[unit.Speed], air Answer[unit.Temperature]) Answer[unit.Current] {
	var a Ask
	s := &f.New
	n := Use(&a, "n₂", speed)
	a.miss(b.Wanted...)
	if !b.Known() {
		a.miss(b.Speed.open()...)
		r := Solve(&a, b.From, "air.amps", nil, func() (unit.Current, error) { return 0, nil })
		if r.Known() { // nothing to start from, and nothing to ask for
			r = Answer[unit.Current]{Wanted: []record.Place{&f.Target.Power}}
		}
		return r
	}
	p, n1 := Use(&a, "P₁", b.Power), Use(&a, "n₁", b.Speed)
	k := Take(&a, "ρ₂/ρ₁", unit.Ratio(b.warmth(air)))
	power, amps := Want(&a, "Pₙ", &s.MotorPower), Want(&a, "Iₙ", &s.MotorAmps)
	if s.NoLoadAmps.State() == record.Known {
		Want(&a, "I₀", &s.NoLoadAmps).Band = 0
	}
	p.Band = 0 // the ends of the methods already hold it
	m, _ := plateOf(s)
	ends := func() (low, high unit.Current, ok bool) {
		r := float64(n.V() / n1.V())
		m.power, m.amps = power.V(), amps.V()
		return b.amps(m, r*r*r*float64(k.V()))
	}
	r := Solve(&a, b.From, "air.amps", At{"load": power.Term, "fla": amps.Term}, func() (unit.Current, error) {
		low, high, _ := ends()
		return (low + high) / 2, nil
	})
	if low, high, ok := ends(); ok && r.Known() {
		r.Band += (high - low) / 2
	}
	return r
}

// OldAmpsLoad answers with the load of the old motor as found.
func OldAmpsLoad(f *record.Fan) Answer[unit.Ratio] {
	if !ampsTellLoad(f) {
		return Answer[unit.Ratio]{Wanted: []record.Place{&f.Target.Power}}
	}
	return Load(f, &f.Old, &f.Old.Reading)
}

// NewLoad answers with the new motor's load, as a share of its plate power, at
// a fan speed and air temperature.
func NewLoad(f *record.Fan, b *Basis, speed Answer[unit.Speed], air Answer[unit.Temperature]) Answer[unit.Ratio] {
	var a Ask
	if !b.Known() {
		a.miss(b.Wanted...)
		if len(a.wanted) == 0 {
			a.miss(&f.Target.Power)
		}
	}
	p, n1, n2 := Use(&a, "P₁", b.Power), Use(&a, "n₁", b.Speed), Use(&a, "n₂", speed)
	k, plate := Take(&a, "ρ₂/ρ₁", unit.Ratio(b.warmth(air))), Want(&a, "Pₙ", &f.New.MotorPower)
	return Solve(&a, b.From, "air.load.new", nil, func() (unit.Ratio, error) {
		r := float64(n2.V() / n1.V())
		return unit.Ratio(float64(p.V()/plate.V()) * r * r * r * float64(k.V())), nil
	})
}

// MotorVerdict judges the new motor's current against its plate and its
// service-factor amps, at the coldest start where that is known.
func MotorVerdict(f *record.Fan, b *Basis, speed Answer[unit.Speed]) Verdict {
	air := Read("T", FromPlace, &f.ColdestAir)
	amps := NewAmps(f, b, speed, air)
	if !amps.Known() {
		return Verdict{Level: Unjudged, Rule: RulePlateAmps, Method: "motor.limits", Wanted: amps.open()}
	}
	v := limitsOf(f).judge(amps.Low(), amps.High())
	v.Cold = b.warmth(air) != 1
	if v.Level == Unjudged && len(v.Wanted) == 0 {
		v.Wanted = unsettledAmps(f)
	}
	return v
}

// WheelVerdict judges a speed against the wheel's greatest.
func WheelVerdict(f *record.Fan, speed Answer[unit.Speed]) Verdict {
	return limitOf[unit.Speed]{rule: RuleWheelMax, method: "wheel.max", scale: &unit.Rotation, level: Stop}.
		hold(speed, Read("n", FromStamp, &f.New.WheelMax))
}

// UnbalanceVerdict judges the voltage unbalance at the motor: above 1 % it
// takes load off the motor, above 5 % the motor is not to be run.
func UnbalanceVerdict(f *record.Fan) Verdict {
	u := VoltageUnbalance(f)
	if u.Known() && u.Value > phase.UnbalanceMost {
		return limitOf[unit.Ratio]{rule: RuleUnbalance, method: "phase.derating", scale: &unit.Share, level: Stop}.hold(u, fixed(phase.UnbalanceMost, ""))
	}
	return limitOf[unit.Ratio]{rule: RuleUnbalance, method: "phase.derating", scale: &unit.Share, level: Watch}.hold(u, fixed(phase.UnbalanceFree, ""))
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
	l := limitsOf(f)
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
		if !ok || l.Speed.Value < first.Speed.Value {
			first, ok = l, true
		}
	}
	return first, ok, complete
}

// ampsSpeed answers with the fan speed at which the high end of the methods
// reaches a current. It is found by halving: amps rise with speed.
func ampsSpeed(f *record.Fan, b *Basis, most Answer[unit.Current]) Answer[unit.Speed] {
	var a Ask
	i := Use(&a, "I", most)
	i.Band = 0
	if !b.Known() {
		a.miss(b.Wanted...)
		if len(a.wanted) == 0 {
			a.miss(&f.Target.Power)
		}
	}
	n1 := Use(&a, "n₁", b.Speed)
	k := Take(&a, "ρ₂/ρ₁", unit.Ratio(b.warmth(Read("T", FromPlace, &f.ColdestAir))))
	Want(&a, "Pₙ", &f.New.MotorPower)
	m, _ := plateOf(&f.New)
	return Solve(&a, b.From, "air.limit", nil, func() (unit.Speed, error) {
		over := func(n unit.Speed) bool {
			r := float64(n / n1.V())
			_, high, ok := b.amps(m, r*r*r*float64(k.V()))
			return !ok || high > i.V()
		}
		low, high := unit.Speed(0), n1.V()
		for range 64 {
			if over(high) {
				break
			}
			low, high = high, 2*high
		}
		for range 60 {
			mid := low + (high-low)/2
			if over(mid) {
				high = mid
			} else {
				low = mid
			}
		}
		return unit.Speed(math.Max(float64(low), 0)), nil
	})
}
