package sheet_test

import (
	"slices"
	"strings"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
)

// remarksOn is what is said of the rows of wires, their number, metal, terminals and
// plates: rule, row, level, and what is wanted.
func remarksOn(f *record.Fan) []string {
	var all []string
	for _, v := range sheet.CircuitOf(f).Remarks {
		s := []string{string(v.Rule)}
		if v.Of != nil {
			s = append(s, v.Of.ID)
		}
		s = append(s, levelNames[v.Level])
		for _, p := range v.Wanted {
			s = append(s, f.KeyOf(p))
		}
		all = append(all, strings.Join(s, " "))
	}
	return all
}

const (
	beside = "&wire.c.count=2&wire.c.size=14&wire.c.role=other"
	hot45  = "&wire.a.insulation=THWN&hottest-air=45C;within 0C" // 45 + 33 on the roof are 78
)

func TestRemarksOnWires(t *testing.T) {
	for _, c := range []struct {
		name, with string
		want       []string
	}{
		{"a good installation", "", nil},

		// 300.9: a raceway in the weather is a wet place inside; 310.10(C): so its wires are
		// for wet places. Indoors any insulation serves.
		{"of no known insulation, outdoors", beside, []string{"dry-only c unjudged wire.c.insulation"}},
		{"of no known insulation, indoors", beside + "&raceway.place=indoors", nil},
		{"the motor's own, of no known insulation: its ampacity asks", "&wire.a.insulation=", nil},
		{"for dry places", beside + "&wire.c.insulation=THHN", []string{"dry-only c stop"}},
		{"for dry places, indoors", beside + "&wire.c.insulation=THHN&raceway.place=indoors", nil},

		// 430.22(G), 310.3(A): 14 of copper, 12 of aluminum. What isn't told is not below it.
		{"of no known size", "&wire.a.size=", nil},
		{"of a size that is none", "&wire.a.size=!thin", nil},
		{"16 AWG", "&wire.a.size=16", []string{"least-wire a stop"}},
		{"14 AWG of copper", "&wire.a.size=14", nil},
		{"14 AWG of aluminum", "&wire.a.size=14&circuit.material=aluminum", []string{"least-wire a stop", "aluminum-wire watch"}},
		{"14 AWG of copper-clad aluminum", "&wire.a.size=14&circuit.material=clad", []string{"least-wire a stop", "aluminum-wire watch"}},
		{"12 AWG of copper-clad aluminum", "&circuit.material=clad", []string{"aluminum-wire watch"}},
		{"16 AWG of another circuit", beside + "&wire.c.insulation=THWN-2&wire.c.size=16", nil},

		// Table 310.15(B)(1)(1): TW, of 60 °C, has a factor to 55 °C of air; THWN, of 75 °C, to 70.
		{"too hot for its insulation", "&wire.a.insulation=TW&hottest-air=58C;within 0C", []string{"too-hot a stop"}},
		{"as hot as the table goes", "&wire.a.insulation=TW&hottest-air=55C;within 0C", nil},
		{"too hot by the error of the air alone", "&wire.a.insulation=TW&hottest-air=53C;within 5C", []string{"too-hot a unjudged hottest-air"}},
		{"too hot by the error of the height alone", hot45 + "&raceway.height=1in;within 1/2in", []string{"too-hot a unjudged raceway.height"}},
		// How high it lies is not said: it need not lie on the roof.
		{"height not said", hot45 + "&raceway.height=", nil},
		{"a height that is none", hot45 + "&raceway.height=!low", nil},
		{"on the roof itself", hot45 + "&raceway.height=0in", []string{"too-hot a stop"}},

		// A wire without print is for a licensed person; the motor's own is said so with what
		// it carries.
		{"another's without print", beside + "&wire.c.insulation=unmarked&wire.c.diameter=0.13in", []string{"unmarked-wire c unjudged"}},
		{"the motor's own without print", "&wire.a.insulation=unmarked&wire.a.diameter=0.13in", nil},

		// Three lines take three wires, one phase two. What only ends in the box runs nowhere.
		{"six of the motor's", "&wire.a.count=6", []string{"wire-count watch"}},
		{"two of a motor of three phases", "&wire.a.count=2", []string{"wire-count watch"}},
		{"three behind a drive, which has three lines, of a plate of one phase", "&supply=drive&new.phases=1", nil},
		{"three more in the box", "&wire.c.count=3&wire.c.size=12&wire.c.insulation=THWN-2&wire.c.role=circuit&wire.c.where=box", nil},

		// 430.6(A)(1): below 1200 rpm a motor draws more than its row; behind a drive, of two
		// speeds and with its own electronics there is no row; nor of 2.6 hp.
		{"24 A on a plate of 2 hp", "&new.motor-amps=24A", []string{"plate-table watch"}},
		{"11 A on it, at 860 rpm", "&new.motor-amps=11A&new.motor-speed=860rpm", nil},
		{"24 A, behind a drive", "&new.motor-amps=24A&supply=drive", nil},
		{"24 A, of two speeds", "&new.motor-amps=24A&supply=two-speed", nil},
		{"24 A, supply not said", "&new.motor-amps=24A&supply=", nil},
		{"24 A, of 2.6 hp", "&new.motor-amps=24A&new.motor-power=2.6hp", nil},
		{"24 A on a plate without volts", "&new.motor-amps=24A&new.motor-volts=", nil},

		// A fan's least ampacity is no less than what its motor draws, by table or plate; nor
		// more than its largest device.
		{"6 A on the fan's plate", "&new.minimum-circuit-ampacity=6A", []string{"plate-ampacity watch"}},
		{"7.6 A, and 8 on the motor's", "&new.minimum-circuit-ampacity=7.6A&new.motor-amps=8A", []string{"plate-ampacity watch"}},
		{"7.6 A, the motor's hp not read", "&new.minimum-circuit-ampacity=7.6A&new.motor-power=", nil},
		{"6 A, the motor's hp not read", "&new.minimum-circuit-ampacity=6A&new.motor-power=", []string{"plate-ampacity watch"}},
		{"16 A, and 15 for the device", "&new.minimum-circuit-ampacity=16A&new.maximum-overcurrent=15A", []string{"plate-device watch"}},

		// 110.14: terminals for aluminum are marked so.
		{"aluminum", "&circuit.material=aluminum&wire.a.size=10", []string{"aluminum-wire watch"}},
		{"metal not said", "&circuit.material=", nil},
		{"terminals for 90 °C", "&circuit.terminals=90", []string{"terminals-90 watch"}},
	} {
		if got := remarksOn(wired(t, c.with)); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
