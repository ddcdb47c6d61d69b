package sheet_test

import (
	"testing"

	"roofside/calc/sheet"
	"roofside/calc/unit"
)

const (
	cfm  = 0.3048 * 0.3048 * 0.3048 / 60
	inwg = 249.08891
	fpm  = 0.3048 / 60
)

const report = "same-wheel=yes&target.speed=712rpm&target.airflow=3200cfm&target.pressure=1.1inwg&target.power=1.15hp&target.air-temperature=90F"

func TestFanLaws(t *testing.T) {
	f := fan(t, report+"&want.air-temperature=40F")
	k, r := (90+459.67)/(40+459.67), 760./712
	at := sheet.PointAt(f, speedAt(t, f, "760 rpm"), sheet.PlannedAir(f))
	value(t, "airflow", at.Airflow, 3200*cfm*r)
	value(t, "pressure", at.Pressure, 1.1*inwg*r*r*k)
	value(t, "power", at.Power, 1.15*watt*r*r*r*k)
	set(t, f, "target.air-temperature", "?") // then the air is taken as unchanged
	at = sheet.PointAt(f, speedAt(t, f, "760 rpm"), sheet.PlannedAir(f))
	value(t, "pressure in like air", at.Pressure, 1.1*inwg*r*r)
	f.Place("target.air-temperature").Set("!hot")
	at = sheet.PointAt(f, speedAt(t, f, "760 rpm"), sheet.PlannedAir(f))
	value(t, "airflow in garbled air", at.Airflow, 3200*cfm*r)
	faulty(t, f, "pressure in garbled air", at.Pressure, "target.air-temperature")
}

// What the fan laws give at a speed, sought, gives the speed.
func TestSpeedFor(t *testing.T) {
	f := fan(t, report+"&want.air-temperature=40F")
	k := (90 + 459.67) / (40 + 459.67)
	wants(t, f, "no goal", sheet.SpeedFor(f), "want.goal")
	r := 760. / 712
	for goal, base := range map[string]float64{"airflow": 3200 * r, "pressure": 1.1 * r * r * k, "power": 1.15 * r * r * r * k} {
		symbol := map[string]string{"airflow": " cfm", "pressure": " inwg", "power": " hp"}[goal]
		set(t, f, "want.goal", goal)
		wants(t, f, "no "+goal, sheet.SpeedFor(f), "want."+goal)
		set(t, f, "want."+goal, fixedPoint(base)+symbol)
		if n := sheet.SpeedFor(f); !n.Known() || n.Value < 759.9999 || n.Value > 760.0001 {
			t.Errorf("%s: %v", goal, n.Value)
		}
	}
}

// Without a report, what was read at the old fan is the point to start from.
func TestReferencePoint(t *testing.T) {
	f := fan(t, "same-wheel=yes&speed=690rpm&airflow=3000cfm&pressure=1inwg&air-temperature=70F")
	at := sheet.PointAt(f, speedAt(t, f, "759 rpm"), sheet.PlannedAir(f))
	value(t, "airflow", at.Airflow, 3000*cfm*1.1)
	value(t, "pressure", at.Pressure, inwg*1.1*1.1)
	wants(t, f, "power", at.Power, "target.power")
	set(t, f, "target.airflow", "3200 cfm") // a report's airflow goes with the report's speed
	at = sheet.PointAt(f, speedAt(t, f, "759 rpm"), sheet.PlannedAir(f))
	wants(t, f, "airflow", at.Airflow, "target.speed")
}

func TestPlannedSpeed(t *testing.T) {
	f := fan(t, bench)
	plan := func() sheet.Answer[unit.Speed] { return sheet.PlannedSpeed(f, sheet.TurnsTable(f)) }
	value(t, "row to set", plan(), 1750*3.4/8.4)
	near(t, "its band", plan().Band, 50*3.4/8.4) // its load unknown, the motor may turn up to 1800 rpm
	set(t, f, "trial.a.turns", "2.5 turns", "trial.a.speed", "691 rpm")
	value(t, "last read", plan(), 691)
	set(t, f, "trial.b.turns", "2 turns", "trial.b.speed", "711 rpm", "trial.a.accepted", "yes")
	value(t, "last read, though another was accepted", plan(), 711)
	set(t, f, "want.speed", "705 rpm")
	value(t, "looked at", plan(), 705)
	f = fan(t, "target.speed=700rpm")
	value(t, "target", plan(), 700)
}

// Standard air: 0.075 lb/ft³ at sea level and 70 °F.
func TestDensity(t *testing.T) {
	f := fan(t, "altitude=0ft&want.air-temperature=70F")
	value(t, "standard", sheet.Density(f, sheet.PlannedAir(f)), 0.075*0.45359237/(0.3048*0.3048*0.3048))
	set(t, f, "want.air-temperature", "171.934 F") // 529.67/631.604 of it
	value(t, "hot", sheet.Density(f, sheet.PlannedAir(f)), 0.075*0.45359237/(0.3048*0.3048*0.3048)*529.67/631.604)
	set(t, f, "altitude", "")
	wants(t, f, "density", sheet.Density(f, sheet.PlannedAir(f)), "altitude")
}
