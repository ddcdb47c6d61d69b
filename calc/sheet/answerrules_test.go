package sheet_test

import (
	"errors"
	"math"
	"testing"

	"roofside/calc/limit"
	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// An answer is a value, or what it wants, or what is at fault, and never two of these.
func TestAnAnswerThatWantsIsNotKnown(t *testing.T) {
	f := fan(t, link)
	a := oldSpeed(f)
	a.Wanted = []record.Place{&f.New.Belts}
	if a.Known() {
		t.Error("known, though something is wanted")
	}
	a = oldSpeed(f)
	a.Fault = &sheet.Fault{Err: errors.New("so")}
	if a.Known() {
		t.Error("known, though something is at fault")
	}
	if (sheet.Answer[unit.Speed]{}).Known() {
		t.Error("known, though nothing was reckoned")
	}
}

func TestOnlyTextThatIsNoValueIsGarbled(t *testing.T) {
	if (*sheet.Fault)(nil).Garbled() || (&sheet.Fault{Err: errors.New("so")}).Garbled() {
		t.Error("garbled, and no text")
	}
}

// What is at fault in a formula is said of the place that the value came from, through
// as many answers as lie between, or of no place where it came from none.
func TestAFaultGoesBackToItsPlace(t *testing.T) {
	f := fan(t, link)
	var a sheet.Ask
	at := sheet.At{
		"place":  sheet.Want(&a, "d", &f.Old.MotorSheave).Term,
		"answer": sheet.Use(&a, "n", oldSpeed(f)).Term,
		"taken":  sheet.Take(&a, "k", unit.Ratio(1)).Term,
	}
	for parameter, want := range map[string]string{"place": "old.motor-sheave", "answer": "old.motor-speed", "taken": "", "other": ""} {
		x := sheet.Solve(&a, sheet.FromPlace, "", at, func() (unit.Ratio, error) { return 0, limit.Break(parameter, limit.OutOfRange) })
		got := ""
		if x.Fault != nil && x.Fault.Place != nil {
			got = f.KeyOf(x.Fault.Place)
		}
		if x.Fault == nil || got != want {
			t.Errorf("%s: %q, want %q", parameter, got, want)
		}
	}
}

// A formula that gives no number at a band's edge leaves the answer unbounded, as one
// that refuses it does.
func TestNoNumberAtAnEdgeIsNoBound(t *testing.T) {
	f := made(t, "old.motor-sheave", "3 in; within 1 in")
	for name, edge := range map[string]func() (unit.Ratio, error){
		"no number": func() (unit.Ratio, error) { return unit.Ratio(math.NaN()), nil },
		"refused":   func() (unit.Ratio, error) { return 0, limit.Break("d", limit.OutOfRange) },
	} {
		var a sheet.Ask
		d := sheet.Want(&a, "d", &f.Old.MotorSheave)
		x := sheet.Solve(&a, sheet.FromPlace, "", nil, func() (unit.Ratio, error) {
			if d.V() > f.Old.MotorSheave.Value() {
				return edge()
			}
			return 1, nil
		})
		if !x.Known() || x.Bounded() {
			t.Errorf("%s: %+v", name, x)
		}
	}
}

// Of two that weigh alike the first is asked for; of what stands in no place, none.
func TestWhatWeighsMost(t *testing.T) {
	f := made(t, "old.motor-sheave", "3 in; within 1 in", "old.fan-sheave", "8 in; within 1 in")
	var a sheet.Ask
	d, D := sheet.Want(&a, "d", &f.Old.MotorSheave), sheet.Want(&a, "D", &f.Old.FanSheave)
	x := sheet.Solve(&a, sheet.FromPlace, "", nil, func() (unit.Length, error) { return d.V() + D.V(), nil })
	if p := x.Steps.Unsettled(); p != record.Place(&f.Old.MotorSheave) {
		t.Errorf("%v", p)
	}
	a = sheet.Ask{}
	k := sheet.Take(&a, "k", unit.Ratio(2))
	k.Band = 1
	y := sheet.Solve(&a, sheet.FromPlace, "", nil, func() (unit.Ratio, error) { return k.V(), nil })
	if p := y.Steps.Unsettled(); y.Band != 1 || p != nil {
		t.Errorf("%v ± %v, %v", y.Value, y.Band, p)
	}
}

// 212, 206 and 200 V lie 2.9 % around 206 (NEMA MG 1, 14.36's own way of reckoning);
// where nothing was read there is no average, and nothing is off it.
func TestVoltsAroundTheirAverage(t *testing.T) {
	f := made(t, "old.volts-12", "212 V", "old.volts-23", "206 V", "old.volts-31", "200 V", "old.amps-1", "5 A", "old.amps-2", "6 A", "old.amps-3", "7 A")
	volts, average := sheet.Around(&f.Old.Reading, true)
	near(t, "average", average, 206)
	near(t, "off", volts[0].Off, 6./206)
	amps, average := sheet.Around(&f.Old.Reading, false)
	near(t, "average", average, 6)
	near(t, "off", amps[2].Off, 1./6)
	none, average := sheet.Around(&made(t).Old.Reading, true)
	if average != 0 || none != [3]sheet.Off{} {
		t.Errorf("%v around %v", none, average)
	}
}

// A belt is held against a groove once both are told; what isn't is asked for.
func TestABeltAndAGrooveAreAskedFor(t *testing.T) {
	for with, want := range map[string]string{
		"new.section=A":                  "new.belt-number",
		"new.belt-number=A50":            "new.section",
		"":                               "new.belt-number",
		"new.section=A&new.belt-number=": "new.belt-number",
	} {
		f := fan(t, with)
		v := sheet.GrooveVerdict(&f.New)
		if v.Level != sheet.Unjudged || len(v.Wanted) != 1 || f.KeyOf(v.Wanted[0]) != want {
			t.Errorf("%q: %+v", with, v)
		}
	}
	if f := fan(t, "new.section=A&new.belt-number=A50"); sheet.GrooveVerdict(&f.New).Level != sheet.Within {
		t.Error("an A belt in an A groove")
	}
}

// RMA IP-20's tolerance of length is told for A and B belts by number; other numbers
// have none here.
func TestLengthSpreadIsOfClassicalBelts(t *testing.T) {
	for name, want := range map[string]bool{"A50": true, "B60": true, "": false, "A": false, "5V500": false, "C60": false, "3V100": false} {
		if _, ok := (sheet.Fit{Name: name}).LengthSpread(); ok != want {
			t.Errorf("%q: %t", name, ok)
		}
	}
}
