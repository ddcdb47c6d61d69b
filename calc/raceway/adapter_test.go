package raceway_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"roofside/calc/internal/check"
	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/unit"
)

func hub(size raceway.TradeSize) raceway.End { return raceway.End{Kind: raceway.Hub, Size: size} }
func knockout(size raceway.TradeSize) raceway.End {
	return raceway.End{Kind: raceway.Knockout, Size: size}
}
func fitting(size raceway.TradeSize) raceway.End {
	return raceway.End{Kind: raceway.FittingEnd, Size: size}
}
func end(conduit raceway.Conduit, size raceway.TradeSize) raceway.End {
	return raceway.End{Kind: raceway.ConduitEnd, Size: size, Conduit: conduit}
}

// chain writes an adapter's parts with the sizes of both sides.
func chain(a raceway.Adapter) string {
	var all []string
	for _, p := range a.Parts {
		size := string(p.From.Size)
		if p.To.Size != p.From.Size {
			size += ">" + string(p.To.Size)
		}
		all = append(all, string(p.Kind)+" "+size)
	}
	return strings.Join(all, ", ")
}

func TestChains(t *testing.T) {
	for _, test := range []struct {
		name     string
		from, to raceway.End
		place    raceway.Place
		want     string
	}{
		{"fits as it is", hub("1/2"), fitting("1/2"), raceway.Outdoors, ""},
		{"rigid conduit into its hub", hub("3/4"), end(raceway.RMC, "3/4"), raceway.Outdoors, ""},
		{"conduit into its hub", hub("3/4"), end(raceway.LFMC, "3/4"), raceway.Outdoors, "connector 3/4"},
		{"hub larger", hub("3/4"), end(raceway.LFMC, "1/2"), raceway.Outdoors, "reducing-bushing 3/4>1/2, connector 1/2"},
		{"hub smaller", hub("1/2"), end(raceway.LFMC, "3/4"), raceway.Outdoors, "enlarger 1/2>3/4, connector 3/4"},
		{"3/8 has a 1/2 thread", hub("1/2"), end(raceway.FMC, "3/8"), raceway.Indoors, "connector 1/2>3/8"},
		{"knockout", knockout("1/2"), end(raceway.EMT, "1/2"), raceway.Indoors, "locknut 1/2, connector 1/2"},
		{"knockout in the wet", knockout("1/2"), end(raceway.LFMC, "1/2"), raceway.Outdoors, "locknut 1/2, connector 1/2"},
		{"knockout larger", knockout("1"), end(raceway.EMT, "1/2"), raceway.Indoors, "reducing-washers 1>1/2, locknut 1/2, connector 1/2"},
		{"knockout larger in the wet", knockout("1"), end(raceway.LFMC, "1/2"), raceway.Outdoors, "hub 1, reducing-bushing 1>1/2, connector 1/2"},
		{"knockout smaller", knockout("1/2"), fitting("3/4"), raceway.Indoors, "locknut 1/2, enlarger 1/2>3/4"},
		{"knockout smaller in the wet", knockout("1/2"), fitting("3/4"), raceway.Outdoors, "hub 1/2, enlarger 1/2>3/4"},
		// Two locknuts and a bushing inside: common practice and 344.46.
		{"rigid conduit and knockout", knockout("3/4"), end(raceway.RMC, "3/4"), raceway.Indoors, "end-bushing 3/4, locknut-pair 3/4"},
		{"intermediate conduit and larger knockout", knockout("1"), end(raceway.IMC, "3/4"), raceway.Indoors, "end-bushing 3/4, reducing-washers 1>3/4, locknut-pair 3/4"},
		{"rigid conduit and smaller knockout", knockout("1/2"), end(raceway.RMC, "3/4"), raceway.Indoors, "locknut 1/2, enlarger 1/2>3/4"},
		{"rigid conduit and knockout in the wet", knockout("3/4"), end(raceway.RMC, "3/4"), raceway.Outdoors, "hub 3/4"},
		{"rigid conduit and larger knockout in the wet", knockout("1"), end(raceway.RMC, "3/4"), raceway.Outdoors, "hub 1, reducing-bushing 1>3/4"},
		{"rigid conduit to a knockout", end(raceway.RMC, "3/4"), knockout("3/4"), raceway.Indoors, "locknut-pair 3/4, end-bushing 3/4"},
		{"the other way around", end(raceway.LFMC, "1/2"), knockout("1"), raceway.Outdoors, "connector 1/2, reducing-bushing 1/2>1, hub 1"},
		{"conduit to a hub", end(raceway.EMT, "1/2"), hub("3/4"), raceway.Indoors, "connector 1/2, reducing-bushing 1/2>3/4"},
		{"same conduit", end(raceway.EMT, "3/4"), end(raceway.EMT, "3/4"), raceway.Indoors, "coupling 3/4"},
		{"another conduit", end(raceway.EMT, "3/4"), end(raceway.LFMC, "3/4"), raceway.Outdoors, "connector 3/4, coupling 3/4, connector 3/4"},
		{"smaller conduit", end(raceway.EMT, "3/4"), end(raceway.LFMC, "1/2"), raceway.Outdoors, "connector 3/4, coupling 3/4, reducing-bushing 3/4>1/2, connector 1/2"},
		{"larger conduit", end(raceway.FMC, "1/2"), end(raceway.RMC, "1"), raceway.Indoors, "connector 1/2, reducing-bushing 1/2>1, coupling 1"},
		{"two fittings", fitting("1/2"), fitting("1/2"), raceway.Indoors, "coupling 1/2"},
		{"two hubs", hub("1/2"), hub("1/2"), raceway.Indoors, "nipple 1/2"},
		{"two hubs, two sizes", hub("3/4"), hub("1/2"), raceway.Indoors, "reducing-bushing 3/4>1/2, nipple 1/2"},
		{"two hubs, the other way", hub("1/2"), hub("3/4"), raceway.Indoors, "nipple 1/2, reducing-bushing 1/2>3/4"},
		{"knockout and hub", knockout("3/4"), hub("3/4"), raceway.Indoors, "locknut 3/4, nipple 3/4"},
		{"hub and larger knockout", hub("1/2"), knockout("3/4"), raceway.Indoors, "nipple 1/2, locknut 1/2, reducing-washers 1/2>3/4"},
		{"two knockouts", knockout("3/4"), knockout("3/4"), raceway.Indoors, "locknut 3/4, nipple 3/4, locknut 3/4"},
		{"two knockouts, two sizes", knockout("1"), knockout("3/4"), raceway.Indoors, "reducing-washers 1>3/4, locknut 3/4, nipple 3/4, locknut 3/4"},
		{"two knockouts in the wet", knockout("3/4"), knockout("1"), raceway.Outdoors, "locknut 3/4, nipple 3/4, reducing-bushing 3/4>1, hub 1"},
	} {
		a, err := raceway.Join(test.from, test.to, test.place, raceway.UpTo250)
		if err != nil || chain(a) != test.want {
			t.Errorf("%s: %q, %v, want %q", test.name, chain(a), err, test.want)
		}
	}
}

