package raceway

import (
	"errors"

	"roofside/calc/limit"
)

// named returns an error of a formula's parameter as one of the field of that
// name, for formulas that take their inputs in a struct.
func named(err error) error {
	var e *limit.Error
	if !errors.As(err, &e) {
		return err
	}
	field, ok := fields[e.Parameter]
	if !ok {
		return err
	}
	return limit.Break(field, e.Rule)
}

var fields = map[string]string{
	"edition": "Edition", "material": "Material", "insulation": "Insulation", "location": "Location",
	"ambient": "Ambient", "carrying": "Carrying", "height": "Height", "column": "Terminals",
}
