package belt

import (
	"math"

	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// DeflectionDistance returns how far a span is pressed in at its middle for a
// force reading: 1/64 of the span. Errors: span not above zero.
//
// Method: belt.deflection.
func DeflectionDistance(span unit.Length) (unit.Length, error) {
	if err := limit.Positive("span", span); err != nil {
		return 0, err
	}
	return limit.Result(span / 64)
}

// DeflectionMark returns the mark of a rule divided by step that is nearest to
// [DeflectionDistance], and never less than one: what a hand can press to. Errors:
// an input not above zero.
//
// Method: belt.deflection.
func DeflectionMark(span, step unit.Length) (unit.Length, error) {
	h, err := DeflectionDistance(span)
	if err != nil {
		return 0, err
	}
	if err := limit.Positive("step", step); err != nil {
		return 0, err
	}
	return limit.Result(step * max(1, unit.Length(math.Round(float64(h/step)))))
}

// DeflectionByMetricRule returns the short form of [DeflectionDistance] of 16 mm
// for each meter: 2.4 % larger. For comparison. Errors: span not above zero.
//
// Method: belt.deflection.metric.
func DeflectionByMetricRule(span unit.Length) (unit.Length, error) {
	if err := limit.Positive("span", span); err != nil {
		return 0, err
	}
	return limit.Result(16 * unit.Millimeter * (span / unit.Meter))
}

// DeflectionStep is the mark to which a deflection is read off a rule; half of
// it is the reading's error (common practice).
const DeflectionStep unit.Length = 1. / 16 * unit.Inch

// DeflectionError returns the share by which a deflection read within off to
// either side of [DeflectionDistance] may be wrong, and with it the force: half a
// sixteenth is 15 % on a span of 13.7 in. Errors: an input not above zero.
//
// Method: belt.deflection.error.
func DeflectionError(span, off unit.Length) (unit.Ratio, error) {
	h, err := DeflectionDistance(span)
	if err != nil {
		return 0, err
	}
	if err := limit.Positive("off", off); err != nil {
		return 0, err
	}
	return limit.Result(unit.Ratio(off / h))
}

// DeflectionForce returns the force that presses a span in by
// [DeflectionDistance]: a sixteenth of its tension and of the belt's stiffness.
// stiffness is a figure of the belt's maker for the section, [TypicalStiffness] from
// memory; zero leaves it out and reads the force low, the more so the shorter the
// span. Errors: tension not above zero, stiffness below zero.
//
// Method: belt.force.
func DeflectionForce(tension, stiffness unit.Force) (unit.Force, error) {
	if err := limit.First(limit.Positive("tension", tension), limit.NonNegative("stiffness", stiffness)); err != nil {
		return 0, err
	}
	return limit.Result(tension/16 + stiffness/16)
}

// TensionFromForce returns the strand tension at which a span takes force to be
// pressed in by [DeflectionDistance]: the inverse of [DeflectionForce]. Errors:
// force not above zero, stiffness below zero or taking all of the force.
//
// Method: belt.force.
func TensionFromForce(force, stiffness unit.Force) (unit.Force, error) {
	if err := limit.First(limit.Positive("force", force), limit.NonNegative("stiffness", stiffness)); err != nil {
		return 0, err
	}
	if stiffness >= 16*force {
		return 0, limit.Break("stiffness", limit.OutOfRange)
	}
	return limit.Result(16*force - stiffness)
}

// DeflectionForceExact returns the force on a string bent by
// [DeflectionDistance] with the angle not taken as small: 0.05 % under a
// sixteenth. For comparison. Errors: tension not above zero.
//
// Method: belt.force.exact.
func DeflectionForceExact(tension unit.Force) (unit.Force, error) {
	if err := limit.Positive("tension", tension); err != nil {
		return 0, err
	}
	return limit.Result(2 * tension * unit.Force(math.Sin(math.Atan(2./64))))
}

// Stiffness by section (memory): the most that belts of a section are known to have.
// A maker's list of forces beside strand tensions comes to 3.2 lbf for a 3V belt and
// 5.2 lbf for a 5V one, so the least is taken as none.
var stiffnesses = [...]struct {
	section drive.Section
	most    unit.Force
}{
	{drive.SectionA, 6 * unit.PoundForce}, {drive.SectionAX, 7 * unit.PoundForce}, {drive.Section4L, 6 * unit.PoundForce},
	{drive.SectionB, 9 * unit.PoundForce}, {drive.SectionBX, 10 * unit.PoundForce}, {drive.Section5L, 9 * unit.PoundForce},
	{drive.Section3V, 4 * unit.PoundForce}, {drive.Section3VX, 5 * unit.PoundForce},
	{drive.Section5V, 12 * unit.PoundForce}, {drive.Section5VX, 14 * unit.PoundForce},
}

// TypicalStiffness returns the most that belts of a section add to a strand's tension
// when it is pressed in, Y of [DeflectionForce] (memory). False for no such section.
//
// Method: belt.stiffness.
func TypicalStiffness(section drive.Section) (unit.Force, bool) {
	for i := range stiffnesses {
		if stiffnesses[i].section == section {
			return stiffnesses[i].most, true
		}
	}
	return 0, false
}

// StretchShare returns the part of a maker's stiffness figure that counts on a
// drive of one belt and one take-up, where a pressed span draws on the whole
// belt's stretch: stiffness·span/pitchLength (memory). Errors: stiffness below
// zero, span not above zero or not under half the belt's length.
//
// Method: belt.force.single.
func StretchShare(stiffness unit.Force, span, pitchLength unit.Length) (unit.Force, error) {
	if err := limit.First(limit.NonNegative("stiffness", stiffness), limit.Positive("span", span), limit.Positive("pitchLength", pitchLength)); err != nil {
		return 0, err
	}
	if span >= pitchLength/2 {
		return 0, limit.Break("span", limit.OutOfRange)
	}
	return limit.Result(stiffness * unit.Force(span/pitchLength))
}

// ForceAt returns the force that presses a span in by deflection where force does by
// [DeflectionDistance]: in proportion, the inverse of [ReadForce]. Errors: an input
// not above zero; a deflection of more than 1/16 of the span.
//
// Method: belt.reading.
func ForceAt(force unit.Force, deflection, span unit.Length) (unit.Force, error) {
	if err := limit.First(limit.Positive("force", force), limit.Positive("deflection", deflection)); err != nil {
		return 0, err
	}
	h, err := DeflectionDistance(span)
	if err != nil {
		return 0, err
	}
	if deflection > span*deepest {
		return 0, limit.Break("deflection", limit.TooDeep)
	}
	return limit.Result(force * unit.Force(deflection/h))
}

// Factors of the deflection force over that of the tension to set: from the
// textbook on process machinery. A belt counts as run in after its first days.
const (
	RunInMost  unit.Ratio = 1.5  // on the tension, greatest for a belt run in
	NewOverRun unit.Ratio = 1.33 // on the greatest force of a belt run in, first setting of a new one
)

// Forces are what a belt should take at [DeflectionDistance].
type Forces struct {
	RunIn Band // a belt that has run in
	New   Band // a new one, at its first setting
}

// A Band is a least and a greatest force.
type Band struct{ Low, High unit.Force }

// ForceBands returns the deflection forces of a belt whose strand tension should
// be tension: run in, from that tension to 1.5 of it; new, up to 1.33 of the
// former's greatest. The source gives one figure for a new belt; here it is the
// top of a band that begins where that of a belt run in ends. Errors: as
// [DeflectionForce].
//
// Method: belt.force.bands.
func ForceBands(tension, stiffness unit.Force) (Forces, error) {
	low, err := DeflectionForce(tension, stiffness)
	if err != nil {
		return Forces{}, err
	}
	most, err := limit.Result(tension * unit.Force(RunInMost))
	if err != nil {
		return Forces{}, err
	}
	high, err := DeflectionForce(most, stiffness)
	if err != nil {
		return Forces{}, err
	}
	initial, err := limit.Result(high * unit.Force(NewOverRun))
	if err != nil {
		return Forces{}, err
	}
	return Forces{RunIn: Band{low, high}, New: Band{high, initial}}, nil
}

// Belt speeds for which handbooks list deflection forces, and what is taken off
// a listed force above them: Plant Engineering Handbook, ch. 58. Below them a force on
// the card of the belt itself stands as it is (common practice).
const (
	ListedFrom   unit.Velocity = 1000 * unit.FootPerMinute
	ListedTo     unit.Velocity = 3000 * unit.FootPerMinute
	ListedFaster unit.Ratio    = 0.8
)

// ListedBand returns the band of a deflection force read off a list at belt speed
// v, for a belt run in: one to 1.5 times the listed, four fifths of that above 3000 ft/min. A force
// from [ForceBands] already knows its speed and needs none of this. Under
// [ListedFrom] a handbook's list says nothing; a force off the belt's own card is taken
// as it is. Errors: listed or v not above zero.
//
// Method: belt.force.listed.
func ListedBand(listed unit.Force, v unit.Velocity) (Band, error) {
	return listedTo(listed, v, RunInMost)
}

// ListedNewBand is [ListedBand] for a new belt, which is set up to twice the listed to
// allow for what it loses as it runs in. Errors: as ListedBand.
//
// Method: belt.force.listed.
func ListedNewBand(listed unit.Force, v unit.Velocity) (Band, error) {
	return listedTo(listed, v, ListedNewMost)
}

// ListedNewMost is how many times a listed force a new belt is set to at most: US Army
// TM 5-4310-339-15, 5-5.1.
const ListedNewMost unit.Ratio = 2

func listedTo(listed unit.Force, v unit.Velocity, most unit.Ratio) (Band, error) {
	if err := limit.First(limit.Positive("listed", listed), limit.Positive("v", v)); err != nil {
		return Band{}, err
	}
	const slack = 1e-9
	if v > ListedTo*(1+slack) {
		listed *= unit.Force(ListedFaster)
	}
	high, err := limit.Result(listed * unit.Force(most))
	if err != nil {
		return Band{}, err
	}
	return Band{listed, high}, nil
}
