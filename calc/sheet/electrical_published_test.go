package sheet_test

import (
	"strconv"
	"strings"
	"testing"

	"roofside/calc/internal/published"
	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// loaded is a motor of 10 A at real load, whose no-load amps were read; its clamp is
// exact, so that the published figures alone decide.
const loaded = "supply=three-phase&new.motor-amps=10A&new.motor-power=5hp&new.no-load-amps=3A&new.rotation=marked&meter.clamp-accuracy=0%25&meter.clamp-digits=0A&meter.voltmeter-digits=0V"

func typedAs(c published.Case, name string) string {
	v := c.Inputs[name]
	return strconv.FormatFloat(v.Number, 'f', -1, 64) + " " + strings.TrimSuffix(v.Unit, "1")
}

func trial(id, kind string, a, b, c string) []string {
	names := map[string][]string{"amps": {"amps-1", "amps-2", "amps-3"}, "volts": {"volts-12", "volts-23", "volts-31"}}[kind]
	p := "trial." + id + "."
	return []string{p + names[0], a, p + names[1], b, p + names[2], c}
}

func yes(b bool) unit.Ratio {
	if b {
		return 1
	}
	return 0
}

// Other people's figures, typed into a record as a technician would.
var typed = map[string]func(t *testing.T, f *record.Fan, c published.Case) published.Results{
	"A01": typedVolts, "A09": typedVolts, "A10": typedVolts, "A13": typedVolts, "A15": typedVolts, "A16": typedVolts, "A17": typedVolts, "A18": typedVolts,
	"A25": typedAmps, "A26": typedAmps, "A27": typedRoll, "A28": typedRoll,
	"A31": func(t *testing.T, f *record.Fan, c published.Case) published.Results {
		set(t, f, trial("t1", "amps", typedAs(c, "a"), typedAs(c, "b"), typedAs(c, "c"))...)
		lost := sheet.LostPhase(&f.Trials[0].Reading)
		if p := sheet.Prove(f); p.Next != sheet.StepLost || p.OfLost.Level != sheet.Stop {
			t.Errorf("a lost phase is not said first: %s, %+v", p.Next, p.OfLost)
		}
		return published.Results{"lost": yes(lost.Loss == phase.LossOpen), "leg": unit.Ratio(lost.Leg)}
	},
	"B26": typedOverload, "B27": typedOverload, "B54": typedOverload,
	"B43": func(t *testing.T, f *record.Fan, c published.Case) published.Results {
		set(t, f, append(trial("t1", "volts", typedAs(c, "v"), typedAs(c, "v"), typedAs(c, "v")), "new.motor-volts", typedAs(c, "plate"), "meter.voltmeter-accuracy", "0 %")...)
		r := &f.Trials[0].Reading
		share := sheet.PlateVolts(f, &f.New, r)
		return published.Results{"share": share.Value, "within": yes(sheet.PlateVoltsVerdict(share).Level == sheet.Within),
			"watch": yes(sheet.PlateSystemVerdict(&f.New, sheet.SystemVolts(f, r)).Level == sheet.Watch)}
	},
	"P01": typedSystem, "P02": typedSystem, "P03": typedSystem,
}

func typedVolts(t *testing.T, f *record.Fan, c published.Case) published.Results {
	set(t, f, trial("t1", "volts", typedAs(c, "a"), typedAs(c, "b"), typedAs(c, "c"))...)
	u := sheet.VoltsUnbalance(&f.Trials[0].Reading)
	return published.Results{"unbalance": u.Share.Value, "leg": unit.Ratio(u.Leg)}
}

func typedAmps(t *testing.T, f *record.Fan, c published.Case) published.Results {
	set(t, f, append(trial("t1", "amps", typedAs(c, "a"), typedAs(c, "b"), typedAs(c, "c")), "new.motor-amps", "12 A")...)
	u := sheet.AmpsUnbalance(f, &f.New, &f.Trials[0].Reading)
	return published.Results{"unbalance": u.Share.Value, "within": yes(u.Verdict.Level == sheet.Within)}
}

func typedRoll(t *testing.T, f *record.Fan, c published.Case) published.Results {
	for i, leads := range []string{"1-2-3", "3-1-2", "2-3-1"} {
		id, p := "t"+strconv.Itoa(i+1), "p"+strconv.Itoa(i+1)
		set(t, f, append(trial(id, "amps", typedAs(c, p+"L1"), typedAs(c, p+"L2"), typedAs(c, p+"L3")), "trial."+id+".leads", leads)...)
	}
	set(t, f, append(trial("t1", "volts", "208 V", "208 V", "208 V"), "new.motor-amps", "12 A")...)
	r := sheet.LeadRoll(f)
	if !r.Known {
		t.Fatalf("%s: %+v", c.ID, r)
	}
	leg := r.Found.Line
	if r.Found.Cause == phase.CauseMotor {
		leg = r.Lead
	}
	return published.Results{"supply": yes(r.Found.Cause == phase.CauseSupply), "motor": yes(r.Found.Cause == phase.CauseMotor), "leg": unit.Ratio(leg)}
}

func typedOverload(t *testing.T, f *record.Fan, c published.Case) published.Results {
	set(t, f, "new.motor-amps", typedAs(c, "plate"), "new.service-factor", typedAs(c, "service_factor"))
	o := sheet.OverloadOf(f)
	return published.Results{"trip": o.Trip.Value, "after_failure": o.AfterFailure.Value}
}

func typedSystem(t *testing.T, f *record.Fan, c published.Case) published.Results {
	set(t, f, append(trial("t1", "volts", typedAs(c, "nominal"), typedAs(c, "nominal"), typedAs(c, "nominal")), "new.motor-volts", canonical(c.Expected[0].Number, volt))...)
	system := sheet.SystemVolts(f, &f.Trials[0].Reading)
	if system.Value != published.In[unit.Voltage](c, "nominal") || sheet.PlateSystemVerdict(&f.New, system).Level != sheet.Within {
		return published.Results{"motor": unit.Voltage(0)}
	}
	return published.Results{"motor": f.New.MotorVolts.Value()}
}

var volt = unit.Voltage(0).Kind().Data

func TestPublishedElectrical(t *testing.T) {
	cases, err := published.Load("../../testdata/published/electrical-phase.csv")
	if err != nil {
		t.Fatal(err)
	}
	done := 0
	for _, c := range cases {
		ask, ok := typed[c.ID]
		if !ok {
			continue
		}
		done++
		got := ask(t, fan(t, loaded), c)
		var asked []published.Expected
		for _, e := range c.Expected { // what a record's answers say of it
			if _, ok := got[e.Name]; ok {
				asked = append(asked, e)
			}
		}
		for name := range got {
			if !asks(asked, name) {
				delete(got, name)
			}
		}
		if c.Expected = asked; len(asked) == 0 {
			t.Errorf("%s: nothing is compared", c.ID)
		}
		for _, err := range published.Compare(c, got) {
			t.Errorf("%s (%s): %v", c.ID, c.Source, err)
		}
	}
	if done != len(typed) {
		t.Errorf("%d of %d cases are there", done, len(typed))
	}
}

func asks(es []published.Expected, name string) bool {
	for _, e := range es {
		if e.Name == name {
			return true
		}
	}
	return false
}
