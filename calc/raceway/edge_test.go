package raceway_test

import (
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

// Each column of the motor tables serves its system voltages and no volt more.
func TestEdgesOfMotorVoltages(t *testing.T) {
	for _, window := range [][2]unit.Voltage{{110, 120}, {200, 200}, {208, 208}, {220, 240}, {440, 480}, {550, 600}} {
		for _, v := range window {
			if _, err := raceway.TableCurrent(raceway.ThreePhase, unit.Horsepower, v); err != nil {
				t.Errorf("%v V: %v", v, err)
			}
		}
		for _, v := range []unit.Voltage{window[0] - 0.5, window[1] + 0.5} {
			_, err := raceway.TableCurrent(raceway.ThreePhase, unit.Horsepower, v)
			check.Broken(t, "volts past the column", err, "volts", limit.NotTabulated)
		}
	}
}

// What a bound leaves in and out, half a per cent to either side.
func TestEdges(t *testing.T) {
	path := func(rating unit.Current, length unit.Length) raceway.PathReason {
		return check.Value[raceway.GroundPath](t)(raceway.FlexAsGround(raceway.LFMC, "1/2", rating, length, raceway.Still)).Reason
	}
	ceiling := func(i unit.Current) unit.Ratio {
		return check.Value[raceway.Overcurrent](t)(raceway.LargestOvercurrent(i, raceway.InverseTimeBreaker, raceway.SquirrelCage, raceway.Edition2023)).Ceiling
	}
	adder := func(height unit.Length) unit.TemperatureDifference {
		return check.Value[raceway.Adder](t)(raceway.RooftopAdderByHeight(height)).Difference
	}
	atLeast := func(area unit.Area) unit.Area {
		_, w, err := raceway.NearestMetric(area)
		if err != nil {
			t.Fatal(err)
		}
		return w.Area
	}
	unmarked := func(d unit.Length) error {
		_, err := raceway.Row{Size: "12", Insulation: raceway.Unmarked, Diameter: d}.Conductor()
		return err
	}
	check.Broken(t, "a wire past 4 in", unmarked(4.02*unit.Inch), "Diameter", limit.OutOfRange)
	if err := unmarked(3.98 * unit.Inch); err != nil {
		t.Errorf("a wire under 4 in: %v", err)
	}
	const mm2 = unit.SquareMillimeter
	for name, ok := range map[string]bool{
		"20 A through 6 ft":        path(20, 6*unit.Foot) == "",
		"20.1 A":                   path(20.1, 6*unit.Foot) == raceway.PathRating,
		"6.03 ft":                  path(20, 6.03*unit.Foot) == raceway.PathLength,
		"a ceiling to 100 A":       ceiling(100) == 4,
		"a ceiling from 100 A":     ceiling(100.5) == 3,
		"half an inch over a roof": adder(0.5*unit.Inch) == 33,
		"a bit more":               adder(0.5025*unit.Inch) == 22,
		"a metric size":            atLeast(2.49*mm2) == 2.5*mm2,
		"past a metric size":       atLeast(2.51*mm2) == 4*mm2,
	} {
		if !ok {
			t.Error(name)
		}
	}
}
