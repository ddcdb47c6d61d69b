package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

type ratingRow struct {
	rating        unit.Current
	breaker, fuse Edition // the first that has it; empty for none
}

var ratingRows = table("rating", "rating,breaker,fuse", func(r *record) ratingRow {
	return ratingRow{unit.Current(r.number("rating")), Edition(r.cell("breaker")), Edition(r.cell("fuse"))}
})

// standard reports whether the rating is one for a device in an edition.
func (r *ratingRow) standard(device Device, edition Edition) bool {
	first := r.fuse
	if device == InverseTimeBreaker {
		first = r.breaker
	}
	return first != "" && edition.since(first)
}

// StandardRating returns the standard rating of a device at or next above a
// current: 240.6(A). Fuses have 1, 3, 6, 10 and 601 A besides; breakers have 10
// A since 2023. Errors: current not above zero or above the largest rating; no
// such device or edition.
//
// Method: raceway.standard.
func StandardRating(current unit.Current, device Device, edition Edition) (unit.Current, error) {
	if err := limit.First(limit.Positive("current", current), device.check(), edition.check()); err != nil {
		return 0, err
	}
	return next(current, device, edition)
}

func next(current unit.Current, device Device, edition Edition) (unit.Current, error) {
	rows := ratingRows()
	for i := range rows {
		if rows[i].standard(device, edition) && rows[i].rating >= current*(1-slack) {
			return rows[i].rating, nil
		}
	}
	return 0, limit.Break("current", NoSizeFits)
}

// below returns the standard rating at or next below a current, zero for none.
func below(current unit.Current, device Device, edition Edition) unit.Current {
	rows := ratingRows()
	last := unit.Current(0)
	for i := range rows {
		if rows[i].standard(device, edition) && rows[i].rating <= current*(1+slack) {
			last = rows[i].rating
		}
	}
	return last
}
