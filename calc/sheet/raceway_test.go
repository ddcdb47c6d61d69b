package sheet_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"roofside/calc/limit"
	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// parts writes an adapter's parts with their sizes.
func parts(a raceway.Adapter) string {
	var all []string
	for _, p := range a.Parts {
		s := string(p.Kind) + " " + string(p.From.Size)
		if p.To.Size != p.From.Size {
			s += ">" + string(p.To.Size)
		}
		all = append(all, s)
	}
	return strings.Join(all, ", ")
}

// Which parts join what is common practice; bonding over 250 V to ground 250.97.
func TestAdapter(t *testing.T) {
	for _, c := range []struct {
		name, with string
		parts      string
		verdicts   string // rule and level
		wanted     string
	}{
		{"a hub of the conduit's thread", "opening.kind=hub&opening.size=3/4&raceway.conduit=RMC&raceway.size=3/4", "", "", ""},
		{"a larger hub", "opening.kind=hub&opening.size=3/4&raceway.conduit=LFMC&raceway.size=1/2", "reducing-bushing 3/4>1/2, connector 1/2", "", ""},
		{"a smaller hub", "opening.kind=hub&opening.size=1/2&raceway.conduit=LFMC&raceway.size=3/4", "enlarger 1/2>3/4, connector 3/4", "", ""},
		{"a larger knockout indoors", "opening.kind=knockout&opening.size=3/4&raceway.conduit=EMT&raceway.size=1/2&raceway.place=indoors&new.motor-volts=208V",
			"reducing-washers 3/4>1/2, locknut 1/2, connector 1/2", "", ""},
		{"the same at 460 V", "opening.kind=knockout&opening.size=3/4&raceway.conduit=EMT&raceway.size=1/2&raceway.place=indoors&new.motor-volts=460V",
			"reducing-washers 3/4>1/2, locknut 1/2, connector 1/2", "bond-over-250 watch", ""},
		{"the same at volts not known", "opening.kind=knockout&opening.size=3/4&raceway.conduit=EMT&raceway.size=1/2&raceway.place=indoors",
			"reducing-washers 3/4>1/2, locknut 1/2, connector 1/2", "bond-over-250 unjudged new.motor-volts", ""},
		{"the same outdoors, which is taken unless said", "opening.kind=knockout&opening.size=3/4&raceway.conduit=EMT&raceway.size=1/2&new.motor-volts=208V",
			"hub 3/4, reducing-bushing 3/4>1/2, connector 1/2", "", ""}, // no washers are in it
		// 348.12(1): not in wet locations.
		{"flexible metal conduit outdoors", "opening.kind=hub&opening.size=1/2&raceway.conduit=FMC&raceway.size=1/2", "connector 1/2", "conduit-wet stop", ""},
		{"the same indoors", "opening.kind=hub&opening.size=1/2&raceway.conduit=FMC&raceway.size=1/2&raceway.place=indoors", "connector 1/2", "", ""},
		{"an end of it outdoors", "opening.kind=conduit&opening.conduit=FMC&opening.size=1/2&raceway.conduit=LFMC&raceway.size=1/2", "connector 1/2, coupling 1/2, connector 1/2", "conduit-wet stop", ""},
		{"an opening not said", "raceway.conduit=FMC", "", "conduit-wet stop", "opening.kind opening.size raceway.size"},
		{"rings at 460 V, outdoors", "opening.kind=ring-knockout&opening.size=1/2&raceway.conduit=LFMC&raceway.size=1/2&new.motor-volts=460V", "locknut 1/2, connector 1/2", "bond-over-250 watch", ""},
		{"another conduit's end", "opening.kind=conduit&opening.conduit=EMT&opening.size=1/2&raceway.conduit=EMT&raceway.size=1/2", "coupling 1/2", "", ""},
		{"nothing said", "", "", "", "opening.kind opening.size raceway.conduit raceway.size"},
		{"of which type is not said", "opening.kind=conduit&opening.size=1/2&raceway.conduit=EMT&raceway.size=1/2", "", "", "opening.conduit"},
	} {
		f := fan(t, c.with)
		a := sheet.Adapter(f)
		var wanted, verdicts []string
		for _, p := range a.Wanted {
			wanted = append(wanted, f.KeyOf(p))
		}
		for _, v := range sheet.JointVerdicts(f, a) {
			s := string(v.Rule) + " " + levelName(v.Level)
			for _, p := range v.Wanted {
				s += " " + f.KeyOf(p)
			}
			verdicts = append(verdicts, s)
		}
		if got := parts(a.Value); got != c.parts || strings.Join(wanted, " ") != c.wanted || a.Known() != (c.wanted == "") || strings.Join(verdicts, ", ") != c.verdicts {
			t.Errorf("%s: %q, wants %v, %v", c.name, got, wanted, verdicts)
		}
	}
}

