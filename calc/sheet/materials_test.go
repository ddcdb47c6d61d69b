package sheet_test

import (
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"roofside/calc/raceway"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/source"
	"roofside/calc/unit"
)

// lines writes a list down, a line each: plan, count, length in feet, thing, words, figures in inches,
// reasons, what is wanted, what is at fault.
func lines(f *record.Fan, list []sheet.Material) []string {
	var all []string
	for _, m := range list {
		var s []string
		add := func(format string, on bool) {
			if on {
				s = append(s, format)
			}
		}
		add(string(m.Plan), true)
		add(feet(m.Count, m.Amount), m.Count > 0 || m.Amount.Known)
		add(string(m.Thing), true)
		for _, w := range []string{m.Name, m.Section, string(m.Size), string(m.To), string(m.Conduit), string(m.Wire), string(m.Insulation), m.Box} {
			add(w, w != "")
		}
		add("wet", m.Wet)
		for _, d := range []sheet.Maybe[unit.Length]{m.Pitch, m.Bore, m.Key, m.Inside, m.Length, m.Across, m.Along} {
			add(rounded(d.V.In(unit.Inch))+" in", d.Known)
		}
		add(rounded(float64(m.Turns.V))+" turns", m.Turns.Known)
		add(rounded(float64(m.Weight.V)/0.45359237)+" lb", m.Weight.Known)
		add(rounded(m.Volume.V.In(unit.CubicInch))+" in3", m.Volume.Known)
		add("|", true)
		for _, r := range m.Reasons {
			add(r.Key, true)
		}
		add("|", len(m.Wanted) > 0 || m.Fault != nil)
		for _, p := range m.Wanted {
			add(f.KeyOf(p), true)
		}
		if m.Fault != nil {
			add("!"+f.KeyOf(m.Fault.Place), true)
		}
		all = append(all, strings.Join(s, " "))
	}
	return all
}

func feet(n int, length sheet.Maybe[unit.Length]) string {
	var s []string
	if n > 0 {
		s = append(s, rounded(float64(n)))
	}
	if length.Known {
		s = append(s, rounded(length.V.In(unit.Foot))+" ft")
	}
	return strings.Join(s, " ")
}

func rounded(x float64) string {
	return strings.TrimSuffix(strings.TrimRight(fixedPoint(math.Round(x*100)/100), "0"), ".")
}

func listed(t *testing.T, what string, f *record.Fan, want ...string) {
	t.Helper()
	got := lines(f, sheet.Materials(f))
	for i := range max(len(got), len(want)) {
		a, b := "", ""
		if i < len(got) {
			a = got[i]
		}
		if i < len(want) {
			b = want[i]
		}
		if a != b {
			t.Errorf("%s, line %d:\n%s\nwant\n%s", what, i+1, a, b)
		}
	}
}

// has reports a line that a list doesn't hold, or that it holds one of a thing that it
// should not.
func has(t *testing.T, what string, f *record.Fan, want ...string) {
	t.Helper()
	got := lines(f, sheet.Materials(f))
	for _, w := range want {
		no, absent := strings.CutPrefix(w, "no ")
		found := false
		for _, g := range got {
			found = found || g == w || absent && strings.Contains(" "+g+" ", " "+no+" ")
		}
		if found == absent {
			t.Errorf("%s: no line, or one too many: %s\nin\n%s", what, w, strings.Join(got, "\n"))
		}
	}
}

// roof is the fan of the demonstration as the program has it: its conduit and wire
// stay, and the new fan's hub is a size larger.
const roof = "new.belts=1&opening.kind=hub&opening.size=3/4&raceway.conduit=LFMC&raceway.size=1/2&raceway.place=outdoors&raceway.exposure=rooftop&raceway.height=2 in" +
	"&hottest-air=104 F&circuit.material=copper&circuit.device=inverse-time-breaker" +
	"&wire.w1.count=3&wire.w1.size=12&wire.w1.insulation=THWN-2&wire.w1.role=circuit&wire.w2.count=1&wire.w2.size=12&wire.w2.insulation=THWN-2&wire.w2.role=ground"

func demoRoof(t testing.TB, more string) *record.Fan {
	t.Helper()
	f := demo(t)
	for _, part := range strings.Split(roof+more, "&") {
		key, text, _ := strings.Cut(part, "=")
		set(t, f, key, text)
	}
	return f
}

