package sheet_test

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// A job with its record, for the answers to go by.
type asked struct {
	*sheet.Job
	*record.Fan
}

func ask(f *record.Fan) asked { return asked{sheet.JobOf(f, unit.Inch/16, true), f} }

// A told is an answer as its page shows it, its type put aside.
type told struct {
	kind  *unit.Kind
	base  float64
	known bool
}

type teller func(asked) told

func say[Q unit.Quantity](a sheet.Answer[Q]) told {
	return told{Q(0).Kind(), float64(a.Value), a.Known()}
}

// of tells an answer that a page shows of a record.
func of[Q unit.Quantity](answer func(asked) sheet.Answer[Q]) teller {
	return func(a asked) told { return say(answer(a)) }
}

// now is what the new fan's speed is said to be: left, read or computed.
func now(a asked) sheet.Answer[unit.Speed] {
	f, t := a.Fan, a.Table()
	if left := f.Left(); left != nil && left == f.Trials[len(f.Trials)-1] && left.Reading.Speed.State() == record.Known {
		return sheet.Read("n₂", sheet.FromTachometer, &left.Reading.Speed)
	}
	if f.New.Sheave.Value() == record.Fixed {
		return t.Speed
	}
	return t.SpeedAt(f, sheet.NowTurns(f))
}

// read is the reading that Power judges, with its side.
func read(a asked) (*record.Side, *record.Reading) { return a.Proof().Side, a.Proof().Reading }

// left is the reading that the new fan was left at, or an empty one.
func leftAt(a asked) *record.Trial {
	if t := a.Left(); t != nil {
		return t
	}
	return &record.Trial{}
}

func limitOf(rule sheet.Rule) teller {
	return func(a asked) told {
		for _, l := range sheet.SpeedLimits(a.Fan, a.Job.Air().Basis) {
			if l.Rule == rule {
				return say(l.Speed)
			}
		}
		return told{kind: unit.Speed(0).Kind()}
	}
}

func fitOf(role sheet.Role) teller {
	return func(a asked) told {
		for _, x := range a.Job.Belt().Fits {
			if x.Role == role {
				return say(x.Center)
			}
		}
		return told{kind: unit.Length(0).Kind()}
	}
}

// taken is an answer of Power that wants a reading.
func taken[Q unit.Quantity](answer func(asked) sheet.Answer[Q]) teller {
	return func(a asked) told {
		if !a.Proof().Taken {
			return told{kind: Q(0).Kind()}
		}
		return say(answer(a))
	}
}