func levelName(l sheet.Level) string {
	return map[sheet.Level]string{sheet.Within: "within", sheet.Unjudged: "unjudged", sheet.Watch: "watch", sheet.Stop: "stop"}[l]
}

func TestAdapterNamesTheEndAtFault(t *testing.T) {
	for with, key := range map[string]string{
		"opening.kind=hub&opening.size=3/8&raceway.conduit=LFMC&raceway.size=1/2":                            "opening.size",
		"opening.kind=hub&opening.size=1/2&raceway.conduit=EMT&raceway.size=3/8":                             "raceway.size",
		"opening.kind=conduit&opening.conduit=PVC-40&opening.size=3/8&raceway.conduit=EMT&raceway.size=1/2":  "opening.size",
		"opening.kind=hub&opening.size=!odd&raceway.conduit=EMT&raceway.size=1/2":                            "opening.size",
		"opening.kind=hub&opening.size=1/2&raceway.conduit=EMT&raceway.size=1/2&raceway.place=!on the roof?": "raceway.place",
	} {
		f := fan(t, with)
		a := sheet.Adapter(f)
		if a.Known() || a.Fault == nil || f.KeyOf(a.Fault.Place) != key {
			t.Errorf("%s: %+v", with, a)
		}
	}
}

// To ground a circuit has at most what it has between lines: 240 V are under
// 250 in any system. 480 V between three lines are at least 277 to ground, and 277 V is
// a line of those to ground.
func TestToGround(t *testing.T) {
	for volts, want := range map[string]raceway.ToGround{
		"": raceway.ToGroundNotKnown, "208V": raceway.UpTo250, "250V": raceway.UpTo250, "255V": raceway.ToGroundNotKnown, "277V": raceway.Over250, "300V": raceway.ToGroundNotKnown, "400V": raceway.ToGroundNotKnown,
		"460V": raceway.Over250, "575V": raceway.Over250, "?": raceway.ToGroundNotKnown,
	} {
		if got := sheet.ToGround(fan(t, "new.motor-volts="+volts)); got != want {
			t.Errorf("%q: %s", volts, got)
		}
	}
	// What was read between lines tells the same; 24 V are those of a control, and no line's.
	for link, want := range map[string]raceway.ToGround{
		"old.volts-12=208V": raceway.UpTo250, "old.volts-12=482V": raceway.Over250, "old.volts-12=24V": raceway.ToGroundNotKnown,
		"new.motor-volts=208V&old.volts-12=482V": raceway.Over250, "new.motor-volts=208V&old.volts-12=24V": raceway.UpTo250,
	} {
		if got := sheet.ToGround(fan(t, link)); got != want {
			t.Errorf("%s: %s", link, got)
		}
	}
}

const half = "raceway.conduit=LFMC&raceway.size=1/2"

