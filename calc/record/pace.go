package record

// Pace is the speed that a two-speed motor ran at.
type Pace string

// The speeds.
const (
	HighSpeed Pace = "high"
	LowSpeed  Pace = "low"
)

// Options lists the speeds.
func (Pace) Options() []string { return []string{string(HighSpeed), string(LowSpeed)} }