func TestConditions(t *testing.T) {
	const in, out = raceway.Indoors, raceway.Outdoors
	for _, test := range []struct {
		name     string
		from, to raceway.End
		place    raceway.Place
		toGround raceway.ToGround
		want     []raceway.Condition
	}{
		{"nothing", knockout("1/2"), end(raceway.EMT, "1/2"), in, raceway.Over250, nil},
		{"washers at 277 V", knockout("3/4"), end(raceway.EMT, "1/2"), in, raceway.Over250, []raceway.Condition{raceway.BondOver250, raceway.SmallerRules}},
		{"washers at 120 V", knockout("3/4"), end(raceway.EMT, "1/2"), in, raceway.UpTo250, []raceway.Condition{raceway.SmallerRules}},
		{"washers, volts not known", knockout("3/4"), end(raceway.EMT, "1/2"), in, raceway.ToGroundNotKnown, []raceway.Condition{raceway.BondOver250, raceway.SmallerRules}},
		{"rings at 277 V", raceway.End{Kind: raceway.RingKnockout, Size: "1/2"}, fitting("1/2"), in, raceway.Over250, []raceway.Condition{raceway.BondOver250}},
		{"rings on the far side", fitting("1/2"), raceway.End{Kind: raceway.RingKnockout, Size: "1/2"}, in, raceway.Over250, []raceway.Condition{raceway.BondOver250}},
		{"rings at 120 V", raceway.End{Kind: raceway.RingKnockout, Size: "1/2"}, fitting("1/2"), in, raceway.UpTo250, nil},
		{"no washers in the wet", knockout("3/4"), fitting("1/2"), out, raceway.Over250, []raceway.Condition{raceway.NoWashersWet, raceway.ListedWet, raceway.SmallerRules}},
		{"bushing is no washer", hub("3/4"), fitting("1/2"), in, raceway.Over250, []raceway.Condition{raceway.SmallerRules}},
		{"smaller hole", knockout("1/2"), fitting("3/4"), in, raceway.UpTo250, []raceway.Condition{raceway.HoleSmaller, raceway.SmallerRules}},
		{"nonmetallic", hub("1/2"), end(raceway.LFNCB, "1/2"), in, raceway.UpTo250, []raceway.Condition{raceway.NeedsGround}},
		{"flexible", hub("1/2"), end(raceway.FMC, "3/8"), in, raceway.UpTo250, []raceway.Condition{raceway.FlexGroundWire, raceway.ConnectorThread, raceway.SmallShort}},
		{"threaded in a knockout", knockout("1"), end(raceway.RMC, "1"), in, raceway.Over250, []raceway.Condition{raceway.TwoLocknuts, raceway.CoatThreads}},
		{"threaded in a knockout, in the wet", knockout("1"), end(raceway.IMC, "1"), out, raceway.Over250, []raceway.Condition{raceway.HubWet, raceway.ListedWet, raceway.CoatThreads}},
		{"threaded", hub("1"), end(raceway.RMC, "1"), out, raceway.UpTo250, []raceway.Condition{raceway.ListedWet, raceway.CoatThreads}},
	} {
		a, err := raceway.Join(test.from, test.to, test.place, test.toGround)
		if err != nil || !slices.Equal(a.Conditions, test.want) {
			t.Errorf("%s: %v, %v, want %v", test.name, a.Conditions, err, test.want)
		}
	}
}