func TestFillStates(t *testing.T) {
	three := row("a", "3", "12", "THWN-2", "circuit")
	for _, c := range []struct {
		name, with string
		level      sheet.Level
		rule       sheet.Rule
		wanted     string
	}{
		// 4 · 0.0133 of 0.125 in², Tables 4 and 5; alike, so counted: 0.125/0.0133 = 9.4.
		{"counted", half + three + row("b", "1", "12", "THHN", "ground"), sheet.Within, sheet.RuleFillCount, ""},
		{"ten of nine", half + row("a", "10", "12", "THHN", "circuit"), sheet.Stop, sheet.RuleFillCount, ""},
		{"a nipple of the same, how long not said", half + "&raceway.use=nipple" + row("a", "10", "12", "THWN-2", "circuit"), sheet.Unjudged, sheet.RuleFillCount, "raceway.length"},
		{"a nipple of the same", half + "&raceway.use=nipple&raceway.length=20in" + row("a", "10", "12", "THHN", "circuit"), sheet.Within, sheet.RuleFillCount, ""},
		{"unlike", half + three + row("b", "1", "10", "THHN", "ground"), sheet.Within, sheet.RuleFill, ""},
		{"a guessed count", half + row("a", "3;guessed", "12", "THWN-2", "circuit"), sheet.Unjudged, sheet.RuleFillCount, "wire.a.count"},
		{"no size", half + "&wire.a.count=3&wire.a.insulation=TW", sheet.Unjudged, sheet.RuleFill, "wire.a.size"},
		{"a size not read", half + row("a", "3", "?", "TW", "circuit"), sheet.Unjudged, sheet.RuleFill, "wire.a.size"},
		{"a count of none", half + row("a", "!0", "12", "TW", "circuit"), sheet.Unjudged, sheet.RuleFill, "wire.a.count"},
		{"no conduit", three[1:], sheet.Unjudged, sheet.RuleFill, "raceway.conduit"},
		{"no conductors", half, sheet.Unjudged, sheet.RuleFill, ""},
		{"in the box alone", half + three + "&wire.a.where=box", sheet.Unjudged, sheet.RuleFill, ""},
		// 348.22 with 350.22(B): three of size 12, THHN, fittings outside, and a ground.
		{"3/8, three and a ground", "raceway.conduit=LFMC&raceway.size=3/8" + three + row("b", "1", "12", "bare", "ground"), sheet.Within, sheet.RuleFillSmall, ""},
		{"3/8, four", "raceway.conduit=LFMC&raceway.size=3/8" + row("a", "4", "12", "THHN", "circuit"), sheet.Stop, sheet.RuleFillSmall, ""},
		{"3/8, which fittings is not said", "raceway.conduit=FMC&raceway.size=3/8" + three, sheet.Unjudged, sheet.RuleFill, "raceway.fittings"},
		{"3/8, insulation not in its table", "raceway.conduit=LFMC&raceway.size=3/8" + row("a", "3", "12", "RHW", "circuit"), sheet.Unjudged, sheet.RuleFill, "wire.a.insulation"},
		// 3 · π/4 · 0.15² in² of 0.125; by note 7 seven of them.
		{"measured", half + row("a", "3", "12", "unmarked", "circuit") + "&wire.a.diameter=0.15in", sheet.Within, sheet.RuleFillCount, ""},
		// 3 · π/4 · 0.218² + 0.0133 = 0.1253, read to 0.005 in.
		{"measured, and the caliper's error decides", half + row("a", "3", "12", "unmarked", "circuit") + row("b", "1", "12", "THHN", "ground") + "&wire.a.diameter=0.218in", sheet.Unjudged, sheet.RuleFill, "wire.a.diameter"},
		{"not measured yet", half + row("a", "3", "12", "unmarked", "circuit"), sheet.Unjudged, sheet.RuleFill, "wire.a.diameter"},
	} {
		f := fan(t, c.with)
		v := sheet.FillVerdict(f)
		wanted := ""
		if len(v.Wanted) > 0 {
			wanted = f.KeyOf(v.Wanted[0])
		}
		if v.Level != c.level || v.Rule != c.rule || wanted != c.wanted {
			t.Errorf("%s: %s %s, wants %q", c.name, levelName(v.Level), v.Rule, wanted)
		}
	}
}

// The band of a measured diameter reaches into the fill: 3 · π/4 · d².
func TestFillBand(t *testing.T) {
	f := fan(t, half+row("a", "3", "12", "unmarked", "circuit")+"&wire.a.diameter=0.15in;within 0.01in")
	share := sheet.FillShare(f)
	area := func(d float64) float64 { return 3 * 0.7853981633974483 * d * d / 0.314 }
	near(t, "fill", share.Value, area(0.15))
	near(t, "its band, of the wider edge", share.Band, area(0.16)-area(0.15))
}

func TestFillFaults(t *testing.T) {
	for with, key := range map[string]string{
		half + row("a", "3", "18", "XHHW", "circuit"):                                      "wire.a.size", // not in Table 5
		half + row("a", "3", "12", "TW", "circuit") + row("b", "1", "6", "bare-solid", ""): "wire.b.insulation",
		"raceway.conduit=EMT&raceway.size=3/8" + row("a", "3", "12", "TW", "circuit"):      "raceway.size",
	} {
		f := fan(t, strings.ReplaceAll(with, "&wire.b.role=", ""))
		faulty(t, f, with, sheet.FillShare(f), key)
	}
	f := record.NewFan()
	if a := sheet.FillShare(f); a.Known() || a.Fault == nil || a.Fault.Place != nil || ruleOf(a.Fault.Err) != raceway.NoConductor {
		t.Errorf("no conductors at all: %+v", a)
	}
}

func ruleOf(err error) limit.Rule {
	var e *limit.Error
	if errors.As(err, &e) {
		return e.Rule
	}
	return ""
}

func TestSmallestAndRoom(t *testing.T) {
	f := fan(t, half+row("a", "3", "8", "THWN-2", "circuit")+row("b", "1", "10", "THWN-2", "ground"))
	if s := sheet.SmallestRaceway(f); !s.Known() || s.Value.Size != raceway.Size3by4 { // D21 and D22
		t.Errorf("%+v", s)
	}
	more, like := sheet.Room(f)
	value(t, "more in one that is overfilled", more, 0)
	if like.ID != "a" {
		t.Errorf("like %s", like.ID)
	}
	set(t, f, "raceway.size", "3/4") // (0.216 − 0.1309)/0.0366 = 2.3
	more, _ = sheet.Room(f)
	value(t, "more", more, 2)
	if _, like := sheet.Room(fan(t, half+row("a", "3", "8", "unmarked", "circuit")+"&wire.a.diameter=0.2in")); like != nil {
		t.Error("room for a wire whose print can't be read")
	}
	for range record.MostWires - len(f.Wires) {
		w := f.NewWire()
		set(t, f, "wire."+w.ID+".count", "100", "wire."+w.ID+".size", "4/0", "wire."+w.ID+".insulation", "THHN")
	}
	if s := sheet.SmallestRaceway(f); s.Known() || ruleOf(s.Fault.Err) != raceway.NoSizeFits {
		t.Errorf("%+v", s)
	}
}

