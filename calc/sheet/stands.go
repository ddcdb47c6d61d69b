package sheet

import (
	"slices"

	"roofside/calc/record"
)

// OfRecord is the page that all others and the comparison of both fans come together
// on.
const OfRecord Subject = "record"

// Subjects lists the pages that have a plate, in the order of the job.
func Subjects() []Subject {
	return []Subject{OfDrive, OfAirflow, OfBelt, OfPower, OfRaceway, OfRecord}
}

// Stands lists what stands on a page, the first of each level the most telling. What
// is only offered is not among it: other rows of the turns table, other sheaves, belts
// to choose from; nor is what was read before the latest reading. A part of the job
// that was not begun is not held against its page; what the next move waits for is, as
// what can't be judged. The record has what stands on all pages, but of a page that
// was not begun only what is wrong: [Handover] lists what is open.
func (j *Job) Stands(on Subject) []Held {
	switch on {
	case OfDrive:
		return j.onDrive()
	case OfAirflow:
		return j.onAirflow()
	case OfBelt:
		return j.onBelt()
	case OfPower:
		return j.onPower()
	case OfRaceway:
		return j.onRaceway()
	}
	return append(j.Running(), Fitting(j.f, LikeForLike(j.f))...)
}

// Plate returns the worst of what stands on a page. Where nothing does, nothing was
// judged, and that is what it says.
func (j *Job) Plate(on Subject) Held { return Plated(j.Stands(on)) }

// Plated returns the worst of what stands on a page, as [Job.Plate] does.
func Plated(all []Held) Held {
	if len(all) == 0 {
		return Held{Verdict: Verdict{Level: Unjudged}}
	}
	return Worst(all)
}

// Running lists what stands on the pages of a fan: all that the record has but the
// comparison of both fans, see [Fitting]. No place that is silent, see
// [record.Silent], has a part in it.
func (j *Job) Running() (all []Held) {
	for _, on := range [...]Subject{OfDrive, OfAirflow, OfBelt, OfPower, OfRaceway} {
		stands := j.Stands(on)
		if !j.begun(on) {
			stands = wrong(stands...)
		}
		all = append(all, stands...)
	}
	return all
}

// Overall judges a fan by all that can be held against it so far. judged is false
// where there is nothing yet.
func Overall(f *record.Fan) (worst Verdict, judged bool) {
	all := JobOf(f, anyMark, false).Stands(OfRecord)
	return Worst(all).Verdict, len(all) > 0
}

func (j *Job) onDrive() []Held {
	if !j.belted() {
		return nil
	}
	return j.drive.get(func() []Held {
		f, t := j.f, j.Table()
		m, wanted := j.Move()
		all := slices.Clip(heldBy(f, t, m))
		if m.Do == DoAsk {
			v := Verdict{Level: Unjudged, Rule: RuleSetting, Method: "drive.setting", Wanted: wanted}
			if v.Fault = t.Speed.Fault; v.Fault == nil {
				v.Fault = t.Target.Fault
			}
			all = append(all, Held{"move", "", v})
		}
		if t.Set < 0 { // what would be run, were it reached
			all = append(all, wrong(Held{"need.target", "", j.Sheaves().AtTheTarget})...)
		}
		if left := f.Left(); left != nil && known(&left.Reading.Speed) && t.Target.Known() {
			all = append(all, Held{"left.fan-speed", aboutSpeed, TargetReached(f, LeftSpeed(f), t.Target)})
		}
		if _, has := Named(all, "target.fan-speed"); !has {
			all = append(all, judged(Held{"target.fan-speed", "", TargetVerdict(f)})...)
		}
		all = append(all, wrong(
			Held{"new.swapped", "", SwappedVerdict(&f.New)},
			Held{"old.swapped", "", SwappedVerdict(&f.Old)},
			Held{"old.belt-speed", "", BeltSpeedVerdict(BeltSpeed(f, &f.Old))},
		)...)
		if BeltNumberVerdict(&f.New).Level >= Watch {
			all = append(all, wrong(Held{"new.belt-number", "", j.Belt().Fits[0].doubt(f)})...)
		}
		if known(&f.Old.Reading.Speed) {
			all = append(all, Held{"old.mismatch", "", MismatchVerdict(f, &f.Old)})
		}
		return all
	})
}

func (j *Job) onAirflow() (all []Held) {
	a := j.Air()
	all = slices.Clip(a.Alarms)
	if a.At.Speed.Known() {
		all = append(all, Held{"new.amps", a.Motor.aboutSetting(), a.Motor}, Held{"at.fan-speed", a.Wheel.aboutSetting(), a.Wheel})
	}
	// What can't be judged of the hood is left out, but where less was measured than it
	// asks for: a planned airflow proves nothing and is held against nobody.
	least, measured := HoodLeast(j.f).Value, &j.f.Hood.Airflow
	if a.Hood.Level != Unjudged || known(measured) && measured.Value() < least {
		all = append(all, Held{"hood.exhaust", aboutHood, a.Hood})
	}
	all = append(all, judged(Held{"duct.velocity", aboutHood, a.Duct}, Held{"space", "", a.Space})...)
	if VoltageUnbalance(j.f).Known() {
		all = append(all, Held{"volts-unbalance", aboutVolts, a.Volts})
	}
	return all
}

