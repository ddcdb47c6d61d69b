package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/unit"
)

// A Choice is the smallest size of a type of conduit that takes given
// conductors, and how they fill it.
type Choice struct {
	Conduit Conduit
	Size    TradeSize
	Filling Filling
}

// Smallest returns the smallest size of a conduit that takes conductors, from
// 1/2 on: 3/8 is for special uses and must be asked for by name. Errors: as
// [Fill]; no tabulated size is large enough.
//
// Method: raceway.fill.search.
func Smallest(conduit Conduit, use Use, rows []Row) (Choice, error) {
	if conduit.rank() < 0 {
		return Choice{}, limit.Break("conduit", limit.NotTabulated)
	}
	if use != Run && use != Nipple {
		return Choice{}, limit.Break("use", limit.NotTabulated)
	}
	l, err := total(rows)
	if err != nil {
		return Choice{}, err
	}
	return l.smallest(conduit, use)
}

func (l *load) smallest(conduit Conduit, use Use) (Choice, error) {
	all := bores()
	for i := range all {
		b := &all[i]
		if b.Conduit != conduit || b.Size == Size3by8 {
			continue
		}
		f, err := l.fill(Raceway{Conduit: conduit, Size: b.Size, Use: use}, b)
		if err != nil {
			return Choice{}, err
		}
		if f.Fits {
			return Choice{conduit, b.Size, f}, nil
		}
	}
	return Choice{}, limit.Break("rows", NoSizeFits)
}

// SmallestOfEach returns [Smallest] for every type of conduit that has a size
// large enough, in the order of [Conduits]. Errors: as Smallest, when no type
// has one.
//
// Method: raceway.fill.search.
func SmallestOfEach(use Use, rows []Row) ([]Choice, error) {
	if use != Run && use != Nipple {
		return nil, limit.Break("use", limit.NotTabulated)
	}
	l, err := total(rows)
	if err != nil {
		return nil, err
	}
	all := make([]Choice, 0, len(conduits))
	var last error
	for _, c := range conduits {
		choice, err := l.smallest(c, use)
		if err != nil {
			last = err
			continue
		}
		all = append(all, choice)
	}
	if len(all) == 0 {
		return nil, last
	}
	return all, nil
}

// Room returns how many more conductors of a size and insulation go into a
// raceway beside those of rows, which may be none: the greatest number with
// which all fit. It is zero where rows alone do not fit. Errors: as [Fill].
//
// Method: raceway.fill.room.
func Room(raceway Raceway, rows []Row, size WireSize, insulation Insulation, role Role) (int, error) {
	b, err := bore(raceway.Conduit, raceway.Size, "Conduit", "Size")
	if err != nil {
		return 0, err
	}
	if role != Circuit && role != Ground {
		return 0, limit.Break("role", limit.NotTabulated)
	}
	c, err := conductor(size, insulation, "size", "insulation")
	if err != nil {
		return 0, err
	}
	var l load
	if len(rows) > 0 {
		if l, err = total(rows); err != nil {
			return 0, err
		}
	}
	for n := l.most(raceway, &b, c.Area); n > 0; n-- {
		more, err := l.add(Row{Size: size, Insulation: insulation, Count: n, Role: role})
		if err != nil {
			return 0, err
		}
		f, err := more.fill(raceway, &b)
		if err != nil {
			return 0, err
		}
		if f.Fits {
			return n, nil
		}
	}
	return 0, nil
}

// most returns a number of further conductors that no rule lets pass: one more
// than the area allowed for more than two leaves, or than note 7 counts. The table of 3/8 flexible conduit stays below
// the former, its ground included.
func (l *load) most(r Raceway, b *Bore, each unit.Area) int {
	n := max(whole(b.allowed(3, r.Use)-l.area, each)+1, b.most(each, r.Use).Inch-l.count)
	return min(n, MostCount)
}