// By hand from Table 314.16: a wire of size 12 takes 2.25 in³, a box 4 x 1-1/2
// square has 21.
func TestBox(t *testing.T) {
	wires := row("a", "3", "12", "THWN-2", "circuit") + row("b", "1", "12", "bare", "ground")
	f := fan(t, "box.size=square%204%20x%201-1/2&box.devices=0&box.clamps=no"+wires)
	inch := float64(unit.CubicInch)
	value(t, "three and a ground", sheet.BoxNeeded(f), 4*2.25*inch)
	set(t, f, "wire.a.box-count", "6", "wire.b.box-count", "2", "box.clamps", "yes")
	value(t, "six, grounds as one, clamps as one", sheet.BoxNeeded(f), 8*2.25*inch)
	value(t, "of 21", sheet.BoxShare(f), 18/21.)
	if v := sheet.BoxVerdict(f); v.Level != sheet.Within {
		t.Errorf("%+v", v)
	}
	if b := sheet.SmallestBox(f); b.Value.Volume != 18*unit.CubicInch {
		t.Errorf("%+v", b)
	}
	set(t, f, "box.devices", "1")
	value(t, "a device as two", sheet.BoxNeeded(f), 10*2.25*inch)
	if v := sheet.BoxVerdict(f); v.Level != sheet.Stop || v.Rule != sheet.RuleBoxFill {
		t.Errorf("22.5 of 21: %+v", v)
	}
	set(t, f, "box.volume", "22.5 in3")
	value(t, "as marked", sheet.BoxVolume(f), 22.5*inch)
	if v := sheet.BoxVerdict(f); v.Level != sheet.Within {
		t.Errorf("22.5 of 22.5: %+v", v)
	}
	set(t, f, "wire.a.where", "raceway")
	value(t, "the ground, its device and clamps", sheet.BoxNeeded(f), 4*2.25*inch)
	set(t, f, "wire.a.where", "", "wire.a.size", "4")
	if a := sheet.BoxNeeded(f); a.Known() || f.KeyOf(a.Fault.Place) != "wire.a.size" || ruleOf(a.Fault.Err) != raceway.PullBox {
		t.Errorf("larger than 6: %+v", a)
	}
	set(t, f, "wire.a.size", "12", "box.clamps", "")
	wants(t, f, "clamps not said", sheet.BoxNeeded(f), "box.clamps")
	set(t, f, "box.volume", "!big", "box.clamps", "no")
	faulty(t, f, "volume no value", sheet.BoxShare(f), "box.volume")
}

// By hand from Table 314.16: 4 wires of size 12 take 9 in³, 14 of size 14 take 28.
// No device box is above 18 in³; the least of all above 28 is a square one of 29.5.
func TestTheSameShapeOfBoxFirst(t *testing.T) {
	for _, c := range []struct{ size, count, wire, shape, box string }{
		{"&raceway.place=indoors", "4", "12", "device", "3 x 2 x 2"}, // 9 in³ of 10
		{"", "4", "12", "conduit", "FS single 1-3/4"},                // outdoors cast: common practice
		{"square%204%20x%202-1/8", "4", "12", "square", "4 x 1-1/4"},
		{"octagonal%204%20x%201-1/4", "4", "12", "octagonal", "4 x 1-1/4"},
		{"device%203%20x%202%20x%202", "14", "14", "square", "4-11/16 x 1-1/2"}, // none of that shape
	} {
		f := fan(t, "box.devices=0&box.clamps=no&box.size="+c.size+row("a", c.count, c.wire, "THWN-2", "circuit"))
		if b := sheet.SmallestBox(f); !b.Known() || string(b.Value.Shape) != c.shape || b.Value.Size != c.box {
			t.Errorf("%+v: %+v", c, b)
		}
	}
}

// From 2020 each ground beyond four takes a quarter: 314.16(B)(5).
func TestGroundsInTheBoxByEdition(t *testing.T) {
	for edition, want := range map[string]float64{"": 4.5 + 2.25*1.5, "2020": 4.5 + 2.25*1.5, "2017": 4.5 + 2.25} {
		f := fan(t, "box.devices=0&box.clamps=no"+row("a", "2", "12", "TW", "circuit")+row("b", "6", "12", "bare", "ground"))
		set(t, f, "code-edition", edition)
		value(t, "edition "+edition, sheet.BoxNeeded(f), want*float64(unit.CubicInch))
	}
}

