package raceway

import "roofside/calc/limit"

// An Edition is a year's edition of NFPA 70. Which one holds is for the place
// that adopted it, and its amendments are not here.
type Edition string

// Editions.
const (
	Edition2017 Edition = "2017"
	Edition2020 Edition = "2020"
	Edition2023 Edition = "2023"

	DefaultEdition = Edition2023
)

// Editions returns every edition, oldest first.
func Editions() []Edition { return []Edition{Edition2017, Edition2020, Edition2023} }

func (e Edition) check() error {
	switch e {
	case Edition2017, Edition2020, Edition2023:
		return nil
	}
	return limit.Break("edition", limit.NotTabulated)
}

// since reports whether e is the given edition or a later one.
func (e Edition) since(first Edition) bool { return e >= first }