// The demonstration by hand. Not told: model, weight, curb, and whether there is new
// conduit. A50 is told, one runs and one is spare; its pitch length is 50 + 1.3 in
// (RMA IP-20). Three turns open as in TestDemo. The hub takes a 3/4 thread: a 3/4 × 1/2
// bushing and the conduit's connector, outdoors. 2 hp at 208 V are 7.5 A (Table
// 430.250), 9.4 to carry (430.22); 12 THWN-2 at 40 °C and 2 in over the roof carries
// 20 A at 60 °C terminals: it stays. 250 % are 18.75, a breaker of 20 A, a ground of 12
// (Table 250.122): it stays. Three conductors and the ground are joined.
func TestMaterialsOfTheDemonstration(t *testing.T) {
	listed(t, "demonstration", demoRoof(t, ""),
		"bring 1 fan | replaces | new.model new.weight",
		"unsure curb-adapter | curb-unknown | new.curb-width old.curb-width new.curb-length old.curb-length",
		"bring gasket | seal | old.curb-width old.curb-length",
		"bring 1 shims | level",
		"bring 2 belt A50 51.3 in | belt-entered",
		"keep 1 motor-sheave 3 turns | sheave-set",
		"bring 1 reducing-bushing 3/4 1/2 wet | joint",
		"bring 1 connector 1/2 1/2 LFMC wet | joint",
		"keep conduit 1/2 LFMC | conduit-stays | raceway.length",
		"keep 3 wire 12 THWN-2 | wire-passes",
		"keep 1 ground-wire 12 THWN-2 | ground-passes",
		"bring 4 wire-connector 12 wet | joints",
	)
	// All told: half an inch of room on a curb of 24 by 30 in, whose outside is 9 ft
	// around. 6 ft of new conduit: a connector at the other end, too; a strap within 12
	// in of it and one where the last 3 ft hang free, 2 ft between (350.30).
	f := demoRoof(t, "&new.model=U-18&new.weight=210 lb&old.curb-width=24 in&old.curb-length=30 in&new.curb-width=24-1/2 in&new.curb-length=30-1/2 in&raceway.length=6 ft")
	listed(t, "all told", f,
		"bring 1 fan U-18 210 lb | replaces",
		"bring 9 ft gasket | seal",
		"bring 1 shims | level",
		"bring 2 belt A50 51.3 in | belt-entered",
		"keep 1 motor-sheave 3 turns | sheave-set",
		"bring 1 reducing-bushing 3/4 1/2 wet | joint",
		"bring 2 connector 1/2 1/2 LFMC wet | joint far-end",
		"bring 6 ft conduit 1/2 LFMC | conduit-new",
		"bring 2 strap 1/2 LFMC | held",
		"keep 3 wire 12 THWN-2 | wire-passes",
		"keep 1 ground-wire 12 THWN-2 | ground-passes",
		"bring 4 wire-connector 12 wet | joints",
	)
	for _, m := range sheet.Materials(f) {
		if !m.Settled() {
			t.Errorf("%s is not settled", m.Thing)
		}
	}
}

// Of a fan of which nothing is known only what is wanted is said, and no figure.
func TestMaterialsOfNothing(t *testing.T) {
	f := record.NewFan()
	listed(t, "nothing", f,
		"bring 1 fan | replaces | new.model new.weight",
		"unsure curb-adapter | curb-unknown | new.curb-width old.curb-width new.curb-length old.curb-length",
		"bring gasket | seal | old.curb-width old.curb-length",
		"bring 1 shims | level",
		"bring belt | belt-length | new.sheave new.fan-sheave new.center-distance new.section new.belts",
		"unsure motor-sheave | sheave-unknown | new.sheave new.motor-speed new.fan-sheave",
		"unsure fittings | joint | opening.kind opening.size raceway.conduit raceway.size",
		"unsure wire | wire-unknown | !",
	)
	set(t, f, "supply", "direct")
	has(t, "on its motor's shaft", f, "no belt", "no motor-sheave")
}

