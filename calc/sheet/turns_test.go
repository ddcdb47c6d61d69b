package sheet_test

import (
	"math"
	"reflect"
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

const (
	in   = 0.0254
	watt = 745.69987158227022 // of a horsepower: 550 · 0.3048 · 0.45359237 · 9.80665
)

// bench is a new drive without any load known: 1750 rpm, 4.0 in closed and 3.0
// in at 5 turns over 8.4 in.
const bench = "supply=three-phase&same-wheel=yes&target.speed=700rpm&new.motor-speed=1750rpm&new.motor-power=2hp&new.motor-amps=6.6A" +
	"&new.section=A&new.sheave=adjustable&new.anchor-turns=0&new.anchor-pitch=4.0in&new.second-anchor-turns=5&new.second-anchor-pitch=3.0in" +
	"&new.fan-sheave=8.4in&new.turns=0&new.center-distance=15-3/4in&new.travel-toward=1in&new.travel-away=1-1/4in&new.wheel-max-speed=1080rpm"

// length is a belt's around two sheaves: straight runs and arcs laid together.
func length(d, D, C float64) float64 {
	a := math.Asin((D - d) / (2 * C))
	straight := math.Sqrt(C*C - (D-d)*(D-d)/4)
	return 2*straight + d/2*(math.Pi-2*a) + D/2*(math.Pi+2*a)
}

// center is the distance at which a belt of length L lies tight, by halving.
func center(d, D, L float64) float64 {
	low, high := (d+D)/2, L
	for range 200 {
		if mid := (low + high) / 2; length(d, D, mid) > L {
			high = mid
		} else {
			low = mid
		}
	}
	return low
}

func TestTurnsTable(t *testing.T) {
	f := fan(t, bench)
	table := sheet.TurnsTable(f)
	if len(table.Rows) != 13 { // through the usual 5 turns and one more
		t.Fatalf("%d rows", len(table.Rows))
	}
	L := length(4.0, 8.4, 15.75)
	for i, r := range table.Rows {
		turns := float64(i) / 2
		d := 4.0 - 0.2*turns
		n := 1750 * d / 8.4
		near(t, "turns", r.Turns, turns)
		near(t, "pitch", r.Pitch, d*in)
		near(t, "speed", r.Speed, n)
		near(t, "airflow", r.OfTarget.V, n/700)
		near(t, "power", r.Power.V, n/700*n/700*n/700)
		near(t, "base", r.Base.V, (center(d, 8.4, L)-15.75)*in)
		near(t, "shift", r.Shift, turns*in/16/2) // half of the flange's travel, 16 threads to the inch
		if !r.OfTarget.Known || !r.Power.Known || !r.Base.Known || r.AmpsLow.Known || r.LoadHigh.Known {
			t.Errorf("%v turns: %+v", turns, r)
		}
	}
	// 3.36 in would be 700 rpm: 3 turns give 3.4 in and 708.33 rpm.
	if table.Set != 6 || table.Rows[6].Marks&(sheet.MarkSet|sheet.MarkTarget) != sheet.MarkSet|sheet.MarkTarget {
		t.Errorf("row to set is %d", table.Set)
	}
	if table.Now != 0 || table.Rows[0].Marks != sheet.MarkShipped|sheet.MarkNow {
		t.Errorf("now is row %d, marks %b", table.Now, table.Rows[0].Marks)
	}
	near(t, "band", table.Band, 50./1750) // its load unknown, the motor may turn up to 1800 rpm
}

func TestTurnsTableMarksAndMoves(t *testing.T) {
	f := fan(t, bench+"&old.speed=745rpm&trial.a.turns=2.5")
	table := sheet.TurnsTable(f)
	for i, r := range table.Rows {
		want := map[int]sheet.Mark{0: sheet.MarkShipped, 5: sheet.MarkNow, 6: sheet.MarkSet | sheet.MarkTarget}[i]
		// 745 rpm lies between 750 at 2 turns and 729.2 at 2½.
		if i == 4 {
			want = sheet.MarkFound
		}
		if r.Marks != want {
			t.Errorf("%v turns is marked %b, want %b", r.Turns, r.Marks, want)
		}
	}
	L, now := length(4.0, 8.4, 15.75), center(3.5, 8.4, length(4.0, 8.4, 15.75))
	near(t, "base from now", table.Rows[6].Base.V, (center(3.4, 8.4, L)-now)*in)
	near(t, "base closed", table.Rows[0].Base.V, (15.75-now)*in)
	near(t, "shift from now", table.Rows[4].Shift, -in/64)

	set(t, f, "trial.a.turns", "2.25 turns", "new.flange-lead", "1/20 in")
	if table = sheet.TurnsTable(f); table.Now != 5 || table.Rows[5].Turns != 2.25 || len(table.Rows) != 14 {
		t.Errorf("2¼ turns is row %d", table.Now)
	}
	near(t, "shift at 20 threads", table.Rows[6].Shift, in/20/2/4)
	if m, _ := sheet.NextMove(f, table); m.Do != sheet.DoOpen || m.From != 2.25 || m.Turns != 0.75 {
		t.Errorf("%+v", m)
	}
}

func rulesOf(r sheet.Row) map[sheet.Rule]sheet.Level {
	m := map[sheet.Rule]sheet.Level{}
	for _, v := range r.Verdicts {
		m[v.Rule] = v.Level
	}
	return m
}

func TestRowsAreJudged(t *testing.T) {
	f := fan(t, bench)
	rows := sheet.TurnsTable(f).Rows
	// Amps are not known, so that no row is within.
	for _, r := range rows {
		if got := rulesOf(r)[sheet.RulePlateAmps]; got != sheet.Unjudged {
			t.Errorf("%v turns: amps are %v", r.Turns, got)
		}
	}
	if got := rulesOf(rows[10]); len(got) != 2 || got[sheet.RuleBelow] != sheet.Watch {
		t.Errorf("5 turns: %v", got)
	}
	// 5½ turns are past the usual 5, and 2.9 in under the section's least 3.0.
	if got := rulesOf(rows[11]); got[sheet.RuleUsualTurns] != sheet.Watch || got[sheet.RuleSectionSheave] != sheet.Watch {
		t.Errorf("5½ turns: %v", got)
	}
	set(t, f, "new.wheel-max-speed", "")
	if got := rulesOf(sheet.TurnsTable(f).Rows[6]); got[sheet.RuleWheelMax] != sheet.Unjudged {
		t.Errorf("unread wheel: %v", got)
	}
	// 833.3 rpm closed, 812.5 at half a turn, each less 4.8 or 4.6; and with its load
	// unknown the motor may turn at up to 1800, no faster: 791.7 at a turn could be 814.3.
	set(t, f, "new.wheel-max-speed", "815 rpm")
	for power, levels := range map[string][]sheet.Level{
		"":       {sheet.Stop, sheet.Unjudged, sheet.Within, sheet.Within},
		"1.2 hp": {sheet.Stop, sheet.Unjudged, sheet.Within, sheet.Within},
	} {
		set(t, f, "target.power", power)
		for i, r := range sheet.TurnsTable(f).Rows[:4] {
			if got := rulesOf(r)[sheet.RuleWheelMax]; got != levels[i] {
				t.Errorf("power %q, row %d: wheel is %v, want %v", power, i, got, levels[i])
			}
		}
	}
	set(t, f, "target.power", "")
	// 3.3 in must go 0.5 in away, 1 in is left; then 0.4 in.
	set(t, f, "new.travel-away", "0.4 in; within 0 in")
	rows = sheet.TurnsTable(f).Rows
	for i, r := range rows {
		want := sheet.Within
		if float64(r.Base.V) > 0.4*in {
			want = sheet.Watch
		}
		if got := rulesOf(r)[sheet.RuleTravel]; got != want {
			t.Errorf("row %d moves %v: %v, want %v", i, r.Base.V, got, want)
		}
	}
	// Travel is measured from where the base stood, not from where it stands.
	set(t, f, "trial.a.turns", "2.5 turns")
	for i, r := range sheet.TurnsTable(f).Rows {
		want := sheet.Within
		if center(4-0.1*float64(i), 8.4, length(4.0, 8.4, 15.75))-15.75 > 0.4 {
			want = sheet.Watch
		}
		if got := rulesOf(r)[sheet.RuleTravel]; got != want {
			t.Errorf("row %d: %v, want %v", i, got, want)
		}
	}
	f.RemoveTrial("a")
	set(t, f, "new.travel-away", "?")
	if got := rulesOf(sheet.TurnsTable(f).Rows[6])[sheet.RuleTravel]; got != sheet.Unjudged {
		t.Errorf("unread travel: %v", got)
	}
	set(t, f, "new.center-distance", "")
	rows = sheet.TurnsTable(f).Rows
	if got := rulesOf(rows[6])[sheet.RuleTravel]; got != sheet.Unjudged || rows[6].Base.Known {
		t.Errorf("unread center: %v", got)
	}
	if _, judged := rulesOf(rows[0])[sheet.RuleTravel]; judged {
		t.Error("staying asks for travel")
	}
	// B belts are commonly not rated fully closed.
	set(t, f, "new.section", "B")
	rows = sheet.TurnsTable(f).Rows
	if len(rows) != 15 || rulesOf(rows[1])[sheet.RuleLeastTurns] != sheet.Stop || rulesOf(rows[2])[sheet.RuleLeastTurns] != sheet.Within {
		t.Errorf("%d rows: %v %v", len(rows), rulesOf(rows[1]), rulesOf(rows[2]))
	}
	// An A belt in a combination groove wants 3.6 in (IP-20, Table 9).
	f = fan(t, bench+"&new.groove=combination")
	rows = sheet.TurnsTable(f).Rows
	if rulesOf(rows[4])[sheet.RuleSectionSheave] != sheet.Within || rulesOf(rows[5])[sheet.RuleSectionSheave] != sheet.Watch {
		t.Errorf("%v %v", rulesOf(rows[4]), rulesOf(rows[5]))
	}
	// 6500 ft/min of belt: a 3450 rpm motor on 7.3 in.
	f = fan(t, bench)
	set(t, f, "new.motor-speed", "3450 rpm", "new.anchor-pitch", "7.3 in", "new.second-anchor-pitch", "7.0 in")
	rows = sheet.TurnsTable(f).Rows
	for i, r := range rows {
		want := sheet.Within
		if math.Pi*(7.3-0.06*float64(i)/2)/12*3450 > 6500 {
			want = sheet.Stop
		}
		if got := rulesOf(r)[sheet.RuleBeltSpeed]; got != want {
			t.Errorf("row %d: belt speed is %v, want %v", i, got, want)
		}
	}
}

func TestRowToSet(t *testing.T) {
	for _, c := range []struct {
		name    string
		with    []string
		row     int
		over    float64
		verdict sheet.Level
		do      sheet.Do
	}{
		{"at the target exactly", []string{"target.speed", "750 rpm"}, 4, 0, sheet.Within, sheet.DoOpen},
		{"a hair above", []string{"target.speed", "749.99 rpm"}, 4, 750/749.99 - 1, sheet.Within, sheet.DoOpen},
		// The nearest counts, also one that stays under by no more than 1 % and its own band.
		{"a hair below", []string{"target.speed", "750.01 rpm"}, 4, 750/750.01 - 1, sheet.Within, sheet.DoOpen},
		{"0.99 % below", []string{"target.speed", "757.5 rpm"}, 4, 750/757.5 - 1, sheet.Within, sheet.DoOpen},
		{"1.01 % below", []string{"target.speed", "757.7 rpm"}, 3, 1750*3.7/8.4/757.7 - 1, sheet.Within, sheet.DoOpen},
		{"725 and 745 for 728", []string{"target.speed", "728 rpm", "new.anchor-pitch", "3.5763 in", "new.second-anchor-pitch", "2.6163 in"}, 1, 1750*(3.5763-0.096)/8.4/728 - 1, sheet.Within, sheet.DoOpen},
		{"none may be over", []string{"target.over", "0 %"}, 6, 1750*3.4/8.4/700 - 1, sheet.Watch, sheet.DoOpen},
		{"closed already", []string{"target.speed", "826 rpm"}, 0, 1750*4/8.4/826 - 1, sheet.Within, sheet.DoStay},
		{"out of reach above", []string{"target.speed", "842 rpm"}, -1, 0, sheet.Unjudged, sheet.DoNone},
		{"out of reach below", []string{"target.speed", "550 rpm"}, -1, 0, sheet.Unjudged, sheet.DoNone},
		// The slowest is half a turn past the usual five: 1750 · 2.9/8.4 = 604.2 rpm.
		{"5.01 % under the slowest", []string{"target.speed", "575.3 rpm"}, -1, 0, sheet.Unjudged, sheet.DoNone},
		{"4.99 % under the slowest", []string{"target.speed", "575.5 rpm"}, 11, 1750*2.9/8.4/575.5 - 1, sheet.Within, sheet.DoOpen},
		{"just above the slowest", []string{"target.speed", "590 rpm"}, 11, 1750*2.9/8.4/590 - 1, sheet.Within, sheet.DoOpen},
		{"the wheel forbids it", []string{"new.wheel-max-speed", "700 rpm"}, -1, 0, sheet.Unjudged, sheet.DoNone},
	} {
		f := fan(t, bench)
		set(t, f, c.with...)
		table := sheet.TurnsTable(f)
		v := sheet.SettingVerdict(f, table)
		m, wanted := sheet.NextMove(f, table)
		if table.Set != c.row || v.Level != c.verdict || m.Do != c.do || wanted != nil {
			t.Errorf("%s: row %d, %v, %s, wanted %v", c.name, table.Set, v.Level, m.Do, wanted)
		}
		if c.row >= 0 {
			near(t, c.name, m.Over, c.over)
			near(t, c.name, m.To, float64(c.row)/2)
			near(t, c.name, v.Value.Base, c.over)
		}
	}
}

func TestNextMove(t *testing.T) {
	f := fan(t, bench+"&trial.a.turns=4.5")
	m, _ := sheet.NextMove(f, sheet.TurnsTable(f))
	if m.Do != sheet.DoClose || m.From != 4.5 || m.To != 3 || m.Turns != 1.5 || !m.Stepwise {
		t.Errorf("%+v", m)
	}
	set(t, f, "trial.a.turns", "3.5 turns")
	if m, _ = sheet.NextMove(f, sheet.TurnsTable(f)); m.Do != sheet.DoClose || m.Turns != 0.5 || m.Stepwise {
		t.Errorf("half a turn needs no reading between: %+v", m)
	}
	set(t, f, "trial.a.turns", "3 turns")
	if m, _ = sheet.NextMove(f, sheet.TurnsTable(f)); m.Do != sheet.DoStay || m.Turns != 0 {
		t.Errorf("%+v", m)
	}
	for key, first := range map[string]string{"new.turns": "new.turns", "target.speed": "target.speed", "new.fan-sheave": "new.fan-sheave", "new.sheave": "new.sheave", "new.second-anchor-pitch": "new.second-anchor-pitch"} {
		f := fan(t, bench)
		set(t, f, key, "")
		m, wanted := sheet.NextMove(f, sheet.TurnsTable(f))
		if m.Do != sheet.DoAsk || len(wanted) == 0 || f.KeyOf(wanted[0]) != first {
			t.Errorf("without %s: %s, wanted %v", key, m.Do, wanted)
		}
	}
	f = fan(t, bench)
	set(t, f, "new.sheave", "fixed", "new.motor-sheave", "3.4 in")
	if m, _ := sheet.NextMove(f, sheet.TurnsTable(f)); m.Do != sheet.DoFixed || math.Abs(float64(m.Over)-(1750*3.4/8.4/700-1)) > 1e-9 {
		t.Errorf("%+v", m)
	}
}

func TestAnchorsThatContradict(t *testing.T) {
	for pitch, key := range map[string]string{"4.1 in": "new.second-anchor-pitch", "4.0 in": "new.second-anchor-pitch"} {
		f := fan(t, bench)
		set(t, f, "new.second-anchor-pitch", pitch)
		table := sheet.TurnsTable(f)
		if table.Speed.Known() || table.Speed.Fault == nil || f.KeyOf(table.Speed.Fault.Place) != key || len(table.Rows) != 0 {
			t.Errorf("%s at 5 turns: %+v", pitch, table.Speed)
		}
	}
	f := fan(t, bench)
	set(t, f, "new.second-anchor-turns", "", "new.second-anchor-pitch", "", "new.motor-sheave", "3.4 in")
	table := sheet.TurnsTable(f)
	wants(t, f, "one anchor and a pitch", table.Speed, "new.second-anchor-turns", "new.second-anchor-pitch")
}

// A reading at one setting sets the whole table: what is wrong alike at every
// setting cancels.
func TestSetFromAReading(t *testing.T) {
	f := fan(t, bench+"&trial.a.turns=2.5&trial.a.speed=691rpm;within 0rpm")
	check := func(name string) {
		t.Helper()
		table := sheet.TurnsTable(f)
		if table.From != sheet.FromTrial || len(table.Rows) != 13 {
			t.Fatalf("%s: from %s, %d rows", name, table.From, len(table.Rows))
		}
		for i, r := range table.Rows {
			near(t, name, r.Speed, 691*(4.0-0.1*float64(i))/3.5)
		}
		if table.Set != 4 { // 3.55 in would be 700 rpm: 2 turns give 3.6 in
			t.Errorf("%s: row to set is %d", name, table.Set)
		}
	}
	check("as read")
	set(t, f, "new.fan-sheave", "12.6 in", "new.center-distance", "20 in")
	check("fan sheave half as large again")
	set(t, f, "new.motor-speed", "1725 rpm")
	check("another plate")
	set(t, f, "new.fan-sheave", "")
	check("no fan sheave")
	set(t, f, "trial.b.turns", "3 turns")
	check("set on since then")
	if m, _ := sheet.NextMove(f, sheet.TurnsTable(f)); m.Do != sheet.DoClose || m.From != 3 || m.To != 2 {
		t.Errorf("%+v", m)
	}
	f.Place("trial.a.speed").Set("!69l")
	table := sheet.TurnsTable(f)
	if table.Speed.Known() || table.Speed.Fault == nil || f.KeyOf(table.Speed.Fault.Place) != "trial.a.speed" {
		t.Errorf("garbled reading: %+v", table.Speed)
	}
}

func TestTableAtAnotherFrequency(t *testing.T) {
	f := fan(t, bench+"&target.power=1hp&new.frequency=59Hz")
	for i, r := range sheet.TurnsTable(f).Rows {
		n := float64(r.Speed)
		near(t, "speed at 59 Hz", r.Speed, (1770-50*0.5*math.Pow(n/700, 3))*(4-0.1*float64(i))/8.4)
	}
}

// Readings that no such motor can have leave its slip out.
func TestTableUnderAnImpossibleLoad(t *testing.T) {
	f := fan(t, bench+"&target.power=200hp&trial.a.turns=2&trial.a.speed=700rpm")
	table := sheet.TurnsTable(f)
	if len(table.Rows) != 13 {
		t.Fatalf("%d rows", len(table.Rows))
	}
	for i, r := range table.Rows {
		near(t, "speed", r.Speed, 700*(4-0.1*float64(i))/3.6)
	}
}

// What SheavesFor asks for reaches the target when it is put in.
func TestSheavesThatReachTheTarget(t *testing.T) {
	for name, with := range map[string][]string{
		"plate alone":   nil,
		"load known":    {"target.power", "1.15 hp"},
		"on a reading":  {"trial.a.turns", "1 turns", "trial.a.speed", "801 rpm"},
		"another motor": {"new.motor-speed", "1160 rpm"},
		"no such turns": {"new.most-turns", "4 turns"},
	} {
		f := fan(t, bench)
		set(t, f, "target.speed", "900 rpm")
		set(t, f, with...)
		s := sheet.SheavesFor(f)
		reaches := func(what, turns string, key, text string) {
			t.Helper()
			g := f.Clone()
			set(t, g, key, text)
			at := g.NewTrial() // stands at the setting that is looked at
			if at == nil {
				t.Fatal("no trial")
			}
			set(t, g, "trial."+at.ID+".turns", turns)
			table := sheet.TurnsTable(g)
			row := table.Rows[table.Now]
			if e := math.Abs(float64(row.Speed)/900 - 1); e > 2e-3 {
				t.Errorf("%s: %s %s gives %v rpm", name, what, text, row.Speed)
			}
		}
		middle := "2.5 turns"
		if name == "no such turns" {
			middle = "2 turns"
		}
		if name == "on a reading" { // the reading stays that of the sheave that was there
			n := 801 / 3.8 // for each inch of motor sheave
			near(t, name, s.Motor.Value, 900/n*in)
			d := 3.5
			near(t, name, s.Fan.Value, 8.4*d*n/900*in)
			continue
		}
		reaches("fan sheave", middle, "new.fan-sheave", text(s.Fan.Value.In(unit.Inch), "in"))
		near(t, name, s.Speed.Value, 900*8.4/4) // by 4.0 over 8.4 in
		g := f.Clone()
		set(t, g, "new.sheave", "fixed", "new.motor-sheave", text(s.Motor.Value.In(unit.Inch), "in"), "new.motor-tachometer", "")
		if n := float64(sheet.TurnsTable(g).Speed.Value); math.Abs(n/900-1) > 1e-7 { // six rounds of load and slip
			t.Errorf("%s: motor sheave %v gives %v rpm", name, s.Motor.Value.In(unit.Inch), n)
		}
	}
}

func text(x float64, symbol string) string {
	u, _ := record.NewFan().Old.MotorSheave.Kind().Unit(symbol)
	if symbol == "rpm" {
		u = record.NewFan().Old.MotorSpeed.Kind().Units[0]
	}
	return canonical(u.Base(x), u)
}

// What is left out of the table where only the row to set matters changes no move.
func TestTheRowToSetIsTheTables(t *testing.T) {
	for _, texts := range [][]string{
		nil, {"target.speed", ""}, {"target.speed", "900 rpm"}, {"target.speed", "500 rpm"}, {"new.turns", "?"}, {"new.motor-amps", "3 A"}, {"new.wheel-max-speed", "600 rpm"},
		{"trial.a.turns", "3 turns", "trial.a.speed", "716 rpm", "trial.a.amps-1", "4.4 A"}, {"new.travel-away", "0 in"}, {"new.sheave", "fixed"},
	} {
		f := demo(t)
		set(t, f, texts...)
		whole, short := sheet.TurnsTable(f), sheet.TableToSet(f)
		a, wantA := sheet.NextMove(f, whole)
		b, wantB := sheet.NextMove(f, short)
		if !reflect.DeepEqual(a, b) || !reflect.DeepEqual(wantA, wantB) || whole.Set != short.Set || whole.Now != short.Now {
			t.Errorf("%v: %+v, row %d; %+v, row %d", texts, a, whole.Set, b, short.Set)
		}
		if i := whole.Set; i >= 0 && !reflect.DeepEqual(whole.Rows[i].Verdicts, short.Rows[i].Verdicts) {
			t.Errorf("%v: %+v, %+v", texts, whole.Rows[i].Verdicts, short.Rows[i].Verdicts)
		}
	}
}
