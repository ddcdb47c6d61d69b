package drive

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// A Flank is a groove's shape over a range of sheave diameters.
type Flank struct {
	Angle  unit.Angle  // between the two sides
	Width  unit.Length // of the groove at the outside diameter, b_g; ± 0.005 in A, ± 0.006 in others
	Inside unit.Length // outside diameter less the belt's pitch diameter, 2h_d
}

// A Groove is a classical groove as a belt of one section finds it.
type Groove struct {
	Section Section
	Type    GrooveType
	Narrow  Flank       // for outside diameters through Bound
	Wide    Flank       // for those above
	Bound   unit.Length // outside diameter
	Belt    unit.Length // width of the belt at its pitch line, b_d
	Least   unit.Length // least datum diameter; zero where the table has none
	Known   source.Known
}

// Flank returns the groove's shape on a sheave of the given outside diameter.
func (g Groove) Flank(outside unit.Length) Flank {
	if outside <= g.Bound {
		return g.Narrow
	}
	return g.Wide
}

const (
	in  = unit.Inch
	deg = unit.Degree
)

// Classical grooves: Machinery's Handbook, 31st ed., Table 9 (ANSI/RMA IP-20,
// 1988). The table bounds the angle by datum diameter; Bound adds 2h_d. In a
// combination groove an A belt's 0.418 in pitch width lies 0.634 or 0.602 in
// inside the rim, which is also what the flanks' geometry gives; the bound is
// that of the groove's own datum (7.4 in + 0.333 in), for the metal is the same
// whichever belt lies in it. For a B belt there the print, 0.333 and 0.334 in, is
// followed: it is where the groove is 0.508 in wide, its footnoted reference
// width; the belt's own 0.530 in would lie 0.065 in higher. Light-duty rows share the A and B widths (memory)
// and have no least diameter here.
var grooves = [...]Groove{
	{SectionA, Standard, Flank{34 * deg, 0.494 * in, 0.250 * in}, Flank{38 * deg, 0.504 * in, 0.250 * in}, 5.65 * in, 0.418 * in, 3.0 * in, source.LookedUp},
	{SectionAX, Standard, Flank{34 * deg, 0.494 * in, 0.250 * in}, Flank{38 * deg, 0.504 * in, 0.250 * in}, 5.65 * in, 0.418 * in, 2.2 * in, source.LookedUp},
	{SectionB, Standard, Flank{34 * deg, 0.637 * in, 0.350 * in}, Flank{38 * deg, 0.650 * in, 0.350 * in}, 7.35 * in, 0.530 * in, 5.4 * in, source.LookedUp},
	{SectionBX, Standard, Flank{34 * deg, 0.637 * in, 0.350 * in}, Flank{38 * deg, 0.650 * in, 0.350 * in}, 7.35 * in, 0.530 * in, 4.0 * in, source.LookedUp},
	{SectionA, Combination, Flank{34 * deg, 0.612 * in, 0.634 * in}, Flank{38 * deg, 0.625 * in, 0.602 * in}, 7.733 * in, 0.418 * in, 3.6 * in, source.LookedUp},
	{SectionAX, Combination, Flank{34 * deg, 0.612 * in, 0.634 * in}, Flank{38 * deg, 0.625 * in, 0.602 * in}, 7.733 * in, 0.418 * in, 2.8 * in, source.LookedUp},
	{SectionB, Combination, Flank{34 * deg, 0.612 * in, 0.333 * in}, Flank{38 * deg, 0.625 * in, 0.334 * in}, 7.733 * in, 0.530 * in, 5.7 * in, source.LookedUp},
	{SectionBX, Combination, Flank{34 * deg, 0.612 * in, 0.333 * in}, Flank{38 * deg, 0.625 * in, 0.334 * in}, 7.733 * in, 0.530 * in, 4.3 * in, source.LookedUp},
	{Section4L, Standard, Flank{34 * deg, 0.494 * in, 0.250 * in}, Flank{38 * deg, 0.504 * in, 0.250 * in}, 5.65 * in, 0.418 * in, 0, source.Memory},
	{Section5L, Standard, Flank{34 * deg, 0.637 * in, 0.350 * in}, Flank{38 * deg, 0.650 * in, 0.350 * in}, 7.35 * in, 0.530 * in, 0, source.Memory},
	{Section4L, Combination, Flank{34 * deg, 0.612 * in, 0.634 * in}, Flank{38 * deg, 0.625 * in, 0.602 * in}, 7.733 * in, 0.418 * in, 0, source.Memory},
	{Section5L, Combination, Flank{34 * deg, 0.612 * in, 0.333 * in}, Flank{38 * deg, 0.625 * in, 0.334 * in}, 7.733 * in, 0.530 * in, 0, source.Memory},
}

// A narrow sheave is sized by its outside diameter, which is its pitch diameter.
type narrow struct {
	section Section
	older   unit.Length // outside less pitch diameter, as older prints have it
	least   unit.Length // least outside diameter
}

// Narrow sections. That 2a is zero, and the least diameters: an installation guide
// that prints the industry's standard, as ANSI/RMA IP-22 of 2007 does. Handbooks after
// older editions have 0.05 and 0.10 in (memory). Their groove angles are not here.
var narrows = [...]narrow{
	{Section3V, 0.05 * in, 2.65 * in},
	{Section3VX, 0.05 * in, 2.20 * in},
	{Section5V, 0.10 * in, 7.1 * in},
	{Section5VX, 0.10 * in, 4.4 * in},
}

// GrooveOf returns the groove of a type as a belt of a section finds it.
// Errors: no such row; narrow sections have none.
//
// Method: drive.groove.
func GrooveOf(section Section, groove GrooveType) (Groove, error) {
	known := false
	for i := range grooves {
		if grooves[i].Section != section {
			continue
		}
		if grooves[i].Type == groove {
			return grooves[i], nil
		}
		known = true
	}
	if known {
		return Groove{}, limit.Break("groove", limit.NotTabulated)
	}
	return Groove{}, limit.Break("section", limit.NotTabulated)
}

// Grooves returns every classical and light-duty groove.
func Grooves() []Groove { return append([]Groove(nil), grooves[:]...) }

// MinimumDatum returns the least datum diameter of a sheave for a classical
// section and groove; false for sections without one in the table.
//
// Method: drive.groove.
func MinimumDatum(section Section, groove GrooveType) (unit.Length, bool) {
	g, err := GrooveOf(section, groove)
	if err != nil || g.Least == 0 {
		return 0, false
	}
	return g.Least, true
}

// NarrowSpread returns how much less than the outside diameter of a narrow sheave its
// pitch diameter may be: what older prints take off (memory). Zero for other sections.
//
// Method: drive.outside.narrow.
func NarrowSpread(section Section) unit.Length {
	n, _ := narrowOf(section)
	return n.older
}

// MinimumOutside returns the least outside diameter of a sheave for a narrow
// section; false for others.
//
// Method: drive.outside.narrow.
func MinimumOutside(section Section) (unit.Length, bool) {
	for i := range narrows {
		if narrows[i].section == section {
			return narrows[i].least, true
		}
	}
	return 0, false
}
