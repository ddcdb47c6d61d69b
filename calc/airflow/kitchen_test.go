package airflow_test

import (
	"math"
	"testing"

	"roofside/calc/airflow"
	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// IMC 507.5 as a state code of 2023 has it, cfm per foot; zero is "not allowed".
func TestHoodRates(t *testing.T) {
	duties := []airflow.Duty{airflow.Light, airflow.Medium, airflow.Heavy, airflow.ExtraHeavy}
	for hood, want := range map[airflow.Hood][4]float64{
		airflow.WallCanopy:   {200, 300, 400, 550},
		airflow.SingleIsland: {400, 500, 600, 700},
		airflow.DoubleIsland: {250, 300, 400, 550},
		airflow.Eyebrow:      {250, 250, 0, 0},
		airflow.Backshelf:    {250, 300, 400, 0},
		airflow.Dishwasher:   {100, 100, 100, 100},
	} {
		for i, duty := range duties {
			q, err := airflow.HoodRate(hood, duty)
			if want[i] == 0 {
				check.Broken(t, string(hood), err, "duty", limit.NotAllowed)
				continue
			}
			if err != nil || math.Abs(q.In(cfm)-want[i]) > 1e-9 {
				t.Errorf("%s, %s: %v, %v, want %v", hood, duty, q.In(cfm), err, want[i])
			}
		}
	}
	_, err := airflow.HoodRate("tent", airflow.Light)
	check.Broken(t, "no such hood", err, "hood", limit.NotTabulated)
	_, err = airflow.HoodRate(airflow.WallCanopy, "campfire")
	check.Broken(t, "no such duty", err, "duty", limit.NotTabulated)
}

// NFPA 96, 8-3, as quoted in print: 0.02 in wg, about 5 Pa.
func TestMakeUpLimit(t *testing.T) {
	check.Near(t, "limit", airflow.MakeUpLimit, 4.98*unit.Pascal, 0.001)
}

func TestHoodFlowScales(t *testing.T) {
	flow := check.Value[unit.Flow](t)
	check.Near(t, "twice as long", flow(airflow.HoodFlow(airflow.WallCanopy, 300*cfm, 10*unit.Foot)), 2*flow(airflow.HoodFlow(airflow.WallCanopy, 300*cfm, 5*unit.Foot)), 1e-14)
	// IMC 507.5 gives a double island's rate for each side.
	check.Near(t, "two sides", flow(airflow.HoodFlow(airflow.DoubleIsland, 400*cfm, 10*unit.Foot)), 8000*cfm, 1e-14)
	check.Near(t, "in meters", flow(airflow.HoodFlow(airflow.WallCanopy, 300*cfm, 3.048)), 3000*cfm, 1e-14)
	check.Near(t, "by area", flow(airflow.HoodFlowByArea(airflow.AreaRateSolidFuel, 6*unit.Foot, 3*unit.Foot)), 3600*cfm, 1e-14)
}
