package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Leg is one of three readings in the order given; 0 is none.
type Leg int

// Legs.
const (
	NoLeg Leg = iota
	Leg1
	Leg2
	Leg3
)

// A Spread is an unbalance and what the meter makes of it.
type Spread struct {
	Value, Low, High unit.Ratio
	Leg              Leg // farthest from the average; none when all are equal
	Certain          Leg // the same, where no other could be within the meter's error; else none
}

// UnbalanceRange returns [Unbalance] with the least and the greatest that the
// meter's error leaves possible, and which reading is farthest off. A zero meter
// gives no range. Errors: a reading below zero, all three zero; a meter below zero
// or as coarse as its reading.
//
// Method: phase.unbalance.range.
func UnbalanceRange[Q unit.Voltage | unit.Current](a, b, c Q, meter Meter[Q]) (Spread, error) {
	t, err := bound(a, b, c, meter)
	if err != nil {
		return Spread{}, err
	}
	value, err := Unbalance(a, b, c)
	if err != nil {
		return Spread{}, err
	}
	s := Spread{Value: value, Low: min(t.least(), value), High: max(t.greatest(), value)}
	s.Leg = t.farthest()
	if s.Leg != NoLeg && t.certain(s.Leg) {
		s.Certain = s.Leg
	}
	return s, nil
}

// error is the most that the meter may be off either way.
func (s Spread) error() unit.Ratio { return max(s.Value-s.Low, s.High-s.Value) }

// others returns the two indices that are not i.
func others(i int) (int, int) { return (i + 1) % 3, (i + 2) % 3 }

// greatest returns the greatest unbalance within the bounds: one reading is as far
// from the others as it can be.
func (t three) greatest() unit.Ratio {
	most := 0.0
	for i := range 3 {
		j, k := others(i)
		if sum := t.high[i] + t.low[j] + t.low[k]; sum > 0 {
			most = max(most, 3*t.high[i]/sum-1)
		}
		if sum := t.low[i] + t.high[j] + t.high[k]; sum > 0 {
			most = max(most, 1-3*t.low[i]/sum)
		}
	}
	return unit.Ratio(most)
}

// least returns the least unbalance within the bounds. The reading with the
// greatest lower bound and the one with the least upper bound come as near each
// other as they can; the third lies as near the middle between them as it can.
func (t three) least() unit.Ratio {
	top, bottom := 0, 0
	for i := range 3 {
		if t.low[i] > t.low[top] {
			top = i
		}
		if t.high[i] < t.high[bottom] {
			bottom = i
		}
	}
	a, b := t.low[top], t.high[bottom]
	if a <= b {
		return 0
	}
	k := 3 - top - bottom
	c := min(max((a+b)/2, t.low[k]), t.high[k])
	mean := (a + b + c) / 3
	return unit.Ratio(max(a/mean-1, 1-b/mean))
}

func (t three) farthest() Leg {
	mean := (t.value[0] + t.value[1] + t.value[2]) / 3
	leg, most := NoLeg, 1e-12 // of the largest reading: rounding is no difference
	for i, x := range t.value {
		if d := math.Abs(x - mean); d > most {
			leg, most = Leg(i+1), d
		}
	}
	return leg
}

// certain tells whether no other reading could be farther from the average: both
// lie on the average's other side, whatever their errors.
func (t three) certain(leg Leg) bool {
	i := int(leg) - 1
	j, k := others(i)
	above := 2*t.high[j] < t.low[i]+t.low[k] && 2*t.high[k] < t.low[i]+t.low[j]
	below := 2*t.low[j] > t.high[i]+t.high[k] && 2*t.low[k] > t.high[i]+t.high[j]
	return above || below
}

// A Balance is an unbalance with its verdict.
type Balance struct {
	Spread
	Verdict
}

// SupplyUnbalanceMost is the voltage unbalance that a utility may have at its
// meter without load: ANSI C84.1 (memory).
const SupplyUnbalanceMost unit.Ratio = 0.03

// VoltageBalance returns the unbalance of three line-to-line voltages and how it
// stands: within to [UnbalanceFree], watch to [UnbalanceMost], for the motor is
// derated there, stop above. A reading above the first is watched though the meter's
// error reach under it, as long as that is no wider than [UnbalanceFree]: it asks for no
// more than to look. Errors: as [UnbalanceRange].
//
// Method: phase.unbalance.volts.
func VoltageBalance(a, b, c unit.Voltage, meter Meter[unit.Voltage]) (Balance, error) {
	s, err := UnbalanceRange(a, b, c, meter)
	if err != nil {
		return Balance{}, err
	}
	v := judge(s.Low, s.High, UnbalanceFree, UnbalanceMost)
	if v.Reason == ReasonBand && v.Worst == Watch && s.Value > UnbalanceFree && s.error() <= UnbalanceFree {
		v.Standing, v.Reason = Watch, ReasonNear
	}
	return Balance{s, v}, nil
}

