package raceway_test

import (
	"testing"
	"time"

	"roofside/calc/internal/check"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

var (
	branch  = rows(circuit(3, "8", raceway.THWN2), ground("10", raceway.THWN2))
	spliced = []raceway.BoxRow{item("conductor", 6, "12"), item("ground", 5, "12"), item("clamps", 1, "")}
	copper8 = raceway.Impedance{Resistance: 0.78 * unit.OhmPerThousandFeet, Reactance: 0.065 * unit.OhmPerThousandFeet}
)

// Formulas, none of which may allocate while its inputs are sound.
var hot = map[string]check.Call{
	"Fill":      func() error { _, err := raceway.Fill(run(raceway.LFMC, "3/4"), branch); return err },
	"MostAlike": func() error { _, err := raceway.MostAlike(run(raceway.EMT, "1"), "10", raceway.THHN); return err },
	"Smallest":  func() error { _, err := raceway.Smallest(raceway.LFMC, raceway.Run, branch); return err },
	"Room": func() error {
		_, err := raceway.Room(run(raceway.EMT, "2"), branch, "14", raceway.THHN, raceway.Circuit)
		return err
	},
	"JamRatio":    func() error { _, err := raceway.JamRatio(0.622*unit.Inch, 0.216*unit.Inch); return err },
	"BoreOf":      func() error { _, err := raceway.BoreOf(raceway.RMC, "2"); return err },
	"ConductorOf": func() error { _, err := raceway.ConductorOf("4/0", raceway.RHWPlain); return err },
	"FillBox": func() error {
		_, err := raceway.FillBox(21*unit.CubicInch, spliced, raceway.DefaultEdition)
		return err
	},
	"SmallestBoxFor": func() error {
		_, _, err := raceway.SmallestBoxFor(raceway.AnyShape, spliced, raceway.DefaultEdition)
		return err
	},
	"AmpacityOf":     func() error { _, err := raceway.AmpacityOf("12", roof); return err },
	"SmallestWire":   func() error { _, err := raceway.SmallestWire(150, mild); return err },
	"CheckConductor": func() error { _, err := raceway.CheckConductor(raceway.Demand{Current: 9.5}, "12", roof); return err },
	"VoltageDrop": func() error {
		_, err := raceway.VoltageDrop(raceway.ThreePhase, 30.8, 100*unit.Foot, copper8, 0.85)
		return err
	},
	"TableCurrent": func() error { _, err := raceway.TableCurrent(raceway.ThreePhase, 20*unit.Horsepower, 460); return err },
	"LargestOvercurrent": func() error {
		_, err := raceway.LargestOvercurrent(24.2, raceway.TimeDelayFuse, raceway.SquirrelCage, raceway.Edition2023)
		return err
	},
	"GroundFor": func() error { _, err := raceway.GroundFor(60, raceway.Copper, "8", raceway.Edition2023); return err },
	"GaugeArea": func() error { _, err := raceway.GaugeArea("12"); return err },
}

// Searches, which list what they find.
var lists = map[string]check.Call{
	"SmallestOfEach": func() error { _, err := raceway.SmallestOfEach(raceway.Run, branch); return err },
	"Join": func() error {
		_, err := raceway.Join(knockout("1"), end(raceway.LFMC, "1/2"), raceway.Outdoors, raceway.Over250)
		return err
	},
}

func TestNoAllocations(t *testing.T) {
	check.Allocations(t, 0, hot)
	check.Allocations(t, 6, lists)
}

func BenchmarkFormulas(b *testing.B) { check.Speed(b, 10*time.Microsecond, hot) }

func BenchmarkSearches(b *testing.B) { check.Speed(b, 100*time.Microsecond, lists) }
