package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Position is the line currents of one hookup of a lead roll, by line.
type Position struct{ L1, L2, L3 unit.Current }

// LeadOn returns which motor lead is on a line, 1 to 3 each, in a position of the
// roll, 0 to 2: all three move one step the same way, so that T1 goes from L1 to L2
// to L3 and the motor's direction stays. None for others.
func LeadOn(line Leg, position int) Leg {
	if line < Leg1 || line > Leg3 || position < 0 || position > 2 {
		return NoLeg
	}
	return Leg((int(line)-1-position+3)%3 + 1)
}

// A Cause is where an unbalance comes from. The spellings are keys.
type Cause string

// Causes.
const (
	CauseSupply   Cause = "supply"     // it stays on a line
	CauseMotor    Cause = "motor-side" // it goes with a lead: motor, its leads or their splices
	CauseMixed    Cause = "mixed"
	CauseUnjudged Cause = "unjudged"
)

// A Confidence is how sure a cause is. The spellings are keys.
type Confidence string

// Confidences.
const (
	Firm   Confidence = "firm"   // the meter's error could not turn it
	Likely Confidence = "likely" // it could, if it lay against it in every reading
	Unsure Confidence = "none"
)

// Reasons why a roll shows no cause.
const (
	ReasonMeter     Reason = "meter"        // no deviation is beyond the meter's error
	ReasonDrift     Reason = "load-changed" // the motor's load was not the same in all positions
	ReasonScattered Reason = "scattered"    // what moved with neither is the greatest part
)

// DriftMost is how far the positions' average currents may be apart, over their
// mean, for the load to count as the same (common practice).
const DriftMost unit.Ratio = 0.05

// dominates is how many times greater one side's part must be than the other's,
// where both are beyond the meter's error, to be the cause alone: chosen here.
const dominates = 2

// A Roll is the outcome of a lead roll with its evidence. Each part is the greatest
// deviation from a position's average, as a share of it.
type Roll struct {
	Cause      Cause
	Confidence Confidence
	Reason     Reason     // why there is no cause
	Line, Lead Leg        // that deviate most, on average of the positions
	Supply     unit.Ratio // the part that stays with the line
	Motor      unit.Ratio // the part that goes with the lead
	Rest       unit.Ratio // the part that does neither
	Meter      unit.Ratio // how much of any part the meter's error may be
	Drift      unit.Ratio // of the average current between positions
	OnLine     int        // positions in which the reading farthest off is on Line
	OnLead     int        // those in which it is on Lead
}

// ClassifyRoll tells from the three positions of a lead roll, moved as [LeadOn]
// has it, whether an unbalance of amps stays with the supply's lines, goes with the
// motor's leads, or is mixed. Each reading's deviation from its position's average
// is parted into what its line has in all positions, what its lead has, and a rest.
// Call it once [BeforeRoll] has nothing left. A later swap of two leads starts a new
// roll. Errors: other than three positions; a current below zero, or all of a
// position zero; a meter below zero or as coarse as its reading.
//
// Method: phase.roll.
func ClassifyRoll(positions []Position, meter Meter[unit.Current]) (Roll, error) {
	if len(positions) != 3 {
		return Roll{}, limit.Break("positions", limit.NotThree)
	}
	var r Roll
	var off [3][3]float64 // deviation by position and line
	var average [3]float64
	lost := false
	for p, at := range positions {
		t, err := bound(at.L1, at.L2, at.L3, meter)
		if err != nil {
			return Roll{}, positionFault(err)
		}
		l, err := LostPhase(at.L1, at.L2, at.L3, meter)
		if err != nil {
			return Roll{}, positionFault(err)
		}
		lost = lost || l.Loss != LossNone
		sum := t.value[0] + t.value[1] + t.value[2]
		average[p] = sum / 3 * float64(max(at.L1, at.L2, at.L3))
		for i := range 3 {
			j, k := others(i)
			off[p][i] = 3*t.value[i]/sum - 1
			// How far the errors of all three readings may move it.
			e := 3 / sum / sum * ((sum-t.value[i])*t.error(i) + t.value[i]*(t.error(j)+t.error(k)))
			r.Meter = max(r.Meter, unit.Ratio(e))
		}
	}
	r.Drift = drift(average)
	if _, err := limit.Result(r.Drift + r.Meter); err != nil {
		return Roll{}, err
	}
	r.part(&off)
	r.count(&off)
	r.conclude(lost)
	return r, nil
}

func positionFault(err error) error {
	for _, name := range [...]string{"a", "b", "c", ""} {
		err = limit.Rename(err, name, "positions")
	}
	return err
}

func (t three) error(i int) float64 { return t.high[i] - t.value[i] }

func drift(average [3]float64) unit.Ratio {
	low, high := min(average[0], average[1], average[2]), max(average[0], average[1], average[2])
	return unit.Ratio(3 * (1 - low/high) / (average[0]/high + average[1]/high + average[2]/high))
}

// part finds what lines and leads have in all positions.
func (r *Roll) part(off *[3][3]float64) {
	var line, lead [3]float64
	for p := range 3 {
		for i := range 3 {
			line[i] += off[p][i] / 3
			lead[LeadOn(Leg(i+1), p)-1] += off[p][i] / 3
		}
	}
	r.Line, r.Supply = greatest(line)
	r.Lead, r.Motor = greatest(lead)
	for p := range 3 {
		for i := range 3 {
			rest := off[p][i] - line[i] - lead[LeadOn(Leg(i+1), p)-1]
			r.Rest = max(r.Rest, unit.Ratio(math.Abs(rest)))
		}
	}
}

func greatest(of [3]float64) (Leg, unit.Ratio) {
	const rounding = 1e-12 // of the average: no deviation
	leg, most := NoLeg, rounding
	for i, x := range of {
		if math.Abs(x) > most+rounding { // of two that are equally far the first
			leg, most = Leg(i+1), math.Abs(x)
		}
	}
	if leg == NoLeg {
		most = 0
	}
	return leg, unit.Ratio(most)
}

// count counts how often the reading farthest off is on the line or the lead.
func (r *Roll) count(off *[3][3]float64) {
	for p := range 3 {
		_, most := greatest(off[p])
		if most == 0 {
			continue
		}
		for i, x := range off[p] {
			line := Leg(i + 1)
			if math.Abs(x) < float64(most)-1e-9 { // of two that are equally far both count
				continue
			}
			if line == r.Line {
				r.OnLine++
			}
			if LeadOn(line, p) == r.Lead {
				r.OnLead++
			}
		}
	}
}

func (r *Roll) conclude(lost bool) {
	r.Cause, r.Confidence = CauseUnjudged, Unsure
	more, less := max(r.Supply, r.Motor), min(r.Supply, r.Motor)
	const slack = 1e-9
	switch {
	case lost:
		r.Reason = ReasonLost
	case r.Drift > DriftMost*(1+slack):
		r.Reason = ReasonDrift
	case r.Rest > r.Meter && r.Rest >= more:
		r.Reason = ReasonScattered
	case more <= r.Meter:
		r.Reason = ReasonMeter
	case less > r.Meter && more < dominates*less:
		r.Cause, r.Confidence = CauseMixed, Likely
		if more+r.Meter < dominates*(less-r.Meter) {
			r.Confidence = Firm
		}
	default:
		stays := r.OnLine
		r.Cause, r.Confidence = CauseSupply, Likely
		if r.Motor > r.Supply {
			r.Cause, stays = CauseMotor, r.OnLead
		}
		if more-less > 2*r.Meter && stays == 3 {
			r.Confidence = Firm
		}
	}
}
