package belt

import (
	"math"

	"roofside/calc/drive"
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// What is added to a belt's number to get its datum length, and from which
// number on less is added: Machinery's Handbook, 31st ed., Table 8 (ANSI/RMA
// IP-20, 1988). The table prints 75.3 in for A75, against its own pattern and
// its B75; taken as a misprint for 76.3.
const (
	addA     = 1.3 * unit.Inch
	addB     = 1.8 * unit.Inch
	addLongB = 0.3 * unit.Inch
	longB    = 240
)

// mostNumber bounds what is read as a belt number: 1000 in is past any belt.
const mostNumber = 1000

// DatumLength returns the datum length of a classical belt of a number: A and
// AX 1.3 in more than the number, B and BX 1.8 in, but from B240 on 0.3 in.
// Sold numbers stop far under 1000; which ones are sold is not judged. Errors:
// number not in 1 to 1000; a section numbered another way.
//
// Method: belt.number.
func DatumLength(section drive.Section, number int) (unit.Length, error) {
	if number < 1 {
		return 0, limit.Break("number", limit.NotPositive)
	}
	if number > mostNumber {
		return 0, limit.Break("number", limit.OutOfRange)
	}
	add, err := addTo(section, number)
	if err != nil {
		return 0, err
	}
	return unit.Length(number)*unit.Inch + add, nil
}

func addTo(section drive.Section, number int) (unit.Length, error) {
	switch section {
	case drive.SectionA, drive.SectionAX:
		return addA, nil
	case drive.SectionB, drive.SectionBX:
		if number >= longB {
			return addLongB, nil
		}
		return addB, nil
	}
	return 0, limit.Break("section", limit.NotTabulated)
}

// DatumNumber returns the whole belt number whose datum length is nearest to a
// pitch length. Not every whole number is sold. Errors: pitchLength not above
// zero, or outside what [DatumLength] takes; a section numbered another way.
//
// Method: belt.number.
func DatumNumber(section drive.Section, pitchLength unit.Length) (int, error) {
	if err := limit.Positive("pitchLength", pitchLength); err != nil {
		return 0, err
	}
	add, err := addTo(section, 1)
	if err != nil {
		return 0, err
	}
	n, err := nearest(pitchLength - add)
	if err != nil {
		return 0, err
	}
	if add == addB && n >= longB-1 { // B239 is 0.5 in longer than B240: both ways of adding compete
		n = min(n, longB-1)
		m, err := nearest(pitchLength - addLongB)
		if err != nil {
			return 0, err
		}
		short, long := unit.Length(n)*unit.Inch+addB, unit.Length(m)*unit.Inch+addLongB
		if math.Abs(float64(pitchLength-long)) <= math.Abs(float64(pitchLength-short)) {
			n = m
		}
	}
	return n, nil
}

func nearest(l unit.Length) (int, error) {
	n := math.Round(l.In(unit.Inch))
	if !(n >= 1) {
		return 0, limit.Break("pitchLength", limit.BeltTooShort)
	}
	if n > mostNumber {
		return 0, limit.Break("pitchLength", limit.OutOfRange)
	}
	return int(n), nil
}

// LengthTolerance returns how far a classical belt's length may be from its
// datum length, to either side, and how far belts of one set may differ. The
// table names standard numbers; one between two groups is given the larger.
// Errors: number not in 26 to 144, beyond which the rows were not readable.
//
// Method: belt.number.tolerance.
func LengthTolerance(number int) (tolerance, matching unit.Length, err error) {
	if number < 26 || number > 144 {
		return 0, 0, limit.Break("number", limit.NotTabulated)
	}
	tolerance, matching = 0.8*unit.Inch, 0.30*unit.Inch
	switch {
	case number <= 35:
		tolerance = 0.6 * unit.Inch
	case number <= 85:
		tolerance = 0.7 * unit.Inch
	}
	if number <= 60 {
		matching = 0.15 * unit.Inch
	}
	return tolerance, matching, nil
}
