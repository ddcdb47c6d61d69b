package sheet_test

import (
	"slices"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// A report's point goes together, its airflow or its pressure alone as well as both;
// what was read at the old fan stands in only where the report says neither, and has
// one of the two. Where there is nothing, the report is asked for: fan laws start from
// a point of one speed (common practice: AMCA 201's laws hold between points of one
// system, not between halves of two).
func TestTheReferencePointIsOneOfTwo(t *testing.T) {
	for _, c := range []struct {
		name, report, old string
		from              sheet.From
		airflow, pressure string // wanted, where not said
	}{
		{"nothing", "", "", sheet.FromReport, "target.airflow", "target.pressure"},
		{"a report's airflow", "&target.airflow=3200cfm", "&airflow=3000cfm&pressure=1inwg", sheet.FromReport, "", "target.pressure"},
		{"a report's pressure", "&target.pressure=1.1inwg", "&airflow=3000cfm&pressure=1inwg", sheet.FromReport, "target.airflow", ""},
		{"airflow read", "", "&airflow=3000cfm", sheet.FromTachometer, "", "old.pressure"},
		{"pressure read", "", "&pressure=1inwg", sheet.FromTachometer, "old.airflow", ""},
	} {
		f := fan(t, "same-wheel=yes&target.speed=712rpm&speed=690rpm"+c.report+c.old)
		p := sheet.ReferencePoint(f)
		if p.Speed.From != c.from {
			t.Errorf("%s: the speed is from %q, want %q", c.name, p.Speed.From, c.from)
		}
		for key, wanted := range map[string][]record.Place{c.airflow: p.Airflow.Wanted, c.pressure: p.Pressure.Wanted} {
			if key == "" && len(wanted) > 0 || key != "" && (len(wanted) != 1 || f.KeyOf(wanted[0]) != key) {
				t.Errorf("%s: wanted %v, want %q", c.name, wanted, key)
			}
		}
	}
}

// drivenFan runs at 0 to 5 turns, 4.0 to 3.0 in over 8.4, from 1750 rpm at full load:
// 834 rpm closed.
const drivenFan = "supply=three-phase&same-wheel=yes&target.air-temperature=90F&new.motor-speed=1750rpm&new.section=A&new.sheave=adjustable" +
	"&new.anchor-turns=0turns&new.anchor-pitch=4.0in&new.second-anchor-turns=5turns&new.second-anchor-pitch=3.0in&new.most-turns=5turns&new.fan-sheave=8.4in"

// What the fan is planned to run at is the setting ordered, closed as well as any.
func TestPlannedSpeedOfTheClosedSheave(t *testing.T) {
	f := fan(t, drivenFan+"&target.speed=830rpm&new.turns=3turns")
	table := sheet.TurnsTable(f)
	if table.Set != 0 {
		t.Fatalf("set to row %d", table.Set)
	}
	n := sheet.PlannedSpeed(f, table)
	value(t, "closed", n, float64(table.Rows[0].Speed))
	if !slices.ContainsFunc(n.Steps.Terms, func(x *sheet.Term) bool { return x.Symbol == "t" && x.Base == 0 }) {
		t.Error("it does not say at which turns")
	}
}

// Of a wheel on the motor's own shaft no sheave is asked, whatever was typed of one
// before that was said: the target is the plan.
func TestPlannedSpeedWithoutABelt(t *testing.T) {
	f := fan(t, drivenFan+"&target.speed=700rpm&new.turns=0turns")
	if n := sheet.PlannedSpeed(f, sheet.TurnsTable(f)); n.Value == sheet.TargetSpeed(f).Value {
		t.Fatalf("%v: the table gives the target itself, and tells nothing here", n.Value)
	}
	set(t, f, "supply", "direct")
	value(t, "direct", sheet.PlannedSpeed(f, sheet.TurnsTable(f)), float64(sheet.TargetSpeed(f).Value))
}

// A trial without its turns scales nothing; the speed that was read there is not
// taken for one that the table started from.
func TestPlannedSpeedGoesByTheLastTrialOnly(t *testing.T) {
	f := fan(t, drivenFan+"&target.speed=712rpm&new.turns=0turns&trial.a.turns=3turns&trial.a.speed=716rpm&trial.b.turns=2turns")
	n := sheet.PlannedSpeed(f, sheet.TurnsTable(f))
	if n.From == sheet.FromTrial && n.Value == sheet.Read("n", sheet.FromTrial, &f.Trials[0].Reading.Speed).Value && len(n.Steps.Terms) == 1 {
		t.Errorf("%v from %q: what was read before the sheave was turned", n.Value, n.From)
	}
	set(t, f, "trial.b.turns", "")
	f = fan(t, drivenFan+"&target.speed=712rpm&new.turns=0turns&trial.a.turns=3turns&trial.a.speed=716rpm")
	n = sheet.PlannedSpeed(f, sheet.TurnsTable(f))
	value(t, "as read", n, float64(f.Trials[0].Reading.Speed.Value()))
}

// A fixed sheave has one speed, as shipped and ever: the fan's, 3.4 in over 8.4.
func TestAsShippedOfAFixedSheave(t *testing.T) {
	f := fan(t, "supply=three-phase&new.motor-speed=1750rpm&new.section=A&new.sheave=fixed&new.motor-sheave=3.4in&new.fan-sheave=8.4in")
	table := sheet.TurnsTable(f)
	n := table.AsShipped(f)
	value(t, "fixed", n, float64(table.Speed.Value))
	if least, most := 1750*3.4/8.4, 1800*3.4/8.4; float64(n.Value) < least-1e-6 || float64(n.Value) > most {
		t.Errorf("%v rpm, between no load and full load %v and %v", float64(n.Value), most, least)
	}
}

// The air at a trial is that read there; where none was, the report's.
func TestPlannedAirOfATrial(t *testing.T) {
	f := fan(t, drivenFan+"&trial.a.turns=3turns&trial.a.speed=716rpm")
	value(t, "not read", sheet.PlannedAir(f), float64(f.Target.AirTemp.Value()))
	set(t, f, "trial.a.air-temperature", "60 F")
	value(t, "read", sheet.PlannedAir(f), float64(f.Trials[0].Reading.AirTemp.Value()))
}

// An adjustable sheave as shipped is as it was set then, not as it stands now.
func TestAsShippedOfAnAdjustableSheave(t *testing.T) {
	f := fan(t, drivenFan+"&target.speed=712rpm&new.turns=0turns&trial.a.turns=3turns&trial.a.speed=716rpm")
	n := sheet.TurnsTable(f).AsShipped(f)
	value(t, "closed, scaled from 3 turns", n, 716*4/3.4)
}

// The working of a setting shows the motor's load where it was reckoned with, and no
// load where it isn't known.
func TestSettingSpeedShowsTheLoadItTakes(t *testing.T) {
	for _, c := range []struct {
		name, more string
		load       bool
	}{
		{"load known", "&new.motor-power=2hp&new.motor-amps=6.6A&new.motor-frequency=60Hz&target.power=1.15hp", true},
		{"load not known", "", false},
	} {
		f := fan(t, drivenFan+"&target.speed=712rpm&new.turns=0turns"+c.more)
		n := sheet.PlannedSpeed(f, sheet.TurnsTable(f))
		if !n.Known() {
			t.Fatalf("%s: %v %v", c.name, n.Wanted, n.Fault)
		}
		for _, symbol := range []string{"ns", "s", "P / Pp", "Pᵣ / Pp"} {
			if got := slices.ContainsFunc(n.Steps.Terms, func(x *sheet.Term) bool { return x.Symbol == symbol }); got != c.load {
				t.Errorf("%s: %s in the working is %t", c.name, symbol, got)
			}
		}
	}
}