// answers are what the README publishes, by page and name; what stands in words is left
// out.
var answers = map[string]map[string]teller{
	"drive": {
		"set.turns": func(a asked) told {
			m, _ := a.Move()
			set := m.Do == sheet.DoOpen || m.Do == sheet.DoClose || m.Do == sheet.DoStay
			return told{unit.Turns(0).Kind(), float64(m.To), set}
		},
		"set.fan-speed": func(a asked) told {
			m, _ := a.Move()
			set := m.Do == sheet.DoOpen || m.Do == sheet.DoClose || m.Do == sheet.DoStay
			return told{unit.Speed(0).Kind(), float64(m.Speed), set}
		},
		"target.fan-speed":  of(func(a asked) sheet.Answer[unit.Speed] { return a.Table().Target }),
		"old.fan-speed":     of(func(a asked) sheet.Answer[unit.Speed] { return sheet.FanSpeed(a.Fan, &a.Old) }),
		"shipped.fan-speed": of(func(a asked) sheet.Answer[unit.Speed] { return a.Table().AsShipped(a.Fan) }),
		"new.fan-speed":     of(now),
		"old.mismatch":      of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.Mismatch(a.Fan, &a.Old) }),
		"old.ratio":         of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.Ratio(&a.Old) }),
		"old.motor-pitch":   of(func(a asked) sheet.Answer[unit.Length] { return sheet.MotorPitch(&a.Old) }),
		"old.fan-pitch":     of(func(a asked) sheet.Answer[unit.Length] { return sheet.FanPitch(&a.Old) }),
		"old.belt-speed":    of(func(a asked) sheet.Answer[unit.Velocity] { return sheet.BeltSpeed(a.Fan, &a.Old) }),
		"old.arc":           of(func(a asked) sheet.Answer[unit.Angle] { return sheet.Arc(&a.Old) }),
		"new.motor-pitch":   of(func(a asked) sheet.Answer[unit.Length] { return sheet.MotorPitchAt(&a.New, sheet.NowTurns(a.Fan)) }),
		"new.belt-length":   of(func(a asked) sheet.Answer[unit.Length] { return sheet.BeltLength(&a.New) }),
		"new.arc":           of(func(a asked) sheet.Answer[unit.Angle] { return sheet.Arc(&a.New) }),
		"need.motor-sheave": of(func(a asked) sheet.Answer[unit.Length] { return a.Sheaves().Motor }),
		"need.fan-sheave":   of(func(a asked) sheet.Answer[unit.Length] { return a.Sheaves().Fan }),
		"need.motor-speed":  of(func(a asked) sheet.Answer[unit.Speed] { return a.Sheaves().Speed }),
		"need.frequency":    of(func(a asked) sheet.Answer[unit.Frequency] { return a.Sheaves().Frequency }),
	},
	"airflow": {
		"at.fan-speed":    of(func(a asked) sheet.Answer[unit.Speed] { return a.Job.Air().At.Speed }),
		"at.airflow":      of(func(a asked) sheet.Answer[unit.Flow] { return a.Job.Air().At.Airflow }),
		"at.pressure":     of(func(a asked) sheet.Answer[unit.Pressure] { return a.Job.Air().At.Pressure }),
		"at.power":        of(func(a asked) sheet.Answer[unit.Power] { return a.Job.Air().At.Power }),
		"at.density":      of(func(a asked) sheet.Answer[unit.Density] { return sheet.Density(a.Fan, a.Job.Air().At.Air) }),
		"old.load":        of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.OldAmpsLoad(a.Fan) }),
		"old.shaft-power": of(func(a asked) sheet.Answer[unit.Power] { return sheet.OldPower(a.Fan) }),
		"new.load": of(func(a asked) sheet.Answer[unit.Ratio] {
			return sheet.NewLoad(a.Fan, a.Job.Air().Basis, a.Job.Air().At.Speed, a.Job.Air().At.Air)
		}),
		"new.amps": of(func(a asked) sheet.Answer[unit.Current] {
			return sheet.NewAmps(a.Fan, a.Job.Air().Basis, a.Job.Air().At.Speed, a.Job.Air().At.Air)
		}),
		"limit.plate-amps":   limitOf(sheet.RulePlateAmps),
		"limit.service-amps": limitOf(sheet.RuleServiceAmps),
		"limit.service-void": limitOf(sheet.RuleServiceVoid),
		"limit.wheel-max":    limitOf(sheet.RuleWheelMax),
		"volts-unbalance":    of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.VoltageUnbalance(a.Fan) }),
		"hood.exhaust":       of(func(a asked) sheet.Answer[unit.Flow] { return a.Job.Air().Exhaust }),
		"hood.least":         of(func(a asked) sheet.Answer[unit.Flow] { return sheet.HoodLeast(a.Fan) }),
		"duct.velocity":      of(func(a asked) sheet.Answer[unit.Velocity] { return a.Job.Air().Velocity }),
		"makeup.short":       of(func(a asked) sheet.Answer[unit.Flow] { return sheet.MakeUpBalance(a.Fan, a.Job.Air().Exhaust) }),
	},
	"belt": {
		"set.deflection":        of(func(a asked) sheet.Answer[unit.Length] { return a.Set().Press }),
		"set.force-least":       of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Edges(record.NewBelt).Least }),
		"set.force-most":        of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Edges(record.NewBelt).Most }),
		"measured.power":        of(func(a asked) sheet.Answer[unit.Power] { return a.Set().Measured.Power }),
		"measured.tension":      of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Measured.Tension }),
		"measured.new-least":    of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Measured.New.Least }),
		"measured.new-most":     of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Measured.New.Most }),
		"measured.run-in-least": of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Measured.RunIn.Least }),
		"measured.run-in-most":  of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Measured.RunIn.Most }),
		"plate.power":           of(func(a asked) sheet.Answer[unit.Power] { return a.Set().Plate.Power }),
		"plate.tension":         of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Plate.Tension }),
		"plate.new-least":       of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Plate.New.Least }),
		"plate.new-most":        of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Plate.New.Most }),
		"plate.run-in-least":    of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Plate.RunIn.Least }),
		"plate.run-in-most":     of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Plate.RunIn.Most }),
		"listed.new-least":      of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Listed.New.Least }),
		"listed.new-most":       of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Listed.New.Most }),
		"listed.run-in-least":   of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Listed.RunIn.Least }),
		"listed.run-in-most":    of(func(a asked) sheet.Answer[unit.Force] { return a.Set().Listed.RunIn.Most }),
		"set.belt-length":       of(func(a asked) sheet.Answer[unit.Length] { return sheet.LengthFor(a.Fan, a.Job.Belt().Run) }),
		"set.center":            of(func(a asked) sheet.Answer[unit.Length] { return a.Job.Belt().Run.Center }),
		"set.span":              of(func(a asked) sheet.Answer[unit.Length] { return a.Job.Belt().Run.Span }),
		"set.arc":               of(func(a asked) sheet.Answer[unit.Angle] { return a.Job.Belt().Run.Arc }),
		"set.belt-speed":        of(func(a asked) sheet.Answer[unit.Velocity] { return a.Job.Belt().Run.Speed }),
		"set.frequency-least": of(func(a asked) sheet.Answer[unit.Frequency] {
			return a.Set().Frequency(a.Set().Edges(record.NewBelt).Least)
		}),
		"set.frequency-most": of(func(a asked) sheet.Answer[unit.Frequency] {
			return a.Set().Frequency(a.Set().Edges(record.NewBelt).Most)
		}),
		"set.shaft-load": of(func(a asked) sheet.Answer[unit.Force] { return a.Set().ShaftLoad(a.Set().Edges(record.NewBelt).Most) }),
		"fitted.center":  fitOf(sheet.Fitted),
		"shorter.center": fitOf(sheet.Shorter),
		"nearest.center": fitOf(sheet.Nearest),
		"longer.center":  fitOf(sheet.Longer),
		"belt.capacity":  of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.Capacity(a.Fan, a.Set().Power()) }),
		"align.aim":      of(func(a asked) sheet.Answer[unit.Length] { _, aim := sheet.AlignmentGap(a.Job.Belt().Run); return aim }),
		"align.most":     of(func(a asked) sheet.Answer[unit.Length] { most, _ := sheet.AlignmentGap(a.Job.Belt().Run); return most }),
		"align.shift":    of(func(a asked) sheet.Answer[unit.Length] { return sheet.BeltShift(a.Fan, a.Job.Belt().Run.Turns) }),
		"align.gap": func(a asked) told {
			if t, _ := sheet.AlignmentNow(a.Fan); t != nil {
				return say(sheet.Read("x", sheet.FromTrial, &t.Belt.Gap))
			}
			return told{kind: unit.Length(0).Kind()}
		},
	},
	"power": {
		"volts.unbalance":        taken(func(a asked) sheet.Answer[unit.Ratio] { return a.Proof().Volts.Share }),
		"volts.line":             taken(func(a asked) sheet.Answer[unit.Voltage] { return a.Proof().LineVolts }),
		"volts.of-plate":         taken(func(a asked) sheet.Answer[unit.Ratio] { return a.Proof().PlateVolts }),
		"volts.system":           taken(func(a asked) sheet.Answer[unit.Voltage] { return a.Proof().System }),
		"amps.unbalance":         taken(func(a asked) sheet.Answer[unit.Ratio] { return a.Proof().Amps.Share }),
		"amps.line":              taken(func(a asked) sheet.Answer[unit.Current] { return a.Proof().LineAmps }),
		"amps.of-volts":          taken(func(a asked) sheet.Answer[unit.Ratio] { return sheet.Amplification(a.Proof().Volts, a.Proof().Amps) }),
		"motor.load":             taken(func(a asked) sheet.Answer[unit.Ratio] { return a.Proof().Load }),
		"motor.derating":         taken(func(a asked) sheet.Answer[unit.Ratio] { return a.Proof().Derating }),
		"motor.headroom":         taken(func(a asked) sheet.Answer[unit.Ratio] { return a.Proof().Headroom }),
		"power.apparent":         taken(func(a asked) sheet.Answer[unit.ApparentPower] { _, r := read(a); return sheet.Apparent(a.Fan, r) }),
		"power.real":             taken(func(a asked) sheet.Answer[unit.Power] { s, r := read(a); return sheet.RealPower(a.Fan, s, r) }),
		"power.shaft":            taken(func(a asked) sheet.Answer[unit.Power] { s, r := read(a); return sheet.ShaftPower(a.Fan, s, r) }),
		"overload.dial":          of(func(a asked) sheet.Answer[unit.Current] { return sheet.OverloadOf(a.Fan).Dial }),
		"overload.trip":          of(func(a asked) sheet.Answer[unit.Current] { return sheet.OverloadOf(a.Fan).Trip }),
		"overload.after-failure": of(func(a asked) sheet.Answer[unit.Current] { return sheet.OverloadOf(a.Fan).AfterFailure }),
	},
	"raceway": {
		"raceway.fill":          of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.FillShare(a.Fan) }),
		"raceway.room":          of(func(a asked) sheet.Answer[unit.Count] { more, _ := sheet.Room(a.Fan); return more }),
		"raceway.jam":           of(func(a asked) sheet.Answer[unit.Ratio] { ratio, _, _ := sheet.Jam(a.Fan); return ratio }),
		"circuit.demand":        of(func(a asked) sheet.Answer[unit.Current] { return a.Job.Circuit().Demand }),
		"circuit.ampacity":      of(func(a asked) sheet.Answer[unit.Current] { return a.Job.Circuit().Carried }),
		"circuit.motor-current": of(func(a asked) sheet.Answer[unit.Current] { return a.Job.Circuit().Current }),
		"circuit.overcurrent":   of(func(a asked) sheet.Answer[unit.Current] { return a.Job.Circuit().Device }),
		"circuit.disconnect":    of(func(a asked) sheet.Answer[unit.Current] { return a.Job.Circuit().Disconnect }),
		"circuit.drop":          of(func(a asked) sheet.Answer[unit.Voltage] { return a.Job.Circuit().Drop }),
		"circuit.drop-share":    of(func(a asked) sheet.Answer[unit.Ratio] { return a.Job.Circuit().DropShare }),
		"box.needed":            of(func(a asked) sheet.Answer[unit.Volume] { return sheet.BoxNeeded(a.Fan) }),
		"box.volume":            of(func(a asked) sheet.Answer[unit.Volume] { return sheet.BoxVolume(a.Fan) }),
		"box.fill":              of(func(a asked) sheet.Answer[unit.Ratio] { return sheet.BoxShare(a.Fan) }),
	},
	"record": {
		"record.turns.found":          of(func(a asked) sheet.Answer[unit.Turns] { return sheet.Turns(&a.Old) }),
		"record.turns.shipped":        of(func(a asked) sheet.Answer[unit.Turns] { return sheet.Turns(&a.New) }),
		"record.turns.left":           of(func(a asked) sheet.Answer[unit.Turns] { return sheet.TrialTurns(leftAt(a)) }),
		"record.motor-sheave.found":   of(func(a asked) sheet.Answer[unit.Length] { return sheet.MotorPitch(&a.Old) }),
		"record.motor-sheave.shipped": of(func(a asked) sheet.Answer[unit.Length] { return sheet.MotorPitch(&a.New) }),
		"record.motor-sheave.left": of(func(a asked) sheet.Answer[unit.Length] {
			return sheet.MotorPitchAt(&a.New, sheet.TrialTurns(leftAt(a)))
		}),
		"record.fan-sheave.found":   of(func(a asked) sheet.Answer[unit.Length] { return sheet.FanPitch(&a.Old) }),
		"record.fan-sheave.shipped": of(func(a asked) sheet.Answer[unit.Length] { return sheet.FanPitch(&a.New) }),
		"record.speed.target":       of(func(a asked) sheet.Answer[unit.Speed] { return a.Table().Target }),
		"record.speed.found":        of(func(a asked) sheet.Answer[unit.Speed] { return sheet.FanSpeed(a.Fan, &a.Old) }),
		"record.speed.shipped":      of(func(a asked) sheet.Answer[unit.Speed] { return a.Table().AsShipped(a.Fan) }),
		"record.speed.left":         of(func(a asked) sheet.Answer[unit.Speed] { return sheet.Read("", "", &leftAt(a).Reading.Speed) }),
		"record.airflow.target":     of(func(a asked) sheet.Answer[unit.Flow] { return sheet.Read("", "", &a.Target.Airflow) }),
		"record.airflow.found":      of(func(a asked) sheet.Answer[unit.Flow] { return sheet.Read("", "", &a.Old.Reading.Airflow) }),
		"record.airflow.left":       of(func(a asked) sheet.Answer[unit.Flow] { return sheet.Read("", "", &leftAt(a).Reading.Airflow) }),
		"record.hood.target":        of(func(a asked) sheet.Answer[unit.Flow] { return sheet.HoodLeast(a.Fan) }),
		"record.hood.left":          of(func(a asked) sheet.Answer[unit.Flow] { return sheet.Read("", "", &a.Hood.Airflow) }),
		"record.pressure.target":    of(func(a asked) sheet.Answer[unit.Pressure] { return sheet.Read("", "", &a.Target.Pressure) }),
		"record.pressure.found":     of(func(a asked) sheet.Answer[unit.Pressure] { return sheet.Read("", "", &a.Old.Reading.Pressure) }),
		"record.pressure.left":      of(func(a asked) sheet.Answer[unit.Pressure] { return sheet.Read("", "", &leftAt(a).Reading.Pressure) }),
		"record.volts.found":        of(func(a asked) sheet.Answer[unit.Voltage] { return sheet.LineVolts(a.Fan, &a.Old.Reading) }),
		"record.volts.shipped":      of(func(a asked) sheet.Answer[unit.Voltage] { return sheet.Read("", "", &a.New.MotorVolts) }),
		"record.volts.left":         of(func(a asked) sheet.Answer[unit.Voltage] { return sheet.LineVolts(a.Fan, &leftAt(a).Reading) }),
		"record.amps.found":         of(func(a asked) sheet.Answer[unit.Current] { return sheet.LineAmps(a.Fan, &a.Old.Reading) }),
		"record.amps.shipped":       of(func(a asked) sheet.Answer[unit.Current] { return sheet.Read("", "", &a.New.MotorAmps) }),
		"record.amps.left":          of(func(a asked) sheet.Answer[unit.Current] { return sheet.LineAmps(a.Fan, &leftAt(a).Reading) }),
		"record.force.left":         of(func(a asked) sheet.Answer[unit.Force] { return sheet.Read("", "", &leftAt(a).Belt.Force) }),
		"record.frequency.left":     of(func(a asked) sheet.Answer[unit.Frequency] { return sheet.Read("", "", &leftAt(a).Belt.Frequency) }),
		"curb.clearance":            of(func(a asked) sheet.Answer[unit.Length] { return sheet.Clearance(a.Fan, false) }),
		"curb.clearance-along":      of(func(a asked) sheet.Answer[unit.Length] { return sheet.Clearance(a.Fan, true) }),
	},
}

