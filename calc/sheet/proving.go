package sheet

import (
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// A Step is what the hand does next to prove a motor's supply and its amps.
type Step string

// The steps, in their order.
const (
	StepSupply   Step = "supply"   // say what feeds it
	StepReading  Step = "reading"  // start one
	StepLost     Step = "lost"     // stop: a phase is lost
	StepVerdict  Step = "verdict"  // nothing to do but what the worst verdict says
	StepExchange Step = "exchange" // it turned the wrong way
	StepFault    Step = "fault"    // settle what can't be
	StepVolts    Step = "volts"    // read them
	StepRotation Step = "rotation" // bump it
	StepAmps     Step = "amps"     // read them
	StepRoll     Step = "roll"     // move all leads by one place and read
	StepCause    Step = "cause"    // the roll has told
)

// A Proof is how far a motor is proven: the next step, and what the reading that is
// judged says of it. What a supply doesn't have is left at zero.
type Proof struct {
	Next   Step
	Wanted []record.Place // what the step waits for
	Fault  *Fault
	Worst  Verdict

	Judged
	Taken bool // there is a reading
	Three bool // there are three legs and three pairs to read
	New   bool // it is the new fan's
	Idles bool // its amps are those with the belt off

	VoltsAt *record.Reading // where the volts were read: a roll goes by those it began with

	Lost       phase.Lost
	LineVolts  Answer[unit.Voltage]
	LineAmps   Answer[unit.Current]
	Volts      Unbalance
	Amps       Unbalance
	PlateVolts Answer[unit.Ratio]
	System     Answer[unit.Voltage]
	Load       Answer[unit.Ratio]
	Derating   Answer[unit.Ratio]
	Headroom   Answer[unit.Ratio]
	Roll       Roll

	OfLost, OfPlateVolts, OfFrequency, OfSystem, OfPlateSystem, OfLegs, OfEfficiency, OfRotation, OfPhases Verdict

	Asks []Verdict // what looks like another connection of the leads

	held []Held // all that the reading says
}

// Prove answers with how far a fan's motor is proven.
func Prove(f *record.Fan) Proof {
	var p Proof
	if f.Supply.Value() == "" {
		p.Next, p.Wanted = StepSupply, []record.Place{&f.Supply}
		return p
	}
	p.Judged, p.Taken = JudgedReading(f)
	p.New = p.Trial != nil || !p.Taken
	p.OfRotation, p.OfPhases = RotationVerdict(f), PhasesVerdict(f)
	if !p.Taken {
		switch p.Next = StepReading; {
		case p.OfPhases.Level == Stop:
			p.Next, p.Worst = StepVerdict, p.OfPhases
		case p.OfRotation.Level == Stop:
			p.Next = StepExchange
		}
		return p
	}
	p.read(f)
	p.step(f)
	return p
}

// read takes from the reading all that it says.
func (p *Proof) read(f *record.Fan) {
	s, r := p.Side, p.Reading
	p.Three = ThreePhase(f)
	if Rolls(f) {
		p.Roll = LeadRoll(f)
	}
	p.VoltsAt = r
	if t := p.Roll.Trials; len(t) > 0 && t[len(t)-1] == p.Trial && !volted(r) {
		p.VoltsAt = &t[0].Reading
	}
	v := p.VoltsAt
	p.LineVolts, p.LineAmps = LineVolts(f, v), LineAmps(f, r)
	p.PlateVolts, p.System = PlateVolts(f, s, v), SystemVolts(f, v)
	p.OfPlateVolts, p.OfSystem, p.OfPlateSystem = PlateVoltsVerdict(p.PlateVolts), SystemVerdict(f, v), PlateSystemVerdict(s, p.System)
	p.OfFrequency = FrequencyVerdict(f, s, v)
	p.OfLegs = legVerdict(f, s, r)
	p.Asks = ConnectionVerdicts(f, s, v, r)
	if !p.Three {
		return
	}
	p.Lost, p.OfLost = LostPhase(r), LostVerdict(r)
	if p.Lost.Loss == phase.LossAhead && f.Supply.Value() == record.Inverter { // which has even volts of its own
		p.Lost.Loss, p.OfLost.Rule = phase.LossWinding, RuleOpenWinding
	}
	if line := openLine(v); line != phase.NoLeg && !p.Lost.Sure() {
		p.Lost, p.OfLost = phase.Lost{Loss: phase.LossLine, Leg: line}, Verdict{Level: Stop, Rule: RuleOpenLine, Method: "phase.lost"}
	}
	p.Volts, p.Amps = SupplyUnbalance(f, s, v), AmpsUnbalance(f, s, r)
	if p.OfLegs.Level == Within && len(p.Amps.Share.Wanted) > 0 { // the leg that is missing may have more
		p.OfLegs = Verdict{Level: Unjudged, Rule: RulePlateAmps, Method: p.OfLegs.Method, Wanted: p.Amps.Share.Wanted}
	}
	idle, _ := idles(f, s, r)
	p.Idles = ampsTellLoad(f) && idle
	if p.Idles && p.OfLegs.Level == Within {
		p.OfLegs = Verdict{Level: Unjudged, Rule: RuleBeltOff, Method: "air.load.proportional"}
	}
	if ampsTellLoad(f) {
		p.Load, p.Derating = Load(f, s, r), Derating(p.Volts)
		p.Headroom = Headroom(p.Load, p.Derating)
		p.OfEfficiency = EfficiencyVerdict(s, RealPower(f, s, r), ShaftPower(f, s, r))
	}
}

// verdicts lists what decides, the most telling first.
func (p *Proof) verdicts(f *record.Fan) (all []Held) {
	add := func(name, about string, v Verdict) { all = append(all, Held{name, about, v}) }
	more := func(name, about string, v Verdict) { all = append(all, wrong(Held{name, about, v})...) }
	if p.Three {
		add("amps.lost", aboutAmps, p.OfLost)
		add("volts.unbalance", aboutVolts, p.Volts.Verdict)
	}
	if s := f.Supply.Value(); p.New && (s == record.SinglePhase || s == record.Direct && !p.Three) && f.New.Fit.Phases.State() != record.Known {
		add("supply.phases", aboutPlate, p.OfPhases) // three would be wrong there, or have legs that nobody has read
	} else {
		more("supply.phases", aboutPlate, p.OfPhases)
	}
	if line := LineFrequency(f, p.Side, p.VoltsAt); line.Known() || line.Fault != nil || p.System.Known() && unusual(f, p.Side) {
		add("volts.frequency", aboutVolts, p.OfFrequency)
	}
	add("volts.of-plate", aboutVolts, p.OfPlateVolts)
	if p.System.Known() {
		add("volts.plate", aboutPlate, p.OfPlateSystem)
		add("volts.system", aboutVolts, p.OfSystem)
	}
	for _, v := range p.Asks {
		about := aboutVolts
		if v.Rule == RuleDoubleAmps {
			about = aboutAmps
		}
		more("ask."+string(v.Rule), about, v)
	}
	if p.Reading.TippedUp.Value() == record.Yes {
		add("amps.tipped-up", aboutAmps, tippedUp)
	} else {
		add("amps.line", aboutAmps, p.OfLegs)
		if p.Three {
			add("amps.unbalance", aboutAmps, p.Amps.Verdict)
		} else {
			more("amps.return", aboutAmps, returnVerdict(p.Reading))
		}
		more("power.shaft", aboutAmps, p.OfEfficiency)
	}
	if p.New {
		add("rotation", aboutRotation, p.OfRotation)
		all = append(all, ofDial(f)...)
	} else { // of the new motor, what is wrong already
		more("rotation", aboutRotation, p.OfRotation)
		all = append(all, wrong(ofDial(f)...)...)
	}
	return all
}

// returnVerdict judges whether what goes to a motor of one phase by one wire comes back
// by the other; one wire read alone tells nothing of it.
func returnVerdict(r *record.Reading) Verdict {
	v := Verdict{Rule: RuleReturnAmps, Method: "phase.return"}
	a, b := LegAmps(r, 0), LegAmps(r, 1)
	if !a.Known() || !b.Known() {
		return v
	}
	m := clampOf(r)
	off, error := a.Value-b.Value, (a.Value+b.Value)*unit.Current(m.Share)+2*m.Floor
	if off = max(off, -off); off > error*(1+slack) {
		v.Level, v.Value, v.Limit = Watch, Figure{&unit.Amperage, float64(off)}, Figure{&unit.Amperage, float64(error)}
	}
	return v
}

// ofDial judges the overload relay's dial, once it is entered; a motor said to be
// protected by a drive, on a supply without one, can't be judged (430.32: every motor
// has its overload).
func ofDial(f *record.Fan) []Held {
	if !known(&f.New.Dial) {
		switch s := f.Supply.Value(); {
		case f.New.Protection.Value() == record.ByDrive && (s == record.ThreePhase || s == record.SinglePhase || s == record.TwoSpeed):
			return []Held{{"overload.set", aboutOverload, Verdict{Level: Unjudged, Rule: RuleOverloadDial, Method: "phase.overload", Wanted: []record.Place{&f.New.Protection}}}}
		}
		return nil
	}
	return []Held{{"overload.set", aboutOverload, OverloadOf(f).Verdict}}
}

// unusual tells whether a motor on the line is plated for another frequency than that of
// the systems known here: on theirs it would turn at another speed, so that it is not
// passed over.
func unusual(f *record.Fan, s *record.Side) bool {
	plate := PlateFrequency(s)
	return f.Supply.Value() != record.Inverter && plate.Known() && plate.Value != usualFrequency
}

// step finds the next step: what is dangerous first, then in the order of the work.
func (p *Proof) step(f *record.Fan) {
	all := p.verdicts(f)
	p.held, p.Worst = all, Worst(all).Verdict
	volts, amps := p.unread()
	switch {
	case p.OfLost.Level == Stop:
		p.Next = StepLost
	case p.stopped(all):
		p.Next = StepVerdict
	case p.OfRotation.Level == Stop:
		p.Next = StepExchange
	case p.faulty(all):
		p.Next = StepFault
	case p.New && len(volts) > 0:
		p.Next, p.Wanted = StepVolts, volts
	case p.New && p.OfRotation.Level != Within:
		p.Next, p.Wanted = StepRotation, p.OfRotation.Wanted
	case p.New && len(amps) > 0:
		p.Next, p.Wanted = StepAmps, amps
	case p.New && p.Reading.TippedUp.Value() == record.Yes && p.Worst.Rule == RuleTippedUp: // lower it and read again
		p.Next, p.Wanted = StepAmps, []record.Place{&p.Reading.Amps[0]}
	case p.New && p.Idles && p.Worst.Level < Watch:
		p.Next, p.Wanted = StepAmps, []record.Place{&p.Reading.Amps[0]}
	case len(p.Roll.Trials) == positions && len(p.Roll.Wanted) > 0:
		p.Next, p.Wanted = StepAmps, p.Roll.Wanted
	case p.Roll.Known:
		p.Next = StepCause
	case p.Roll.Before == phase.BeforeNothing && (p.Amps.Verdict.Level == Watch || len(p.Roll.Trials) == 2):
		p.Next = StepRoll
	default:
		p.Next, p.Wanted = StepVerdict, p.Worst.Wanted
	}
}

// stopped puts the stop that is not rotation's in front, if there is one.
func (p *Proof) stopped(all []Held) bool {
	for _, v := range all {
		if v.Level == Stop && v.Rule != RuleRotation {
			p.Worst = v.Verdict
			return true
		}
	}
	return false
}

// faulty takes the first fault, if there is one.
func (p *Proof) faulty(all []Held) bool {
	p.Fault = p.Roll.Fault
	for _, v := range all {
		if v.Fault != nil {
			p.Fault = v.Fault
			break
		}
	}
	return p.Fault != nil
}

// unread lists the volts and the amps of the reading that are still to be read.
func (p *Proof) unread() (volts, amps []record.Place) {
	n := 1
	if p.Three {
		n = 3
	}
	for i := range n {
		if !known(&p.VoltsAt.Volts[i]) {
			volts = append(volts, &p.VoltsAt.Volts[i])
		}
		if !known(&p.Reading.Amps[i]) {
			amps = append(amps, &p.Reading.Amps[i])
		}
	}
	return volts, amps
}

// Rolls tells whether a lead roll says anything on a supply.
func Rolls(f *record.Fan) bool {
	use, err := phase.CheckUse(phase.CheckRoll, phase.Supply(f.Supply.Value()))
	return err == nil && use != phase.UseNo && ThreePhase(f)
}