func (j *Job) onBelt() (all []Held) {
	if !j.belted() {
		return nil
	}
	f, b := j.f, j.Belt()
	all = slices.Clip(b.Bars)
	add := func(name, about string, v Verdict) {
		if _, has := Named(all, name); !has {
			all = append(all, Held{name, about, v})
		}
	}
	switch {
	case b.Last != nil:
		add("tension", aboutTension, b.Taut.Verdict)
	case known(&f.New.Sheave) || j.begun(OfBelt):
		if e := j.Set().Edges(record.NewBelt); !e.Least.Known() { // there is no force to press with
			add("tension", "", Verdict{Level: Unjudged, Rule: RuleTension, Method: "belt.verdict", Wanted: e.Least.Wanted, Fault: e.Least.Fault})
		}
	}
	if b.aligned != nil {
		add("align.gap", aboutAlignment, b.gap)
	}
	if f.New.BeltNumber.State() == record.Known {
		add("new.groove", "", GrooveVerdict(&f.New))
		if said(&f.New.Center, &f.New.TravelToward, &f.New.TravelAway) {
			add("fitted.center", "", b.Fits[0].Verdict)
		}
	}
	if b.Run.Speed.Known() {
		add("set.belt-speed", "", BeltSpeedVerdict(b.Run.Speed))
	}
	if f.Card.Rating.State() != record.Unknown {
		add("belt.capacity", "", CapacityVerdict(Capacity(f, j.Set().Power())))
	}
	return all
}

func (j *Job) onPower() []Held {
	f, p := j.f, j.Proof()
	if p.Taken {
		return p.held
	}
	all := wrong(Held{"supply.phases", aboutPlate, p.OfPhases}, Held{"rotation", aboutRotation, p.OfRotation})
	all = append(all, wrong(ofDial(f)...)...)
	if last := lastTrial(f); last != nil { // whatever feeds it, it has the legs that were read
		all = append(all, wrong(Held{"amps.lost", aboutAmps, LostVerdict(&last.Reading)})...)
	}
	// Until amps are read the motor is not proven.
	return append(all, Held{"power.next", "", Verdict{Level: Unjudged, Rule: RulePlateAmps, Method: "motor.limits", Wanted: p.Wanted}})
}

func (j *Job) onRaceway() (all []Held) {
	f := j.f
	if Piped(f) {
		all = append(all, Held{"raceway.fill", "", j.Fill()})
		if _, jam, three := Jam(f); three {
			all = append(all, Held{"raceway.jam", "", jam})
		}
	}
	if len(f.Wires) > 0 {
		all = append(all, j.Circuit().Verdicts(f)...)
	}
	if a := j.Adapter(); f.Opening.Kind.State() != record.Unknown && !a.Known() {
		all = append(all, Held{"take-along", "", Verdict{Level: Unjudged, Rule: RuleJoint, Method: "raceway.adapter", Wanted: a.Wanted, Fault: a.Fault}})
	}
	for _, v := range j.Joint() {
		all = append(all, Held{v.remark(), "", v})
	}
	if Boxed(f) {
		all = append(all, Held{"box.needed", "", j.Box()})
	}
	return all
}

// begun tells whether anything was entered or read that a page alone is about.
func (j *Job) begun(on Subject) bool {
	f, s := j.f, &j.f.New
	switch on {
	case OfDrive:
		return said(&s.MotorSheave, &s.MotorOutside, &s.MotorGap, &s.AnchorPitch, &s.FanSheave, &s.FanOutside)
	case OfAirflow:
		return said(&s.MotorAmps, &s.WheelMax) && j.Air().Basis.Known()
	case OfBelt:
		if last := lastTrial(f); last != nil && (HasTension(last) || known(&last.Belt.Gap)) {
			return true
		}
		return said(&s.BeltNumber, &f.Card.Force, &f.Card.Rating, &f.Card.Mass)
	case OfPower:
		return j.Proof().Taken
	}
	return true
}

// said tells whether anything was entered in one of places, be it no value.
func said(ps ...record.Place) bool {
	return slices.ContainsFunc(ps, func(p record.Place) bool { return p.State() != record.Unknown })
}

// Fitting returns what stands against the new fan's taking the old one's place: the
// base's going over the curb, and of the lines that hold old against new what is a stop.
func Fitting(f *record.Fan, lines []Line) (all []Held) {
	for _, l := range lines {
		if l.Level == Stop {
			all = append(all, Held{"like." + l.Name, "", Verdict{Level: Stop, Rule: RuleUnlike, Method: l.Method}})
			break // the section that holds them says which, and why
		}
	}
	return append(all, wrong(
		Held{"curb.clearance", aboutBase, ClearanceVerdict(Clearance(f, false))},
		Held{"curb.clearance-along", aboutBase, ClearanceVerdict(Clearance(f, true))},
	)...)
}
