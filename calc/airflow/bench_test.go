package airflow_test

import (
	"testing"
	"time"

	"roofside/calc/airflow"
	"roofside/calc/internal/check"
	"roofside/calc/unit"
)

var point = airflow.Point{Speed: 900, Flow: 2000 * cfm, Pressure: 1 * inwg, Power: 1 * hp, Density: std}

// Evaluated for every row of a table or plot; none may allocate while its inputs
// are sound.
var hot = map[string]check.Call{
	"AtSpeed":        func() error { _, err := airflow.AtSpeed(point, 1000, std); return err },
	"PowerAtSpeed":   func() error { _, err := airflow.PowerAtSpeed(1*hp, 900, 1000, std, std); return err },
	"Density":        func() error { _, err := airflow.Density(1500, unit.Celsius(35)); return err },
	"LoadHalfNoLoad": func() error { _, err := airflow.LoadHalfNoLoad(5, 3, 6.8); return err },
	"AmpsHalfNoLoad": func() error { _, err := airflow.AmpsHalfNoLoad(0.8, 3, 6.8); return err },
	"BeltEfficiency": func() error { _, err := airflow.BeltEfficiency(2*hp, airflow.MediumLoss); return err },
	"DuctVelocity":   func() error { _, err := airflow.DuctVelocity(2000*cfm, 0.3, 0.6); return err },
	"HoodRate":       func() error { _, err := airflow.HoodRate(airflow.Backshelf, airflow.Heavy); return err },
}

func TestNoAllocations(t *testing.T) { check.Allocations(t, 0, hot) }

func BenchmarkFormulas(b *testing.B) { check.Speed(b, 10*time.Microsecond, hot) }
