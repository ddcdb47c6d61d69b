package raceway

import "roofside/calc/limit"

// A smallRow is a row of Table 348.22: most conductors in 3/8 flexible metal
// conduit; zero where the table is empty.
type smallRow struct {
	size                             WireSize
	xhhwIn, xhhwOut, thhnIn, thhnOut int
}

var smallRows = table("small", "size,xhhw_in,xhhw_out,thhn_in,thhn_out", func(r *record) smallRow {
	return smallRow{WireSize(r.text("size")), int(r.optional("xhhw_in")), int(r.optional("xhhw_out")), int(r.optional("thhn_in")), int(r.optional("thhn_out"))}
})

// small38 returns how many conductors Table 348.22 permits and how many count:
// one equipment ground of the same size goes in besides. LFMC uses the columns
// for fittings outside, 350.22(B).
func (l *load) small38(r Raceway) (most, counted int, err error) {
	outside := r.Conduit == LFMC || r.Fittings == FittingsOutside
	if !outside && r.Fittings != FittingsInside {
		return 0, 0, limit.Break("Fittings", limit.NotTabulated)
	}
	if l.circuits == 0 {
		return 0, 0, limit.Break("rows", NoConductor)
	}
	if l.notTabled {
		return 0, 0, limit.Break("Insulation", limit.NotTabulated)
	}
	if !l.oneSmall {
		return 0, 0, limit.Break("rows", MixedSizes)
	}
	counted = l.circuits + max(0, l.grounds-1)
	for _, row := range smallRows() {
		if row.size != l.size {
			continue
		}
		switch {
		case l.small == "THHN" && outside:
			most = row.thhnOut
		case l.small == "THHN":
			most = row.thhnIn
		case outside:
			most = row.xhhwOut
		default:
			most = row.xhhwIn
		}
	}
	return most, counted, nil
}
