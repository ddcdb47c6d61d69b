package sheet_test

import (
	"testing"

	"roofside/calc/record"
	"roofside/calc/sheet"
	"roofside/calc/unit"
)

// A speed said to reach a limit gives the limit's amps when it is put back.
func TestSpeedLimitsPutBack(t *testing.T) {
	for name, with := range map[string][]string{
		"no-load amps read": nil,
		"assumed":           {"new.no-load-amps", "", "old.no-load-amps", ""},
		"cold":              {"old.air-temperature", "90 F", "coldest-air", "5 F"},
		"warm start":        {"old.air-temperature", "20 F", "coldest-air", "60 F"},
		"volts":             {"old.volts-12", "202 V; within 0 V", "old.motor-volts", "208 V", "new.motor-volts", "230 V"},
		"report":            {"old.amps-1", "", "target.power", "1.6 hp", "target.speed", "700 rpm"},
	} {
		f := fan(t, swap)
		set(t, f, with...)
		b := sheet.FanBasis(f)
		limits := sheet.SpeedLimits(f, b)
		if len(limits) != 3 || limits[0].Rule != sheet.RulePlateAmps || limits[0].Level != sheet.Watch || limits[1].Rule != sheet.RuleServiceAmps || limits[1].Level != sheet.Stop || limits[2].Rule != sheet.RuleWheelMax {
			t.Fatalf("%s: %+v", name, limits)
		}
		air := sheet.Read("T", sheet.FromPlace, &f.ColdestAir)
		if name == "warm start" { // the reading's own air was denser
			air = sheet.Read("T", sheet.FromPlace, &f.Old.Reading.AirTemp)
		}
		for i, amps := range []float64{9.2, 10.4} {
			if !limits[i].Speed.Known() {
				t.Fatalf("%s: %+v", name, limits[i].Speed)
			}
			exact := sheet.Answer[unit.Speed]{Value: limits[i].Speed.Value, Steps: limits[i].Speed.Steps}
			near(t, name, sheet.NewAmps(f, b, exact, air).High(), amps)
		}
		first, ok, complete := sheet.FirstLimit(limits)
		if !ok || !complete || first.Rule != sheet.RulePlateAmps {
			t.Errorf("%s: first is %s", name, first.Rule)
		}
	}
	f := fan(t, swap)
	set(t, f, "new.wheel-max-speed", "600 rpm")
	if first, ok, complete := sheet.FirstLimit(sheet.SpeedLimits(f, sheet.FanBasis(f))); !ok || !complete || first.Rule != sheet.RuleWheelMax {
		t.Errorf("first is %s", first.Rule)
	}
	set(t, f, "new.wheel-max-speed", "?")
	if _, ok, complete := sheet.FirstLimit(sheet.SpeedLimits(f, sheet.FanBasis(f))); !ok || complete {
		t.Error("an unread limit could come first")
	}
	// A limit below what half the no-load current alone makes has no speed.
	set(t, f, "new.no-load-amps", "9 A; within 0 A", "new.service-factor-amps", "4 A")
	faulty(t, f, "no speed", sheet.SpeedLimits(f, sheet.FanBasis(f))[1].Speed, "new.service-factor-amps")
}