// ends returns every end that there is.
func ends() []raceway.End {
	var all []raceway.End
	for _, size := range raceway.TradeSizes() {
		if size != raceway.Size3by8 {
			for _, kind := range []raceway.EndKind{raceway.Hub, raceway.Knockout, raceway.RingKnockout, raceway.FittingEnd} {
				all = append(all, raceway.End{Kind: kind, Size: size})
			}
		}
		for _, c := range raceway.Conduits() {
			if _, err := raceway.BoreOf(c, size); err == nil {
				all = append(all, end(c, size))
			}
		}
	}
	return all
}

// Whatever is joined: each part's side meets its neighbor's, male in female and
// of one thread; turned around the chain is the same; outdoors has no washers;
// each side carries its numbers.
func TestChainsHoldTogether(t *testing.T) {
	all := ends()
	if len(all) != 4*6+58 {
		t.Fatal(len(all))
	}
	for _, from := range all {
		for _, to := range all {
			for _, place := range []raceway.Place{raceway.Indoors, raceway.Outdoors} {
				a, err := raceway.Join(from, to, place, raceway.Over250)
				if err != nil {
					t.Fatalf("%v to %v: %v", from, to, err)
				}
				back, err := raceway.Join(to, from, place, raceway.Over250)
				if err != nil {
					t.Fatalf("%v to %v: %v", to, from, err)
				}
				slices.Reverse(back.Parts)
				for i, p := range a.Parts {
					b := back.Parts
					if len(b) != len(a.Parts) || b[i].Kind != p.Kind || b[i].From != p.To || b[i].To != p.From {
						t.Fatalf("%v to %v, %s: %s and back %s", from, to, place, chain(a), chain(back))
					}
					if place == raceway.Outdoors && p.Kind == raceway.ReducingWashers {
						t.Fatalf("%v to %v: washers outdoors", from, to)
					}
					for _, s := range []raceway.Side{p.From, p.To} {
						threaded := s.Face == raceway.Male || s.Face == raceway.Female
						if s.Designator == 0 || threaded != (s.Thread.Size == s.Size) || (s.Face == raceway.Panel) != (s.Hole.Size == s.Size) || (s.Face == raceway.Gripping) != (s.Conduit != "") {
							t.Fatalf("%v to %v: %+v lacks its numbers", from, to, s)
						}
					}
				}
				if fault := loose(from, to, a.Parts); fault != "" {
					t.Fatalf("%v to %v, %s: %s: %s", from, to, place, chain(a), fault)
				}
			}
		}
	}
}

