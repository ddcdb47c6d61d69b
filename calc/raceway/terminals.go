package raceway

import "roofside/calc/limit"

// MarkedTerminals reports whether a terminal or splice must be marked for a
// conductor's metal: for aluminum, copper-clad too (110.14(A)).
// Errors: no such material.
//
// Method: raceway.terminals.
func MarkedTerminals(material Material) (bool, error) {
	switch material {
	case Copper:
		return false, nil
	case Aluminum, Clad:
		return true, nil
	}
	return false, limit.Break("material", limit.NotTabulated)
}
