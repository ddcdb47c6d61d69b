package raceway

import "roofside/calc/limit"

// A Place is where a raceway or a box is.
type Place string

// Places.
const (
	Indoors  Place = "indoors"
	Outdoors Place = "outdoors" // a roof, exposed to weather
)

// A Location is what a conductor's insulation must stand.
type Location string

// Locations.
const (
	Dry Location = "dry"
	Wet Location = "wet"
)

// Interior returns the location inside a raceway: wet outdoors (300.9), however
// tight it is. Errors: no such place.
//
// Method: raceway.location.
func Interior(place Place) (Location, error) {
	switch place {
	case Indoors:
		return Dry, nil
	case Outdoors:
		return Wet, nil
	}
	return "", limit.Break("place", limit.NotTabulated)
}

// Allowed reports whether a conduit may run in a place: flexible metal conduit in
// no wet one (348.12(1)), so not outdoors. Errors: no such conduit or
// place.
//
// Method: raceway.place.
func Allowed(conduit Conduit, place Place) (bool, error) {
	if conduit.rank() < 0 {
		return false, limit.Break("conduit", limit.NotTabulated)
	}
	if place != Indoors && place != Outdoors {
		return false, limit.Break("place", limit.NotTabulated)
	}
	return conduit != FMC || place == Indoors, nil
}

// RatingOf returns the temperature rating of an insulation in a location. An
// unmarked one is taken for 60 °C, for a licensed person to judge. Errors: no
// such insulation or location; an insulation for dry places in a wet one; a
// bare conductor.
//
// Method: raceway.rating.
func RatingOf(insulation Insulation, location Location) (Column, error) {
	if location != Dry && location != Wet {
		return 0, limit.Break("location", limit.NotTabulated)
	}
	if insulation == Unmarked {
		return Column60, nil
	}
	j, ok := jacketOf()[insulation]
	if !ok {
		return 0, limit.Break("insulation", limit.NotTabulated)
	}
	if location == Dry {
		return j.dry, nil
	}
	if j.wet == 0 {
		return 0, limit.Break("insulation", DryOnly)
	}
	return j.wet, nil
}
