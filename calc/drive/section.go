package drive

// A Section is the cross-section of a V-belt.
type Section string

// Sections. A and B are the classical ones, AX and BX the same with a notched
// back, 4L and 5L their light-duty kin, 3V and 5V narrow, with notched kin.
const (
	SectionA   Section = "A"
	SectionAX  Section = "AX"
	SectionB   Section = "B"
	SectionBX  Section = "BX"
	Section4L  Section = "4L"
	Section5L  Section = "5L"
	Section3V  Section = "3V"
	Section3VX Section = "3VX"
	Section5V  Section = "5V"
	Section5VX Section = "5VX"
)

// Sections returns every section.
func Sections() []Section {
	return []Section{SectionA, SectionAX, SectionB, SectionBX, Section4L, Section5L, Section3V, Section3VX, Section5V, Section5VX}
}

// A GrooveType is the kind of groove a classical belt runs in.
type GrooveType string

// Groove types. A combination groove takes A and B belts alike.
const (
	Standard    GrooveType = "standard"
	Combination GrooveType = "combination"
)