func TestServiceFactorIsVoid(t *testing.T) {
	for _, c := range []struct {
		name string
		with []string
		void bool
	}{
		{"nothing read", nil, false},
		{"at 3300 ft", []string{"altitude", "3300 ft"}, false},
		{"above 3300 ft", []string{"altitude", "3301 ft"}, true},
		{"at 40 °C", []string{"trial.a.air-temperature", "40 C"}, false},
		{"above 40 °C", []string{"trial.a.air-temperature", "105 F"}, true},
		{"1 % of unbalance", []string{"old.volts-12", "200 V", "old.volts-23", "202 V", "old.volts-31", "198 V"}, false},
		{"1.005 %", []string{"old.volts-12", "200 V", "old.volts-23", "202.01 V", "old.volts-31", "197.99 V"}, true},
		{"more than 1 %", []string{"old.volts-12", "200 V", "old.volts-23", "203 V", "old.volts-31", "197 V"}, true},
		{"balanced since", []string{"old.volts-12", "200 V", "old.volts-23", "210 V", "old.volts-31", "190 V", "trial.a.volts-12", "208 V", "trial.a.volts-23", "208 V", "trial.a.volts-31", "208 V"}, false},
		{"on a drive", []string{"supply", "drive"}, true},
	} {
		f := fan(t, swap)
		set(t, f, c.with...)
		if void := sheet.SpeedLimits(f, sheet.FanBasis(f))[0].Rule == sheet.RuleServiceVoid; void != c.void {
			t.Errorf("%s: void is %v", c.name, !c.void)
		}
	}
	// Then the plate is the stop, and there is no second limit.
	f := fan(t, swap+"&altitude=5000ft")
	limits := sheet.SpeedLimits(f, sheet.FanBasis(f))
	if len(limits) != 2 || limits[0].Rule != sheet.RuleServiceVoid || limits[0].Level != sheet.Stop {
		t.Errorf("%+v", limits)
	}
	beyond := limits[0].Speed
	beyond.Value, beyond.Band = beyond.Value*1.05, 0
	if v := sheet.MotorVerdict(f, sheet.FanBasis(f), beyond); v.Level != sheet.Stop || v.Rule != sheet.RuleServiceVoid {
		t.Errorf("%+v", v)
	}
}

// At 1.1 of its plate power the methods lie between 10.7 and 11 A of 10 A; what
// is past the plate by all of them is past the service factor by none or some.
func TestPastThePlate(t *testing.T) {
	for service, want := range map[string]sheet.Level{"11.1 A": sheet.Watch, "10.9 A": sheet.Watch, "10.6 A": sheet.Stop, "": sheet.Watch} {
		f := fan(t, "supply=three-phase&same-wheel=yes&target.speed=700rpm&target.power=1.1hp&new.motor-power=1hp&new.motor-amps=10A&new.wheel-max-speed=1080rpm")
		set(t, f, "new.service-factor-amps", service)
		v := sheet.MotorVerdict(f, sheet.FanBasis(f), speedAt(t, f, "700 rpm"))
		if v.Level != want || want == sheet.Watch && v.Rule != map[bool]sheet.Rule{true: sheet.RuleServiceNear, false: sheet.RulePlateAmps}[service == "10.9 A"] || want == sheet.Stop && v.Rule != sheet.RuleServiceAmps {
			t.Errorf("service-factor amps %q: %+v", service, v)
		}
		near(t, "judged by", v.Value.Base, 0.3*10+1.1*7)
	}
}

// Unbalance takes its derating off the plate's amps: 1 at 1 %, 0.95 at 2 %, 0.88 at
// 3 %, on straight lines between (NEMA MG 1, Figure 14-1, from memory). A limit is
// as low as the meter's three digits of 0.1 V may make it: 212.3, 203.7 and 207.7 V.
func TestUnbalanceDerates(t *testing.T) {
	volts := func(f *record.Fan, a, b, c string) {
		set(t, f, "old.volts-12", a, "old.volts-23", b, "old.volts-31", c)
	}
	f := fan(t, swap)
	plain := sheet.SpeedLimits(f, sheet.FanBasis(f))[0].Speed.Value
	volts(f, "204 V", "208 V", "212 V")
	u, worst := 4./208, 212.3/((212.3+203.7+207.7)/3)-1
	value(t, "unbalance", sheet.VoltageUnbalance(f), u)
	b := sheet.FanBasis(f)
	limits := sheet.SpeedLimits(f, b)
	exact := sheet.Answer[unit.Speed]{Value: limits[0].Speed.Value, Steps: limits[0].Speed.Steps}
	near(t, "amps at the limit", sheet.NewAmps(f, b, exact, sheet.PlannedAir(f)).High(), 9.2*(0.95-0.07*(worst*100-2)))
	if limits[0].Speed.Value >= plain {
		t.Errorf("%v is not below %v", limits[0].Speed.Value, plain)
	}
	if v := sheet.UnbalanceVerdict(f); v.Level != sheet.Watch {
		t.Errorf("2 %%: %+v", v)
	}
	volts(f, "190 V", "208 V", "226 V") // 8.7 %
	if v := sheet.UnbalanceVerdict(f); v.Level != sheet.Stop {
		t.Errorf("9 %%: %+v", v)
	}
	if v := sheet.MotorVerdict(f, b, speedAt(t, f, "300 rpm")); v.Level != sheet.Unjudged || len(v.Wanted) == 0 || f.KeyOf(v.Wanted[0]) != "old.volts-12" {
		t.Errorf("9 %% leaves a verdict: %+v", v)
	}
	volts(f, "207 V", "208 V", "209 V")
	if v := sheet.UnbalanceVerdict(f); v.Level != sheet.Within {
		t.Errorf("0.5 %%: %+v", v)
	}
	if v := sheet.UnbalanceVerdict(fan(t, swap)); v.Level != sheet.Unjudged || len(v.Wanted) != 3 {
		t.Errorf("not read: %+v", v)
	}
}