// A fan of 5 hp at 460 V: 7.6 A by Table 430.250, 9.5 A asked for (430.22).
const five = "supply=three-phase&new.motor-power=5hp&new.motor-volts=460V&circuit.material=copper&raceway.exposure=shaded&hottest-air=40C&raceway.conduit=LFMC&raceway.size=1/2"

func TestWireVerdicts(t *testing.T) {
	twelve := row("a", "3", "12", "THWN-2", "circuit")
	for _, c := range []struct {
		name, with string
		level      sheet.Level
		rule       sheet.Rule
		wanted     string
	}{
		{"20 A at 60 °C terminals for 9.5", twelve, sheet.Within, sheet.RuleAmpacity, ""},
		{"the plate's 25 A rules", twelve + "&new.minimum-circuit-ampacity=25A", sheet.Stop, sheet.RuleAmpacity, ""},
		{"the plate's 25 A rules, terminals marked", twelve + "&new.minimum-circuit-ampacity=25A&circuit.terminals=75", sheet.Within, sheet.RuleAmpacity, ""},
		{"for dry places", row("a", "3", "12", "THHN", "circuit"), sheet.Stop, sheet.RuleDryOnly, ""},
		{"the same indoors", row("a", "3", "12", "THHN", "circuit") + "&raceway.place=indoors", sheet.Within, sheet.RuleAmpacity, ""},
		{"unmarked, 60 °C: enough, yet not to be judged here", row("a", "3", "12", "unmarked", "circuit"), sheet.Unjudged, sheet.RuleUnmarked, ""},
		{"unmarked, and another row carries less", row("a", "2", "14", "THWN-2", "circuit") + row("b", "1", "10", "unmarked", "circuit"), sheet.Unjudged, sheet.RuleUnmarked, ""},
		{"an unmarked ground", twelve + row("b", "1", "12", "unmarked", "ground"), sheet.Unjudged, sheet.RuleUnmarked, ""},
		{"an unmarked ground, in the box alone", twelve + row("b", "1", "12", "unmarked", "ground") + "&wire.b.where=box", sheet.Within, sheet.RuleAmpacity, ""},
		// 430.22(G): in general none below 14.
		{"smaller than any motor's", row("a", "3", "16", "THWN-2", "circuit"), sheet.Stop, sheet.RuleLeastWire, ""},
		{"one of them smaller", row("a", "2", "12", "THWN-2", "circuit") + row("b", "1", "18", "THWN-2", "circuit"), sheet.Stop, sheet.RuleLeastWire, ""},
		{"smaller, and too little by the plate", row("a", "3", "16", "THWN-2", "circuit") + "&new.minimum-circuit-ampacity=25A", sheet.Stop, sheet.RuleLeastWire, ""},
		{"a small wire of the control", twelve + row("b", "1", "18", "THWN-2", "other"), sheet.Within, sheet.RuleAmpacity, ""},
		{"material not said", twelve + "&circuit.material=", sheet.Unjudged, sheet.RuleAmpacity, "circuit.material"},
		{"sun not said", twelve + "&raceway.exposure=", sheet.Unjudged, sheet.RuleAmpacity, "raceway.exposure"},
		{"in the sun, how high not said", twelve + "&raceway.exposure=rooftop", sheet.Unjudged, sheet.RuleAmpacity, "raceway.height"},
		// 40 + 33 °C: 0.50 of 30 A for 12 THWN-2 (90 °C) is 15; TW has no factor there.
		{"low over the roof", twelve + "&raceway.exposure=rooftop&raceway.height=1/2in", sheet.Within, sheet.RuleAmpacity, ""},
		{"too hot for 60 °C", row("a", "3", "12", "TW", "circuit") + "&raceway.exposure=rooftop&raceway.height=1/2in", sheet.Stop, sheet.RuleTooHot, ""},
		// Table 310.15(B)(1)(1) ends at 55 °C for 60 °C insulation; 0.41 of 30 A is 12.3 there.
		{"as hot as it may be", row("a", "3", "10", "TW", "circuit") + "&hottest-air=55C;within 0C", sheet.Within, sheet.RuleAmpacity, ""},
		{"and a degree more may be too much", row("a", "3", "10", "TW", "circuit") + "&hottest-air=55C;within 1C", sheet.Unjudged, sheet.RuleTooHot, "hottest-air"},
		{"a height whose error reaches the sun's 33 °C", row("a", "3", "10", "TW", "circuit") + "&raceway.exposure=rooftop&raceway.height=0.8in;within 0.1in", sheet.Unjudged, sheet.RuleTooHot, "raceway.height"},
		{"too hot for another circuit's", twelve + row("b", "1", "12", "TW", "other") + "&raceway.exposure=rooftop&raceway.height=1/2in", sheet.Stop, sheet.RuleTooHot, ""},
		{"a ground for dry places", twelve + row("b", "1", "12", "THHN", "ground"), sheet.Stop, sheet.RuleDryOnly, ""},
		{"a control wire for dry places", twelve + row("b", "1", "14", "XHH", "other"), sheet.Stop, sheet.RuleDryOnly, ""},
		{"a ground of an insulation not said", twelve + "&wire.b.count=1&wire.b.size=12&wire.b.role=ground", sheet.Unjudged, sheet.RuleDryOnly, "wire.b.insulation"},
		{"a control wire too hot, below the tables", twelve + row("b", "2", "18", "TW", "other") + "&raceway.exposure=rooftop&raceway.height=1/2in", sheet.Stop, sheet.RuleTooHot, ""},
		{"a bare ground", twelve + row("b", "1", "12", "bare", "ground"), sheet.Within, sheet.RuleAmpacity, ""},
		{"for dry places, in the air of a day not known", row("a", "3", "12", "THHN", "circuit") + "&hottest-air=", sheet.Stop, sheet.RuleDryOnly, ""},
		{"for dry places, of a size not known", "wire.a.insulation=THHN", sheet.Stop, sheet.RuleDryOnly, ""},
		// 0.50 · 0.70 of 30 A is 10.5 with seven to nine that carry current.
		{"bundled, another circuit beside it", twelve + "&raceway.exposure=rooftop&raceway.height=1/2in" + row("b", "5", "14", "THWN-2", "other") + "&new.minimum-circuit-ampacity=10.6A", sheet.Stop, sheet.RuleAmpacity, ""},
		{"the weakest row counts", row("a", "2", "12", "THWN-2", "circuit") + row("b", "1", "14", "THWN-2", "circuit") + "&new.minimum-circuit-ampacity=18A", sheet.Stop, sheet.RuleAmpacity, ""},
		{"a ground is no circuit", row("a", "1", "14", "THWN-2", "ground"), sheet.Unjudged, sheet.RuleAmpacity, ""},
		{"on a drive the tables don't hold", twelve + "&supply=drive", sheet.Unjudged, sheet.RuleAmpacity, "new.minimum-circuit-ampacity"},
		{"two wires to three phases", row("a", "2", "12", "THWN-2", "circuit"), sheet.Watch, sheet.RuleWireCount, ""},
		{"two rows that are three", row("a", "2", "12", "THWN-2", "circuit") + row("b", "1", "12", "THWN-2", ""), sheet.Within, sheet.RuleAmpacity, ""},
		{"the ground counted with them", row("a", "4", "12", "THWN-2", "circuit"), sheet.Watch, sheet.RuleWireCount, ""},
		{"three of one phase", twelve + "&supply=single-phase&new.motor-power=1hp&new.motor-volts=230V", sheet.Watch, sheet.RuleWireCount, ""},
		{"two of one phase", row("a", "2", "12", "THWN-2", "circuit") + "&supply=single-phase&new.motor-power=1hp&new.motor-volts=230V", sheet.Within, sheet.RuleAmpacity, ""},
		{"six at two speeds", row("a", "6", "12", "THWN-2", "circuit") + "&supply=two-speed&new.minimum-circuit-ampacity=9A", sheet.Within, sheet.RuleAmpacity, ""},
		// Table 430.250 has 7.6 A, and 430.22 asks for 125 % of a motor's current.
		{"a plate under the motor's table current", twelve + "&new.minimum-circuit-ampacity=2.5A", sheet.Watch, sheet.RulePlateAmpacity, ""},
		{"a plate under the motor's plate amps", twelve + "&new.minimum-circuit-ampacity=8A&new.motor-amps=8.4A", sheet.Watch, sheet.RulePlateAmpacity, ""},
		{"the same on a drive", twelve + "&supply=drive&new.minimum-circuit-ampacity=8A&new.motor-amps=8.4A", sheet.Watch, sheet.RulePlateAmpacity, ""},
		{"a plate of an efficient motor", twelve + "&new.minimum-circuit-ampacity=8.1A&new.motor-amps=6.5A", sheet.Within, sheet.RuleAmpacity, ""},
		{"a plate with both figures the wrong way about", twelve + "&new.minimum-circuit-ampacity=18A&new.maximum-overcurrent=15A", sheet.Watch, sheet.RulePlateDevice, ""},
		{"a plate that gives the same for both", twelve + "&new.minimum-circuit-ampacity=15A&new.maximum-overcurrent=15A", sheet.Within, sheet.RuleAmpacity, ""},
		{"a motor's plate that can't be read", twelve + "&new.minimum-circuit-ampacity=8A&new.motor-amps=!smudged", sheet.Unjudged, sheet.RulePlateAmpacity, "new.motor-amps"},
		// 110.14(A): terminals marked for it.
		{"aluminum", row("a", "3", "10", "XHHW-2", "circuit") + "&circuit.material=aluminum", sheet.Watch, sheet.RuleAluminum, ""},
		{"terminals for 90 °C, which are the lugs'", twelve + "&circuit.terminals=90", sheet.Watch, sheet.RuleTerminals, ""},
		{"copper-clad", row("a", "3", "10", "XHHW-2", "circuit") + "&circuit.material=clad", sheet.Watch, sheet.RuleAluminum, ""},
		{"no motor of the tables", twelve + "&new.motor-power=4hp", sheet.Unjudged, sheet.RuleAmpacity, "new.motor-power"},
	} {
		f := fan(t, five)
		for part := range strings.SplitSeq(strings.TrimPrefix(c.with, "&"), "&") {
			key, text, _ := strings.Cut(part, "=")
			f.Apply(map[string]string{key: text})
		}
		of := sheet.CircuitOf(f)
		v := sheet.Worst(append(of.Remarks, of.WireVerdict))
		wanted := ""
		if len(v.Wanted) > 0 {
			wanted = f.KeyOf(v.Wanted[0])
		}
		if v.Level != c.level || v.Rule != c.rule || wanted != c.wanted {
			t.Errorf("%s: %s %s, wants %q", c.name, levelName(v.Level), v.Rule, wanted)
		}
	}
}

