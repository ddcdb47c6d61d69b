package sheet

import (
	"slices"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// asMarked is the order of leads of a motor that nobody has said otherwise of.
const asMarked record.Leads = "1-2-3"

// LeadsNow returns which motor leads stand on the new fan's lines.
func LeadsNow(f *record.Fan) record.Leads {
	return orMarked(f.New.Leads.Value())
}

func orMarked(o record.Leads) record.Leads {
	if o == "" {
		return asMarked
	}
	return o
}

// Moved returns the order once all three leads have been moved on by one line, T1
// from L1 to L2: the motor's direction stays.
func Moved(o record.Leads) record.Leads {
	return record.Leads([]byte{o[4], '-', o[0], '-', o[2]})
}

// Exchanged returns the order once the leads on L1 and L2 have been exchanged, as
// any two may be: the motor turns the other way.
func Exchanged(o record.Leads) record.Leads {
	return record.Leads([]byte{o[2], '-', o[0], '-', o[4]})
}

// Reverses tells whether a motor turns the other way once its leads, in one order,
// stand in another.
func Reverses(before, after record.Leads) bool { return direction(before) != direction(after) }

// leadOn returns the motor lead on a line.
func leadOn(o record.Leads, line phase.Leg) phase.Leg { return phase.Leg(o[2*(line-1)] - '0') }

func direction(o record.Leads) phase.Direction {
	d, err := phase.DirectionOf(int(leadOn(o, 1)), int(leadOn(o, 2)), int(leadOn(o, 3)))
	if err != nil {
		return ""
	}
	return d
}

// A Roll is a lead roll of the new motor as far as it has come.
type Roll struct {
	Before phase.Before    // what is to be done first
	Wanted []record.Place  // what would tell whether that is done
	Trials []*record.Trial // the positions so far
	Found  phase.Roll      // what all three say, where they say it
	Lead   phase.Leg       // the motor lead that deviates most
	Known  bool
	Fault  *Fault
}

// positions is how many a roll takes.
const positions = 3

// LeadRoll answers with the lead roll that the latest readings are of, and with what
// it says once all three positions have been read. A position read again starts a
// new roll, and so does an exchange of two leads.
func LeadRoll(f *record.Fan) Roll {
	r := Roll{Trials: rollTrials(f)}
	r.before(f)
	if r.Before != phase.BeforeNothing || len(r.Trials) < positions {
		return r
	}
	base := r.Trials[0].Leads.Value()
	at := make([]phase.Position, positions)
	var meter phase.Meter[unit.Current]
	for _, t := range r.Trials {
		p := 0
		for o := base; o != t.Leads.Value(); o = Moved(o) {
			p++
		}
		var a Ask
		x, y, z := leg(&a, &t.Reading, 0), leg(&a, &t.Reading, 1), leg(&a, &t.Reading, 2)
		if r.Fault = a.fault; r.Fault != nil {
			return r
		}
		r.Wanted = append(r.Wanted, a.wanted...)
		at[p] = phase.Position{L1: x.V(), L2: y.V(), L3: z.V()}
		m := clampOf(&t.Reading)
		meter.Share, meter.Floor = max(meter.Share, m.Share), max(meter.Floor, m.Floor)
	}
	if len(r.Wanted) > 0 {
		return r
	}
	found, err := phase.ClassifyRoll(at, meter)
	if err != nil {
		r.Fault = &Fault{Err: err}
		return r
	}
	r.Found, r.Known = found, true
	if found.Lead != phase.NoLeg {
		r.Lead = leadOn(base, found.Lead)
	}
	return r
}

// rollTrials returns the trials of the latest roll, in the order they were made.
func rollTrials(f *record.Fan) []*record.Trial {
	var all []*record.Trial
	for _, t := range f.Trials {
		o := t.Leads.Value()
		if o == "" {
			continue
		}
		again := slices.ContainsFunc(all, func(u *record.Trial) bool { return u.Leads.Value() == o })
		if again || len(all) > 0 && direction(all[0].Leads.Value()) != direction(o) {
			all = nil
		}
		all = append(all, t)
	}
	if len(all) > 0 && f.New.Leads.Value() != "" && direction(all[0].Leads.Value()) != direction(f.New.Leads.Value()) {
		return nil
	}
	return all
}

// before finds what stands in the way of a roll, by the reading it starts from.
func (r *Roll) before(f *record.Fan) {
	first := lastTrial(f)
	if len(r.Trials) > 0 {
		first = r.Trials[0]
	}
	proven := RotationVerdict(f)
	r.Before = phase.BeforeRotation
	if proven.Level != Within {
		r.Wanted = proven.Wanted
		return
	}
	volts := VoltsUnbalance(voltsReading(f))
	if !volts.Share.Known() {
		r.Before, r.Wanted, r.Fault = phase.BeforeVolts, volts.Share.Wanted, volts.Share.Fault
		return
	}
	if first == nil {
		r.Before = phase.BeforeLoad
		return
	}
	amps := AmpsUnbalance(f, &f.New, &first.Reading)
	if !amps.Share.Known() && amps.found.Reason != phase.ReasonLost {
		r.Before, r.Wanted, r.Fault = phase.BeforeLoad, amps.Share.Wanted, amps.Share.Fault
		return
	}
	r.Before = phase.BeforeRoll(true, volts.found, amps.found)
	r.Wanted, r.Fault = amps.Verdict.Wanted, amps.Verdict.Fault
}
