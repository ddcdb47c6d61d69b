package record

// Section is a belt's section as printed on it. The spellings are those of
// the drive package.
type Section string

// Options lists the sections, the usual ones of small fans first.
func (Section) Options() []string {
	return []string{"A", "B", "AX", "BX", "4L", "5L", "3V", "3VX", "5V", "5VX"}
}

// Groove is what a sheave's groove is cut for.
type Groove string

// The grooves.
const (
	StandardGroove    Groove = "standard"
	CombinationGroove Groove = "combination" // takes an A or a B belt
)

// Options lists the grooves.
func (Groove) Options() []string { return []string{string(StandardGroove), string(CombinationGroove)} }

// HoodKind is how a hood stands over the appliances.
type HoodKind string

// Options lists the kinds of hood.
func (HoodKind) Options() []string {
	return []string{"wall", "single-island", "double-island", "eyebrow", "backshelf", "dishwasher"}
}

// HoodDuty is how much the appliances under a hood give off.
type HoodDuty string

// Options lists the duties.
func (HoodDuty) Options() []string { return []string{"light", "medium", "heavy", "extra-heavy"} }

// Belts is how many belts run side by side.
type Belts string

// Options lists the counts.
func (Belts) Options() []string { return []string{"1", "2", "3", "4"} }

// BeltAge is how far a belt has settled into its sheaves.
type BeltAge string

// The ages of a belt.
const (
	NewBelt   BeltAge = "new"  // in its first days
	RunInBelt BeltAge = "used" // run in, after them
)

// Options lists the ages.
func (BeltAge) Options() []string { return []string{string(NewBelt), string(RunInBelt)} }
