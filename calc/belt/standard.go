package belt

import (
	"math"
	"slices"

	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// Standard numbers. Classical ones: Machinery's Handbook, 31st ed., Table 8
// (ANSI/RMA IP-20, 1988), through 300; whole numbers between them are sold as
// well. The others are from memory: narrow belts step like preferred numbers,
// light-duty ones by the inch.
var (
	numbersA  = []int{26, 31, 35, 38, 42, 46, 51, 55, 60, 68, 75, 80, 85, 90, 96, 105, 112, 120, 128}
	numbersB  = []int{35, 38, 42, 46, 51, 55, 60, 68, 75, 81, 85, 90, 97, 105, 112, 120, 128, 144, 158, 173, 180, 195, 210, 240, 270, 300}
	numbers3V = []int{250, 265, 280, 300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950, 1000, 1060, 1120, 1180, 1250, 1320, 1400}
	numbers5V = []int{500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950, 1000, 1060, 1120, 1180, 1250, 1320, 1400, 1500, 1600, 1700, 1800, 1900, 2000, 2120, 2240, 2360, 2500, 2650, 2800, 3000, 3150, 3350, 3550}
	numbers4L = byInch(180, 1000)
	numbers5L = byInch(240, 1000)
)

func byInch(from, to int) []int {
	var all []int
	for n := from; n <= to; n += 10 {
		all = append(all, n)
	}
	return all
}

// A series is how belts of a section are numbered.
type series struct {
	standard []int
	outside  bool        // numbered by outside length, in tenths of an inch
	inside   unit.Length // outside less pitch diameter of a belt numbered so
	known    source.Known
}

// seriesOf returns the series of a section. Light-duty belts lie flush in grooves
// of the A and B widths (memory). A narrow belt's number is its effective length,
// taken at the sheaves' outside diameters, which are its pitch diameters too.
func seriesOf(section drive.Section) (series, error) {
	switch section {
	case drive.SectionA, drive.SectionAX:
		return series{numbersA, false, 0, source.LookedUp}, nil
	case drive.SectionB, drive.SectionBX:
		return series{numbersB, false, 0, source.LookedUp}, nil
	case drive.Section4L:
		return series{numbers4L, true, 0.250 * unit.Inch, source.Memory}, nil
	case drive.Section5L:
		return series{numbers5L, true, 0.350 * unit.Inch, source.Memory}, nil
	case drive.Section3V, drive.Section3VX:
		return series{numbers3V, true, 0, source.Memory}, nil
	case drive.Section5V, drive.Section5VX:
		return series{numbers5V, true, 0, source.Memory}, nil
	}
	return series{}, limit.Break("section", limit.NotTabulated)
}

// StandardNumbers returns the belt numbers of a section's standard, ascending,
// and how the list is known. Errors: no such section.
//
// Method: belt.standard.
func StandardNumbers(section drive.Section) ([]int, source.Known, error) {
	s, err := seriesOf(section)
	if err != nil {
		return nil, "", err
	}
	return slices.Clone(s.standard), s.known, nil
}

// PitchLength returns the pitch length of a belt of any section by its number.
// Classical: [DatumLength]. Others are numbered by outside length in tenths of an
// inch; light-duty belts lie π times outside less pitch diameter further in (memory),
// narrow ones not at all, [NumberSpread] being what older prints take off. Errors:
// number not in 1 to 1000, of tenths 1 to 10000; no such section.
//
// Method: belt.length.number.
func PitchLength(section drive.Section, number int) (unit.Length, error) {
	s, err := seriesOf(section)
	if err != nil {
		return 0, err
	}
	if !s.outside {
		return DatumLength(section, number)
	}
	if number < 1 {
		return 0, limit.Break("number", limit.NotPositive)
	}
	if number > 10*mostNumber {
		return 0, limit.Break("number", limit.OutOfRange)
	}
	l := unit.Length(number)*unit.Inch/10 - math.Pi*s.inside
	if l <= 0 {
		return 0, limit.Break("number", limit.BeltTooShort)
	}
	return l, nil
}

// NumberSpread returns how much shorter than its number says a narrow belt's pitch
// length may be: π times what older prints take off a sheave's outside diameter, see
// [drive.NarrowSpread]. Zero for other sections.
//
// Method: belt.length.number.
func NumberSpread(section drive.Section) unit.Length {
	return math.Pi * drive.NarrowSpread(section)
}

// A Size is a belt of a section by its number.
type Size struct {
	Section drive.Section
	Number  int
	Length  unit.Length // pitch length
	Known   source.Known
}

// NearestSizes returns the standard belts next to a pitch length: the longest that
// is not longer and the shortest that is not shorter, one and the same where the
// length is standard. Errors: pitchLength not above zero, or beyond the ends of
// the list; no such section.
//
// Method: belt.standard.
func NearestSizes(section drive.Section, pitchLength unit.Length) (shorter, longer Size, err error) {
	s, err := seriesOf(section)
	if err != nil {
		return Size{}, Size{}, err
	}
	if err := limit.Positive("pitchLength", pitchLength); err != nil {
		return Size{}, Size{}, err
	}
	const slack = 1e-9
	for _, n := range s.standard {
		l, err := PitchLength(section, n)
		if err != nil {
			return Size{}, Size{}, err
		}
		at := Size{section, n, l, s.known}
		if l <= pitchLength*(1+slack) {
			shorter = at
		}
		if l >= pitchLength*(1-slack) {
			if shorter.Number == 0 {
				break
			}
			return shorter, at, nil
		}
	}
	return Size{}, Size{}, limit.Break("pitchLength", limit.NotTabulated)
}

// A Choice is a standard belt for a drive, and the center it lies tight at.
type Choice struct {
	Size
	Center unit.Length
	Move   unit.Length // of the motor from its present center; positive is away from the fan
}

// Choices returns the standard belts next to the length that a drive needs at its
// present center, with the center each gives. Errors: as [OpenLength]; that length
// beyond the list's ends; the shorter belt too short for the sheaves even when
// they touch; no such section.
//
// Method: belt.standard.center.
func Choices(section drive.Section, driver, driven, center unit.Length) (shorter, longer Choice, err error) {
	l, err := OpenLength(driver, driven, center)
	if err != nil {
		return Choice{}, Choice{}, err
	}
	s, b, err := NearestSizes(section, l)
	if err != nil {
		return Choice{}, Choice{}, limit.Rename(err, "pitchLength", "center")
	}
	if shorter, err = choose(s, driver, driven, center); err != nil {
		return Choice{}, Choice{}, err
	}
	if longer, err = choose(b, driver, driven, center); err != nil {
		return Choice{}, Choice{}, err
	}
	return shorter, longer, nil
}

func choose(s Size, driver, driven, center unit.Length) (Choice, error) {
	c, err := CenterFromLength(driver, driven, s.Length)
	if err != nil {
		return Choice{}, limit.Rename(err, "pitchLength", "center")
	}
	return Choice{s, c, c - center}, nil
}
