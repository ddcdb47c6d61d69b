package raceway

import (
	"roofside/calc/limit"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// An Item is what takes volume in a box.
type Item string

// Items. Insulated wire connectors, locknuts and bushings take none. A conductor
// counts once whether it ends, is spliced or passes through; one that never
// leaves the box counts not at all.
const (
	BoxConductor Item = "conductor" // each one allowance
	BoxGround    Item = "ground"    // equipment grounds: by edition
	BoxDevice    Item = "device"    // each yoke two allowances of the largest conductor at it
	BoxClamps    Item = "clamps"    // any number inside the box: one allowance of the largest conductor
	BoxSupport   Item = "support"   // each kind of stud or hickey: one allowance of the largest conductor
	BoxTerminals Item = "terminals" // each terminal block one allowance of the largest conductor at it, from 2023
)

// Items returns every item.
func Items() []Item {
	return []Item{BoxConductor, BoxGround, BoxDevice, BoxClamps, BoxSupport, BoxTerminals}
}

// A BoxRow is a number of like items. Size is the wire's, or that of the largest
// wire at a device or terminal block; it is not read for clamps and supports.
type BoxRow struct {
	Item  Item
	Size  WireSize
	Count int
}

// A BoxFill is what a box must hold against what it holds.
type BoxFill struct {
	Edition    Edition
	Conductors unit.Volume
	Grounds    unit.Volume
	Devices    unit.Volume
	Clamps     unit.Volume
	Supports   unit.Volume
	Terminals  unit.Volume
	Needed     unit.Volume // their sum
	Volume     unit.Volume // of the box
	Fill       unit.Ratio
	Fits       bool
	Known      source.Known
}

// FillBox returns how items fill a box of a volume: 314.16(B). Up to four
// equipment grounds take one allowance of the largest of them; from 2020 each
// further one takes a quarter of it, before that nothing (memory). Not for the
// terminal housings of motors, 430.12. Errors: volume not above zero; no such
// edition; no conductor; more than 50 rows; a row with an impossible count or
// an unknown item or size, as a [RowError].
//
// Method: raceway.box.fill.
func FillBox(volume unit.Volume, rows []BoxRow, edition Edition) (BoxFill, error) {
	if err := limit.Positive("volume", volume); err != nil {
		return BoxFill{}, err
	}
	f, err := BoxNeeded(rows, edition)
	if err != nil {
		return BoxFill{}, err
	}
	f.Volume = volume
	if f.Fill, err = limit.Result(unit.Ratio(f.Needed / volume)); err != nil {
		return BoxFill{}, err
	}
	f.Fits = f.Needed <= volume*(1+slack)
	return f, nil
}

// SmallestBoxFor returns the box of the least volume, of a shape or of any, that
// holds items, and how they fill it. Errors: as [FillBox] and [SmallestBox].
//
// Method: raceway.box.fill.
func SmallestBoxFor(shape Shape, rows []BoxRow, edition Edition) (Box, BoxFill, error) {
	f, err := BoxNeeded(rows, edition)
	if err != nil {
		return Box{}, BoxFill{}, err
	}
	if shape != AnyShape && shape != Octagonal && shape != Square && shape != DeviceBox && shape != Masonry && shape != ConduitBox {
		return Box{}, BoxFill{}, limit.Break("shape", limit.NotTabulated)
	}
	box, err := SmallestBox(f.Needed, shape)
	if err != nil {
		return Box{}, BoxFill{}, limit.Break("rows", NoSizeFits)
	}
	f, err = FillBox(box.Volume, rows, edition)
	if err != nil {
		return Box{}, BoxFill{}, err
	}
	return box, f, nil
}

// BoxNeeded returns the volumes that items take, of a box not yet chosen.
// Errors: as [FillBox].
//
// Method: raceway.box.fill.
func BoxNeeded(rows []BoxRow, edition Edition) (BoxFill, error) {
	if err := edition.check(); err != nil {
		return BoxFill{}, err
	}
	if len(rows) > MostRows {
		return BoxFill{}, limit.Break("rows", TooMany)
	}
	f := BoxFill{Edition: edition, Known: source.LookedUp}
	var largest, ground unit.Volume // allowances
	grounds, clamps, supports := 0, 0, 0
	for i, r := range rows {
		if err := checkCount("Count", r.Count); err != nil {
			return BoxFill{}, &RowError{i, err}
		}
		if r.Item == BoxClamps {
			clamps += r.Count
			continue
		}
		if r.Item == BoxSupport {
			supports += r.Count
			continue
		}
		a, err := allow(r.Size, "Size")
		if err != nil {
			return BoxFill{}, &RowError{i, err}
		}
		n := unit.Volume(r.Count)
		switch r.Item {
		case BoxConductor:
			f.Conductors += n * a
			largest = max(largest, a)
		case BoxGround:
			grounds += r.Count
			ground = max(ground, a)
		case BoxDevice:
			f.Devices += 2 * n * a
		case BoxTerminals:
			if edition.since(Edition2023) {
				f.Terminals += n * a
			}
		default:
			return BoxFill{}, &RowError{i, limit.Break("Item", limit.NotTabulated)}
		}
	}
	if largest == 0 && grounds == 0 {
		return BoxFill{}, limit.Break("rows", NoConductor)
	}
	largest = max(largest, ground)
	if grounds > 0 {
		f.Grounds = ground
		const together = 4
		if edition.since(Edition2020) {
			f.Grounds += ground / 4 * unit.Volume(max(0, grounds-together))
		} else {
			f.Known = source.Memory
		}
	}
	if clamps > 0 {
		f.Clamps = largest
	}
	f.Supports = largest * unit.Volume(supports)
	f.Needed = f.Conductors + f.Grounds + f.Devices + f.Clamps + f.Supports + f.Terminals
	return f, nil
}