// 430.6(A)(1): a motor under 1200 rpm goes by its plate.
func TestASlowMotorGoesByItsPlate(t *testing.T) {
	f := fan(t, five+"&new.motor-speed=1160rpm&new.motor-amps=8.4A")
	value(t, "current", sheet.CircuitOf(f).Current, 8.4)
	value(t, "demand", sheet.CircuitOf(f).Demand, 10.5)
	set(t, f, "new.motor-speed", "1750 rpm")
	value(t, "current", sheet.CircuitOf(f).Current, 7.6)
	value(t, "disconnect, 115 %", sheet.CircuitOf(f).Disconnect, 8.74)
}

// 7.6 A: 250 % are 19.0, a breaker of 20; 400 % are 30.4, at most one of 30.
func TestOvercurrentVerdict(t *testing.T) {
	for rating, want := range map[string]sheet.Level{"15 A": sheet.Within, "20 A": sheet.Within, "25 A": sheet.Watch, "30 A": sheet.Watch, "35 A": sheet.Stop} {
		f := fan(t, five+"&circuit.device=inverse-time-breaker&circuit.device-rating="+strings.ReplaceAll(rating, " ", ""))
		if v := sheet.CircuitOf(f).DeviceVerdict; v.Level != want || v.Rule != sheet.RuleOvercurrent {
			t.Errorf("%s: %+v", rating, v)
		}
		set(t, f, "new.maximum-overcurrent", "20 A")
		if v := sheet.CircuitOf(f).DeviceVerdict; v.Level == sheet.Watch || (v.Level == sheet.Stop) != (want != sheet.Within) {
			t.Errorf("%s, and the plate allows 20 A: %+v", rating, v)
		}
	}
	f := fan(t, five+"&circuit.device-rating=20A")
	if v := sheet.CircuitOf(f).DeviceVerdict; v.Level != sheet.Unjudged || f.KeyOf(v.Wanted[0]) != "circuit.device" {
		t.Errorf("no device: %+v", v)
	}
}

