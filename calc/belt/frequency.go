package belt

import (
	"math"

	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// TensionFromFrequency returns the tension of a strand from the frequency its
// span gives when plucked at rest: 4·mass·span²·f², as of a string. A short stiff
// span rings higher than a string and reads tight. Errors: an input not above
// zero.
//
// Method: belt.frequency.
func TensionFromFrequency(mass unit.LinearMass, span unit.Length, f unit.Frequency) (unit.Force, error) {
	if err := limit.First(limit.Positive("mass", mass), limit.Positive("span", span), limit.Positive("f", f)); err != nil {
		return 0, err
	}
	tf := float64(span) * float64(f)
	return limit.Result(unit.Force(4 * float64(mass) * tf * tf))
}

// FrequencyFromTension returns the frequency of a plucked span: the inverse of
// [TensionFromFrequency]. Errors: an input not above zero.
//
// Method: belt.frequency.
func FrequencyFromTension(mass unit.LinearMass, span unit.Length, tension unit.Force) (unit.Frequency, error) {
	if err := limit.First(limit.Positive("mass", mass), limit.Positive("span", span), limit.Positive("tension", tension)); err != nil {
		return 0, err
	}
	return limit.Result(unit.Frequency(math.Sqrt(float64(tension)) / math.Sqrt(float64(mass)) / 2 / float64(span)))
}

// MassSpread is how far a belt's mass may be from [TypicalMass] (memory).
const MassSpread unit.Ratio = 0.15

// Masses by section (memory).
var masses = [...]struct {
	section drive.Section
	mass    unit.LinearMass
}{
	{drive.SectionA, 0.105}, {drive.SectionAX, 0.10}, {drive.SectionB, 0.18}, {drive.SectionBX, 0.17}, {drive.Section3V, 0.075}, {drive.Section5V, 0.20},
}

// TypicalMass returns the usual mass for each length of a belt of a section,
// within [MassSpread] (memory); a belt weighed is better. False for sections that
// no figure is known for.
//
// Method: belt.mass.
func TypicalMass(section drive.Section) (unit.LinearMass, bool) {
	for i := range masses {
		if masses[i].section == section {
			return masses[i].mass, true
		}
	}
	return 0, false
}
