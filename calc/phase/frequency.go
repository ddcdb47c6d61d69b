package phase

import (
	"math"

	"roofside/calc/limit"
	"roofside/calc/unit"
)

// What a motor bears of a supply that is not its plate's.
const (
	FrequencyTolerance unit.Ratio = 0.05 // to either side: NEMA MG 1, 12.44.1
	CombinedTolerance  unit.Ratio = 0.10 // of volts and frequency together: the same
	VoltsPerHertzMost  unit.Ratio = 1.10 // over the plate's; as of volts at plate frequency
)

// VoltsPerHertz returns the volts per hertz at a motor over those of its plate. Its
// iron carries flux in proportion: above the plate's it saturates, and the motor
// overheats even idling; under it torque falls as the square. Errors: an input not
// above zero.
//
// Method: phase.frequency.
func VoltsPerHertz(v unit.Voltage, f unit.Frequency, plateVolts unit.Voltage, plateFrequency unit.Frequency) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("f", f), limit.Positive("plateVolts", plateVolts), limit.Positive("plateFrequency", plateFrequency)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(v/plateVolts) * unit.Ratio(plateFrequency/f))
}

// CombinedVariation returns by how much volts and frequency are off a motor's plate
// together: the sum of both shares, whichever way each lies. Errors: an input not above
// zero.
//
// Method: phase.frequency.
func CombinedVariation(v unit.Voltage, f unit.Frequency, plateVolts unit.Voltage, plateFrequency unit.Frequency) (unit.Ratio, error) {
	if err := limit.First(limit.Positive("v", v), limit.Positive("f", f), limit.Positive("plateVolts", plateVolts), limit.Positive("plateFrequency", plateFrequency)); err != nil {
		return 0, err
	}
	off := math.Abs(float64(v/plateVolts)-1) + math.Abs(float64(f/plateFrequency)-1)
	return limit.Result(unit.Ratio(off))
}
