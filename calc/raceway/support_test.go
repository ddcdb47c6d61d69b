package raceway_test

import (
	"maps"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

// Laid out by hand along the run, by the distances of NFPA 70, 2023, 342.30 to
// 358.30.
func TestStraps(t *testing.T) {
	for _, c := range []struct {
		conduit  raceway.Conduit
		size     raceway.TradeSize
		feet     unit.Length
		mounting raceway.Mounting
		want     int
		why      string
	}{
		{raceway.EMT, "3/4", 2, raceway.Still, 1, "one is within 3 ft of both ends"},
		{raceway.EMT, "3/4", 6, raceway.Still, 1, "in the middle, 3 ft of both"},
		{raceway.EMT, "3/4", 6.01, raceway.Still, 2, "no place is within 3 ft of both"},
		{raceway.EMT, "3/4", 16, raceway.Still, 2, "at 3 and 13 ft"},
		{raceway.EMT, "3/4", 16.01, raceway.Still, 3, "more than 10 ft between"},
		{raceway.EMT, "3/4", 3, raceway.Flexing, 1, "it does not bend, whatever it ends at"},
		{raceway.PVC80, "2", 10, raceway.Still, 2, "at 3 and 7 ft, 4 between"},
		{raceway.PVC80, "2", 11.01, raceway.Still, 3, "more than 5 ft between"},
		{raceway.LFMC, "1/2", 3, raceway.Flexing, 0, "hangs free"},
		{raceway.LFMC, "1/2", 3, raceway.Still, 2, "within 12 in of both ends, and they are 3 ft apart"},
		{raceway.LFMC, "1/2", 4, raceway.Flexing, 1, "12 in of the one end, 3 ft free at the other"},
		{raceway.LFMC, "1-1/2", 5, raceway.Flexing, 1, "4 ft free in that size"},
		{raceway.LFNCB, "1/2", 8, raceway.Flexing, 3, "at 1, 4 and 5 ft"},
	} {
		if n, err := raceway.Straps(c.conduit, c.size, c.feet*unit.Foot, c.mounting); err != nil || n != c.want {
			t.Errorf("%s %s of %v ft, %s: %d, %v; want %d: %s", c.conduit, c.size, float64(c.feet), c.mounting, n, err, c.want, c.why)
		}
	}
	_, err := raceway.Straps(raceway.EMT, "3/8", 1, raceway.Still)
	check.Broken(t, "size", err, "size", limit.NotTabulated)
	_, err = raceway.Straps(raceway.EMT, "1/2", 0, raceway.Still)
	check.Broken(t, "length", err, "length", limit.NotPositive)
	_, err = raceway.Straps(raceway.EMT, "1/2", 1, "")
	check.Broken(t, "mounting", err, "mounting", limit.NotTabulated)
	_, err = raceway.Straps(raceway.EMT, "1/2", 1e6, raceway.Still)
	check.Broken(t, "length", err, "length", raceway.TooMany)
	_, err = raceway.Sticks(1e6)
	check.Broken(t, "sticks", err, "length", raceway.TooMany)
}

// A longer run never takes fewer straps or lengths, and no two straps are farther
// apart than they may be.
func TestMoreLengthNeverTakesFewer(t *testing.T) {
	for _, conduit := range raceway.Conduits() {
		for _, size := range raceway.TradeSizes() {
			s, err := raceway.SupportOf(conduit, size)
			if err != nil {
				continue
			}
			for _, mounting := range []raceway.Mounting{raceway.Still, raceway.Flexing} {
				straps, sticks := 0, 0
				for length := unit.Inch; length < 100*unit.Foot; length += 1.5 * unit.Inch {
					n := check.Value[int](t)(raceway.Straps(conduit, size, length, mounting))
					m := check.Value[int](t)(raceway.Sticks(length))
					if n < straps || m < sticks {
						t.Fatalf("%s %s of %v ft: %d straps after %d, %d lengths after %d", conduit, size, length.In(unit.Foot), n, straps, m, sticks)
					}
					straps, sticks = n, m
					ends := 2 * s.Ends
					if mounting == raceway.Flexing && s.Free > 0 {
						ends = s.Ends + s.Free
					}
					if reach := ends + s.Spacing*unit.Length(n-1); n > 0 && reach < length*(1-1e-9) {
						t.Fatalf("%s %s: %d straps hold %v ft, not %v", conduit, size, n, reach.In(unit.Foot), length.In(unit.Foot))
					}
				}
			}
		}
	}
}

// A part is asked for by the same sizes whichever way round it is put in.
func TestSizesOfAPart(t *testing.T) {
	for _, c := range []struct {
		from, to raceway.End
	}{
		{raceway.End{Kind: raceway.Hub, Size: "3/4"}, raceway.End{Kind: raceway.ConduitEnd, Size: "1/2", Conduit: raceway.LFMC}},
		{raceway.End{Kind: raceway.Knockout, Size: "3/4"}, raceway.End{Kind: raceway.ConduitEnd, Size: "1/2", Conduit: raceway.EMT}},
		{raceway.End{Kind: raceway.Knockout, Size: "1/2"}, raceway.End{Kind: raceway.ConduitEnd, Size: "3/4", Conduit: raceway.RMC}},
	} {
		type sizes struct {
			kind     raceway.PartKind
			size, to raceway.TradeSize
			conduit  raceway.Conduit
		}
		asked := func(a, b raceway.End) map[sizes]bool {
			all := map[sizes]bool{}
			for _, p := range check.Value[raceway.Adapter](t)(raceway.Join(a, b, raceway.Indoors, raceway.UpTo250)).Parts {
				size, to, conduit := p.Sizes()
				all[sizes{p.Kind, size, to, conduit}] = true
			}
			return all
		}
		if there, back := asked(c.from, c.to), asked(c.to, c.from); len(there) == 0 || !maps.Equal(there, back) {
			t.Errorf("%+v to %+v: %v, and back %v", c.from, c.to, there, back)
		}
	}
}