// Table 250.122: 14 to 15 A, 12 to 20, 10 to 60; 250.122(A) and (B).
func TestGround(t *testing.T) {
	for _, c := range []struct {
		rating, wire, ground string
		least                raceway.WireSize
		raised               bool
		level                sheet.Level
	}{
		{"15A", "14", "14", "14", false, sheet.Within},
		{"20A", "14", "14", "14", false, sheet.Within}, // never above the circuit's own
		{"20A", "12", "12", "12", false, sheet.Within},
		{"20A", "12", "14", "12", false, sheet.Stop},
		{"15A", "12", "14", "12", true, sheet.Watch}, // 14 would do: 6530/4110 of the area; 250.122(B), exception
		{"15A", "10", "10", "10", true, sheet.Within},
		{"30A", "10", "10", "10", false, sheet.Within}, // larger than needed, and the table has 10 anyway
	} {
		f := fan(t, five+"&circuit.device=inverse-time-breaker&circuit.device-rating="+c.rating+row("a", "3", c.wire, "THWN-2", "circuit")+row("g", "1", c.ground, "THWN-2", "ground"))
		g := sheet.CircuitOf(f).Ground
		if !g.Known() || g.Value.Size != c.least || g.Value.Raised != c.raised {
			t.Errorf("%+v: %+v", c, g)
		}
		rule := sheet.RuleGround
		if c.level == sheet.Watch {
			rule = sheet.RuleGroundRaised
		}
		if v := sheet.CircuitOf(f).GroundVerdict; v.Level != c.level || v.Rule != rule {
			t.Errorf("%+v: %+v", c, v)
		}
	}
	for ground, want := range map[string]string{"&wire.g.count=!0&wire.g.size=12": "wire.g.count", "&wire.g.count=1&wire.g.size=?": "wire.g.size", "&wire.g.size=12": "wire.g.count"} {
		f := fan(t, five+row("a", "3", "12", "THWN-2", "circuit")+"&wire.g.insulation=THWN-2&wire.g.role=ground"+ground)
		if v := sheet.CircuitOf(f).GroundVerdict; v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != want {
			t.Errorf("%s: %+v", ground, v)
		}
	}
	for conduit, want := range map[string]sheet.Level{"": sheet.Unjudged, "EMT": sheet.Within /* 250.118(4) */, "LFMC": sheet.Watch, "LFNC-B": sheet.Stop, "PVC-40": sheet.Stop} {
		f := fan(t, five+row("a", "3", "12", "THWN-2", "circuit"))
		set(t, f, "raceway.conduit", conduit)
		if v := sheet.CircuitOf(f).GroundVerdict; v.Level != want || v.Rule != sheet.RuleNoGround {
			t.Errorf("no ground listed, %q: %+v", conduit, v)
		}
	}
}