// What amps are judged by (common practice).
const (
	CurrentUnbalanceMost unit.Ratio = 0.10
	CurrentUnbalanceStop unit.Ratio = 0.30 // where the volts don't account for it: stop first
	LoadLeast            unit.Ratio = 0.5  // of plate power
)

// IdleAmplification is the most that voltage unbalance shows up as in amps, with
// the motor idling: starting current of 6 to 7 times plate on a no-load current of
// 0.3 of it, rounded up (common practice).
const IdleAmplification = 25

// CurrentBalance returns the unbalance of three line currents and how it stands: a
// lost or failing phase first; then within to [CurrentUnbalanceMost], at any load;
// above it, under half load, watch beyond what [IdleAmplification] makes of the volts
// and nothing at all below; at load stop beyond [CurrentUnbalanceStop] where the volts
// can't make as much, and watch else. It goes by the reading, as long as the meter's
// error is no wider than [CurrentUnbalanceMost]: the limits of the trade were found
// with such meters.
//
// What a bad joint or winding adds is a share of the current, the same at any load;
// what unbalanced volts add weighs more the less the load. So amps that are even under
// half load are even above it (derived).
//
// load is the least that the motor's load may be, as a share of plate power; volts the
// most that its voltage unbalance may be, [SupplyUnbalanceMost] where none was read.
// With a phase lost there is no unbalance to speak of, and none is given. Errors: as
// [UnbalanceRange]; load or volts below zero.
//
// Method: phase.unbalance.amps.
func CurrentBalance(a, b, c unit.Current, meter Meter[unit.Current], load, volts unit.Ratio) (Balance, error) {
	if err := limit.First(limit.NonNegative("load", load), limit.NonNegative("volts", volts)); err != nil {
		return Balance{}, err
	}
	lost, err := LostPhase(a, b, c, meter)
	if err != nil {
		return Balance{}, err
	}
	dead := Balance{Verdict: Verdict{Stop, Stop, Stop, ReasonLost}}
	if lost.Sure() && lost.Loss != LossAhead {
		return dead, nil
	}
	s, err := UnbalanceRange(a, b, c, meter)
	if err != nil {
		return Balance{}, err
	}
	if lost.Loss == LossAhead && s.Value <= IdleMost(volts) { // on volts as even as these it is no supply's
		return dead, nil
	}
	const slack = 1e-9
	light := load < LoadLeast*(1-slack)
	at := func(x unit.Ratio) Standing {
		switch most := IdleMost(volts); {
		case x <= CurrentUnbalanceMost*(1+slack):
			return Within
		case light && x <= most*(1+slack):
			return Unjudged
		case !light && x > max(CurrentUnbalanceStop, most)*(1+slack):
			return Stop
		}
		return Watch
	}
	return Balance{s, byReading(s, CurrentUnbalanceMost, light, at)}, nil
}

// byReading places a value by itself, as long as the error around it is no wider than
// the tolerance; of a wider one it says so, but where its whole band is beyond.
func byReading(s Spread, tolerance unit.Ratio, light bool, at func(unit.Ratio) Standing) Verdict {
	v := Verdict{Standing: at(s.Value), Best: at(s.Low), Worst: at(s.High)}
	switch {
	case v.Best == v.Worst:
	case s.error() > tolerance*(1+1e-9) && (v.Best == Within || v.Best == Unjudged):
		return unjudged(ReasonBand)
	default:
		v.Reason = ReasonNear
	}
	switch {
	case v.Standing == Unjudged:
		return unjudged(ReasonLight)
	case light:
		v.Reason = ReasonLight // whatever it is, no case for a roll
	}
	return v
}

// IdleMost returns the unbalance of amps that an idling motor makes at most of a
// voltage unbalance. Volts count as [UnbalanceFree] at least: no supply and no
// motor are even to the last digit.
//
// Method: phase.unbalance.idle.
func IdleMost(volts unit.Ratio) unit.Ratio {
	return IdleAmplification * min(max(volts, UnbalanceFree), UnbalanceMost)
}

// Amplification returns current unbalance over voltage unbalance: what the motor
// makes of its supply. Errors: current below zero, voltage not above zero.
//
// Method: phase.amplification.
func Amplification(current, voltage unit.Ratio) (unit.Ratio, error) {
	if err := limit.First(limit.NonNegative("current", current), limit.Positive("voltage", voltage)); err != nil {
		return 0, err
	}
	return limit.Result(current / voltage)
}

// Usual amplification: a US DOE motor tip sheet, whose own test motor gave 11.1;
// lightly loaded motors give more (memory).
const (
	AmplificationLow  unit.Ratio = 6
	AmplificationHigh unit.Ratio = 10
)
