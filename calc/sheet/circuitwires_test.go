package sheet_test

import (
	"math"
	"slices"
	"testing"

	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// What a circuit's wires carry goes by those of the motor that run in the raceway, and
// by what lies beside them there: not by what only ends in the box.
func TestWhatTheWiresCarry(t *testing.T) {
	const (
		boxed = "&wire.c.count=9&wire.c.size=14&wire.c.insulation=THWN-2&wire.c.where=box&wire.c.role="
		more  = "&wire.c.count=3&wire.c.insulation=THWN-2&wire.c.role=circuit&wire.c.size="
	)
	for _, c := range []struct {
		name, with string
		amps       float64 // 0 where not known
		row        string
	}{
		// 12 THWN-2 at 40 °C: 0.91 · 30 A, and 20 at terminals for 60 °C (Tables 310.16, 310.15(B)(1)(1)).
		{"three of 12", "", 20, "a"},
		{"nine of the motor's beside them in the box", boxed + "circuit", 20, "a"},
		{"nine of another circuit beside them in the box", boxed + "other", 20, "a"},
		// Table 310.15(C)(1): twelve that carry keep 50 %: 0.5 · 0.91 · 30.
		{"nine of another circuit in the raceway", boxed + "other&wire.c.where=raceway", 13.65, "a"},
		{"three of 10 beside them", more + "10", 20, "a"},
		{"three of 14 beside them", more + "14", 15, "c"}, // of six 80 %: 0.8 · 0.91 · 25 is more
		{"three as large beside them: the first is told", more + "12", 20, "a"},
		{"others whose size isn't known", more, 0, "c"},
		{"their own size not known, of others it is", "&wire.a.size=" + more + "12", 0, "a"},
		// In sun on the roof 33 °C are added (310.15(B)(2)); indoors there is none: 0.91 again.
		{"indoors, with a roof's exposure left in the record", "&raceway.place=indoors&raceway.height=0in", 20, "a"},
		{"on the roof itself", "&raceway.height=0in;within 0in", 15, "a"}, // 73 °C: 0.50 · 30
	} {
		circuit := sheet.CircuitOf(wired(t, c.with))
		row := ""
		if circuit.Wire != nil {
			row = circuit.Wire.ID
		}
		if got := float64(circuit.Carried.Value); row != c.row || math.Abs(got-c.amps) > 0.01 || circuit.Carried.Known() != (c.amps > 0) {
			t.Errorf("%s: %.4g A by row %s, want %.4g by %s", c.name, got, row, c.amps, c.row)
		}
	}
}

// A wire without print is taken for 60 °C and never within by that; what stops it stops it all
// the same, and of wires that don't carry the motor, or only end in the box, nothing is said here.
func TestWiresWithoutPrint(t *testing.T) {
	const other = "&wire.c.count=1&wire.c.size=12&wire.c.insulation=unmarked&wire.c.diameter=0.13in"
	for _, c := range []struct {
		name, with string
		level      sheet.Level
		rule       sheet.Rule
	}{
		{"the motor's own", "&wire.a.insulation=unmarked&wire.a.diameter=0.13in", sheet.Unjudged, sheet.RuleUnmarked},
		// 0.71 of 20 A at 41 to 45 °C (60 °C column); the plate asks for 16.
		{"the motor's own, which carries too little in any case", "&wire.a.insulation=unmarked&wire.a.diameter=0.13in&hottest-air=45C;within 0C&new.minimum-circuit-ampacity=16A", sheet.Stop, sheet.RuleAmpacity},
		{"another circuit's", other + "&wire.c.role=other", sheet.Within, sheet.RuleAmpacity},
		{"a ground", other + "&wire.c.role=ground", sheet.Within, sheet.RuleAmpacity},
		{"one of the motor's in the box", other + "&wire.c.role=circuit&wire.c.where=box", sheet.Within, sheet.RuleAmpacity},
		{"a guessed count in the box", "&wire.c.count=1;guessed&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=circuit&wire.c.where=box", sheet.Within, sheet.RuleAmpacity},
		{"a guessed count of grounds", "&wire.b.count=1;guessed", sheet.Within, sheet.RuleAmpacity},
		{"a guessed count beside it", "&wire.c.count=1;guessed&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Unjudged, sheet.RuleAmpacity},
		{"a guessed count, and too little in any case", "&wire.a.count=3;guessed&new.minimum-circuit-ampacity=25A", sheet.Stop, sheet.RuleAmpacity},
	} {
		if v := sheet.CircuitOf(wired(t, c.with)).WireVerdict; v.Level != c.level || v.Rule != c.rule {
			t.Errorf("%s: %s by %s", c.name, levelNames[v.Level], v.Rule)
		}
	}
}

// What stands on the page of a circuit is what has been begun: no ground without a
// wire, no device without its rating, no drop without a length.
func TestWhatIsJudgedOfACircuit(t *testing.T) {
	for _, c := range []struct {
		with string
		want []string
	}{
		{"", []string{"circuit.ampacity", "circuit.ground", "circuit.overcurrent", "circuit.drop-share"}},
		{"&circuit.device-rating=", []string{"circuit.ampacity", "circuit.ground", "circuit.drop-share"}},
		{"&circuit.length=", []string{"circuit.ampacity", "circuit.ground", "circuit.overcurrent"}},
		{"&wire.a.where=box&wire.b.where=box", []string{"circuit.ampacity", "circuit.overcurrent", "circuit.drop-share"}},
	} {
		f := wired(t, c.with)
		var got []string
		for _, h := range sheet.CircuitOf(f).Verdicts(f) {
			got = append(got, h.Name)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.with, got, c.want)
		}
	}
}

// The motor tables hold for motors on the line at one speed: behind a drive, at two speeds
// and with electronics of their own the fan's plate alone tells (430.6(A)(1), 430.122). Below
// 1200 rpm the motor's plate does.
func TestWhatSizesTheCircuit(t *testing.T) {
	const plain = "&circuit.length=&wire.a.count=3"
	for _, c := range []struct {
		with string
		amps unit.Current // 0 where not known
	}{
		{"", 7.5}, // Table 430.250
		{"&supply=single-phase&new.phases=1&new.motor-volts=230V&new.volts-12=232V", 12}, // Table 430.248
		{plain + "&supply=drive", 0},
		{plain + "&supply=two-speed", 0},
		{plain + "&supply=direct", 0},
		{plain + "&supply=", 0},
		{"&new.motor-speed=1200rpm", 7.5},
		{"&new.motor-speed=1199rpm", 6.6},
		{"&new.motor-speed=1150rpm&new.motor-amps=8.6A", 8.6},
	} {
		current := sheet.CircuitOf(wired(t, c.with)).Current
		if math.Abs(float64(current.Value-c.amps)) > 0.01 || current.Known() != (c.amps > 0) {
			t.Errorf("%s: %.3g A, want %.3g", c.with, float64(current.Value), float64(c.amps))
		}
	}
}

// The drop is a share of the motor's volts, or of the system's where those are less. Volts
// of a line to neutral are no three-phase system's.
func TestWhatTheDropIsAShareOf(t *testing.T) {
	for _, c := range []struct {
		with  string
		volts float64
	}{
		{"", 208},
		{"&new.motor-volts=230V&new.volts-12=208V", 208},
		{"&new.motor-volts=230V&new.volts-12=241V", 230},
		{"&new.motor-volts=230V&new.volts-12=121V", 230},
	} {
		circuit := sheet.CircuitOf(wired(t, c.with))
		if got := float64(circuit.Drop.Value) / float64(circuit.DropShare.Value); math.Abs(got-c.volts) > 0.01 {
			t.Errorf("%s: of %.4g V, want %.4g", c.with, got, c.volts)
		}
	}
}

// Whatever isn't said of a wire, it carries no more than Table 310.16 has at its terminals:
// of copper 14 AWG 20 A at 75 °C, 12 AWG 25, and 20 at 60; of aluminum 12 AWG 20.
func TestWiresThatCarryTooLittleAtMost(t *testing.T) {
	const (
		bare = "&wire.a.insulation=&circuit.terminals=&new.minimum-circuit-ampacity="
		more = "&wire.c.count=3&wire.c.role=circuit&wire.c.size="
	)
	for _, c := range []struct {
		name, with string
		level      sheet.Level
		amps       unit.Current
	}{
		{"12 AWG for 26 A", bare + "26A", sheet.Stop, 25},
		{"12 AWG for 24 A", bare + "24A", sheet.Unjudged, 0},
		{"the same, its terminals for 60 °C", bare + "24A&circuit.terminals=60", sheet.Stop, 20},
		{"the same of aluminum", bare + "24A&circuit.material=aluminum", sheet.Stop, 20},
		{"the same, of what metal not said", bare + "24A&circuit.material=", sheet.Unjudged, 0},
		{"14 AWG beside it", bare + "24A" + more + "14", sheet.Stop, 20},
		{"10 AWG beside 12 for 26 A", bare + "26A" + more + "10", sheet.Stop, 25},
		{"14 AWG beside it in the box", bare + "24A" + more + "14&wire.c.where=box", sheet.Unjudged, 0},
		{"14 AWG of another circuit", bare + "24A" + more + "14&wire.c.role=other", sheet.Unjudged, 0},
		{"of no known size", bare + "24A&wire.a.size=", sheet.Unjudged, 0},
		{"of a size below the table", bare + "24A&wire.a.size=16", sheet.Unjudged, 0}, // that it is too small is said by itself
		// What is known to be carried is what is told: 0.5 · 0.91 · 30 A of twelve that carry.
		{"12 AWG for 15 A, nine beside it", "&new.minimum-circuit-ampacity=15A&wire.c.count=9&wire.c.size=14&wire.c.insulation=THWN-2&wire.c.role=other", sheet.Stop, 13.65},
	} {
		v := sheet.CircuitOf(wired(t, c.with)).WireVerdict
		if v.Level != c.level || c.amps > 0 && math.Abs(v.Value.Base-float64(c.amps)) > 0.01 {
			t.Errorf("%s: %s, %.4g A", c.name, levelNames[v.Level], v.Value.Base)
		}
	}
}
