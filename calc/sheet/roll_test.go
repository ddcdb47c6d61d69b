package sheet_test

import (
	"strconv"
	"testing"

	"roofside/calc/phase"
	"roofside/calc/record"
	"roofside/calc/sheet"
)

// rolled is a fan whose readings stand at the orders given, each with its amps.
func rolled(t *testing.T, amps [][3]string, orders ...string) *record.Fan {
	t.Helper()
	f := fan(t, motor)
	set(t, f, join(evenVolts, proven)...)
	for i, o := range orders {
		id := "t" + strconv.Itoa(i+1)
		a := amps[min(i, len(amps)-1)]
		set(t, f, append(trial(id, "amps", a[0], a[1], a[2]), "trial."+id+".leads", o)...)
	}
	return f
}

var (
	onLine1 = [][3]string{{"6.5 A", "5 A", "5 A"}}
	withT1  = [][3]string{{"6.5 A", "5 A", "5 A"}, {"5 A", "6.5 A", "5 A"}, {"5 A", "5 A", "6.5 A"}}
)

func TestRollTellsWhereItStays(t *testing.T) {
	r := sheet.LeadRoll(rolled(t, onLine1, "1-2-3", "3-1-2", "2-3-1"))
	if !r.Known || r.Found.Cause != phase.CauseSupply || r.Found.Line != phase.Leg1 {
		t.Errorf("on line 1: %+v", r)
	}
	r = sheet.LeadRoll(rolled(t, withT1, "1-2-3", "3-1-2", "2-3-1"))
	if !r.Known || r.Found.Cause != phase.CauseMotor || r.Lead != phase.Leg1 {
		t.Errorf("with lead 1: %+v", r)
	}
	// The other way round the clock, and from an exchanged hookup: T2 stands on L1
	// first, and what is high goes with it.
	r = sheet.LeadRoll(rolled(t, withT1, "2-1-3", "3-2-1", "1-3-2"))
	if !r.Known || r.Found.Cause != phase.CauseMotor || r.Lead != phase.Leg2 {
		t.Errorf("with lead 2: %+v", r)
	}
	r = sheet.LeadRoll(rolled(t, [][3]string{withT1[0], withT1[2], withT1[1]}, "1-2-3", "2-3-1", "3-1-2"))
	if !r.Known || r.Found.Cause != phase.CauseMotor || r.Lead != phase.Leg1 {
		t.Errorf("in another order: %+v", r)
	}
}

func TestRollWaits(t *testing.T) {
	for _, c := range []struct {
		name   string
		orders []string
		with   []string
		before phase.Before
		trials int
	}{
		{"two positions", []string{"1-2-3", "3-1-2"}, nil, phase.BeforeNothing, 2},
		{"rotation not proven", []string{"1-2-3", "3-1-2", "2-3-1"}, []string{"new.rotation", ""}, phase.BeforeRotation, 3},
		{"turned wrong", []string{"1-2-3", "3-1-2", "2-3-1"}, []string{"new.rotation", "reverse"}, phase.BeforeRotation, 3},
		{"unbalanced volts", []string{"1-2-3"}, trial("t1", "volts", "204 V", "208 V", "212 V"), phase.BeforeVolts, 1},
		{"volts not read", []string{"1-2-3"}, []string{"trial.t1.volts-12", ""}, phase.BeforeVolts, 1},
		{"lost", []string{"1-2-3"}, trial("t1", "amps", "0 A", "9 A", "9 A"), phase.BeforePhase, 1},
		{"light", []string{"1-2-3"}, trial("t1", "amps", "3 A", "2.4 A", "2.4 A"), phase.BeforeLoad, 1},
		{"a leg not read", []string{"1-2-3"}, []string{"trial.t1.amps-1", ""}, phase.BeforeLoad, 1},
		{"even", []string{"1-2-3"}, evenAmps, phase.BeforeCause, 1},
		{"a position read again starts anew", []string{"1-2-3", "3-1-2", "3-1-2"}, nil, phase.BeforeNothing, 1},
		{"an exchange starts anew", []string{"1-2-3", "3-1-2", "3-2-1"}, nil, phase.BeforeNothing, 1},
		{"an exchange not yet read at starts anew", []string{"1-2-3", "3-1-2"}, []string{"new.leads", "2-1-3", "new.rotation-leads", "2-1-3"}, phase.BeforeNothing, 0},
		{"an exchange since it was bumped", []string{"1-2-3", "3-1-2"}, []string{"new.leads", "2-1-3"}, phase.BeforeRotation, 0},
	} {
		f := rolled(t, onLine1, c.orders...)
		set(t, f, c.with...)
		r := sheet.LeadRoll(f)
		if r.Known || r.Before != c.before || len(r.Trials) != c.trials {
			t.Errorf("%s: known %v, before %s, %d positions", c.name, r.Known, r.Before, len(r.Trials))
		}
	}
}

// Two positions are a step on the way, and three told are the last word.
func TestRollSteps(t *testing.T) {
	for n, want := range map[int]sheet.Step{1: sheet.StepRoll, 2: sheet.StepRoll, 3: sheet.StepCause} {
		f := rolled(t, onLine1, []string{"1-2-3", "3-1-2", "2-3-1"}[:n]...)
		if p := sheet.Prove(f); p.Next != want {
			t.Errorf("%d positions: %s, %+v", n, p.Next, p.Worst)
		}
	}
	f := rolled(t, onLine1, "1-2-3", "3-1-2", "2-3-1")
	set(t, f, "trial.t3.amps-2", "")
	if p := sheet.Prove(f); p.Next != sheet.StepAmps || f.KeyOf(p.Wanted[0]) != "trial.t3.amps-2" {
		t.Errorf("a leg of the third is missing: %s, %v", p.Next, p.Wanted)
	}
	f = rolled(t, [][3]string{onLine1[0], {"5 A", "5 A", "5 A"}}, "1-2-3", "3-1-2", "2-3-1") // the load went
	if r := sheet.LeadRoll(f); !r.Known || r.Found.Cause != phase.CauseUnjudged || r.Found.Reason != phase.ReasonDrift {
		t.Errorf("another load: %+v", r)
	}
}

// Lessons In Electric Circuits, polyphase power: 1-2-3 = 2-3-1 = 3-1-2; an exchange of
// two is the other order.
func TestOrdersOfLeads(t *testing.T) {
	o := record.Leads("1-2-3")
	for _, want := range []record.Leads{"3-1-2", "2-3-1", "1-2-3"} {
		if o = sheet.Moved(o); o != want {
			t.Errorf("moved to %s, want %s", o, want)
		}
	}
	for _, text := range o.Options() {
		o := record.Leads(text)
		if sheet.Exchanged(sheet.Exchanged(o)) != o || sheet.Exchanged(o) == o || sheet.Exchanged(o) == sheet.Moved(o) {
			t.Errorf("%s exchanged is %s", o, sheet.Exchanged(o))
		}
	}
}

// Moved on by a place, leads keep the motor's way; any two exchanged reverse it.
func TestReverses(t *testing.T) {
	for _, after := range record.Leads("").Options() {
		moved := after == "1-2-3" || after == "3-1-2" || after == "2-3-1"
		if sheet.Reverses("1-2-3", record.Leads(after)) == moved {
			t.Errorf("1-2-3 to %s", after)
		}
	}
}
