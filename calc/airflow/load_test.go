package airflow_test

import (
	"math/rand/v2"
	"testing"

	"roofside/calc/airflow"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

func TestLoadMethodsKeepTheirOrder(t *testing.T) {
	ratio := check.Value[unit.Ratio](t)
	random := rand.New(rand.NewPCG(19, 23))
	for range 500 {
		fla := unit.Current(1 + 50*random.Float64())
		i0 := fla * unit.Current(0.2+0.5*random.Float64())
		i := i0 + (fla-i0)*unit.Current(0.01+0.98*random.Float64())
		proportional := ratio(airflow.LoadProportional(i, fla, 460, 460))
		half := ratio(airflow.LoadHalfNoLoad(i, i0, fla))
		full := ratio(airflow.LoadFullNoLoad(i, i0, fla))
		phasor := ratio(airflow.LoadPhasor(i, i0, fla))
		if !(full < half && half < proportional && full < phasor && phasor < proportional) {
			t.Errorf("I0 %v, I %v of %v: full %v, half %v, phasor %v, proportional %v", i0, i, fla, full, half, phasor, proportional)
		}
		k := unit.Current(0.1 + 9*random.Float64())
		check.Near(t, "half scaled", ratio(airflow.LoadHalfNoLoad(k*i, k*i0, k*fla)), half, 1e-12)
		check.Near(t, "phasor scaled", ratio(airflow.LoadPhasor(k*i, k*i0, k*fla)), phasor, 1e-10)
	}
}

func TestLoadMethodsMeetAtFullLoad(t *testing.T) {
	ratio := check.Value[unit.Ratio](t)
	check.Near(t, "proportional", ratio(airflow.LoadProportional(6.8, 6.8, 230, 230)), 1, 1e-15)
	check.Near(t, "half", ratio(airflow.LoadHalfNoLoad(6.8, 3.1, 6.8)), 1, 1e-15)
	check.Near(t, "full", ratio(airflow.LoadFullNoLoad(6.8, 3.1, 6.8)), 1, 1e-15)
	check.Near(t, "phasor", ratio(airflow.LoadPhasor(6.8, 3.1, 6.8)), 1, 1e-15)
	check.Near(t, "slip", ratio(airflow.LoadSlip(1800, 1740, 1740)), 1, 1e-15)
	check.Near(t, "slip, idle", ratio(airflow.LoadSlip(1800, 1740, 1800)), 0, 1)
	check.Near(t, "full, idle", ratio(airflow.LoadFullNoLoad(3.1, 3.1, 6.8)), 0, 1)
	check.Near(t, "phasor, idle", ratio(airflow.LoadPhasor(3.1, 3.1, 6.8)), 0, 1)
}

func TestAmpsThereAndBack(t *testing.T) {
	ratio, amps := check.Value[unit.Ratio](t), check.Value[unit.Current](t)
	for load := unit.Ratio(0.3); load < 1.3; load += 0.1 {
		i := amps(airflow.AmpsProportional(load, 6.8, 236, 230))
		check.Near(t, "proportional", ratio(airflow.LoadProportional(i, 6.8, 236, 230)), load, 1e-14)
		i = amps(airflow.AmpsHalfNoLoad(load, 2.9, 6.8))
		if i >= 2.9 {
			check.Near(t, "half", ratio(airflow.LoadHalfNoLoad(i, 2.9, 6.8)), load, 1e-14)
		}
	}
}

// US DOE fact sheet on motor load, example: 40 hp at 93 %, read at 469.7 V, 37 A,
// power factor 0.763; input 22.9 kW is printed, load 71.6 % follows.
func TestLoadFromInputPower(t *testing.T) {
	input := check.Value[unit.Power](t)(airflow.InputPower(469.7, 37, 0.763))
	if kw := input.In(unit.Kilowatt); kw < 22.8 || kw > 23.0 {
		t.Errorf("input %v kW, printed 22.9", kw)
	}
	load := check.Value[unit.Ratio](t)(airflow.LoadInput(input, 40*hp, 0.93))
	if load < 0.715 || load > 0.717 {
		t.Errorf("load %v, want 71.6 %%", load)
	}
}

func TestLoadFaults(t *testing.T) {
	for _, test := range []struct {
		name       string
		i, i0, fla unit.Current
		parameter  string
		rule       limit.Rule
	}{
		{"idle above plate", 5, 7, 6.8, "i0", limit.NoLoadTooLarge},
		{"idle at plate", 6.8, 6.8, 6.8, "i0", limit.NoLoadTooLarge},
		{"under idle", 2, 3, 6.8, "i", limit.BelowNoLoad},
		{"no plate", 2, 1, 0, "fla", limit.NotPositive},
	} {
		for _, f := range []func(i, i0, fla unit.Current) (unit.Ratio, error){airflow.LoadHalfNoLoad, airflow.LoadFullNoLoad, airflow.LoadPhasor} {
			_, err := f(test.i, test.i0, test.fla)
			check.Broken(t, test.name, err, test.parameter, test.rule)
		}
	}
	_, err := airflow.LoadSlip(1800, 1800, 1790)
	check.Broken(t, "plate without slip", err, "plate", limit.AboveSynchronous)
	_, err = airflow.LoadSlip(1800, 1750, 1810)
	check.Broken(t, "overrunning", err, "n", limit.AboveSynchronous)
	_, err = airflow.ShaftPower(230, 5, 1.1, 0.8)
	check.Broken(t, "power factor above one", err, "pf", limit.OutOfRange)
}
