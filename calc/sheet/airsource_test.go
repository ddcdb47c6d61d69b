package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// The fan laws start from the balance report where it says anything of the air, else from
// what was read at the old fan, if that was; and what is missing of it is asked for.
func TestWhatTheFanLawsStartFrom(t *testing.T) {
	const (
		base = "supply=three-phase&same-wheel=yes&target.speed=712rpm&old.speed=690rpm"
		to   = 760.
	)
	for _, c := range []struct {
		name, with string
		flow       float64 // cfm; 0 where something is wanted
		flowWants  string
		pressure   float64 // inwg
		wants      string
	}{
		{"the report's airflow before the old fan's", "&target.airflow=3200cfm&old.airflow=3000cfm", 3200 * to / 712, "", 0, "target.pressure"},
		{"the report's pressure holds the airflow to the report", "&target.pressure=1inwg&old.airflow=3000cfm", 0, "target.airflow", to / 712 * to / 712, ""},
		{"the old fan's airflow alone", "&old.airflow=3000cfm", 3000 * to / 690, "", 0, "old.pressure"},
		{"the old fan's pressure alone", "&old.pressure=1inwg", 0, "old.airflow", to / 690 * to / 690, ""},
		{"neither", "", 0, "target.airflow", 0, "target.pressure"},
	} {
		f := fan(t, base+c.with)
		at := sheet.PointAt(f, speedAt(t, f, "760 rpm"), sheet.PlannedAir(f))
		if c.flow > 0 {
			value(t, c.name+", airflow", at.Airflow, c.flow*cfm)
		} else {
			wants(t, f, c.name+", airflow", at.Airflow, c.flowWants)
		}
		if c.pressure > 0 {
			value(t, c.name+", pressure", at.Pressure, c.pressure*inwg)
		} else {
			wants(t, f, c.name+", pressure", at.Pressure, c.wants)
		}
	}
}

// The air is as it was entered to be looked at, else as read at the latest trial, else as
// at the point that the laws start from.
func TestTheAirThatIsPlanned(t *testing.T) {
	kelvin := func(fahrenheit float64) float64 { return (fahrenheit + 459.67) * 5 / 9 }
	f := fan(t, report)
	value(t, "the report's", sheet.PlannedAir(f), kelvin(90))
	set(t, f, "trial.a.turns", "2 turns")
	value(t, "a trial without it", sheet.PlannedAir(f), kelvin(90))
	set(t, f, "trial.a.air-temperature", "75 F")
	value(t, "a trial's", sheet.PlannedAir(f), kelvin(75))
	set(t, f, "trial.b.turns", "3 turns")
	value(t, "a later trial without it", sheet.PlannedAir(f), kelvin(90))
	set(t, f, "want.air-temperature", "40 F")
	value(t, "entered", sheet.PlannedAir(f), kelvin(40))
}

// Planned is what is entered, else what was read last, else what the sheave is to be set
// to, closed as well; of a fan on its motor's shaft, or while nothing is said of the
// sheave, it is the target.
func TestTheSpeedThatIsPlanned(t *testing.T) {
	planned := func(f *record.Fan) sheet.Answer[unit.Speed] { return sheet.PlannedSpeed(f, sheet.TurnsTable(f)) }
	f := fan(t, bench)
	value(t, "3 turns open", planned(f), 1750*3.4/8.4)
	set(t, f, "target.speed", "826 rpm")
	value(t, "closed", planned(f), 1750*4/8.4)
	set(t, f, "target.speed", "1000 rpm")
	value(t, "out of reach", planned(f), 1750*4/8.4)
	set(t, f, "target.speed", "700 rpm", "trial.a.turns", "2 turns", "trial.a.speed", "740 rpm")
	value(t, "read", planned(f), 740)
	set(t, f, "trial.b.turns", "3 turns")
	value(t, "set on since", planned(f), 740*3.4/3.6) // 3 turns is what 700 rpm asks for, and 698.9
	set(t, f, "want.speed", "650 rpm")
	value(t, "entered", planned(f), 650)
	f = fan(t, bench)
	set(t, f, "new.sheave", "")
	value(t, "sheave not said", planned(f), 700)
	f = fan(t, bench+"&mount=direct")
	value(t, "on its motor's shaft", planned(f), 700)
}