func TestMaterials(t *testing.T) {
	for _, c := range []struct {
		name string
		f    *record.Fan
		want []string
	}{
		// The base is 24 in inside, 1/4 smaller than the curb, taped to 1/16 both.
		{"a base that does not go over", demoRoof(t, "&old.curb-width=24-1/4 in&old.curb-length=24 in&new.curb-width=24 in&new.curb-length=24-1/2 in"),
			[]string{"bring 1 curb-adapter 24.25 in 24 in | curb-over"}},
		{"a base with too much room one way, the other not told", demoRoof(t, "&old.curb-width=22 in&new.curb-width=24 in"),
			[]string{"bring 1 curb-adapter 22 in | curb-loose | old.curb-length new.curb-length"}},
		{"two belts side by side", demoRoof(t, "&new.belts=2"), []string{"bring 4 belt A50 51.3 in | belt-entered"}},
		{"a belt that is none", demoRoof(t, "&new.belt-number=A"), []string{"bring 2 belt A | belt-entered | !new.belt-number"}},
		// At 3 turns, 3.4 in over 8.4 at 15-3/4 in: 31.5 + π/2 · 11.8 + 5²/63 = 50.43 in (two
		// terms). A49, 50.3 in, moves the base least; A56 takes 3.4 in of 1-1/4.
		{"a belt that the base does not reach", demoRoof(t, "&new.belt-number=A56"), []string{"bring 2 belt A49 50.3 in | belt-instead"}},
		{"no belt told", demoRoof(t, "&new.belt-number="), []string{"bring 2 belt A49 50.3 in | belt-length"}},
		{"no belt told, nor the travel", demoRoof(t, "&new.belt-number=&new.travel-away="), []string{"bring 2 belt A 50.43 in | belt-length | new.travel-away"}},
		// 8.4 · 712 / (1800 − 0.575 · 50) = 3.377 in.
		{"a fixed sheave that is too large", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=4 in&new.motor-bore=7/8 in&new.motor-key=3/16 in"),
			[]string{"bring 1 motor-sheave 3.38 in 0.88 in 0.19 in | sheave-buy"}},
		{"a fixed sheave that is too large, its shaft not told", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=4 in"),
			[]string{"bring 1 motor-sheave 3.38 in | sheave-buy | new.motor-bore new.motor-key"}},
		{"a fixed sheave that serves", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=3.4 in"), []string{"keep 1 motor-sheave | sheave-fixed"}},
		// 3.4 in gives 717 rpm, 0.7 % above the target: the old one serves.
		{"the old sheave serves, bored larger", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=4 in&old.section=A&old.motor-sheave=3.4 in&old.motor-bore=1-1/8 in&new.motor-bore=7/8 in&new.motor-key=3/16 in"),
			[]string{"keep 1 motor-sheave 3.4 in | sheave-old", "bring 1 shaft-bushing 0.88 in 0.19 in 1.13 in | bores-differ"}},
		{"the old sheave serves as it is", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=4 in&old.section=A&old.motor-sheave=3.4 in&old.motor-bore=7/8 in&new.motor-bore=7/8 in"),
			[]string{"keep 1 motor-sheave 3.4 in | sheave-old", "no shaft-bushing"}},
		{"the old sheave is bored smaller", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=4 in&old.section=A&old.motor-sheave=3.4 in&old.motor-bore=5/8 in&new.motor-bore=7/8 in&new.motor-key=3/16 in"),
			[]string{"bring 1 motor-sheave 3.38 in 0.88 in 0.19 in | sheave-buy", "no shaft-bushing"}},
		{"the old sheave is of another section", demoRoof(t, "&new.sheave=fixed&new.motor-sheave=4 in&old.section=B&old.motor-sheave=3.4 in&old.motor-bore=7/8 in&new.motor-bore=7/8 in&new.motor-key=3/16 in"),
			[]string{"bring 1 motor-sheave 3.38 in 0.88 in 0.19 in | sheave-buy"}},
		// Under 8.4 in the motor sheave would be 1.9 in, less than a motor of 2 hp at 1750 rpm
		// takes (NEMA MG 1): the fan sheave over 3.5 in, half open, is 3.5 · 1771.25/400.
		{"a target below the slowest setting", demoRoof(t, "&target.speed=400 rpm&new.fan-bore=1 in&new.fan-key=1/4 in"),
			[]string{"bring 1 fan-sheave 15.5 in 1 in 0.25 in | sheave-buy", "no motor-sheave", "bring 2 belt A62 63.3 in | belt-instead"}}, // 31.5 + π/2 · 19 + 12²/63 = 63.6 in
		{"the old fan sheave is a little smaller", demoRoof(t, "&target.speed=400 rpm&old.section=A&old.fan-sheave=15.25 in&old.fan-bore=1 in&new.fan-bore=1 in"),
			[]string{"keep 1 fan-sheave 15.25 in | sheave-old", "no shaft-bushing"}}, // 1.6 % faster
		{"the old fan sheave is a little larger", demoRoof(t, "&target.speed=400 rpm&old.section=A&old.fan-sheave=15.75 in&old.fan-bore=1 in&new.fan-bore=1 in&new.fan-key=1/4 in"),
			[]string{"bring 1 fan-sheave 15.5 in 1 in 0.25 in | sheave-buy"}}, // 1.6 % below the target
		{"a target that must not be run", demoRoof(t, "&target.speed=1100 rpm"), []string{"no motor-sheave", "no fan-sheave"}}, // the wheel's 1080
		{"settle the reading first", demoRoof(t, "&trial.a.turns=3 turns&trial.a.speed=600 rpm"), []string{"keep 1 motor-sheave | sheave-settle"}},

		// 21 ft are three lengths of 10, joined by two couplings; straps at 3, 13 and 18 ft
		// (358.30). A 3/4 hub outdoors takes a bushing and a connector; one more at the far end.
		{"rigid conduit", demoRoof(t, "&raceway.conduit=EMT&raceway.length=21 ft"), []string{
			"bring 3 21 ft conduit 1/2 EMT | conduit-new", "bring 2 coupling 1/2 1/2 EMT wet | lengths",
			"bring 3 strap 1/2 EMT | held", "bring 2 connector 1/2 1/2 EMT wet | joint far-end"}},
		{"threaded conduit has no connector", demoRoof(t, "&raceway.conduit=RMC&raceway.size=3/4&raceway.length=8 ft"), []string{
			"bring 1 8 ft conduit 3/4 RMC | conduit-new", "bring 2 strap 3/4 RMC | held", "no connector", "no coupling"}},
		{"3 ft of flexible conduit hang free", demoRoof(t, "&raceway.length=3 ft"), []string{"bring 3 ft conduit 1/2 LFMC | conduit-new", "no strap"}},
		{"a length that is none", demoRoof(t, "&raceway.length=!long"), []string{"bring conduit 1/2 LFMC | conduit-new | !raceway.length", "no strap"}},
		// D21: three of 8 and a ground of 10 fill 41.7 % of 1/2, and go into 3/4 (D22).
		{"a conduit too small", demoRoof(t, "&wire.w1.size=8&wire.w2.size=10&raceway.length=6 ft"), []string{
			"bring 6 ft conduit 3/4 LFMC | fill | raceway.size", "unsure fittings | fill | raceway.size", "no strap", "no connector"}},
		// 250.97: over 250 V to ground, at a knockout with rings. 5 hp at 460 V are 7.6 A, a
		// breaker of 20 A at most: a jumper of 12 (Table 250.122).
		{"bonding", demoRoof(t, "&opening.kind=ring-knockout&opening.size=1/2&new.motor-power=5 hp&new.motor-volts=460 V"), []string{"bring 1 bonding-jumper 12 | bond", "bring 1 locknut 1/2 1/2 wet | joint"}},
		{"bonding not known", demoRoof(t, "&opening.kind=ring-knockout&opening.size=1/2&new.motor-volts="), []string{"unsure bonding-jumper | bond | new.motor-volts"}},
		// 300.4(G): from 4 AWG on.
		{"large wire", demoRoof(t, "&wire.w1.size=4&raceway.size=1-1/4&opening.size=1-1/4"), []string{"bring 1 insulating-bushing 1-1/4 | large-wire"}},

		// Table 314.16(A): 12.5 in3 for eight allowances of 2.25 and none; 18 in3 is the least box.
		{"a box too small", demoRoof(t, "&box.size=octagonal 4 x 1-1/4&box.devices=0&box.clamps=no&wire.w1.box-count=6&wire.w2.box-count=2"), []string{"bring 1 box octagonal 4 x 2-1/8 21.5 in3 | box-small"}},
		{"a box that holds", demoRoof(t, "&box.size=square 4 x 1-1/2&box.devices=0&box.clamps=no"), []string{"keep 1 box square 4 x 1-1/2 21 in3 | box-holds"}},
		{"a box half told", demoRoof(t, "&box.size=square 4 x 1-1/2"), []string{"unsure box | box-unknown | box.devices box.clamps"}},

		// The plate asks for 25 A: 10 THWN-2 has 30 at 60 °C terminals. Three of 40 ft and
		// 12 in at each end are 126 ft. The ground, listed, is 12 for a breaker of 20 A.
		{"wire too small", demoRoof(t, "&new.minimum-circuit-ampacity=25 A&circuit.length=40 ft"), []string{
			"bring 3 126 ft wire 10 THWN-2 | ampacity cut", "bring 3 wire-connector 10 wet | joints", "bring 1 wire-connector 12 wet | joints"}},
		{"wire too small, how long is not told", demoRoof(t, "&new.minimum-circuit-ampacity=25 A"), []string{"bring 3 wire 10 THWN-2 | ampacity | circuit.length"}},
		{"wire too small, only the new conduit's length told", demoRoof(t, "&new.minimum-circuit-ampacity=25 A&raceway.length=6 ft"), []string{"bring 3 24 ft wire 10 THWN-2 | ampacity cut"}},
		{"wire for dry places", demoRoof(t, "&wire.w1.insulation=THHN&circuit.length=40 ft"), []string{"bring 3 126 ft wire | dry-only cut | wire.w1.insulation"}},
		{"a ground for dry places", demoRoof(t, "&wire.w2.insulation=THHN&circuit.length=40 ft&circuit.device-rating=20 A"), []string{"bring 1 42 ft ground-wire 12 | dry-only cut", "keep 3 wire 12 THWN-2 | wire-passes"}},
		{"wire smaller than any motor's", demoRoof(t, "&wire.w1.size=16&circuit.length=40 ft"), []string{"bring 3 126 ft wire 14 THWN-2 | least-wire cut"}},
		{"wire that the heat leaves nothing", demoRoof(t, "&wire.w1.insulation=TW&hottest-air=60C&circuit.length=40 ft"), []string{"bring 3 126 ft wire | too-hot cut | wire.w1.insulation"}},
		{"threaded conduit in a knockout", demoRoof(t, "&opening.kind=knockout&opening.size=3/4&raceway.conduit=RMC&raceway.size=3/4&raceway.place=indoors"), []string{"bring 2 locknut 3/4 3/4 | joint", "bring 1 insulating-bushing 3/4 | joint"}},
		// 348.20(A), 350.20(A): 3/8 up to 6 ft; the least that takes three of 12 and a ground is 1/2.
		{"3/8 too long", demoRoof(t, "&raceway.size=3/8&raceway.length=10 ft"), []string{
			"bring 10 ft conduit 1/2 LFMC | small-long | raceway.size", "unsure fittings | small-long | raceway.size", "no connector"}},
		{"short 3/8", demoRoof(t, "&raceway.size=3/8&raceway.length=5 ft"), []string{"bring 5 ft conduit 3/8 LFMC | conduit-new"}},
		// 250.122(B): 12 would carry it, 10 lies there; 12 · 10380/6530 is 10 (Table 8).
		{"a ground not raised", demoRoof(t, "&wire.w1.size=10&new.minimum-circuit-ampacity=18 A&circuit.device-rating=20 A&circuit.length=40 ft"), []string{
			"bring 1 42 ft ground-wire 10 | ground-raised cut", "keep 3 wire 10 THWN-2 | wire-passes"}},
		{"a ground without print", demoRoof(t, "&wire.w2.insulation=unmarked&circuit.device-rating=20 A"), []string{"unsure ground-wire | ground-unknown | wire.w2.insulation"}},
		{"no ground wire, and it tips up", demoRoof(t, "&wire.w2.where=box&new.hinge=far&circuit.device-rating=20 A&circuit.length=40 ft"), []string{"bring 1 42 ft ground-wire 12 | no-ground-wire cut"}},
		{"wire not told", demoRoof(t, "&circuit.material="), []string{"unsure wire | wire-unknown | circuit.material"}},
		// A breaker of 20 A: a ground of 12 (Table 250.122); 42 ft of it.
		{"no ground in a conduit that carries none", demoRoof(t, "&raceway.conduit=LFNC-B&wire.w2.role=circuit&wire.w2.where=box&circuit.length=40 ft&circuit.device-rating=20 A"), []string{
			"bring 1 42 ft ground-wire 12 | no-ground-wire cut", "bring 4 wire-connector 12 wet | joints"}},
		{"no ground in a conduit that flexes", demoRoof(t, "&wire.w2.where=box&circuit.device-rating=20 A"), []string{"bring 1 ground-wire 12 | no-ground-wire | circuit.length"}},
		{"a smaller ground", demoRoof(t, "&wire.w2.size=14&circuit.device-rating=20 A&circuit.length=40 ft"), []string{"bring 1 42 ft ground-wire 12 | equipment-ground cut", "bring 4 wire-connector 12 wet | joints"}},
		{"no ground in a metal conduit", demoRoof(t, "&raceway.conduit=EMT&wire.w2.where=box"), []string{"no ground-wire"}}, // 250.118(4): it is one itself
	} {
		has(t, c.name, c.f, c.want...)
	}
}

// One list is its own sum; two are twice the counts and lengths of one.
func TestSum(t *testing.T) {
	full := "&raceway.length=6 ft&old.curb-width=24 in&old.curb-length=24 in&new.minimum-circuit-ampacity=25 A&circuit.length=40 ft"
	one := sheet.Materials(demoRoof(t, full))
	if again := sheet.Sum([][]sheet.Material{one}); !reflect.DeepEqual(one, again) {
		t.Errorf("the sum of one list differs:\n%+v\n%+v", one, again)
	}
	twin := demoRoof(t, full)
	both := sheet.Sum([][]sheet.Material{one, sheet.Materials(twin)})
	if len(both) != len(one) {
		t.Fatalf("%d lines of two alike, %d of one", len(both), len(one))
	}
	for i, m := range both {
		if m.Spec != one[i].Spec || m.Count != 2*one[i].Count || math.Abs(float64(m.Amount.V-2*one[i].Amount.V)) > 1e-9 || len(m.Wanted) != 2*len(one[i].Wanted) || len(m.Reasons) != len(one[i].Reasons) {
			t.Errorf("%+v\nof two, of one\n%+v", m, one[i])
		}
	}
	set(t, twin, "new.belt-number", "A49", "raceway.size", "3/4")
	list := lines(twin, sheet.Sum([][]sheet.Material{one, sheet.Materials(twin), nil}))
	order := strings.Join(list, "\n")
	for _, want := range []string{"bring 2 belt A50 51.3 in | belt-entered", "bring 2 belt A49 50.3 in | belt-entered", "bring 6 ft conduit 1/2 LFMC", "bring 6 ft conduit 3/4 LFMC", "bring 16 ft gasket"} {
		if !strings.Contains(order, want) {
			t.Errorf("no %s in\n%s", want, order)
		}
	}
	if a, b, c := strings.Index(order, "belt A50"), strings.Index(order, "belt A49"), strings.Index(order, "motor-sheave"); a > b || b > c {
		t.Errorf("lines of a thing don't stand together:\n%s", order)
	}
	if sum := sheet.Sum(nil); len(sum) != 0 {
		t.Errorf("the sum of nothing is %+v", sum)
	}
}

// More conduit never takes fewer straps, couplings or feet of anything.
func TestMoreConduitNeverTakesLess(t *testing.T) {
	for _, conduit := range []string{"EMT", "RMC", "PVC-40", "LFMC", "LFNC-B", "FMC"} {
		before := map[sheet.Thing]sheet.Material{}
		for length := 1; length <= 60; length++ {
			f := demoRoof(t, "&raceway.conduit="+conduit+"&raceway.length="+strconv.Itoa(length)+" ft")
			for _, m := range sheet.Materials(f) {
				if old := before[m.Thing]; m.Count < old.Count || m.Amount.V < old.Amount.V-1e-9 {
					t.Errorf("%s of %d ft: %d, %v of %s after %d, %v", conduit, length, m.Count, m.Amount.V, m.Thing, old.Count, old.Amount.V)
				}
				before[m.Thing] = m
			}
		}
	}
}

// Every thing that a list can hold has its place in the order, fittings included.
func TestThingsAreAll(t *testing.T) {
	seen := map[sheet.Thing]bool{}
	for _, thing := range sheet.Things() {
		if seen[thing] {
			t.Errorf("%s is listed twice", thing)
		}
		seen[thing] = true
	}
	for _, kind := range []raceway.PartKind{raceway.Connector, raceway.Locknut, raceway.SealedHub, raceway.ReducingBushing, raceway.Enlarger, raceway.ReducingWashers, raceway.Coupling, raceway.CloseNipple} {
		if !seen[sheet.Thing(kind)] {
			t.Errorf("%s has no place in the order", kind)
		}
	}
}

// wellListed reports a line that says what it can't know, or says nothing.
func wellListed(t *testing.T, list []sheet.Material) {
	t.Helper()
	for _, m := range list {
		open := len(m.Wanted) > 0 || m.Fault != nil
		if !slices.Contains(sheet.Things(), m.Thing) || len(m.Reasons) == 0 {
			t.Errorf("%+v has no place or no reason", m)
		}
		if m.Count < 0 || m.Amount.Known != (m.Amount.V > 0) {
			t.Errorf("%s: %d, %+v", m.Thing, m.Count, m.Amount)
		}
		switch {
		case m.Plan == sheet.Unsure && (m.Count > 0 || m.Amount.Known || !open):
			t.Errorf("not known, and says %d, %+v, with %d wanted: %+v", m.Count, m.Amount, len(m.Wanted), m.Spec)
		case m.Plan == sheet.Bring && m.Count == 0 && !m.Amount.Known && !open:
			t.Errorf("none of %+v, for no reason", m.Spec)
		}
		for _, d := range []sheet.Maybe[unit.Length]{m.Pitch, m.Bore, m.Key, m.Inside, m.Length, m.Across, m.Along} {
			if d.Known != (d.V > 0) {
				t.Errorf("%s has a figure of %+v", m.Thing, d)
			}
		}
		if m.Weight.Known != (m.Weight.V > 0) || m.Volume.Known != (m.Volume.V > 0) || m.Turns.V < 0 {
			t.Errorf("%s: %+v, %+v, %+v", m.Thing, m.Weight, m.Volume, m.Turns)
		}
		for _, r := range m.Reasons {
			if _, ok := source.Lookup(r.Method); r.Method != "" && !ok {
				t.Errorf("%s: no method %s", r.Key, r.Method)
			}
		}
	}
	if again := sheet.Sum([][]sheet.Material{list}); !reflect.DeepEqual(list, again) {
		t.Error("the sum of one list differs from it")
	}
}

// Flexible metal conduit is listed for no roof (348.12): liquidtight goes there, of the
// same size or of the one that takes the conductors, and its fittings with it. Indoors it
// stays. Ten of 12 THWN-2 at 0.0133 in2 are more than 40 % of the 0.314 in2 of 1/2, and not of the
// 0.541 in2 of 3/4 (Chapter 9, Tables 4 and 5).
func TestNoDryConduitIsListedOutdoors(t *testing.T) {
	const dry = "&raceway.conduit=FMC&raceway.length=6 ft"
	has(t, "FMC outdoors", demoRoof(t, dry), "bring 6 ft conduit 1/2 LFMC | conduit-wet | raceway.conduit", "unsure fittings | conduit-wet | raceway.conduit", "no FMC", "no connector", "no strap")
	has(t, "FMC, place not said", demoRoof(t, dry+"&raceway.place="), "bring 6 ft conduit 1/2 LFMC | conduit-wet | raceway.conduit", "no FMC")
	has(t, "FMC, length not said", demoRoof(t, "&raceway.conduit=FMC"), "bring conduit 1/2 LFMC | conduit-wet | raceway.conduit raceway.length", "no FMC")
	has(t, "FMC too small for its wire", demoRoof(t, dry+"&wire.w1.count=9"), "bring 6 ft conduit 3/4 LFMC | conduit-wet | raceway.conduit", "no FMC")
	has(t, "FMC indoors", demoRoof(t, dry+"&raceway.place=indoors"), "bring 6 ft conduit 1/2 FMC | conduit-new", "no LFMC", "no conduit-wet")
	has(t, "FMC at the opening", demoRoof(t, "&opening.kind=conduit&opening.conduit=FMC&opening.size=3/4&raceway.length=6 ft"),
		"bring conduit 3/4 LFMC | conduit-wet | opening.conduit", "unsure fittings | conduit-wet | opening.conduit", "bring 6 ft conduit 1/2 LFMC | conduit-new", "no FMC")
}
