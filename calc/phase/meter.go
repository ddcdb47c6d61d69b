package phase

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Meter is how far each reading may be off by itself: a share of the reading and a
// floor, which is a count of last digits. One meter reads all three legs: what its
// scale adds to all alike cancels in an unbalance and in a ratio of legs, and is no part
// of it there; see [Meter.Alike].
type Meter[Q unit.Voltage | unit.Current] struct {
	Share unit.Ratio
	Floor Q
}

// Usual meters (common practice): a clamp within 2 % and 5 digits of 0.01 A, a
// voltmeter within 1 %.
var (
	UsualClamp     = Meter[unit.Current]{Share: 0.02, Floor: 0.05}
	UsualVoltmeter = Meter[unit.Voltage]{Share: 0.01}
)

// ClampRepeats is how far a clamp that is taken off and put on again may read another,
// as a share of the reading: how the conductor lies in its jaws (common practice).
const ClampRepeats unit.Ratio = 0.005

// Alike returns what of a meter's error sets three readings apart that it took one
// after the other: its digits, and of its share no more than it repeats by.
func (m Meter[Q]) Alike(repeats unit.Ratio) Meter[Q] {
	m.Share = min(m.Share, repeats)
	return m
}

func (m Meter[Q]) check() error {
	if err := limit.First(limit.NonNegative("meter", m.Share), limit.NonNegative("meter", m.Floor)); err != nil {
		return err
	}
	if m.Share >= 1 {
		return limit.Break("meter", limit.TooCoarse)
	}
	return nil
}

// around returns the least and the greatest that a sound reading may stand for.
func (m Meter[Q]) around(x Q) (low, high Q) {
	off := x*Q(m.Share) + m.Floor
	return max(x-off, 0), x + off
}

// ThroughClamp returns the current of one conductor from the reading of a clamp
// that it was wound through turns times. Errors: reading below zero, turns not in
// 1 to 100.
//
// Method: phase.clamp.
func ThroughClamp(reading unit.Current, turns int) (unit.Current, error) {
	if err := limit.First(limit.NonNegative("reading", reading), checkTurns(turns)); err != nil {
		return 0, err
	}
	return limit.Result(reading / unit.Current(turns))
}

// ClampOfTurns returns how far a current may be off that was read through turns of
// its conductor: the same share, the floor divided. Errors: a meter below zero or
// as coarse as its reading, turns not in 1 to 100.
//
// Method: phase.clamp.
func ClampOfTurns(meter Meter[unit.Current], turns int) (Meter[unit.Current], error) {
	if err := limit.First(meter.check(), checkTurns(turns)); err != nil {
		return Meter[unit.Current]{}, err
	}
	meter.Floor /= unit.Current(turns)
	return meter, nil
}

func checkTurns(turns int) error {
	if turns < 1 {
		return limit.Break("turns", limit.NotPositive)
	}
	if turns > 100 {
		return limit.Break("turns", limit.OutOfRange)
	}
	return nil
}

// three are the bounds of three readings, as shares of the largest.
type three struct{ value, low, high [3]float64 }

// bound returns the bounds of readings that are not all zero.
func bound[Q unit.Voltage | unit.Current](a, b, c Q, m Meter[Q]) (three, error) {
	if err := limit.First(limit.NonNegative("a", a), limit.NonNegative("b", b), limit.NonNegative("c", c), m.check()); err != nil {
		return three{}, err
	}
	largest := max(a, b, c)
	if largest == 0 {
		return three{}, limit.Break("", limit.AllZero)
	}
	m.Floor /= largest
	if _, err := limit.Result(m.Floor * 2); err != nil {
		return three{}, err
	}
	var t three
	for i, x := range [...]Q{a, b, c} {
		low, high := m.around(x / largest)
		t.value[i], t.low[i], t.high[i] = float64(x/largest), float64(low), float64(high)
	}
	return t, nil
}
