package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Loss is the pattern of a lost phase. The spellings are keys.
type Loss string

// Losses.
const (
	LossNone     Loss = "none"
	LossOpen     Loss = "open"                 // one leg carries next to nothing
	LossNearly   Loss = "nearly-open"          // one carries so little that no light load explains it
	LossPair     Loss = "pair-open"            // two legs carry next to nothing: a motor can't run on the third
	LossAll      Loss = "all-open"             // none carries anything
	LossAhead    Loss = "ahead-of-transformer" // 1 : 1 : 2: a phase is lost ahead of a wye-delta or delta-wye transformer
	LossWinding  Loss = "open-winding"         // 1 : 1 : √3 to 2 on even volts: a winding or a joint of a delta motor is open
	LossLine     Loss = "open-line"            // two pairs of three at about half the volts of the third, or at none: a line brings nothing
	LossUnjudged Loss = "unjudged"             // the meter's error could overturn it
)

// OpenLeg is the share of the other two's mean under which a leg is an open one
// (common practice).
const OpenLeg unit.Ratio = 0.1

// NearlyOpenLeg is that share under which a leg is failing, whatever the load. To
// a field that turns backward a motor is as good as stalled, so that unbalanced
// volts drive the same current through it idling or loaded: [IdleAmplification] at
// most, of which 3 per cent, the most that a utility may have
// ([SupplyUnbalanceMost]), leave a leg about a quarter of the others (figures
// common practice, the rest by symmetrical components).
const NearlyOpenLeg unit.Ratio = 0.25

// How near the pattern 1 : 1 : 2 counts as it: chosen here, wide enough for a
// motor's own unbalance and far from any that still has three phases. Of a delta motor
// with one of its windings open, the line between the two that are left carries √3 of
// what the others do.
const (
	aheadRatio = 2.0
	deltaRatio = 1.7320508075688772
	aheadNear  = 0.15
)

// A Lost is a lost phase: its pattern, the leg that tells it (the dead one, the one
// that carries double, or of two dead ones the one that lives), and that leg over the mean of the other two.
type Lost struct {
	Loss Loss
	Leg  Leg
	Over unit.Ratio
}

// Sure tells whether a phase is lost or failing, beyond the meter's error.
func (l Lost) Sure() bool { return l.Loss != LossNone && l.Loss != LossUnjudged }

// Dead returns the legs that carry next to nothing, as far as that is sure.
func (l Lost) Dead() []Leg {
	switch l.Loss {
	case LossOpen:
		return []Leg{l.Leg}
	case LossPair:
		j, k := others(int(l.Leg) - 1)
		return []Leg{Leg(min(j, k) + 1), Leg(max(j, k) + 1)}
	case LossAll:
		return []Leg{1, 2, 3}
	}
	return nil
}

// LostPhase looks for a lost or failing phase in three line currents of a motor,
// which is to be said before any unbalance. Three readings of zero are no average to
// hold anything against, and yet an answer: no leg carries anything. Volts at an open terminal may look near
// right, as the motor itself makes them; so amps are asked. Errors: as
// [UnbalanceRange].
//
// Method: phase.lost.
func LostPhase(a, b, c unit.Current, meter Meter[unit.Current]) (Lost, error) {
	if err := meter.check(); a == 0 && b == 0 && c == 0 && err == nil {
		return Lost{Loss: LossAll}, nil
	}
	t, err := bound(a, b, c, meter)
	if err != nil {
		return Lost{}, err
	}
	low, high := 0, 0
	for i, x := range t.value {
		if x < t.value[low] {
			low = i
		}
		if x > t.value[high] {
			high = i
		}
	}
	if j, k := others(high); max(t.high[j], t.high[k]) < float64(OpenLeg)*t.low[high] {
		over, _, _ := t.over(high)
		return Lost{LossPair, Leg(high + 1), over}, nil
	}
	if over, least, most := t.over(low); least < NearlyOpenLeg {
		l := Lost{LossOpen, Leg(low + 1), over}
		if most >= OpenLeg {
			l.Loss = LossNearly
		}
		if most >= NearlyOpenLeg {
			l.Loss = LossUnjudged
		}
		return l, nil
	}
	over, least, most := t.over(high)
	j, k := others(high)
	if !near(float64(over), aheadRatio) || !near(t.value[j], t.value[k]) {
		return Lost{Loss: LossNone}, nil
	}
	l := Lost{LossAhead, Leg(high + 1), over}
	if !near(float64(least), aheadRatio) || !near(float64(most), aheadRatio) {
		l.Loss = LossUnjudged
	}
	return l, nil
}