// loose returns where a chain does not hold together. Ends are faces too.
func loose(from, to raceway.End, parts []raceway.Part) string {
	type face struct {
		kind raceway.Face
		size raceway.TradeSize
	}
	of := func(e raceway.End) face {
		switch {
		case e.Kind == raceway.Hub:
			return face{raceway.Female, e.Size}
		case e.Kind == raceway.FittingEnd, e.Kind == raceway.ConduitEnd && e.Conduit.Threaded():
			return face{raceway.Male, e.Size}
		case e.Kind == raceway.ConduitEnd:
			return face{raceway.Gripping, e.Size}
		}
		return face{raceway.Panel, e.Size}
	}
	last := of(from)
	meet := func(next face) bool {
		if last.size != next.size {
			return false
		}
		return last.kind != next.kind && last.kind != raceway.Panel && next.kind != raceway.Panel && last.kind != raceway.Gripping && next.kind != raceway.Gripping ||
			last.kind == next.kind && (last.kind == raceway.Panel || last.kind == raceway.Gripping)
	}
	if len(parts) == 1 && parts[0].Kind == raceway.Coupling && from == to && from.Kind == raceway.ConduitEnd {
		return "" // a coupling of that conduit grips both, whatever its ends
	}
	for i, p := range parts {
		if p.Kind == raceway.EndBushing && (i == 0 && from.Kind != raceway.ConduitEnd || i == len(parts)-1 && to.Kind != raceway.ConduitEnd) {
			continue // it caps the thread inside, and joins nothing
		}
		if !meet(face{p.From.Face, p.From.Size}) {
			return "before " + string(p.Kind)
		}
		last = face{p.To.Face, p.To.Size}
	}
	if !meet(of(to)) {
		return "at the far end"
	}
	return ""
}

func TestJoinRefuses(t *testing.T) {
	for _, test := range []struct {
		name      string
		from, to  raceway.End
		place     raceway.Place
		toGround  raceway.ToGround
		parameter string
		row       int
	}{
		{"kind", raceway.End{Kind: "hose", Size: "1/2"}, hub("1/2"), raceway.Indoors, raceway.UpTo250, "Kind", 0},
		{"size", hub("1/2"), hub("5/8"), raceway.Indoors, raceway.UpTo250, "Size", 1},
		{"no 3/8 knockout", hub("1/2"), knockout("3/8"), raceway.Indoors, raceway.UpTo250, "Size", 1},
		{"no 3/8 EMT", hub("1/2"), end(raceway.EMT, "3/8"), raceway.Indoors, raceway.UpTo250, "Size", 1},
		{"conduit", end("ENT", "1/2"), hub("1/2"), raceway.Indoors, raceway.UpTo250, "Conduit", 0},
		{"place", hub("1/2"), hub("1/2"), "under water", raceway.UpTo250, "place", -1},
		{"volts", hub("1/2"), hub("1/2"), raceway.Indoors, "", "toGround", -1},
	} {
		a, err := raceway.Join(test.from, test.to, test.place, test.toGround)
		check.Broken(t, test.name, err, test.parameter, limit.NotTabulated)
		var at *raceway.RowError
		if errors.As(err, &at) != (test.row >= 0) || at != nil && at.Row != test.row || a.Parts != nil {
			t.Errorf("%s: %+v, %v", test.name, a, err)
		}
	}
	for volts, want := range map[float64]raceway.ToGround{0: raceway.UpTo250, 120: raceway.UpTo250, 250: raceway.UpTo250, 251: raceway.Over250, 480: raceway.Over250} {
		if g, err := raceway.ToGroundOf(unit.Voltage(volts)); err != nil || g != want {
			t.Errorf("%v V: %s, %v", volts, g, err)
		}
	}
}
