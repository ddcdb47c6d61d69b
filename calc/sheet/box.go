package sheet

import (
	"strconv"
	"strings"

	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/unit"
)

// boxed asks for what takes volume in the box. A conductor counts as often as
// it has ends or passes there, which is as often as it is in the raceway unless
// said otherwise; devices count by the largest conductor.
func boxed(a *Ask, f *record.Fan) ([]raceway.BoxRow, At) {
	var rows []raceway.BoxRow
	at := At{}
	largest := raceway.WireSize("")
	for _, w := range f.Wires {
		a.mind(&w.Role, &w.Where)
		if w.Where.Value() == record.InRaceway {
			continue
		}
		a.Need(&w.Size)
		n := &w.Count
		if known(&w.InBox) {
			n = &w.InBox
		}
		a.Need(n)
		row := raceway.BoxRow{Item: raceway.BoxConductor, Size: raceway.WireSize(w.Size.Value()), Count: int(n.Value())}
		if roleOf(w) == raceway.Ground {
			row.Item = raceway.BoxGround
		}
		i := strconv.Itoa(len(rows))
		at[i+".Count"], at[i+".Size"] = &Term{Place: n}, &Term{Place: &w.Size}
		if rank(row.Size) > rank(largest) {
			largest = row.Size
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		a.blame(nil, limit.Break("", raceway.NoConductor))
	}
	a.Need(&f.Box.Devices)
	a.Need(&f.Box.Clamps)
	if n := int(f.Box.Devices.Value()); n > 0 {
		rows = append(rows, raceway.BoxRow{Item: raceway.BoxDevice, Size: largest, Count: n})
	}
	if f.Box.Clamps.Value() == record.Yes {
		rows = append(rows, raceway.BoxRow{Item: raceway.BoxClamps, Count: 1})
	}
	return rows, at
}

// Boxed tells whether a box has been spoken of.
func Boxed(f *record.Fan) bool {
	b := &f.Box
	for _, p := range [...]record.Place{&b.Size, &b.Volume, &b.Devices, &b.Clamps} {
		if p.State() != record.Unknown {
			return true
		}
	}
	return false
}

// BoxVolume answers with the volume of the box: as marked in it, or else that
// of its trade size.
func BoxVolume(f *record.Fan) Answer[unit.Volume] {
	if known(&f.Box.Volume) {
		return Read("V", FromStamp, &f.Box.Volume)
	}
	var a Ask
	a.Need(&f.Box.Size)
	shape, size, _ := strings.Cut(f.Box.Size.Text(), " ")
	return Solve(&a, FromTradeSize, "raceway.box", At{"shape": {Place: &f.Box.Size}, "size": {Place: &f.Box.Size}}, func() (unit.Volume, error) {
		box, err := raceway.BoxOf(raceway.Shape(shape), size)
		return box.Volume, err
	})
}

// BoxNeeded answers with the volume that the conductors, devices and clamps
// need.
func BoxNeeded(f *record.Fan) Answer[unit.Volume] { return boxNeeded(posed{Fan: f}) }

func boxNeeded(f posed) Answer[unit.Volume] {
	var a Ask
	rows, at := boxed(&a, f.Fan)
	edition := editionOf(&a, f)
	if fill, err := raceway.BoxNeeded(rows, edition); err == nil {
		for _, part := range []struct {
			symbol string
			volume unit.Volume
		}{{"v", fill.Conductors}, {"v(g)", fill.Grounds}, {"2v", fill.Devices}, {"1v", fill.Clamps}} {
			if part.volume > 0 {
				Take(&a, part.symbol, part.volume)
			}
		}
	}
	return Solve(&a, FromPlace, "raceway.box.fill", at, func() (unit.Volume, error) {
		fill, err := raceway.BoxNeeded(rows, edition)
		return fill.Needed, inRow(err)
	})
}

// BoxShare answers with the part of the box that is needed.
func BoxShare(f *record.Fan) Answer[unit.Ratio] {
	var a Ask
	needed, volume := Use(&a, "Σ v", BoxNeeded(f)), Use(&a, "V", BoxVolume(f))
	return Solve(&a, FromPlace, "raceway.box.fill", nil, func() (unit.Ratio, error) {
		return unit.Ratio(needed.V() / volume.V()), nil
	})
}

// BoxVerdict judges the volume needed against the box's, in any edition of the code
// where none is said: before 2020 all grounds count as one.
func BoxVerdict(f *record.Fan) Verdict { return amidWays(f, editionUnsaid(f), boxVerdict) }

func boxVerdict(f posed) Verdict {
	l := limitOf[unit.Volume]{rule: RuleBoxFill, method: "raceway.box.fill", scale: &unit.Capacity, level: Stop}
	v := l.hold(boxNeeded(f), BoxVolume(f.Fan))
	if v.Fault == nil { // what is known may fill it alone
		var a Ask
		rows, _ := boxed(&a, f.Fan)
		fill, _ := raceway.BoxNeeded(rows, editionOf(&a, f))
		if over := l.hold(fixed(fill.Needed, l.method), BoxVolume(f.Fan)); over.Level == Stop {
			v = over
		}
	}
	if count := guessed(f.Fan); count != nil && v.Value.Scale != nil {
		v.Level, v.Wanted = Unjudged, []record.Place{count}
	}
	return v
}

// SmallestBox answers with the box of the least volume that holds all: of the
// shape that is there, or, where none is said, cast outdoors; of any shape where
// none of that one is large enough.
func SmallestBox(f *record.Fan) Finding[raceway.Box] {
	var a Ask
	rows, at := boxed(&a, f)
	edition := editionOf(&a, posed{Fan: f})
	a.mind(&f.Box.Size, &f.Raceway.Site)
	word, _, said := strings.Cut(f.Box.Size.Text(), " ")
	first := raceway.Shape(word)
	switch {
	case said:
	case site(f) == raceway.Outdoors:
		first = raceway.ConduitBox // sheet steel is seldom listed for wet places: common practice
	default:
		first = raceway.AnyShape
	}
	return Find(&a, "raceway.box.fill", at, func() (raceway.Box, error) {
		box, _, err := raceway.SmallestBoxFor(first, rows, edition)
		if err != nil {
			box, _, err = raceway.SmallestBoxFor(raceway.AnyShape, rows, edition)
		}
		return box, inRow(err)
	})
}
