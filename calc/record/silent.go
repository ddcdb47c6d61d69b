package record

import (
	"slices"
	"strings"
	"sync"
)

// silent are the places of a side that only the comparison of the two fans reads, and
// what is to be brought.
var silent = sync.OnceValue(func() map[string]bool {
	names := map[string]bool{}
	var f Fan
	f.lister(nil, func(key string, _ Place) bool { names[key] = true; return true }).fit(&f.Old.Fit)
	return names
})

// spoken are those of them that are held against something else too: the plate's phases
// against the supply, and by the hinge that it tips up on a conduit asks for a ground wire.
var spoken = [...]string{"new.phases", "new.hinge"}

// Alone tells whether nothing is reckoned, compared or brought by the place with a
// key: names, days, notes and checks, which only the list of what is settled goes by.
func Alone(key string) bool {
	return key == "name" || strings.HasPrefix(key, "handover.") || strings.HasPrefix(key, "check.")
}

// Silent tells whether nothing about drive, air, belt, motor and raceway is reckoned
// from the place with a key: what stands alone, and what decides whether a fan fits.
func Silent(key string) bool {
	if Alone(key) {
		return true
	}
	side, name, ok := strings.Cut(key, ".")
	return ok && !slices.Contains(spoken[:], key) && (side == "old" || side == "new") && silent()[name]
}
