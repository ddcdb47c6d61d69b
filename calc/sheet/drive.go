package sheet

import (
	"roofside/calc/belt"
	"roofside/calc/drive"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// MotorPitch answers with the pitch diameter of the motor sheave: between its
// stamped settings for the turns it is open; or as entered; or from its taped
// outside diameter; or from its groove's width.
func MotorPitch(s *record.Side) Answer[unit.Length] {
	return MotorPitchAt(s, Turns(s))
}

// Turns answers with the turns a side's adjustable sheave is open: counted; or,
// for one that can't be closed to be counted, where its stamped settings put
// the pitch diameter that its groove's width gives.
func Turns(s *record.Side) Answer[unit.Turns] {
	if known(&s.Turns) || !known(&s.MotorGap) || !anchored(s) {
		return Read("t", FromPlace, &s.Turns)
	}
	var a Ask
	t1, d1, t2, d2 := anchorsOf(&a, s)
	d := Use(&a, "d", gapPitch(s))
	at := At{"t1": t1.Term, "d1": d1.Term, "t2": t2.Term, "d2": d2.Term, "pitch": d.Term}
	return Solve(&a, FromGap, "drive.adjustable", at, func() (unit.Turns, error) {
		sheave, err := drive.NewAdjustable(t1.V(), d1.V(), t2.V(), d2.V())
		if err != nil {
			return 0, err
		}
		return sheave.Turns(d.V())
	})
}

// MotorPitchAt is [MotorPitch] with an adjustable sheave open by turns.
func MotorPitchAt(s *record.Side, turns Answer[unit.Turns]) Answer[unit.Length] {
	switch {
	case s.Sheave.Value() == record.Adjustable && (anchored(s) || !known(&s.MotorSheave) && !known(&s.MotorGap)):
		return anchorPitch(s, turns)
	case known(&s.MotorSheave):
		return Read("d", FromStamp, &s.MotorSheave)
	case known(&s.MotorGap):
		return gapPitch(s)
	case known(&s.MotorOutside):
		return outsidePitch(s, &s.MotorOutside)
	}
	return Read("d", FromStamp, &s.MotorSheave)
}

func anchored(s *record.Side) bool {
	return known(&s.AnchorTurns) && known(&s.AnchorPitch) && known(&s.SecondAnchorTurns) && known(&s.SecondAnchorPitch)
}

func anchorsOf(a *Ask, s *record.Side) (t1 Given[unit.Turns], d1 Given[unit.Length], t2 Given[unit.Turns], d2 Given[unit.Length]) {
	t1, d1 = Want(a, "t₁", &s.AnchorTurns), Want(a, "d₁", &s.AnchorPitch)
	t2, d2 = Want(a, "t₂", &s.SecondAnchorTurns), Want(a, "d₂", &s.SecondAnchorPitch)
	return t1, d1, t2, d2
}

func anchorPitch(s *record.Side, turns Answer[unit.Turns]) Answer[unit.Length] {
	var a Ask
	t1, d1, t2, d2 := anchorsOf(&a, s)
	t := Use(&a, "t", turns)
	at := At{"t1": t1.Term, "d1": d1.Term, "t2": t2.Term, "d2": d2.Term, "turns": t.Term}
	return Solve(&a, FromAnchors, "drive.adjustable", at, func() (unit.Length, error) {
		sheave, err := drive.NewAdjustable(t1.V(), d1.V(), t2.V(), d2.V())
		if err != nil {
			return 0, err
		}
		return sheave.Pitch(t.V())
	})
}

func gapPitch(s *record.Side) Answer[unit.Length] {
	var a Ask
	a.Need(&s.Section)
	outside := Want(&a, "dₒ", &s.MotorOutside)
	gap := Want(&a, "g", &s.MotorGap)
	angle := Want(&a, "α", &s.GrooveAngle)
	at := At{"outside": outside.Term, "gap": gap.Term, "angle": angle.Term, "section": {Place: &s.Section}}
	return Solve(&a, FromGap, "drive.gap", at, func() (unit.Length, error) {
		return drive.PitchFromGap(outside.V(), gap.V(), drive.Section(s.Section.Value()), angle.V())
	})
}

func outsidePitch(s *record.Side, e *record.Entry[unit.Length]) Answer[unit.Length] {
	var a Ask
	a.Need(&s.Section)
	outside := Want(&a, "dₒ", e)
	section, method := drive.Section(s.Section.Value()), "drive.outside"
	older := func() unit.Length { return 0 }
	if spread := drive.NarrowSpread(section); spread > 0 { // prints differ
		method = "drive.outside.narrow"
		less := Take(&a, "2a", unit.Length(0))
		less.Band = float64(spread)
		older = less.V
	}
	at := At{"outside": outside.Term, "section": {Place: &s.Section}, "groove": {Place: &s.Groove}}
	return Solve(&a, FromOutside, method, at, func() (unit.Length, error) {
		d, err := drive.PitchFromOutside(outside.V(), section, grooveOf(s))
		return d - max(older(), 0), err
	})
}

// grooveOf returns what a side's grooves are cut for: the standard unless said.
func grooveOf(s *record.Side) drive.GrooveType {
	if s.Groove.Value() == record.CombinationGroove {
		return drive.Combination
	}
	return drive.Standard
}

// FanPitch answers with the pitch diameter of the fan sheave: as entered, or
// from its taped outside diameter.
func FanPitch(s *record.Side) Answer[unit.Length] {
	if !known(&s.FanSheave) && known(&s.FanOutside) {
		return outsidePitch(s, &s.FanOutside)
	}
	return Read("D", FromStamp, &s.FanSheave)
}

// SheaveRatio answers with the fan's speed as a share of the motor's, by the
// pitch diameters.
func SheaveRatio(s *record.Side) Answer[unit.Ratio] {
	var a Ask
	d, D := Use(&a, "d", MotorPitch(s)), Use(&a, "D", FanPitch(s))
	return Solve(&a, FromSheaves, "drive.speed", At{"driver": d.Term, "driven": D.Term}, func() (unit.Ratio, error) {
		return drive.Ratio(d.V(), D.V())
	})
}

// quarter is how near a count of motor turns is read (common practice).
const quarter unit.Turns = 0.25

// CountedRatio answers with the fan's speed as a share of the motor's, from
// both shafts turned by hand.
func CountedRatio(s *record.Side) Answer[unit.Ratio] {
	var a Ask
	fan, motor := Want(&a, "N₂", &s.CountFan), Want(&a, "N₁", &s.CountMotor)
	if motor.Band == 0 {
		motor.Band = float64(quarter)
	}
	at := At{"fanTurns": fan.Term, "motorTurns": motor.Term}
	return Solve(&a, FromCount, "drive.count", at, func() (unit.Ratio, error) {
		r, _, err := drive.Count(fan.V(), motor.V(), 0)
		return r, err
	})
}

// Ratio answers with the fan's speed as a share of the motor's: counted before
// computed.
func Ratio(s *record.Side) Answer[unit.Ratio] {
	if known(&s.CountFan) || known(&s.CountMotor) {
		return CountedRatio(s)
	}
	return SheaveRatio(s)
}

// FanSpeed answers with the speed of a fan: read, where the drive can give what was
// read; or the motor's speed times the counted ratio; or by the sheaves.
func FanSpeed(f *record.Fan, s *record.Side) Answer[unit.Speed] {
	if believed(f, s) {
		return Read("n₂", FromTachometer, &s.Reading.Speed)
	}
	return Expected(f, s)
}

// Expected answers with the speed that ratio and motor give a fan, whatever a
// tachometer on the fan says.
func Expected(f *record.Fan, s *record.Side) Answer[unit.Speed] {
	return expectedAt(s, MotorSpeed(f, s, &s.Reading, OldLoad(f, s)))
}

// expectedAt is [Expected] of a motor at a speed.
func expectedAt(s *record.Side, motor Answer[unit.Speed]) Answer[unit.Speed] {
	if known(&s.CountFan) || known(&s.CountMotor) {
		return countedAt(s, motor)
	}
	return byThePitches(motor, MotorPitch(s), FanPitch(s))
}

// byThePitches answers with a fan's speed by its motor's and the pitch diameters.
func byThePitches(motor Answer[unit.Speed], driver, driven Answer[unit.Length]) Answer[unit.Speed] {
	var a Ask
	n, d, D := Use(&a, "n₁", motor), Use(&a, "d", driver), Use(&a, "D", driven)
	return Solve(&a, FromSheaves, "drive.speed", At{"n": n.Term, "driver": d.Term, "driven": D.Term}, func() (unit.Speed, error) {
		return drive.Driven(n.V(), d.V(), D.V())
	})
}

func countedAt(s *record.Side, motor Answer[unit.Speed]) Answer[unit.Speed] {
	var a Ask
	n, i := Use(&a, "n₁", motor), Use(&a, "r", CountedRatio(s))
	return Solve(&a, FromCount, "drive.counted", nil, func() (unit.Speed, error) {
		return n.V() * unit.Speed(i.V()), nil
	})
}

// CountedSpeed answers with the motor's speed times the ratio counted by hand.
func CountedSpeed(f *record.Fan, s *record.Side) Answer[unit.Speed] {
	return countedAt(s, MotorSpeed(f, s, &s.Reading, OldLoad(f, s)))
}

// SheaveSpeed answers with the fan's speed by motor speed and pitch diameters.
func SheaveSpeed(f *record.Fan, s *record.Side) Answer[unit.Speed] {
	return byThePitches(MotorSpeed(f, s, &s.Reading, OldLoad(f, s)), MotorPitch(s), FanPitch(s))
}

// BeltSpeed answers with the speed of a side's belt.
func BeltSpeed(f *record.Fan, s *record.Side) Answer[unit.Velocity] {
	return beltSpeed(MotorSpeed(f, s, &s.Reading, OldLoad(f, s)), MotorPitch(s))
}

func beltSpeed(motor Answer[unit.Speed], pitch Answer[unit.Length]) Answer[unit.Velocity] {
	var a Ask
	n, d := Use(&a, "n₁", motor), Use(&a, "d", pitch)
	return Solve(&a, FromPlace, "belt.speed", At{"n": n.Term, "pitch": d.Term}, func() (unit.Velocity, error) {
		return drive.BeltSpeed(n.V(), d.V())
	})
}

// BeltSpeedVerdict judges a belt's speed against the sheaves' limit.
func BeltSpeedVerdict(v Answer[unit.Velocity]) Verdict {
	return limitOf[unit.Velocity]{rule: RuleBeltSpeed, method: "belt.speed.limit", scale: &unit.Airspeed, level: Stop}.
		hold(v, fixed(drive.BeltSpeedLimit, "belt.speed.limit"))
}

// Arc answers with the arc of contact on the smaller sheave.
func Arc(s *record.Side) Answer[unit.Angle] {
	var a Ask
	d, D := Use(&a, "d", MotorPitch(s)), Use(&a, "D", FanPitch(s))
	c := Want(&a, "C", &s.Center)
	at := At{"driver": d.Term, "driven": D.Term, "center": c.Term}
	return Solve(&a, FromPlace, "belt.arc", at, func() (unit.Angle, error) {
		return belt.ArcSmall(d.V(), D.V(), c.V())
	})
}

// BeltLength answers with the pitch length of the belt that runs at the center
// distance entered.
func BeltLength(s *record.Side) Answer[unit.Length] {
	var a Ask
	d, D := Use(&a, "d", MotorPitch(s)), Use(&a, "D", FanPitch(s))
	c := Want(&a, "C", &s.Center)
	at := At{"driver": d.Term, "driven": D.Term, "center": c.Term}
	return Solve(&a, FromPlace, "belt.length", at, func() (unit.Length, error) {
		return belt.OpenLength(d.V(), D.V(), c.V())
	})
}
