package sheet_test

import (
	"math"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// figures are what a reading of the fan's speed may feed: amps, force, airflow, target.
func figures(f *record.Fan) map[string]float64 {
	j := sheet.JobOf(f, anyMark, false)
	at, now := j.Air().At, sheet.NowTurns(f)
	set := sheet.TensionAt(f, j.Air().Basis, sheet.RunAt(f, now, nil), sheet.SetSpeed(f, j.Table(), now), anyMark)
	all := map[string]float64{}
	put := func(name string, known bool, v, band float64) {
		if known {
			all[name], all[name+" ±"] = v, band
		}
	}
	amps := sheet.NewAmps(f, j.Air().Basis, at.Speed, at.Air)
	put("amps", amps.Known(), float64(amps.Value), float64(amps.Band))
	put("airflow", at.Airflow.Known(), float64(at.Airflow.Value), float64(at.Airflow.Band))
	put("power", at.Power.Known(), float64(at.Power.Value), float64(at.Power.Band))
	put("speed", at.Speed.Known(), float64(at.Speed.Value), float64(at.Speed.Band))
	least := set.Edges(record.RunInBelt).Least
	put("force", least.Known(), float64(least.Value), float64(least.Band))
	target := sheet.TargetSpeed(f)
	put("target", target.Known(), float64(target.Value), float64(target.Band))
	return all
}

// A reading that is refused is refused everywhere: with a tachometer at twice or half,
// on either side, every figure is as it is without that reading.
func TestARefusedReadingFeedsNothing(t *testing.T) {
	tried := 0
	for _, c := range corpus(t) {
		for _, key := range []string{"old.speed", "trial.t1.speed"} {
			for _, times := range []float64{2, 0.5} {
				f := c.open(t)
				if f.Supply.Value() == record.TwoSpeed || len(f.Trials) > 1 {
					continue
				}
				p, _ := f.Place(key).(*record.Entry[unit.Speed])
				expected := sheet.Expected(f, &f.Old)
				if key != "old.speed" {
					if p == nil || f.Trials[0].Reading.Frequency.State() == record.Known { // at which the table says nothing
						continue
					}
					p.Set("")
					expected = sheet.SpeedOf(f, sheet.TableToSet(f), f.Trials[0])
				}
				if !expected.Known() {
					continue
				}
				p.Set("")
				f.Old.BeltHealthy.Set("yes")
				without := figures(f)
				set(t, f, key, fixedPoint(float64(expected.Value)*times)+" rpm")
				with := figures(f)
				tried++
				for name, v := range with {
					if was, has := without[name]; !has || math.Abs(was-v) > 1e-9*math.Abs(was) {
						t.Errorf("%s: %s is %v with %s at %v times, and %v without it", c.id, name, v, key, times, was)
					}
				}
			}
		}
	}
	if tried < 100 {
		t.Errorf("%d readings", tried)
	}
}