// answerOf returns the answer with a name, on whatever page it stands.
func answerOf(name string) (teller, bool) {
	for _, page := range answers {
		if t, ok := page[name]; ok {
			return t, true
		}
	}
	return nil, false
}

// What the README publishes with a figure is what can be asked here, page by page.
func TestThePublishedAnswersCanBeAsked(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	_, section, _ := strings.Cut(string(text), "### Answers")
	section, _, _ = strings.Cut(section, "\n#")
	worded := map[string]bool{"take-along": true, "raceway.smallest": true, "circuit.wire": true, "circuit.ground": true, "box.smallest": true,
		"move": true, "first-limit": true, "tension": true, "power.next": true, "roll.cause": true, "record.next": true}
	rows := regexp.MustCompile("(?m)^\\| `/([a-z]+)/` \\| (.*) \\|$").FindAllStringSubmatch(section, -1)
	if len(rows) != len(answers) {
		t.Fatalf("%d pages are published, %d can be asked", len(rows), len(answers))
	}
	for _, row := range rows {
		published := map[string]bool{}
		for _, m := range regexp.MustCompile("`([a-z0-9.-]+)`").FindAllStringSubmatch(row[2], -1) {
			name := m[1]
			published[name] = true
			if _, ok := answers[row[1]][name]; !ok && !worded[name] && !strings.HasSuffix(name, ".") {
				t.Errorf("%s on %s can't be asked", name, row[1])
			}
		}
		for name := range answers[row[1]] {
			if !published[name] {
				t.Errorf("%s on %s is not published", name, row[1])
			}
		}
	}
}