// LostPhaseOnVolts is [LostPhase] with the volts read beside the amps: volts is the
// most that their unbalance may be. One leg that carries about double is a phase lost
// ahead of a transformer only on volts that account for it. To a field that turns
// backward, of which that pattern has as much as of the other, a motor is as good as
// stalled, so that volts well apart stand across it (derived). On even volts it is the
// motor: a winding or a joint of its delta is open. Errors: as [LostPhase]; volts below
// zero.
//
// Method: phase.lost.
func LostPhaseOnVolts(a, b, c unit.Current, meter Meter[unit.Current], volts unit.Ratio) (Lost, error) {
	l, err := LostPhase(a, b, c, meter)
	if err = limit.First(err, limit.NonNegative("volts", volts)); err != nil {
		return Lost{}, err
	}
	if l.Sure() && l.Loss != LossAhead {
		return l, nil
	}
	u, err := Unbalance(a, b, c)
	if err != nil {
		return Lost{}, err
	}
	if u <= max(CurrentUnbalanceStop, IdleMost(volts)) {
		return l, nil
	}
	t, err := bound(a, b, c, meter)
	if err != nil {
		return Lost{}, err
	}
	high := 0
	for i, x := range t.value {
		if x > t.value[high] {
			high = i
		}
	}
	over, _, _ := t.over(high)
	j, k := others(high)
	if near(t.value[j], t.value[k]) && (near(float64(over), deltaRatio) || near(float64(over), aheadRatio)) {
		return Lost{LossWinding, Leg(high + 1), over}, nil
	}
	return l, nil
}

// OpenLine returns the line that brings nothing, by three line-to-line voltages, 1-2,
// 2-3 and 3-1, at a motor that stands: what is left between the two that live is parted at its winding, so
// that each pair with the open line shows about half of theirs; ahead of a motor,
// next to nothing, under a tenth of theirs ([OpenLeg]). None for others: of a motor that
// runs, volts at an open line look near right. Errors: a reading below zero, all three
// zero.
//
// Method: phase.lost.
func OpenLine(a, b, c unit.Voltage) (Leg, error) {
	if _, err := Unbalance(a, b, c); err != nil {
		return NoLeg, err
	}
	for i, v := range [...][3]unit.Voltage{{b, a, c}, {c, a, b}, {a, b, c}} { // the pair without the line, those with it
		half, nothing := v[0]/2, v[0]*unit.Voltage(OpenLeg)
		if near(float64(v[1]), float64(half)) && near(float64(v[2]), float64(half)) || max(v[1], v[2]) < nothing {
			return Leg(i + 1), nil
		}
	}
	return NoLeg, nil
}

// over returns a leg over the mean of the other two, its least and its greatest;
// most is without bound where both others may be dead.
func (t three) over(i int) (value, least, most unit.Ratio) {
	j, k := others(i)
	of := func(x, others float64) unit.Ratio {
		if others == 0 {
			return unit.Ratio(math.MaxFloat64)
		}
		return unit.Ratio(min(2*x/others, math.MaxFloat64))
	}
	return of(t.value[i], t.value[j]+t.value[k]), of(t.low[i], t.high[j]+t.high[k]), of(t.high[i], t.low[j]+t.low[k])
}

func near(x, y float64) bool { return math.Abs(x-y) <= aheadNear*math.Max(x, y) }

// SinglePhasing is what the two live lines of a motor with one line open carry of
// its running current at the same shaft power, power factor and efficiency: √3.
// Real motors draw up to twice (memory).
const SinglePhasing unit.Ratio = 1.7320508075688772

// AmpsWithOpenLine returns the current in the two live lines of a motor that keeps
// turning with one line open. Errors: running current not above zero.
//
// Method: phase.lost.amps.
func AmpsWithOpenLine(running unit.Current) (unit.Current, error) {
	if err := limit.Positive("running", running); err != nil {
		return 0, err
	}
	return limit.Result(running * unit.Current(SinglePhasing))
}
