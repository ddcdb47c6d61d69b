package sheet

import (
	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// Sheaves is what would bring the new drive to its target: another motor
// sheave under this fan sheave, another fan sheave over this motor sheave, or
// another motor speed, or on a variable frequency drive another frequency. Each
// is judged for what it is itself; Target is judged for what any of them leads
// to.
type Sheaves struct {
	Motor, Fan                    Answer[unit.Length]
	Speed                         Answer[unit.Speed]
	Frequency                     Answer[unit.Frequency]
	MotorVerdict, FanVerdict      Verdict
	FrequencyVerdict, AtTheTarget Verdict
}

// drivingSpeed answers with the motor speed that a new drive has at its target:
// that which the latest reading stands for, so that slip and a wrong diameter
// cancel as they do in the table; else the motor's own under the load there.
func drivingSpeed(f *record.Fan, target Answer[unit.Speed], fanPitch Answer[unit.Length]) Answer[unit.Speed] {
	s := &f.New
	if r := LastReading(f); r != nil {
		var a Ask
		n, D := Want(&a, "nᵣ", &r.Reading.Speed), Use(&a, "D", fanPitch)
		d := Use(&a, "dᵣ", MotorPitchAt(s, Read("tᵣ", FromTrial, &r.Turns)))
		return Solve(&a, FromTrial, "drive.speed", At{"driver": d.Term, "driven": D.Term}, func() (unit.Speed, error) {
			return drive.MotorSpeedFor(n.V(), d.V(), D.V())
		})
	}
	b := FanBasis(f)
	return MotorSpeed(f, s, running(f), NewLoad(f, b, target, b.Air))
}

// SheavesFor answers with the sheaves that would reach the target. An
// adjustable motor sheave is taken in the middle of its usual range, so that it
// can be set both ways.
func SheavesFor(f *record.Fan) Sheaves {
	s := &f.New
	target := TargetSpeed(f)
	d, D := MotorPitch(s), FanPitch(s)
	n := drivingSpeed(f, target, D)
	if s.Sheave.Value() == record.Adjustable {
		if _, most := usualTurns(s); most.Known() {
			var a Ask
			m := Use(&a, "t", most)
			d = MotorPitchAt(s, Solve(&a, FromPlace, "drive.middle", nil, func() (unit.Turns, error) { return m.V() / 2, nil }))
		}
	}
	var out Sheaves
	var a, b, c Ask
	{
		n, target, D := Use(&a, "n₁", n), Use(&a, "n₂", target), Use(&a, "D", D)
		out.Motor = Solve(&a, FromPlace, "drive.speed", At{"n": n.Term, "target": target.Term, "driven": D.Term}, func() (unit.Length, error) {
			return drive.DriverSheave(n.V(), target.V(), D.V())
		})
	}
	{
		n, target, d := Use(&b, "n₁", n), Use(&b, "n₂", target), Use(&b, "d", d)
		out.Fan = Solve(&b, FromPlace, "drive.speed", At{"n": n.Term, "target": target.Term, "driver": d.Term}, func() (unit.Length, error) {
			return drive.DrivenSheave(n.V(), target.V(), d.V())
		})
	}
	{
		target, d, D := Use(&c, "n₂", target), Use(&c, "d", MotorPitchAt(s, NowTurns(f))), Use(&c, "D", D)
		out.Speed = Solve(&c, FromPlace, "drive.speed", At{"target": target.Term, "driver": d.Term, "driven": D.Term}, func() (unit.Speed, error) {
			return drive.MotorSpeedFor(target.V(), d.V(), D.V())
		})
	}
	out.Frequency = drivingFrequency(f, out.Speed)
	out.judge(f, n, target)
	return out
}

// drivingFrequency answers with the output at which the drive's motor turns at
// the speed that these sheaves want: by the latest reading, whose slip and
// diameters cancel, carried to where the sheave stands now; or by the sheaves.
func drivingFrequency(f *record.Fan, want Answer[unit.Speed]) Answer[unit.Frequency] {
	s := &f.New
	var a Ask
	if f.Supply.Value() != record.Inverter {
		a.miss(&f.Supply)
	}
	if r := LastReading(f); r != nil {
		var b Ask
		here, now := Read("nᵣ", FromTrial, &r.Reading.Speed), NowTurns(f)
		if now.Value != r.Turns.Value() { // set on since then
			here = newSpeed(f, r, now)
		}
		read, target := Use(&b, "nᵣ", here), Use(&b, "n₂", TargetSpeed(f))
		motor := Use(&b, "n₁", MotorSpeed(f, s, &r.Reading, noLoad))
		want = Solve(&b, FromTrial, "drive.reading", nil, func() (unit.Speed, error) {
			return limit.Result(motor.V() * target.V() / read.V())
		})
	}
	n := Use(&a, "n", want)
	plate, base := Want(&a, "n₀", &s.MotorSpeed), Use(&a, "f₀", PlateFrequency(s))
	return Solve(&a, FromInverter, "drive.vfd", At{"plate": plate.Term, "plateFrequency": base.Term, "speed": n.Term}, func() (unit.Frequency, error) {
		poles, err := drive.Poles(base.V(), plate.V())
		if err != nil {
			return 0, err
		}
		return drive.FrequencyFor(plate.V(), base.V(), n.V(), poles)
	})
}

// judge holds the sheaves to what the motor and the section allow, and the
// target to wheel and motor.
func (h *Sheaves) judge(f *record.Fan, n Answer[unit.Speed], target Answer[unit.Speed]) {
	s := &f.New
	_, forSection := leastSheave(s)
	h.MotorVerdict = Worst(motorSheaveVerdicts(s, n, h.Motor))
	h.FanVerdict = leastVerdict(RuleSectionSheave, "drive.groove", h.Fan, forSection)
	h.FrequencyVerdict = limitOf[unit.Frequency]{rule: RuleOverFrequency, method: "drive.vfd", scale: &unit.Cycles, level: Watch}.
		hold(h.Frequency, PlateFrequency(s))
	b := FanBasis(f)
	if h.Frequency.Known() { // a drive is set to it
		b.out = h.Frequency.Value
	}
	h.AtTheTarget = Worst([]Verdict{WheelVerdict(f, target), MotorVerdict(f, b, target)})
}

// instead returns the sheave to change for the target: the motor's, unless only the
// fan's is within its limits; with its pitch diameter. What a belt's speed stops is a
// motor sheave, never a fan's.
func (h *Sheaves) instead() (Thing, Answer[unit.Length]) {
	if h.MotorVerdict.Level >= Watch && h.FanVerdict.Level < h.MotorVerdict.Level {
		return FanSheave, h.Fan
	}
	return MotorSheave, h.Motor
}

// another is how far, as a share, a sheave must differ to be another one (common
// practice): less is within what sheaves of one size differ by.
const another = 0.01

// offered returns the sheave to put on for the target, where one helps: it is another
// than the one that is there, nothing stops it, and at the target neither wheel nor motor
// is stopped, nor the motor loaded beyond its plate. No sheave mends a motor too small
// for its load.
func (h *Sheaves) offered(f *record.Fan, t Table) (Thing, Answer[unit.Length], bool) {
	thing, need := h.instead()
	if !need.Known() || !need.Bounded() {
		return "", need, false
	}
	has := FanPitch(&f.New)
	if thing == MotorSheave {
		has = h.nearest(f, t)
	}
	if abs(float64(need.Value/has.Value)-1) <= another {
		return "", need, false
	}
	wheel, motor := WheelVerdict(f, t.Target), MotorVerdict(f, t.Basis, t.Target)
	if wheel.Level == Stop || motor.Level >= Watch {
		return "", need, false
	}
	if t.Why == MustNotBe { // what bars the setting must surely bar the target no more
		switch t.Barred.Rule {
		case RuleBeltSpeed:
		case RuleWheelMax:
			return thing, need, wheel.Level == Within
		default:
			return thing, need, motor.Level == Within
		}
	}
	return thing, need, true
}

// nearest answers with the pitch diameter that the motor sheave has at the setting
// nearest to the target: where it can be set, that of a row.
func (h *Sheaves) nearest(f *record.Fan, t Table) Answer[unit.Length] {
	if i := nearest(t.Rows, t.Target.Value); i >= 0 {
		return fixed(t.Rows[i].Pitch, "")
	}
	return MotorPitchAt(&f.New, NowTurns(f))
}

// motorSheaveVerdicts judge a motor sheave by itself: the belt's speed on it, and the
// least that the motor and the section allow.
func motorSheaveVerdicts(s *record.Side, motor Answer[unit.Speed], pitch Answer[unit.Length]) []Verdict {
	forMotor, forSection := leastSheave(s)
	return []Verdict{
		BeltSpeedVerdict(beltSpeed(motor, pitch)),
		leastVerdict(RuleMotorSheave, "drive.motorsheave", pitch, forMotor),
		leastVerdict(RuleSectionSheave, "drive.groove", pitch, forSection),
	}
}

// leastVerdict holds a pitch diameter to a least one; 0 where no table covers
// the case, which is then not judged.
func leastVerdict(rule Rule, method string, d Answer[unit.Length], least unit.Length) Verdict {
	if least == 0 {
		return Verdict{Rule: rule, Method: method}
	}
	return limitOf[unit.Length]{rule: rule, method: method, scale: &unit.Shop, level: Watch, least: true}.hold(d, fixed(least, method))
}
