package sheet

import (
	"roofside/calc/record"
	"roofside/calc/unit"
)

// usualOver is how far a setting may lie above the target (common practice):
// a half turn is about 3 %, and a hood's flow is a least value.
const usualOver unit.Ratio = 0.05

// mostShort is the most by which a speed may stay under the target and still count as
// on it, as far as its own band reaches (common practice): less than that no tachometer
// on a roof tells.
const mostShort = 0.01

func over(f *record.Fan) unit.Ratio {
	if f.Target.Over.State() == record.Known {
		return f.Target.Over.Value()
	}
	return usualOver
}

// A reach is the speeds between which a setting is left alone.
type reach struct {
	target, least, most unit.Speed
	short               unit.Speed // the least that counts as on target without a reading
}

// reachOf returns the speeds at which a setting is left alone, for one whose speed's band
// is that share of it: a target that is itself uncertain is no reason to move within
// its own band.
func reachOf(f *record.Fan, target Answer[unit.Speed], band float64) reach {
	r := reach{target: target.Value, least: target.Value * unit.Speed(1-min(band, mostShort)), most: target.Value * unit.Speed(1+over(f))}
	r.short = r.least
	if target.Bounded() {
		r.least, r.most = max(min(r.least, target.Low()), 0), max(r.most, target.High())
	}
	return r
}

func (r reach) holds(n unit.Speed) bool { return n >= r.least*(1-slack) && n <= r.most*(1+slack) }

// TargetReached judges a speed against the target, by the speed itself: a hood's
// airflow is a least value, and too much costs power by the cube. The widest error of
// both that still says something is what is allowed above; and where only the target's
// own error could excuse a speed, that is not judged.
func TargetReached(f *record.Fan, speed, target Answer[unit.Speed]) Verdict {
	l := limitOf[unit.Speed]{rule: RuleBelow, method: "drive.tolerance", scale: &unit.Rotation, level: Watch, least: true}
	if !speed.Known() || !target.Known() || !speed.Bounded() {
		return l.hold(speed, target)
	}
	least, most := unit.Speed(1-mostShort)*(1-slack), unit.Speed(1+over(f))*(1+slack)
	n, low, high := speed.Value, target.Low(), target.High()
	above := unit.Ratio(n/target.Value) - 1
	v := Verdict{Level: Within, Rule: RuleTarget, Method: l.method, Value: Figure{&unit.Share, float64(above)}, Limit: Figure{&unit.Share, float64(over(f))}}
	if n < target.Value*least {
		v.Rule, v.Value, v.Limit = RuleBelow, Figure{l.scale, float64(n)}, Figure{l.scale, float64(target.Value)}
	}
	switch wide := speed.Band+target.Band > target.Value*unit.Speed(max(over(f), mostShort))*(1+slack); {
	case n < low*least, n > high*most:
		v.Level = Watch
	case wide || n < target.Value*least || n > target.Value*most:
		v.Level = Unjudged
		v.unsettled(&target.Steps, &speed.Steps)
	default:
		v.Near = speed.Low() < high*least || speed.High() > low*most
	}
	return v
}

// unsettled asks for what would settle a verdict: of the first answer that has it.
func (v *Verdict) unsettled(answers ...*Steps) {
	for _, s := range answers {
		if p := s.Unsettled(); p != nil {
			v.Wanted = []record.Place{p}
			return
		}
	}
}

// LeftSpeed answers with the speed that the new fan was left at: as it was read, where
// the drive can give that.
func LeftSpeed(f *record.Fan) Answer[unit.Speed] {
	left := f.Left()
	if left == nil {
		return Answer[unit.Speed]{}
	}
	if !trialsOf(f).believed(left) {
		return Answer[unit.Speed]{Wanted: []record.Place{&left.Reading.Speed}}
	}
	return Read("n₂", FromTachometer, &left.Reading.Speed)
}

// Apart returns how far a speed lies from the target, as a share of it.
func Apart(speed, target Answer[unit.Speed]) (unit.Ratio, bool) {
	if !speed.Known() || !target.Known() {
		return 0, false
	}
	return unit.Ratio(speed.Value/target.Value) - 1, true
}