func TestWorstVerdictRanks(t *testing.T) {
	within, unjudged, watch, stop := sheet.Verdict{Level: sheet.Within}, sheet.Verdict{Level: sheet.Unjudged}, sheet.Verdict{Level: sheet.Watch}, sheet.Verdict{Level: sheet.Stop}
	for _, c := range []struct {
		of   []sheet.Verdict
		want sheet.Level
	}{
		{nil, sheet.Within}, {[]sheet.Verdict{within, unjudged}, sheet.Unjudged}, {[]sheet.Verdict{unjudged, watch, within}, sheet.Watch},
		{[]sheet.Verdict{watch, stop, unjudged}, sheet.Stop}, {[]sheet.Verdict{within, within}, sheet.Within},
	} {
		if got := sheet.Worst(c.of).Level; got != c.want {
			t.Errorf("worst of %v is %v", c.of, got)
		}
	}
	first := sheet.Worst([]sheet.Verdict{{Level: sheet.Watch, Rule: "a"}, {Level: sheet.Watch, Rule: "b"}})
	if first.Rule != "a" {
		t.Error("not the first of its level")
	}
}

// No verdict is given that a band could overturn.
func TestBandsOverturnNoVerdict(t *testing.T) {
	for _, c := range []struct {
		speed, most string
		want        sheet.Level
		settles     string
	}{
		{"1000 rpm; within 0 rpm", "1000 rpm", sheet.Within, ""},
		{"1000.1 rpm; within 0 rpm", "1000 rpm", sheet.Stop, ""},
		{"996 rpm; within 3 rpm", "1000 rpm", sheet.Within, ""},
		{"998 rpm; within 3 rpm", "1000 rpm", sheet.Unjudged, "trial.a.speed"},
		{"1002 rpm; within 3 rpm", "1000 rpm", sheet.Unjudged, "trial.a.speed"},
		{"1004 rpm; within 3 rpm", "1000 rpm", sheet.Stop, ""},
		{"1004 rpm; within 0 rpm", "1000 rpm; guessed", sheet.Unjudged, "new.wheel-max-speed"},
		{"899 rpm; within 0 rpm", "1000 rpm; guessed", sheet.Within, ""},
		{"1101 rpm; within 0 rpm", "1000 rpm; guessed", sheet.Stop, ""},
		{"500 rpm; within 0 rpm", "?", sheet.Unjudged, "new.wheel-max-speed"},
	} {
		f := fan(t, "trial.a.turns=1&trial.a.speed="+c.speed+"&new.wheel-max-speed="+c.most)
		v := sheet.WheelVerdict(f, sheet.PlannedSpeed(f, sheet.Table{Set: -1}))
		if v.Level != c.want {
			t.Errorf("%s of %s is %v, want %v", c.speed, c.most, v.Level, c.want)
		}
		if got := len(v.Wanted) > 0; got != (c.settles != "") || got && f.KeyOf(v.Wanted[0]) != c.settles {
			t.Errorf("%s of %s is settled by %v", c.speed, c.most, v.Wanted)
		}
	}
}