func TestDropVerdict(t *testing.T) {
	f := fan(t, five+row("a", "3", "12", "THWN-2", "circuit")+"&circuit.length=150ft")
	value(t, "share", sheet.CircuitOf(f).DropShare, float64(sheet.CircuitOf(f).Drop.Value)/460)
	if v := sheet.CircuitOf(f).DropVerdict; v.Level != sheet.Within {
		t.Errorf("%+v", v)
	}
	set(t, f, "circuit.length", "700 ft") // 3.43 V by 150 ft: 16 V, 3.5 %
	if v := sheet.CircuitOf(f).DropVerdict; v.Level != sheet.Watch || v.Rule != sheet.RuleDrop {
		t.Errorf("%+v", v)
	}
	set(t, f, "raceway.conduit", "EMT", "wire.g.count", "1", "wire.g.size", "12", "wire.g.insulation", "bare", "wire.g.role", "ground", "circuit.device", "inverse-time-breaker")
	if v := sheet.Worst(sheet.CircuitOf(f).Verdicts(f)); v.Level != sheet.Watch || v.Rule != sheet.RuleDrop {
		t.Errorf("of the circuit as a whole: %+v", v)
	}
	set(t, f, "supply", "direct")
	wants(t, f, "phases not told", sheet.CircuitOf(f).Drop, "supply")
	set(t, f, "supply", "three-phase", "circuit.material", "clad")
	faulty(t, f, "not in Table 9", sheet.CircuitOf(f).Drop, "circuit.material")
}

func TestFiftyRows(t *testing.T) {
	f := fan(t, "raceway.conduit=RMC&raceway.size=2")
	for i := range record.MostWires {
		w := f.NewWire()
		set(t, f, fmt.Sprintf("wire.w%d.count", i+1), "1", "wire."+w.ID+".size", "14", "wire."+w.ID+".insulation", "THHN")
	}
	value(t, "fifty rows", sheet.FillShare(f), 50*0.0097/3.408)
}

// EMT 1/2 is 0.706 in across outside, from memory of its standard; what bends is
// told by no outside.
func TestOutsides(t *testing.T) {
	all := sheet.Outsides(fan(t, "raceway.conduit=EMT"))
	if len(all) != 6 || all[0].Size != raceway.Size1by2 {
		t.Fatalf("%+v", all)
	}
	near(t, "1/2", all[0].Diameter, 0.706*0.0254)
	if all := sheet.Outsides(fan(t, half)); len(all) != 0 {
		t.Errorf("%+v", all)
	}
}

func TestSection(t *testing.T) {
	f := fan(t, half+row("a", "3", "12", "THWN-2", "circuit")+row("b", "1", "14", "?", "ground")+row("c", "2", "10", "unmarked", "other")+"&wire.c.diameter=0.2in")
	inside, discs, ok := sheet.Section(f)
	if !ok || len(discs) != 2 || discs[0].Count != 3 || discs[0].Wire.ID != "a" || discs[1].Wire.ID != "c" {
		t.Fatalf("%v %+v", ok, discs)
	}
	near(t, "inside, Table 4", inside, 0.632*0.0254)
	near(t, "12 THWN-2, Table 5", discs[0].Diameter, 0.130*0.0254)
	near(t, "as measured", discs[1].Diameter, 0.2*0.0254)
	if _, _, ok := sheet.Section(record.NewFan()); ok {
		t.Error("a section of no raceway")
	}
}
