package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// The published example of a link: 1750 · 3.4 / 8.6.
const link = "motor-speed=1750rpm&motor-sheave=3.4in&fan-sheave=8.6in"

func oldSpeed(f *record.Fan) sheet.Answer[unit.Speed] { return sheet.FanSpeed(f, &f.Old) }

func TestAnAnswerIsAValueOrWhatItWants(t *testing.T) {
	f := fan(t, link)
	value(t, "fan speed", oldSpeed(f), 1750*3.4/8.6)
	if a := oldSpeed(f); a.From != sheet.FromSheaves || a.Steps.Method != "drive.speed" || len(a.Steps.Terms) != 3 {
		t.Errorf("working: %s from %s with %d terms", a.Steps.Method, a.From, len(a.Steps.Terms))
	}
	for key, text := range map[string]string{"old.motor-speed": "1750 rpm", "old.motor-sheave": "3.4 in", "old.fan-sheave": "8.6 in"} {
		set(t, f, key, "")
		wants(t, f, "without "+key, oldSpeed(f), key)
		set(t, f, key, "?")
		wants(t, f, "illegible "+key, oldSpeed(f), key)
		f.Place(key).Set("!three")
		faulty(t, f, "garbled "+key, oldSpeed(f), key)
		if fault := oldSpeed(f).Fault; !fault.Garbled() {
			t.Errorf("garbled %s: %v", key, fault.Err)
		}
		set(t, f, key, text)
	}
	wants(t, record.NewFan(), "of nothing", oldSpeed(record.NewFan()))
	f = record.NewFan()
	wants(t, f, "of nothing", oldSpeed(f), "old.motor-speed", "old.motor-sheave", "old.fan-sheave")
}

// A reading stands before a count, a count before the sheaves; text in a place
// that is no value blocks and lets no other source through.
func TestGarbledTextNeverFallsThrough(t *testing.T) {
	f := fan(t, link+"&count-fan-turns=20&count-motor-turns=48.25&speed=690rpm")
	value(t, "read", oldSpeed(f), 690)
	f.Old.Reading.Speed.Set("!69O rpm")
	faulty(t, f, "garbled reading", oldSpeed(f), "old.speed")
	set(t, f, "old.speed", "?")
	value(t, "counted", oldSpeed(f), 1750*20/48.25)
	f.Old.CountMotor.Set("!48,25")
	faulty(t, f, "garbled count", oldSpeed(f), "old.count-motor-turns")
	set(t, f, "old.count-motor-turns", "?")
	wants(t, f, "half a count", oldSpeed(f), "old.count-motor-turns")
	set(t, f, "old.count-fan-turns", "")
	value(t, "sheaves", oldSpeed(f), 1750*3.4/8.6)

	garbles := map[string]func(f *record.Fan) (known bool, fault *sheet.Fault){
		"old.amps-1":          speedOf(oldSpeed),
		"old.volts-23":        speedOf(oldSpeed),
		"old.motor-volts":     speedOf(oldSpeed),
		"old.no-load-amps":    speedOf(oldSpeed),
		"old.motor-frequency": speedOf(oldSpeed),
		"target.speed":        speedOf(sheet.TargetSpeed),
	}
	for key, answer := range garbles {
		f := fan(t, link+"&motor-power=2hp&motor-amps=6.6A&motor-volts=208V&amps-1=5A&volts-12=208V&target.tag-speed=700rpm&supply=three-phase")
		f.Place(key).Set("!x")
		if known, fault := answer(f); known || fault == nil || f.KeyOf(fault.Place) != key {
			t.Errorf("garbled %s lets a value through: known %v, fault %+v", key, known, fault)
		}
	}
}

func speedOf(answer func(*record.Fan) sheet.Answer[unit.Speed]) func(*record.Fan) (bool, *sheet.Fault) {
	return func(f *record.Fan) (bool, *sheet.Fault) {
		a := answer(f)
		return a.Known(), a.Fault
	}
}

// A band is the worst case: the formula at both edges of each input, the
// changes added.
func TestBandsAreTheWorstCase(t *testing.T) {
	f := fan(t, "motor-speed=1750rpm&motor-frequency=60Hz&motor-tachometer=1760rpm;within 10rpm&motor-sheave=3.4in;measured;within 1/16in&fan-sheave=8.6in;within 1 %25")
	a := oldSpeed(f)
	value(t, "speed", a, 1760*3.4/8.6)
	n, d, D := 1760., 3.4, 8.6
	at := n * d / D
	want := 10*d/D + n*(d+1./16)/D - at + n*d/(D*0.99) - at // the lower diameter is the larger change
	near(t, "band", a.Band, want)
	near(t, "low", a.Low(), at-want)
	near(t, "high", a.High(), at+want)
	if p := a.Steps.Unsettled(); f.KeyOf(p) != "old.motor-sheave" {
		t.Errorf("%s weighs most", f.KeyOf(p))
	}
	set(t, f, "old.motor-sheave", "3.4 in", "old.motor-tachometer", "1760 rpm; within 0 rpm", "old.fan-sheave", "8.6 in")
	if a := oldSpeed(f); a.Band != 0 || a.Steps.Unsettled() != nil {
		t.Errorf("exact inputs give ± %v", a.Band)
	}
	// A count to a quarter turn, the fan's turns exact.
	f = fan(t, "motor-tachometer=1725rpm;within 0rpm&count-fan-turns=20&count-motor-turns=48.25")
	near(t, "counted band", oldSpeed(f).Band, 1725*(20/48.-20/48.25))
}

// What can't be is said of the place that holds it.
func TestFaultsNameThePlace(t *testing.T) {
	f := fan(t, link+"&center-distance=5in")
	faulty(t, f, "overlapping sheaves", sheet.BeltLength(&f.Old), "old.center-distance")
	faulty(t, f, "overlapping sheaves", sheet.Arc(&f.Old), "old.center-distance")
	f = fan(t, "motor-speed=1900rpm&motor-frequency=50Hz")
	faulty(t, f, "37 % of slip", sheet.Synchronous(&f.Old, nil), "old.motor-speed")
}

// What is stamped is as sure as it gets: the reading is asked for, and where the
// methods lie apart for want of no-load amps, those.
func TestNothingStampedIsToBeSurer(t *testing.T) {
	for with, want := range map[string]string{"2.2 A": "trial.t1.amps-1", "": "new.no-load-amps"} {
		f := fan(t, motor)
		set(t, f, append(join(evenVolts, evenAmps), "new.no-load-amps", with)...)
		r := &f.Trials[0].Reading
		var a sheet.Ask
		l := sheet.Use(&a, "L", sheet.Load(f, &f.New, r))
		left := sheet.Solve(&a, sheet.FromPlace, "", nil, func() (unit.Ratio, error) { return 1 - l.V(), nil })
		if got := left.Steps.Unsettled(); got == nil || f.KeyOf(got) != want {
			t.Errorf("load, no-load amps %q: %v, want %s", with, got, want)
		}
		a = sheet.Ask{}
		p := sheet.Use(&a, "P", sheet.ShaftPower(f, &f.New, r))
		twice := sheet.Solve(&a, sheet.FromPlace, "", nil, func() (unit.Power, error) { return 2 * p.V(), nil })
		if got := twice.Steps.Unsettled(); got == nil || f.KeyOf(got) != "trial.t1.amps-1" {
			t.Errorf("power, no-load amps %q: %v", with, got)
		}
	}
}
