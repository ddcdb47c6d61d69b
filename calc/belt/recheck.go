package belt

import "time"

// Recheck is the running time after which a new belt is first tensioned again: a
// US handbook; others let it run 24 to 48 hours (memory).
//
// Method: belt.recheck.
const (
	Recheck       = 8 * time.Hour
	RecheckLatest = 48 * time.Hour
)
