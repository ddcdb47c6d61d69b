package sheet_test

import (
	"math/rand/v2"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// eachRecord goes through records of every sort: those of the scenarios, and generated
// ones, sound records with some places spoilt.
func eachRecord(t *testing.T, visit func(name string, f *record.Fan)) {
	t.Helper()
	for i, s := range scenarios(t) {
		f := linkedFan(t, s.Link)
		visit(s.ID, f)
		// The same as it would be left: accepted, and every check ticked.
		for _, trial := range f.Trials {
			set(t, f, "trial."+trial.ID+".accepted", "yes")
			if i%7 == 0 {
				set(t, f, "trial."+trial.ID+".alignment-gap", "1 in")
			}
		}
		if i%11 == 0 {
			set(t, f, "old.curb-width", "24 in", "new.curb-width", "23 in")
		}
		ticked(t, f)
		visit(s.ID+", left", f)
	}
	rounds := 400
	if testing.Short() {
		rounds = 100
	}
	for seed := range uint64(rounds) {
		r := rand.New(rand.NewPCG(seed, 11))
		f := complete(t)
		if seed%2 == 0 {
			f = demo(t)
			set(t, f, left...)
			f.NewWire()
		}
		spoil := r.Float64() * 0.4
		for _, p := range f.Places() {
			if r.Float64() < spoil*spoil {
				throw(r, p)
			}
		}
		ticked(t, f)
		visit(f.Fragment(), f)
		if t.Failed() {
			return
		}
	}
}

func ticked(t *testing.T, f *record.Fan) {
	t.Helper()
	for _, g := range record.CheckGroups() {
		for _, name := range g.Checks {
			set(t, f, "check."+name, "done")
		}
	}
}

// byHand lists what is held against a fan by the verdicts themselves, not by what
// gathers them; a fault here is one that a list left out.
func byHand(f *record.Fan) map[sheet.Subject][]sheet.Verdict {
	table := sheet.TurnsTable(f)
	move, _ := sheet.NextMove(f, table)
	all := map[sheet.Subject][]sheet.Verdict{}
	add := func(on sheet.Subject, vs ...sheet.Verdict) { all[on] = append(all[on], vs...) }
	for _, a := range sheet.Alarms(f) {
		add(sheet.OfAirflow, a.Verdict)
		if !f.DirectDrive() {
			add(sheet.OfDrive, a.Verdict)
			add(sheet.OfBelt, a.Verdict)
		}
	}
	if !f.DirectDrive() {
		if v, judged := sheet.Standing(f, table, move); judged {
			add(sheet.OfDrive, v)
		}
		if f.Old.Reading.Speed.State() == record.Known {
			add(sheet.OfDrive, sheet.MismatchVerdict(f, &f.Old))
		}
		if l := f.Left(); l != nil && l.Reading.Speed.State() == record.Known && table.Target.Known() {
			add(sheet.OfDrive, sheet.TargetReached(f, sheet.LeftSpeed(f), table.Target))
		}
		for _, s := range []*record.Side{&f.Old, &f.New} {
			if v := sheet.SwappedVerdict(s); v.Level == sheet.Watch {
				add(sheet.OfDrive, v)
			}
		}
		if v := sheet.TargetVerdict(f); v.Level >= sheet.Watch {
			add(sheet.OfDrive, v)
		}
		if read, v := sheet.AlignmentNow(f); read != nil {
			add(sheet.OfBelt, v)
		}
		if _, _, taut := sheet.TensionNow(f, table, move, unit.Inch/16); taut.Verdict.Rule != "" {
			add(sheet.OfBelt, taut.Verdict)
		}
		if f.New.BeltNumber.State() == record.Known {
			add(sheet.OfBelt, sheet.GrooveVerdict(&f.New))
		}
	}
	if read, ok := sheet.JudgedReading(f); ok && f.Supply.Value() != "" {
		p := sheet.Prove(f)
		if p.Three {
			add(sheet.OfPower, sheet.LostVerdict(read.Reading))
		}
		if v := &p.VoltsAt.Volts; v[0].State() != record.Unknown || v[1].State() != record.Unknown || v[2].State() != record.Unknown {
			add(sheet.OfPower, p.Volts.Verdict, p.OfPlateVolts)
		}
	}
	if f.New.Dial.State() == record.Known && f.Supply.Value() != "" {
		if v := sheet.OverloadOf(f).Verdict; v.Level >= sheet.Watch && !oldReading(f) {
			add(sheet.OfPower, v)
		}
	}
	if len(f.Wires) > 0 {
		c := sheet.CircuitOf(f)
		add(sheet.OfRaceway, sheet.FillVerdict(f), c.WireVerdict)
		add(sheet.OfRaceway, c.Remarks...)
	}
	if sheet.Boxed(f) {
		add(sheet.OfRaceway, sheet.BoxVerdict(f))
	}
	add(sheet.OfRaceway, sheet.JointVerdicts(f, sheet.Adapter(f))...)
	for _, along := range []bool{false, true} {
		if v := sheet.ClearanceVerdict(sheet.Clearance(f, along)); v.Level >= sheet.Watch {
			add(sheet.OfRecord, v)
		}
	}
	for _, l := range sheet.LikeForLike(f) {
		if l.Level == sheet.Stop {
			add(sheet.OfRecord, sheet.Verdict{Level: sheet.Stop, Rule: sheet.RuleUnlike})
		}
	}
	return all
}

// oldReading tells whether Power judges what was read at the old fan.
func oldReading(f *record.Fan) bool {
	p := sheet.Prove(f)
	return p.Taken && !p.New
}

// No plate is better than what stands on its page, and the record's is better than none:
// of a page that was not begun only where something is wrong.
func TestNoPlateIsBetterThanItsPage(t *testing.T) {
	plates := map[sheet.Subject]map[sheet.Level]int{}
	eachRecord(t, func(name string, f *record.Fan) {
		job := sheet.JobOf(f, unit.Inch/16, false)
		whole := job.Plate(sheet.OfRecord)
		by := byHand(f)
		for _, on := range sheet.Subjects() {
			plate := job.Plate(on)
			if plates[on] == nil {
				plates[on] = map[sheet.Level]int{}
			}
			plates[on][plate.Level]++
			for _, v := range by[on] {
				if v.Level > plate.Level {
					t.Errorf("%s: %s stands at %d on %s, whose plate is %d", name, v.Rule, v.Level, on, plate.Level)
				}
			}
			for _, h := range job.Stands(on) {
				if h.Name == "" || h.Rule == "" || h.Level > plate.Level {
					t.Errorf("%s: %s has %+v under a plate of %d", name, on, h, plate.Level)
				}
			}
			if plate.Level > whole.Level && (plate.Level >= sheet.Watch || len(job.Stands(sheet.OfRecord)) == 0) {
				t.Errorf("%s: the plate of %s is %d, the record's %d", name, on, plate.Level, whole.Level)
			}
		}
		if worst, judged := sheet.Overall(f); judged && worst.Level != whole.Level {
			t.Errorf("%s: the list of fans has %d, the record %d", name, worst.Level, whole.Level)
		}
	})
	for on, levels := range plates {
		for level := sheet.Within; level <= sheet.Stop; level++ {
			if levels[level] < 5 {
				t.Errorf("only %d plates of %s are at level %d", levels[level], on, level)
			}
		}
	}
}

// An item of the handover is not done while a verdict about it is watch or stop, and has
// failed after a stop.
func TestNoItemIsDoneAgainstAVerdict(t *testing.T) {
	heard, done := map[string]int{}, map[string]int{}
	eachRecord(t, func(name string, f *record.Fan) {
		stands := sheet.JobOf(f, unit.Inch/16, false).Stands(sheet.OfRecord)
		worst := map[string]sheet.Level{}
		for _, h := range stands {
			worst[h.About] = max(worst[h.About], h.Level)
		}
		worst["run-in"], worst["bumped-with-belt"] = worst["tension"], worst["rotation"]
		// What the amps, the volts and the tension say, by their rules.
		for _, h := range stands {
			if h.Name == "need.target" { // would be, were the target reached
				continue
			}
			switch h.Rule {
			case sheet.RuleLostPhase, sheet.RuleNearlyOpen, sheet.RulePairOpen, sheet.RuleNoAmps, sheet.RulePlateAmps, sheet.RuleServiceAmps, sheet.RuleServiceVoid, sheet.RuleTripAmps, sheet.RuleAmpsUnbalance:
				worst["amps"] = max(worst["amps"], h.Level)
			case sheet.RuleUnbalance, sheet.RulePlateVolts, sheet.RuleLineFrequency, sheet.RuleFlux:
				worst["volts"] = max(worst["volts"], h.Level)
			case sheet.RuleLoose, sheet.RuleTight:
				worst["tension"] = max(worst["tension"], h.Level)
			case sheet.RuleBelow, sheet.RuleTarget, sheet.RuleHarmonic:
				if h.Name != "old.mismatch" {
					worst["speed"] = max(worst["speed"], h.Level)
				}
			}
		}
		for _, p := range sheet.Handover(f, stands...) {
			for _, i := range p.Items {
				level := worst[i.Name]
				if i.State == sheet.Done {
					done[i.Name]++
				}
				if level >= sheet.Watch {
					heard[i.Name]++
				}
				if level >= sheet.Watch && i.State == sheet.Done {
					t.Errorf("%s: %s is done at level %d", name, i.Name, level)
				}
				if level < sheet.Watch && i.State == sheet.Failed {
					t.Errorf("%s: %s failed at level %d", name, i.Name, level)
				}
			}
		}
	})
	for _, name := range []string{"amps", "volts", "speed", "tension", "alignment", "rotation", "run-in", "hood-airflow", "bumped-with-belt", "base-fits"} {
		if heard[name] < 5 || done[name] < 5 {
			t.Errorf("%s: spoken against %d times, done %d times", name, heard[name], done[name])
		}
	}
}

// Left 3 % under its target, a fan's speed is open, and watched.
func TestASpeedLeftUnderItsTargetIsOpen(t *testing.T) {
	f := demo(t)
	set(t, f, append(left, "target.speed", "700 rpm", "trial.t1.turns", "3 turns", "trial.t1.speed", "680 rpm")...)
	stands := sheet.JobOf(f, unit.Inch/16, false).Stands(sheet.OfRecord)
	if v, ok := sheet.Named(stands, "left.fan-speed"); !ok || v.Level != sheet.Watch {
		t.Errorf("it stands at %d, %v", v.Level, ok)
	}
	for _, p := range sheet.Handover(f, stands...) {
		for _, i := range p.Items {
			if i.Name == "speed" && i.State != sheet.Open {
				t.Errorf("the item is in state %d", i.State)
			}
		}
	}
}
